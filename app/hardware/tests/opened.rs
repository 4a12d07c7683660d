//! hardware.toml, what it opens, and what is told when that cannot be had.
use hardware::config::Kind;
use hardware::{Config, Faults, Glow, Orders, Press, Tune, Wanted, open};
use std::time::Duration;

/// All devices, simulated.
const ALL: &str = r#"
kind = "simulated"
[[switch]]
name = "foot switch"
does = "done"
[[switch]]
name = "left button"
does = "undo"
[buzzer]
[lamp]
active_low = true
[lights]
rack = "yard rack"
count = 30
every = 3
[backlight]
"#;

#[test]
fn the_file_is_read_with_its_defaults() {
    let config = Config::read(ALL).expect("the file is fine");
    assert_eq!(config.kind, Kind::Simulated);
    let foot = &config.switches[0];
    assert_eq!((foot.does, foot.active_low), (Press::Done, true));
    assert_eq!((foot.settle_ms, foot.again_after_ms), (20, 1_500));
    let backlight = config.backlight.expect("there is one");
    assert_eq!(
        (backlight.dim_after_s, backlight.bright, backlight.dim),
        (600, 100, 15)
    );
}

#[test]
fn faults_of_the_file_name_the_line_and_what_is_right() {
    let cases = [
        ("", None, "kind"),
        ("kind = \"toy\"", Some(1), "linux"),
        ("kind = \"simulated\"\nbuzer = {}", Some(2), "buzer"),
        ("kind = \"linux\"\n[lamp]\nline = 3", None, "chip"),
        (
            "kind = \"simulated\"\n[buzzer]\nquiet = [\"22:00\", \"24:00\"]",
            Some(3),
            "24:00",
        ),
        (
            "kind = \"simulated\"\n[buzzer]\nquiet = [\"9:00\", \"10:00\"]",
            Some(3),
            "9:00",
        ),
        (
            "kind = \"simulated\"\n[[switch]]\nname = \"\"\ndoes = \"done\"",
            None,
            "name",
        ),
        (
            "kind = \"simulated\"\n[[switch]]\nname = \"a\"\ndoes = \"jump\"",
            Some(4),
            "done",
        ),
        (
            "kind = \"simulated\"\n[[switch]]\nname = \"a\"\ndoes = \"done\"\nsettle_ms = 900",
            None,
            "500",
        ),
        (
            "kind = \"simulated\"\n[lights]\ncount = 401\nevery = 1",
            None,
            "400",
        ),
        (
            "kind = \"simulated\"\n[lights]\ncount = 4\nevery = 0",
            None,
            "every",
        ),
        (
            "kind = \"simulated\"\n[backlight]\ndim = 0",
            None,
            "1 to 100",
        ),
        ("kind = \"linux\"\n[backlight]", None, "folder"),
        ("kind = ", Some(1), ""),
    ];
    for (text, line, says) in cases {
        let fault = Config::read(text).expect_err(text);
        assert!(fault.what.contains(says), "{text:?}: {fault}");
        if line.is_some() {
            assert_eq!(fault.line, line, "{text:?}: {fault}");
        }
        assert!(!fault.what.ends_with('.'), "{fault}");
    }
}

#[test]
fn simulated_devices_show_what_they_are_told() {
    let faults = Faults::default();
    let mut opened = open(&Config::read(ALL).expect("fine"), &faults);
    let panel = opened.panel.expect("simulated");
    let wanted = Wanted {
        lamp: Glow::Lit,
        hole: Some(("yard rack".into(), 2)),
        dim: true,
    };
    opened.outputs.step(0, &wanted);
    opened.outputs.play(0, Tune::YourTurn);
    assert!(opened.outputs.step(1, &wanted));
    let state = panel.state();
    assert_eq!(
        (state.lamp, state.sounds, state.backlight),
        (Some(true), Some(true), Some(15))
    );
    let lit: Vec<usize> = (0..30).filter(|at| state.lights[*at] != [0; 3]).collect();
    assert_eq!(lit, [3], "hole 2 of three lights each");

    assert!(panel.push("left button", false));
    let mut presses = Vec::new();
    for now in 0..40 {
        panel.push("left button", now >= 10);
        presses.extend(opened.switches.step(now * 5));
    }
    assert_eq!(presses, [Press::Undo]);
    assert!(!panel.push("third button", true), "there is none");
    assert!(faults.list().is_empty());
}

