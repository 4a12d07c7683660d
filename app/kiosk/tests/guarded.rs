//! The rude owner at the command line: two kiosks on one folder, a first start that is killed, an
//! answer that cannot be written, a journal that was put away or damaged and is mended.
mod command_line;

use command_line::pinladder;
use domain::Command as Ask;
use kiosk::owner::Owner;
use kiosk::{Folder, Kiosk, SystemClock};
use std::fs::{self, File};
use std::path::Path;
use std::process::{Command, Stdio};
use std::time::Duration;

const BINARY: &str = env!("CARGO_BIN_EXE_pinladder");

fn folder(data: &Path) -> Folder {
    Folder::open(Some(data)).expect("a folder")
}

#[test]
fn one_kiosk_has_a_folder_and_another_is_told_so() {
    let data = tempfile::tempdir().expect("a folder");
    let held = folder(data.path()).alone().expect("nobody has it");
    let told = folder(data.path()).alone().expect_err("it is taken");
    assert!(
        told.to_string().starts_with("another kiosk runs on "),
        "{told}"
    );
    let output = Command::new(BINARY)
        .arg("--data")
        .arg(data.path())
        .env_remove("DISPLAY")
        .env_remove("WAYLAND_DISPLAY")
        .output()
        .expect("it starts");
    assert!(!output.status.success());
    let err = String::from_utf8_lossy(&output.stderr);
    assert!(err.contains("another kiosk runs on "), "{err}");
    // Questions are answered beside it; a journal is not put in its place.
    assert!(pinladder(data.path(), &["sheet"]).0);
    let copies = tempfile::tempdir().expect("a folder");
    let to = copies.path().display().to_string();
    assert!(pinladder(data.path(), &["journal", "backup", "--to", &to]).0);
    let copy = fs::read_dir(copies.path()).expect("reads").flatten().next();
    let copy = copy.expect("a copy").path().display().to_string();
    let (well, _, err) = pinladder(data.path(), &["journal", "restore", &copy]);
    assert!(!well && err.contains("is in use"), "{err}");
    drop(held);
    assert!(pinladder(data.path(), &["journal", "restore", &copy]).0);
    folder(data.path()).alone().expect("free again");
}

#[test]
fn a_first_start_killed_at_any_instant_leaves_nothing_half() {
    let mut begun = 0;
    for round in 0..60_u64 {
        let data = tempfile::tempdir().expect("a folder");
        let mut child = Command::new(BINARY)
            .arg("--data")
            .arg(data.path())
            .arg("sheet")
            .stdout(Stdio::null())
            .spawn()
            .expect("it starts");
        // From before it has opened anything to after all is done.
        std::thread::sleep(Duration::from_micros(round * 1_500));
        child.kill().expect("SIGKILL");
        child.wait().expect("it is gone");
        begun += usize::from(data.path().join("journal.sqlite").exists());
        let kiosk = Kiosk::open(&folder(data.path()), Box::new(SystemClock)).expect("opens");
        assert!(!kiosk.state().plan.is_empty(), "round {round}: no plan");
        for (name, text) in kiosk::folder::DEMO {
            let found = fs::read_to_string(data.path().join(name));
            assert_eq!(found.expect("is there"), text, "round {round}");
        }
        // The demo gym's files, its plan, its coach's word, and the clock's anchor.
        assert_eq!(kiosk.seq(), 7, "round {round}: once each");
    }
    assert!(begun > 5, "only {begun} were killed after they had begun");
}

