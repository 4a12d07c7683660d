//! Which hole an estimate may choose, and what the sheet says of it.
use crate::gym::{gym, kg, lifter, rack};
use chrono::NaiveDate;
use domain::body::{Body, Sex};
use domain::day::sheet;
use domain::lift::Landmark;
use domain::prescription::{LoadWish, SetGroup};
use domain::sheet::Warning;
use domain::{Length, LiftSheet, Prescription, State};

fn body() -> Body {
    Body {
        stature: Some(Length::mm(1_756)),
        sex: Some(Sex::Male),
        sole: Some(Length::mm(20)),
        ..Body::default()
    }
}

fn made(lift: &str, spacing: Length, landmarks: &[(Landmark, i64)], body: Body) -> LiftSheet {
    let gym = gym(rack(spacing), lifter(landmarks, body));
    let row = Prescription {
        bar: None,
        date: NaiveDate::from_ymd_opt(2026, 12, 2).expect("a day"),
        lifter: "Ines".into(),
        lift: lift.into(),
        first: SetGroup::straight(1, 5, LoadWish::Mass(kg(140))),
        then: Vec::new(),
        track: None,
        ladder: None,
        note: String::new(),
    };
    sheet(&gym, &State::default(), &gym.lifters[0], &row).expect("a sheet")
}

fn inches(inches: i64) -> Length {
    Length::from_nm(inches * 25_400_000)
}

const KNEE: [(Landmark, i64); 2] = [
    (Landmark::TibialTuberosity, 450),
    (Landmark::PatellaTop, 530),
];

#[test]
fn a_measured_landmark_needs_no_estimate() {
    let sheet = made("rack pull", inches(1), &KNEE, body());
    assert!(
        sheet.pins.is_some() && sheet.warnings.is_empty(),
        "{:?}",
        sheet.warnings
    );
}

#[test]
fn on_three_inches_an_estimate_stands_in_and_is_told() {
    let sheet = made("rack pull", inches(3), &KNEE[1..], body());
    let pins = sheet.pins.as_ref().expect("pins");
    // 0.334438 x 1756 - 119.138 - 35 + 20 = 453.135, by hand.
    assert_eq!(pins.landmark_height, Length::from_nm(453_135_128));
    assert!(pins.bar_height <= pins.landmark_height - Length::mm(25));
    let [
        Warning::Estimated {
            landmark,
            spread,
            doubtful: false,
        },
    ] = sheet.warnings[..]
    else {
        panic!("{:?}", sheet.warnings)
    };
    assert_eq!(
        (landmark, spread),
        (Landmark::TibialTuberosity, Length::from_nm(15_705_000))
    );
}

#[test]
fn on_two_inches_it_is_doubtful() {
    let sheet = made("rack pull", inches(2), &KNEE[1..], body());
    assert!(sheet.pins.is_some());
    assert!(matches!(
        sheet.warnings[..],
        [Warning::Estimated { doubtful: true, .. }]
    ));
}

#[test]
fn on_one_inch_it_chooses_nothing() {
    let sheet = made("rack pull", inches(1), &KNEE[1..], body());
    assert!(sheet.pins.is_none() && sheet.overlap.is_none() && sheet.is_from_pins());
    let [
        Warning::EstimateTooRough {
            landmark, spacing, ..
        },
    ] = sheet.warnings[..]
    else {
        panic!("{:?}", sheet.warnings)
    };
    assert_eq!((landmark, spacing), (Landmark::TibialTuberosity, inches(1)));
}

#[test]
fn without_stature_it_is_not_measured() {
    let sheet = made("rack pull", inches(3), &[], Body::default());
    assert_eq!(
        sheet.warnings,
        [Warning::NotMeasured(Landmark::TibialTuberosity)]
    );
}

/// The overlap is told with every estimate that is in it, from either lift's side.
#[test]
fn overlaps_tell_their_estimates() {
    for lift in ["rack pull", "halting deadlift"] {
        let sheet = made(lift, inches(3), &[], body());
        let overlap = sheet.overlap.as_ref().expect("an overlap");
        // Patella top 0.341940 x 1756 - 112.133 + 24 + 20 = 532.314; bar at the hole below 428.1.
        assert!(
            (75..=181).contains(&(overlap.length.nm() / 1_000_000)),
            "{overlap:?}"
        );
        for of in [Landmark::TibialTuberosity, Landmark::PatellaTop] {
            let told =
                |w: &&Warning| matches!(w, Warning::Estimated { landmark, .. } if *landmark == of);
            assert_eq!(
                sheet.warnings.iter().filter(told).count(),
                1,
                "{lift} {of:?}"
            );
        }
    }
    let sheet = made("halting deadlift", inches(3), &KNEE, body());
    let told = |w: &&Warning| matches!(w, Warning::Estimated { .. });
    assert!(sheet.overlap.is_some() && !sheet.warnings.iter().any(|w| told(&w)));
}
