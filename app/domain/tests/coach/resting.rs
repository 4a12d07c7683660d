//! Where the bar lies between sets: nobody is told to carry a loaded bar to another hole, to the
//! hooks or to the floor. The rude one goes out of turn, undoes, builds the bar before the pins are
//! moved, and says so.
use crate::fill::{Life, coached};
use crate::groups::{group, row, take};
use crate::gym::kg;
use domain::believed::{Said, Stacks};
use domain::decide::word_of;
use domain::event::Hold;
use domain::manner::Manner;
use domain::order::{Order, order};
use domain::prescription::{LoadWish, Role, SetGroup};
use domain::resting::{Resting, StripFirst};
use domain::sheet::LiftSheet;
use domain::{Command, LiftNo, Mass};

fn sets(count: u8, load: i64, hole: u16) -> SetGroup {
    let manner = Manner {
        hole: Some(hole),
        ..Manner::default()
    };
    SetGroup {
        manner,
        ..group(count, (5, Some(5)), LoadWish::Mass(kg(load)), Role::Work)
    }
}

/// Ines pulls 120 kg from hole 6, then 100 kg twice from hole 9; her sheet, and a life before it.
fn planned() -> (Life, LiftSheet) {
    planned_as(&[sets(1, 120, 6), sets(2, 100, 9)])
}

fn planned_as(groups: &[SetGroup]) -> (Life, LiftSheet) {
    let mut life = Life::new(coached());
    take(&mut life, row(0, groups));
    let sheet = life.entries(0).remove(0).outcome.expect("a sheet");
    (life, sheet)
}

fn begin(life: &mut Life, sheet: LiftSheet) -> LiftNo {
    life.obey(Command::BeginLift(Box::new(sheet)));
    life.state.lifts.keys().next_back().copied().expect("begun")
}

fn next(life: &Life, no: LiftNo) -> Order {
    let run = &life.state.lifts[&no];
    let rung = run.next_rung().expect("a set to come");
    order(&life.gym, &life.state, run, rung, life.now())
}

/// A set with the plates that were ordered.
fn lift(life: &mut Life, no: LiftNo) {
    life.wait_ms(120_000);
    let holds = next(life, no).to;
    let run = &life.state.lifts[&no];
    let rung = run.next_rung().expect("a set to come");
    let word = word_of(run, holds, Said::Set(no));
    let reps = run.sheet.rungs[rung].reps;
    life.obey(Command::EnterSet {
        no,
        rung,
        reps,
        hold: Hold::Kept,
        holds: Some(Box::new(word)),
    });
}

fn say(life: &mut Life, no: LiftNo, holds: Stacks, said: Said) {
    life.wait_ms(30_000);
    let word = word_of(&life.state.lifts[&no], holds, said);
    life.obey(Command::SayBar(Box::new(word)));
}

/// Lifted up to the set at 120 kg, that one too.
fn at_120() -> (Life, LiftNo) {
    let (life, sheet) = planned();
    up_to_120(life, sheet)
}

fn up_to_120(mut life: Life, sheet: LiftSheet) -> (Life, LiftNo) {
    let no = begin(&mut life, sheet);
    loop {
        assert_eq!(next(&life, no).strip, None, "all before lies in hole 6");
        let load = next_load(&life, no);
        lift(&mut life, no);
        if load == kg(120) {
            return (life, no);
        }
    }
}

fn next_load(life: &Life, no: LiftNo) -> Mass {
    let run = &life.state.lifts[&no];
    run.sheet.rungs[run.next_rung().expect("a set to come")].load
}

const PINS_9: StripFirst = StripFirst {
    to: kg_const(60),
    resting: Resting::Pins(9),
};

const fn kg_const(kg: i64) -> Mass {
    Mass::of(domain::MassUnit::Kg, kg * 1_000)
}

#[test]
fn a_heavy_bar_is_stripped_before_the_pins_are_moved_and_once() {
    let (mut life, no) = at_120();
    assert_eq!(next(&life, no).strip, Some(PINS_9));
    lift(&mut life, no);
    assert_eq!(next(&life, no).strip, None, "it lies in hole 9 now");
}

