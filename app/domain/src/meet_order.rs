//! The order of a round of attempts: by declared weight, then by lot number.
//!
//! Lighter first; of two alike the lower lot number (IPF Technical Rules, from memory). Where lots
//! are missing or alike, whoever came first in the round before (IWF Technical Rules, where the
//! earlier previous attempt goes first, from memory), in the first round the order of the list.
//! Refuses: to know who starts late or for whom the bar is lowered; that is for the referee.
use crate::mass::Mass;
use alloc::vec;
use alloc::vec::Vec;

/// Rounds of a flight.
pub const ROUNDS: usize = 3;
/// The highest lot number.
pub const LOT_MOST: u16 = 999;

/// What gives somebody their place in a round.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Claim {
    /// The weight declared for the round.
    pub load: Mass,
    /// The lot number; whoever has none goes after those of the same weight that have one.
    pub lot: Option<u16>,
    /// The place in the round before, in the first one in the list.
    pub place: usize,
}

impl Claim {
    /// What is compared, the first to lift least.
    #[must_use]
    pub fn key(&self) -> (Mass, u16, usize) {
        (self.load, self.lot.unwrap_or(u16::MAX), self.place)
    }
}

/// Who lifts after whom, as places in `claims`.
#[must_use]
pub fn order(claims: &[Claim]) -> Vec<usize> {
    let mut order: Vec<usize> = (0..claims.len()).collect();
    order.sort_by_key(|at| claims[*at].key());
    order
}

/// Somebody on a list in the order of the first attempts: the opener and the lot, or `None` where
/// nothing but the place is known.
pub type Listed = Option<(Mass, Option<u16>)>;

/// A list with an opener for everybody, in the order of the first attempts; an opener that was not
/// told is reckoned from those next to it.
///
/// Those that were told stand at the places of the list that are theirs, lighter first. The others
/// stand evenly between their neighbours' weights, before the first from three quarters of it up,
/// after the last up to five quarters of it; common practice, no source.
#[must_use]
pub fn reckoned(list: &[Listed]) -> Vec<(Mass, Option<u16>)> {
    let mut told: Vec<(Mass, Option<u16>)> = list.iter().flatten().copied().collect();
    told.sort_by_key(|(load, lot)| (*load, lot.unwrap_or(u16::MAX)));
    let mut all = vec![(Mass::ZERO, None); list.len()];
    let mut before: Option<(Mass, Option<u16>)> = None;
    let mut told = told.into_iter();
    let mut from = 0;
    loop {
        let gap = list[from..].iter().take_while(|one| one.is_none()).count();
        let after = told.next();
        let (low, high) = (before.map(|b| b.0), after.map(|a| a.0));
        let low_end = low.or(high.map(|load| part(load, 3, 4)));
        let high_end = high.or(low.map(|load| part(load, 5, 4)));
        let (low_end, high_end) = (low_end.unwrap_or_default(), high_end.unwrap_or_default());
        for nth in 0..gap {
            let load = low_end + part(high_end - low_end, count(nth + 1), count(gap + 1));
            // Between two of the same weight the list's own order stays.
            let lot = before.filter(|b| b.0 == load).and_then(|b| b.1);
            all[from + nth] = (load, lot);
        }
        from += gap;
        let Some(after) = after else { break };
        all[from] = after;
        (before, from) = (Some(after), from + 1);
    }
    all
}

/// A list of so many others of whom nothing is known, and of `told`: each of those told has as many
/// of the others before it as there are to be expected, rounded down, so that nobody is warm too
/// late.
///
/// Of `others` whose weights are drawn like those of the `k` told, `others * r / (k + 1)` are
/// expected below the `r`th of them (the mean of an order statistic: each of the `k + 1` gaps is
/// alike).
#[must_use]
pub fn spread(told: &[(Mass, Option<u16>)], others: u16) -> Vec<Listed> {
    let mut told: Vec<_> = told.to_vec();
    told.sort_by_key(|(load, lot)| (*load, lot.unwrap_or(u16::MAX)));
    let others = usize::from(others);
    let (gaps, mut list) = (told.len() + 1, Vec::new());
    let mut stood = 0;
    for (rank, one) in told.into_iter().enumerate() {
        let below = others * (rank + 1) / gaps;
        list.extend((stood..below).map(|_| None));
        list.push(Some(one));
        stood = below;
    }
    list.extend((stood..others).map(|_| None));
    list
}

fn count(n: usize) -> i64 {
    i64::try_from(n).unwrap_or(i64::MAX)
}

/// So many parts of a mass, down to the nanogram.
pub(crate) fn part(mass: Mass, parts: i64, of: i64) -> Mass {
    let ng = i128::from(mass.ng()) * i128::from(parts) / i128::from(of.max(1));
    Mass::from_ng(i64::try_from(ng).unwrap_or(i64::MAX))
}
