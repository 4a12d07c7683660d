//! The record as files, for a stick: the same CSV and JSON as the page gives.
//!
//! Refuses: half a file without an error.
use crate::stream::Stop;
use crate::{csv_file, json_file};
use journal::{RecordError, RecordReader, SetsOf};
use std::io;
use std::path::Path;
use thiserror::Error;

/// Why a file was not written whole.
#[derive(Debug, Error)]
pub enum ExportError {
    /// The record.
    #[error(transparent)]
    Record(#[from] RecordError),
    /// The writer.
    #[error("it could not be written ({0})")]
    Write(#[from] io::Error),
}

impl From<Stop> for ExportError {
    fn from(stop: Stop) -> Self {
        match stop {
            Stop::Record(error) => Self::Record(error),
            Stop::Gone(error) | Stop::Copy(error) => Self::Write(error),
            // An export is of everybody.
            Stop::Nobody => Self::Write(io::ErrorKind::NotFound.into()),
        }
    }
}

/// Writes every set of the record at `record`, which need not exist, as CSV.
///
/// # Errors
/// [`ExportError`]; what was written is then not whole.
pub fn write_csv(record: &Path, to: &mut impl io::Write) -> Result<(), ExportError> {
    let reader = RecordReader::open(record)?;
    Ok(csv_file::write(reader.as_ref(), &SetsOf::default(), to)?)
}

/// Writes every set of the record at `record`, which need not exist, as JSON.
///
/// # Errors
/// [`ExportError`]; what was written is then not whole.
pub fn write_json(record: &Path, to: &mut impl io::Write) -> Result<(), ExportError> {
    let reader = RecordReader::open(record)?;
    Ok(json_file::write(reader.as_ref(), &SetsOf::default(), to)?)
}
