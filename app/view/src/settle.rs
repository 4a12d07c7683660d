//! After the last warm-up: work loads around the plan, each with the plates to move and how it
//! stands to the last time.
//!
//! Refuses: choosing. Nothing tapped leaves the plan.
use crate::draw::{BarDrawing, Change, LadderRow};
use crate::drawings;
use crate::language::{Language, p};
use crate::loading::{stack_lines, still_bar};
use crate::scene::Scene;
use crate::spot::{Spot, spot};
use crate::words::minutes;
use domain::day::DayEntry;
use domain::next::outing::Outing;
use domain::next::{Decision, Verdict, Why};
use domain::settle::{Choices, Settled};
use domain::state::LiftRun;
use domain::{Mass, MassUnit};

/// What it shows.
#[derive(Debug, Clone, PartialEq)]
pub struct Settle {
    /// "work set, 5 reps", "3 work sets of 5 reps".
    pub work: String,
    /// "last time 177.5 kg × 5, all reps with the back held, on 18 November"; "the first time".
    pub last: String,
    /// What is due and what the plan asks, the lower first, where they differ and the coach has not
    /// ruled: "due 190 kg, plan 205 kg"; else empty.
    pub asked: String,
    /// Hole, mats, height, gear, grip with the load that is kept.
    pub spot: Spot,
    /// The last warm-up: "165 kg × 1, back held".
    pub done: String,
    /// Rest left: "2:10"; empty when it is over.
    pub left: String,
    /// Share of the rest that is left, 0 to 1.
    pub share: f32,
    /// Three to five loads, lightest first; fewer where the plates make no more. A tap on the nth
    /// says `Choose(n)`, from 0.
    pub loads: Vec<Choice>,
    /// The ladder, lowest rung first.
    pub ladder: Vec<LadderRow>,
    /// What matters before a heavier choice, short.
    pub caution: String,
    /// The main button: "keep 180 kg": the lower of what is due and what the plan asks.
    pub main: String,
}

/// One load that may be chosen.
#[derive(Debug, Clone, PartialEq)]
pub struct Choice {
    /// "182.5".
    pub load: String,
    /// "kg".
    pub unit: String,
    /// "the plan", "due", or empty.
    pub plan: String,
    /// "too early" where what is due says so, "more than is due", or empty.
    pub mark: String,
    /// "5 kg more than last time", "as last time", "2.5 kg less than last time", or empty.
    pub against: String,
    /// The bar as it must be loaded, to scale.
    pub bar: BarDrawing,
    /// What the hands have to do.
    pub change: Change,
    /// Load as a share of the heaviest that is offered, 0 to 1.
    pub height: f32,
}

pub(crate) fn settle(scene: &Scene<'_>, run: &LiftRun, choices: &Choices) -> Settle {
    let say = scene.language();
    let sheet = &run.sheet;
    let now = &sheet.rungs[choices.rung];
    let entry = entry(scene, run);
    let standing = Standing {
        say,
        kept: choices.planned,
        entry,
    };
    let order = scene.order(run, choices.rung);
    let left = scene.rest_left(run).unwrap_or(0);
    let heaviest = choices.loads.iter().map(|s| s.load.ng()).max();
    let choice = |settled: &Settled| Choice {
        load: say.mass_number(settled.load, sheet.unit),
        unit: sheet.unit.word().into(),
        plan: standing.asks(settled.load),
        mark: standing.mark(settled.load),
        against: against(say, settled, choices.last.as_ref(), sheet.unit),
        bar: still_bar(say, sheet, &scene.order_for(run, &settled.per_side).to),
        // Nothing to do before a load is chosen.
        change: stack_lines(say, &scene.order_for(run, &settled.per_side), sheet.unit),
        height: drawings::share(settled.load.ng(), heaviest.unwrap_or(1)),
    };
    let sets = sheet.rungs.len() - choices.rung;
    let reps = say.reps(now.reps);
    Settle {
        work: match sets {
            1 => say.fill(p::WORK_SET_REPS, &[&reps]),
            more => say.fill(p::WORK_SETS_OF, &[&more.to_string(), &reps]),
        },
        last: last_time(say, choices.last.as_ref(), sheet.unit),
        asked: entry.map(|e| say.side_by_side(e)).unwrap_or_default(),
        spot: spot(scene, run, choices.rung, &order.to),
        done: crate::rest::last_words(say, run),
        left: if left > 0 {
            minutes(left)
        } else {
            String::new()
        },
        share: drawings::share(i64::from(left), i64::from(now.rest_s)),
        loads: choices.loads.iter().map(choice).collect(),
        ladder: drawings::ladder(say, sheet, Some(run)),
        caution: say.say(p::SETTLE_CAUTION),
        main: say.fill(p::KEEP_LOAD, &[&say.mass(choices.planned, sheet.unit)]),
    }
}

