//! Every button of a face: what is written on it, and what it does.
//!
//! The window draws them; a test holds that both agree. So whoever rehearses an evening, or reads
//! the screen to somebody, need not guess from words. Refuses: places and sizes.
use crate::face::{Frame, Screen};
use crate::floor::{Floor, FloorTurn, then_shown};
use crate::language::{Language, p};
use crate::list::{List, ListState, rows_shown};
use crate::meet_day::MeetPage;
use crate::tap::{Tap, TurnTap};
use crate::{choose::TILES_SHOWN, entry::Pad};

pub use crate::deed::Deed;

/// One button.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Button {
    /// What is written on it, as the window's accessible label has it.
    pub label: String,
    /// What it does.
    pub does: Deed,
}

/// The buttons of `frame`. Where the window turns pages (of lifters, of a list's rows), those of
/// all pages; everywhere else each is drawn. No label comes twice.
#[must_use]
pub fn buttons(frame: &Frame) -> Vec<Button> {
    let mut row = Row {
        say: frame.language,
        list: Vec::new(),
    };
    let nowhere = matches!(&frame.screen, Screen::Page(page) if page.only);
    if !nowhere && !matches!(frame.screen, Screen::Choose(_)) {
        row.add(row.say.say(p::ALL_LIFTERS), Deed::Other);
    }
    if has_chips(&frame.screen) {
        for chip in &frame.chips {
            let label = row.say.fill(p::SWITCH_TO, &[&chip.lifter]);
            row.add(label, Deed::Lifter);
        }
    }
    row.of_screen(&frame.screen);
    row.add(frame.turn.clone(), Deed::Other);
    let takes_back = frame.undo == row.say.say(p::UNDO);
    let undo = if takes_back { Deed::Undo } else { Deed::Other };
    row.add(frame.undo.clone(), undo);
    for switch in frame.beside.iter().flat_map(|beside| &beside.switches) {
        row.add(switch.0.clone(), Deed::Other);
    }
    row.list
}

/// Whether the header tells who else is under way.
fn has_chips(screen: &Screen) -> bool {
    match screen {
        Screen::SetUp(_)
        | Screen::Bar(_)
        | Screen::Entry(_)
        | Screen::Rest(_)
        | Screen::Turn(_)
        | Screen::Holds(_)
        | Screen::Settle(_)
        | Screen::Stop(_)
        | Screen::End(_)
        | Screen::History(_)
        | Screen::Why(_) => true,
        Screen::Choose(_)
        | Screen::Floor(_)
        | Screen::Meet(_)
        | Screen::List(_)
        | Screen::Page(_)
        | Screen::Typing(_) => false,
    }
}

/// The label of a turn on the floor: the name where the lifter's first turn stands, later ones
/// with the set, so that none is written twice.
#[must_use]
pub fn turn_label(turn: &FloorTurn, told: &[String]) -> String {
    if told.contains(&turn.lifter) {
        format!("{}, {}", turn.lifter, turn.lift)
    } else {
        turn.lifter.clone()
    }
}

/// Labels of the turns of a floor as they are drawn: of each rack first up, then next, then
/// those after.
#[must_use]
pub fn turn_labels(floor: &Floor) -> Vec<Vec<String>> {
    let then = then_shown(floor.racks.len());
    let mut told = Vec::new();
    let racks = floor.racks.iter().map(|rack| {
        let drawn = rack.up.iter().chain(&rack.next);
        let drawn = drawn.chain(rack.then.iter().take(then));
        let labels = drawn.map(|turn| {
            let label = turn_label(turn, &told);
            told.push(turn.lifter.clone());
            label
        });
        labels.collect()
    });
    racks.collect()
}

/// Labels of the calls of a meet day, in order.
#[must_use]
pub fn call_labels(page: &MeetPage) -> Vec<String> {
    let calls = page.calls.iter();
    told_apart(calls.map(|call| format!("{}, {} {}", call.lifter, call.load, call.set)))
}

/// Labels of the rows of a list that can be pressed, in order.
#[must_use]
pub fn row_labels(list: &List) -> Vec<String> {
    let pressed = list.rows.iter().filter(|row| row.state != ListState::Told);
    told_apart(
        pressed.map(|row| match (row.title.as_str(), row.value.as_str()) {
            (title, "") => title.to_owned(),
            ("", value) => value.to_owned(),
            (title, value) => format!("{title}, {value}"),
        }),
    )
}

/// The same labels, the second of two alike with a 2 behind it.
fn told_apart(labels: impl Iterator<Item = String>) -> Vec<String> {
    let mut all: Vec<String> = Vec::new();
    let mut apart: Vec<String> = Vec::new();
    for label in labels {
        let before = all.iter().filter(|other| **other == label).count();
        apart.push(match before {
            0 => label.clone(),
            n => format!("{label}, {}", n + 1),
        });
        all.push(label);
    }
    apart
}

/// What an answer about a turn does.
fn deed_of(tap: &Tap) -> Deed {
    let Tap::Turn(said) = tap else {
        return Deed::Skip;
    };
    match said {
        TurnTap::Later => Deed::Later,
        TurnTap::Longer => Deed::Longer,
        TurnTap::Leave => Deed::Leave,
        TurnTap::Mine => Deed::Mine,
        TurnTap::Back => Deed::Go,
    }
}

/// Buttons as they are gathered.
struct Row {
    say: Language,
    list: Vec<Button>,
}

impl Row {
    /// One more, where there is anything written on it.
    fn add(&mut self, label: String, does: Deed) {
        if !label.is_empty() {
            self.list.push(Button { label, does });
        }
    }

    /// What the window writes by itself.
    fn own(&mut self, word: crate::language::Phrase, does: Deed) {
        self.add(self.say.say(word), does);
    }

