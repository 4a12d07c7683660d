//! How quick a rehearsal is: evenings of four lifters at one bar, taps a second.
//!
//! `cargo run --release -p acceptance --example rehearsal -- [EVENINGS] [TICK_MS] [texts]`
#![allow(clippy::print_stdout, reason = "this prints figures")]
use kiosk::Folder;
use kiosk::rehearse::{Answer, Line, Rehearsal, moment};
use std::time::Instant;
use view::Deed;

const FOUR: [&str; 4] = ["Hamza", "Željka", "Ilkka", "Marisol"];

/// One evening: lines said, and sets that stand at the end.
struct Evening {
    rehearsal: Rehearsal,
    lines: usize,
    texts: usize,
}

impl Evening {
    fn say(&mut self, line: &Line) -> Answer {
        self.lines += 1;
        let answer = self.rehearsal.line(line).expect("it goes on");
        self.texts += answer.texts.len();
        answer
    }

    fn tap(&mut self, label: &str) -> Answer {
        self.say(&Line::tap(label))
    }

    fn show_who_is_up(&mut self) -> Answer {
        self.tap("all");
        let floor = self.tap("floor");
        let up = floor.button(Deed::Lifter).unwrap_or("all").to_owned();
        self.tap(&up)
    }

    fn lift(&mut self) -> usize {
        for name in FOUR {
            self.tap("all");
            self.tap(name);
            self.tap("start");
        }
        let mut face = self.show_who_is_up();
        for _ in 0..400 {
            if face.sets_logged >= 20 {
                break;
            }
            let main = [Deed::Loaded, Deed::Done, Deed::Next];
            let main = main.iter().find_map(|deed| face.button(*deed));
            face = match (main.map(str::to_owned), face.rest_s) {
                (Some(label), _) => self.tap(&label),
                (None, Some(left)) => self.say(&Line::Wait(u64::from(left.max(1)) * 1_000)),
                (None, None) => self.show_who_is_up(),
            };
        }
        face.sets_logged
    }
}

#[allow(clippy::disallowed_methods, reason = "what is measured is real time")]
fn main() {
    let mut args = std::env::args().skip(1);
    let mut number = |or: u64| args.next().and_then(|arg| arg.parse().ok()).unwrap_or(or);
    let (evenings, tick_ms) = (number(10), number(500));
    let texts = args.next().is_some();
    let (mut lines, mut sets, mut read) = (0, 0, 0);
    let start = Instant::now();
    for _ in 0..evenings {
        let data = tempfile::tempdir().expect("a folder");
        let folder = Folder::open(Some(data.path())).expect("a folder");
        let at = moment("2026-12-02T18:00").expect("a time");
        let mut rehearsal = Rehearsal::open(&folder, at).expect("it opens");
        rehearsal.tick_every(tick_ms);
        rehearsal.read_texts(texts);
        let mut evening = Evening {
            rehearsal,
            lines: 0,
            texts: 0,
        };
        sets += evening.lift();
        lines += evening.lines;
        read += evening.texts;
    }
    let took = start.elapsed().as_secs_f64();
    println!(
        "{evenings} evenings, {lines} lines, {sets} sets, {read} texts in {took:.2} s: \
         {:.1} ms an evening, {:.0} lines a second",
        took * 1e3 / evenings as f64,
        lines as f64 / took
    );
}
