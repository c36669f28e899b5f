"""Finds the segments, polishes them, and answers: given load, capacity, trough.

`solve` for a given load factor, `capacity` for the factor at which a slip at an end reaches s_u
(or everything is plastic), `trough` for the factor at which the lowest |tau| is a tenth of tau_p.
"""

import numpy as np
from bvp import Failed, Solution, lobatto, newton
from scipy.optimize import brentq, minimize_scalar


def _start(lap, p, count, control, factor):
    """Elastic solution on uniform elements (for capacity: scaled so that the slip is s_u)."""
    n = 2 * lap.C * lap.B
    zero = np.zeros((count, p + 1, n))
    elastic = [np.zeros(lap.B, bool)]
    if control is None:
        return newton(lap, [0, lap.length], [count], elastic, zero, factor, p)
    heat = newton(lap, [0, lap.length], [count], elastic, zero, 0.0, p)
    unit = newton(lap, [0, lap.length], [count], elastic, zero, 1.0, p)
    j, end = control
    x = 0.0 if end == 0 else lap.length
    t, u = heat.slips(x)[0, :, j], unit.slips(x)[0, :, j]
    u = u - t
    a, b, c = u @ u, 2 * u @ t, t @ t - lap.s_u[j] ** 2
    if c >= 0:
        f = 0.0
    else:
        f = (-b + np.sqrt(b * b - 4 * a * c)) / (2 * a)
    return Solution(lap, unit.edges, heat.Y + f * (unit.Y - heat.Y), f, [], elastic)


def _fronts(sol):
    """Cuts, front bonds, states of the segments as the solution shows them."""
    lap = sol.lap
    x = sol.points(16)
    g = sol.size(x) / lap.s_e - 1.0
    found = []
    for j in range(lap.B):
        up = g[:, j] > 0
        for i in np.nonzero(up[1:] != up[:-1])[0]:
            w = g[i, j] / (g[i, j] - g[i + 1, j])
            found.append((x[i] + w * (x[i + 1] - x[i]), j))
    found.sort()
    cuts, bonds = [0.0], []
    for at, j in found:
        at = min(max(at, cuts[-1] + 1e-9 * lap.length), lap.length * (1 - 1e-9))
        cuts.append(at)
        bonds.append(j)
    cuts.append(lap.length)
    state = g[0] > 0
    states = [state.copy()]
    for j in bonds:
        state = state.copy()
        state[j] = not state[j]
        states.append(state)
    return cuts, bonds, states


def _polish(sol, p, fine, control, segments=None, reach=2.0, depth=0):
    """Newton with the fronts as unknowns; checks that each segment is what it was taken for."""
    lap = sol.lap
    cuts, bonds, states = segments or _fronts(sol)
    w = float(np.max(lap.rates()))
    counts = [
        int(fine * max(2, min(40, np.ceil(w * (b - a) / reach)))) for a, b in zip(cuts[:-1], cuts[1:])
    ]
    xi = lobatto(p)[0]
    edges = np.concatenate([a + (b - a) * np.arange(c) / c for a, b, c in zip(cuts[:-1], cuts[1:], counts)])
    edges = np.append(edges, lap.length)
    x = edges[:-1, None] + np.diff(edges)[:, None] * xi
    Y = sol(x.ravel()).reshape(x.shape + (-1,))
    out = newton(lap, cuts, counts, states, Y, sol.factor, p, control, 0.0, bonds)
    widths = np.diff([0.0, *out.fronts, lap.length])
    if np.any(widths < -1e-12 * lap.length):
        # two fronts have passed one another: put them in order and go on from there
        order = np.argsort(out.fronts, kind="stable")
        if depth > 3 or min(out.fronts) < 0 or max(out.fronts) > lap.length:
            raise Failed("fronts out of order")
        cuts, bonds = [0.0, *out.fronts[order], lap.length], [bonds[i] for i in order]
        states = [states[0]]
        for j in bonds:
            state = states[-1].copy()
            state[j] = not state[j]
            states.append(state)
        start = Solution(lap, sol.edges, sol.Y, out.factor, [], None)
        return _polish(start, p, fine, control, (cuts, bonds, states), reach, depth + 1)
    mid = out.points(12)
    g = out.size(mid) / lap.s_e - 1.0
    seg = np.searchsorted(np.asarray(out.fronts), mid, side="left") if len(out.fronts) else np.zeros(len(mid), int)
    edge = np.zeros(len(mid), bool)
    for f in out.fronts:
        edge |= np.abs(mid - f) < 1e-9 * lap.length
    shown = g > 0
    wrong = (shown != np.array(states)[seg]) & (np.abs(g) > 1e-10) & ~edge[:, None]
    if np.any(wrong):
        raise Failed("a segment is not what it was taken for")
    out.bonds = bonds
    return out


