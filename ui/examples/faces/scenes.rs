//! Invented lifters on every screen and in every state, for looking and for tests.
use crate::draw::{bar, change, ladder, rack};
use view::bar::AtTheBar;
use view::choose::{Choose, Tile};
use view::draw::{LadderRow, RowState};
use view::end::{DoneRow, End};
use view::entry::{Entry, Pad};
use view::rest::Rest;
use view::setup::SetUp;
use view::stop::Stop;
use view::{Chip, Frame, Pace, Screen};

use RowState::{Ahead, Done, Moved, Now, Other, Skipped};

/// Every face with its name.
pub(crate) fn all() -> Vec<(&'static str, Frame)> {
    let mut faces = vec![
        ("choose", frame(choose(&tiles()[..4]))),
        ("choose-six", frame(choose(&tiles()[..6]))),
        ("choose-many", frame(choose(&tiles()))),
        ("choose-empty", frame(choose(&[]))),
        ("setup", frame(Screen::SetUp(setup()))),
        ("setup-floor", frame(Screen::SetUp(setup_floor()))),
        ("setup-long", long(Screen::SetUp(setup_long()))),
        ("bar", frame(Screen::Bar(at_the_bar()))),
        ("bar-floor", long(Screen::Bar(bar_floor()))),
        ("bar-off", frame(Screen::Bar(bar_off()))),
        ("bar-pounds", frame(Screen::Bar(bar_pounds()))),
        ("bar-empty", frame(Screen::Bar(bar_empty()))),
        ("entry-reps", frame(Screen::Entry(entry_reps()))),
        ("entry-moved", frame(Screen::Entry(entry_moved()))),
        ("rest", frame(Screen::Rest(rest()))),
        ("rest-over", long(Screen::Rest(rest_over()))),
        ("stop", frame(Screen::Stop(stop()))),
        ("end", frame(Screen::End(end()))),
        ("end-short", frame(Screen::End(end_short()))),
    ];
    let mut notice = frame(Screen::Bar(at_the_bar()));
    notice.notice = "The entry was not kept: the disk is full. Call whoever runs the gym.".into();
    faces.push(("bar-notice", notice.clone()));
    notice.screen = choose(&tiles()[..6]);
    faces.push(("choose-notice", notice));
    faces
}

/// Around a screen: a lifter with two others under way.
pub(crate) fn frame(screen: Screen) -> Frame {
    let choosing = matches!(screen, Screen::Choose(_));
    let chips = if choosing {
        &[][..]
    } else {
        &[
            ("Tomasz", "1:40", Pace::Resting),
            ("Priya", "ready", Pace::Ready),
        ]
    };
    Frame {
        lifter: if choosing {
            String::new()
        } else {
            "Edda".into()
        },
        lift: if choosing {
            String::new()
        } else {
            "rack pull".into()
        },
        clock: "18:42".into(),
        chips: chips.iter().map(chip).collect(),
        undo: if matches!(screen, Screen::Entry(_)) {
            "back".into()
        } else if choosing {
            String::new()
        } else {
            "undo".into()
        },
        undo_detail: if choosing || matches!(screen, Screen::Entry(_)) {
            String::new()
        } else {
            "90 kg × 3".into()
        },
        notice: String::new(),
        screen,
    }
}

/// The same with names as long as they come, and three others.
pub(crate) fn long(screen: Screen) -> Frame {
    let chips = [
        ("Bartholomäus Łęcki", "12:40", Pace::Resting),
        ("Wilhelmina Øvergård", "back moved", Pace::Stopped),
        ("Ñuflo", "ready", Pace::Ready),
    ];
    Frame {
        lifter: "Konstantina Žižková".into(),
        lift: "halting deadlift".into(),
        undo_detail: "1002.5 lb × 12".into(),
        chips: chips.iter().map(chip).collect(),
        ..frame(screen)
    }
}

fn chip(&(lifter, word, pace): &(&str, &str, Pace)) -> Chip {
    Chip {
        lifter: lifter.into(),
        word: word.into(),
        pace,
    }
}

fn choose(tiles: &[Tile]) -> Screen {
    Screen::Choose(Choose {
        gym: "Old Ropeworks Barbell".into(),
        date: "Wednesday 25 November".into(),
        tiles: tiles.to_vec(),
        empty: if tiles.is_empty() {
            "Nobody has a plan for today. Put a coach's plan into the plans folder.".into()
        } else {
            String::new()
        },
    })
}

