//! The coach's list: what is due for everybody, and who waits for the coach's word, the most urgent
//! first.
use super::here::{LiftDue, all_due};
use super::{Due, Why};
use crate::day::{DayEntry, NoSheet, entries};
use crate::gym::Gym;
use crate::lift_no::LiftNo;
use crate::lifter::Lifter;
use crate::mass::{Mass, MassUnit};
use crate::plausible::Odd;
use crate::state::State;
use crate::track::Track;
use alloc::string::String;
use alloc::vec::Vec;
use chrono::{Days, NaiveDate};

/// So many days of the plan are looked at, from today on.
pub const PLAN_DAYS: u64 = 14;

/// One line of it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct CoachLine {
    /// Who.
    pub lifter: String,
    /// Kilo or pound for this lifter.
    pub unit: MassUnit,
    /// The lift and its track; `None` for what concerns all lifts.
    pub of: Option<(String, Track)>,
    /// Why it stands here.
    pub concern: Concern,
    /// What is due, and why.
    pub due: Option<Due>,
    /// After which lift a ruling of the coach is recorded.
    pub after: Option<LiftNo>,
}

/// Why a line stands on the list, the most urgent first.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
pub enum Concern {
    /// Hurt: nothing is due.
    Hurt {
        /// The first day.
        since: NaiveDate,
        /// The coach's words.
        note: String,
    },
    /// A load of the plan far over what the record supports; not shown before it is said to be
    /// meant.
    LooksWrong {
        /// The day of the plan.
        date: NaiveDate,
        /// What the plan asks.
        load: Mass,
        /// What looks wrong of it.
        odd: Odd,
    },
    /// One pull after the other of the family went wrong.
    OverReaching,
    /// Drops without a new best are used up.
    Stuck,
    /// Away so long that the lift begins anew.
    Anew,
    /// Asked for the coach's word, and unanswered.
    Waits,
    /// The plan asks another load than the one that is due.
    Differs {
        /// The day of the plan.
        date: NaiveDate,
        /// What the plan asks.
        planned: Mass,
    },
    /// Back from a break or an illness: held or eased.
    Away,
    /// All goes by the rules.
    Due,
}

impl Concern {
    /// Whether it waits for the coach.
    #[must_use]
    pub const fn waits(&self) -> bool {
        !matches!(self, Self::Away | Self::Due)
    }
}

/// The list for `date`, looking at the plan from `today` on.
#[must_use]
pub fn coach_list(gym: &Gym, state: &State, today: NaiveDate, date: NaiveDate) -> Vec<CoachLine> {
    let of = |lifter| lines_of(gym, state, lifter, (today, date));
    let mut lines: Vec<CoachLine> = gym.lifters.iter().flat_map(of).collect();
    put_in_order(&mut lines);
    lines
}

/// Sorts lines by urgency; lifters keep the order of the gym's file.
pub fn put_in_order(lines: &mut [CoachLine]) {
    lines.sort_by(|a, b| a.concern.cmp(&b.concern));
}

/// The lines of one lifter, in the order of the gym's lifts.
#[must_use]
pub fn lines_of(
    gym: &Gym,
    state: &State,
    lifter: &Lifter,
    (today, date): (NaiveDate, NaiveDate),
) -> Vec<CoachLine> {
    let line = |of, concern| CoachLine {
        lifter: lifter.name.clone(),
        unit: lifter.unit,
        of,
        concern,
        due: None,
        after: None,
    };
    let health = state.health.get(&lifter.name);
    let hurt = health.and_then(|health| health.hurt.as_ref());
    if let Some(hurt) = hurt.filter(|hurt| hurt.since <= date) {
        let (since, note) = (hurt.since, hurt.note.clone());
        return [line(None, Concern::Hurt { since, note })].into();
    }
    let planned = planned(gym, state, lifter, today);
    let mut lines = Vec::new();
    for (day, track, entry) in &planned {
        if let Err(NoSheet::LooksWrong { load, odd, .. }) = entry.outcome {
            let date = *day;
            let concern = Concern::LooksWrong { date, load, odd };
            lines.push(line(Some((entry.lift.clone(), *track)), concern));
        }
    }
    lines.extend(all_due(gym, state, lifter, date).into_iter().map(|one| {
        let concern = concern(&one, &planned);
        let of = Some((one.lift.clone(), one.track));
        CoachLine {
            after: one.recorded.is_some().then_some(one.due.decision.after),
            due: Some(one.due),
            ..line(of, concern)
        }
    }));
    lines
}

/// Rows of the plan to come with their tracks, those begun left out.
fn planned(
    gym: &Gym,
    state: &State,
    lifter: &Lifter,
    today: NaiveDate,
) -> Vec<(NaiveDate, Track, DayEntry)> {
    let last = today.checked_add_days(Days::new(PLAN_DAYS - 1));
    let span = (today, String::new())..=(last.unwrap_or(today), lifter.name.clone());
    let own = state
        .plan
        .range(span)
        .filter(|((_, who), _)| *who == lifter.name);
    let mut all = Vec::new();
    for ((day, _), rows) in own {
        let begun = |lift: &str| {
            let mut runs = state.lifts_of(&lifter.name, *day);
            runs.any(|run| run.sheet.lift == lift)
        };
        let entries = entries(gym, state, lifter, *day);
        let both = rows.iter().zip(entries);
        let open = both.filter(|(row, _)| !begun(&row.lift));
        all.extend(open.map(|(row, entry)| (*day, row.track(), entry)));
    }
    all
}

fn concern(one: &LiftDue, planned: &[(NaiveDate, Track, DayEntry)]) -> Concern {
    let decision = &one.due.decision;
    let next = planned
        .iter()
        .find(|(_, track, entry)| entry.lift == one.lift && *track == one.track);
    let differs = next.and_then(|(date, _, entry)| Some((*date, entry.planned?)));
    match (decision.why, differs) {
        (Why::OverReaching, _) => Concern::OverReaching,
        (Why::Stuck, _) => Concern::Stuck,
        (Why::Anew, _) => Concern::Anew,
        _ if one.due.asks => Concern::Waits,
        (_, Some((date, planned))) => Concern::Differs { date, planned },
        (Why::Away | Why::Ill, None) => Concern::Away,
        (_, None) => Concern::Due,
    }
}
