//! The programmes that come with the program. Common practice, no source; a coach can change
//! each of them in programme.toml, and nobody follows one before the coach says so.
//!
//! Refuses: to be the right programme for anybody; that is for a qualified coach to say.
use super::{Day, Pace, Programme, Task, Work};
use crate::manner::Manner;
use crate::prescription::LoadWish;
use alloc::string::String;
use alloc::vec;
use alloc::vec::Vec;

/// Days from one pulling day to the next: with three of them two pulling days fit into a week.
const APART_DAYS: u8 = 3;

/// The work load of the first time, hundredths of a percent of the recorded best: light enough
/// to learn the lift with.
const FIRST: LoadWish = LoadWish::OfBest(7_500);

/// Two pulling days. The heavy day alternates rack pull and halting deadlift; on the other the
/// barbell shrug alternates with a power clean, or in the second programme a power snatch.
#[must_use]
pub fn programmes() -> Vec<Programme> {
    vec![
        split("split pulls", work("power clean", 5, 3)),
        split("split pulls with snatch", work("power snatch", 6, 2)),
    ]
}

fn split(name: &str, quick: Work) -> Programme {
    let heavy = vec![work("rack pull", 1, 5), work("halting deadlift", 1, 8)];
    let other = vec![work("barbell shrug", 3, 5), quick];
    Programme {
        name: String::from(name),
        lifters: Vec::new(),
        pace: Pace::Queue {
            apart_days: APART_DAYS,
        },
        days: vec![day("heavy day", heavy), day("other day", other)],
        blocks: Vec::new(),
        begins: Vec::new(),
    }
}

fn day(name: &str, alternate: Vec<Work>) -> Day {
    Day {
        name: String::from(name),
        weekday: None,
        tasks: vec![Task { alternate }],
    }
}

fn work(lift: &str, sets: u8, reps: u8) -> Work {
    Work {
        lift: String::from(lift),
        sets,
        reps,
        first: FIRST,
        ladder: None,
        rest_s: None,
        bar: None,
        manner: Manner::default(),
        note: String::new(),
    }
}
