"""Elastic - perfectly plastic bond, one bond, one channel: plastic-one-bond.json."""

import numpy as np
from check import Record, printed
from lap import Lap, row, significant, write
from overlap import assert_first, capacity, lowest_shear, solve, trough

SEED = 20252
rng = np.random.default_rng(SEED)


def sig(v, d=4):
    return significant(v, d)


def pick(lo, hi):
    return float(np.exp(rng.uniform(np.log(lo), np.log(hi))))


def uniform(lo, hi):
    return float(rng.uniform(lo, hi))


def draw(rate, load=None, thermal=1.0, whole=None, sign=None, skew=None):
    """One random overlap with omega L near `rate`; load as a share of the fully plastic load."""
    length, width, lever = sig(uniform(8, 70)), sig(pick(20, 250)), sig(uniform(0.85, 1.2))
    kt, ks = pick(8e5, 1.5e7), pick(8e5, 1.5e7)
    if skew == "root":  # compliant sleeve: the root is the hard end
        ks = kt * uniform(0.15, 0.4)
    if skew == "mouth":
        kt = ks * uniform(0.15, 0.4)
    k = (rate / length) ** 2 / (lever**2 * width * (1 / kt + 1 / ks))
    tau_p = sig(uniform(12, 45))
    plastic = pick(0.5, 8)
    s_e = tau_p / k
    full = lever * width * tau_p * length
    share = load if load is not None else uniform(0.05, 0.9)
    sign = sign if sign is not None else (1 if rng.random() < 0.65 else -1)
    # free thermal slip over the length, in units of the elastic slip
    free = thermal * uniform(-1.5, 1.5) * s_e * rate / length
    split = uniform(-1, 1)
    P = sign * (whole if whole is not None else share) * full
    return {
        "length": length,
        "load": significant(P, 8),
        "tube": {"stiffness": sig(kt), "thermalStrain": sig(free * (1 + split) / 2)},
        "outers": [{"stiffness": sig(ks), "thermalStrain": sig(-free * (1 - split) / 2)}],
        "bonds": [
            {"width": width, "lever": lever, "stiffness": significant(k, 6), "shearYield": tau_p, "slipAtFailure": sig(s_e * (1 + plastic))}
        ],
    }


def regime(sol):
    L = sol.lap.length
    a, b = sol.slips([0.0, L])[:, 0, 0]
    e = sol.lap.s_e[0]
    root, mouth = abs(a) > e, abs(b) > e
    if root and mouth:
        if len(sol.states) == 1:
            return "whole plastic"
        return "both ends plastic" if a * b > 0 else "ends plastic in opposite directions"
    return "root plastic" if root else "mouth plastic" if mouth else "elastic"


def published():
    """Specification's check value, section 6."""
    G, h, strain = 876.0, 0.2, 0.05
    inputs = {
        "length": 30.0,
        "load": 500.0,
        "tube": {"stiffness": 112000.0, "thermalStrain": 0.0},
        "outers": [{"stiffness": 136800.0, "thermalStrain": 0.0}],
        "bonds": [{"width": 1.0, "lever": 1.0, "stiffness": G / h, "shearYield": G * strain, "slipAtFailure": 0.2}],
    }
    sol = solve(Lap.from_inputs(inputs), p=16)
    root, mouth = sol.size([0.0, 30.0])[:, 0] / h
    # one unit of the last digit stated: 2.534226 stands there as 2.53422
    assert abs(sol.fronts[0] - 1.39634) < 5e-6 and abs(30 - sol.fronts[1] - 2.53422) < 1e-5
    assert abs(root - 0.0720511) < 1e-7 and abs(mouth - 0.0951479) < 1e-7
    return inputs


def given(name, inputs, record, lowest=lowest_shear):
    lap = Lap.from_inputs(inputs)
    sol, finer = solve(lap, p=12), solve(lap, p=18, fine=2)
    record.add(name, sol, finer)
    return {"name": name, "inputs": inputs, "expected": {"regime": regime(finer), "bonds": printed(finer, lowest)}}


