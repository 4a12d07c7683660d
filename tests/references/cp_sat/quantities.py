"""Masses, lengths and seconds of a problem's JSON as whole numbers.

Refuses: floats; "2.5 kg" is read as a fraction.
"""

from fractions import Fraction
from math import gcd

# Nanograms: the kilogram, and the international pound, exact (1 lb = 0.45359237 kg).
NG = {"kg": 10**12, "lb": 453_592_370_000}


def mass_ng(text):
    number, unit = text.split()
    return whole(Fraction(number) * NG[unit])


def length_um(text):
    number, unit = text.split()
    assert unit == "mm", text
    return whole(Fraction(number) * 1000)


def seconds_ns(number):
    return whole(Fraction(str(number)) * 10**9)


def whole(value):
    assert value.denominator == 1, f"{value} is not whole"
    return value.numerator


def divisor(numbers):
    """The greatest common divisor, 1 for none."""
    return gcd(*numbers) or 1


class Kit:
    """Bar, plates and sleeve of a problem; kinds heaviest first."""

    def __init__(self, problem):
        self.bar = mass_ng(problem["bar"]) + mass_ng(problem.get("collars", "0 kg"))
        plates = [
            (mass_ng(p["mass"]), p["pairs"], length_um(p["thickness"]), seconds_ns(p["handling_s"]))
            for p in problem["plates"]
        ]
        plates.sort(key=lambda plate: -plate[0])
        self.masses = [plate[0] for plate in plates]
        self.pairs = [plate[1] for plate in plates]
        self.thick = [plate[2] for plate in plates]
        self.handling = [plate[3] for plate in plates]
        self.sleeve = length_um(problem["sleeve"]) if "sleeve" in problem else None
        self.big_inside = problem["big_inside"]
        assert len(set(self.masses)) == len(self.masses), "two kinds of one mass"

    def kinds(self):
        return range(len(self.masses))

    def caps(self, heaviest):
        """Pairs of each kind that a load of at most `heaviest` can take."""
        return [min(n, max(heaviest - self.bar, 0) // (2 * m)) for n, m in zip(self.pairs, self.masses)]

    def loads(self):
        """Every load that the plates make, lightest first."""
        sides = {(0, 0)}
        for mass, pairs, thick in zip(self.masses, self.pairs, self.thick):
            more = ((m + n * mass, t + n * thick) for m, t in sides for n in range(pairs + 1))
            sides = {(m, t) for m, t in more if self.sleeve is None or t <= self.sleeve}
        return sorted({self.bar + 2 * m for m, _ in sides})
