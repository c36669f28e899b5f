"""The layered joints of layered-shells.json. All properties are invented."""

import copy

import numpy as np
from lap import significant
from layered_joint import Bond, Joint, Wall

SEED = 70719
PLAIN = {  # axial, hoop, poisson, through shear, expansions axial, hoop, through, modulus through
    "laminate": (70000, 30000, 0.3, 4000, 1e-6, 6e-6, 30e-6, 9000),
    "titanium": (114000, 114000, 0.34, 114000 / 2.68, 8.6e-6, 8.6e-6, 8.6e-6, 114000),
    "aluminium": (70000, 70000, 0.33, 70000 / 2.66, 23.1e-6, 23.1e-6, 23.1e-6, 70000),
    "steel": (205000, 205000, 0.29, 205000 / 2.58, 11.5e-6, 11.5e-6, 11.5e-6, 205000),
    "glass": (24000, 18000, 0.2, 2600, 11e-6, 14e-6, 45e-6, 7500),
    "stiff": (140000, 12000, 0.28, 4300, -0.4e-6, 26e-6, 32e-6, 9500),
}
METALS = ("titanium", "aluminium", "steel")
EPOXY = (2400, 2400 / 2.74, 55e-6)  # E, G, expansion


def wall(material, at_root, radius, tube=False, at_mouth=None, rigid=False):
    """rigid: no modulus through the thickness."""
    properties = PLAIN[material]
    thin = properties[2] if material in METALS else 0.3
    through = None if rigid else properties[7]
    at_mouth = at_root if at_mouth is None else at_mouth
    return Wall(*properties[:7], through, thin, thin, at_root, at_mouth, radius, tube)


def bond(gap, radius, adhesive=EPOXY, shear_yield=None):
    return Bond(gap, *adhesive, radius, shear_yield)


def without_modulus(joint):
    """No modulus through the thickness given, of any wall."""
    for w in joint.walls:
        w.throughModulus = None
    return joint


def settled(joint):
    """Run-outs long enough not to matter (forty times the length over which an edge moment dies), clamps that grow."""
    longest = 0.0
    for w in joint.walls:
        if not joint.flat:
            decay = (3 * w.hoopModulus / w.axialModulus) ** 0.25 / np.sqrt(w.radius * w.atRoot)
            longest = max(longest, 40 / decay)
    joint.runOut = significant(max(20.0, longest), 2)
    if joint.kind.endswith("double"):
        low, strip, high = joint.walls
        below = (strip.atRoot + low.atRoot) / 2 + joint.bonds[0].thickness
        above = (strip.atRoot + high.atRoot) / 2 + joint.bonds[1].thickness
        for w, distance in ((low, -below if joint.flat else low.radius), (high, above if joint.flat else high.radius)):
            w.clampGrowth = w.hoopExpansion * joint.temperatureChange * distance
    return joint


def socket(inner, tube, gap, outer, at_mouth=None, L=30, adhesive=EPOXY, cap=None, **more):
    """tube and outer: (material, thickness)."""
    r = inner + tube[1]
    walls = [
        wall(*tube, inner + tube[1] / 2, True),
        wall(*outer, r + gap + outer[1] / 2, at_mouth=at_mouth),
    ]
    return settled(Joint("socket", L, walls, [bond(gap, r + gap / 2, adhesive, cap)], **more))


def spigot(inner, tube, gap, sleeve, at_mouth=None, L=30, adhesive=EPOXY, cap=None, **more):
    r = inner - gap
    walls = [wall(*sleeve, r - sleeve[1] / 2, at_mouth=at_mouth), wall(*tube, inner + tube[1] / 2, True)]
    return settled(Joint("spigot", L, walls, [bond(gap, inner - gap / 2, adhesive, cap)], **more))


def double(inner, sleeve, gaps, tube, outer, mouths=(None, None), L=25, adhesives=(EPOXY, EPOXY), cap=None, **more):
    """inner: the spigot's inner radius."""
    r = inner + sleeve[1]
    face = r + gaps[0]
    out = face + tube[1]
    walls = [
        wall(*sleeve, inner + sleeve[1] / 2, at_mouth=mouths[0]),
        wall(*tube, face + tube[1] / 2, True),
        wall(*outer, out + gaps[1] + outer[1] / 2, at_mouth=mouths[1]),
    ]
    bonds = [bond(gaps[0], r + gaps[0] / 2, adhesives[0], cap), bond(gaps[1], out + gaps[1] / 2, adhesives[1], cap)]
    return settled(Joint("double", L, walls, bonds, **more))


