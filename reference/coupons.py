"""Statistics of coupon results: tolerance factors, tests, fits and basis values, by scipy and mpmath.

Tolerance factors are quantiles of scipy's noncentral t; some again by mpmath with 30 digits, which integrates
over the chi-square variable itself. The factors of Hanson and Koopmans integrate over the ratio of the order
statistics, the other way round than the program, in mpmath. Tests and fits are scipy's. What a printed
approximation is worth (significance of a fit, factor of a Weibull basis value, the critical residual) is sampled.
"""

import json
import pathlib
import platform
import warnings

import mpmath
import numpy as np
import scipy
from mpmath import mp, mpf
from scipy import optimize, stats

SEED = 20261126
SHARES = {"A": 0.01, "B": 0.1}


def k_by_scipy(n, below):
    root = np.sqrt(n)
    return float(stats.nct.ppf(0.95, n - 1, -stats.norm.ppf(below) * root) / root)


def k_by_mpmath(n, below, start):
    """P(T <= t) with T = (Z + d)/sqrt(V/v): the chi-square density times the normal chance."""
    mp.dps = 30
    v = n - 1
    z = -mp.sqrt(2) * mp.erfinv(2 * mpf(str(below)) - 1)
    d = z * mp.sqrt(n)
    log_front = -mpf(v) / 2 * mp.log(2) - mp.loggamma(mpf(v) / 2)

    def chance(t):
        # c = sqrt(V): density of c is 2 c * chi2(c^2).
        def f(c):
            log = log_front + mp.log(2) + (v - 1) * mp.log(c) - c * c / 2
            return mp.exp(log) * mp.ncdf(t * c / mp.sqrt(v) - d)

        # Split at the step of the normal chance and at the peak of the chi density.
        root, step = mp.sqrt(v), d * mp.sqrt(v) / t
        wide = {root + j for j in range(-12, 13, 2)} | {step + j * mp.sqrt(v) / t for j in (-6, -3, 0, 3, 6)}
        ends = sorted(c for c in wide if c > 0)
        return mp.quad(f, [mpf(0), *ends, ends[-1] + 14])

    t0 = mpf(start) * mp.sqrt(n)
    t1 = t0 * (1 + mpf("1e-7"))
    t = mp.findroot(lambda t: chance(t) - mpf("0.95"), (t0, t1), solver="secant", tol=mpf("1e-36"), maxsteps=12)
    return float(t / mp.sqrt(n))


def factors():
    every = [{"n": n, **{kind: k_by_scipy(n, share) for kind, share in SHARES.items()}} for n in range(2, 1001)]
    wanted = [*range(2, 31), 35, 40, 50, 64, 75, 100, 137, 150, 200, 250, 299, 300, 400, 500, 600, 750, 900, 999, 1000, 5000]
    precise = [
        {"n": n, **{kind: k_by_mpmath(n, share, k_by_scipy(n, share)) for kind, share in SHARES.items()}} for n in wanted
    ]
    by_n = {one["n"]: one for one in every}
    apart = max(abs(p[k] / by_n[p["n"]][k] - 1) for p in precise if p["n"] in by_n for k in SHARES)
    return every, precise, apart


def noncentral():
    """Quantiles at other chances, freedoms and noncentralities."""
    mp.dps = 15
    cases = []
    for freedom in (1, 2, 4, 9, 30, 200):
        for noncentrality in (0.0, 0.5, 3.0, 12.0, 40.0):
            for chance in (0.05, 0.5, 0.95, 0.99):
                t = float(stats.nct.ppf(chance, freedom, noncentrality))
                # scipy's inverse is kept where its own chance gives it back.
                if abs(stats.nct.cdf(t, freedom, noncentrality) - chance) < 1e-10:
                    cases.append({"freedom": freedom, "noncentrality": noncentrality, "chance": chance, "t": t})
    return cases


def hk_by_scipy(n, r, p):
    """P(U_r W^k <= p), W = U_1/U_r independent of U_r: density (r - 1)(1 - w)^(r - 2)."""
    def miss(k):
        edge = p ** (1 / k)  # below it p*w^-k is above 1
        f = lambda w: (r - 1) * (1 - w) ** (r - 2) * scipy.special.betainc(r, n - r + 1, np.minimum(p * w**-k, 1.0))
        split = [edge + (1 - edge) * q for q in (0.01, 0.05, 0.2, 0.5)]
        inside = scipy.integrate.quad(f, edge, 1, points=split, limit=500, epsabs=1e-13, epsrel=1e-12)[0]
        return 1 - (1 - edge) ** (r - 1) + inside - 0.95
    return float(optimize.brentq(miss, 0.9, 200, xtol=1e-13, rtol=1e-14))


def hanson_koopmans(n, r, p):
    """The same with 20 digits, from scipy's root."""
    mp.dps = 20

    def miss(k):
        edge = mpf(p) ** (1 / k)
        f = lambda w: (r - 1) * (1 - w) ** (r - 2) * mp.betainc(r, n - r + 1, 0, min(mpf(1), mpf(p) * w ** (-k)), regularized=True)
        span = [edge + (1 - edge) * mpf(j) / 8 for j in range(9)]
        return 1 - (1 - edge) ** (r - 1) + mp.quad(f, span) - mpf("0.95")

    start = mpf(hk_by_scipy(n, r, float(p)))
    return float(mp.findroot(miss, (start, start * mpf("1.000001")), solver="secant", tol=1e-24, maxsteps=8))


