//! Fills the floor: the turns at one rack, or at two side by side.
use crate::draw::{BarFace, change, spot};
use crate::frame::{number_and_word, pace};
use crate::generated::{Floor, KioskWindow, Turn, Turns};
use crate::rows::Rows;
use slint::{ComponentHandle as _, SharedString};
use view::buttons::turn_labels;
use view::floor::{FloorRack, FloorTurn, then_shown};

/// Keeps the lists of both racks.
pub(crate) struct FloorFace {
    racks: [RackTurns; 2],
}

/// The lists of one rack.
struct RackTurns {
    bar: BarFace,
    then: Rows<Turn>,
    words: Rows<SharedString>,
}

impl FloorFace {
    pub(crate) fn new(window: &KioskWindow) -> Self {
        let rack = || RackTurns {
            bar: BarFace::new(),
            then: Rows::new(),
            words: Rows::new(),
        };
        let racks = [rack(), rack()];
        let to = window.global::<Floor<'_>>();
        to.set_first_then(racks[0].words.model());
        to.set_second_then(racks[1].words.model());
        Self { racks }
    }

    pub(crate) fn show(&self, window: &KioskWindow, floor: &view::floor::Floor) {
        let to = window.global::<Floor<'_>>();
        to.set_empty(floor.empty.as_str().into());
        let then = then_shown(floor.racks.len());
        let labels = turn_labels(floor);
        let of = |at: usize| labels.get(at).map_or(&[][..], Vec::as_slice);
        if let Some(rack) = floor.racks.first() {
            to.set_first_up(word(rack.up.as_ref()));
            to.set_first_next(word(rack.next.as_ref()));
            to.set_first(self.racks[0].show(rack, then, of(0)));
        }
        if let Some(rack) = floor.racks.get(1) {
            to.set_second_up(word(rack.up.as_ref()));
            to.set_second_next(word(rack.next.as_ref()));
            to.set_second(self.racks[1].show(rack, then, of(1)));
        }
        let without = floor.racks.iter().flat_map(|rack| &rack.without_turn);
        let without: Vec<&str> = without.map(String::as_str).collect();
        to.set_without_turn(without.join(", ").into());
        to.set_racks(match floor.racks.len() {
            0 => 0,
            1 => 1,
            _ => 2,
        });
    }
}

impl RackTurns {
    fn show(&self, rack: &FloorRack, then: usize, labels: &[String]) -> Turns {
        let mut labels = labels.iter();
        let mut turn = |turn: &FloorTurn| self::turn(turn, labels.next());
        let up = rack.up.as_ref().map(&mut turn);
        let next = rack.next.as_ref().map(&mut turn);
        self.then.settle(rack.then.iter().take(then).map(turn));
        let words = rack.then.iter().take(then).map(|turn| word(Some(turn)));
        self.words.settle(words);
        let bar = rack.up.as_ref().map(|up| self.bar.draw(&up.bar));
        Turns {
            name: rack.name.as_str().into(),
            is_up: rack.up.is_some(),
            up: up.unwrap_or_default(),
            bar: bar.unwrap_or_default(),
            is_next: rack.next.is_some(),
            next: next.unwrap_or_default(),
            then: self.then.model(),
            more: more(rack, then).into(),
        }
    }
}

/// Names of those for whom there is no box: "Ada, Bo".
fn more(rack: &FloorRack, then: usize) -> String {
    let boxed = rack
        .up
        .iter()
        .chain(&rack.next)
        .chain(rack.then.iter().take(then));
    let mut told: Vec<&str> = boxed.map(|turn| turn.lifter.as_str()).collect();
    let from = told.len();
    for turn in rack.then.iter().skip(then) {
        if !told.contains(&turn.lifter.as_str()) {
            told.push(&turn.lifter);
        }
    }
    told[from..].join(", ")
}

fn turn(turn: &FloorTurn, label: Option<&String>) -> Turn {
    let (reps, reps_word) = number_and_word(&turn.reps);
    Turn {
        label: label.unwrap_or(&turn.lifter).as_str().into(),
        lifter: turn.lifter.as_str().into(),
        lift: turn.lift.as_str().into(),
        load: turn.load.as_str().into(),
        unit: turn.unit.as_str().into(),
        reps: reps.into(),
        reps_word: reps_word.into(),
        pace: pace(turn.pace),
        change: change(&turn.change),
        spot: spot(&turn.spot),
    }
}

/// How it stands with a turn, if there is one.
fn word(turn: Option<&FloorTurn>) -> SharedString {
    turn.map(|turn| turn.word.as_str().into())
        .unwrap_or_default()
}
