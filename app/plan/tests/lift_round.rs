//! What a gym's file says of rounding by lift, and what is told of a bad one.
use domain::{Gym, Mass, MassUnit};
use plan::Source;

fn try_gym(lift: &str) -> Result<Gym, String> {
    let demo = |name: &str| {
        let path = format!("{}/../../demo-data/{name}", env!("CARGO_MANIFEST_DIR"));
        std::fs::read_to_string(path).expect("the demo file is in the repository")
    };
    let (gym, lifters) = (demo("gym.toml") + lift, demo("lifters.toml"));
    let source = |name, text| Source { name, text };
    plan::gym(
        source("gym.toml", gym.as_bytes()),
        source("lifters.toml", lifters.as_bytes()),
    )
    .map_err(|faults| faults.iter().map(ToString::to_string).collect())
}

fn steps(gym: &Gym, lift: &str) -> [Option<Mass>; 2] {
    let lift = gym.lifts.iter().find(|known| known.name == lift);
    let lift = lift.expect("a lift");
    [MassUnit::Kg, MassUnit::Lb].map(|unit| lift.step_for(unit))
}

#[test]
fn a_lift_is_rounded_as_its_file_says() {
    let kg = |load: i64| Some(Mass::of(MassUnit::Kg, load));
    let lb = |load: i64| Some(Mass::of(MassUnit::Lb, load));
    let shipped = try_gym("").expect("a good gym");
    assert_eq!(steps(&shipped, "barbell shrug"), [kg(2_500), lb(5_000)]);
    assert_eq!(steps(&shipped, "rack pull"), [None, None]);
    let lift = "\n[[lift]]\nname = \"rack pull\"\nround = [\"5 kg\"]\n";
    let own = try_gym(lift).expect("a good gym");
    assert_eq!(steps(&own, "rack pull"), [kg(5_000), None]);
    let none = "\n[[lift]]\nname = \"barbell shrug\"\nround = []\n";
    let none = try_gym(none).expect("a good gym");
    assert_eq!(steps(&none, "barbell shrug"), [None, None]);
}

#[test]
fn a_bad_step_is_told() {
    for (step, told) in [
        ("\"50 kg\"", "50 kg"),
        ("\"100 g\"", "100 g"),
        ("\"soon\"", "soon"),
    ] {
        let lift = format!("\n[[lift]]\nname = \"rack pull\"\nround = [{step}]\n");
        let faults = try_gym(&lift).expect_err(step);
        assert!(faults.contains(told), "{step}: {faults}");
    }
}
