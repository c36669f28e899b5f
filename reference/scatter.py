#!/usr/bin/env python3
"""Random numbers, exact binomial limits and a sampled closed form, for the scatter of a joint.

Philox is written here with Python's whole numbers for any word size. With 64-bit words it must give
what numpy's own Philox gives (checked below); with 32-bit words it is the generator of the program.
Normal quantiles, binomial limits and limits of percentiles are scipy's. The sampled joint is
Volkersen's closed form of a single lap with inputs drawn by numpy's PCG64 through scipy's distributions.
"""

import json
import pathlib
import platform

import numpy as np
import scipy
from scipy import stats

SEED = 20261125
SAMPLES = 2_000_000

# Multipliers and Weyl constants by word size: Salmon, Moraes, Dror, Shaw (SC11, 2011).
CONSTANTS = {
    32: ((0xD2511F53, 0xCD9E8D57), (0x9E3779B9, 0xBB67AE85)),
    64: ((0xD2E7470EE14C6C93, 0xCA5A826395121157), (0x9E3779B97F4A7C15, 0xBB67AE8584CAA73B)),
}


def philox(counter, key, bits, rounds=10):
    (m0, m1), weyl = CONSTANTS[bits]
    mask = (1 << bits) - 1
    c, k = list(counter), list(key)
    for _ in range(rounds):
        first, second = m0 * c[0], m1 * c[2]
        c = [(second >> bits) ^ c[1] ^ k[0], second & mask, (first >> bits) ^ c[3] ^ k[1], first & mask]
        k = [(word + step) & mask for word, step in zip(k, weyl)]
    return c


def check_against_numpy():
    """numpy counts up before it draws; its counter is one more than the one it was given."""
    rng = np.random.default_rng(SEED)
    for _ in range(50):
        key = [int(word) for word in rng.integers(0, 2**64, 2, dtype=np.uint64)]
        counter = [int(word) for word in rng.integers(0, 2**63, 4, dtype=np.uint64)]
        theirs = np.random.Philox(key=np.array(key, np.uint64), counter=np.array(counter, np.uint64))
        drawn = [int(word) for word in theirs.random_raw(4)]
        assert drawn == philox([counter[0] + 1, *counter[1:]], key, 64)


def random_words():
    rng = np.random.default_rng(SEED + 1)
    cases = []
    for _ in range(40):
        counter = [int(word) for word in rng.integers(0, 2**32, 4)]
        key = [int(word) for word in rng.integers(0, 2**32, 2)]
        cases.append({"counter": counter, "key": key, "words": philox(counter, key, 32)})
    return cases


def quantiles():
    chances = [2.0**-53, 1e-15, 1e-12, 1e-9, 1e-6, 1e-4, 1e-3, 0.01, 0.05, 0.0749, 0.0751, 0.2, 0.4, 0.5]
    return [{"chance": p, "quantile": float(stats.norm.ppf(p))} for p in chances]


def limits():
    counts = [(0, 10), (1, 10), (5, 10), (10, 10), (0, 1000), (3, 1000), (500, 1000), (0, 100_000),
              (1, 100_000), (37, 100_000), (1234, 100_000), (50_000, 100_000), (99_999, 100_000)]
    found = []
    for k, n in counts:
        for confidence in (0.9, 0.95, 0.99):
            tail = (1 - confidence) / 2
            low = 0.0 if k == 0 else float(stats.beta.ppf(tail, k, n - k + 1))
            high = 1.0 if k == n else float(stats.beta.ppf(1 - tail, k + 1, n - k))
            found.append({"found": k, "of": n, "confidence": confidence, "low": low, "high": high})
    return found