def _find(lap, control, factor, p, fine, warm=None):
    if warm is not None:
        try:
            start = Solution(lap, warm.edges, warm.Y, factor if control is None else warm.factor, [], None)
            segments = ([0.0, *warm.fronts, lap.length], warm.bonds, warm.states)
            return _polish(start, p, fine, control, segments)
        except (Failed, np.linalg.LinAlgError):
            pass
    w = float(np.max(lap.rates()))
    reason = None
    for count, q in ((int(min(160, max(40, w * lap.length * 1.5))), 4), (240, 4)):
        sol = _start(lap, q, count, control, factor)
        try:
            return _polish(sol, p, fine, control)
        except Failed as error:
            reason = error
        # thermal strain and load together, hardening taken away step by step
        for eta in (0.3, 0.1, 0.03, 0.01, 3e-3, 1e-3, 3e-4, 1e-4, 1e-5, 1e-6, 1e-7, 1e-8, 0.0):
            try:
                sol = newton(lap, [0, lap.length], [count], None, sol.Y, sol.factor, q, control, eta, tol=1e-9, most=60)
            except Failed as error:
                reason = error
                if eta >= 0.1:
                    break
                continue
            if eta > 0.02:
                continue
            try:
                return _polish(sol, p, fine, control)
            except Failed as error:
                reason = error
    raise Failed(str(reason))


def solve(lap, factor=1.0, p=12, fine=1, warm=None):
    return _find(lap, None, factor, p, fine, warm)


def everything_plastic(sol):
    x = sol.points(12)
    return bool(np.all(sol.size(x) > sol.lap.s_e * (1 - 1e-9)))


def capacity(lap, p=12, fine=1, warm=None):
    """Smallest factor >= 0 at which |s_j| = s_u,j at an end of a bond; (Solution, (bond, end) or None).

    With the slip prescribed, the state in which everything is plastic has its factor too: the
    second answer is then None, the load cannot grow whatever the slip.
    """
    heat = solve(lap, 0.0, p, fine)
    if np.max(heat.ends()) >= 1.0:
        i, j = np.unravel_index(np.argmax(heat.ends()), (2, lap.B))
        return heat, (int(j), int(i))
    if warm is not None:
        control = warm.control
    else:
        guess = solve_elastic_ends(lap)
        control = guess
    tried = []
    for _ in range(2 * 2 * lap.B):
        sol = _find(lap, control, 1.0, p, fine, warm if warm is not None and warm.control == control else None)
        tried.append(control)
        ends = sol.ends()
        i, j = np.unravel_index(np.argmax(ends), (2, lap.B))
        if ends[i, j] <= 1 + 1e-9:
            if sol.factor < 0:
                raise Failed("negative factor")
            sol.control = control
            return sol, (None if everything_plastic(sol) and lap.C == 1 else control)
        control = (int(j), int(i))
        if control in tried:
            raise Failed("no first end")
    raise Failed("no first end")


def solve_elastic_ends(lap):
    """The (bond, end) that reaches s_u first by the elastic solution."""
    best = None
    for j in range(lap.B):
        for end in (0, 1):
            f = _start(lap, 6, int(max(8, np.max(lap.rates()) * lap.length)), (j, end), 1.0).factor
            if best is None or f < best[0]:
                best = (f, (j, end))
    return best[1]


def lowest_shear(sol, bond):
    """min |tau_j| / tau_p,j along the bond and where."""
    lap = sol.lap
    x = sol.points(16)
    g = sol.size(x)[:, bond]
    i = int(np.argmin(g))
    lo, hi = x[max(0, i - 1)], x[min(len(x) - 1, i + 1)]
    best, at = g[i], x[i]
    if lap.C == 1:
        s = sol.slips(x)[:, 0, bond]
        cross = np.nonzero(np.sign(s[1:]) != np.sign(s[:-1]))[0]
        if len(cross):
            q = cross[0]
            at = brentq(lambda v: sol.slips(v)[0, 0, bond], x[q], x[q + 1], xtol=1e-14)
            return 0.0, at
    if hi > lo:
        r = minimize_scalar(lambda v: sol.size(v)[0, bond] ** 2, bounds=(lo, hi), method="bounded", options={"xatol": 1e-10})
        if np.sqrt(r.fun) < best:
            best, at = float(np.sqrt(r.fun)), float(r.x)
    return min(1.0, best / lap.s_e[bond]), at


def trough(lap, bond, most, p=12, fine=1, target=0.1, scan=24):
    """First factor below `most` at which the lowest |tau_j| is target * tau_p, or None."""
    last = {"sol": None}

    def over(f):
        sol = solve(lap, f, p, fine, last["sol"])
        last["sol"] = sol
        return lowest_shear(sol, bond)[0] - target

    if over(0.0) >= 0:
        return 0.0
    below = 0.0
    for f in most * np.append(np.arange(1, scan) / scan, 1 - 1e-9):
        if over(f) >= 0:
            return brentq(over, below, f, xtol=1e-13, rtol=1e-12)
        below = f
    return None


def assert_first(lap, factor, p=10, scan=16):
    """No slip at an end is at its limit at any smaller factor."""
    sol = None
    for f in factor * np.arange(0, scan) / scan:
        sol = solve(lap, f, p, 1, sol)
        assert np.max(sol.ends()) < 1, f"an end fails before, at {f}"
