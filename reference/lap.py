"""The bonded overlap as docs/method.md section 4 states it, and the writing of the fixtures.

State of one overlap with C channels and B bonds, at each x:
    y = [s_cj ..., N_cj ...],  index c*B + j  (c channel, j bond), slips first, then forces.

    s_cj' = a_cj (N_tc/K_tc - N_cj/K_cj) + e_tc - e_cj        N_tc = f P_c - sum_j N_cj
    N_cj' = -a_cj c_j tau_cj
    tau_j = k_j s_j up to |s_j| = s_e = tau_p/k, then tau_p s_j/|s_j|   (vectors over the channels)

Ends: N_cj(L) = 0;  sum_j N_cj(0) = f P_c;  s_c1(0)/a_c1 = s_c2(0)/a_c2 with two bonds.
f is the factor on the loads; the thermal strains e are held.
"""

import json
import math
import os
import platform
import re

import numpy as np
import scipy

HERE = os.path.dirname(os.path.abspath(__file__))
STATIONS = [0.0, 0.02, 0.1, 0.25, 0.5, 0.75, 0.9, 0.98, 1.0]


def flexibility(stiffness):
    """1/K as a function of x/L; a number, a linear taper, or a function of x/L given as it is."""
    if callable(stiffness):
        return stiffness
    if isinstance(stiffness, dict):
        root, mouth = stiffness["atRoot"], stiffness["atMouth"]
        return lambda z: 1.0 / (root + (mouth - root) * z)
    return lambda z: 1.0 / stiffness + 0.0 * z


class Lap:
    """Numbers of one overlap, in arrays [channel, bond]."""

    def __init__(self, length, channels, bonds):
        self.length = float(length)
        self.C, self.B = len(channels), len(bonds)
        self.load = np.array([c["load"] for c in channels], float)
        self.tube = [flexibility(c["tube"]["stiffness"]) for c in channels]
        self.outer = [[flexibility(o["stiffness"]) for o in c["outers"]] for c in channels]
        self.uniform = all(
            not isinstance(k, dict) and not callable(k)
            for c in channels
            for k in [c["tube"]["stiffness"]] + [o["stiffness"] for o in c["outers"]]
        )
        self.strain = np.array(
            [
                [c["tube"].get("thermalStrain", 0.0) - o.get("thermalStrain", 0.0) for o in c["outers"]]
                for c in channels
            ],
            float,
        )
        first = channels[0]
        self.stiffness_t = first["tube"]["stiffness"]
        self.stiffness_o = [o["stiffness"] for o in first["outers"]]
        self.strain_pairs = [
            (first["tube"].get("thermalStrain", 0.0), o.get("thermalStrain", 0.0)) for o in first["outers"]
        ]
        self.lever = np.array([c["levers"] for c in channels], float)
        self.width = np.array([b["width"] for b in bonds], float)
        self.k = np.array([b["stiffness"] for b in bonds], float)
        self.tau_p = np.array([b["shearYield"] for b in bonds], float)
        self.s_u = np.array([b["slipAtFailure"] for b in bonds], float)
        self.s_e = self.tau_p / self.k

    @classmethod
    def from_inputs(cls, inputs):
        """One channel with the lever in the bonds, or two under "channels" with their own levers."""
        if "channels" in inputs:
            return cls(inputs["length"], inputs["channels"], inputs["bonds"])
        channel = {
            "load": inputs["load"],
            "tube": inputs["tube"],
            "outers": inputs["outers"],
            "levers": [b["lever"] for b in inputs["bonds"]],
        }
        return cls(inputs["length"], [channel], inputs["bonds"])

    def flexibilities(self, z):
        """1/K_t [C, ...] and 1/K_j [C, B, ...] at z = x/L."""
        t = np.stack([f(z) for f in self.tube])
        o = np.stack([np.stack([f(z) for f in row]) for row in self.outer])
        return t, o

    def rates(self):
        """Elastic decay rates: square roots of the eigenvalues of s'' = M s, largest over the ends."""
        found = []
        for z in (0.0,) if self.uniform else (0.0, 1.0):
            t, o = self.flexibilities(np.array(z))
            for c in range(self.C):
                a = self.lever[c]
                m = np.outer(a, a * self.width * self.k) * t[c]
                m += np.diag(a * a * self.width * self.k * o[c])
                found.extend(np.sqrt(np.linalg.eigvals(m).real))
        return np.array(found)

    def shear(self, s):
        """tau [..., C, B] from slips [..., C, B]."""
        size = np.sqrt(np.sum(s * s, axis=-2, keepdims=True))
        over = size > self.s_e
        return np.where(over, self.tau_p * s / np.where(size > 0, size, 1.0), self.k * s)


def significant(value, digits=10, scale=None):
    """Rounded to so many digits of the value, or of the scale of the array it belongs to."""
    value = float(value) + 0.0
    if value == 0.0 or not math.isfinite(value):
        return value
    top = max(abs(value), 0.0 if scale is None else abs(scale))
    return round(value, digits - 1 - math.floor(math.log10(top))) + 0.0


def row(values, digits=10, scaled=True):
    """A list rounded to digits of its largest entry (scaled) or entry by entry."""
    values = [float(v) for v in np.ravel(values)]
    scale = max((abs(v) for v in values), default=0.0) if scaled else None
    return [significant(v, digits, scale) for v in values]


def write(name, about, script, seed, accuracy, cases, stations=True, **more):
    document = {
        "about": about,
        "script": f"reference/{script}",
        "versions": {
            "python": platform.python_version(),
            "numpy": np.__version__,
            "scipy": scipy.__version__,
        },
        "seed": seed,
        "accuracy": accuracy,
        **({"stations": STATIONS} if stations else {}),
        "cases": cases,
        **more,
    }
    with open(os.path.join(HERE, name), "w", encoding="utf-8", newline="\n") as file:
        text = json.dumps(document, indent=1, ensure_ascii=False, allow_nan=False)
        # lists of numbers on one line
        text = re.sub(r"\[[-+.\deE,\s]+\]", lambda m: " ".join(m.group(0).split()), text)
        file.write(text + "\n")
    print(f"{name}: {len(cases)} cases. {accuracy}")
