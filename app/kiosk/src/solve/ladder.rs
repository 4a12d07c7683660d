//! The problem `ladder`: JSON to the planner and back. The contract is at the head of `solve`.
use super::exact;
use super::read::{Fault, Object, Value};
use super::watch::Watch;
use domain::solve::ladder::{Found, Problem, Step, Wish, plan_within};
use domain::solve::{Equipment, PairKind};
use domain::{Length, Mass, MassUnit};
use serde::Serialize;
use serde_json::value::RawValue;

/// Quantities of the input, each with its unit.
#[derive(Debug)]
struct Asked {
    problem: Problem,
    plate_units: Vec<MassUnit>,
    rung_units: Vec<MassUnit>,
}

#[derive(Debug, Serialize)]
struct Solved {
    cost_s: Box<RawValue>,
    handling_s: Box<RawValue>,
    pair_moves: u32,
    /// False where the time was up before; left out where it is the best.
    #[serde(skip_serializing_if = "Option::is_none")]
    proven: Option<bool>,
    #[serde(skip_serializing_if = "Option::is_none")]
    at_least_s: Option<Box<RawValue>>,
    rungs: Vec<SolvedRung>,
    #[serde(skip_serializing_if = "Option::is_none")]
    median_us: Option<Box<RawValue>>,
}

#[derive(Debug, Serialize)]
struct SolvedRung {
    load: String,
    off_target: String,
    per_side: Vec<String>,
    take_off: Vec<String>,
    put_on: Vec<String>,
}

pub(super) fn solve(input: &Object<'_>, watch: &mut Watch<'_>) -> Result<String, Fault> {
    let asked = read(input)?;
    let (found, median_us) = watch.run_within(|go_on| plan_within(&asked.problem, go_on));
    Ok(super::written(&write(&asked, &found?, median_us)))
}

fn read(input: &Object<'_>) -> Result<Asked, Fault> {
    input.only(&[
        "bar",
        "collars",
        "sleeve",
        "plates",
        "big_inside",
        "on_bar",
        "strip_after",
        "rungs",
    ])?;
    let flag = |name| input.get(name).map_or(Ok(false), |value| value.flag());
    let (equipment, plate_units) = equipment(input)?;
    let mut rungs = Vec::new();
    let mut rung_units = Vec::new();
    for value in input.need("rungs")?.list()? {
        let (wish, unit) = wish(&value)?;
        rungs.push(wish);
        rung_units.push(unit);
    }
    let problem = Problem {
        on_bar: on_bar(input, &equipment)?,
        strip_after: flag("strip_after")?,
        rungs,
        equipment,
    };
    Ok(Asked {
        problem,
        plate_units,
        rung_units,
    })
}

/// Bar, sleeve and plates, with the unit of each plate.
pub(super) fn equipment(input: &Object<'_>) -> Result<(Equipment, Vec<MassUnit>), Fault> {
    let (bar, _) = input.need("bar")?.mass()?;
    let collars = mass_or_none(input, "collars")?;
    let mut plates = Vec::new();
    let mut units = Vec::new();
    for value in input.need("plates")?.list()? {
        let plate = value.object()?;
        plate.only(&["mass", "pairs", "thickness", "diameter", "handling_s"])?;
        let (mass, unit) = plate.need("mass")?.mass()?;
        plates.push(PairKind {
            mass,
            pairs: plate.need("pairs")?.count()?,
            thickness: length(&plate, "thickness")?.unwrap_or_default(),
            diameter: length(&plate, "diameter")?.unwrap_or_default(),
            handling_ns: plate
                .need("handling_s")?
                .seconds(PairKind::HANDLING_LIMIT_NS)?,
        });
        units.push(unit);
    }
    let equipment = Equipment {
        bar_and_collars: bar + collars,
        sleeve: length(input, "sleeve")?,
        big_inside: input.get("big_inside").map_or(Ok(false), |v| v.flag())?,
        plates,
    };
    Ok((equipment, units))
}

fn mass_or_none(object: &Object<'_>, name: &str) -> Result<Mass, Fault> {
    let read = |value: Value<'_>| value.mass().map(|(mass, _)| mass);
    object.get(name).map_or(Ok(Mass::ZERO), read)
}

pub(super) fn length(object: &Object<'_>, name: &str) -> Result<Option<Length>, Fault> {
    let read = |value: Value<'_>| value.length().map(|(length, _)| length);
    object.get(name).map(read).transpose()
}

fn wish(value: &Value<'_>) -> Result<(Wish, MassUnit), Fault> {
    let rung = value.object()?;
    rung.only(&["target", "below", "above", "per_kg_off_s", "least_diameter"])?;
    let (target, unit) = rung.need("target")?.mass()?;
    let seconds = |value: Value<'_>| value.seconds(Problem::PER_KG_OFF_LIMIT_NS);
    let wish = Wish {
        target,
        below: mass_or_none(&rung, "below")?,
        above: mass_or_none(&rung, "above")?,
        per_kg_off_ns: rung.get("per_kg_off_s").map_or(Ok(0), seconds)?,
        least_diameter: length(&rung, "least_diameter")?.unwrap_or_default(),
    };
    Ok((wish, unit))
}

/// Of two kinds of one mass the first that has a pair left.
fn on_bar(input: &Object<'_>, equipment: &Equipment) -> Result<Vec<usize>, Fault> {
    let mut stack: Vec<usize> = Vec::new();
    let Some(value) = input.get("on_bar") else {
        return Ok(stack);
    };
    for value in value.list()? {
        let (mass, unit) = value.mass()?;
        let kinds = equipment.plates.iter().enumerate();
        let kinds: Vec<_> = kinds.filter(|(_, plate)| plate.mass == mass).collect();
        let used = |kind: usize| stack.iter().filter(|&&k| k == kind).count();
        let left = kinds
            .iter()
            .find(|(kind, plate)| used(*kind) < usize::from(plate.pairs));
        match left.or(kinds.first()) {
            Some(&(kind, _)) => stack.push(kind),
            None => {
                let text = format!("{} is not among the plates", mass.exact(unit));
                return Err(Fault::new(value.path, text));
            }
        }
    }
    Ok(stack)
}

fn write(asked: &Asked, found: &Found, median_us: Option<Box<RawValue>>) -> Solved {
    let plan = &found.plan;
    let plates = &asked.problem.equipment.plates;
    let names = |kinds: &[usize]| {
        let name = |&kind: &usize| plates[kind].mass.exact(asked.plate_units[kind]);
        kinds.iter().map(name).collect()
    };
    let rung = |(step, &unit): (&Step, &MassUnit)| SolvedRung {
        load: step.load.exact(unit),
        off_target: step.off_target.exact(unit),
        per_side: names(&step.per_side),
        take_off: names(&step.change.take_off),
        put_on: names(&step.change.put_on),
    };
    Solved {
        cost_s: exact::decimal(plan.cost_zs, 21),
        handling_s: exact::decimal(plan.handling_ns.into(), 9),
        pair_moves: plan.pair_moves,
        proven: (!found.proven).then_some(false),
        at_least_s: (!found.proven).then(|| exact::decimal(found.at_least_zs, 21)),
        rungs: plan.rungs.iter().zip(&asked.rung_units).map(rung).collect(),
        median_us,
    }
}