def hk_cases():
    r_of = dict(zip(range(2, 29), [2, 3, 4, 4, 5, 5, 6, 6, 6, 7, 7, 7, 8, 8, 8, 8, 9, 9, 10, 10, 10, 11, 11, 11, 11, 11, 12]))
    found = [{"kind": "B", "n": n, "r": r, "k": hk_by_scipy(n, r, 0.1)} for n, r in r_of.items()]
    found += [{"kind": "A", "n": n, "r": n, "k": hk_by_scipy(n, n, 0.01)} for n in (2, 3, 4, 5, 6, 8, 10, 15, 18, 22, 30, 50, 100, 200, 298)]
    for one in found:
        if one["kind"] == "B" and one["n"] in (3, 7, 18):
            again = hanson_koopmans(one["n"], one["r"], "0.1")
            assert abs(again / one["k"] - 1) < 1e-10, (one, again)
    return found


def ranks():
    found = []
    for kind, share in SHARES.items():
        for n in (29, 30, 45, 46, 60, 61, 100, 298, 299, 300, 473, 1000, 5000):
            chances = stats.binom.sf(np.arange(0, n), n, share)  # P(K >= r) for r = 1..n
            good = np.nonzero(chances >= 0.95)[0]
            found.append({"kind": kind, "n": n, "rank": int(good[-1] + 1) if len(good) else None})
    return found


def ad_by_hand(below, above):
    n = len(below)
    i = np.arange(1, n + 1)
    return float(-n - np.sum((2 * i - 1) / n * (below + above[::-1])))


def anderson(x, family):
    x = np.sort(np.asarray(x))
    if family == "weibull":
        shape, _, scale = stats.weibull_min.fit(x, floc=0)
        found = optimize.minimize(
            lambda q: -np.sum(stats.weibull_min.logpdf(x, np.exp(q[0]), 0, np.exp(q[1]))),
            [np.log(shape), np.log(scale)], method="Nelder-Mead", options={"xatol": 1e-11, "fatol": 1e-13, "maxiter": 5000})
        shape, scale = np.exp(found.x)
        law = stats.weibull_min(shape, 0, scale)
        fitted = {"shape": float(shape), "scale": float(scale)}
    else:
        y = x if family == "normal" else np.log(x)
        fitted = {"location": float(np.mean(y)), "scale": float(np.std(y, ddof=1))}
        law = stats.norm(*fitted.values())
        x = y
    return {**fitted, "statistic": ad_by_hand(law.logcdf(x), law.logsf(x))}


def draw_batches(rng, i):
    k = int(rng.integers(2, 7))
    sizes = [int(rng.integers(2, 15)) for _ in range(k)]
    kind = i % 4
    means = 100 + (kind == 1) * rng.normal(0, 8, k)
    batches = []
    for size, mean in zip(sizes, means):
        x = mean * rng.weibull(18, size) if kind == 2 else rng.normal(mean, 5, size)
        batches.append([float(v) for v in np.round(x, 0 if kind == 3 else 3)])
    return batches


def samples():
    rng = np.random.default_rng(SEED)
    cases = []
    for i in range(40):
        batches = draw_batches(rng, i)
        all_values = np.concatenate(batches)
        with warnings.catch_warnings():
            warnings.simplefilter("ignore")
            mid = stats.anderson_ksamp([np.array(b) for b in batches], midrank=True)
            right = stats.anderson_ksamp([np.array(b) for b in batches], midrank=False)
        one = {
            "batches": batches,
            "kSample": {"normalised": float(mid.statistic), "normalisedRight": float(right.statistic),
                        "critical": float(mid.critical_values[3])},
            "variances": float(stats.levene(*batches, center="median").statistic),
            "ratio": float(stats.f_oneway(*batches).statistic),
        }
        if len(all_values) >= 5:
            one["fits"] = {family: anderson(all_values, family) for family in ("normal", "lognormal", "weibull")}
        cases.append(one)
    return cases


def distributions():
    students = [{"tail": q, "freedom": v, "t": float(stats.t.isf(q, v))}
                for q in (0.4, 0.05, 0.01, 1e-4, 1e-6) for v in (1, 2, 3, 8, 30, 1000)]
    fishers = [{"tail": q, "between": a, "within": b, "f": float(stats.f.isf(q, a, b))}
               for q in (0.5, 0.05, 0.001) for a in (1, 2, 5, 20) for b in (1, 3, 16, 200)]
    tails = [{"z": z, "tail": float(stats.norm.sf(z)), "log": float(stats.norm.logsf(z))}
             for z in (-40, -8, -2.6, -2.5, -1, 0, 0.3, 1, 2, 2.4999, 2.5, 3, 5, 8, 20, 38, 100)]
    residuals = []
    for n in (3, 4, 5, 6, 7, 8, 10, 18, 30, 100, 1000):
        t = stats.t.isf(0.05 / (2 * n), n - 2)
        residuals.append({"n": n, "critical": float((n - 1) / np.sqrt(n) * np.sqrt(t**2 / (n - 2 + t**2)))})
    return students, fishers, tails, residuals


