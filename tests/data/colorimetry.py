"""Makes colorimetry.json: L*a*b* of the 24 patches of the ColorChecker (BabelColor average) under each light.

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


def lab(sd, light):
    white = xyz(colour.SpectralDistribution(np.ones(31), shape.wavelengths), light)
    X, Y, Z = xyz(sd, light) / white
    f = lambda t: np.cbrt(t) if t > 216 / 24389 else (24389 / 27 * t + 16) / 116
    return [116 * f(Y) - 16, 500 * (f(X) - f(Y)), 200 * (f(Y) - f(Z))]


out = []
for name, sd in colour.SDS_COLOURCHECKERS["BabelColor Average"].items():
    sd = sd.copy().trim(shape)
    out.append(
        {
            "name": name,
            "reflectance": [round(float(v), 4) for v in sd.values],
            "lab": {
                light: [round(float(v), 4) for v in lab(colour.SpectralDistribution(np.round(sd.values, 4), shape.wavelengths), light)]
                for light in ("D65", "A", "LED-B3")
            },
        }
    )
with open("colorimetry.json", "w") as file:
    json.dump(out, file, indent=1)
