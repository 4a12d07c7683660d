//! Several bars, one group: who goes to which bar, and each bar's rotation.
//!
//! Whoever goes to a bar does the whole lift there. Each bar's part is a rotation of its own, so a
//! sharing out is worth what the rotation that ends last is worth. Sharings are looked at in the
//! order of what they come to at least, first with little work each, then with more, until none
//! can beat the best or the effort is spent. Then the bars that are through early are planned for
//! less handling, as long as they do not end after the last.
use super::sharing::{busy_bound, open, rotation, sharings, simple_bound};
use super::{Effort, Lifter, Loaders, Plan, passes, run};
use crate::mass::Mass;
use crate::solve::{Equipment, Refusal};
use alloc::collections::BTreeMap;
use alloc::vec;
use alloc::vec::Vec;

/// One bar at one rack.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Station {
    /// Bar and plates.
    pub equipment: Equipment,
    /// How many hands there are.
    pub loaders: Loaders,
    /// What moving the pins takes, nanoseconds.
    pub hole_change_ns: u64,
    /// The pins move only while the bar, collars included, carries at most this.
    pub hole_change_at_most: Mass,
}

/// A group that shares several bars, all of them empty at the start.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Group {
    /// 1 to [`Group::STATIONS_LIMIT`].
    pub stations: Vec<Station>,
    /// Who lifts: 1 to [`super::Problem::LIFTERS_LIMIT`].
    pub lifters: Vec<Lifter>,
    /// By lifter: the station that it must be, if it matters.
    pub pinned: Vec<Option<usize>>,
}

/// Who goes where, and each station's rotation.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct GroupPlan {
    /// When the last turn of all ends.
    pub ends_ns: u64,
    /// Time spent on handling plates at all stations, hole changes apart.
    pub handling_ns: u64,
    /// `ends_ns` cannot be beaten, by any sharing out.
    pub proven: bool,
    /// No plan ends before this; `ends_ns` when proven.
    pub at_least_ns: u64,
    /// By lifter: the station.
    pub station: Vec<usize>,
    /// By station: its plan, whose lifters are places in [`Group::lifters`]; `None` where nobody
    /// goes.
    pub plans: Vec<Option<Plan>>,
}

impl Group {
    /// The most stations that are planned with.
    pub const STATIONS_LIMIT: usize = 4;
}

/// States for one station's plan, round by round. The first is a sketch where turns are many.
const STATES: [u64; 5] = [2_000, 20_000, 400_000, 8_000_000, u64::MAX];
/// Turns at one station from which on it is only sketched at first.
const MANY_TURNS: usize = 9;
/// Sharings that are looked at before the best of them is changed step by step.
const FIRST: usize = 24;
/// The round whose states a plan with less handling gets.
const LEAN_ROUND: usize = 3;
/// Rounds that the best sharing gets before all others.
const BEST_ROUNDS: usize = 3;

/// A station's plan for some of the lifters, and how well it is known.
#[derive(Debug, Clone)]
struct Part {
    plan: Option<Plan>,
    /// It ends no sooner.
    at_least: u64,
    /// How many rounds have gone into it.
    rounds: usize,
}

struct Planner<'a, 'e> {
    group: &'a Group,
    effort: Effort<'e>,
    used: u64,
    spent: bool,
    /// By station and who goes there.
    parts: BTreeMap<(usize, u32), Part>,
}

/// Shares a group out.
///
/// # Errors
/// [`Refusal`] as [`super::plan`], when a station is named that there is not, or when a lifter's
/// turns can be loaded at no station that is open to that lifter.
pub fn share(group: &Group, effort: Effort<'_>) -> Result<GroupPlan, Refusal> {
    let open = open(group)?;
    let mut planner = Planner {
        group,
        effort,
        used: 0,
        spent: false,
        parts: BTreeMap::new(),
    };
    let (sharings, all) = sharings(group, &open);
    let mut listed: Vec<(u64, Vec<usize>)> = Vec::new();
    for sharing in sharings {
        listed.push((planner.at_least(&sharing), sharing));
    }
    listed.sort();
    // Where not all are listed, this is all that is known of the others.
    let others = if all { u64::MAX } else { busy_bound(group) };
    let mut best: Option<Best> = None;
    for (_, sharing) in listed.iter().take(FIRST) {
        planner.consider(sharing, 1, &mut best)?;
    }
    planner.climb(&open, &mut best)?;
    for round in 2..=BEST_ROUNDS {
        let sharing = best.as_ref().map(|best| best.sharing.clone());
        planner.consider(&sharing.unwrap_or_default(), round, &mut best)?;
    }
    for round in 1..=STATES.len() {
        for (_, sharing) in &listed {
            planner.consider(sharing, round, &mut best)?;
        }
        let ends = best.as_ref().map_or(u64::MAX, |best| best.ends);
        if planner.least(&listed) >= ends || planner.spent {
            break;
        }
    }
    let best = best.expect("there is a sharing, or it was refused");
    let least = planner.least(&listed).min(others).min(best.ends);
    let proven = least >= best.ends;
    let mut plan = planner.fewest_moves(&listed, &best, proven)?;
    (plan.at_least_ns, plan.proven) = (least, proven);
    Ok(plan)
}

