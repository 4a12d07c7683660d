//! The problem `rotation` with several bars: JSON to the planner and back. The contract is at the
//! head of `solve`.
use super::exact;
use super::read::{Fault, Object};
use super::rotation::{RACK, STATES_MAX, lifter, rack};
use super::watch::Watch;
use domain::MassUnit;
use domain::solve::rotation::{Effort, Group, GroupPlan, PlannedTurn, Station, share};
use serde::Serialize;
use serde_json::value::RawValue;

/// The group, with names and with the units that its quantities were written in.
#[derive(Debug)]
struct Asked {
    group: Group,
    stations: Vec<String>,
    plate_units: Vec<Vec<MassUnit>>,
    names: Vec<String>,
    turn_units: Vec<Vec<MassUnit>>,
}

#[derive(Debug, Serialize)]
struct Solved {
    ends_s: Box<RawValue>,
    handling_s: Box<RawValue>,
    pair_moves: u32,
    longest_wait_s: Box<RawValue>,
    proven: bool,
    at_least_s: Box<RawValue>,
    turns: Vec<SolvedTurn>,
    #[serde(skip_serializing_if = "Option::is_none")]
    median_us: Option<Box<RawValue>>,
}

#[derive(Debug, Serialize)]
struct SolvedTurn {
    station: String,
    lifter: String,
    turn: usize,
    starts_s: Box<RawValue>,
    ends_s: Box<RawValue>,
    hole: Option<u16>,
    load: String,
    per_side: Vec<String>,
    take_off: Vec<String>,
    put_on: Vec<String>,
}

pub(super) fn solve(input: &Object<'_>, watch: &mut Watch<'_>) -> Result<String, Fault> {
    let asked = read(input)?;
    let (plan, median_us) = watch.run_within(|go_on| {
        let states = STATES_MAX;
        share(&asked.group, Effort { states, go_on })
    });
    Ok(super::written(&write(&asked, &plan?, median_us)))
}

fn read(input: &Object<'_>) -> Result<Asked, Fault> {
    input.only(&["stations", "lifters"])?;
    let mut asked = Asked {
        group: Group {
            stations: Vec::new(),
            lifters: Vec::new(),
            pinned: Vec::new(),
        },
        stations: Vec::new(),
        plate_units: Vec::new(),
        names: Vec::new(),
        turn_units: Vec::new(),
    };
    for value in input.need("stations")?.list()? {
        let station = value.object()?;
        let mut fields = Vec::from(RACK);
        fields.push("name");
        station.only(&fields)?;
        let name = station.need("name")?;
        let text = name.text("a station's name")?;
        if asked.stations.contains(&text) {
            return Err(Fault::new(&name.path, format!("{text:?} is there twice")));
        }
        asked.stations.push(text);
        let rack = rack(&station)?;
        asked.plate_units.push(rack.plate_units);
        asked.group.stations.push(Station {
            equipment: rack.equipment,
            loaders: rack.loaders,
            hole_change_ns: rack.hole_change_ns,
            hole_change_at_most: rack.hole_change_at_most,
        });
    }
    for value in input.need("lifters")?.list()? {
        let object = value.object()?;
        object.only(&["name", "station", "turns"])?;
        let read = lifter(&object)?;
        let pinned = object.get("station").map(|station| {
            let name = station.text("a station's name")?;
            let place = asked.stations.iter().position(|known| *known == name);
            let missing = || {
                let known = asked.stations.join(", ");
                Fault::new(
                    &station.path,
                    format!("{name:?} is not a station; write one of {known}"),
                )
            };
            place.ok_or_else(missing)
        });
        asked.group.pinned.push(pinned.transpose()?);
        asked.names.push(read.name);
        asked.group.lifters.push(read.lifter);
        asked.turn_units.push(read.units);
    }
    Ok(asked)
}

fn write(asked: &Asked, plan: &GroupPlan, median_us: Option<Box<RawValue>>) -> Solved {
    let time = |ns: u64| exact::decimal(ns.into(), 9);
    let mut turns: Vec<(usize, &PlannedTurn)> = Vec::new();
    for (station, plan) in plan.plans.iter().enumerate() {
        let all = plan.iter().flat_map(|plan| &plan.turns);
        turns.extend(all.map(|turn| (station, turn)));
    }
    turns.sort_by_key(|(station, turn)| (turn.starts_ns, *station));
    let plans = || plan.plans.iter().flatten();
    Solved {
        ends_s: time(plan.ends_ns),
        handling_s: time(plan.handling_ns),
        pair_moves: plans().map(|plan| plan.pair_moves).sum(),
        longest_wait_s: time(plans().map(|plan| plan.longest_wait_ns).max().unwrap_or(0)),
        proven: plan.proven,
        at_least_s: time(plan.at_least_ns),
        turns: turns
            .into_iter()
            .map(|(station, turn)| write_turn(asked, station, turn))
            .collect(),
        median_us,
    }
}

fn write_turn(asked: &Asked, station: usize, turn: &PlannedTurn) -> SolvedTurn {
    let plates = &asked.group.stations[station].equipment.plates;
    let names = |kinds: &[usize]| {
        let name = |&kind: &usize| plates[kind].mass.exact(asked.plate_units[station][kind]);
        kinds.iter().map(name).collect()
    };
    let time = |ns: u64| exact::decimal(ns.into(), 9);
    SolvedTurn {
        station: asked.stations[station].clone(),
        lifter: asked.names[turn.lifter].clone(),
        turn: turn.turn + 1,
        starts_s: time(turn.starts_ns),
        ends_s: time(turn.ends_ns),
        hole: turn.hole,
        load: turn.load.exact(asked.turn_units[turn.lifter][turn.turn]),
        per_side: names(&turn.per_side),
        take_off: names(&turn.change.take_off),
        put_on: names(&turn.change.put_on),
    }
}
