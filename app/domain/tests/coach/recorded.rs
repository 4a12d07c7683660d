//! What is due is recorded, with its inputs and reason, and the coach can rule otherwise.
use crate::fill::{Life, coached, date};
use crate::gym::kg;
use domain::decide::{NOTE_MAX, Refusal};
use domain::event::{Hold, LiftNo};
use domain::next::here::{all_due, decided, decision};
use domain::next::{Decided, Step, Verdict, Why};
use domain::programme::RuleLine;
use domain::{Command, Fact, Mass, MassUnit, Moment, State, decide};

const NO: LiftNo = LiftNo(1);

/// Ines has done one day, the heavy one, well.
fn one_day() -> Life {
    let mut life = Life::new(coached());
    life.lift(0, |_, reps| (reps, Hold::Kept));
    life
}

fn due(life: &Life, days: u64) -> domain::next::Due {
    let ines = &life.gym.lifters[0];
    let due = decision(
        &life.gym,
        &life.state,
        ines,
        domain::next::here::TrackOf {
            lift: "rack pull",
            track: domain::Track::of_reps(5),
            bar: None,
        },
        date(days),
    );
    due.expect("something is due")
}

fn rule(life: &mut Life, load: i64, note: &str) {
    life.obey(Command::OverrideNext {
        no: NO,
        load: kg(load),
        note: note.into(),
    });
}

#[test]
fn it_is_an_event_with_its_inputs_and_its_reason() {
    let life = one_day();
    let last = &life.events.last().expect("events").fact;
    let Fact::NextDecided { no, decided } = last else {
        panic!("{last:?}")
    };
    assert_eq!(*no, NO);
    let told = "152.5 kg, up 2.5 kg: all reps with the back held";
    assert_eq!(decided.reason, told);
    assert_eq!(decided.rule, life.gym.coaching.rule("Ines", "rack pull"));
    assert_eq!(decided.decision.from, kg(150));
    assert_eq!(&State::replay(&life.events), &life.state);
}

#[test]
fn undo_of_the_last_set_takes_it_back_with_it() {
    let mut life = one_day();
    rule(&mut life, 155, "fast off the pins");
    life.obey(Command::Undo(NO));
    let run = &life.state.lifts[&NO];
    assert_eq!((run.is_over(), &run.next), (false, &None));
    let rung = run.next_rung().expect("under way");
    life.obey(Command::EnterSet {
        no: NO,
        rung,
        reps: 3,
        hold: Hold::Kept,
        holds: None,
    });
    let run = &life.state.lifts[&NO];
    let now = decided(&life.gym, &life.state, run).expect("decided anew");
    assert_eq!(now.decision.why, Why::TryAgain);
}

#[test]
fn the_coach_s_word_goes_before_the_rules_and_both_are_kept() {
    let mut life = one_day();
    rule(&mut life, 145, " slow off the pins ");
    let found = due(&life, 14);
    assert_eq!(
        found.sentence(MassUnit::Kg),
        "145 kg, the coach ruled: slow off the pins"
    );
    let load = (
        found.decision.verdict,
        found.decision.why,
        found.decision.load,
    );
    assert_eq!(load, (Verdict::Drop, Why::Coach, kg(145)));
    let next = life.state.lifts[&NO].next.clone().expect("kept");
    assert_eq!(next.decided.decision.load, Mass::of(MassUnit::Kg, 152_500));
    // The day sheet has it, and a second ruling replaces the first.
    for at in 1..4 {
        life.lift(at * 4, |_, reps| (reps, Hold::Kept));
    }
    let work = |life: &Life| {
        let entry = life.entries(16).remove(0);
        let sheet = entry.outcome.expect("a sheet");
        (entry.lift, sheet.rungs.last().expect("rungs").load)
    };
    assert_eq!(work(&life), ("rack pull".into(), kg(145)));
    rule(&mut life, 150, "on second thoughts");
    assert_eq!(work(&life).1, kg(150));
    // Done well, the load rises from the coach's, and is not taken for a lighter day.
    life.lift(16, |_, reps| (reps, Hold::Kept));
    let after = due(&life, 20).decision;
    assert_eq!((after.why, after.from), (Why::Well, kg(150)));
}

