//! What the coach says of a lifter on the command line beside loads: hurt, fit, ill, and that a load
//! which looks wrong is meant.
use super::NextArgs;
use super::coach::find_lift;
use crate::error::KioskError;
use crate::kiosk::Kiosk;
use chrono::NaiveDate;
use domain::Lifter;
use domain::coach_word::{CoachSays, CoachWord};
use domain::day::{NoSheet, day};
use domain::next::Ill;

/// The word that the options hold, if any.
pub(super) fn word(
    args: &NextArgs,
    kiosk: &Kiosk,
    lifter: &Lifter,
) -> Result<Option<CoachWord>, KioskError> {
    let said = &args.word;
    let what = if let Some(since) = said.hurt {
        CoachSays::Hurt { since }
    } else if said.fit {
        CoachSays::Fit
    } else if let Some(span) = &said.ill {
        CoachSays::Ill(ill(span)?)
    } else if said.meant {
        meant(args, kiosk, lifter)?
    } else {
        return Ok(None);
    };
    Ok(Some(CoachWord {
        lifter: lifter.name.clone(),
        what,
        note: args.note.clone().unwrap_or_default(),
    }))
}

/// Two days with two dots between.
fn ill(span: &str) -> Result<Ill, KioskError> {
    let day = |text: &str| NaiveDate::parse_from_str(text.trim(), "%Y-%m-%d").ok();
    let days = span.split_once("..");
    let days = days.and_then(|(from, to)| Some((day(from)?, day(to)?)));
    let (from, to) = days.ok_or_else(|| {
        let text = format!("\"{span}\" is no two days; write it as in 2026-12-01..2026-12-06");
        KioskError::Usage(text)
    })?;
    Ok(Ill { from, to })
}

/// The load of the plan that looks wrong on that day, today without one.
fn meant(args: &NextArgs, kiosk: &Kiosk, lifter: &Lifter) -> Result<CoachSays, KioskError> {
    let gym = kiosk.gym();
    let lift = find_lift(gym, args.lift.as_deref().unwrap_or_default())?;
    let date = args.date.unwrap_or_else(|| kiosk.date());
    let entries = day(gym, kiosk.state(), date);
    let own = entries
        .into_iter()
        .filter(|entry| entry.lifter == lifter.name && entry.lift == lift.name);
    let mut odd = own.filter_map(|entry| match entry.outcome {
        Err(NoSheet::LooksWrong { load, .. }) => Some(load),
        Ok(_) | Err(_) => None,
    });
    let load = odd.next_back().ok_or_else(|| {
        let (name, lift) = (&lifter.name, &lift.name);
        KioskError::Usage(format!("no load of {name}'s {lift} looks wrong on {date}"))
    })?;
    Ok(CoachSays::LoadMeant {
        lift: lift.name.clone(),
        date,
        load,
    })
}
