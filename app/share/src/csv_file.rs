//! The record as CSV (RFC 4180): one row a set, in the order of entry.
//!
//! Refuses: cells that a spreadsheet would run as a formula.
use crate::moment::written;
use crate::stream::Stop;
use csv::{QuoteStyle, Terminator, Writer, WriterBuilder};
use journal::{RecordReader, SetRow};
use std::borrow::Cow;
use std::io;
use std::ops::ControlFlow;

const COLUMNS: [&str; 16] = [
    "set",
    "lift_no",
    "date",
    "lifter",
    "lift",
    "rack",
    "rung",
    "kind",
    "load",
    "unit",
    "load_kg",
    "planned_reps",
    "reps",
    "back",
    "back_moved_at",
    "at",
];

/// Writes the heading and all sets.
pub(crate) fn write(record: Option<&RecordReader>, sink: &mut impl io::Write) -> Result<(), Stop> {
    let mut csv = WriterBuilder::new()
        .terminator(Terminator::CRLF)
        .quote_style(QuoteStyle::NonNumeric)
        .from_writer(sink);
    csv.write_record(COLUMNS).map_err(gone)?;
    if let Some(record) = record {
        let mut outcome = Ok(());
        record.each_set(|set| {
            outcome = write_set(&mut csv, &set);
            if outcome.is_ok() {
                ControlFlow::Continue(())
            } else {
                ControlFlow::Break(())
            }
        })?;
        outcome.map_err(gone)?;
    }
    Ok(csv.flush()?)
}

/// The csv crate's one error here is the writer's.
fn gone(error: csv::Error) -> Stop {
    Stop::Gone(error.into())
}

fn write_set(csv: &mut Writer<impl io::Write>, set: &SetRow) -> csv::Result<()> {
    let moved_at = set.back_moved_at.map(|rep| rep.to_string());
    let cells: [Cow<'_, str>; COLUMNS.len()] = [
        set.seq.to_string().into(),
        set.lift_no.to_string().into(),
        harmless(&set.date),
        harmless(&set.lifter),
        harmless(&set.lift),
        harmless(&set.rack),
        set.rung.to_string().into(),
        harmless(&set.kind),
        set.load.number(set.unit).into(),
        set.unit.word().into(),
        set.load_kg().into(),
        set.planned_reps.to_string().into(),
        set.reps.to_string().into(),
        if moved_at.is_some() { "moved" } else { "kept" }.into(),
        moved_at.unwrap_or_default().into(),
        written(set.at.0).unwrap_or_default().into(),
    ];
    csv.write_record(cells.iter().map(|cell| cell.as_bytes()))
}

/// A text with an apostrophe before it if a spreadsheet might take it for a formula: OWASP, "CSV
/// Injection", and ASVS 5.0 requirement 1.2.10 for the null character.
fn harmless(text: &str) -> Cow<'_, str> {
    if text.starts_with(['=', '+', '-', '@', '\t', '\r', '\n', '\0']) {
        format!("'{text}").into()
    } else {
        text.into()
    }
}
