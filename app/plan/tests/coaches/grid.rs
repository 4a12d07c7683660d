//! A workbook of a rude coach, and its files as three kinds of program write them.
//!
//! A row begins with "~" where it is hidden. A cell is text, or {d 2026-12-01} a day, {n 140} a
//! number, {% 0.8} a share, {t 3:00} a time; "--text--" is struck through, "<" belongs to the cell
//! on its left and "^" to the one above; "\n" breaks a line.
use chrono::NaiveDate;
use domain::Gym;
use plan::Source;
use rust_xlsxwriter::{Format, Workbook};
use std::io::{Cursor, Write as _};
use zip::ZipWriter;
use zip::write::SimpleFileOptions;

#[derive(Debug, Clone, Default)]
pub(crate) struct Book {
    pub(crate) title: String,
    pub(crate) sheets: Vec<Sheet>,
    pub(crate) monday: Option<NaiveDate>,
    /// The one kind of file that can say it: a comma list of endings.
    pub(crate) only: Option<String>,
    pub(crate) meant: String,
}

#[derive(Debug, Clone, Default)]
pub(crate) struct Sheet {
    pub(crate) name: String,
    pub(crate) rows: Vec<String>,
    pub(crate) hidden_columns: Vec<u16>,
}

/// A cell as a spreadsheet types it.
#[derive(Debug, Clone, PartialEq)]
enum Cell {
    None,
    Left,
    Above,
    Text(String),
    Struck(String),
    Day(NaiveDate),
    Number(f64),
    Share(f64),
    /// Minutes of a day.
    Time(u32),
}

/// The demo gym, with short names as a coach gives them.
pub(crate) fn gym() -> Gym {
    let demo = |name: &str| {
        let path = format!("{}/../../demo-data/{name}", env!("CARGO_MANIFEST_DIR"));
        std::fs::read_to_string(path).expect("the demo file is in the repository")
    };
    let lifts = "\n[[lift]]\nname = \"rack pull\"\nalso = [\"RP\"]\n\n[[lift]]\nname = \"deadlift\"\nalso = [\"DL\", \"Kreuzheben\"]\n\n[[lift]]\nname = \"halting deadlift\"\nalso = [\"halting\"]\n";
    let gym = demo("gym.toml") + lifts;
    let lifters =
        demo("lifters.toml").replace("name = \"Tevita\"", "name = \"Tevita\"\nalso = [\"Tev\"]");
    let source = |name, text: &'static str| Source {
        name,
        text: text.as_bytes(),
    };
    let (gym, lifters): (&'static str, &'static str) = (gym.leak(), lifters.leak());
    plan::gym(source("gym.toml", gym), source("lifters.toml", lifters)).expect("a good gym")
}

impl Sheet {
    pub(crate) fn of(name: &str) -> Self {
        Self {
            name: name.to_owned(),
            ..Self::default()
        }
    }

    fn cells(&self) -> Vec<(bool, Vec<Cell>)> {
        let row = |line: &String| {
            let hidden = line.starts_with('~');
            let line = line.trim_start_matches('~');
            (hidden, line.split('|').map(cell).collect())
        };
        self.rows.iter().map(row).collect()
    }
}

fn cell(text: &str) -> Cell {
    let text = text.trim().replace("\\n", "\n");
    let typed = text
        .strip_prefix('{')
        .and_then(|rest| rest.strip_suffix('}'));
    match typed.and_then(|typed| typed.split_once(' ')) {
        Some(("d", day)) => Cell::Day(day.parse().expect("a day")),
        Some(("n", number)) => Cell::Number(number.parse().expect("a number")),
        Some(("%", share)) => Cell::Share(share.parse().expect("a number")),
        Some(("t", time)) => {
            let (hours, minutes) = time.split_once(':').expect("a time");
            Cell::Time(
                hours.parse::<u32>().expect("hours") * 60
                    + minutes.parse::<u32>().expect("minutes"),
            )
        }
        _ => match text.as_str() {
            "" => Cell::None,
            "<" => Cell::Left,
            "^" => Cell::Above,
            text => match text
                .strip_prefix("--")
                .and_then(|rest| rest.strip_suffix("--"))
            {
                Some(struck) if !struck.is_empty() => Cell::Struck(struck.to_owned()),
                _ => Cell::Text(text.to_owned()),
            },
        },
    }
}

impl Book {
    pub(crate) fn of(title: &str) -> Self {
        Self {
            title: title.to_owned(),
            ..Self::default()
        }
    }

    pub(crate) fn sheet(&mut self) -> &mut Sheet {
        if self.sheets.is_empty() {
            self.sheets.push(Sheet::of("plan"));
        }
        self.sheets.last_mut().expect("one was put there")
    }

    /// The rows as they are shown beside what is told.
    pub(crate) fn shown(&self) -> String {
        let sheet = |sheet: &Sheet| format!("  [{}]\n  {}", sheet.name, sheet.rows.join("\n  "));
        self.sheets.iter().map(sheet).collect::<Vec<_>>().join("\n")
    }

