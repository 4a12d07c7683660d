//! From the floor: plates of the right height before fewest moves, held against every stack.
use crate::gyms::{self, bar, kilos, mass, pounds, sized, stack_words};
use crate::rule::{any_pattern, any_set, check};
use domain::disc_height::raise_of;
use domain::ladder::{BuiltLadder, WorkSet, build_from, equipment, shipped_patterns};
use domain::lift::Start;
use domain::{Length, LengthUnit, Mass, MassUnit, PlateFace, PlateSet};
use proptest::prelude::*;

fn built(plates: &PlateSet, bar_text: &str, load: &str) -> BuiltLadder {
    let work = WorkSet {
        load: mass(load),
        sets: 1,
        reps: 5,
    };
    let pattern = &shipped_patterns()[1];
    build_from(Start::Floor, &work, pattern, &bar(bar_text), plates).expect("can be built")
}

/// "40 [10], 42.5 [10 1.25]", with how much to raise the bar where it is.
fn shown(unit: MassUnit, built: &BuiltLadder) -> String {
    let rung = |rung: &domain::Rung| {
        let raise = raise_of(Start::Floor, &rung.per_side);
        let raise = match raise {
            Length::ZERO => String::new(),
            _ => format!(" +{}", raise.number(LengthUnit::Mm)),
        };
        let (load, plates) = (rung.load.number(unit), stack_words(unit, &rung.per_side));
        format!("{load} [{plates}]{raise}")
    };
    built.rungs.iter().map(rung).collect::<Vec<_>>().join(", ")
}

fn sizes(plates: &[(&str, u16, i64, i64)]) -> PlateSet {
    let flat: Vec<_> = plates.iter().map(|p| (p.0, p.1, p.2)).collect();
    let mut set = gyms::set(&flat);
    for (plate, sized) in set.plates.iter_mut().zip(plates) {
        plate.face.diameter = Length::mm(sized.3);
    }
    set
}

/// The work sets of 42.5 kg that once went on 5 + 5 + 1.25 while tens of 450 mm hung there.
#[test]
fn work_sets_stand_on_the_tens_that_hang_there() {
    let plates = sizes(&[
        ("20 kg", 2, 48, 450),
        ("10 kg", 1, 28, 450),
        ("5 kg", 2, 22, 230),
        ("2.5 kg", 1, 18, 190),
        ("1.25 kg", 1, 13, 160),
    ]);
    let shown = |load: &str| shown(MassUnit::Kg, &built(&plates, "20 kg", load));
    // Under bar and tens there is nothing to stand on: fives for both warm-ups.
    assert_eq!(
        shown("42.5 kg"),
        "30 [5] +110, 35 [5 2.5] +110, 42.5 [10 1.25]"
    );
    assert_eq!(shown("55 kg"), "40 [10], 50 [10 5], 55 [10 5 2.5]");
    assert_eq!(
        shown("100 kg"),
        "40 [10], 60 [20], 80 [20 10], 90 [20 10 5], 100 [20 10 5 5]"
    );
}

/// Gyms that a rude user would have: one pair of tens, small plates alone, bumpers of one size,
/// iron of which the 45s and 25s alone are large, and no order of plates.
#[test]
fn rude_gyms() {
    let small = sizes(&[
        ("10 kg", 2, 28, 325),
        ("5 kg", 2, 22, 230),
        ("2.5 kg", 1, 18, 190),
    ]);
    let bumpers = sizes(&[
        ("20 kg", 2, 60, 450),
        ("10 kg", 2, 50, 450),
        ("5 kg", 2, 40, 450),
        ("2.5 kg", 1, 18, 190),
    ]);
    let pounds = sized(pounds(), &["10 lb", "35 lb"]);
    let mut any_order = sizes(&[
        ("20 kg", 1, 48, 325),
        ("10 kg", 1, 28, 450),
        ("5 kg", 1, 22, 230),
    ]);
    any_order.big_inside = false;
    let lines = [
        shown(MassUnit::Kg, &built(&small, "20 kg", "60 kg")),
        shown(MassUnit::Kg, &built(&small, "20 kg", "30 kg")),
        shown(MassUnit::Kg, &built(&small, "20 kg", "20 kg")),
        shown(MassUnit::Kg, &built(&bumpers, "20 kg", "42.5 kg")),
        shown(MassUnit::Kg, &built(&bumpers, "20 kg", "80 kg")),
        shown(MassUnit::Lb, &built(&pounds, "45 lb", "115 lb")),
        shown(MassUnit::Lb, &built(&pounds, "45 lb", "185 lb")),
        shown(MassUnit::Kg, &built(&any_order, "20 kg", "80 kg")),
        shown(MassUnit::Kg, &built(&any_order, "20 kg", "60 kg")),
    ];
    insta::assert_snapshot!(lines.join("\n"));
}

