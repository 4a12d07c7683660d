//! Builds spreadsheets cell by cell, and reads plans of the demo gym.
use domain::{Gym, Prescription};
use plan::{Fault, Source};
use rust_xlsxwriter::{ExcelDateTime, Format, Formula, Workbook};
use std::io::{Cursor, Write as _};
use zip::ZipWriter;
use zip::write::SimpleFileOptions;

/// A cell as a spreadsheet types it.
#[derive(Debug, Clone, PartialEq)]
pub(crate) enum Cell {
    None,
    Text(&'static str),
    Number(f64),
    Share(f64),
    /// Year, month, day.
    Day(u16, u8, u8),
    /// Hours, minutes, seconds.
    Time(u32, u32, u32),
    Truth(bool),
    /// A formula that ends in an error.
    Error,
}

pub(crate) const HEADER: [Cell; 9] = [
    Cell::Text("date"),
    Cell::Text("lifter"),
    Cell::Text("lift"),
    Cell::Text("sets"),
    Cell::Text("reps"),
    Cell::Text("load"),
    Cell::Text("ladder"),
    Cell::Text("rest"),
    Cell::Text("note"),
];

pub(crate) const ROW: [Cell; 9] = [
    Cell::Day(2026, 12, 1),
    Cell::Text("Tevita"),
    Cell::Text("rack pull"),
    Cell::Number(1.0),
    Cell::Number(5.0),
    Cell::Text("445 lb"),
    Cell::Text("5-3-2-1"),
    Cell::Text("3 min"),
    Cell::Text("go"),
];

pub(crate) type Table = (&'static str, Vec<Vec<Cell>>);

pub(crate) fn gym() -> Gym {
    let demo = |name: &str| {
        let path = format!("{}/../../demo-data/{name}", env!("CARGO_MANIFEST_DIR"));
        std::fs::read(path).expect("the demo file is in the repository")
    };
    let (gym, lifters) = (demo("gym.toml"), demo("lifters.toml"));
    let source = |name, text| Source { name, text };
    plan::gym(source("gym.toml", &gym), source("lifters.toml", &lifters)).expect("a good gym")
}

pub(crate) fn take(name: &str, bytes: &[u8]) -> Result<Vec<Prescription>, Vec<Fault>> {
    let source = Source { name, text: bytes };
    plan::coach_plan(source, &gym())
}

/// What is told of a bad plan, a line each; what is taken all the same is shown as such.
pub(crate) fn told(name: &str, bytes: &[u8]) -> String {
    let faults = match take(name, bytes) {
        Ok(rows) => {
            let source = Source { name, text: bytes };
            let odd = plan::check(source, Some(&gym()));
            let odd = odd
                .iter()
                .filter(|fault| !fault.stops())
                .map(|fault| format!("  {fault}\n"));
            let rows = rows.iter().map(|row| format!("  taken: {row:?}\n"));
            return rows.chain(odd).collect();
        }
        Err(faults) => faults,
    };
    let lines = faults.iter().map(|fault| format!("  {fault}\n"));
    lines.collect()
}

pub(crate) fn xlsx(tables: &[Table]) -> Vec<u8> {
    let mut book = Workbook::new();
    let day = Format::new().set_num_format("dd.mm.yyyy");
    let time = Format::new().set_num_format("h:mm");
    let share = Format::new().set_num_format("0%");
    for (name, rows) in tables {
        let sheet = book.add_worksheet();
        sheet.set_name(*name).expect("a name");
        for (row, cells) in (0_u32..).zip(rows) {
            for (column, cell) in (0_u16..).zip(cells) {
                let at = (row, column);
                match cell {
                    Cell::None => Ok(&mut *sheet),
                    Cell::Text(text) => sheet.write_string(at.0, at.1, *text),
                    Cell::Number(number) => sheet.write_number(at.0, at.1, *number),
                    Cell::Share(number) => {
                        sheet.write_number_with_format(at.0, at.1, *number, &share)
                    }
                    Cell::Day(y, m, d) => {
                        let value = ExcelDateTime::from_ymd(*y, *m, *d).expect("a day");
                        sheet.write_datetime_with_format(at.0, at.1, &value, &day)
                    }
                    Cell::Time(h, m, s) => {
                        let days = f64::from(h * 3_600 + m * 60 + s) / 86_400.0;
                        sheet.write_number_with_format(at.0, at.1, days, &time)
                    }
                    Cell::Truth(value) => sheet.write_boolean(at.0, at.1, *value),
                    Cell::Error => {
                        let formula = Formula::new("=1/0").set_result("#DIV/0!");
                        sheet.write_formula(at.0, at.1, formula)
                    }
                }
                .expect("a cell");
            }
        }
    }
    book.save_to_buffer().expect("a workbook")
}

fn ods_cell(cell: &Cell) -> String {
    let typed = |kind: &str, rest: String| {
        format!("<table:table-cell office:value-type=\"{kind}\" {rest}/>")
    };
    match cell {
        Cell::None => "<table:table-cell/>".into(),
        Cell::Text(text) => format!(
            "<table:table-cell office:value-type=\"string\"><text:p>{text}</text:p></table:table-cell>"
        ),
        Cell::Number(number) => typed("float", format!("office:value=\"{number}\"")),
        Cell::Share(number) => typed("percentage", format!("office:value=\"{number}\"")),
        Cell::Day(y, m, d) => typed("date", format!("office:date-value=\"{y}-{m:02}-{d:02}\"")),
        Cell::Time(h, m, s) => typed(
            "time",
            format!("office:time-value=\"PT{h:02}H{m:02}M{s:02}S\""),
        ),
        Cell::Truth(value) => typed("boolean", format!("office:boolean-value=\"{value}\"")),
        Cell::Error => typed("string", "calcext:value-type=\"error\"".into()),
    }
}

/// The tables of an OpenDocument content.
pub(crate) fn ods_tables(tables: &[Table]) -> String {
    let row = |cells: &Vec<Cell>| {
        let cells: String = cells.iter().map(ods_cell).collect();
        format!("<table:table-row>{cells}</table:table-row>")
    };
    let table = |(name, rows): &Table| {
        let rows: String = rows.iter().map(row).collect();
        format!("<table:table table:name=\"{name}\">{rows}</table:table>")
    };
    tables.iter().map(table).collect()
}

pub(crate) fn ods(tables: &[Table]) -> Vec<u8> {
    ods_of(&ods_tables(tables))
}

/// An OpenDocument spreadsheet around what stands in its body.
pub(crate) fn ods_of(body: &str) -> Vec<u8> {
    let content = format!(
        "<?xml version=\"1.0\" encoding=\"UTF-8\"?><office:document-content \
         xmlns:office=\"urn:oasis:names:tc:opendocument:xmlns:office:1.0\" \
         xmlns:text=\"urn:oasis:names:tc:opendocument:xmlns:text:1.0\" \
         xmlns:calcext=\"urn:org:documentfoundation:names:experimental:calc:xmlns:calcext:1.0\" \
         xmlns:table=\"urn:oasis:names:tc:opendocument:xmlns:table:1.0\"><office:body>\
         <office:spreadsheet>{body}</office:spreadsheet></office:body></office:document-content>"
    );
    archive(&[
        (
            "mimetype",
            b"application/vnd.oasis.opendocument.spreadsheet",
        ),
        ("META-INF/manifest.xml", b"<manifest:manifest/>"),
        ("content.xml", content.as_bytes()),
    ])
}

pub(crate) fn archive(parts: &[(&str, &[u8])]) -> Vec<u8> {
    let mut zip = ZipWriter::new(Cursor::new(Vec::new()));
    let options = SimpleFileOptions::default().compression_method(zip::CompressionMethod::Deflated);
    for (name, bytes) in parts {
        zip.start_file(*name, options).expect("a part");
        zip.write_all(bytes).expect("memory does not fail");
    }
    zip.finish().expect("an archive").into_inner()
}

/// One good plan of `rows` in a sheet.
pub(crate) fn with(rows: Vec<Vec<Cell>>) -> Vec<Table> {
    let mut all = vec![HEADER.to_vec()];
    all.extend(rows);
    vec![("Week 1", all)]
}

/// The good row with some cells changed.
pub(crate) fn changed(cells: &[(usize, Cell)]) -> Vec<Cell> {
    let mut row = ROW.to_vec();
    for (at, cell) in cells {
        row[*at] = cell.clone();
    }
    row
}