/// The best sharing known.
#[derive(Debug, Clone)]
struct Best {
    ends: u64,
    handling: u64,
    sharing: Vec<usize>,
}

impl Planner<'_, '_> {
    /// No plan with a listed sharing ends before.
    fn least(&mut self, listed: &[(u64, Vec<usize>)]) -> u64 {
        let least = listed.iter().map(|(_, sharing)| self.at_least(sharing));
        least.min().unwrap_or(0)
    }

    /// No plan with this sharing ends before.
    fn at_least(&mut self, sharing: &[usize]) -> u64 {
        let parts = self.by_station(sharing).into_iter();
        let least = parts.map(|(station, who)| self.part(station, who).at_least);
        least.max().unwrap_or(0)
    }

    /// Plans a sharing in so many rounds, unless it cannot be the best, and takes it if it is.
    fn consider(
        &mut self,
        sharing: &[usize],
        round: usize,
        best: &mut Option<Best>,
    ) -> Result<(), Refusal> {
        let known = self.at_least(sharing);
        let own = best.as_ref().is_some_and(|best| best.sharing == sharing);
        let useless = best.as_ref().is_some_and(|best| known >= best.ends);
        if best.is_some() && (self.spent || useless && !own) {
            return Ok(());
        }
        let mut found = Best {
            ends: 0,
            handling: 0,
            sharing: sharing.to_vec(),
        };
        for (station, who) in self.by_station(sharing) {
            let part = self.planned(station, who, round)?;
            found.ends = found.ends.max(part.ends_ns);
            found.handling += part.handling_ns;
        }
        let better = |b: &Best| (found.ends, found.handling) < (b.ends, b.handling);
        if own || best.as_ref().is_none_or(better) {
            *best = Some(found);
        }
        Ok(())
    }

    /// Sends one lifter elsewhere, or two to each other's stations, as long as that helps.
    fn climb(&mut self, open: &[Vec<usize>], best: &mut Option<Best>) -> Result<(), Refusal> {
        loop {
            let Some(from) = best.clone() else {
                return Ok(());
            };
            for (lifter, here) in open.iter().enumerate() {
                for &station in here {
                    let mut then = from.sharing.clone();
                    then[lifter] = station;
                    self.consider(&then, 1, best)?;
                    for other in 0..lifter {
                        let mut then = then.clone();
                        then[other] = from.sharing[lifter];
                        if from.sharing[other] == station && open[other].contains(&then[other]) {
                            self.consider(&then, 1, best)?;
                        }
                    }
                }
            }
            if self.spent || best.as_ref().is_none_or(|b| b.sharing == from.sharing) {
                return Ok(());
            }
        }
    }

    /// Who goes to each station where somebody goes.
    fn by_station(&self, sharing: &[usize]) -> Vec<(usize, u32)> {
        let lifts = |lifter: usize| !self.group.lifters[lifter].turns.is_empty();
        let who = |station: usize| {
            let here = (0..sharing.len()).filter(|&l| sharing[l] == station && lifts(l));
            here.map(|lifter| 1_u32 << lifter).sum::<u32>()
        };
        let all = (0..self.group.stations.len()).map(|station| (station, who(station)));
        all.filter(|(_, who)| *who != 0).collect()
    }

    /// What is known of a part.
    fn part(&mut self, station: usize, who: u32) -> &mut Part {
        let group = self.group;
        self.parts.entry((station, who)).or_insert_with(|| Part {
            plan: None,
            at_least: simple_bound(group, who),
            rounds: 0,
        })
    }

