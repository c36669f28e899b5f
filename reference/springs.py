"""The joint as springs: springs.json. Pull, bending and torsion by displacements, solved by scipy's solve_bvp.

Nothing of the shear lag's usual forms is used: each wall i has a movement u_i along (or a rotation),
(K_i u_i')' = -/+ sum of bonds g_j (u_+ - u_-), with the walls' ends free, held (u = 0 at the root of the
sleeve's walls) or pulled by a unit load (the tube at the mouth). The spring is 1 over the tube's movement
at the mouth. K and g come from the joint's radii by integrals of the section, taper and all.
"""

import numpy as np
from lap import significant, write
from scipy.integrate import quad, solve_bvp

ADHESIVE = 876.0


def iso(modulus, poisson):
    return {"modulus": modulus, "shearModulus": significant(modulus / (2 * (1 + poisson)), 12), "throughShearModulus": significant(modulus / (2 * (1 + poisson)), 12)}


TITANIUM = iso(114000.0, 0.34)
CARBON = {"modulus": 70000.0, "shearModulus": 15000.0, "throughShearModulus": 4000.0}

CASES = [
    ("socket, uniform", {"tube": [14.4, 1.6], "socket": [1.2, 1.2], "outerGap": 0.2, "overlap": 30.0}),
    ("socket, uniform, long", {"tube": [14.4, 1.6], "socket": [0.8, 0.8], "outerGap": 0.2, "overlap": 120.0}),
    ("spigot, uniform, short", {"tube": [11.0, 1.5], "spigot": [1.5, 1.5], "innerGap": 0.2, "overlap": 6.0}),
    ("double lap, equal gaps", {"tube": [18.0, 2.0], "spigot": [1.2, 1.2], "socket": [1.2, 1.2], "innerGap": 0.2, "outerGap": 0.2, "overlap": 45.0}),
    ("double lap, unequal gaps and walls", {"tube": [13.2, 2.0], "spigot": [0.8, 0.8], "socket": [1.5, 1.5], "innerGap": 0.15, "outerGap": 0.45, "overlap": 25.0}),
    ("socket, tapered", {"tube": [14.4, 1.6], "socket": [1.6, 0.5], "outerGap": 0.2, "overlap": 30.0}),
    ("double lap, both tapered, unequal gaps", {"tube": [18.0, 2.0], "spigot": [1.8, 0.6], "socket": [2.0, 0.5], "innerGap": 0.25, "outerGap": 0.15, "overlap": 40.0}),
    ("flat double lap, unequal gaps", {"width": 25.0, "strip": 3.0, "straps": [[1.2, 1.2], [1.6, 1.6]], "gaps": [0.15, 0.3], "overlap": 40.0}),
    ("flat single lap", {"width": 25.0, "strip": 3.0, "straps": [[2.0, 2.0]], "gaps": [0.2], "overlap": 30.0}),
]


def section(kind, lower, upper):
    """Integral over the ring's radius of what the kind weighs an area by."""
    weight = {"axial": lambda r: 2 * np.pi * r, "bending": lambda r: np.pi * r**3, "torsion": lambda r: 2 * np.pi * r**3}[kind]
    return quad(weight, lower, upper, epsabs=0, epsrel=1e-12)[0]


def tubular(case, kind):
    """Stiffness K_i(x) of tube and sleeve walls, couplings g_j."""
    modulus = (lambda m: m["shearModulus"]) if kind == "torsion" else (lambda m: m["modulus"])
    inner, wall = case["tube"]
    outer = inner + wall
    walls = [lambda x: modulus(CARBON) * section(kind, inner, outer)]
    couplings = []
    shared = 1 / 6 if "spigot" in case and "socket" in case else 1 / 3
    for name, gap in (("spigot", "innerGap"), ("socket", "outerGap")):
        if name not in case:
            continue
        root, mouth = case[name]
        h = case[gap]

        def stiffness(x, name=name, root=root, mouth=mouth, h=h):
            t = root + (mouth - root) * x / case["overlap"]
            ring = (inner - h - t, inner - h) if name == "spigot" else (outer + h, outer + h + t)
            return modulus(TITANIUM) * section(kind, *ring)

        walls.append(stiffness)
        rho = inner - h / 2 if name == "spigot" else outer + h / 2
        k = 1 / (h / ADHESIVE + shared * wall / CARBON["throughShearModulus"] + (root + mouth) / 2 / 3 / TITANIUM["throughShearModulus"])
        # Shear k*slip around the ring: slip = u, or rho*phi*cos, or rho*phi; its work-conjugate per length.
        lever = {"axial": lambda a: 1.0, "bending": lambda a: (rho * np.cos(a)) ** 2, "torsion": lambda a: rho**2}[kind]
        couplings.append(k * quad(lambda a: rho * lever(a), 0, 2 * np.pi, epsabs=0, epsrel=1e-12)[0])
    return walls, couplings