    /// The files that can say it.
    pub(crate) fn files(&self) -> Vec<(&'static str, Vec<u8>)> {
        let may = |ending: &str| {
            self.only
                .as_deref()
                .is_none_or(|only| only.contains(ending))
        };
        let mut files = Vec::new();
        if may("xlsx") {
            files.push(("book.xlsx", self.xlsx()));
        }
        if may("ods") {
            files.push(("book.ods", self.ods()));
        }
        if may("csv") && self.is_plain() {
            let text = self.csv(';');
            files.push(("book.csv", text.clone().into_bytes()));
            files.push((
                "book.csv",
                format!("\u{feff}{}", self.csv(',')).into_bytes(),
            ));
            let wide = text.encode_utf16().flat_map(u16::to_le_bytes);
            files.push(("book.csv", [0xff, 0xfe].into_iter().chain(wide).collect()));
            files.push((
                "book.tsv",
                self.csv('\t').replace('\n', "\r\n").into_bytes(),
            ));
        }
        assert!(!files.is_empty(), "{} is in no file", self.title);
        files
    }

    /// Whether a text can say it: one sheet, nothing typed, hidden, merged or struck through.
    fn is_plain(&self) -> bool {
        let plain = |cell: &Cell| matches!(cell, Cell::None | Cell::Text(_));
        let [sheet] = self.sheets.as_slice() else {
            return false;
        };
        let cells = sheet.cells();
        sheet.name == "plan"
            && sheet.hidden_columns.is_empty()
            && cells
                .iter()
                .all(|(hidden, cells)| !hidden && cells.iter().all(plain))
    }

    fn csv(&self, separator: char) -> String {
        let quoted = |cell: &Cell| match cell {
            Cell::Text(text) if text.contains([separator, '"', '\n', ',']) => {
                format!("\"{}\"", text.replace('"', "\"\""))
            }
            Cell::Text(text) => text.clone(),
            _ => String::new(),
        };
        let row = |(_, cells): &(bool, Vec<Cell>)| {
            let cells: Vec<_> = cells.iter().map(quoted).collect();
            cells.join(&separator.to_string()) + "\n"
        };
        self.sheets[0].cells().iter().map(row).collect()
    }

    fn xlsx(&self) -> Vec<u8> {
        let mut book = Workbook::new();
        let day = Format::new().set_num_format("dd.mm.yyyy");
        let time = Format::new().set_num_format("h:mm");
        let share = Format::new().set_num_format("0%");
        let struck = Format::new().set_font_strikethrough();
        let plain = Format::new();
        for sheet in &self.sheets {
            let out = book.add_worksheet();
            out.set_name(&sheet.name).expect("a name");
            let rows = sheet.cells();
            for (at, span) in merged(&rows) {
                let (row, column) = (
                    u32::try_from(at.0).expect("few"),
                    u16::try_from(at.1).expect("few"),
                );
                let (down, along) = (
                    u32::try_from(span.0).expect("few"),
                    u16::try_from(span.1).expect("few"),
                );
                out.merge_range(row, column, row + down, column + along, "", &plain)
                    .expect("a range");
            }
            for (row, (hidden, cells)) in (0_u32..).zip(&rows) {
                if *hidden {
                    out.set_row_hidden(row).expect("a row");
                }
                for (column, cell) in (0_u16..).zip(cells) {
                    match cell {
                        Cell::None | Cell::Left | Cell::Above => continue,
                        Cell::Text(text) => out.write_string(row, column, text),
                        Cell::Struck(text) => {
                            out.write_string_with_format(row, column, text, &struck)
                        }
                        Cell::Number(number) => out.write_number(row, column, *number),
                        Cell::Share(number) => {
                            out.write_number_with_format(row, column, *number, &share)
                        }
                        Cell::Day(date) => {
                            out.write_date_with_format(row, column, xlsx_day(*date), &day)
                        }
                        Cell::Time(minutes) => out.write_number_with_format(
                            row,
                            column,
                            f64::from(*minutes) / 1_440.0,
                            &time,
                        ),
                    }
                    .expect("a cell");
                }
            }
            for column in &sheet.hidden_columns {
                out.set_column_hidden(*column).expect("a column");
            }
        }
        book.save_to_buffer().expect("a workbook")
    }

