"""Layered shells (docs/method.md, section 10) by finite elements of high degree in one dimension: layered-shells.json."""

import dataclasses
from concurrent.futures import ProcessPoolExecutor

import numpy as np
from lap import row, significant, write
from layered_cases import SEED, elastic, plastic, random, varied
from layered_check import by_solve_bvp
from layered_fe import solve

DIGITS = 12
COARSE, FINE = dict(p=13, ratio=1.5, first=0.04), dict(p=16, ratio=1.3, first=0.02)


def stations(joint):
    """Both ends, the middle, and eleven distances from either end, closing in on it."""
    L = joint.overlap
    near = np.geomspace(min(0.1, L / 50), L / 2, 12)[:-1]
    x = [0.0, *near, L / 2, *(L - near[::-1]), L]
    if L in (25, 30) and len({w.atRoot == w.atMouth for w in joint.walls}) == 1:
        x += [1, 3, 5, 8, 12.5, 17, 20, 23, 24, 24.5] if L == 25 else [1, 3.05, 8.07, 24.94, 26.95, 29, 29.53, 29.8]
    return [significant(v, 9) for v in sorted({round(v, 5) for v in x})]


def sample(s, x):
    """(shear, peel) by bond and station, and force, hoop, moment, transverse shear by wall and station."""
    at = [s.stresses(s.element(v, True), v) for v in x]
    shear, peel, walls = (np.array([a[k][..., 0] for a in at], float) for k in range(3))
    return shear.T, peel.T, walls.transpose(2, 1, 0)  # bonds or quantity, wall, station


def inputs(joint):
    tidy = lambda d: {k: significant(v, 15) if isinstance(v, float) else v for k, v in d.items()}
    some = lambda d, *always: {k: v for k, v in d.items() if v is not None or k in always}
    whole = dataclasses.asdict(joint)
    if joint.kind == "flat-single":
        whole["edgeMoment"] = joint.load * joint.edgeMomentPerLoad
        whole["edgeForce"] = joint.load * joint.edgeForcePerLoad
    del whole["walls"], whole["bonds"]
    out = some(tidy(whole))
    out["walls"] = [some(tidy(dataclasses.asdict(w)), "throughModulus") for w in joint.walls]
    out["bonds"] = [some(tidy({**dataclasses.asdict(b), "poisson": float(b.poisson)})) for b in joint.bonds]
    if joint.flat:
        for part in out["walls"] + out["bonds"]:
            del part["radius"]
    return out


def displacement(s, x, i):
    """u of the mid-surface of wall i."""
    e = s.element(x, True)
    k, y = 3 * i, s.state(e, x)[0]
    return y[k] + s.joint.offset(i, np.array([x]))[0] * y[k + 2]


def elongation(s):
    """u of the tube at L less the mean u of the sleeve at 0."""
    walls = s.joint.walls
    tube = next(i for i, w in enumerate(walls) if w.tube)
    return displacement(s, s.joint.overlap, tube) - np.mean([displacement(s, 0.0, i) for i in range(len(walls)) if i != tube])


def largest(a, b):
    """Largest difference of two arrays over the largest entry, row by row of the first axis."""
    return max(float(np.max(np.abs(p - q)) / max(np.max(np.abs(q)), 1e-300)) for p, q in zip(a, b))


