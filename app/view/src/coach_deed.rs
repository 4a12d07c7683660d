//! What a coach does about a line of the list or about somebody's health away from the screen's
//! desk, and the command that it comes to: the same as from there.
//!
//! Refuses: rules of its own, a ruling about a line that is no longer as it was shown.
use crate::language::{Language, NOTES, Phrase, p};
use crate::next_all::CoachLine;
use chrono::NaiveDate;
use domain::coach_word::{CoachSays, CoachWord, Health};
use domain::next::coach_list::Concern;
use domain::next::{Ill, Why};
use domain::{Command, LiftNo, Mass, MassUnit};
use std::hash::{DefaultHasher, Hash as _, Hasher as _};

/// What a coach does, as it was sent.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct CoachDeed {
    /// About whom.
    pub lifter: String,
    /// What.
    pub what: What,
    /// Why, in the coach's words; may be empty.
    pub note: String,
}

/// What can be done.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum What {
    /// Rule the load of the next time.
    Rule {
        /// After which lift.
        no: u32,
        /// The mark of the line that was looked at.
        mark: String,
        /// As typed: "147.5", "147,5 kg", "325 lb".
        load: String,
    },
    /// Say that a load which looks wrong is meant.
    Meant {
        /// The mark of the line that was looked at.
        mark: String,
        /// Which lift.
        lift: String,
        /// The day of the plan.
        date: NaiveDate,
    },
    /// Hurt since a day.
    Hurt(NaiveDate),
    /// Fit again.
    Fit,
    /// Ill from a day to a day.
    Ill(NaiveDate, NaiveDate),
}

/// Why nothing comes of it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Undone {
    /// It is so already.
    Already,
    /// The line is not as it was shown.
    Stale,
    /// That is no load.
    NoLoad,
    /// Of a day to come nobody knows.
    ToCome,
    /// So long ago, or so long, that it looks like a slip.
    Slip,
    /// No lifter of the gym is called so.
    Nobody,
}

/// Days that an illness or a hurt may lie back, and an illness may last.
const DAYS_MAX: i64 = 366;

/// By which a line is known to be as it was shown; it changes with everything that it says.
#[must_use]
pub fn mark(line: &CoachLine) -> String {
    let mut hasher = DefaultHasher::new();
    format!("{line:?}").hash(&mut hasher);
    format!("{:016x}", hasher.finish())
}

/// Loads that a line names, the lowest first, each with where it comes from.
#[must_use]
pub fn loads(line: &CoachLine) -> Vec<(Mass, Phrase)> {
    let decision = line.due.as_ref().map(|due| &due.decision);
    let due = decision.and_then(|decision| decision.due());
    let from = decision.map(|decision| decision.from);
    let planned = if let Concern::Differs { planned, .. } = &line.concern {
        Some(*planned)
    } else {
        None
    };
    let named = [
        (due, p::list::AS_DUE),
        (from, p::list::AS_BEFORE),
        (planned, p::list::AS_PLANNED),
    ];
    let mut loads: Vec<(Mass, Phrase)> = Vec::new();
    for (load, whence) in named {
        if let Some(load) = load.filter(|load| loads.iter().all(|(known, _)| known != load)) {
            loads.push((load, whence));
        }
    }
    loads.sort_by_key(|(load, _)| *load);
    loads
}

/// The reasons from which a coach chooses one, as at the desk.
#[must_use]
pub const fn reasons() -> &'static [Phrase] {
    &NOTES
}

/// The lift after which a line is ruled; `None` where there is nothing to rule.
#[must_use]
pub fn ruled_after(line: &CoachLine) -> Option<u32> {
    line.after.map(|no| no.0)
}

/// Lift and day of a load that looks wrong.
#[must_use]
pub fn means(line: &CoachLine) -> Option<(&str, NaiveDate)> {
    let Concern::LooksWrong { date, .. } = &line.concern else {
        return None;
    };
    let (lift, _) = line.of.as_ref()?;
    Some((lift, *date))
}

