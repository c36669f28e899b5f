"""Overlap sweep and plateau of a few joints (docs/method.md section 9): overlap-sweeps.json."""

import math
import os

os.environ.setdefault("OMP_NUM_THREADS", "1")
os.environ.setdefault("OPENBLAS_NUM_THREADS", "1")
from multiprocessing import Pool

import joints_project
import numpy as np
from clocking import Plastic, lowest
from joint_model import GAP_STATES, Joint
from lap import significant, write
from scipy.optimize import brentq

PROJECT = joints_project.project()
SWEEPS = {
    "socket-force": (8, 14, 24, 40, 80),
    "spigot-torque": (8, 16, 28, 45, 90),
    "flat-straps": (8, 15, 30, 50, 90),
    "socket-moment": (10, 18, 30, 50, 90),
    "double-bending": (8, 14, 24, 40, 70),
}
# what the joint's strength rises to past the plateau, at these multiples of it
PAST = (1.1, 1.5, 3.0)


def strength(data, overlap):
    """Lowest reached/asked of the bond over cases, gap states and clockings, and its case."""
    best = (math.inf, None, None)
    for load in data["loads"]:
        for gap_state in GAP_STATES:
            j = Joint(PROJECT, data, load["case"], gap_state, True, overlap)
            p = Plastic(j)
            value = lowest(j, lambda t: p.capacity(t)[0], 30.0, refine=1, xatol=1e-4)[0] / j.asked("adhesive-strain")
            if value < best[0]:
                best = (value, load["case"], gap_state)
    return best


def sweep(joint_id):
    data = next(j for j in PROJECT["joints"] if j["id"] == joint_id)
    points = []
    for overlap in SWEEPS[joint_id]:
        value, case, gap_state = strength(data, overlap)
        points.append({"overlap": overlap, "bond": significant(value, 9), "case": case, "gapState": gap_state})
    # so long that the ends know nothing of one another: slowest elastic rate times length 45
    slow = min(
        float(np.min(Joint(PROJECT, data, load["case"], g, True).lap(math.radians(a)).rates()))
        for load in data["loads"]
        for g in GAP_STATES
        for a in (0, 90)
    )
    long = 45 / slow
    limit = strength(data, long)[0]
    target = 0.98 * limit
    # between the last point below and the first above; below them the strength only rises
    values = [p["bond"] for p in points]
    first = next(i for i, v in enumerate(values) if v >= target)
    assert all(np.diff(values[: first + 1]) > 0) and first > 0
    low, high = SWEEPS[joint_id][first - 1], SWEEPS[joint_id][first]
    plateau = brentq(lambda v: strength(data, v)[0] / target - 1, low, high, xtol=1e-6, rtol=1e-8)
    rising = [strength(data, v)[0] / limit for v in plateau * np.array(PAST)]
    print(f"sweep {joint_id}: {points}, long {long:.1f}: {limit:.6g}, plateau {plateau:.6g}, past it {np.round(rising, 4)}", flush=True)
    return {
        "name": f"overlap sweep, {joint_id}",
        "inputs": {"joint": joint_id, "adherendShear": True},
        "expected": {
            "points": points,
            "plateau": significant(plateau, 7),
            "plateauStrength": significant(limit, 9),
            "strengthPastPlateauOverLong": [significant(v, 6) for v in rising],
        },
    }


def main():
    with Pool(2) as pool:
        cases = pool.map(sweep, list(SWEEPS), chunksize=1)
    write(
        "overlap-sweeps.json",
        "Joints of joints-project.json with other overlaps. `points`: lowest reached/asked of adhesive-strain over cases, gap states and "
        "clockings, and where it is; `plateauStrength`: the same for a very long overlap (slowest elastic decay rate times length 45); "
        "`plateau`: the first overlap at which it is 98 % of that; `strengthPastPlateauOverLong`: ratio to the very long one at "
        f"{', '.join(str(v) for v in PAST)} times the plateau. Where every bond is plastic throughout, gap states of a flat joint tie.",
        "joints_sweep.py",
        None,
        "Strengths about 1e-7 (clocking searched every 30 degrees and refined), plateau about 1e-5 of itself.",
        cases,
        stations=False,
    )


if __name__ == "__main__":
    main()
