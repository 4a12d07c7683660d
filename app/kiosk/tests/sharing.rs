//! The command line of plans, sticks, codes and copies, and the page's board following the kiosk.
use chrono::NaiveDate;
use kiosk::cli::{Streams, main};
use kiosk::clock::BenchClock;
use kiosk::lan::{self, Lan};
use kiosk::shared::Shared;
use kiosk::stick::Stick;
use kiosk::{Folder, Kiosk};
use std::ffi::OsString;
use std::fs;
use std::os::unix::fs::symlink;
use std::path::Path;
use view::{Screen, Tap};

struct Said {
    well: bool,
    out: String,
    err: String,
}

/// Runs one command line on a data folder, with `input` on standard input.
fn pinladder(data: &Path, words: &[&str], input: &str) -> Said {
    let (mut out, mut err) = (Vec::new(), Vec::new());
    let mut args: Vec<OsString> = vec!["pinladder".into(), "--data".into(), data.into()];
    args.extend(words.iter().map(OsString::from));
    let mut streams = Streams {
        input: &mut input.as_bytes(),
        out: &mut out,
        err: &mut err,
    };
    let code = main(args, &mut streams);
    let text = |bytes| String::from_utf8(bytes).expect("words are UTF-8");
    Said {
        well: format!("{code:?}") == format!("{:?}", std::process::ExitCode::SUCCESS),
        out: text(out),
        err: text(err),
    }
}

fn path(folder: &Path, name: &str) -> String {
    folder.join(name).display().to_string()
}

const HEADER: &str = "date,lifter,lift,sets,reps,load,note\n";
const CODE: &str = "slow-off-the-floor";

#[test]
fn a_blank_plan_is_written_checked_and_taken() {
    let data = tempfile::tempdir().expect("a folder");
    for name in ["blank.csv", "blank.xlsx"] {
        let file = path(data.path(), name);
        let said = pinladder(data.path(), &["plan", "blank", "--out", &file], "");
        assert!(said.well, "{}", said.err);
        let said = pinladder(data.path(), &["check", &file], "");
        assert_eq!(said.out, format!("{file}: no fault\n"));
        let said = pinladder(data.path(), &["take", &file], "");
        assert!(
            said.out.contains("3 rows, 3 lifters, 3 days"),
            "{}",
            said.out
        );
        // Never over a file.
        let said = pinladder(data.path(), &["plan", "blank", "--out", &file], "");
        assert!(
            !said.well && said.err.contains("File exists"),
            "{}",
            said.err
        );
    }
    let said = pinladder(data.path(), &["plan", "blank", "--out", "blank.doc"], "");
    assert!(
        said.err.contains("ends in neither .csv nor .xlsx"),
        "{}",
        said.err
    );
}

#[test]
fn a_stick_is_shown_and_taken_with_the_code_alone() {
    let data = tempfile::tempdir().expect("a folder");
    let stick = tempfile::tempdir().expect("a folder");
    let place = stick.path().display().to_string();
    fs::create_dir(stick.path().join("plans")).expect("a folder");
    let one = format!(
        "{HEADER}2027-03-01,Tevita,rack pull,1,5,500 lb,\n2027-03-03,Tevita,deadlift,1,5,300 lb,\n"
    );
    let two = format!("{HEADER}2027-03-01,Hamza,rack pull,1,5,180 kg,\n");
    fs::write(stick.path().join("march.csv"), one).expect("writes");
    fs::write(stick.path().join("plans/hamza.csv"), two).expect("writes");
    let said = pinladder(data.path(), &["stick", &place], "");
    assert_eq!(
        said.out,
        "march.csv: 2 rows, no fault\nplans/hamza.csv: 1 row, no fault\n\
         Hamza: 2027-03-01, 1 new day\nTevita: 2027-03-01 to 2027-03-03, 2 new days\n"
    );
    let before = pinladder(data.path(), &["journal", "verify"], "").out;
    // No code is set, the wrong one, none at all.
    let accept = |input: &str| pinladder(data.path(), &["stick", &place, "--accept"], input);
    let said = accept(&format!("{CODE}\n"));
    assert!(
        !said.well && said.err.contains("no code is set"),
        "{}",
        said.err
    );
    let said = pinladder(data.path(), &["code"], &format!("{CODE}\n"));
    assert!(said.well, "{}", said.err);
    assert!(!said.out.contains(CODE) && !said.err.contains(CODE));
    let said = accept("guess-work\n");
    assert!(
        !said.well && said.err.contains("that is not the code"),
        "{}",
        said.err
    );
    assert!(!accept("").well);
    assert_eq!(
        before,
        pinladder(data.path(), &["journal", "verify"], "").out
    );
    let said = accept(&format!("{CODE}\n"));
    assert!(
        said.well && said.out.ends_with("took 3 rows\n"),
        "{}{}",
        said.out,
        said.err
    );
    let sheet = ["sheet", "--date", "2027-03-01", "--lifter", "hamza"];
    assert!(
        pinladder(data.path(), &sheet, "")
            .out
            .contains("rack pull, 180 kg")
    );
    // Again: nothing changes.
    let said = pinladder(data.path(), &["stick", &place], "");
    assert!(
        said.out
            .contains("Tevita: 2027-03-01 to 2027-03-03, 2 days as before"),
        "{}",
        said.out
    );
}

