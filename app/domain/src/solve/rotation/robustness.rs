//! How much a plan suffers when people take longer: of plans that end alike, the one is better
//! that suffers less.
use super::model::{Model, hole_after};
use alloc::vec;
use alloc::vec::Vec;

/// A changeover and the turn after it.
struct Step {
    lifter: usize,
    /// Handling and hole change, nanoseconds.
    changeover: i64,
    lasts: i64,
    /// Before the lifter's next turn.
    rest: i64,
}

/// By how much later all ends if one turn takes half as long again, summed up over all turns,
/// nanoseconds. Order and plates stay as they are: whose turns, and the plates of one side for
/// each, inside to outside.
pub(super) fn suffering(model: &Model, order: &[u8], stacks: &[Vec<u8>]) -> i64 {
    let steps = steps(model, order, stacks);
    let usual = end(model, &steps, None);
    let late = (0..steps.len()).map(|longer| end(model, &steps, Some(longer)) - usual);
    late.sum()
}

fn steps(model: &Model, order: &[u8], stacks: &[Vec<u8>]) -> Vec<Step> {
    let (mut done, mut hole) = (vec![0; model.lifters()], model.hole);
    let mut bar: &[u8] = &model.on_bar;
    let mut steps = Vec::new();
    for (&lifter, stack) in order.iter().zip(stacks) {
        let lifter = usize::from(lifter);
        let turn = model.first[lifter] + done[lifter];
        let then = hole_after(model.turns[turn].hole, hole);
        let mut kept = bar.iter().zip(stack).take_while(|(a, b)| a == b).count();
        while then != hole && kept > 0 && !model.light(model.load(&bar[..kept])) {
            kept -= 1;
        }
        let handling = model.handling(&bar[kept..]) + model.handling(&stack[kept..]);
        done[lifter] += 1;
        let goes_on = done[lifter] < model.count(lifter);
        steps.push(Step {
            lifter,
            changeover: handling + if then == hole { 0 } else { model.hole_change },
            lasts: model.turns[turn].lasts,
            rest: if goes_on {
                model.turns[turn + 1].rest
            } else {
                0
            },
        });
        (bar, hole) = (stack, then);
    }
    steps
}

/// When all ends, if the turn at place `longer` takes half as long again.
fn end(model: &Model, steps: &[Step], longer: Option<usize>) -> i64 {
    let (mut clock, mut ready) = (model.now, model.ready.clone());
    for (at, step) in steps.iter().enumerate() {
        let more = if longer == Some(at) {
            step.lasts / 2
        } else {
            0
        };
        clock = (clock + step.changeover).max(ready[step.lifter]) + step.lasts + more;
        ready[step.lifter] = clock + step.rest;
    }
    clock
}

#[cfg(test)]
mod tests {
    use super::{Step, end};
    use crate::length::Length;
    use crate::mass::Mass;
    use crate::solve::Equipment;
    use crate::solve::rotation::model::Model;
    use crate::solve::rotation::{Lifter, Loaders, Problem, Standing, Turn};
    use alloc::vec;
    use alloc::vec::Vec;

    /// By hand, in seconds: 0 lifts from 0 to 40, 1 from 40 to 70, 0 rests until 140 and lifts to
    /// 180. If the first turn takes 20 more, the rest moves with it: 200. If the second takes 15
    /// more, it does so while 0 rests: 180. The last takes its own 20: 200.
    #[test]
    fn what_goes_into_a_rest_is_not_suffered() {
        let turn = |lasts_ns| Turn {
            target: Mass::ZERO,
            below: Mass::ZERO,
            above: Mass::ZERO,
            least_diameter: Length::default(),
            hole: None,
            lasts_ns,
            rest_ns: 100,
        };
        let lifter = |lasts: &[u64]| Lifter {
            turns: lasts.iter().map(|&lasts| turn(lasts)).collect(),
            ended_ns: None,
        };
        let problem = Problem {
            equipment: Equipment {
                bar_and_collars: Mass::ZERO,
                sleeve: None,
                big_inside: true,
                plates: Vec::new(),
            },
            loaders: Loaders::Two,
            hole_change_ns: 0,
            hole_change_at_most: Mass::ZERO,
            lifters: vec![lifter(&[40, 40]), lifter(&[30])],
            standing: Standing::default(),
        };
        let model = Model::new(&problem, 0);
        let step = |lifter, lasts, rest| Step {
            lifter,
            changeover: 0,
            lasts,
            rest,
        };
        let steps = [step(0, 40, 100), step(1, 30, 0), step(0, 40, 0)];
        let ends: Vec<i64> = (0..3).map(|at| end(&model, &steps, Some(at))).collect();
        assert_eq!(
            (end(&model, &steps, None), ends),
            (180, vec![200, 180, 200])
        );
        let bare = vec![Vec::new(); 3];
        assert_eq!(super::suffering(&model, &[0, 1, 0], &bare), 40);
    }
}