    /// A part's plan after so many rounds, or fewer where it is proven or time is up.
    fn planned(&mut self, station: usize, who: u32, round: usize) -> Result<Plan, Refusal> {
        let known = self.part(station, who).clone();
        if let Some(plan) = known
            .plan
            .filter(|p| p.proven || known.rounds >= round || self.spent)
        {
            return Ok(plan);
        }
        let plan = self.plan(station, who, 0, round)?;
        let part = self.part(station, who);
        part.rounds = round;
        part.at_least = part.at_least.max(plan.at_least_ns);
        let better =
            |old: &Plan| (plan.ends_ns, plan.handling_ns) <= (old.ends_ns, old.handling_ns);
        if part
            .plan
            .as_ref()
            .is_none_or(|old| better(old) || plan.proven)
        {
            part.plan = Some(plan);
        }
        Ok(part.plan.clone().expect("just planned"))
    }

    /// Plans one station for some of the lifters.
    fn plan(
        &mut self,
        station: usize,
        who: u32,
        soon_enough: u64,
        round: usize,
    ) -> Result<Plan, Refusal> {
        let states = STATES[round - 1];
        let problem = rotation(self.group, station, |lifter| who & 1 << lifter != 0);
        let left = self.effort.states.saturating_sub(self.used);
        let (go_on, mut on) = (&mut self.effort.go_on, true);
        let effort = Effort {
            states: states.min(left),
            go_on: &mut || {
                on = on && go_on();
                on
            },
        };
        let turns: usize = problem
            .lifters
            .iter()
            .map(|lifter| lifter.turns.len())
            .sum();
        let plan = if round == 1 && turns >= MANY_TURNS {
            run::sketch(&problem, effort)?
        } else {
            run::run(&problem, soon_enough, effort, &passes::USUAL)?
        };
        self.used += plan.states;
        self.spent = self.spent || !on || self.used >= self.effort.states;
        Ok(plan)
    }

    /// The same end with less handling where that is soon found: of all sharings that end as
    /// early, with every station's end as late as the last.
    fn fewest_moves(
        &mut self,
        listed: &[(u64, Vec<usize>)],
        best: &Best,
        proven: bool,
    ) -> Result<GroupPlan, Refusal> {
        let mut fewest = self.written(&best.sharing, |planner, station, who| {
            planner.planned(station, who, 1)
        })?;
        let mut lean: BTreeMap<(usize, u32), Plan> = BTreeMap::new();
        let alike = |sharing: &[usize]| proven || *sharing == best.sharing;
        for (_, sharing) in listed.iter().filter(|(_, sharing)| alike(sharing)) {
            if self.spent || self.at_least(sharing) > best.ends {
                continue;
            }
            let found = self.written(sharing, |planner, station, who| {
                if let Some(plan) = lean.get(&(station, who)) {
                    return Ok(plan.clone());
                }
                let plan = planner.plan(station, who, best.ends, LEAN_ROUND)?;
                lean.insert((station, who), plan.clone());
                Ok(plan)
            })?;
            if found.ends_ns <= best.ends && found.handling_ns < fewest.handling_ns {
                fewest = found;
            }
        }
        Ok(fewest)
    }

    /// The plan of a sharing, by a plan for each station.
    fn written(
        &mut self,
        sharing: &[usize],
        mut plan: impl FnMut(&mut Self, usize, u32) -> Result<Plan, Refusal>,
    ) -> Result<GroupPlan, Refusal> {
        let mut written = GroupPlan {
            ends_ns: 0,
            handling_ns: 0,
            proven: false,
            at_least_ns: 0,
            station: sharing.to_vec(),
            plans: vec![None; self.group.stations.len()],
        };
        for (station, who) in self.by_station(sharing) {
            let mut plan = plan(self, station, who)?;
            let all = 0..self.group.lifters.len();
            let here: Vec<usize> = all.filter(|lifter| who & 1 << lifter != 0).collect();
            for turn in &mut plan.turns {
                turn.lifter = here[turn.lifter];
            }
            written.ends_ns = written.ends_ns.max(plan.ends_ns);
            written.handling_ns += plan.handling_ns;
            written.plans[station] = Some(plan);
        }
        Ok(written)
    }
}
