"""Lowest factor over the clocking for each mode of one joint, case and gap state.

Elastic modes: every 3 degrees and a dense grid along the bond, then refined in both. Elastic-plastic
modes: every 15 degrees, then refined around the two lowest. Angles in radians inside.
"""

import math

import numpy as np
from bvp import Failed
from overlap import capacity, lowest_shear, solve, trough
from scipy.optimize import minimize_scalar

INFINITE = math.inf


def quadratic(a, b, c):
    """Smallest factor f >= 0 with a f^2 + 2 b f + c = 0, for arrays; c >= 0 means 0."""
    a, b, c = np.broadcast_arrays(np.asarray(a, float), b, c)
    with np.errstate(all="ignore"):
        root = np.sqrt(np.maximum(b * b - a * c, 0))
        # the positive root, written without cancellation
        f = np.where(b <= 0, (-b + root) / a, -c / (b + root))
    f = np.where(a > 0, f, INFINITE)
    return np.where(c >= 0, 0.0, f)


class Elastic:
    """Unit and thermal elastic solutions at a clocking, kept for each weight of force and moment."""

    def __init__(self, joint):
        self.joint, self.kept, self.hoop = joint, {}, None
        ends = np.concatenate([[0.0], np.geomspace(1e-4, 0.2, 120)])
        self.grid = np.unique(np.concatenate([ends, 1 - ends, np.linspace(0.2, 0.8, 121)])) * joint.length

    def at(self, theta, x=None):
        """(axial per unit load, axial thermal, hoop per unit load), each (tau [x, bond], N [x, bond])."""
        j = self.joint
        key = round(j.weights(theta)[0], 15)
        if key not in self.kept:
            channel = j.axial(theta)
            self.kept[key] = [j.linear(channel, 1.0, False), j.linear(channel, 0.0, True), {}]
        unit, heat, cache = self.kept[key]
        if self.hoop is None and j.hoop_loaded():
            self.hoop = j.linear(j.hoop(0.0), 1.0, False)
            self.hoop_grid = self._read(self.hoop, self.grid)
        if x is None:
            if not cache:
                cache["unit"], cache["heat"] = self._read(unit, self.grid), self._read(heat, self.grid)
            hoop = self.hoop_grid if self.hoop is not None else self._none(len(self.grid))
            return cache["unit"], cache["heat"], hoop
        hoop = self._read(self.hoop, x) if self.hoop is not None else self._none(len(x))
        return self._read(unit, x), self._read(heat, x), hoop

    def _none(self, n):
        z = np.zeros((n, len(self.joint.bonds)))
        return z, z

    @staticmethod
    def _read(sol, x):
        return sol.slips(x)[:, 0] * sol.lap.k, sol.forces(x)[:, 0]

    def loads(self, theta):
        j = self.joint
        if j.flat:
            return j.F, 0.0
        return j.F + 2 * j.M * math.cos(theta) / j.reference, j.T / j.reference + 2 * j.V * math.sin(theta)

    def shear_factor(self, theta, allowed, x=None):
        """Factor [x, bond] at which the resultant elastic shear is `allowed`."""
        unit, heat, hoop = self.at(theta, x)
        P, Q = self.loads(theta)
        a = (P * unit[0]) ** 2 + (Q * hoop[0]) ** 2
        return quadratic(a, P * unit[0] * heat[0], heat[0] ** 2 - allowed**2)

    def shear(self, theta, x=None):
        unit, heat, hoop = self.at(theta, x)
        P, Q = self.loads(theta)
        return np.hypot(P * unit[0] + heat[0], Q * hoop[0])

    def stresses(self, theta, x, member):
        """(axial by the loads, axial by temperature, shear) in one member at x: sections 4 and 8."""
        j = self.joint
        xs = self.grid if x is None else x
        unit, heat, hoop = self.at(theta, x)
        z = xs / j.length
        m = j.members[member]
        pick = lambda N: -np.sum(N, axis=1) if member == 0 else N[:, member - 1]
        first = 1.0 if member == 0 else 0.0
        axial, thermal, around = first + pick(unit[1]), pick(heat[1]), first + pick(hoop[1])
        area = m.area(z)
        if j.flat:
            return axial * j.F / area, thermal / area, 0.0 * axial
        outside = m.radii(z)[1]
        sigma = axial * (j.F / area + j.M * outside * math.cos(theta) / m.inertia(z))
        tau = np.zeros_like(sigma)
        if j.hoop_loaded():
            tau = around * (j.T * outside / (2 * m.inertia(z)) + 2 * j.V * math.sin(theta) / area)
        return sigma, thermal / area, tau

    def wall_factor(self, theta, member, mode, x=None):
        sigma, heat, tau = self.stresses(theta, x, member)
        data = self.joint.members[member].material.data
        if mode.startswith("metal"):
            s = data["yieldStrength" if mode == "metal-yield" else "ultimateStrength"]
            return quadratic((sigma**2 + 3 * tau**2) / s**2, sigma * heat / s**2, heat**2 / s**2 - 1)
        best = np.full(np.shape(sigma), INFINITE)
        S = data["shearStrength"]
        for X, sign in ((data["tensileStrength"], 1), (data["compressiveStrength"], -1)):
            f = quadratic(sigma**2 / X**2 + tau**2 / S**2, sigma * heat / X**2, heat**2 / X**2 - 1)
            with np.errstate(all="ignore"):
                total = f * sigma + heat
            valid = np.isfinite(f) & (total * sign >= -1e-12 * X)
            best = np.where(valid & (f < best), f, best)
        return best


