"""Seeded problems, the same on every machine: SplitMix64 (Steele, Lea and Flood 2014).

Refuses: problems that cannot be loaded; every target is a load that the plates make.
"""

from fractions import Fraction

from .quantities import Kit, NG

KILOS = ["25", "20", "15", "10", "5", "2.5", "1.25"]
POUNDS = ["45", "35", "25", "10", "5", "2.5", "1.25"]
# Shares of the work load in percent: about where warm-ups stand. Common practice, no source.
SHARES = [30, 50, 70, 80, 90, 100]
MASK = (1 << 64) - 1


class Dice:
    def __init__(self, seed):
        self.state = seed

    def next(self):
        self.state = (self.state + 0x9E3779B97F4A7C15) & MASK
        z = self.state
        z = ((z ^ (z >> 30)) * 0xBF58476D1CE4E5B9) & MASK
        z = ((z ^ (z >> 27)) * 0x94D049BB133111EB) & MASK
        return z ^ (z >> 31)

    def between(self, low, high):
        return low + self.next() % (high - low + 1)

    def pick(self, choices):
        return choices[self.between(0, len(choices) - 1)]


def text(ng, unit):
    """A mass in its unit; exact, since all of these have few decimals."""
    number = Fraction(ng, NG[unit])
    decimal = f"{float(number):.4f}".rstrip("0").rstrip(".")
    assert Fraction(decimal) == number
    return f"{decimal} {unit}"


def kit(dice, kinds, unit, big_inside):
    masses = (KILOS if unit == "kg" else POUNDS)[-kinds:]
    plates = []
    for at, mass in enumerate(masses):
        heavy, middling = float(mass) >= 20, float(mass) >= 10
        plates.append({
            "mass": f"{mass} {unit}",
            "pairs": dice.between(2, 5) if at == 0 else dice.pick([1, 1, 2, 3]),
            "thickness": "20 mm",
            "handling_s": (16 if heavy else 12 if middling else 8) / 2 + dice.between(0, 6) / 2,
        })
    return {
        "bar": "20 kg" if unit == "kg" else "45 lb",
        "sleeve": "415 mm",
        "big_inside": big_inside,
        "plates": plates,
    }


def targets(dice, problem, count, unit):
    """Loads near the usual shares of a work load, each of which the plates make."""
    loads = Kit(problem).loads()
    work = loads[dice.between(len(loads) // 3, len(loads) * 4 // 5)]
    shares = SHARES[-count:] if count < len(SHARES) else SHARES
    near = [min(loads, key=lambda load: abs(100 * load - share * work)) for share in shares]
    return [text(load, unit) for load in near]


def slack(dice, unit):
    """How far below and above its target a load may lie."""
    step = "2.5" if unit == "kg" else "5"
    low, high = dice.pick([("0", "0"), (step, step), (step, "0"), ("0", step)])
    return {"below": f"{low} {unit}", "above": f"{high} {unit}"}


def standing(dice, problem):
    """What lies on the bar beforehand: one to three plates."""
    plates, masses = problem["plates"], []
    for _ in range(dice.between(1, 3)):
        mass = dice.pick([plate["mass"] for plate in plates])
        pairs = next(plate["pairs"] for plate in plates if plate["mass"] == mass)
        if masses.count(mass) < pairs:
            masses.append(mass)
    if problem["big_inside"]:
        masses.sort(key=lambda mass: -float(mass.split()[0]))
    return masses


def ladder(seed, rungs, kinds, unit, big_inside, loaded=False):
    dice = Dice(seed)
    problem = kit(dice, kinds, unit, big_inside)
    if loaded:
        problem["on_bar"] = standing(dice, problem)
    problem["strip_after"] = dice.pick([False, True])
    problem["rungs"] = [
        {"target": target, **slack(dice, unit), "per_kg_off_s": dice.pick([0, 0.5, 1, 2])}
        for target in targets(dice, problem, rungs, unit)
    ]
    return problem


def rotation(seed, lifters, turns, kinds, big_inside=True):
    dice = Dice(seed)
    problem = kit(dice, kinds, "kg", big_inside)
    problem["loaders"] = dice.pick([1, 2])
    problem["hole_change_s"] = dice.between(10, 40)
    problem["hole_change_at_most"] = f"{20 + 10 * dice.between(0, 8)} kg"
    problem["lifters"] = []
    for at in range(lifters):
        hole = dice.pick([None, None, 3, 4, 5])
        rest = 10 * dice.between(9, 20)
        row = [
            {"target": target, **slack(dice, "kg"), "hole": hole,
             "lasts_s": dice.between(20, 60), "rest_s": rest}
            for target in targets(dice, problem, turns, "kg")
        ]
        problem["lifters"].append({"name": f"lifter {at + 1}", "turns": row})
    return problem
