"""Stacks on one sleeve for CP-SAT, one after the other, and what stays on from each to the next.

`Sorted` (big inside): how many pairs of each kind; what stays on is a common prefix. `Free` (any
order): the kind at each place. Refuses: to say what a change costs; it tells the numbers.
"""


def flags(model, count):
    return [model.new_bool_var("") for _ in range(count)]


class Sorted:
    """Pairs of each kind as "at least one, at least two, ..."."""

    def __init__(self, model, kit, caps, start):
        self.model = model
        self.caps = [max(cap, start.count(kind)) for kind, cap in enumerate(caps)]
        self.before = [
            [model.new_constant(start.count(kind) > at) for at in range(cap)]
            for kind, cap in enumerate(self.caps)
        ]
        self.bare = not start

    def next(self):
        """By kind: how many pairs are on, were on before, and stayed on."""
        model, before = self.model, self.before
        on = [flags(model, cap) for cap in self.caps]
        for row in on:
            for less, more in zip(row, row[1:]):
                model.add_implication(more, less)
        kept = [[0] * cap for cap in self.caps] if self.bare else keep(model, before, on)
        self.before, self.bare = on, False
        return [[sum(row) for row in rows] for rows in (on, before, kept)]

    def done(self):
        """Nothing is left to say."""


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


class Free:
    """The kind at each place."""

    def __init__(self, model, kit, depth, start):
        self.model, self.kit, self.depth = model, kit, max(depth, len(start))
        self.start = start
        # Numbers before the first stack, variables after.
        self.before = [
            [int(place < len(start) and start[place] == kind) for kind in kit.kinds()]
            for place in range(self.depth)
        ]
        self.stacks, self.stays = [], []

    def next(self):
        """By kind: how many pairs are on, were on before, and stayed on."""
        model, kinds, before = self.model, self.kit.kinds(), self.before
        at = [flags(model, len(kinds)) for _ in range(self.depth)]
        for place in at:
            model.add_at_most_one(place)
        for inner, outer in zip(at, at[1:]):
            model.add(sum(outer) <= sum(inner))
        for kind in kinds:
            model.add(sum(place[kind] for place in at) <= self.kit.pairs[kind])
        bare = not self.stacks and not self.start
        stay = [0] * self.depth if bare else flags(model, self.depth)
        both = [[0] * len(kinds) for _ in at]
        if not bare:
            for inner, outer in zip(stay, stay[1:]):
                model.add_implication(outer, inner)
            for place in range(self.depth):
                for kind in kinds:
                    both[place][kind] = self.stays_on(
                        before[place][kind], at[place][kind], stay[place]
                    )
        self.stacks.append(at)
        self.stays.append(stay)
        self.before = at
        return [[sum(row[k] for row in rows) for k in kinds] for rows in (at, before, both)]

    def stays_on(self, was, now, stay):
        model = self.model
        model.add(now == was).only_enforce_if(stay)
        if isinstance(was, int) and not was:
            return 0
        both = model.new_bool_var("")
        model.add_implication(both, now)
        model.add_implication(both, stay)
        if not isinstance(was, int):
            model.add_implication(both, was)
        # All that stays counts: the pins may want the bar barer than that.
        model.add_bool_or(now.negated(), stay.negated(), both)
        return both

    def done(self):
        """Breaks symmetry: neighbours that come and go together lie heaviest inside."""
        model, kinds, stacks, stays = self.model, self.kit.kinds(), self.stacks, self.stays
        for first in range(len(stacks)):
            for last in range(first, len(stacks)):
                for place in range(self.depth - 1):
                    inner, outer = stacks[first][place], stacks[first][place + 1]
                    with_them = [stays[at][place + 1] for at in range(first + 1, last + 1)]
                    if first or self.start:
                        with_them.append(stays[first][place].negated())
                    if last + 1 < len(stacks):
                        with_them.append(stays[last + 1][place].negated())
                    for kind in kinds:
                        for other in (outer[k] for k in kinds if k < kind):
                            clause = [w.negated() for w in with_them]
                            model.add_bool_or(*clause, inner[kind].negated(), other.negated())


def deepest(kit, masses, room):
    """How many plates a load of at most `room`, in the unit of `masses`, can take."""
    depth = 0
    for mass in sorted(m for m, n in zip(masses, kit.pairs) for _ in range(n)):
        if mass > room:
            break
        room -= mass
        depth += 1
    if kit.sleeve is not None:
        depth = min(depth, kit.sleeve // min(kit.thick))
    return depth
