//! `pinladder split`, `single` and `measure`: a coach's questions. Refuses: changing anything.
use super::sheet::known;
use super::{MeasureArgs, SingleArgs, SplitArgs, say};
use crate::clock::SystemClock;
use crate::error::KioskError;
use crate::folder::Folder;
use crate::kiosk::Kiosk;
use domain::split::advice;
use domain::{Gym, Lift, Lifter, Mass, MassUnit};
use serde::Serialize;
use std::io::Write;

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
    let say_in = args.said.language;
    if let (Some(split), Some(path)) = (&split, &args.svg) {
        let drawing = view::split_svg::split_svg(say_in, &lifter.name, lifter.unit, split);
        std::fs::write(path, drawing).map_err(KioskError::file(path))?;
    }
    let text = match (&split, args.json) {
        (Some(split), true) => {
            let doc = view::split_doc::split_doc(say_in, &lifter.name, lifter.unit, split);
            json(&doc)
        }
        (Some(split), false) => {
            view::split_doc::split_text(say_in, &lifter.name, lifter.unit, split)
        }
        (None, as_json) => {
            let rule = gym.coaching.split(&lifter.name);
            let doc = view::split_doc::no_split_doc(say_in, &lifter.name, lifter.unit, &rule);
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
    let say_in = args.said.language;
    let kiosk = Kiosk::open(folder, Box::new(SystemClock))?;
    let lift = match &args.lift {
        Some(name) => Some(find_lift(kiosk.gym(), name)?),
        None => None,
    };
    let Some(doc) = view::single_doc::single_doc(say_in, lift, load, args.reps, unit) else {
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
        view::single_doc::single_text(say_in, &doc)
    };
    say(out, &text);
    Ok(true)
}

pub(super) fn measure(
    folder: &Folder,
    args: &MeasureArgs,
    out: &mut dyn Write,
) -> Result<bool, KioskError> {
    let kiosk = Kiosk::open(folder, Box::new(SystemClock))?;
    let say_in = args.said.language;
    let measure = view::measure::measure(say_in, lifter(kiosk.gym(), &args.lifter)?);
    match &args.svg {
        None => say(out, &view::measure::measure_text(say_in, &measure)),
        Some(path) => {
            let drawing = view::measure_svg::measure_svg(say_in, &measure);
            std::fs::write(path, drawing).map_err(KioskError::file(path))?;
            say(out, &format!("{} is drawn\n", path.display()));
        }
    }
    Ok(true)
}

pub(super) fn json(doc: &impl Serialize) -> String {
    serde_json::to_string_pretty(doc).unwrap_or_default() + "\n"
}

pub(super) fn lifter<'g>(gym: &'g Gym, name: &str) -> Result<&'g Lifter, KioskError> {
    let name = known(gym, name)?;
    let found = gym.lifters.iter().find(|l| l.name == name);
    found.ok_or_else(|| KioskError::Usage(format!("no lifter is called {name}")))
}

pub(super) fn find_lift<'g>(gym: &'g Gym, name: &str) -> Result<&'g Lift, KioskError> {
    let lower = name.to_lowercase();
    let is_it = |name: &String| name.to_lowercase() == lower;
    let found = gym
        .lifts
        .iter()
        .find(|lift| is_it(&lift.name) || lift.also.iter().any(is_it));
    found.ok_or_else(|| {
        let names: Vec<&str> = gym.lifts.iter().map(|l| l.name.as_str()).collect();
        KioskError::Usage(format!(
            "no lift is called \"{name}\"; there are {}",
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
