//! The best match: one option of each label, so that the sides differ least, then the load is
//! nearest. Refuses: trying every pair.
use super::options::{Choice, Set};
use super::{Refusal, fold};
use alloc::vec;
use alloc::vec::Vec;
use core::cmp::Ordering;

/// The best sum of one option of each set.
pub(super) fn best(mut sets: Vec<Set>) -> Result<Choice, Refusal> {
    while sets.len() > 2 {
        sets.sort_by_key(Vec::len);
        let (a, b) = (sets.remove(0), sets.remove(0));
        sets.push(fold(&a, &b)?);
    }
    let nothing = || vec![Choice::NOTHING];
    let b = sets.pop().unwrap_or_else(nothing);
    let a = sets.pop().unwrap_or_else(nothing);
    let least = least_difference(&a, &b);
    let mut best: Option<Choice> = None;
    for wanted in [least, -least] {
        nearest_with(&a, &b, wanted, &mut best);
        if least == 0 {
            break;
        }
    }
    Ok(best.unwrap_or(Choice::NOTHING))
}

/// The least distance from zero of a difference of `a` and one of `b`: one walks up, the other
/// down.
fn least_difference(a: &Set, b: &Set) -> i64 {
    let mut least = i64::MAX;
    let (mut up, mut down) = (a.iter().peekable(), b.iter().rev().peekable());
    while let (Some(x), Some(y)) = (up.peek(), down.peek()) {
        let sum = x.left_less_right + y.left_less_right;
        least = least.min(sum.abs());
        match sum.cmp(&0) {
            Ordering::Less => drop(up.next()),
            Ordering::Greater => drop(down.next()),
            Ordering::Equal => return 0,
        }
    }
    least
}

/// Of pairs whose differences make exactly `wanted`, the one whose load is nearest.
fn nearest_with(a: &Set, b: &Set, wanted: i64, best: &mut Option<Choice>) {
    let (mut low, mut high) = (0, b.len());
    while low < a.len() && high > 0 {
        let (x, y) = (a[low].left_less_right, b[high - 1].left_less_right);
        match (x + y).cmp(&wanted) {
            Ordering::Less => low += 1,
            Ordering::Greater => high -= 1,
            Ordering::Equal => {
                let ups = run_up(a, low);
                let downs = run_down(b, high);
                nearest(&a[low..ups], &b[downs..high], best);
                (low, high) = (ups, downs);
            }
        }
    }
}

fn run_up(set: &Set, from: usize) -> usize {
    let same = |o: &&Choice| o.left_less_right == set[from].left_less_right;
    from + set[from..].iter().take_while(same).count()
}

fn run_down(set: &Set, to: usize) -> usize {
    let same = |o: &&Choice| o.left_less_right == set[to - 1].left_less_right;
    to - set[..to].iter().rev().take_while(same).count()
}

/// Both lists rise in `over`; the sum nearest to zero is found by walking up one and down the
/// other.
fn nearest(a: &[Choice], b: &[Choice], best: &mut Option<Choice>) {
    let (mut low, mut high) = (0, b.len());
    while low < a.len() && high > 0 {
        let sum = a[low].over + b[high - 1].over;
        let better = best.as_ref().is_none_or(|kept| {
            let found = a[low].with(b[high - 1]);
            (sum.abs(), found.left, found.right) < (kept.over.abs(), kept.left, kept.right)
        });
        if better {
            *best = Some(a[low].with(b[high - 1]));
        }
        if sum < 0 { low += 1 } else { high -= 1 }
    }
}
