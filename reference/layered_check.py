"""The same joints by scipy.integrate.solve_bvp on the first-order equations, derived anew by hand.

Per wall U, w, phi and the totals n, q = R kappa G t (w' - phi) and m about the place of U, per radian: the wall's
own plus the pulls of the layers at its faces. a as in layered_joint.py, of which only the data are used here.
    n' = rho (tau_in - tau_out),  q' = N_theta + rho (sigma_in - sigma_out),
    m' = -q + rho tau_in (h/2 + t/2 + a) + rho tau_out (h/2 + t/2 - a)
`in` the bond on the wall's inner face, `out` on its outer; tau as the method has it, outer minus inner, and
sigma without the lack at the ends, which stands in q there.
Nothing is shared with the finite elements but the start of the iteration, off by a thousandth.
"""

import numpy as np
from scipy.integrate import solve_bvp


def wall_at(joint, i, x):
    w = joint.walls[i]
    s = np.clip(x / joint.overlap, 0, 1)
    t = w.atRoot + (w.atMouth - w.atRoot) * s
    side = 0 if w.atRoot == w.atMouth else (1 if i else -1)
    R = joint.width + 0 * t if joint.flat else w.radius + side * (t - w.atRoot) / 2
    return w, t, R, -side * t / 2


def own(joint, i, x, y, bonded):
    """Strain of the mid-surface, slope of phi, own N, M and N_theta per unit length of wall i; y its six rows."""
    dT = joint.temperatureChange
    w, t, R, a = wall_at(joint, i, x)
    _, dw, _, n, _, m = y
    n, m = n + 0, m + 0
    if bonded:
        for j, z in ((i - 1, -t / 2), (i, t / 2)):
            if 0 <= j < len(joint.bonds):
                f = radius(joint, j) * joint.bonds[j].thickness * layer(joint, j)[0] / 2
                n -= f
                m -= (a - z) * f
    total = sum(v.hoopModulus * v.atRoot for v in joint.walls)
    common = sum(v.hoopModulus * v.atRoot * v.hoopExpansion for v in joint.walls) / total * dT
    free = 1 - w.poisson**2 * w.hoopModulus / w.axialModulus
    cxx, ctt = w.axialModulus * t / free, w.hoopModulus * t / free
    cxt = w.poisson * ctt
    hoop = (common if joint.flat else dw / R) - w.hoopExpansion * dT
    bend = (m - a * n) / (R * cxx * t**2 / 12)
    axial = (n / R - cxt * hoop) / cxx
    return axial + w.axialExpansion * dT, bend, n / R, bend * cxx * t**2 / 12, cxt * axial + ctt * hoop


def radius(joint, j):
    return joint.width if joint.flat else joint.bonds[j].radius


def layer(joint, j):
    """(stress of the layer kept from shrinking, force that peel lacks at either end, nu, E') of bond j."""
    b, p, q = joint.bonds[j], joint.walls[j], joint.walls[j + 1]
    nu = min(max(b.modulus / 2 / b.shearModulus - 1, 0.0), 0.45)
    x, y = ((p.axialExpansion + q.axialExpansion) / 2, (p.hoopExpansion + q.hoopExpansion) / 2)
    s = b.modulus / (1 - nu**2) * joint.temperatureChange * (x - b.expansion + nu * (y - b.expansion))
    lack = nu / (1 - nu) * s * b.thickness / 2 * (1 - np.exp(-2 * joint.overlap / b.thickness))
    return s, lack, nu, b.modulus * (1 - nu) / (1 + nu) / (1 - 2 * nu)


