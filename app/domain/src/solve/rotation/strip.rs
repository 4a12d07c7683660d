//! What a hole change costs on the way from one set of plates to another, beyond what the sets
//! differ by: plates that both have must come off and go on again until the bar is light enough.
//!
//! Refuses: searching for ever; where there are too many plates to choose from, it tells less than
//! it costs, never more.
use alloc::vec::Vec;

/// Plates of one kind that might stay on the bar.
#[derive(Debug, Clone, Copy)]
pub(super) struct Shared {
    /// Of a pair, nanograms.
    pub mass: i64,
    /// Of a pair, nanoseconds.
    pub handling: i64,
    /// So many both sets have: taken off, each goes on again.
    pub both: i64,
    /// So many more one set has and the other may have: if it does, taking them off costs one
    /// move each.
    pub one: i64,
}

/// Choices that are looked at before what is known so far must do.
const CHOICES_LIMIT: usize = 500;

/// The least handling that leaves at most `room` nanograms of `shared` on the bar, or less.
pub(super) fn stripped(shared: &[Shared], room: i64) -> i64 {
    let mass = |s: &Shared| s.mass * (s.both + s.one);
    let over = shared.iter().map(mass).sum::<i64>() - room;
    if over <= 0 {
        return 0;
    }
    let mut offers: Vec<Offer> = Vec::new();
    for kind in shared {
        // What one set alone has comes off more cheaply.
        for (count, times) in [(kind.one, 1), (kind.both, 2)] {
            if count > 0 {
                offers.push(Offer {
                    mass: kind.mass,
                    cost: times * kind.handling,
                    count,
                });
            }
        }
    }
    let pace = |offer: &Offer| (i128::from(offer.cost), i128::from(offer.mass));
    offers.sort_by(|a, b| (pace(a).0 * pace(b).1).cmp(&(pace(b).0 * pace(a).1)));
    let mut choice = Choice {
        offers: &offers,
        least: i64::MAX,
        left: CHOICES_LIMIT,
    };
    let by_pace = choice.at_least(0, over);
    choice.take(0, over, 0);
    if choice.left == 0 || choice.least == i64::MAX {
        // Not all was tried, or nothing helps: the bar alone is too heavy.
        return by_pace;
    }
    choice.least
}

/// Alike plates that may come off.
#[derive(Debug, Clone, Copy)]
struct Offer {
    mass: i64,
    cost: i64,
    count: i64,
}

struct Choice<'a> {
    /// What takes least time for its mass comes first.
    offers: &'a [Offer],
    least: i64,
    left: usize,
}

impl Choice<'_> {
    /// No choice among the offers from `at` on that takes off `over` costs less.
    fn at_least(&self, at: usize, over: i64) -> i64 {
        let (mut over, mut cost) = (over, 0);
        for offer in &self.offers[at..] {
            let all = offer.mass * offer.count;
            if all >= over {
                let part = i128::from(over) * i128::from(offer.cost) / i128::from(offer.mass);
                return cost + i64::try_from(part).expect("less than the cost of all");
            }
            over -= all;
            cost += offer.cost * offer.count;
        }
        // Then it cannot be done: the bar alone is too heavy.
        cost
    }

    /// Tries all that may bring the cost below the least so far.
    fn take(&mut self, at: usize, over: i64, cost: i64) {
        if over <= 0 {
            self.least = self.least.min(cost);
            return;
        }
        if self.left == 0 {
            return;
        }
        self.left -= 1;
        let Some(offer) = self.offers.get(at) else {
            return;
        };
        if cost + self.at_least(at, over) >= self.least {
            return;
        }
        let enough = (over + offer.mass - 1) / offer.mass;
        for count in (0..=offer.count.min(enough)).rev() {
            self.take(at + 1, over - count * offer.mass, cost + count * offer.cost);
        }
    }
}

#[cfg(test)]
mod tests {
    use super::{Shared, stripped};
    use alloc::vec::Vec;

    /// Tries every number of each kind that stays.
    fn tried(shared: &[Shared], room: i64) -> Option<i64> {
        let Some((kind, others)) = shared.split_first() else {
            return (room >= 0).then_some(0);
        };
        let stay = 0..=kind.both + kind.one;
        let cost = |stay: i64| {
            // One set has all of these, the other all but `one`.
            let (more, less) = (kind.both + kind.one - stay, (kind.both - stay).max(0));
            Some(kind.handling * (more + less) + tried(others, room - stay * kind.mass)?)
        };
        stay.filter_map(cost).min()
    }

    #[test]
    fn as_little_as_can_be_is_stripped() {
        let mut seed = 1_u64;
        let mut dice = |below: u64| {
            seed = seed.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1);
            i64::try_from((seed >> 33) % below).expect("small")
        };
        let mut bitten = 0;
        for _ in 0..2_000 {
            // No more choices than are looked at.
            let kind = |at| Shared {
                mass: 1 + dice(20),
                handling: dice(10),
                both: dice(3),
                one: if at == 0 { dice(3) } else { 0 },
            };
            let shared: Vec<Shared> = (0..4).map(kind).collect();
            let room = dice(60);
            let least = tried(&shared, room).expect("the bar alone is light enough");
            assert_eq!(stripped(&shared, room), least, "{shared:?} down to {room}");
            bitten += i32::from(least > 0);
        }
        assert!(bitten > 500, "only {bitten} had to be stripped");
    }

    #[test]
    fn too_many_choices_tell_less_than_it_costs() {
        let kind = |at: i64| Shared {
            mass: 1_000 + 7 * at % 13,
            handling: 1_000 + 5 * at % 11,
            both: 2,
            one: 0,
        };
        let shared: Vec<Shared> = (0..32).map(kind).collect();
        let all: i64 = shared.iter().map(|s| 2 * s.mass).sum();
        // Down to the lightest 60 of 64, each other pair taking at least 2 000 ns.
        let least = stripped(&shared, all - 3 * 1_013);
        assert!((1..=4 * 2 * 1_010).contains(&least), "{least}");
        assert_eq!(stripped(&shared, -1).signum(), 1, "a heavy bar alone");
    }
}
