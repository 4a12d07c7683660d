//! XLSX and ODS to sheets of rows, through calamine.
//!
//! Refuses: running anything (formulas give what the spreadsheet last reckoned), archives that
//! unpack to too much, and cells without end.
use crate::bounds::{self, Book};
use crate::cells::{CELLS_MAX, CellKind, SheetRow};
use crate::fault::Wrong;
use crate::sheets::{KEPT_MAX, Sheet};
use crate::words::words;
use calamine::{Data, DataRef, ExcelDateTime, Ods, Reader as _, SheetType, SheetVisible, Xlsx};
use std::borrow::Cow;
use std::collections::BTreeMap;
use std::io::Cursor;
use std::panic::{AssertUnwindSafe, catch_unwind};

/// Most sheets of a workbook.
const SHEETS_MAX: usize = 50;
/// Most bytes of text that are kept of a workbook: 16 MiB.
const TEXT_MAX: usize = 16 << 20;

/// Reads all sheets of a workbook.
pub(crate) fn read(bytes: &[u8]) -> Result<Vec<Sheet<'static>>, Wrong> {
    let book = bounds::measure(bytes)?;
    let opened = catch_unwind(AssertUnwindSafe(|| match book {
        Book::Xlsx => xlsx(bytes),
        Book::Ods => ods(bytes),
    }));
    opened.unwrap_or_else(|_| Err(broken("it cannot be followed")))
}

fn broken(why: impl std::fmt::Display) -> Wrong {
    let why: String = why.to_string().chars().take(120).collect();
    let why: String = why
        .chars()
        .map(|c| if c.is_control() { ' ' } else { c })
        .collect();
    Wrong::plain(
        words!("a broken spreadsheet ({0})", why),
        words!("open it in the spreadsheet and save it again as XLSX or ODS"),
    )
}

/// A sheet under reading: cells by row, from 0.
#[derive(Debug, Default)]
struct Grid {
    rows: BTreeMap<usize, Vec<(usize, String, CellKind)>>,
    full: bool,
}

/// How much text may still be kept of the workbook.
struct Left(usize);

impl Grid {
    /// Puts a cell in its place; those beyond the rows that are kept are passed over.
    fn put(
        &mut self,
        at: (usize, usize),
        (text, kind): (String, CellKind),
        left: &mut Left,
    ) -> Result<(), Wrong> {
        if text.trim().is_empty() {
            return Ok(());
        }
        left.0 = left.0.checked_sub(text.len()).ok_or_else(|| {
            let read = words!("a workbook with more than {0} bytes of text", TEXT_MAX);
            Wrong::plain(read, words!("delete what is not plan"))
        })?;
        let new = !self.rows.contains_key(&at.0);
        self.full |= new && self.rows.len() >= KEPT_MAX;
        if !self.full {
            self.rows.entry(at.0).or_default().push((at.1, text, kind));
        }
        Ok(())
    }

    fn sheet(self, name: String, hidden: bool) -> Sheet<'static> {
        let rows = self.rows.into_iter().map(|(at, cells)| row(at + 1, cells));
        Sheet {
            name: Some(name),
            separator: None,
            hidden,
            rows: rows.collect(),
        }
    }
}

fn row(number: usize, cells: Vec<(usize, String, CellKind)>) -> SheetRow<'static> {
    let widest = cells.iter().map(|(at, ..)| at + 1).max().unwrap_or(0);
    let kept = widest.min(CELLS_MAX);
    let mut row = SheetRow {
        number,
        cells: vec![Cow::Borrowed(""); kept],
        kinds: vec![CellKind::Text; kept],
        broken: None,
    };
    for (at, text, kind) in cells {
        if let (Some(cell), Some(is)) = (row.cells.get_mut(at), row.kinds.get_mut(at)) {
            *cell = Cow::Owned(text);
            *is = kind;
        }
    }
    if widest > CELLS_MAX {
        let read = words!(
            "{0} cells in a row, more than the most, {1}",
            widest,
            CELLS_MAX
        );
        let wrong = Wrong::plain(read, words!("delete what stands beyond the plan"));
        row.broken = Some((CELLS_MAX, wrong));
    }
    row
}

fn count_sheets(count: usize) -> Result<(), Wrong> {
    if count <= SHEETS_MAX {
        return Ok(());
    }
    let read = words!(
        "a workbook of {0} sheets, more than the most, {1}",
        count,
        SHEETS_MAX
    );
    Err(Wrong::plain(read, words!("split the plan")))
}

fn xlsx(bytes: &[u8]) -> Result<Vec<Sheet<'static>>, Wrong> {
    let mut book: Xlsx<_> = Xlsx::new(Cursor::new(bytes)).map_err(broken)?;
    let tables: Vec<_> = book.sheets_metadata().to_vec();
    count_sheets(tables.len())?;
    let mut left = Left(TEXT_MAX);
    let mut sheets = Vec::new();
    for table in tables.iter().filter(|t| t.typ == SheetType::WorkSheet) {
        let mut grid = Grid::default();
        let mut cells = book.worksheet_cells_reader(&table.name).map_err(broken)?;
        while let Some(cell) = cells.next_cell().map_err(broken)? {
            let (row, column) = cell.get_position();
            let at = (row as usize, column as usize);
            if let Some(value) = borrowed(cell.get_value()) {
                grid.put(at, value, &mut left)?;
            }
            if grid.full {
                break;
            }
        }
        sheets.push(grid.sheet(table.name.clone(), table.visible != SheetVisible::Visible));
    }
    Ok(sheets)
}

