//! The lifts that come with the program. Common practice, no source, unless one is named; a coach
//! can change every number in the gym's file.
//!
//! Refuses: to be medical advice; the cautions are the usual ones and send people to a coach or
//! a clinician.
use crate::length::Length;
use crate::lift::{Grip, Landmark, Lift, Start};
use crate::mass::{Mass, MassUnit};
use alloc::string::String;
use alloc::vec;
use alloc::vec::Vec;

/// How far below the tibial tuberosity the bar's centre starts in the rack pull: the top of a
/// shaft of 28 mm then lies 11 mm under the bump. Common practice, no source.
pub const RACK_PULL_BELOW: Length = Length::mm(25);

/// The shared height that is not warned about. About 150 mm is aimed at, and a start 75 to 100 mm
/// below the top of the patella is usual: 100 mm takes the deeper of those as the least. Common
/// practice, no source.
pub const OVERLAP_LEAST: Length = Length::mm(100);

/// The family of all lifts that are pulled from the floor or from pins: they load the same back.
pub const PULLS: &str = "pulls";

/// Rest before a warm-up, seconds. ACSM position stand 2009: 2 to 3 min for core lifts.
pub const REST_WARM_S: u32 = 120;
/// Rest before a work set, seconds. ACSM position stand 2009: 2 to 3 min for core lifts; the
/// upper end.
pub const REST_WORK_S: u32 = 180;
/// Rest before a heavy work set, seconds. ACSM position stand 2009: 3 to 5 min for heavy sets of
/// trained lifters; the middle.
pub const REST_HEAVY_S: u32 = 240;

/// Cautions of every lift.
const ALWAYS: &[&str] = &[
    "back moved: the set is over",
    "pain: stop, and see a coach or a clinician",
];
/// Cautions of lifts that start from pins.
const PINS: &[&str] = &[
    "collars on, same load on both sides",
    "pins at the same hole on both sides, bar centred on them",
    "hands and feet clear of the pins",
    "set the bar down; do not drop it on the pins",
];
/// Cautions of lifts that start from the floor.
const FLOOR: &[&str] = &[
    "collars on, same load on both sides",
    "nobody within reach of the bar",
];

/// Cautions of lifts that start from hooks.
const HOOKS: &[&str] = &[
    "collars on, same load on both sides",
    "hooks at the same hole on both sides",
    "pins just under the lowest point, or somebody to spot",
];

/// The cautions that a lift has by where it starts, whatever else a coach adds.
#[must_use]
pub fn cautions(start: Start) -> Vec<String> {
    let own = match start {
        Start::Floor => FLOOR,
        Start::Pins { .. } => PINS,
        Start::Hooks => HOOKS,
    };
    words(&[own, ALWAYS].concat())
}

/// All of them: rack pull, halting deadlift, barbell shrug, deadlift, power clean, power snatch.
#[must_use]
pub fn lifts() -> Vec<Lift> {
    vec![
        rack_pull(),
        halting_deadlift(),
        barbell_shrug(),
        deadlift(),
        quick(
            "power clean",
            &[
                "slow off the floor, fast past the knee",
                "bar close",
                "elbows through",
            ],
        ),
        quick(
            "power snatch",
            &[
                "wide hook grip",
                "slow off the floor, fast past the knee",
                "bar close",
            ],
        ),
    ]
}

fn rack_pull() -> Lift {
    Lift {
        name: String::from("rack pull"),
        also: Vec::new(),
        start: Start::Pins {
            landmark: Landmark::TibialTuberosity,
            below: RACK_PULL_BELOW,
        },
        end: Landmark::Lockout,
        grip: Grip::DoubleOverhand,
        fast: false,
        retired_bar: true,
        partner: Some(String::from("halting deadlift")),
        family: String::from(PULLS),
        round: Vec::new(),
        overlap_least: OVERLAP_LEAST,
        rest_warm_s: REST_WARM_S,
        rest_work_s: REST_HEAVY_S,
        cues: words(&[
            "back set before the bar moves",
            "bar against the leg",
            "shoulders in front of the bar",
        ]),
        cautions: cautions(Start::Pins {
            landmark: Landmark::TibialTuberosity,
            below: RACK_PULL_BELOW,
        }),
    }
}

fn halting_deadlift() -> Lift {
    Lift {
        name: String::from("halting deadlift"),
        also: Vec::new(),
        end: Landmark::PatellaTop,
        partner: Some(String::from("rack pull")),
        cues: words(&[
            "shins near vertical",
            "push the floor away",
            "stop at the top of the patella",
        ]),
        ..from_floor(REST_HEAVY_S)
    }
}

fn barbell_shrug() -> Lift {
    let start = Start::Pins {
        landmark: Landmark::MidThigh,
        below: Length::ZERO,
    };
    Lift {
        name: String::from("barbell shrug"),
        also: Vec::new(),
        start,
        end: Landmark::Lockout,
        grip: Grip::DoubleOverhand,
        fast: false,
        retired_bar: true,
        partner: None,
        family: String::from(PULLS),
        round: Vec::from([
            (MassUnit::Kg, Mass::of(MassUnit::Kg, 2_500)),
            (MassUnit::Lb, Mass::of(MassUnit::Lb, 5_000)),
        ]),
        overlap_least: OVERLAP_LEAST,
        rest_warm_s: REST_WARM_S,
        rest_work_s: REST_WORK_S,
        cues: words(&["stand tall first", "shoulders to the ears", "arms straight"]),
        cautions: cautions(start),
    }
}

fn deadlift() -> Lift {
    Lift {
        name: String::from("deadlift"),
        also: Vec::new(),
        cues: words(&[
            "back set before the bar moves",
            "push the floor away",
            "bar against the leg",
        ]),
        ..from_floor(REST_HEAVY_S)
    }
}

/// A lift that goes on past lockout in one fast pull; lockout is the highest landmark there is.
fn quick(name: &str, cues: &[&str]) -> Lift {
    let mut lift = Lift {
        also: Vec::new(),
        name: String::from(name),
        grip: Grip::Hook,
        fast: true,
        cues: words(cues),
        ..from_floor(REST_WORK_S)
    };
    lift.cautions
        .insert(2, String::from("missed: let go and step away from the bar"));
    lift
}

/// What the lifts from the floor share.
fn from_floor(rest_work_s: u32) -> Lift {
    Lift {
        also: Vec::new(),
        name: String::new(),
        start: Start::Floor,
        end: Landmark::Lockout,
        grip: Grip::DoubleOverhand,
        fast: false,
        retired_bar: false,
        partner: None,
        family: String::from(PULLS),
        round: Vec::new(),
        overlap_least: OVERLAP_LEAST,
        rest_warm_s: REST_WARM_S,
        rest_work_s,
        cues: Vec::new(),
        cautions: cautions(Start::Floor),
    }
}

fn words(lines: &[&str]) -> Vec<String> {
    lines.iter().copied().map(String::from).collect()
}
