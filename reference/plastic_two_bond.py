"""Elastic - perfectly plastic adhesive, two bonds, one channel: plastic-two-bond.json."""

import numpy as np
from check import Record, plastic_stretches, printed
from lap import Lap, row, significant, write
from overlap import assert_first, capacity, lowest_shear, solve, trough

SEED = 20253
rng = np.random.default_rng(SEED)


def sig(v, d=4):
    return significant(v, d)


def pick(lo, hi):
    return float(np.exp(rng.uniform(np.log(lo), np.log(hi))))


def uniform(lo, hi):
    return float(rng.uniform(lo, hi))


def draw(rate, share, thermal=1.0, kind="general", sign=None):
    """Random double lap with its largest omega L near `rate`, load a share of the fully plastic one."""
    length = sig(uniform(8, 60))
    c1, a1, a2 = pick(40, 150), uniform(0.85, 0.99), uniform(1.01, 1.15)
    c2 = c1 * a2 / a1 if kind != "unequal" else c1 * uniform(0.3, 3)
    kt, k1, k2 = pick(1e6, 2e7), pick(1e6, 2e7), pick(1e6, 2e7)
    s1, t1 = pick(500, 4000), uniform(15, 40)
    s2, t2 = s1 * uniform(0.5, 2), t1
    if kind == "unequal":
        s2, t2 = s1 * pick(0.1, 10), uniform(10, 45)
    if kind == "symmetric":
        a1 = a2 = 1.0
        c2, k2, s2 = c1, k1, s1
    if kind == "near-symmetric":
        a2, c2, k2, s2 = a1 * 1.0004, c1 * 1.0003, k1 * 0.9995, s1 * 1.001
    if kind == "rigid-middle":
        kt = pick(1e10, 1e12)
    strength = pick(1, 8), pick(1, 8)
    inputs = {
        "length": length,
        "load": 0.0,
        "tube": {"stiffness": sig(kt), "thermalStrain": 0.0},
        "outers": [{"stiffness": sig(k1), "thermalStrain": 0.0}, {"stiffness": sig(k2), "thermalStrain": 0.0}],
        "bonds": [
            {"width": sig(c), "lever": significant(a, 5), "stiffness": s, "shearYield": sig(t), "slipAtFailure": 1.0}
            for c, a, s, t in ((c1, a1, s1, t1), (c2, a2, s2, t2))
        ],
    }
    ratio = (rate / (max(Lap.from_inputs(inputs).rates()) * length)) ** 2
    full = 0.0
    for b, g in zip(inputs["bonds"], strength):
        b["stiffness"] = significant(b["stiffness"] * ratio, 6)
        b["slipAtFailure"] = sig(b["shearYield"] / b["stiffness"] * (1 + g))
        full += b["width"] * b["lever"] * b["shearYield"] * length
    sign = sign if sign is not None else (1 if rng.random() < 0.65 else -1)
    inputs["load"] = significant(sign * share * full, 8)
    free = min(b["shearYield"] / b["stiffness"] for b in inputs["bonds"]) * rate / length * thermal
    inputs["tube"]["thermalStrain"] = sig(free * uniform(-0.5, 0.5))
    for o in inputs["outers"]:
        o["thermalStrain"] = sig(free * uniform(-1, 1))
    if kind == "symmetric":
        inputs["outers"][1] = dict(inputs["outers"][0])
        inputs["bonds"][1] = dict(inputs["bonds"][0])
    return inputs


def describe(sol):
    """Which end of which bond has yielded, and with which sign."""
    words = []
    L = sol.lap.length
    s = sol.slips([0.0, L])[:, 0]
    for j in range(sol.lap.B):
        stretches = plastic_stretches(sol, j)
        if stretches == [[0.0, L]]:
            words.append(f"bond {j + 1} whole")
            continue
        for a, b in stretches:
            where = "root" if a == 0 else "mouth" if b == L else "within"
            sign = "" if where == "within" else "+" if s[0 if where == "root" else 1, j] > 0 else "-"
            words.append(f"bond {j + 1} {where}{sign}")
    return ", ".join(words) if words else "elastic"


