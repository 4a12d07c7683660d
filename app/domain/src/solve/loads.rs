//! Which loads the plates make at all, whatever their order on the sleeve.
//!
//! Refuses: so many different plates that their sums cannot be listed.
use super::equipment::refusal;
use super::{Constraint, Equipment, Refusal};
use crate::mass::Mass;
use alloc::string::String;
use alloc::vec;
use alloc::vec::Vec;

/// All loads up to a limit, bar and collars included.
///
/// The kinds are dealt into two halves, each listed whole; a question puts them together.
#[derive(Debug)]
pub struct Loads {
    bar: i64,
    sleeve: i64,
    /// Greatest mass of one side.
    most: i64,
    /// Distinct masses of one side, rising, each with the least length that makes it.
    first: Vec<(i64, i64)>,
    second: Vec<(i64, i64)>,
    /// Least length over each span of `second`: a heap, leaves last.
    shortest: Vec<i64>,
    /// What loads are whole steps of, where not all count.
    step: Option<i64>,
}

/// Sums that one half may have.
const HALF_LIMIT: usize = 300_000;

impl Loads {
    /// Lists the loads up to `most`.
    ///
    /// # Errors
    /// [`Refusal`] with [`Constraint::Range`] when the sums are too many to list.
    pub fn new(equipment: &Equipment, most: Mass) -> Result<Self, Refusal> {
        let bar = equipment.bar_and_collars.ng();
        // Half of what fits, so that nothing else in the heap passes for a length.
        let sleeve = equipment.sleeve.map_or(i64::MAX / 2, |s| s.nm());
        let most = (most.ng().saturating_sub(bar)).max(0) / 2;
        let (mut first, mut second) = (vec![(0, 0)], vec![(0, 0)]);
        let mut kinds: Vec<_> = equipment.plates.iter().collect();
        kinds.sort_by_key(|k| (-k.mass.ng(), k.thickness));
        for kind in kinds {
            let each = (kind.mass.ng(), kind.thickness.nm());
            let room = (most, sleeve);
            let smaller = if first.len() < second.len() {
                &mut first
            } else {
                &mut second
            };
            let Some(more) = with_kind(smaller, each, kind.pairs, room) else {
                let text = String::from("are too many different plates to list their loads");
                return Err(refusal(Constraint::Range, "plates", text));
            };
            *smaller = more;
        }
        Ok(Self {
            bar,
            sleeve,
            most,
            first,
            shortest: heap(&second),
            second,
            step: None,
        })
    }

    /// The same, of which only whole steps of a mass count, as long as there is one.
    #[must_use]
    pub fn in_steps(mut self, step: Option<Mass>) -> Self {
        self.step = step.map(Mass::ng).filter(|step| *step > 0);
        self
    }

    /// The greatest load that is not above `load`, a whole step or not.
    #[must_use]
    pub fn at_most_in_any_step(&self, load: Mass) -> Option<Mass> {
        self.any_at_most(load)
    }

    /// The greatest load that is not above `load`, among those listed.
    #[must_use]
    pub fn at_most(&self, load: Mass) -> Option<Mass> {
        let whole = || {
            let mut found = self.any_at_most(load)?;
            // Each round goes down to the next whole step at least.
            while let Some(over) = self.over_step(found) {
                found = self.any_at_most(found - Mass::from_ng(over))?;
            }
            Some(found)
        };
        whole().or_else(|| self.any_at_most(load))
    }

    /// By how much a load is over a whole step.
    fn over_step(&self, load: Mass) -> Option<i64> {
        self.step
            .map(|step| load.ng().rem_euclid(step))
            .filter(|over| *over > 0)
    }

    fn any_at_most(&self, load: Mass) -> Option<Mass> {
        let side = load
            .ng()
            .saturating_sub(self.bar)
            .div_euclid(2)
            .min(self.most);
        let fitting = self.first.iter().filter_map(|&(mass, length)| {
            let end = self.second.partition_point(|&(m, _)| m <= side - mass);
            let at = self.last_short(end, self.sleeve - length)?;
            Some(mass + self.second[at].0)
        });
        fitting.max().map(|side| self.load(side))
    }