def ranks():
    """Ranks, from 1, of the samples that bound a percentile with 95 %."""
    found = []
    for n in (100, 1000, 12_345, 100_000):
        for share in (0.01, 0.05, 0.5):
            k = np.arange(-1, n + 1)
            cdf = stats.binom.cdf(k, n, share)
            low = int(k[cdf <= 0.025].max()) + 1
            high = int(k[cdf >= 0.975].min()) + 1
            found.append({"samples": n, "share": share, "low": max(low, 1), "high": min(high, n)})
    return found


def volkersen():
    """Yield over asked of a flat single lap: strip and plate of metal, no temperature, no peel."""
    joint = {"width": 25.0, "overlap": 12.0, "strip": 1.6, "plate": 2.0, "gap": 0.2, "modulus": 70_000.0,
             "shearModulus": 876.0, "shearYield": 38.0, "force": 4300.0, "asked": 1.15}
    spreads = {"overlap": ("uniform", 0.6), "gap": ("triangular", 0.06), "tube-wall": ("uniform", 0.1),
               "sleeve-wall": ("triangular", 0.15), "adhesive-modulus": ("normal", 0.08),
               "shear-yield": ("normal", 0.06), "load": ("normal", 0.05)}
    rng = np.random.default_rng(SEED + 2)
    distributions = {"normal": stats.norm(0, 1), "uniform": stats.uniform(-1, 2),
                     "triangular": stats.triang(0.5, -1, 2)}
    z = {name: spread * distributions[kind].rvs(SAMPLES, random_state=rng)
         for name, (kind, spread) in spreads.items()}
    length = joint["overlap"] + z["overlap"]
    gap = joint["gap"] + z["gap"]
    strip = joint["modulus"] * (joint["strip"] + z["tube-wall"])
    plate = joint["modulus"] * (joint["plate"] + z["sleeve-wall"])
    stiffness = joint["shearModulus"] * (1 + z["adhesive-modulus"]) / gap
    line = joint["force"] * (1 + z["load"]) / joint["width"]
    omega = np.sqrt(stiffness * (1 / strip + 1 / plate))
    # tau'' = omega^2 tau, tau'(0) = -k P/plate, tau'(L) = k P/strip.
    sine = -stiffness * line / plate / omega
    cosine = (stiffness * line / strip / omega - sine * np.cosh(omega * length)) / np.sinh(omega * length)
    ends = np.maximum(cosine, cosine * np.cosh(omega * length) + sine * np.sinh(omega * length))
    margin = joint["shearYield"] * (1 + z["shear-yield"]) / ends / joint["asked"] - 1
    order = np.sort(margin)
    percentiles = []
    for share in (0.01, 0.05, 0.25, 0.5, 0.75, 0.95, 0.99):
        value = float(order[int(np.ceil(share * SAMPLES)) - 1])
        step = 0.002
        density = ((margin > value - step) & (margin < value + step)).mean() / (2 * step)
        percentiles.append({"share": share, "value": value,
                            "error": float(np.sqrt(share * (1 - share) / SAMPLES) / density),
                            "density": float(density)})
    return {"joint": joint, "spreads": {k: {"distribution": d, "spread": s} for k, (d, s) in spreads.items()},
            "samples": SAMPLES, "mean": float(margin.mean()), "deviation": float(margin.std(ddof=1)),
            "below": float((margin < 0).mean()), "percentiles": percentiles}


if __name__ == "__main__":
    check_against_numpy()
    written = {
        "about": __doc__.strip().splitlines()[0],
        "script": "reference/scatter.py",
        "versions": {"python": platform.python_version(), "numpy": np.__version__, "scipy": scipy.__version__},
        "seed": SEED,
        "accuracy": "words exact; quantiles and limits those of scipy; the sampled joint within the errors given",
        "words": random_words(),
        "quantiles": quantiles(),
        "limits": limits(),
        "ranks": ranks(),
        "volkersen": volkersen(),
    }
    path = pathlib.Path(__file__).with_suffix(".json")
    path.write_text(json.dumps(written, indent=1) + "\n")
    print(path.name, written["volkersen"]["below"], written["volkersen"]["mean"])
