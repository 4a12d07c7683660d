//! Cells against the csv crate, which reads RFC 4180 too.
use super::rows;
use proptest::prelude::*;

/// What the csv crate makes of a text: its records, those without anything in them left out.
fn measure(text: &str, separator: u8) -> Vec<Vec<String>> {
    let mut reader = csv::ReaderBuilder::new();
    reader
        .has_headers(false)
        .flexible(true)
        .delimiter(separator);
    let records = reader.from_reader(text.as_bytes()).into_records();
    let records = records.map(|record| record.expect("text is UTF-8"));
    let cells = records.map(|record| record.iter().map(str::to_owned).collect());
    cells
        .filter(|row: &Vec<String>| row.iter().any(|cell| !cell.trim().is_empty()))
        .collect()
}

fn ours(text: &str, separator: char) -> Vec<Vec<String>> {
    let cells = |row: super::SheetRow<'_>| row.cells.into_iter().map(Into::into).collect();
    rows(text, separator).map(cells).collect()
}

proptest! {
    /// Whatever the csv crate writes is read back as it was.
    #[test]
    fn as_the_csv_crate_writes(
        table in prop::collection::vec(prop::collection::vec("[a-z ,;\t\"\n\r]{0,6}", 2..6), 1..8),
        separator in prop::sample::select(vec![',', ';', '\t']),
        always in any::<bool>(),
    ) {
        let mut writer = csv::WriterBuilder::new();
        let style = if always { csv::QuoteStyle::Always } else { csv::QuoteStyle::Necessary };
        writer.flexible(true).delimiter(u8::try_from(separator).expect("ascii")).quote_style(style);
        let mut writer = writer.from_writer(Vec::new());
        for row in &table {
            writer.write_record(row).expect("memory does not fail");
        }
        let text = String::from_utf8(writer.into_inner().expect("memory")).expect("UTF-8");
        let full = |row: &&Vec<String>| row.iter().any(|cell| !cell.trim().is_empty());
        let wanted: Vec<_> = table.iter().filter(full).cloned().collect();
        prop_assert_eq!(ours(&text, separator), wanted);
        prop_assert!(rows(&text, separator).all(|row| row.broken.is_none()));
    }

    /// On any text that is not told to be broken both read the same.
    #[test]
    fn as_the_csv_crate_reads(text in "[ab,;\"\n\r ]{0,40}", separator in prop::sample::select(vec![',', ';'])) {
        prop_assume!(rows(&text, separator).all(|row| row.broken.is_none()));
        let byte = u8::try_from(separator).expect("ascii");
        // After a closing quote the csv crate keeps spaces that are dropped here.
        prop_assume!(!text.contains("\" "));
        prop_assert_eq!(ours(&text, separator), measure(&text, byte));
    }
}

#[test]
fn rows_are_numbered_as_a_spreadsheet_does() {
    let text = "a,b\n\n\"c\nd\",e\r\n,\r\rf,g";
    let numbers: Vec<_> = rows(text, ',').map(|row| row.number).collect();
    assert_eq!(numbers, [1, 3, 6]);
}
