//! Workbooks as rude coaches write them, each written as XLSX, ODS and CSV, and what is understood.
#![allow(
    clippy::wildcard_enum_match_arm,
    reason = "a test looks at what it is about"
)]
mod grid;
mod specimens;

use grid::Book;
use plan::{Fault, Source, Understood};
use std::fmt::Write as _;

/// What is understood of a file: a line for each row, then what is odd.
fn understood(name: &str, bytes: &[u8], book: &Book) -> String {
    let source = Source { name, text: bytes };
    let Understood { rows, faults } = plan::understand(source, Some(&grid::gym()), book.monday);
    let mut told = String::new();
    for row in rows {
        let groups: Vec<_> = row.groups.iter().map(ToString::to_string).collect();
        let track = row
            .track
            .map(|track| format!(" ({track})"))
            .unwrap_or_default();
        let ladder = row
            .ladder
            .map(|ladder| format!(" ladder {ladder}"))
            .unwrap_or_default();
        let note = match row.note.as_str() {
            "" => String::new(),
            note => format!(" \"{note}\""),
        };
        let bar = row.bar.as_ref().map(|bar| format!(" bar {bar}"));
        let bar = bar.unwrap_or_default();
        writeln!(
            told,
            "{} {} {}{track}: {}{bar}{ladder}{note}",
            row.date,
            row.lifter,
            row.lift,
            groups.join(", ")
        )
        .expect("text grows");
    }
    for fault in &faults {
        writeln!(told, "{}", line(fault)).expect("text grows");
    }
    told
}

/// A fault without the file's and the sheet's name, which differ by the kind of file.
fn line(fault: &Fault) -> String {
    let weight = if fault.stops() { "?" } else { "odd" };
    let cell = fault.cell();
    let cell = cell.split_once('!').map_or(cell.as_str(), |(_, cell)| cell);
    format!("{weight} {cell}: {}; {}", fault.read, fault.right)
}

/// Each good workbook is read as its coach meant it, whoever wrote it.
#[test]
fn sixty_workbooks_are_read_as_meant() {
    let books = specimens::all("good.txt");
    let mut failed = String::new();
    for book in &books {
        let meant = book.meant.clone();
        for (name, bytes) in book.files() {
            let told = understood(name, &bytes, book);
            if told != meant {
                writeln!(
                    failed,
                    "## {} as {name}\nmeant:\n{meant}told:\n{told}",
                    book.title
                )
                .expect("text grows");
            }
        }
    }
    assert!(failed.is_empty(), "{failed}");
    assert!(books.len() >= 60, "{}", books.len());
}

/// Each workbook that could mean two things, or nothing, is asked about, with words that lead on.
#[test]
fn a_hundred_workbooks_are_asked_about() {
    let books = specimens::all("asked.txt");
    let mut out = String::new();
    for book in &books {
        let files = book.files();
        let tellings: Vec<String> = files
            .iter()
            .map(|(name, bytes)| understood(name, bytes, book))
            .collect();
        let told = &tellings[0];
        assert!(told.contains("? "), "{} is read:\n{told}", book.title);
        let rows = told.lines().filter(|line| line.starts_with("20")).count();
        assert_eq!(rows, 0, "{} is half taken:\n{told}", book.title);
        writeln!(out, "## {}\n{}\n{told}", book.title, book.shown()).expect("text grows");
    }
    assert!(books.len() >= 100, "{}", books.len());
    insta::assert_snapshot!(out);
}

/// What the rack cannot show is told whole by the door through which plans are taken: sets without
/// a load, and shares of a training max of which this gym has none.
#[test]
fn nothing_is_half_taken() {
    let mut taken = 0;
    for book in specimens::all("good.txt") {
        for (name, bytes) in book.files() {
            let source = Source { name, text: &bytes };
            let understood = plan::understand(source, Some(&grid::gym()), book.monday);
            match plan::coach_plan_since(source, &grid::gym(), book.monday) {
                Ok((rows, _)) => {
                    assert_eq!(rows.len(), understood.rows.len(), "{}", book.title);
                    taken += 1;
                }
                Err(faults) => {
                    let known = |fault: &&Fault| {
                        let no_max = "of a training max in the";
                        fault.right.to_string().starts_with("read, but")
                            || fault.to_string().contains(no_max)
                    };
                    let told = faults.iter().find(known);
                    assert!(told.is_some(), "{}: {}", book.title, faults[0]);
                }
            }
        }
    }
    assert!(taken >= 100, "{taken}");
}
