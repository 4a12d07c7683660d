//! `pinladder meet`: warm-ups timed back from the opener, of one lifter by options or of everybody
//! by a meet.toml. Refuses: changing anything.
use super::coach::{find_lift, json, lifter, load};
use super::{MeetArgs, say};
use crate::clock::SystemClock;
use crate::error::KioskError;
use crate::folder::Folder;
use crate::kiosk::Kiosk;
use chrono::NaiveTime;
use domain::gym::Pattern;
use domain::meet::{Flight, Habit, Taken, Wait};
use domain::meet_card::TableRules;
use domain::meet_day::{MeetDay, MeetFlight, Starter};
use domain::plausible::{UNTRIED_MAX, supports};
use domain::{Gym, Lifter, Mass, MassUnit};
use std::io::Write;
use std::path::Path;
use view::meet::{MeetDayDoc, MeetDoc, StarterDoc, meet_day_text, meet_doc, meet_text};

pub(super) fn meet(
    folder: &Folder,
    args: &MeetArgs,
    out: &mut dyn Write,
) -> Result<bool, KioskError> {
    let kiosk = Kiosk::open(folder, Box::new(SystemClock))?;
    let say_in = args.said.language;
    let text = match &args.file {
        Some(file) => {
            let doc = by_file(&kiosk, args, file)?;
            match args.json {
                true => json(&doc),
                false => meet_day_text(say_in, &doc),
            }
        }
        None => {
            let doc = by_options(&kiosk, args)?;
            match args.json {
                true => json(&doc),
                false => meet_text(say_in, &doc),
            }
        }
    };
    say(out, &text);
    Ok(true)
}

/// Everybody of a meet.toml who was asked about.
fn by_file(kiosk: &Kiosk, args: &MeetArgs, file: &Path) -> Result<MeetDayDoc, KioskError> {
    let gym = kiosk.gym();
    let text = std::fs::read(file).map_err(KioskError::file(file))?;
    let name = file.display().to_string();
    let source = plan::Source {
        name: &name,
        text: &text,
    };
    let day = plan::meet(source, gym).map_err(KioskError::Faults)?;
    let wanted = match &args.lifter {
        Some(name) => Some(lifter(gym, name)?.name.as_str()),
        None => None,
    };
    let mut starters = Vec::new();
    for (flight, of) in (1_u8..).zip(&day.flights) {
        if args.flight.is_some_and(|wanted| wanted != flight) {
            continue;
        }
        let ours = of.starters.iter();
        for starter in ours.filter(|s| wanted.is_none_or(|name| name == s.lifter)) {
            starters.push(StarterDoc {
                flight,
                lifter: starter.lifter.clone(),
                lot: starter.lot,
                reckoned: of.counted,
                until: until(kiosk, (&day, of), starter, starter.unit, args)?,
            });
        }
    }
    if starters.is_empty() {
        let read = format!("nobody who was asked about lifts in {name}");
        return Err(KioskError::Usage(format!(
            "{read}; it has {} flights",
            day.flights.len()
        )));
    }
    Ok(MeetDayDoc {
        name: day.name,
        date: day.date.format("%Y-%m-%d").to_string(),
        starters,
    })
}

/// One lifter, with the plates of their own rack.
fn by_options(kiosk: &Kiosk, args: &MeetArgs) -> Result<MeetDoc, KioskError> {
    let gym = kiosk.gym();
    let lifter = lifter(gym, args.lifter.as_deref().unwrap_or_default())?;
    let lift = find_lift(gym, &args.lift)?;
    let (opener, unit) = load(args.opener.as_deref().unwrap_or_default())?;
    if opener <= Mass::default() {
        let told = "an opener of nothing needs no warm-up; write it as in \"200 kg\"";
        return Err(KioskError::Usage(told.into()));
    }
    let (bar, plates) = domain::day::loaded_with(gym, lifter, lift).ok_or_else(|| {
        KioskError::Usage(format!(
            "{} has no rack, bar or plate set in the gym's files; check them with pinladder check",
            lifter.name
        ))
    })?;
    let starter = Starter {
        lifter: lifter.name.clone(),
        opener,
        unit,
        lot: None,
        before: args.before.unwrap_or_default(),
        pattern: pattern(gym, lifter, args.ladder.as_deref())?,
    };
    let flight = MeetFlight {
        lift: lift.name.clone(),
        attempt_s: args.attempt,
        start: None,
        starters: Vec::new(),
        others: Vec::new(),
        counted: false,
    };
    let day = MeetDay {
        name: String::new(),
        date: kiosk.date(),
        bar: bar.clone(),
        plates: plates.clone(),
        habit: Habit::USUAL,
        table: TableRules::USUAL,
        flights: Vec::new(),
    };
    until(kiosk, (&day, &flight), &starter, lifter.unit, args)
}

