//! `pinladder split`, `single`, `measure` and `meet`: a coach's questions. Refuses: changing anything.
use super::sheet::known;
use super::{MeetArgs, SingleArgs, SplitArgs, say};
use crate::clock::SystemClock;
use crate::error::KioskError;
use crate::folder::Folder;
use crate::kiosk::Kiosk;
use domain::ladder::{WorkSet, build};
use domain::meet::{Flight, Habit, Taken, time};
use domain::split::advice;
use domain::{Gym, Lift, Lifter, Mass, MassUnit};
use serde::Serialize;
use std::io::Write;
use std::path::Path;

pub(super) fn split(
    folder: &Folder,
    args: &SplitArgs,
    out: &mut dyn Write,
) -> Result<bool, KioskError> {
    let kiosk = Kiosk::open(folder, Box::new(SystemClock))?;
    let gym = kiosk.gym();
    let lifter = lifter(gym, &args.lifter)?;
    let tomorrow = kiosk.date().succ_opt().unwrap_or_else(|| kiosk.date());
    let date = args.date.unwrap_or(tomorrow);
    let split = advice(gym, kiosk.state(), lifter, date);
    if let (Some(split), Some(path)) = (&split, &args.svg) {
        let drawing = view::split_svg::split_svg(&lifter.name, lifter.unit, split);
        std::fs::write(path, drawing).map_err(KioskError::file(path))?;
    }
    let text = match (&split, args.json) {
        (Some(split), true) => json(&view::split::split_doc(&lifter.name, lifter.unit, split)),
        (Some(split), false) => view::split::split_text(&lifter.name, lifter.unit, split),
        (None, as_json) => {
            let rule = gym.coaching.split(&lifter.name);
            let doc = view::split::no_split_doc(&lifter.name, lifter.unit, &rule);
            if as_json {
                json(&doc)
            } else {
                format!("{}: {}\n", lifter.name, doc.sentence)
            }
        }
    };
    say(out, &text);
    Ok(true)
}

pub(super) fn single(
    folder: &Folder,
    args: &SingleArgs,
    out: &mut dyn Write,
) -> Result<bool, KioskError> {
    let (load, unit) = load(&args.load)?;
    let kiosk = Kiosk::open(folder, Box::new(SystemClock))?;
    let lift = match &args.lift {
        Some(name) => Some(find_lift(kiosk.gym(), name)?),
        None => None,
    };
    let Some(doc) = view::single::single_doc(lift, load, args.reps, unit) else {
        let most = domain::single::REPS_MOST;
        return Err(KioskError::Usage(format!(
            "the equations say nothing of {} × {}{}; ask for 2 to {most} reps of a lift that is no \
             fast pull",
            load.words(unit),
            args.reps,
            lift.map(|lift| format!(" of the {}", lift.name))
                .unwrap_or_default()
        )));
    };
    let text = if args.json {
        json(&doc)
    } else {
        view::single::single_text(&doc)
    };
    say(out, &text);
    Ok(true)
}

pub(super) fn measure(
    folder: &Folder,
    name: &str,
    svg: Option<&Path>,
    out: &mut dyn Write,
) -> Result<bool, KioskError> {
    let kiosk = Kiosk::open(folder, Box::new(SystemClock))?;
    let measure = view::measure::measure(lifter(kiosk.gym(), name)?);
    match svg {
        None => say(out, &view::measure::measure_text(&measure)),
        Some(path) => {
            let drawing = view::measure_svg::measure_svg(&measure);
            std::fs::write(path, drawing).map_err(KioskError::file(path))?;
            say(out, &format!("{} is drawn\n", path.display()));
        }
    }
    Ok(true)
}

pub(super) fn meet(
    folder: &Folder,
    args: &MeetArgs,
    out: &mut dyn Write,
) -> Result<bool, KioskError> {
    let kiosk = Kiosk::open(folder, Box::new(SystemClock))?;
    let gym = kiosk.gym();
    let lifter = lifter(gym, &args.lifter)?;
    let lift = find_lift(gym, &args.lift)?;
    let told = load(&args.opener)?;
    let missing = |what: &str| KioskError::Usage(format!("{} has no {what}", lifter.name));
    let wanted = args.ladder.as_ref().unwrap_or(&lifter.ladder);
    let pattern = gym.patterns.iter().find(|p| p.name == *wanted);
    let pattern = pattern.ok_or_else(|| {
        let names: Vec<&str> = gym.patterns.iter().map(|p| p.name.as_str()).collect();
        KioskError::Usage(format!(
            "no warm-up pattern is called {wanted}; there are {}",
            names.join(", ")
        ))
    })?;
    let (bar, plates) = domain::day::loaded_with(gym, lifter, lift).ok_or_else(|| {
        missing("rack, bar or plate set in the gym's files; check them with pinladder check")
    })?;
    let work = WorkSet {
        load: told.0,
        sets: 1,
        reps: 1,
    };
    let built = build(&work, pattern, bar, plates)
        .map_err(|refusal| KioskError::Usage(refusal.to_string()))?;
    let flight = Flight {
        before: args.before,
        attempt_s: args.attempt,
        called: args.called,
        elapsed_s: args
            .elapsed
            .unwrap_or(u32::from(args.called) * args.attempt),
    };
    let taken = Taken {
        count: args.taken,
        since_s: args.since,
    };
    let loads: Vec<Mass> = built.rungs.iter().map(|rung| rung.load).collect();
    let warm_ups = loads.split_last().map_or(&[][..], |(_, warm_ups)| warm_ups);
    let timed = time(&flight, &Habit::USUAL, warm_ups, told.0, &taken)
        .map_err(|refusal| KioskError::Usage(refusal.to_string()))?;
    let place = (args.before, args.called);
    let doc = view::meet::meet_doc(&lift.name, lifter.unit, told, &built, &timed, place);
    let text = if args.json {
        json(&doc)
    } else {
        view::meet::meet_text(&doc)
    };
    say(out, &text);
    Ok(true)
}

fn json(doc: &impl Serialize) -> String {
    serde_json::to_string_pretty(doc).unwrap_or_default() + "\n"
}

pub(super) fn lifter<'g>(gym: &'g Gym, name: &str) -> Result<&'g Lifter, KioskError> {
    let name = known(gym, name)?;
    let found = gym.lifters.iter().find(|l| l.name == name);
    found.ok_or_else(|| KioskError::Usage(format!("no lifter is called {name}")))
}

fn find_lift<'g>(gym: &'g Gym, name: &str) -> Result<&'g Lift, KioskError> {
    let lower = name.to_lowercase();
    let found = gym.lifts.iter().find(|l| l.name.to_lowercase() == lower);
    found.ok_or_else(|| {
        let names: Vec<&str> = gym.lifts.iter().map(|l| l.name.as_str()).collect();
        KioskError::Usage(format!(
            "no lift is called {name}; there are {}",
            names.join(", ")
        ))
    })
}

/// A load as a coach writes it, with its unit.
pub(super) fn load(text: &str) -> Result<(Mass, MassUnit), KioskError> {
    Mass::read_with_unit(text).map_err(|fault| {
        KioskError::Usage(format!(
            "the load \"{text}\" {fault}; write it as in \"180 kg\" or \"400 lb\""
        ))
    })
}
