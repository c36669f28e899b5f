"""The elastic system of docs/method.md section 4 by its transition matrix in arbitrary precision.

y' = A y + b has constant coefficients where nothing tapers, so y(x) = exp(x A) y(0) + ...: the
matrix exponential by its power series with squaring, the unknown y(0) by shooting at the end
conditions. Shooting loses a factor of exp(omega L) twice over: so many digits are carried that
forty are left. No eigenvectors and no hyperbolic functions are used anywhere.
"""

import mpmath
import numpy as np
from mpmath import mp


def _exponential(matrix, bits):
    """exp(matrix) by Taylor series of matrix/2^n, squared n times."""
    n = matrix.rows
    norm = max(sum(abs(matrix[i, j]) for j in range(n)) for i in range(n))
    halvings = max(0, int(mpmath.ceil(mpmath.log(norm, 2))) if norm > 0 else 0) + int(bits**0.5)
    small = matrix / mp.mpf(2) ** halvings
    total, term, m = mp.eye(n), mp.eye(n), 0
    while True:
        m += 1
        term = term * small / m
        total = total + term
        size = max(abs(term[i, j]) for i in range(n) for j in range(n))
        if size == 0 or mpmath.log(size, 2) < -bits - 2 * halvings - 20:
            break
    for _ in range(halvings):
        total = total * total
    return total


def solve(lap, stations, percent=True):
    """Slips and forces [station][2 B] of one channel, as mp numbers. Stations are multiples of 1/100."""
    assert lap.C == 1 and lap.uniform
    growth = float(np.max(lap.rates())) * lap.length
    mp.dps = int(60 + 2 * growth / 2.302585)
    bits = int(mp.dps * 3.33)
    B = lap.B
    n = 2 * B
    num = lambda v: mp.mpf(float(v))  # the exact binary number, as the file is read everywhere
    L, P = num(lap.length), num(lap.load[0])
    # exact reciprocals of the stiffnesses, not of their rounded flexibilities
    Kt = num(lap.stiffness_t)
    Kj = [num(v) for v in lap.stiffness_o]
    a = [num(v) for v in lap.lever[0]]
    e = [num(t) - num(o) for t, o in lap.strain_pairs]
    big = mp.zeros(n + 1)
    for j in range(B):
        for i in range(B):
            big[j, B + i] = -a[j] / Kt
        big[j, B + j] -= a[j] / Kj[j]
        big[j, n] = a[j] * P / Kt + e[j]
        big[B + j, j] = -a[j] * num(lap.width[j]) * num(lap.k[j])
    # forces in units that make the matrix even-sized: N = scale * n
    scale = mp.sqrt(max(abs(big[B + j, j]) for j in range(B)) / max(abs(big[j, B + j]) for j in range(B)))
    for j in range(B):
        for i in range(B):
            big[j, B + i] *= scale
        big[B + j, j] /= scale
    step = _exponential(big * (L / 100), bits)
    powers = {1: step}
    q = 1
    while q < 64:
        powers[2 * q] = powers[q] * powers[q]
        q *= 2

    def at(percentage):
        m, left, q = None, percentage, 64
        while left:
            if left >= q:
                m = powers[q] if m is None else m * powers[q]
                left -= q
            else:
                q //= 2
        return mp.eye(n + 1) if m is None else m

    end = at(100)
    lhs, rhs = mp.zeros(n), mp.zeros(n, 1)
    for j in range(B):  # N_j(L) = 0
        for i in range(n):
            lhs[j, i] = end[B + j, i]
        rhs[j] = -end[B + j, n]
    for i in range(B):  # sum N(0) = P
        lhs[B, B + i] = 1
    rhs[B] = P / scale
    if B == 2:
        lhs[3, 0], lhs[3, 1] = 1 / a[0], -1 / a[1]
    start = mp.lu_solve(lhs, rhs)
    y0 = mp.matrix([start[i] for i in range(n)] + [1])
    out = []
    for z in stations:
        y = at(int(round(100 * z))) * y0
        out.append([y[i] * (scale if i >= B else 1) for i in range(n)])
    return out
