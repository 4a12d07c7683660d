//! SIGKILL at any instant: the kiosk that starts again shows what was acknowledged, in
//! mid-session. The child is this same test, started anew.
use domain::State;
use journal::Journal;
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

/// All lifts with all entries, in a few digits (FNV-1a over their text).
fn digest(state: &State) -> u64 {
    let fold = |hash: u64, byte: u8| (hash ^ u64::from(byte)).wrapping_mul(0x0100_0000_01b3);
    format!("{:?}", state.lifts)
        .bytes()
        .fold(0xcbf2_9ce4_8422_2325, fold)
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
        let (seq, digest) = (kiosk.seq(), digest(kiosk.state()));
        writeln!(out, "acknowledged {seq} {digest}").expect("the parent listens");
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
        Screen::Bar(_) if at.is_multiple_of(7) => Tap::Undo,
        Screen::SetUp(_)
        | Screen::Bar(_)
        | Screen::Rest(_)
        | Screen::Settle(_)
        | Screen::Stop(_)
        | Screen::Entry(_)
        | Screen::History(_)
        | Screen::Why(_)
        | Screen::Meet(_)
        | Screen::List(_)
        | Screen::Turn(_)
        | Screen::Holds(_)
        | Screen::Page(_)
        | Screen::Typing(_)
        | Screen::Floor(_) => {
            if at.is_multiple_of(11) {
                Tap::All
            } else {
                Tap::Main
            }
        }
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
            let (seq, digest) = line.split_once("acknowledged ")?.1.split_once(' ')?;
            Some((seq.parse::<u64>().ok()?, digest.parse::<u64>().ok()?))
        });
        // Another number of taps each round; the kill then falls anywhere in the next one.
        let acknowledged: Vec<(u64, u64)> = said.take(3 + round * 5 % 17).collect();
        killed.kill().expect("SIGKILL");
        killed.wait().expect("it is gone");

        let (seq, said) = *acknowledged.last().expect("something was acknowledged");
        let folder = Folder::open(Some(data.path())).expect("the folder opens");
        journal::verify(&folder.journal()).expect("the journal is sound");
        let kept = Journal::open(&folder.journal()).expect("the journal opens");
        let events = kept.events_after(0).expect("the journal is read");
        assert!(
            events.len() as u64 >= seq,
            "round {round}: {seq} said, {} kept",
            events.len()
        );
        let then = events
            .iter()
            .take_while(|(at, _)| *at <= seq)
            .map(|(_, event)| event);
        assert_eq!(
            digest(&State::replay(then)),
            said,
            "round {round}: what was said is kept"
        );

        // A start answers what the kill kept from being shown, and takes nothing away.
        let mut kiosk = open(data.path());
        let after = kept.events_after(0).expect("the journal is read");
        assert_eq!(after.get(..events.len()), Some(events.as_slice()));
        assert_eq!(
            *kiosk.state(),
            State::replay(after.iter().map(|(_, event)| event))
        );
        let open_lift = kiosk.state().lifts.values().any(|run| !run.is_over());
        let frame = kiosk.frame();
        let shown = !frame.lifter.is_empty() || !frame.chips.is_empty();
        assert!(
            !open_lift || shown,
            "round {round}: whoever is under way is on the screen"
        );
    }
}
