//! The balance planner against a search through every choice, and by hand.
use domain::solve::balance::{Plan, Problem, Weighed, plan};
use domain::{Mass, MassUnit};
use proptest::prelude::*;

const G: i64 = 1_000_000_000;

fn kg(n: i64) -> Mass {
    Mass::of(MassUnit::Kg, n * 1_000)
}

fn weighed(mark: &str, nominal: i64, grams_off: i64) -> Weighed {
    let nominal = kg(nominal);
    Weighed {
        mark: mark.into(),
        nominal,
        mass: nominal + Mass::from_ng(grams_off * G),
    }
}

fn marks<'a>(problem: &'a Problem, side: &[usize]) -> Vec<&'a str> {
    side.iter()
        .map(|at| problem.plates[*at].mark.as_str())
        .collect()
}

#[test]
fn by_hand() {
    let problem = Problem {
        bar: kg(20),
        plates: vec![
            weighed("a", 20, 100),
            weighed("b", 20, -60),
            weighed("c", 20, 90),
            weighed("d", 20, -70),
        ],
        per_side: vec![kg(20)],
    };
    // a and c differ by 10 g and are 190 g over; b and d differ by 10 g and are 130 g under.
    let found = plan(&problem).unwrap();
    assert_eq!(
        (marks(&problem, &found.left), marks(&problem, &found.right)),
        (vec!["b"], vec!["d"])
    );
    assert_eq!(found.difference, Mass::from_ng(10 * G));
    assert_eq!(found.load, kg(60) + Mass::from_ng(-130 * G));
}

#[test]
fn refusals_say_what_is_missing() {
    let problem = Problem {
        bar: kg(20),
        plates: vec![weighed("a", 20, 0)],
        per_side: vec![kg(20)],
    };
    let told = plan(&problem).unwrap_err();
    assert_eq!(told.field, "per_side[0]");
    assert_eq!(
        told.text,
        "needs 2 plates of 20 kg for both sides, and 1 are there"
    );
    let many = (0..17).map(|n| weighed(&format!("p{n}"), 20, n)).collect();
    let problem = Problem {
        bar: kg(20),
        plates: many,
        per_side: vec![kg(20)],
    };
    assert!(
        plan(&problem)
            .unwrap_err()
            .text
            .contains("more than the 16")
    );
}

#[test]
fn sixteen_plates_of_each_of_three_labels() {
    let plates = [25, 20, 10].iter().flat_map(|nominal| {
        (0..16).map(move |n| {
            weighed(
                &format!("{nominal}-{n}"),
                *nominal,
                (n * n * 7 + n * 13) % 60 * 5 - 150,
            )
        })
    });
    let problem = Problem {
        bar: kg(20),
        plates: plates.collect(),
        per_side: vec![kg(25), kg(25), kg(20), kg(20), kg(10)],
    };
    let found = plan(&problem).unwrap();
    valid(&problem, &found).unwrap();
    assert_eq!(
        found.difference,
        Mass::ZERO,
        "with so many plates the sides can be alike"
    );
}

/// Whether a plan is one at all, with its figures worked out anew.
fn valid(problem: &Problem, found: &Plan) -> Result<(), String> {
    let mut all: Vec<usize> = found.left.iter().chain(&found.right).copied().collect();
    let sum = |side: &[usize]| side.iter().map(|at| problem.plates[*at].mass).sum::<Mass>();
    for side in [&found.left, &found.right] {
        let labels: Vec<Mass> = side.iter().map(|at| problem.plates[*at].nominal).collect();
        if labels != problem.per_side {
            return Err(format!("a side has {labels:?}"));
        }
    }
    if found.load != problem.bar + sum(&found.left) + sum(&found.right) {
        return Err("the load is another".into());
    }
    if found.difference != sum(&found.left) - sum(&found.right) {
        return Err("the difference is another, or the left is the lighter".into());
    }
    all.sort_unstable();
    all.dedup();
    if all.len() == 2 * problem.per_side.len() {
        Ok(())
    } else {
        Err("a plate is used twice".into())
    }
}

/// Both objectives of every choice there is: the least pair.
fn searched(problem: &Problem) -> Option<(i64, i64)> {
    fn go(
        problem: &Problem,
        at: usize,
        used: &mut Vec<bool>,
        diff: i64,
        over: i64,
        best: &mut Option<(i64, i64)>,
    ) {
        let slots = 2 * problem.per_side.len();
        if at == slots {
            let found = (diff.abs(), over.abs());
            *best = Some(best.map_or(found, |b| b.min(found)));
            return;
        }
        let nominal = problem.per_side[at / 2];
        for place in 0..problem.plates.len() {
            let plate = &problem.plates[place];
            if used[place] || plate.nominal != nominal {
                continue;
            }
            used[place] = true;
            let sign = if at.is_multiple_of(2) { 1 } else { -1 };
            let over = over + plate.mass.ng() - nominal.ng();
            go(
                problem,
                at + 1,
                used,
                diff + sign * plate.mass.ng(),
                over,
                best,
            );
            used[place] = false;
        }
    }
    let mut best = None;
    go(
        problem,
        0,
        &mut vec![false; problem.plates.len()],
        0,
        0,
        &mut best,
    );
    best
}

fn problems() -> impl Strategy<Value = Problem> {
    let plate = (prop::sample::select(vec![10_i64, 20]), -9_i64..9);
    let side = prop::collection::vec(prop::sample::select(vec![10_i64, 20]), 0..3);
    (prop::collection::vec(plate, 0..9), side).prop_map(|(plates, side)| Problem {
        bar: kg(20),
        plates: plates
            .iter()
            .enumerate()
            .map(|(at, (nominal, off))| weighed(&at.to_string(), *nominal, off * 17))
            .collect(),
        per_side: side.into_iter().map(kg).collect(),
    })
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(500))]

    #[test]
    fn equal_to_every_choice(problem in problems()) {
        match (plan(&problem), searched(&problem)) {
            (Ok(found), Some(best)) => {
                prop_assert_eq!(valid(&problem, &found), Ok(()));
                let side: Mass = problem.per_side.iter().copied().sum();
                let off = found.load.apart(problem.bar + side + side);
                prop_assert_eq!((found.difference.ng(), off.ng()), best);
                prop_assert_eq!(plan(&problem), Ok(found), "the same every time");
            }
            (Err(refused), None) => prop_assert!(refused.field.starts_with("per_side")),
            (found, best) => prop_assert!(false, "{found:?} against {best:?}"),
        }
    }
}
