//! All that the owner of state can be told, from every thread, and the way back.
//!
//! Refuses: waiting for whoever asked.
use crate::coach_desk::Handed;
use crate::error::KioskError;
use crate::kiosk::{Pressed, Proven};
use crate::nearby::Nearby;
use crate::stick::Stick;
use domain::elsewhere::Brought;
use domain::rotation::{Ahead, CalledTurn};
use share::{Order, Told};
use std::sync::Arc;
use std::sync::mpsc::Sender;
use view::Meant;

/// All that the owner of state can be told.
#[derive(Debug)]
pub enum Input {
    /// A finger.
    Tap(Meant),
    /// The coach's desk orders something.
    Order(Order),
    /// Something has changed where sticks appear; under which id it is known from now on.
    StickChanged(String),
    /// A stick was read.
    Stick(Seen),
    /// A plan from a browser was read; with the way back to whoever chose it.
    Handed(Box<Read>),
    /// What came of an order that was given at the desk on the screen.
    Told(Told),
    /// A copy was proven, or not.
    Proven(Box<Tried>),
    /// The record was made again after a copy was put back.
    RecordMade,
    /// The record is not what the journal makes of it.
    RecordUnsound,
    /// The journal is damaged in a part that the start did not read, or less than another place
    /// knows of it.
    Unsound(Box<KioskError>),
    /// What lies around the kiosk has changed.
    Nearby(Box<Nearby>),
    /// A better order of turns than the one that was called.
    Better(Box<Better>),
    /// What was done at another rack of the gym.
    Elsewhere(Box<Brought>),
    /// A button or foot switch.
    Pressed(Pressed),
    /// The window was closed, or the system asks us to end.
    Quit,
}

/// A better order, and the one that it is better than.
#[derive(Debug)]
pub struct Better {
    /// What was called.
    pub ahead: Ahead,
    /// What to call instead; it begins alike.
    pub turns: Vec<CalledTurn>,
}

/// A stick that was read, or its absence, under the id that it was seen with.
#[derive(Debug)]
pub struct Seen {
    pub(crate) id: String,
    pub(crate) stick: Option<Stick>,
}

/// A plan from a browser that was read, and where the answer goes.
#[derive(Debug)]
pub struct Read {
    pub(crate) handed: Handed,
    pub(crate) answer: Answer,
}

/// A copy that was tried, and where the answer goes.
#[derive(Debug)]
pub struct Tried {
    pub(crate) proven: Result<Proven, KioskError>,
    pub(crate) answer: Answer,
    /// As long as it is held somewhere, the copy is still being tried.
    pub(crate) _alive: Arc<()>,
}

/// The way back to whoever ordered something.
#[derive(Debug)]
pub(crate) enum Answer {
    /// The page on the network.
    Page(tokio::sync::oneshot::Sender<Told>),
    /// The desk on the screen.
    Screen(Sender<Input>),
}

impl Answer {
    /// Tells it; nobody hears it who has gone.
    pub(crate) fn send(self, told: Told) {
        match self {
            Self::Page(page) => drop(page.send(told)),
            Self::Screen(inputs) => drop(inputs.send(Input::Told(told))),
        }
    }
}
