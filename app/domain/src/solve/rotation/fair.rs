//! Orders in which nobody waits too long: small changes again, with what is waited too long counted
//! as well, beside the plan that minds no waits.
//!
//! The bound is that of the plan without: minding waits, nothing ends sooner.
use super::allowance::Allowance;
use super::answer::{Found, spell_out};
use super::any_order::AnyOrder;
use super::bars::Bars;
use super::big_inside::BigInside;
use super::improve::Improver;
use super::model::Model;
use super::run::{CROWD_TREE, run};
use super::stacks::Stacks;
use super::{Effort, Plan, Problem, check, greedy, passes};
use crate::solve::Refusal;
use alloc::vec::Vec;

/// Tries of the rounds before the plan without, and of each round after it.
const TRIES: [usize; 4] = [500, 2_000, 4_000, 8_000];
/// Rounds without anything better after which it ends.
const STALE: usize = 8;

/// A plan in which nobody waits longer than `at_most_ns`, where one is found.
pub(super) fn plan(
    problem: &Problem,
    at_most_ns: u64,
    effort: Effort<'_>,
) -> Result<Plan, Refusal> {
    let Effort { states, go_on } = effort;
    let model = &Model::new(problem, 0);
    let stacks = &Stacks::new(model, CROWD_TREE).ok_or_else(|| check::unloadable(problem))?;
    let at_most = i64::try_from(at_most_ns)
        .unwrap_or(i64::MAX)
        .min(i64::MAX / 4);
    let mut fair = Fair {
        problem,
        model,
        stacks,
        at_most_ns,
        improver: Improver::fair(model, stacks, 1, at_most),
        order: None,
        best: None,
    };
    let mut first = Allowance::new(Effort {
        states: states / 2,
        go_on: &mut *go_on,
    });
    for tries in TRIES {
        fair.round((tries, 1), &mut first);
    }
    let used = first.used;
    let left = states.saturating_sub(used);
    let effort = Effort {
        states: left,
        go_on: &mut *go_on,
    };
    let plain = run(problem, 0, effort, &passes::USUAL)?;
    let (least, used) = (plain.at_least_ns, used + plain.states);
    let (proven, least_handling) = (plain.proven, plain.least_handling);
    let kept = plain.longest_wait_ns <= at_most_ns;
    fair.take(plain);
    let mut last = Allowance::new(Effort {
        states: states.saturating_sub(used),
        go_on,
    });
    let (mut stale, mut heat) = (0, 1);
    while !(kept && proven) && stale < STALE && last.ponder(1) && !last.spent {
        stale = if fair.round((TRIES[TRIES.len() - 1], heat), &mut last) {
            0
        } else {
            stale + 1
        };
        heat = heat % 4 + 1;
    }
    let mut best = fair.best.expect("the plan without was taken");
    let keeps = best.longest_wait_ns <= at_most_ns;
    best.proven = keeps && best.ends_ns <= least;
    best.least_handling = best.proven && kept && least_handling;
    best.at_least_ns = least;
    best.states = used + last.used;
    Ok(best)
}

/// The best order so far.
struct Fair<'a> {
    problem: &'a Problem,
    model: &'a Model,
    stacks: &'a Stacks,
    at_most_ns: u64,
    improver: Improver<'a>,
    /// Whose turns, as small changes begin with it.
    order: Option<Vec<u8>>,
    best: Option<Plan>,
}

impl Fair<'_> {
    /// A round of small changes; says whether a better plan came of it.
    fn round(&mut self, tries: (usize, i64), allowance: &mut Allowance<'_>) -> bool {
        if self.model.big_inside {
            let (model, stacks) = (self.model, self.stacks);
            self.round_with(&mut BigInside { model, stacks }, tries, allowance)
        } else {
            self.round_with(
                &mut AnyOrder::new(self.model, self.stacks),
                tries,
                allowance,
            )
        }
    }

    fn round_with<B: Bars>(
        &mut self,
        bars: &mut B,
        tries: (usize, i64),
        allowance: &mut Allowance<'_>,
    ) -> bool {
        let model = self.model;
        let from = self.order.take().unwrap_or_else(|| {
            let steps = greedy::plan(model, bars).steps;
            steps.iter().map(|step| step.0).collect()
        });
        let Some(from) = self.improver.as_it_is(from) else {
            return false;
        };
        let found = self.improver.improve(from, tries, allowance);
        self.order = Some(found.order.clone());
        let Some(best) = greedy::follow(model, bars, &found.order, &found.stacks) else {
            return false;
        };
        let stacks: Vec<u32> = best.steps.iter().map(|step| step.1).collect();
        let found = Found {
            lifters: found.order,
            stacks: bars.lay(&stacks),
            proven: false,
            least_handling: false,
            at_least: 0,
        };
        self.take(spell_out(self.problem, model, &found, 0))
    }

    /// Takes a plan that is better; says whether it was.
    fn take(&mut self, plan: Plan) -> bool {
        let worth = |plan: &Plan| {
            let over = plan.longest_wait_ns.saturating_sub(self.at_most_ns);
            (over, plan.ends_ns, plan.handling_ns)
        };
        let best = self.best.as_ref();
        if best.is_some_and(|best| worth(best) <= worth(&plan)) {
            return false;
        }
        let order = plan.turns.iter().map(|turn| turn.lifter);
        self.order = order.map(|lifter| u8::try_from(lifter).ok()).collect();
        self.best = Some(plan);
        true
    }
}
