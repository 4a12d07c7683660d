//! The problem `hole`: JSON to the finder and back. The contract is at the head of `solve`.
use super::nearest;
use super::read::{Fault, Object, Value};
use super::watch::Watch;
use domain::equipment::Calibration;
use domain::solve::hole::{Problem, Rule, find};
use domain::{Length, LengthUnit};
use serde::Serialize;
use serde_json::value::RawValue;

#[derive(Debug, Serialize)]
struct Solved {
    hole: u16,
    mats: Vec<String>,
    bar_height: String,
    off_target: String,
    #[serde(skip_serializing_if = "Option::is_none")]
    overlap: Option<String>,
    #[serde(skip_serializing_if = "Option::is_none")]
    median_us: Option<Box<RawValue>>,
}

pub(super) fn solve(input: &Object<'_>, watch: &mut Watch<'_>) -> Result<String, Fault> {
    input.only(&[
        "first_hole",
        "spacing",
        "holes",
        "pin_diameter",
        "hole_diameter",
        "bar_diameter",
        "mats",
        "target",
        "rule",
        "patella_top",
        "calibration",
    ])?;
    let (mats, mat_units) = mats(input)?;
    let (target, unit) = input.need("target")?.length()?;
    let patella_top = input.get("patella_top").map(|v| v.length()).transpose()?;
    let need = |name| input.need(name)?.length().map(|(length, _)| length);
    let hole_diameter = input.get("hole_diameter").map(|v| v.length()).transpose()?;
    let problem = Problem {
        first_hole: need("first_hole")?,
        spacing: need("spacing")?,
        holes: input.need("holes")?.count()?,
        pin_diameter: need("pin_diameter")?,
        hole_diameter: hole_diameter.map(|(length, _)| length),
        bar_diameter: need("bar_diameter")?,
        mats,
        target,
        rule: rule(&input.need("rule")?)?,
        patella_top: patella_top.map(|(length, _)| length),
        calibration: input
            .get("calibration")
            .map(|v| calibration(&v))
            .transpose()?,
    };
    let (setting, median_us) = watch.run(|| find(&problem));
    let setting = setting?;
    let overlap = setting.overlap.zip(patella_top);
    let mat = |&at: &usize| problem.mats[at].exact(mat_units[at]);
    Ok(super::written(&Solved {
        hole: setting.hole,
        mats: setting.mats.iter().map(mat).collect(),
        bar_height: setting.bar_height.exact(unit),
        off_target: setting.off_target.exact(unit),
        overlap: overlap.map(|(overlap, (_, unit))| overlap.exact(unit)),
        median_us,
    }))
}

fn mats(input: &Object<'_>) -> Result<(Vec<Length>, Vec<LengthUnit>), Fault> {
    let values = input
        .get("mats")
        .map_or(Ok(Vec::new()), |value| value.list())?;
    let mats: Result<Vec<_>, Fault> = values.iter().map(Value::length).collect();
    Ok(mats?.into_iter().unzip())
}

fn rule(value: &Value<'_>) -> Result<Rule, Fault> {
    let known = ["at_or_below", "nearest"];
    match value.text("\"at_or_below\" or \"nearest\"")?.as_str() {
        "at_or_below" => Ok(Rule::AtOrBelow),
        "nearest" => Ok(Rule::Nearest),
        other => {
            let hint = nearest::hint(other, &known);
            Err(Fault::new(
                &value.path,
                format!("there is no such rule: {hint}"),
            ))
        }
    }
}

fn calibration(value: &Value<'_>) -> Result<Calibration, Fault> {
    let measured = value.object()?;
    measured.only(&["hole", "bar_height"])?;
    let (bar_height, _) = measured.need("bar_height")?.length()?;
    Ok(Calibration {
        hole: measured.need("hole")?.count()?,
        bar_height,
    })
}
