"""Laminates from three-dimensional elasticity: laminates.json.

No reduced stiffness, no formula of lamination theory. Each ply is a transversely isotropic solid
whose stiffness is a fourth-order tensor, turned as a tensor. The wall: all plies share the strain
e + z k in their plane; the stresses 33, 13, 23 are given; the remaining strains are solved for at Gauss
points through every ply. Forces and moments are the sums over those points, and every constant of the
laminate is found by loading it and reading the answer. First-ply factors are found by bisection on the
criterion, evaluated on the stresses so obtained at both faces of every ply.
"""

import math

import numpy as np
from lap import row, significant, write

SEED = 20261125
PAIRS = [(0, 0), (1, 1), (2, 2), (1, 2), (0, 2), (0, 1)]
PLANE = [(0, 0), (1, 1), (0, 1)]  # x, y, xy
THROUGH = [(2, 2), (0, 2), (1, 2)]  # z, xz, yz
POINTS, WEIGHTS = np.polynomial.legendre.leggauss(3)


def stiffness_tensor(ply):
    """C[i, j, k, l] in ply axes, from the compliance of the solid."""
    E1, E2, G12, G23, nu = (ply[k] for k in ["E1", "E2", "G12", "G23", "nu12"])
    nu23 = E2 / (2 * G23) - 1
    S = np.zeros((6, 6))
    S[0, 0], S[1, 1], S[2, 2] = 1 / E1, 1 / E2, 1 / E2
    S[0, 1] = S[1, 0] = S[0, 2] = S[2, 0] = -nu / E1
    S[1, 2] = S[2, 1] = -nu23 / E2
    S[3, 3], S[4, 4], S[5, 5] = 1 / G23, 1 / G12, 1 / G12
    V = np.linalg.inv(S)
    assert np.linalg.eigvalsh(V).min() > 0, "a solid with negative energy"
    C = np.zeros((3, 3, 3, 3))
    for p, (i, j) in enumerate(PAIRS):
        for q, (k, m) in enumerate(PAIRS):
            for a, b in {(i, j), (j, i)}:
                for c, d in {(k, m), (m, k)}:
                    C[a, b, c, d] = V[p, q]
    return C


def rotation(degrees):
    """Columns: the ply's axes in the laminate's; the fibres at this angle from x towards y."""
    c, s = math.cos(math.radians(degrees)), math.sin(math.radians(degrees))
    return np.array([[c, -s, 0], [s, c, 0], [0, 0, 1.0]])


class Layer:
    def __init__(self, ply, angle, bottom, top):
        R = self.R = rotation(angle)
        self.ply, self.bottom, self.top = ply, bottom, top
        self.C = np.einsum("ai,bj,ck,dl,ijkl->abcd", R, R, R, R, stiffness_tensor(ply))
        self.alpha = R @ np.diag([ply["alpha1"], ply["alpha2"], ply["alpha2"]]) @ R.T

    def state(self, plane, through, dT):
        """Strain and stress tensors for engineering strains (x, y, xy) and stresses (z, xz, yz)."""

        def stress(e):
            return np.einsum("ijkl,kl->ij", self.C, e - self.alpha * dT)

        def tensor(where, values):
            e = np.zeros((3, 3))
            for (i, j), v in zip(where, values):
                e[i, j] = e[j, i] = v if i == j else v / 2
            return e

        base = tensor(PLANE, plane)
        s0 = stress(base)
        J = np.zeros((3, 3))
        for n in range(3):
            unit = tensor([THROUGH[n]], [1.0])
            s = np.einsum("ijkl,kl->ij", self.C, unit)
            J[:, n] = [s[i, j] for i, j in THROUGH]
        rest = np.linalg.solve(J, np.array(through) - [s0[i, j] for i, j in THROUGH])
        e = base + tensor(THROUGH, rest)
        return e, stress(e), rest

    def in_ply_axes(self, tensor):
        return self.R.T @ tensor @ self.R


class Wall:
    def __init__(self, ply, plies):
        t = sum(h for _, h in plies)
        z, self.layers = -t / 2, []
        for angle, h in plies:
            self.layers.append(Layer(ply, angle, z, z + h))
            z += h
        self.t = t
        self.ABD = np.column_stack([self.resultants(u, (0, 0, 0), 0)[0] for u in np.eye(6)])
        self.thermal = -self.resultants(np.zeros(6), (0, 0, 0), 1)[0]

    def resultants(self, ek, through, dT):
        """N and M (6), and the mean strains z, xz, yz."""
        NM, mean = np.zeros(6), np.zeros(3)
        for layer in self.layers:
            half, mid = (layer.top - layer.bottom) / 2, (layer.top + layer.bottom) / 2
            for p, w in zip(POINTS, WEIGHTS):
                z = mid + half * p
                _, s, rest = layer.state(ek[:3] + z * ek[3:], through, dT)
                v = np.array([s[i, j] for i, j in PLANE]) * w * half
                NM[:3] += v
                NM[3:] += z * v
                mean += rest * w * half
        return NM, mean / self.t

    def free(self, NM, dT=0.0):
        return np.linalg.solve(self.ABD, np.asarray(NM) + self.thermal * dT)

    def without_curvature(self, N, through=(0, 0, 0), dT=0.0):
        """Strains (x, y, xy) and mean (z, xz, yz) at the force N, no curvature."""
        held = self.resultants(np.zeros(6), through, dT)[0][:3]
        e = np.linalg.solve(self.ABD[:3, :3], np.asarray(N) - held)
        return e, self.resultants(np.r_[e, 0, 0, 0], through, dT)[1]


