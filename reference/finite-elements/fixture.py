"""Assembling and writing bonded-joints.json: rounded, short lists on one line."""

import json
import re

import numpy as np

import materials
from check_values import differences

MATERIALS = {
    "titanium": materials.TITANIUM,
    "adhesive": materials.ADHESIVE,
    "carbon tube": materials.CARBON_TUBE,
    "carbon strip": materials.CARBON_STRIP,
}
QUANTITIES = ("shear", "peel", "meanShear", "meanPeel")
HOOP = ("circumferentialShear", "meanCircumferentialShear")


def rounded(value, digits=5):
    if isinstance(value, (list, tuple, np.ndarray)):
        return [rounded(v, digits) for v in value]
    return float(f"{float(value):.{digits}g}")


def to_resolution(values, digits=5):
    """Five digits of the larger values; nothing below a millionth of the largest."""
    step = 1e-6 * np.max(np.abs(values))
    return rounded([v if abs(v) >= step else 0.0 for v in values], digits)


def inputs(case):
    """Geometry, materials by name, loads, and what is held."""
    layers, place = [], case["inner"]
    for layer in case["layers"]:
        (name,) = [n for n, m in MATERIALS.items() if m is layer["material"]]
        layers.append(
            {
                "name": layer["name"],
                "kind": layer["kind"],
                "material": name,
                "inside": rounded(place, 7),
                "thickness": layer["thickness"],
                "start": layer["start"],
                "end": layer["end"],
            }
        )
        place += layer["thickness"][0]
    names = [layer["name"] for layer in layers]
    out = {
        "formulation": case["formulation"],
        "overlap": case["overlap"],
        "tube": names[case["tube"]],
        "layers": layers,
        "load": case["load"],
        "temperatureChange": case["temperatureChange"],
        "held": {names[j]: what for j, what in case["held"].items()},
    }
    if "moment" in case:
        out["moment"] = case["moment"]
    return out


def deep(case):
    """Stations at least a gap away from both ends of the overlap."""
    gap = max(layer["thickness"][0] for layer in case["layers"] if layer["kind"] == "bond")
    x = np.array(case["stations"])
    return np.minimum(x, case["overlap"] - x) >= gap - 1e-9


def worst(case, a, b, only_deep=True):
    """Largest difference over the stations, as a fraction of the largest value there."""
    pick = deep(case) if only_deep else slice(None)
    return np.max(np.abs(a - b)[pick]) / np.max(np.abs(b[pick]))


def against_table(case, name, values):
    """Largest differences from the printed check values (MPa), in the middle and an eighth out."""
    out = {}
    for where, source in (("atMiddle", values), ("atFiveEighths", values["outer"])):
        for what, rows in differences(case["name"], name, case["stations"], source).items():
            x, ours, theirs = max(rows, key=lambda row: abs(row[1] - row[2]))
            out.setdefault(where, {})[what] = {
                "x": x,
                "difference": rounded(ours - theirs, 2),
                "fractionOfPeak": rounded(abs(ours - theirs) / max(abs(r[2]) for r in rows), 2),
            }
    return out


def expected(case, coarse, fine):
    """Results of a case and its checks."""
    bonds, change = [], {}
    for j, b in fine["bonds"].items():
        name = case["layers"][j]["name"]
        bond = {"name": name, "radius": rounded(b["radius"], 7)}
        if case["formulation"] != "axisymmetric":
            bond["place"] = bond.pop("radius")
        if "carried" in b:
            bond["carried"] = rounded(b["carried"], 7) if case["load"] or len(fine["bonds"]) > 1 else 0.0
        for what in (*QUANTITIES, *(q for q in HOOP if q in b)):
            bond[what] = to_resolution(b[what])
        for what in ("shear", "peel"):
            moved = b[what] - coarse["bonds"][j][what]
            bond[f"{what}MeshChange"] = to_resolution(moved, 2)
            change[f"{name}, {what}"] = rounded(worst(case, coarse["bonds"][j][what], b[what]), 2)
        bonds.append(bond)
    checks = {
        "elements": [coarse["elements"], fine["elements"]],
        "meshChangeBeyondOneGap": change,
    }
    for j, b in fine["bonds"].items():
        table = against_table(case, case["layers"][j]["name"], b)
        if table:
            checks.setdefault("againstCheckValues", {})[case["layers"][j]["name"]] = table
    return {"stations": case["stations"], "bonds": bonds, "checks": checks}


def write(path, document):
    text = json.dumps(document, indent=1)
    # lists of numbers on one line
    text = re.sub(r"\[[^\[\]{}\"]*\]", lambda m: " ".join(m[0].split()), text)
    path.write_text(text + "\n", encoding="utf-8", newline="\n")
