//! Buttons and foot switches: a press is told once it has settled, and not again for a while.
//!
//! A contact that bounces never settles while it bounces; one that keeps bouncing is told as a
//! fault and not listened to until it is quiet. Refuses: telling what a press means; the screen
//! that is shown decides that. A switch that is held when the kiosk starts tells nothing until it
//! was let go.
use crate::faults::Faults;
use crate::kept::AGAIN_AFTER_MS;
use crate::ports::Reads;
use crate::trouble::{CHANGES_MAX, HELD_MS, Trouble};
use serde::Deserialize;
use std::fmt;

/// A line that flooded is listened to again after so long without a change, milliseconds.
pub const QUIET_MS: u64 = 1_000;

/// Between two readings while a line has just changed, milliseconds.
pub const CLOSE_MS: u64 = 5;
/// Between two readings while nothing happens, milliseconds: far less than a press lasts, and a
/// quarter of the work.
pub const APART_MS: u64 = 20;

/// What a switch stands for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "lowercase")]
pub enum Press {
    /// The set of now was done as planned with the back held; at the bar only.
    Done,
    /// The main button of the screen, but for ending a lift early.
    Main,
    /// At the bar: the back moved; the screen then asks at which rep.
    Moved,
    /// The button at the bottom left.
    Undo,
}

/// How a switch is wired and when a press counts.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Wiring {
    /// What the coach's desk calls it.
    pub name: String,
    /// What it stands for.
    pub does: Press,
    /// Pressed pulls the line low.
    pub active_low: bool,
    /// How long the line must be steady, milliseconds.
    pub settle_ms: u64,
    /// After a press no other counts before this has gone by without one, milliseconds.
    pub again_after_ms: u64,
}

/// One switch on one line.
pub struct Switch {
    line: Box<dyn Reads>,
    wiring: Wiring,
    /// The line as last read, and since when.
    raw: Option<(bool, u64)>,
    /// Whether it is down, once settled.
    down: Option<bool>,
    last_press: Option<u64>,
    /// Changes of the second that began then.
    changes: (u64, u32),
    state: Health,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Health {
    Well,
    FailedAt(u64),
    Floods,
    Held,
}

impl Switch {
    /// A switch on a line.
    #[must_use]
    pub fn new(line: Box<dyn Reads>, wiring: Wiring) -> Self {
        Self {
            line,
            wiring,
            raw: None,
            down: None,
            last_press: None,
            changes: (0, 0),
            state: Health::Well,
        }
    }

    /// Reads the line once; call it when [`Switches::again_in_ms`] says. `now_ms` never goes back.
    pub fn step(&mut self, now_ms: u64, faults: &Faults) -> Option<Press> {
        if let Health::FailedAt(at) = self.state
            && now_ms < at.saturating_add(AGAIN_AFTER_MS)
        {
            return None;
        }
        let pressed = match self.line.high() {
            Ok(high) => high != self.wiring.active_low,
            Err(why) => {
                self.state = Health::FailedAt(now_ms);
                (self.raw, self.down) = (None, None);
                faults.report(&self.wiring.name, Trouble::Unread(why));
                return None;
            }
        };
        if matches!(self.state, Health::FailedAt(_)) {
            self.well(faults);
        }
        let since = self.note(now_ms, pressed, faults);
        self.judge(now_ms - since, pressed, faults);
        if self.state == Health::Floods || now_ms - since < self.wiring.settle_ms {
            return None;
        }
        let before = self.down.replace(pressed);
        if !pressed || before != Some(false) {
            return None;
        }
        let again = |last: u64| now_ms - last >= self.wiring.again_after_ms;
        let counts = self.last_press.is_none_or(again);
        self.last_press = Some(now_ms);
        counts.then_some(self.wiring.does)
    }

    /// Whether the line has changed and is not settled yet.
    fn settles(&self, now_ms: u64) -> bool {
        let fresh = |since: u64| now_ms.saturating_sub(since) < self.wiring.settle_ms;
        self.raw
            .is_some_and(|(raw, since)| self.down != Some(raw) || fresh(since))
    }

    /// Since when the line is as it is now; a change is counted.
    fn note(&mut self, now_ms: u64, pressed: bool, faults: &Faults) -> u64 {
        match self.raw {
            Some((raw, since)) if raw == pressed => return since,
            Some(_) => {
                if now_ms - self.changes.0 >= 1_000 {
                    self.changes = (now_ms, 0);
                }
                self.changes.1 += 1;
                if self.changes.1 > CHANGES_MAX {
                    self.state = Health::Floods;
                    faults.report(&self.wiring.name, Trouble::Floods);
                }
            }
            None => {}
        }
        self.raw = Some((pressed, now_ms));
        now_ms
    }

    /// Whether a flood is over, or something lies on the switch.
    fn judge(&mut self, steady_ms: u64, pressed: bool, faults: &Faults) {
        match self.state {
            Health::Floods if steady_ms >= QUIET_MS => {
                // Down or not, it must be let go before it counts.
                self.down = None;
                self.well(faults);
            }
            Health::Held if !pressed => self.well(faults),
            Health::Well if pressed && steady_ms >= HELD_MS => {
                self.state = Health::Held;
                faults.report(&self.wiring.name, Trouble::Held);
            }
            Health::Well | Health::Floods | Health::Held | Health::FailedAt(_) => {}
        }
    }

    fn well(&mut self, faults: &Faults) {
        self.state = Health::Well;
        faults.clear(&self.wiring.name);
    }
}

impl fmt::Debug for Switch {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "Switch({:?}, {:?})", self.wiring, self.state)
    }
}

/// All switches.
#[derive(Debug, Default)]
pub struct Switches {
    pub(crate) all: Vec<Switch>,
    pub(crate) faults: Faults,
}

impl Switches {
    /// Whether there is none.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.all.is_empty()
    }

    /// When the lines are to be read again, in milliseconds.
    #[must_use]
    pub fn again_in_ms(&self, now_ms: u64) -> u64 {
        let settles = |switch: &Switch| switch.settles(now_ms);
        if self.all.iter().any(settles) {
            CLOSE_MS
        } else {
            APART_MS
        }
    }

    /// Reads every line once and tells the presses that count.
    pub fn step(&mut self, now_ms: u64) -> Vec<Press> {
        let faults = &self.faults;
        let each = self.all.iter_mut();
        each.filter_map(|switch| switch.step(now_ms, faults))
            .collect()
    }
}
