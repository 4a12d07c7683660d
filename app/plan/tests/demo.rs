//! The demo gym passes its own checker and says what it is meant to say.
use domain::prescription::{LoadWish, SetGroup};
use domain::{Gym, LengthUnit, MassUnit};
use plan::Source;
use std::fmt::Write as _;

fn demo(name: &str) -> Vec<u8> {
    let path = format!("{}/../../demo-data/{name}", env!("CARGO_MANIFEST_DIR"));
    std::fs::read(path).expect("the demo file is in the repository")
}

fn gym() -> Gym {
    let (gym, lifters) = (demo("gym.toml"), demo("lifters.toml"));
    let source = |name, text| Source { name, text };
    let (gym, faults) = plan::gym_noted(source("gym.toml", &gym), source("lifters.toml", &lifters));
    assert_eq!(faults, Vec::new());
    gym.expect("no fault")
}

/// The gym in a few lines, every figure exact.
fn summary(gym: &Gym) -> String {
    let mut out = format!("{}\n", gym.name);
    let mm = |length: domain::Length| length.exact(LengthUnit::Mm);
    for rack in &gym.racks {
        let mats: Vec<_> = rack.mats.iter().map(|mat| mm(*mat)).collect();
        let (first, spacing, pin) = (mm(rack.first_hole), mm(rack.spacing), mm(rack.pin_diameter));
        let hole = rack.hole_diameter.map(mm);
        writeln!(out, "rack {}: {} holes from {first} by {spacing}, pin {pin} in {hole:?}, mats {mats:?}, {:?}, {}", rack.name, rack.holes, rack.calibration, rack.plates).expect("text grows");
    }
    for bar in &gym.bars {
        let (mass, shaft, sleeve) = (
            bar.mass.exact(MassUnit::Kg),
            mm(bar.shaft_diameter),
            mm(bar.sleeve),
        );
        writeln!(
            out,
            "bar {}: {mass}, collars {}, {shaft}, sleeve {sleeve}, {:?}, {:?}",
            bar.name,
            bar.collars.ng(),
            bar.condition,
            bar.rack
        )
        .expect("text grows");
    }
    for set in &gym.plate_sets {
        writeln!(out, "{}, big inside {}:", set.name, set.big_inside).expect("text grows");
        for plate in &set.plates {
            let face = plate.face;
            writeln!(
                out,
                "  {} x {} pairs, {} x {}, {} ms",
                face.mass.words(face.unit),
                plate.pairs,
                mm(face.diameter),
                mm(face.thickness),
                plate.handling_ms
            )
            .expect("text grows");
        }
    }
    out + &people(gym)
}

/// The lifters in a few lines, then the names of lifts and patterns.
fn people(gym: &Gym) -> String {
    let mut out = String::new();
    let mm = |length: domain::Length| length.exact(LengthUnit::Mm);
    for lifter in &gym.lifters {
        let landmarks: Vec<_> = lifter
            .landmarks
            .iter()
            .map(|(l, height)| format!("{} {}", l.word(), mm(*height)))
            .collect();
        let bests: Vec<_> = lifter
            .bests
            .iter()
            .map(|(lift, best)| format!("{lift} {}", best.words(lifter.unit)))
            .collect();
        writeln!(
            out,
            "{}: {}, {}, bar {:?}, {}, belt {:?}, straps {:?}\n  {landmarks:?}\n  {bests:?}",
            lifter.name,
            lifter.unit.word(),
            lifter.rack,
            lifter.bar,
            lifter.ladder,
            lifter.belt,
            lifter.straps
        )
        .expect("text grows");
    }
    let lifts: Vec<_> = gym.lifts.iter().map(|lift| lift.name.as_str()).collect();
    let patterns: Vec<_> = gym
        .patterns
        .iter()
        .map(|pattern| pattern.name.as_str())
        .collect();
    writeln!(out, "lifts {lifts:?}\npatterns {patterns:?}").expect("text grows");
    out
}

#[test]
fn the_gym_is_whole() {
    insta::assert_snapshot!(summary(&gym()));
}

#[test]
fn the_plan_is_whole() {
    let text = demo("plans/four-weeks.csv");
    let name = "plans/four-weeks.csv";
    let rows = plan::coach_plan(Source { name, text: &text }, &gym()).expect("a good plan");
    let line = |row: &domain::Prescription| {
        let (date, lifter, lift) = (row.date.format("%a %F"), &row.lifter, &row.lift);
        let domain::Prescription {
            first,
            ladder,
            note,
            ..
        } = row;
        let SetGroup {
            sets,
            reps,
            load,
            rest_s,
            ..
        } = first;
        let reps = reps.least;
        let load = match load {
            LoadWish::Mass(mass) => mass.words(if text_is_pounds(*mass) {
                MassUnit::Lb
            } else {
                MassUnit::Kg
            }),
            LoadWish::OfBest(share) => format!("{share} of 10000"),
            other @ (LoadWish::OfTraining(_)
            | LoadWish::OfTop(_)
            | LoadWish::More(_)
            | LoadWish::Due) => {
                format!("{other:?}")
            }
        };
        format!("{date} {lifter}: {lift} {sets} x {reps}, {load}, {ladder:?}, {rest_s:?}, {note:?}")
    };
    let lines: Vec<_> = rows.iter().map(line).collect();
    insta::assert_snapshot!(lines.join("\n"));
}

/// Whole pounds are seldom whole hundredths of a kilogram.
fn text_is_pounds(mass: domain::Mass) -> bool {
    mass.ng() % MassUnit::Lb.scale() == 0
}

#[test]
fn every_file_passes_the_checker() {
    let gym = gym();
    for name in [
        "gym.toml",
        "lifters.toml",
        "kiosk.toml",
        "plans/four-weeks.csv",
    ] {
        let text = demo(name);
        let context = Some(&gym);
        assert_eq!(
            plan::check(Source { name, text: &text }, context),
            Vec::new()
        );
    }
}
