//! SIGKILL at any instant: the kiosk that starts again shows what was acknowledged, in
//! mid-session. The child is this same test, started anew.
use kiosk::{Folder, Kiosk, SystemClock};
use std::io::{BufRead as _, BufReader, Write as _};
use std::path::Path;
use std::process::{Command, Stdio};
use view::{Frame, Screen, Tap};

/// Set in the child: its data folder.
const CHILD: &str = "PINLADDER_KILL_CHILD";
/// Kills in one run.
const ROUNDS: usize = 12;
/// Taps of a child at most.
const TAPS_MAX: usize = 400;

fn open(data: &Path) -> Kiosk {
    let folder = Folder::open(Some(data)).expect("the folder opens");
    Kiosk::open(&folder, Box::new(SystemClock)).expect("the kiosk opens")
}

/// How many entries stand, over all lifts.
fn entries(kiosk: &Kiosk) -> usize {
    kiosk
        .state()
        .lifts
        .values()
        .map(|run| run.entries.len() + 1)
        .sum()
}

/// Goes on tapping as three lifters would; after each acknowledged tap a line is printed.
fn child(data: &Path) {
    let mut kiosk = open(data);
    let out = std::io::stdout();
    for tap in 0..TAPS_MAX {
        let frame = kiosk.frame();
        let next = next_tap(&frame, tap);
        kiosk.tap(&next);
        let mut out = out.lock();
        writeln!(out, "entries {}", entries(&kiosk)).expect("the parent listens");
        out.flush().expect("the parent listens");
    }
}

fn next_tap(frame: &Frame, at: usize) -> Tap {
    match &frame.screen {
        Screen::Choose(choose) => {
            let tile = &choose.tiles[at % choose.tiles.len()];
            Tap::Lifter(tile.lifter.clone())
        }
        Screen::SetUp(set_up) if set_up.main.is_empty() => Tap::All,
        Screen::End(_) => Tap::Undo,
        Screen::Bar(_) if at % 7 == 0 => Tap::Undo,
        _ if at % 11 == 0 => Tap::All,
        _ => Tap::Main,
    }
}

#[test]
fn killed_at_any_instant_it_shows_what_it_acknowledged() {
    if let Some(data) = std::env::var_os(CHILD) {
        child(Path::new(&data));
        return;
    }
    let data = tempfile::tempdir().expect("a folder");
    for round in 0..ROUNDS {
        let mut killed = Command::new(std::env::current_exe().expect("this test"))
            .args(["killed_at_any_instant", "--nocapture", "--test-threads=1"])
            .env(CHILD, data.path())
            .stdout(Stdio::piped())
            .spawn()
            .expect("the child starts");
        let lines = BufReader::new(killed.stdout.take().expect("its output")).lines();
        let said = lines.map_while(Result::ok).filter_map(|line| {
            let (_, number) = line.split_once("entries ")?;
            number.trim().parse::<usize>().ok()
        });
        // Another number of taps each round; the kill then falls anywhere in the next one.
        let acknowledged: Vec<usize> = said.take(3 + round * 5 % 17).collect();
        killed.kill().expect("SIGKILL");
        killed.wait().expect("it is gone");

        let last = *acknowledged.last().expect("something was acknowledged");
        let mut kiosk = open(data.path());
        let found = entries(&kiosk);
        // Taps after the last line read may have been acknowledged too, none of them in part.
        assert!(
            found > 0 && found + 3 >= last,
            "round {round}: {last} said, {found} found"
        );
        let frame = kiosk.frame();
        let open_lift = kiosk.state().lifts.values().any(|run| !run.is_over());
        assert!(!open_lift || kiosk.frame().screen != Screen::End(end_of(&frame)));
        let report = journal::verify(&Folder::open(Some(data.path())).expect("open").journal());
        report.expect("the journal is sound");
    }
}

fn end_of(frame: &Frame) -> view::end::End {
    match &frame.screen {
        Screen::End(end) => end.clone(),
        _ => view::end::End {
            headline: String::new(),
            short: false,
            rows: Vec::new(),
            sum: String::new(),
            main: String::new(),
        },
    }
}
