//! `pinladder sheet`. Refuses: writing anything but the first start's demo gym.
use super::{SheetArgs, say};
use crate::clock::SystemClock;
use crate::error::KioskError;
use crate::folder::Folder;
use crate::kiosk::Kiosk;
use chrono::NaiveDate;
use domain::day::{DayEntry, day};
use domain::next::here::{LiftDue, all_due};
use domain::{Gym, Lifter, State};
use std::io::Write;

pub(super) fn sheet(
    folder: &Folder,
    args: &SheetArgs,
    out: &mut dyn Write,
) -> Result<bool, KioskError> {
    let kiosk = Kiosk::open(folder, Box::new(SystemClock))?;
    let date = args.date.unwrap_or_else(|| kiosk.date());
    let gym = kiosk.gym();
    let lifter = match &args.lifter {
        None => None,
        Some(name) => Some(known(gym, name)?),
    };
    let entries = day(gym, kiosk.state(), date);
    let text = if args.json {
        view::sheet_json(&view::sheet_doc(&gym.name, date, &entries, lifter))
    } else {
        let others = others(gym, kiosk.state(), date, &entries);
        view::sheet_text(&gym.name, date, &entries, lifter, &others)
    };
    say(out, &text);
    Ok(true)
}

/// A lift that was not done for longer is not told any more.
const OTHERS_DAYS: i64 = 60;

/// What is due of the lifts that each lifter did lately and does not do on that day.
fn others(
    gym: &Gym,
    state: &State,
    date: NaiveDate,
    entries: &[DayEntry],
) -> Vec<(String, Vec<LiftDue>)> {
    let of = |lifter: &Lifter| {
        let today = |lift: &str| {
            let own = |e: &&DayEntry| e.lifter == lifter.name && e.lift == lift;
            entries.iter().any(|e| own(&e))
        };
        let lately = |one: &LiftDue| (date - one.due.decision.date).num_days() <= OTHERS_DAYS;
        let mut due = all_due(gym, state, lifter, date);
        due.retain(|one| lately(one) && !today(&one.lift));
        (lifter.name.clone(), due)
    };
    gym.lifters.iter().map(of).collect()
}

/// The lifter's name as the gym writes it.
pub(super) fn known<'g>(gym: &'g Gym, name: &str) -> Result<&'g str, KioskError> {
    let same = |l: &&Lifter| l.name.to_lowercase() == name.to_lowercase();
    gym.lifters
        .iter()
        .find(same)
        .map(|l| l.name.as_str())
        .ok_or_else(|| {
            let names: Vec<&str> = gym.lifters.iter().map(|l| l.name.as_str()).collect();
            KioskError::Usage(format!(
                "no lifter is called {name}; there are {}",
                names.join(", ")
            ))
        })
}
