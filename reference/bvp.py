"""Elastic-plastic overlap by collocation of the first-order system, yield fronts as unknowns.

Each element carries a polynomial of degree p that satisfies the differential equations at the
p+1 Lobatto points (in integrated form, order 2p). The overlap is cut into segments in which each
bond is elastic or plastic throughout; the cuts (yield fronts) are unknowns of the same Newton
iteration, with the equation |s_j| = s_e at the front, so that the law is smooth inside every
element and convergence is spectral. For capacity the load factor is one more unknown and the slip
at one end of one bond is prescribed. Where the fronts are is first found on a fine fixed mesh with
the law applied point by point, with a slight hardening that is then taken away.
"""

from functools import lru_cache

import numpy as np
from numpy.polynomial import legendre


@lru_cache(maxsize=None)
def lobatto(p):
    """Points on [0, 1], integration matrix from 0 to each point, inverse Legendre matrix."""
    inner = legendre.Legendre.basis(p).deriv().roots().real
    x = np.concatenate([[-1.0], np.sort(inner), [1.0]])
    v = legendre.legvander(x, p + 1)
    integral = np.empty((p + 1, p + 1))
    integral[:, 0] = x + 1
    for m in range(1, p + 1):
        integral[:, m] = (v[:, m + 1] - v[:, m - 1]) / (2 * m + 1)
    inverse = np.linalg.inv(v[:, : p + 1])
    return (x + 1) / 2, integral @ inverse / 2, inverse


class Failed(Exception):
    """Newton's iteration did not settle on the segments it was given."""


class Solution:
    """Elements, nodal states, the factor and the segments; evaluates anywhere."""

    def __init__(self, lap, edges, Y, factor, fronts, states):
        self.lap, self.edges, self.Y, self.factor = lap, edges, Y, factor
        self.fronts, self.states = fronts, states
        self.p = Y.shape[1] - 1

    def __call__(self, x):
        x = np.atleast_1d(np.asarray(x, float))
        e = np.clip(np.searchsorted(self.edges, x, side="right") - 1, 0, len(self.edges) - 2)
        h = self.edges[e + 1] - self.edges[e]
        r = 2 * (x - self.edges[e]) / h - 1
        coefficients = np.einsum("km,emn->ekn", lobatto(self.p)[2], self.Y)
        return np.einsum("xk,xkn->xn", legendre.legvander(r, self.p), coefficients[e])

    def slips(self, x):
        lap = self.lap
        return self(x)[:, : lap.C * lap.B].reshape(-1, lap.C, lap.B)

    def forces(self, x):
        lap = self.lap
        return self(x)[:, lap.C * lap.B :].reshape(-1, lap.C, lap.B)

    def size(self, x):
        """|s_j| [x, B]."""
        return np.sqrt(np.sum(self.slips(x) ** 2, axis=1))

    def ends(self):
        """|s_j|/s_u at root and mouth [2, B]."""
        return self.size([0.0, self.lap.length]) / self.lap.s_u

    def points(self, per=24):
        """Dense points, the ends of every element among them."""
        z = np.linspace(0, 1, per + 1)
        e = self.edges
        return np.unique(np.concatenate([(e[:-1, None] + np.diff(e)[:, None] * z).ravel(), [self.lap.length]]))


def linear_parts(lap, z):
    """A [..., n, n], b_load, b_thermal [..., n] of the slip rows at z = x/L (any shape)."""
    B, m = lap.B, lap.C * lap.B
    t, o = lap.flexibilities(z)
    shape = z.shape
    A = np.zeros(shape + (2 * m, 2 * m), dtype=np.asarray(t).dtype)
    bl = np.zeros(shape + (2 * m,), dtype=A.dtype)
    bt = np.zeros(shape + (2 * m,))
    for c in range(lap.C):
        for j in range(B):
            r, a = c * B + j, lap.lever[c, j]
            for i in range(B):
                A[..., r, m + c * B + i] -= a * t[c]
            A[..., r, m + r] -= a * o[c, j]
            bl[..., r] = a * lap.load[c] * t[c]
            bt[..., r] = lap.strain[c, j]
    return A, bl, bt