def weibull_rows(x):
    """Maximum likelihood in every row at once: Newton on the shape."""
    logs = np.log(x)
    centre = logs.mean(1, keepdims=True)
    logs = logs - centre
    shape = 1.28 / logs.std(1, ddof=1)
    for _ in range(40):
        w = np.exp(shape[:, None] * (logs - logs.max(1, keepdims=True)))
        s0, s1, s2 = w.sum(1), (w * logs).sum(1), (w * logs * logs).sum(1)
        shape = np.maximum(0.3 * shape, shape - (s1 / s0 - 1 / shape) / (s2 / s0 - (s1 / s0) ** 2 + 1 / shape**2))
    w = np.exp(shape[:, None] * (logs - logs.max(1, keepdims=True)))
    return shape, np.log(w.mean(1)) / shape + logs.max(1) + centre[:, 0]


def sampled_weibull_factors():
    rng = np.random.default_rng(SEED + 1)
    found = []
    for n in (10, 12, 14, 16, 18, 20, 25, 30, 50, 100):
        rows = 400_000 if n <= 30 else 100_000
        shape, log_scale = weibull_rows(rng.weibull(1, (rows, n)))
        for kind, share in SHARES.items():
            quantile = -np.log1p(-share)
            v = np.sqrt(n) * (shape * (log_scale - np.log(quantile)) + np.log(quantile))
            low, mid, high = np.quantile(v, [0.95 - 2 * np.sqrt(0.0475 / rows), 0.95, 0.95 + 2 * np.sqrt(0.0475 / rows)])
            found.append({"n": n, "kind": kind, "factor": float(mid), "error": float((high - low) / 4)})
    return found


def sampled_significance():
    """AD that is exceeded with 20, 10, 5, 2.5 and 1 % when the distribution is right."""
    rng = np.random.default_rng(SEED + 2)
    chances, found = (0.2, 0.1, 0.05, 0.025, 0.01), []
    for n in (5, 6, 8, 12, 18, 30, 60):
        rows, i = 200_000, np.arange(1, n + 1)
        x = np.sort(rng.standard_normal((rows, n)), 1)
        z = (x - x.mean(1, keepdims=True)) / x.std(1, ddof=1, keepdims=True)
        normal = -n - np.sum((2 * i - 1) / n * (stats.norm.logcdf(z) + stats.norm.logsf(z)[:, ::-1]), 1)
        x = np.sort(rng.weibull(1, (rows, n)), 1)
        shape, log_scale = weibull_rows(x)
        power = np.exp(shape[:, None] * (np.log(x) - log_scale[:, None]))
        weibull = -n - np.sum((2 * i - 1) / n * (np.log(-np.expm1(-power)) - power[:, ::-1]), 1)
        for family, values in (("normal", normal), ("weibull", weibull)):
            for chance in chances:
                found.append({"family": family, "n": n, "chance": chance, "statistic": float(np.quantile(values, 1 - chance))})
    return found


def sampled_residuals():
    rng = np.random.default_rng(SEED + 3)
    found = []
    for n in (3, 5, 8, 18, 50):
        x = rng.standard_normal((400_000, n))
        residual = (np.abs(x - x.mean(1, keepdims=True)) / x.std(1, ddof=1, keepdims=True)).max(1)
        found.append({"n": n, "critical": float(np.quantile(residual, 0.95)), "samples": 400_000})
    return found


def median_ranks():
    return [{"n": n, "i": i, "rank": float(stats.beta.ppf(0.5, i, n - i + 1))}
            for n in (1, 2, 5, 18, 100) for i in sorted({1, 2, (n + 1) // 2, n}) if i <= n]


if __name__ == "__main__":
    every, precise, apart = factors()
    students, fishers, tails, residuals = distributions()
    written = {
        "about": __doc__.strip().splitlines()[0],
        "script": "reference/coupons.py",
        "versions": {"python": platform.python_version(), "numpy": np.__version__, "scipy": scipy.__version__,
                     "mpmath": mpmath.__version__},
        "seed": SEED,
        "accuracy": {"scipyAgainstMpmath": apart, "note": "sampled values carry their standard error or sample size"},
        "factors": every, "precise": precise, "noncentral": noncentral(), "hansonKoopmans": hk_cases(),
        "ranks": ranks(), "students": students, "fishers": fishers, "tails": tails, "residuals": residuals,
        "samples": samples(), "sampledWeibull": sampled_weibull_factors(),
        "sampledSignificance": sampled_significance(), "sampledResiduals": sampled_residuals(),
        "medianRanks": median_ranks(),
    }
    path = pathlib.Path(__file__).with_suffix(".json")
    path.write_text(json.dumps(written, indent=1) + "\n")
    print(path.name, apart)
