//! What is due the next time, recorded after each lift. Refuses: the rules; the core has them.
use super::Kiosk;
use domain::Command;
use domain::next::here::{decided, undecided};

impl Kiosk {
    /// Records what the rules give after each lift that is over; also one that a power cut kept from
    /// being recorded. Looks again only when something was entered or the day is another.
    pub(super) fn decide_next(&mut self) -> bool {
        let asked = (self.date(), self.owner.seq());
        if self.decided_for == Some(asked) {
            return false;
        }
        let state = self.owner.state();
        let open = undecided(state, asked.0);
        let open = open.into_iter().filter_map(|no| state.lifts.get(&no));
        let decided: Vec<_> = open
            .filter_map(|run| Some((run.no, decided(&self.gym.gym, state, run)?)))
            .collect();
        self.decided_for = Some(asked);
        let any = !decided.is_empty();
        for (no, decided) in decided {
            let decided = Box::new(decided);
            let command = Command::DecideNext { no, decided };
            if let Err(error) = self.owner.command(&command, self.clock.now()) {
                tracing::warn!(%error, "what is due the next time was not recorded");
            }
        }
        any
    }
}
