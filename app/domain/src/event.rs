//! What has happened, in the past tense. A correction is a new event; nothing is rewritten.
//!
//! Refuses: serialisation; the journal has a frozen wire form of its own.
use crate::believed::BarWord;
use crate::coach_word::CoachWord;
use crate::elsewhere::{DoneThere, Origin};
use crate::mass::Mass;
use crate::moment::Moment;
use crate::next::Decided;
use crate::prescription::Prescription;
use crate::settled::Settled;
use crate::sheet::LiftSheet;
use crate::shown::Shown;
use crate::steady::BootId;
use crate::turn::{CalledTurn, Station};
use alloc::boxed::Box;
use alloc::string::String;
use alloc::vec::Vec;
use chrono::NaiveDate;

pub use crate::hold::Hold;
pub use crate::lift_no::LiftNo;

/// One fact and when it was recorded.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Event {
    /// When.
    pub at: Moment,
    /// What.
    pub fact: Fact,
}

/// What can have happened.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Fact {
    /// One of the gym's files was taken, whole and checked.
    FileTaken {
        /// "gym.toml" or another of the gym's file names.
        name: String,
        /// Its text.
        text: String,
    },
    /// A coach's plan was taken. For each lifter and day that it names, it replaces what stood.
    PlanTaken {
        /// The file's name.
        name: String,
        /// Its rows.
        rows: Vec<Prescription>,
    },
    /// All that the plan had for a lifter's day was taken off it.
    DayCleared {
        /// Who.
        lifter: String,
        /// The day.
        date: NaiveDate,
    },
    /// A lifter began a lift.
    LiftBegun {
        /// Its number.
        no: LiftNo,
        /// All that the rack must show for it.
        sheet: Box<LiftSheet>,
    },
    /// A set was done.
    SetDone {
        /// Of which lift.
        no: LiftNo,
        /// Which rung, from 0.
        rung: u16,
        /// Reps done, 0 for a miss.
        reps: u8,
        /// Did the back keep its position.
        hold: Hold,
    },
    /// A rung was left out.
    RungSkipped {
        /// Of which lift.
        no: LiftNo,
        /// Which rung, from 0.
        rung: u16,
    },
    /// The lift was ended before its last rung.
    LiftStopped {
        /// Which lift.
        no: LiftNo,
    },
    /// After a moved back the lifter went on, on the coach's word.
    WentOn {
        /// With which lift.
        no: LiftNo,
    },
    /// After the last warm-up the work load was settled otherwise than planned.
    LoadSettled {
        /// Of which lift.
        no: LiftNo,
        /// The load, and how it is made.
        settled: Settled,
    },
    /// Groups to come were given other loads, which follow from the top set as it was lifted.
    LoadsFollowed {
        /// Of which lift.
        no: LiftNo,
        /// One a group: its first rung, the load, and how it is made.
        sets: Vec<Settled>,
    },
    /// A lifter said how hard a set was.
    EffortSaid {
        /// Of which lift.
        no: LiftNo,
        /// Which rung, from 0.
        rung: u16,
        /// RPE in tenths.
        effort: u8,
    },
    /// What is due the next time was decided by the rules, after a lift that was over.
    NextDecided {
        /// After which lift.
        no: LiftNo,
        /// Rule, inputs, outcome and reason.
        decided: Box<Decided>,
    },
    /// The coach ruled otherwise for the next time.
    NextOverridden {
        /// After which lift.
        no: LiftNo,
        /// The work load.
        load: Mass,
        /// The coach's words.
        note: String,
    },
    /// The order of turns at a station was planned, from the bar as it stood.
    RotationPlanned {
        /// Which bar at which rack.
        station: Station,
        /// The turns to come, in their order.
        turns: Vec<CalledTurn>,
    },
    /// The last entry of a lift that still stood (set, skip, stop, going on) was taken back; with
    /// none left, the beginning itself.
    EntryUndone {
        /// Of which lift.
        no: LiftNo,
    },
    /// Somebody said what a bar holds; entered together with a set, or by itself.
    BarSaid(Box<BarWord>),
    /// The last word about a bar that was not a set was taken back.
    BarWordUndone {
        /// Name of the bar.
        bar: String,
    },
    /// A turn was put off until somebody else has lifted.
    TurnDeferred {
        /// Of which lift.
        no: LiftNo,
    },
    /// Somebody was called and did not come.
    TurnPassed {
        /// Of which lift.
        no: LiftNo,
    },
    /// Somebody claimed their turn, whoever was called.
    TurnClaimed {
        /// Of which lift.
        no: LiftNo,
    },
    /// Somebody asked for a longer rest.
    RestLengthened {
        /// Of which lift.
        no: LiftNo,
        /// Not before so many seconds from then.
        seconds: u16,
    },
    /// Somebody left with the lift still open.
    LifterLeft {
        /// Of which lift.
        no: LiftNo,
    },
    /// Somebody who had left was back.
    LifterReturned {
        /// Of which lift.
        no: LiftNo,
    },
    /// What a lifter said last of their turn was taken back.
    TurnUnsaid {
        /// Of which lift.
        no: LiftNo,
    },
    /// The screen showed something else than before.
    ScreenShown(Box<Shown>),
    /// The coach said something of a lifter beside loads.
    CoachSaid(Box<CoachWord>),
    /// A machine began with this journal: the moment of the event is so many milliseconds after
    /// its boot.
    ClockAnchored {
        /// Which boot.
        boot: BootId,
        /// Milliseconds since then.
        up_ms: i64,
        /// How far the wall clock is ahead, milliseconds; `None` where it was never set.
        offset_ms: Option<i64>,
    },
    /// The wall clock was seen to be set.
    ClockSet {
        /// How far it is ahead of the steady clock from now on, milliseconds.
        offset_ms: i64,
    },
    /// A lift that was left open was closed on a later day; what was done stands.
    LiftLapsed {
        /// Which lift.
        no: LiftNo,
    },
    /// The coach opened such a lift again.
    LiftReopened {
        /// Which lift.
        no: LiftNo,
        /// On which training day; the lift keeps its own date.
        on: NaiveDate,
    },
    /// A lift was begun before the time of day was known; now its date is put right.
    LiftRedated {
        /// Which lift.
        no: LiftNo,
        /// Its day.
        date: NaiveDate,
    },
    /// A lift that was done at another kiosk stands here from its beginning on; what stood of it
    /// falls.
    BegunElsewhere {
        /// Its number here.
        no: LiftNo,
        /// Where it was done.
        origin: Box<Origin>,
        /// All that the rack there showed for it.
        sheet: Box<LiftSheet>,
        /// When it was begun, by the wall clock there.
        begun: Moment,
    },
    /// An entry of such a lift.
    DoneElsewhere {
        /// Its number here.
        no: LiftNo,
        /// What was entered there.
        done: DoneThere,
    },
}