    fn ods(&self) -> Vec<u8> {
        let mut body = String::new();
        for sheet in &self.sheets {
            let rows = sheet.cells();
            let spans = merged(&rows);
            let width = rows.iter().map(|(_, cells)| cells.len()).max().unwrap_or(0);
            body += &format!("<table:table table:name=\"{}\">", escaped(&sheet.name));
            for column in 0..width {
                let hidden = sheet
                    .hidden_columns
                    .iter()
                    .any(|hidden| usize::from(*hidden) == column);
                body += if hidden {
                    "<table:table-column table:visibility=\"collapse\"/>"
                } else {
                    "<table:table-column/>"
                };
            }
            for (at, (hidden, cells)) in rows.iter().enumerate() {
                body += if *hidden {
                    "<table:table-row table:visibility=\"collapse\">"
                } else {
                    "<table:table-row>"
                };
                for (column, cell) in cells.iter().enumerate() {
                    let span = spans.iter().find(|(from, _)| *from == (at, column));
                    body += &ods_cell(cell, span.map(|(_, span)| *span));
                }
                body += "</table:table-row>";
            }
            body += "</table:table>";
        }
        let content = format!(
            "<?xml version=\"1.0\" encoding=\"UTF-8\"?><office:document-content \
             xmlns:office=\"urn:oasis:names:tc:opendocument:xmlns:office:1.0\" \
             xmlns:style=\"urn:oasis:names:tc:opendocument:xmlns:style:1.0\" \
             xmlns:text=\"urn:oasis:names:tc:opendocument:xmlns:text:1.0\" \
             xmlns:table=\"urn:oasis:names:tc:opendocument:xmlns:table:1.0\">\
             <office:automatic-styles><style:style style:name=\"ce1\" style:family=\"table-cell\">\
             <style:text-properties style:text-line-through-style=\"solid\"/></style:style></office:automatic-styles>\
             <office:body><office:spreadsheet>{body}</office:spreadsheet></office:body></office:document-content>"
        );
        archive(&[
            (
                "mimetype",
                b"application/vnd.oasis.opendocument.spreadsheet",
            ),
            ("content.xml", content.as_bytes()),
        ])
    }
}

fn xlsx_day(day: NaiveDate) -> rust_xlsxwriter::ExcelDateTime {
    use chrono::Datelike as _;
    let (month, of_month) = (
        u8::try_from(day.month()).expect("a month"),
        u8::try_from(day.day()).expect("a day"),
    );
    rust_xlsxwriter::ExcelDateTime::from_ymd(
        u16::try_from(day.year()).expect("a year"),
        month,
        of_month,
    )
    .expect("a day")
}

type Rows = [(bool, Vec<Cell>)];

/// Where merged ranges begin, and how far they reach down and to the right.
fn merged(rows: &Rows) -> Vec<((usize, usize), (usize, usize))> {
    let is = |row: usize, column: usize, wanted: &Cell| {
        rows.get(row).and_then(|(_, cells)| cells.get(column)) == Some(wanted)
    };
    let mut spans = Vec::new();
    for (row, (_, cells)) in rows.iter().enumerate() {
        for (column, cell) in cells.iter().enumerate() {
            if matches!(cell, Cell::None | Cell::Left | Cell::Above) {
                continue;
            }
            let down = (1..)
                .take_while(|n| is(row + n, column, &Cell::Above))
                .count();
            let along = (1..)
                .take_while(|n| is(row, column + n, &Cell::Left))
                .count();
            if down > 0 || along > 0 {
                spans.push(((row, column), (down, along)));
            }
        }
    }
    spans
}

fn escaped(text: &str) -> String {
    text.replace('&', "&amp;")
        .replace('<', "&lt;")
        .replace('"', "&quot;")
}

fn ods_cell(cell: &Cell, span: Option<(usize, usize)>) -> String {
    let span = span.map_or_else(String::new, |(down, along)| {
        format!(
            " table:number-rows-spanned=\"{}\" table:number-columns-spanned=\"{}\"",
            down + 1,
            along + 1
        )
    });
    let text = |text: &str, style: &str| {
        let lines: String = text
            .split('\n')
            .map(|line| format!("<text:p>{}</text:p>", escaped(line)))
            .collect();
        format!(
            "<table:table-cell{span}{style} office:value-type=\"string\">{lines}</table:table-cell>"
        )
    };
    let typed = |kind: &str, value: String| {
        format!("<table:table-cell{span} office:value-type=\"{kind}\" {value}/>")
    };
    match cell {
        Cell::None => "<table:table-cell/>".to_owned(),
        Cell::Left | Cell::Above => "<table:covered-table-cell/>".to_owned(),
        Cell::Text(words) => text(words, ""),
        Cell::Struck(words) => text(words, " table:style-name=\"ce1\""),
        Cell::Number(number) => typed("float", format!("office:value=\"{number}\"")),
        Cell::Share(number) => typed("percentage", format!("office:value=\"{number}\"")),
        Cell::Day(day) => typed("date", format!("office:date-value=\"{day}\"")),
        Cell::Time(minutes) => typed(
            "time",
            format!(
                "office:time-value=\"PT{:02}H{:02}M00S\"",
                minutes / 60,
                minutes % 60
            ),
        ),
    }
}

fn archive(parts: &[(&str, &[u8])]) -> Vec<u8> {
    let mut zip = ZipWriter::new(Cursor::new(Vec::new()));
    let options = SimpleFileOptions::default();
    for (name, bytes) in parts {
        zip.start_file(*name, options).expect("a part");
        zip.write_all(bytes).expect("memory does not fail");
    }
    zip.finish().expect("an archive").into_inner()
}
