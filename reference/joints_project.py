"""Ten small joints as one project file: joints-project.json."""

import json
import os

from lap import HERE

SOURCE = {"kind": "typical", "text": "invented for the reference"}


def isotropic(id_, name, e, nu, alpha, y, u):
    return {
        "id": id_, "name": name, "kind": "isotropic", "modulus": e, "poisson": nu, "expansion": alpha,
        "yieldStrength": y, "ultimateStrength": u, "source": SOURCE,
    }


def orthotropic(id_, name, ex, eh, g, nu, ax, ah, g13, xt, xc, s):
    return {
        "id": id_, "name": name, "kind": "orthotropic", "axialModulus": ex, "hoopModulus": eh, "shearModulus": g,
        "poisson": nu, "axialExpansion": ax, "hoopExpansion": ah, "throughShearModulus": g13,
        "tensileStrength": xt, "compressiveStrength": xc, "shearStrength": s, "source": SOURCE,
    }


def state(t, moisture, e, g, tau, strain):
    return {"temperature": t, "moisture": moisture, "modulus": e, "shearModulus": g, "shearYield": tau, "plasticStrain": strain}


def wall(adherend, root, mouth=None):
    return {"adherend": adherend, "atRoot": root, "atMouth": root if mouth is None else mouth}


def bond(gap, tolerance):
    return {"gap": gap, "tolerance": tolerance}


def load(case, force=0, moment=0, torque=0, shear=0):
    return {"case": case, "force": force, "moment": moment, "torque": torque, "shear": shear}


def flat(case, force):
    return {"case": case, "force": force}


def case(id_, name, t, moisture, kind, cycles=None):
    c = {"id": id_, "name": name, "temperature": t, "moisture": moisture, "kind": kind}
    if cycles is not None:
        c["cycles"] = cycles
    return c


def tube(adherend, diameter, thickness):
    return {"adherend": adherend, "outsideDiameter": diameter, "wall": thickness}


