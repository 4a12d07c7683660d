"""The seeded evenings of app/domain/tests/rotation/random.rs, drawn in the same order, so that
CP-SAT gets the problems that our planner's figures are told for.
"""

from .problems import Dice, text
from .quantities import NG

MASSES = ["25", "20", "15", "10", "5", "2.5", "1.25"]
# Percent of the work load. Common practice, no source.
SHARES = [35, 50, 65, 80, 90, 100]
OFF = [("0", "0"), ("1.25", "1.25"), ("2.5", "2.5"), ("2.5", "0"), ("0", "2.5")]


def plate(dice, mass):
    """Pairs are drawn before the handling."""
    pairs = dice.between(4, 8) if mass == "25" else dice.between(1, 3)
    kilos = float(mass)
    low, high = (7, 10) if kilos >= 20 else (5, 7) if kilos >= 10 else (3, 5)
    return {"mass": f"{mass} kg", "pairs": pairs, "thickness": "20 mm",
            "handling_s": dice.between(low, high)}


def turn(dice, work, hole, rest, at):
    # Grams, rounded down to 2.5 kg as there.
    target = max(work * SHARES[min(at, 5)] // 250_000 * 2_500, 20_000)
    below, above = dice.pick(OFF)
    return {"target": text(target * NG["kg"] // 1_000, "kg"), "below": f"{below} kg",
            "above": f"{above} kg", "hole": hole, "lasts_s": dice.between(20, 60), "rest_s": rest}


def evening(seed, lifters, turns, big_inside):
    dice = Dice(seed)
    problem = {"bar": "20 kg", "sleeve": "415 mm", "big_inside": big_inside,
               "plates": [plate(dice, mass) for mass in MASSES], "lifters": []}
    for number in range(1, lifters + 1):
        work = dice.between(24, 80) * 2_500
        hole = dice.between(3, 5) if dice.between(1, 2) == 1 else None
        rest = 10 * dice.between(9, 20)
        row = [turn(dice, work, hole, rest, at) for at in range(turns)]
        problem["lifters"].append({"name": f"lifter {number}", "turns": row})
    problem["loaders"] = dice.pick([1, 2])
    problem["hole_change_s"] = dice.between(10, 40)
    problem["hole_change_at_most"] = f"{20 + 10 * dice.between(0, 8)} kg"
    return problem
