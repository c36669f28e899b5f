"""The same joints by scipy.integrate.solve_bvp on the first-order equations, derived anew by hand.

Per wall U, w, phi and line forces n = R N_x, q = R kappa G t (w' - phi), m = R D phi' + a n; a as in
layered_joint.py, of which only the data are used here.
    n' = rho (tau_in - tau_out),  q' = N_theta + rho (sigma_in - sigma_out),
    m' = -q + rho tau_in (t/2 + a) + rho tau_out (t/2 - a)
`in` the bond on the wall's inner face, `out` on its outer; tau as MODEL has it, outer minus inner.
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


def slopes(joint, x, y, active, bonded):
    """dy/dx, y of shape (6 per active wall, points), and the bonds' stresses."""
    dT, out = joint.temperatureChange, np.zeros_like(y)
    tau, sigma = bonds(joint, x, y) if bonded else ([], [])
    total = sum(w.hoopModulus * w.atRoot for w in joint.walls)
    common = sum(w.hoopModulus * w.atRoot * w.hoopExpansion for w in joint.walls) / total * dT
    for k, i in enumerate(active):
        w, t, R, a = wall_at(joint, i, x)
        U, dw, phi, n, q, m = y[6 * k : 6 * k + 6]
        free = 1 - w.poisson**2 * w.hoopModulus / w.axialModulus
        cxx, ctt = w.axialModulus * t / free, w.hoopModulus * t / free
        cxt = w.poisson * ctt
        hoop = (common if joint.flat else dw / R) - w.hoopExpansion * dT
        bend = (m - a * n) / (R * cxx * t**2 / 12)
        axial = (n / R - cxt * hoop) / cxx
        kappa = 1.0 if bonded else 5 / 6
        out[6 * k] = axial + w.axialExpansion * dT - a * bend
        out[6 * k + 1] = phi + q / (R * kappa * w.throughShearModulus * t)
        out[6 * k + 2] = bend
        out[6 * k + 4] = 0 if joint.flat else cxt * axial + ctt * hoop
        out[6 * k + 5] = -q
        for j, sign, lever in ((i - 1, 1, t / 2 + a), (i, -1, t / 2 - a)):
            if bonded and 0 <= j < len(tau):
                rho = joint.width if joint.flat else joint.bonds[j].radius
                out[6 * k + 3] += sign * rho * tau[j]
                out[6 * k + 4] += sign * rho * sigma[j]
                more = joint.bonds[j].thickness / 2 if joint.leverToMidBond else 0.0
                out[6 * k + 5] += rho * tau[j] * (lever + more)
    return out


def bonds(joint, x, y):
    slip, sigma, C = [], [], np.zeros((len(x), len(joint.bonds), len(joint.bonds)))
    for j, b in enumerate(joint.bonds):
        (wi, ti, _, ai), (wo, to, _, ao) = wall_at(joint, j, x), wall_at(joint, j + 1, x)
        inner, outer = y[6 * j : 6 * j + 3], y[6 * j + 6 : 6 * j + 9]
        more = b.thickness / 2 if joint.leverToMidBond else 0.0
        slip.append(outer[0] + (ao + to / 2 + more) * outer[2] - inner[0] + (ti / 2 + more - ai) * inner[2])
        grow = b.thickness * b.expansion * (1 + b.poisson) / (1 - b.poisson)
        grow = grow + wi.throughExpansion * ti / 2 + wo.throughExpansion * to / 2
        k = b.modulus * (1 - b.poisson) / ((1 + b.poisson) * (1 - 2 * b.poisson)) / b.thickness
        sigma.append(k * (outer[1] - inner[1] - joint.temperatureChange * grow))
        C[:, j, j] = b.thickness / b.shearModulus + ti / 12 / wi.throughShearModulus + to / 12 / wo.throughShearModulus
        if j:
            C[:, j, j - 1] = C[:, j - 1, j] = -ti / 12 / wi.throughShearModulus
    slip = np.array(slip)
    tau = np.linalg.solve(C, slip.T[:, :, None])[:, :, 0]
    cap = joint.bonds[0].shearYield
    if cap is not None:
        for _ in range(60 if len(joint.bonds) > 1 else 1):  # each bond at its limit given the other
            for j in range(len(joint.bonds)):
                rest = slip[j] - np.einsum("qk,qk->q", C[:, j], tau) + C[:, j, j] * tau[:, j]
                tau[:, j] = np.clip(rest / C[:, j, j], -cap, cap)
    return tau.T, np.array(sigma)


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
                    if joint.kind == "flat-single":  # no run-outs: the edge loads themselves
                        b, M0 = joint.width, joint.edgeMoment
                        r += [*(left if i == tube else right)[3:]]
                        if i == tube:
                            r += [(yb[A + 3] - P) / size[A + 3], right[1], (yb[A + 5] + M0 * b) / size[A + 5]]
                        else:
                            r += [*left[:2], (ya[A + 5] - M0 * b) / size[A + 5]]
                    elif i == tube:
                        r += [*left[3:]]
                    elif joint.kind.endswith("double"):
                        r += [*left[:3], *right[3:]]
                    else:
                        r += [*right[3:]]
                    continue
                at, O = (ya, slice(A, B)) if k > main else (yb, slice(A, B))
                M = slice(offsets[main] + 6 * i, offsets[main] + 6 * i + 6)
                near = yb[M] if k > main else ya[M]
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
    at = [s.stresses(s.element(v, True), v) for v in x * joint.overlap]
    out = []
    for c, theirs in enumerate((np.array([joint.sign(j) * t for j, t in enumerate(tau)]), sigma)):
        ours = np.array([a[c][:, 0] for a in at], float).T
        out.append(float(np.max(np.abs(ours - theirs)) / np.max(np.abs(ours))))
    assert sol.success, sol.message
    return max(out)
