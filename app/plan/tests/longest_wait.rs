//! A rack's longest wait, as gym.toml tells it.
use plan::Source;

const LIFTERS: &str = r#"[[lifter]]
name = "Tevita"
unit = "lb"
rack = "door rack"
ladder = "5-3-2-1"
belt = "rung 3"
landmarks = { tibial_tuberosity = "488 mm", patella_top = "568 mm" }
bests = { "rack pull" = "600 lb" }
"#;

/// The wait that is read, or what is told.
fn read(line: &str) -> Result<Option<u32>, String> {
    let gym = format!(
        r#"name = "Barn"
[[rack]]
name = "door rack"
first_hole = "9 in"
spacing = "3 in"
holes = 24
pin_diameter = "1 in"
plate_set = "pounds"
{line}
[[bar]]
name = "door bar"
mass = "45 lb"
shaft_diameter = "28.5 mm"
sleeve = "400 mm"
condition = "straight"
[[plate_set]]
name = "pounds"
plates = [{{ mass = "45 lb", pairs = 6, thickness = "38 mm", diameter = "450 mm" }}]
"#
    );
    let (gym, lifters) = (gym.as_bytes(), LIFTERS.as_bytes());
    let source = |name, text| Source { name, text };
    let (read, faults) = plan::gym_noted(source("gym.toml", gym), source("lifters.toml", lifters));
    let told: Vec<String> = faults.iter().map(ToString::to_string).collect();
    let gym = read.ok_or_else(|| told.join("\n"))?;
    Ok(gym.racks[0].longest_wait_ms)
}

#[test]
fn a_rack_tells_how_long_somebody_rested_may_wait() {
    assert_eq!(read("").as_ref(), Ok(&None));
    assert_eq!(
        read("longest_wait = \"6 min\"").as_ref(),
        Ok(&Some(360_000))
    );
    assert_eq!(read("longest_wait = \"45 s\"").as_ref(), Ok(&Some(45_000)));
    for wrong in ["soon", "5 s", "2 h", "61 min"] {
        let told = read(&format!("longest_wait = \"{wrong}\"")).expect_err("out of range");
        assert!(
            told.contains("row 9, column 16") && told.contains(wrong),
            "{told}"
        );
    }
}
