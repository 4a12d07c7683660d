//! A blank plan for a coach to write in: its header, examples from the gym, and what each column
//! means.
//!
//! Refuses: examples that the checker would not take.
use crate::fields::{COLUMNS, Need};
use crate::plan_text::quoted;
use chrono::{Datelike as _, Days, NaiveDate};
use domain::{Gym, MassUnit};
use rust_xlsxwriter::{
    DataValidation, ExcelDateTime, Format, FormatAlign, Workbook, Worksheet, XlsxError,
};

/// Rows below the examples that offer the gym's names.
const OFFERED_ROWS: u32 = 500;
/// Widths of the columns, in letters.
const WIDTHS: [f64; COLUMNS.len()] = [13.0, 16.0, 22.0, 7.0, 7.0, 12.0, 12.0, 10.0, 44.0];

/// One example row; the day is written as the form needs it.
struct Example {
    day: NaiveDate,
    /// Lifter, lift, sets, reps, load, ladder, rest, note.
    cells: [String; 8],
}

/// Up to three examples with names of the gym, on days from `today` on.
fn examples(gym: &Gym, today: NaiveDate) -> Vec<Example> {
    let lift = |at: usize| {
        let known = |wanted: &&&str| gym.lifts.iter().any(|lift| lift.name == **wanted);
        let usual = ["rack pull", "halting deadlift", "barbell shrug"];
        usual
            .iter()
            .cycle()
            .skip(at)
            .take(usual.len())
            .find(known)
            .map(|name| (*name).to_owned())
            .or_else(|| gym.lifts.first().map(|lift| lift.name.clone()))
    };
    let people = gym.lifters.iter().take(3).enumerate();
    people
        .filter_map(|(at, lifter)| {
            let load = match lifter.unit {
                MassUnit::Kg => "100 kg",
                MassUnit::Lb => "225 lb",
            };
            let (ladder, rest) = match at {
                0 => (lifter.ladder.clone(), "3 min".to_owned()),
                _ => (String::new(), String::new()),
            };
            let cells = [
                lifter.name.clone(),
                lift(at)?,
                (at + 1).to_string(),
                "5".to_owned(),
                load.to_owned(),
                ladder,
                rest,
                "an example: write your own over it".to_owned(),
            ];
            let day = today
                .checked_add_days(Days::new(at as u64))
                .unwrap_or(today);
            Some(Example { day, cells })
        })
        .collect()
}

/// A blank plan as CSV in UTF-8 with a byte-order mark, which spreadsheets need.
#[must_use]
pub fn blank_csv(gym: &Gym, today: NaiveDate) -> String {
    let keys: Vec<_> = COLUMNS.iter().map(|column| column.field.key).collect();
    let mut text = format!("\u{feff}{}\r\n", keys.join(","));
    for example in examples(gym, today) {
        let cells = example.cells.iter().map(|cell| quoted(cell));
        let cells: Vec<_> = cells.collect();
        text.push_str(&format!("{},{}\r\n", example.day, cells.join(",")));
    }
    text
}

/// A blank plan as XLSX: a sheet to write in, which offers the gym's lifters and lifts, and a
/// sheet that says what each column means.
///
/// # Errors
/// A sentence with the library's words, when it cannot write one.
pub fn blank_xlsx(gym: &Gym, today: NaiveDate) -> Result<Vec<u8>, String> {
    let mut book = Workbook::new();
    plan_sheet(book.add_worksheet(), gym, today)
        .and_then(|()| words_sheet(book.add_worksheet()))
        .and_then(|()| book.save_to_buffer())
        .map_err(|error| format!("the blank plan cannot be written ({error})"))
}

fn plan_sheet(sheet: &mut Worksheet, gym: &Gym, today: NaiveDate) -> Result<(), XlsxError> {
    let head = Format::new().set_bold();
    let day = Format::new()
        .set_num_format("yyyy-mm-dd")
        .set_align(FormatAlign::Left);
    sheet.set_name("plan")?.set_freeze_panes(1, 0)?;
    for ((column, width), at) in COLUMNS.iter().zip(WIDTHS).zip(0_u16..) {
        sheet.write_string_with_format(0, at, column.field.key, &head)?;
        sheet.set_column_width(at, width)?;
    }
    for (rows, example) in (1..).zip(examples(gym, today)) {
        let month = u8::try_from(example.day.month()).unwrap_or(1);
        let of_month = u8::try_from(example.day.day()).unwrap_or(1);
        let year = u16::try_from(example.day.year()).unwrap_or(2_000);
        let date = ExcelDateTime::from_ymd(year, month, of_month)?;
        sheet.write_datetime_with_format(rows, 0, &date, &day)?;
        for (cell, at) in example.cells.iter().zip(1_u16..) {
            match cell.parse::<u32>() {
                Ok(number) => sheet.write_number(rows, at, number)?,
                Err(_) => sheet.write_string(rows, at, cell)?,
            };
        }
    }
    sheet.set_column_format(0, &day)?;
    let lifters: Vec<&str> = gym.lifters.iter().map(|l| l.name.as_str()).collect();
    let lifts: Vec<&str> = gym.lifts.iter().map(|l| l.name.as_str()).collect();
    for (names, at) in [(lifters, 1), (lifts, 2)] {
        // A list longer than 255 letters cannot be offered; the coach writes the names.
        if let Ok(offer) = DataValidation::new().allow_list_strings(&names)
            && !names.is_empty()
        {
            sheet.add_data_validation(1, at, OFFERED_ROWS, at, &offer)?;
        }
    }
    Ok(())
}

fn words_sheet(sheet: &mut Worksheet) -> Result<(), XlsxError> {
    let wrap = Format::new().set_text_wrap().set_align(FormatAlign::Top);
    sheet.set_name("what each column means")?;
    for (at, width) in [(0, 10.0), (1, 60.0), (2, 40.0), (3, 26.0)] {
        sheet.set_column_width(at, width)?;
    }
    for (column, row) in COLUMNS.iter().zip(0_u32..) {
        let need = match column.field.need {
            Need::Always => "needed".to_owned(),
            Need::Else(otherwise) => format!("when empty: {otherwise}"),
        };
        let example = format!("a cell holds {}", column.field.example);
        let cells = [column.field.key, column.field.means, &example, &need];
        for (cell, at) in cells.iter().zip(0_u16..) {
            sheet.write_string_with_format(row, at, *cell, &wrap)?;
        }
    }
    Ok(())
}
