//! Orders that are planned on while people rest: handed out once each, and taken back in only
//! where nothing has happened since.
use super::Kiosk;
use crate::input::Better;
use chrono::NaiveDate;
use domain::Command;
use domain::rotation::{Ahead, stations};

/// What was handed out to be planned on.
#[derive(Debug, Default)]
pub(super) struct PlannedOn {
    orders: Vec<Ahead>,
    /// The day and the last event for which these are all.
    all_for: Option<(NaiveDate, u64)>,
}

impl Kiosk {
    /// The orders that were called since this was last asked and can be planned on.
    pub fn to_plan_on(&mut self) -> Vec<Ahead> {
        let asked = (self.date(), self.owner.seq());
        if self.planned_on.all_for == Some(asked) {
            return Vec::new();
        }
        self.planned_on.all_for = Some(asked);
        let (gym, state, now) = (&self.gym.gym, self.owner.state(), self.clock.now());
        self.planned_on
            .orders
            .retain(|ahead| ahead.holds(gym, state));
        let known = |station: &_| self.planned_on.orders.iter().any(|a| a.station == *station);
        let open = stations(state, asked.0).into_iter();
        let new: Vec<Ahead> = open
            .filter(|station| !known(station))
            .filter_map(|station| Ahead::of(gym, state, &station, asked.0, now))
            .collect();
        self.planned_on.orders.extend_from_slice(&new);
        new
    }

    /// Calls a better order, as an event, so that a restart shows it too; says whether it did.
    /// Where anything has happened since that matters, the order that stands is kept.
    pub fn take_better(&mut self, better: Better) -> bool {
        let Better { ahead, turns } = better;
        if !ahead.holds(&self.gym.gym, self.owner.state()) {
            return false;
        }
        let station = ahead.station;
        let call = Command::CallRotation { station, turns };
        if let Err(error) = self.owner.command(&call, self.clock.now()) {
            tracing::warn!(%error, "a better order of turns was not called");
            return false;
        }
        self.after_change();
        self.keep_shown();
        true
    }
}