def constants(wall):
    t, A, B, D = wall.t, wall.ABD[:3, :3], wall.ABD[:3, 3:], wall.ABD[3:, 3:]
    x, _ = wall.without_curvature([t, 0, 0])
    y, _ = wall.without_curvature([0, t, 0])
    s, _ = wall.without_curvature([0, 0, t])
    heat, heat_through = wall.without_curvature([0, 0, 0], dT=1.0)
    _, press = wall.without_curvature([0, 0, 0], through=(1, 0, 0))
    _, axial = wall.without_curvature([0, 0, 0], through=(0, 1, 0))
    _, hoop = wall.without_curvature([0, 0, 0], through=(0, 0, 1))
    # moment per curvature x alone (other curvatures held), the middle surface free: unknown strains
    held = wall.ABD[:, 3]
    e = np.linalg.solve(A, -held[:3])
    reduced = held[3] + B[:, 0] @ e
    return {
        "axialModulus": 1 / x[0],
        "hoopModulus": 1 / y[1],
        "shearModulus": 1 / s[2],
        "poisson": -x[1] / x[0],
        "axialExpansion": heat[0],
        "hoopExpansion": heat[1],
        "shearExpansion": heat[2],
        "throughModulus": 1 / press[0],
        "throughExpansion": heat_through[0],
        "throughShearModulus": 1 / axial[1],
        "hoopThroughShearModulus": 1 / hoop[2],
        "bendingStiffness": D[0, 0],
        "reducedBendingStiffness": reduced,
    }


def tsai_wu(ply, s):
    Xt, Xc, Yt, Yc, S = (ply[k] for k in ["Xt", "Xc", "Yt", "Yc", "S"])
    s1, s2, t12 = s[0, 0], s[1, 1], s[0, 1]
    return (
        s1 / Xt - s1 / Xc + s2 / Yt - s2 / Yc + s1**2 / (Xt * Xc) + s2**2 / (Yt * Yc) + (t12 / S) ** 2
        - s1 * s2 / math.sqrt(Xt * Xc * Yt * Yc)
    )


def strains_used(ply, e, dT):
    e1, e2 = e[0, 0] - ply["alpha1"] * dT, e[1, 1] - ply["alpha2"] * dT
    g = 2 * e[0, 1]
    return {
        "fibre tension": e1 * ply["E1"] / ply["Xt"],
        "fibre compression": -e1 * ply["E1"] / ply["Xc"],
        "transverse tension": e2 * ply["E2"] / ply["Yt"],
        "transverse compression": -e2 * ply["E2"] / ply["Yc"],
        "in-plane shear": abs(g) * ply["G12"] / ply["S"],
    }


def uses(wall, fixed, dT, per, factor):
    """Of each ply and face: the Tsai-Wu index and the shares of the strains."""
    for n, layer in enumerate(wall.layers):
        for face, z in [("inner", layer.bottom), ("outer", layer.top)]:
            ek = fixed + factor * per
            e, s, _ = layer.state(ek[:3] + z * ek[3:], (0, 0, 0), dT)
            e, s = layer.in_ply_axes(e), layer.in_ply_axes(s)
            yield n, face, tsai_wu(layer.ply, s), strains_used(layer.ply, e, dT)


def worst(wall, fixed, dT, per, factor, criterion):
    best = (-math.inf, None)
    for n, face, index, shares in uses(wall, fixed, dT, per, factor):
        if criterion == "tsaiWu":
            here = (index, {"ply": n, "face": face})
        else:
            name = max(shares, key=shares.get)
            here = (shares[name], {"ply": n, "face": face, "component": name})
        if here[0] > best[0] * (1 + 1e-9) or best[1] is None:
            best = here
    return best


def first_ply(wall, fixed, dT, per, criterion):
    def used(f):
        return worst(wall, fixed, dT, per, f, criterion)

    if used(0.0)[0] >= 1:
        return 0.0, used(0.0)[1]
    high = 1e-3
    while used(high)[0] < 1:
        high *= 2
        if high > 1e12:
            return None, None
    low = 0.0
    for _ in range(200):
        mid = (low + high) / 2
        if mid in (low, high):
            break
        low, high = (mid, high) if used(mid)[0] < 1 else (low, mid)
    return high, used(high)[1]


