//! The problem `rotation`: JSON to the planner and back. The contract is at the head of `solve`.
use super::exact;
use super::ladder::{equipment, length};
use super::read::{Fault, Object, Value};
use super::stations;
use super::watch::Watch;
use domain::solve::Equipment;
use domain::solve::rotation::{
    Effort, Lifter, Loaders, Plan, PlannedTurn, Problem, Standing, Turn, plan, plan_fairly,
};
use domain::{Mass, MassUnit};
use serde::Serialize;
use serde_json::value::RawValue;

/// States that may be looked at whatever the time: bounds the memory.
pub(super) const STATES_MAX: u64 = 40_000_000;

/// The fields of a rack.
pub(super) const RACK: [&str; 8] = [
    "bar",
    "collars",
    "sleeve",
    "plates",
    "big_inside",
    "loaders",
    "hole_change_s",
    "hole_change_at_most",
];

/// Quantities of the input, each with its unit.
#[derive(Debug)]
struct Asked {
    problem: Problem,
    longest_wait_at_most_ns: Option<u64>,
    names: Vec<String>,
    plate_units: Vec<MassUnit>,
    turn_units: Vec<Vec<MassUnit>>,
}

#[derive(Debug, Serialize)]
struct Solved {
    ends_s: Box<RawValue>,
    handling_s: Box<RawValue>,
    pair_moves: u32,
    longest_wait_s: Box<RawValue>,
    #[serde(skip_serializing_if = "Option::is_none")]
    longest_wait_kept: Option<bool>,
    proven: bool,
    at_least_s: Box<RawValue>,
    turns: Vec<SolvedTurn>,
    #[serde(skip_serializing_if = "Option::is_none")]
    median_us: Option<Box<RawValue>>,
}

#[derive(Debug, Serialize)]
struct SolvedTurn {
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
    if input.get("stations").is_some() {
        return stations::solve(input, watch);
    }
    let asked = read(input)?;
    let (plan, median_us) = watch.run_within(|go_on| {
        let effort = Effort {
            states: STATES_MAX,
            go_on,
        };
        match asked.longest_wait_at_most_ns {
            Some(at_most) => plan_fairly(&asked.problem, at_most, effort),
            None => plan(&asked.problem, effort),
        }
    });
    Ok(super::written(&write(&asked, &plan?, median_us)))
}

fn read(input: &Object<'_>) -> Result<Asked, Fault> {
    let mut fields = Vec::from(RACK);
    fields.extend(["lifters", "stations", "longest_wait_at_most_s"]);
    input.only(&fields)?;
    let at_most = input.get("longest_wait_at_most_s");
    let at_most = at_most.map(|value| value.seconds(Problem::TIME_LIMIT_NS));
    let rack = rack(input)?;
    let mut lifters = Vec::new();
    let mut names = Vec::new();
    let mut turn_units = Vec::new();
    for value in input.need("lifters")?.list()? {
        let lifter = value.object()?;
        lifter.only(&["name", "turns"])?;
        let read = self::lifter(&lifter)?;
        names.push(read.name);
        lifters.push(read.lifter);
        turn_units.push(read.units);
    }
    Ok(Asked {
        problem: Problem {
            equipment: rack.equipment,
            loaders: rack.loaders,
            hole_change_ns: rack.hole_change_ns,
            hole_change_at_most: rack.hole_change_at_most,
            lifters,
            standing: Standing::default(),
        },
        longest_wait_at_most_ns: at_most.transpose()?,
        names,
        plate_units: rack.plate_units,
        turn_units,
    })
}

/// A bar at a rack, as it is written at the top of a problem or for each station.
pub(super) struct Rack {
    pub equipment: Equipment,
    pub plate_units: Vec<MassUnit>,
    pub loaders: Loaders,
    pub hole_change_ns: u64,
    pub hole_change_at_most: Mass,
}

