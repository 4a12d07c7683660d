//! The problem `balance`: JSON to the planner and back. The contract is at the head of `solve`.
use super::read::{Fault, Object, Value};
use super::watch::Watch;
use domain::solve::balance::{Problem, Weighed, plan};
use serde::Serialize;
use serde_json::value::RawValue;

#[derive(Debug, Serialize)]
struct Solved {
    left: Vec<String>,
    right: Vec<String>,
    load: String,
    difference: String,
    #[serde(skip_serializing_if = "Option::is_none")]
    median_us: Option<Box<RawValue>>,
}

pub(super) fn solve(input: &Object<'_>, watch: &mut Watch<'_>) -> Result<String, Fault> {
    input.only(&["bar", "plates", "per_side"])?;
    let (bar, unit) = input.need("bar")?.mass()?;
    let plates = input.need("plates")?.list()?;
    let plates: Vec<Weighed> = plates.iter().map(weighed).collect::<Result<_, Fault>>()?;
    if let Some(at) = (1..plates.len()).find(|at| named_before(&plates, *at)) {
        let text = format!(
            "is {:?} a second time; give every plate its own mark",
            plates[at].mark
        );
        return Err(Fault::new(format!("plates[{at}].mark"), text));
    }
    let side = input.need("per_side")?.list()?;
    let per_side = side.iter().map(|v| v.mass().map(|(mass, _)| mass));
    let problem = Problem {
        bar,
        plates,
        per_side: per_side.collect::<Result<_, Fault>>()?,
    };
    let (found, median_us) = watch.run(|| plan(&problem));
    let found = found?;
    let marks = |side: &[usize]| {
        side.iter()
            .map(|at| problem.plates[*at].mark.clone())
            .collect()
    };
    Ok(super::written(&Solved {
        left: marks(&found.left),
        right: marks(&found.right),
        load: found.load.exact(unit),
        difference: found.difference.exact(unit),
        median_us,
    }))
}

fn weighed(value: &Value<'_>) -> Result<Weighed, Fault> {
    let plate = value.object()?;
    plate.only(&["mark", "nominal", "mass"])?;
    Ok(Weighed {
        mark: plate
            .need("mark")?
            .text("the mark on the plate, such as \"A1\"")?,
        nominal: plate.need("nominal")?.mass()?.0,
        mass: plate.need("mass")?.mass()?.0,
    })
}

fn named_before(plates: &[Weighed], at: usize) -> bool {
    plates[..at]
        .iter()
        .any(|plate| plate.mark == plates[at].mark)
}