    /// At the bar, at rest, and the pads of both.
    fn of_turn(&mut self, screen: &Screen) {
        match screen {
            Screen::Bar(bar) => {
                self.add(bar.settle.clone(), Deed::Other);
                self.add(bar.loaded.clone(), Deed::Loaded);
                self.add(bar.holds.clone(), Deed::Holds);
                self.own(p::OTHER_REPS, Deed::Reps);
                self.own(p::BACK_MOVED, Deed::Moved);
                // A set of as many reps as go is entered by their number alone.
                let open = bar.main == self.say.say(p::groups::AS_MANY);
                let main = if open { Deed::Reps } else { Deed::Done };
                self.add(with_detail(&bar.main, &bar.main_detail), main);
            }
            Screen::Rest(rest) => {
                self.add(rest.settle.clone(), Deed::Other);
                self.own(p::SET_UP, Deed::Other);
                self.add(rest.loaded.clone(), Deed::Loaded);
                self.add(rest.holds.clone(), Deed::Holds);
                let mine = rest.main == self.say.say(p::MINE);
                self.add(rest.main.clone(), if mine { Deed::Mine } else { Deed::Go });
            }
            Screen::Entry(entry) => {
                let number = match entry.pad {
                    Pad::Reps => Deed::Reps,
                    Pad::Moved => Deed::Moved,
                };
                for n in &entry.numbers {
                    self.add(n.to_string(), number);
                }
                self.add(entry.through.clone(), Deed::Moved);
            }
            Screen::Turn(pad) => {
                for answer in &pad.answers {
                    self.add(answer.word.clone(), deed_of(&answer.tap));
                }
                self.own(p::SET_UP, Deed::Other);
                self.add(pad.stop.clone(), Deed::End);
            }
            Screen::Holds(holds) => {
                for answer in &holds.answers {
                    self.add(answer.word.clone(), Deed::Holds);
                }
                for key in &holds.plates {
                    self.add(format!("+ {}", key.word), Deed::Other);
                }
                self.add(holds.take_last.clone(), Deed::Other);
                self.add(holds.main.clone(), Deed::Holds);
            }
            Screen::Choose(_)
            | Screen::SetUp(_)
            | Screen::Stop(_)
            | Screen::Settle(_)
            | Screen::End(_)
            | Screen::Floor(_)
            | Screen::History(_)
            | Screen::Why(_)
            | Screen::Meet(_)
            | Screen::List(_)
            | Screen::Page(_)
            | Screen::Typing(_) => {}
        }
    }

    fn of_screen(&mut self, screen: &Screen) {
        match screen {
            Screen::Choose(choose) => {
                for tile in &choose.tiles {
                    self.add(tile.lifter.clone(), Deed::Lifter);
                }
                if choose.tiles.len() > TILES_SHOWN {
                    self.own(p::MORE_LIFTERS, Deed::Other);
                }
                self.add(choose.floor.clone(), Deed::Floor);
                self.add(choose.panel.clone(), Deed::Other);
            }
            Screen::SetUp(setup) => {
                let begins = setup.main == self.say.say(p::START);
                self.own(p::HISTORY, Deed::Other);
                let asks = setup.main == self.say.say(p::list::COACH_CODE);
                let main = match (begins, asks) {
                    (true, _) => Deed::Start,
                    (false, true) => Deed::Other,
                    (false, false) => Deed::Go,
                };
                self.add(setup.main.clone(), main);
            }
            Screen::Bar(_)
            | Screen::Rest(_)
            | Screen::Entry(_)
            | Screen::Turn(_)
            | Screen::Holds(_) => self.of_turn(screen),
            Screen::Settle(settle) => {
                for choice in &settle.loads {
                    self.add(format!("{} {}", choice.load, choice.unit), Deed::Choose);
                }
                self.add(settle.main.clone(), Deed::Choose);
            }
            Screen::Stop(stop) => {
                self.add(stop.go_on.clone(), Deed::Other);
                self.add(stop.main.clone(), Deed::End);
            }
            Screen::End(end) => {
                self.own(p::HISTORY, Deed::Other);
                self.add(end.why.clone(), Deed::Other);
                self.add(end.main.clone(), Deed::Next);
            }
            Screen::Floor(floor) => {
                for label in turn_labels(floor).into_iter().flatten() {
                    self.add(label, Deed::Lifter);
                }
            }
            Screen::History(history) => self.add(history.main.clone(), Deed::Other),
            Screen::Why(why) => self.add(why.main.clone(), Deed::Other),
            Screen::Meet(page) => {
                for label in call_labels(page) {
                    self.add(label, Deed::Other);
                }
                self.add(page.sooner.clone(), Deed::Other);
                self.add(page.later.clone(), Deed::Other);
                self.add(with_detail(&page.main, &page.main_detail), Deed::Other);
            }
            Screen::List(list) => self.of_list(list),
            Screen::Page(_) => {}
            Screen::Typing(typing) => {
                for key in &typing.keys {
                    self.add(key.clone(), Deed::Other);
                }
                self.add(typing.delete.clone(), Deed::Other);
                self.add(typing.other.clone(), Deed::Other);
                self.add(typing.main.clone(), Deed::Other);
            }
        }
    }

    fn of_list(&mut self, list: &List) {
        for label in row_labels(list) {
            self.add(label, Deed::Other);
        }
        if list.rows.len() > rows_shown(list) {
            self.own(p::MORE, Deed::Other);
        }
        self.add(list.main.clone(), Deed::Other);
    }
}

/// A main button with what stands under it.
fn with_detail(main: &str, detail: &str) -> String {
    if main.is_empty() || detail.is_empty() {
        main.to_owned()
    } else {
        format!("{main}, {detail}")
    }
}
