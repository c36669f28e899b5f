"""The statement of a layered joint (method, section 10): walls and bonds, and their stress law at any x.

Everything is written as rows over y = (U, w, phi of each wall, then their derivatives in x), U being
the displacement of the mid-surface, or of the bonded face where the wall tapers. The finite element
of layered_fe.py needs nothing else. The virtual work is that of the equilibrium equations; the peel's
law has strains in it that do not appear among its virtual displacements, so nothing here is symmetric.
Extended precision throughout.
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
    throughModulus: float | None  # None: rigid through the thickness
    throughPoissonAxial: float  # nu13: thinning under stress along x
    throughPoissonHoop: float  # nu23
    atRoot: float  # thickness at x = 0 and before
    atMouth: float  # thickness at x = L and after
    radius: float  # mean radius at x = 0; not used by a flat joint
    tube: bool = False
    clampGrowth: float | None = None  # w at x = 0 of a wall built in there


@dataclass
class Bond:
    thickness: float
    modulus: float
    shearModulus: float
    expansion: float
    radius: float
    shearYield: float | None = None

    @property
    def poisson(self):
        """From E and G, within 0 and 0.45."""
        return np.clip(LD(self.modulus) / (2 * LD(self.shearModulus)) - 1, LD(0), LD(45) / 100)

    @property
    def end_length(self):
        return LD(self.thickness) / 2


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
    # flat single lap, at the mouth of the strip: whole moment and whole transverse force over the whole load
    edgeMomentPerLoad: float | None = None
    edgeForcePerLoad: float | None = None

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

    def slip_rows(self, x):
        """(slip rows, compliance) at x; all walls active. The slip is that of the faces taken to mid-bond."""
        n, B = len(self.walls), len(self.bonds)
        m, q = 3 * n, len(x)
        slip, C = np.zeros((B, q, 2 * m), LD), np.zeros((q, B, B), LD)
        for j, b in enumerate(self.bonds):
            tm, tp, h = self.thickness(j, x), self.thickness(j + 1, x), LD(b.thickness)
            slip[j, :, 3 * (j + 1)] = 1
            slip[j, :, 3 * (j + 1) + 2] = (tp + h) / 2 + self.offset(j + 1, x)
            slip[j, :, 3 * j] = -1
            slip[j, :, 3 * j + 2] = (tm + h) / 2 - self.offset(j, x)
            gm, gp = 12 * LD(self.walls[j].throughShearModulus), 12 * LD(self.walls[j + 1].throughShearModulus)
            C[:, j, j] = h / LD(b.shearModulus) + tm / gm + tp / gp
            if j + 1 < B:
                C[:, j, j + 1] = C[:, j + 1, j] = -tp / gp
        return slip, C

    def opening_rows(self, x):
        """[(row, constant)] of the opening of each bond: what the layer is stretched by."""
        active, dT, out = list(range(len(self.walls))), LD(self.temperatureChange), []
        m, laws = 3 * len(active), self.rows(active, x, LD(1))
        c = lambda a: a[:, None]
        for j, b in enumerate(self.bonds):
            row, const, nu, h = np.zeros((len(x), 2 * m), LD), np.zeros(len(x), LD), b.poisson, LD(b.thickness)
            squeeze = h * nu / (1 - nu)
            for i, outward in ((j, 1), (j + 1, -1)):  # outward: the half wall next to the bond is its outer one
                w, t = self.walls[i], self.thickness(i, x)
                (ex, N, N0), (et, H, H0), (bend, M, M0), _ = laws[i]
                row[:, 3 * i + 1] -= outward
                # growth of the half wall: its own stresses thin it
                pa, ph = LD(w.throughPoissonAxial) / LD(w.axialModulus), LD(w.throughPoissonHoop) / LD(w.hoopModulus)
                const -= t / 2 * (LD(w.throughExpansion) * dT) - pa / 2 * (N0 - outward * 3 * M0 / t) - ph / 2 * H0
                row += pa / 2 * (N - c(outward * 3 / t) * M) + ph / 2 * H
                # the strain of the layer in its own plane
                row += squeeze / 2 * (ex - c(outward * t / 2) * bend)
                if not self.flat:
                    row += squeeze / 2 * et
            const -= h * LD(b.expansion) * dT * (1 + nu) / (1 - nu)
            out.append((row, const))
        return out

    def peel_rows(self, x):
        """[(row, constant)] of sigma = K o, without the lack at the ends."""
        B, opening = len(self.bonds), self.opening_rows(x)
        soft = [0 * x if w.throughModulus is None else self.thickness(i, x) / LD(w.throughModulus) for i, w in enumerate(self.walls)]
        F = np.zeros((len(x), B, B), LD)
        for j, b in enumerate(self.bonds):
            nu = b.poisson
            modulus = LD(b.modulus) * (1 - nu) / ((1 + nu) * (1 - 2 * nu))
            F[:, j, j] = LD(b.thickness) / modulus + (soft[j] + soft[j + 1]) / 4
            if j + 1 < B:
                F[:, j, j + 1] = F[:, j + 1, j] = soft[j + 1] / 8
        K = inverse(F)
        return [
            (sum(K[:, j, k, None] * opening[k][0] for k in range(B)), sum(K[:, j, k] * opening[k][1] for k in range(B)))
            for j in range(B)
        ]

    def layer_stress(self, j):
        """s: stress of the layer kept from shrinking, along and around."""
        b, dT, nu = self.bonds[j], LD(self.temperatureChange), self.bonds[j].poisson
        pair = self.walls[j : j + 2]
        along = sum(LD(w.axialExpansion) for w in pair) / 2 - LD(b.expansion)
        around = sum(LD(w.hoopExpansion) for w in pair) / 2 - LD(b.expansion)
        return LD(b.modulus) / (1 - nu * nu) * (along + nu * around) * dT

    def pull(self, j):
        """Half the layer's force, on the face of either wall, per radian."""
        return self.bond_radius(j) * LD(self.bonds[j].thickness) * self.layer_stress(j) / 2

    def end_lack(self, j, x):
        """What peel lacks near the ends."""
        b = self.bonds[j]
        near = np.exp(-x / b.end_length) + np.exp(-(LD(self.overlap) - x) / b.end_length)
        return b.poisson / (1 - b.poisson) * self.layer_stress(j) * near

    def end_lack_force(self, j):
        b = self.bonds[j]
        share = b.poisson / (1 - b.poisson) * self.layer_stress(j)
        return share * b.end_length * (1 - np.exp(-LD(self.overlap) / b.end_length))

    def shear_law(self, C, status):
        """(T, tau0) of tau = T slip + tau0. status (q, B): 0 elastic, +-1 at +-yield."""
        q, B = C.shape[:2]
        T, tau0 = inverse(C), np.zeros((q, B), LD)
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
            slip, C = self.slip_rows(x)
            T, tau0 = self.shear_law(C, status)
            for j, (peel, peel0) in enumerate(self.peel_rows(x)):
                rho = self.bond_radius(j)
                tau = np.einsum("qk,kqy->qy", T[:, j, :], slip)
                H += rho * (slip[j][:, :, None] * tau[:, None, :])
                g += rho * tau0[:, j][:, None] * slip[j]
                apart = np.zeros(2 * m, LD)
                apart[3 * j + 1], apart[3 * j + 4] = -1, 1
                H += rho * apart[None, :, None] * peel[:, None, :]
                g += rho * peel0[:, None] * apart
                # the layer's pull works on the strains of the two faces it is bonded to
                for i, z in ((j, 1), (j + 1, -1)):
                    g[:, m + 3 * i] += self.pull(j)
                    g[:, m + 3 * i + 2] += self.pull(j) * (self.offset(i, x) - z * self.thickness(i, x) / 2)
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
        """(forces [(x, wall, N, Q, M)], held {(x, wall, component): value}) with N, Q, M line forces of the
        external load in +u, +w, +phi at the mid-surface. component 0 U, 1 w, 2 phi."""
        P, L = LD(self.load) / self.turn, self.overlap
        tube = next(i for i, w in enumerate(self.walls) if w.tube)
        forces = []
        for j in range(len(self.bonds)):  # peel lower by a point force at either end
            f = self.bond_radius(j) * self.end_lack_force(j)
            for x in (0.0, L):
                forces += [(x, j, 0, -f, 0), (x, j + 1, 0, f, 0)]
        if self.kind in ("socket", "spigot"):
            # loaded at both far ends; the hold only takes the rigid motion out
            s = 1 - tube
            forces += [(-self.runOut, s, -P, 0, 0), (L + self.runOut, tube, P, 0, 0)]
            return forces, {(-self.runOut, s, 0): LD(0)}
        if self.kind in ("double", "flat-double"):
            held = {(0.0, i, c): LD(self.walls[i].clampGrowth if c == 1 else 0) for i in (0, 2) for c in range(3)}
            return [*forces, (L + self.runOut, tube, P, 0, 0)], held
        # flat single lap: strip below (wall 0), cut at the mouth; plate above (wall 1), built in at the root
        forces.append((L, 0, P, -P * LD(self.edgeForcePerLoad), -P * LD(self.edgeMomentPerLoad)))
        return forces, {(0.0, 1, c): LD(0) for c in range(3)}


def inverse(C):
    """Of one-by-one or two-by-two matrices, point by point."""
    if C.shape[1] == 1:
        return 1 / C
    out, det = np.zeros_like(C), C[:, 0, 0] * C[:, 1, 1] - C[:, 0, 1] * C[:, 1, 0]
    out[:, 0, 0], out[:, 1, 1] = C[:, 1, 1] / det, C[:, 0, 0] / det
    out[:, 0, 1], out[:, 1, 0] = -C[:, 0, 1] / det, -C[:, 1, 0] / det
    return out