def flat(case, kind):
    b = case["width"]
    over = 1.0 if kind == "axial" else quad(lambda y: y * y, -b / 2, b / 2)[0] / b
    walls = [lambda x: CARBON["modulus"] * b * case["strip"] * over]
    shared = 1 / 6 if len(case["straps"]) == 2 else 1 / 3
    couplings = []
    for (root, mouth), h in zip(case["straps"], case["gaps"]):
        walls.append(lambda x, root=root, mouth=mouth: TITANIUM["modulus"] * b * (root + (mouth - root) * x / case["overlap"]) * over)
        k = 1 / (h / ADHESIVE + shared * case["strip"] / CARBON["throughShearModulus"] + (root + mouth) / 2 / 3 / TITANIUM["throughShearModulus"])
        couplings.append(k * b * over)
    return walls, couplings


def solve(case, kind):
    walls, couplings = (flat if "straps" in case else tubular)(case, kind)
    L = case["overlap"]
    n = len(walls)
    # Tables of K over a fine grid of Chebyshev points, so that quad is not called in the solver.
    z = 0.5 - 0.5 * np.cos(np.pi * (np.arange(24) + 0.5) / 24)
    tables = [np.polynomial.chebyshev.Chebyshev.fit(z, [w(L * s) for s in z], 8, domain=[0, 1]) for w in walls]
    scale = L / float(tables[0](0.5))  # movement of the bare tube

    def rhs(s, y):
        u, f = y[:n], y[n:]
        out = np.empty_like(y)
        for i in range(n):
            out[i] = f[i] * (L / scale) / tables[i](s)
        pull = [couplings[j] * L * scale * (u[0] - u[j + 1]) for j in range(n - 1)]
        out[n] = sum(pull)
        for j in range(n - 1):
            out[n + 1 + j] = -pull[j]
        return out

    def ends(a, b):
        return np.array([a[n], b[n] - 1.0, *a[1:n], *b[n + 1 :]])

    mesh = np.unique(np.concatenate([np.linspace(0, 1, 201), np.geomspace(1e-4, 0.5, 60), 1 - np.geomspace(1e-4, 0.5, 60)]))
    guess = np.zeros((2 * n, mesh.size))
    guess[n] = mesh
    found = [solve_bvp(rhs, ends, mesh, guess, tol=tol, max_nodes=40000) for tol in (1e-6, 1e-9)]
    assert all(f.success for f in found), [f.message for f in found]
    give = [f.sol(1.0)[0] * scale for f in found]
    return 1 / give[1], abs(give[1] / give[0] - 1)


def main():
    cases, worst = [], 0.0
    for name, case in CASES:
        kinds = ("axial", "bending") if "straps" in case else ("axial", "bending", "torsion")
        expected = {}
        for kind in kinds:
            stiffness, change = solve(case, kind)
            worst = max(worst, change)
            expected[kind] = significant(stiffness)
            print(name, kind, stiffness, change)
        cases.append({"name": name, "inputs": case, "expected": expected})
    write(
        "springs.json",
        "Springs of joints from the root's metal to the mouth: axial N/mm, bending and torsion N mm per radian (flat: bending in the strip's plane). "
        "tube: inner radius and wall; spigot, socket, straps: wall at the root and at the mouth, linear between, growing away from the bond. "
        "Carbon tube and strip, titanium walls, adhesive G = 876 MPa; the walls' own shear in the bond's flexibility as in section 3 of the method.",
        "springs.py",
        None,
        f"From tolerance 1e-6 to 1e-9 the stiffnesses change by {worst:.1e} at most.",
        cases,
        stations=False,
        materials={"tube": CARBON, "walls": TITANIUM, "adhesiveShearModulus": ADHESIVE},
    )


if __name__ == "__main__":
    main()
