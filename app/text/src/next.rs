//! What is due next time, in one sentence with its figures, in a language. Refuses: more than one.
use crate::Language;
use crate::keys::{self as p, coach as c};
use domain::MassUnit;
use domain::day::DayEntry;
use domain::next::outing::{Outing, Went};
use domain::next::{Decision, Due, Verdict, Why};
use domain::plausible::Odd;

impl Language {
    /// "182.5 kg, up 2.5 kg: all reps with the back held", in the lifter's unit.
    #[must_use]
    pub fn decision(self, next: &Decision, unit: MassUnit) -> String {
        if next.due().is_none() {
            return self.fill(p::N_NOTHING, &[&self.because(next, unit)]);
        }
        let load = self.mass(next.load, unit);
        let by = self.mass(next.load.apart(next.from), unit);
        let change = match next.verdict {
            Verdict::Raise => self.fill(p::N_UP, &[&load, &by]),
            Verdict::Repeat if next.load == next.from => self.fill(p::N_AGAIN, &[&load]),
            _ if next.load == next.from => self.fill(p::N_LEAST, &[&load]),
            Verdict::Repeat | Verdict::Drop | Verdict::Reset | Verdict::Ease => {
                self.fill(p::N_DOWN, &[&load, &by])
            }
        };
        self.fill(p::N_BECAUSE, &[&change, &self.because(next, unit)])
    }

    /// What is due: the coach's own words where the coach ruled.
    #[must_use]
    pub fn due(self, due: &Due, unit: MassUnit) -> String {
        if due.decision.why == Why::Coach && !due.note.is_empty() {
            let load = self.mass(due.decision.load, unit);
            return self.fill(p::N_COACH_SAID, &[&load, &self.note(&due.note)]);
        }
        self.decision(&due.decision, unit)
    }

    /// The same beside the load, which is not said again: "up 2.5 kg: all reps with the back
    /// kept".
    #[must_use]
    pub fn due_beside(self, due: &Due, unit: MassUnit) -> String {
        let next = &due.decision;
        if next.why == Why::Coach && !due.note.is_empty() {
            return self.fill(c::COACH_RULED, &[&self.note(&due.note)]);
        }
        let by = self.mass(next.load.apart(next.from), unit);
        let because = self.because(next, unit);
        if next.due().is_none() {
            return because;
        }
        match next.verdict {
            Verdict::Raise => self.fill(c::UP_BY, &[&by, &because]),
            Verdict::Repeat if next.load == next.from => self.fill(c::AGAIN, &[&because]),
            _ if next.load == next.from => self.fill(c::LEAST_AGAIN, &[&because]),
            Verdict::Repeat | Verdict::Drop | Verdict::Reset | Verdict::Ease => {
                self.fill(c::DOWN_BY, &[&by, &because])
            }
        }
    }

    /// What the plan asks and what is due, the lower first: "due 105 kg, plan 110 kg"; empty where
    /// they are alike or the coach has ruled.
    #[must_use]
    pub fn side_by_side(self, entry: &DayEntry) -> String {
        let due = entry.next.as_ref().and_then(|next| next.decision.due());
        let (Some(plan), Some(due)) = (entry.planned, due) else {
            return String::new();
        };
        let [low, high] = [due.min(plan), due.max(plan)].map(|load| self.mass(load, entry.unit));
        let order = if due < plan {
            p::DUE_THEN_PLAN
        } else {
            p::PLAN_THEN_DUE
        };
        self.fill(order, &[&low, &high])
    }

    /// "raise".
    #[must_use]
    pub fn verdict(self, verdict: Verdict) -> String {
        self.say(match verdict {
            Verdict::Raise => p::V_RAISE,
            Verdict::Repeat => p::V_REPEAT,
            Verdict::Drop => p::V_DROP,
            Verdict::Reset => p::V_RESET,
            Verdict::Ease => p::V_EASE,
        })
    }

