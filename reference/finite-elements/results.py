"""What is taken from a solution: stresses at the stations, forces carried, and checks on them."""

import numpy as np
from numpy.polynomial.legendre import leggauss
from scipy.interpolate import CubicSpline

import ccx
from mesh import build

SECTOR = 180.0  # CalculiX models two degrees of the circle


def signs(case):
    """Per bond layer: +1 where the tube lies outside it (a spigot's bond), -1 where it lies inside."""
    return {
        j: 1.0 if j < case["tube"] else -1.0
        for j, layer in enumerate(case["layers"])
        if layer["kind"] == "bond"
    }


def circumference(case, radius):
    return 2 * np.pi * radius if case["formulation"] == "axisymmetric" else np.ones_like(radius)


def gap_average(case, mesh, j, points):
    """Mean over the gap at each axial integration point, and its integral over the bond.

    points: for each element of the bond its q by q integration points, radial position fastest.
    """
    q = round(points.shape[1] ** 0.5)
    own = np.flatnonzero(mesh.layer == j)
    order = np.lexsort((own, mesh.column[own]))
    values = points.reshape(len(own), q, q)[order].reshape(-1, mesh.gap_rows[j], q, q)
    corners = mesh.xy[mesh.elements[own[order], :4]].reshape(-1, mesh.gap_rows[j], 4, 2)
    g, w = leggauss(q)
    x0, x1 = corners[:, 0, 0, 1], corners[:, 0, 3, 1]
    x = (x0 + x1)[:, None] / 2 + (x1 - x0)[:, None] / 2 * g
    r0, r1 = corners[:, :, 0, 0], corners[:, :, 1, 0]
    r = (r0 + r1)[..., None] / 2 + (r1 - r0)[..., None] / 2 * g
    across = (r1 - r0)[..., None] / 2 * w
    gap = across.sum(axis=(1, 2))
    mean = np.einsum("cear,cer->ca", values, across) / gap[:, None]
    carried = np.einsum("cear,cer->ca", values, across * circumference(case, r)) / gap[:, None]
    force = np.sum(carried * w * (x1 - x0)[:, None] / 2)
    return x.ravel(), mean.ravel(), force


def at_stations(case, mesh, j):
    """Places of the stations among the nodes of the bond's middle."""
    x = mesh.xy[mesh.middle[j], 1]
    at = np.abs(x[:, None] - case["stations"]).argmin(axis=0)
    assert np.allclose(x[at], case["stations"], atol=1e-9)
    return at


def middle_force(case, mesh, j, shear):
    """Integral of the shear along the middle of the bond (Simpson on each element's three nodes)."""
    nodes = mesh.middle[j]
    x, r = mesh.xy[nodes, 1], mesh.xy[nodes, 0]
    return simpson(x, shear * circumference(case, r))


def simpson(x, f):
    """Integral over elements of three nodes each."""
    return np.sum((x[2::2] - x[:-2:2]) / 6 * (f[:-2:2] + 4 * f[1:-1:2] + f[2::2]))


def solve(case, finer):
    """Runs one mesh of a case; what it gives at the stations."""
    mesh = build(case, finer)
    frd, dat = ccx.run(ccx.deck(case, mesh))
    stress = ccx.frd_field(frd, "STRESS", len(mesh.xy), 6)
    moved = ccx.frd_field(frd, "DISP", len(mesh.xy), 3)
    blocks = ccx.dat_blocks(dat)
    scale = SECTOR if case["formulation"] == "axisymmetric" else 1.0
    out = {"elements": len(mesh.elements), "bonds": {}, "reactions": {}}
    for heading, rows in blocks:
        found = heading.split()
        if heading.startswith("total force"):
            j = int(found[found.index("set") + 1].removeprefix("START"))
            out["reactions"][j] = -scale * rows[0][1]
    for j, sign in signs(case).items():
        nodes = mesh.middle[j]
        at = at_stations(case, mesh, j)
        # of 27 points, 10 to 18 lie in the middle plane of the sector
        table = next(r for h, r in blocks if "sxx" in h and f"LAYER{j} " in h)
        table = table.reshape(-1, 27, 8)[:, 9:18]
        shear, peel = sign * stress[nodes, 3], stress[nodes, 0]
        xg, mean_shear, carried = gap_average(case, mesh, j, sign * table[:, :, 5])
        _, mean_peel, _ = gap_average(case, mesh, j, table[:, :, 2])
        out["bonds"][j] = {
            "radius": mesh.xy[nodes[0], 0],
            "shear": shear[at],
            "peel": peel[at],
            "outer": {
                "shear": sign * stress[mesh.eighth[j][at], 3],
                "peel": stress[mesh.eighth[j][at], 0],
            },
            "meanShear": CubicSpline(xg, mean_shear)(case["stations"]),
            "meanPeel": CubicSpline(xg, mean_peel)(case["stations"]),
            "carried": carried,
            "middle": middle_force(case, mesh, j, shear),
        }
    end = mesh.faces[case["tube"]]["end"]
    out["endDisplacement"] = np.mean(moved[end, 1])
    return out