#[test]
fn a_stick_with_one_fault_is_refused_whole() {
    let data = tempfile::tempdir().expect("a folder");
    let stick = tempfile::tempdir().expect("a folder");
    let place = stick.path().display().to_string();
    pinladder(data.path(), &["code"], CODE);
    let good = format!("{HEADER}2027-03-01,Tevita,rack pull,1,5,500 lb,\n");
    fs::write(stick.path().join("a.csv"), &good).expect("writes");
    fs::write(
        stick.path().join("b.csv"),
        good.replace("500 lb", "500 stone"),
    )
    .expect("writes");
    fs::write(stick.path().join("c.csv"), &good).expect("writes");
    pinladder(data.path(), &["sheet"], "");
    let before = pinladder(data.path(), &["journal", "verify"], "").out;
    let said = pinladder(data.path(), &["stick", &place, "--accept"], CODE);
    assert!(!said.well);
    assert_eq!(
        said.out,
        "a.csv: 1 row, no fault\n\
         b.csv, row 2, column load: read \"500 stone\", a mass in a unit not known here; \
         write a mass such as \"20 kg\" or \"45 lb\"\n\
         c.csv: read rack pull for Tevita on 2027-03-01, which a.csv has too; \
         keep one of the two plans on the stick\n\
         nothing of it can be taken until the faults are mended\nrefused: nothing was taken\n"
    );
    assert_eq!(
        before,
        pinladder(data.path(), &["journal", "verify"], "").out
    );
}

/// Links, devices, pipes, folders, large files, many files, odd names.
#[test]
fn hostile_sticks() {
    let stick = tempfile::tempdir().expect("a folder");
    let outside = tempfile::tempdir().expect("a folder");
    let gym = domain::Gym::default();
    let put = |name: &str, bytes: &[u8]| fs::write(stick.path().join(name), bytes).expect("writes");
    let secret = outside.path().join("secret.csv");
    fs::write(&secret, "date,lifter\nsecret,secret\n").expect("writes");
    symlink(&secret, stick.path().join("link.csv")).expect("links");
    symlink("/dev/zero", stick.path().join("zero.csv")).expect("links");
    symlink("loop.csv", stick.path().join("loop.csv")).expect("links");
    symlink(outside.path(), stick.path().join("plans")).expect("links");
    fs::create_dir(stick.path().join("folder.csv")).expect("a folder");
    let pipe = stick.path().join("pipe.csv");
    let made = std::process::Command::new("mkfifo").arg(&pipe).status();
    assert!(made.expect("coreutils has it").success());
    put("large.csv", &vec![b'x'; (4 << 20) + 1]);
    put(".~lock.plan.csv", b"x");
    put("run.sh", b"#!/bin/sh\ntouch ran\n");
    put("autorun.inf", b"[autorun]\nopen=run.sh\n");
    put("name\nwith lines.csv", b"date\n");
    put("\u{202e}vsc.csv", b"");
    let read = Stick::read(stick.path(), &gym).expect("reads");
    let passed: Vec<String> = read.passed.iter().map(ToString::to_string).collect();
    assert_eq!(
        passed,
        [
            "folder.csv: no file but a folder, a device or a pipe; it was not opened further",
            "large.csv: larger than the most, 4194304 bytes",
            "link.csv: a link; links are not followed",
            "loop.csv: a link; links are not followed",
            "pipe.csv: no file but a folder, a device or a pipe; it was not opened further",
            "zero.csv: a link; links are not followed",
        ]
    );
    let names: Vec<&str> = read.plans.iter().map(|plan| plan.name.as_str()).collect();
    assert_eq!(names, ["name\u{fffd}with lines.csv", "\u{202e}vsc.csv"]);
    assert!(!read.is_sound() && !stick.path().join("ran").exists());
    // The stick's own folder is no link either, nor a file.
    let door = outside.path().join("door");
    symlink(stick.path(), &door).expect("links");
    Stick::read(&door, &gym).expect_err("a link");
    Stick::read(&secret, &gym).expect_err("a file");
    Stick::read(&outside.path().join("none"), &gym).expect_err("nothing");
    for n in 0..600 {
        put(&format!("many-{n:03}.csv"), b"date\n");
    }
    let read = Stick::read(stick.path(), &gym).expect("reads");
    assert_eq!(read.plans.len(), 20);
    assert!(
        read.passed
            .iter()
            .any(|told| told.to_string().starts_with("more than 500 plans"))
    );
}

