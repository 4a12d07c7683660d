//! Plates as weighed over a ladder: no plate changes sides, and the heaviest rung differs least.
use domain::equipment::PlateSet;
use domain::solve::balance::{Problem, Weighed, plan};
use domain::weighed::share_out;
use domain::{Length, Mass, MassUnit, PlateFace};
use proptest::prelude::*;

fn kg(thousandths: i64) -> Mass {
    Mass::of(MassUnit::Kg, thousandths)
}

fn face(label: i64) -> PlateFace {
    PlateFace {
        mass: kg(label * 1_000),
        unit: MassUnit::Kg,
        thickness: Length::mm(30),
        diameter: Length::mm(450),
    }
}

fn set(weighed: Vec<Weighed>) -> PlateSet {
    PlateSet {
        name: "kilo".into(),
        big_inside: false,
        plates: Vec::new(),
        weighed,
    }
}

fn weighed(offs: &[(i64, i64)]) -> Vec<Weighed> {
    let plate = |(at, (label, off)): (usize, &(i64, i64))| Weighed {
        mark: format!("{label}-{at}"),
        nominal: kg(label * 1_000),
        mass: kg(label * 1_000 + off),
    };
    offs.iter().enumerate().map(plate).collect()
}

#[test]
fn a_gym_that_weighed_nothing_is_told_nothing() {
    let stacks = [vec![face(20)]];
    assert_eq!(
        share_out(
            &set(Vec::new()),
            kg(20_000),
            stacks.iter().map(Vec::as_slice)
        ),
        None
    );
}

#[test]
fn the_true_load_of_every_rung() {
    let plates = weighed(&[
        (20, 100),
        (20, -60),
        (20, 90),
        (20, -70),
        (10, 30),
        (10, 10),
    ]);
    let stacks = [vec![face(10)], vec![face(20)], vec![face(20), face(20)]];
    let shares = share_out(&set(plates), kg(20_000), stacks.iter().map(Vec::as_slice)).unwrap();
    let loads: Vec<_> = stacks
        .iter()
        .map(|stack| {
            let sides = shares.sides(kg(20_000), stack).unwrap();
            (
                sides.load.exact(MassUnit::Kg),
                sides.difference.exact(MassUnit::Kg),
            )
        })
        .collect();
    // All four twenties are on: 100 + -70 on one side, -60 + 90 on the other, 60 g over, alike.
    assert_eq!(loads[2], ("100.06 kg".to_owned(), "0 kg".to_owned()));
    assert_eq!(loads[0], ("40.04 kg".to_owned(), "0.02 kg".to_owned()));
    assert_eq!(
        shares.sides(kg(20_000), &[face(10), face(10)]),
        None,
        "only two tens"
    );
}

proptest! {
    #[test]
    fn no_plate_changes_sides(
        offs in prop::collection::vec((prop::sample::select(vec![10_i64, 20]), -90_i64..90), 0..12),
        stacks in prop::collection::vec(
            prop::collection::vec(prop::sample::select(vec![10_i64, 20]).prop_map(face), 0..4),
            1..5,
        ),
    ) {
        let gym = set(weighed(&offs));
        let Some(shares) = share_out(&gym, kg(20_000), stacks.iter().map(Vec::as_slice)) else {
            return Ok(());
        };
        let all: Vec<_> = stacks.iter().filter_map(|s| shares.sides(kg(20_000), s)).collect();
        for one in &all {
            for other in &all {
                // A mark of ours has a dash; a plate that was not weighed has its label alone.
                let marks = one.left.iter().filter(|mark| mark.contains('-'));
                prop_assert!(!marks.clone().any(|mark| other.right.contains(mark)));
            }
        }
        let mass = |stack: &Vec<PlateFace>| stack.iter().map(|f| f.mass).sum::<Mass>();
        let heaviest = stacks.iter().max_by_key(|stack| mass(stack)).unwrap();
        let is_weighed = |mass: &Mass| gym.weighed.iter().any(|p| p.nominal == *mass);
        let bare = heaviest.iter().map(|f| f.mass).filter(|mass| !is_weighed(mass));
        let bar = kg(20_000) + bare.clone().sum::<Mass>() + bare.sum::<Mass>();
        let per_side = heaviest.iter().map(|f| f.mass).filter(is_weighed).collect();
        let best = plan(&Problem { bar, plates: gym.weighed.clone(), per_side }).unwrap();
        let sides = shares.sides(kg(20_000), heaviest).unwrap();
        prop_assert_eq!((sides.load, sides.difference), (best.load, best.difference));
    }
}
