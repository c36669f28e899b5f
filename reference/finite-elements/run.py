"""Finite-element references of bonded joints: bonded-joints.json. Takes about ten minutes.

Every case is solved on two meshes, the second with twice the elements along the joint and across each
gap and about half as many again through the walls; the finer one is recorded together with the
change. With names of cases, solves only those and prints their checks. Fails if a bond does not carry its load or a mesh is too coarse.
"""

import platform
import sys
from pathlib import Path

import numpy as np
import scipy

import bending
import ccx
import fixture
import results
from cases import all_cases

ABOUT = (
    "Bonded joints by finite elements. x runs from the sleeve root (0) to the mouth; layers from the inside out, "
    "thickness [root, mouth], linear in x over the overlap; `inside` is the inner radius at the root (the lower "
    "face of a flat joint). Units N, mm, MPa, degrees C; load and carried are N (N per mm of width when plane "
    "strain). `shear` and `peel` stand at the middle of the gap (`radius`), `mean...` are means over the gap at "
    "the same x. Shear is positive in tension of the tube, peel (stress along the radius or thickness) positive "
    "when it opens. The ends of the adhesive are square and free. `held`: what is fixed at the start of a layer; "
    "'shrinking' is the radial displacement alpha dT r. endDisplacement is the mean axial displacement of the "
    "tube's loaded end. Bending: amplitudes of cos(clocking), of sin(clocking) for the circumferential shear. "
    "Poisson's ratio ij: contraction along j under tension along i. Hoop means across the width in a flat joint."
)


def note(text):
    print(text, file=sys.stderr, flush=True)


def close(what, value, target, scale, tolerance):
    if abs(value - target) > tolerance * scale:
        raise AssertionError(f"{what}: {value} instead of {target}")


def calculix(case, worst):
    """One case by CalculiX, and the checks that need nothing else."""
    coarse, fine = (results.solve(case, finer) for finer in (1, 2))
    entry = fixture.expected(case, coarse, fine)
    checks = entry["checks"]
    bonds = fine["bonds"]
    # with no load the scale is the force that one half of the bond passes to the other
    scale = case["load"] or 1000.0
    close(case["name"], sum(b["carried"] for b in bonds.values()), case["load"], scale, 1e-5)
    for j, b in bonds.items():
        close(f"{case['name']}, middle of the bond", b["middle"], b["carried"], scale, 1e-3)
    names = [layer["name"] for layer in case["layers"]]
    checks["reactions"] = {names[j]: fixture.rounded(r, 6) for j, r in fine["reactions"].items()}
    checks["integralOfMiddleShear"] = {
        names[j]: fixture.rounded(b["middle"], 6) for j, b in bonds.items()
    }
    if fine["reactions"]:
        close("reaction", sum(fine["reactions"].values()), case["load"], scale, 1e-5)
    entry["endDisplacement"] = fixture.rounded(fine["endDisplacement"])
    for value in checks["meshChangeBeyondOneGap"].values():
        worst["mesh"] = max(worst["mesh"], value)
    if case["name"] in ("socket", "socket-thermal", "double-lap-sleeve"):
        own = bending.solve(case, 2, 0)["bonds"]
        found = {
            f"{names[j]}, {what}": fixture.rounded(fixture.worst(case, own[j][what], b[what]), 2)
            for j, b in bonds.items()
            for what in fixture.QUANTITIES
        }
        checks["ownElementsDifferBeyondOneGap"] = found
        worst["own"] = max(worst["own"], *found.values())
    return entry


def bent(case, worst):
    coarse, fine = (bending.solve(case, finer, 1) for finer in (1, 2))
    entry = fixture.expected(case, coarse, fine)
    for b in fine["bonds"].values():
        close("moment", b["moment"], case["moment"], case["moment"], 1e-4)
        close("sideways force", b["sideways"], 0.0, case["moment"] / case["overlap"], 1e-4)
        entry["checks"]["momentOnMiddle"] = fixture.rounded(b["moment"], 6)
        entry["checks"]["momentByAxialShear"] = fixture.rounded(b["axialMoment"], 6)
    for value in entry["checks"]["meshChangeBeyondOneGap"].values():
        worst["mesh"] = max(worst["mesh"], value)
    return entry


def main():
    wanted = sys.argv[1:]
    worst = {"mesh": 0.0, "own": 0.0}
    entries = []
    for case in all_cases():
        if wanted and case["name"] not in wanted:
            continue
        note(case["name"])
        solve = bent if "moment" in case else calculix
        entries.append(
            {
                "name": case["name"],
                "about": case["about"],
                "inputs": fixture.inputs(case),
                "expected": solve(case, worst),
            }
        )
        note(entries[-1]["expected"]["checks"])
    if wanted:
        return
    close("mesh", worst["mesh"], 0.0, 1.0, 0.01)
    close("own elements", worst["own"], 0.0, 1.0, 0.005)
    document = {
        "about": ABOUT,
        "script": "reference/finite-elements/run.py",
        "versions": {
            "python": platform.python_version(),
            "numpy": np.__version__,
            "scipy": scipy.__version__,
            "calculix": ccx.version(),
        },
        "seed": None,
        "accuracy": (
            "Five digits are written. One gap or more from the ends, going from the coarser mesh to this "
            f"one changes mid-bond shear and peel by at most {worst['mesh']:.1e} of the largest there; at "
            "each station the change stands in ...MeshChange (nearer the ends too, where the corners are "
            "singular). Elements written apart from CalculiX differ by at most "
            f"{worst['own']:.1e} in three of the cases."
        ),
        "materials": fixture.MATERIALS,
        "cases": entries,
    }
    fixture.write(Path(__file__).with_name("bonded-joints.json"), document)


if __name__ == "__main__":
    main()
