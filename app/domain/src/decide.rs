//! What a command means: the events that follow from it, or why it is refused.
//!
//! Refuses: changing the state; `State::apply` does that, once the events are safe on disk.
use crate::believed::{BarWord, Said, Stacks};
use crate::coach_word::CoachWord;
use crate::elsewhere::Brought;
use crate::event::{Event, Fact};
use crate::hold::Hold;
use crate::lift_no::LiftNo;
use crate::mass::{Mass, MassUnit};
use crate::moment::Moment;
use crate::next::Decided;
use crate::prescription::Prescription;
use crate::settled::Settled;
use crate::sheet::{GroupSheet, LiftSheet};
use crate::shown::Shown;
use crate::state::{LiftRun, State, station_of};
use crate::turn::{CalledTurn, Station};
use alloc::boxed::Box;
use alloc::collections::BTreeMap;
use alloc::string::String;
use alloc::vec::Vec;
use chrono::NaiveDate;

mod coach;
mod elsewhere;
mod refusal;
mod turns;

pub use refusal::Refusal;

mod days;

pub use days::DayCommand;

/// The most reps of one set.
pub const REPS_MAX: u8 = 50;

/// The most characters of a coach's note.
pub const NOTE_MAX: usize = 200;

/// The heaviest load that anybody rules: 1000 kg, as in a plan.
pub const LOAD_MAX: Mass = Mass::of(MassUnit::Kg, 1_000_000);

/// What somebody wants.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Command {
    /// Take one of the gym's files, already checked.
    TakeFile {
        /// Its name.
        name: String,
        /// Its text.
        text: String,
    },
    /// Take a coach's plan, already checked.
    TakePlan {
        /// The file's name.
        name: String,
        /// Its rows, at least one.
        rows: Vec<Prescription>,
    },
    /// Take all that the plan has for a lifter's day off it.
    ClearDay {
        /// Who.
        lifter: String,
        /// The day.
        date: NaiveDate,
    },
    /// Begin a lift.
    BeginLift(Box<LiftSheet>),
    /// Enter a set.
    EnterSet {
        /// Of which lift.
        no: LiftNo,
        /// The rung that was on the screen, from 0.
        rung: usize,
        /// Reps done, at most [`REPS_MAX`].
        reps: u8,
        /// Did the back keep its position.
        hold: Hold,
        /// What the screen said to be on the bar; `None` leaves that open.
        holds: Option<Box<BarWord>>,
    },
    /// Leave out the rung that is on the screen.
    SkipRung {
        /// Of which lift.
        no: LiftNo,
        /// Which, from 0.
        rung: usize,
    },
    /// End a lift early.
    StopLift(LiftNo),
    /// Go on after a moved back.
    GoOn(LiftNo),
    /// Settle the work load after the last warm-up.
    SettleLoad {
        /// Of which lift.
        no: LiftNo,
        /// The load, and how it is made.
        settled: Settled,
    },
    /// Give groups to come the loads that follow from the top set.
    FollowTop {
        /// Of which lift.
        no: LiftNo,
        /// One a group, none of a rung that is over.
        sets: Vec<Settled>,
    },
    /// Say how hard the last set was.
    SayEffort {
        /// Of which lift.
        no: LiftNo,
        /// The rung that was done last, from 0.
        rung: usize,
        /// RPE in tenths, 10 to 100.
        effort: u8,
    },
    /// Record what the rules give for the next time, after a lift that is over.
    DecideNext {
        /// After which lift.
        no: LiftNo,
        /// Rule, inputs, outcome and reason.
        decided: Box<Decided>,
    },
    /// The coach rules otherwise for the next time.
    OverrideNext {
        /// After which lift.
        no: LiftNo,
        /// The work load, more than nothing and at most [`LOAD_MAX`].
        load: Mass,
        /// The coach's words, at least one and at most [`NOTE_MAX`] characters.
        note: String,
    },
    /// Call the turns to come at a station in this order.
    CallRotation {
        /// Which bar at which rack.
        station: Station,
        /// The turns, each lift's rungs from its rung of now on, in their order.
        turns: Vec<CalledTurn>,
    },
    /// Take back the last entry of a lift; with none left, the beginning itself.
    Undo(LiftNo),
    /// Say what a bar holds, apart from a set.
    SayBar(Box<BarWord>),
    /// Take back the last word about a bar that was not a set.
    UndoBarWord(String),
    /// Put a turn off until somebody else has lifted.
    Defer(LiftNo),
    /// Pass over somebody who was called and does not come.
    Pass(LiftNo),
    /// Claim a turn, whoever is called.
    Claim(LiftNo),
    /// Ask for a longer rest.
    Lengthen {
        /// Of which lift.
        no: LiftNo,
        /// Not before so many seconds from now, 1 to [`crate::attendance::LONGER_MOST_S`].
        seconds: u16,
    },
    /// Leave with the lift still open.
    Leave(LiftNo),
    /// Be back.
    Return(LiftNo),
    /// Take back what was said last of a turn.
    UnsayTurn(LiftNo),
    /// Keep what the screen shows.
    Show(Box<Shown>),
    /// Say something of a lifter beside loads.
    SayCoach(Box<CoachWord>),
    /// Keep the clock and the days, as nobody asks for by a tap at the rack.
    Day(DayCommand),
    /// Take over what was done at another kiosk.
    TakeElsewhere(Box<Brought>),
}

