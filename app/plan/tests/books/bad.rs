//! Bad plans, each with every word that is told about it.
use crate::build::{
    Cell, HEADER, ROW, Table, archive, changed, ods, ods_of, ods_tables, take, told, with, xlsx,
};
use std::fmt::Write as _;

fn tell(out: &mut String, count: &mut usize, what: &str, name: &str, bytes: &[u8]) {
    *count += 1;
    write!(out, "{what}\n{}\n", told(name, bytes)).expect("text grows");
}

/// One cell of a good row changed, in both kinds of workbook.
#[test]
fn bad_cells() {
    use Cell::{Day, Error, None, Number, Share, Text, Time, Truth};
    let cells = [
        (0, Day(1999, 12, 31)),
        (0, Day(2100, 1, 1)),
        (0, Number(46_357.0)),
        (0, Number(20_261_201.0)),
        (0, Text("1/2/2026")),
        (0, Text("31.11.2026")),
        (0, Text("1.12.26")),
        (0, Text("next Monday")),
        (0, Text("1 Brumaire 2026")),
        (0, Time(10, 30, 0)),
        (0, Truth(true)),
        (0, Error),
        (0, None),
        (1, Text("Tevitta")),
        (1, Number(7.0)),
        (1, None),
        (2, Text("rak pull")),
        (2, Text("bench press")),
        (2, Error),
        (3, Number(0.0)),
        (3, Number(2.5)),
        (3, Number(-1.0)),
        (3, Number(1e12)),
        (3, Text("3x5")),
        (3, Day(2026, 5, 3)),
        (4, Number(51.0)),
        (4, Truth(false)),
        (4, Text("five")),
        (5, Number(445.0)),
        (5, Number(1.6)),
        (5, Share(0.001)),
        (5, Number(0.0)),
        (5, Number(-180.0)),
        (5, Text("180 stone")),
        (5, Text("10 kg")),
        (5, Text("1.250,5 kg")),
        (5, Day(2026, 12, 1)),
        (5, Error),
        (6, Text("5 3 2 1 1 1 1")),
        (6, Number(5.0)),
        (7, Number(3.0)),
        (7, Time(0, 20, 0)),
        (7, Time(12, 0, 10)),
        (7, Time(45, 0, 0)),
        (7, Text("3:75")),
        (7, Day(2026, 12, 1)),
        (8, Text("go  \u{1f}  on")),
    ];
    let (mut out, mut count) = (String::new(), 0);
    for (at, cell) in &cells {
        let tables = with(vec![changed(&[(*at, cell.clone())])]);
        let what = format!("{cell:?} in column {}", at + 1);
        // What rust_xlsxwriter cannot write stands in one kind alone.
        if !matches!(cell, Text(text) if text.contains('\u{1f}')) {
            tell(&mut out, &mut count, &what, "week.xlsx", &xlsx(&tables));
        }
        if !matches!(cell, Error) {
            tell(&mut out, &mut count, &what, "week.ods", &ods(&tables));
        }
    }
    assert!(count >= 90, "{count}");
    insta::assert_snapshot!(out);
}

