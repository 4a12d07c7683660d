//! `pinladder doctor`: a sentence each, what to do, a true exit code, and nothing changed.
use chrono::NaiveDate;
use kiosk::clock::BenchClock;
use kiosk::doctor::{Finding, How, is_well, look};
use kiosk::{Folder, Kiosk, SystemClock};
use std::collections::BTreeMap;
use std::fs;
use std::path::Path;
use std::process::Command;

const ALL: [&str; 10] = [
    "data",
    "disk",
    "clock",
    "screen",
    "touch",
    "devices",
    "lan",
    "certificate",
    "copies",
    "hub",
];

/// A machine with nothing plugged in.
fn bare() -> tempfile::TempDir {
    tempfile::tempdir().expect("a folder")
}

/// By a clock of that year.
fn kiosk_at(data: &Path, year: i32) -> Kiosk {
    let folder = Folder::open(Some(data)).expect("opens");
    let day = NaiveDate::from_ymd_opt(year, 11, 2).expect("a day");
    let clock = BenchClock::at(day.and_hms_opt(18, 0, 0).expect("a time"));
    Kiosk::open(&folder, Box::new(clock)).expect("opens")
}

/// By the machine's own clock.
fn kiosk_now(data: &Path) -> Kiosk {
    let folder = Folder::open(Some(data)).expect("opens");
    Kiosk::open(&folder, Box::new(SystemClock)).expect("opens")
}

/// Every file of a folder, byte by byte.
fn all_of(folder: &Path) -> BTreeMap<String, Vec<u8>> {
    let mut all = BTreeMap::new();
    for entry in fs::read_dir(folder).expect("lists") {
        let path = entry.expect("an entry").path();
        let name = path.display().to_string();
        if path.is_dir() {
            all.insert(name, Vec::new());
            all.extend(all_of(&path));
        } else {
            all.insert(name, fs::read(&path).expect("reads"));
        }
    }
    all
}

fn of<'a>(findings: &'a [Finding], what: &str) -> &'a Finding {
    let found = findings.iter().find(|finding| finding.what == what);
    found.expect("all is looked at")
}

/// Looks without changing anything.
fn looked(data: &Path, root: &Path) -> Vec<Finding> {
    let before = data.exists().then(|| all_of(data));
    let findings = look(data, root);
    assert_eq!(
        data.exists().then(|| all_of(data)),
        before,
        "nothing is changed"
    );
    for finding in &findings {
        assert!(ALL.contains(&finding.what));
        let silent = matches!(finding.how, How::Soon | How::Wrong) && finding.to_do.is_empty();
        assert!(!silent, "says what to do: {finding:?}");
    }
    for what in ALL {
        of(&findings, what);
    }
    findings
}

#[test]
fn a_folder_that_is_not_there_is_not_made() {
    let root = bare();
    let data = root.path().join("nowhere");
    let findings = looked(&data, root.path());
    assert_eq!(of(&findings, "data").how, How::Off);
    assert!(!data.exists());
}

#[test]
fn a_sound_kiosk_is_well_beside_the_one_that_runs_and_after_it() {
    let (data, root) = (bare(), bare());
    let kiosk = kiosk_now(data.path());
    let running = look(data.path(), root.path());
    assert_eq!(of(&running, "data").how, How::Fine);
    drop(kiosk);
    let findings = looked(data.path(), root.path());
    let data_found = of(&findings, "data");
    assert_eq!(data_found.how, How::Fine, "{data_found:?}");
    assert!(data_found.found.contains("events"));
    assert!(is_well(&findings), "{findings:?}");
}

