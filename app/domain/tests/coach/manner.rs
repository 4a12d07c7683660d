//! Where and how sets are done, by set group: hole, blocks, gear, grip, tempo, pause, and a bar for
//! the lift. What the sheet shows of a set is what its plates, its turn and its pins follow.
use crate::fill::{Life, coached};
use crate::groups::{group, row, sheet, take};
use crate::gym::{bar, kg};
use domain::event::Hold;
use domain::lift::Grip;
use domain::manner::{Manner, Tempo};
use domain::prescription::{LoadWish, Role, SetGroup};
use domain::sheet::{LiftSheet, RungKind};
use domain::solve::hole;
use domain::{BarCondition, Command, Length, Mass, Prescription};

fn sets(count: u8, load: i64, manner: Manner) -> SetGroup {
    SetGroup {
        manner,
        ..group(count, (5, Some(5)), LoadWish::Mass(kg(load)), Role::Work)
    }
}

fn hole(hole: u16) -> Manner {
    Manner {
        hole: Some(hole),
        ..Manner::default()
    }
}

fn planned(row: Prescription) -> (Life, LiftSheet) {
    let mut life = Life::new(coached());
    take(&mut life, row);
    let sheet = sheet(&life, 0);
    (life, sheet)
}

fn works(sheet: &LiftSheet) -> std::ops::Range<usize> {
    let is_work = |rung: &domain::Rung| rung.kind == RungKind::Work;
    let first = sheet.rungs.iter().position(is_work).expect("work");
    first..sheet.rungs.len()
}

/// Every rung's load is the bar of the sheet, its collars and the plates that it shows on both
/// sides, and each change leads from one to the next.
fn obeyed(sheet: &LiftSheet) {
    let mut on: Vec<_> = Vec::new();
    for rung in &sheet.rungs {
        for face in &rung.take_off {
            assert_eq!(on.pop(), Some(*face), "outermost first");
        }
        on.extend(rung.put_on.iter().copied());
        assert_eq!(on, rung.per_side);
        let side: i64 = on.iter().map(|face| face.mass.ng()).sum();
        let bare = sheet.bar.mass.ng() + sheet.bar.collars.ng();
        assert_eq!(Mass::from_ng(bare + 2 * side), rung.load);
    }
}

#[test]
fn the_pins_go_where_each_group_says() {
    let plan = row(0, &[sets(1, 120, hole(6)), sets(2, 100, hole(9))]);
    let (mut life, sheet) = planned(plan);
    obeyed(&sheet);
    let works = works(&sheet);
    let holes: Vec<_> = (0..sheet.rungs.len())
        .map(|at| sheet.pin_hole(at))
        .collect();
    assert!(
        holes[..=works.start].iter().all(|hole| *hole == Some(6)),
        "{holes:?}"
    );
    assert!(
        holes[works.start + 1..].iter().all(|hole| *hole == Some(9)),
        "{holes:?}"
    );
    assert!((0..sheet.rungs.len()).all(|at| sheet.mats_of(at).is_empty()));

    // The height on the sheet is the one of that hole: reckoned from the rack, as the hole finder
    // does, which is held against enumeration elsewhere.
    let rack = life.gym.racks[0].clone();
    let pins = sheet.pins.clone().expect("pins");
    let centre = rack.first_hole.nm() + 5 * rack.spacing.nm();
    let on_pin = (rack.pin_diameter.nm() + sheet.bar.shaft_diameter.nm()) / 2;
    assert_eq!(pins.bar_height, Length::from_nm(centre + on_pin));
    assert_eq!(pins.hole, 6);
    assert_eq!(
        hole::Height::from(pins.bar_height).length(),
        pins.bar_height
    );

    // The pins are where the last set was, so that the next order knows.
    life.obey(Command::BeginLift(Box::new(sheet)));
    let no = life.state.lifts.keys().next_back().copied().expect("begun");
    let day = life.state.lifts[&no].day;
    while let Some(rung) = life.state.lifts[&no].next_rung() {
        let reps = life.state.lifts[&no].sheet.rungs[rung].reps;
        let asked = life.state.lifts[&no].sheet.pin_hole(rung);
        let (hold, holds) = (Hold::Kept, None);
        life.obey(Command::EnterSet {
            no,
            rung,
            reps,
            hold,
            holds,
        });
        assert_eq!(life.state.hole_set(&rack.name, day), asked, "rung {rung}");
    }
    assert_eq!(life.state.hole_set(&rack.name, day), Some(9));
}

#[test]
fn a_hole_stands_where_nobody_was_measured() {
    let mut life = Life::new(coached());
    let lifter = &mut life.gym.lifters[0];
    (lifter.landmarks, lifter.body) = (Vec::new(), domain::body::Body::default());
    take(&mut life, row(0, &[sets(1, 100, hole(7))]));
    let sheet = sheet(&life, 0);
    assert!(sheet.is_from_pins());
    assert_eq!((sheet.pin_hole(0), &sheet.pins), (Some(7), &None));
    assert!(!sheet.is_from_floor());
}

#[test]
fn a_hole_past_the_rack_gets_no_sheet() {
    let mut life = Life::new(coached());
    let past = life.gym.racks[0].holes + 1;
    take(&mut life, row(0, &[sets(1, 100, hole(past))]));
    let why = life.entries(0).remove(0).outcome.expect_err("no sheet");
    assert!(
        why.to_string()
            .contains(&format!("no hole is called \"{past}\"")),
        "{why}"
    );
}

