//! Reads a frame for a rehearsal: the one place that knows which screen shows what.
//!
//! Refuses: what the screen does not show.
use super::answer::{Answer, Believed, BothSides};
use crate::kiosk::Kiosk;
use domain::LengthUnit;
use domain::state::{Entered, LiftRun};
use view::draw::{BarDrawing, Change, Fate};
use view::{Frame, Language, Screen};

/// What `frame` shows; the drawn buttons and texts are left to whoever sees them.
pub(super) fn read(kiosk: &Kiosk, frame: &Frame) -> Answer {
    let filled = |text: &String| Some(text.clone()).filter(|text| !text.is_empty());
    let mut answer = Answer {
        screen: name(&frame.screen),
        lifter: filled(&frame.lifter),
        lift: filled(&frame.lift),
        warnings: filled(&frame.notice).into_iter().collect(),
        sets_logged: sets_logged(kiosk),
        ..Answer::default()
    };
    match &frame.screen {
        Screen::SetUp(setup) => {
            answer.warnings.extend(setup.warnings.iter().cloned());
            answer.hole = setup.hole.parse().ok();
            of_run(&mut answer, kiosk, &frame.lifter);
        }
        Screen::Bar(bar) => {
            answer.load = Some(format!("{} {}", bar.load, bar.unit));
            answer.reps = number(&bar.reps);
            answer.hole = bar.hole.parse().ok();
            answer.warnings.extend(filled(&bar.caution));
            of_run(&mut answer, kiosk, &frame.lifter);
            order(
                &mut answer,
                frame.language,
                &bar.unit,
                (&bar.bar, &bar.change),
            );
        }
        Screen::Rest(rest) => {
            answer.load = Some(format!("{} {}", rest.load, rest.unit));
            answer.reps = number(&rest.reps);
            answer.rest_s = seconds(&rest.left);
            of_run(&mut answer, kiosk, &frame.lifter);
            order(
                &mut answer,
                frame.language,
                &rest.unit,
                (&rest.bar, &rest.change),
            );
        }
        Screen::Settle(settle) => {
            answer.rest_s = seconds(&settle.left);
            answer.warnings.extend(filled(&settle.caution));
        }
        Screen::Stop(stop) => answer.warnings.extend(filled(&stop.advice)),
        Screen::Choose(_)
        | Screen::Entry(_)
        | Screen::End(_)
        | Screen::Floor(_)
        | Screen::History(_)
        | Screen::Why(_)
        | Screen::Meet(_)
        | Screen::List(_)
        | Screen::Page(_)
        | Screen::Typing(_) => {}
    }
    answer
}

/// The screen's name, as `pinladder picture` has it.
fn name(screen: &Screen) -> &'static str {
    match screen {
        Screen::Choose(_) => "choose",
        Screen::SetUp(_) => "setup",
        Screen::Bar(_) => "bar",
        Screen::Entry(_) => "entry",
        Screen::Rest(_) => "rest",
        Screen::Stop(_) => "stop",
        Screen::Settle(_) => "settle",
        Screen::End(_) => "end",
        Screen::Floor(_) => "floor",
        Screen::History(_) => "history",
        Screen::Why(_) => "why",
        Screen::Meet(_) => "meet",
        Screen::List(_) => "list",
        Screen::Page(_) => "page",
        Screen::Typing(_) => "typing",
    }
}

/// Sets that stand, of all lifts.
fn sets_logged(kiosk: &Kiosk) -> usize {
    let is_set = |what: &Entered| matches!(what, Entered::Set { .. });
    let sets = |run: &LiftRun| run.passed().filter(|entry| is_set(&entry.what)).count();
    kiosk.state().lifts.values().map(sets).sum()
}

/// Rack, bar and mats of the lift that is shown.
fn of_run(answer: &mut Answer, kiosk: &Kiosk, lifter: &str) {
    let Some(run) = kiosk.state().lift_of(lifter, kiosk.date()) else {
        return;
    };
    answer.rack = Some(run.sheet.rack.clone());
    answer.bar = Some(run.sheet.bar.name.clone());
    answer.mats = run.sheet.pins.as_ref().map(|pins| {
        let words = pins.mats.iter().map(|mat| mat.words(LengthUnit::Mm));
        words.collect()
    });
}

/// What must be on the bar, what is on it, and what the hands have to do; both sides alike.
fn order(answer: &mut Answer, say: Language, unit: &str, (bar, change): (&BarDrawing, &Change)) {
    let with_unit = |label: &str| {
        if label.contains(' ') {
            label.to_owned()
        } else {
            format!("{label} {unit}")
        }
    };
    let between = if say == Language::German {
        " · "
    } else {
        ", "
    };
    let listed = |text: &str| -> Vec<String> {
        let labels = text.split(between).filter(|label| !label.is_empty());
        labels.map(with_unit).collect()
    };
    let of_fate = |fates: &[Fate]| -> Vec<String> {
        let plates = bar.plates.iter().filter(|p| fates.contains(&p.fate));
        plates.map(|plate| with_unit(&plate.label)).collect()
    };
    let stack = of_fate(&[Fate::Stays, Fate::GoesOn]);
    let take_off = listed(&change.take_off);
    let mut on = of_fate(&[Fate::Stays]);
    on.extend(take_off.iter().rev().cloned());
    let both = |side: Vec<String>| BothSides {
        left: side.clone(),
        right: side,
    };
    answer.left = Some(stack.clone());
    answer.right = Some(stack);
    answer.take_off = Some(both(take_off));
    answer.put_on = Some(both(of_fate(&[Fate::GoesOn])));
    answer.believed = Some(Believed {
        left: on.clone(),
        right: on,
        in_doubt: false,
    });
}

/// "5 reps" as 5.
fn number(text: &str) -> Option<u8> {
    text.split(' ').next()?.parse().ok()
}

/// "2:10" as 130.
fn seconds(text: &str) -> Option<u32> {
    let (minutes, seconds) = text.split_once(':')?;
    Some(minutes.parse::<u32>().ok()? * 60 + seconds.parse::<u32>().ok()?)
}
