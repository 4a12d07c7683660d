//! A rung that cannot be loaded is named, with what bites.
use crate::exhaustive;
use crate::problems::{self, Shape};
use domain::Mass;
use domain::solve::Constraint;
use domain::solve::ladder::{self, Problem};

/// The first rung that no stack makes.
fn first_lost(problem: &Problem) -> Option<usize> {
    let stacks = exhaustive::stacks(problem);
    let lost = |&rung: &usize| {
        let made = |stack: &Vec<usize>| exhaustive::penalty(problem, rung, stack).is_some();
        !stacks.iter().any(made)
    };
    (0..problem.rungs.len()).find(lost)
}

#[test]
fn a_refused_ladder_names_its_first_rung_and_what_bites() {
    let mut seen = Vec::new();
    for seed in 0..3_000 {
        let problem = problems::random(seed, Shape::TINY);
        let Err(refusal) = ladder::plan(&problem) else {
            continue;
        };
        let rung = first_lost(&problem).unwrap();
        assert_eq!(
            refusal.field,
            format!("rungs[{rung}].target"),
            "{problem:#?}"
        );
        let mut eased = problem.clone();
        eased.on_bar.clear();
        match refusal.constraint {
            Constraint::Sleeve => eased.equipment.sleeve = None,
            Constraint::Inventory => {
                eased.equipment.sleeve = None;
                // More than any target here can take.
                let stock = eased.equipment.plates.iter_mut();
                stock.for_each(|plate| plate.pairs = 60);
                eased.equipment.big_inside = true;
            }
            Constraint::Tolerance => {
                eased.rungs[rung].below = Mass::LIMIT;
                eased.rungs[rung].above = Mass::LIMIT;
            }
            other @ (Constraint::Range
            | Constraint::Bar
            | Constraint::BigInside
            | Constraint::Hole) => panic!("seed {seed}: {other:?} bites in {problem:#?}"),
        }
        eased.rungs.truncate(rung + 1);
        let all_plates = refusal.text.contains("with all plates");
        assert!(
            all_plates || first_lost(&eased) != Some(rung),
            "seed {seed}: {refusal}"
        );
        if !seen.contains(&refusal.constraint) {
            seen.push(refusal.constraint);
        }
    }
    seen.sort();
    assert_eq!(
        seen,
        [
            Constraint::Inventory,
            Constraint::Sleeve,
            Constraint::Tolerance
        ]
    );
}
