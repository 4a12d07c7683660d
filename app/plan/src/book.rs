//! XLSX and ODS to sheets of rows: what is shown, what is hidden, merged and struck through.
//!
//! Refuses: running anything (formulas give what the spreadsheet last reckoned), archives that
//! unpack to too much, and cells without end.
mod formats;
mod grid;
mod ods;
mod shared;
mod value;
mod xlsx;
pub(crate) mod xml;

use crate::bounds::{self, Book};
use crate::fault::Wrong;
use crate::sheets::Sheet;
use crate::words::words;
use std::io::{Cursor, Read as _};
use std::panic::{AssertUnwindSafe, catch_unwind};
use text::keys::checked as k;
use xml::broken;
use zip::ZipArchive;

/// Most sheets of a workbook.
const SHEETS_MAX: usize = 50;

/// A workbook's archive.
type Archive<'b> = ZipArchive<Cursor<&'b [u8]>>;

/// Reads all sheets of a workbook.
pub(crate) fn read(bytes: &[u8]) -> Result<Vec<Sheet<'static>>, Wrong> {
    // The libraries for archives and XML read what anybody hands in; should one of them stop on
    // its own, that is a fault of the file, and the kiosk goes on.
    let opened = catch_unwind(AssertUnwindSafe(|| {
        let book = bounds::measure(bytes)?;
        let mut archive = ZipArchive::new(Cursor::new(bytes)).map_err(broken)?;
        match book {
            Book::Xlsx => xlsx::read(&mut archive),
            Book::Ods => ods::read(&mut archive),
        }
    }));
    opened.unwrap_or_else(|_| Err(broken("it cannot be followed")))
}

/// The bytes of a part; the whole archive was measured before.
fn part(archive: &mut Archive<'_>, name: &str) -> Result<Option<Vec<u8>>, Wrong> {
    let Some(at) = archive.index_for_name(name) else {
        return Ok(None);
    };
    let mut bytes = Vec::new();
    let mut part = archive.by_index(at).map_err(broken)?;
    part.read_to_end(&mut bytes).map_err(broken)?;
    Ok(Some(bytes))
}

fn count_sheets(count: usize) -> Result<(), Wrong> {
    if count <= SHEETS_MAX {
        return Ok(());
    }
    let read = words!(k::A_WORKBOOK_OF_SHEETS_MORE, count, SHEETS_MAX);
    Err(Wrong::plain(read, words!(k::SPLIT_THE_PLAN)))
}
