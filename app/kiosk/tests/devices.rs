//! The devices' threads as they run: a press comes in, what is wanted is shown.
use domain::Moment;
use hardware::{PanelState, Press};
use kiosk::input::Input;
use kiosk::{Devices, Folder};
use std::sync::mpsc::channel;
use std::time::Duration;
use view::Signs;
use view::signs::Standing;

const FILE: &str = r#"
kind = "simulated"
[[switch]]
name = "foot switch"
does = "done"
[buzzer]
[lamp]
[lights]
count = 12
every = 3
[backlight]
dim_after_s = 60
"#;

/// A slow machine gets its time; a broken one fails.
const PATIENCE: Duration = Duration::from_secs(20);

fn started(text: &str) -> (tempfile::TempDir, Devices, std::sync::mpsc::Receiver<Input>) {
    let folder = tempfile::tempdir().expect("a folder");
    std::fs::write(folder.path().join("hardware.toml"), text).expect("written");
    let (inputs, inbox) = channel();
    let devices = Devices::start(
        &Folder::open(Some(folder.path())).expect("it opens"),
        &inputs,
    );
    (folder, devices, inbox)
}

fn until(devices: &Devices, fine: impl Fn(&PanelState) -> bool) {
    let panel = devices.panel().expect("simulated");
    for _ in 0..PATIENCE.as_millis() / 5 {
        if fine(&panel.state()) {
            return;
        }
        std::thread::sleep(Duration::from_millis(5));
    }
    panic!("not shown in time: {:?}", panel.state());
}

fn signs(standing: Standing) -> Signs {
    Signs {
        lifts: [(domain::LiftNo(1), standing)].into_iter().collect(),
        hole: Some(("yard rack".into(), 3)),
    }
}

#[test]
fn a_press_comes_in_as_an_input() {
    let (_folder, devices, inbox) = started(FILE);
    std::thread::sleep(Duration::from_millis(100));
    devices.panel().unwrap().push("foot switch", true);
    let input = inbox.recv_timeout(PATIENCE).unwrap();
    assert!(
        matches!(input, Input::Pressed(pressed) if pressed.press == Press::Done),
        "{input:?}"
    );
    devices.taken();
    assert!(devices.faults().is_empty());
}

#[test]
fn signs_are_shown_and_a_rest_that_is_over_sounds() {
    let (_folder, mut devices, _inbox) = started(FILE);
    devices.touched(Moment(0));
    devices.follow(&signs(Standing::Resting), (Moment(0), None), (true, false));
    until(&devices, |state| {
        state.lights[6] != [0; 3] && state.lamp == Some(false)
    });
    devices.follow(&signs(Standing::Up), (Moment(1_000), None), (false, false));
    until(&devices, |state| {
        state.lamp == Some(true) && state.sounded == 2
    });
    assert_eq!(devices.panel().unwrap().state().backlight, Some(100));
    devices.follow(&signs(Standing::Up), (Moment(60_000), None), (false, false));
    until(&devices, |state| state.backlight == Some(15));
    devices.touched(Moment(61_000));
    devices.follow(&signs(Standing::Up), (Moment(61_000), None), (true, false));
    until(&devices, |state| state.backlight == Some(100));
}

#[test]
fn without_a_file_or_with_a_faulty_one_there_are_none() {
    let folder = tempfile::tempdir().unwrap();
    let (inputs, _inbox) = channel();
    let none = Devices::start(&Folder::open(Some(folder.path())).unwrap(), &inputs);
    assert!(none.faults().is_empty() && none.panel().is_none());
    let (_folder, mut devices, _inbox) = started("kind = \"simulated\"\n[trumpet]\n");
    let faults = devices.faults();
    assert_eq!(faults.len(), 1);
    assert!(
        faults[0].to_string().contains("hardware.toml: line 2"),
        "{faults:?}"
    );
    devices.follow(&signs(Standing::Up), (Moment(0), None), (false, false));
}

#[test]
fn in_quiet_hours_the_lamp_speaks_alone() {
    let quiet = FILE.replace("[buzzer]", "[buzzer]\nquiet = [\"22:00\", \"07:00\"]");
    let (_folder, mut devices, _inbox) = started(&quiet);
    let (night, day) = (Some(23 * 60), Some(18 * 60));
    let follow = |devices: &mut Devices, standing, at, minute| {
        devices.follow(&signs(standing), (Moment(at), minute), (false, false));
    };
    follow(&mut devices, Standing::Resting, 0, night);
    follow(&mut devices, Standing::Up, 1_000, night);
    until(&devices, |state| state.lamp == Some(true));
    assert_eq!(devices.panel().unwrap().state().sounded, 0);
    follow(&mut devices, Standing::Resting, 2_000, day);
    follow(&mut devices, Standing::Up, 3_000, day);
    until(&devices, |state| state.sounded == 2);
}