def flat_double(strap, gaps, strip, other, L=25, width=25.0, adhesives=(EPOXY, EPOXY), **more):
    walls = [wall(*strap, 0), wall(*strip, 0, True), wall(*other, 0)]
    bonds = [bond(g, 0, a) for g, a in zip(gaps, adhesives)]
    return settled(Joint("flat-double", L, walls, bonds, width=width, **more))


def flat_single(strip, gap, plate, L=12.5, width=25.0, adhesive=EPOXY, moments=(2375.0, 2375.0), load=6000.0, **more):
    """moments: at the mouth and at the root, of the whole width; the transverse force follows."""
    walls = [wall(*strip, 0, True), wall(*plate, 0)]
    lever = (strip[1] + plate[1]) / 2 + gap
    edge = dict(edgeMomentPerLoad=moments[0] / load, edgeForcePerLoad=(lever - sum(moments) / load) / L)
    return Joint("flat-single", L, walls, [bond(gap, 0, adhesive)], load=load, width=width, runOut=0.0, **edge, **more)


def model_single(**more):
    return socket(14.4, ("laminate", 1.6), 0.2, ("titanium", 1.2), **more)


def model_double(**more):
    return double(12.0, ("titanium", 1.0), (0.2, 0.25), ("laminate", 2.0), ("titanium", 1.3), **more)


def varied(joint, **changes):
    out = copy.deepcopy(joint)
    for k, v in changes.items():
        setattr(out, k, v)
    return out if joint.kind == "flat-single" else settled(out)


def elastic():
    lam, ti, al, st = "laminate", "titanium", "aluminium", "steel"
    soft, glassy = (450, 157.0, 120e-6), (3800, 1407.0, 48e-6)
    hot = dict(load=10000.0, temperatureChange=-100.0)
    yield "model single, axial", model_single(load=10000.0)
    yield "model single, cooled 100", model_single(temperatureChange=-100.0)
    yield "model single, compressed and cooled", model_single(load=-15000.0, temperatureChange=-100.0)
    yield "model double, axial", model_double(load=20000.0)
    yield "model double, cooled 100", model_double(temperatureChange=-100.0)
    yield "model double, axial and warmed", model_double(load=20000.0, temperatureChange=50.0)
    inside = ((lam, 1.6), 0.2, (ti, 1.2))
    yield "spigot, axial", spigot(14.4, *inside, load=10000.0)
    yield "spigot, cooled 100", spigot(14.4, *inside, temperatureChange=-100.0)
    yield "spigot, tapered 1.6 to 0.5", spigot(14.4, (lam, 1.6), 0.2, (ti, 1.6), 0.5, **hot)
    yield "socket, tapered 1.6 to 0.5", socket(14.4, (lam, 1.6), 0.2, (ti, 1.6), 0.5, load=10000.0)
    yield "socket, tapered 1.6 to 0.5, cooled 100", socket(14.4, (lam, 1.6), 0.2, (ti, 1.6), 0.5, temperatureChange=-100.0)
    yield "socket, thicker at the mouth", socket(14.4, (lam, 1.6), 0.2, (al, 0.8), 2.0, **hot)
    yield "double, both walls tapered", double(
        12.0, (ti, 1.4), (0.2, 0.25), (lam, 2.0), (ti, 1.6), (0.4, 0.5), load=20000.0, temperatureChange=-80.0
    )
    yield "thin and long", socket(30.0, (lam, 0.3), 0.1, (ti, 0.3), L=500, load=8000.0)
    yield "thin and long, double", double(30.0, (ti, 0.3), (0.1, 0.1), (lam, 0.3), (ti, 0.3), L=500, **hot)
    yield "thick and short", socket(55.0, (lam, 10), 0.5, (st, 10), L=1, load=5000.0)
    yield "thick and short, double", double(45.0, (al, 10), (0.5, 0.2), (lam, 10), (st, 10), L=1, **hot)
    yield "soft adhesive, aluminium", socket(20.0, (al, 2.0), 0.5, (al, 2.0), adhesive=soft, **hot)
    yield "different adhesives", double(
        20.0, (al, 1.5), (0.3, 0.15), ("stiff", 3.0), (st, 1.0), L=60, adhesives=(soft, glassy), **hot
    )
    yield "flat double, balanced", flat_double((al, 1.6), (0.2, 0.2), (al, 3.2), (al, 1.6), load=15000.0)
    yield "flat double, unequal gaps", flat_double((ti, 1.0), (0.2, 0.4), (lam, 2.0), (ti, 1.0), load=15000.0)
    yield "flat double, cooled 100", flat_double((ti, 1.0), (0.2, 0.4), (lam, 2.0), (ti, 1.5), temperatureChange=-100.0)
    yield "flat double, unequal walls, pulled and warmed", flat_double(
        (ti, 1.0), (0.15, 0.4), (lam, 2.0), (al, 1.5), load=9000.0, temperatureChange=40.0
    )
    yield "flat single, balanced", flat_single((al, 1.6), 0.2, (al, 1.6))
    yield "flat single, unequal, cooled", flat_single((lam, 2.0), 0.3, (st, 1.0), temperatureChange=-60.0, moments=(2500.0, 1900.0))
    yield "flat single, compressed", flat_single((ti, 1.0), 0.25, (al, 2.0), L=20, load=-2500.0, moments=(-1500.0, -1700.0))
    yield "no modulus through the thickness: model single, axial", without_modulus(model_single(load=10000.0))
    yield "no modulus through the thickness: model double, cooled 100", without_modulus(model_double(temperatureChange=-100.0))
    yield "adhesive all but incompressible", model_single(load=10000.0, temperatureChange=-60.0, adhesive=(900, 302.0, 90e-6))
    yield "adhesive of negative Poisson ratio", model_double(
        load=10000.0, temperatureChange=-60.0, adhesives=((2400, 1300.0, 55e-6), EPOXY)
    )


