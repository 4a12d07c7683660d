//! The grid of masses to the nanogram, laid out so that few ways lead on from each spot.
//!
//! With big inside, plates go on kind by kind. So a layer holds the sets with so many pairs of one
//! kind and any of the heavier ones: one more pair leads to the next layer, and to pass on to the
//! lighter kinds is a way of its own. Thus the spots tell all that the store allows. In any order
//! there is one layer. Refuses: several kinds of one mass with big inside, for which no order is
//! given; more spots than allowed.
use super::grid::Grid;
use super::prepare::Ready;
use super::price::Price;
use alloc::vec;
use alloc::vec::Vec;
use core::cmp::Ordering;

/// Mass, and the least length of a set that has it.
type Sum = (i64, i64);

/// Sets of at most this mass and length.
#[derive(Clone, Copy)]
struct Room {
    mass: i64,
    length: i64,
}

/// The grid with at most `limit` spots, if that is enough.
pub(super) fn grid<P: Price>(ready: &Ready<P>, limit: usize) -> Option<Grid> {
    let room = Room {
        mass: ready.most(),
        length: ready.sleeve,
    };
    if ready.big_inside {
        sorted(ready, room, limit)
    } else {
        free(ready, room, limit)
    }
}

fn sorted<P: Price>(ready: &Ready<P>, room: Room, limit: usize) -> Option<Grid> {
    let mut layers: Vec<(usize, Vec<Sum>)> = Vec::new();
    let mut all = vec![(0, 0)];
    let mut spots = 1;
    for (number, kind) in ready.kinds.iter().enumerate() {
        if kind.group != number {
            return None;
        }
        let mut layer = all.clone();
        for _ in 0..kind.pairs {
            let more = with(&layer, (kind.mass, kind.thickness), room);
            all = merge(&all, &more);
            spots += layer.len();
            layers.push((number, layer));
            layer = more;
            if spots + all.len() > limit {
                return None;
            }
            if layer.is_empty() {
                break;
            }
        }
    }
    let kinds = ready.kinds.len();
    layers.push((kinds, all));
    let mut grid = Grid::empty();
    let mut from = Vec::with_capacity(layers.len());
    for (kind, layer) in &layers {
        let kinds = (*kind, (*kind + 1).min(kinds));
        from.push(grid.open(layer.iter().map(|sum| sum.0), kinds));
    }
    for (at, (kind, layer)) in layers.iter().enumerate() {
        let Some(plate) = ready.kinds.get(*kind) else {
            break;
        };
        let mut lighter = at + 1;
        while layers[lighter].0 == *kind {
            lighter += 1;
        }
        link(layer, &layers[at + 1].1, plate.mass, |here, there| {
            grid.lead(from[at] + here, *kind, from[at + 1] + there);
        });
        link(layer, &layers[lighter].1, 0, |here, there| {
            grid.pass(from[at] + here, from[lighter] + there);
        });
    }
    Some(grid)
}

fn free<P: Price>(ready: &Ready<P>, room: Room, limit: usize) -> Option<Grid> {
    let mut all = vec![(0, 0)];
    for kind in &ready.kinds {
        let mut more = all.clone();
        for _ in 0..kind.pairs {
            more = with(&more, (kind.mass, kind.thickness), room);
            if more.is_empty() {
                break;
            }
            all = merge(&all, &more);
            if all.len() > limit {
                return None;
            }
        }
    }
    let mut grid = Grid::empty();
    grid.open(all.iter().map(|sum| sum.0), (0, ready.kinds.len()));
    for (number, kind) in ready.kinds.iter().enumerate() {
        link(&all, &all, kind.mass, |here, there| {
            grid.lead(here, number, there);
        });
    }
    Some(grid)
}

/// One more plate on each, where there is room.
fn with(sums: &[Sum], (mass, length): Sum, room: Room) -> Vec<Sum> {
    let more = sums.iter().map(|sum| (sum.0 + mass, sum.1 + length));
    more.take_while(|sum| sum.0 <= room.mass)
        .filter(|sum| sum.1 <= room.length)
        .collect()
}

/// Both in one, rising; of equal masses the shorter.
fn merge(a: &[Sum], b: &[Sum]) -> Vec<Sum> {
    let mut both = Vec::with_capacity(a.len() + b.len());
    let (mut at, mut bt) = (0, 0);
    while at < a.len() && bt < b.len() {
        let (x, y) = (a[at], b[bt]);
        both.push(if x.0 == y.0 {
            x.min(y)
        } else if x.0 < y.0 {
            x
        } else {
            y
        });
        at += usize::from(x.0 <= y.0);
        bt += usize::from(y.0 <= x.0);
    }
    both.extend_from_slice(&a[at..]);
    both.extend_from_slice(&b[bt..]);
    both
}

/// Tells for each of `from`, by place, which of `to` has the sum of its mass and the `plate`'s.
fn link(from: &[Sum], to: &[Sum], plate: i64, mut note: impl FnMut(usize, usize)) {
    let mut there = 0;
    for (here, sum) in from.iter().enumerate() {
        let mass = sum.0 + plate;
        while to.get(there).is_some_and(|sum| sum.0 < mass) {
            there += 1;
        }
        match to.get(there).map(|sum| sum.0.cmp(&mass)) {
            Some(Ordering::Equal) => note(here, there),
            Some(_) => {}
            None => return,
        }
    }
}