def slopes(joint, x, y, active, bonded):
    """dy/dx, y of shape (6 per active wall, points)."""
    out = np.zeros_like(y)
    tau, sigma = bonds(joint, x, y) if bonded else ([], [])
    for k, i in enumerate(active):
        w, t, R, a = wall_at(joint, i, x)
        _, _, phi, _, q, _ = mine = y[6 * k : 6 * k + 6]
        strain, bend, _, _, around = own(joint, i, x, mine, bonded)
        kappa = 1.0 if bonded else 5 / 6
        out[6 * k] = strain - a * bend
        out[6 * k + 1] = phi + q / (R * kappa * w.throughShearModulus * t)
        out[6 * k + 2] = bend
        out[6 * k + 4] = 0 if joint.flat else around
        out[6 * k + 5] = -q
        for j, sign, lever in ((i - 1, 1, t / 2 + a), (i, -1, t / 2 - a)):
            if bonded and 0 <= j < len(tau):
                rho = radius(joint, j)
                out[6 * k + 3] += sign * rho * tau[j]
                out[6 * k + 4] += sign * rho * sigma[j]
                out[6 * k + 5] += rho * tau[j] * (lever + joint.bonds[j].thickness / 2)
    return out


def bonds(joint, x, y):
    """tau (outer minus inner) and sigma of the opening alone, bond by bond."""
    B, dT = len(joint.bonds), joint.temperatureChange
    slip, opening, C, F = [], [], np.zeros((len(x), B, B)), np.zeros((len(x), B, B))
    soft = [wall_at(joint, i, x)[1] / (w.throughModulus or np.inf) for i, w in enumerate(joint.walls)]
    for j, b in enumerate(joint.bonds):
        h, (_, _, nu, modulus) = b.thickness, layer(joint, j)
        at, gap, inplane = [], -h * b.expansion * dT * (1 + nu) / (1 - nu), 0
        for i, side in ((j, 1), (j + 1, -1)):
            w, t, R, a = wall_at(joint, i, x)
            mine = y[6 * i : 6 * i + 6]
            strain, bend, N, M, around = own(joint, i, x, mine, True)
            at.append(mine[0] + (a - side * (t + h) / 2) * mine[2])
            along = N / t - side * 3 * M / t**2
            thin = w.throughPoissonAxial / w.axialModulus * along + w.throughPoissonHoop / w.hoopModulus * around / t
            gap = gap - side * mine[1] - t / 2 * (w.throughExpansion * dT - thin)
            inplane = inplane + (strain - side * t / 2 * bend) / 2 + (0 if joint.flat else mine[1] / R / 2)
        slip.append(at[1] - at[0])
        opening.append(gap + h * nu / (1 - nu) * inplane)
        (wi, ti, _, _), (wo, to, _, _) = wall_at(joint, j, x), wall_at(joint, j + 1, x)
        C[:, j, j] = h / b.shearModulus + ti / 12 / wi.throughShearModulus + to / 12 / wo.throughShearModulus
        F[:, j, j] = h / modulus + (soft[j] + soft[j + 1]) / 4
        if j:
            C[:, j, j - 1] = C[:, j - 1, j] = -ti / 12 / wi.throughShearModulus
            F[:, j, j - 1] = F[:, j - 1, j] = soft[j] / 8
    slip, opening = np.array(slip), np.array(opening)
    tau = np.linalg.solve(C, slip.T[:, :, None])[:, :, 0]
    sigma = np.linalg.solve(F, opening.T[:, :, None])[:, :, 0]
    cap = joint.bonds[0].shearYield
    if cap is not None:
        for _ in range(60 if len(joint.bonds) > 1 else 1):  # each bond at its limit given the other
            for j in range(len(joint.bonds)):
                rest = slip[j] - np.einsum("qk,qk->q", C[:, j], tau) + C[:, j, j] * tau[:, j]
                tau[:, j] = np.clip(rest / C[:, j, j], -cap, cap)
    return tau.T, sigma.T


