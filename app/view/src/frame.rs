//! One whole face of the kiosk: who, which screen, who else is under way, what undo would do.
use crate::aside::Aside;
use crate::bar::at_the_bar;
use crate::choose::choose;
use crate::end::end;
use crate::entry::pad_of;
use crate::face::{Chip, Frame, Screen};
use crate::floor::floor;
use crate::holds::holds;
use crate::language::p;
use crate::meet_day::can_undo;
use crate::pace::{Pace, pace};
use crate::rest::rest;
use crate::scene::Scene;
use crate::settle::settle;
use crate::setup::{SetUp, fresh, set_up};
use crate::stage::{Due, PadOpen, Stage};
use crate::stop::stop;
use crate::turn_pad::turn_pad;
use domain::attendance::TurnWord;
use domain::rotation::station_of;
use domain::state::{Entered, LiftRun};

/// The most chips.
const CHIPS_MAX: usize = 4;

/// The frame of now.
#[must_use]
pub fn frame(stage: &Stage, scene: &Scene<'_>) -> Frame {
    let due = stage.due(scene);
    let lifter = stage.lifter.clone().unwrap_or_default();
    let (undo, undo_detail) = undo(stage, scene, &due);
    let say = scene.language();
    let turn = stage.with_turn(scene, &due).map(|_| say.say(p::TURN_PAD));
    let aside = stage.aside.as_ref().unwrap_or(&Aside::Panel);
    let lift = match &due {
        Due::All | Due::Floor => String::new(),
        Due::Aside => aside.lift(scene),
        Due::Fresh(entry) => entry.map(|e| say.shipped(&e.lift)).unwrap_or_default(),
        Due::SetUp(run)
        | Due::Pad(run, ..)
        | Due::Stop(run)
        | Due::Settle(run, _)
        | Due::Rest(run, ..)
        | Due::Bar(run, _)
        | Due::End(run) => say.tracked(&run.sheet.lift, run.sheet.track),
    };
    let screen = match due {
        Due::All => Screen::Choose(choose(scene)),
        Due::Floor => Screen::Floor(floor(scene)),
        Due::Aside => aside.screen(scene, &lifter),
        Due::Fresh(entry) => Screen::SetUp(fresh(scene, entry, &lifter)),
        Due::SetUp(run) => Screen::SetUp(SetUp {
            main: say.say(p::BACK_TO_BAR),
            ..set_up(say, &run.sheet, Some(run))
        }),
        Due::Pad(run, rung, pad) => pad_screen(scene, run, rung, &pad),
        Due::Stop(run) => Screen::Stop(stop(say, run)),
        Due::Settle(run, rung) => match scene.choices(run) {
            Some(choices) => Screen::Settle(settle(scene, run, &choices)),
            None => Screen::Rest(rest(scene, run, rung, 0)),
        },
        Due::Rest(run, rung, left) => Screen::Rest(rest(scene, run, rung, left)),
        Due::Bar(run, rung) => Screen::Bar(at_the_bar(scene, run, rung)),
        Due::End(run) => Screen::End(end(scene, run)),
    };
    Frame {
        language: say,
        look: scene.chosen().look(scene.clock),
        chips: chips(scene, &lifter, stage.is_early(scene)),
        lifter,
        lift,
        clock: scene.clock.into(),
        undo,
        undo_detail,
        turn: turn.unwrap_or_default(),
        notice: scene.notice.into(),
        screen,
        beside: None,
        number: 0,
        answers: 0,
        asleep: false,
        shift: (0, 0),
    }
}

/// A pad, for the rung of now; without one only the turn can be spoken of.
fn pad_screen(scene: &Scene<'_>, run: &LiftRun, rung: Option<usize>, pad: &PadOpen) -> Screen {
    match (pad, rung) {
        (PadOpen::Holds(plates), Some(rung)) => Screen::Holds(holds(scene, run, rung, plates)),
        (PadOpen::Reps | PadOpen::Moved { .. } | PadOpen::Effort, Some(rung)) => {
            Screen::Entry(pad_of(scene.language(), run, rung, pad))
        }
        (PadOpen::Turn, _)
        | (PadOpen::Reps | PadOpen::Moved { .. } | PadOpen::Holds(_) | PadOpen::Effort, None) => {
            Screen::Turn(turn_pad(scene, run, rung))
        }
    }
}