#[test]
fn an_answer_that_cannot_be_written_is_no_success() {
    let data = tempfile::tempdir().expect("a folder");
    assert!(pinladder(data.path(), &["sheet"]).0);
    let asked: [&[&str]; 5] = [
        &["sheet"],
        &["sheet", "--json"],
        &["journal", "verify"],
        &["single", "180 kg", "5"],
        &["--help"],
    ];
    for words in asked {
        let full = File::options()
            .write(true)
            .open("/dev/full")
            .expect("opens");
        let run = |out: Stdio| {
            let mut command = Command::new(BINARY);
            command
                .arg("--data")
                .arg(data.path())
                .args(words)
                .stdout(out);
            command.output().expect("it starts")
        };
        let full = run(full.into());
        assert!(!full.status.success(), "{words:?}");
        if words != ["--help"] {
            let err = String::from_utf8_lossy(&full.stderr);
            assert!(err.contains("the answer could not be written"), "{err}");
        }
        let (reader, writer) = std::io::pipe().expect("a pipe");
        drop(reader);
        assert!(!run(writer.into()).status.success(), "{words:?}");
        assert!(run(Stdio::null()).status.success(), "{words:?}");
    }
}

/// A folder whose plan was taken, and its copies.
fn with_copies() -> (tempfile::TempDir, tempfile::TempDir) {
    let data = tempfile::tempdir().expect("a folder");
    let copies = tempfile::tempdir().expect("a folder");
    assert!(pinladder(data.path(), &["sheet"]).0);
    let to = copies.path().display().to_string();
    assert!(pinladder(data.path(), &["journal", "backup", "--to", &to]).0);
    let journal = folder(data.path()).open_journal().expect("opens");
    let mut owner = Owner::open(journal).expect("reads");
    let take = |n: u32| Ask::TakeFile {
        name: "screen.toml".to_owned(),
        text: format!("# {n}"),
    };
    for n in 0..10 {
        let now = kiosk::Clock::look(&SystemClock).wall;
        owner.command(&take(n), now).expect("is taken");
    }
    (data, copies)
}

#[test]
fn a_journal_that_was_put_away_is_refused_and_mended_by_a_deliberate_act() {
    let (data, copies) = with_copies();
    fs::remove_file(data.path().join("journal.sqlite")).expect("removes");
    for words in [
        &["sheet"][..],
        &["journal", "verify"],
        &["journal", "rebuild"],
    ] {
        let (well, _, err) = pinladder(data.path(), words);
        assert!(!well && !err.is_empty(), "{words:?}: {err}");
        assert!(!data.path().join("journal.sqlite").exists(), "{words:?}");
    }
    let (_, _, err) = pinladder(data.path(), &["sheet"]);
    assert!(
        err.contains("journal.mark knows it as far as event 17"),
        "{err}"
    );
    let from = copies.path().display().to_string();
    let (well, out, _) = pinladder(data.path(), &["journal", "mend", "--from", &from]);
    assert!(!well, "ten events are gone");
    assert!(
        out.contains("events 8 to 17 cannot be had any more"),
        "{out}"
    );
    assert!(!data.path().join("journal.sqlite").exists());
    let give_up = ["journal", "mend", "--from", &from, "--give-up", "10"];
    let (well, out, err) = pinladder(data.path(), &give_up);
    assert!(well && out.contains("mended: 7 events"), "{out}{err}");
    let (well, out, _) = pinladder(data.path(), &["journal", "verify"]);
    assert!(well && out.contains("sound: 7 events"), "{out}");
    assert!(pinladder(data.path(), &["sheet"]).0);
    let (well, out, _) = pinladder(data.path(), &["journal", "mend"]);
    assert!(well && out.contains("nothing to mend"), "{out}");
}

#[test]
fn a_damaged_page_is_mended_from_the_copy_and_the_tail() {
    let (data, copies) = with_copies();
    let path = data.path().join("journal.sqlite");
    let mut bytes = fs::read(&path).expect("reads");
    // The demo gym's files fill the pages before the last ones.
    let middle = bytes.len() / 2 / 4_096 * 4_096;
    bytes[middle..middle + 4_096].fill(0x5a);
    fs::write(&path, bytes).expect("writes");
    let (well, _, err) = pinladder(data.path(), &["sheet"]);
    assert!(!well, "{err}");
    let from = copies.path().display().to_string();
    let (well, out, err) = pinladder(data.path(), &["journal", "mend", "--from", &from]);
    assert!(well, "{out}{err}");
    assert!(out.contains("mended: 17 events"), "{out}");
    assert!(pinladder(data.path(), &["journal", "verify"]).0);
}