impl Fact {
    /// The lift for which this is a sign that somebody is there.
    pub(crate) const fn touches(&self) -> Option<LiftNo> {
        match self {
            Self::LiftBegun { no, .. }
            | Self::SetDone { no, .. }
            | Self::RungSkipped { no, .. }
            | Self::LiftStopped { no }
            | Self::WentOn { no }
            | Self::LoadSettled { no, .. }
            | Self::EffortSaid { no, .. }
            | Self::LiftReopened { no, .. }
            | Self::EntryUndone { no }
            | Self::TurnDeferred { no }
            | Self::TurnClaimed { no }
            | Self::RestLengthened { no, .. }
            | Self::LifterLeft { no }
            | Self::LifterReturned { no }
            | Self::TurnUnsaid { no } => Some(*no),
            Self::FileTaken { .. }
            | Self::PlanTaken { .. }
            | Self::DayCleared { .. }
            | Self::NextDecided { .. }
            | Self::NextOverridden { .. }
            | Self::RotationPlanned { .. }
            | Self::BarSaid(_)
            | Self::BarWordUndone { .. }
            | Self::TurnPassed { .. }
            | Self::ScreenShown(_)
            | Self::ClockAnchored { .. }
            | Self::ClockSet { .. }
            | Self::LiftLapsed { .. }
            | Self::LiftRedated { .. }
            | Self::BegunElsewhere { .. }
            | Self::DoneElsewhere { .. }
            | Self::LoadsFollowed { .. }
            | Self::CoachSaid(_) => None,
        }
    }
}