/// The events that follow from `command`, or why it is refused.
///
/// # Errors
/// [`Refusal`]; the state is as it was.
pub fn decide(state: &State, command: Command, now: Moment) -> Result<Vec<Event>, Refusal> {
    let fact = match command {
        Command::TakeFile { name, text } => Fact::FileTaken { name, text },
        Command::TakePlan { rows, .. } if rows.is_empty() => return Err(Refusal::EmptyPlan),
        Command::TakePlan { name, rows } => Fact::PlanTaken { name, rows },
        Command::ClearDay { lifter, date } if !state.plan.contains_key(&(date, lifter.clone())) => {
            return Err(Refusal::NothingPlanned);
        }
        Command::ClearDay { lifter, date } => Fact::DayCleared { lifter, date },
        Command::BeginLift(sheet) => begin(state, sheet)?,
        Command::EnterSet {
            no,
            rung,
            reps,
            hold,
            holds,
        } => {
            let facts = enter(state, no, rung, (reps, hold), holds)?;
            return Ok(facts.map(|fact| Event { at: now, fact }).collect());
        }
        Command::SkipRung { no, rung } => Fact::RungSkipped {
            no,
            rung: rung_of_now(open_lift(state, no)?, rung)?,
        },
        Command::StopLift(no) => {
            let run = state.lifts.get(&no).ok_or(Refusal::NoSuchLift)?;
            if run.is_over() {
                return Err(Refusal::Over);
            }
            Fact::LiftStopped { no }
        }
        Command::GoOn(no) => {
            let run = state.lifts.get(&no).ok_or(Refusal::NoSuchLift)?;
            if !run.awaits_decision() {
                return Err(Refusal::NothingToDecide);
            }
            Fact::WentOn { no }
        }
        Command::SettleLoad { no, settled } => settle(state, no, settled)?,
        Command::FollowTop { no, sets } => follow_top(state, no, sets)?,
        Command::SayEffort { no, rung, effort } => say_effort(state, no, rung, effort)?,
        Command::DecideNext { no, decided } => {
            let run = state.lifts.get(&no).ok_or(Refusal::NoSuchLift)?;
            if !run.is_over() || run.next.is_some() || decided.decision.after != no {
                return Err(Refusal::StaleDecision);
            }
            Fact::NextDecided { no, decided }
        }
        Command::OverrideNext { no, load, note } => coach::override_next(state, no, load, &note)?,
        Command::CallRotation { station, turns } => {
            fits(state, &station, &turns)?;
            Fact::RotationPlanned { station, turns }
        }
        Command::Undo(no) => days::undo(state, no)?,
        command @ (Command::SayBar(_)
        | Command::UndoBarWord(_)
        | Command::Defer(_)
        | Command::Pass(_)
        | Command::Claim(_)
        | Command::Lengthen { .. }
        | Command::Leave(_)
        | Command::Return(_)
        | Command::UnsayTurn(_)) => turns::fact(state, command)?,
        Command::Show(shown) => Fact::ScreenShown(shown),
        Command::SayCoach(word) => Fact::CoachSaid(Box::new(coach::checked(*word, state)?)),
        Command::Day(command) => return days::decide(state, command, now),
        Command::TakeElsewhere(brought) => return elsewhere::decide(state, *brought, now),
    };
    Ok(Vec::from([Event { at: now, fact }]))
}

/// A set, with what it says about the bar.
fn enter(
    state: &State,
    no: LiftNo,
    rung: usize,
    (reps, hold): (u8, Hold),
    holds: Option<Box<BarWord>>,
) -> Result<impl Iterator<Item = Fact>, Refusal> {
    let run = open_lift(state, no)?;
    let rung = rung_of_now(run, rung)?;
    in_range(reps, hold)?;
    let done = Fact::SetDone {
        no,
        rung,
        reps,
        hold,
    };
    let said = holds.map(Fact::BarSaid);
    Ok(said.into_iter().chain([done]))
}

/// A word about the bar of a lift.
#[must_use]
pub fn word_of(run: &LiftRun, holds: Stacks, said: Said) -> BarWord {
    BarWord {
        rack: run.sheet.rack.clone(),
        bar: run.sheet.bar.name.clone(),
        date: run.day,
        holds,
        said,
        contradicts: Vec::new(),
    }
}

