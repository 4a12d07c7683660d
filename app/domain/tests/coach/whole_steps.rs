//! Rounding by lift: no half-kilo fuss on a shrug, whatever small plates the gym has.
use crate::fill::{Life, coached};
use crate::groups::{group, row, sheet, take};
use crate::gym::{kg, plate};
use domain::event::Hold;
use domain::ladder::equipment;
use domain::lift::to_step;
use domain::next::outing::outings;
use domain::prescription::{LoadWish, Role};
use domain::sheet::RungKind;
use domain::solve::loads::Loads;
use domain::{Gym, Mass, MassUnit, Prescription};

/// With a pair of half kilos: every whole kilo can be made.
fn fussy() -> Gym {
    let mut gym = coached();
    let mut small = plate(0, 135);
    (small.face.mass, small.pairs) = (Mass::of(MassUnit::Kg, 500), 1);
    gym.plate_sets[0].plates.push(small);
    gym
}

fn of(lift: &str, load: LoadWish) -> Prescription {
    Prescription {
        lift: lift.into(),
        ..row(0, &[group(2, (5, Some(5)), load, Role::Work)])
    }
}

fn work_load(life: &Life) -> Mass {
    let rungs = sheet(life, 0).rungs;
    let work = rungs.iter().find(|rung| rung.kind == RungKind::Work);
    work.expect("a work set").load
}

fn first_load(lift: &str, gym: Gym, load: LoadWish) -> Mass {
    let mut life = Life::new(gym);
    take(&mut life, of(lift, load));
    work_load(&life)
}

/// By hand, on plates that make every 2.5 kg and 1 kg over each: 71 % of 220 kg are 156.2 kg, for
/// which 156 would hang; 70.5 % of 200 kg are 141 kg, which a rack pull keeps. A mass that the coach
/// wrote stays as written.
#[test]
fn shares_of_a_shrug_are_whole_steps_and_what_was_written_stays() {
    let share = LoadWish::OfBest(7_100);
    assert_eq!(first_load("barbell shrug", fussy(), share), kg(155));
    let pull = LoadWish::OfBest(7_050);
    assert_eq!(first_load("rack pull", fussy(), pull), kg(141));
    let written = LoadWish::Mass(kg(156));
    assert_eq!(first_load("barbell shrug", fussy(), written), kg(156));
    // For those who lift in pounds the kilo's step is not meant.
    let mut gym = fussy();
    gym.lifters[0].unit = MassUnit::Lb;
    let lift = gym
        .lifts
        .iter_mut()
        .find(|lift| lift.name == "barbell shrug");
    lift.expect("a lift")
        .round
        .retain(|(unit, _)| *unit == MassUnit::Kg);
    let off = first_load("barbell shrug", gym, share).apart(Mass::of(MassUnit::Kg, 156_200));
    assert!(off <= Mass::of(MassUnit::Kg, 500), "{off:?}");
}

/// A season of shrugs: every load due is a whole step, and goes up.
#[test]
fn what_is_due_of_a_shrug_is_a_whole_step_all_season() {
    let mut life = Life::new(fussy());
    for week in 0..40 {
        life.lift(week * 4, |_, reps| (reps, Hold::Kept));
    }
    let past = outings(
        &life.state,
        "Ines",
        "barbell shrug",
        crate::fill::date(1_000),
    );
    assert!(past.len() >= 8, "{}", past.len());
    let step = Mass::of(MassUnit::Kg, 2_500);
    for pair in past.windows(2) {
        assert!(pair[0].load < pair[1].load, "{pair:?}");
    }
    for outing in &past {
        assert_eq!(outing.load.ng() % step.ng(), 0, "{outing:?}");
    }
    let pulls = outings(&life.state, "Ines", "rack pull", crate::fill::date(1_000));
    let fuss = pulls.iter().any(|outing| outing.load.ng() % step.ng() != 0);
    assert!(fuss, "the plates would make others");
}

/// A bar that no whole step can be made with: the plates alone say, and nothing is lost.
#[test]
fn where_no_whole_step_can_be_made_the_plates_say() {
    let mut gym = fussy();
    for bar in &mut gym.bars {
        bar.mass = bar.mass + Mass::of(MassUnit::Kg, 410);
    }
    let equipment = equipment(&gym.bars[0], &gym.plate_sets[0]);
    let made = |step| {
        let loads = Loads::new(&equipment, kg(200)).expect("few plates");
        let loads = loads.in_steps(step);
        [kg(90), kg(111)].map(|load| (loads.at_most(load), loads.at_least(load)))
    };
    assert_eq!(made(Some(kg(5))), made(None));
    let mut life = Life::new(gym);
    for week in 0..12 {
        life.lift(week * 4, |_, reps| (reps, Hold::Kept));
    }
    let past = outings(
        &life.state,
        "Ines",
        "barbell shrug",
        crate::fill::date(1_000),
    );
    assert!(past.len() >= 2 && past[0].load < past[1].load, "{past:?}");
}

#[test]
fn the_nearest_whole_step_by_hand() {
    let to = |load: i64, step| {
        let step = Some(Mass::of(MassUnit::Kg, step));
        to_step(Mass::of(MassUnit::Kg, load), step)
    };
    for (load, step, wanted) in [
        (101_200, 2_500, 100_000),
        (101_250, 2_500, 100_000),
        (101_300, 2_500, 102_500),
        (100_000, 2_500, 100_000),
        (900, 2_500, 2_500),
    ] {
        assert_eq!(to(load, step), Mass::of(MassUnit::Kg, wanted), "{load}");
    }
    assert_eq!(to_step(kg(7), None), kg(7));
}
