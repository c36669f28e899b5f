"""Single against double lap at the same overlap, pulled: laps-compared.json. What each bond carries at failure,
by the collocation of overlap.py. The joints are given by their sizes; nothing of the program is used."""

import math

from lap import Lap, significant, write
from overlap import assert_first, capacity

ADHESIVE = {"shearModulus": 876.0, "shearYield": 38.0, "plasticStrain": 0.4}
CARBON = {"modulus": 70000.0, "throughShearModulus": 4000.0, "expansion": 1e-6}
TITANIUM = {"modulus": 114000.0, "poisson": 0.34, "expansion": 8.6e-6}
THROUGH = TITANIUM["modulus"] / (2 * (1 + TITANIUM["poisson"]))

JOINTS = [
    ("tube 40 x 2, walls 1.2", 40.0, 2.0, 1.2, 0.2),
    ("tube 25 x 1.5, walls 1.5", 25.0, 1.5, 1.5, 0.2),
    ("tube 32 x 1.6, walls 1.2", 32.0, 1.6, 1.2, 0.2),
]
OVERLAPS = [8.0, 14.0, 25.0, 45.0, 120.0]


def ring(lower, upper):
    return math.pi * (upper**2 - lower**2)


def lap(diameter, tube, wall, gap, overlap, deltaT, double):
    outer, inner = diameter / 2, diameter / 2 - tube
    shared = 1 / 6 if double else 1 / 3
    flex = gap / ADHESIVE["shearModulus"] + shared * tube / CARBON["throughShearModulus"] + wall / 3 / THROUGH
    walls = [(outer + gap, outer + gap + wall, outer + gap / 2)]
    if double:
        walls.insert(0, (inner - gap - wall, inner - gap, inner - gap / 2))
    return Lap.from_inputs(
        {
            "length": overlap,
            "load": 1000.0,
            "tube": {"stiffness": CARBON["modulus"] * ring(inner, outer), "thermalStrain": CARBON["expansion"] * deltaT},
            "outers": [
                {"stiffness": TITANIUM["modulus"] * ring(a, b), "thermalStrain": TITANIUM["expansion"] * deltaT} for a, b, _ in walls
            ],
            "bonds": [
                {
                    "width": 2 * math.pi * rho,
                    "lever": 1.0,
                    "stiffness": 1 / flex,
                    "shearYield": ADHESIVE["shearYield"],
                    "slipAtFailure": ADHESIVE["shearYield"] * flex + gap * ADHESIVE["plasticStrain"],
                }
                for _, _, rho in walls
            ],
        }
    )


def main():
    cases, worst = [], 0.0
    for name, diameter, tube, wall, gap in JOINTS:
        for overlap in OVERLAPS:
            for deltaT in (0.0, -40.0):
                expected = {}
                for kind in ("single", "double"):
                    joint = lap(diameter, tube, wall, gap, overlap, deltaT, kind == "double")
                    (coarse, _), (fine, where) = capacity(joint, p=14, fine=2), capacity(joint, p=20, fine=4)
                    worst = max(worst, abs(fine.factor / coarse.factor - 1))
                    assert_first(joint, fine.factor)
                    expected[kind] = {
                        "strength": significant(1000.0 * fine.factor, 8),
                        "wholeBondFlows": where is None,
                    }
                expected["ratio"] = significant(expected["double"]["strength"] / expected["single"]["strength"], 8)
                print(name, overlap, deltaT, expected)
                cases.append(
                    {
                        "name": f"{name}, overlap {overlap:g}, {deltaT:g} K",
                        "inputs": {"diameter": diameter, "tube": tube, "wall": wall, "gap": gap, "overlap": overlap, "temperatureChange": deltaT},
                        "expected": expected,
                    }
                )
    write(
        "laps-compared.json",
        "Tubes in a socket, and between spigot and socket of the same walls and gaps, pulled: the load, N, at which the adhesive reaches its "
        "ultimate strain at an end, or the whole bond flows. ratio: double over single at the same overlap.",
        "laps_compared.py",
        None,
        f"From the coarser to the finer collocation the strengths change by {worst:.1e} at most; no end fails at any of sixteen smaller loads.",
        cases,
        stations=False,
        materials={"adhesive": ADHESIVE, "tube": CARBON, "walls": TITANIUM},
    )


if __name__ == "__main__":
    main()
