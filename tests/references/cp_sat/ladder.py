"""The ladder for CP-SAT, three ways; costs are whole numbers in a unit of their own.

`counts` (big inside alone): how many pairs of each kind a rung has; since the stack is sorted,
what stays on from rung to rung is a common prefix. `positions` (any order): the kind at each
place of each rung's stack. `stays` (both): how many pairs are on from rung i to rung j and no
longer; stays must nest. Refuses: plates on the bar before the first rung.
"""

from fractions import Fraction
from itertools import combinations

from ortools.sat.python import cp_model

from .quantities import Kit, divisor, mass_ng, seconds_ns
from .stacks import Free, Sorted, deepest


class Ladder:
    """A problem in small whole numbers, and the model as far as all ways share it."""

    def __init__(self, problem):
        kit = self.kit = Kit(problem)
        self.on_bar = [kit.masses.index(mass_ng(mass)) for mass in problem.get("on_bar", [])]
        self.strip = problem["strip_after"]
        rungs = [
            tuple(mass_ng(rung[name]) for name in ("target", "below", "above"))
            + (seconds_ns(rung["per_kg_off_s"]),)
            for rung in problem["rungs"]
        ]
        self.unit = divisor(
            [2 * mass for mass in kit.masses] + [rung[0] - kit.bar for rung in rungs]
        )
        # Costs in 10^-21 s, then in their common divisor.
        handling = [ns * 10**12 for ns in kit.handling]
        penalties = [self.unit * rung[3] for rung in rungs]
        self.cost_unit = divisor(handling + penalties)
        self.handling = [cost // self.cost_unit for cost in handling]
        self.penalties = [cost // self.cost_unit for cost in penalties]
        self.masses = [2 * mass // self.unit for mass in kit.masses]
        # Windows as plates alone; what is between two units cannot be loaded.
        self.aims = [(target - kit.bar) // self.unit for target, *_ in rungs]
        self.lows = [-((below + kit.bar - target) // self.unit) for target, below, *_ in rungs]
        self.highs = [(target + above - kit.bar) // self.unit for target, _, above, _ in rungs]
        self.caps = kit.caps(max(target + above for target, _, above, _ in rungs))
        self.rungs = len(rungs)
        self.model = cp_model.CpModel()
        self.cost = []

    def load(self, rung, counts):
        """The load of a rung, given the pairs of each kind, and what it costs to be off."""
        model = self.model
        load = sum(mass * n for mass, n in zip(self.masses, counts))
        model.add(load >= self.lows[rung])
        model.add(load <= self.highs[rung])
        if self.kit.sleeve is not None:
            model.add(sum(t * n for t, n in zip(self.kit.thick, counts)) <= self.kit.sleeve)
        if self.penalties[rung]:
            most = max(self.highs[rung] - self.aims[rung], self.aims[rung] - self.lows[rung])
            off = model.new_int_var(0, most, "")
            model.add(off >= load - self.aims[rung])
            model.add(off >= self.aims[rung] - load)
            self.cost.append(self.penalties[rung] * off)

    def done(self):
        self.model.minimize(sum(self.cost))
        return self.model

    def seconds(self, objective):
        return Fraction(round(objective) * self.cost_unit, 10**21)


def counts(problem):
    """Pairs of each kind by rung: sorted stacks alone."""
    ladder = Ladder(problem)
    assert ladder.kit.big_inside
    return rung_by_rung(ladder, Sorted(ladder.model, ladder.kit, ladder.caps, ladder.on_bar))


def positions(problem):
    """The kind at each place of each stack: any order."""
    ladder = Ladder(problem)
    depth = deepest(ladder.kit, ladder.masses, max(ladder.highs))
    return rung_by_rung(ladder, Free(ladder.model, ladder.kit, depth, ladder.on_bar))


def rung_by_rung(ladder, stacks):
    on = [0] * len(ladder.handling)
    for rung in range(ladder.rungs):
        on, was, kept = stacks.next()
        ladder.load(rung, on)
        moved = zip(ladder.handling, was, on, kept)
        ladder.cost += [cost * (w + n - 2 * k) for cost, w, n, k in moved]
    if ladder.strip:
        ladder.cost += [cost * n for cost, n in zip(ladder.handling, on)]
    stacks.done()
    return ladder, ladder.done()


def stays(problem):
    """How many pairs of a kind are on for rungs i to j, taken off after: any two stays nest."""
    ladder = Ladder(problem)
    model, kinds, rungs = ladder.model, ladder.kit.kinds(), range(ladder.rungs)
    spans = [(i, j) for i in rungs for j in rungs if i <= j]
    number, used, has = {}, {}, {}
    for span in spans:
        used[span] = model.new_bool_var("")
        for kind in kinds:
            n = number[span, kind] = model.new_int_var(0, ladder.caps[kind], "")
            flag = has[span, kind] = model.new_bool_var("")
            model.add(n <= ladder.caps[kind] * flag)
            model.add_implication(flag, used[span])
            moves = 1 if span[1] == rungs[-1] and not ladder.strip else 2
            ladder.cost.append(moves * ladder.handling[kind] * n)
    for (a, b), (c, d) in combinations(spans, 2):
        if a < c <= b < d:
            model.add_bool_or(used[a, b].negated(), used[c, d].negated())
        if ladder.kit.big_inside and a <= c and d <= b:
            lighter_inside(model, has, (a, b), (c, d), kinds)
        if ladder.kit.big_inside and c <= a and b <= d:
            lighter_inside(model, has, (c, d), (a, b), kinds)
    left_on = leave_on(ladder, used, has, spans)
    for rung in rungs:
        on = [span for span in spans if span[0] <= rung <= span[1]]
        numbers = [sum(number[span, kind] for span in on) for kind in kinds]
        for kind, last in zip(ladder.on_bar, left_on):
            numbers[kind] += sum(flag for at, flag in last.items() if at >= rung)
        for kind in kinds:
            model.add(numbers[kind] <= ladder.kit.pairs[kind])
        ladder.load(rung, numbers)
    return ladder, ladder.done()


def leave_on(ladder, used, has, spans):
    """For each plate on the bar beforehand, flags for the last rung that it is left on for (-1:
    none). What lies outside comes off first, and no later stay outlasts what lies beneath it."""
    model, left_on = ladder.model, []
    for kind in ladder.on_bar:
        last = {rung: model.new_bool_var("") for rung in range(-1, ladder.rungs)}
        model.add_exactly_one(last.values())
        for inner, flag in left_on[-1].items() if left_on else ():
            for outer in range(inner + 1, ladder.rungs):
                model.add_bool_or(flag.negated(), last[outer].negated())
        for rung, flag in last.items():
            if rung < ladder.rungs - 1 or ladder.strip:
                ladder.cost.append(ladder.handling[kind] * flag)
            for first, end in spans:
                if first <= rung < end:
                    model.add_bool_or(flag.negated(), used[first, end].negated())
                if ladder.kit.big_inside and first <= rung:
                    for heavy in range(kind):
                        model.add_bool_or(flag.negated(), has[(first, end), heavy].negated())
        left_on.append(last)
    return left_on


def lighter_inside(model, has, long, short, kinds):
    """No plate of the shorter stay, which lies outside, is heavier than one of the longer."""
    for light in kinds:
        for heavy in range(light):
            model.add_bool_or(has[long, light].negated(), has[short, heavy].negated())


def recounted(problem, answer):
    """The cost of our answer, counted afresh from its stacks, in seconds; rules are checked."""
    kit = Kit(problem)
    place = {mass: kind for kind, mass in enumerate(kit.masses)}
    cost, before = Fraction(0), [place[mass_ng(mass)] for mass in problem.get("on_bar", [])]
    for rung, step in zip(problem["rungs"], answer["rungs"], strict=True):
        stack = [place[mass_ng(mass)] for mass in step["per_side"]]
        load = kit.bar + 2 * sum(kit.masses[kind] for kind in stack)
        target = mass_ng(rung["target"])
        assert target - mass_ng(rung["below"]) <= load <= target + mass_ng(rung["above"])
        assert all(stack.count(kind) <= kit.pairs[kind] for kind in kit.kinds())
        assert not kit.big_inside or stack == sorted(stack)
        assert kit.sleeve is None or sum(kit.thick[kind] for kind in stack) <= kit.sleeve
        cost += moved(kit, before, stack)
        cost += Fraction(abs(load - target), 10**12) * Fraction(str(rung["per_kg_off_s"]))
        before = stack
    return cost + (moved(kit, before, []) if problem["strip_after"] else 0)


def moved(kit, was, now):
    """Seconds from one stack to the next, pairs moved at the outer end."""
    same = 0
    while same < min(len(was), len(now)) and was[same] == now[same]:
        same += 1
    return Fraction(sum(kit.handling[kind] for kind in was[same:] + now[same:]), 10**9)
