"""docs/method.md sections 1 to 4 and 8 from a project document: geometry, materials, local problems.

Written from the method alone. One `Joint` is one joint in one load case and gap state.
"""

import math

import numpy as np
from bvp import newton
from lap import Lap

GAP_STATES = ("min", "nominal", "max")


def adhesive_at(adhesive, temperature, moisture):
    rows = sorted((s for s in adhesive["states"] if s["moisture"] == moisture), key=lambda s: s["temperature"])
    t = [s["temperature"] for s in rows]
    # numpy.interp: linear between, the nearest value beyond
    return {key: float(np.interp(temperature, t, [s[key] for s in rows])) for key in ("shearModulus", "shearYield", "plasticStrain")}


class Material:
    def __init__(self, a):
        self.isotropic = a["kind"] == "isotropic"
        self.data = a
        if self.isotropic:
            self.E = a["modulus"]
            self.G = self.G13 = a["modulus"] / (2 * (1 + a["poisson"]))
            self.alpha = a["expansion"]
        else:
            self.E, self.G = a["axialModulus"], a["shearModulus"]
            self.G13, self.alpha = a["throughShearModulus"], a["axialExpansion"]


class Member:
    """A wall or strip: inside and outside radius as functions of z = x/L, or a width and thickness."""

    def __init__(self, part, material, thickness, inner=None, outer=None, width=None):
        self.part, self.material = part, material
        self.root, self.mouth = thickness
        self.mean = (self.root + self.mouth) / 2
        self.tapered = self.root != self.mouth
        self.inner, self.outer, self.width = inner, outer, width

    def thickness(self, z):
        return self.root + (self.mouth - self.root) * z

    def radii(self, z):
        t = self.thickness(z)
        if self.inner is not None:
            return self.inner + 0 * t, self.inner + t
        return self.outer - t, self.outer + 0 * t

    def area(self, z):
        if self.width is not None:
            return self.width * self.thickness(z)
        a, b = self.radii(z)
        return math.pi * (b * b - a * a)

    def inertia(self, z):
        a, b = self.radii(z)
        return math.pi * (b**4 - a**4) / 4


