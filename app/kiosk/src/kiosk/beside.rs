//! What stands beside the screen: presses of buttons and a foot switch in, signs out, days of
//! programmes for the page.
//!
//! Refuses: a door of its own; a press is the tap that it stands for on the screen that is shown.
use super::Kiosk;
use crate::replan::Patience;
use hardware::Press;
use view::entry::Pad;
use view::{Frame, Screen, Signs, Tap};

impl Kiosk {
    /// Takes a press of a button or foot switch, as the tap that it stands for on the screen that
    /// is shown; elsewhere it does nothing.
    pub fn press(&mut self, press: Press) -> Frame {
        let frame = self.frame();
        let at_bar = matches!(frame.screen, Screen::Bar(_));
        let leads_on = matches!(
            frame.screen,
            Screen::SetUp(_)
                | Screen::Settle(_)
                | Screen::Bar(_)
                | Screen::Rest(_)
                | Screen::End(_)
        );
        let asks_where = matches!(&frame.screen, Screen::Entry(entry) if entry.pad == Pad::Moved);
        let tap = match press {
            Press::Done if at_bar => Tap::Main,
            Press::Main if leads_on => Tap::Main,
            Press::Moved if at_bar => Tap::BackMoved,
            Press::Moved if asks_where => Tap::Undo,
            Press::Undo => Tap::Undo,
            Press::Done | Press::Main | Press::Moved => return frame,
        };
        self.tap(&tap)
    }

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