#[test]
fn the_record_goes_back_to_the_stick() {
    let data = tempfile::tempdir().expect("a folder");
    let stick = tempfile::tempdir().expect("a folder");
    let place = stick.path().display().to_string();
    pinladder(data.path(), &["sheet"], "");
    let said = pinladder(data.path(), &["stick", &place, "--record"], "");
    assert!(
        said.well && said.out.ends_with("; the stick may be pulled\n"),
        "{}{}",
        said.out,
        said.err
    );
    let folders: Vec<_> = fs::read_dir(stick.path())
        .expect("reads")
        .flatten()
        .collect();
    assert_eq!(folders.len(), 1);
    let folder = folders[0].path();
    let csv = fs::read_to_string(folder.join("record.csv")).expect("is there");
    assert!(csv.starts_with("set,lift_no,"), "{csv}");
    let json = fs::read_to_string(folder.join("record.json")).expect("is there");
    assert!(json.starts_with("{\"version\":1,"));
    let copy = journal::verify(&folder.join("journal.sqlite")).expect("sound");
    let own = journal::verify(&data.path().join("journal.sqlite")).expect("sound");
    assert_eq!(copy, own);
    // A stick that cannot be written says so.
    let said = pinladder(data.path(), &["stick", "/proc", "--record"], "");
    assert!(
        !said.well && said.err.contains("/proc/pinladder-record-"),
        "{}",
        said.err
    );
}

#[test]
fn a_copy_is_made_and_put_back() {
    let data = tempfile::tempdir().expect("a folder");
    let place = tempfile::tempdir().expect("a folder");
    let to = place.path().display().to_string();
    let before = pinladder(data.path(), &["sheet", "--date", "2026-11-25"], "").out;
    let said = pinladder(data.path(), &["journal", "backup", "--to", &to], "");
    assert!(said.well, "{}", said.err);
    let copy = fs::read_dir(place.path())
        .expect("reads")
        .flatten()
        .next()
        .expect("a copy")
        .path();
    let plan = path(data.path(), "p.csv");
    fs::write(
        &plan,
        format!("{HEADER}2026-11-25,Tevita,rack pull,1,5,500 lb,other\n"),
    )
    .expect("writes");
    pinladder(data.path(), &["take", &plan], "");
    let sheet = ["sheet", "--date", "2026-11-25"];
    assert_ne!(before, pinladder(data.path(), &sheet, "").out);
    let copy = copy.display().to_string();
    let said = pinladder(data.path(), &["journal", "restore", &copy], "");
    assert!(
        said.well && said.out.ends_with("restored\n"),
        "{}{}",
        said.out,
        said.err
    );
    assert_eq!(before, pinladder(data.path(), &sheet, "").out);
    let said = pinladder(data.path(), &["journal", "restore", &plan], "");
    assert!(
        !said.well && said.err.contains("is not a database"),
        "{}",
        said.err
    );
}

