//! Where the answer to an order goes: to the page, or to the screen.
//!
//! Refuses: waiting for whoever asked.
use crate::run::Input;
use share::Told;
use std::sync::mpsc::Sender;

/// The way back to whoever ordered something.
#[derive(Debug)]
pub(super) enum Answer {
    /// The page on the network.
    Page(tokio::sync::oneshot::Sender<Told>),
    /// The desk on the screen.
    Screen(Sender<Input>),
}

impl Answer {
    /// Tells it; nobody hears it who has gone.
    pub(super) fn send(self, told: Told) {
        match self {
            Self::Page(page) => drop(page.send(told)),
            Self::Screen(inputs) => drop(inputs.send(Input::Told(told))),
        }
    }
}
