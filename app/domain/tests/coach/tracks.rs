//! Tracks by name and shares of a training max: heavy, medium and light days that follow from their
//! own, and a frozen figure that moves by the coach's word alone.
use crate::fill::{Life, coached, date};
use crate::groups::{group, row, sheet, take};
use crate::gym::kg;
use domain::day::NoSheet;
use domain::event::Hold;
use domain::lifter::TrainingMax;
use domain::prescription::{LoadWish, Reps, Role};
use domain::sheet::{LiftSheet, RungKind};
use domain::{Mass, MassUnit, Prescription, TrackName};

/// Three fives of a track by name, at a load or at what is due.
fn of_track(days: u64, name: &str, load: LoadWish) -> Prescription {
    Prescription {
        track: TrackName::new(name),
        ..row(days, &[group(3, (5, Some(5)), load, Role::Work)])
    }
}

/// Heavy, light and medium days of one lift, all of fives: each follows from its own, by 2.5 %
/// to what the plates make (steps of 2.5 kg), whatever the others did. By hand.
#[test]
fn heavy_light_and_medium_days_do_not_disturb_one_another() {
    let mut life = Life::new(coached());
    let week = [(0, "heavy", 160), (2, "light", 110), (4, "medium", 140)];
    for (days, name, load) in week {
        take(&mut life, of_track(days, name, LoadWish::Mass(kg(load))));
        // The medium day fails early, so that it is lowered alone.
        let reps = if name == "medium" { 2 } else { 5 };
        life.lift(days, |_, _| (reps, Hold::Kept));
    }
    let due = |days: u64, name: &str| {
        let mut again = Life::new(coached());
        again.state = life.state.clone();
        take(&mut again, of_track(days, name, LoadWish::Due));
        works_of(&sheet(&again, days))[0]
    };
    assert_eq!(
        due(7, "heavy"),
        Mass::of(MassUnit::Kg, 165_000),
        "160 and 2.5 %"
    );
    assert_eq!(
        due(9, "light"),
        Mass::of(MassUnit::Kg, 112_500),
        "110 and 2.5 %"
    );
    assert_eq!(
        due(11, "medium"),
        Mass::of(MassUnit::Kg, 132_500),
        "140 less 5 %"
    );
    // A track that nobody has done has nothing due, whatever the others have.
    take(&mut life, of_track(13, "speed", LoadWish::Due));
    let none = life.entries(13).remove(0).outcome;
    assert_eq!(none, Err(NoSheet::NoLoad));
}

fn works_of(sheet: &LiftSheet) -> Vec<Mass> {
    let work = sheet.rungs.iter().filter(|r| r.kind == RungKind::Work);
    work.map(|rung| rung.load).collect()
}

/// Rising sets of a training max, of which the last is the one that the next time follows from.
fn wave(days: u64, shares: [u32; 3]) -> Prescription {
    let set = |at: usize, open| {
        let most = if open { None } else { Some(5) };
        group(1, (5, most), LoadWish::OfTraining(shares[at]), Role::Work)
    };
    row(days, &[set(0, false), set(1, false), set(2, true)])
}

/// 65, 75 and 85 % of 200 kg, and of 210 kg from the day on that the coach wrote; a new best in
/// between moves nothing. By hand, on plates that step by 2.5 kg.
#[test]
fn shares_of_a_training_max_are_frozen_until_the_coach_moves_it() {
    let mut gym = coached();
    let max = |load, since: Option<u64>| TrainingMax {
        lift: "rack pull".into(),
        load: kg(load),
        since: since.map(date),
    };
    gym.lifters[0].training_maxes = vec![max(210, Some(14)), max(200, None), max(230, Some(99))];
    let mut life = Life::new(gym);
    take(&mut life, wave(0, [6_500, 7_500, 8_500]));
    let first = sheet(&life, 0);
    assert_eq!(works_of(&first), [130, 150, 170].map(kg));
    let main = first.main_rungs();
    assert_eq!(first.rungs[main.start].load, kg(170), "the heaviest");
    assert_eq!(
        first.reps_of(main.start),
        Reps {
            least: 5,
            most: None
        }
    );
    life.lift(0, |_, _| (9, Hold::Kept));
    take(&mut life, wave(7, [6_500, 7_500, 8_500]));
    assert_eq!(works_of(&sheet(&life, 7)), [130, 150, 170].map(kg));
    life.lift(7, |_, _| (9, Hold::Kept));
    // 136.5, 157.5 and 178.5 kg; due is 170 and 2.5 %, which is the lower.
    take(&mut life, wave(14, [6_500, 7_500, 8_500]));
    let entry = life.entries(14).remove(0);
    let planned = Mass::of(MassUnit::Kg, 177_500);
    assert_eq!(entry.planned, Some(planned), "told beside what is due");
    let works = works_of(&entry.outcome.expect("a sheet"));
    assert_eq!(works[2], kg(175), "the lower first");
    assert_eq!(works[1], Mass::of(MassUnit::Kg, 157_500));
    // A day before any that the coach wrote has none.
    life.gym.lifters[0].training_maxes.remove(1);
    assert_eq!(
        life.entries(7).remove(0).outcome,
        Err(NoSheet::NoTrainingMax)
    );
}
