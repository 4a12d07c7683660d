//! Good plans in every form that a spreadsheet writes.
use crate::build::{Cell, HEADER, ROW, changed, gym, ods, take, with, xlsx};
use chrono::NaiveDate;
use domain::prescription::LoadWish;
use domain::{Mass, MassUnit, Prescription};
use plan::Source;

fn kept(name: &str) -> Vec<u8> {
    let folder = concat!(env!("CARGO_MANIFEST_DIR"), "/../../tests/references/plans");
    std::fs::read(format!("{folder}/{name}")).expect("the file is in the repository")
}

fn good(name: &str, bytes: &[u8]) -> Vec<Prescription> {
    take(name, bytes).unwrap_or_else(|faults| panic!("{name}: {}", faults[0]))
}

fn kg(thousandths: i64) -> LoadWish {
    LoadWish::Mass(Mass::of(MassUnit::Kg, thousandths))
}

/// The week as `tests/references/plans.py` had LibreOffice write it: titles over merged cells,
/// German headers, the unit in a header, a rest typed as a time.
fn is_the_week(rows: &[Prescription]) {
    let day = |d| NaiveDate::from_ymd_opt(2026, 12, d).expect("a day");
    let [first, second] = rows else {
        panic!("{} rows", rows.len());
    };
    assert_eq!((first.date, second.date), (day(1), day(3)));
    assert_eq!(
        (first.lifter.as_str(), second.lifter.as_str()),
        ("Hamza", "\u{17d}eljka")
    );
    assert_eq!(
        (first.first.load, second.first.load),
        (kg(182_500), kg(102_500))
    );
    assert_eq!(
        (first.first.rest_s, second.first.rest_s),
        (Some(180), Some(150))
    );
    assert_eq!(
        (first.first.sets, first.first.reps.least, second.first.sets),
        (1, 5, 2)
    );
    assert_eq!(second.ladder.as_deref(), Some("fives"));
    assert_eq!(first.note, "slow off the pins");
}

#[test]
fn libreoffice_csv_of_four_kinds() {
    for name in [
        "week.utf8.csv",
        "week.semicolon.csv",
        "week.latin.csv",
        "week.utf16.csv",
    ] {
        is_the_week(&good(name, &kept(name)));
    }
}

/// A day that two readers would read as two is refused, also where a spreadsheet wrote it.
#[test]
fn libreoffice_csv_with_days_of_two_readings() {
    let faults = take("week.us.csv", &kept("week.us.csv")).expect_err("two readings");
    let told: Vec<_> = faults.iter().map(ToString::to_string).collect();
    let one = |row, read: &str, a, b| {
        format!(
            "week.us.csv, row {row}, column Datum: read \"{read}\", a date that can be read in two \
             ways; write the year first: \"{a}\" or \"{b}\""
        )
    };
    assert_eq!(told[0], one(5, "12/01/2026", "2026-01-12", "2026-12-01"));
}

#[test]
fn libreoffice_workbooks_with_several_sheets() {
    for name in ["coach.ods", "coach.xlsx"] {
        let rows = good(name, &kept(name));
        let (week, shares) = rows.split_at(2);
        is_the_week(week);
        let [share, text] = shares else {
            panic!("{} rows more", shares.len());
        };
        assert_eq!(share.first.load, LoadWish::OfBest(8_000), "{name}");
        assert_eq!(text.date.to_string(), "2026-12-10");
        assert_eq!(text.note, "2 \u{bd} finger widths");
        let source = Source {
            name,
            text: &kept(name),
        };
        let odd: Vec<_> = plan::check(source, Some(&gym()))
            .iter()
            .map(ToString::to_string)
            .collect();
        assert_eq!(
            odd,
            [format!(
                "{name}, sheet \"old\": odd: read a hidden sheet, left out; show the sheet in the \
                 spreadsheet if it belongs to the plan"
            )]
        );
    }
}

/// The same row, however its cells are typed.
#[test]
fn typed_cells() {
    let one = |row: Vec<Cell>| {
        let tables = with(vec![row]);
        let books = [("w.xlsx", xlsx(&tables)), ("w.ods", ods(&tables))];
        let [a, b] = books.map(|(name, bytes)| {
            let rows = good(name, &bytes);
            assert_eq!(rows.len(), 1);
            rows[0].clone()
        });
        assert_eq!(a, b);
        a
    };
    let plain = one(ROW.to_vec());
    for cells in [
        vec![(0, Cell::Text("2026-12-01"))],
        vec![(0, Cell::Text("1.12.2026"))],
        vec![(3, Cell::Text("1")), (4, Cell::Text(" 5 "))],
        vec![(7, Cell::Time(3, 0, 0))],
        vec![(7, Cell::Time(0, 3, 0))],
        vec![(7, Cell::Number(180.0))],
        vec![(5, Cell::Text("445\u{a0}lb"))],
    ] {
        assert_eq!(one(changed(&cells)), plain, "{cells:?}");
    }
    let load = |cell| one(changed(&[(5, cell)])).first.load;
    assert_eq!(load(Cell::Share(0.825)), LoadWish::OfBest(8_250));
    assert_eq!(load(Cell::Text("82,5 %")), LoadWish::OfBest(8_250));
    // 0.07 + 0.75 is not 0.82 in binary fractions.
    assert_eq!(load(Cell::Share(0.07 + 0.75)), LoadWish::OfBest(8_200));
}

