"""CalculiX: writes the input deck of a case, runs it, reads what it prints."""

import re
import subprocess
import tempfile
from pathlib import Path

import numpy as np

from materials import constants

KINDS = {"axisymmetric": "CAX8", "plane strain": "CPE8"}


def lists(name, kind, numbers):
    rows = [f"*{kind}, {kind}={name}"]
    for i in range(0, len(numbers), 12):
        rows.append(", ".join(str(n + 1) for n in numbers[i : i + 12]))
    return rows


def material_rows(name, material):
    (e1, e2, e3), (n12, n13, n23), (g12, g13, g23), expansion = constants(material)
    first = [e1, e2, e3, n12, n13, n23, g12, g13]
    return [
        f"*MATERIAL, NAME={name}",
        "*ELASTIC, TYPE=ENGINEERING CONSTANTS",
        ", ".join(repr(v) for v in first) + ",",
        f"{g23!r}, 0.",
        "*EXPANSION, TYPE=ORTHO, ZERO=0.",
        ", ".join(repr(v) for v in expansion) + ", 0.",
    ]


def deck(case, mesh):
    """Input deck: axis 1 radial (thickness), axis 2 axial, axis 3 hoop (width)."""
    rows = ["*NODE, NSET=ALL"]
    rows += [f"{i + 1}, {a:.12g}, {b:.12g}, 0." for i, (a, b) in enumerate(mesh.xy)]
    rows.append(f"*ELEMENT, TYPE={KINDS[case['formulation']]}, ELSET=BODY")
    for i, nodes in enumerate(mesh.elements):
        rows.append(f"{i + 1}, " + ", ".join(str(n + 1) for n in nodes))
    bonds = []
    for j, layer in enumerate(case["layers"]):
        own = np.flatnonzero(mesh.layer == j)
        rows += lists(f"LAYER{j}", "ELSET", own)
        rows += material_rows(f"M{j}", layer["material"])
        rows += [f"*SOLID SECTION, ELSET=LAYER{j}, MATERIAL=M{j}", "1."]
        rows += lists(f"START{j}", "NSET", mesh.faces[j]["start"])
        if layer["kind"] == "bond":
            bonds.append(j)
    rows += ["*INITIAL CONDITIONS, TYPE=TEMPERATURE", "ALL, 0."]
    rows += ["*STEP", "*STATIC", "*BOUNDARY"]
    held = []
    for j, fixed in case["held"].items():
        if fixed == "one node":
            rows.append(f"{mesh.faces[j]['start'][0] + 1}, 2, 2, 0.")
            continue
        held.append(j)
        if "axial" in fixed:
            rows.append(f"START{j}, 2, 2, 0.")
        if "radial" in fixed:
            rows.append(f"START{j}, 1, 1, 0.")
        if "shrinking" in fixed:
            growth = case["temperatureChange"] * case["layers"][j]["material"]["expansion"]
            for n in mesh.faces[j]["start"]:
                rows.append(f"{n + 1}, 1, 1, {growth * mesh.xy[n, 0]:.12g}")
    if case["temperatureChange"]:
        rows += ["*TEMPERATURE", f"ALL, {case['temperatureChange']!r}"]
    if case["load"]:
        # face 3 of each element is the one towards the mouth; pressure pushes, so tension is negative
        rows.append("*DLOAD")
        for e in mesh.faces[case["tube"]]["endElements"]:
            rows.append(f"{e + 1}, P3, {-end_stress(case)!r}")
    rows += ["*NODE FILE, OUTPUT=2D", "U", "*EL FILE, OUTPUT=2D", "S"]
    for j in held:
        rows += [f"*NODE PRINT, NSET=START{j}, TOTALS=ONLY", "RF"]
    for j in bonds:
        rows += [f"*EL PRINT, ELSET=LAYER{j}", "S, COORD"]
    return "\n".join([*rows, "*END STEP", ""])


def end_stress(case):
    """Uniform tension on the loaded end; a flat joint's load is per unit width."""
    t = case["layers"][case["tube"]]["thickness"][0]
    if case["formulation"] != "axisymmetric":
        return case["load"] / t
    a = case["inner"] + sum(layer["thickness"][0] for layer in case["layers"][: case["tube"]])
    return case["load"] / (np.pi * ((a + t) ** 2 - a**2))


def run(text):
    """Runs a deck in a directory of its own; the result files' texts."""
    with tempfile.TemporaryDirectory() as where:
        base = Path(where) / "joint"
        base.with_suffix(".inp").write_text(text)
        done = subprocess.run(["ccx", "joint"], cwd=where, capture_output=True, text=True)
        if done.returncode or "*ERROR" in done.stdout:
            raise RuntimeError(done.stdout[-3000:])
        return base.with_suffix(".frd").read_text(), base.with_suffix(".dat").read_text()


def version():
    out = subprocess.run(["ccx", "-v"], capture_output=True, text=True).stdout
    return re.search(r"Version (\S+)", out).group(1)


def frd_field(text, name, count, components):
    """Nodal values of one field of the result file, by node number."""
    out = np.full((count, components), np.nan)
    inside = False
    for line in text.splitlines():
        if line.startswith(" -4"):
            inside = line.split()[1] == name
        elif line.startswith(" -3"):
            inside = False
        elif inside and line.startswith(" -1"):
            node = int(line[3:13]) - 1
            if node < count:
                out[node] = [float(line[13 + 12 * k : 25 + 12 * k]) for k in range(components)]
    return out


def dat_blocks(text):
    """Printed tables: (heading, rows of numbers)."""
    blocks, heading, rows = [], None, []
    for line in text.splitlines():
        if not line.strip():
            continue
        if re.match(r"\s*[a-zA-Z]", line):
            if heading is not None:
                blocks.append((heading.strip(), rows))
            heading, rows = line, []
        else:
            rows.append([float(v) for v in line.split()])
    blocks.append((heading.strip() if heading else "", rows))
    return [(h, np.array(r)) for h, r in blocks]
