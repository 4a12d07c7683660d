//! Drawings of invented bars and racks, measures in millimetres.
use view::draw::{
    BarDrawing, Change, Fate, HeightMark, HoleDrawing, LadderRow, PlateDrawing, RackDrawing,
    RowState, Shade,
};
use view::spot::Spot;

/// Thickness, diameter and shade of a disc, by its label; pounds end in "lb".
fn disc(label: &str) -> (f32, f32, Shade) {
    match label {
        "25" => (58.0, 450.0, Shade::Red),
        "20" => (48.0, 450.0, Shade::Blue),
        "15" => (38.0, 450.0, Shade::Yellow),
        "10" => (30.0, 450.0, Shade::Green),
        "5" => (27.0, 228.0, Shade::White),
        "2.5" => (19.0, 210.0, Shade::Red),
        "2" => (19.0, 190.0, Shade::Blue),
        "1.5" => (18.0, 175.0, Shade::Yellow),
        "1" => (15.0, 160.0, Shade::Green),
        "1.25" => (12.0, 165.0, Shade::Plain),
        "0.5" => (13.0, 134.0, Shade::White),
        "45lb" => (40.0, 450.0, Shade::Plain),
        "35lb" => (34.0, 362.0, Shade::Plain),
        "25lb" => (30.0, 280.0, Shade::Plain),
        "10lb" => (22.0, 230.0, Shade::Plain),
        "5lb" => (18.0, 202.0, Shade::Plain),
        "2.5lb" => (15.0, 160.0, Shade::Plain),
        _ => (20.0, 200.0, Shade::Plain),
    }
}

/// A sleeve with these discs from the inside out; "+" before a label puts it on, "-" takes it off.
pub(crate) fn bar(discs: &str) -> BarDrawing {
    let mut x_mm = 0.0;
    let plates: Vec<PlateDrawing> = discs
        .split_whitespace()
        .map(|word| {
            let fate = match word.as_bytes()[0] {
                b'+' => Fate::GoesOn,
                b'-' => Fate::ComesOff,
                _ => Fate::Stays,
            };
            let name = word.trim_start_matches(['+', '-']);
            let (thickness_mm, diameter_mm, shade) = disc(name);
            let plate = PlateDrawing {
                x_mm,
                thickness_mm,
                diameter_mm,
                label: name.trim_end_matches("lb").into(),
                mark: String::new(),
                shade,
                fate,
            };
            x_mm += thickness_mm;
            plate
        })
        .collect();
    let stays = plates.iter().filter(|plate| plate.fate != Fate::ComesOff);
    let collar_mm = stays.map(|plate| plate.thickness_mm).sum();
    let comes_off = plates.iter().any(|plate| plate.fate == Fate::ComesOff);
    BarDrawing {
        shaft_mm: 28.0,
        sleeve_mm: 415.0,
        tallest_mm: plates.iter().map(|p| p.diameter_mm).fold(0.0, f32::max),
        left: plates.clone(),
        right: plates,
        left_collar_mm: if comes_off { x_mm } else { collar_mm },
        right_collar_mm: if comes_off { x_mm } else { collar_mm },
        has_collar: !discs.is_empty(),
    }
}

/// What to do on each side, numbers with commas between.
pub(crate) fn change(take_off: &str, put_on: &str, sentence: &str) -> Change {
    let line = |word: &str, plates: &str| match plates {
        "" => String::new(),
        plates => format!("{word} {}", plates.replace(", ", " + ")),
    };
    let idle = take_off.is_empty() && put_on.is_empty();
    Change {
        heading: if idle { "" } else { "each side" }.into(),
        take_off: line("take off", take_off),
        put_on: line("put on", put_on),
        sentence: sentence.into(),
        heed: false,
    }
}

/// The same where the sides differ by marks.
pub(crate) fn marked(take_off: &str, put_on: &str) -> Change {
    Change {
        heading: String::new(),
        ..change(take_off, put_on, "")
    }
}

/// A heavy bar that comes down before the pins are moved, then the whole stack.
pub(crate) fn stripped(stack: &str) -> Change {
    Change {
        heading: "strip to 60 kg, then pins to hole 14".into(),
        take_off: String::new(),
        put_on: format!("each side must hold {stack}"),
        sentence: String::new(),
        heed: true,
    }
}

/// Hole, mats and gear.
pub(crate) fn spot(hole: &str, mats: &str, gear: &[&str]) -> Spot {
    Spot {
        place: match hole {
            "" => "from the floor".into(),
            hole => format!("hole {hole}"),
        },
        hole: hole.into(),
        mats: mats.into(),
        gear: gear.iter().copied().map(String::from).collect(),
        grip: "double overhand".into(),
        ..Spot::default()
    }
}

/// A rack of `holes` holes at `spacing_mm` with the pin in `chosen`; 0 for a lift from the floor.
pub(crate) fn rack(holes: i32, spacing_mm: f32, chosen: i32, mats_mm: &[f32]) -> RackDrawing {
    let height = |number: i32| 150.0 + (number - 1) as f32 * spacing_mm;
    let stand: f32 = mats_mm.iter().sum();
    RackDrawing {
        holes: (1..=if chosen == 0 { 0 } else { holes })
            .map(|number| HoleDrawing {
                number,
                height_mm: height(number),
                numbered: number % 5 == 0 || number == chosen,
                chosen: number == chosen,
            })
            .collect(),
        top_mm: if chosen == 0 { 750.0 } else { 1150.0 },
        bar_mm: if chosen == 0 {
            225.0
        } else {
            height(chosen) + 27.0
        },
        shaft_mm: 29.0,
        mats_mm: mats_mm.to_vec(),
        marks: vec![
            HeightMark {
                word: "top of the patella".into(),
                height_mm: 520.0 + stand,
            },
            HeightMark {
                word: "tibial tuberosity".into(),
                height_mm: 432.0 + stand,
            },
        ],
    }
}

/// A ladder from "LOAD×REPS state word" lines, lowest first.
pub(crate) fn ladder(rows: &[(&str, &str, RowState, &str)]) -> Vec<LadderRow> {
    let number = |load: &str| load.parse::<f32>().unwrap_or(0.0);
    let most = rows.iter().map(|row| number(row.0)).fold(1.0, f32::max);
    rows.iter()
        .map(|&(load, reps, state, word)| LadderRow {
            load: load.into(),
            reps: reps.into(),
            share: number(load) / most,
            word: word.into(),
            state,
        })
        .collect()
}
