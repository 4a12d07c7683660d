"""The rotation for CP-SAT: which turn stands at each place of the order, the stack there (by
counts with big inside, else by the kind at each place), the hole set, and the times.

Only the end of the last turn is minimised, not then the handling: less work than ours does.
Refuses: a rack that is not bare when it begins.
"""

from fractions import Fraction

from ortools.sat.python import cp_model

from .quantities import Kit, divisor, mass_ng, seconds_ns
from .stacks import Free, Sorted, deepest


class Rotation:
    """A problem in small whole numbers."""

    def __init__(self, problem):
        kit = self.kit = Kit(problem)
        self.turns = []
        for lifter, row in enumerate(problem["lifters"]):
            for at, turn in enumerate(row["turns"]):
                target = mass_ng(turn["target"])
                self.turns.append({
                    "lifter": lifter, "at": at, "of": len(row["turns"]), "hole": turn["hole"],
                    "low": target - mass_ng(turn["below"]), "high": target + mass_ng(turn["above"]),
                    "lasts": seconds_ns(turn["lasts_s"]), "rest": seconds_ns(turn["rest_s"]),
                })
        # One loader does one side after the other.
        handling = [(2 if problem["loaders"] == 1 else 1) * ns for ns in kit.handling]
        change = seconds_ns(problem["hole_change_s"])
        times = handling + [change] + [t[name] for t in self.turns for name in ("lasts", "rest")]
        self.time_unit = divisor(times)
        self.handling = [ns // self.time_unit for ns in handling]
        self.change = change // self.time_unit
        for turn in self.turns:
            turn["lasts"] //= self.time_unit
            turn["rest"] //= self.time_unit
        self.unit = divisor([2 * mass for mass in kit.masses])
        self.masses = [2 * mass // self.unit for mass in kit.masses]
        for turn in self.turns:
            turn["low"] = -((kit.bar - turn["low"]) // self.unit)
            turn["high"] = (turn["high"] - kit.bar) // self.unit
        self.light = (mass_ng(problem["hole_change_at_most"]) - kit.bar) // self.unit
        self.caps = kit.caps(kit.bar + self.unit * max(turn["high"] for turn in self.turns))

    def stacks(self, model):
        """Bare at first."""
        if self.kit.big_inside:
            return Sorted(model, self.kit, self.caps, [])
        depth = deepest(self.kit, self.masses, max(turn["high"] for turn in self.turns))
        return Free(model, self.kit, depth, [])

    def seconds(self, objective):
        return Fraction(round(objective) * self.time_unit, 10**9)

    def horizon(self):
        """No sensible plan is longer: one turn after the other, the bar stripped in between."""
        strip = 2 * sum(cost * cap for cost, cap in zip(self.handling, self.caps))
        return sum(t["lasts"] + t["rest"] + strip + self.change for t in self.turns)


def ordered(problem):
    """The model; its objective is the end of the last turn."""
    rotation = Rotation(problem)
    model, turns = cp_model.CpModel(), rotation.turns
    places = range(len(turns))
    here = order(model, turns)

    def of_turn(place, name):
        return sum(turns[t][name] * flag for t, flag in here[place].items())

    horizon = rotation.horizon()
    starts = [model.new_int_var(0, horizon, "") for _ in places]
    holes = pins(model, turns, here)
    ended, stacks = 0, rotation.stacks(model)
    for place in places:
        on, was, kept = stacks.next()
        load = sum(mass * n for mass, n in zip(rotation.masses, on))
        model.add(load >= of_turn(place, "low"))
        model.add(load <= of_turn(place, "high"))
        if rotation.kit.sleeve is not None:
            long = sum(thick * n for thick, n in zip(rotation.kit.thick, on))
            model.add(long <= rotation.kit.sleeve)
        moved = zip(rotation.handling, was, on, kept)
        takes = rotation.change * holes[place] + sum(c * (w + n - 2 * k) for c, w, n, k in moved)
        if place > 0:
            bare = sum(mass * n for mass, n in zip(rotation.masses, kept))
            model.add(bare <= rotation.light).only_enforce_if(holes[place])
        model.add(starts[place] >= ended + takes)
        ended = starts[place] + of_turn(place, "lasts")
    stacks.done()
    rests(model, turns, here, starts, horizon)
    model.minimize(ended)
    return rotation, model


def order(model, turns):
    """By place, the turns that may stand there, each with its flag."""
    last = len(turns) - 1
    here = [
        {
            at: model.new_bool_var("")
            for at, turn in enumerate(turns)
            if turn["at"] <= place <= last - (turn["of"] - 1 - turn["at"])
        }
        for place in range(len(turns))
    ]
    for row in here:
        model.add_exactly_one(row.values())
    for at, turn in enumerate(turns):
        model.add_exactly_one(row[at] for row in here if at in row)
        if turn["at"] == 0:
            continue
        # By any place this turn is not done more often than the lifter's turn before it.
        for place in range(1, len(turns)):
            now = sum(row[at] for row in here[: place + 1] if at in row)
            earlier = sum(row[at - 1] for row in here[:place] if at - 1 in row)
            model.add(now <= earlier)
    return here


def pins(model, turns, here):
    """By place, whether the pins are moved before it."""
    holes = sorted({turn["hole"] for turn in turns} - {None})
    changes, before = [], {hole: 0 for hole in holes}
    for row in here:
        free = sum(flag for at, flag in row.items() if turns[at]["hole"] is None)
        is_set = {hole: model.new_bool_var("") for hole in holes}
        changed = model.new_bool_var("")
        model.add_at_most_one(is_set.values())
        for hole in holes:
            needs = sum(flag for at, flag in row.items() if turns[at]["hole"] == hole)
            model.add(is_set[hole] >= needs)
            # A turn without pins leaves them where they are.
            model.add(is_set[hole] <= before[hole] + 1 - free)
            model.add(is_set[hole] >= before[hole] + free - 1)
            model.add(changed >= is_set[hole] - before[hole])
        changes.append(changed)
        before = is_set
    return changes


def rests(model, turns, here, starts, horizon):
    """A lifter's turn starts no earlier than the rest after the turn before allows."""
    begins = [model.new_int_var(0, horizon, "") for _ in turns]
    for place, row in enumerate(here):
        for at, flag in row.items():
            model.add(starts[place] == begins[at]).only_enforce_if(flag)
    for at, turn in enumerate(turns):
        if turn["at"] > 0:
            model.add(begins[at] >= begins[at - 1] + turns[at - 1]["lasts"] + turn["rest"])
    # Not needed, but it helps: no two turns at once.
    model.add_no_overlap(
        model.new_fixed_size_interval_var(begin, turn["lasts"], "")
        for begin, turn in zip(begins, turns)
    )


def recounted(problem, answer):
    """The end of our answer's last turn, reckoned afresh from its order and stacks."""
    rotation = Rotation(problem)
    place = {mass: kind for kind, mass in enumerate(rotation.kit.masses)}
    names = [lifter["name"] for lifter in problem["lifters"]]
    left = {(turn["lifter"], turn["at"]): turn for turn in rotation.turns}
    clock, stack, hole, ends = 0, [], None, {}
    for step in answer["turns"]:
        lifter, at = names.index(step["lifter"]), step["turn"] - 1
        turn = left.pop((lifter, at))
        now = [place[mass_ng(mass)] for mass in step["per_side"]]
        assert turn["low"] <= sum(rotation.masses[kind] for kind in now) <= turn["high"]
        assert all(now.count(kind) <= pairs for kind, pairs in enumerate(rotation.kit.pairs))
        assert not rotation.kit.big_inside or now == sorted(now)
        same = 0
        while same < min(len(stack), len(now)) and stack[same] == now[same]:
            same += 1
        changes = turn["hole"] is not None and turn["hole"] != hole
        while changes and sum(rotation.masses[kind] for kind in now[:same]) > rotation.light:
            same -= 1
        clock += sum(rotation.handling[kind] for kind in stack[same:] + now[same:])
        clock += rotation.change if changes else 0
        if at > 0:
            clock = max(clock, ends[lifter, at - 1] + turn["rest"])
        clock = ends[lifter, at] = clock + turn["lasts"]
        stack, hole = now, turn["hole"] if changes else hole
    assert not left, "a turn is missing"
    return rotation.seconds(clock)
