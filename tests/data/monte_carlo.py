"""Weighted-photon Monte Carlo of a layered slab in air, for the stacks of layered-media.json on which the reference fails.

Plain physics and nothing else: Fresnel surfaces, Henyey-Greenstein scattering, absorption by weight, Russian roulette. Needs
numpy. With 6,000,000 photons the standard error is about 1.5e-4; the numbers it printed stand in tests/optics.rs.
"""
import json

import numpy as np

rng = np.random.default_rng(1)
FAILING = (0.165167, 0.743614, 0.430783, 0.292295)


def monte_carlo(stack, photons):
    n, layers = stack["refractive_index"], stack["layers"]
    bounds = np.concatenate([[0], np.cumsum([layer["thickness_mm"] for layer in layers])])
    mu_a = np.array([layer["absorption_per_mm"] for layer in layers])
    mu_s = np.array([layer["scattering_per_mm"] for layer in layers])
    g = np.array([layer["anisotropy"] for layer in layers])
    specular = ((n - 1) / (n + 1)) ** 2

    def fresnel(cosine):
        sine2 = n * n * (1 - cosine * cosine)
        outside = np.sqrt(np.clip(1 - sine2, 0, 1))
        s = (n * cosine - outside) / (n * cosine + outside)
        p = (cosine - n * outside) / (cosine + n * outside)
        return np.where(sine2 >= 1, 1.0, 0.5 * (s * s + p * p))

    z, cosine, layer = np.zeros(photons), np.ones(photons), np.zeros(photons, int)
    weight, left = np.full(photons, 1 - specular), rng.exponential(size=photons)
    reflected, transmitted = specular * photons, 0.0
    while len(z):
        extinction = mu_a[layer] + mu_s[layer]
        way = np.where(cosine > 0, bounds[layer + 1] - z, z - bounds[layer]) / np.maximum(np.abs(cosine), 1e-12)
        crosses = way * extinction < left
        step = np.where(crosses, way, left / extinction)
        z, left = z + cosine * step, left - step * extinction
        up, down = crosses & (cosine < 0), crosses & (cosine > 0)
        top, bottom = up & (layer == 0), down & (layer == len(layers) - 1)
        layer = np.where(up & ~top, layer - 1, np.where(down & ~bottom, layer + 1, layer))
        for surface, is_bottom in ((top, False), (bottom, True)):
            at = np.nonzero(surface)[0]
            leaves = rng.random(len(at)) >= fresnel(np.abs(cosine[at]))
            gone = weight[at[leaves]].sum()
            reflected, transmitted = reflected + gone * (not is_bottom), transmitted + gone * is_bottom
            weight[at[leaves]] = 0
            cosine[at[~leaves]] *= -1
        z[top], z[bottom] = 0, bounds[-1]
        scatters = np.nonzero(~crosses)[0]
        here = layer[scatters]
        weight[scatters] *= mu_s[here] / (mu_a[here] + mu_s[here])
        gg, u = g[here], rng.random(len(scatters))
        with np.errstate(all="ignore"):
            forward = (1 + gg**2 - ((1 - gg**2) / (1 - gg + 2 * gg * u)) ** 2) / (2 * gg)
        turn = np.where(np.abs(gg) < 1e-9, 2 * u - 1, forward)
        azimuth, old = 2 * np.pi * rng.random(len(scatters)), cosine[scatters]
        sines = np.sqrt(np.clip(1 - old * old, 0, 1) * np.clip(1 - turn * turn, 0, 1))
        cosine[scatters] = np.clip(old * turn + sines * np.cos(azimuth), -1, 1)
        left[scatters] = rng.exponential(size=len(scatters))
        faint = (weight < 1e-3) & (weight > 0)
        lost = faint & (rng.random(len(weight)) > 0.1)
        weight = np.where(faint & ~lost, weight * 10, weight)
        weight[lost] = 0
        alive = weight > 0
        z, cosine, layer, weight, left = z[alive], cosine[alive], layer[alive], weight[alive], left[alive]
    return reflected / photons, transmitted / photons


for stack in json.load(open("layered-media.json")):
    if stack["reflectance_normal_incidence"] in FAILING:
        print(stack["reflectance_normal_incidence"], *monte_carlo(stack, 6_000_000))
