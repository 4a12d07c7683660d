//! The table of taps: what people do most, and how many taps each takes, counted on the widgets.
//!
//! `tests/references/TAPS.md` is written from it (`PINLADDER_RENEW=1`), and is told when stale.
use crate::bench::{Bench, evening};
use crate::desk::{enter, tap_like, tap_row, type_in};
use crate::ladder::{lifters, main_label};
use crate::planned::to_cell;
use std::fmt::Write as _;
use std::path::Path;

/// Where the table stands.
const TABLE: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/references/TAPS.md");

/// What was done, and the taps it took.
struct Table<'a> {
    bench: &'a Bench,
    rows: Vec<(&'static str, usize)>,
}

impl Table<'_> {
    fn count(&mut self, deed: &'static str, taps: impl FnOnce(&Bench)) {
        let before = self.bench.taps_made();
        taps(self.bench);
        self.rows.push((deed, self.bench.taps_made() - before));
    }
}

fn main(bench: &Bench) {
    bench.tap(&main_label(&bench.frame()));
}

/// Whoever is up stands at the bar, rested.
fn to_the_bar(bench: &Bench) {
    bench.wait_ms(600_000);
    bench.to_whoever_is_up();
    if bench.screen() == "rest" {
        main(bench);
    }
    assert_eq!(bench.screen(), "bar");
}

fn at_the_rack(table: &mut Table<'_>) {
    let bench = table.bench;
    let names = lifters(bench);
    let (first, second) = (names[1].clone(), names[2].clone());
    table.count("from all lifters to the first set entered", |bench| {
        bench.tap(&first);
        bench.tap("start");
        main(bench);
    });
    bench.tap("all lifters");
    bench.tap(&second);
    bench.tap("start");
    table.count("to the screen of another lifter", |bench| {
        bench.tap(&format!("switch to {first}"));
    });
    to_the_bar(bench);
    table.count("a set as planned, when rested", main);
    table.count("undo of the last entry", |bench| bench.tap("undo"));
    to_the_bar(bench);
    table.count("a set with fewer reps", |bench| {
        bench.tap("other reps");
        bench.tap("1");
    });
    to_the_bar(bench);
    table.count("a longer rest", |bench| {
        bench.tap("later, skip...");
        bench.tap("I need longer");
    });
    to_the_bar(bench);
    table.count("a warm-up left out", |bench| {
        bench.tap("later, skip...");
        bench.tap("skip this set");
    });
    to_the_bar(bench);
    table.count("a set in which the back moved", |bench| {
        bench.tap("back moved");
        bench.tap("1");
    });
    bench.tap("undo");
    table.count("leaving for now", |bench| {
        bench.tap("later, skip...");
        bench.tap("I am leaving");
    });
}

fn at_the_desk(table: &mut Table<'_>) {
    let bench = table.bench;
    bench.tap("all lifters");
    crate::ruled::lift(bench, "Tevita");
    bench.tap("all lifters");
    enter(bench, "4711");
    table.count(
        "a plan row like last time, from the desk's front page",
        |bench| {
            bench.tap("the week");
            to_cell(bench, "Tevita, Friday 4 December");
            tap_row(bench, "rack pull");
            bench.tap("save");
        },
    );
    // A slip of the finger, for the coach to rule on.
    bench.tap("all lifters");
    enter(bench, "4711");
    bench.tap("the week");
    to_cell(bench, "Marisol, Wednesday 2 December");
    tap_like(bench, "rack pull, ", "");
    tap_like(bench, "load, bar counted in, ", "");
    type_in(bench, "290");
    bench.tap("save");
    bench.tap("save");
    bench.tap("all lifters");
    enter(bench, "4711");
    table.count("a ruling, from the desk's front page", |bench| {
        tap_like(bench, "looks wrong, ", "");
    });
}

fn written(rows: &[(&str, usize)]) -> String {
    let mut text = String::from(
        "# Taps\n\nCounted on the real widgets by `tests/scenarios/counted.rs` \
         (`cargo test --workspace --test bench counted`; with `PINLADDER_RENEW=1` it writes this \
         file).\nA name with two pages of lifters before it takes a tap a page more.\n\n\
         | what | taps |\n|---|---|\n",
    );
    for (deed, taps) in rows {
        writeln!(text, "| {deed} | {taps} |").expect("into memory");
    }
    text
}

#[test]
fn the_table_of_taps_is_true() {
    let folder = tempfile::tempdir().expect("a folder");
    let bench = Bench::start(folder.path(), &evening());
    let mut table = Table {
        bench: &bench,
        rows: Vec::new(),
    };
    at_the_rack(&mut table);
    at_the_desk(&mut table);
    let text = written(&table.rows);
    if std::env::var_os("PINLADDER_RENEW").is_some() {
        std::fs::write(Path::new(TABLE), &text).expect("the table is written");
    }
    let kept = std::fs::read_to_string(TABLE).unwrap_or_default();
    assert_eq!(kept, text, "PINLADDER_RENEW=1 writes it anew");
    // What the trade does a hundred times an evening.
    for (deed, most) in [
        ("a set as planned, when rested", 1),
        ("undo of the last entry", 1),
        ("to the screen of another lifter", 1),
        ("a set with fewer reps", 2),
        ("a plan row like last time, from the desk's front page", 5),
    ] {
        let taps = table.rows.iter().find(|row| row.0 == deed).expect(deed).1;
        assert!(taps <= most, "{deed}: {taps} taps");
    }
}
