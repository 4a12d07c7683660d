//! Which other bars cannot be as they are believed to be, where a word about one bar is true: a
//! plate hangs on one bar at a time.
use crate::believed::{BarWord, Disc, Stacks};
use crate::gym::Gym;
use crate::order::{elsewhere, plates_at};
use crate::state::State;
use alloc::string::String;
use alloc::vec::Vec;

/// The other bars that cannot hold all that is believed of them if a word is true, or all that hands
/// were at work on there: a marked plate of theirs is in it, or there are too few plates of a kind
/// for both.
#[must_use]
pub fn contradicted(gym: &Gym, state: &State, word: &BarWord) -> Vec<String> {
    let Some(set) = plates_at(gym, &word.rack) else {
        return Vec::new();
    };
    let others = elsewhere(gym, state, &word.rack, &word.bar, word.date);
    let count = |holds: &Stacks, disc: &Disc| {
        let alike = holds.discs().filter(|other| other.face == disc.face);
        alike.count()
    };
    let is_short_of = |disc: &Disc, there: usize| {
        let kind = set.plates.iter().find(|kind| kind.face == disc.face);
        let there_are = kind.map_or(0, |kind| 2 * usize::from(kind.pairs));
        let here = count(&word.holds, disc);
        here > 0 && here + there > there_are
    };
    let is_here = |disc: &Disc| {
        let mark = disc.mark.as_ref();
        mark.is_some() && word.holds.discs().any(|own| own.mark.as_ref() == mark)
    };
    let cannot = |holds: &Stacks, there: &dyn Fn(&Disc) -> usize| {
        let mut discs = holds.discs();
        discs.any(|disc| is_here(disc) || is_short_of(disc, there(disc)))
    };
    let on_all = |disc: &Disc| others.iter().map(|(_, holds)| count(holds, disc)).sum();
    // What was ordered there may have been built, and taken apart again for this.
    let was_built = |bar: &String| {
        let known = state.bars.get(bar).and_then(|known| known.ordered.as_ref());
        known.is_some_and(|holds| cannot(holds, &|disc| count(holds, disc)))
    };
    let named = others.iter();
    let named = named.filter(|(bar, holds)| cannot(holds, &on_all) || was_built(bar));
    named.map(|(bar, _)| (*bar).clone()).collect()
}
