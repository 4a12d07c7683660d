//! The command line as an owner and a coach use it, without a window.
mod command_line;

use std::path::Path;

struct Said {
    well: bool,
    out: String,
    err: String,
}

/// Runs one command line on a data folder.
fn pinladder(data: &Path, words: &[&str]) -> Said {
    let (well, out, err) = command_line::pinladder(data, words);
    Said { well, out, err }
}

fn write(folder: &Path, name: &str, text: &str) -> String {
    let path = folder.join(name);
    std::fs::write(&path, text).expect("a file is written");
    path.display().to_string()
}

const HEADER: &str = "date,lifter,lift,sets,reps,load,ladder,rest,note\n";

#[test]
fn a_plan_is_taken_and_the_sheet_follows_it() {
    let data = tempfile::tempdir().expect("a folder");
    let plan = format!("{HEADER}2027-03-01,Tevita,rack pull,1,5,500 lb,,,go slowly\n");
    let plan = write(data.path(), "march.csv", &plan);
    let said = pinladder(data.path(), &["take", &plan]);
    assert!(said.well, "{}", said.err);
    assert_eq!(
        said.out,
        "took march.csv: 1 row, 1 lifter, 1 day from 2027-03-01 to 2027-03-01\n"
    );
    let sheet = pinladder(
        data.path(),
        &["sheet", "--date", "2027-03-01", "--lifter", "tevita"],
    );
    assert!(
        sheet.out.contains("Tevita: rack pull, 500 lb × 5"),
        "{}",
        sheet.out
    );
    assert!(sheet.out.contains("go slowly"), "{}", sheet.out);
}

#[test]
fn a_plan_with_a_fault_changes_nothing_and_tells_every_fault() {
    let data = tempfile::tempdir().expect("a folder");
    pinladder(data.path(), &["sheet"]);
    let before = pinladder(data.path(), &["journal", "verify"]).out;
    let rows = "2027-03-01,Tevita,rack pull,1,5,500 lb,,,\n\
                2027-03-02,Nobody,rack pull,1,5,500 stone,,,\n\
                2027-03-03,Tevita,rack pul,0,5,500 lb,,,\n";
    let plan = write(data.path(), "bad.csv", &format!("{HEADER}{rows}"));
    let said = pinladder(data.path(), &["take", &plan]);
    assert!(!said.well && said.out.is_empty());
    for part in [
        "row 3, column lifter",
        "row 3, column load",
        "row 4, column lift",
        "row 4, column sets",
    ] {
        assert!(
            said.err.contains(part),
            "{part} is not told in:\n{}",
            said.err
        );
    }
    assert_eq!(before, pinladder(data.path(), &["journal", "verify"]).out);
}

#[test]
fn check_tells_faults_and_fails_or_says_that_there_is_none() {
    let data = tempfile::tempdir().expect("a folder");
    pinladder(data.path(), &["sheet"]);
    let file = |name: &str| data.path().join(name).display().to_string();
    let fine = pinladder(
        data.path(),
        &["check", &file("gym.toml"), &file("lifters.toml")],
    );
    assert!(fine.well, "{}", fine.out);
    assert_eq!(fine.out.matches("no fault").count(), 2);
    let bad = write(
        data.path(),
        "kiosk.toml",
        "port = 70000\nadress = \"here\"\n",
    );
    let said = pinladder(data.path(), &["check", &bad]);
    assert!(!said.well);
    assert!(
        said.out.contains("70000") && said.out.contains("address"),
        "{}",
        said.out
    );
}

#[test]
fn a_faulty_gym_file_leaves_the_last_good_one_in_force() {
    let data = tempfile::tempdir().expect("a folder");
    let before = pinladder(data.path(), &["sheet", "--date", "2026-11-25"]);
    assert!(before.well, "{}", before.err);
    write(data.path(), "gym.toml", "name = 7\n");
    let after = pinladder(data.path(), &["sheet", "--date", "2026-11-25"]);
    assert_eq!(before.out, after.out);
}

#[test]
fn lost_files_come_back_from_the_journal() {
    let data = tempfile::tempdir().expect("a folder");
    let before = pinladder(data.path(), &["sheet"]);
    let files = ["gym.toml", "lifters.toml", "kiosk.toml", "programme.toml"];
    for name in files.into_iter().chain(["record.sqlite"]) {
        drop(std::fs::remove_file(data.path().join(name)));
    }
    let said = pinladder(data.path(), &["journal", "rebuild"]);
    assert!(said.well, "{}", said.err);
    assert_eq!(
        said.out.matches("written as last taken").count(),
        files.len(),
        "{}",
        said.out
    );
    assert_eq!(before.out, pinladder(data.path(), &["sheet"]).out);
}

#[test]
fn wrong_usage_says_what_there_is() {
    let data = tempfile::tempdir().expect("a folder");
    let said = pinladder(data.path(), &["picture", "nowhere", "--out", "x.png"]);
    assert!(!said.well && said.err.contains("choose"), "{}", said.err);
    let said = pinladder(data.path(), &["sheet", "--lifter", "Nobody"]);
    assert!(!said.well && said.err.contains("Tevita"), "{}", said.err);
    let said = pinladder(data.path(), &["take", "/no/such/plan.csv"]);
    assert!(
        !said.well && said.err.contains("/no/such/plan.csv"),
        "{}",
        said.err
    );
}

#[test]
fn a_picture_of_a_data_folder_leaves_no_trace() {
    let data = tempfile::tempdir().expect("a folder");
    pinladder(data.path(), &["sheet"]);
    let before = pinladder(data.path(), &["journal", "verify"]).out;
    let out = data.path().join("x.png").display().to_string();
    let date = chrono::Local::now().date_naive() + chrono::Days::new(1);
    let date = date.to_string();
    let said = pinladder(
        data.path(),
        &["picture", "rest", "--out", &out, "--date", &date],
    );
    assert!(said.well, "{}", said.err);
    let bytes = std::fs::read(&out).expect("the picture is there");
    assert_eq!(&bytes[..8], b"\x89PNG\r\n\x1a\n");
    assert_eq!(before, pinladder(data.path(), &["journal", "verify"]).out);
}

/// A rehearsal writes sets on a clock of its own: never into a folder on which a kiosk runs.
#[test]
fn a_rehearsal_leaves_a_folder_alone_that_a_kiosk_has() {
    let data = tempfile::tempdir().expect("a folder");
    let folder = kiosk::Folder::open(Some(data.path())).expect("a folder");
    let kiosk = folder.alone().expect("nobody has it");
    let words = ["rehearse", "--at", "2026-12-02T18:00"];
    let said = pinladder(data.path(), &words);
    assert!(!said.well && said.out.is_empty(), "{}", said.out);
    assert!(said.err.contains("another kiosk runs on"), "{}", said.err);
    assert!(!data.path().join("journal.sqlite").exists());
    drop(kiosk);
    assert!(pinladder(data.path(), &words).well);
}
