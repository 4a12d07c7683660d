//! Killed or cut off at any instant, the journal holds what was acknowledged.
use crate::invented;
use domain::{Event, Fact};
use journal::{AppendError, Journal, verify_with};
use std::env;
use std::io::{BufRead as _, BufReader, Write as _};
use std::path::{Path, PathBuf};
use std::process::{Child, Command, Stdio};
use std::sync::mpsc;
use std::thread;
use std::time::Duration;

/// Set for the child: the journal that it appends to.
const CHILD: &str = "PINLADDER_TEST_APPENDS_TO";
/// Before each acknowledged number on the child's standard output.
const MARK: &str = "acknowledged ";
const ROUNDS: u64 = 30;

/// The event numbered `seq`, the same for ever. Some fill several pages.
fn event(seq: u64) -> Event {
    let at = i64::try_from(seq).expect("few");
    let small = invented::facts().swap_remove(3);
    let fact = match seq % 5 {
        0 => Fact::FileTaken {
            name: "gym.toml".to_owned(),
            text: format!("# {seq}\n").repeat(900),
        },
        1 => invented::facts().swap_remove(2),
        _ => small,
    };
    invented::at(at, fact)
}

/// The child: appends in portions of one to three until killed, or until it has done enough for
/// one round.
#[test]
fn appender() {
    let Some(path) = env::var_os(CHILD).map(PathBuf::from) else {
        return;
    };
    let mut journal = Journal::open(&path).expect("opens after a kill");
    let mut out = std::io::stdout();
    let mut left = 100;
    while left > 0 {
        let last = journal.last().expect("reads");
        let portion: Vec<_> = (last + 1..last + 2 + last % 3).map(event).collect();
        match journal.append(last, &portion) {
            Ok(last) => {
                writeln!(out, "{MARK}{last}").expect("the parent listens");
                out.flush().expect("the parent listens");
                left -= 1;
            }
            Err(AppendError::Moved { .. }) => {}
            Err(error) => panic!("{error}"),
        }
    }
    thread::sleep(Duration::from_secs(60));
}

fn start(path: &Path) -> Child {
    Command::new(env::current_exe().expect("a test"))
        .args(["killed::appender", "--exact", "--nocapture"])
        .env(CHILD, path)
        .stdout(Stdio::piped())
        .stderr(Stdio::inherit())
        .spawn()
        .expect("starts itself")
}

/// Kills `child` with SIGKILL some time after it has acknowledged something, and returns the
/// highest number that it acknowledged.
fn kill_after(mut child: Child, wait: Duration) -> u64 {
    let out = child.stdout.take().expect("piped");
    let (first, begun) = mpsc::channel();
    let listener = thread::spawn(move || {
        let mut highest = 0;
        for line in BufReader::new(out).lines() {
            let line = line.expect("text");
            // A line that the kill has cut short has no number of its own to trust.
            let number = line.split_once(MARK).map(|(_, number)| number.parse());
            if let Some(Ok(number)) = number {
                highest = highest.max(number);
                let _ = first.send(());
            }
        }
        highest
    });
    begun
        .recv_timeout(Duration::from_secs(60))
        .expect("the child acknowledges something");
    thread::sleep(wait);
    child.kill().expect("SIGKILL");
    child.wait().expect("gone");
    listener.join().expect("listens to the end")
}

fn check(path: &Path, acknowledged: u64) -> u64 {
    let mut last = 0;
    verify_with(path, |seq, found| {
        assert_eq!(*found, event(seq), "event {seq}");
        last = seq;
    })
    .expect("sound after a kill");
    assert!(
        last >= acknowledged,
        "{acknowledged} acknowledged, {last} kept"
    );
    last
}

#[test]
fn what_was_acknowledged_outlasts_a_kill() {
    let folder = tempfile::tempdir().expect("a folder");
    let path = folder.path().join("journal.sqlite");
    let mut last = 0;
    for round in 0..ROUNDS {
        // Spread over some appends, and never twice the same.
        let wait = Duration::from_micros(round * 7_919 % 23_000);
        let second = (round % 5 == 4).then(|| start(&path));
        let mut acknowledged = kill_after(start(&path), wait);
        if let Some(second) = second {
            acknowledged = acknowledged.max(kill_after(second, wait / 2));
        }
        assert!(acknowledged > last, "round {round} went on from {last}");
        last = check(&path, acknowledged);
    }
}

/// A power cut loses the end of the write-ahead file. Whatever length of it is left, what was
/// acknowledged by then is there, nothing else is, and the chain holds.
#[test]
fn what_was_acknowledged_outlasts_a_write_cut_short() {
    let folder = tempfile::tempdir().expect("a folder");
    let path = folder.path().join("journal.sqlite");
    let beside = |path: &Path| PathBuf::from(format!("{}-wal", path.display()));
    let mut journal = Journal::open(&path).expect("opens");
    // From an empty log on, so that its length tells how far it goes.
    journal.rest().expect("rests");
    // Length of the write-ahead file when that many were acknowledged.
    let mut lengths = vec![(
        0,
        std::fs::metadata(beside(&path)).map_or(0, |file| file.len()),
    )];
    let mut last = 0;
    for portion in [1, 2, 1, 3, 1, 1] {
        let events: Vec<_> = (last + 1..=last + portion).map(event).collect();
        last = journal.append(last, &events).expect("appends");
        let length = std::fs::metadata(beside(&path)).expect("there").len();
        lengths.push((last, length));
    }
    let (file, ahead) = (
        std::fs::read(&path).expect("reads"),
        std::fs::read(beside(&path)).expect("reads"),
    );
    let cut = folder.path().join("cut.sqlite");
    let mut seen = std::collections::BTreeSet::new();
    for length in (0..=ahead.len()).step_by(311).chain([ahead.len()]) {
        std::fs::write(&cut, &file).expect("writes");
        let mut left = ahead[..length].to_vec();
        // Half the time the disk has room set aside that it never filled.
        if length % 2 == 1 {
            left.resize(ahead.len(), 0);
        }
        std::fs::write(beside(&cut), left).expect("writes");
        let expected = lengths
            .iter()
            .rev()
            .find(|(_, needs)| *needs <= length as u64)
            .map_or(0, |(last, _)| *last);
        // Less than the making of the journal itself: it is made again.
        if (length as u64) < lengths[0].1 {
            drop(Journal::open(&cut).expect("is made again"));
        }
        let found = check(&cut, expected);
        assert_eq!(found, expected, "{length} bytes of {}", ahead.len());
        seen.insert(found);
        std::fs::remove_file(&cut).expect("removes");
        drop(std::fs::remove_file(format!("{}-shm", cut.display())));
    }
    assert!(seen.len() >= 6, "cut in every portion: {seen:?}");
}
