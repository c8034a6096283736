"""Makes layered-media-corrected.json: the stacks of layered-media.json, surfaces added one side at a time.

Needs the PyPI package iadpython (made with 0.5.3). Its multi-layer routine adds both surfaces at once as if the stack looked
the same from both sides, which is wrong for layers that differ. Here the same package's parts are put together in order: top
surface, each layer from the top, bottom surface, with its routines for unequal sides. 24 quadrature angles.
"""
import json

import iadpython
import numpy as np

ANGLES = 24
out = []
for stack in json.load(open("layered-media.json")):
    sample = iadpython.Sample(n=stack["refractive_index"], quad_pts=ANGLES)
    sample.update_quadrature()
    flux = np.diagflat(sample.twonuw)
    layers = []
    for layer in stack["layers"]:
        extinction = layer["absorption_per_mm"] + layer["scattering_per_mm"]
        one = iadpython.Sample(
            a=layer["scattering_per_mm"] / extinction,
            b=extinction * layer["thickness_mm"],
            g=layer["anisotropy"],
            n=stack["refractive_index"],
            quad_pts=ANGLES,
        )
        one.update_quadrature()
        layers.append(iadpython.simple_layer_matrices(one))
    # Layers alone, with both sides kept apart.
    r02, t02 = layers[0]
    r20, t20 = r02, t02
    for r, t in layers[1:]:
        r02, r20, t02, t20 = iadpython.add_layers(sample, r02, r20, t02, t20, r, r, t, t)
    # The top surface, then the bottom one.
    r01, r10, t01, t10 = iadpython.start.boundary_layer(sample, top=True)
    r23, r32, t23, t32 = iadpython.start.boundary_layer(sample, top=False)
    r02, r20, t02, t20 = iadpython.add_slide_above(sample, r01, r10, t01, t10, r02, r20, t02, t20)
    r03, r30, t03, t30 = iadpython.add_slide_below(sample, r02, r20, t02, t20, r23, r32, t23, t32)
    ur1, ut1 = sample.UX1_and_UXU(r03, t03)[:2]
    out.append({**stack, "reflectance_normal_incidence": round(float(ur1), 6), "transmittance_normal_incidence": round(float(ut1), 6)})
json.dump(out, open("layered-media-corrected.json", "w"), indent=1)
