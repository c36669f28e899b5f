"""Elastic shear lag, one and two bonds: shear-lag-elastic.json.

Reference: transition matrix in arbitrary precision (transition.py). Each case is also solved in
double precision by scipy.integrate.solve_bvp and by the collocation of bvp.py, which know nothing
of it; the largest differences are printed into the file.
"""

import numpy as np
import transition
from lap import STATIONS, Lap, row, significant, write
from overlap import solve
from scipy.integrate import solve_bvp

SEED = 20251
rng = np.random.default_rng(SEED)


def sig(v, d=4):
    return significant(v, d)


def pick(lo, hi):
    return float(np.exp(rng.uniform(np.log(lo), np.log(hi))))


def uniform(lo, hi):
    return float(rng.uniform(lo, hi))


def bond(width, lever, stiffness):
    return {
        "width": sig(width),
        "lever": sig(lever),
        "stiffness": significant(stiffness, 6),
        "shearYield": 30.0,
        "slipAtFailure": 1.0,
    }


def wall(stiffness, strain=0.0):
    return {"stiffness": sig(stiffness), "thermalStrain": sig(strain)}


def set_rate(inputs, target, slowest=False):
    """Bond stiffnesses multiplied so that the (slowest) rate times the length is the target."""
    rates = Lap.from_inputs(inputs).rates()
    rate = min(rates) if slowest else max(rates)
    ratio = (target / (rate * inputs["length"])) ** 2
    for b in inputs["bonds"]:
        b["stiffness"] = significant(b["stiffness"] * ratio, 6)
    return inputs


def one(target, thermal=True, lever=True, load=None):
    inputs = {
        "length": sig(uniform(5, 90)),
        "load": sig(pick(200, 5e4) * (1 if rng.random() < 0.6 else -1)) if load is None else load,
        "tube": wall(pick(5e5, 2e7), uniform(-1.5e-3, 1.5e-3) if thermal else 0.0),
        "outers": [wall(pick(5e5, 2e7), uniform(-2e-3, 1e-3) if thermal else 0.0)],
        "bonds": [bond(pick(15, 300), uniform(0.8, 1.25) if lever else 1.0, 1000.0)],
    }
    return set_rate(inputs, target)


def two(target, kind="general"):
    k1, k2 = pick(5e5, 2e7), pick(5e5, 2e7)
    c1, c2 = pick(30, 150), pick(30, 200)
    a1, a2 = uniform(0.8, 0.99), uniform(1.01, 1.2)
    s1, s2 = pick(500, 3000), pick(500, 3000)
    e1, e2 = uniform(-2e-3, 1e-3), uniform(-2e-3, 1e-3)
    kt = pick(5e5, 2e7)
    if kind == "near-symmetric":
        k2, c2, a2, s2, e2 = k1 * 1.001, c1 * 0.999, a1 * 1.0005, s1 * 1.002, e1 * 1.01
        a1, a2 = sig(a1), sig(a2) + 1e-4
    if kind == "symmetric":
        a1 = 1.0
        k2, c2, a2, s2, e2 = k1, c1, a1, s1, e1
    if kind == "rigid-middle":
        kt = pick(1e11, 1e13)
    if kind == "rigid-outers":
        k1, k2 = pick(1e10, 1e12), pick(1e10, 1e12)
    if kind == "weak-bond":
        s2 = s1 * pick(1e-4, 1e-3)
    thermal = kind not in ("no-thermal", "symmetric-cold")
    inputs = {
        "length": sig(uniform(5, 60)),
        "load": 0.0 if kind == "thermal-only" else sig(pick(500, 6e4) * (1 if rng.random() < 0.6 else -1)),
        "tube": wall(kt, uniform(-1.5e-3, 1.5e-3) if thermal else 0.0),
        "outers": [wall(k1, e1 if thermal else 0.0), wall(k2, e2 if thermal else 0.0)],
        "bonds": [bond(c1, a1, s1), bond(c2, a2, s2)],
    }
    return set_rate(inputs, target)


def by_solve_bvp(lap, tol):
    """scipy's collocation; slips and forces scaled to order one. Returns y(x) and the residual."""
    B, L = lap.B, lap.length
    guess = solve(lap, 1.0, p=4)
    grid = np.linspace(0, 1, max(41, int(12 * np.max(lap.rates()) * L) + 1))
    y0 = guess(grid * L).T
    size = np.maximum(np.max(np.abs(y0), axis=1), 1e-300)
    size[:B], size[B:] = np.max(size[:B]), np.max(size[B:])
    t, o = lap.flexibilities(np.array(0.0))
    a = lap.lever[0]

    def fun(_z, y):
        s, N = y[:B] * size[:B, None], y[B:] * size[B:, None]
        ds = a[:, None] * ((lap.load[0] - N.sum(axis=0)) * t[0] - N * o[0][:, None]) + lap.strain[0][:, None]
        dN = -(a * lap.width * lap.k)[:, None] * s
        return L * np.vstack([ds, dN]) / size[:, None]

    def ends(ya, yb):
        out = [yb[B + j] for j in range(B)]
        out.append((np.sum(ya[B:] * size[B:]) - lap.load[0]) / size[B])
        if B == 2:
            out.append(ya[0] / a[0] - ya[1] / a[1])
        return np.array(out)

    r = solve_bvp(fun, ends, grid, y0 / size[:, None], tol=tol, max_nodes=60000)
    return (lambda z: (r.sol(z) * size[:, None]).T), float(np.max(r.rms_residuals)), r.success


