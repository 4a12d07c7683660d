//! The workbooks, written as text: a line a row, a bar between cells.
use crate::grid::{Book, Sheet};

/// All workbooks of a file beside this one.
pub(crate) fn all(file: &str) -> Vec<Book> {
    let path = format!("{}/tests/coaches/{file}", env!("CARGO_MANIFEST_DIR"));
    let text = std::fs::read_to_string(path).expect("the file is in the repository");
    let mut books: Vec<Book> = Vec::new();
    let mut meant = false;
    for line in text.lines() {
        if let Some(title) = line.strip_prefix("## ") {
            books.push(Book::of(title));
            meant = false;
            continue;
        }
        let Some(book) = books.last_mut() else {
            continue;
        };
        if meant {
            if !line.is_empty() {
                book.meant.push_str(line);
                book.meant.push('\n');
            }
        } else if line == "=>" {
            meant = true;
        } else if let Some(day) = line.strip_prefix("monday ") {
            book.monday = Some(day.parse().expect("a day"));
        } else if let Some(name) = line.strip_prefix("sheet ") {
            book.sheets.push(Sheet::of(name));
        } else if let Some(only) = line.strip_prefix("only ") {
            book.only = Some(only.to_owned());
        } else if let Some(column) = line.strip_prefix("hide ") {
            book.sheet()
                .hidden_columns
                .push(column.parse().expect("a number"));
        } else if line != "." || book.sheets.is_empty() {
            if !line.is_empty() {
                book.sheet().rows.push(line.to_owned());
            }
        } else {
            book.sheet().rows.push(String::new());
        }
    }
    books
}