fn ods(bytes: &[u8]) -> Result<Vec<Sheet<'static>>, Wrong> {
    let mut book: Ods<_> = Ods::new(Cursor::new(bytes)).map_err(broken)?;
    let tables: Vec<_> = book.sheets_metadata().to_vec();
    count_sheets(tables.len())?;
    let mut left = Left(TEXT_MAX);
    let mut sheets = Vec::new();
    for table in &tables {
        let mut grid = Grid::default();
        let range = book.worksheet_range(&table.name).map_err(broken)?;
        let (top, side) = range.start().unwrap_or_default();
        for (row, column, value) in range.used_cells() {
            let at = (row + top as usize, column + side as usize);
            if let Some(value) = owned(value) {
                grid.put(at, value, &mut left)?;
            }
        }
        sheets.push(grid.sheet(table.name.clone(), table.visible != SheetVisible::Visible));
    }
    Ok(sheets)
}

type Value = Option<(String, CellKind)>;

fn borrowed(value: &DataRef<'_>) -> Value {
    match value {
        DataRef::SharedString(text) => plain((*text).to_owned()),
        DataRef::String(text) => plain(text.clone()),
        DataRef::Int(number) => Some((number.to_string(), CellKind::Number)),
        DataRef::Float(number) => Some((decimal(*number), CellKind::Number)),
        DataRef::Bool(value) => plain(truth(*value)),
        DataRef::DateTime(time) => moment(time),
        DataRef::DateTimeIso(text) => iso_day(text),
        DataRef::DurationIso(text) => iso_time(text),
        DataRef::Error(error) => plain(format!("the formula's error {error}")),
        DataRef::Empty => None,
    }
}

fn owned(value: &Data) -> Value {
    match value {
        Data::String(text) => plain(text.clone()),
        Data::Int(number) => Some((number.to_string(), CellKind::Number)),
        Data::Float(number) => Some((decimal(*number), CellKind::Number)),
        Data::Bool(value) => plain(truth(*value)),
        Data::DateTime(time) => moment(time),
        Data::DateTimeIso(text) => iso_day(text),
        Data::DurationIso(text) => iso_time(text),
        Data::Error(error) => plain(format!("the formula's error {error}")),
        Data::Empty => None,
    }
}

fn plain(text: String) -> Value {
    Some((text, CellKind::Text))
}

fn truth(value: bool) -> String {
    if value { "TRUE" } else { "FALSE" }.to_owned()
}

/// Nine decimals are finer than a spreadsheet shows; the binary fraction's tail beyond them is
/// its own.
fn decimal(number: f64) -> String {
    let text = format!("{number:.9}");
    let text = text.trim_end_matches('0').trim_end_matches('.');
    text.strip_prefix("-0")
        .filter(|rest| rest.is_empty())
        .map_or(text, |_| "0")
        .to_owned()
}

/// Days from 1900 on that are taken for hours: "45:00" is 1.875 of them, and no plan is that old.
const HOURS_MAX: f64 = 100.0;

/// A day, or a time of day as "h:mm:ss".
fn moment(time: &ExcelDateTime) -> Value {
    let days = time.as_f64();
    if time.is_duration() || (0.0..HOURS_MAX).contains(&days) {
        return clock((days * 86_400.0).round());
    }
    let (year, month, day, hour, minute, second, _) = time.to_ymd_hms_milli();
    let mut text = format!("{year:04}-{month:02}-{day:02}");
    if (hour, minute, second) != (0, 0, 0) {
        text.push_str(&format!(" {hour:02}:{minute:02}:{second:02}"));
    }
    plain(text)
}

/// Seconds as "h:mm:ss"; what is no time of some hours stays a number.
fn clock(seconds: f64) -> Value {
    if !(0.0..1e7).contains(&seconds) {
        return Some((decimal(seconds / 86_400.0), CellKind::Number));
    }
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "whole seconds from 0 to ten million"
    )]
    let whole = seconds as u32;
    let text = format!("{}:{:02}:{:02}", whole / 3_600, whole / 60 % 60, whole % 60);
    Some((text, CellKind::Time))
}

/// "2026-12-01" or "2026-12-01T00:00:00".
fn iso_day(text: &str) -> Value {
    let day = text.strip_suffix("T00:00:00").unwrap_or(text);
    plain(day.to_owned())
}

/// "PT03H00M00S", ISO 8601.
fn iso_time(text: &str) -> Value {
    let mut seconds = 0.0;
    let mut number = String::new();
    for c in text.trim_start_matches("PT").chars() {
        let scale = match c {
            'H' => 3_600.0,
            'M' => 60.0,
            'S' => 1.0,
            _ => {
                number.push(c);
                continue;
            }
        };
        let Ok(count) = number.replace(',', ".").parse::<f64>() else {
            return plain(text.to_owned());
        };
        seconds += count * scale;
        number.clear();
    }
    clock(seconds.round())
}
