//! From the floor: how high to raise a bar with small plates.
use crate::fill::{Life, coached, date};
use crate::gym::{kg, lift, plate};
use domain::disc_height::{least_diameter, raise_of, warn};
use domain::event::Hold;
use domain::lift::Start;
use domain::rotation::{ask, station_of};
use domain::settle::{Settled, choices};
use domain::sheet::{RungKind, Warning};
use domain::solve::rotation::{Effort, plan};
use domain::{Command, Length, Mass, MassUnit, Moment, Plate, PlateFace, Rung};

fn rung(load: i64, faces: &[PlateFace]) -> Rung {
    Rung {
        kind: RungKind::WarmUp,
        load: kg(load),
        reps: 5,
        per_side: faces.to_vec(),
        take_off: Vec::new(),
        put_on: Vec::new(),
        belt: false,
        straps: false,
        rest_s: 0,
    }
}

/// IWF rules (seen quoted): largest discs 450 mm, so a bar's centre stands 225 mm above the
/// floor (computed); sleeves of 50 mm.
#[test]
fn the_largest_plate_decides() {
    let (big, small) = (plate(20, 450).face, plate(10, 325).face);
    let raise = |faces: &[PlateFace]| raise_of(Start::Floor, faces);
    assert_eq!(raise(&[big]), Length::ZERO);
    assert_eq!(raise(&[small, big]), Length::ZERO);
    assert_eq!(raise(&[small]), Length::from_nm(62_500_000));
    assert_eq!(raise(&[]), Length::mm(200));
    assert_eq!(raise(&[plate(20, 500).face]), Length::ZERO);
    assert_eq!(raise(&[plate(20, -500).face]), Length::mm(200));
    // Worn discs of 441 mm are as good as new ones; 440 mm is told.
    assert_eq!(raise(&[plate(20, 441).face]), Length::ZERO);
    assert_eq!(raise(&[plate(20, 440).face]), Length::mm(5));
    assert_eq!(raise_of(Start::Hooks, &[small]), Length::ZERO);
    assert_eq!(raise_of(lift("rack pull").start, &[]), Length::ZERO);
}

#[test]
fn each_height_is_told_once_with_its_loads() {
    let (big, small, tiny) = (plate(20, 450).face, plate(10, 325).face, plate(5, 230).face);
    let rungs = [
        rung(20, &[]),
        rung(30, &[tiny]),
        rung(40, &[small]),
        rung(50, &[small, tiny]),
        rung(60, &[big]),
    ];
    let mut warnings = Vec::new();
    warn(&lift("deadlift"), &rungs, &mut warnings);
    let low = |from, to, um: i64| Warning::LowPlates {
        from: kg(from),
        to: kg(to),
        raise: Length::from_nm(um * 1_000),
    };
    let wanted = [
        low(20, 20, 200_000),
        low(30, 30, 110_000),
        low(40, 50, 62_500),
    ];
    assert_eq!(warnings, wanted);
    warnings.clear();
    warn(&lift("rack pull"), &rungs, &mut warnings);
    assert_eq!(warnings, []);
}

/// Ines deadlifts 42.5 kg where one pair of tens has the right height, and small plates lie handy.
fn handy() -> Life {
    let mut life = Life::new(coached());
    let plates = [(10_000, 450), (5_000, 230), (2_500, 190), (1_250, 160)];
    let quick = |(grams, mm): (i64, i64)| {
        let mut plate: Plate = plate(10, mm);
        plate.face.mass = Mass::of(MassUnit::Kg, grams);
        plate.face.thickness = Length::mm(20);
        plate.pairs = 3;
        plate.handling_ms = if grams == 10_000 { 60_000 } else { 1_000 };
        plate
    };
    life.gym.plate_sets[0].plates = plates.map(quick).into();
    life.gym.plate_sets[0].plates[0].pairs = 1;
    life.plan(0, "deadlift", 43);
    let rows = life.state.plan.values_mut().next_back().expect("planned");
    rows[0].first.load = domain::prescription::LoadWish::Mass(Mass::of(MassUnit::Kg, 42_500));
    rows[0].first.sets = 2;
    life
}

