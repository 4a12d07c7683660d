//! Taps that come from a window: each is held against the face that it was meant for.
use super::Kiosk;
use view::{Frame, Meant};

impl Kiosk {
    /// Takes a tap of the window, and gives the face that follows, which says that it answers
    /// this tap. One that was meant for an older face does nothing.
    pub fn take(&mut self, meant: &Meant) -> Frame {
        self.answered = meant.id;
        if self.is_late(meant.number) {
            return self.frame();
        }
        self.tap(&meant.tap)
    }

    /// Whether what was meant for the face of that number comes too late: what it would do now
    /// is not what somebody saw.
    pub(super) fn is_late(&mut self, number: u64) -> bool {
        let now = self.frame().number;
        if number != now {
            // Not the tap: at the door it is a digit of the code.
            tracing::info!(meant_for = number, now, "meant for an older face: not done");
        }
        number != now
    }

    /// The face with its number and with what it answers.
    pub(super) fn mark(&mut self, mut frame: Frame) -> Frame {
        frame.number = self.numbering.number(&frame);
        frame.answers = self.answered;
        frame
    }
}