fn text(words: &[&'static str]) -> Vec<Cell> {
    words.iter().map(|word| Cell::Text(word)).collect()
}

type Bad = Vec<(&'static str, Vec<Table>)>;

fn headers() -> Bad {
    let head = || HEADER.to_vec();
    let mut twice = head();
    twice.push(Cell::Text("Weight (kg)"));
    let near = text(&[
        "Datun", "Sportlr", "lift", "sets", "reps", "Gewcht", "tempo",
    ]);
    vec![
        ("nothing", vec![("Week 1", vec![])]),
        (
            "two sheets of nothing",
            vec![("a", vec![]), ("b", vec![vec![]])],
        ),
        ("words alone", vec![("a", vec![text(&["pull", "more"])])]),
        ("a header alone", vec![("a", vec![head()])]),
        (
            "two headers alone",
            vec![("a", vec![head()]), ("b", vec![head()])],
        ),
        ("no header", vec![("a", vec![ROW.to_vec()])]),
        ("nearly known headers", vec![("a", vec![near])]),
        ("a column twice", vec![("a", vec![twice, ROW.to_vec()])]),
    ]
}

fn rows() -> Bad {
    let head = || HEADER.to_vec();
    let mut beyond = ROW.to_vec();
    beyond.push(Cell::Text("home"));
    let mut far = vec![Cell::None; 70];
    far.push(Cell::Text("x"));
    vec![
        (
            "missing columns",
            vec![(
                "a",
                vec![text(&["date", "lifter", "lift"]), ROW[..3].to_vec()],
            )],
        ),
        ("beyond the header", vec![("a", vec![head(), beyond])]),
        (
            "far to the right",
            vec![("a", vec![head(), ROW.to_vec(), far])],
        ),
        (
            "the same twice",
            vec![("a", vec![head(), ROW.to_vec(), vec![], ROW.to_vec()])],
        ),
        (
            "the same in two sheets",
            vec![
                ("a", vec![head(), ROW.to_vec()]),
                ("b", vec![head(), ROW.to_vec()]),
            ],
        ),
        (
            "faults in two sheets",
            vec![
                (
                    "first \"one\"",
                    vec![head(), changed(&[(1, Cell::Text("Nobody"))])],
                ),
                (
                    "second",
                    vec![vec![], head(), changed(&[(3, Cell::Number(99.0))])],
                ),
            ],
        ),
        (
            "a header too deep",
            vec![("a", {
                let mut rows = vec![vec![Cell::Text("x")]; 25];
                rows.push(head());
                rows.push(ROW.to_vec());
                rows
            })],
        ),
    ]
}

/// Headers, rows and sheets that are wrong.
#[test]
fn bad_sheets() {
    let mut sheets = headers();
    sheets.extend(rows());
    let (mut out, mut count) = (String::new(), 0);
    for (what, tables) in &sheets {
        tell(&mut out, &mut count, what, "week.xlsx", &xlsx(tables));
        if !tables.iter().any(|(name, _)| name.contains('"')) {
            tell(&mut out, &mut count, what, "week.ods", &ods(tables));
        }
    }
    assert!(count >= 28, "{count}");
    insta::assert_snapshot!(out);
}

fn wide(text: &str, mark: bool, big: bool) -> Vec<u8> {
    let mut units: Vec<u16> = text.encode_utf16().collect();
    if mark {
        units.insert(0, 0xfeff);
    }
    let bytes = |unit: u16| {
        if big {
            unit.to_be_bytes()
        } else {
            unit.to_le_bytes()
        }
    };
    units.into_iter().flat_map(bytes).collect()
}

type Files = Vec<(&'static str, Vec<u8>)>;

fn texts() -> Files {
    let bad = "date;lifter;lift;sets;reps;load\n2026-12-01;Tevita;rack pull;1;5;445\n";
    vec![
        ("UTF-16, small end first", wide(bad, true, false)),
        ("UTF-16, big end first", wide(bad, true, true)),
        ("UTF-16 without a mark", wide(bad, false, false)),
        (
            "UTF-16 without a mark, big end first",
            wide(bad, false, true),
        ),
        ("UTF-16 that breaks off", b"\xff\xfed\x00a\x00t".to_vec()),
        ("UTF-16 with half a pair", b"\xff\xfe\x00\xd8a\x00".to_vec()),
        ("zeros", vec![0; 64]),
        ("zeros in text", b"date;lifter\0;lift\n".to_vec()),
        (
            "Windows-1252",
            bad.replace("Tevita", "\u{e9}")
                .chars()
                .map(|c| c as u8)
                .collect(),
        ),
        (
            "neither UTF-8 nor Windows-1252",
            b"date;lifter\n\n2026-12-01;\x81\x8d".to_vec(),
        ),
        ("XLS", b"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1".to_vec()),
        ("PDF", b"%PDF-1.7".to_vec()),
        ("RTF", b"{\\rtf1 date".to_vec()),
        ("XML", b"<?xml version=\"1.0\"?><a/>".to_vec()),
    ]
}

fn archives() -> Files {
    let mut cut = xlsx(&with(vec![ROW.to_vec()]));
    cut.truncate(cut.len() / 2);
    vec![
        ("the head of a zip", b"PK\x03\x04\x14\x00".to_vec()),
        ("an empty zip", archive(&[])),
        ("a zip of something", archive(&[("a.txt", b"x")])),
        (
            "a zip with a way out",
            archive(&[("../../etc/passwd", b"x")]),
        ),
        ("a text", archive(&[("word/document.xml", b"<w/>")])),
        ("slides", archive(&[("ppt/presentation.xml", b"<p/>")])),
        ("XLSB", archive(&[("xl/workbook.bin", b"\x83\x01\x00")])),
        (
            "an OpenDocument text",
            archive(&[("mimetype", b"application/vnd.oasis.opendocument.text")]),
        ),
        ("XLSX without a workbook", archive(&[("xl/a.xml", b"<a/>")])),
        ("half an XLSX", cut),
    ]
}

fn broken() -> Files {
    let zeros = vec![0_u8; 60 << 20];
    let many: Vec<(String, &[u8])> = (0..1_001).map(|n| (format!("xl/{n}"), &b"x"[..])).collect();
    let many: Vec<(&str, &[u8])> = many.iter().map(|(n, b)| (n.as_str(), *b)).collect();
    let mut bent = ods(&with(vec![ROW.to_vec()]));
    let half = bent.len() / 3;
    bent[half..half + 40].fill(0xaa);
    vec![
        ("a bent ODS", bent),
        (
            "ODS without content",
            archive(&[(
                "mimetype",
                b"application/vnd.oasis.opendocument.spreadsheet",
            )]),
        ),
        (
            "ODS with broken XML",
            ods_of("<table:table table:name=\"a\"><table:table-row></oops>"),
        ),
        ("too many parts", archive(&many)),
        ("a zip bomb", archive(&[("xl/workbook.xml", &zeros)])),
    ]
}

/// A few words of XML that stand for far more.
fn swollen() -> Files {
    let long = "x".repeat(100_000);
    let good = ods_tables(&with(vec![ROW.to_vec()]));
    let cell =
        "<table:table-cell office:value-type=\"string\"><text:p>x</text:p></table:table-cell>";
    let repeat = |rows: u64, columns: u64, text: &str| {
        format!(
            "<table:table table:name=\"a\"><table:table-row table:number-rows-repeated=\"{rows}\">\
             <table:table-cell office:value-type=\"string\" table:number-columns-repeated=\"{columns}\">\
             <text:p>{text}</text:p></table:table-cell></table:table-row></table:table>"
        )
    };
    vec![
        ("a million rows", ods_of(&repeat(1_048_576, 2, "x"))),
        ("a million columns", ods_of(&repeat(2, 1_048_577, "x"))),
        (
            "more rows than numbers",
            ods_of(&repeat(u64::MAX, u64::MAX, "x")),
        ),
        ("a long text, often", ods_of(&repeat(1_000, 1, &long))),
        (
            "far below the plan",
            ods_of(&format!(
                "{}<table:table-row table:number-rows-repeated=\"1048000\"/><table:table-row>{cell}\
                 </table:table-row></table:table>",
                good.trim_end_matches("</table:table>")
            )),
        ),
        (
            "deep XML",
            ods_of(&"<table:table table:name=\"a\">".repeat(300)),
        ),
        (
            "an entity that grows",
            ods_of(
                "<table:table table:name=\"a\"><table:table-row><table:table-cell office:value-type=\"string\"><text:p>&lol9;</text:p></table:table-cell></table:table-row></table:table>",
            ),
        ),
    ]
}

/// Files that are none, or none of ours, or meant to hurt.
#[test]
fn bad_files() {
    let files = [texts(), archives(), broken(), swollen()].concat();
    let (mut out, mut count) = (String::new(), 0);
    for (what, bytes) in &files {
        tell(&mut out, &mut count, what, "week", bytes);
    }
    assert!(count >= 36, "{count}");
    insta::assert_snapshot!(out);
}

#[test]
fn too_many_rows_and_sheets() {
    let rows = vec![ROW.to_vec(); 20_030];
    let faults = take("week.xlsx", &xlsx(&with(rows))).expect_err("too many rows");
    // The same day again and again: 50 are told and the rest counted, the end all the same.
    assert_eq!(plan::count(&faults), 20_000);
    assert_eq!(faults.len(), 52);
    let end = faults[50].to_string();
    assert_eq!(
        end,
        "week.xlsx, sheet \"Week 1\", row 20002: read more rows than the most, 20000; split the plan"
    );
    let body: String = (0..51)
        .map(|n| format!("<table:table table:name=\"{n}\"/>"))
        .collect();
    assert_eq!(
        told("week.ods", &ods_of(&body)),
        "  week.ods: read a workbook of 51 sheets, more than the most, 50; split the plan\n"
    );
}
