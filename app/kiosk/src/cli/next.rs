//! `pinladder next`: what is due, and the coach's ruling. Refuses: a ruling without a note, or
//! where nothing was decided.
use super::coach::{find_lift, lifter, load as load_of};
use super::coach_word::word;
use super::{NextArgs, say};
use crate::clock::SystemClock;
use crate::error::KioskError;
use crate::folder::Folder;
use crate::kiosk::Kiosk;
use crate::owner::Owner;
use crate::steady::Steady;
use domain::next::here::{LiftDue, all_due};
use domain::{Command, Lift, State, TrackName};
use std::io::Write;

pub(super) fn next(
    folder: &Folder,
    args: &NextArgs,
    out: &mut dyn Write,
) -> Result<bool, KioskError> {
    let kiosk = Kiosk::open(folder, Box::new(SystemClock))?;
    let gym = kiosk.gym().clone();
    let tomorrow = kiosk.date().succ_opt().unwrap_or_else(|| kiosk.date());
    let date = args.date.unwrap_or(tomorrow);
    let Some(name) = &args.lifter else {
        let (language, days) = (args.said.language, (kiosk.date(), date));
        let text = if args.json {
            let doc = view::all_due_doc(language, &gym, kiosk.state(), days);
            view::all_due_json(&doc)
        } else {
            view::all_due_text(language, &gym, kiosk.state(), days)
        };
        say(out, &text);
        return Ok(true);
    };
    let lifter = lifter(&gym, name)?;
    // What was typed wrong is told before what it was typed for.
    let load = args.load.as_deref().map(load_of).transpose()?;
    if let Some((load, _)) = load {
        domain::load_in_range(load).map_err(KioskError::Refused)?;
    }
    let kiosk = match word(args, &kiosk, lifter)? {
        None => kiosk,
        Some(word) => {
            drop(kiosk);
            let mut owner = Owner::open(folder.open_journal()?)?;
            let clock = Steady::start(Box::new(SystemClock), &mut owner);
            owner.command(&Command::SayCoach(Box::new(word)), clock.now())?;
            drop(owner);
            Kiosk::open(folder, Box::new(SystemClock))?
        }
    };
    let lift = args.lift.as_deref().map(|name| find_lift(&gym, name));
    let lift = lift.transpose()?;
    // A load that is meant may be of a lift of which nothing was done so far.
    let lift = lift.filter(|_| !args.word.meant);
    let find = |state: &State| -> Result<Vec<LiftDue>, KioskError> {
        let all = all_due(&gym, state, lifter, date);
        wanted(all, (lift, args.track.as_deref()), &lifter.name)
    };
    let mut due = find(kiosk.state())?;
    if let (Some((load, _)), Some(note)) = (load, &args.note) {
        one_track(&due)?;
        drop(kiosk);
        let mut owner = Owner::open(folder.open_journal()?)?;
        let last = due.iter().filter_map(|one| one.past.last());
        let Some(no) = last.max_by_key(|o| (o.date, o.no)).map(|o| o.no) else {
            return Err(KioskError::Refused(domain::Refusal::NothingDecided));
        };
        let note = note.clone();
        let clock = Steady::start(Box::new(SystemClock), &mut owner);
        owner.command(&Command::OverrideNext { no, load, note }, clock.now())?;
        due = find(owner.state())?;
    }
    let doc = view::next_doc(args.said.language, &gym, lifter, date, &due);
    let text = if args.json {
        view::next_json(&doc)
    } else {
        view::next_text(args.said.language, &doc)
    };
    say(out, &text);
    Ok(true)
}

/// Those of one lift and one track by name, if one is asked for.
fn wanted(
    all: Vec<LiftDue>,
    (lift, track): (Option<&Lift>, Option<&str>),
    lifter: &str,
) -> Result<Vec<LiftDue>, KioskError> {
    let Some(lift) = lift else { return Ok(all) };
    let (of, others): (Vec<_>, Vec<_>) = all.into_iter().partition(|due| due.lift == lift.name);
    if of.is_empty() {
        let mut names: Vec<String> = others.into_iter().map(|due| due.lift).collect();
        names.dedup();
        let there = match names.as_slice() {
            [] => "nothing is due yet".into(),
            names => format!("there are {}", names.join(", ")),
        };
        let lift = &lift.name;
        return Err(KioskError::Usage(format!(
            "nothing of {lifter}'s {lift} is due; {there}"
        )));
    }
    let Some(track) = track else { return Ok(of) };
    let is_it = |due: &LiftDue| name_of(due).to_lowercase() == track.to_lowercase();
    let (found, others): (Vec<_>, Vec<_>) = of.into_iter().partition(is_it);
    if found.is_empty() {
        let (lift, there) = (&lift.name, tracks(&others));
        return Err(KioskError::Usage(format!(
            "no track of {lifter}'s {lift} is called \"{track}\"; there are {there}"
        )));
    }
    Ok(found)
}

/// A ruling is for one track: where several have names, somebody says which.
fn one_track(due: &[LiftDue]) -> Result<(), KioskError> {
    let Some((first, others)) = due.split_first() else {
        return Ok(());
    };
    if others.iter().all(|one| one.track.name == first.track.name) {
        return Ok(());
    }
    let there = tracks(due);
    Err(KioskError::Usage(format!(
        "say which track is ruled with --track; there are {there}"
    )))
}

/// "none" for the one without a name.
fn name_of(due: &LiftDue) -> &str {
    due.track.name.as_ref().map_or("none", TrackName::as_str)
}

fn tracks(due: &[LiftDue]) -> String {
    let mut names: Vec<&str> = due.iter().map(name_of).collect();
    names.dedup();
    names.join(", ")
}
