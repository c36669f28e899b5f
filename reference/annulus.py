"""Section properties of annuli by quadrature over the section: sections.json."""

import math

from lap import significant, write
from scipy.integrate import dblquad, quad

ANNULI = [(14.4, 16.0), (0.0, 10.0), (49.9, 50.0), (12.0, 13.0), (3.25, 24.875)]


def integral(a, b, f):
    """Double integral of f(r, phi) r dr dphi over the annulus, and the estimate of its error."""
    return dblquad(lambda r, phi: f(r, phi) * r, 0, 2 * math.pi, a, b, epsabs=0, epsrel=1e-13)


def main():
    cases, worst = [], 0.0
    for a, b in ANNULI:
        area, e1 = integral(a, b, lambda r, phi: 1.0)
        second, e2 = integral(a, b, lambda r, phi: (r * math.cos(phi)) ** 2)
        polar, e3 = integral(a, b, lambda r, phi: r * r)
        # mean radius of the wall: of the two surfaces, halfway through the thickness
        mean = quad(lambda r: r, a, b)[0] / (b - a)
        worst = max(worst, e1 / area, e2 / second, e3 / polar)
        cases.append(
            {
                "name": f"annulus {a} to {b}",
                "inputs": {"insideRadius": a, "outsideRadius": b},
                "expected": {
                    "area": significant(area),
                    "secondMoment": significant(second),
                    "polarMoment": significant(polar),
                    "meanRadius": significant(mean),
                },
            }
        )
    write(
        "sections.json",
        "Annulus: area (mm2), second moment of area about a diameter and polar moment (mm4), mean radius (mm).",
        "annulus.py",
        None,
        f"Adaptive quadrature; its own estimate of the relative error is at most {worst:.0e}.",
        cases,
        stations=False,
    )


if __name__ == "__main__":
    main()
