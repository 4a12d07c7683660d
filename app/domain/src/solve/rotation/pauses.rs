//! What the pauses between two turns of one lifter take at least, beyond what `covering` counts.
//!
//! Either nobody lifts in a pause: then it is as long as the rest. Or somebody does: then the
//! plates that both turns need, and that other turn does not have, come off and go on once more.
//! So that nothing is counted twice, each plate counts for one lifter alone.
use super::covering::Plates;
use super::gaps::Gaps;
use super::model::NO_HOLE;
use super::stacks::at;
use alloc::vec;
use alloc::vec::Vec;

/// Between a lifter's turn and the next.
struct Pause {
    lifter: usize,
    /// The turn after it.
    turn: usize,
    /// Plates that are on the bar for both.
    both: Vec<usize>,
}

/// What all pauses take at least, nanoseconds.
pub(super) fn least(plates: &Plates<'_>) -> i64 {
    let pauses = pauses(plates);
    let owners = owners(plates, &pauses);
    let gaps = Gaps::new(plates.model, plates.stacks);
    let each = pauses.iter().map(|pause| {
        let own = pause
            .both
            .iter()
            .filter(|&&number| owners[number] == Some(pause.lifter));
        let own: Vec<usize> = own.copied().collect();
        if own.is_empty() {
            return 0;
        }
        filled(plates, pause.lifter, &own).min(unfilled(plates, &gaps, pause.turn))
    });
    each.sum()
}

fn pauses(plates: &Plates<'_>) -> Vec<Pause> {
    let model = plates.model;
    let mut pauses = Vec::new();
    for lifter in 0..model.lifters() {
        for turn in model.first[lifter] + 1..model.first[lifter + 1] {
            let hole = model.turns[turn].hole;
            if model.turns[turn - 1].hole != hole {
                continue;
            }
            let before = needed(plates, turn - 1);
            let mut both = needed(plates, turn);
            both.retain(|number| before.contains(number));
            // A heavy plate goes on once for each hole as it is; with a hole of its own or with one
            // hole alone, it is known for which one it goes on once more.
            let told = hole != NO_HOLE || plates.holes.len() == 1;
            both.retain(|&number| told || !plates.heavy[number]);
            pauses.push(Pause { lifter, turn, both });
        }
    }
    pauses
}

/// Plates that all stacks of a turn have.
fn needed(plates: &Plates<'_>, turn: usize) -> Vec<usize> {
    let mut stacks = plates.stacks.serving[turn]
        .iter()
        .map(|&node| plates.of(node));
    let mut needed = stacks.next().unwrap_or_default();
    for stack in stacks {
        needed.retain(|number| stack.contains(number));
    }
    needed
}

/// By plate: the lifter for whom it counts, the one with most pauses that need it.
fn owners(plates: &Plates<'_>, pauses: &[Pause]) -> Vec<Option<usize>> {
    let lifters = plates.model.lifters();
    let mut counts = vec![0; lifters * plates.handling.len()];
    for pause in pauses {
        for &number in &pause.both {
            counts[number * lifters + pause.lifter] += 1;
        }
    }
    let most = |counts: &[i32]| {
        let most = (0..lifters).max_by_key(|&l| (counts[l], core::cmp::Reverse(l)))?;
        (counts[most] > 0).then_some(most)
    };
    counts.chunks_exact(lifters).map(most).collect()
}

/// If somebody lifts in a pause: the least that comes off and goes on again of a lifter's `own`
/// plates.
fn filled(plates: &Plates<'_>, lifter: usize, own: &[usize]) -> i64 {
    let model = plates.model;
    let others = (0..model.turns.len())
        .filter(|turn| !(model.first[lifter]..model.first[lifter + 1]).contains(turn));
    let mut least = i64::MAX;
    for turn in others {
        for &node in &plates.stacks.serving[turn] {
            if plates.stacks.stub[at(node)] {
                return 0;
            }
            let has = plates.of(node);
            let off = own.iter().filter(|number| !has.contains(number));
            least = least.min(off.map(|&number| 2 * plates.handling[number]).sum());
        }
    }
    least
}

/// If nobody does: the rest, less the handling between the two turns, which is counted already.
fn unfilled(plates: &Plates<'_>, gaps: &Gaps<'_>, turn: usize) -> i64 {
    let stacks = plates.stacks;
    let mut most = 0;
    for &from in &stacks.serving[turn - 1] {
        for &to in &stacks.serving[turn] {
            if stacks.stub[at(from)] || stacks.stub[at(to)] {
                return 0;
            }
            most = most.max(gaps.plain(from, to));
        }
    }
    (plates.model.turns[turn].rest - most).max(0)
}
