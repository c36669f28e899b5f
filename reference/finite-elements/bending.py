"""What the own elements give: the bending case, and a check on CalculiX at harmonic 0."""

import numpy as np
from scipy.interpolate import CubicSpline

import fourier
from mesh import build
from results import at_stations, gap_average, signs, simpson


def solve(case, finer, n):
    """Stresses at the stations; in bending, amplitudes of cos (axial shear, peel) and sin (hoop)."""
    mesh = build(case, finer)
    sampled, nodal = fourier.stresses(case, mesh, n)
    out = {"elements": len(mesh.elements), "bonds": {}}
    for j, sign in signs(case).items():
        own, at = np.flatnonzero(mesh.layer == j), at_stations(case, mesh, j)
        middle = fourier.line_stresses(mesh, j, nodal, mesh.middle[j])
        outer = fourier.line_stresses(mesh, j, nodal, mesh.eighth[j])[at]
        bond = {
            "radius": mesh.xy[mesh.middle[j][0], 0],
            "shear": sign * middle[at, 3],
            "peel": middle[at, 0],
            "outer": {"shear": sign * outer[:, 3], "peel": outer[:, 0]},
        }
        means = [("meanShear", 3, sign), ("meanPeel", 0, 1.0)]
        if n == 1:
            bond["circumferentialShear"] = sign * middle[at, 4]
            means.append(("meanCircumferentialShear", 4, sign))
            bond |= moments(case, mesh, j, sign, middle)
        for name, i, s in means:
            x, mean, _ = gap_average(case, mesh, j, s * sampled[own, :, i])
            bond[name] = CubicSpline(x, mean)(case["stations"])
        out["bonds"][j] = bond
    return out


def moments(case, mesh, j, sign, middle):
    """Sideways force, and moment about the root plane, of the stresses on the middle of the bond.

    At the clocking t the bond pulls the tube by peel cos t outward and by the shears along and
    around; the axial shear alone carries most of the moment.
    """
    nodes = mesh.middle[j]
    x, r = mesh.xy[nodes, 1], mesh.xy[nodes[0], 0]
    sideways = np.pi * r * -sign * (middle[:, 0] - middle[:, 4])
    axial = np.pi * r**2 * simpson(x, sign * middle[:, 3])
    return {
        "axialMoment": axial,
        "moment": axial + simpson(x, x * sideways),
        "sideways": simpson(x, sideways),
    }