def by_solve_bvp(s, tol=1e-7):
    """Largest difference of shear and peel over their largest, from the solution s of layered_fe."""
    joint = s.joint
    parts = joint.stretches()
    offsets = np.cumsum([0] + [6 * len(p[2]) for p in parts])
    # one grid on [0, 1] for every stretch: the union of their nodes
    grid = np.unique(np.concatenate([(s.x0[s.of(p)] - p[0]) / (p[1] - p[0]) for p in parts] + [[1.0]]))
    grid = grid[np.concatenate([[True], np.diff(grid) > 1e-7])]
    grid[-1] = 1.0
    grid = np.unique(np.concatenate([grid, (grid[1:] + grid[:-1]) / 2]))
    start = np.vstack([s.first_order(p, p[0] + grid * (p[1] - p[0])) for p in parts])
    size = np.max(np.abs(start), axis=1)
    for c in range(6):  # a force that is nothing but rounding has no scale of its own
        size[c::6] = np.maximum(size[c::6], 1e-3 * np.max(size[c::6]))
    size[size == 0] = 1.0

    def fun(z, y):
        y = y * size[:, None]
        f = [
            (b - a) * slopes(joint, a + z * (b - a), y[o:e], active, bonded)
            for (a, b, active, _, bonded), o, e in zip(parts, offsets[:-1], offsets[1:])
        ]
        return np.vstack(f) / size[:, None]

    P = float(joint.load / joint.turn)
    main = next(k for k, p in enumerate(parts) if p[4])
    tube = next(i for i, w in enumerate(joint.walls) if w.tube)

    def ends(ya, yb):
        ya, yb, r = ya * size, yb * size, []
        for k, (_, _, active, _, bonded) in enumerate(parts):
            o = offsets[k]
            for w, i in enumerate(active):
                A, B = o + 6 * w, o + 6 * w + 6
                if bonded:
                    left, right = ya[A:B] / size[A:B], yb[A:B] / size[A:B]
                    # q that a free end must have: the lack of peel there
                    lack = sum(s * radius(joint, j) * layer(joint, j)[1] for j, s in ((i, 1), (i - 1, -1)) if 0 <= j < len(joint.bonds))
                    v = lack / size[A + 4]
                    free_left = [left[3], left[4] - v, left[5]]
                    free_right = [right[3], right[4] + v, right[5]]
                    if joint.kind == "flat-single":  # no run-outs
                        if i == tube:
                            load = np.array([P, -P * joint.edgeForcePerLoad, -P * joint.edgeMomentPerLoad])
                            r += [*free_left, *(np.array(free_right) - load / size[A + 3 : A + 6])]
                        else:
                            r += [*left[:3], *free_right]
                    elif i == tube:
                        r += [*free_left]
                    elif joint.kind.endswith("double"):
                        r += [left[0], left[1] - joint.walls[i].clampGrowth / size[A + 1], left[2], *free_right]
                    else:
                        r += [*free_right]
                    continue
                at, O = (ya, slice(A, B)) if k > main else (yb, slice(A, B))
                M = slice(offsets[main] + 6 * i, offsets[main] + 6 * i + 6)
                near = (yb[M] if k > main else ya[M]) + 0
                # from the overlap to the run-out q steps by the lack of peel
                sides = ((i, 1), (i - 1, -1))
                lack = sum(s * radius(joint, j) * layer(joint, j)[1] for j, s in sides if 0 <= j < len(joint.bonds))
                near[4] += lack if k > main else -lack
                r += [*((at[O] - near) / size[M])]
                far = yb[O] if k > main else ya[O]
                offset = wall_at(joint, i, joint.overlap + 1.0 if k > main else -1.0)[3]
                last = far[3] - P if k > main else far[0]
                r += [last / size[A + (3 if k > main else 0)], far[4] / size[A + 4], (far[5] - offset * far[3]) / size[A + 5]]
        return np.array(r)

    sol = solve_bvp(fun, ends, grid, start / size[:, None] * 1.001, tol=tol, max_nodes=60000)
    x = np.linspace(0, 1, 301)
    y = (sol.sol(x) * size[:, None])[offsets[main] : offsets[main + 1]]
    tau, sigma = bonds(joint, x * joint.overlap, y)
    for j, b in enumerate(joint.bonds):
        s0, _, nu, _ = layer(joint, j)
        sigma[j] -= nu / (1 - nu) * s0 * sum(np.exp(-2 * joint.overlap * d / b.thickness) for d in (x, 1 - x))
    at = [s.stresses(s.element(v, True), v) for v in x * joint.overlap]
    out = []
    for c, theirs in enumerate((np.array([joint.sign(j) * t for j, t in enumerate(tau)]), sigma)):
        ours = np.array([a[c][:, 0] for a in at], float).T
        out.append(float(np.max(np.abs(ours - theirs)) / np.max(np.abs(ours))))
    assert sol.success, sol.message
    return max(out)
