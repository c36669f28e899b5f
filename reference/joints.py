"""Whole joints from a project document: joint-margins.json (and joints-project.json).

For each joint, load case and gap state, with the shear of the adherends on (and off for three
joints): reached, asked and margin of every mode, worst place and clocking; the largest elastic
shear of each bond. The overlap sweep is in joints_sweep.py.
"""

import math
import os

os.environ.setdefault("OMP_NUM_THREADS", "1")
os.environ.setdefault("OPENBLAS_NUM_THREADS", "1")
from multiprocessing import Pool

import joints_project
import numpy as np
from clocking import Elastic, Plastic, elastic_lowest, lowest
from joint_model import GAP_STATES, Joint
from lap import significant, write
from overlap import assert_first

PROJECT = joints_project.project()
WITHOUT_ADHEREND_SHEAR = ("socket-force", "socket-all", "flat-straps")


def place(x, length):
    return "root" if x <= 1e-9 * length else "mouth" if x >= length * (1 - 1e-9) else "within"


def ties(joint, theta, function, value):
    """The clocking found and its mirror images that are as low, in degrees."""
    if theta is None:
        return None
    found, value = [], max(value, function(theta))
    for t in (theta, -theta, math.pi - theta, math.pi + theta):
        d = round(math.degrees(t) % 360, 4) % 360
        near = any(min(abs(d - o), 360 - abs(d - o)) < 0.02 for o in found)
        if not near and (t == theta or function(t) <= value * (1 + 1e-8) + 1e-12):
            found.append(d)
    return sorted(found)


def margin(joint, mode, part, reached, x, theta_list, remark=None):
    asked = joint.asked(mode)
    out = {
        "mode": mode,
        "part": part,
        "reached": significant(reached, 9) if math.isfinite(reached) else None,
        "asked": significant(asked),
        "margin": significant(reached / asked - 1, 9, reached / asked) if math.isfinite(reached) else None,
        "place": None if x is None else place(x, joint.length),
        "x": None if x is None else significant(x, 7, joint.length),
        "theta": theta_list,
    }
    if remark:
        out["remark"] = remark
    return out


