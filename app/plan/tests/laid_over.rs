//! What a gym's file changes of the lifts and patterns that come with the program.
use domain::lift::{Grip, Landmark, Start};
use domain::{Gym, Length, Lift, lift_shipped};
use plan::Source;

fn gym(more: &str) -> Gym {
    let demo = |name: &str| {
        let path = format!("{}/../../demo-data/{name}", env!("CARGO_MANIFEST_DIR"));
        std::fs::read_to_string(path).expect("the demo file is in the repository")
    };
    let (gym, lifters) = (demo("gym.toml") + more, demo("lifters.toml"));
    let source = |name, text: &'static str| Source {
        name,
        text: text.as_bytes(),
    };
    let (gym, lifters) = (gym.leak(), lifters.leak());
    plan::gym(source("gym.toml", gym), source("lifters.toml", lifters)).expect("a good gym")
}

fn lift<'g>(gym: &'g Gym, name: &str) -> &'g Lift {
    gym.lifts
        .iter()
        .find(|lift| lift.name == name)
        .expect("a lift")
}

#[test]
fn nothing_written_leaves_them_as_they_are() {
    assert_eq!(gym("").lifts, lift_shipped::lifts());
}

#[test]
fn one_key_changes_one_thing() {
    let changed = gym("\n[[lift]]\nname = \"Rack Pull\"\nbelow = \"1 in\"\n");
    let shipped = lift_shipped::lifts();
    let mut wanted = shipped.clone();
    wanted[0].start = Start::Pins {
        landmark: Landmark::TibialTuberosity,
        below: Length::from_nm(25_400_000),
    };
    assert_eq!(changed.lifts, wanted);
}

#[test]
fn cautions_are_added_to_and_cues_replaced() {
    let gym = gym("\n[[lift]]\nname = \"deadlift\"\ncues = []\ncautions = [\"low ceiling\"]\n");
    let shipped = lift_shipped::lifts();
    let was = shipped
        .iter()
        .find(|lift| lift.name == "deadlift")
        .expect("a lift");
    let (last, front) = lift(&gym, "deadlift")
        .cautions
        .split_last()
        .expect("cautions");
    assert_eq!(
        (front, last.as_str()),
        (was.cautions.as_slice(), "low ceiling")
    );
    assert!(lift(&gym, "deadlift").cues.is_empty());
}

#[test]
fn a_new_lift_has_the_usual_cautions() {
    let gym = gym(
        "\n[[lift]]\nname = \"knee-high pull\"\nstart = \"pins\"\nlandmark = \"Patella_Top\"\npartner = \"Halting Deadlift\"\n",
    );
    let new = lift(&gym, "knee-high pull");
    let start = Start::Pins {
        landmark: Landmark::PatellaTop,
        below: Length::ZERO,
    };
    assert_eq!(
        (new.start, new.grip, new.retired_bar),
        (start, Grip::DoubleOverhand, true)
    );
    assert_eq!(new.partner.as_deref(), Some("halting deadlift"));
    assert_eq!(new.cautions, lift_shipped::cautions(start));
}

#[test]
fn a_lift_from_hooks_needs_no_landmark_and_has_its_own_cautions() {
    let gym = gym("\n[[lift]]\nname = \"squat\"\nstart = \"hooks\"\n");
    let squat = lift(&gym, "squat");
    assert_eq!((squat.start, squat.retired_bar), (Start::Hooks, false));
    assert_eq!(squat.cautions, lift_shipped::cautions(Start::Hooks));
    assert!(!squat.fast && lift(&gym, "power clean").fast);
}

#[test]
fn a_pattern_is_replaced_or_added() {
    let gym = gym(
        "\n[[pattern]]\nname = \"Fives\"\nsteps = [{ share = \"50 %\", reps = 5 }]\n[[pattern]]\nname = \"triples\"\nsteps = [{ share = \"40 %\", reps = 3 }, { share = \"72.5 %\", reps = 3 }]\n",
    );
    let steps = |name: &str| {
        let pattern = gym.patterns.iter().find(|pattern| pattern.name == name);
        let steps = &pattern.expect("a pattern").steps;
        steps
            .iter()
            .map(|step| (step.share, step.reps))
            .collect::<Vec<_>>()
    };
    assert_eq!(steps("fives"), [(5_000, 5)]);
    assert_eq!(steps("triples"), [(4_000, 3), (7_250, 3)]);
    // Common practice, no source: about 30, 50, 70 and 90 % of the work load.
    assert_eq!(
        steps("5-3-2-1"),
        [(3_000, 5), (5_000, 3), (7_000, 2), (9_000, 1)]
    );
}
