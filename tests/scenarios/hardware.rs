//! Buttons and a foot switch at a kiosk on the bench: sets entered without touching, bounce and
//! floods, devices that are not there.
use crate::bench::{Bench, evening};
use crate::guarded::at_the_bar;
use crate::ladder::{lifters, main_label};
use hardware::{Config, Faults, Opened, Panel, Switches, open};
use kiosk::{Devices, Folder};
use view::Screen;

const SWITCHES: &str = r#"
kind = "simulated"
[[switch]]
name = "foot switch"
does = "done"
[[switch]]
name = "right button"
does = "main"
[[switch]]
name = "left button"
does = "undo"
[[switch]]
name = "back button"
does = "moved"
"#;

/// Between two readings of the switches, milliseconds.
const POLL_MS: u64 = 5;

struct Feet<'a> {
    bench: &'a Bench,
    panel: Panel,
    switches: Switches,
    faults: Faults,
    now_ms: u64,
    entered: usize,
}

impl<'a> Feet<'a> {
    fn at(bench: &'a Bench) -> Self {
        let faults = Faults::default();
        let config = Config::read(SWITCHES).expect("the file is fine");
        let Opened {
            switches, panel, ..
        } = open(&config, &faults);
        let panel = panel.expect("simulated");
        let mut feet = Self {
            bench,
            panel,
            switches,
            faults,
            now_ms: 0,
            entered: 0,
        };
        feet.wait(100);
        feet
    }

    /// Time goes by for the switches; what they tell goes to the kiosk.
    fn wait(&mut self, ms: u64) {
        for _ in 0..ms / POLL_MS {
            self.now_ms += POLL_MS;
            self.bench.pass_ms(POLL_MS);
            for press in self.switches.step(self.now_ms) {
                self.entered += 1;
                self.bench.press(press);
            }
        }
    }

    /// Once the main button is full: down for a fifth of a second, then up until another counts.
    fn press(&mut self, name: &str) {
        self.wait(1_500);
        assert!(self.panel.push(name, true), "there is a {name}");
        self.wait(200);
        self.panel.push(name, false);
        self.wait(2_000);
    }
}

#[test]
fn a_set_is_entered_by_foot_and_taken_back_by_hand() {
    let folder = tempfile::tempdir().expect("a folder");
    let bench = at_the_bar(folder.path());
    let mut feet = Feet::at(&bench);
    feet.press("foot switch");
    assert_eq!(bench.screen(), "rest", "the set was entered");
    let Screen::Rest(rest) = bench.frame().screen else {
        panic!("resting")
    };
    assert!(rest.last.ends_with("back held"), "{}", rest.last);
    feet.press("foot switch");
    assert_eq!(bench.screen(), "rest", "a foot in the rest starts nothing");
    feet.press("left button");
    assert_eq!(bench.screen(), "bar", "the entry was taken back");
}

#[test]
fn a_switch_drawn_beside_the_screen_is_a_switch() {
    let folder = tempfile::tempdir().expect("a folder");
    let bench = at_the_bar(folder.path());
    let mut feet = Feet::at(&bench);
    bench.press_beside(&feet.panel, "foot switch");
    feet.wait(200);
    assert_eq!(bench.screen(), "rest", "the set was entered");
    // The window starts its clocks when it next looks at the time.
    bench.wait_ms(10);
    bench.wait_ms(300);
    let down = |(_, down): &(String, bool)| *down;
    assert!(!feet.panel.state().switches.iter().any(down), "it is up");
}

#[test]
fn a_whole_ladder_without_a_touch() {
    let folder = tempfile::tempdir().expect("a folder");
    let bench = Bench::start(folder.path(), &evening());
    let name = lifters(&bench).remove(0);
    bench.tap(&name);
    let mut feet = Feet::at(&bench);
    let mut seen = Vec::new();
    for _ in 0..30 {
        seen.push(bench.screen());
        match bench.screen() {
            "rest" => bench.wait_ms(600_000),
            "bar" => feet.press("foot switch"),
            "set-up" | "settle" | "end" => feet.press("right button"),
            _ => break,
        }
    }
    assert!(
        seen.iter().filter(|s| **s == "bar").count() >= 4,
        "{seen:?}"
    );
    assert!(seen.contains(&"end"), "{seen:?}");
}

#[test]
fn a_moved_back_is_asked_about_and_nothing_ends_a_lift_unseen() {
    let folder = tempfile::tempdir().expect("a folder");
    let bench = at_the_bar(folder.path());
    let mut feet = Feet::at(&bench);
    feet.press("back button");
    assert_eq!(bench.screen(), "entry");
    feet.press("back button");
    assert_eq!(bench.screen(), "bar");
    feet.press("back button");
    bench.tap("1");
    assert_eq!(bench.screen(), "stop");
    feet.press("right button");
    assert_eq!(bench.screen(), "stop", "a button does not end a lift early");
}

#[test]
fn a_bouncing_contact_makes_one_entry() {
    let folder = tempfile::tempdir().expect("a folder");
    let bench = at_the_bar(folder.path());
    let mut feet = Feet::at(&bench);
    for at in 0..12 {
        feet.panel.push("foot switch", at % 2 == 0);
        feet.wait(POLL_MS);
    }
    feet.press("foot switch");
    assert_eq!((feet.entered, bench.screen()), (1, "rest"));
}

#[test]
fn a_flood_makes_one_entry_at_most_and_the_screen_goes_on() {
    let folder = tempfile::tempdir().expect("a folder");
    let bench = at_the_bar(folder.path());
    let mut feet = Feet::at(&bench);
    // A loose wire for ten seconds, slow enough that each change settles.
    for at in 0..320 {
        feet.panel.push("foot switch", at % 2 == 0);
        feet.wait(30);
    }
    assert_eq!(feet.entered, 1);
    let list = feet.faults.list();
    assert_eq!(list.len(), 1, "told once: {list:?}");
    bench.tap("undo");
    bench.tap(&main_label(&bench.frame()));
    assert_eq!(bench.screen(), "rest", "taps are taken as ever");
}

#[test]
fn devices_that_are_not_there_leave_the_kiosk_going() {
    let folder = tempfile::tempdir().expect("a folder");
    let file = "kind = \"linux\"\n[[switch]]\nname = \"foot switch\"\ndoes = \"done\"\n\
                chip = \"/dev/gpiochip98\"\nline = 4\n[lamp]\nchip = \"/dev/gpiochip98\"\nline = 5\n";
    std::fs::write(folder.path().join("hardware.toml"), file).expect("written");
    let bench = at_the_bar(folder.path());
    let (inputs, _inbox) = std::sync::mpsc::channel();
    let opened = Folder::open(Some(folder.path())).expect("the folder opens");
    let devices = Devices::start(&opened, &inputs);
    let told: Vec<String> = devices.faults().into_iter().map(|f| f.device).collect();
    assert_eq!(told, ["foot switch", "lamp"]);
    bench.tap(&main_label(&bench.frame()));
    assert_eq!(bench.screen(), "rest");
}