pub(super) fn rack(input: &Object<'_>) -> Result<Rack, Fault> {
    let (equipment, plate_units) = equipment(input)?;
    let seconds = |value: Value<'_>| value.seconds(Problem::TIME_LIMIT_NS);
    let mass = |value: Value<'_>| value.mass().map(|(mass, _)| mass);
    Ok(Rack {
        equipment,
        plate_units,
        loaders: input
            .get("loaders")
            .map_or(Ok(Loaders::One), |value| loaders(&value))?,
        hole_change_ns: input.get("hole_change_s").map_or(Ok(0), seconds)?,
        hole_change_at_most: input
            .get("hole_change_at_most")
            .map_or(Ok(Mass::LIMIT), mass)?,
    })
}

/// A lifter, with the units that the turns' targets were written in.
pub(super) struct Read {
    pub name: String,
    pub lifter: Lifter,
    pub units: Vec<MassUnit>,
}

pub(super) fn lifter(object: &Object<'_>) -> Result<Read, Fault> {
    let name = object.need("name")?.text("a lifter's name")?;
    let read = object.need("turns")?.list()?;
    let read: Vec<(Turn, MassUnit)> = read.iter().map(turn).collect::<Result<_, Fault>>()?;
    let (turns, units) = read.into_iter().unzip();
    Ok(Read {
        name,
        lifter: Lifter {
            turns,
            ended_ns: None,
        },
        units,
    })
}

fn loaders(value: &Value<'_>) -> Result<Loaders, Fault> {
    match value.count()? {
        1 => Ok(Loaders::One),
        2 => Ok(Loaders::Two),
        other => Err(Fault::new(
            &value.path,
            format!("is {other}; write 1 (sides one after the other) or 2 (both at once)"),
        )),
    }
}

fn turn(value: &Value<'_>) -> Result<(Turn, MassUnit), Fault> {
    let turn = value.object()?;
    turn.only(&[
        "target",
        "below",
        "above",
        "least_diameter",
        "hole",
        "lasts_s",
        "rest_s",
    ])?;
    let (target, unit) = turn.need("target")?.mass()?;
    let mass = |name| {
        let read = |value: Value<'_>| value.mass().map(|(mass, _)| mass);
        turn.get(name).map_or(Ok(Mass::ZERO), read)
    };
    let seconds = |value: Value<'_>| value.seconds(Problem::TIME_LIMIT_NS);
    let read = Turn {
        target,
        below: mass("below")?,
        above: mass("above")?,
        least_diameter: length(&turn, "least_diameter")?.unwrap_or_default(),
        hole: turn.get("hole").map(|value| value.count()).transpose()?,
        lasts_ns: seconds(turn.need("lasts_s")?)?,
        rest_ns: turn.get("rest_s").map_or(Ok(0), seconds)?,
    };
    Ok((read, unit))
}

fn write(asked: &Asked, plan: &Plan, median_us: Option<Box<RawValue>>) -> Solved {
    let plates = &asked.problem.equipment.plates;
    let names = |kinds: &[usize]| {
        let name = |&kind: &usize| plates[kind].mass.exact(asked.plate_units[kind]);
        kinds.iter().map(name).collect()
    };
    let time = |ns: u64| exact::decimal(ns.into(), 9);
    let turn = |turn: &PlannedTurn| SolvedTurn {
        lifter: asked.names[turn.lifter].clone(),
        turn: turn.turn + 1,
        starts_s: time(turn.starts_ns),
        ends_s: time(turn.ends_ns),
        hole: turn.hole,
        load: turn.load.exact(asked.turn_units[turn.lifter][turn.turn]),
        per_side: names(&turn.per_side),
        take_off: names(&turn.change.take_off),
        put_on: names(&turn.change.put_on),
    };
    Solved {
        ends_s: time(plan.ends_ns),
        handling_s: time(plan.handling_ns),
        pair_moves: plan.pair_moves,
        longest_wait_s: time(plan.longest_wait_ns),
        longest_wait_kept: asked
            .longest_wait_at_most_ns
            .map(|at_most| plan.longest_wait_ns <= at_most),
        proven: plan.proven,
        at_least_s: time(plan.at_least_ns),
        turns: plan.turns.iter().map(turn).collect(),
        median_us,
    }
}
