"""Cyclic cases of given load ratios, alone and together: cyclic-damage.json.

The elastic shear of joint_model.py, by collocation. A peak is carried over to another ratio by Goodman's
line for 4001 static strengths from the yield to infinity, of which the lowest counts; lives are found by
bisection on that, and the factor at which the damage of all cases is 1 by scipy's brentq.
"""

import math

import joints_project
import numpy as np
from clocking import Elastic, elastic_lowest
from joint_model import Joint
from lap import significant, write
from scipy.optimize import brentq

LINE = {"coefficient": 0.95, "exponent": 0.06, "ratio": 0.1}
CASES = {
    "hum": {"temperature": 55, "moisture": "dry", "cycles": 100_000, "ratio": -1.0},
    "pulse": {"temperature": 45, "moisture": "wet", "cycles": 20_000, "ratio": 0.1},
    "swing": {"temperature": 23, "moisture": "dry", "cycles": 300_000, "ratio": 0.4},
}
LOADS = {
    "socket-force": {"hum": (4000, 0, 0, 0), "pulse": (7000, 0, 0, 0), "swing": (9000, 0, 0, 0)},
    "spigot-torque": {"hum": (800, 0, 20000, 0), "pulse": (-2500, 0, 40000, 0)},
    "socket-all": {"hum": (2500, 40000, 15000, 200), "pulse": (-4000, 80000, 30000, 400), "swing": (4000, -50000, 10000, 200)},
    "double-force": {"hum": (9000, 0, 0, 0), "swing": (-16000, 0, 0, 0)},
    "flat-straps": {"hum": (3000, 0, 0, 0), "swing": (6500, 0, 0, 0)},
}
GAPS = ("min", "nominal", "max")
# 1/Su from 0 (no limit) to 1 (the yield)
WEAKNESS = np.linspace(0.0, 1.0, 4001)


def carried(share, start, end):
    """The lowest peak at ratio `end` that does the damage of `share` at ratio `start`."""
    if start == end:
        return share
    with np.errstate(all="ignore"):
        reversed_ = share * (1 - start) / 2 / (1 - share * (1 + start) / 2 * WEAKNESS)
        peak = reversed_ / ((1 - end) / 2 + reversed_ * (1 + end) / 2 * WEAKNESS)
    return float(np.min(peak[(reversed_ > 0) & np.isfinite(peak)]))


def on_line(log):
    return LINE["coefficient"] * math.exp(-LINE["exponent"] * log)


def allowed(cycles, ratio):
    share = on_line(math.log(cycles))
    # above yield there is nothing to carry over to a higher ratio
    return min(1.0, carried(min(1.0, share) if ratio > LINE["ratio"] else share, LINE["ratio"], ratio))


def life(share, ratio):
    """Cycles at which this share is what is allowed; 0 above yield."""
    if share > 1:
        return 0.0
    # the line goes on to lives shorter than a cycle
    f = lambda log: carried(min(1.0, on_line(log)) if ratio > LINE["ratio"] else on_line(log), LINE["ratio"], ratio) - share
    return math.exp(brentq(f, -200.0, 400.0, xtol=1e-13))


def project():
    base = joints_project.project()
    kept = ("id", "name", "temperature", "moisture")
    return {
        **base,
        "name": "Reference joints under cycles",
        "note": "Joints that an independent calculation has solved; all properties are invented.",
        "adhesives": [{**a, "fatigue": {**LINE, "source": joints_project.SOURCE}} for a in base["adhesives"]],
        "loadCases": [{"id": k, "name": k, "kind": "cyclic", **v} for k, v in CASES.items()],
        "joints": [
            {
                **{k: v for k, v in j.items() if k != "offset"},
                **({"offset": 0.0} if "offset" in j else {}),
                "loads": [
                    {"case": k, "force": v[0]} if j["type"].startswith("flat") else {"case": k, **dict(zip(("force", "moment", "torque", "shear"), v))}
                    for k, v in LOADS[j["id"]].items()
                ],
            }
            for j in base["joints"]
            if j["id"] in LOADS
        ],
    }


PROJECT = project()


class Cycle:
    """A case of a joint in a gap state: the peak of its shear over yield, at both ends of the cycle."""

    def __init__(self, joint, case_id, gap):
        self.joint = Joint(PROJECT, joint, case_id, gap, True)
        self.case = CASES[case_id]
        self.elastic = Elastic(self.joint)
        ratio = self.case["ratio"]
        self.ends = (1.0, ratio) if ratio < 0 else (1.0,)

    def resultant(self, factor, theta, x):
        unit, heat, hoop = self.elastic.at(theta, x)
        P, Q = self.elastic.loads(theta)
        most = 0.0
        for end in self.ends:
            f = factor * end
            most = np.maximum(most, np.max(np.hypot(f * P * unit[0] + heat[0], f * Q * hoop[0]), axis=1))
        return most / self.joint.tau_p

    def peak(self, factor):
        value, _, _ = elastic_lowest(self.elastic, lambda t, x: 1.0 / self.resultant(factor, t, x))
        return 1.0 / value

    def alone(self):
        share = allowed(self.case["cycles"], self.case["ratio"])
        f = lambda factor: self.peak(factor) - share
        if f(0.0) >= 0:
            return 0.0
        top = 1.0
        while f(top) < 0:
            top *= 2
        return brentq(f, 0.0, top, xtol=1e-12, rtol=1e-12)

    def damage(self, factor):
        n = life(self.peak(factor), self.case["ratio"])
        return math.inf if n == 0 else self.case["cycles"] / n


def together(cycles):
    alone = [c.alone() for c in cycles]
    most = min(alone)
    total = lambda f: sum(c.damage(f) for c in cycles)
    if most == 0 or total(0.0) >= 1:
        return alone, 0.0
    g = lambda f: min(1e6, total(f) ** LINE["exponent"]) - 1
    return alone, most if g(most) <= 0 else brentq(g, 0.0, most, xtol=1e-12, rtol=1e-12)


def main():
    rows = []
    for joint in PROJECT["joints"]:
        by_gap = {}
        for gap in GAPS:
            cycles = {k: Cycle(joint, k, gap) for k in LOADS[joint["id"]]}
            alone, factor = together(list(cycles.values()))
            by_gap[gap] = {"alone": dict(zip(cycles, (significant(v, 9) for v in alone))), "together": significant(factor, 9)}
        worst = min(by_gap, key=lambda g: by_gap[g]["together"])
        rows.append({"name": joint["id"], "inputs": {"joint": joint["id"]}, "expected": {"gaps": by_gap, "worst": worst}})
        print(joint["id"], by_gap, flush=True)
    write(
        "cyclic-damage.json",
        "Cyclic shear at given load ratios, and the factor at which the damage of all cyclic cases is 1.",
        "cyclic.py",
        None,
        "factors to about 1e-7: the grid of static strengths holds both of its ends",
        rows,
        stations=False,
        project=PROJECT,
    )


if __name__ == "__main__":
    main()