#[test]
fn units_in_the_header() {
    let headers = [
        ("load (kg)", 182.5, kg(182_500)),
        (
            "Load [lb]",
            405.0,
            LoadWish::Mass(Mass::of(MassUnit::Lb, 405_000)),
        ),
        ("Gewicht in kg", 180.0, kg(180_000)),
        (
            "weight, lbs",
            315.0,
            LoadWish::Mass(Mass::of(MassUnit::Lb, 315_000)),
        ),
        ("load (%)", 80.0, LoadWish::OfBest(8_000)),
        ("load (%)", 0.8, LoadWish::OfBest(8_000)),
    ];
    for (header, number, load) in headers {
        let mut head = HEADER.to_vec();
        head[5] = Cell::Text(header);
        let row = changed(&[(5, Cell::Number(number))]);
        let tables = [("w", vec![head, row])];
        for bytes in [xlsx(&tables), ods(&tables)] {
            assert_eq!(good("w", &bytes)[0].first.load, load, "{header} {number}");
        }
    }
    // A cell that names its own unit is believed.
    let csv = "date,lifter,lift,sets,reps,load (kg)\n2026-12-01,Tevita,rack pull,1,5,445 lb\n\
               2026-12-02,Tevita,rack pull,1,5,\"182,5\"\n";
    let rows = good("w.csv", csv.as_bytes());
    assert_eq!(
        rows[0].first.load,
        LoadWish::Mass(Mass::of(MassUnit::Lb, 445_000))
    );
    assert_eq!(rows[1].first.load, kg(182_500));
}

#[test]
fn titles_and_empty_rows_above_the_header() {
    let rows = vec![
        vec![Cell::Text("December")],
        vec![],
        vec![Cell::None, Cell::Text("for the Barn")],
        HEADER.to_vec(),
        vec![],
        ROW.to_vec(),
    ];
    let tables = [("w", rows)];
    for bytes in [xlsx(&tables), ods(&tables)] {
        assert_eq!(good("w", &bytes).len(), 1);
    }
    let csv =
        "December;;\n;;\ndate;lifter;lift;sets;reps;load\n2026-12-01;Tevita;rack pull;1;5;445 lb\n";
    assert_eq!(good("w.csv", csv.as_bytes()).len(), 1);
}

#[test]
fn days_in_every_unambiguous_spelling() {
    for text in [
        "2026-12-31",
        "31.12.2026",
        "31/12/2026",
        "12/31/2026",
        "31-12-2026",
        "31 Dec 2026",
        "31. Dezember 2026",
        "Dec 31, 2026",
        "31-DEC-2026",
    ] {
        let csv = format!("date;lifter;lift;sets;reps;load\n{text};Tevita;rack pull;1;5;445 lb\n");
        let rows = good("w.csv", csv.as_bytes());
        assert_eq!(rows[0].date.to_string(), "2026-12-31", "{text}");
    }
    let same = "date;lifter;lift;sets;reps;load\n5/5/2026;Tevita;rack pull;1;5;445 lb\n";
    assert_eq!(
        good("w.csv", same.as_bytes())[0].date.to_string(),
        "2026-05-05"
    );
}

#[test]
fn blank_plans_pass_their_own_checker() {
    let gym = gym();
    let today = NaiveDate::from_ymd_opt(2026, 12, 1).expect("a day");
    let csv = plan::blank_csv(&gym, today);
    let xlsx = plan::blank_xlsx(&gym, today).expect("a workbook");
    let rows = good("blank.csv", csv.as_bytes());
    assert_eq!(good("blank.xlsx", &xlsx), rows);
    assert_eq!(rows.len(), 3);
    assert!(csv.starts_with('\u{feff}') && csv.contains("\r\n"));
    for (name, text) in [("blank.csv", csv.as_bytes()), ("blank.xlsx", &xlsx)] {
        let faults = plan::check(Source { name, text }, Some(&gym));
        assert!(faults.is_empty(), "{}", faults[0]);
    }
    // A gym without anybody still gets its header.
    let nobody = domain::Gym::default();
    assert_eq!(plan::blank_csv(&nobody, today).lines().count(), 1);
    plan::blank_xlsx(&nobody, today).expect("a workbook");
}