/// A lift at the kiosk: its board follows, and its end has a link until that was opened.
#[test]
fn the_page_follows_the_kiosk() {
    let data = tempfile::tempdir().expect("a folder");
    let folder = Folder::open(Some(data.path())).expect("opens");
    let day = NaiveDate::from_ymd_opt(2026, 11, 25).expect("a day");
    let clock = BenchClock::at(day.and_hms_opt(18, 0, 0).expect("a time"));
    let mut kiosk = Kiosk::open(&folder, Box::new(clock.clone())).expect("opens");
    let desk = share::Desk::new(data.path(), || 0);
    kiosk.share(Shared::new(
        desk.clone(),
        Some("http://192.168.1.20:8470".into()),
    ));
    let lifter = {
        let entries = kiosk.day().iter().filter(|entry| entry.outcome.is_ok());
        entries
            .map(|entry| entry.lifter.clone())
            .next()
            .expect("somebody lifts")
    };
    kiosk.tap(&Tap::Lifter(lifter.clone()));
    let mut frame = kiosk.tap(&Tap::Main);
    for _ in 0..40 {
        if matches!(frame.screen, Screen::End(_)) {
            break;
        }
        clock.advance_ms(300_000);
        frame = kiosk.tap(&Tap::Main);
    }
    let Screen::End(end) = &frame.screen else {
        panic!("no end: {:?}", frame.screen);
    };
    let link = end.link.as_ref().expect("a link");
    assert_eq!(link.dark.len(), link.size * link.size);
    assert_eq!(kiosk.frame(), frame, "the same link while nothing changes");
    clock.advance_ms(10 * 60_000);
    let Screen::End(end) = kiosk.frame().screen else {
        panic!("the end stays");
    };
    assert_eq!(end.link, None, "ten minutes after the lift");
    // On loopback nobody else could follow it.
    assert_eq!(
        kiosk::shared::base("127.0.0.1:8470".parse().expect("one"), false),
        None
    );
}

/// Whoever is asked to trust the page's certificate finds its fingerprint at the kiosk.
#[test]
fn the_kiosk_shows_where_its_page_is_and_its_fingerprint() {
    let data = tempfile::tempdir().expect("a folder");
    let free = std::net::TcpListener::bind("127.0.0.1:0").expect("loopback");
    let port = free.local_addr().expect("an address").port();
    drop(free);
    let settings = format!("share = true\ntls = true\nport = {port}\n");
    fs::write(data.path().join("kiosk.toml"), settings).expect("writes");
    let folder = Folder::open(Some(data.path())).expect("opens");
    let mut kiosk = Kiosk::open(&folder, Box::new(kiosk::SystemClock)).expect("opens");
    let rows = |frame: view::Frame| {
        let Screen::List(list) = frame.screen else {
            panic!("no list: {:?}", frame.screen);
        };
        list.rows
    };
    assert_eq!(rows(kiosk.tap(&Tap::Panel)).len(), 8, "off");
    let desk = share::Desk::new(data.path(), || 0);
    let shown = Lan::of(&kiosk, &folder, desk);
    lan::start(shown.clone());
    for _ in 0..200 {
        if !shown.card().fingerprint.is_empty() {
            break;
        }
        std::thread::sleep(std::time::Duration::from_millis(100));
    }
    let print = shown.card().fingerprint.replace(':', " ");
    assert_eq!(print.split(' ').count(), 32, "SHA-256: {print:?}");
    shown.follow(&mut kiosk);
    let rows = rows(kiosk.frame());
    assert_eq!(rows[8].detail, format!("https://127.0.0.1:{port}/"));
    let Screen::Page(page) = kiosk.tap(&Tap::Row(8)).screen else {
        panic!("no page");
    };
    assert!(page.lines[0].ends_with(&rows[8].detail) && page.lines[1].ends_with(&print));
    let root = shown.card().root_fingerprint.replace(':', " ");
    assert!(page.lines[2].contains("root.crt") && page.lines[2].ends_with(&root));
    assert!(matches!(kiosk.tap(&Tap::Undo).screen, Screen::List(_)));
}