def solve_case(task):
    joint_id, case_id, gap_state, shear = task
    data = next(j for j in PROJECT["joints"] if j["id"] == joint_id)
    j = Joint(PROJECT, data, case_id, gap_state, shear)
    elastic, plastic = Elastic(j), Plastic(j)
    modes, rows = j.modes(), []
    L, B = j.length, len(j.bonds)

    def shear_mode(mode, allowed):
        per = []
        for b in range(B):
            f = lambda t, x, b=b: elastic.shear_factor(t, allowed, x)[:, b]
            per.append((*elastic_lowest(elastic, f), b, f))
        value, x, theta, b, f = min(per, key=lambda v: v[0])
        row = margin(j, mode, j.names[b], value, x, ties(j, theta, lambda t: float(np.min(f(t, None))), value))
        row["byBond"] = [significant(v[0], 9) for v in per]
        rows.append(row)

    if "adhesive-yield" in modes:
        shear_mode("adhesive-yield", j.tau_p)
    strain, theta = lowest(j, lambda t: plastic.capacity(t)[0], 15.0, xatol=1e-6)
    t = 0.0 if theta is None else theta
    where = plastic.capacity(t)[1]
    if 0 < strain < math.inf:
        assert_first(j.lap(t), strain)
    x = None if where is None else (0.0, L)[where[1]]
    tied = ties(j, theta, lambda v: plastic.capacity(v)[0], strain)
    rows.append(
        margin(j, "adhesive-strain", "every bond" if where is None else j.names[where[0]], strain, x, tied, "whole bond plastic" if where is None else None)
    )
    if "durability-trough" in modes:
        per = []
        for b in range(B):
            f = lambda v, b=b: plastic.trough(v, b, strain)
            per.append((*lowest(j, f, 30.0 if j.hoop_loaded() else 15.0, refine=1, xatol=1e-5), b, f))
        value, theta_b, b, f = min(per, key=lambda v: v[0])
        lost = value < strain * (1 - 1e-9)
        row = margin(j, "durability-trough", j.names[b], value, None, ties(j, theta_b, f, value) if lost else tied)
        row["byBond"] = [significant(v[0], 8) for v in per]
        row["remark"] = "trough lost" if lost else "bond fails first"
        rows.append(row)
    if "cyclic-shear" in modes:
        fatigue = j.adhesive["fatigue"]
        shear_mode("cyclic-shear", j.tau_p * min(1.0, fatigue["coefficient"] * j.case["cycles"] ** -fatigue["exponent"]))
    for i, m in enumerate(j.members):
        for mode in ("metal-yield", "metal-ultimate") if m.material.isotropic else ("laminate-strength",):
            if mode not in modes:
                continue
            f = lambda t, x, i=i, mode=mode: elastic.wall_factor(t, i, mode, x)
            value, x, theta = elastic_lowest(elastic, f)
            rows.append(margin(j, mode, m.part, value, x, ties(j, theta, lambda t: float(np.min(f(t, None))), value)))
    peaks = []
    for b in range(B):
        f = lambda t, x, b=b: -elastic.shear(t, x)[:, b]
        # lowest of the negative: refinement compares by ratio, so work with 1/value
        g = lambda t, x, f=f: -1.0 / f(t, x)
        value, x, theta = elastic_lowest(elastic, g)
        peaks.append(
            {
                "part": j.names[b],
                "value": significant(1 / value, 9),
                "place": place(x, L),
                "x": significant(x, 7, L),
                "theta": ties(j, theta, lambda t: float(np.min(g(t, None))), value),
            }
        )
    print(f"{joint_id} {case_id} {gap_state} {shear}: " + ", ".join(f"{r['mode']} {r['part']} {r['reached']}" for r in rows), flush=True)
    return {
        "name": f"{joint_id}, {case_id}, gap {gap_state}, adherend shear {'on' if shear else 'off'}",
        "inputs": {"joint": joint_id, "case": case_id, "gapState": gap_state, "adherendShear": shear},
        "expected": {
            "bonds": [
                {
                    "part": n,
                    "gap": significant(h),
                    "radius": significant(r),
                    "stiffness": significant(b["stiffness"]),
                    "shearYield": significant(b["shearYield"]),
                    "slipAtFailure": significant(b["slipAtFailure"]),
                }
                for n, h, r, b in zip(j.names, j.h, j.rho, j.bonds)
            ],
            "peakElasticShear": peaks,
            "margins": rows,
        },
    }


def main():
    joints_project.main()
    tasks = []
    for data in PROJECT["joints"]:
        for shear in (True, False) if data["id"] in WITHOUT_ADHEREND_SHEAR else (True,):
            for load in data["loads"]:
                for gap_state in GAP_STATES:
                    tasks.append((data["id"], load["case"], gap_state, shear))
    with Pool(2) as pool:
        cases = pool.map(solve_case, tasks, chunksize=1)
    write(
        "joint-margins.json",
        "Whole joints of joints-project.json: for each joint, case, gap state and adherend shear on or off, `reached`, `asked` and `margin` "
        "of every mode and part, the place and the clockings (degrees) where it is lowest (all mirror images that tie; null where the "
        "clocking plays no part), and the largest resultant elastic shear of each bond at factor 1. `byBond` gives the factor of each bond; "
        "for the durability trough each bond on its own, the row being the lower. Where reached is 0 (temperature alone) place and clocking are "
        "arbitrary. `bonds` are the properties that the case was solved with.",
        "joints.py",
        None,
        "Elastic modes about 1e-8 (clocking searched every 3 degrees and refined, place refined). Adhesive strain about 1e-8 at a clocking, "
        "searched every 15 degrees and refined around the two lowest; durability trough about 1e-7, searched every 15 degrees (30 with "
        "circumferential load) and refined around the lowest. Clockings to about 0.01 degree where the minimum is sharp.",
        cases,
        stations=False,
    )


if __name__ == "__main__":
    main()