def law(lap, Y, plastic, eta):
    """-a c tau in the force rows, and its derivative by the slips. plastic: [E, B] or None (by point)."""
    C, B = lap.C, lap.B
    s = Y[..., : C * B].reshape(Y.shape[:-1] + (C, B))
    size = np.sqrt(np.sum(s * s, axis=-2))
    safe = np.where(size > 0, size, 1.0)
    on = size > lap.s_e if plastic is None else np.broadcast_to(plastic[:, None, :], size.shape)
    strength = lap.tau_p + eta * lap.k * (size - lap.s_e)
    unit = s / safe[..., None, :]
    tau = np.where(on[..., None, :], strength[..., None, :] * unit, lap.k * s)
    f = -(lap.lever * lap.width) * tau
    ratio = strength / safe
    J = np.zeros(Y.shape[:-1] + (C * B, C * B))
    for c in range(C):
        for d in range(C):
            uu = unit[..., c, :] * unit[..., d, :]
            slope = eta * lap.k * uu + ratio * ((1.0 if c == d else 0.0) - uu)
            slope = np.where(on, slope, lap.k if c == d else 0.0)
            for j in range(B):
                J[..., c * B + j, d * B + j] = -lap.lever[c, j] * lap.width[j] * slope[..., j]
    return f.reshape(Y.shape[:-1] + (C * B,)), J