#[test]
fn a_bar_that_was_built_up_where_it_is_wanted_is_not_stripped() {
    let (mut life, no) = at_120();
    let to = next(&life, no).to;
    say(&mut life, no, to, Said::Loaded(no));
    assert_eq!(next(&life, no).strip, None);
    // What was said before the set says nothing of where it lies since.
    let (mut life, sheet) = planned();
    let no = begin(&mut life, sheet);
    while next_load(&life, no) != kg(120) {
        lift(&mut life, no);
    }
    let to = next(&life, no).to;
    say(&mut life, no, to, Said::Loaded(no));
    lift(&mut life, no);
    assert_eq!(next(&life, no).strip, Some(PINS_9));
}

#[test]
fn a_light_bar_is_carried_as_it_is() {
    let (mut life, no) = at_120();
    for (most, strip) in [(120, false), (119, true), (60, true)] {
        life.gym.racks[0].hole_change_at_most = kg(most);
        assert_eq!(next(&life, no).strip.is_some(), strip, "{most} kg");
    }
    // No bar can be stripped below itself.
    life.gym.racks[0].hole_change_at_most = kg(5);
    let to = life.state.lifts[&no].sheet.bar.mass;
    assert_eq!(next(&life, no).strip.map(|strip| strip.to), Some(to));
    say(&mut life, no, Stacks::default(), Said::Stated);
    assert_eq!(next(&life, no).strip, None, "an empty bar");
}

#[test]
fn an_undone_set_leaves_the_bar_where_it_was() {
    let (mut life, no) = at_120();
    life.wait_ms(1_000);
    life.obey(Command::Undo(no));
    assert_eq!(next(&life, no).strip, None);
}

#[test]
fn somebody_else_s_set_moves_the_bar_too() {
    let (mut life, no) = at_120();
    // Bo pulls from the floor what Ines pulls from the pins.
    let mut floor = life.state.lifts[&no].sheet.clone();
    floor.lifter = "Bo".into();
    (floor.pins, floor.groups) = (None, Vec::new());
    assert!(floor.is_from_floor());
    let bo = begin(&mut life, floor);
    let strip = next(&life, bo).strip.expect("it lies on the pins");
    assert_eq!((strip.to, strip.resting), (kg(60), Resting::Floor));
    while next_load(&life, bo) != kg(120) {
        lift(&mut life, bo);
        assert_eq!(next(&life, bo).strip, None, "it lies on the floor");
    }
    lift(&mut life, bo);
    assert_eq!(next(&life, no).strip, Some(PINS_9));
    // On another day nothing is known of it.
    let mut run = life.state.lifts[&no].clone();
    run.day = run.day.succ_opt().expect("a day");
    let rung = run.next_rung().expect("a set to come");
    let asked = order(&life.gym, &life.state, &run, rung, life.now());
    assert_eq!(asked.strip, None);
}

#[test]
fn the_same_load_in_another_hole_is_stripped_all_the_same() {
    let (life, sheet) = planned_as(&[sets(1, 120, 6), sets(1, 120, 9)]);
    let (life, no) = up_to_120(life, sheet);
    let order = next(&life, no);
    assert!(order.is_done(), "no plate is another: {order:?}");
    assert_eq!(order.strip, Some(PINS_9));
}

#[test]
fn the_last_set_says_where_it_lies_and_none_before_it() {
    let (life, sheet) = planned_as(&[sets(1, 120, 6), sets(1, 100, 9), sets(1, 90, 9)]);
    let (mut life, no) = up_to_120(life, sheet);
    lift(&mut life, no);
    assert_eq!(next_load(&life, no), kg(90));
    assert_eq!(next(&life, no).strip, None);
}

/// Where it lay yesterday nobody knows today, whatever is on it.
#[test]
fn yesterday_s_last_set_says_nothing_today() {
    let (mut life, no) = at_120();
    let heavy = next(&life, no).to;
    life.obey(Command::StopLift(no));
    take(&mut life, row(1, &[sets(1, 120, 9)]));
    life.wait_ms(86_400_000);
    let sheet = life.entries(1).remove(0).outcome.expect("a sheet");
    let no = begin(&mut life, sheet);
    say(&mut life, no, heavy, Said::Stated);
    let order = next(&life, no);
    assert!(
        !order.believed.in_doubt && !order.take_off.is_empty(),
        "{order:?}"
    );
    assert_eq!(order.strip, None);
}
