"""Life against stress with run-outs: most likely lines by scipy, tolerance bounds, and how often these hold.

The likelihood is written in level, slope and ln sigma and its top found by scipy's minimisers; variances are the inverse of
a Hessian by central differences. Coverage: samples drawn, run-outs cut off, the line fitted in every one, and
counted how often the bound lies below the true 10 % quantile.
"""

import json
import pathlib
import platform

import numpy as np
import scipy
from scipy import optimize, stats

SEED = 20261127
Z = -stats.norm.ppf(0.1)


def minus_log(q, x, y, above):
    level, slope, sigma = q[0], q[1], np.exp(q[2])
    z = (y - level - slope * x) / sigma
    return -np.sum(np.where(above, stats.norm.logsf(z), stats.norm.logpdf(z) - q[2]))


def hessian(f, q, step=1e-4):
    n = len(q)
    h = np.empty((n, n))
    e = np.eye(n) * step
    for i in range(n):
        for j in range(n):
            # Richardson: steps s and s/2.
            def mixed(s):
                return (f(q + s * (e[i] + e[j])) - f(q + s * (e[i] - e[j])) - f(q - s * (e[i] - e[j])) + f(q - s * (e[i] + e[j]))) / (4 * (s * step) ** 2)
            h[i, j] = (4 * mixed(10) - mixed(20)) / 3
    return h


def most_likely(x, y, above):
    f = lambda q: minus_log(q, x, y, above)
    known = ~above
    slope, level = np.polyfit(x[known], y[known], 1)
    q = np.array([level, slope, np.log(np.std(y[known] - level - slope * x[known]) + 1e-3)])
    for _ in range(3):
        q = optimize.minimize(f, q, method="Nelder-Mead", options={"xatol": 1e-12, "fatol": 1e-15, "maxiter": 20000, "maxfev": 20000}).x
    return q, np.linalg.inv(hessian(f, q))


def bound_at(level, slope, s, var, x, freedom):
    h = var[0, 0] + 2 * var[0, 1] * x + var[1, 1] * x * x
    k = stats.nct.ppf(0.95, freedom, Z / np.sqrt(h)) * np.sqrt(h)
    return float(k), float(level + slope * x - k * s)


def draw(rng, n_levels, per_level, cut, scatter):
    stress = np.repeat(np.linspace(28, 14, n_levels), per_level)
    life = 10 ** (5 - 9 * (np.log10(stress) - np.log10(20)) + scatter * rng.standard_normal(stress.size))
    return stress, np.minimum(life, cut), life > cut


def cases():
    rng = np.random.default_rng(SEED)
    found = []
    for levels, per, cut, scatter in ((3, 4, 1e9, 0.2), (4, 3, 1e9, 0.35), (4, 3, 1e6, 0.25), (5, 4, 4e5, 0.3), (6, 5, 1e6, 0.15), (3, 2, 1e9, 0.1), (4, 2, 3e5, 0.4)):
        stress, cycles, out = draw(rng, levels, per, cut, scatter)
        stress, cycles = np.round(stress, 3), np.round(cycles)
        centre = np.log10(stress).mean()
        x, y = np.log10(stress) - centre, np.log10(cycles)
        (level, slope, log_sigma), covariance = most_likely(x, y, out)
        sigma, failures = np.exp(log_sigma), int((~out).sum())
        if not out.any():
            # Least squares in closed form: exact.
            line = stats.linregress(x, y)
            level, slope = line.intercept, line.slope
            sigma = np.sqrt(np.mean((y - level - slope * x) ** 2))
            var = np.array([[1 / x.size, 0], [0, 1 / np.sum(x * x)]])
        else:
            var = covariance[:2, :2] / sigma**2
        s = sigma * np.sqrt(failures / (failures - 2))
        bounds = []
        for at in (30.0, 20.0, 15.0, 10.0):
            k, log = bound_at(level, slope, s, var, np.log10(at) - centre, failures - 2)
            bounds.append({"stress": at, "median": float(10 ** (level + slope * (np.log10(at) - centre))), "factor": k, "bound": float(10**log)})
        found.append({"results": [{"stress": float(a), "cycles": float(b), "runOut": bool(c)} for a, b, c in zip(stress, cycles, out)],
                      "centre": float(centre), "level": float(level), "slope": float(slope), "deviation": float(s), "failures": failures,
                      "variances": [float(var[0, 0]), float(var[0, 1]), float(var[1, 1])], "bounds": bounds})
    return found


