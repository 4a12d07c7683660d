//! A work load that the plates do not make within 2.5 % is refused, never rounded unseen.
use crate::fill::{Life, coached};
use crate::gym::{kg, plate};
use domain::day::{NoSheet, check_load};
use domain::ladder::work_off;
use domain::prescription::LoadWish;
use domain::sheet::{RungKind, Warning};
use domain::{Gym, LiftSheet, Mass, MassUnit, Plate, PlateFace};
use proptest::prelude::*;

/// Ines has pulled so much that no load of these looks wrong beside it.
fn strong() -> Gym {
    let mut gym = coached();
    gym.lifters[0].bests.push(("deadlift".into(), kg(400)));
    gym
}

/// What Ines gets for a deadlift of so many grams.
fn outcome(life: &mut Life, grams: i64) -> Result<LiftSheet, NoSheet> {
    life.plan(0, "deadlift", 100);
    let rows = life.state.plan.values_mut().next_back().expect("planned");
    rows[0].first.load = LoadWish::Mass(Mass::of(MassUnit::Kg, grams));
    let checked = check_load(&life.gym, &rows[0]);
    let outcome = life.entries(0)[0].outcome.clone();
    // What a plan's check tells is what the day tells.
    assert_eq!(checked.err(), outcome.as_ref().err().cloned());
    outcome
}

fn told(life: &mut Life, grams: i64) -> String {
    match outcome(life, grams) {
        Ok(sheet) => {
            let work = sheet.rungs.last().expect("a work set").load;
            let odd = sheet.warnings.contains(&Warning::NotLoadable);
            format!("{}, told: {odd}", work.words(MassUnit::Kg))
        }
        Err(why) => why.to_string(),
    }
}

/// Plates of 20, 10 and 5 kg on a bar of 20 kg: steps of ten kilograms up to 440.
#[test]
fn what_they_make_below_and_above_is_told() {
    let mut life = Life::new(strong());
    life.gym.plate_sets[0].plates = vec![plate(20, 450), plate(10, 450), plate(5, 230)];
    let mut told = |grams| told(&mut life, grams);
    assert_eq!(told(90_000), "90 kg, told: false");
    assert_eq!(told(88_000), "90 kg, told: true");
    assert_eq!(
        told(87_500),
        "the plates do not make 87.5 kg; they make 80 kg and 90 kg; ask the coach for another load"
    );
    assert_eq!(
        told(15_000),
        "the plates do not make 15 kg; they make 20 kg at least; ask the coach for another load"
    );
    assert_eq!(
        told(600_000),
        "the plates do not make 600 kg; they make 340 kg at most; ask the coach for another load"
    );
    assert_eq!(told(345_000), "340 kg, told: true");
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(200))]
    #[test]
    fn a_sheet_is_within_the_tolerance_or_is_not(
        grams in 5_000..300_000_i64,
        kinds in proptest::collection::btree_map(1_i64..50, 1_u16..4, 0..4),
    ) {
        let mut life = Life::new(strong());
        life.gym.plate_sets[0].plates = kinds
            .iter()
            .map(|(half_kilos, pairs)| Plate {
                pairs: *pairs,
                face: PlateFace {
                    mass: Mass::of(MassUnit::Kg, half_kilos * 500),
                    ..plate(1, 450).face
                },
                ..plate(1, 450)
            })
            .collect();
        let asked = Mass::of(MassUnit::Kg, grams);
        // Every load by counting: sets of pairs, ten plates of 40 mm a sleeve.
        let mut loads = vec![(kg(20), 0_u16)];
        for (half_kilos, pairs) in &kinds {
            let before = loads.clone();
            for n in 1..=*pairs {
                let pair = Mass::of(MassUnit::Kg, half_kilos * 1_000);
                loads.extend(before.iter().map(|(l, c)| (*l + pair.times(i64::from(n)), c + n)));
            }
        }
        loads.retain(|(_, count)| *count <= 10);
        let near = |(load, _): &&(Mass, u16)| load.apart(asked) <= work_off(asked);
        let makes = loads.iter().any(|load| near(&load));
        match outcome(&mut life, grams) {
            Ok(sheet) => {
                prop_assert!(makes);
                let work = sheet.rungs.iter().filter(|r| r.kind == RungKind::Work);
                for rung in work {
                    prop_assert!(rung.load.apart(asked) <= work_off(asked));
                }
            }
            Err(NoSheet::NotMade { below, above, .. }) => {
                prop_assert!(!makes);
                let under = loads.iter().map(|l| l.0).filter(|l| *l <= asked).max();
                let over = loads.iter().map(|l| l.0).filter(|l| *l >= asked).min();
                prop_assert_eq!((below, above), (under, over));
            }
            Err(other) => prop_assert!(false, "{}", other),
        }
    }
}
