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
                let what = words!("which could be {0} or {1}", quote(one), quote(other));
                Err(Wrong::value(
                    text,
                    what,
                    words!("write the bar's whole name"),
                ))
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
            words!("a hole for some set groups of the lift and none for others"),
            words!("write the hole with each set group"),
        );
    }
    if mixed(|manner| manner.block.is_some()) {
        return wrong(
            words!("blocks for some set groups of the lift and none for others"),
            words!("write the blocks with each set group, or \"no blocks\""),
        );
    }
    Ok(())
}

/// A hole is of pins or hooks, blocks are of the floor.
fn starts(manner: &Manner, start: Start, lift: &str) -> Result<(), Wrong> {
    if let (Some(hole), Start::Floor) = (manner.hole, start) {
        let what = words!("which the {0} has not: it starts on the floor", lift);
        let right = words!("write \"blocks 100 mm\", or leave the hole out");
        return Err(Wrong::value(&format!("hole {hole}"), what, right));
    }
    let block = manner.block.filter(|block| *block != Length::ZERO);
    if let (Some(block), Start::Pins { .. } | Start::Hooks) = (block, start) {
        let text = format!("blocks {}", block.exact(LengthUnit::Mm));
        let what = words!("which the {0} has not: it starts in the rack", lift);
        let right = words!("write \"hole 6\", or leave the blocks out");
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
            "where the {0} of {1} has {2} holes",
            rack.name.as_str(),
            lifter,
            rack.holes
        );
        let right = words!("write a hole from 1 to {0}", rack.holes);
        return Err(Wrong::value(&format!("hole {hole}"), &what, right));
    }
    let here = |name: &str| gym.bars_at(&rack.name).any(|bar| bar.name == name);
    if let Some(bar) = bar.filter(|bar| !here(bar)) {
        let what = words!(
            "which does not stand by the {0} of {1}",
            rack.name.as_str(),
            lifter
        );
        let bars: Vec<&str> = gym
            .bars_at(&rack.name)
            .map(|bar| bar.name.as_str())
            .collect();
        let right = words!("write a bar of that rack: {0}", bars.join(", "));
        return Err(Wrong::value(bar, &what, right));
    }
    Ok(())
}
