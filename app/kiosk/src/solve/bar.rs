//! The problem `bar`: JSON to the bending of a bar and back. The contract is at the head of
//! `solve`. Refuses: to answer without the words that go with it.
use super::exact::decimal;
use super::read::{Fault, Object};
use super::watch::Watch;
use domain::solve::bar::{Bending, Dropped, GUIDE, Problem, bend};
use domain::{Length, LengthUnit};
use serde::Serialize;
use serde_json::value::RawValue;

/// Pascals of a GPa and of a MPa.
const GPA: i64 = 1_000_000_000;
const MPA: i64 = 1_000_000;

#[derive(Debug, Serialize)]
struct Solved {
    moment_nm: Box<RawValue>,
    stress_mpa: Box<RawValue>,
    stress_over_yield: Box<RawValue>,
    deflection_at_loads: String,
    deflection_at_mid_span: String,
    yield_drop: Option<String>,
    #[serde(skip_serializing_if = "Option::is_none")]
    dropped: Option<SolvedDrop>,
    note: &'static str,
    #[serde(skip_serializing_if = "Option::is_none")]
    median_us: Option<Box<RawValue>>,
}

#[derive(Debug, Serialize)]
struct SolvedDrop {
    times_the_load: Box<RawValue>,
    moment_nm: Box<RawValue>,
    stress_mpa: Box<RawValue>,
    stress_over_yield: Box<RawValue>,
}

pub(super) fn solve(input: &Object<'_>, watch: &mut Watch<'_>) -> Result<String, Fault> {
    input.only(&[
        "shaft_diameter",
        "youngs_modulus_gpa",
        "yield_mpa",
        "support_span",
        "load_span",
        "load_per_side",
        "drop",
    ])?;
    let length = |name| input.need(name)?.length().map(|(length, _)| length);
    let drop = input.get("drop").map(|v| v.length()).transpose()?;
    let problem = Problem {
        shaft_diameter: length("shaft_diameter")?,
        youngs_modulus: input.need("youngs_modulus_gpa")?.stress(GPA, "GPa")?,
        yield_stress: input.need("yield_mpa")?.stress(MPA, "MPa")?,
        support_span: length("support_span")?,
        load_span: length("load_span")?,
        load_per_side: input.need("load_per_side")?.mass()?.0,
        drop: drop.map(|(drop, _)| drop),
    };
    let (bent, median_us) = watch.run(|| bend(&problem));
    Ok(super::written(&write(&bent?, median_us)))
}

fn write(bent: &Bending, median_us: Option<Box<RawValue>>) -> Solved {
    let mm = |length: Length| length.exact(LengthUnit::Mm);
    Solved {
        moment_nm: millionths(bent.moment_unm),
        stress_mpa: millionths(bent.stress.pa()),
        stress_over_yield: millionths(bent.of_yield_ppm),
        deflection_at_loads: mm(bent.at_loads),
        deflection_at_mid_span: mm(bent.at_mid_span),
        yield_drop: bent.yield_drop.map(mm),
        dropped: bent.dropped.as_ref().map(fallen),
        note: GUIDE,
        median_us,
    }
}

fn fallen(dropped: &Dropped) -> SolvedDrop {
    SolvedDrop {
        times_the_load: millionths(dropped.factor_ppm),
        moment_nm: millionths(dropped.moment_unm),
        stress_mpa: millionths(dropped.stress.pa()),
        stress_over_yield: millionths(dropped.of_yield_ppm),
    }
}

fn millionths(count: i64) -> Box<RawValue> {
    decimal(count.into(), 6)
}
