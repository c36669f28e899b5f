"""Time of CalculiX for the double-lap sleeve of finite-elements/cases.py, as an axisymmetric solid.

Used by the benchmark where `ccx` is on the path; prints one line of JSON. What is timed is the program from its deck
to its result files, not the making of the mesh nor the reading of what it writes.
"""

import json
import shutil
import sys
import time
from pathlib import Path

sys.path.insert(0, str(Path(__file__).with_name("finite-elements")))

import ccx
import mesh
from cases import all_cases

if not shutil.which("ccx"):
    sys.exit(1)

NAME = "double-lap-sleeve"
# The coarsest mesh that the joint can have here: one gap or more from the ends it differs from one of 13 000 elements
# by 0.3 % of the peak in shear and 3 % in peel, about as much as the layered shells do from the finest.
COARSEST = 0.25
RUNS = 5

case = next(one for one in all_cases() if one["name"] == NAME)
solid = mesh.build(case, COARSEST)
deck = ccx.deck(case, solid)
times = []
for _ in range(RUNS):
    start = time.perf_counter()
    ccx.run(deck)
    times.append(1000 * (time.perf_counter() - start))
figures = {"calculix": ccx.version(), "case": NAME, "elements": len(solid.elements), "median": sorted(times)[RUNS // 2]}
print(json.dumps(figures))
