"""Time of scipy's boundary-value solver for one elastic-plastic bond, against the answer that comes on standard input.

Used by the benchmark; prints one line of JSON.
"""

import json
import sys
import time

import numpy as np
import scipy
from scipy.integrate import solve_bvp

given = json.load(sys.stdin)
length, width, stiffness = given["length"], given["width"], given["stiffness"]
shear_yield, tube, outer, load = given["shearYield"], given["tube"], given["outer"], given["load"]
compliance = 1 / tube + 1 / outer
stations = np.linspace(0, length, given["stations"])
expected = np.array(given["shear"])


def shear_of(slip):
    return np.clip(stiffness * slip, -shear_yield, shear_yield)


def rates(_x, y):
    return np.vstack([y[1], compliance * width * shear_of(y[0])])


def ends(root, mouth):
    return np.array([root[1] + load / outer, mouth[1] - load / tube])


def solve():
    x = np.linspace(0, length, 30)
    guess = np.vstack([np.full_like(x, load / (width * length * stiffness)), np.zeros_like(x)])
    return solve_bvp(rates, ends, x, guess, tol=1e-6, max_nodes=20000)


times = []
for _ in range(60):
    start = time.perf_counter()
    solution = solve()
    times.append(1000 * (time.perf_counter() - start))
assert solution.status == 0, solution.message
difference = np.max(np.abs(shear_of(solution.sol(stations)[0]) - expected)) / shear_yield
print(json.dumps({"scipy": scipy.__version__, "median": float(np.median(times)), "difference": float(difference)}))
