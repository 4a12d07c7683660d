//! What a face means to a finger: two faces whose buttons say the same have one number.
//!
//! Clocks, rests left and shares run on without a tap meaning anything else; all other fields
//! count, new ones too.
use crate::face::{Chip, Frame, Screen};
use crate::look::Look;
use crate::pace::Pace;

/// Numbers faces by their meaning.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Numbering {
    last: Option<Box<Frame>>,
    number: u64,
}

impl Numbering {
    /// The number of this face: that of the last one where a tap means the same, else a higher
    /// one; from 1.
    pub fn number(&mut self, frame: &Frame) -> u64 {
        let meaning = meaning(frame);
        if self.last.as_deref() != Some(&meaning) {
            self.last = Some(Box::new(meaning));
            self.number += 1;
        }
        self.number
    }
}

/// The face without what ticks.
#[must_use]
pub fn meaning(frame: &Frame) -> Frame {
    let mut meant = Frame {
        look: Look::Dim,
        clock: String::new(),
        chips: frame.chips.iter().map(who).collect(),
        notice: String::new(),
        beside: None,
        number: 0,
        answers: 0,
        shift: (0, 0),
        ..frame.clone()
    };
    still(&mut meant.screen);
    meant
}

/// Whose chip it is.
fn who(chip: &Chip) -> Chip {
    Chip {
        lifter: chip.lifter.clone(),
        word: String::new(),
        pace: Pace::Fresh,
        shown: chip.shown,
    }
}

/// Takes out of a screen what runs on by itself.
fn still(screen: &mut Screen) {
    match screen {
        Screen::Choose(choose) => {
            for tile in &mut choose.tiles {
                (tile.word, tile.pace, tile.share) = (String::new(), Pace::Fresh, 0.0);
            }
        }
        Screen::Rest(rest) => {
            (rest.left, rest.share, rest.word) = (String::new(), 0.0, String::new());
        }
        Screen::Settle(settle) => (settle.left, settle.share) = (String::new(), 0.0),
        Screen::Floor(floor) => {
            for rack in &mut floor.racks {
                rack.without_turn.clear();
                let turns = rack.up.iter_mut().chain(&mut rack.next);
                for turn in turns.chain(&mut rack.then) {
                    (turn.word, turn.pace) = (String::new(), Pace::Fresh);
                }
            }
        }
        Screen::Meet(page) => {
            page.hint = String::new();
            for call in &mut page.calls {
                (call.left, call.when, call.due) = (String::new(), String::new(), false);
            }
        }
        Screen::List(list) => {
            list.hint = String::new();
            for row in &mut list.rows {
                row.detail = String::new();
            }
        }
        Screen::End(end) => end.link = None,
        Screen::SetUp(_)
        | Screen::Bar(_)
        | Screen::Entry(_)
        | Screen::Turn(_)
        | Screen::Holds(_)
        | Screen::Stop(_)
        | Screen::History(_)
        | Screen::Why(_)
        | Screen::Page(_)
        | Screen::Typing(_) => {}
    }
}
