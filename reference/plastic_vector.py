"""Two channels on one yield surface, one bond and two: plastic-vector.json.

Channel 0 is axial (with thermal strain), channel 1 circumferential. The resultant slip decides:
tau = k s up to |s| = s_e, then tau_p s/|s|. Nothing here is linear between the fronts: there is no
closed form, and both checks of check.py are of the whole nonlinear system.
"""

import numpy as np
from check import Record, plastic_stretches, printed
from lap import Lap, row, significant, write
from overlap import assert_first, capacity, lowest_shear, solve, trough

SEED = 20254
rng = np.random.default_rng(SEED)


def sig(v, d=4):
    return significant(v, d)


def pick(lo, hi):
    return float(np.exp(rng.uniform(np.log(lo), np.log(hi))))


def uniform(lo, hi):
    return float(rng.uniform(lo, hi))


def draw(bonds, rate, share, angle, thermal=1.0, ductility=None):
    """Random overlap; `share` of the fully plastic resultant in the direction `angle` from axial."""
    length = sig(uniform(10, 55))
    k0, tau0 = pick(500, 4000), sig(uniform(15, 40))
    levers = [1.0] if bonds == 1 else [uniform(0.88, 0.98), uniform(1.02, 1.12)]
    width = pick(60, 180)
    shared = []
    for a in levers:
        tau = tau0 if bonds == 1 else sig(tau0 * uniform(0.8, 1.25))
        shared.append(
            {"width": sig(width * a), "stiffness": k0 * (1 if bonds == 1 else uniform(0.5, 2)), "shearYield": tau, "slipAtFailure": 1.0}
        )
    axial_k, hoop = [pick(1.5e6, 1.5e7) for _ in range(bonds + 1)], uniform(0.2, 0.8)
    channels = []
    for c in range(2):
        stiff = [sig(v * (1 if c == 0 else hoop * uniform(0.8, 1.25))) for v in axial_k]
        channels.append(
            {
                "load": 0.0,
                "tube": {"stiffness": stiff[0], "thermalStrain": 0.0},
                "outers": [{"stiffness": v, "thermalStrain": 0.0} for v in stiff[1:]],
                # an axial lever off the radius ratio, as bending makes it; the circumferential one is the ratio
                "levers": [significant(1 + (a - 1) * (uniform(0, 1) if c == 0 else 1), 5) for a in levers],
            }
        )
    if bonds == 1 and rng.random() < 0.4:
        channels[0]["levers"] = [sig(uniform(0.9, 1.1))]
    inputs = {"length": length, "channels": channels, "bonds": shared}
    ratio = (rate / (max(Lap.from_inputs(inputs).rates()) * length)) ** 2
    full = 0.0
    for b in shared:
        b["stiffness"] = significant(b["stiffness"] * ratio, 6)
        b["slipAtFailure"] = sig(b["shearYield"] / b["stiffness"] * (1 + (pick(0.7, 8) if ductility is None else ductility)))
        full += b["width"] * b["shearYield"] * length
    channels[0]["load"] = significant(share * full * np.cos(angle), 8)
    channels[1]["load"] = significant(share * full * np.sin(angle), 8)
    free = min(b["shearYield"] / b["stiffness"] for b in shared) * rate / length * thermal
    channels[0]["tube"]["thermalStrain"] = sig(free * uniform(-0.6, 0.6))
    for o in channels[0]["outers"]:
        o["thermalStrain"] = sig(free * uniform(-1, 1))
    return inputs


def describe(sol):
    words = []
    L = sol.lap.length
    for j in range(sol.lap.B):
        for a, b in plastic_stretches(sol, j):
            where = "whole" if a == 0 and b == L else "root" if a == 0 else "mouth" if b == L else "within"
            words.append(f"bond {j + 1} {where}")
    return ", ".join(words) if words else "elastic"


def given(name, inputs, record):
    lap = Lap.from_inputs(inputs)
    sol, finer = solve(lap, p=14, fine=2), solve(lap, p=20, fine=4)
    record.add(name, sol, finer)
    return {"name": name, "inputs": inputs, "expected": {"regime": describe(finer), "bonds": printed(finer, lowest_shear)}}


def limit(name, inputs, record):
    lap = Lap.from_inputs(inputs)
    (sol, where), (finer, _) = capacity(lap, p=14, fine=2), capacity(lap, p=20, fine=4)
    record.add(name, sol, finer, finer.control)
    assert_first(lap, finer.factor)
    lows = [trough(lap, j, finer.factor, p=14, fine=2) for j in range(lap.B)]
    return {
        "name": name,
        "inputs": inputs,
        "expected": {
            "factor": significant(finer.factor),
            "reachedAt": ("root", "mouth")[where[1]],
            "bond": where[0],
            "regime": describe(finer),
            "endSlipOverFailure": {"root": row(finer.ends()[0]), "mouth": row(finer.ends()[1])},
            "troughFactor": [None if v is None else significant(v, 8) for v in lows],
        },
    }


def reduces():
    """With one channel unloaded the two-channel solution is the one-channel solution."""
    inputs = draw(1, 9.0, 0.7, 0.0)
    both = solve(Lap.from_inputs(inputs), p=16)
    axial = Lap(inputs["length"], inputs["channels"][:1], inputs["bonds"])
    x = np.linspace(0, inputs["length"], 101)
    one = solve(axial, p=16).slips(x)[:, 0]
    d = np.max(np.abs(both.slips(x)[:, 0] - one)) / np.max(np.abs(one))
    assert d < 1e-10 and np.max(np.abs(both.slips(x)[:, 1])) < 1e-12, d
    print(f"one channel unloaded: {d:.1e}")


def main():
    reduces()
    record = Record(1e-8)
    cases, limits = [], []
    for bonds, count, capacities in ((1, 14, 9), (2, 8, 6)):
        seen, made = {}, 0
        while made < count:
            inputs = draw(bonds, pick(1.5, 18), uniform(0.15, 0.9), uniform(-np.pi, np.pi), uniform(0, 3))
            try:
                sol = solve(Lap.from_inputs(inputs))
            except Exception as error:
                print("  passed over:", error)
                continue
            found = describe(sol)
            # slips far beyond any adhesive's are of no use
            if seen.get(found, 0) >= (1 if found == "elastic" else 4) or np.max(sol.ends()) > 3:
                continue
            seen[found] = seen.get(found, 0) + 1
            made += 1
            cases.append(given(f"{'one bond' if bonds == 1 else 'two bonds'} {made}", inputs, record))
        for i in range(capacities):
            rate = [1.2, 3, 6, 10, 15, 20, 4, 8, 12][i]
            inputs = draw(bonds, rate, uniform(0.1, 0.5), uniform(-np.pi, np.pi), uniform(0, 1.5))
            limits.append(limit(f"capacity, {'one bond' if bonds == 1 else 'two bonds'} {i + 1}", inputs, record))
    write(
        "plastic-vector.json",
        "Elastic - perfectly plastic adhesive, two channels (0 axial, 1 circumferential) on one yield surface, one bond and two. In "
        "`expected` slip, shear and force are lists over the channels; resultantSlip is |s| at the ends, lowestShear the lowest resultant. "
        "`capacity`: `factor` on both loads, thermal strain held, at which |s| at an end of a bond is its slipAtFailure; `troughFactor` "
        "for each bond: factor at which its lowest resultant shear is a tenth of its shearYield, null if not before.",
        "plastic_vector.py",
        SEED,
        record.text(),
        cases,
        capacity=limits,
    )


if __name__ == "__main__":
    main()
