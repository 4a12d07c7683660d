//! How large a zipped spreadsheet becomes when it is unpacked, found out before anybody unpacks it.
//!
//! Refuses: archives of too many or too large parts, whatever their own headers say, and the few
//! words of XML that stand for millions of cells.
use crate::book::xml::SAVE_AGAIN;
use crate::fault::Wrong;
use crate::words::{Words, words};
use quick_xml::Reader;
use quick_xml::events::{BytesStart, Event};
use std::io::{Cursor, Read as _};
use text::keys::checked as k;
use zip::ZipArchive;

/// Most parts of an archive.
const PARTS_MAX: usize = 1_000;
/// Most bytes of all parts together, unpacked: 48 MiB.
const UNPACKED_MAX: u64 = 48 << 20;
/// Most cells of all tables together, empty ones between others counted in.
const CELLS_MAX: u64 = 2_000_000;
/// Most bytes of what stands in them: 48 MiB.
const CONTENT_MAX: u64 = 48 << 20;
/// Depth of XML at most.
const DEPTH_MAX: usize = 200;

/// What an archive holds.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Book {
    /// Office Open XML, ECMA-376.
    Xlsx,
    /// OpenDocument, ISO/IEC 26300.
    Ods,
}

/// Unpacks every part into nothing, within limits, and tells what the archive holds.
pub(crate) fn measure(bytes: &[u8]) -> Result<Book, Wrong> {
    let broken = || Wrong::plain(words!(k::A_BROKEN_ZIP_ARCHIVE), SAVE_AGAIN);
    let mut archive = ZipArchive::new(Cursor::new(bytes)).map_err(|_| broken())?;
    if archive.len() > PARTS_MAX {
        let read = words!(k::AN_ARCHIVE_OF_PARTS_MORE, archive.len(), PARTS_MAX);
        return Err(Wrong::plain(read, SAVE_AGAIN));
    }
    let mut left = UNPACKED_MAX;
    let (mut mime, mut content) = (Vec::new(), Vec::new());
    let mut has = [false; 4];
    for at in 0..archive.len() {
        let part = archive.by_index(at).map_err(|_| {
            let right = words!(k::SAVE_IT_WITHOUT_A_PASSWORD);
            Wrong::plain(words!(k::AN_ARCHIVE_WITH_A_PART), right)
        })?;
        let name = part.name().to_owned();
        let mut part = part.take(left + 1);
        let unpacked = match name.as_str() {
            "mimetype" => part.read_to_end(&mut mime).map(|read| read as u64),
            "content.xml" => part.read_to_end(&mut content).map(|read| read as u64),
            _ => std::io::copy(&mut part, &mut std::io::sink()),
        };
        left = left
            .checked_sub(unpacked.map_err(|_| broken())?)
            .ok_or_else(|| {
                let read = words!(k::AN_ARCHIVE_OF_MORE_THAN, UNPACKED_MAX);
                Wrong::plain(read, words!(k::DELETE_WHAT_IS_NOT_PLAN))
            })?;
        let fronts = ["xl/", "xl/workbook.bin", "word/", "ppt/"];
        for (known, front) in has.iter_mut().zip(fronts) {
            *known |= name.starts_with(front);
        }
    }
    let other = |kind: Words| Err(Wrong::plain(kind, words!(k::SAVE_IT_AS_XLSX_ODS)));
    if mime.starts_with(b"application/vnd.oasis.opendocument.spreadsheet") {
        repeats(&content)?;
        return Ok(Book::Ods);
    }
    match has {
        [_, true, ..] => other(words!(k::A_BINARY_WORKBOOK_XLSB)),
        [true, ..] => Ok(Book::Xlsx),
        [_, _, true, _] | [_, _, _, true] => other(words!(k::A_TEXT_OR_SLIDES_NOT)),
        _ if !mime.is_empty() => other(words!(k::AN_OPENDOCUMENT_FILE_THAT_IS)),
        _ => other(words!(k::A_ZIP_ARCHIVE_NOT_A)),
    }
}

/// One table under measuring.
#[derive(Debug, Default)]
struct Table {
    /// Rows so far, repeated ones counted, and those down to the last that holds something.
    rows: u64,
    used_rows: u64,
    widest: u64,
    row_repeats: u64,
    /// Cells of this row, and those up to the last that holds something.
    cells: u64,
    used_cells: u64,
    cell_repeats: u64,
    in_cell: bool,
}

