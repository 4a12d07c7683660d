//! An invented gym with one rack, whose parts a test changes.
use domain::body::Body;
use domain::equipment::{BarStated, RackStated};
use domain::gym::{Pattern, PatternStep};
use domain::lift::Landmark;
use domain::lift_shipped::lifts;
use domain::lifter::GearFrom;
use domain::programme::Coaching;
use domain::{
    Bar, BarCondition, Gym, Length, Lift, Lifter, Mass, MassUnit, Plate, PlateFace, PlateSet, Rack,
};

pub(crate) fn kg(kg: i64) -> Mass {
    Mass::of(MassUnit::Kg, kg * 1_000)
}

pub(crate) fn plate(kg: i64, diameter_mm: i64) -> Plate {
    Plate {
        face: PlateFace {
            mass: self::kg(kg),
            unit: MassUnit::Kg,
            thickness: Length::mm(40),
            diameter: Length::mm(diameter_mm),
        },
        pairs: 6,
        handling_ms: 8_000,
    }
}

pub(crate) fn bar(name: &str, condition: BarCondition) -> Bar {
    Bar {
        name: name.into(),
        mass: kg(20),
        collars: Mass::ZERO,
        shaft_diameter: Length::mm(28),
        sleeve: Length::mm(400),
        condition,
        rack: None,
        stated: BarStated::default(),
    }
}

pub(crate) fn rack(spacing: Length) -> Rack {
    Rack {
        name: "door rack".into(),
        first_hole: Length::mm(150),
        spacing,
        holes: u16::try_from(1_900_000_000 / spacing.nm()).expect("few"),
        pin_diameter: Length::mm(25),
        hole_diameter: None,
        mats: Vec::new(),
        calibration: None,
        plates: "kilos".into(),
        hole_change_ms: 30_000,
        hole_change_at_most: kg(60),
        longest_wait_ms: None,
        stated: RackStated::default(),
    }
}

pub(crate) fn lifter(landmarks: &[(Landmark, i64)], body: Body) -> Lifter {
    Lifter {
        name: "Ines".into(),
        also: Vec::new(),
        unit: MassUnit::Kg,
        rack: "door rack".into(),
        bar: None,
        ladder: "5-3-2-1".into(),
        landmarks: landmarks
            .iter()
            .map(|(l, mm)| (*l, Length::mm(*mm)))
            .collect(),
        hooks: Vec::new(),
        body,
        belt: GearFrom::Never,
        straps: GearFrom::Never,
        bests: Vec::new(),
        training_maxes: Vec::new(),
    }
}

pub(crate) fn gym(rack: Rack, lifter: Lifter) -> Gym {
    let steps = [(3_000, 5), (5_000, 3), (7_000, 2), (9_000, 1)];
    Gym {
        name: "The Barn".into(),
        racks: vec![rack],
        bars: vec![
            bar("new bar", BarCondition::Straight),
            bar("bent bar", BarCondition::Retired),
        ],
        plate_sets: vec![PlateSet {
            name: "kilos".into(),
            big_inside: true,
            weighed: Vec::new(),
            plates: vec![plate(20, 450), plate(10, 325), plate(5, 230)],
        }],
        lifters: vec![lifter],
        lifts: lifts(),
        coaching: Coaching::default(),
        day_ends_after_s: None,
        called_for_s: None,
        patterns: vec![Pattern {
            name: "5-3-2-1".into(),
            steps: steps
                .map(|(share, reps)| PatternStep { share, reps })
                .into(),
            already_warm: false,
        }],
    }
}

pub(crate) fn lift(name: &str) -> Lift {
    lifts()
        .into_iter()
        .find(|lift| lift.name == name)
        .expect("a lift that ships")
}
