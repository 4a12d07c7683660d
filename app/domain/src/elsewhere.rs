//! What a lifter did at another kiosk's rack, as this kiosk's own journal keeps it.
//!
//! A lift comes over when it is over there, and comes again when it was changed there afterwards.
//! Refuses: turns, plates on a bar and the day of this rack; nobody stood here.
use crate::lift_no::LiftNo;
use crate::moment::Moment;
use crate::sheet::LiftSheet;
use crate::state::{Entered, LiftRun, State};
use alloc::boxed::Box;
use alloc::collections::BTreeMap;
use alloc::string::String;
use alloc::vec::Vec;

/// Lifts of one kiosk by which later changes of them are known; older ones change no more.
pub const KNOWN_MAX: usize = 256;

/// The most characters of a kiosk's name.
pub const NAME_MAX: usize = 40;

/// Where a lift was done.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Origin {
    /// The kiosk's name in the hub.
    pub kiosk: String,
    /// The lift's number there.
    pub no: LiftNo,
    /// The number of that kiosk's event up to which the lift was read.
    pub seq: u64,
}

/// One entry as it was made there.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct DoneThere {
    /// When, by that kiosk's wall clock.
    pub at: Moment,
    /// Which rung, from 0; for what is of no rung the one that was next.
    pub rung: u16,
    /// What.
    pub what: Entered,
    /// How hard the set was said to be, RPE in tenths.
    pub effort: Option<u8>,
}

/// A lift that is over at another kiosk.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Brought {
    /// Where.
    pub origin: Origin,
    /// Its sheet, with the loads that were settled on the day.
    pub sheet: Box<LiftSheet>,
    /// When it was begun, by that kiosk's wall clock.
    pub begun: Moment,
    /// Its entries, oldest first.
    pub entries: Vec<DoneThere>,
}

impl Brought {
    /// A lift as it stands at another kiosk, whose state that is.
    #[must_use]
    pub fn of(state: &State, run: &LiftRun, kiosk: &str, seq: u64) -> Self {
        let mut rung = 0_u16;
        let mut entries = Vec::with_capacity(run.entries.len());
        for entry in &run.entries {
            let passes = matches!(entry.what, Entered::Set { .. } | Entered::Skipped);
            let effort = run.efforts.iter().find(|(at, _)| passes && *at == rung);
            entries.push(DoneThere {
                at: state.times.told(entry.at),
                rung,
                // Whoever may open it again stands there, not here.
                what: match entry.what {
                    Entered::LeftOpen => Entered::Stopped,
                    what @ (Entered::Set { .. }
                    | Entered::Skipped
                    | Entered::Stopped
                    | Entered::WentOn
                    | Entered::Settled) => what,
                },
                effort: effort.map(|(_, effort)| *effort),
            });
            rung = rung.saturating_add(u16::from(passes));
        }
        Self {
            origin: Origin {
                kiosk: kiosk.into(),
                no: run.no,
                seq,
            },
            sheet: Box::new(run.sheet.clone()),
            begun: state.times.told(run.begun_at),
            entries,
        }
    }

    /// The same lift after all of it was taken back there: ended without a set.
    #[must_use]
    pub fn taken_back(mut self, seq: u64) -> Self {
        self.origin.seq = seq;
        self.entries = Vec::from([DoneThere {
            at: self.begun,
            rung: 0,
            what: Entered::Stopped,
            effort: None,
        }]);
        self
    }

    /// Whether a lift that stands here says the same: what was done, at which loads.
    #[must_use]
    pub(crate) fn says_as(&self, run: &LiftRun) -> bool {
        let here = run.entries.iter().map(|entry| entry.what);
        let there = self.entries.iter().map(|done| done.what);
        let efforts = self.entries.iter();
        let efforts = efforts.filter_map(|done| Some((done.rung, done.effort?)));
        here.eq(there) && efforts.eq(run.efforts.iter().copied()) && run.sheet == *self.sheet
    }
}

/// Which lifts of one other kiosk stand here.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Taken {
    /// The highest number there that is known no longer.
    pub floor: u32,
    /// By number there: the number here, and the event up to which it was read.
    pub lifts: BTreeMap<LiftNo, (LiftNo, u64)>,
}

impl Taken {
    /// A lift stands under a number of this journal.
    pub(crate) fn note(&mut self, there: LiftNo, here: LiftNo, seq: u64) {
        self.lifts.insert(there, (here, seq));
        while self.lifts.len() > KNOWN_MAX {
            if let Some((gone, _)) = self.lifts.pop_first() {
                self.floor = self.floor.max(gone.0);
            }
        }
    }
}

impl State {
    /// Whether a lift was done at another kiosk.
    #[must_use]
    pub fn is_from_elsewhere(&self, no: LiftNo) -> bool {
        let mut all = self
            .elsewhere
            .values()
            .flat_map(|kiosk| kiosk.lifts.values());
        all.any(|(here, _)| *here == no)
    }

    /// A lift of another kiosk stands, with nothing entered yet.
    pub(crate) fn begin_elsewhere(
        &mut self,
        no: LiftNo,
        origin: &Origin,
        sheet: &LiftSheet,
        begun: Moment,
    ) {
        if no.0 > self.last_no {
            self.last_no = no.0;
            self.retire();
        }
        let begun = self.here(begun);
        self.stand(LiftRun::begin(no, sheet.clone(), begun, false));
        let taken = self.elsewhere.entry(origin.kiosk.clone()).or_default();
        taken.note(origin.no, no, origin.seq);
    }

    /// An entry of such a lift.
    pub(crate) fn enter_elsewhere(&mut self, no: LiftNo, done: &DoneThere) {
        let at = self.here(done.at);
        let Some(run) = self.lifts.get_mut(&no) else {
            return;
        };
        run.enter(at, done.what);
        if let Some(effort) = done.effort {
            run.say_effort(done.rung, effort);
        }
        if run.is_over() {
            self.open.remove(&no);
        } else {
            self.open.insert(no);
        }
    }

    /// A time of another wall clock as a moment of this journal.
    const fn here(&self, wall: Moment) -> Moment {
        wall.plus_ms(self.times.offset_ms.saturating_neg())
    }
}