/// Walks an OpenDocument content and adds up what its repeats stand for.
fn repeats(content: &[u8]) -> Result<(), Wrong> {
    let mut reader = Reader::from_reader(content);
    let (mut tables, mut table) = (Vec::new(), Table::default());
    let (mut done, mut bytes, mut depth) = (0_u64, 0_u64, 0_usize);
    let broken = || Wrong::plain(words!(k::A_SPREADSHEET_WHOSE_XML_IS), SAVE_AGAIN);
    loop {
        let event = reader.read_event().map_err(|_| broken())?;
        match &event {
            Event::Eof => return Ok(()),
            Event::Start(start) => {
                depth += 1;
                if depth > DEPTH_MAX {
                    return Err(broken());
                }
                match start.name().as_ref() {
                    b"table:table" => tables.push(std::mem::take(&mut table)),
                    b"table:table-row" => table.begin_row(start),
                    b"table:table-cell" | b"table:covered-table-cell" => {
                        table.cell(start);
                        table.in_cell = true;
                    }
                    _ => {}
                }
            }
            Event::Empty(start) => match start.name().as_ref() {
                b"table:table-row" => {
                    table.begin_row(start);
                    table.end_row();
                }
                b"table:table-cell" | b"table:covered-table-cell" => table.cell(start),
                _ => {}
            },
            Event::End(end) => {
                depth = depth.saturating_sub(1);
                match end.name().as_ref() {
                    b"table:table-cell" | b"table:covered-table-cell" => table.in_cell = false,
                    b"table:table-row" => table.end_row(),
                    b"table:table" => {
                        done = done.saturating_add(table.area());
                        table = tables.pop().unwrap_or_default();
                    }
                    _ => {}
                }
            }
            Event::Text(_)
            | Event::CData(_)
            | Event::Comment(_)
            | Event::Decl(_)
            | Event::PI(_)
            | Event::DocType(_)
            | Event::GeneralRef(_) => {}
        }
        if table.in_cell {
            let times = table
                .row_repeats
                .max(1)
                .saturating_mul(table.cell_repeats.max(1));
            bytes = bytes.saturating_add((event.len() as u64).saturating_mul(times));
        }
        let cells = done.saturating_add(table.area());
        if cells > CELLS_MAX || bytes > CONTENT_MAX {
            let read = words!(k::A_TABLE_THAT_STANDS_FOR, CELLS_MAX, CONTENT_MAX);
            let right = words!(k::DELETE_WHAT_STANDS_FAR_BELOW);
            return Err(Wrong::plain(read, right));
        }
    }
}

impl Table {
    fn begin_row(&mut self, start: &BytesStart<'_>) {
        self.row_repeats = number(start, b"table:number-rows-repeated");
        (self.cells, self.used_cells) = (0, 0);
    }

    fn cell(&mut self, start: &BytesStart<'_>) {
        self.cell_repeats = number(start, b"table:number-columns-repeated");
        self.cells = self.cells.saturating_add(self.cell_repeats);
        let holds = |key: &[u8]| {
            start
                .try_get_attribute(key)
                .is_ok_and(|found| found.is_some())
        };
        if holds(b"office:value-type") || holds(b"table:formula") || holds(b"calcext:value-type") {
            self.used_cells = self.cells;
        }
    }

    fn end_row(&mut self) {
        self.rows = self.rows.saturating_add(self.row_repeats.max(1));
        if self.used_cells > 0 {
            self.used_rows = self.rows;
            self.widest = self.widest.max(self.used_cells);
        }
        (self.cells, self.used_cells, self.row_repeats) = (0, 0, 0);
    }

    /// Cells of the smallest rectangle that holds all, a row under way counted in.
    fn area(&self) -> u64 {
        let rows = if self.used_cells > 0 {
            self.rows.saturating_add(self.row_repeats.max(1))
        } else {
            self.used_rows
        };
        rows.saturating_mul(self.widest.max(self.used_cells))
    }
}

/// A count of an attribute; 1 without it, and as large as can be when it is none.
fn number(start: &BytesStart<'_>, key: &[u8]) -> u64 {
    match start.try_get_attribute(key) {
        Ok(None) => 1,
        Ok(Some(found)) => std::str::from_utf8(&found.value)
            .ok()
            .and_then(|text| text.parse().ok())
            .unwrap_or(u64::MAX),
        Err(_) => u64::MAX,
    }
}
