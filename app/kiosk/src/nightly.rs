//! The nightly copy of the journal, on a thread of its own.
//!
//! Refuses: keeping the owner's thread from anything, since it has a connection of its own; making
//! the second place where it is not there, since a disk that is not plugged in would be passed off
//! as a folder of this one.
use crate::clock::{Clock as _, SystemClock};
use crate::copies::{copy_to, lay_out_copies};
use crate::desk::said;
use crate::watch::{spawn_again, stand_back};
use chrono::{NaiveDate, NaiveDateTime, TimeDelta};
use share::{Desk, Night};
use std::path::{Path, PathBuf};
use std::time::Duration;
use view::Language;

/// A night is over at this hour of the gym's clock; its copy is due from then on.
const HOUR: i64 = 3;
/// Between two looks at the clock.
const LOOK: Duration = Duration::from_secs(60);
/// Between two tries of one night, in looks: a clock that jumps does not hurry them.
const AGAIN: u32 = 15;

/// Where copies go and how many are kept.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Nightly {
    /// The data folder.
    pub folder: PathBuf,
    /// The second place.
    pub place: PathBuf,
    /// How many copies are kept.
    pub keep: usize,
}

/// The nights as they pass.
#[derive(Debug)]
pub struct Nights {
    nightly: Nightly,
    /// Looks until the next try.
    wait: u32,
    told: Option<Night>,
}

impl Nights {
    /// Before the first look.
    #[must_use]
    pub fn new(nightly: Nightly) -> Self {
        Self {
            nightly,
            wait: 0,
            told: None,
        }
    }

    /// One look at the gym's clock, once a minute: makes a copy where one is due, and gives how
    /// that went unless the same was given the last time.
    pub fn look(&mut self, now: NaiveDateTime) -> Option<Night> {
        let night = night_of(now)?;
        let waits = self.wait > 0;
        self.wait = self.wait.saturating_sub(1);
        if waits || !is_due(&self.nightly.place, night) {
            return None;
        }
        let day = night.to_string();
        let Nightly {
            folder,
            place,
            keep,
        } = &self.nightly;
        let went = match copy_to(folder, place, &day, *keep) {
            Ok(copied) => Ok(copied.report.events),
            Err(error) => {
                self.wait = AGAIN - 1;
                Err(said(&error.into()))
            }
        };
        let new = Some(Night { day, went });
        if self.told == new {
            return None;
        }
        self.told.clone_from(&new);
        new
    }
}

/// The last night that is over.
fn night_of(now: NaiveDateTime) -> Option<NaiveDate> {
    Some(now.checked_sub_signed(TimeDelta::hours(HOUR))?.date())
}

/// Whether no copy bears the night's name; one that was made by hand bears its time too.
fn is_due(place: &Path, night: NaiveDate) -> bool {
    let end = format!("-{night}.sqlite");
    let is_its = |copy: &PathBuf| copy.to_string_lossy().ends_with(&end);
    !journal::copies(place).is_ok_and(|copies| copies.iter().any(is_its))
}

/// Starts the thread; how each night went is laid out on the desk.
pub fn start(nightly: Nightly, desk: Desk) {
    let thread = spawn_again("backup", move || {
        stand_back();
        let mut nights = Nights::new(nightly.clone());
        loop {
            if let Some(night) = nights.look(SystemClock.local()) {
                match &night.went {
                    Ok(events) => {
                        tracing::info!(night = night.day, events, "the journal was copied");
                    }
                    Err(error) => {
                        tracing::error!(
                            night = night.day,
                            error = error.to(Language::English),
                            "the journal was not copied"
                        );
                    }
                }
                desk.lay_out(|counter| counter.night = Some(night));
                lay_out_copies(&desk, Some(&nightly.place));
            }
            std::thread::sleep(LOOK);
        }
    });
    if let Err(error) = thread {
        tracing::error!(%error, "no nightly copy: the system gives no thread");
    }
}