/// One lifter a line: name, lift, work, place, word, pace, share done.
const LIFTERS: &str = "\
Edda|rack pull|180 kg × 5|hole 9|2 of 5 done|ready|0.4
Tomasz|rack pull|220 kg × 5|hole 8|rest 1:40|resting|0.6
Priya|halting deadlift|102.5 kg × 5|from the floor|not begun|fresh|0
Konstantina Žižková|barbell shrug|3 sets of 317.5 kg × 5|hole 11|back moved|stopped|0.8
Oskar|power clean|5 sets of 205 lb × 3|from the floor|done|done|1
Lucía|rack pull|||no work load yet|blocked|0
Bartholomäus Łęcki|halting deadlift|140 kg × 5|from the floor|not begun|fresh|0
Ñuflo|power snatch|60 kg × 2|from the floor|not begun|fresh|0
Wilhelmina Øvergård|barbell shrug|150 kg × 8|hole 10|rest 0:20|resting|0.5
Ibrahim|rack pull|200 kg × 5|hole 9|not begun|fresh|0
Sanna|deadlift|1002.5 lb × 1|from the floor|4 of 9 done|ready|0.44
Petr|nothing today||||fresh|0
Anouk|rack pull|95 kg × 5|hole 7|not begun|fresh|0
Dai|nothing today||||fresh|0";

fn tiles() -> Vec<Tile> {
    LIFTERS.lines().map(tile).collect()
}

fn tile(line: &str) -> Tile {
    let mut words = line.split('|').map(String::from);
    let mut next = || words.next().unwrap_or_default();
    Tile {
        lifter: next(),
        lift: next(),
        work: next(),
        place: next(),
        word: next(),
        pace: match next().as_str() {
            "resting" => Pace::Resting,
            "ready" => Pace::Ready,
            "stopped" => Pace::Stopped,
            "done" => Pace::Done,
            "blocked" => Pace::Blocked,
            _ => Pace::Fresh,
        },
        share: next().parse().unwrap_or(0.0),
    }
}

fn five_rungs(states: [RowState; 5]) -> Vec<LadderRow> {
    let rungs = [
        ("60", "×5"),
        ("90", "×3"),
        ("130", "×2"),
        ("165", "×1"),
        ("180", "×5"),
    ];
    let mut rows: Vec<_> = rungs
        .iter()
        .zip(states)
        .map(|(rung, state)| (rung.0, rung.1, state, ""))
        .collect();
    rows[4].3 = "work";
    ladder(&rows)
}

fn eight_rungs() -> Vec<LadderRow> {
    ladder(&[
        ("20", "×5", Done, ""),
        ("70", "×5", Other, "4 of 5"),
        ("120", "×5", Skipped, "skipped"),
        ("170", "×3", Moved, "back moved at 3"),
        ("222.5", "×2", Done, ""),
        ("285", "×1", Now, ""),
        ("317.5", "×5", Ahead, "work"),
        ("317.5", "×5", Ahead, "work"),
    ])
}

/// A warm-up in a hole, a disc to go on.
pub(crate) fn at_the_bar() -> AtTheBar {
    AtTheBar {
        load: "130".into(),
        unit: "kg".into(),
        reps: "2 reps".into(),
        rung: "warm-up 3 of 4".into(),
        bar: bar("25 20 +10"),
        change: change("", "10", "each side: put on 10"),
        ladder: five_rungs([Done, Done, Now, Ahead, Ahead]),
        rack: rack(20, 50.0, 9, &[20.0]),
        hole: "9".into(),
        mats: "1 mat, 20 mm".into(),
        gear: vec!["belt".into()],
        grip: "double overhand".into(),
        caution: String::new(),
        main: "2 done".into(),
        main_detail: "back kept".into(),
    }
}

fn bar_floor() -> AtTheBar {
    AtTheBar {
        load: "317.5".into(),
        reps: "12 reps".into(),
        rung: "work set 2 of 3".into(),
        bar: bar("25 25 25 25 25 +15 +5 +2.5 +1.25"),
        change: change("20, 10, 2.5", "15, 5, 2.5, 1.25", ""),
        ladder: eight_rungs(),
        rack: rack(0, 50.0, 0, &[]),
        hole: String::new(),
        mats: String::new(),
        gear: vec!["straps".into(), "belt".into()],
        caution: "stop the set when the back moves".into(),
        main: "12 done".into(),
        ..at_the_bar()
    }
}

fn bar_off() -> AtTheBar {
    AtTheBar {
        load: "102.5".into(),
        reps: "5 reps".into(),
        rung: "work set".into(),
        bar: bar("25 15 -10 -1.25"),
        change: change("1.25, 10", "", "each side: take off 1.25, 10"),
        ladder: ladder(&[
            ("60", "×5", Done, ""),
            ("85", "×1", Moved, "back moved at 1"),
            ("102.5", "×5", Now, "work"),
        ]),
        rack: rack(30, 25.0, 14, &[20.0, 10.0]),
        hole: "14".into(),
        mats: "2 mats, 30 mm".into(),
        gear: vec!["straps".into(), "belt".into()],
        caution: "use the retired bar on pins".into(),
        main: "5 done".into(),
        ..at_the_bar()
    }
}

