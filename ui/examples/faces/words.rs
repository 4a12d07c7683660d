//! Set-up, pads, stop and end: the screens with more words than drawings.
use super::draw::{ladder, rack};
use super::ladders::{eight_rungs, five_rungs};
use RowState::{Ahead, Done, Moved, Now, Other, Skipped};
use view::draw::RowState;
use view::end::{DoneRow, End, Link};
use view::entry::{Entry, Pad};
use view::next::Next;
use view::setup::SetUp;
use view::stop::Stop;

pub(crate) fn setup() -> SetUp {
    SetUp {
        work: "180 kg × 5".into(),
        rack: rack(20, 50.0, 9, &[20.0]),
        hole: "9".into(),
        mats: "1 mat, 20 mm".into(),
        mat_list: vec![],
        height: "bar 431 mm above your feet, 4 mm under the mark".into(),
        overlap: "shares 96 mm (3.8 in) with the halting deadlift".into(),
        overlap_small: false,
        due: "180 kg, up 5 kg: all reps with the back held; last on 18 Nov".into(),
        bar: "retired bar, 20 kg, collars 5 kg".into(),
        gear: vec![
            "double overhand grip".into(),
            "belt from 130 kg".into(),
            "straps from 165 kg".into(),
        ],
        cautions: vec!["check that both pins sit in hole 9 before you load".into()],
        warnings: vec![],
        ladder: five_rungs([Ahead, Ahead, Ahead, Ahead, Ahead]),
        note: "Slow off the pins. No bounce.".into(),
        main: "start".into(),
    }
}

pub(crate) fn setup_floor() -> SetUp {
    SetUp {
        work: "3 sets of 102.5 kg × 5".into(),
        rack: rack(0, 50.0, 0, &[]),
        hole: String::new(),
        mats: String::new(),
        height: "from the floor".into(),
        overlap: String::new(),
        bar: "straight bar, 20 kg, collars 5 kg".into(),
        cautions: vec![],
        ladder: five_rungs([Done, Now, Ahead, Ahead, Ahead]),
        note: String::new(),
        main: "back to the bar".into(),
        ..setup()
    }
}

pub(crate) fn setup_long() -> SetUp {
    SetUp {
        work: "3 sets of 317.5 kg × 5".into(),
        rack: rack(30, 25.0, 12, &[20.0, 20.0, 10.0]),
        hole: "12".into(),
        mats: "3 mats, 50 mm".into(),
        overlap: "shares 48 mm (1.9 in) with the halting deadlift, less than the 75 mm that the coach asks for".into(),
        overlap_small: true,
        cautions: vec![
            "check that both pins sit in hole 12 before you load".into(),
            "lower the bar onto the pins, do not drop it: a straight bar takes a set".into(),
        ],
        warnings: vec![
            "no landmark for the patella: measured from the last session".into(),
            "317.5 kg is 20 kg more than the heaviest set on record".into(),
        ],
        ladder: eight_rungs(),
        note: "Straps from the fourth rung. If the back moves on the first work set, leave out the others and tell me on Friday.".into(),
        ..setup()
    }
}

/// The pad of reps.
pub(crate) fn entry_reps() -> Entry {
    Entry {
        pad: Pad::Reps,
        question: "How many reps at 130 kg?".into(),
        numbers: (0..=8).collect(),
        planned: 5,
        through: String::new(),
        through_on: false,
    }
}

/// The pad of the moved back.
pub(crate) fn entry_moved() -> Entry {
    Entry {
        pad: Pad::Moved,
        question: "At which rep did the back move?".into(),
        numbers: (1..=5).collect(),
        planned: 0,
        through: "stopped there".into(),
        through_on: false,
    }
}

/// The back moved.
pub(crate) fn stop() -> Stop {
    Stop {
        headline: "back moved at rep 3".into(),
        set: "130 kg, 3 of 5 reps".into(),
        advice: "A moved back ends the climb. Pain means stop: ask a clinician.".into(),
        ladder: ladder(&[
            ("60", "×5", Done, ""),
            ("90", "×5", Done, ""),
            ("130", "×5", Moved, "back moved at 3"),
            ("165", "×5", Ahead, ""),
            ("180", "×5", Ahead, "work"),
        ]),
        main: "end the lift".into(),
        go_on: "go on, coach agrees".into(),
    }
}

/// Done as planned.
pub(crate) fn end() -> End {
    let row = |load: &str, reps: &str, hold: &str, state, kind: &str| DoneRow {
        load: load.into(),
        reps: reps.into(),
        hold: hold.into(),
        state,
        kind: kind.into(),
    };
    End {
        headline: "180 kg × 5, back held".into(),
        short: false,
        rows: vec![
            row("60 kg", "5 reps", "back held", Done, "warm-up"),
            row("90 kg", "3 reps", "back held", Done, "warm-up"),
            row("130 kg", "2 reps", "back held", Done, "warm-up"),
            row("165 kg", "1 rep", "back held", Done, "warm-up"),
            row("180 kg", "5 reps", "back held", Done, "work"),
        ],
        sum: "5 sets, 16 reps, 34 minutes".into(),
        next: Some(super::settles::next()),
        advice: "there is advice on the deadlift; see why".into(),
        why: "why".into(),
        main: "next lifter".into(),
        link: Some(link()),
    }
}

pub(crate) fn end_short() -> End {
    let row = |load: &str, reps: &str, hold: &str, state, kind: &str| DoneRow {
        load: load.into(),
        reps: reps.into(),
        hold: hold.into(),
        state,
        kind: kind.into(),
    };
    End {
        headline: "317.5 kg, 3 of 5 reps, back moved at 3".into(),
        short: true,
        rows: vec![
            row("20 kg", "5 reps", "back held", Done, "warm-up"),
            row("70 kg", "4 of 5 reps", "back held", Other, "warm-up"),
            row("120 kg", "skipped", "", Skipped, "warm-up"),
            row("170 kg", "3 reps", "back held", Done, "warm-up"),
            row("222.5 kg", "2 reps", "back moved at 2", Moved, "warm-up"),
            row("285 kg", "1 rep", "back held", Done, "warm-up"),
            row("317.5 kg", "3 of 5 reps", "back moved at 3", Moved, "work"),
            row("317.5 kg", "skipped", "", Skipped, "work"),
        ],
        sum: "6 sets, 18 reps, 1 hour 2 minutes".into(),
        next: Some(Next {
            work: "3 sets of 317.5 kg × 5".into(),
            verdict: "reset".into(),
            reason: "down 32.5 kg: the back moved at rep 3 in set 1, stuck again without a new best; ask the coach".into(),
            by_coach: false,
        }),
        advice: String::new(),
        why: "why".into(),
        main: "next lifter".into(),
        link: None,
    }
}

/// A pattern of the size of a link's code; nothing is to be read in it.
fn link() -> Link {
    let size = 33;
    let dark = |at: usize| (at * at / 7 + at / size).is_multiple_of(3);
    Link {
        words: "your record on your phone: opens once, for ten minutes".into(),
        size,
        dark: (0..size * size).map(dark).collect(),
    }
}
