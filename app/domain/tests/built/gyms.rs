//! Invented gyms, and ladders in one line each.
use domain::ladder::BuiltLadder;
use domain::{Bar, BarCondition, Length, Mass, MassUnit, Plate, PlateFace, PlateSet};

pub(crate) fn mass(text: &str) -> Mass {
    Mass::read(text).expect("a mass")
}

pub(crate) fn bar(text: &str) -> Bar {
    Bar {
        name: "bar".into(),
        mass: mass(text),
        collars: Mass::ZERO,
        shaft_diameter: Length::mm(28),
        sleeve: Length::mm(410),
        condition: BarCondition::Straight,
        rack: None,
        stated: domain::equipment::BarStated::default(),
    }
}

pub(crate) fn set(plates: &[(&str, u16, i64)]) -> PlateSet {
    let plate = |&(text, pairs, mm): &(&str, u16, i64)| {
        let mass = mass(text);
        let kg = mass.ng() / MassUnit::Kg.scale();
        Plate {
            face: PlateFace {
                mass,
                unit: if text.ends_with("lb") {
                    MassUnit::Lb
                } else {
                    MassUnit::Kg
                },
                thickness: Length::mm(mm),
                diameter: Length::mm(450),
            },
            pairs,
            handling_ms: if kg < 10 {
                4_000
            } else if kg < 20 {
                6_000
            } else {
                8_000
            },
        }
    };
    PlateSet {
        name: "set".into(),
        big_inside: true,
        weighed: Vec::new(),
        plates: plates.iter().map(plate).collect(),
    }
}

pub(crate) fn kilos() -> PlateSet {
    set(&[
        ("25 kg", 4, 58),
        ("20 kg", 2, 48),
        ("15 kg", 1, 38),
        ("10 kg", 2, 28),
        ("5 kg", 2, 22),
        ("2.5 kg", 1, 18),
        ("1.25 kg", 1, 13),
        ("0.5 kg", 1, 10),
    ])
}

pub(crate) fn pounds() -> PlateSet {
    set(&[
        ("45 lb", 9, 38),
        ("35 lb", 1, 36),
        ("25 lb", 1, 30),
        ("10 lb", 2, 25),
        ("5 lb", 2, 19),
        ("2.5 lb", 1, 15),
    ])
}

pub(crate) fn mixed() -> PlateSet {
    set(&[
        ("20 kg", 3, 48),
        ("45 lb", 4, 38),
        ("25 lb", 1, 30),
        ("10 kg", 1, 28),
        ("10 lb", 1, 25),
        ("5 kg", 1, 22),
        ("2.5 kg", 1, 18),
        ("2.5 lb", 1, 15),
    ])
}

pub(crate) fn coarse() -> PlateSet {
    set(&[("25 kg", 3, 58)])
}

/// The same with plates of the masses in `low`, and all lighter ones, smaller than the standard
/// disc: the lighter the smaller.
pub(crate) fn sized(mut plates: PlateSet, low: &[&str]) -> PlateSet {
    let most = low.iter().map(|text| mass(text)).max();
    let low: Vec<Mass> = low.iter().map(|text| mass(text)).collect();
    for plate in &mut plates.plates {
        let small =
            low.contains(&plate.face.mass) || Some(plate.face.mass) < low.iter().min().copied();
        if small {
            let share = plate.face.mass.ng() * 100 / most.expect("one at least").ng();
            plate.face.diameter = Length::mm(150 + share * 2);
        }
    }
    plates
}

/// "45 25", with the unit where it is another than `unit`.
pub(crate) fn stack_words(unit: MassUnit, per_side: &[PlateFace]) -> String {
    let plates = per_side.iter().map(|p| {
        let mark = if p.unit == unit { "" } else { p.unit.word() };
        format!("{}{mark}", p.label())
    });
    plates.collect::<Vec<_>>().join(" ")
}

/// "445 lb: 135x5 [45] -> 225x3 [45 45] ..."
pub(crate) fn shown(asked: &str, built: &BuiltLadder) -> String {
    let unit = if asked.ends_with("lb") {
        MassUnit::Lb
    } else {
        MassUnit::Kg
    };
    let rungs = built.rungs.iter().map(|rung| {
        let plates = stack_words(unit, &rung.per_side);
        format!("{}x{} [{plates}]", rung.load.number(unit), rung.reps)
    });
    let rungs: Vec<String> = rungs.collect();
    let off = if built.off == Mass::ZERO {
        String::new()
    } else {
        format!(" (off {})", built.off.words(unit))
    };
    format!("{asked}{off}: {}", rungs.join(", "))
}
