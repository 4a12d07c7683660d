//! What stands beside the facts in a checkpoint: moments, flags and counts.
use domain::attendance::Attendance;
use domain::state::{Entered, Entry, LiftRun, Unshown};
use domain::steady::{Anchor, BootId, Times};
use domain::{Hold, LiftNo, Moment};
use serde::{Deserialize, Serialize};

/// What stands by itself.
#[derive(Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Alone {
    pub(super) last_no: u32,
    pub(super) sets: u64,
    pub(super) lifts: u64,
    pub(super) touched: Vec<(u32, i64)>,
    /// What it was, and the lift; 0 where it is of none.
    pub(super) unshown: Option<(String, u32)>,
    /// Rack and bar.
    pub(super) called_since: Vec<(String, String)>,
    /// Rack, days since 1970-01-01, hole.
    pub(super) holes: Vec<(String, i32, u16)>,
}

/// What the screen has not answered, in a word and the number of its lift.
pub(super) fn unshown(what: Unshown) -> (String, u32) {
    let (word, no) = match what {
        Unshown::Entry(no) => ("entry", no.0),
        Unshown::Undo(no) => ("undo", no.0),
        Unshown::Load(no) => ("load", no.0),
        Unshown::PutOff(no) => ("put off", no.0),
        Unshown::Claim(no) => ("claim", no.0),
        Unshown::Return(no) => ("return", no.0),
        Unshown::Unsaid(no) => ("unsaid", no.0),
        Unshown::Begin => ("begin", 0),
        Unshown::Pass => ("pass", 0),
        Unshown::Word => ("word", 0),
        Unshown::WordUndone => ("word undone", 0),
    };
    (word.into(), no)
}

/// Back from [`unshown`]; `None` for a word that it does not write.
pub(super) fn unshown_back((word, no): &(String, u32)) -> Option<Unshown> {
    let no = LiftNo(*no);
    Some(match word.as_str() {
        "entry" => Unshown::Entry(no),
        "undo" => Unshown::Undo(no),
        "load" => Unshown::Load(no),
        "put off" => Unshown::PutOff(no),
        "claim" => Unshown::Claim(no),
        "return" => Unshown::Return(no),
        "unsaid" => Unshown::Unsaid(no),
        "begin" => Unshown::Begin,
        "pass" => Unshown::Pass,
        "word" => Unshown::Word,
        "word undone" => Unshown::WordUndone,
        _ => return None,
    })
}

/// What is known of the clocks.
#[derive(Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Clocks {
    offset_ms: i64,
    unknown_since: Option<i64>,
    anchors: Vec<(String, i64, i64)>,
    last: Option<i64>,
    boot_began: Option<i64>,
    off_unknown: bool,
    off_ms: i64,
}

impl Clocks {
    pub(super) fn of(times: &Times) -> Self {
        let Times {
            offset_ms,
            unknown_since,
            anchors,
            last,
            boot_began,
            off_unknown,
            off_ms,
        } = times;
        let anchor = |a: &Anchor| (format!("{:x}", a.boot.0), a.up_ms, a.moment.0);
        Self {
            offset_ms: *offset_ms,
            unknown_since: unknown_since.map(|at| at.0),
            anchors: anchors.iter().map(anchor).collect(),
            last: last.map(|at| at.0),
            boot_began: boot_began.map(|at| at.0),
            off_unknown: *off_unknown,
            off_ms: *off_ms,
        }
    }

    pub(super) fn times(self) -> Option<Times> {
        let anchor = |(boot, up_ms, at): (String, i64, i64)| {
            let boot = u128::from_str_radix(&boot, 16).ok()?;
            Some(Anchor {
                boot: BootId(boot),
                up_ms,
                moment: Moment(at),
            })
        };
        Some(Times {
            offset_ms: self.offset_ms,
            unknown_since: self.unknown_since.map(Moment),
            anchors: self
                .anchors
                .into_iter()
                .map(anchor)
                .collect::<Option<_>>()?,
            last: self.last.map(Moment),
            boot_began: self.boot_began.map(Moment),
            off_unknown: self.off_unknown,
            off_ms: self.off_ms,
        })
    }
}

