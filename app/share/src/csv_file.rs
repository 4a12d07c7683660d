//! The record as CSV (RFC 4180): one row a set, in the order of entry.
//!
//! Refuses: cells that a spreadsheet would run as a formula.
use crate::moment::Clock;
use crate::stream::Stop;
use csv::{Terminator, Writer, WriterBuilder};
use journal::{RecordReader, SetRow, SetsOf};
use std::borrow::Cow;
use std::fmt::{Display, Write as _};
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

/// Writes the heading and the sets that are asked for.
pub(crate) fn write(
    record: Option<&RecordReader>,
    of: &SetsOf,
    sink: &mut impl io::Write,
) -> Result<(), Stop> {
    let mut csv = WriterBuilder::new()
        .terminator(Terminator::CRLF)
        .from_writer(sink);
    csv.write_record(COLUMNS).map_err(gone)?;
    if let Some(record) = record {
        let mut outcome = Ok(());
        let mut hand = Hand::default();
        record.each_set_of(of, |set| {
            outcome = hand.write_set(&mut csv, &set);
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
    let told = error.to_string();
    // As it came from the writer: whoever tells it asks for its kind.
    Stop::Gone(if let csv::ErrorKind::Io(error) = error.into_kind() {
        error
    } else {
        io::Error::other(told)
    })
}

/// What is written again and again: a place for the digits of a number, and the last load.
#[derive(Default)]
struct Hand {
    digits: String,
    load: Option<(i64, &'static str, String, String)>,
    at: Clock,
}

impl Hand {
    fn write_set(&mut self, csv: &mut Writer<impl io::Write>, set: &SetRow) -> csv::Result<()> {
        self.number(csv, set.seq)?;
        self.number(csv, set.lift_no)?;
        for text in [&set.date, &set.lifter, &set.lift, &set.rack] {
            csv.write_field(harmless(text).as_bytes())?;
        }
        self.number(csv, set.rung)?;
        csv.write_field(harmless(&set.kind).as_bytes())?;
        let (ng, unit) = (set.load.ng(), set.unit.word());
        let same = |(of, word, ..): &(i64, &str, String, String)| *of == ng && *word == unit;
        if !self.load.as_ref().is_some_and(same) {
            self.load = Some((ng, unit, set.load.number(set.unit), set.load_kg()));
        }
        if let Some((_, _, load, load_kg)) = &self.load {
            csv.write_field(load)?;
            csv.write_field(unit)?;
            csv.write_field(load_kg)?;
        }
        self.number(csv, set.planned_reps)?;
        self.number(csv, set.reps)?;
        match set.back_moved_at {
            None => {
                csv.write_field("kept")?;
                csv.write_field("")?;
            }
            Some(rep) => {
                csv.write_field("moved")?;
                self.number(csv, rep)?;
            }
        }
        csv.write_field(self.at.written(set.at.0))?;
        csv.write_record(None::<&[u8]>)
    }

    fn number(
        &mut self,
        csv: &mut Writer<impl io::Write>,
        number: impl Display,
    ) -> csv::Result<()> {
        self.digits.clear();
        // Text always grows.
        write!(self.digits, "{number}").unwrap_or_default();
        csv.write_field(&self.digits)
    }
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