/// The command that a deed comes to. `lines` and `health` are the lifter's of now, `today` the
/// kiosk's day.
///
/// # Errors
/// [`Undone`]; nothing is to be done then.
pub fn command(
    deed: &CoachDeed,
    lines: &[CoachLine],
    health: &Health,
    today: NaiveDate,
) -> Result<Command, Undone> {
    let says = match &deed.what {
        What::Rule { no, mark, load } => return rule(deed, lines, (*no, mark, load)),
        What::Meant { mark, lift, date } => meant(lines, health, (mark, lift, *date))?,
        What::Hurt(since) => {
            in_reach(*since, today)?;
            if health
                .hurt
                .as_ref()
                .is_some_and(|hurt| hurt.since == *since)
            {
                return Err(Undone::Already);
            }
            CoachSays::Hurt { since: *since }
        }
        What::Fit if !health.is_hurt() => return Err(Undone::Already),
        What::Fit => CoachSays::Fit,
        What::Ill(from, to) => {
            in_reach(*from, today)?;
            if *to > today {
                return Err(Undone::ToCome);
            }
            let (from, to) = (*from, *to);
            let ill = Ill { from, to };
            if health.ill.contains(&ill) {
                return Err(Undone::Already);
            }
            CoachSays::Ill(ill)
        }
    };
    Ok(Command::SayCoach(Box::new(CoachWord {
        lifter: deed.lifter.clone(),
        what: says,
        note: note(deed),
    })))
}

fn in_reach(day: NaiveDate, today: NaiveDate) -> Result<(), Undone> {
    match today.signed_duration_since(day).num_days() {
        ..0 => Err(Undone::ToCome),
        0..=DAYS_MAX => Ok(()),
        _ => Err(Undone::Slip),
    }
}

fn note(deed: &CoachDeed) -> String {
    match deed.note.trim() {
        "" => Language::English.say(p::list::NOTE_ON_PAGE),
        note => note.to_owned(),
    }
}

fn rule(
    deed: &CoachDeed,
    lines: &[CoachLine],
    (no, seen, load): (u32, &str, &str),
) -> Result<Command, Undone> {
    let line = lines.iter().find(|line| ruled_after(line) == Some(no));
    let line = line.ok_or(Undone::Stale)?;
    let load = read_load(load, line.unit).ok_or(Undone::NoLoad)?;
    if mark(line) != seen {
        let decision = line.due.as_ref().map(|due| &due.decision);
        let ruled = decision.is_some_and(|d| d.why == Why::Coach && d.due() == Some(load));
        return Err(if ruled {
            Undone::Already
        } else {
            Undone::Stale
        });
    }
    Ok(Command::OverrideNext {
        no: LiftNo(no),
        load,
        note: note(deed),
    })
}

fn meant(
    lines: &[CoachLine],
    health: &Health,
    (seen, lift, date): (&str, &str, NaiveDate),
) -> Result<CoachSays, Undone> {
    let Some(line) = lines.iter().find(|line| mark(line) == seen) else {
        let mut said = health.meant.iter();
        let said = said.any(|(of, day, _)| of == lift && *day == date);
        return Err(if said { Undone::Already } else { Undone::Stale });
    };
    let Concern::LooksWrong { date, load, .. } = &line.concern else {
        return Err(Undone::Stale);
    };
    let lift = line.of.as_ref().map(|(lift, _)| lift.clone());
    Ok(CoachSays::LoadMeant {
        lift: lift.ok_or(Undone::Stale)?,
        date: *date,
        load: *load,
    })
}

/// A load as a coach types it; a bare number is in the lifter's unit, a comma is a decimal one.
fn read_load(text: &str, unit: MassUnit) -> Option<Mass> {
    let text = text.trim().replace(',', ".");
    let load = match text.bytes().last()?.is_ascii_alphabetic() {
        true => Mass::read(&text).ok(),
        false => Mass::read_in(&text, unit).ok(),
    };
    load.filter(|load| *load > Mass::ZERO)
}
