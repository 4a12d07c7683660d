//! Forty work loads in both units beside the trade's shares, to be looked at.
use crate::gyms::{bar, kilos, mass, pounds, sized, stack_words};
use domain::disc_height::raise_of;
use domain::ladder::{BuiltLadder, WorkSet, build_from, shipped_patterns};
use domain::lift::Start;
use domain::{LengthUnit, Mass, MassUnit, PlateSet};

/// The trade's shares of the work load: about 30, 50, 70 and 90 % (common practice, no source).
const SHARES: [i64; 4] = [30, 50, 70, 90];

fn ladder(start: Start, unit: MassUnit, plates: &PlateSet, load: Mass) -> BuiltLadder {
    let bar = bar(if unit == MassUnit::Kg {
        "20 kg"
    } else {
        "45 lb"
    });
    let patterns = shipped_patterns();
    let pattern = patterns.iter().find(|p| p.name == "5-3-2-1");
    let work = WorkSet {
        load,
        sets: 1,
        reps: 5,
    };
    build_from(start, &work, pattern.expect("shipped"), &bar, plates).expect("can be built")
}

/// One line: the work load, the trade's loads, ours with shares and plates, the longest step.
fn line(start: Start, unit: MassUnit, plates: &PlateSet, load: Mass) -> String {
    let built = ladder(start, unit, plates, load);
    let trade = SHARES.map(|share| {
        let whole = load.ng() / unit.scale() * share / 100;
        whole.to_string()
    });
    let percent = |mass: Mass| mass.ng() * 100 / load.ng();
    let rungs = built.rungs.iter().map(|rung| {
        let raise = raise_of(start, &rung.per_side);
        let raised = match raise.nm() {
            0 => String::new(),
            _ => format!(" raise {}", raise.number(LengthUnit::Mm)),
        };
        let (number, plates) = (rung.load.number(unit), stack_words(unit, &rung.per_side));
        let share = percent(rung.load);
        format!("{number}x{} ({share}) [{plates}]{raised}", rung.reps)
    });
    let rungs: Vec<String> = rungs.collect();
    let loads: Vec<Mass> = built.rungs.iter().map(|rung| rung.load).collect();
    let steps = loads.windows(2).map(|pair| percent(pair[1] - pair[0]));
    format!(
        "{} | {} | {} | {} %",
        load.words(unit),
        trade.join(" "),
        rungs.join(", "),
        steps.max().unwrap_or(0)
    )
}

fn loads(unit: MassUnit) -> Vec<Mass> {
    let (all, word): (&[&str], &str) = match unit {
        MassUnit::Kg => (
            &[
                "30", "37.5", "42.5", "50", "57.5", "60", "70", "80", "90", "100", "110", "120",
                "130", "140", "160", "180", "200", "240", "300", "340",
            ],
            "kg",
        ),
        MassUnit::Lb => (
            &[
                "65", "75", "95", "115", "135", "155", "185", "205", "225", "275", "315", "345",
                "365", "405", "445", "500", "545", "600", "700", "800",
            ],
            "lb",
        ),
    };
    let load = |number: &&str| mass(&format!("{number} {word}"));
    all.iter().map(load).collect()
}

fn table(start: Start, unit: MassUnit, plates: &PlateSet) -> String {
    let lines = loads(unit).into_iter();
    let lines = lines.map(|load| line(start, unit, plates, load));
    lines.collect::<Vec<_>>().join("\n")
}

/// Judged: from pins and hooks.
#[test]
fn forty_ladders_from_pins() {
    let kilos = table(Start::Hooks, MassUnit::Kg, &kilos());
    let pounds = table(Start::Hooks, MassUnit::Lb, &pounds());
    insta::assert_snapshot!(format!("{kilos}\n\n{pounds}"));
}

/// Judged: from the floor, tens of full height in kilos, 45s and 25s in pounds.
#[test]
fn forty_ladders_from_the_floor() {
    let kilos = table(Start::Floor, MassUnit::Kg, &sized(kilos(), &["5 kg"]));
    let pounds = table(
        Start::Floor,
        MassUnit::Lb,
        &sized(pounds(), &["10 lb", "35 lb"]),
    );
    insta::assert_snapshot!(format!("{kilos}\n\n{pounds}"));
}