fn bar_pounds() -> AtTheBar {
    AtTheBar {
        load: "1002.5".into(),
        unit: "lb".into(),
        reps: "1 rep".into(),
        rung: "work set".into(),
        bar: bar("45lb 45lb 45lb 45lb 45lb 45lb +45lb +25lb +10lb +5lb +2.5lb"),
        change: change("35", "45, 25, 10, 5, 2.5", ""),
        ladder: ladder(&[
            ("135", "×5", Done, ""),
            ("315", "×3", Done, ""),
            ("585", "×2", Other, "1 of 2"),
            ("855", "×1", Done, ""),
            ("1002.5", "×1", Now, "work"),
        ]),
        rack: rack(14, 76.2, 4, &[]),
        hole: "4".into(),
        mats: "no mat".into(),
        main: "1 done".into(),
        ..at_the_bar()
    }
}

fn bar_empty() -> AtTheBar {
    AtTheBar {
        load: "20".into(),
        reps: "5 reps".into(),
        rung: "warm-up 1 of 4".into(),
        bar: bar(""),
        change: change("", "", "empty bar"),
        ladder: five_rungs([Now, Ahead, Ahead, Ahead, Ahead]),
        gear: vec![],
        main: "5 done".into(),
        ..at_the_bar()
    }
}

fn setup() -> SetUp {
    SetUp {
        work: "180 kg × 5".into(),
        rack: rack(20, 50.0, 9, &[20.0]),
        hole: "9".into(),
        mats: "1 mat, 20 mm".into(),
        height: "bar 431 mm above your feet, 4 mm under the mark".into(),
        overlap: "shares 96 mm (3.8 in) with the halting deadlift".into(),
        overlap_small: false,
        bar: "retired bar, 20 kg, collars 5 kg".into(),
        gear: vec![
            "double overhand grip".into(),
            "belt from 130 kg".into(),
            "straps from 165 kg".into(),
        ],
        cues: vec!["shins near vertical".into(), "bar against the leg".into()],
        cautions: vec!["check that both pins sit in hole 9 before you load".into()],
        warnings: vec![],
        ladder: five_rungs([Ahead, Ahead, Ahead, Ahead, Ahead]),
        note: "Slow off the pins. No bounce.".into(),
        main: "start".into(),
    }
}

fn setup_floor() -> SetUp {
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

fn setup_long() -> SetUp {
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
        skip: "skip this rung".into(),
        stop: "end the lift".into(),
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
        skip: String::new(),
        stop: String::new(),
    }
}

/// Resting, a disc to come off and one to go on.
pub(crate) fn rest() -> Rest {
    Rest {
        left: "2:10".into(),
        share: 0.7,
        word: "rest".into(),
        last: "130 kg × 2, back kept".into(),
        load: "165".into(),
        unit: "kg".into(),
        reps: "1 rep".into(),
        rung: "warm-up 4 of 4".into(),
        bar: bar("25 +25 +20 +2.5"),
        change: change("10, 20", "25, 20, 2.5", ""),
        ladder: five_rungs([Done, Done, Done, Now, Ahead]),
        gear: vec!["straps".into()],
        main: "go now".into(),
    }
}

fn rest_over() -> Rest {
    Rest {
        left: "0:00".into(),
        share: 0.0,
        word: "rested".into(),
        load: "317.5".into(),
        reps: "12 reps".into(),
        rung: "work set 2 of 3".into(),
        bar: bar("25 25 25 25 25 20 2.5 1.25"),
        change: change("", "", "leave the bar as it is"),
        ladder: eight_rungs(),
        gear: vec![],
        last: "317.5 kg × 12, back kept".into(),
        ..rest()
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
        headline: "180 kg × 5, back kept".into(),
        short: false,
        rows: vec![
            row("60 kg", "5 reps", "back kept", Done, "warm-up"),
            row("90 kg", "3 reps", "back kept", Done, "warm-up"),
            row("130 kg", "2 reps", "back kept", Done, "warm-up"),
            row("165 kg", "1 rep", "back kept", Done, "warm-up"),
            row("180 kg", "5 reps", "back kept", Done, "work"),
        ],
        sum: "5 sets, 16 reps, 34 minutes".into(),
        main: "next lifter".into(),
    }
}

fn end_short() -> End {
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
            row("20 kg", "5 reps", "back kept", Done, "warm-up"),
            row("70 kg", "4 of 5 reps", "back kept", Other, "warm-up"),
            row("120 kg", "skipped", "", Skipped, "warm-up"),
            row("170 kg", "3 reps", "back kept", Done, "warm-up"),
            row("222.5 kg", "2 reps", "back moved at 2", Moved, "warm-up"),
            row("285 kg", "1 rep", "back kept", Done, "warm-up"),
            row("317.5 kg", "3 of 5 reps", "back moved at 3", Moved, "work"),
            row("317.5 kg", "skipped", "", Skipped, "work"),
        ],
        sum: "6 sets, 18 reps, 1 hour 2 minutes".into(),
        main: "next lifter".into(),
    }
}
