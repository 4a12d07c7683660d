//! A thread that plans on while people rest: what is called stays, what comes after may get
//! better.
//!
//! It stands back for taps, ends what has become of no use, and takes no longer and no more memory
//! than its limits.
use crate::clock::stopwatch;
use crate::input::{Better, Input};
use crate::kiosk::Kiosk;
use crate::watch::{spawn_again, stand_back};
use domain::rotation::Ahead;
use domain::solve::rotation::Effort;
use std::collections::VecDeque;
use std::sync::mpsc::{Receiver, Sender, TryRecvError, channel};

/// Time for one station's order, nanoseconds: most rests are longer.
const WITHIN_NS: u64 = 20_000_000_000;
/// States for it; bounds what the search keeps.
const STATES_MAX: u64 = 2_000_000;

/// Whoever plans on.
#[derive(Debug)]
pub struct Planner(Sender<Ahead>);

impl Planner {
    /// Starts the thread; better orders come as [`Input::Better`]. Without a thread nothing is
    /// planned on, and the orders called still stand.
    #[must_use]
    pub fn start(inputs: Sender<Input>) -> Self {
        let (orders, inbox) = channel();
        let started = spawn_again("planner", move || {
            stand_back();
            work(&inbox, &inputs);
        });
        if let Err(error) = started {
            tracing::warn!(%error, "orders are not planned on");
        }
        Self(orders)
    }

    /// Hands over what can be planned on now.
    pub fn follow(&self, kiosk: &mut Kiosk) {
        for ahead in kiosk.to_plan_on() {
            // It fails where there is no thread, which was told.
            drop(self.0.send(ahead));
        }
    }
}

/// Plans station after station, the latest order of each, until nobody hands any over.
fn work(inbox: &Receiver<Ahead>, inputs: &Sender<Input>) {
    let mut waiting = VecDeque::new();
    loop {
        let ahead = match waiting.pop_front() {
            Some(ahead) => ahead,
            None => match inbox.recv() {
                Ok(ahead) => ahead,
                Err(_) => return,
            },
        };
        let (mut clock, mut outdated) = (stopwatch(), false);
        let found = ahead.better(Effort {
            states: STATES_MAX,
            go_on: &mut || {
                outdated = outdated || !keep_latest(inbox, &mut waiting, &ahead);
                !outdated && clock() < WITHIN_NS
            },
        });
        let Some(turns) = found.filter(|_| !outdated) else {
            continue;
        };
        if inputs
            .send(Input::Better(Box::new(Better { ahead, turns })))
            .is_err()
        {
            return;
        }
    }
}

/// Takes in what was handed over meanwhile, one order a station; says whether `current` is still
/// the latest of its own.
fn keep_latest(inbox: &Receiver<Ahead>, waiting: &mut VecDeque<Ahead>, current: &Ahead) -> bool {
    loop {
        match inbox.try_recv() {
            Ok(next) => {
                waiting.retain(|other| other.station != next.station);
                waiting.push_back(next);
            }
            Err(TryRecvError::Empty) => {
                return waiting.iter().all(|other| other.station != current.station);
            }
            Err(TryRecvError::Disconnected) => return false,
        }
    }
}
