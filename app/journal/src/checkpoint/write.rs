//! Writes a state as lines: a word, then JSON; facts as they would lie in the journal.
use super::elsewhere::Elsewhere;
use super::form::{Alone, Bar, Clocks, Run};
use super::past::Past;
use crate::wire;
use domain::believed::{BarWord, BelievedBar, Said, Stacks};
use domain::coach_word::{CoachSays, CoachWord, Health};
use domain::state::LiftRun;
use domain::{Fact, State};
use serde::Serialize;
use std::fmt::Write as _;

/// All lines of a state. What a state has is named here one by one, so that nothing new is left
/// out unseen: with a new field raise `FORMAT`.
pub(super) fn lines(text: &mut String, state: &State) {
    let State {
        files,
        plan,
        lifts,
        open: _,
        past,
        bars,
        rotations,
        holes,
        shown,
        unshown,
        called_since,
        health,
        last_no,
        times,
        touched,
        elsewhere,
    } = state;
    let alone = Alone {
        last_no: *last_no,
        sets: past.sets,
        lifts: past.count,
        touched: touched.iter().map(|(no, at)| (no.0, at.0)).collect(),
        unshown: unshown.map(super::form::unshown),
        called_since: called_since
            .iter()
            .map(|at| (at.rack.clone(), at.bar.clone()))
            .collect(),
        holes: holes
            .iter()
            .map(|(rack, (day, hole))| (rack.clone(), day.to_epoch_days(), *hole))
            .collect(),
    };
    line(text, "alone", &alone);
    line(text, "clocks", &Clocks::of(times));
    for (name, own) in files {
        let (name, own) = (name.clone(), own.clone());
        fact(text, &Fact::FileTaken { name, text: own });
    }
    let rows = plan.values().flatten().cloned().collect();
    let name = String::new();
    fact(text, &Fact::PlanTaken { name, rows });
    for (lifter, own) in &past.lifters {
        line(text, "past", &Past::of(lifter, own));
    }
    for run in lifts.values() {
        lift(text, run);
    }
    for (name, own) in bars {
        bar(text, name, own);
    }
    for (station, turns) in rotations {
        let (station, turns) = (station.clone(), turns.clone());
        fact(text, &Fact::RotationPlanned { station, turns });
    }
    if let Some(shown) = shown {
        fact(text, &Fact::ScreenShown(Box::new(shown.clone())));
    }
    for (lifter, own) in health {
        said(text, lifter, own);
    }
    for (kiosk, taken) in elsewhere {
        line(text, "elsewhere", &Elsewhere::of(kiosk, taken));
    }
}

fn line(text: &mut String, word: &str, body: &impl Serialize) {
    let body = serde_json::to_string(body).expect("structs of numbers and texts always write");
    text.push_str(word);
    text.push(' ');
    text.push_str(&body);
    text.push('\n');
}

fn fact(text: &mut String, fact: &Fact) {
    let written = wire::encode(fact);
    let wrote = writeln!(
        text,
        "fact {} {} {}",
        written.version, written.kind, written.body
    );
    wrote.expect("a text always grows");
}

fn lift(text: &mut String, run: &LiftRun) {
    line(text, "lift", &Run::of(run));
    let no = run.no;
    let sheet = Box::new(run.sheet.clone());
    let followed = run.followed.iter().map(|(_, rungs)| rungs);
    for rungs in run.before.iter().chain(followed) {
        let mut earlier = sheet.clone();
        earlier.rungs.clone_from(rungs);
        fact(text, &Fact::LiftBegun { no, sheet: earlier });
    }
    fact(text, &Fact::LiftBegun { no, sheet });
    let Some(next) = &run.next else { return };
    let decided = Box::new(next.decided.clone());
    fact(text, &Fact::NextDecided { no, decided });
    if let Some(ruled) = &next.ruled {
        let (load, note) = (ruled.load, ruled.note.clone());
        fact(text, &Fact::NextOverridden { no, load, note });
    }
}

fn bar(text: &mut String, name: &str, own: &BelievedBar) {
    let BelievedBar {
        rack,
        holds,
        said,
        at,
        date,
        ordered,
        doubted,
        before,
    } = own;
    let beside = Bar {
        at: at.0,
        doubted: *doubted,
        ordered: ordered.is_some(),
        before: before.is_some(),
    };
    line(text, "bar", &beside);
    let mut word = |said: Said, holds: &Stacks| {
        let word = BarWord {
            rack: rack.clone(),
            bar: name.to_owned(),
            date: *date,
            holds: holds.clone(),
            said,
            contradicts: Vec::new(),
        };
        fact(text, &Fact::BarSaid(Box::new(word)));
    };
    word(*said, holds);
    for other in [ordered, before].into_iter().flatten() {
        word(Said::Stated, other);
    }
}

fn said(text: &mut String, lifter: &str, own: &Health) {
    let Health { hurt, ill, meant } = own;
    line(text, "health", &lifter);
    let mut word = |what: CoachSays, note: &str| {
        let word = CoachWord {
            lifter: lifter.to_owned(),
            what,
            note: note.to_owned(),
        };
        fact(text, &Fact::CoachSaid(Box::new(word)));
    };
    if let Some(hurt) = hurt {
        word(CoachSays::Hurt { since: hurt.since }, &hurt.note);
    }
    for ill in ill {
        word(CoachSays::Ill(*ill), "");
    }
    for (lift, date, load) in meant {
        let (lift, date, load) = (lift.clone(), *date, *load);
        word(CoachSays::LoadMeant { lift, date, load }, "");
    }
}
