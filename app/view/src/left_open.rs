//! Lifts that were left open and closed on a later day: what the coach sees of them.
use crate::language::{Language, p};
use domain::state::{LEFT_OPEN, LiftRun, State};
use domain::{LiftNo, Moment};

/// The most lifts that are listed: nobody opens one of months ago again.
const LISTED_MAX: usize = LEFT_OPEN;

/// One of them.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct LeftOpen {
    /// Its number.
    pub no: LiftNo,
    /// Whose.
    pub lifter: String,
    /// What, as the journal has it.
    pub lift: String,
    /// Its day.
    pub date: chrono::NaiveDate,
    /// Rungs that were done or left out.
    pub passed: usize,
    /// Rungs in all.
    pub rungs: usize,
}

/// All that stand, the last one closed first.
#[must_use]
pub fn list(state: &State) -> Vec<LeftOpen> {
    let closed = state.lifts.values().filter(|run| run.is_left_open());
    let mut closed: Vec<&LiftRun> = closed.collect();
    let closed_at = |run: &LiftRun| run.entries.last().map_or(Moment(0), |entry| entry.at);
    closed.sort_by_key(|run| core::cmp::Reverse((closed_at(run), run.no)));
    closed.into_iter().take(LISTED_MAX).map(one).collect()
}

fn one(run: &LiftRun) -> LeftOpen {
    LeftOpen {
        no: run.no,
        lifter: run.sheet.lifter.clone(),
        lift: run.sheet.lift.clone(),
        date: run.sheet.date,
        passed: run.passed().count(),
        rungs: run.sheet.rungs.len(),
    }
}

/// What the lifter is told before the next lift: that the last one was left open; else nothing.
pub(crate) fn told(say: Language, state: &State, lifter: &str) -> Option<String> {
    let own = state
        .lifts
        .values()
        .filter(|run| run.sheet.lifter == lifter);
    let last = own.max_by_key(|run| run.no)?;
    let one = last.is_left_open().then(|| one(last))?;
    let words = [
        &say.shipped(&one.lift),
        &say.date(one.date),
        &done(say, &one),
    ];
    Some(say.fill(p::days::LEFT_OPEN_TOLD, &words.map(String::as_str)))
}

/// The list as text, a line each with the number first.
#[must_use]
pub fn text(say: Language, list: &[LeftOpen]) -> String {
    if list.is_empty() {
        return say.say(p::days::LEFT_OPEN_NONE) + "\n";
    }
    let line = |one: &LeftOpen| {
        let words = [
            one.lifter.as_str(),
            &say.shipped(&one.lift),
            &say.date(one.date),
            &done(say, one),
        ];
        let words = say.fill(p::days::LEFT_OPEN_ROW, &words);
        format!("{:>6}  {words}\n", one.no.0)
    };
    list.iter().map(line).collect()
}

/// "3 of 7 sets".
pub(crate) fn done(say: Language, one: &LeftOpen) -> String {
    let (passed, rungs) = (one.passed.to_string(), one.rungs.to_string());
    say.fill(p::SETS_DONE_OF, &[&passed, &rungs])
}

/// That a lift is open again, as a line.
#[must_use]
pub fn reopened(say: Language, run: &LiftRun) -> String {
    let sheet = &run.sheet;
    let words = [
        sheet.lifter.as_str(),
        &say.shipped(&sheet.lift),
        &say.date(sheet.date),
    ];
    say.fill(p::days::REOPENED, &words) + "\n"
}