def clockings(joint, step):
    """Angles to look at: one where nothing depends on it, half a turn where it is symmetric."""
    if joint.flat or (joint.M == 0 and joint.V == 0):
        return np.array([0.0])
    half = joint.V == 0 or joint.T == 0
    return np.radians(np.arange(0, 181 if half else 360, step))


def lowest(joint, function, step, refine=2, xatol=1e-7):
    """(value, theta) of the lowest function(theta); theta None where it plays no part."""
    angles = clockings(joint, step)
    if len(angles) == 1:
        return function(0.0), None
    values = np.array([function(t) for t in angles])
    best, at = float(np.min(values)), float(angles[np.argmin(values)])
    if not math.isfinite(best):
        return best, at
    n = len(angles)
    closed = abs(angles[-1] - math.pi) > 1e-9
    neighbour = lambda i: values[i % n] if closed else values[min(max(i, 0), n - 1)]
    local = [i for i in range(n) if values[i] <= neighbour(i - 1) and values[i] <= neighbour(i + 1) and math.isfinite(values[i])]
    width = math.radians(step)
    for i in sorted(local, key=lambda i: values[i])[:refine]:
        r = minimize_scalar(function, bounds=(angles[i] - width, angles[i] + width), method="bounded", options={"xatol": xatol})
        if r.fun < best * (1 - 1e-10):
            best, at = float(r.fun), float(r.x)
    return best, at


def refine_x(x, values, function):
    """Lowest over x, refined between the neighbours of the lowest on the grid."""
    i = int(np.argmin(values))
    best, at = float(values[i]), float(x[i])
    if 0 < i < len(x) - 1 and math.isfinite(best):
        r = minimize_scalar(lambda v: float(function(np.array([v]))), bounds=(x[i - 1], x[i + 1]), method="bounded", options={"xatol": 1e-9})
        if r.fun < best * (1 - 1e-12):
            best, at = float(r.fun), float(r.x)
    return best, at


def elastic_lowest(elastic, over_x):
    """over_x(theta, x or None) -> factors along x. (factor, x, theta)."""
    grid = elastic.grid
    at = lambda theta: refine_x(grid, over_x(theta, None), lambda x: over_x(theta, x)[0])
    value, theta = lowest(elastic.joint, lambda t: float(np.min(over_x(t, None))), 3.0)
    t = 0.0 if theta is None else theta
    best, x = at(t)
    if theta is not None:
        fine, again = lowest_near(lambda v: at(v)[0], t, math.radians(0.5))
        if fine < best * (1 - 1e-11):
            best, theta = fine, again
            x = at(again)[1]
    return best, x, theta


def lowest_near(function, t, width):
    r = minimize_scalar(function, bounds=(t - width, t + width), method="bounded", options={"xatol": 1e-8})
    return float(r.fun), float(r.x)


class Plastic:
    """Capacity and trough at a clocking, with what has been found kept."""

    def __init__(self, joint):
        self.joint, self.kept = joint, {}

    def capacity(self, theta):
        """(factor, where) with where (bond, end), None for everything plastic."""
        key = round(theta, 12)
        if key not in self.kept:
            lap = self.joint.lap(theta)
            scale = abs(self.joint.F) + (0 if self.joint.flat else 2 * abs(self.joint.M) / self.joint.reference)
            if np.max(np.abs(lap.load)) <= 1e-9 * max(scale, 1e-300):
                hot = solve(lap, 0.0)
                self.kept[key] = (0.0 if np.max(hot.ends()) >= 1 else INFINITE, None)
            else:
                sol, where = capacity(lap)
                self.kept[key] = (float(sol.factor), where)
        return self.kept[key]

    def trough(self, theta, bond, most):
        """Factor at which the bond loses its trough, `most` if not before."""
        lap = self.joint.lap(theta)
        top = min(most, self.capacity(theta)[0])
        if not math.isfinite(top):
            return INFINITE
        found = trough(lap, bond, top, p=10, scan=10)
        return top if found is None else found


__all__ = ["Elastic", "Failed", "Plastic", "elastic_lowest", "lowest", "lowest_shear"]
