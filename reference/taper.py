"""Tapered outer adherends, elastic and plastic: taper.json. Stiffness linear from root to mouth."""

import numpy as np
import plastic_two_bond
import plastic_vector
from check import Record, printed
from lap import Lap, row, significant, write
from overlap import assert_first, capacity, lowest_shear, solve

SEED = 20255
rng = np.random.default_rng(SEED)
plastic_two_bond.rng = plastic_vector.rng = rng


def sig(v, d=4):
    return significant(v, d)


def uniform(lo, hi):
    return float(rng.uniform(lo, hi))


def tapered(inputs, which, ratio):
    """The outers named by `which` taper to `ratio` of their root stiffness at the mouth."""
    for channel in inputs.get("channels", [inputs]):
        for j in which:
            k = channel["outers"][j]["stiffness"]
            channel["outers"][j]["stiffness"] = {"atRoot": k, "atMouth": sig(k * ratio)}
    return inputs


def one_bond(rate, share, thermal):
    """A double lap's draw with one bond taken away, its load in proportion."""
    inputs = plastic_two_bond.draw(rate, share, thermal)
    inputs["outers"], inputs["bonds"] = inputs["outers"][:1], inputs["bonds"][:1]
    b = inputs["bonds"][0]
    full = b["width"] * b["lever"] * b["shearYield"] * inputs["length"]
    inputs["load"] = significant(np.copysign(share * full, inputs["load"]), 8)
    return inputs


def elastic(inputs):
    """Yield far away: the elastic solution."""
    for b in inputs["bonds"]:
        b["shearYield"], b["slipAtFailure"] = 1e6, significant(2e6 / b["stiffness"], 6)
    return inputs


def main():
    record = Record(1e-8)
    draws = [
        ("one bond, elastic", elastic(tapered(one_bond(6, 0.5, 1), [0], 0.3))),
        ("one bond, elastic, long", elastic(tapered(one_bond(20, 0.5, 1), [0], 0.2))),
        ("one bond, elastic, short, thickening", elastic(tapered(one_bond(1.5, 0.5, 1), [0], 2.5))),
        ("two bonds, elastic, one tapered", elastic(tapered(plastic_two_bond.draw(8, 0.5, 1), [1], 0.4))),
        ("two bonds, elastic, both tapered", elastic(tapered(plastic_two_bond.draw(12, 0.5, 1, "unequal"), [0, 1], 0.25))),
        ("one bond, plastic", tapered(one_bond(8, 0.6, 1), [0], 0.35)),
        ("one bond, plastic, strong taper", tapered(one_bond(14, 0.75, 1.5), [0], 0.12)),
        ("one bond, plastic, thickening", tapered(one_bond(4, 0.8, 0.5), [0], 2.0)),
        ("one bond, plastic, thermal in the lead", tapered(one_bond(15, 0.05, 1.5), [0], 0.3)),
        ("two bonds, plastic, one tapered", tapered(plastic_two_bond.draw(9, 0.6, 1), [0], 0.3)),
        ("two bonds, plastic, both tapered", tapered(plastic_two_bond.draw(12, 0.7, 1, "unequal"), [0, 1], 0.4)),
        ("two bonds, plastic, both tapered, long", tapered(plastic_two_bond.draw(22, 0.6, 0.4), [0, 1], 0.2)),
        ("one bond, two channels, plastic", tapered(plastic_vector.draw(1, 8, 0.6, 0.7, 1), [0], 0.3)),
        ("two bonds, two channels, plastic", tapered(plastic_vector.draw(2, 9, 0.6, 2.2, 1), [0, 1], 0.3)),
    ]
    cases, limits = [], []
    for name, inputs in draws:
        lap = Lap.from_inputs(inputs)
        sol, finer = solve(lap, p=14, fine=2), solve(lap, p=20, fine=4)
        record.add(name, sol, finer)
        cases.append(
            {"name": name, "inputs": inputs, "expected": {"regime": plastic_vector.describe(finer), "bonds": printed(finer, lowest_shear)}}
        )
        if "elastic" in name:
            continue
        (sol, where), (finer, _) = capacity(lap, p=14, fine=2), capacity(lap, p=20, fine=4)
        record.add("capacity, " + name, sol, finer, finer.control)
        assert_first(lap, finer.factor)
        expected = {
            "factor": significant(finer.factor),
            "reachedAt": "whole" if where is None else ("root", "mouth")[where[1]],
            "bond": None if where is None else where[0],
        }
        if where is not None:
            expected["endSlipOverFailure"] = {"root": row(finer.ends()[0]), "mouth": row(finer.ends()[1])}
        limits.append({"name": "capacity, " + name, "inputs": inputs, "expected": expected})
    write(
        "taper.json",
        "Outer adherends of linearly varying stiffness ({atRoot, atMouth}), elastic and elastic-plastic, one bond and two, one channel and "
        "two. Layout as in the other plastic files; with two channels slip, shear and force are lists over the channels.",
        "taper.py",
        SEED,
        record.text(),
        cases,
        capacity=limits,
    )


if __name__ == "__main__":
    main()