/// Whether `turns` are the rungs of now and after of lifts at `station`, each lift's in order.
fn fits(state: &State, station: &Station, turns: &[CalledTurn]) -> Result<(), Refusal> {
    let mut next: BTreeMap<LiftNo, usize> = BTreeMap::new();
    for turn in turns {
        let run = state.lifts.get(&turn.no).ok_or(Refusal::StaleRotation)?;
        let due = match next.get(&turn.no) {
            Some(rung) => *rung,
            None => run.next_rung().ok_or(Refusal::StaleRotation)?,
        };
        let at = usize::from(turn.rung);
        if station_of(run) != *station || at != due || at >= run.sheet.rungs.len() {
            return Err(Refusal::StaleRotation);
        }
        next.insert(turn.no, due + 1);
    }
    Ok(())
}

fn begin(state: &State, sheet: Box<LiftSheet>) -> Result<Fact, Refusal> {
    if sheet.rungs.is_empty() {
        return Err(Refusal::EmptyLadder);
    }
    one_at_a_time(state, &sheet.lifter, sheet.date)?;
    Ok(Fact::LiftBegun {
        no: LiftNo(state.last_no.saturating_add(1)),
        sheet,
    })
}

/// A lifter is under way with one lift at a time.
fn one_at_a_time(state: &State, lifter: &str, date: NaiveDate) -> Result<(), Refusal> {
    let mut runs = state.lifts_of(lifter, date);
    match runs.find(|run| !run.is_over()) {
        Some(open) => Err(Refusal::UnderWay {
            lifter: lifter.into(),
            lift: open.sheet.lift.clone(),
        }),
        None => Ok(()),
    }
}

fn settle(state: &State, no: LiftNo, settled: Settled) -> Result<Fact, Refusal> {
    let run = open_lift(state, no)?;
    if run.may_settle() != Some(usize::from(settled.rung)) {
        return Err(Refusal::NotTheTimeToSettle);
    }
    load_in_range(settled.load)?;
    Ok(Fact::LoadSettled { no, settled })
}

fn follow_top(state: &State, no: LiftNo, sets: Vec<Settled>) -> Result<Fact, Refusal> {
    let run = state.lifts.get(&no).ok_or(Refusal::NoSuchLift)?;
    let now = run.next_rung().ok_or(Refusal::Over)?;
    for settled in &sets {
        let group = run.sheet.group_of(usize::from(settled.rung));
        let follows = |group: &GroupSheet| group.of_top.is_some() && group.rungs().start >= now;
        if !group.is_some_and(follows) {
            return Err(Refusal::NotTheRungOfNow);
        }
        load_in_range(settled.load)?;
    }
    Ok(Fact::LoadsFollowed { no, sets })
}

fn say_effort(state: &State, no: LiftNo, rung: usize, effort: u8) -> Result<Fact, Refusal> {
    let run = state.lifts.get(&no).ok_or(Refusal::NoSuchLift)?;
    if run.passed().count() != rung + 1 || !(10..=100).contains(&effort) {
        return Err(Refusal::NotTheRungOfNow);
    }
    let rung = u16::try_from(rung).map_err(|_| Refusal::NotTheRungOfNow)?;
    Ok(Fact::EffortSaid { no, rung, effort })
}

/// Whether a load is one that a lifter can be given: above nothing, and within [`LOAD_MAX`].
///
/// # Errors
/// [`Refusal::LoadOutOfRange`].
pub fn load_in_range(load: Mass) -> Result<(), Refusal> {
    if load > Mass::ZERO && load <= LOAD_MAX {
        Ok(())
    } else {
        Err(Refusal::LoadOutOfRange(load))
    }
}

fn open_lift(state: &State, no: LiftNo) -> Result<&LiftRun, Refusal> {
    let run = state.lifts.get(&no).ok_or(Refusal::NoSuchLift)?;
    if run.is_over() {
        Err(Refusal::Over)
    } else if run.awaits_decision() {
        Err(Refusal::DecideFirst)
    } else {
        Ok(run)
    }
}

fn rung_of_now(run: &LiftRun, rung: usize) -> Result<u16, Refusal> {
    if run.next_rung() != Some(rung) {
        return Err(Refusal::NotTheRungOfNow);
    }
    u16::try_from(rung).map_err(|_| Refusal::NotTheRungOfNow)
}

fn in_range(reps: u8, hold: Hold) -> Result<(), Refusal> {
    match hold {
        _ if reps > REPS_MAX => Err(Refusal::RepsOutOfRange(reps)),
        Hold::MovedAt(rep) if rep == 0 || rep > REPS_MAX => Err(Refusal::RepsOutOfRange(rep)),
        Hold::MovedAt(_) | Hold::Kept => Ok(()),
    }
}