/// A lift; its sheet, the sheets before each settling and what is due follow it as facts.
#[derive(Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Run {
    pub(super) no: u32,
    /// Days since 1970-01-01.
    pub(super) day: i32,
    pub(super) begun_at: i64,
    pub(super) date_guessed: bool,
    pub(super) lean: bool,
    pub(super) entries: Vec<(i64, What)>,
    pub(super) here: Here,
    pub(super) attended: Vec<(Here, Option<Here>)>,
    pub(super) unsaid: Option<Here>,
    pub(super) settled: usize,
    /// How many entries stood each time that loads followed the top set.
    pub(super) followed: Vec<usize>,
    /// How hard sets were said to be: rung, RPE in tenths.
    pub(super) efforts: Vec<(u16, u8)>,
    pub(super) next: bool,
    pub(super) ruled_at: Option<i64>,
}

/// One entry.
#[derive(Debug, Clone, Copy, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub(super) enum What {
    Set(u8, Option<u8>),
    Skipped,
    Stopped,
    WentOn,
    Settled,
    LeftOpen,
}

/// How it stands with a turn.
#[derive(Debug, Clone, Copy, Serialize, Deserialize)]
pub(super) struct Here(
    bool,
    bool,
    u8,
    Option<i64>,
    Option<i64>,
    Option<i64>,
    bool,
    bool,
    Option<(u32, i64)>,
);

impl Here {
    const fn of(here: &Attendance) -> Self {
        const fn ms(at: Option<Moment>) -> Option<i64> {
            match at {
                Some(at) => Some(at.0),
                None => None,
            }
        }
        let Attendance {
            away,
            deferred,
            passes,
            passed_at,
            not_before,
            here_since,
            claimed,
            back,
            was_up,
        } = here;
        Self(
            *away,
            *deferred,
            *passes,
            ms(*passed_at),
            ms(*not_before),
            ms(*here_since),
            *claimed,
            *back,
            match was_up {
                Some((no, at)) => Some((no.0, at.0)),
                None => None,
            },
        )
    }

    pub(super) fn attendance(self) -> Attendance {
        Attendance {
            away: self.0,
            deferred: self.1,
            passes: self.2,
            passed_at: self.3.map(Moment),
            not_before: self.4.map(Moment),
            here_since: self.5.map(Moment),
            claimed: self.6,
            back: self.7,
            was_up: self.8.map(|(no, at)| (LiftNo(no), Moment(at))),
        }
    }
}

impl Run {
    pub(super) fn of(run: &LiftRun) -> Self {
        let LiftRun {
            no,
            sheet: _,
            day,
            begun_at,
            date_guessed,
            entries,
            next,
            attendance,
            efforts,
            before,
            followed,
            attended,
            unsaid,
            is_lean,
        } = run;
        Self {
            no: no.0,
            day: day.to_epoch_days(),
            begun_at: begun_at.0,
            date_guessed: *date_guessed,
            lean: *is_lean,
            entries: entries.iter().map(entered).collect(),
            here: Here::of(attendance),
            attended: attended
                .iter()
                .map(|(here, unsaid)| (Here::of(here), unsaid.as_ref().map(Here::of)))
                .collect(),
            unsaid: unsaid.as_ref().map(Here::of),
            settled: before.len(),
            followed: followed.iter().map(|(entries, _)| *entries).collect(),
            efforts: efforts.clone(),
            next: next.is_some(),
            ruled_at: next.as_ref().and_then(|n| Some(n.ruled.as_ref()?.at.0)),
        }
    }
}

fn entered(entry: &Entry) -> (i64, What) {
    let what = match entry.what {
        Entered::Set { reps, hold } => What::Set(
            reps,
            match hold {
                Hold::Kept => None,
                Hold::MovedAt(rep) => Some(rep),
            },
        ),
        Entered::Skipped => What::Skipped,
        Entered::Stopped => What::Stopped,
        Entered::WentOn => What::WentOn,
        Entered::Settled => What::Settled,
        Entered::LeftOpen => What::LeftOpen,
    };
    (entry.at.0, what)
}

pub(super) fn entry((at, what): (i64, What)) -> Entry {
    let what = match what {
        What::Set(reps, moved) => Entered::Set {
            reps,
            hold: moved.map_or(Hold::Kept, Hold::MovedAt),
        },
        What::Skipped => Entered::Skipped,
        What::Stopped => Entered::Stopped,
        What::WentOn => Entered::WentOn,
        What::Settled => Entered::Settled,
        What::LeftOpen => Entered::LeftOpen,
    };
    Entry {
        at: Moment(at),
        what,
    }
}

/// What is believed of a bar beside the word that said so; two more words may follow, of what was
/// ordered and of what was believed before.
#[derive(Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Bar {
    pub(super) at: i64,
    pub(super) doubted: bool,
    pub(super) ordered: bool,
    pub(super) before: bool,
}
