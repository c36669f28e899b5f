"""The layered model against the finite elements of MODEL section 12: prints per cent by station."""

import numpy as np
from layered_cases import model_double, model_single
from layered_fe import solve

SINGLE = [1.0, 3.05, 8.07, 15.11, 24.94, 26.95, 29.0, 29.53, 29.8]
DOUBLE = [1, 3, 5, 8, 12.5, 17, 20, 23, 24, 24.5]
TABLES = [
    (
        "single, 10 kN",
        model_single,
        dict(load=10000.0),
        SINGLE,
        [[6.039, 3.741, 2.198, 1.491, 3.914, 5.247, 8.754, 10.814, 12.247]],
        [[-0.28, -0.77, -0.26, -0.01, 0.13, -0.17, 1.38, 3.88, 6.29]],
    ),
    (
        "single, cooled 100",
        model_single,
        dict(temperatureChange=-100.0),
        SINGLE,
        [[-7.117, -4.307, -2.136, 0.013, 3.208, 4.265, 7.054, 8.570, 8.859]],
        [[0.08, 0.43, -0.20, -0.29, -0.33, -0.50, 0.76, 2.59, 3.15]],
    ),
    (
        "double, 20 kN",
        model_double,
        dict(load=20000.0),
        DOUBLE,
        [
            [6.571, 3.459, 2.118, 1.110, 0.764, 2.140, 5.138, 10.041, 12.344, 14.197],
            [8.096, 5.880, 3.887, 2.201, 1.821, 3.388, 6.112, 11.199, 14.261, 16.587],
        ],
        [
            [0.28, 1.21, 0.94, 0.40, 0.04, -0.34, -1.28, -0.19, 2.82, 4.79],
            [1.98, 0.56, 0.20, 0.05, 0.04, -0.18, -0.95, 1.01, 5.17, 9.17],
        ],
    ),
]


def line(words, values):
    print(f"  {words:32s}" + "".join(f"{v:>9}" for v in values))


def main():
    for name, make, load, x, shears, peels in TABLES:
        for variant in ({}, {"leverToMidBond": True}, {"symmetricBonds": True}):
            if "symmetricBonds" in variant and "double" not in name:
                continue
            s = solve(make(**load, **variant))
            print(name, variant or "as stated", "carried", [round(float(s.carried(j)), 1) for j in range(len(shears))])
            at = [s.stresses(s.element(v, True), v) for v in x]
            gap = [b.thickness for b in s.joint.bonds]
            for j, (shear, peel) in enumerate(zip(shears, peels)):
                tau = np.array([float(a[0][j, 0]) for a in at])
                sigma = np.array([float(a[1][j, 0]) for a in at])
                line(f"bond {j + 1} x", x)
                line("shear", [f"{v:.3f}" for v in tau])
                # where the shear passes zero a percentage says nothing: of the peak instead, in brackets
                small = np.abs(shear) < 0.02 * np.max(np.abs(shear))
                of = np.where(small, np.max(np.abs(shear)), np.abs(shear))
                error = 100 * (np.abs(tau) - np.abs(shear)) / of
                line("shear, %", [f"({e:.2f})" if s else f"{e:.1f}" for e, s in zip(error, small)])
                inside = (np.array(x) < s.joint.overlap - gap[j] - 1e-9) & ~small
                line("  largest and mean before last h", [f"{np.max(np.abs(error[inside])):.1f}", f"{np.mean(np.abs(error[inside])):.1f}"])
                line("peel", [f"{v:.3f}" for v in sigma])
                large = np.abs(peel) > np.max(np.abs(peel)) / 4
                error = 100 * (sigma / np.array(peel) - 1)
                line("peel, % over a quarter of peak", [f"{e:.1f}" if k else "-" for e, k in zip(error, large)])
    print()


if __name__ == "__main__":
    main()
