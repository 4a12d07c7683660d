//! Taps and presses that come from a window or a switch: each is held against the face that it was
//! meant for; and what the face does when none come.
use super::Kiosk;
use domain::rotation::Station;
use domain::{LiftNo, Moment};
use hardware::Press;
use std::collections::BTreeMap;
use view::entry::Pad;
use view::signs::Standing;
use view::{Frame, Guard, Idle, IdleTimes, Meant, Numbering, Place, Screen, Signs, Tap, Weight};

/// A press of a button or foot switch, and the face that it was meant for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Pressed {
    /// What the switch stands for.
    pub press: Press,
    /// [`Frame::number`] of the face that was drawn when it was pressed.
    pub number: u64,
}

/// What a window and people were shown, and what came of it.
#[derive(Debug, Default)]
pub(super) struct Seen {
    numbering: Numbering,
    /// The last tap of the window that was answered.
    answered: u64,
    /// Holds back presses of switches.
    guard: Guard,
    idle: Idle,
    /// Who was up when it was last looked.
    called: Signs,
    /// Whose turn it is at each station, and since when where that was seen to change.
    pub(super) up_since: BTreeMap<Station, (LiftNo, Moment)>,
}

impl Seen {
    /// Somebody is there.
    pub(super) fn touch(&mut self, now_ms: u64) {
        self.idle.touch(now_ms);
    }
}

impl Kiosk {
    /// Takes a tap of the window, and gives the face that follows, which says that it answers
    /// this tap. One that was meant for an older face does nothing; a sleeping one only wakes.
    pub fn take(&mut self, meant: &Meant) -> Frame {
        self.seen.answered = meant.id;
        if self.wakes() || self.is_late(meant.number) {
            return self.frame();
        }
        self.tap(&meant.tap)
    }

    /// Takes a press of a button or foot switch, as the tap that it stands for on the screen that
    /// it was meant for; elsewhere, and while the main button still fills, it does nothing.
    pub fn press(&mut self, pressed: Pressed) -> Frame {
        if self.wakes() || self.is_late(pressed.number) {
            return self.frame();
        }
        let frame = self.frame();
        let Some(tap) = tap_of(pressed.press, &frame.screen) else {
            return frame;
        };
        let (weight, place) = match pressed.press {
            Press::Done => (Weight::Main, 0),
            Press::Main => (Weight::Main, 1),
            Press::Moved => (Weight::Entry, 2),
            Press::Undo => (Weight::Entry, 3),
        };
        let now = self.steady_ms();
        if !self.seen.guard.act(now, weight, Place::Switch(place)) {
            tracing::info!(press = ?pressed.press, "pressed too soon after the face changed: not done");
            return frame;
        }
        self.tap(&tap)
    }

    /// Whether what was meant for the face of that number comes too late: what it would do now
    /// is not what somebody saw.
    fn is_late(&mut self, number: u64) -> bool {
        let now = self.frame().number;
        if number != now {
            // Not the tap: at the door it is a digit of the code.
            tracing::info!(meant_for = number, now, "meant for an older face: not done");
        }
        number != now
    }

    /// The face with its number, with what it answers, and asleep when nobody is there.
    pub(super) fn mark(&mut self, mut frame: Frame) -> Frame {
        let (now, times) = (self.steady_ms(), self.idle_times());
        frame.asleep = self.seen.idle.is_asleep(now, &times);
        frame.shift = self.seen.idle.shift(now, &times);
        frame.number = self.seen.numbering.number(&frame);
        frame.answers = self.seen.answered;
        self.seen.guard.shown(now, &frame);
        frame
    }

    /// A touch wakes a sleeping face, and does nothing else.
    fn wakes(&mut self) -> bool {
        let now = self.steady_ms();
        let asleep = self.seen.idle.is_asleep(now, &self.idle_times());
        if asleep {
            self.seen.idle.touch(now);
        }
        asleep
    }

    /// After a time without a touch all lifters are shown; a call wakes, and keeps the face of
    /// whom it calls.
    pub(super) fn be_idle(&mut self) {
        let signs = self.signs();
        let now = self.steady_ms();
        let up = signs.lifts.iter().filter(|(_, it)| **it == Standing::Up);
        let new = up.filter(|(no, _)| self.seen.called.lifts.get(no) != Some(&Standing::Up));
        let shown = self.stage.lifter.as_ref();
        let state = self.owner.state();
        for (no, _) in new {
            let lifter = state.lifts.get(no).map(|run| &run.sheet.lifter);
            if lifter.is_some() && lifter == shown {
                self.seen.idle.touch(now);
            } else {
                self.seen.idle.call(now);
            }
        }
        self.seen.called = signs;
        if self.seen.idle.leaves(now, &self.idle_times()) {
            let time = self.time_of_day();
            if let Some(home) = self.stage.home(&self.scene(&time)) {
                self.stage = home;
            }
        }
    }

    /// Nobody needs to be called for what a hand did.
    pub(super) fn know_who_is_up(&mut self) {
        self.seen.called = self.signs();
    }

    fn idle_times(&self) -> IdleTimes {
        IdleTimes {
            leaves_after: self.config.floor_after_ms.map(u64::from),
            sleeps_after: self.config.sleep_after_ms.map(u64::from),
        }
    }

    /// Milliseconds of the machine's own clock.
    pub(super) fn steady_ms(&self) -> u64 {
        self.clock.up_ms()
    }
}

/// The tap that a press stands for on a screen.
fn tap_of(press: Press, screen: &Screen) -> Option<Tap> {
    let at_bar = matches!(screen, Screen::Bar(_));
    let leads_on = matches!(
        screen,
        Screen::SetUp(_) | Screen::Settle(_) | Screen::Bar(_) | Screen::Rest(_) | Screen::End(_)
    );
    let asks_where = matches!(screen, Screen::Entry(entry) if entry.pad == Pad::Moved);
    match press {
        Press::Done if at_bar => Some(Tap::Main),
        Press::Main if leads_on => Some(Tap::Main),
        Press::Moved if at_bar => Some(Tap::BackMoved),
        Press::Moved if asks_where => Some(Tap::Undo),
        Press::Undo => Some(Tap::Undo),
        Press::Done | Press::Main | Press::Moved => None,
    }
}