#[test]
fn a_break_eases_the_coach_s_load_too() {
    let mut life = one_day();
    rule(&mut life, 160, "a good day");
    let found = due(&life, 60);
    assert_eq!(
        (found.decision.verdict, found.decision.load),
        (Verdict::Ease, kg(135))
    );
}

/// A rule that changes counts from the next outing on: what was recorded stands, and what was
/// lifted by it is not taken for a lighter day.
#[test]
fn a_changed_rule_does_not_rewrite_what_was_decided() {
    let mut life = one_day();
    life.gym.coaching.rules = vec![RuleLine {
        step: Some(Step::Mass(kg(10))),
        ..RuleLine::default()
    }];
    assert_eq!(
        due(&life, 14).decision.load,
        Mass::of(MassUnit::Kg, 152_500)
    );
    for at in 1..=4 {
        life.lift(at * 4, |_, reps| (reps, Hold::Kept));
    }
    let now = due(&life, 20).decision;
    assert_eq!(
        (now.why, now.load),
        (Why::Well, Mass::of(MassUnit::Kg, 162_500))
    );
}

#[test]
fn rulings_are_refused_with_a_reason() {
    let mut life = one_day();
    let told = |life: &Life, no, load, note: &str| {
        let note = note.into();
        let command = Command::OverrideNext { no, load, note };
        decide(&life.state, command, Moment(0)).expect_err("refused")
    };
    assert_eq!(told(&life, LiftNo(7), kg(100), "so"), Refusal::NoSuchLift);
    assert_eq!(
        told(&life, NO, kg(100), "  ").to_string(),
        "the note is missing; say why in a few words"
    );
    let long = "x".repeat(NOTE_MAX + 1);
    assert_eq!(
        told(&life, NO, kg(100), &long).to_string(),
        "the note has 201 characters; use at most 200"
    );
    assert!(matches!(
        told(&life, NO, Mass::ZERO, "so"),
        Refusal::LoadOutOfRange(_)
    ));
    life.obey(Command::Undo(NO));
    assert_eq!(told(&life, NO, kg(100), "so"), Refusal::NothingDecided);
}

#[test]
fn a_decision_is_recorded_once_and_of_its_own_lift_alone() {
    let life = one_day();
    let kept: Box<Decided> = Box::new(life.state.lifts[&NO].next.clone().expect("kept").decided);
    let again = |state: &State, decided: Box<Decided>| {
        decide(state, Command::DecideNext { no: NO, decided }, Moment(0))
    };
    assert_eq!(
        again(&life.state, kept.clone()),
        Err(Refusal::StaleDecision)
    );
    let mut undone = life.state.clone();
    for event in decide(&undone.clone(), Command::Undo(NO), Moment(0)).expect("undone") {
        undone.apply(&event);
    }
    assert_eq!(again(&undone, kept), Err(Refusal::StaleDecision));
}

#[test]
fn all_that_is_due_stands_in_one_list() {
    let mut life = one_day();
    life.lift(4, |_, reps| (reps, Hold::Kept));
    life.plan(8, "deadlift", 140);
    life.lift(8, |_, reps| (reps - 1, Hold::Kept));
    rule(&mut life, 155, "fast off the pins");
    let all = all_due(&life.gym, &life.state, &life.gym.lifters[0], date(9));
    let told: Vec<String> = all
        .iter()
        .map(|one| format!("{}: {}", one.lift, one.due.sentence(MassUnit::Kg)))
        .collect();
    assert_eq!(
        told,
        [
            "rack pull: 155 kg, the coach ruled: fast off the pins",
            "barbell shrug: 170 kg, up 5 kg: all reps with the back held",
            "deadlift: 140 kg again: 4 of 5 reps, try 1 of 2",
        ]
    );
}