/// Where the tens are of full height, nobody from 55 kg up lifts from another height.
#[test]
fn one_height_for_the_whole_ladder() {
    let plates = sized(kilos(), &["5 kg"]);
    for n in 0..100 {
        let load = mass("55 kg") + mass("2.5 kg").times(n);
        let built = built(&plates, "20 kg", &load.words(MassUnit::Kg));
        let low = built
            .rungs
            .iter()
            .find(|rung| raise_of(Start::Floor, &rung.per_side) != Length::ZERO);
        assert!(low.is_none(), "{}", shown(MassUnit::Kg, &built));
    }
}

/// Of what the work load is missed by, the height decides between loads as near as 2.5 %.
#[test]
fn a_load_that_is_missed_is_missed_at_the_right_height() {
    let plates = sizes(&[("20 kg", 1, 48, 450), ("19.5 kg", 1, 48, 325)]);
    let shown = |load: &str| shown(MassUnit::Kg, &built(&plates, "20 kg", load));
    assert!(shown("59.2 kg").ends_with("60 [20]"));
    assert!(shown("59 kg").ends_with("59 [19.5] +62.5"));
    assert!(shown("58.2 kg").ends_with("59 [19.5] +62.5"));
}

/// The least raise of any set of plates that makes `load`, by trying them all.
fn least_raise(plates: &PlateSet, load: Mass) -> Length {
    fn go_on(plates: &PlateSet, at: usize, stack: &mut Vec<PlateFace>, load: Mass) -> Length {
        let never = Length::mm(1_000);
        let bar = bar("20 kg");
        let side: Mass = stack.iter().map(|face| face.mass).sum();
        let long: Length = stack.iter().map(|face| face.thickness).sum();
        if bar.mass + side + side > load || long > bar.sleeve {
            return never;
        }
        let Some(plate) = plates.plates.get(at) else {
            let made = bar.mass + side + side == load;
            return if made {
                raise_of(Start::Floor, stack)
            } else {
                never
            };
        };
        let inside = stack.len();
        let mut least = never;
        for _ in 0..=plate.pairs {
            least = least.min(go_on(plates, at + 1, stack, load));
            stack.push(plate.face);
        }
        stack.truncate(inside);
        least
    }
    go_on(plates, 0, &mut Vec::new(), load)
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(300))]
    #[test]
    fn every_rung_stands_as_high_as_its_load_can(
        mut plates in any_set(),
        diameters in prop::collection::vec(
            prop::sample::select(vec![160_i64, 230, 325, 445, 450, 500]),
            8,
        ),
        pattern in any_pattern(),
        grams in 0..250_000_i64,
    ) {
        for (plate, mm) in plates.plates.iter_mut().zip(diameters) {
            plate.face.diameter = Length::mm(mm);
            plate.pairs = plate.pairs.min(2);
        }
        // Six kinds at most can all be tried.
        plates.plates.truncate(6);
        let work = WorkSet { load: Mass::of(MassUnit::Kg, grams), sets: 1, reps: 5 };
        let bar = bar("20 kg");
        let ladder = build_from(Start::Floor, &work, &pattern, &bar, &plates);
        let ladder = ladder.expect("within limits");
        let made = WorkSet { load: ladder.rungs.last().expect("a work set").load, ..work };
        let as_made = BuiltLadder { off: Mass::ZERO, ..ladder.clone() };
        check(&as_made, (&made, &pattern), (&bar, &plates));
        prop_assert_eq!(ladder.off, made.load - work.load);
        prop_assert!(equipment(&bar, &plates).check().is_ok());
        for rung in &ladder.rungs {
            let raise = raise_of(Start::Floor, &rung.per_side);
            prop_assert_eq!(raise, least_raise(&plates, rung.load), "{:?}", rung);
        }
    }
}
