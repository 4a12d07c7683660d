//! What is looked at beside the ladder: this kiosk's own page, what it is, a lifter's history.
//!
//! Refuses: entering a set; whatever is under way waits, and nothing of it is lost.
use crate::desk::place::{AtDoor, Place};
use crate::meet_typed::CardTyped;
use domain::event::LiftNo;
use domain::shown::WhyPart;

mod page;

/// Where the eye is, beside the ladder.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Aside {
    /// This kiosk's own page.
    Panel,
    /// What it is, and its licences.
    About,
    /// Where its page on the network is.
    Lan,
    /// The shown lifter's history of this lift.
    History(String),
    /// What stands behind the end of a lift.
    Why(LiftNo, WhyPart),
    /// A meet or test day.
    Meet,
    /// The card of one of its starters.
    Card(usize),
    /// A lot number or a weight for it is typed.
    CardTyping(CardTyped),
    /// The coach's desk.
    Desk(Place),
}

impl Aside {
    /// The door of the coach's desk.
    pub(crate) fn door() -> Self {
        Self::Desk(Place::Door(AtDoor::default()))
    }
}
