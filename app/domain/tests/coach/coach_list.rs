//! The coach's list: who waits comes first, each with the reason, and an answer takes them off it.
use crate::fill::{Life, coached, date};
use crate::gym::kg;
use domain::Command;
use domain::coach_word::{CoachSays, CoachWord};
use domain::event::Hold;
use domain::next::coach_list::{Concern, coach_list};
use domain::plausible::Odd;

fn say(what: CoachSays) -> Command {
    Command::SayCoach(Box::new(CoachWord {
        lifter: "Ines".into(),
        what,
        note: "by telephone".into(),
    }))
}

/// The concerns of the list of one day, for the day after.
fn list(life: &Life, today: u64) -> Vec<Concern> {
    let lines = coach_list(&life.gym, &life.state, date(today), date(today + 1));
    lines.into_iter().map(|line| line.concern).collect()
}

/// A rack pull on day 0, as planned.
fn once() -> Life {
    let mut life = Life::new(coached());
    life.plan(0, "rack pull", 150);
    life.lift(0, |_, reps| (reps, Hold::Kept));
    life
}

#[test]
fn nothing_done_and_nothing_planned_is_an_empty_list() {
    assert!(list(&Life::new(coached()), 0).is_empty());
}

#[test]
fn what_goes_by_the_rules_is_told_and_waits_for_nobody() {
    let life = once();
    let lines = coach_list(&life.gym, &life.state, date(0), date(1));
    assert_eq!(lines.len(), 1);
    assert_eq!(
        lines[0].of,
        Some(("rack pull".into(), domain::Track::of_reps(5)))
    );
    assert!(lines[0].after.is_some(), "a ruling can be recorded");
    assert_eq!(lines[0].concern, Concern::Due);
    assert!(!Concern::Due.waits() && !Concern::Away.waits());
}

#[test]
fn a_plan_that_asks_another_load_waits_until_the_coach_has_ruled() {
    let mut life = once();
    life.plan(7, "rack pull", 190);
    let differs = Concern::Differs {
        date: date(7),
        planned: kg(190),
    };
    assert_eq!(list(&life, 1), [differs]);
    // Too far ahead to be looked at, and over: neither is told.
    assert_eq!(list(&life, 8), [Concern::Due]);
    let no = domain::LiftNo(1);
    let note = "as planned".into();
    let load = kg(190);
    life.obey(Command::OverrideNext { no, load, note });
    assert_eq!(list(&life, 1), [Concern::Due]);
}

#[test]
fn a_load_that_looks_wrong_stands_before_what_is_due_until_it_is_meant() {
    let mut life = once();
    life.plan(3, "barbell shrug", 300);
    let wrong = Concern::LooksWrong {
        date: date(3),
        load: kg(300),
        odd: Odd::Over(kg(220)),
    };
    assert_eq!(list(&life, 1), [wrong.clone(), Concern::Due]);
    assert!(wrong.waits());
    life.obey(say(CoachSays::LoadMeant {
        lift: "barbell shrug".into(),
        date: date(3),
        load: kg(300),
    }));
    assert_eq!(list(&life, 1), [Concern::Due]);
}

#[test]
fn who_is_hurt_stands_once_before_all_others() {
    let mut life = once();
    life.plan(3, "barbell shrug", 300);
    life.obey(say(CoachSays::Hurt { since: date(1) }));
    let hurt = Concern::Hurt {
        since: date(1),
        note: "by telephone".into(),
    };
    assert_eq!(list(&life, 1), [hurt]);
    life.obey(say(CoachSays::Fit));
    assert_eq!(list(&life, 1).len(), 2);
}

#[test]
fn who_was_away_is_told_and_who_begins_anew_waits() {
    let life = once();
    assert_eq!(list(&life, 26), [Concern::Away]);
    assert_eq!(list(&life, 100), [Concern::Anew]);
    assert!(Concern::Anew.waits());
}

#[test]
fn who_is_stuck_waits() {
    let mut life = Life::new(coached());
    for week in 0..30 {
        let before = list(&life, week * 7);
        if before.contains(&Concern::Stuck) {
            return;
        }
        life.plan(week * 7 + 1, "rack pull", 150);
        life.lift(week * 7 + 1, |_, _| (3, Hold::Kept));
    }
    panic!("nobody is stuck after thirty weeks of misses");
}
