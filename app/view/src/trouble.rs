//! The face of a kiosk that cannot start: why, what to do, and that it is tried again.
use crate::language::{Language, p};
use crate::list::Page;
use crate::look::Look;
use crate::{Frame, Screen};

/// The face, with the words of each language below one another.
#[must_use]
pub fn frame(said: [(Language, String); Language::ALL.len()]) -> Frame {
    let language = said[0].0;
    let mut lines = Vec::new();
    for (say, why) in said {
        lines.extend([say.say(p::CANNOT_START), why, say.say(p::TRIED_AGAIN)]);
    }
    // The first of them stands over all.
    let title = lines.remove(0);
    Frame {
        language,
        look: Look::default(),
        lifter: String::new(),
        lift: String::new(),
        clock: String::new(),
        chips: Vec::new(),
        undo: String::new(),
        undo_detail: String::new(),
        turn: String::new(),
        notice: String::new(),
        screen: Screen::Page(Page {
            title,
            lines,
            only: true,
        }),
        beside: None,
        number: 0,
        answers: 0,
        asleep: false,
        shift: (0, 0),
    }
}
