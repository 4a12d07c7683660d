//! The day's loads against what makers stated: warned about when over, never without a figure.
use crate::gym::{bar, kg, lift, plate, rack};
use domain::equipment::{BarStated, RackStated};
use domain::sheet::{Rated, RungKind, Warning};
use domain::steel::{figures, on_the_pins, warn};
use domain::{Bar, BarCondition, Length, Mass, Rack, Rung, Stress};

fn rungs(plates: usize) -> Vec<Rung> {
    let face = plate(20, 450).face;
    let rung = |count: usize| Rung {
        kind: RungKind::Work,
        load: kg(20) + face.mass.times(2 * i64::try_from(count).expect("few")),
        reps: 5,
        per_side: vec![face; count],
        take_off: Vec::new(),
        put_on: Vec::new(),
        belt: false,
        straps: false,
        rest_s: 0,
    };
    (0..=plates).map(rung).collect()
}

fn stated_rack() -> Rack {
    let stated = RackStated {
        pin_rated_load: Some(kg(200)),
        rack_rated_load: Some(kg(250)),
        support_span: Some(Length::mm(1_000)),
    };
    Rack {
        stated,
        ..rack(Length::mm(50))
    }
}

fn stated_bar(condition: BarCondition, yield_mpa: i64) -> Bar {
    let stated = BarStated {
        youngs_modulus: Some(Stress::gpa(205)),
        yield_stress: Some(Stress::mpa(yield_mpa)),
        between_sleeves: Some(Length::mm(1_310)),
        rated_load: Some(kg(300)),
    };
    Bar {
        stated,
        ..bar("a bar", condition)
    }
}

fn told(rack: &Rack, bar: &Bar, name: &str, plates: usize) -> Vec<Warning> {
    let mut warnings = Vec::new();
    warn(rack, bar, &lift(name), &rungs(plates), &mut warnings);
    warnings
}

fn over(what: Rated, load: i64, rated: i64) -> Warning {
    Warning::OverRated {
        what,
        load: kg(load),
        rated: kg(rated),
    }
}

/// The figures stand for the heaviest rung, whether or not anything is over.
#[test]
fn figures_are_those_of_the_heaviest_rung() {
    let (rack, bar) = (stated_rack(), stated_bar(BarCondition::Straight, 1_000));
    let found = figures(&rack, &bar, &lift("rack pull"), &rungs(4)).expect("figures");
    let rated = vec![
        (Rated::Pins, kg(200)),
        (Rated::Rack, kg(250)),
        (Rated::Bar, kg(300)),
    ];
    assert_eq!((found.load, found.rated), (kg(180), rated));
    assert_eq!(found.bending, on_the_pins(&rack, &bar, &rungs(4)[4]));
    let floor = figures(&rack, &bar, &lift("deadlift"), &rungs(4)).expect("the bar's");
    assert_eq!((floor.rated.len(), floor.bending), (1, None));
    let plain = figures(
        &self::rack(Length::mm(50)),
        &self::bar("plain", BarCondition::Straight),
        &lift("rack pull"),
        &rungs(4),
    );
    assert_eq!(plain, None);
}

#[test]
fn loads_over_what_was_stated_are_told() {
    let (rack, bar) = (stated_rack(), stated_bar(BarCondition::Retired, 1_000));
    assert_eq!(told(&rack, &bar, "rack pull", 4), []);
    assert_eq!(
        told(&rack, &bar, "rack pull", 5),
        [over(Rated::Pins, 220, 200)]
    );
    let all = [
        over(Rated::Pins, 340, 200),
        over(Rated::Rack, 340, 250),
        over(Rated::Bar, 340, 300),
    ];
    assert_eq!(told(&rack, &bar, "rack pull", 8), all);
    // From the floor neither pins nor rack carry anything.
    assert_eq!(told(&rack, &bar, "deadlift", 8), all[2..]);
}

#[test]
fn what_was_not_stated_is_not_warned_about() {
    let straight = bar("a bar", BarCondition::Straight);
    assert_eq!(told(&rack(Length::mm(50)), &straight, "rack pull", 40), []);
    assert_eq!(told(&stated_rack(), &straight, "rack pull", 4), []);
    let unmeasured = rack(Length::mm(50));
    assert_eq!(
        told(
            &unmeasured,
            &stated_bar(BarCondition::Straight, 1_000),
            "rack pull",
            4
        ),
        []
    );
}

/// By hand: four plates of 20 kg and 40 mm on each side of 1310 mm: their middle 80 mm out, so
/// (1310 + 160 - 1000)/2 = 235 mm beyond the pins; 80 kg x 9.80665 x 0.235 = 184.365 N m; over
/// pi 28^3/32 = 2155.133 mm3 (computed from the beam tables) that is 85.55 MPa.
#[test]
fn a_straight_bar_on_the_pins_is_told_its_drop() {
    let bar = stated_bar(BarCondition::Straight, 1_000);
    let bent = on_the_pins(&stated_rack(), &bar, &rungs(4)[4]).expect("all is stated");
    assert!((bent.moment_unm - 184_365_020).abs() < 100, "{bent:?}");
    assert!((bent.stress.pa() - 85_547_000).abs() < 5_000, "{bent:?}");
    let drop = bent.yield_drop.expect("some height");
    let of_yield_ppm = u32::try_from(bent.of_yield_ppm).expect("small");
    assert_eq!(
        told(&stated_rack(), &bar, "rack pull", 4),
        [Warning::TakesSet { drop, of_yield_ppm }]
    );
    // The retired bar has its set; a shaft so weak that it yields at once is told all the same.
    assert_eq!(
        told(
            &stated_rack(),
            &stated_bar(BarCondition::Retired, 1_000),
            "rack pull",
            4
        ),
        []
    );
    let weak = told(
        &stated_rack(),
        &stated_bar(BarCondition::Retired, 150),
        "rack pull",
        4,
    );
    assert!(
        matches!(
            weak[..],
            [Warning::TakesSet {
                drop: Length::ZERO,
                ..
            }]
        ),
        "{weak:?}"
    );
}

/// Collars hang outside the plates, half on each side.
#[test]
fn collars_count() {
    let plain = stated_bar(BarCondition::Straight, 1_000);
    let collared = Bar {
        collars: kg(5),
        ..plain.clone()
    };
    let moment = |bar: &Bar| {
        on_the_pins(&stated_rack(), bar, &rungs(4)[4])
            .expect("bent")
            .moment_unm
    };
    // 2.5 kg x 9.80665 x (1310/2 + 160 - 500 mm) = 7.723 N m more.
    assert!((moment(&collared) - moment(&plain) - 7_722_737).abs() < 1_000);
    assert!(
        on_the_pins(&stated_rack(), &plain, &rungs(0)[0]).is_none(),
        "an empty bar"
    );
    let heavy = Rung {
        load: Mass::ZERO,
        ..rungs(1).remove(1)
    };
    assert!(
        on_the_pins(&rack(Length::mm(50)), &plain, &heavy).is_none(),
        "no span measured"
    );
}
