"""Gauss points, integrated Legendre functions and graded nodes, in extended precision."""

import numpy as np
from layered_joint import LD


def gauss(n):
    x = np.cos(LD(np.pi) * (np.arange(n, 0, -1) - LD(0.25)) / (n + LD(0.5)))
    for _ in range(8):
        P, dP = legendre(n, x)
        x = x - P[n] / dP[n]
    P, dP = legendre(n, x)
    return x, 2 / ((1 - x * x) * dP[n] ** 2)


def legendre(n, x):
    P = [np.ones_like(x), x]
    for k in range(1, n):
        P.append(((2 * k + 1) * x * P[k] - k * P[k - 1]) / (k + 1))
    dP = [0 * x, np.ones_like(x)]
    for k in range(1, n):
        dP.append(dP[k - 1] + (2 * k + 1) * P[k])
    return np.array(P[: n + 1]), np.array(dP[: n + 1])


def shapes(p, x):
    """Values and slopes at x in [-1, 1]: two ends, then bubbles. Shape (p + 1, points)."""
    x = np.asarray(x, LD)
    P, _ = legendre(p, x)
    N = [(1 - x) / 2, (1 + x) / 2]
    dN = [0 * x - LD(0.5), 0 * x + LD(0.5)]
    for k in range(2, p + 1):
        c = np.sqrt(LD(2 * (2 * k - 1)))
        N.append((P[k] - P[k - 2]) / c)
        dN.append(P[k - 1] * np.sqrt(LD(2 * k - 1) / 2))
    return np.array(N), np.array(dN)


def graded(a, b, first, ratio):
    """Nodes from a to b, elements growing from `first` at both ends."""
    half, d, s = (b - a) / 2, first, 0.0
    steps = []
    while s + d < half:
        s += d
        steps.append(s)
        d *= ratio
    if steps and half - steps[-1] < 0.5 * (steps[-1] - (steps[-2] if len(steps) > 1 else 0.0)):
        steps.pop()
    steps = np.array(steps)
    return np.concatenate([[a], a + steps, [a + half], (b - steps)[::-1], [b]])
