//! The record as JSON, by `schema/record.schema.json`: every set, in the order of entry.
//!
//! Refuses: floats; loads are texts with their unit, and whole nanograms.
use crate::moment::written;
use crate::stream::Stop;
use journal::{RecordReader, SetRow, SetsOf};
use serde::Serialize;
use std::io;
use std::ops::ControlFlow;

/// Raised when a reader of the former form would be misled.
const VERSION: u32 = 1;

/// One set that stands.
#[derive(Debug, Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema), schemars(deny_unknown_fields))]
pub(crate) struct SetJson<'a> {
    /// Number of the set's event in the journal.
    set: u64,
    /// Number of the lift that it belongs to.
    lift_no: u32,
    /// The day, ISO 8601.
    date: &'a str,
    /// The lifter's name.
    lifter: &'a str,
    /// The lift's name.
    lift: &'a str,
    /// The rack's name.
    rack: &'a str,
    /// Which rung of the ladder, from 1.
    #[cfg_attr(test, schemars(range(min = 1)))]
    rung: u32,
    /// Warm-up or work set.
    #[cfg_attr(test, schemars(regex(pattern = "^(warm-up|work)$")))]
    kind: &'a str,
    /// Bar, collars and plates, exact, in the lifter's unit where it has one there, else in kg.
    #[cfg_attr(test, schemars(regex(pattern = r"^-?[0-9]+(\.[0-9]+)? (kg|lb)$")))]
    load: String,
    /// The same load in nanograms.
    load_ng: i64,
    /// The lifter's unit.
    #[cfg_attr(test, schemars(regex(pattern = "^(kg|lb)$")))]
    unit: &'a str,
    /// Reps to do.
    planned_reps: u8,
    /// Reps done, 0 for a miss.
    reps: u8,
    /// The rep at which the back moved, from 1; null when it kept its position.
    back_moved_at: Option<u8>,
    /// When the set was entered, RFC 3339 in UTC; null when the clock was beyond the calendar.
    at: Option<String>,
}

impl<'a> SetJson<'a> {
    fn of(set: &'a SetRow) -> Self {
        Self {
            set: set.seq,
            lift_no: set.lift_no,
            date: &set.date,
            lifter: &set.lifter,
            lift: &set.lift,
            rack: &set.rack,
            rung: set.rung,
            kind: &set.kind,
            load: set.load.exact(set.unit),
            load_ng: set.load.ng(),
            unit: set.unit.word(),
            planned_reps: set.planned_reps,
            reps: set.reps,
            back_moved_at: set.back_moved_at,
            at: written(set.at.0),
        }
    }
}

/// Writes the sets that are asked for, one a line.
pub(crate) fn write(
    record: Option<&RecordReader>,
    of: &SetsOf,
    sink: &mut impl io::Write,
) -> Result<(), Stop> {
    let upto = record.map_or(Ok(0), RecordReader::upto)?;
    write!(sink, r#"{{"version":{VERSION},"upto":{upto},"sets":["#)?;
    let mut before = "\n";
    if let Some(record) = record {
        let mut outcome = Ok(());
        record.each_set_of(of, |set| {
            outcome = sink
                .write_all(before.as_bytes())
                .and_then(|()| Ok(serde_json::to_writer(&mut *sink, &SetJson::of(&set))?));
            before = ",\n";
            if outcome.is_ok() {
                ControlFlow::Continue(())
            } else {
                ControlFlow::Break(())
            }
        })?;
        outcome?;
    }
    Ok(sink.write_all(b"\n]}\n")?)
}

#[cfg(test)]
#[path = "json_schema_tests.rs"]
mod tests;