def fit_rows(x, y, out):
    """Newton in 1/sigma, level/sigma, slope/sigma for every row; x is shared."""
    rows = y.shape[0]
    q = np.zeros((rows, 3))
    q[:, 0] = 1.0
    basis = np.stack([y, -np.ones_like(y), -np.broadcast_to(x, y.shape)], 2)

    def height(q):
        z = np.einsum("rij,rj->ri", basis, q)
        good = q[:, 0] > 0
        value = np.where(out, stats.norm.logsf(z), np.log(np.maximum(q[:, :1], 1e-300)) - z * z / 2).sum(1)
        return np.where(good, value, -np.inf)

    best = height(q)
    for _ in range(60):
        z = np.einsum("rij,rj->ri", basis, q)
        hazard = np.exp(stats.norm.logpdf(z) - stats.norm.logsf(z))
        pull, weight = np.where(out, hazard, z), np.where(out, hazard * (hazard - z), 1.0)
        first = -np.einsum("ri,rij->rj", pull, basis)
        second = np.einsum("ri,rij,rik->rjk", weight, basis, basis)
        known = (~out).sum(1)
        first[:, 0] += known / q[:, 0]
        second[:, 0, 0] += known / q[:, 0] ** 2
        step = np.linalg.solve(second, first[:, :, None])[:, :, 0]
        share = np.ones(rows)
        for _ in range(40):
            value = height(q + share[:, None] * step)
            worse = ~(value >= best - 1e-12)
            if not worse.any():
                break
            share[worse] /= 2
        share[worse] = 0
        q = q + share[:, None] * step
        best = height(q)
        if np.abs(step).max() < 1e-10:
            break
    return q, second


def coverage():
    rng = np.random.default_rng(SEED + 1)
    found = []
    for levels, per, cut in ((4, 3, 1e12), (4, 3, 1e6), (4, 3, 2.5e5), (5, 6, 1e6), (5, 6, 2.5e5)):
        rows = 20_000
        stress = np.repeat(np.linspace(28, 14, levels), per)
        x = np.log10(stress) - np.log10(stress).mean()
        mean = 5 - 9 * (np.log10(stress) - np.log10(20))
        scatter = 0.3
        y = mean + scatter * rng.standard_normal((rows, stress.size))
        out = y > np.log10(cut)
        y = np.minimum(y, np.log10(cut))
        level0 = 5 - 9 * (np.log10(stress).mean() - np.log10(20))
        enough = (~out).sum(1) >= 4
        two = np.array([len(set(stress[~o])) > 1 for o in out])
        y, out = y[enough & two], out[enough & two]
        u = (y - level0 + 9 * x) / scatter  # about the true line, in its deviations
        q, second = fit_rows(x, u, out)
        sigma, level, slope = 1 / q[:, 0], q[:, 1] / q[:, 0], q[:, 2] / q[:, 0]
        inverse = np.linalg.inv(second)
        failures = (~out).sum(1)
        s = sigma * np.sqrt(failures / (failures - 2))
        for at in (28.0, 20.0, 14.0):
            xa = np.log10(at) - np.log10(stress).mean()
            g = np.stack([-(level + slope * xa), np.ones_like(level), np.full_like(level, xa)], 1)
            h = np.einsum("ri,rij,rj->r", g, inverse, g)
            k = stats.nct.ppf(0.95, failures - 2, Z / np.sqrt(h)) * np.sqrt(h)
            held = float(np.mean(level + slope * xa - k * s <= -Z))
            found.append({"levels": levels, "perLevel": per, "runOutAt": cut, "stress": at, "rows": int(len(y)),
                          "meanFailures": float(failures.mean()), "results": int(stress.size), "held": held})
    return found


if __name__ == "__main__":
    written = {
        "about": __doc__.strip().splitlines()[0],
        "script": "reference/coupon_life.py",
        "versions": {"python": platform.python_version(), "numpy": np.__version__, "scipy": scipy.__version__},
        "seed": SEED,
        "accuracy": "lines to about 1e-7, variances to about 1e-5; without run-outs closed forms",
        "cases": cases(),
        "coverage": coverage(),
    }
    path = pathlib.Path(__file__).with_name("coupon-life.json")
    path.write_text(json.dumps(written, indent=1) + "\n")
    for one in written["coverage"]:
        print(one)
