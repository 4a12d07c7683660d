//! What stands beside the screen: signs for lamp, buzzer and lights, days of programmes for the
//! page.
use super::Kiosk;
use crate::replan::Patience;
use view::Signs;

impl Kiosk {
    /// What stands beside the screen now.
    pub fn signs(&mut self) -> Signs {
        self.renew_day();
        let time = self.time_of_day();
        view::signs(&self.stage, &self.scene(&time))
    }

    /// Gathers for the page what programmes fill, a little at a time.
    pub(super) fn gather(&mut self) {
        let now = (self.date(), self.owner.seq());
        if let Some(shared) = &mut self.shared {
            shared.gather(&self.gym.gym, self.owner.state(), now);
        }
    }

    /// How long plans may take from now on, for pictures.
    pub(crate) fn be_patient(&mut self, patience: Patience) {
        self.patience = patience;
    }
}