    /// The least load that is not below `load`, among those listed.
    #[must_use]
    pub fn at_least(&self, load: Mass) -> Option<Mass> {
        let whole = || {
            let mut found = self.any_at_least(load)?;
            while let (Some(over), Some(step)) = (self.over_step(found), self.step) {
                found = self.any_at_least(found + Mass::from_ng(step - over))?;
            }
            Some(found)
        };
        whole().or_else(|| self.any_at_least(load))
    }

    fn any_at_least(&self, load: Mass) -> Option<Mass> {
        let both = load.ng().saturating_sub(self.bar);
        let side = both.div_euclid(2) + both.rem_euclid(2);
        let fitting = self.first.iter().filter_map(|&(mass, length)| {
            let from = self.second.partition_point(|&(m, _)| m < side - mass);
            let at = self.first_short(from, self.sleeve - length)?;
            Some(mass + self.second[at].0)
        });
        let least = fitting.min().filter(|side| *side <= self.most);
        least.map(|side| self.load(side))
    }

    /// The load nearest to `load`, the lower of two equally near.
    #[must_use]
    pub fn nearest(&self, load: Mass) -> Option<Mass> {
        let (below, above) = (self.at_most(load), self.at_least(load));
        let near = below.into_iter().chain(above);
        near.min_by_key(|&found| (found.apart(load), found))
    }

    /// The bar with its collars.
    #[must_use]
    pub fn least(&self) -> Mass {
        Mass::from_ng(self.bar)
    }

    /// One side's plates of a load, nanograms.
    pub(super) fn side(&self, load: Mass) -> i64 {
        (load.ng() - self.bar) / 2
    }

    fn load(&self, side: i64) -> Mass {
        Mass::from_ng(self.bar + 2 * side)
    }

    /// The last place before `end` in the second half that is at most `room` long.
    fn last_short(&self, end: usize, room: i64) -> Option<usize> {
        let leaves = self.shortest.len() / 2;
        let mut node = leaves + end;
        // Climb to the first span wholly before `end` that holds one, then go down its right.
        while node > 1 && !(node % 2 == 1 && self.shortest[node - 1] <= room) {
            node /= 2;
        }
        if node <= 1 {
            return None;
        }
        node -= 1;
        while node < leaves {
            node = 2 * node + 1;
            node -= usize::from(self.shortest[node] > room);
        }
        Some(node - leaves)
    }

    /// The first place from `from` in the second half that is at most `room` long.
    fn first_short(&self, from: usize, room: i64) -> Option<usize> {
        let leaves = self.shortest.len() / 2;
        let mut node = leaves + from;
        if self.shortest[node] > room {
            while node > 1 && !(node.is_multiple_of(2) && self.shortest[node + 1] <= room) {
                node /= 2;
            }
            if node <= 1 {
                return None;
            }
            node += 1;
        }
        while node < leaves {
            node *= 2;
            node += usize::from(self.shortest[node] > room);
        }
        Some(node - leaves)
    }
}

/// Always with a spare leaf at the end, so that one past the last place is a place of the heap.
fn heap(half: &[(i64, i64)]) -> Vec<i64> {
    let leaves = (half.len() + 1).next_power_of_two();
    let mut heap = vec![i64::MAX; 2 * leaves];
    for (at, &(_, length)) in half.iter().enumerate() {
        heap[leaves + at] = length;
    }
    for node in (1..leaves).rev() {
        heap[node] = heap[2 * node].min(heap[2 * node + 1]);
    }
    heap
}

/// `half` with none to all pairs of a kind more, or `None` when that is too much.
fn with_kind(
    half: &[(i64, i64)],
    each: (i64, i64),
    pairs: u16,
    room: (i64, i64),
) -> Option<Vec<(i64, i64)>> {
    let mut more = half.to_vec();
    for times in 1..=i64::from(pairs).min(room.0 / each.0) {
        let before = more.len();
        let added = half
            .iter()
            .map(|(m, t)| (m + each.0 * times, t + each.1 * times));
        more.extend(added.filter(|&(m, t)| m <= room.0 && t <= room.1));
        if more.len() == before {
            break;
        }
        if more.len() > 2 * HALF_LIMIT {
            more.sort();
            more.dedup_by_key(|(mass, _)| *mass);
            if more.len() > HALF_LIMIT {
                return None;
            }
        }
    }
    more.sort();
    more.dedup_by_key(|(mass, _)| *mass);
    (more.len() <= HALF_LIMIT).then_some(more)
}
