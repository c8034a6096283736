"""Makes colorimetry.json: XYZ and L*a*b* of the 24 patches of the ColorChecker (BabelColor average) under each light, and the
colours under D65 that correspond to them by CAT02 (colour.adaptation, full adaptation) as L*a*b*.

Needs the PyPI package colour-science (made with 0.4.7). Spectra are cut to 400-700 nm by 10 nm, as healedhue has them;
tristimulus values by ASTM E308 (colour.sd_to_XYZ), white as the same method gives for the perfect diffuser.
"""
import json

import colour
import numpy as np

shape = colour.SpectralShape(400, 700, 10)
cmfs = colour.MSDS_CMFS["CIE 1931 2 Degree Standard Observer"]


def xyz(sd, light):
    return colour.sd_to_XYZ(sd, cmfs, colour.SDS_ILLUMINANTS[light], method="ASTM E308")


LIGHTS = ("D65", "A", "LED-B3", "FL2")


def white(light):
    return xyz(colour.SpectralDistribution(np.ones(31), shape.wavelengths), light)


def lab(tristimulus, light):
    X, Y, Z = tristimulus / white(light)
    f = lambda t: np.cbrt(t) if t > 216 / 24389 else (24389 / 27 * t + 16) / 116
    return [116 * f(Y) - 16, 500 * (f(X) - f(Y)), 200 * (f(Y) - f(Z))]


def numbers(values):
    return [round(float(value), 4) for value in values]


out = []
for name, sd in colour.SDS_COLOURCHECKERS["BabelColor Average"].items():
    sd = sd.copy().trim(shape)
    sd = colour.SpectralDistribution(np.round(sd.values, 4), shape.wavelengths)
    seen = {light: xyz(sd, light) for light in LIGHTS}
    adapted = {
        light: colour.adaptation.chromatic_adaptation_VonKries(
            seen[light] / 100, white(light) / 100, white("D65") / 100, transform="CAT02"
        )
        * 100
        for light in LIGHTS
    }
    out.append(
        {
            "name": name,
            "reflectance": numbers(sd.values),
            "xyz": {light: numbers(seen[light]) for light in LIGHTS},
            "lab": {light: numbers(lab(seen[light], light)) for light in LIGHTS},
            "corresponding": {light: numbers(lab(adapted[light], "D65")) for light in LIGHTS},
        }
    )
with open("colorimetry.json", "w") as file:
    json.dump(out, file, indent=1)