def limit(name, inputs, record):
    """Factor on the load at which an end slip is s_u or everything is plastic, and the trough's factor."""
    lap = Lap.from_inputs(inputs)
    (sol, where), (finer, _) = capacity(lap, p=12), capacity(lap, p=18, fine=2)
    record.add(name, sol, finer, finer.control)
    assert_first(lap, finer.factor)
    f = finer.factor
    expected = {
        "factor": significant(f),
        "reachedAt": "whole" if where is None else ("root", "mouth")[where[1]],
    }
    if where is not None:
        expected["endSlipOverFailure"] = {"root": row(finer.ends()[0]), "mouth": row(finer.ends()[1])}
    low = trough(lap, 0, f, p=14)
    expected["troughFactor"] = None if low is None else significant(low, 9)
    return {"name": name, "inputs": inputs, "expected": expected}


def main():
    record = Record(1e-9)
    wanted = {
        "elastic": (5, dict(load=0.12), (1, 14)),
        "root plastic": (6, dict(skew="root"), (1.5, 18)),
        "mouth plastic": (6, dict(skew="mouth"), (1.5, 18)),
        "both ends plastic": (8, {}, (1.5, 25)),
        "ends plastic in opposite directions": (6, dict(load=0.04, thermal=4), (4, 30)),
    }
    cases = [given("specification check value", published(), record)]
    for name, (count, options, rates) in wanted.items():
        made = 0
        while made < count:
            inputs = draw(pick(*rates), **options)
            try:
                found = regime(solve(Lap.from_inputs(inputs)))
            except Exception as error:  # over the fully plastic load: not a case
                print("  passed over:", error)
                continue
            if found == name:
                made += 1
                cases.append(given(f"{name} {made}", inputs, record))
    inputs = draw(12.0, load=0.0, thermal=3)
    cases.append(given("thermal only", inputs, record))
    for whole in (0.9, 0.99, 0.999, 0.9999, 0.999999):
        cases.append(given(f"near whole plastic, {whole}", draw(pick(2, 12), thermal=0.5, whole=whole), record))
    limits = []
    kinds = {"root": 0, "mouth": 0, "whole": 0}
    while min(kinds.values()) < 5:
        skew = "root" if kinds["root"] < 5 else "mouth" if kinds["mouth"] < 5 else None
        rate = pick(3, 30) if skew else pick(0.5, 4)
        case_inputs = draw(rate, load=uniform(0.05, 0.5), skew=skew, thermal=uniform(0, 1.5))
        lap = Lap.from_inputs(case_inputs)
        _, where = capacity(lap)
        kind = "whole" if where is None else ("root", "mouth")[where[1]]
        if kinds[kind] >= 6:
            continue
        kinds[kind] += 1
        limits.append(limit(f"capacity, {kind} {kinds[kind]}", case_inputs, record))
    while True:
        inputs = draw(pick(8, 15), load=0.3, thermal=12)
        if capacity(Lap.from_inputs(inputs))[0].factor == 0.0:
            break
    limits.append(
        {
            "name": "capacity, failed by temperature alone",
            "inputs": inputs,
            "expected": {"factor": 0.0, "reachedAt": "temperature"},
        }
    )
    write(
        "plastic-one-bond.json",
        "Elastic - perfectly plastic bond, one bond, one channel. `cases`: the load is given; slips (mm) and shears (MPa) at "
        "`stations`, plastic stretches, lowest |shear|. `capacity`: `factor` on the load, thermal strain held, at which the slip at "
        "an end is slipAtFailure or the whole bond is plastic; `troughFactor` at which the lowest |shear| is a tenth of shearYield, "
        "null if not before. With slipAtFailure passed at no load the factor is 0.",
        "plastic.py",
        SEED,
        record.text(),
        cases,
        capacity=limits,
    )


if __name__ == "__main__":
    main()