def project():
    return {
        "format": "lapwright-project",
        "version": 1,
        "name": "Reference joints",
        "note": "Ten joints that an independent calculation has solved; all properties are invented.",
        "settings": {"targetMargin": 0.1, "factors": {"limit": 1.1, "ultimate": 1.5, "fitting": 1.15}, "adherendShear": True},
        "adherends": [
            isotropic("titanium", "Titanium", 114000, 0.34, 8.6e-6, 830, 900),
            isotropic("aluminium", "Aluminium", 70000, 0.33, 23.1e-6, 275, 310),
            orthotropic("axial-tube", "Tube, mostly axial", 95000, 28000, 7200, 0.31, 0.6e-6, 14e-6, 3900, 900, 620, 110),
            orthotropic("braid", "Braided tube", 48000, 30000, 17500, 0.55, 2.1e-6, 7e-6, 3600, 430, 360, 190),
        ],
        "adhesives": [
            {
                "id": "paste", "name": "Paste", "stressFreeTemperature": 60,
                "states": [
                    # not in order of temperature, on purpose
                    state(80, "dry", 1500, 540, 18, 1.1),
                    state(-55, "dry", 3000, 1080, 48, 0.22),
                    state(23, "dry", 2400, 876, 34, 0.55),
                    state(23, "wet", 2100, 760, 28, 0.6),
                    state(70, "wet", 1100, 390, 12, 1.4),
                ],
                "fatigue": {"coefficient": 0.95, "exponent": 0.055, "source": SOURCE},
                "source": SOURCE,
            },
            {
                "id": "film", "name": "Film", "stressFreeTemperature": 120,
                "states": [state(-55, "dry", 3600, 1300, 52, 0.12), state(25, "dry", 3200, 1150, 42, 0.2), state(85, "wet", 2000, 720, 22, 0.4)],
                "source": SOURCE,
            },
        ],
        "loadCases": [
            case("cold-limit", "Cold, limit", -30, "dry", "limit"),
            case("room-ultimate", "Room, ultimate", 23, "dry", "ultimate"),
            case("warm-cyclic", "Warm and wet, cyclic", 45, "wet", "cyclic", 1_000_000),
            case("beyond-limit", "Beyond the table, limit", 90, "wet", "limit"),
            case("neutral-limit", "At the stress-free temperature, limit", 60, "dry", "limit"),
        ],
        "joints": [
            {
                "id": "socket-force", "name": "Socket, force only", "type": "sleeve-single", "side": "socket", "overlap": 24,
                "adhesive": "paste", "tube": tube("axial-tube", 32, 1.6), "sleeve": wall("titanium", 1.2), "bond": bond(0.2, 0.06),
                "offset": 0.04,
                "loads": [load("cold-limit", 16000), load("room-ultimate", -24000), load("warm-cyclic", 9000), load("beyond-limit", 6000)],
            },
            {
                "id": "spigot-torque", "name": "Spigot, force and torque", "type": "sleeve-single", "side": "spigot", "overlap": 28,
                "adhesive": "paste", "tube": tube("braid", 30, 1.5), "sleeve": wall("aluminium", 2.0), "bond": bond(0.25, 0.05),
                "offset": 0.05,
                "loads": [load("cold-limit", 7000, 0, 60000), load("room-ultimate", 9000, 0, -110000), load("warm-cyclic", -2500, 0, 40000)],
            },
            {
                "id": "socket-moment", "name": "Socket, moment only", "type": "sleeve-single", "side": "socket", "overlap": 30,
                "adhesive": "paste", "tube": tube("aluminium", 28, 2.0), "sleeve": wall("titanium", 1.0), "bond": bond(0.2, 0.05),
                "offset": 0.0,
                "loads": [load("cold-limit", 0, 110000), load("room-ultimate", 0, -180000), load("neutral-limit", 0, 130000)],
            },
            {
                "id": "socket-all", "name": "Socket, tapered, all loads", "type": "sleeve-single", "side": "socket", "overlap": 35,
                "adhesive": "paste", "tube": tube("axial-tube", 40, 2.0), "sleeve": wall("titanium", 1.8, 0.6), "bond": bond(0.22, 0.07),
                "offset": 0.03,
                "loads": [
                    load("cold-limit", 9000, 150000, 70000, 900),
                    load("room-ultimate", 12000, -240000, 120000, 1500),
                    load("warm-cyclic", -4000, 80000, 30000, 400),
                ],
            },
            {
                "id": "double-force", "name": "Double-lap sleeve, force only, tapered socket", "type": "sleeve-double", "overlap": 22,
                "adhesive": "paste", "tube": tube("axial-tube", 32, 2.0), "spigot": wall("titanium", 1.0), "socket": wall("titanium", 1.5, 0.7),
                "innerBond": bond(0.2, 0.05), "outerBond": bond(0.25, 0.06), "offset": 0.03,
                "loads": [load("cold-limit", 24000), load("room-ultimate", 45000), load("warm-cyclic", -15000)],
            },
            {
                "id": "double-all", "name": "Double-lap sleeve, all loads", "type": "sleeve-double", "overlap": 26,
                "adhesive": "film", "tube": tube("braid", 36, 2.2), "spigot": wall("aluminium", 1.4), "socket": wall("titanium", 1.1),
                "innerBond": bond(0.18, 0.04), "outerBond": bond(0.22, 0.05), "offset": 0.02,
                "loads": [load("cold-limit", 6000, 120000, -50000, 800), load("room-ultimate", -9000, 210000, 140000, 1400)],
            },
            {
                "id": "flat-plate", "name": "Flat single lap, tapered plate", "type": "flat-single", "overlap": 25, "width": 25,
                "adhesive": "film", "strip": {"adherend": "braid", "thickness": 2.4}, "plate": wall("aluminium", 2.0, 1.0), "bond": bond(0.2, 0.05),
                "loads": [flat("cold-limit", 5500), flat("room-ultimate", -9000)],
            },
            {
                "id": "flat-straps", "name": "Flat double lap, unequal straps", "type": "flat-double", "overlap": 30, "width": 20,
                "adhesive": "paste", "strip": {"adherend": "axial-tube", "thickness": 3.0}, "lowerStrap": wall("aluminium", 1.5),
                "upperStrap": wall("titanium", 1.2), "lowerBond": bond(0.15, 0.04), "upperBond": bond(0.3, 0.1),
                "loads": [flat("cold-limit", -9000), flat("room-ultimate", 18000), flat("warm-cyclic", 6500), flat("beyond-limit", 4000)],
            },
            {
                "id": "spigot-twist", "name": "Spigot, torque and shear, no axial load", "type": "sleeve-single", "side": "spigot", "overlap": 20,
                "adhesive": "paste", "tube": tube("axial-tube", 24, 1.4), "sleeve": wall("titanium", 1.6, 1.0), "bond": bond(0.2, 0.05),
                "offset": 0.02,
                "loads": [load("neutral-limit", 0, 0, 45000, 700), load("room-ultimate", 0, 0, 90000, -900)],
            },
            {
                "id": "double-bending", "name": "Double-lap sleeve, moment and shear", "type": "sleeve-double", "overlap": 24,
                "adhesive": "paste", "tube": tube("axial-tube", 30, 1.8), "spigot": wall("titanium", 0.9), "socket": wall("aluminium", 1.6),
                "innerBond": bond(0.2, 0.05), "outerBond": bond(0.2, 0.05), "offset": 0.05,
                "loads": [load("neutral-limit", 0, 140000, 0, 1200), load("warm-cyclic", 500, 90000, 0, 600)],
            },
        ],
    }


def main():
    with open(os.path.join(HERE, "joints-project.json"), "w", encoding="utf-8", newline="\n") as file:
        json.dump(project(), file, indent=1)
        file.write("\n")


if __name__ == "__main__":
    main()
    print("joints-project.json")
