"""Makes films.json: readings of paint films over an even backing, and of the bare backing, by another program's parts.

Needs the PyPI package iadpython (made with 0.5.3). A film is one of its layers; the backing is a layer that reflects a share of
all light evenly and lets none through (every entry of its reflection matrix is that share); the surface on top is its
boundary layer. Light at normal incidence, all reflected light collected, surface reflection included. 24 quadrature angles.
"""
import json

import iadpython
import numpy as np

ANGLES = 24


def reading(index, backing, film=None):
    """Reading of a backing below a surface, with a film (absorption, reduced scattering, anisotropy, thickness) between."""
    sample = iadpython.Sample(n=index, quad_pts=ANGLES)
    sample.update_quadrature()
    r = np.full((ANGLES, ANGLES), backing)
    t = np.zeros((ANGLES, ANGLES))
    if film is not None:
        absorption, reduced, anisotropy, thickness = film
        scattering = reduced / (1 - anisotropy)
        extinction = absorption + scattering
        layer = iadpython.Sample(
            a=scattering / extinction, b=extinction * thickness, g=anisotropy, n=index, quad_pts=ANGLES
        )
        layer.update_quadrature()
        rf, tf = iadpython.simple_layer_matrices(layer)
        r, _, t, _ = iadpython.add_layers(sample, rf, rf, tf, tf, r, r, t, t)
    r01, r10, t01, t10 = iadpython.start.boundary_layer(sample, top=True)
    r, _, t, _ = iadpython.add_slide_above(sample, r01, r10, t01, t10, r, r, t, t)
    return float(sample.UX1_and_UXU(r, t)[0])


rng = np.random.default_rng(7)
out = []
for _ in range(40):
    index = float(rng.choice([1.4, 1.5, 1.6]))
    backing = float(rng.choice([0.02, 0.1, 0.5, 0.9]))
    thickness = float(np.round(10 ** rng.uniform(-2.3, -1), 4))
    anisotropy = float(rng.choice([0.0, 0.5, 0.8]))
    absorption = float(np.round(10 ** rng.uniform(-0.5, 2.3), 3))
    reduced = float(np.round(10 ** rng.uniform(0.3, 2.5), 3))
    out.append(
        {
            "refractive_index": index,
            "anisotropy": anisotropy,
            "absorption_per_mm": absorption,
            "reduced_scattering_per_mm": reduced,
            "thickness_mm": thickness,
            "backing": round(reading(index, backing), 7),
            "film": round(reading(index, backing, (absorption, reduced, anisotropy, thickness)), 7),
        }
    )
json.dump(out, open("films.json", "w"), indent=1)