    /// "all reps, back held", "4 of 5 reps in set 2", "back moved at rep 3".
    #[must_use]
    pub fn outing(self, outing: &Outing) -> String {
        let in_set = |set: u8| match outing.sets {
            1 => String::new(),
            _ => self.fill(p::N_IN_SET, &[&set.to_string()]),
        };
        match outing.went {
            Went::Well => self.say(p::O_WELL),
            Went::Short { set, reps } => {
                let (made, asked) = (reps.to_string(), outing.reps.to_string());
                self.fill(p::N_SHORT, &[&made, &asked, &in_set(set)])
            }
            Went::Moved { set, rep } => self.fill(p::O_MOVED, &[&rep.to_string(), &in_set(set)]),
            Went::MovedWarm => self.say(p::O_MOVED_WARM),
            Went::Cut { done } => {
                self.fill(p::O_CUT, &[&done.to_string(), &outing.sets.to_string()])
            }
        }
    }

    fn because(self, next: &Decision, unit: MassUnit) -> String {
        let went = self.went(next);
        let (nth, tries) = (next.nth.to_string(), next.tries.to_string());
        match next.why {
            Why::Well | Why::Cut => went,
            Why::Back => self.fill(p::N_BACK, &[&went]),
            Why::NoStep => self.fill(p::N_NO_STEP, &[&went]),
            Why::Light => self.fill(p::N_LIGHT, &[&went]),
            Why::OutOfTries if next.tries <= 1 => went,
            Why::TryAgain | Why::OutOfTries => self.fill(p::N_TRY, &[&went, &nth, &tries]),
            Why::TooMuch => self.fill(p::N_TOO_MUCH, &[&went, &self.mass(next.from, unit)]),
            Why::Stuck => self.fill(p::N_STUCK, &[&went]),
            Why::Coach => self.say(p::N_COACH),
            Why::Hard => self.fill(p::N_HARD, &[&went]),
            Why::Range => self.fill(p::N_RANGE, &[&went]),
            Why::Waiting => self.fill(p::N_WAITING, &[&went]),
            Why::Away => self.fill(p::N_AWAY, &[&next.away_days.to_string()]),
            Why::Anew => self.fill(p::N_ANEW, &[&next.away_days.to_string()]),
            Why::Ill => self.fill(p::N_ILL, &[&next.away_days.to_string()]),
            Why::Family => self.say(p::N_FAMILY),
            Why::OverReaching => self.say(p::N_OVER),
            Why::LongAgo => self.say(p::N_LONG_AGO),
            Why::Week => self.say(p::N_WEEK),
            Why::Hurt => self.say(p::N_HURT),
        }
    }

    fn went(self, next: &Decision) -> String {
        let in_set = |set: u8| match next.sets {
            1 => String::new(),
            _ => self.fill(p::N_IN_SET, &[&set.to_string()]),
        };
        match next.went {
            Went::Well => self.say(p::N_WELL),
            Went::Short { set, reps } => {
                let (made, asked) = (reps.to_string(), next.reps.to_string());
                self.fill(p::N_SHORT, &[&made, &asked, &in_set(set)])
            }
            Went::Moved { set, rep } => self.fill(p::N_MOVED, &[&rep.to_string(), &in_set(set)]),
            Went::MovedWarm => self.say(p::N_MOVED_WARM),
            Went::Cut { done } => self.fill(p::N_CUT, &[&done.to_string(), &next.sets.to_string()]),
        }
    }
}

impl Language {
    /// Why a load is not shown before the coach has said that it is meant.
    pub(crate) fn looks_wrong(self, load: &str, odd: Odd, unit: MassUnit) -> String {
        match odd {
            Odd::Over(supports) | Odd::OtherUnit(supports) => {
                self.fill(p::NO_LOOKS_WRONG, &[load, &self.mass(supports, unit)])
            }
            Odd::Untried => self.fill(p::NO_UNTRIED, &[load]),
            Odd::Reps(reps) => self.fill(p::NO_MANY_REPS, &[&reps.to_string(), load]),
        }
    }
}
