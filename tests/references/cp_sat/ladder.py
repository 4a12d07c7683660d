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


class Ladder:
    """A problem in small whole numbers, and the model as far as all ways share it."""

    def __init__(self, problem):
        kit = self.kit = Kit(problem)
        assert not problem.get("on_bar")
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


def flags(model, count):
    return [model.new_bool_var("") for _ in range(count)]


def counts(problem):
    """Pairs of each kind by rung, as "at least one, at least two, ...": sorted stacks alone."""
    ladder = Ladder(problem)
    model = ladder.model
    assert ladder.kit.big_inside
    before = None
    for rung in range(ladder.rungs):
        on = [flags(model, cap) for cap in ladder.caps]
        for row in on:
            for less, more in zip(row, row[1:]):
                model.add_implication(more, less)
        ladder.load(rung, [sum(row) for row in on])
        kept = keep(model, before, on) if before else [[0] * cap for cap in ladder.caps]
        for cost, was, now, both in zip(ladder.handling, before or kept, on, kept):
            ladder.cost += [cost * (w + n - 2 * b) for w, n, b in zip(was, now, both)]
        before = on
    if ladder.strip:
        ladder.cost += [cost * sum(row) for cost, row in zip(ladder.handling, before)]
    return ladder, ladder.done()


def keep(model, before, on):
    """What stays on: of each kind the lesser number, as long as all heavier ones are the same."""
    kept, same = [], None
    for was, now in zip(before, on):
        row = flags(model, len(now))
        for k, w, n in zip(row, was, now):
            model.add_implication(k, w)
            model.add_implication(k, n)
            if same is not None:
                model.add_implication(k, same)
        kept.append(row)
        alike = model.new_bool_var("")
        if same is not None:
            model.add_implication(alike, same)
        for k, w, n in zip(row, was, now):
            # Alike only when all of this kind stay: the pins may want the bar barer than that.
            model.add_bool_or(alike.negated(), w.negated(), k)
            model.add_bool_or(alike.negated(), n.negated(), k)
        same = alike
    return kept


def positions(problem):
    """The kind at each place of each stack: any order."""
    ladder = Ladder(problem)
    model, kinds = ladder.model, ladder.kit.kinds()
    depth = deepest(ladder)
    stacks, stays = [], []
    for rung in range(ladder.rungs):
        at = [flags(model, len(kinds)) for _ in range(depth)]
        for place in at:
            model.add_at_most_one(place)
        for inner, outer in zip(at, at[1:]):
            model.add(sum(outer) <= sum(inner))
        numbers = [sum(place[kind] for place in at) for kind in kinds]
        for kind in kinds:
            model.add(numbers[kind] <= ladder.kit.pairs[kind])
        ladder.load(rung, numbers)
        stay = flags(model, depth) if stacks else [0] * depth
        for inner, outer in zip(stay, stay[1:]):
            if stacks:
                model.add_implication(outer, inner)
        for place in range(depth):
            for kind in kinds:
                now = at[place][kind]
                was = stacks[-1][place][kind] if stacks else 0
                both = 0
                if stacks:
                    both = model.new_bool_var("")
                    model.add_implication(both, now)
                    model.add_implication(both, was)
                    model.add_implication(both, stay[place])
                    model.add(now == was).only_enforce_if(stay[place])
                ladder.cost.append(ladder.handling[kind] * (now + was - 2 * both))
        stacks.append(at)
        stays.append(stay)
    if ladder.strip:
        last = stacks[-1]
        ladder.cost += [ladder.handling[k] * place[k] for place in last for k in kinds]
    break_symmetry(ladder, stacks, stays)
    return ladder, ladder.done()


def deepest(ladder):
    """How many plates the highest window can take."""
    room, depth = max(ladder.highs), 0
    small = sorted(m for m, n in zip(ladder.masses, ladder.kit.pairs) for _ in range(n))
    for mass in small:
        if mass > room:
            break
        room -= mass
        depth += 1
    if ladder.kit.sleeve is not None:
        depth = min(depth, ladder.kit.sleeve // min(ladder.kit.thick))
    return depth


def break_symmetry(ladder, stacks, stays):
    """Neighbours that come and go together lie heaviest inside."""
    model, kinds = ladder.model, ladder.kit.kinds()
    for first in range(ladder.rungs):
        for last in range(first, ladder.rungs):
            for place in range(len(stacks[0]) - 1):
                inner, outer = stacks[first][place], stacks[first][place + 1]
                with_them = [stays[rung][place + 1] for rung in range(first + 1, last + 1)]
                if first:
                    with_them.append(stays[first][place].negated())
                if last + 1 < ladder.rungs:
                    with_them.append(stays[last + 1][place].negated())
                for kind in kinds:
                    heavier = [outer[k] for k in kinds if k < kind]
                    for other in heavier:
                        clause = [w.negated() for w in with_them]
                        model.add_bool_or(*clause, inner[kind].negated(), other.negated())


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
    for rung in rungs:
        on = [span for span in spans if span[0] <= rung <= span[1]]
        numbers = [sum(number[span, kind] for span in on) for kind in kinds]
        for kind in kinds:
            model.add(numbers[kind] <= ladder.kit.pairs[kind])
        ladder.load(rung, numbers)
    return ladder, ladder.done()


def lighter_inside(model, has, long, short, kinds):
    """No plate of the shorter stay, which lies outside, is heavier than one of the longer."""
    for light in kinds:
        for heavy in range(light):
            model.add_bool_or(has[long, light].negated(), has[short, heavy].negated())


def recounted(problem, answer):
    """The cost of our answer, counted afresh from its stacks, in seconds; rules are checked."""
    kit = Kit(problem)
    place = {mass: kind for kind, mass in enumerate(kit.masses)}
    cost, before = Fraction(0), []
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