#[test]
fn damage_a_full_wrong_file_and_a_clock_set_back_are_told_with_what_to_do() {
    let (data, root) = (bare(), bare());
    // By a clock that is years ahead.
    drop(kiosk_at(data.path(), 2099));
    let clock = look(data.path(), root.path());
    assert_eq!(
        of(&clock, "clock").how,
        How::Wrong,
        "{:?}",
        of(&clock, "clock")
    );

    let journal = data.path().join(journal::JOURNAL_FILE);
    let mut bytes = fs::read(&journal).expect("reads");
    let at = bytes
        .windows(11)
        .position(|w| w == b"kiosk.toml\"")
        .expect("is there");
    bytes[at] ^= 1;
    fs::write(&journal, bytes).expect("writes");
    fs::write(data.path().join("kiosk.toml"), "port = \"x\"\n").expect("writes");
    fs::write(data.path().join("hardware.toml"), "kind = 7\n").expect("writes");
    let findings = looked(data.path(), root.path());
    for what in ["data", "devices"] {
        assert_eq!(of(&findings, what).how, How::Wrong, "{what}");
    }
    assert!(
        findings
            .iter()
            .any(|f| f.found.contains("kiosk.toml") && f.how == How::Wrong)
    );
    assert!(!is_well(&findings));
}

#[test]
fn what_is_named_and_not_there_is_told() {
    let (data, root) = (bare(), bare());
    drop(kiosk_now(data.path()));
    let write = |text: &str| fs::write(data.path().join("kiosk.toml"), text).expect("writes");
    write(
        "backup = \"/nowhere/at/all\"\nshare = true\naddress = \"192.0.2.9\"\n\
         certificate = \"/nowhere/gym.pem\"\nkey = \"/nowhere/gym.key\"\n\
         hub = \"postgresql://north@127.0.0.1:1/pinladder\"\n",
    );
    let findings = looked(data.path(), root.path());
    for what in ["copies", "lan", "certificate"] {
        assert_eq!(of(&findings, what).how, How::Wrong, "{what}");
    }
    assert_eq!(of(&findings, "hub").how, How::Soon, "the rack works alone");
    write("hub = \"postgresql://north@192.0.2.1/pinladder\"\n");
    assert_eq!(
        of(&looked(data.path(), root.path()), "hub").how,
        How::Wrong,
        "no TLS"
    );
}

#[test]
fn a_touch_panel_is_known_by_what_the_system_says_of_it() {
    let (data, root) = (bare(), bare());
    let udev = root.path().join("run/udev/data");
    fs::create_dir_all(&udev).expect("makes");
    fs::create_dir_all(root.path().join("dev/input")).expect("makes");
    fs::write(udev.join("c13:67"), "E:ID_INPUT_MOUSE=1\n").expect("writes");
    assert_eq!(of(&looked(data.path(), root.path()), "touch").how, How::Off);
    fs::write(
        udev.join("c13:70"),
        "E:ID_INPUT=1\nE:ID_INPUT_TOUCHSCREEN=1\n",
    )
    .expect("writes");
    assert_eq!(
        of(&looked(data.path(), root.path()), "touch").how,
        How::Wrong,
        "closed"
    );
    fs::write(root.path().join("dev/input/event6"), "").expect("writes");
    assert_eq!(
        of(&looked(data.path(), root.path()), "touch").how,
        How::Fine
    );
}

#[test]
fn the_command_says_it_in_lines_and_as_json_with_a_true_exit_code() {
    let data = bare();
    drop(kiosk_now(data.path()));
    let run = |args: &[&str]| {
        let mut command = Command::new(env!("CARGO_BIN_EXE_pinladder"));
        command
            .arg("--data")
            .arg(data.path())
            .arg("doctor")
            .args(args);
        command.output().expect("runs")
    };
    let lines = run(&[]);
    let text = String::from_utf8_lossy(&lines.stdout).into_owned();
    for what in ALL {
        assert!(
            text.contains(&format!("\n{what} (")) || text.starts_with(what),
            "{what}: {text}"
        );
    }
    let json = run(&["--json"]);
    let read: serde_json::Value = serde_json::from_slice(&json.stdout).expect("JSON");
    let wrong = read["findings"].as_array().expect("a list").iter();
    let wrong = wrong.filter(|finding| finding["how"] == "wrong").count();
    assert_eq!(read["well"], wrong == 0);
    assert_eq!(json.status.success(), wrong == 0);
    fs::write(data.path().join(journal::JOURNAL_FILE), "no journal").expect("writes");
    let damaged = run(&["--json"]);
    assert_eq!(damaged.status.code(), Some(1));
    let read: serde_json::Value = serde_json::from_slice(&damaged.stdout).expect("JSON");
    assert_eq!(read["well"], false);
}
