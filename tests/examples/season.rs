//! A season of invented lifting in a data folder, entered through the kiosk itself, and the page
//! over it: what the browser scripts look at. In a folder that has lifts already, only the page.
//!
//! ```text
//! cargo run -p acceptance --example season -- DIR PORT [WEEKS]
//! ```
//! Sticks appear in DIR/stick, copies go to DIR/second. Then one command a line on standard input:
//! `link` prints the link of the lift that ended last, `set` enters the next set at the kiosk,
//! `taps N` that many with the milliseconds that each took, `language CODE` chooses the kiosk's,
//! `quit` ends.
use chrono::{Datelike as _, Days, NaiveDate};
use kiosk::clock::{BenchClock, milliseconds, stopwatch};
use kiosk::coach_desk::CoachDesk;
use kiosk::input::Input;
use kiosk::lan::{self, Lan};
use kiosk::nightly::{self, Nightly};
use kiosk::shared::Shared;
use kiosk::{Folder, Kiosk};
use std::io::{BufRead as _, Write as _};
use std::path::Path;
use std::sync::mpsc;
use std::time::Duration;
use view::{Chosen, Frame, Language, Screen, Tap};

/// Weeks of it, where none are named.
const WEEKS: u64 = 24;
/// Taps at most for one lift.
const TAPS_MAX: usize = 60;
/// The last day, on which somebody is at the bar.
const LAST: (i32, u32, u32) = (2026, 11, 25);

fn main() {
    let mut args = std::env::args().skip(1);
    let (Some(dir), Some(port)) = (args.next(), args.next()) else {
        panic!("give a folder and a port");
    };
    let dir = Path::new(&dir);
    let weeks = args.next().map_or(WEEKS, |n| n.parse().expect("weeks"));
    let (stick, second) = (dir.join("stick"), dir.join("second"));
    for place in [&stick, &second] {
        std::fs::create_dir_all(place).expect("a folder");
    }
    let settings = format!(
        "share = true\nport = {port}\nstick = \"{}\"\nbackup = \"{}\"\n",
        stick.display(),
        second.display()
    );
    std::fs::write(dir.join("kiosk.toml"), settings).expect("writes");
    let folder = Folder::open(Some(dir)).expect("opens");
    let (year, month, day) = LAST;
    let last = NaiveDate::from_ymd_opt(year, month, day).expect("a day");
    let first = last - Days::new(7 * weeks);
    let clock = BenchClock::at(first.and_hms_opt(18, 0, 0).expect("a time"));
    let mut kiosk = Kiosk::open(&folder, Box::new(clock.clone())).expect("opens");
    let mut sets = 0;
    if !kiosk.state().lifts.is_empty() {
        clock.advance_ms(i64::try_from(7 * weeks).expect("few") * 86_400_000);
    }
    while kiosk.date() < last {
        if kiosk.date().weekday().num_days_from_monday() % 3 != 2 {
            sets = evening(&mut kiosk, &clock, sets);
        }
        let night = 24 * 3_600_000 - clock_ms(&kiosk);
        clock.advance_ms(night + 18 * 3_600_000);
    }
    share::set_code(dir, "flat-backs-only").expect("sets");
    let desk = share::Desk::new(dir, milliseconds());
    kiosk.share(Shared::new(desk.clone(), Some("http://127.0.0.1".into())));
    let (inputs, inbox) = mpsc::channel();
    let coach_desk = CoachDesk::open(&kiosk, &folder, desk.clone(), inputs.clone());
    let lan = Lan::of(&kiosk, &folder, desk.clone());
    lan.follow(&mut kiosk);
    lan::start(lan);
    kiosk::signals::start(inputs);
    let nightly = Nightly {
        folder: dir.to_owned(),
        place: second,
        keep: 7,
    };
    nightly::start(nightly, desk.clone());
    say(&format!(
        "ready, {sets} sets, page at http://127.0.0.1:{port}/, code flat-backs-only"
    ));
    let kiosk = (kiosk, coach_desk, inbox);
    obey(kiosk, &clock, &desk);
}

/// Milliseconds since midnight on the kiosk's clock.
fn clock_ms(kiosk: &Kiosk) -> i64 {
    let midnight = kiosk.date().and_hms_opt(0, 0, 0).expect("midnight");
    kiosk.now().0 - midnight.and_utc().timestamp_millis()
}

/// Everybody who has a lift lifts it, one after the other; every so often a back moves or reps
/// are missed.
fn evening(kiosk: &mut Kiosk, clock: &BenchClock, mut sets: usize) -> usize {
    let entries = kiosk.day().iter().filter(|entry| entry.outcome.is_ok());
    let lifters: Vec<String> = entries.map(|entry| entry.lifter.clone()).collect();
    for lifter in lifters {
        let mut frame = kiosk.tap(&Tap::Lifter(lifter.clone()));
        for _ in 0..TAPS_MAX {
            if matches!(frame.screen, Screen::End(_)) && frame.lifter == lifter {
                break;
            }
            if frame.lifter != lifter {
                frame = kiosk.tap(&Tap::Lifter(lifter.clone()));
                continue;
            }
            clock.advance_ms(95_000);
            frame = step(kiosk, &frame, sets);
            sets += usize::from(matches!(frame.screen, Screen::Rest(_) | Screen::End(_)));
        }
    }
    sets
}

