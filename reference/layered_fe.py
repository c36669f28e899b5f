"""One-dimensional finite elements of high degree for the virtual work of layered_joint.py.

Integrated Legendre functions, elements graded geometrically towards every end and yield front.
Elements and residuals in extended precision; a sparse LU factor in double corrects the residual until
it no longer falls, so that the answer is not limited by the stiffness of thin long walls.
"""

import numpy as np
from layered_joint import LD
from layered_shapes import gauss, graded, shapes
from scipy.optimize import brentq, minimize_scalar
from scipy.sparse import coo_matrix
from scipy.sparse.linalg import splu


class Solution:
    def __init__(self, joint, p=11, ratio=1.6, first=0.05, fronts=()):
        self.joint, self.p = joint, p
        self.first = min(first, joint.overlap / 8)
        self.mesh(ratio, sorted(fronts))
        self.points, self.weights = gauss(p + 3)
        self.N, self.dN = shapes(p, self.points)
        self.number()

    def mesh(self, ratio, fronts):
        self.elements, self.blocks = [], []  # (x0, x1), stretch
        for a, b, *rest in self.joint.stretches():
            cuts = [a, *[f for f in fronts if a < f < b], b]
            for c, d in zip(cuts[:-1], cuts[1:]):
                x = graded(c, d, min(self.first, (d - c) / 4), ratio)
                self.elements += list(zip(x[:-1], x[1:]))
                self.blocks += [rest] * (len(x) - 1)
        self.x0 = np.array([e[0] for e in self.elements])
        self.x1 = np.array([e[1] for e in self.elements])

    def number(self):
        self.node, self.dofs, count = {}, [], 0
        for (a, b), (active, _, _) in zip(self.elements, self.blocks):
            ids = np.zeros((len(active), 3, self.p + 1), int)
            for k, i in enumerate(active):
                for c in range(3):
                    key = (a, i, c)
                    if key not in self.node:
                        self.node[key] = count
                        count += 1
                    ids[k, c, 0] = self.node[key]
            inner = ids[:, :, 2:]
            inner[...] = count + np.arange(inner.size).reshape(inner.shape)
            count += inner.size
            for k, i in enumerate(active):
                for c in range(3):
                    key = (b, i, c)
                    if key not in self.node:
                        self.node[key] = count
                        count += 1
                    ids[k, c, 1] = self.node[key]
            self.dofs.append(ids.reshape(3 * len(active), -1))
        self.count = count

    def at(self, e):
        """Gauss points of element e in x."""
        a, b = LD(self.x0[e]), LD(self.x1[e])
        return (a + b) / 2 + (b - a) / 2 * self.points

    def assemble(self, status=None):
        """status: {element: (q, B)}."""
        self.K, self.F = [], []
        for e, (active, kappa, bonded) in enumerate(self.blocks):
            J = (LD(self.x1[e]) - LD(self.x0[e])) / 2
            H, g = self.joint.law(active, self.at(e), kappa, bonded, None if status is None else status.get(e))
            m, wq = 3 * len(active), (self.weights * J)[:, None, None]
            A = (self.N, self.dN / J)
            K, F = 0, 0
            for r in range(2):
                F = F - np.einsum("qk,aq->ka", wq[:, 0] * g[:, r * m : (r + 1) * m], A[r])
                for s in range(2):
                    block = wq * H[:, r * m : (r + 1) * m, s * m : (s + 1) * m]
                    pair = A[r][:, None, :] * A[s][None, :, :]  # a b q
                    part = pair.reshape(-1, len(wq)) @ block.reshape(len(wq), -1)
                    K = K + part.reshape(self.p + 1, self.p + 1, m, m)
            self.K.append(K.transpose(2, 0, 3, 1).reshape(m * (self.p + 1), -1))
            self.F.append(F.reshape(-1))

    def solve(self, status=None):
        self.assemble(status)
        F = np.zeros(self.count, LD)
        rows, cols, vals = [], [], []
        for ids, K, f in zip(self.dofs, self.K, self.F):
            v = ids.reshape(-1)
            np.add.at(F, v, f)
            rows.append(np.repeat(v, len(v)))
            cols.append(np.tile(v, len(v)))
            vals.append(K.reshape(-1).astype(float))
        forces, held = self.joint.ends()
        for x, i, N, Q, M in forces:
            a = self.joint.offset(i, np.array([x], LD))[0]
            F[self.node[(x, i, 0)]] += N
            F[self.node[(x, i, 1)]] += Q
            F[self.node[(x, i, 2)]] += M + a * N  # N works on u = U + a phi
        keep = np.ones(self.count, bool)
        keep[[self.node[h] for h in held]] = False
        free = np.nonzero(keep)[0]
        A = coo_matrix((np.concatenate(vals), (np.concatenate(rows), np.concatenate(cols)))).tocsc()
        A = A[free][:, free]
        s = 1 / np.sqrt(np.abs(A.diagonal()))
        lu = splu(A.multiply(s[:, None]).multiply(s[None, :]).tocsc())
        d = np.zeros(self.count, LD)
        for h, value in held.items():
            d[self.node[h]] = value
        before = np.inf
        for _ in range(12):
            r = F.copy()
            for ids, K in zip(self.dofs, self.K):
                v = ids.reshape(-1)
                np.subtract.at(r, v, K @ d[v])
            step = np.zeros(self.count, LD)
            step[free] = s * lu.solve((s * r[free].astype(LD)).astype(float))
            size = np.max(np.abs(step[free] / s))
            if size > 0.5 * before:
                break
            d += step
            before = size
        r = F.copy()
        for ids, K in zip(self.dofs, self.K):
            np.subtract.at(r, ids.reshape(-1), K @ d[ids.reshape(-1)])
        self.reaction = {h: -r[self.node[h]] for h in held}
        self.d = d
        return self

    def element(self, x, bonded=None):
        """The element of x; where two meet, one of the bonded stretch."""
        hits = np.nonzero((self.x0 <= x) & (x <= self.x1))[0]
        if bonded is not None:
            hits = [e for e in hits if self.blocks[e][2] == bonded]
        return int(hits[0])

    def state(self, e, x):
        """y at the points x of element e."""
        x = np.atleast_1d(np.asarray(x, LD))
        a, b = LD(self.x0[e]), LD(self.x1[e])
        N, dN = shapes(self.p, (2 * x - a - b) / (b - a))
        d = self.d[self.dofs[e]]
        return np.concatenate([d @ N, d @ dN * 2 / (b - a)]).T

    def of(self, stretch):
        """Which elements belong to a stretch."""
        return (self.x0 >= stretch[0]) & (self.x1 <= stretch[1])

    def first_order(self, stretch, x):
        """U, w, phi and the totals n, q, m of layered_check.py, wall by wall, at points of a stretch."""
        joint, active = self.joint, stretch[2]
        hits = np.nonzero(self.of(stretch))[0]
        out = np.zeros((6 * len(active), len(x)))
        for p, v in enumerate(x):
            e = hits[np.clip(np.searchsorted(self.x0[hits], v, side="right") - 1, 0, len(hits) - 1)]
            y, z = self.state(e, v)[0], np.array([v], LD)
            for k, (i, parts) in enumerate(joint.rows(active, z, stretch[3]).items()):
                R = joint.mean_radius(i, z)[0]
                N, _, M, Q = [R * (s[0] @ y + s0[0]) for _, s, s0 in parts]
                m = M + joint.offset(i, z)[0] * N
                for j, side in ((i - 1, -1), (i, 1)):
                    if stretch[4] and 0 <= j < len(joint.bonds):
                        N += joint.pull(j)
                        m += (joint.offset(i, z)[0] - side * joint.thickness(i, z)[0] / 2) * joint.pull(j)
                out[6 * k : 6 * k + 6, p] = [*y[3 * k : 3 * k + 3], N, Q, m]
        return out

    def stresses(self, e, x):
        """tau (tension positive), sigma per bond; each wall's own whole N, and N_t, M, Q, at points of element e."""
        j, (active, kappa, _) = self.joint, self.blocks[e]
        x = np.atleast_1d(np.asarray(x, LD))
        y = self.state(e, x)
        walls = []
        for i, parts in j.rows(active, x, kappa).items():
            v = [np.einsum("qy,qy->q", s, y) + s0 for _, s, s0 in parts]
            walls.append([j.turn * j.mean_radius(i, x) * v[0], v[1], v[2], v[3]])
        slip, C = j.slip_rows(x)
        tau = self.shear(np.einsum("jqy,qy->qj", slip, y), C)[0]
        shear = [j.sign(k) * tau[:, k] for k in range(len(j.bonds))]
        peel = [np.einsum("qy,qy->q", r, y) + r0 - j.end_lack(k, x) for k, (r, r0) in enumerate(j.peel_rows(x))]
        return np.array(shear), np.array(peel), np.array(walls)

    def shear(self, slip, C):
        """(tau, status) of slips (q, B): elastic, or the nearest of the box |tau| <= yield in energy."""
        j = self.joint
        T, _ = j.shear_law(C, None)
        tau = np.einsum("qjk,qk->qj", T, slip)
        status = np.zeros(tau.shape, int)
        if any(b.shearYield is None for b in j.bonds):
            return tau, status
        cap = np.array([b.shearYield for b in j.bonds], LD)
        for q in np.nonzero(np.any(np.abs(tau) > cap, axis=1))[0]:
            tau[q] = np.clip(tau[q], -cap, cap)
            for _ in range(400):  # exact coordinate descent of a small convex problem
                old = tau[q].copy()
                for k in range(len(cap)):
                    rest = slip[q, k] - C[q, k] @ tau[q] + C[q, k, k] * tau[q, k]
                    tau[q, k] = np.clip(rest / C[q, k, k], -cap[k], cap[k])
                if np.array_equal(old, tau[q]):
                    break
            status[q] = np.where(np.abs(tau[q]) >= cap, np.sign(tau[q]), 0)
        return tau, status

    def statuses(self):
        out = {}
        for e, block in enumerate(self.blocks):
            if block[2]:
                x = self.at(e)
                slip, C = self.joint.slip_rows(x)
                out[e] = self.shear(np.einsum("jqy,qy->qj", slip, self.state(e, x)), C)[1]
        return out

    def excess(self, j, e, x):
        """Trial shear of bond j beyond its yield, the other bonds being as they are; plus sign."""
        slip, C = self.joint.slip_rows(np.atleast_1d(np.asarray(x, LD)))
        s = np.einsum("jqy,qy->qj", slip, self.state(e, x))
        tau = self.shear(s, C)[0]
        own = np.einsum("qk,qk->q", C[:, j], tau) - C[:, j, j] * tau[:, j]
        trial = (s[:, j] - own) / C[:, j, j]
        return np.abs(trial) - LD(self.joint.bonds[j].shearYield)

    def fronts(self):
        out = []
        for e, block in enumerate(self.blocks):
            if not block[2]:
                continue
            x = np.linspace(self.x0[e], self.x1[e], 25)
            for j in range(len(self.joint.bonds)):
                f = self.excess(j, e, x)
                for k in np.nonzero(np.sign(f[:-1]) * np.sign(f[1:]) < 0)[0]:
                    g = lambda z: float(self.excess(j, e, z)[0])
                    out.append((brentq(g, x[k], x[k + 1], xtol=1e-13), j))
        return sorted(out)

    def peaks(self, channel, j):
        """[(largest, x), (smallest, x)] of shear (0) or peel (1) of bond j in the overlap."""
        best = [(-np.inf, 0), (np.inf, 0)]
        for e, block in enumerate(self.blocks):
            if not block[2]:
                continue
            x = np.linspace(self.x0[e], self.x1[e], 31)
            v = self.stresses(e, x)[channel][j].astype(float)
            for s, sign in ((0, 1), (1, -1)):
                k = int(np.argmax(sign * v))
                if sign * v[k] > sign * best[s][0]:
                    best[s] = (v[k], x[k], e)
        out = []
        for (v, x, e), sign in zip(best, (1, -1)):
            step = (self.x1[e] - self.x0[e]) / 30
            lo, hi = max(self.x0[e], x - step), min(self.x1[e], x + step)
            f = lambda z: -sign * float(self.stresses(e, z)[channel][j][0])
            r = minimize_scalar(f, bounds=(lo, hi), method="bounded", options={"xatol": 1e-9})
            out.append((-sign * r.fun, r.x) if -r.fun > sign * v else (v, x))
        return out

    def carried(self, j):
        """Force that bond j carries, by quadrature."""
        total = LD(0)
        for e, block in enumerate(self.blocks):
            if block[2]:
                J = (LD(self.x1[e]) - LD(self.x0[e])) / 2
                total += J * np.sum(self.weights * self.stresses(e, self.at(e))[0][j])
        return self.joint.turn * self.joint.bond_radius(j) * total


