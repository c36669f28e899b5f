"""Mid-bond stresses (MPa) of an earlier finite-element model of three of the joints, printed digits.

Case -> bond -> stations, shear, peel. Its thermal shear is printed with the sign reversed, as here.
"""

SOCKET_X = [1.0, 3.05, 8.07, 15.11, 24.94, 26.95, 29.0, 29.53, 29.8]
DOUBLE_X = [1, 3, 5, 8, 12.5, 17, 20, 23, 24, 24.5]
BENDING_X = [0.5, 3, 8, 15, 25, 28, 29.5, 29.8]

CHECK_VALUES = {
    "socket": {
        "bond": {
            "stations": SOCKET_X,
            "shear": [6.039, 3.741, 2.198, 1.491, 3.914, 5.247, 8.754, 10.814, 12.247],
            "peel": [-0.28, -0.77, -0.26, -0.01, 0.13, -0.17, 1.38, 3.88, 6.29],
        }
    },
    "socket-thermal": {
        "bond": {
            "stations": SOCKET_X,
            "shear": [-7.117, -4.307, -2.136, 0.013, 3.208, 4.265, 7.054, 8.570, 8.859],
            "peel": [0.08, 0.43, -0.20, -0.29, -0.33, -0.50, 0.76, 2.59, 3.15],
        }
    },
    "double-lap-sleeve": {
        "inner bond": {
            "carried": 7761,
            "stations": DOUBLE_X,
            "shear": [6.571, 3.459, 2.118, 1.110, 0.764, 2.140, 5.138, 10.041, 12.344, 14.197],
            "peel": [0.28, 1.21, 0.94, 0.40, 0.04, -0.34, -1.28, -0.19, 2.82, 4.79],
        },
        "outer bond": {
            "carried": 12234,
            "stations": DOUBLE_X,
            "shear": [8.096, 5.880, 3.887, 2.201, 1.821, 3.388, 6.112, 11.199, 14.261, 16.587],
            "peel": [1.98, 0.56, 0.20, 0.05, 0.04, -0.18, -0.95, 1.01, 5.17, 9.17],
        },
    },
    "socket-bending": {
        "bond": {
            "stations": BENDING_X,
            "shear": [15.46, 8.42, 4.86, 3.47, 10.23, 17.43, 28.92, 33.30],
            "peel": [3.62, -1.58, -0.51, 0.01, 0.18, -0.42, 10.31, 18.01],
        }
    },
}


def differences(name, bond, stations, values):
    """Per station of the table: (station, ours, theirs) for shear and peel."""
    table = CHECK_VALUES.get(name, {}).get(bond)
    if table is None:
        return {}
    at = [stations.index(float(x)) for x in table["stations"]]
    return {
        what: [(x, values[what][i], v) for x, i, v in zip(table["stations"], at, table[what])]
        for what in ("shear", "peel")
    }
