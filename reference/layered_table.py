"""The layered model against finite-elements/bonded-joints.json, at mid-gap: prints per cent, joint by joint.

First at the stations of the specification's check values, then at all. `-v` prints every station too. Shear counts away from the last h, in per cent of what is there, where it is over a tenth
of the peak; peel where it is over a quarter of its peak, from 1 mm off a built-in root and from h off other ends.
"""

import json
import os
import sys

import numpy as np
from layered_cases import varied
from layered_fe import solve
from layered_joint import Bond, Joint, Wall

HERE = os.path.dirname(os.path.abspath(__file__))
SINGLE = [1.0, 3.05, 8.07, 15.11, 24.94, 26.95, 29.0, 29.53, 29.8]
CHECKS = {  # joints of the check values, and their stations
    "socket": SINGLE,
    "socket-thermal": SINGLE,
    "socket-bending": [0.5, 3.0, 8.0, 15.0, 25.0, 28.0, 29.5, 29.8],
    "double-lap-sleeve": [1, 3, 5, 8, 12.5, 17, 20, 23, 24, 24.5],
}
LINE_LOAD = {"shear": 1.04, "peel": 1.10}  # of a bending moment, at the tube's mean radius


def wall(layer, material, centre, tube):
    t = layer["thickness"]
    place = dict(atRoot=t[0], atMouth=t[1], radius=layer["inside"] + t[0] / 2 - centre, tube=tube)
    if "modulus" in material:
        E, nu, a = (material[k] for k in ("modulus", "poisson", "expansion"))
        return Wall(E, E, nu, E / (2 + 2 * nu), a, a, a, E, nu, nu, **place)
    keys = "axialModulus hoopModulus poissonAxialHoop shearAxialRadial axialExpansion hoopExpansion radialExpansion radialModulus"
    return Wall(*(material[k] for k in f"{keys} poissonAxialRadial poissonHoopRadial".split()), **place)


def joint_of(case, materials):
    given = case["inputs"]
    layers, flat = given["layers"], given["formulation"] == "plane strain"
    of = lambda layer: materials[layer["material"]]
    middle = next(p["inside"] + p["thickness"][0] / 2 for p in layers if p["name"] == given["tube"])
    walls = [wall(p, of(p), middle if flat else 0, p["name"] == given["tube"]) for p in layers if p["kind"] == "wall"]
    glue = [p for p in layers if p["kind"] == "bond"]
    bonds = []
    for p in glue:
        E, nu, a = (of(p)[k] for k in ("modulus", "poisson", "expansion"))
        h = p["thickness"][0]
        bonds.append(Bond(h, E, E / (2 + 2 * nu), a, p["inside"] + h / 2))
    kind = "double" if len(bonds) == 2 else "socket" if walls[0].tube else "spigot"
    kind = "flat-double" if flat else kind
    more = dict(width=1.0) if flat else {}
    joint = Joint(kind, given["overlap"], walls, bonds, given["load"], given["temperatureChange"], **more)
    joint = varied(joint)
    if case["name"].endswith("clamped"):  # built into something that does not shrink: not the method's clamp
        for w in joint.walls:
            w.clampGrowth = 0.0
    return joint


def solved(case, materials):
    """{channel: [values at the stations, bond by bond]}"""
    joint, x = joint_of(case, materials), case["expected"]["stations"]
    moment, out = case["inputs"].get("moment"), {}
    for channel, index in (("shear", 0), ("peel", 1)):
        one = joint
        if moment:
            tube = next(w for w in joint.walls if w.tube)
            one = varied(joint, load=LINE_LOAD[channel] * 2 * moment / tube.radius)
        s = solve(one)
        at = [s.stresses(s.element(v, True), v)[index][:, 0] for v in x]
        out[channel] = np.array(at, float).T
    return joint, out


def compare(case, joint, ours, at=None):
    """One line a bond; only at the stations `at`, if given."""
    x = np.array(case["expected"]["stations"])
    chosen = np.ones(len(x), bool) if at is None else np.array([np.min(np.abs(v - np.array(at))) < 1e-9 for v in x])
    for j, theirs in enumerate(case["expected"]["bonds"]):
        h, L = joint.bonds[j].thickness, joint.overlap
        text = f"{case['name']}, {theirs['name']}".ljust(46)
        for channel, share in (("shear", 0.1), ("peel", 0.25)):
            true = np.array(theirs[channel])
            root = 1.0 if channel == "peel" and "double" in joint.kind else h
            inside = (x >= root - 1e-9) & (x <= L - h + 1e-9) & chosen
            keep = inside & (np.abs(true) > share * np.max(np.abs(true)))
            error = 100 * (ours[channel][j] / true - 1)
            if not keep.any():
                text += f"{'none':>27s}"
                continue
            k = np.nonzero(keep)[0][np.argmax(np.abs(error[keep]))]
            text += f"{error[k]:10.1f} at {x[k]:6.3f};{np.mean(np.abs(error[keep])):6.1f}"
            if "-v" in sys.argv and at is None:
                for i in range(len(x)):
                    mark = f"{error[i]:8.1f}" if keep[i] else ""
                    print(f"   {channel} {x[i]:8.3f} {true[i]:10.4f} {ours[channel][j][i]:10.4f} {mark}")
        print(text, flush=True)


def main():
    with open(os.path.join(HERE, "finite-elements", "bonded-joints.json"), encoding="utf-8") as file:
        book = json.load(file)
    done = {case["name"]: (case, *solved(case, book["materials"])) for case in book["cases"]}
    head = f"{'shear: worst; mean':>27s}{'peel: worst; mean':>27s}"
    print("stations of the check values".ljust(46) + head)
    for name, at in CHECKS.items():
        compare(*done[name], at)
    print("all stations".ljust(46) + head)
    for one in done.values():
        compare(*one)


if __name__ == "__main__":
    main()