def solve(joint, p=11, ratio=1.6, first=0.05):
    """Elastic, or with the shear of every bond capped; yield fronts become nodes until they settle."""
    s = Solution(joint, p, ratio, first).solve()
    if all(b.shearYield is None for b in joint.bonds):
        return s
    found = []
    for turn in range(12):
        status = s.statuses()
        for _ in range(60):
            s.solve(status)
            new = s.statuses()
            if all(np.array_equal(new[e], status[e]) for e in status):
                break
            status = new
        else:
            print("   statuses did not settle on this mesh")
        last, found = found, [x for x, _ in s.fronts()]
        if len(last) == len(found) and np.allclose(last, found, atol=1e-11, rtol=0):
            return s
        old = s
        s = Solution(joint, p, ratio, first, [x for x in found if 1e-9 < x < joint.overlap - 1e-9])
        s.d = np.zeros(s.count, LD)
        carry(old, s)
    print("   fronts moved last by", np.max(np.abs(np.array(last) - found)) if len(last) == len(found) else "?")
    return s


def carry(old, new):
    """Start the new mesh from the old statuses: interpolate (nodes and bubbles by least squares)."""
    z = np.linspace(-1, 1, 3 * new.p)
    N, _ = shapes(new.p, z)
    fit = np.linalg.pinv(N.T.astype(float))
    for e, block in enumerate(new.blocks):
        x = (new.x0[e] + new.x1[e]) / 2 + (new.x1[e] - new.x0[e]) / 2 * z
        x = np.clip(x, new.x0[e], new.x1[e])
        y = np.array([old.state(old.element(v, block[2]), v)[0] for v in x])
        new.d[new.dofs[e]] = (fit @ y[:, : 3 * len(block[0])].astype(float)).T