/// One tap on the way through a lift.
fn step(kiosk: &mut Kiosk, frame: &Frame, sets: usize) -> Frame {
    let Screen::Bar(bar) = &frame.screen else {
        return kiosk.tap(&Tap::Main);
    };
    let is_work = bar
        .ladder
        .last()
        .is_some_and(|row| row.state == view::draw::RowState::Now);
    match (is_work, sets % 13) {
        (true, 5) => {
            kiosk.tap(&Tap::BackMoved);
            kiosk.tap(&Tap::Number(4))
        }
        (true, 9) => {
            kiosk.tap(&Tap::OtherReps);
            kiosk.tap(&Tap::Number(3))
        }
        _ => kiosk.tap(&Tap::Main),
    }
}

/// Obeys standard input while the kiosk ticks and its desk takes orders.
fn obey(
    (mut kiosk, mut coach_desk, inputs): (Kiosk, CoachDesk, mpsc::Receiver<Input>),
    clock: &BenchClock,
    desk: &share::Desk,
) {
    let (lines, inbox) = mpsc::channel();
    let reader = std::thread::spawn(move || {
        for line in std::io::stdin().lock().lines().map_while(Result::ok) {
            if lines.send(line).is_err() {
                return;
            }
        }
    });
    loop {
        while let Ok(input) = inputs.try_recv() {
            kiosk::run::answer(&mut kiosk, &mut coach_desk, Ok(input));
        }
        let line = inbox.recv_timeout(Duration::from_millis(200));
        let line = match line.as_deref() {
            Err(mpsc::RecvTimeoutError::Timeout) => {
                kiosk.tick();
                continue;
            }
            Ok("quit") | Err(mpsc::RecvTimeoutError::Disconnected) => break,
            Ok(line) => line,
        };
        let (word, about) = line.split_once(' ').unwrap_or((line, ""));
        say(&match word {
            "set" => one_set(&mut kiosk, clock),
            "taps" => taps(&mut kiosk, clock, about.parse().expect("a number")),
            "link" => link(&kiosk, desk),
            "language" => {
                let language = Language::of_code(about).expect("a language");
                let chosen = Chosen {
                    language,
                    ..Chosen::default()
                };
                kiosk.choose_look(chosen).expect("kept");
                "chosen".to_owned()
            }
            other => format!("no command: {other}"),
        });
    }
    drop(reader);
}

/// The next tap of somebody who lifts today.
fn one_set(kiosk: &mut Kiosk, clock: &BenchClock) -> String {
    clock.advance_ms(95_000);
    let frame = kiosk.frame();
    let mut entries = kiosk.day().iter().filter(|entry| entry.outcome.is_ok());
    let who = entries.next().map(|entry| entry.lifter.clone());
    let who = who.expect("somebody lifts on the last day");
    let tap = if frame.lifter == who {
        Tap::Main
    } else {
        Tap::Lifter(who.clone())
    };
    let frame = kiosk.tap(&tap);
    format!("{who}: {}", screen(&frame))
}

/// Enters sets, undone and done again, and tells how long the kiosk took for each tap:
/// milliseconds, until the frame that shows it is there.
fn taps(kiosk: &mut Kiosk, clock: &BenchClock, count: usize) -> String {
    let mut took = Vec::new();
    while took.len() < count {
        let at_bar = |frame: &Frame| matches!(frame.screen, Screen::Bar(_));
        for _ in 0..TAPS_MAX {
            if at_bar(&kiosk.frame()) {
                break;
            }
            one_set(kiosk, clock);
        }
        // A set is entered, then taken back.
        for tap in [Tap::Main, Tap::Undo] {
            let before = kiosk.seq();
            let mut clock = stopwatch();
            kiosk.tap(&tap);
            let us = clock() / 1_000;
            assert!(kiosk.seq() > before, "it was kept");
            took.push(format!("{}.{:03}", us / 1_000, us % 1_000));
        }
        std::thread::sleep(Duration::from_millis(20));
    }
    took.join(" ")
}

fn link(kiosk: &Kiosk, desk: &share::Desk) -> String {
    let last = kiosk.state().lifts.values().next_back().expect("a lift");
    let (no, lifter) = (last.no.0, last.sheet.lifter.clone());
    desk.link(no, &lifter, 0).unwrap_or_default()
}

fn screen(frame: &Frame) -> &'static str {
    if matches!(frame.screen, Screen::Bar(_)) {
        "at the bar"
    } else if matches!(frame.screen, Screen::Rest(_)) {
        "rests"
    } else if matches!(frame.screen, Screen::End(_)) {
        "done"
    } else {
        "elsewhere"
    }
}

/// One line of standard output, at once.
fn say(line: &str) {
    let mut out = std::io::stdout().lock();
    writeln!(out, "{line}")
        .and_then(|()| out.flush())
        .expect("somebody reads");
}
