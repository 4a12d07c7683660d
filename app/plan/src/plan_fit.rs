//! Bars, holes and blocks of a plan held against the gym.
//!
//! Refuses: holes past the rack's, a hole for a lift from the floor, a bar of another rack.
use crate::against::Against;
use crate::fault::{Wrong, quote};
use crate::nearest::fold;
use crate::words::words;
use domain::lift::Start;
use domain::manner::Manner;
use domain::{Gym, Length, LengthUnit};
use text::keys::checked as k;

/// Words in front of a bar's name in a remark.
const LEADS: [&str; 9] = [
    "with", "on", "the", "using", "mit", "der", "auf", "use", "a",
];
/// Kinds of bars that the trade knows by one word; a remark that names one means a bar.
const KINDS: [&str; 17] = [
    "hex",
    "trap",
    "axle",
    "safety",
    "swiss",
    "cambered",
    "power",
    "squat",
    "women's",
    "men's",
    "thick",
    "fat",
    "ez",
    "retired",
    "deadlift",
    "training",
    "technique",
];

impl Against<'_> {
    /// The bar that a text names: "old yard bar", or "old yard", or a part that one bar alone has.
    ///
    /// # Errors
    /// A name that no bar has, or more than one could have.
    pub(crate) fn bar(&self, text: &str) -> Result<String, Wrong> {
        let short = fold(text);
        let whole = format!("{} bar", text.trim());
        if let Some(bar) = self.bars.lookup(text).or_else(|| self.bars.lookup(&whole)) {
            return Ok(bar);
        }
        let Some(gym) = self.gym else {
            return self.bars.find(text);
        };
        let wanted: Vec<&str> = short.split(' ').filter(|word| *word != "bar").collect();
        let has = |name: &str| {
            let name = fold(name);
            let words: Vec<&str> = name.split([' ', '-']).collect();
            !wanted.is_empty() && wanted.iter().all(|word| words.contains(word))
        };
        let names = gym.bars.iter().map(|bar| bar.name.as_str());
        let found: Vec<&str> = names.filter(|name| has(name)).collect();
        match found.as_slice() {
            [] => self.bars.find(text),
            [bar] => Ok((*bar).to_owned()),
            [one, other, ..] => {
                let what = words!(k::WHICH_COULD_BE_OR, quote(one), quote(other));
                Err(Wrong::value(text, what, words!(k::WRITE_THE_BAR_S_WHOLE)))
            }
        }
    }

    /// The bar that a remark names, or what is wrong with it; `None` where it names none.
    pub(crate) fn bar_in(&self, note: &str) -> Option<Result<String, Wrong>> {
        self.gym?;
        let mut words: Vec<&str> = note.split_whitespace().collect();
        while words
            .first()
            .is_some_and(|word| LEADS.contains(&word.to_lowercase().as_str()))
        {
            words.remove(0);
        }
        let name = words.join(" ");
        let lower = name.to_lowercase();
        if let Some(bar) = self.bars.lookup(&name).filter(|_| lower.contains("bar")) {
            return Some(Ok(bar));
        }
        let kind = lower.strip_suffix(" bar")?;
        KINDS.contains(&kind).then(|| self.bar(&name))
    }

    /// Holds where sets are done, and the bar, against the rack of a lifter.
    ///
    /// # Errors
    /// What does not fit, with what would.
    pub(crate) fn fits(
        &self,
        manners: &[Manner],
        bar: Option<&str>,
        (lifter, lift): (&str, &str),
    ) -> Result<(), Wrong> {
        told_for_all(manners)?;
        let Some(gym) = self.gym else { return Ok(()) };
        let start = gym.lifts.iter().find(|known| known.name == lift);
        let Some(start) = start.map(|lift| lift.start) else {
            return Ok(());
        };
        for manner in manners {
            starts(manner, start, lift)?;
        }
        on_the_rack(gym, manners, bar, lifter)
    }
}

/// A hole or blocks for some of a lift's sets leave the others open: they are asked about.
fn told_for_all(manners: &[Manner]) -> Result<(), Wrong> {
    let mixed = |has: fn(&Manner) -> bool| manners.iter().any(has) && !manners.iter().all(has);
    let wrong = |what, right| Err(Wrong::plain(what, right));
    if mixed(|manner| manner.hole.is_some()) {
        return wrong(
            words!(k::A_HOLE_FOR_SOME_SET),
            words!(k::WRITE_THE_HOLE_WITH_EACH),
        );
    }
    if mixed(|manner| manner.block.is_some()) {
        return wrong(
            words!(k::BLOCKS_FOR_SOME_SET_GROUPS),
            words!(k::WRITE_THE_BLOCKS_WITH_EACH),
        );
    }
    Ok(())
}

/// A hole is of pins or hooks, blocks are of the floor.
fn starts(manner: &Manner, start: Start, lift: &str) -> Result<(), Wrong> {
    if let (Some(hole), Start::Floor) = (manner.hole, start) {
        let what = words!(k::WHICH_THE_HAS_NOT_IT, lift);
        let right = words!(k::WRITE_BLOCKS_100_MM_OR);
        return Err(Wrong::value(&format!("hole {hole}"), what, right));
    }
    let block = manner.block.filter(|block| *block != Length::ZERO);
    if let (Some(block), Start::Pins { .. } | Start::Hooks) = (block, start) {
        let text = format!("blocks {}", block.exact(LengthUnit::Mm));
        let what = words!(k::WHICH_THE_HAS_NOT_IT_STARTS, lift);
        let right = words!(k::WRITE_HOLE_6_OR_LEAVE);
        return Err(Wrong::value(&text, what, right));
    }
    Ok(())
}

fn on_the_rack(
    gym: &Gym,
    manners: &[Manner],
    bar: Option<&str>,
    lifter: &str,
) -> Result<(), Wrong> {
    let who = gym.lifters.iter().find(|known| known.name == lifter);
    let rack = who.and_then(|who| gym.racks.iter().find(|rack| rack.name == who.rack));
    let Some(rack) = rack else { return Ok(()) };
    let hole = manners.iter().filter_map(|manner| manner.hole).max();
    if let Some(hole) = hole.filter(|hole| *hole > rack.holes) {
        let what = words!(
            k::WHERE_THE_OF_HAS_HOLES,
            rack.name.as_str(),
            lifter,
            rack.holes
        );
        let right = words!(k::WRITE_A_HOLE_FROM_1, rack.holes);
        return Err(Wrong::value(&format!("hole {hole}"), &what, right));
    }
    let here = |name: &str| gym.bars_at(&rack.name).any(|bar| bar.name == name);
    if let Some(bar) = bar.filter(|bar| !here(bar)) {
        let what = words!(k::WHICH_DOES_NOT_STAND_BY, rack.name.as_str(), lifter);
        let bars: Vec<&str> = gym
            .bars_at(&rack.name)
            .map(|bar| bar.name.as_str())
            .collect();
        let right = words!(k::WRITE_A_BAR_OF_THAT, bars.join(", "));
        return Err(Wrong::value(bar, &what, right));
    }
    Ok(())
}