/// What one has to do until the opener.
fn until(
    kiosk: &Kiosk,
    (day, of): (&MeetDay, &MeetFlight),
    starter: &Starter,
    unit: MassUnit,
    args: &MeetArgs,
) -> Result<MeetDoc, KioskError> {
    // Somebody of the file may be through already; a single lifter's figures are held to each other.
    let called = match args.file {
        Some(_) => args.called.min(starter.before),
        None => args.called,
    };
    let wait = planned(day, of, starter, args)?;
    let flight = Flight {
        before: starter.before,
        attempt_s: of.attempt_s,
        called,
        elapsed_s: args
            .elapsed
            .unwrap_or(u32::from(args.called) * of.attempt_s),
        since_s: 0,
        later_s: 0,
        wait: Wait {
            seconds: wait.map_or(0, |(seconds, _)| seconds),
            after: 0,
        },
    };
    let taken = Taken {
        count: args.taken,
        since_s: args.since,
    };
    let call = day.call(starter, &flight, &taken);
    let call = call.map_err(|refusal| KioskError::Usage(refusal.to_string()))?;
    let say_in = args.said.language;
    let now = wait.map(|(_, now)| now);
    let doc = meet_doc(say_in, &of.lift, unit, starter, &call, (called, now));
    Ok(doc.judged(say_in, unsupported(kiosk, day, of, starter), unit))
}

/// Before a flight that has its start by the clock: how long before it the first warm-up wants to
/// begin, seconds, and at what time that is. Nothing once somebody has said how it goes.
fn planned(
    day: &MeetDay,
    of: &MeetFlight,
    starter: &Starter,
    args: &MeetArgs,
) -> Result<Option<(u32, NaiveTime)>, KioskError> {
    let under_way = args.called > 0 || args.elapsed.is_some() || args.taken > 0 || args.since > 0;
    let Some(start) = of.start.filter(|_| !under_way) else {
        return Ok(None);
    };
    let built = day.warm_ups(starter);
    let built = built.map_err(|refusal| KioskError::Usage(refusal.to_string()))?;
    let gaps = u32::try_from(built.rungs.len())
        .unwrap_or(u32::MAX)
        .saturating_sub(2);
    let wanted = day.habit.last_s + gaps.saturating_mul(day.habit.apart_s);
    let wait = wanted.saturating_sub(u32::from(starter.before) * of.attempt_s);
    let now = start - chrono::TimeDelta::seconds(i64::from(wait));
    Ok(Some((wait, now)))
}

/// An opener that the record does not support, and what it does support.
fn unsupported(
    kiosk: &Kiosk,
    day: &MeetDay,
    of: &MeetFlight,
    starter: &Starter,
) -> Option<(Mass, Option<Mass>)> {
    let (gym, state) = (kiosk.gym(), kiosk.state());
    let own = gym.lifters.iter().find(|own| own.name == starter.lifter)?;
    let supported = supports((gym, state), own, &of.lift, (1, day.date));
    let most = supported.unwrap_or(UNTRIED_MAX);
    (starter.opener > most).then_some((starter.opener, supported))
}

/// The pattern that was named, else the lifter's own.
fn pattern(gym: &Gym, lifter: &Lifter, named: Option<&str>) -> Result<Pattern, KioskError> {
    let wanted = named.unwrap_or(&lifter.ladder);
    let found = gym.patterns.iter().find(|p| p.name == wanted);
    found.cloned().ok_or_else(|| {
        let names: Vec<&str> = gym.patterns.iter().map(|p| p.name.as_str()).collect();
        KioskError::Usage(format!(
            "no warm-up pattern is called {wanted}; there are {}",
            names.join(", ")
        ))
    })
}
