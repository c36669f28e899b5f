"""Flat single laps by boundary-value problems: both ends of the overlap, and the stress in the bond.

Nothing here uses the closed forms of the method.

`cases`: two long run-outs and an overlap that bends as one plate, deflections about the line of the
load, D w'' = P w in each part, steps of the axis and equal slopes where they meet. Three parts side by
side on one coordinate, six first-order equations.

`stresses`: two beams and the adhesive between them, twelve first-order equations (u, N, w, slope, M, V
of each): N' = -+tau, M' = V - tau t/2, V' = -+sigma, tau and sigma from the relative displacements.
"""

import os
import sys

import numpy as np
from scipy.integrate import solve_bvp

sys.path.insert(0, os.path.dirname(os.path.abspath(__file__)))
from lap import STATIONS, row, significant, write

TOL = 1e-10


def graded(ends, n=60):
    """Stations on 0..1, close to both ends: ends is the share of the length that the finest part takes."""
    z = np.concatenate([[0.0], np.geomspace(ends / 100, 0.5, n)])
    return np.unique(np.concatenate([z, 1 - z]))


def edge_factors(inputs):
    P, L = inputs["load"], inputs["overlap"]
    A, D, t = ([inputs[end][key] for end in ("root", "mouth")] for key in ("membrane", "bending", "thickness"))
    # the neutral axis of the two plates as one, and the stiffness about it by summing over the parts
    apart = (t[0] + t[1]) / 2
    axis = A[1] * apart / (A[0] + A[1])  # from the root's adherend
    pair = D[0] + A[0] * axis**2 + D[1] + A[1] * (apart - axis) ** 2
    whole = apart + inputs["gap"]
    step = [axis * whole / apart, (apart - axis) * whole / apart]
    decay = [np.sqrt(P / d) for d in D]
    arm = [40 / r for r in decay]
    # z = 0..1; root run-out from its far end, overlap, mouth run-out from the edge outwards
    length = [arm[0], L, arm[1]]
    bend = [P / D[0], P / pair, P / D[1]]
    size = whole

    def fun(z, y):
        # y = w and length * w', both over size, part by part
        out = np.empty_like(y)
        for i in range(3):
            out[2 * i] = y[2 * i + 1]
            out[2 * i + 1] = length[i] ** 2 * bend[i] * y[2 * i]
        return out

    def ends(a, b):
        slope = lambda y, i: y[2 * i + 1] / length[i]
        return np.array(
            [
                a[0],
                b[0] - step[0] / size - a[2],
                (slope(b, 0) - slope(a, 1)) * L,
                b[2] - step[1] / size - a[4],
                (slope(b, 1) - slope(a, 2)) * L,
                b[4],
            ]
        )

    z = graded(0.02, 150)
    r = solve_bvp(fun, ends, z, np.zeros((6, z.size)), tol=TOL, max_nodes=200000)
    assert r.success, r.message
    root, mouth = r.sol(1.0)[0] * size, -r.sol(0.0)[4] * size
    moments = [P * root, P * mouth]
    return {
        "rootMoment": significant(moments[0]),
        "mouthMoment": significant(moments[1]),
        "transverseForce": significant((P * whole - sum(moments)) / L),
    }, float(np.max(r.rms_residuals))


def stresses(inputs):
    P, L, t, E = (inputs[k] for k in ("load", "overlap", "thickness", "modulus"))
    a = inputs["adhesive"]
    ta, Ga, Ea = a["thickness"], a["shearModulus"], a["modulus"]
    M0, V0 = inputs["factor"] * P * t / 2, inputs["transverseForce"]
    A, D = E * t, E * t**3 / 12
    # x to the right, w up; M = D w'' puts the lower face in tension; V' is the load that acts upwards
    u0, w0 = P * ta / (Ga * t) + P * L / A, P * ta / (Ea * t) + P * t * L**2 / (8 * D)
    size = np.array([u0, P, w0, w0 / L, P * t, P] * 2)

    def bond(y):
        ua, _, wa, fa, _, _, ub, _, wb, fb, _, _ = y
        # slip of the lower beam's upper face against the upper beam's lower one; opening
        tau = Ga / ta * ((ub - t / 2 * fb) - (ua + t / 2 * fa))
        return tau, Ea / ta * (wa - wb)

    def fun(z, y):
        y = y * size[:, None]
        tau, sigma = bond(y)
        _, Na, _, fa, Ma, Va, _, Nb, _, fb, Mb, Vb = y
        upper = [Na / A, -tau, fa, Ma / D, Va - tau * t / 2, -sigma]
        lower = [Nb / A, tau, fb, Mb / D, Vb - tau * t / 2, sigma]
        return np.array(upper + lower) * L / size[:, None]

    def ends(ya, yb):
        # the upper beam is pulled at x = 0 and free at L, the lower free at 0; its loads at L follow
        # from balance, so its displacements are held there instead
        loaded = [ya[1] - 1, ya[4] - M0 / (P * t), ya[5] - V0 / P]
        return np.array([*loaded, *yb[[1, 4, 5]], *ya[[7, 10, 11]], *yb[[6, 8, 9]]])

    z = graded(0.05, 100)
    r = solve_bvp(fun, ends, z, np.zeros((12, z.size)), tol=TOL, max_nodes=100000)
    assert r.success, r.message
    far = r.sol(1.0)
    assert abs(far[7] - 1) < 1e-8 and abs(far[10] + M0 / (P * t)) < 1e-8 and abs(far[11] - V0 / P) < 1e-8
    tau, sigma = bond(r.sol(np.array(STATIONS)) * size[:, None])
    return {"shear": row(tau), "peel": row(sigma)}, float(np.max(r.rms_residuals))


