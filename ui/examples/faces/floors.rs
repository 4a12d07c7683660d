//! Rotations of invented lifters: two, four and six of them, kilos and pounds, one rack and two.
use super::draw::{bar, change, spot, stripped};
use view::Pace;
use view::floor::{Floor, FloorRack, FloorTurn};

/// A turn from "lifter|lift|load|unit|reps|hole|word|take off|put on|discs".
fn turn(line: &str) -> FloorTurn {
    let mut words = line.split('|').map(String::from);
    let mut next = || words.next().unwrap_or_default();
    let (lifter, lift, load, unit, reps, hole, word) =
        (next(), next(), next(), next(), next(), next(), next());
    let pace = match word.split(' ').next().unwrap_or_default() {
        "rest" => Pace::Resting,
        "back" => Pace::Stopped,
        _ => Pace::Ready,
    };
    let (take_off, put_on, discs) = (next(), next(), next());
    let idle = take_off.is_empty() && put_on.is_empty();
    FloorTurn {
        lifter,
        lift,
        load,
        unit,
        reps,
        spot: spot(
            &hole,
            if hole.is_empty() { "" } else { "1 mat, 20 mm" },
            &[],
        ),
        order: None,
        word,
        pace,
        bar: bar(&discs),
        change: change(
            &take_off,
            &put_on,
            if idle { "leave the bar as it is" } else { "" },
        ),
    }
}

/// A rack from its turns, the first up, the second next.
fn rack(name: &str, lines: &str) -> FloorRack {
    let mut turns = lines.lines().map(turn);
    FloorRack {
        without_turn: Vec::new(),
        name: name.into(),
        up: turns.next(),
        next: turns.next(),
        then: turns.collect(),
    }
}

fn floor(racks: Vec<FloorRack>) -> Floor {
    let empty = String::new();
    Floor { racks, empty }
}

const KILOS: &str = "\
Edda|rack pull, work set|180|kg|5 reps|9|up|||25 25 20 5
Tomasz|rack pull, warm-up 3 of 4|160|kg|2 reps|8|next|5, 20|15
Priya|halting deadlift, warm-up 2 of 4|50|kg|3 reps||rest 1:10|15, 25, 25|15
Edda|rack pull, work set 2 of 3|180|kg|5 reps|9|rest 2:40|15|25, 25, 20, 5
Tomasz|rack pull, warm-up 4 of 4|190|kg|1 rep|8|rest 3:10|5|10
Priya|halting deadlift, warm-up 3 of 4|72.5|kg|2 reps||rest 4:40||10";

/// Two lifters at one rack.
pub(crate) fn two() -> Floor {
    let lines: Vec<&str> = KILOS
        .lines()
        .filter(|line| !line.starts_with('P'))
        .collect();
    floor(vec![rack("north rack", &lines.join("\n"))])
}

/// Four lifters, kilos, a bar to load.
pub(crate) fn four() -> Floor {
    let lines = "\
Tomasz|rack pull, warm-up 3 of 4|160|kg|2 reps|8|up|5, 20|15, 2.5|25 25 +15 +2.5
Konstantina Žižková|barbell shrug, work set|102.5|kg|12 reps|11|next|2.5, 15, 25|15, 1.25|
Edda|rack pull, work set|180|kg|5 reps|9|rest 0:30||
Priya|halting deadlift, warm-up 2 of 4|50|kg|3 reps||rest 1:10||
Tomasz|rack pull, warm-up 4 of 4|190|kg|1 rep|8|rest 3:10||";
    floor(vec![rack("north rack", lines)])
}

/// Six lifters, one of whom moved.
pub(crate) fn six() -> Floor {
    let lines = "\
Bartholomäus Łęcki|rack pull, work set 2 of 3|317.5|kg|12 reps|14|up|||25 25 25 25 25 20 2.5 1.25
Edda|rack pull, work set|180|kg|5 reps|9|rest 0:20|1.25, 2.5, 20, 25, 25|5|
Tomasz|rack pull, warm-up 4 of 4|190|kg|1 rep|8|rest 1:10||
Priya|halting deadlift, warm-up 2 of 4|50|kg|3 reps||back moved||
Wilhelmina Øvergård|barbell shrug, work set|102.5|kg|8 reps|11|rest 2:00||
Ñuflo|power snatch, warm-up 1 of 4|30|kg|3 reps||ready||
Bartholomäus Łęcki|rack pull, work set 3 of 3|317.5|kg|12 reps|14|rest 12:40||";
    floor(vec![rack("north rack", lines)])
}

const POUNDS: &str = "\
Oskar|rack pull, work set|1002.5|lb|1 rep|4|up||25, 10, 5|45lb 45lb 45lb 45lb 45lb +25lb +10lb +5lb
Sanna|rack pull, warm-up 4 of 4|405|lb|1 rep|6|rest 0:50|2.5, 5, 10, 25, 45, 45, 45|
Ibrahim|halting deadlift, work set|345|lb|5 reps||rest 1:50|45|10, 5
Anouk|rack pull, warm-up 2 of 4|225|lb|3 reps|5|rest 2:20|5, 10, 45|";

/// Pounds.
pub(crate) fn pounds() -> Floor {
    floor(vec![rack("south rack", POUNDS)])
}

/// Two racks side by side, kilos and pounds.
pub(crate) fn racks() -> Floor {
    floor(vec![rack("north rack", KILOS), rack("south rack", POUNDS)])
}

/// Two racks, six lifters, one rack with nobody up.
pub(crate) fn racks_of_six() -> Floor {
    let mut racks = vec![rack("north rack", KILOS), rack("south rack", KILOS)];
    let mut waiting = six().racks.remove(0);
    racks[1].next = waiting.next.take();
    racks[1].up = None;
    racks[0].name = "yard rack, old yard bar".into();
    if let Some(up) = &mut racks[0].up {
        up.spot = spot("", "", &[]);
        up.word = "rest 0:20".into();
        up.pace = Pace::Resting;
        up.lifter = "Bartholomäus Łęcki".into();
    }
    racks[1].then = waiting.then;
    floor(racks)
}

/// One rack or two, whose bars were left heavy in another hole.
pub(crate) fn strip(mut all: Floor) -> Floor {
    for up in all.racks.iter_mut().filter_map(|rack| rack.up.as_mut()) {
        up.change = stripped("25 + 25 + 20 + 10 + 2.5");
    }
    all
}

/// Nobody lifts.
pub(crate) fn empty() -> Floor {
    Floor {
        racks: vec![],
        empty: "Nobody is under way. Choose a lifter to begin.".into(),
    }
}
