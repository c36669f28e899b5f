"""Materials in the axes (r or thickness, axial, hoop or width), and their stiffness."""

import numpy as np


def isotropic(modulus, poisson, expansion):
    return {"modulus": modulus, "poisson": poisson, "expansion": expansion}


TITANIUM = isotropic(114000.0, 0.34, 8.6e-6)
ADHESIVE = isotropic(2400.0, 0.37, 55e-6)

# Poisson's ratio ij is the contraction along j under tension along i, so ij / Ei = ji / Ej.
# The last two shear moduli matter only in the bending case.
CARBON_TUBE = {
    "axialModulus": 70000.0,
    "hoopModulus": 30000.0,
    "radialModulus": 9000.0,
    "poissonAxialHoop": 0.3,
    "poissonAxialRadial": 0.3,
    "poissonHoopRadial": 0.3,
    "shearAxialRadial": 4000.0,
    "shearAxialHoop": 20000.0,
    "shearHoopRadial": 4000.0,
    "axialExpansion": 1e-6,
    "hoopExpansion": 6e-6,
    "radialExpansion": 30e-6,
}

CARBON_STRIP = {
    **CARBON_TUBE,
    "axialModulus": 50000.0,
    "hoopModulus": 50000.0,
    "shearAxialHoop": 19000.0,
}


def constants(material):
    """Moduli, Poisson's ratios (rx, rt, xt), shear moduli (rx, rt, xt), expansions (r, x, t)."""
    if "modulus" in material:
        e, nu = material["modulus"], material["poisson"]
        return [e] * 3, [nu] * 3, [e / (2 * (1 + nu))] * 3, [material["expansion"]] * 3
    m = material
    er, ex, et = m["radialModulus"], m["axialModulus"], m["hoopModulus"]
    nus = [
        m["poissonAxialRadial"] * er / ex,
        m["poissonHoopRadial"] * er / et,
        m["poissonAxialHoop"],
    ]
    shears = [m["shearAxialRadial"], m["shearHoopRadial"], m["shearAxialHoop"]]
    return (
        [er, ex, et],
        nus,
        shears,
        [m["radialExpansion"], m["axialExpansion"], m["hoopExpansion"]],
    )


def stiffness(material):
    """6 by 6 stiffness for (rr, xx, tt, rx, rt, xt) with engineering shear strains, and expansions."""
    (er, ex, et), (nrx, nrt, nxt), shears, expansion = constants(material)
    compliance = np.array(
        [
            [1 / er, -nrx / er, -nrt / er],
            [-nrx / er, 1 / ex, -nxt / ex],
            [-nrt / er, -nxt / ex, 1 / et],
        ]
    )
    out = np.zeros((6, 6))
    out[:3, :3] = np.linalg.inv(compliance)
    out[3:, 3:] = np.diag(shears)
    return out, np.array(expansion)