class Joint:
    def __init__(self, project, joint, case_id, gap_state, adherend_shear, overlap=None):
        lookup = lambda list_, id_: next(v for v in project[list_] if v["id"] == id_)
        case, adhesive = lookup("loadCases", case_id), lookup("adhesives", joint["adhesive"])
        load = next(v for v in joint["loads"] if v["case"] == case_id)
        self.flat = joint["type"].startswith("flat")
        self.F = float(load["force"])
        self.M, self.T, self.V = (0.0 if self.flat else float(load[key]) for key in ("moment", "torque", "shear"))
        self.case, self.factors = case, project["settings"]["factors"]
        self.adhesive = adhesive
        self.length = float(joint["overlap"] if overlap is None else overlap)
        self.dT = case["temperature"] - adhesive["stressFreeTemperature"]
        props = adhesive_at(adhesive, case["temperature"], case["moisture"])
        self.tau_p, G, self.gamma_p = props["shearYield"], props["shearModulus"], props["plasticStrain"]
        mat = lambda id_: Material(lookup("adherends", id_))
        offset = joint.get("offset", 0.0)
        sign = {"min": -1, "nominal": 0, "max": 1}[gap_state]
        gap = lambda b: b["gap"] + sign * (b["tolerance"] + offset)
        sleeve = lambda part, key, **where: Member(part, mat(joint[key]["adherend"]), (joint[key]["atRoot"], joint[key]["atMouth"]), **where)
        if self.flat:
            t = joint["strip"]["thickness"]
            self.tube = Member("strip", mat(joint["strip"]["adherend"]), (t, t), width=joint["width"])
            if joint["type"] == "flat-single":
                self.names, self.h = ["bond"], [gap(joint["bond"])]
                self.outers = [sleeve("plate", "plate", width=joint["width"])]
            else:
                self.names, self.h = ["lower bond", "upper bond"], [gap(joint["lowerBond"]), gap(joint["upperBond"])]
                self.outers = [sleeve("lower strap", "lowerStrap", width=joint["width"]), sleeve("upper strap", "upperStrap", width=joint["width"])]
            self.rho, self.reference = [0.0] * len(self.h), 0.0
            widths = [joint["width"]] * len(self.h)
        else:
            R, t = joint["tube"]["outsideDiameter"] / 2, joint["tube"]["wall"]
            self.tube = Member("tube", mat(joint["tube"]["adherend"]), (t, t), outer=R)
            if joint["type"] == "sleeve-single":
                h = gap(joint["bond"])
                self.names, self.h = ["bond"], [h]
                if joint["side"] == "socket":
                    self.rho, self.outers = [R + h / 2], [sleeve("sleeve", "sleeve", inner=R + h)]
                else:
                    self.rho, self.outers = [R - t - h / 2], [sleeve("sleeve", "sleeve", outer=R - t - h)]
                self.reference = self.rho[0]
            else:
                self.names, self.h = ["inner bond", "outer bond"], [gap(joint["innerBond"]), gap(joint["outerBond"])]
                self.rho = [R - t - self.h[0] / 2, R + self.h[1] / 2]
                self.outers = [sleeve("spigot", "spigot", outer=R - t - self.h[0]), sleeve("socket", "socket", inner=R + self.h[1])]
                self.reference = R - t / 2
            widths = [2 * math.pi * r for r in self.rho]
        share = 1 / 3 if len(self.h) == 1 else 1 / 6
        self.bonds = []
        for h, c, o in zip(self.h, widths, self.outers):
            flex = h / G
            if adherend_shear:
                flex += share * self.tube.mean / self.tube.material.G13 + o.mean / (3 * o.material.G13)
            self.bonds.append(
                {"width": c, "stiffness": 1 / flex, "shearYield": self.tau_p, "slipAtFailure": self.tau_p * flex + h * self.gamma_p}
            )
        self.members = [self.tube, *self.outers]

    def weights(self, theta):
        bending = 0.0 if self.flat else abs(2 * self.M * math.cos(theta) / self.reference)
        # exactly a quarter turn: no bending there
        if abs(math.cos(theta)) < 1e-12:
            bending = 0.0
        total = abs(self.F) + bending
        w = abs(self.F) / total if total > 0 else 1.0
        return w, 1 - w

    def axial(self, theta):
        """The axial channel: load, stiffnesses, levers, thermal strains."""
        wF, wM = self.weights(theta)
        r = self.reference

        def stiffness(m):
            if self.flat:
                f = lambda z: m.material.E * m.area(z)
            else:
                E = m.material.E
                f = lambda z: 1 / (wF / (E * m.area(z)) + wM * r * r / (2 * E * m.inertia(z)))
            return (lambda z: 1 / f(z)) if m.tapered else f(0.0)

        load = self.F if self.flat else self.F + 2 * self.M * math.cos(theta) / r
        wall = lambda m: {"stiffness": stiffness(m), "thermalStrain": m.material.alpha * self.dT}
        levers = [1.0 if self.flat else wF + wM * rho / r for rho in self.rho]
        return {"load": load, "tube": wall(self.tube), "outers": [wall(o) for o in self.outers], "levers": levers}

    def hoop(self, theta):
        """The circumferential channel."""
        r = self.reference

        def stiffness(m):
            f = lambda z: m.material.G * 2 * m.inertia(z) / (r * r)
            return (lambda z: 1 / f(z)) if m.tapered else f(0.0)

        wall = lambda m: {"stiffness": stiffness(m)}
        load = self.T / r + 2 * self.V * math.sin(theta)
        return {"load": load, "tube": wall(self.tube), "outers": [wall(o) for o in self.outers], "levers": [rho / r for rho in self.rho]}

    def hoop_loaded(self):
        return self.T != 0 or self.V != 0

    def lap(self, theta):
        """The elastic-plastic problem at a clocking; a channel with nothing in it is left out."""
        axial = self.axial(theta)
        channels = [axial]
        if self.hoop_loaded():
            hoop = self.hoop(theta)
            scale = abs(self.T) / self.reference + 2 * abs(self.V)
            if abs(hoop["load"]) > 1e-12 * scale:
                strains = [w["thermalStrain"] for w in (axial["tube"], *axial["outers"])]
                idle = abs(axial["load"]) <= 1e-12 * (abs(self.F) + 2 * abs(self.M) / self.reference) and len(set(strains)) == 1
                channels = [hoop] if idle else [axial, hoop]
        return Lap(self.length, channels, self.bonds)

    def linear(self, channel, load, thermal):
        """Elastic solution of one channel for a given load, with or without its thermal strain."""
        strip = lambda w: {"stiffness": w["stiffness"], "thermalStrain": w.get("thermalStrain", 0.0) if thermal else 0.0}
        one = {"load": load, "tube": strip(channel["tube"]), "outers": [strip(o) for o in channel["outers"]], "levers": channel["levers"]}
        lap = Lap(self.length, [one], self.bonds)
        count = int(max(6, np.ceil(np.max(lap.rates()) * self.length / 2)))
        n = 2 * len(self.bonds)
        zero = np.zeros((count, 13, n))
        return newton(lap, [0, self.length], [count], [np.zeros(len(self.bonds), bool)], zero, 1.0, 12)

    def asked(self, mode):
        f, kind = self.factors, self.case["kind"]
        if mode in ("adhesive-strain", "metal-ultimate", "laminate-strength"):
            return f["fitting"] if kind == "ultimate" else f["ultimate"] * f["fitting"]
        return f["limit"] * f["fitting"]

    def modes(self):
        kind = self.case["kind"]
        if kind == "ultimate":
            return ["adhesive-strain", "metal-ultimate", "laminate-strength"]
        more = ["cyclic-shear"] if kind == "cyclic" and "fatigue" in self.adhesive else []
        return ["adhesive-yield", "adhesive-strain", "durability-trough", *more, "metal-yield", "metal-ultimate", "laminate-strength"]
