//! A better order for those who were not called yet, looked for while people rest.
//!
//! The turns that were called stay as they are, plates and all: somebody is at work on them. What
//! comes after is planned from where they will leave the bar.
use super::{Asked, CALLED, CalledTurn, Station, ask, planned};
use crate::gym::Gym;
use crate::moment::Moment;
use crate::solve::rotation::{Effort, Plan, Problem, after, carry_out};
use crate::state::State;
use alloc::vec;
use alloc::vec::Vec;
use chrono::NaiveDate;

/// An order as it was called, and what is still open of it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Ahead {
    /// Where.
    pub station: Station,
    date: NaiveDate,
    asked_at: Moment,
    asked: Asked,
    called: Vec<CalledTurn>,
    /// By lifter of the problem: how many turns were called.
    head: Vec<usize>,
    left: Problem,
    /// What the order as it was called is worth after the called turns.
    worth: Worth,
}

/// Waited longer than the rack's limit by one lifter at most, the end, and the handling,
/// nanoseconds: less is better.
type Worth = (u64, u64, u64);

fn worth(asked: &Asked, plan: &Plan) -> Worth {
    let limit = asked.longest_wait_ns.unwrap_or(u64::MAX);
    let over = plan.longest_wait_ns.saturating_sub(limit);
    (over, plan.ends_ns, plan.handling_ns)
}

impl Ahead {
    /// What can be planned on at `station`; `None` where fewer than two lifters have turns after
    /// those that were called, or where what was called cannot be carried out as it is.
    #[must_use]
    pub fn of(
        gym: &Gym,
        state: &State,
        station: &Station,
        date: NaiveDate,
        now: Moment,
    ) -> Option<Self> {
        let asked = ask(gym, state, station, date, now, None)?;
        let called = state.rotation(station).to_vec();
        let whole = carry_out(&asked.problem, &asked.places(&called)?)?;
        let (head, tail) = whole.turns.split_at_checked(CALLED)?;
        let left = after(&asked.problem, head);
        let open = left
            .lifters
            .iter()
            .filter(|lifter| !lifter.turns.is_empty());
        if open.count() < 2 {
            return None;
        }
        let mut counts = vec![0; left.lifters.len()];
        for turn in head {
            counts[turn.lifter] += 1;
        }
        // The tail alone, counted as a plan of its own will be.
        let rest: Vec<_> = tail
            .iter()
            .map(|t| (t.lifter, t.per_side.clone()))
            .collect();
        let worth = worth(&asked, &carry_out(&left, &rest)?);
        Some(Self {
            station: station.clone(),
            date,
            asked_at: now,
            asked,
            called,
            head: counts,
            left,
            worth,
        })
    }

    /// Whether nothing has happened since that matters to it.
    #[must_use]
    pub fn holds(&self, gym: &Gym, state: &State) -> bool {
        let now = self.asked_at;
        state.rotation(&self.station) == self.called
            && ask(gym, state, &self.station, self.date, now, None).as_ref() == Some(&self.asked)
    }

    /// An order that ends sooner than the one that was called, or as soon with less handling, and
    /// begins with the same turns; `None` when none is found. Where the rack limits the waits, one
    /// that keeps to the limit better comes before all.
    #[must_use]
    pub fn better(&self, effort: Effort<'_>) -> Option<Vec<CalledTurn>> {
        let plan = planned(&self.left, self.asked.longest_wait_ns, effort).ok()?;
        if worth(&self.asked, &plan) >= self.worth {
            return None;
        }
        let mut turns = self.called.get(..CALLED)?.to_vec();
        turns.extend(self.tail(plan));
        Some(turns)
    }

    /// The turns of a plan of what is left, as turns of the lifts.
    fn tail(&self, mut plan: Plan) -> Vec<CalledTurn> {
        for turn in &mut plan.turns {
            turn.turn += self.head[turn.lifter];
        }
        self.asked.turns(&plan)
    }
}

impl Asked {
    /// Called turns as lifters and stacks of the problem; `None` when one is not the next rung of a
    /// lift of it, or has plates that the gym does not have.
    fn places(&self, called: &[CalledTurn]) -> Option<Vec<(usize, Vec<usize>)>> {
        let mut next: Vec<usize> = self.lifts.iter().map(|(_, rung)| *rung).collect();
        let place = |turn: &CalledTurn| {
            let lifter = self.lifts.iter().position(|(no, _)| *no == turn.no)?;
            let due = next[lifter] == usize::from(turn.rung);
            next[lifter] += 1;
            let face = |face| self.faces.iter().position(|other| other == face);
            let stack: Option<Vec<usize>> = turn.per_side.iter().map(face).collect();
            due.then_some((lifter, stack?))
        };
        called.iter().map(place).collect()
    }
}
