//! Sticks and files that are far too large: what is kept of them is bounded, what is told is true.
use domain::Gym;
use kiosk::Folder;
use kiosk::cli::{Streams, main};
use kiosk::folder::DEMO;
use kiosk::stick::Stick;
use plan::{Fault, Source};
use std::ffi::OsString;
use std::fmt::Write as _;
use std::fs;
use std::io::Write as _;
use std::path::Path;

fn gym() -> Gym {
    let source = |at: usize| Source {
        name: DEMO[at].0,
        text: DEMO[at].1.as_bytes(),
    };
    plan::gym(source(0), source(1)).expect("the demo gym is whole")
}

/// Plans of 2,000 rows with eight faults each, as a wrong export writes them.
fn faulty(folder: &Path) {
    let rows = "x,y,z,a,b,c,d,e\n".repeat(2_000);
    for plan in 0..20 {
        let text = format!("date,lifter,lift,sets,reps,load,ladder,rest\n{rows}");
        fs::write(folder.join(format!("{plan:02}.csv")), text).expect("a plan");
    }
}

#[test]
fn a_stick_of_faults_keeps_some_and_counts_all() {
    let place = tempfile::tempdir().expect("a folder");
    faulty(place.path());
    let stick = Stick::read(place.path(), &gym()).expect("a stick");
    assert_eq!(stick.plans.len(), 20);
    assert!(!stick.is_sound());
    let faults: Vec<&Fault> = stick.plans.iter().flat_map(|p| &p.faults).collect();
    assert!((200..300).contains(&faults.len()), "{}", faults.len());
    for plan in &stick.plans {
        assert_eq!(plan::count(&plan.faults), 16_000, "{}", plan.name);
        assert!(plan.faults.len() >= 3 && plan.rows.is_empty());
    }
    let told: usize = faults.iter().map(|fault| fault.to_string().len()).sum();
    assert!(told < 100_000, "{told} bytes are told");
}

/// Sound plans are bounded by their rows; the one with which there are too many is told.
#[test]
fn a_stick_of_rows_is_told_where_it_ends() {
    let place = tempfile::tempdir().expect("a folder");
    for plan in 0..4 {
        let mut text = String::from("date,lifter,lift,sets,reps,load\n");
        for row in 0..16_000_u32 {
            let lifter = ["Hamza", "Ilkka", "Marisol", "Parvati"][plan];
            let lift = ["rack pull", "deadlift"][row as usize % 2];
            let day = row / 2;
            let (year, month, of_month) = (2026 + day / 336, day / 28 % 12 + 1, day % 28 + 1);
            writeln!(
                text,
                "{year}-{month:02}-{of_month:02},{lifter},{lift},1,5,100 kg"
            )
            .expect("text grows");
        }
        fs::write(place.path().join(format!("{plan}.csv")), text).expect("a plan");
    }
    let stick = Stick::read(place.path(), &gym()).expect("a stick");
    let rows: Vec<usize> = stick.plans.iter().map(|plan| plan.rows.len()).collect();
    assert_eq!(rows, [16_000, 16_000, 16_000, 0]);
    assert_eq!(
        stick.plans[3].faults[0].to_string(),
        "3.csv: read with it the stick has more rows than the most, 60000; \
         put it on another stick, or take the other plans first"
    );
}

fn check(data: &Path, file: &Path) -> String {
    let (mut out, mut err) = (Vec::new(), Vec::new());
    let mut args: Vec<OsString> = vec!["pinladder".into(), "--data".into(), data.into()];
    args.extend(["check".into(), file.into()]);
    let mut streams = Streams {
        input: &mut &b""[..],
        out: &mut out,
        err: &mut err,
    };
    main(args, &mut streams);
    String::from_utf8([out, err].concat()).expect("words are UTF-8")
}

/// A file of a gigabyte and a pipe without end are read as far as a plan may go.
#[test]
fn check_ends_where_no_plan_goes_on() {
    let data = tempfile::tempdir().expect("a folder");
    let folder = Folder::open(Some(data.path())).expect("a data folder");
    let large = folder.path().join("large.csv");
    let file = fs::File::create(&large).expect("a file");
    file.set_len(1 << 30).expect("a hole of a gigabyte");
    let told = check(data.path(), &large);
    assert!(told.contains("more bytes than the most, 4194304"), "{told}");

    let pipe = folder.path().join("pipe.csv");
    let made = std::process::Command::new("mkfifo").arg(&pipe).status();
    assert!(made.expect("mkfifo is there").success());
    let endless = pipe.clone();
    let writer = std::thread::spawn(move || {
        let mut pipe = fs::OpenOptions::new()
            .write(true)
            .open(endless)
            .expect("a pipe");
        let line = b"2026-12-01,Tevita,rack pull,1,5,445 lb\n".repeat(1_000);
        // It ends by itself only when nobody reads any more.
        let mut written = 0_usize;
        while written < (1 << 30) && pipe.write_all(&line).is_ok() {
            written += line.len();
        }
        written
    });
    let told = check(data.path(), &pipe);
    assert!(told.contains("more bytes than the most, 4194304"), "{told}");
    let written = writer.join().expect("the writer ends");
    assert!(written < 16 << 20, "{written} bytes were taken of the pipe");
}
