//! One whole face of the kiosk, as the window gets it.
use crate::bar::AtTheBar;
use crate::beside::Beside;
use crate::choose::Choose;
use crate::desk::pad::Typing;
use crate::end::End;
use crate::entry::Entry;
use crate::floor::Floor;
use crate::history::History;
use crate::holds::Holds;
use crate::language::Language;
use crate::list::{List, Page};
use crate::look::Look;
use crate::meet_day::MeetPage;
use crate::pace::Pace;
use crate::rest::Rest;
use crate::settle::Settle;
use crate::setup::SetUp;
use crate::stop::Stop;
use crate::turn_pad::TurnPad;
use crate::why::Why;

/// All that the window shows.
#[derive(Debug, Clone, PartialEq)]
pub struct Frame {
    /// The language of all words.
    pub language: Language,
    /// The look of now.
    pub look: Look,
    /// The lifter shown; empty on the screen of all lifters.
    pub lifter: String,
    /// The lift shown.
    pub lift: String,
    /// Time of day, "18:42".
    pub clock: String,
    /// Who is under way, for switching in one tap; at most four, each always at the same place.
    pub chips: Vec<Chip>,
    /// What the button at the bottom left would do: "undo", "back"; empty when there is nothing.
    pub undo: String,
    /// More about it: "60 kg × 5".
    pub undo_detail: String,
    /// What opens the page on one's turn, "later, skip..."; empty where there is no turn.
    pub turn: String,
    /// A sentence that the lifter must see (something failed), or empty.
    pub notice: String,
    /// The screen itself.
    pub screen: Screen,
    /// Simulated devices drawn beside it, when that is asked for.
    pub beside: Option<Beside>,
    /// Rises whenever what a tap could mean has changed; a tap carries the one that it was meant
    /// for.
    pub number: u64,
    /// The last tap that was answered, by its [`Meant::id`](crate::Meant).
    pub answers: u64,
    /// Nobody has touched it for long: it is dark, and the first touch only wakes it.
    pub asleep: bool,
    /// Asleep: how far all is moved to the right and down, so that nothing burns in; pixels of
    /// the reference panel.
    pub shift: (i8, i8),
}

/// Another lifter under way.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Chip {
    /// Name.
    pub lifter: String,
    /// "1:40", "ready", "back moved".
    pub word: String,
    /// For the look.
    pub pace: Pace,
    /// Whether it is the lifter whose screen this is.
    pub shown: bool,
}

/// Which screen, with what it shows.
#[derive(Debug, Clone, PartialEq)]
pub enum Screen {
    /// All lifters of the day.
    Choose(Choose),
    /// Rack, pins, gear, cautions, before the first rung.
    SetUp(SetUp),
    /// The rung of now.
    Bar(AtTheBar),
    /// A pad of numbers.
    Entry(Entry),
    /// Later, skip, longer, leave.
    Turn(TurnPad),
    /// What the bar holds, said by hand.
    Holds(Holds),
    /// Between two rungs.
    Rest(Rest),
    /// The back moved: end, or go on.
    Stop(Stop),
    /// Work loads to choose from, after the last warm-up.
    Settle(Settle),
    /// The lift is over.
    End(End),
    /// The turns of all lifters at one glance.
    Floor(Floor),
    /// A lifter's history of one lift.
    History(History),
    /// What stands behind the end of a lift.
    Why(Why),
    /// A meet or test day.
    Meet(MeetPage),
    /// Things to choose from.
    List(List),
    /// A page to read.
    Page(Page),
    /// Something is typed.
    Typing(Typing),
}
