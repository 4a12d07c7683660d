//! A season of invented lifting in a data folder, entered through the kiosk itself, and the page
//! over it: what the browser scripts look at.
//!
//! ```text
//! cargo run -p acceptance --example season -- DIR PORT
//! ```
//! Then one command a line on standard input: `link` prints the link of the lift that ended last,
//! `set` enters the next set at the kiosk, `quit` ends.
use chrono::{Datelike as _, Days, NaiveDate};
use kiosk::clock::{BenchClock, milliseconds};
use kiosk::lan::{self, Lan};
use kiosk::shared::Shared;
use kiosk::{Folder, Kiosk};
use std::io::{BufRead as _, Write as _};
use std::path::Path;
use std::sync::mpsc;
use std::time::Duration;
use view::{Frame, Screen, Tap};

/// Weeks of it.
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
    std::fs::create_dir_all(dir).expect("a folder");
    std::fs::write(
        dir.join("kiosk.toml"),
        format!("share = true\nport = {port}\n"),
    )
    .expect("writes");
    let folder = Folder::open(Some(dir)).expect("opens");
    let (year, month, day) = LAST;
    let last = NaiveDate::from_ymd_opt(year, month, day).expect("a day");
    let first = last - Days::new(7 * WEEKS);
    let clock = BenchClock::at(first.and_hms_opt(18, 0, 0).expect("a time"));
    let mut kiosk = Kiosk::open(&folder, Box::new(clock.clone())).expect("opens");
    let mut sets = 0;
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
    let (inputs, _inbox) = mpsc::channel();
    lan::start(Lan::of(&kiosk, &folder, desk.clone()), inputs);
    say(&format!(
        "ready, {sets} sets, page at http://127.0.0.1:{port}/, code flat-backs-only"
    ));
    obey(&mut kiosk, &clock, &desk);
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

/// Obeys standard input while the kiosk ticks.
fn obey(kiosk: &mut Kiosk, clock: &BenchClock, desk: &share::Desk) {
    let (lines, inbox) = mpsc::channel();
    let reader = std::thread::spawn(move || {
        for line in std::io::stdin().lock().lines().map_while(Result::ok) {
            if lines.send(line).is_err() {
                return;
            }
        }
    });
    let who: Option<String> = kiosk
        .day()
        .iter()
        .find(|e| e.outcome.is_ok())
        .map(|e| e.lifter.clone());
    let who = who.expect("somebody lifts on the last day");
    loop {
        match inbox.recv_timeout(Duration::from_millis(200)).as_deref() {
            Ok("quit") | Err(mpsc::RecvTimeoutError::Disconnected) => break,
            Ok("set") => {
                clock.advance_ms(95_000);
                let frame = kiosk.frame();
                let tap = if frame.lifter == who {
                    Tap::Main
                } else {
                    Tap::Lifter(who.clone())
                };
                let frame = kiosk.tap(&tap);
                say(&format!("{who}: {}", screen(&frame)));
            }
            Ok("link") => {
                let last = kiosk.state().lifts.values().next_back().expect("a lift");
                let (no, lifter) = (last.no.0, last.sheet.lifter.clone());
                say(&desk.link(no, &lifter, 0).unwrap_or_default());
            }
            Ok(other) => say(&format!("no command: {other}")),
            Err(mpsc::RecvTimeoutError::Timeout) => {
                kiosk.tick();
            }
        }
    }
    drop(reader);
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