def expected(joint):
    x = stations(joint)
    coarse, fine = solve(joint, **COARSE), solve(joint, **FINE)
    a, b = sample(coarse, x), sample(fine, x)
    shear, peel, (force, hoop, moment, _) = b
    scale = max(np.max(np.abs(force)), abs(joint.load))
    peaks = [(fine.peaks(0, j), fine.peaks(1, j)) for j in range(len(joint.bonds))]
    differ = {
        "shear": largest([a[0]], [b[0]]),
        "peel": largest([a[1]], [b[1]]),
        "walls": largest(a[2][:3], b[2][:3]),
    }
    differ["solveBvp"] = by_solve_bvp(fine)
    layers = [float(2 * joint.turn * joint.pull(j)) for j in range(len(joint.bonds))]
    out = {
        "stations": x,
        "shear": [row(v, DIGITS) for v in shear],
        "peel": [row(v, DIGITS) for v in peel],
        "force": [row(v, DIGITS) for v in force],
        "moment": [row(v, DIGITS) for v in moment],
        "hoop": [row(v, DIGITS) for v in hoop],
        "peaks": [
            {
                "shear": [[significant(v, DIGITS), significant(z, 7)] for v, z in p[0]],
                "peel": [[significant(v, DIGITS), significant(z, 7)] for v, z in p[1]],
            }
            for p in peaks
        ],
        "layerForce": row(layers, DIGITS),
        "carried": row([fine.carried(j) for j in range(len(joint.bonds))], DIGITS),
        "elongation": significant(elongation(fine), DIGITS),
        "equilibrium": float(f"{np.max(np.abs(np.sum(force, axis=0) + sum(layers) - joint.load)) / scale:.1e}"),
        "refinement": {k: float(f"{v:.1e}") for k, v in differ.items()},
    }
    if joint.bonds[0].shearYield is not None:
        out["fronts"] = [[significant(z, 9), j] for z, j in fine.fronts()]
        assert len(coarse.fronts()) == len(fine.fronts())
        out["refinement"]["fronts"] = float(f"{max(abs(p[0] - q[0]) for p, q in zip(coarse.fronts(), fine.fronts())):.1e}")
        out["slip"] = []
        for j in range(len(joint.bonds)):
            ends = []
            for z in (0.0, joint.overlap):
                e = fine.element(z, True)
                rows = joint.slip_rows(np.array([z], np.longdouble))[0]
                ends.append(joint.sign(j) * float(rows[j, 0] @ fine.state(e, z)[0]))
            out["slip"].append(row(ends, DIGITS))
    return out


def at_first_yield(joint):
    """The load at which the first bond yields, its temperature held: the joint is linear until then."""
    free = [dataclasses.replace(b, shearYield=None) for b in joint.bonds]
    cap = joint.bonds[0].shearYield
    one = varied(joint, bonds=free, load=10000.0, temperatureChange=0.0)
    x = np.concatenate([[0], np.geomspace(1e-3, joint.overlap / 2, 200)])
    x = np.unique(np.concatenate([x, joint.overlap - x]))
    per = sample(solve(one), x)[0] / 10000.0
    base = sample(solve(varied(one, load=0.0, temperatureChange=joint.temperatureChange)), x)[0]
    return float(np.min(np.where(per > 0, (cap - base) / np.abs(per), (cap + base) / np.abs(per))))


def case(given):
    """given: name, joint, and the load over that at first yield if it is capped."""
    name, joint, factor = given
    if factor is not None:
        joint = varied(joint, load=significant(factor * at_first_yield(joint), 4))
    return {"name": name, "inputs": inputs(joint), "expected": expected(joint)}


def main():
    cases, worst, capped, other = [], [0.0, 0.0, 0.0], 0.0, 0.0
    jobs = [(name, joint, None) for name, joint in [*elastic(), *random()]] + list(plastic())
    with ProcessPoolExecutor(2) as pool:
        for one, (name, _, factor) in zip(pool.map(case, jobs), jobs):
            cases.append(one)
            d, q = dict(one["expected"]["refinement"]), one["expected"]["equilibrium"]
            print(f"{name}: {d} equilibrium {q}", flush=True)
            other = max(other, d.pop("solveBvp"))
            if factor is None:
                worst = [max(a, b) for a, b in zip(worst, (max(d["shear"], d["peel"]), d["walls"], q))]
            else:
                capped = max(capped, *d.values())
    accuracy = (
        f"Solved twice, the second time with shorter elements of higher degree. Largest difference over the largest value: "
        f"elastic bond stresses {worst[0]:.0e}, forces, moments and hoop forces {worst[1]:.0e}; capped cases {capped:.0e}, "
        f"fronts in mm. scipy.integrate.solve_bvp on equations derived anew agrees in the bond stresses to {other:.0e}. "
        f"Equilibrium of the walls' forces with the load {worst[2]:.0e}."
    )
    about = (
        "Layered shells: shear (positive in tension of the tube) and peel (positive when it opens) of each bond at `stations` "
        "(x in mm from the root), and of each wall, inside to outside, its own whole force 2 pi R N_x (width N_x of a flat "
        "joint), moment M_x and hoop force N_theta per unit length at its mid-surface, without the layers' pull. `layerForce`: "
        "2 pi rho h s of each bond's layer, half with either wall; with it the walls' forces add up to the load. `peaks`: [value, x] of the "
        "largest and of the smallest in the overlap, ends included. `carried`: force through each bond. `elongation`: u of "
        "the tube at L less the mean u of the sleeve's walls at 0. Conventions: reference/README.md."
    )
    write("layered-shells.json", about, "layered-shells.py", SEED, accuracy, cases, stations=False)


if __name__ == "__main__":
    main()