/// Today's entry of the plan that `run` is for.
fn entry<'s>(scene: &Scene<'s>, run: &LiftRun) -> Option<&'s DayEntry> {
    let sheet = &run.sheet;
    let same = |entry: &&DayEntry| entry.lifter == sheet.lifter && entry.lift == sheet.lift;
    let is_today = sheet.date == scene.date;
    scene.day.iter().filter(|_| is_today).find(same)
}

/// How a load stands to what the plan asks and to what is due.
struct Standing<'a> {
    say: Language,
    /// The sheet's load: the lower of both.
    kept: Mass,
    entry: Option<&'a DayEntry>,
}

impl Standing<'_> {
    fn decision(&self) -> Option<&Decision> {
        Some(&self.entry?.next.as_ref()?.decision)
    }

    fn due(&self) -> Option<Mass> {
        self.decision()?.due()
    }

    /// Whether the coach's word stands in place of the plan's.
    fn is_ruled(&self) -> bool {
        self.decision()
            .is_some_and(|decision| decision.why == Why::Coach)
    }

    /// "the plan", "due", or nothing.
    fn asks(&self, load: Mass) -> String {
        let planned = self.entry.and_then(|entry| entry.planned);
        let is_kept = load == self.kept;
        self.say.say(match planned {
            Some(plan) if load == plan => p::THE_PLAN,
            Some(_) if is_kept || self.due() == Some(load) => p::THE_DUE,
            None if is_kept && self.is_ruled() => p::THE_DUE,
            None if is_kept => p::THE_PLAN,
            Some(_) | None => return String::new(),
        })
    }

    /// Whether a load is more than what is due, where the last time does not let it rise.
    fn mark(&self, load: Mass) -> String {
        let Some(decision) = self.decision() else {
            return String::new();
        };
        let may_rise = decision.verdict == Verdict::Raise || self.is_ruled();
        if may_rise || load <= decision.load {
            return String::new();
        }
        let tried = decision.why == Why::TooMuch && load >= decision.from;
        self.say.say(match tried {
            true => p::TOO_EARLY,
            false => p::OVER_DUE,
        })
    }
}

/// "last time 177.5 kg × 5, all reps with the back held, on 18 November".
fn last_time(say: Language, last: Option<&Outing>, unit: MassUnit) -> String {
    let Some(last) = last else {
        return say.say(p::FIRST_TIME);
    };
    let set = say.set(last.load, unit, last.reps);
    let on = say.short_date(last.date);
    say.fill(p::LAST_TIME, &[&set, &say.outing(last), &on])
}

fn against(say: Language, settled: &Settled, last: Option<&Outing>, unit: MassUnit) -> String {
    let Some(last) = last else {
        return String::new();
    };
    let apart = say.mass(settled.load.apart(last.load), unit);
    match settled.load.cmp(&last.load) {
        std::cmp::Ordering::Equal => say.say(p::AS_LAST_TIME),
        std::cmp::Ordering::Greater => say.fill(p::MORE_THAN_LAST, &[&apart]),
        std::cmp::Ordering::Less => say.fill(p::LESS_THAN_LAST, &[&apart]),
    }
}

/// "other load" where another may be chosen, else nothing.
pub(crate) fn offered(say: Language, choices: Option<&Choices>) -> String {
    choices.map(|_| say.say(p::OTHER_LOAD)).unwrap_or_default()
}