def random(count=20):
    rng = np.random.default_rng(SEED)
    log = lambda lo, hi: significant(np.exp(rng.uniform(np.log(lo), np.log(hi))), 4)
    uni = lambda lo, hi: significant(rng.uniform(lo, hi), 4)
    pick = lambda: str(rng.choice(list(PLAIN)))

    def adhesive():
        E = log(50, 5000)
        return E, significant(E / (2 + 2 * rng.uniform(0.28, 0.46)), 4), uni(40e-6, 120e-6)

    for k in range(count):
        kind = ("socket", "double", "spigot", "flat-double", "socket", "double", "spigot", "double")[k % 8]
        L, r = log(1, 500), log(5, 200)
        thick = lambda room: log(0.3, min(10.0, 0.7 * room))
        loads = dict(load=significant(rng.choice([-1, 1]) * log(100, 50000), 4))
        loads["temperatureChange"] = float(rng.choice([0.0, -1.0, 1.0]) * uni(20, 150))
        a, b, c = (pick(), thick(r)), (pick(), thick(r)), (pick(), thick(r))
        if kind == "flat-double":  # built-in straps: metal, with one expansion
            b, c = (str(rng.choice(METALS)), b[1]), (str(rng.choice(METALS)), c[1])
        g, g2 = log(0.05, 1), log(0.05, 1)
        mouth = significant(b[1] * rng.uniform(0.3, 1), 4) if k % 3 == 1 else None
        if kind == "socket":
            j = socket(r, a, g, b, mouth, L, adhesive(), **loads)
        elif kind == "spigot":
            j = spigot(r + b[1] + g, a, g, b, mouth, L, adhesive(), **loads)
        elif kind == "double":
            j = double(r, b, (g, g2), a, c, (mouth, None), L, (adhesive(), adhesive()), **loads)
        else:
            j = flat_double(b, (g, g2), a, c, L, log(10, 50), (adhesive(), adhesive()), **loads)
        yield f"random {k + 1}, {kind}", without_modulus(j) if k % 5 == 2 else j


def plastic():
    """(name, joint at load 1 or with its temperature, load over the load at first yield)."""
    lam, ti = "laminate", "titanium"
    yield "capped: model single, 1.5 times first yield", model_single(cap=30.0), 1.5
    yield "capped: model single, 2 times first yield", model_single(cap=30.0), 2.0
    yield "capped: model double, 1.6 times first yield", model_double(cap=30.0), 1.6
    cold = spigot(14.4, (lam, 1.6), 0.2, (ti, 1.2), cap=30.0, temperatureChange=-60.0)
    yield "capped: spigot, cooled 60, 1.4 times first yield", cold, 1.4
    yield "capped: socket tapered", socket(14.4, (lam, 1.6), 0.2, (ti, 1.6), 0.5, cap=30.0), 1.7
