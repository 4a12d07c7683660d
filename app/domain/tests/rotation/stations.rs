//! Several bars, against every way to share the lifters out and everything tried at each bar.
use crate::random::{Dice, small};
use crate::{exhaust, replay};
use domain::solve::rotation::{
    Effort, Group, GroupPlan, Lifter, Problem, Standing, Station, share,
};

fn shared(group: &Group) -> GroupPlan {
    let effort = Effort {
        states: u64::MAX,
        go_on: &mut || true,
    };
    share(group, effort).expect("it can be loaded")
}

/// Two bars of different gyms, and two to four lifters of one or two turns from either.
fn two_bars(seed: u64) -> Group {
    let dice = &mut Dice::new(seed ^ 0x57A7);
    let (one, other) = (small(2 * seed), small(2 * seed + 1));
    let station = |problem: &Problem| {
        let mut equipment = problem.equipment.clone();
        equipment.plates.truncate(3);
        Station {
            equipment,
            loaders: problem.loaders,
            hole_change_ns: problem.hole_change_ns,
            hole_change_at_most: problem.hole_change_at_most,
        }
    };
    let mut lifters: Vec<Lifter> = one.lifters.iter().chain(&other.lifters).cloned().collect();
    lifters.truncate(4);
    for lifter in &mut lifters {
        lifter.turns.truncate(2);
        // Somewhat light or heavy will do, so that either bar may serve.
        for turn in &mut lifter.turns {
            turn.below = turn
                .below
                .max(domain::Mass::of(domain::MassUnit::Kg, 7_500));
        }
    }
    let pinned = lifters
        .iter()
        .map(|_| dice.one_in(5).then(|| usize::from(dice.one_in(2))));
    Group {
        stations: vec![station(&one), station(&other)],
        pinned: pinned.collect(),
        lifters,
    }
}

fn part(group: &Group, station: usize, sharing: &[usize]) -> Option<Problem> {
    let here = group
        .lifters
        .iter()
        .zip(sharing)
        .filter(|(_, s)| **s == station);
    let lifters: Vec<Lifter> = here.map(|(lifter, _)| lifter.clone()).collect();
    let at = &group.stations[station];
    (!lifters.is_empty()).then(|| Problem {
        equipment: at.equipment.clone(),
        loaders: at.loaders,
        hole_change_ns: at.hole_change_ns,
        hole_change_at_most: at.hole_change_at_most,
        lifters,
        standing: Standing::default(),
    })
}

/// Every way to share out, each bar tried out in full: the earliest end, and with it the least
/// handling of all bars together.
fn tried_out(group: &Group) -> Option<(u64, u64)> {
    let count = group.lifters.len();
    let ways = (0..1_usize << count).map(|way| (0..count).map(|l| way >> l & 1).collect());
    let allowed = |sharing: &Vec<usize>| {
        let pinned = group.pinned.iter().zip(sharing);
        pinned
            .into_iter()
            .all(|(pin, at)| pin.is_none_or(|pin| pin == *at))
    };
    let ways: Vec<Vec<usize>> = ways.filter(allowed).collect();
    let ends = |sharing: &Vec<usize>| {
        let parts = (0..2).filter_map(|station| part(group, station, sharing));
        let ends = parts.map(|problem| exhaust::best(&problem).map(|best| best.0));
        ends.collect::<Option<Vec<u64>>>()?.into_iter().max()
    };
    let ends: Vec<Option<u64>> = ways.iter().map(ends).collect();
    let soonest = ends.iter().flatten().copied().min()?;
    let handling = |sharing: &Vec<usize>| -> Option<u64> {
        let parts = (0..2).filter_map(|station| part(group, station, sharing));
        let each = parts.map(|problem| exhaust::best_by(&problem, soonest).map(|best| best.1));
        each.sum()
    };
    let best = ways
        .iter()
        .zip(&ends)
        .filter(|(_, ends)| **ends == Some(soonest));
    let least = best.filter_map(|(sharing, _)| handling(sharing)).min()?;
    Some((soonest, least))
}

#[test]
fn two_bars_equal_exhaustive_search() {
    let (mut solved, mut both) = (0, 0);
    for seed in 0..60 {
        let group = two_bars(seed);
        let best = tried_out(&group);
        let effort = Effort {
            states: u64::MAX,
            go_on: &mut || true,
        };
        match share(&group, effort) {
            Ok(plan) => {
                assert!(
                    plan.proven && plan.at_least_ns == plan.ends_ns,
                    "seed {seed}"
                );
                let found = (plan.ends_ns, plan.handling_ns);
                assert_eq!(Some(found), best, "seed {seed}: {group:?}");
                carried_out(&group, &plan);
                solved += 1;
                both += usize::from(plan.plans.iter().all(Option::is_some));
            }
            Err(refusal) => assert_eq!(best, None, "seed {seed} was refused: {refusal}"),
        }
    }
    assert!(
        solved >= 20 && both >= 10,
        "{solved} solved, {both} with both bars"
    );
}

/// Each bar's plan keeps the rules, nobody is in two places, and who is pinned is there.
fn carried_out(group: &Group, plan: &GroupPlan) {
    for (station, here) in plan.plans.iter().enumerate() {
        let Some(here) = here else { continue };
        let problem = part(group, station, &plan.station).expect("somebody is there");
        let lifters: Vec<usize> = (0..group.lifters.len())
            .filter(|&lifter| plan.station[lifter] == station)
            .collect();
        let mut alone = here.clone();
        for turn in &mut alone.turns {
            let place = lifters.iter().position(|&lifter| lifter == turn.lifter);
            turn.lifter = place.expect("whoever lifts here was sent here");
        }
        replay::check(&problem, &alone);
    }
    for (pinned, at) in group.pinned.iter().zip(&plan.station) {
        assert!(pinned.is_none_or(|pinned| pinned == *at));
    }
}

#[test]
fn a_second_bar_helps_and_cut_short_the_bound_is_honest() {
    let (problem, other) = (small(1), small(1));
    let station = |p: &Problem| Station {
        equipment: p.equipment.clone(),
        loaders: p.loaders,
        hole_change_ns: p.hole_change_ns,
        hole_change_at_most: p.hole_change_at_most,
    };
    let group = Group {
        stations: vec![station(&problem), station(&other)],
        pinned: vec![None; problem.lifters.len()],
        lifters: problem.lifters.clone(),
    };
    let alone = exhaust::best(&problem).expect("it can be loaded");
    let both = shared(&group);
    assert!(both.ends_ns < alone.0, "{} and {}", both.ends_ns, alone.0);
    for states in [1, 30, 300] {
        let effort = Effort {
            states,
            go_on: &mut || true,
        };
        let cut = share(&group, effort).expect("it can be loaded");
        carried_out(&group, &cut);
        assert!(cut.at_least_ns <= both.ends_ns && both.ends_ns <= cut.ends_ns);
        assert!(!cut.proven || cut.ends_ns == both.ends_ns);
    }
}
