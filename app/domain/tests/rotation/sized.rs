//! Rotations in which some turns start on the floor: they ask for a plate of some size.
use crate::random::{self, Dice};
use crate::{exhaust, replay, small};
use domain::Length;
use domain::solve::rotation::Problem;

/// Plates of two sizes, and every other turn wants a large one.
fn sized(mut problem: Problem, seed: u64) -> Problem {
    let dice = &mut Dice::new(seed ^ 0x517E);
    for plate in &mut problem.equipment.plates {
        plate.diameter = Length::mm(dice.pick(&[230, 450, 450]));
    }
    for turn in problem.lifters.iter_mut().flat_map(|l| &mut l.turns) {
        turn.least_diameter = Length::mm(dice.pick(&[0, 0, 0, 0, 0, 200, 450]));
    }
    problem
}

#[test]
fn equals_exhaustive_search() {
    let (mut solved, mut refused, mut later) = (0, 0, 0);
    for seed in 0..400 {
        for plain in [random::small(seed), random::under_way(seed)] {
            let problem = sized(plain.clone(), seed);
            let best = exhaust::best(&problem);
            let Ok(plan) = small::solved(&problem) else {
                assert_eq!(best, None, "seed {seed} was refused: {problem:?}");
                refused += 1;
                continue;
            };
            replay::check(&problem, &plan);
            let found = (plan.ends_ns, plan.handling_ns);
            assert!(plan.proven && plan.least_handling, "seed {seed} is proven");
            assert_eq!(Some(found), best, "seed {seed}: {problem:?}");
            solved += 1;
            let of_any_size = small::solved(&plain).expect("can be solved with less");
            later += usize::from((of_any_size.ends_ns, of_any_size.handling_ns) < found);
        }
    }
    assert!(
        solved > 300 && refused > 50,
        "{solved} solved, {refused} refused"
    );
    assert!(later > 10, "only {later} cost more for the size");
}