fn undo(stage: &Stage, scene: &Scene<'_>, due: &Due<'_>) -> (String, String) {
    let say = scene.language();
    let opened = matches!(stage.settle, Some((_, true)));
    if matches!(due, Due::Pad(..) | Due::SetUp(_) | Due::Aside) || opened {
        let meet = stage.aside == Some(Aside::Meet) && can_undo(scene);
        let word = if meet { p::UNDO } else { p::BACK };
        return (say.say(word), String::new());
    }
    let Some(run) = stage.undoes(scene) else {
        return Default::default();
    };
    let said = run.attendance.said();
    let bar = scene.word_to_undo(run);
    let bar = bar.filter(|_| !stage.undoes_said(run));
    let what = match run.entries.last().map(|e| e.what) {
        _ if bar.is_some() => say.say(p::THE_WORD),
        _ if run.attendance.claimed && run.was_rested() => say.say(p::MINE),
        _ if run.attendance.claimed || stage.takes_back_go(scene, run) => say.say(p::GO_NOW),
        _ if said == Some(TurnWord::Later) => say.say(p::LATER),
        _ if said == Some(TurnWord::Longer) => say.say(p::LONGER),
        _ if said == Some(TurnWord::Leaving) => say.say(p::LEAVE),
        _ if said == Some(TurnWord::Back) => say.say(p::I_AM_BACK),
        _ if stage.asks_load_again(scene, run) => say.say(p::THE_CHOICE),
        None => say.say(p::THE_START),
        Some(Entered::Stopped | Entered::LeftOpen) => say.say(p::THE_END),
        Some(Entered::WentOn) => say.say(p::GOING_ON),
        Some(Entered::Skipped) => say.say(p::THE_SKIP),
        Some(Entered::Settled) => say.say(p::THE_CHOICE),
        Some(Entered::Set { reps, .. }) => {
            let at = run.passed().count().saturating_sub(1);
            run.sheet
                .rungs
                .get(at)
                .map(|r| say.set(r.load, run.sheet.unit, reps))
                .unwrap_or_default()
        }
    };
    // Whoever looks at the bar says what it holds, not its next lifter.
    let whose = bar.as_ref().unwrap_or(&run.sheet.lifter);
    let who = if stage.lifter.as_ref() != Some(&run.sheet.lifter) {
        format!("{whose}: ")
    } else {
        String::new()
    };
    (say.say(p::UNDO), format!("{who}{what}"))
}

/// All who are under way at the shown lifter's bar, the shown one too, in the order in which they
/// began, so that nobody's place changes; elsewhere all who are under way. `early`: the shown one is
/// at the bar before the rest was over.
fn chips(scene: &Scene<'_>, lifter: &str, early: bool) -> Vec<Chip> {
    let mut open: Vec<&LiftRun> = scene.runs().filter(|run| !run.is_over()).collect();
    let own = open
        .iter()
        .find(|run| run.sheet.lifter == lifter)
        .map(|run| station_of(run));
    // Where there is no room for all, those at other bars are left out; nobody's place changes.
    open.sort_by_key(|run| (own.is_some() && own != Some(station_of(run)), run.no));
    open.truncate(CHIPS_MAX);
    open.sort_by_key(|run| run.no);
    if open.len() == 1 && open[0].sheet.lifter == lifter {
        return Vec::new();
    }
    let chip = |run: &LiftRun| {
        let shown = run.sheet.lifter == lifter;
        let (pace, word) = if shown && early {
            (Pace::Ready, scene.language().say(p::UP))
        } else {
            standing(scene, run)
        };
        Chip {
            lifter: run.sheet.lifter.clone(),
            word,
            pace,
            shown,
        }
    };
    open.into_iter().map(chip).collect()
}

/// What a lifter is doing, among those who share the bar: "up", "next", "3rd", "rests 1:10".
fn standing(scene: &Scene<'_>, run: &LiftRun) -> (Pace, String) {
    let say = scene.language();
    let (pace, word) = pace(scene, run);
    let order = scene.state.rotation(&station_of(run));
    let place = order.iter().position(|turn| turn.no == run.no);
    match (pace, place) {
        (Pace::Resting, _) => (pace, say.fill(p::RESTS, &[&word])),
        (Pace::Ready, Some(0)) => (pace, say.say(p::UP)),
        (Pace::Ready, Some(1)) => (pace, say.say(p::NEXT_UP)),
        (Pace::Ready, Some(at)) => (Pace::Fresh, say.place(at + 1)),
        (_, _) => (pace, word),
    }
}
