"""The joints: geometry, materials, loads and how each is held."""

import numpy as np

from materials import ADHESIVE, CARBON_STRIP, CARBON_TUBE, TITANIUM

RUN_OUT = 60.0


def wall(name, material, thickness, start, end, mouth=None):
    return {
        "name": name,
        "kind": "wall",
        "material": material,
        "thickness": [thickness, thickness if mouth is None else mouth],
        "start": start,
        "end": end,
    }


def bond(gap, overlap, name="bond"):
    layer = wall(name, ADHESIVE, gap, 0.0, overlap)
    return {**layer, "kind": "bond"}


def stations(overlap, gap, asked=()):
    """About sixty places, dense near both ends (0.05 h from them), and those asked for."""
    near = gap * np.array([0.05, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.8, 1.0, 1.25, 1.5, 2.0, 2.5, 3.0])
    far = np.geomspace(4 * gap, overlap / 2, 17)
    half = np.concatenate([near, far])
    points = [*asked]
    for x in [*half, *(overlap - half)]:
        # three decimals are enough; keep clear of the stations asked for
        clear = 0.05 * min(x, overlap - x)
        if all(abs(x - p) > clear for p in points):
            points.append(round(float(x), 3))
    return sorted(points)


def case(name, about, layers, tube, inner, overlap, held, asked=(), **more):
    gaps = [layer["thickness"][0] for layer in layers if layer["kind"] == "bond"]
    return {
        "name": name,
        "about": about,
        "formulation": "axisymmetric",
        "layers": layers,
        "tube": tube,
        "inner": inner,
        "overlap": overlap,
        "held": held,
        "load": 0.0,
        "temperatureChange": 0.0,
        "stations": stations(overlap, min(gaps), asked),
        **more,
    }


SINGLE_ASKED = [1.0, 3.05, 8.07, 15.11, 24.94, 26.95, 29.0, 29.53, 29.8]
BENDING_ASKED = [0.5, 3.0, 8.0, 15.0, 25.0, 28.0, 29.5, 29.8]
DOUBLE_ASKED = [1.0, 3.0, 5.0, 8.0, 12.5, 17.0, 20.0, 23.0, 24.0, 24.5]


def socket(overlap=30.0, thickness=1.2, mouth=None):
    return [
        wall("tube", CARBON_TUBE, 1.6, 0.0, overlap + RUN_OUT),
        bond(0.2, overlap),
        wall("socket", TITANIUM, thickness, -RUN_OUT, overlap, mouth),
    ]


def spigot(overlap=30.0):
    return [
        wall("spigot", TITANIUM, 1.2, -RUN_OUT, overlap),
        bond(0.2, overlap),
        wall("tube", CARBON_TUBE, 1.6, 0.0, overlap + RUN_OUT),
    ]


def double_sleeve(overlap=25.0):
    return [
        wall("spigot", TITANIUM, 1.0, 0.0, overlap),
        bond(0.2, overlap, "inner bond"),
        wall("tube", CARBON_TUBE, 2.0, 0.0, overlap + RUN_OUT),
        bond(0.25, overlap, "outer bond"),
        wall("socket", TITANIUM, 1.3, 0.0, overlap),
    ]


def double_flat(lower, upper, overlap=25.0):
    return [
        wall("lower strap", TITANIUM, 1.2, 0.0, overlap),
        bond(lower, overlap, "lower bond"),
        wall("strip", CARBON_STRIP, 3.0, 0.0, overlap + RUN_OUT),
        bond(upper, overlap, "upper bond"),
        wall("upper strap", TITANIUM, 1.2, 0.0, overlap),
    ]


FAR_END = ["axial"]
CLAMPED = ["axial", "radial"]
SHRINKING = ["axial", "shrinking"]
BOTH = {0: CLAMPED, 4: CLAMPED}


def all_cases():
    flat = {"formulation": "plane strain", "load": 800.0}
    both_asked = SINGLE_ASKED + BENDING_ASKED[:-1]
    return [
        case("socket", "Tube in a socket, tension; the sleeve's far end face held axially, free radially.",
             socket(), 0, 14.4, 30.0, {2: FAR_END}, both_asked, load=10000.0),
        case("socket-thermal", "The same, cooled, no load; one node held axially.",
             socket(), 0, 14.4, 30.0, {2: "one node"}, both_asked, temperatureChange=-100.0),
        case("spigot", "Tube over a spigot, tension; the sleeve's far end face held axially.",
             spigot(), 2, 13.0, 30.0, {0: FAR_END}, both_asked, load=10000.0),
        case("spigot-thermal", "The same, cooled, no load; one node held axially.",
             spigot(), 2, 13.0, 30.0, {0: "one node"}, both_asked, temperatureChange=-100.0),
        case("double-lap-sleeve", "Tube between spigot and socket, tension; both sleeve walls clamped at x = 0.",
             double_sleeve(), 2, 12.0, 25.0, BOTH, DOUBLE_ASKED, load=20000.0),
        case("double-lap-sleeve-thermal-clamped",
             "The same, cooled, no load; both sleeve walls clamped at x = 0 (not even shrinking there).",
             double_sleeve(), 2, 12.0, 25.0, BOTH, DOUBLE_ASKED, temperatureChange=-100.0),
        case("double-lap-sleeve-thermal",
             "The same, cooled, no load; at x = 0 both sleeve walls join in metal that shrinks freely: "
             "no axial displacement, radial displacement alpha dT r.",
             double_sleeve(), 2, 12.0, 25.0, {0: SHRINKING, 4: SHRINKING}, DOUBLE_ASKED,
             temperatureChange=-100.0),
        case("socket-tapered", "Socket wall 1.6 at the root (and in its run-out) to 0.5 at the mouth, tension; "
             "the taper is on its outside.",
             socket(thickness=1.6, mouth=0.5), 0, 14.4, 30.0, {2: FAR_END}, both_asked, load=10000.0),
        case("flat-double-lap", "Strip between two straps, tension per unit width; straps clamped at x = 0; "
             "the strip's far end carries the tension uniformly and is free otherwise.",
             double_flat(0.2, 0.2), 2, 0.0, 25.0, BOTH, DOUBLE_ASKED, **flat),
        case("flat-double-lap-unequal", "The same with unequal gaps; nothing but the straps' ends at x = 0 is held, "
             "so the strip may deflect sideways.",
             double_flat(0.15, 0.3), 2, 0.0, 25.0, BOTH, DOUBLE_ASKED, **flat),
        case("socket-long", "Long thin socket, tension.",
             socket(60.0, 0.8), 0, 14.4, 60.0, {2: FAR_END}, load=10000.0),
        case("socket-bending", "The first joint in bending; by the first harmonic of our own elements. The traction "
             "on the tube's end is in proportion to r cos(clocking); the sleeve's far end is held axially and one "
             "node of it radially.",
             socket(), 0, 14.4, 30.0, {2: FAR_END}, both_asked, moment=200000.0),
    ]