#[cfg(target_os = "linux")]
#[test]
fn what_is_missing_is_told_each_once_and_the_rest_works() {
    let folder = tempfile::tempdir().expect("a folder");
    std::fs::write(folder.path().join("max_brightness"), "4095\n").expect("written");
    std::fs::write(folder.path().join("brightness"), "4095").expect("written");
    let backlight = folder.path().display();
    let text = format!(
        "kind = \"linux\"\n[[switch]]\nname = \"foot switch\"\ndoes = \"done\"\n\
         chip = \"/dev/gpiochip97\"\nline = 1\n[buzzer]\nchip = \"/dev/gpiochip97\"\nline = 2\n\
         [lamp]\nchip = \"/dev/null\"\nline = 3\n\
         [lights]\ndevice = \"/dev/spidev97.0\"\ncount = 9\nevery = 3\n\
         [backlight]\nfolder = \"{backlight}\"\n"
    );
    let faults = Faults::default();
    let mut opened = open(&Config::read(&text).expect("fine"), &faults);
    let devices: Vec<String> = faults.list().into_iter().map(|f| f.device).collect();
    assert_eq!(devices, ["buzzer", "foot switch", "lamp", "lights"]);
    assert!(opened.switches.is_empty() && opened.panel.is_none());
    let dim = Wanted {
        dim: true,
        ..Wanted::default()
    };
    opened.outputs.step(0, &dim);
    let brightness = std::fs::read_to_string(folder.path().join("brightness"));
    assert_eq!(brightness.expect("read"), "614", "15 percent of 4095");
}

#[test]
fn orders_never_wait_and_never_grow() {
    let orders = Orders::default();
    for _ in 0..100 {
        orders.play(Tune::RestOver);
    }
    orders.play(Tune::YourTurn);
    let wanted = Wanted {
        lamp: Glow::Lit,
        ..Wanted::default()
    };
    orders.show(wanted.clone());
    let (shown, tunes) = orders.next(Duration::ZERO);
    assert_eq!(shown, wanted);
    assert_eq!(tunes.len(), hardware::orders::TUNES_MAX);
    assert_eq!(tunes.last(), Some(&Tune::YourTurn), "the newest is kept");
    let (shown, tunes) = orders.next(Duration::ZERO);
    assert_eq!((shown, tunes), (wanted, Vec::new()), "what is shown stays");
}

/// Lines are read closely only while one of them settles, and the press is still told.
#[test]
fn switches_that_rest_are_read_less_often() {
    let faults = Faults::default();
    let mut opened = open(&Config::read(ALL).expect("the file is fine"), &faults);
    let panel = opened.panel.expect("simulated");
    let (mut now, mut told, mut readings) = (0, Vec::new(), 0);
    let mut run = |until: u64, readings: &mut u32| {
        while now < until {
            now += opened.switches.again_in_ms(now);
            *readings += 1;
            told.extend(opened.switches.step(now));
        }
    };
    run(1_000, &mut readings);
    assert!(readings <= 60, "{readings} readings in a second of rest");
    panel.push("foot switch", true);
    run(1_100, &mut readings);
    panel.push("foot switch", false);
    run(2_000, &mut readings);
    assert!(readings <= 130, "{readings} readings in two seconds");
    assert_eq!(told, [Press::Done]);
}

#[test]
fn the_buzzer_is_silent_in_its_quiet_hours() {
    let quiet = |hours: &str| {
        let text = format!("kind = \"simulated\"\n[buzzer]\nquiet = {hours}\n");
        let config = Config::read(&text).expect("hours");
        let buzzer = config.buzzer.expect("a buzzer");
        let minutes = [0, 419, 420, 421, 1_259, 1_260, 1_319, 1_320, 1_439];
        minutes.map(|minute| buzzer.is_quiet_at(minute))
    };
    let (t, f) = (true, false);
    assert_eq!(quiet("[\"22:00\", \"07:00\"]"), [t, t, f, f, f, f, f, t, t]);
    assert_eq!(quiet("[\"07:00\", \"21:00\"]"), [f, f, t, t, t, f, f, f, f]);
    assert_eq!(quiet("[\"07:00\", \"07:00\"]"), [f; 9], "no time at all");
}