def main():
    cases = []
    worst = {"bvp": 0.0, "collocation": 0.0, "residual": 0.0}
    problems = []
    targets = [0.05, 0.08, 0.12, 0.2, 0.3, 0.45, 0.6, 0.8, 1, 1.3, 1.7, 2.2, 2.8, 3.5, 4.5, 5.5, 7, 9, 11, 13, 16, 20, 25, 32, 40]
    for i, t in enumerate(targets):
        problems.append((f"one bond {i + 1}, omega L about {t}", one(t)))
    problems.append(("one bond, no thermal, lever 1", one(5.0, False, False)))
    problems.append(("one bond, thermal only", one(3.0, load=0.0)))
    problems.append(("one bond, thermal only, long", one(30.0, load=0.0)))
    n = 0
    for t in (0.1, 0.3, 0.6, 1, 1.5, 2, 3, 4.5, 6, 8, 10, 13, 17, 22, 30, 40):
        n += 1
        problems.append((f"two bonds {n}, largest omega L about {t}", two(t)))
    for kind in ("near-symmetric", "symmetric", "rigid-middle", "rigid-outers", "weak-bond", "thermal-only", "no-thermal"):
        for t in (2.5, 15):
            problems.append((f"two bonds, {kind}, largest omega L about {t}", two(t, kind)))
    extremes = []
    for t in (1e-6, 1e-3, 1e3, 1e4):
        extremes.append((f"extreme, one bond, omega L about {t:g}", one(t)))
    for t in (1e-6, 1e-3, 1e3, 1e4):
        extremes.append((f"extreme, two bonds, largest omega L about {t:g}", two(t)))
    for name, inputs in problems + extremes:
        lap = Lap.from_inputs(inputs)
        lap.tau_p = lap.tau_p * 1e9  # elastic throughout
        lap.s_e = lap.tau_p / lap.k
        exact = transition.solve(lap, STATIONS)
        B = lap.B
        tau = [[exact[i][j] * transition.mp.mpf(float(lap.k[j])) for i in range(len(STATIONS))] for j in range(B)]
        if not name.startswith("extreme"):
            flat = np.array([[float(v) for v in y] for y in exact])
            size = np.concatenate([np.full(B, np.abs(flat[:, :B]).max()), np.full(B, max(np.abs(flat[:, B:]).max(), 1e-300))])
            y, residual, ok = by_solve_bvp(lap, 1e-10)
            mine = solve(lap, 1.0, p=16)
            d1 = float(np.max(np.abs(y(np.array(STATIONS)) - flat) / size))
            d2 = float(np.max(np.abs(mine(np.array(STATIONS) * lap.length) - flat) / size))
            print(f"{name}: solve_bvp {d1:.1e} (residual {residual:.1e}, {ok}), collocation {d2:.1e}")
            assert d1 < 1e-7 and d2 < 1e-9, name
            worst["bvp"], worst["collocation"] = max(worst["bvp"], d1), max(worst["collocation"], d2)
            worst["residual"] = max(worst["residual"], residual)
        else:
            print(name)
        # at x = 0 and L the end forces are known: N(0) sums to the load
        total = sum(exact[0][B + j] for j in range(B))
        assert abs(total - inputs["load"]) <= 1e-12 * max(1, abs(inputs["load"]))
        cases.append(
            {
                "name": name,
                "inputs": inputs,
                "expected": {
                    "rateTimesLength": row(sorted(lap.rates() * lap.length)),
                    "shear": [row([float(v) for v in t], scaled=False) for t in tau],
                    "force": [
                        {"root": significant(float(exact[0][B + j])), "mid": significant(float(exact[4][B + j]))}
                        for j in range(B)
                    ],
                },
            }
        )
    write(
        "shear-lag-elastic.json",
        "Elastic shear lag of one and two bonds, one channel: bond shear (MPa) at x/L of `stations` "
        "and the force of each outer adherend (N) at root and middle. Lists run over the bonds.",
        "shear_lag.py",
        SEED,
        "All printed digits, entry by entry: transition matrix with at least 40 spare decimal digits. "
        f"Against solve_bvp at tol 1e-10 (largest rms residual {worst['residual']:.0e}) the largest difference is "
        f"{worst['bvp']:.0e} of the largest slip or force, against the collocation of bvp.py {worst['collocation']:.0e}; "
        "values underflowing a double are printed as 0.",
        cases,
    )


if __name__ == "__main__":
    main()
