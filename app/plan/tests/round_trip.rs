//! A plan written in any of the ways that spreadsheets write is read back as it was.
use chrono::NaiveDate;
use domain::prescription::{LoadWish, SetGroup};
use domain::{Gym, Mass, MassUnit, Prescription};
use plan::Source;
use proptest::prelude::*;
use std::collections::BTreeSet;

fn gym() -> Gym {
    let demo = |name: &str| {
        let path = format!("{}/../../demo-data/{name}", env!("CARGO_MANIFEST_DIR"));
        std::fs::read(path).expect("the demo file is in the repository")
    };
    let (gym, lifters) = (demo("gym.toml"), demo("lifters.toml"));
    let source = |name, text| Source { name, text };
    plan::gym(source("gym.toml", &gym), source("lifters.toml", &lifters)).expect("a good gym")
}

/// How a plan is written.
#[derive(Debug, Clone)]
struct Hand {
    separator: char,
    comma: bool,
    dots: bool,
    mark: bool,
    crlf: bool,
    always: bool,
    minutes: bool,
    columns: Vec<usize>,
}

fn hand() -> impl Strategy<Value = Hand> {
    let flags = (
        any::<[bool; 6]>(),
        prop::sample::select(vec![',', ';', '\t']),
    );
    let columns = Just((0..9).collect::<Vec<_>>()).prop_shuffle();
    (flags, columns).prop_map(|((flags, separator), columns)| {
        let [comma, dots, mark, crlf, always, minutes] = flags;
        Hand {
            separator,
            comma,
            dots,
            mark,
            crlf,
            always,
            minutes,
            columns,
        }
    })
}

/// A row that the demo gym can have. Shares go to those lifts that have a best.
fn row() -> impl Strategy<Value = Prescription> {
    let gym = gym();
    let who = prop::sample::select(gym.lifters);
    let lift = prop::sample::select(gym.lifts);
    let pattern = prop::option::of(prop::sample::select(gym.patterns));
    let numbers = (
        0..20_000_i32,
        1..=20_u8,
        1..=50_u8,
        prop::option::of(15..=1_800_u32),
    );
    let load = (
        any::<bool>(),
        any::<bool>(),
        40_000..900_000_i64,
        6_000..=15_000_u32,
    );
    let note = "[a-z,;\"\u{e9}']([a-z ,;\"\u{e9}'-]{0,20}[a-z])?";
    (who, lift, pattern, numbers, load, note).prop_map(
        |(who, lift, pattern, numbers, load, note)| {
            let (days, sets, reps, rest_s) = numbers;
            let (share, pounds, thousandths, percent) = load;
            let unit = if pounds { MassUnit::Lb } else { MassUnit::Kg };
            let best = who.bests.iter().any(|(name, _)| *name == lift.name);
            let first = NaiveDate::from_ymd_opt(2000, 1, 1).expect("a day");
            let note: Vec<_> = note.split_whitespace().collect();
            Prescription {
                bar: None,
                date: first + chrono::Days::new(u64::from(days.unsigned_abs())),
                lifter: who.name,
                lift: lift.name,
                first: SetGroup {
                    rest_s,
                    ..SetGroup::straight(
                        sets,
                        reps,
                        if share && best {
                            LoadWish::OfBest(percent)
                        } else {
                            LoadWish::Mass(Mass::of(unit, thousandths))
                        },
                    )
                },
                then: Vec::new(),
                track: None,
                ladder: pattern.map(|pattern| pattern.name),
                note: note.join(" "),
            }
        },
    )
}

/// The cells of a row, in the order of the columns.
fn cells(row: &Prescription, hand: &Hand) -> Vec<String> {
    let point = |text: String| {
        if hand.comma {
            text.replace('.', ",")
        } else {
            text
        }
    };
    let load = match row.first.load {
        LoadWish::Mass(mass) => {
            let kilos = mass.exact(MassUnit::Kg);
            let pounds = mass.exact(MassUnit::Lb);
            if kilos.len() <= pounds.len() {
                kilos
            } else {
                pounds
            }
        }
        LoadWish::OfBest(share) => format!("{}.{:02} %", share / 100, share % 100),
        LoadWish::OfTraining(_) | LoadWish::OfTop(_) | LoadWish::More(_) | LoadWish::Due => {
            panic!("no such row is made")
        }
    };
    let rest = row.first.rest_s.map_or_else(String::new, |rest| {
        if hand.minutes {
            format!("{}:{:02}", rest / 60, rest % 60)
        } else {
            format!("{rest} s")
        }
    });
    let format = if hand.dots { "%d.%m.%Y" } else { "%Y-%m-%d" };
    let cells = [
        row.date.format(format).to_string(),
        row.lifter.clone(),
        row.lift.to_uppercase(),
        row.first.sets.to_string(),
        row.first.reps.least.to_string(),
        point(load),
        row.ladder.clone().unwrap_or_default(),
        rest,
        row.note.clone(),
    ];
    hand.columns
        .iter()
        .map(|column| cells[*column].clone())
        .collect()
}

fn write(rows: &[Prescription], hand: &Hand) -> Vec<u8> {
    const HEADER: [&str; 9] = [
        "date", "lifter", "lift", "sets", "reps", "load", "ladder", "rest", "note",
    ];
    let mut writer = csv::WriterBuilder::new();
    if hand.crlf {
        writer.terminator(csv::Terminator::CRLF);
    }
    if hand.always {
        writer.quote_style(csv::QuoteStyle::Always);
    }
    writer.delimiter(u8::try_from(hand.separator).expect("ascii"));
    let mark: &[u8] = if hand.mark { b"\xef\xbb\xbf" } else { b"" };
    let mut writer = writer.from_writer(mark.to_vec());
    let header = hand.columns.iter().map(|column| HEADER[*column]);
    writer.write_record(header).expect("memory does not fail");
    for row in rows {
        writer
            .write_record(cells(row, hand))
            .expect("memory does not fail");
    }
    writer.into_inner().expect("memory does not fail")
}

proptest! {
    #[test]
    fn plans(rows in prop::collection::vec(row(), 1..30), hand in hand()) {
        let mut seen = BTreeSet::new();
        let mut rows = rows;
        rows.retain(|row| seen.insert((row.date, row.lifter.clone(), row.lift.clone())));
        let text = write(&rows, &hand);
        let source = Source { name: "week.csv", text: &text };
        prop_assert_eq!(plan::coach_plan(source, &gym()), Ok(rows));
    }

    /// As the kiosk itself writes rows that were put together on its screen.
    #[test]
    fn rows_in_our_own_hand(rows in prop::collection::vec(row(), 1..10)) {
        let mut seen = BTreeSet::new();
        let mut rows = rows;
        rows.retain(|row| seen.insert((row.date, row.lifter.clone(), row.lift.clone())));
        let cells: Vec<_> = rows.iter().map(plan::PlanCells::from).collect();
        let text = plan::plan_csv(&cells);
        let source = Source { name: "desk", text: text.as_bytes() };
        prop_assert_eq!(plan::coach_plan(source, &gym()), Ok(rows));
    }
}