def newton(lap, cuts, counts, states, Y, factor, p, control=None, eta=0.0, front_bonds=(), tol=1e-12, most=40):
    """cuts: segment ends with 0 and L; counts: elements in each; states [segment, B] or None.

    control: None (the factor is given) or (bond, end) whose |s| is to be s_u (factor unknown).
    Returns the Solution; raises Failed.
    """
    cuts = np.array(cuts, float)
    L, C, B = lap.length, lap.C, lap.B
    m = C * B
    n, E, S = 2 * m, int(sum(counts)), len(counts)
    xi, W, _ = lobatto(p)
    seg = np.repeat(np.arange(S), counts)
    lo = np.concatenate([np.arange(c) / c for c in counts])
    hi = np.concatenate([(np.arange(c) + 1) / c for c in counts])
    plastic = None if states is None else np.asarray(states)[seg]
    nf = S - 1
    extra = nf + (1 if control else 0)
    bscale = np.concatenate([np.tile(lap.s_u, C), np.ones(m)])
    nscale = max(np.max(np.abs(lap.load)), np.max(lap.width * lap.tau_p) * L * 1e-3)
    bscale[m:] = nscale
    size = (E + 1) * n + extra
    Wi = W[1:, 1:]
    Y = Y.copy()
    last = None
    for _ in range(most):
        left = cuts[seg] + (cuts[seg + 1] - cuts[seg]) * lo
        right = cuts[seg] + (cuts[seg + 1] - cuts[seg]) * hi
        h = right - left
        x = left[:, None] + h[:, None] * xi
        A, bl, bt = linear_parts(lap, x / L)
        fN, JN = law(lap, Y, plastic, eta)
        f = np.einsum("eqij,eqj->eqi", A, Y) + factor * bl + bt
        f[..., m:] += fN
        J = A.copy()
        J[..., m:, :m] += JN
        # f_x through tapers
        if lap.uniform or nf == 0:
            fx = np.zeros_like(f)
        else:
            step = 1e-25
            Ac, blc, _ = linear_parts(lap, x / L + 1j * step)
            fx = (np.einsum("eqij,eqj->eqi", Ac, Y) + factor * blc).imag / step / L
        residual = Y[:, 1:] - Y[:, :1] - h[:, None, None] * np.einsum("iq,eqn->ein", W[1:], f)
        # local Newton system in nodes 1..p
        M = -h[:, None, None, None, None] * np.einsum("iq,eqab->eiaqb", Wi, J[:, 1:])
        M = M.reshape(E, p * n, p * n) + np.eye(p * n)
        eye = np.broadcast_to(np.eye(n), (p, n, n))
        G0 = eye[None] + h[:, None, None, None] * np.einsum("i,eab->eiab", W[1:, 0], J[:, 0])
        integral = np.einsum("iq,eqn->ein", W[1:], f)
        gL = -integral + h[:, None, None] * np.einsum("iq,eqn->ein", W[1:] * (1 - xi), fx)
        gR = integral + h[:, None, None] * np.einsum("iq,eqn->ein", W[1:] * xi, fx)
        gF = h[:, None, None] * np.einsum("iq,eqn->ein", W[1:], bl)
        rhs = np.concatenate(
            [-residual.reshape(E, p * n, 1), G0.reshape(E, p * n, n)]
            + [g.reshape(E, p * n, 1) for g in (gL, gR, gF)],
            axis=2,
        )
        sol = np.linalg.solve(M, rhs)
        tail = sol[:, -n:, :]
        K, R = np.zeros((size, size)), np.zeros(size)
        for e in range(E):
            q = slice(e * n, (e + 1) * n)
            nxt = slice((e + 1) * n, (e + 2) * n)
            K[q, nxt] += np.eye(n) / bscale[:, None]
            K[q, q] -= tail[e, :, 1 : 1 + n] / bscale[:, None]
            R[q] = tail[e, :, 0] / bscale
            for cut, dl, dr in ((seg[e], 1 - lo[e], 1 - hi[e]), (seg[e] + 1, lo[e], hi[e])):
                if 0 < cut < S:
                    K[q, (E + 1) * n + cut - 1] -= (tail[e, :, n + 1] * dl + tail[e, :, n + 2] * dr) / bscale
            if control:
                K[q, -1] -= tail[e, :, n + 3] / bscale
        r = E * n
        y0, yL = Y[0, 0], Y[-1, -1]
        for c in range(C):
            for j in range(B):  # N_cj(L) = 0
                K[r, E * n + m + c * B + j] = 1 / nscale
                R[r] = -yL[m + c * B + j] / nscale
                r += 1
            for j in range(B):  # sum N(0) = f P
                K[r, m + c * B + j] = 1 / nscale
            R[r] = -(np.sum(y0[m + c * B : m + (c + 1) * B]) - factor * lap.load[c]) / nscale
            if control:
                K[r, -1] = -lap.load[c] / nscale
            r += 1
            if B == 2:  # one piece of metal behind the root
                w = 1 / lap.lever[c] / lap.s_u[0]
                K[r, c * B], K[r, c * B + 1] = w[0], -w[1]
                R[r] = -(y0[c * B] * w[0] - y0[c * B + 1] * w[1])
                r += 1
        starts = np.concatenate([[0], np.cumsum(counts)])
        for i, j in enumerate(front_bonds):
            node = starts[i + 1]
            y = Y[node, 0]
            s = y[:m].reshape(C, B)[:, j]
            mag = np.linalg.norm(s)
            for c in range(C):
                K[r, node * n + c * B + j] = s[c] / mag / lap.s_e[j]
            R[r] = -(mag - lap.s_e[j]) / lap.s_e[j]
            r += 1
        if control:
            j, end = control
            base, y = (0, y0) if end == 0 else (E * n, yL)
            s = y[:m].reshape(C, B)[:, j]
            mag = np.linalg.norm(s)
            for c in range(C):
                K[r, base + c * B + j] = s[c] / mag / lap.s_u[j]
            R[r] = -(mag - lap.s_u[j]) / lap.s_u[j]
            r += 1
        assert r == size
        # columns scaled too
        col = np.concatenate([np.tile(bscale, E + 1), np.full(nf, L), np.ones(1 if control else 0)])
        try:
            d = np.linalg.solve(K * col, R) * col
        except np.linalg.LinAlgError as error:
            raise Failed("singular") from error
        if not np.all(np.isfinite(d)):
            raise Failed("not finite")
        dY0 = d[: (E + 1) * n].reshape(E + 1, n)
        dcut = np.concatenate([[0.0], d[(E + 1) * n : (E + 1) * n + nf], [0.0]])
        dfac = d[-1] if control else 0.0
        damp = 1.0
        if nf:
            widths, change = np.diff(cuts), np.diff(dcut)
            bad = (change < 0) & (widths > 1e-3 * L)  # narrow ones may turn inside out: the caller sorts them
            if np.any(bad):
                damp = min(1.0, float(np.min(-0.8 * widths[bad] / change[bad])))
            if damp < 1e-4:
                raise Failed("a segment closes")
        dl = dcut[seg] + (dcut[seg + 1] - dcut[seg]) * lo
        dr = dcut[seg] + (dcut[seg + 1] - dcut[seg]) * hi
        inner = sol[:, :, 0] + np.einsum("eij,ej->ei", sol[:, :, 1 : 1 + n], dY0[:-1])
        inner += sol[:, :, n + 1] * dl[:, None] + sol[:, :, n + 2] * dr[:, None] + sol[:, :, n + 3] * dfac
        Y[:, 0] += damp * dY0[:-1]
        Y[:, 1:] += damp * inner.reshape(E, p, n)
        cuts = cuts + damp * dcut
        factor = factor + damp * dfac
        change = max(np.max(np.abs(dY0 / bscale)), np.max(np.abs(dcut)) / L, abs(dfac) / max(1e-3, abs(factor)))
        if not np.isfinite(change) or change > 1e8:
            raise Failed("diverges")
        if damp == 1.0 and (change < tol or (last is not None and change < 100 * tol and change >= 0.5 * last)):
            edges = np.append(cuts[seg] + (cuts[seg + 1] - cuts[seg]) * lo, L)
            return Solution(lap, edges, Y, factor, cuts[1:-1], states)
        last = change
    raise Failed("no end of iterations")
