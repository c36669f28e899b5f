"""The statement of a layered joint: walls and bonds, and their stress law at any x.

Everything is written as rows over y = (U, w, phi of each wall, then their derivatives in x), U being
the displacement of the mid-surface, or of the bonded face where the wall tapers. The finite element
of layered_fe.py needs nothing else. Extended precision throughout.
"""

from dataclasses import dataclass

import numpy as np

LD = np.longdouble


@dataclass
class Wall:
    axialModulus: float
    hoopModulus: float
    poisson: float
    throughShearModulus: float
    axialExpansion: float
    hoopExpansion: float
    throughExpansion: float
    atRoot: float  # thickness at x = 0 and before
    atMouth: float  # thickness at x = L and after
    radius: float  # mean radius at x = 0; not used by a flat joint
    tube: bool = False


@dataclass
class Bond:
    thickness: float
    modulus: float
    poisson: float
    shearModulus: float
    expansion: float
    radius: float
    shearYield: float | None = None


@dataclass
class Joint:
    kind: str
    overlap: float
    walls: list
    bonds: list
    load: float = 0.0
    temperatureChange: float = 0.0
    runOut: float = 60.0
    width: float | None = None
    edgeMoment: float = 0.0
    # not MODEL's: shear lever to mid-bond, and the bonds' matrix made symmetric in energy
    leverToMidBond: bool = False
    symmetricBonds: bool = False

    @property
    def flat(self):
        return self.width is not None

    @property
    def turn(self):
        """2 pi, or 1: from the energy's line force to the whole joint's force."""
        return LD(1) if self.flat else 2 * (LD(np.pi) + LD(1.2246467991473532e-16))

    def thickness(self, i, x):
        w = self.walls[i]
        s = np.clip(x / LD(self.overlap), LD(0), LD(1))
        return LD(w.atRoot) + (LD(w.atMouth) - LD(w.atRoot)) * s

    def side(self, i):
        """+1 a tapered wall bonded on its inner face, -1 on its outer, 0 a wall that does not taper."""
        w = self.walls[i]
        if w.atRoot == w.atMouth:
            return 0
        assert not w.tube
        return 1 if i > 0 else -1

    def mean_radius(self, i, x):
        w = self.walls[i]
        if self.flat:
            return LD(self.width) + 0 * x
        return LD(w.radius) + self.side(i) * (self.thickness(i, x) - LD(w.atRoot)) / 2

    def bond_radius(self, j):
        return LD(self.width if self.flat else self.bonds[j].radius)

    def offset(self, i, x):
        """a in u = U + a phi. On the inner face (z = -t/2) U = u + t/2 phi, so a = -t/2."""
        return -self.side(i) * self.thickness(i, x) / 2

    def width_strain(self):
        """Common width strain of a flat joint: of its walls at x = 0, free of net width force."""
        top = sum(LD(w.hoopModulus) * LD(w.atRoot) * LD(w.hoopExpansion) for w in self.walls)
        return top / sum(LD(w.hoopModulus) * LD(w.atRoot) for w in self.walls) * LD(self.temperatureChange)

    def membrane(self, i, x):
        """Cxx, Cxt, Ctt, D."""
        w, t = self.walls[i], self.thickness(i, x)
        back = LD(w.poisson) * LD(w.hoopModulus) / LD(w.axialModulus)
        free = 1 - LD(w.poisson) * back
        c = LD(w.axialModulus) * t / free
        return c, back * c, LD(w.hoopModulus) * t / free, c * t * t / 12

    def rows(self, active, x, kappa):
        """Per active wall: [(strain row, stress row, stress at y = 0)] for N_x, N_t, M, Q, unweighted."""
        m, out = 3 * len(active), {}
        dT = LD(self.temperatureChange)
        for k, i in enumerate(active):
            w = self.walls[i]
            cxx, cxt, ctt, D = self.membrane(i, x)
            R = self.mean_radius(i, x)
            e = np.zeros((4, len(x), 2 * m), LD)
            e[0, :, m + 3 * k] = 1
            e[0, :, m + 3 * k + 2] = self.offset(i, x)
            hoop0 = self.width_strain() + 0 * x if self.flat else 0 * x
            if not self.flat:
                e[1, :, 3 * k + 1] = 1 / R
            e[2, :, m + 3 * k + 2] = 1
            e[3, :, m + 3 * k + 1] = 1
            e[3, :, 3 * k + 2] = -1
            ex0, et0 = -LD(w.axialExpansion) * dT, hoop0 - LD(w.hoopExpansion) * dT
            c = lambda a: a[:, None]
            shear = LD(kappa) * LD(w.throughShearModulus) * self.thickness(i, x)
            out[i] = [
                (e[0], c(cxx) * e[0] + c(cxt) * e[1], cxx * ex0 + cxt * et0),
                (e[1], c(cxt) * e[0] + c(ctt) * e[1], cxt * ex0 + ctt * et0),
                (e[2], c(D) * e[2], 0 * x),
                (e[3], c(shear) * e[3], 0 * x),
            ]
        return out

    def bond_rows(self, x):
        """(slip rows, compliance, opening rows, k_n, free openings) at x; all walls active."""
        n, B = len(self.walls), len(self.bonds)
        m, q = 3 * n, len(x)
        slip, opening = np.zeros((B, q, 2 * m), LD), np.zeros((B, q, 2 * m), LD)
        C, kn, free = np.zeros((q, B, B), LD), [], []
        for j, b in enumerate(self.bonds):
            tm, tp = self.thickness(j, x), self.thickness(j + 1, x)
            slip[j, :, 3 * (j + 1)] = 1
            slip[j, :, 3 * (j + 1) + 2] = tp / 2 + self.offset(j + 1, x)
            slip[j, :, 3 * j] = -1
            slip[j, :, 3 * j + 2] = tm / 2 - self.offset(j, x)
            h, nu = LD(b.thickness), LD(b.poisson)
            if self.leverToMidBond:
                slip[j, :, 3 * j + 2] += h / 2
                slip[j, :, 3 * (j + 1) + 2] += h / 2
            opening[j, :, 3 * (j + 1) + 1] = 1
            opening[j, :, 3 * j + 1] = -1
            wm, wp = self.walls[j], self.walls[j + 1]
            gm, gp = 12 * LD(wm.throughShearModulus), 12 * LD(wp.throughShearModulus)
            C[:, j, j] = h / LD(b.shearModulus) + tm / gm + tp / gp
            if j + 1 < B:
                C[:, j, j + 1] = C[:, j + 1, j] = -tp / gp
            kn.append(LD(b.modulus) * (1 - nu) / ((1 + nu) * (1 - 2 * nu)) / h)
            own = h * LD(b.expansion) * (1 + nu) / (1 - nu)
            grow = own + LD(wm.throughExpansion) * tm / 2 + LD(wp.throughExpansion) * tp / 2
            free.append(LD(self.temperatureChange) * grow)
        return slip, C, opening, kn, free

    def shear_law(self, C, status):
        """(T, tau0) of tau = T slip + tau0. status (q, B): 0 elastic, +-1 at +-yield."""
        q, B = C.shape[:2]
        T, tau0 = np.zeros((q, B, B), LD), np.zeros((q, B), LD)
        if B == 1:
            T[:, 0, 0] = 1 / C[:, 0, 0]
        else:
            det = C[:, 0, 0] * C[:, 1, 1] - C[:, 0, 1] * C[:, 1, 0]
            T[:, 0, 0], T[:, 1, 1] = C[:, 1, 1] / det, C[:, 0, 0] / det
            T[:, 0, 1], T[:, 1, 0] = -C[:, 0, 1] / det, -C[:, 1, 0] / det
        if self.symmetricBonds:
            rho = np.array([self.bond_radius(j) for j in range(B)], LD)
            S = rho[:, None] * T
            T = (S + S.transpose(0, 2, 1)) / 2 / rho[:, None]
        if status is None or not np.any(status):
            return T, tau0
        for k in np.nonzero(np.any(status != 0, axis=1))[0]:
            held = status[k] != 0
            T[k] = 0
            tau0[k][held] = [LD(s) * LD(b.shearYield) for s, b in zip(status[k], self.bonds) if s]
            if not held.all():
                f, h = int(np.argmin(held)), int(np.argmax(held))
                T[k, f, f] = 1 / C[k, f, f]
                tau0[k, f] = -C[k, f, h] / C[k, f, f] * tau0[k, h]
        return T, tau0

    def law(self, active, x, kappa, bonded, status=None):
        """H, g of the virtual work density  dy . (H y + g)  at the points x."""
        m = 3 * len(active)
        H, g = np.zeros((len(x), 2 * m, 2 * m), LD), np.zeros((len(x), 2 * m), LD)
        for i, parts in self.rows(active, x, kappa).items():
            R = self.mean_radius(i, x)
            for e, s, s0 in parts:
                H += R[:, None, None] * e[:, :, None] * s[:, None, :]
                g += (R * s0)[:, None] * e
        if bonded:
            slip, C, opening, kn, free = self.bond_rows(x)
            T, tau0 = self.shear_law(C, status)
            for j in range(len(self.bonds)):
                rho = self.bond_radius(j)
                tau = np.einsum("qk,kqy->qy", T[:, j, :], slip)
                H += rho * (slip[j][:, :, None] * tau[:, None, :])
                g += rho * tau0[:, j][:, None] * slip[j]
                H += rho * kn[j] * opening[j][:, :, None] * opening[j][:, None, :]
                g -= (rho * kn[j] * free[j])[:, None] * opening[j]
        return H, g

    def sign(self, j):
        """From MODEL's slip (outer minus inner) to shear positive in tension of the tube."""
        return -1 if self.walls[j].tube else 1

    def stretches(self):
        """[(from, to, active walls, kappa, bonded)]."""
        L, n = self.overlap, len(self.walls)
        tube = [i for i, w in enumerate(self.walls) if w.tube]
        out = [(0.0, L, list(range(n)), LD(1), True)]
        kappa = LD(5) / LD(6)
        if self.kind in ("socket", "spigot"):
            sleeve = [i for i in range(n) if i not in tube]
            out.insert(0, (-self.runOut, 0.0, sleeve, kappa, False))
        if self.kind != "flat-single":
            out.append((L, L + self.runOut, tube, kappa, False))
        return out

    def ends(self):
        """(forces {(x, wall): (N, Q, M)}, held [(x, wall, component)]) with N, Q, M line forces of the
        external load in +u, +w, +phi at the mid-surface. component 0 U, 1 w, 2 phi."""
        P, L, n = LD(self.load) / self.turn, self.overlap, len(self.walls)
        tube = next(i for i, w in enumerate(self.walls) if w.tube)
        if self.kind in ("socket", "spigot"):
            # loaded at both far ends; the hold only takes the rigid motion out
            s = 1 - tube
            return {(-self.runOut, s): (-P, 0, 0), (L + self.runOut, tube): (P, 0, 0)}, [(-self.runOut, s, 0)]
        if self.kind in ("double", "flat-double"):
            held = [(0.0, i, c) for i in (0, 2) for c in range(3)]
            return {(L + self.runOut, tube): (P, 0, 0)}, held
        # flat single lap: strip below (wall 0), plate above (wall 1); edge moments peel both ends open
        M0 = LD(self.edgeMoment) * LD(self.width)
        V = self.edge_force() * LD(self.width)
        forces = {(L, 0): (P, -V, -M0), (0.0, 1): (-P, V, -M0)}
        return forces, [(0.0, 1, 0), (0.0, 1, 1), (L, 0, 1)]

    def edge_force(self):
        """V0 per width that balances P and M0 on the lever that the model has."""
        lever = (LD(self.walls[0].atRoot) + LD(self.walls[1].atRoot)) / 2
        if self.leverToMidBond:
            lever += LD(self.bonds[0].thickness)
        return (LD(self.load) / LD(self.width) * lever - 2 * LD(self.edgeMoment)) / LD(self.overlap)
