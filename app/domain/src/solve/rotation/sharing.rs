//! The ways to share a group out over its bars, and what each comes to at least.
use super::stations::Group;
use super::{Effort, Lifter, Problem, Standing, check, passes, run};
use crate::solve::equipment::refusal;
use crate::solve::{Constraint, Refusal};
use alloc::format;
use alloc::string::String;
use alloc::vec;
use alloc::vec::Vec;

/// Sharings that are listed at most; of more, those whose bars are busy for as long as each other.
const SHARINGS_LIMIT: usize = 20_000;

/// All turns of one bar take as long as they last, and each lifter has to rest.
pub(super) fn simple_bound(group: &Group, who: u32) -> u64 {
    let lifters = group.lifters.iter().enumerate();
    let here = lifters.filter(|(at, _)| who & 1 << at != 0);
    let lasting = |lifter: &Lifter| lifter.turns.iter().map(|t| t.lasts_ns).sum::<u64>();
    let chain = |lifter: &Lifter| {
        let rests = lifter.turns.iter().skip(1).map(|turn| turn.rest_ns);
        lasting(lifter) + rests.sum::<u64>()
    };
    let all: u64 = here.clone().map(|(_, lifter)| lasting(lifter)).sum();
    here.map(|(_, lifter)| chain(lifter))
        .max()
        .unwrap_or(0)
        .max(all)
}

/// One station's rotation.
pub(super) fn rotation(group: &Group, station: usize, goes: impl Fn(usize) -> bool) -> Problem {
    let at = &group.stations[station];
    let lifters = group.lifters.iter().enumerate();
    let here = lifters.filter(|(lifter, _)| goes(*lifter));
    Problem {
        equipment: at.equipment.clone(),
        loaders: at.loaders,
        hole_change_ns: at.hole_change_ns,
        hole_change_at_most: at.hole_change_at_most,
        lifters: here.map(|(_, lifter)| lifter.clone()).collect(),
        standing: Standing::default(),
    }
}

/// By lifter: the stations where that lifter's turns can be done.
pub(super) fn open(group: &Group) -> Result<Vec<Vec<usize>>, Refusal> {
    let count = group.stations.len();
    if count == 0 || count > Group::STATIONS_LIMIT {
        let text = format!(
            "are {count}, and 1 to {} are planned",
            Group::STATIONS_LIMIT
        );
        return Err(refusal(Constraint::Range, "stations", text));
    }
    for station in 0..count {
        // What is wrong with a station is told as such, whoever goes there.
        let equipment = &group.stations[station].equipment;
        let named = |r: Refusal| within(&format!("stations[{station}]"), r);
        equipment.check().map_err(named)?;
    }
    let mut open = Vec::new();
    let mut any_turns = false;
    for (lifter, all) in group.lifters.iter().enumerate() {
        any_turns = any_turns || !all.turns.is_empty();
        if group.pinned[lifter].is_some_and(|station| station >= count) {
            let text = String::from("is not among the stations");
            return Err(refusal(
                Constraint::Range,
                &format!("lifters[{lifter}].station"),
                text,
            ));
        }
        let mut here = Vec::new();
        let mut refused = None;
        for station in 0..count {
            if group.pinned[lifter].is_some_and(|pinned| pinned != station) {
                continue;
            }
            match able(group, station, lifter) {
                // Who has nothing to do may be anywhere.
                Ok(()) if all.turns.is_empty() && !here.is_empty() => {}
                Ok(()) => here.push(station),
                Err(why) => refused = refused.or(Some(why)),
            }
        }
        if let (Some(why), true) = (refused, here.is_empty()) {
            return Err(why);
        }
        open.push(here);
    }
    if !any_turns || group.lifters.len() > Problem::LIFTERS_LIMIT {
        // Told in the words of one bar.
        check::check(&rotation(group, 0, |_| true))?;
    }
    Ok(open)
}

/// Whether a lifter alone can do all turns at a station.
fn able(group: &Group, station: usize, lifter: usize) -> Result<(), Refusal> {
    if group.lifters[lifter].turns.is_empty() {
        return Ok(());
    }
    let alone = rotation(group, station, |other| other == lifter);
    let named = |mut refused: Refusal| {
        let number = format!("lifters[{lifter}]");
        refused.field = refused.field.replacen("lifters[0]", &number, 1);
        if refused.field.starts_with("lifters") {
            refused
        } else {
            within(&format!("stations[{station}]"), refused)
        }
    };
    check::check(&alone).map_err(named)?;
    let effort = Effort {
        states: 1,
        go_on: &mut || true,
    };
    run::run(&alone, 0, effort, &passes::USUAL).map_err(named)?;
    Ok(())
}

fn within(field: &str, mut refused: Refusal) -> Refusal {
    refused.field = format!("{field}.{}", refused.field);
    refused
}

/// However they are shared out, the bars are busy for so long, and each lifter has to rest.
pub(super) fn busy_bound(group: &Group) -> u64 {
    let each = (0..group.lifters.len()).map(|lifter| simple_bound(group, 1 << lifter));
    let turns = group.lifters.iter().flat_map(|lifter| &lifter.turns);
    let all: u64 = turns.map(|turn| turn.lasts_ns).sum();
    each.max()
        .unwrap_or(0)
        .max(all / group.stations.len() as u64)
}

/// Every way to share the lifters out, and whether these are all.
pub(super) fn sharings(group: &Group, open: &[Vec<usize>]) -> (Vec<Vec<usize>>, bool) {
    let (mut sharings, mut all) = (vec![Vec::new()], true);
    for here in open {
        let mut more: Vec<Vec<usize>> = Vec::new();
        for sharing in &sharings {
            more.extend(here.iter().map(|&station| {
                let mut then: Vec<usize> = sharing.clone();
                then.push(station);
                then
            }));
        }
        if more.len() > SHARINGS_LIMIT {
            all = false;
            more.sort_by_cached_key(|sharing| longest(group, sharing));
            more.truncate(SHARINGS_LIMIT / Group::STATIONS_LIMIT);
        }
        sharings = more;
    }
    (sharings, all)
}

/// How long the busiest bar is lifted on.
fn longest(group: &Group, sharing: &[usize]) -> u64 {
    let mut busy = vec![0; group.stations.len()];
    for (lifter, &station) in group.lifters.iter().zip(sharing) {
        busy[station] += lifter.turns.iter().map(|turn| turn.lasts_ns).sum::<u64>();
    }
    busy.into_iter().max().unwrap_or(0)
}