#[test]
fn gear_and_grip_change_by_group_and_hold_when_the_load_is_settled() {
    let with = Manner {
        straps: Some(true),
        belt: Some(false),
        grip: Some(Grip::Hook),
        ..Manner::default()
    };
    let without = Manner {
        straps: Some(false),
        belt: Some(true),
        ..Manner::default()
    };
    let (_, sheet) = planned(row(0, &[sets(1, 60, with), sets(2, 200, without)]));
    let works = works(&sheet);
    let worn = |at: usize| (sheet.rungs[at].belt, sheet.rungs[at].straps);
    assert_eq!(worn(works.start), (false, true));
    assert_eq!(worn(works.start + 1), (true, false));
    assert_eq!(sheet.grip_of(works.start), Grip::Hook);
    assert_eq!(sheet.grip_of(works.start + 1), sheet.grip);
    // Warm-ups are dressed as always.
    assert_eq!(sheet.manner_of(0).straps, None);
    assert_eq!(sheet.grip_of(0), sheet.grip);
}

#[test]
fn loads_that_are_chosen_on_the_day_keep_the_gear_of_the_plan() {
    let without = Manner {
        straps: Some(false),
        belt: Some(true),
        ..Manner::default()
    };
    let (mut life, sheet) = planned(row(0, &[sets(2, 150, without)]));
    life.obey(Command::BeginLift(Box::new(sheet)));
    let no = life.state.lifts.keys().next_back().copied().expect("begun");
    while life.state.lifts[&no].may_settle().is_none() {
        let rung = life.state.lifts[&no].next_rung().expect("a warm-up");
        let reps = life.state.lifts[&no].sheet.rungs[rung].reps;
        let (hold, holds) = (Hold::Kept, None);
        life.obey(Command::EnterSet {
            no,
            rung,
            reps,
            hold,
            holds,
        });
    }
    let choices = domain::settle::choices(&life.gym, &life.state, &life.state.lifts[&no]);
    let loads = choices.expect("choices").loads;
    assert!(loads.len() > 1);
    assert!(loads.iter().all(|settled| settled.belt && !settled.straps));
}

#[test]
fn tempo_and_pause_are_kept_with_the_sets() {
    let tempo = Tempo {
        lower: 3,
        bottom: 0,
        raise: None,
        top: 1,
    };
    let slow = Manner {
        tempo: Some(tempo),
        pause_s: Some(2),
        ..Manner::default()
    };
    let (_, sheet) = planned(row(
        0,
        &[sets(1, 100, Manner::default()), sets(1, 80, slow)],
    ));
    let works = works(&sheet);
    assert_eq!(sheet.manner_of(works.start), Manner::default());
    let said = sheet.manner_of(works.start + 1);
    assert_eq!((said.tempo, said.pause_s), (Some(tempo), Some(2)));
    assert_eq!(tempo.to_string(), "3-0-X-1");
}

#[test]
fn blocks_raise_the_bar_by_their_height() {
    let block = |mm: i64| Manner {
        block: Some(Length::mm(mm)),
        ..Manner::default()
    };
    let plan = row(0, &[sets(1, 120, block(100)), sets(1, 100, block(0))]);
    let plan = Prescription {
        lift: "deadlift".into(),
        ..plan
    };
    let (_, sheet) = planned(plan);
    let works = works(&sheet);
    for at in 0..sheet.rungs.len() {
        let stack = &sheet.rungs[at].per_side;
        let discs = domain::disc_height::raise(&sheet.rungs[at]);
        let block = if at > works.start {
            Length::ZERO
        } else {
            Length::mm(100)
        };
        assert_eq!(sheet.raise(at, stack), discs + block, "rung {at}");
    }
    // What is under the plates is said at each rung alone, once.
    let low = |w: &domain::sheet::Warning| matches!(w, domain::sheet::Warning::LowPlates { .. });
    assert!(!sheet.warnings.iter().any(low) && !sheet.warnings_now().iter().any(low));
}

#[test]
fn another_bar_has_its_own_ladder_and_plates() {
    let mut gym = coached();
    let mut heavy = bar("thick bar", BarCondition::Straight);
    heavy.mass = kg(30);
    gym.bars.push(heavy);
    let mut life = Life::new(gym);
    let plan = row(0, &[sets(3, 140, Manner::default())]);
    take(
        &mut life,
        Prescription {
            bar: Some("thick bar".into()),
            ..plan.clone()
        },
    );
    let other = sheet(&life, 0);
    assert_eq!(
        (other.bar.name.as_str(), other.bar.mass),
        ("thick bar", kg(30))
    );
    obeyed(&other);
    take(&mut life, plan);
    let own = sheet(&life, 0);
    assert_ne!(own.bar.name, other.bar.name);
    obeyed(&own);
    let last = |sheet: &LiftSheet| sheet.rungs.last().cloned().expect("a rung");
    assert_eq!(last(&own).load, last(&other).load);
    assert_ne!(last(&own).per_side, last(&other).per_side);
}

#[test]
fn a_bar_that_is_gone_gets_no_sheet() {
    let mut life = Life::new(coached());
    let plan = row(0, &[sets(3, 140, Manner::default())]);
    take(
        &mut life,
        Prescription {
            bar: Some("thick bar".into()),
            ..plan
        },
    );
    let why = life.entries(0).remove(0).outcome.expect_err("no sheet");
    assert_eq!(
        why.to_string(),
        "no bar is called \"thick bar\"; write it into the gym's files"
    );
}