def random_ply(rng):
    E1 = rng.uniform(35_000, 300_000)
    E2 = rng.uniform(5000, 15_000)
    G23 = E2 / (2 * (1 + rng.uniform(0.2, 0.6)))
    return {
        "E1": E1,
        "E2": E2,
        "G12": rng.uniform(2500, 7000),
        "nu12": rng.uniform(0.2, 0.38),
        "G23": G23,
        "alpha1": rng.uniform(-1e-6, 8e-6),
        "alpha2": rng.uniform(18e-6, 40e-6),
        "Xt": rng.uniform(800, 2800),
        "Xc": rng.uniform(600, 1600),
        "Yt": rng.uniform(30, 80),
        "Yc": rng.uniform(120, 260),
        "S": rng.uniform(50, 120),
    }


STACKS = [
    ("one direction", [0.0]),
    ("one direction, off axis", [30.0, 30.0]),
    ("cross-ply", [0.0, 90.0, 90.0, 0.0]),
    ("unsymmetric cross-ply", [0.0, 90.0]),
    ("angle-ply", [55.0, -55.0, -55.0, 55.0]),
    ("unsymmetric angle-ply", [45.0, -45.0]),
    ("quasi-isotropic", [0.0, 45.0, -45.0, 90.0, 90.0, -45.0, 45.0, 0.0]),
    ("tube wall", [45.0, -45.0, 0.0, 0.0, 0.0, 90.0, 0.0, 0.0, 0.0, -45.0, 45.0]),
    ("unbalanced", [0.0, 20.0, 20.0, 0.0]),
    ("three directions", [0.0, 60.0, -60.0]),
]


def make_case(rng, name, angles, dT, wall_is="free", unit=1.0):
    ply = random_ply(rng)
    plies = [(a, significant(rng.uniform(0.1, 0.4), 4)) for a in angles]
    ply = {k: significant(v, 6) for k, v in ply.items()}
    if name.endswith("equal plies"):
        plies = [(a, 0.2) for a in angles]
    wall = Wall(ply, plies)
    if wall_is == "free":
        fixed = wall.free(np.zeros(6), dT)
    elif wall_is == "tube":
        fixed = np.r_[wall.without_curvature([0, 0, 0], dT=dT)[0], 0, 0, 0]
    else:
        fixed = np.zeros(6)
    load = np.r_[rng.uniform(-100, 100, 3), rng.uniform(-10, 10, 3)] * wall.t * unit
    per = wall.free(load)
    fixed, per = np.array(row(fixed, 12)), np.array(row(per, 12))
    expected = {
        "a": row(wall.ABD[:3, :3], 11),
        "b": row(wall.ABD[:3, 3:], 11, scaled=False),
        "d": row(wall.ABD[3:, 3:], 11),
        "thermalForce": row(wall.thermal[:3], 11),
        "thermalMoment": row(wall.thermal[3:], 11, scaled=False),
        "constants": {k: significant(v, 11) for k, v in constants(wall).items()},
        "freeStrain": row(wall.free(load, dT)[:3], 11),
        "freeCurvature": row(wall.free(load, dT)[3:], 11, scaled=False),
    }
    for criterion in ["tsaiWu", "maximumStrain"]:
        factor, place = first_ply(wall, fixed, dT, per, criterion)
        expected[criterion] = {"factor": None if factor is None else significant(factor, 11), "place": place}
    return {
        "name": name,
        "inputs": {
            "ply": ply,
            "plies": [{"angle": a, "thickness": h} for a, h in plies],
            "deltaT": dT,
            "force": row(load[:3], 12),
            "moment": row(load[3:], 12),
            "fixed": {"strain": list(fixed[:3]), "curvature": list(fixed[3:])},
            "perFactor": {"strain": list(per[:3]), "curvature": list(per[3:])},
        },
        "expected": expected,
    }


def main():
    rng = np.random.default_rng(SEED)
    cases = []
    for name, angles in STACKS:
        for wall_is, dT in [("free", -100.0), ("tube", -60.0)]:
            cases.append(make_case(rng, f"{name}, {wall_is}, {dT:g} K", angles, dT, wall_is))
    for n in range(14):
        angles = [significant(a, 4) for a in rng.uniform(-90, 90, rng.integers(2, 10))]
        dT = significant(rng.uniform(-120, 40), 4)
        cases.append(make_case(rng, f"random {n + 1}", angles, dT, ["free", "tube"][n % 2]))
    quasi = STACKS[6][1]
    cases.append(make_case(rng, "symmetric, equal plies", quasi, -100.0, "free"))
    cases.append(make_case(rng, "too cold: temperature alone", quasi, -2000.0, "free"))
    cases.append(make_case(rng, "held wall, heated until it fails", quasi, 3000.0, "held"))
    cases.append(make_case(rng, "no load", quasi, -50.0, "free", unit=0.0))
    write(
        "laminates.json",
        "Laminates of one ply material: ABD, thermal forces per kelvin, engineering constants in the plane "
        "(no curvature) and through the thickness, answers of the free wall, first-ply factors (null: never). "
        "Matrices row by row; plies from the inside (z < 0) to the outside; strain x, y, engineering xy.",
        "laminates.py",
        SEED,
        "Dense linear solves and bisection to the last bit: eleven digits are printed.",
        cases,
        stations=False,
    )


if __name__ == "__main__":
    main()
