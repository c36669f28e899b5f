"""Strength of a double lap of two unlike bonds against the overlap, by linear finite elements: unlike-bonds.json.

Nothing in common with the collocation of the other scripts: displacements of tube and outer walls at graded nodes,
the bonds lumped there, and the load that goes with a prescribed slip of the end that fails first.
"""

import numpy as np
from lap import significant, write
from scipy.sparse import coo_matrix
from scipy.sparse.linalg import splu

# Of a random joint: a stiff thin bond inside, a soft thick one outside, a soft tube.
WIDTHS = [331.5950776, 348.2880369]
STIFFNESSES = [939400.0, 1878.8]
LEVERS = [0.9984697355, 1.048734083]
TUBE = 73892.3627
OUTERS = [11083150.42, 1200332.002]
YIELD = 1.0
SLIP_AT_FAILURE = 0.00303136754
STEPS = 60


def load_at_failure(length, cells):
    """Load at which bond 0 slips at the mouth as far as it may."""
    x = length * (0.5 - 0.5 * np.cos(np.pi * np.linspace(0, 1, cells + 1)))
    h = np.diff(x)
    n = cells + 1
    weight = np.zeros(n)
    weight[:-1] += h / 2
    weight[1:] += h / 2
    at = [np.arange(n) + m * n for m in range(3)]
    rows, columns, walls = [], [], []
    for nodes, stiffness in zip(at, [TUBE, *OUTERS]):
        a, b, c = nodes[:-1], nodes[1:], stiffness / h
        for i, j, v in [(a, a, c), (b, b, c), (a, b, -c), (b, a, -c)]:
            rows.append(i), columns.append(j), walls.append(v)
    elastic = coo_matrix((np.concatenate(walls), (np.concatenate(rows), np.concatenate(columns)))).tocsc()
    # Both outer walls are held at the root.
    free = np.setdiff1d(np.arange(3 * n), [at[1][0], at[2][0]])
    pull = np.zeros(3 * n)
    pull[at[0][-1]] = 1
    opening = np.zeros(3 * n)
    opening[at[0][-1]], opening[at[1][-1]] = LEVERS[0], -LEVERS[0]
    u, load = np.zeros(3 * n), 0.0
    for target in np.linspace(1 / STEPS, 1, STEPS) * SLIP_AT_FAILURE:
        for _ in range(80):
            residual = elastic @ u - load * pull
            r, c, v = [], [], []
            for j in range(2):
                slip = LEVERS[j] * (u[at[0]] - u[at[j + 1]])
                shear = np.clip(STIFFNESSES[j] * slip, -YIELD, YIELD)
                # A little is left of it, so that the flowing bond can be solved; the residual knows nothing of that.
                slope = np.where(abs(STIFFNESSES[j] * slip) < YIELD, 1, 1e-9) * STIFFNESSES[j]
                force = LEVERS[j] * WIDTHS[j] * shear * weight
                tangent = LEVERS[j] ** 2 * WIDTHS[j] * slope * weight
                residual[at[0]] += force
                residual[at[j + 1]] -= force
                for i, k, value in [
                    (0, 0, tangent), (j + 1, j + 1, tangent), (0, j + 1, -tangent), (j + 1, 0, -tangent),
                ]:
                    r.append(at[i]), c.append(at[k]), v.append(value)
            bonds = coo_matrix((np.concatenate(v), (np.concatenate(r), np.concatenate(c))), (3 * n, 3 * n))
            solve = splu((elastic + bonds.tocsc())[free][:, free].tocsc()).solve
            back, unit = solve(-residual[free]), solve(pull[free])
            more = (target - opening @ u - opening[free] @ back) / (opening[free] @ unit)
            step = back + more * unit
            u[free] += step
            load += more
            if np.max(abs(step)) < 1e-9 * np.max(abs(u)):
                break
        else:
            raise RuntimeError("not settled")
    return load


cases = []
for overlap in [0.7, 1, 1.3, 2, 5]:
    coarse, fine = (load_at_failure(overlap, cells) for cells in (1500, 3000))
    # The lumped bonds are of second order.
    best = fine + (fine - coarse) / 3
    print(f"L = {overlap}: {coarse:.9g} {fine:.9g} {best:.9g}")
    cases.append(
        {
            "name": f"overlap {overlap}",
            "inputs": {
                "length": overlap,
                "bonds": [
                    {"width": w, "stiffness": k, "shearYield": YIELD, "slipAtFailure": SLIP_AT_FAILURE * (1 if j == 0 else 500)}
                    for j, (w, k) in enumerate(zip(WIDTHS, STIFFNESSES))
                ],
                "channel": {"tube": TUBE, "outers": OUTERS, "levers": LEVERS},
            },
            "expected": {"load": significant(best, 8)},
        }
    )
write(
    "unlike-bonds.json",
    "A double lap of two unlike bonds: the load at which the first end of a bond slips as far as it may, against the overlap. It falls a little past its highest.",
    "unlike_bonds.py",
    None,
    "3e-6 of the load: two meshes, extrapolated",
    cases,
    stations=False,
)