def wall(thickness, modulus, poisson, outer=1.0):
    """Plate in plane strain; outer < 1: softer at its faces than in its middle, as a laminate may be."""
    membrane = modulus * thickness / (1 - poisson**2)
    return {
        "thickness": thickness,
        "membrane": significant(membrane),
        "bending": significant(outer * membrane * thickness**2 / 12),
    }


EDGES = [
    ("equal, 50 N/mm", 50, 12.5, 0.0, wall(1.62, 70e3, 0.34), None),
    ("equal, 250 N/mm", 250, 12.5, 0.0, wall(1.62, 70e3, 0.34), None),
    ("equal, long and thin", 400, 80.0, 0.3, wall(1.0, 110e3, 0.3), None),
    ("equal laminates, soft faces", 300, 30.0, 0.2, wall(2.0, 60e3, 0.1, 0.55), None),
    ("thin at the root", 150, 20.0, 0.2, wall(1.0, 70e3, 0.34), wall(3.0, 70e3, 0.34)),
    ("thin at the mouth", 150, 20.0, 0.2, wall(3.0, 70e3, 0.34), wall(1.0, 70e3, 0.34)),
    ("two materials", 500, 40.0, 0.25, wall(2.0, 114e3, 0.34), wall(2.4, 45e3, 0.1, 0.7)),
    ("two materials, small load", 0.5, 25.0, 0.25, wall(2.0, 114e3, 0.34), wall(2.4, 45e3, 0.1, 0.7)),
]


def glue(shear, modulus, thickness):
    return {"shearModulus": shear, "modulus": modulus, "thickness": thickness}


STRESSES = [
    ("aluminium, 50 N/mm", 50, 12.5, 1.62, 70e3, 0.34, glue(650, 1850, 0.2)),
    ("aluminium, 150 N/mm", 150, 12.5, 1.62, 70e3, 0.34, glue(650, 1850, 0.2)),
    ("aluminium, 250 N/mm", 250, 12.5, 1.62, 70e3, 0.34, glue(650, 1850, 0.2)),
    ("short overlap of thick walls", 80, 4.0, 5.0, 200e3, 0.3, glue(900, 2500, 0.3)),
    ("long overlap", 300, 60.0, 1.5, 110e3, 0.3, glue(800, 2400, 0.15)),
    ("soft thick adhesive", 60, 25.0, 3.0, 70e3, 0.33, glue(20, 70, 1.5)),
]


def main():
    cases, pairs, worst = [], [], 0.0
    for name, load, overlap, gap, root, mouth in EDGES:
        inputs = {"load": load, "overlap": overlap, "gap": gap, "root": root, "mouth": mouth or root}
        expected, residual = edge_factors(inputs)
        worst = max(worst, residual)
        cases.append({"name": name, "inputs": inputs, "expected": expected})
    for name, load, overlap, t, E, nu, adhesive in STRESSES:
        one = wall(t, E, nu)
        edge, residual = edge_factors({"load": load, "overlap": overlap, "gap": 0.0, "root": one, "mouth": one})
        factor = significant(edge["rootMoment"] / (load * t / 2))
        inputs = {
            "load": load,
            "overlap": overlap,
            "thickness": t,
            "modulus": E,
            "adhesive": adhesive,
            "factor": factor,
            "transverseForce": (1 - factor) * load * t / overlap,
        }
        expected, other = stresses(inputs)
        worst = max(worst, residual, other)
        pairs.append({"name": name, "inputs": inputs, "expected": expected})
    write(
        "flat-lap.json",
        "Flat single laps. `cases`: moments and transverse force, per unit width, at the ends of an overlap that "
        "bends as one plate between long run-outs; membrane and bending are stiffnesses per unit width. `stresses`: shear and peel at "
        "the stations between two equal beams loaded by factor * P t / 2 and transverseForce.",
        "flat_lap.py",
        None,
        f"scipy's solve_bvp at tol {TOL:.0e}, largest rms residual {worst:.0e}; the loads that the held end of the "
        "second beam returns agree with the balance of the overlap to 1e-8.",
        cases,
        stresses=pairs,
    )


if __name__ == "__main__":
    main()
