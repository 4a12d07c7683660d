//! Formulas that a program wrote and no spreadsheet reckoned.
use crate::build::{archive, ods_of, take};
use rust_xlsxwriter::{ExcelDateTime, Format, Formula, Workbook};
use std::io::{Cursor, Read as _};
use zip::ZipArchive;

/// A plan whose second day is a formula over the first, with its result or without.
fn xlsx(result: Option<&str>) -> Vec<u8> {
    let mut book = Workbook::new();
    let day = Format::new().set_num_format("yyyy-mm-dd");
    let sheet = book.add_worksheet();
    let header = ["date", "lifter", "lift", "sets", "reps", "load"];
    for (at, name) in (0_u16..).zip(header) {
        sheet.write_string(0, at, name).expect("a cell");
    }
    let first = ExcelDateTime::from_ymd(2026, 12, 1).expect("a day");
    sheet
        .write_datetime_with_format(1, 0, &first, &day)
        .expect("a cell");
    let next = Formula::new("=A2+2").set_result(result.unwrap_or("0"));
    sheet
        .write_formula_with_format(2, 0, next, &day)
        .expect("a cell");
    for (row, lift) in [(1_u32, "rack pull"), (2, "barbell shrug")] {
        for (at, text) in (1_u16..).zip(["Hamza", lift, "1", "5", "180 kg"]) {
            sheet.write_string(row, at, text).expect("a cell");
        }
    }
    let bytes = book.save_to_buffer().expect("a workbook");
    match result {
        Some(_) => bytes,
        None => unreckoned(&bytes),
    }
}

/// The same workbook with the results of its formulas taken out, as libraries write them.
fn unreckoned(bytes: &[u8]) -> Vec<u8> {
    let mut zip = ZipArchive::new(Cursor::new(bytes)).expect("an archive");
    let mut parts: Vec<(String, Vec<u8>)> = Vec::new();
    for at in 0..zip.len() {
        let mut part = zip.by_index(at).expect("a part");
        let mut text = Vec::new();
        part.read_to_end(&mut text).expect("memory does not fail");
        if part.name().ends_with("sheet1.xml") {
            let sheet = String::from_utf8(text).expect("XML");
            assert!(sheet.contains("</f><v>0</v>"), "{sheet}");
            text = sheet.replace("</f><v>0</v>", "</f><v/>").into_bytes();
        }
        parts.push((part.name().to_owned(), text));
    }
    let parts: Vec<(&str, &[u8])> = parts
        .iter()
        .map(|(name, bytes)| (name.as_str(), bytes.as_slice()))
        .collect();
    archive(&parts)
}

fn ods(result: &str) -> Vec<u8> {
    let text = |text: &str| {
        format!(
            "<table:table-cell office:value-type=\"string\"><text:p>{text}</text:p></table:table-cell>"
        )
    };
    let row = |day: String, lift: &str| {
        let rest: String = ["Hamza", lift, "1", "5", "180 kg"].map(text).concat();
        format!("<table:table-row>{day}{rest}</table:table-row>")
    };
    let header: String = ["date", "lifter", "lift", "sets", "reps", "load"]
        .map(text)
        .concat();
    let next = format!("<table:table-cell table:formula=\"of:=[.A2]+2\" {result}/>");
    let body = format!(
        "<table:table table:name=\"plan\"><table:table-row>{header}</table:table-row>{}{}</table:table>",
        row(text("2026-12-01"), "rack pull"),
        row(next, "barbell shrug")
    );
    ods_of(&body)
}

#[test]
fn a_day_that_nobody_reckoned_is_asked_for() {
    let is_told = |name: &str, bytes: &[u8]| {
        let faults = take(name, bytes).expect_err("asked");
        let told = faults[0].to_string();
        assert!(
            told.contains("row 3, column A: read a formula without its result"),
            "{told}"
        );
    };
    is_told("week.xlsx", &xlsx(None));
    is_told("week.ods", &ods(""));
}

#[test]
fn a_day_that_was_reckoned_is_taken() {
    let dated = "office:value-type=\"date\" office:date-value=\"2026-12-03\"";
    // 46359 is 3 December 2026 in days since 1900, as the spreadsheets count.
    for (name, bytes) in [("week.xlsx", xlsx(Some("46359"))), ("week.ods", ods(dated))] {
        let rows = take(name, &bytes).expect("taken");
        assert_eq!(rows[1].date.to_string(), "2026-12-03", "{name}");
    }
}

/// What a formula makes of nothing is nothing, as everywhere in the spreadsheet.
#[test]
fn a_formula_that_gives_no_text_is_an_empty_cell() {
    let faults = take("week.xlsx", &xlsx(Some(""))).map(|rows| rows.len());
    assert!(
        !format!("{faults:?}").contains("without its result"),
        "{faults:?}"
    );
}