/// What the sheet stands on, the planner and the choices of the day stand on too, though small
/// plates would be quicker.
#[test]
fn a_rotation_and_a_choice_keep_the_height() {
    let mut life = handy();
    let sheet = life.entries(0)[0].outcome.clone().expect("a sheet");
    assert!(sheet.is_from_floor());
    let raises = |stacks: &[Vec<PlateFace>]| {
        let of = |stack: &Vec<PlateFace>| sheet.raise(0, stack).nm() / 1_000_000;
        stacks.iter().map(of).collect::<Vec<_>>()
    };
    let own: Vec<Vec<PlateFace>> = sheet.rungs.iter().map(|r| r.per_side.clone()).collect();
    assert_eq!(raises(&own), [110, 110, 0, 0]);
    life.obey(Command::BeginLift(Box::new(sheet.clone())));
    let no = *life.state.lifts.keys().next().expect("begun");
    let station = station_of(&life.state.lifts[&no]);
    let asked = ask(&life.gym, &life.state, &station, date(0), Moment(0), None);
    let asked = asked.expect("a rotation");
    let effort = Effort {
        states: 100_000,
        go_on: &mut || true,
    };
    let turns = asked.turns(&plan(&asked.problem, effort).expect("planned"));
    let called: Vec<Vec<PlateFace>> = turns.into_iter().map(|turn| turn.per_side).collect();
    assert_eq!(raises(&called), [110, 110, 0, 0]);
    for rung in 0..2 {
        life.obey(Command::EnterSet {
            no,
            rung,
            reps: sheet.rungs[rung].reps,
            hold: Hold::Kept,
            holds: None,
        });
    }
    let offered = choices(&life.gym, &life.state, &life.state.lifts[&no]).expect("choices");
    for choice in &offered.loads {
        let low = sheet.raise(0, &choice.per_side) != Length::ZERO;
        assert_eq!(low, choice.load < kg(40), "{choice:?}");
    }
    // Settled on what stands lower, the lift is told so, and again as before when that is undone.
    let faces = life.gym.plate_sets[0].plates.iter().map(|plate| plate.face);
    let lower = Settled {
        load: Mass::of(MassUnit::Kg, 37_500),
        per_side: faces.skip(1).collect(),
        ..offered.loads[0].clone()
    };
    let told = |life: &Life| {
        let heaviest = |warning: &Warning| match warning {
            Warning::LowPlates { to, .. } => Some(*to),
            _ => None,
        };
        let now = life.state.lifts[&no].sheet.warnings_now();
        now.iter().filter_map(heaviest).max()
    };
    assert_eq!(told(&life), Some(kg(35)));
    let load = lower.load;
    life.obey(Command::SettleLoad { no, settled: lower });
    assert_eq!(told(&life), Some(load));
    life.obey(Command::Undo(no));
    assert_eq!(told(&life), Some(kg(35)));
}

/// No lower than with this stack, on whatever plates there are.
#[test]
fn another_stack_may_stand_on_another_plate_of_the_same_height() {
    let life = handy();
    let mut plates = life.gym.plate_sets[0].clone();
    plates.plates.push(plate(20, 445));
    let asks = |faces: &[PlateFace]| least_diameter(Start::Floor, faces, &plates);
    assert_eq!(asks(&[plate(10, 450).face]), Length::mm(445));
    assert_eq!(asks(&[plate(5, 230).face]), Length::mm(230));
    assert_eq!(asks(&[]), Length::ZERO);
    let hooks = least_diameter(Start::Hooks, &[plate(10, 450).face], &plates);
    assert_eq!(hooks, Length::ZERO);
}
