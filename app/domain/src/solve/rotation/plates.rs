//! A set of plates of one side: how many of each kind.
//!
//! Refuses: more than 255 of a kind; no sleeve carries so many.
use super::model::Model;
use crate::solve::Equipment;
use alloc::vec::Vec;

/// By place in [`Model::kinds`].
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Plates([u8; Equipment::KINDS_LIMIT]);

impl Plates {
    pub(super) const NONE: Self = Self([0; Equipment::KINDS_LIMIT]);

    pub(super) fn of(kinds: &[u8]) -> Self {
        let mut plates = Self::NONE;
        for &kind in kinds {
            plates.0[usize::from(kind)] += 1;
        }
        plates
    }

    fn zip(&self, other: &Self, each: impl Fn(u8, u8) -> u8) -> Self {
        let mut plates = *self;
        for (count, other) in plates.0.iter_mut().zip(&other.0) {
            *count = each(*count, *other);
        }
        plates
    }

    pub(super) fn and(&self, other: &Self) -> Self {
        self.zip(other, u8::saturating_add)
    }

    pub(super) fn without(&self, other: &Self) -> Self {
        self.zip(other, u8::saturating_sub)
    }

    pub(super) fn common(&self, other: &Self) -> Self {
        self.zip(other, u8::min)
    }

    pub(super) fn within(&self, other: &Self) -> bool {
        self.common(other) == *self
    }

    /// Those of the kinds before `kind`.
    pub(super) fn before(&self, kind: usize) -> Self {
        let mut plates = *self;
        plates.0[kind..].fill(0);
        plates
    }

    pub(super) fn count(&self) -> usize {
        self.0.iter().map(|&n| usize::from(n)).sum()
    }

    pub(super) fn handling(&self, model: &Model) -> i64 {
        let kinds = model.kinds.iter().zip(&self.0);
        kinds.map(|(kind, &n)| i64::from(n) * kind.handling).sum()
    }

    /// Bar and these plates on both sides.
    pub(super) fn load(&self, model: &Model) -> i64 {
        let kinds = model.kinds.iter().zip(&self.0);
        model.bar
            + kinds
                .map(|(kind, &n)| 2 * i64::from(n) * kind.mass)
                .sum::<i64>()
    }

    /// The kinds one by one.
    pub(super) fn heaviest_first(&self) -> impl Iterator<Item = u8> {
        let kinds = (0..).zip(self.0);
        kinds.flat_map(|(kind, n)| core::iter::repeat_n(kind, usize::from(n)))
    }

    /// Fills `parts` with all sets within this one, itself and the empty one among them.
    pub(super) fn parts(&self, parts: &mut Vec<Self>) {
        parts.clear();
        parts.push(Self::NONE);
        for (kind, &n) in self.0.iter().enumerate().filter(|(_, n)| **n > 0) {
            for at in 0..parts.len() {
                for count in 1..=n {
                    let mut part = parts[at];
                    part.0[kind] = count;
                    parts.push(part);
                }
            }
        }
    }

    /// A number that hardly any two rows of sets share, built up set by set: eight kinds at a
    /// time are folded in and spread (FNV-1a's steps, wider).
    pub(super) fn digest(&self, before: u64) -> u64 {
        self.0.chunks_exact(8).fold(before, |digest, counts| {
            let counts = counts.iter().fold(0, |all, &n| all << 8 | u64::from(n));
            let mixed = (digest ^ counts).wrapping_mul(0x9E37_79B9_7F4A_7C15);
            mixed ^ mixed >> 32
        })
    }
}

/// How sets are packed into a few bits, to be compared fast: each kind has a field, with a spare
/// bit above it.
#[derive(Debug)]
pub(super) struct Packing {
    /// By kind.
    shifts: Vec<u32>,
    spare: u128,
}

impl Packing {
    /// `None` when the kinds are too many.
    pub(super) fn new(model: &Model) -> Option<Self> {
        let mut packing = Self {
            shifts: Vec::new(),
            spare: 0,
        };
        let mut shift = 0;
        for kind in &model.kinds {
            let most = model.fitting(kind).min(i64::from(u8::MAX)).unsigned_abs();
            let bits = u64::BITS - most.leading_zeros();
            packing.shifts.push(shift);
            shift += bits + 1;
            packing.spare |= 1_u128.checked_shl(shift - 1)?;
        }
        Some(packing)
    }

    pub(super) fn pack(&self, plates: &Plates) -> u128 {
        let fields = self.shifts.iter().zip(&plates.0);
        fields.map(|(shift, &n)| u128::from(n) << shift).sum()
    }

    /// Whether one packed set is within another.
    pub(super) fn within(&self, a: u128, b: u128) -> bool {
        // A field that has to borrow takes its spare bit.
        ((b | self.spare) - a) & self.spare == self.spare
    }
}