def given(name, inputs, record):
    lap = Lap.from_inputs(inputs)
    sol, finer = solve(lap, p=12), solve(lap, p=18, fine=2)
    record.add(name, sol, finer)
    return {"name": name, "inputs": inputs, "expected": {"regime": describe(finer), "bonds": printed(finer, lowest_shear)}}


def limit(name, inputs, record):
    lap = Lap.from_inputs(inputs)
    (sol, where), (finer, _) = capacity(lap, p=12), capacity(lap, p=18, fine=2)
    record.add(name, sol, finer, finer.control)
    assert_first(lap, finer.factor)
    expected = {
        "factor": significant(finer.factor),
        "reachedAt": "whole" if where is None else ("root", "mouth")[where[1]],
        "bond": None if where is None else where[0],
        "regime": describe(finer),
    }
    if where is not None:
        expected["endSlipOverFailure"] = {"root": row(finer.ends()[0]), "mouth": row(finer.ends()[1])}
    lows = [trough(lap, j, finer.factor, p=14) for j in range(lap.B)]
    expected["troughFactor"] = [None if v is None else significant(v, 9) for v in lows]
    return {"name": name, "inputs": inputs, "expected": expected}


def main():
    record = Record(1e-9)
    cases, seen = [], {}
    kinds = ["general", "unequal", "general", "rigid-middle", "unequal"]
    tries = 0
    while len(cases) < 22:
        tries += 1
        inputs = draw(pick(1.5, 25), uniform(0.1, 0.95), uniform(0, 3), kinds[tries % len(kinds)])
        try:
            found = describe(solve(Lap.from_inputs(inputs)))
        except Exception as error:
            print("  passed over:", error)
            continue
        if seen.get(found, 0) >= (1 if found == "elastic" else 2):
            continue
        seen[found] = seen.get(found, 0) + 1
        cases.append(given(f"given load {len(cases) + 1}", inputs, record))
    for kind in ("symmetric", "near-symmetric"):
        for share in (0.4, 0.9):
            inputs = draw(8.0, share, 1.0, kind)
            cases.append(given(f"{kind}, {share} of fully plastic", inputs, record))
    cases.append(given("thermal only", draw(10.0, 0.0, 4.0), record))
    limits, kinds_found = [], {}
    kinds = ["general", "unequal", "symmetric", "near-symmetric", "rigid-middle"]
    tries = 0
    while len(limits) < 18 and tries < 400:
        tries += 1
        kind = kinds[tries % len(kinds)]
        inputs = draw(pick(0.6, 25), uniform(0.05, 0.5), uniform(0, 1.5), kind)
        lap = Lap.from_inputs(inputs)
        _, where = capacity(lap)
        key = "whole" if where is None else (where, kind == "symmetric")
        if kinds_found.get(key, 0) >= 4:
            continue
        kinds_found[key] = kinds_found.get(key, 0) + 1
        limits.append(limit(f"capacity {len(limits) + 1}, {kind}", inputs, record))
    write(
        "plastic-two-bond.json",
        "Elastic - perfectly plastic adhesive, two bonds, one channel. `cases`: the load is given. `capacity`: `factor` on the load, "
        "thermal strain held, at which the slip at an end of a bond is its slipAtFailure, or both bonds are plastic throughout "
        "(reachedAt \"whole\"); `bond` counts from 0; `troughFactor` for each bond: factor at which its lowest |shear| is a tenth of its "
        "shearYield, null if not before. In a symmetric case either bond is the first.",
        "plastic_two_bond.py",
        SEED,
        record.text(),
        cases,
        capacity=limits,
    )


if __name__ == "__main__":
    main()
