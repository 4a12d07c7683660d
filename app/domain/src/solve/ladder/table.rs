//! What the search has found, by set and stretch. Refuses: order; it is only ever looked up.
use super::prepare::Price;
use alloc::vec;
use alloc::vec::Vec;

/// A price, or at least that much is known of it.
#[derive(Debug, Clone, Copy)]
pub(super) struct Known {
    /// The price; when not `exact`, it is at least this.
    pub price: Price,
    /// Whether it is the price itself.
    pub exact: bool,
}

/// An open table with linear probing.
#[derive(Debug)]
pub(super) struct Table {
    slots: Vec<Option<(u128, Known)>>,
    filled: usize,
}

impl Table {
    /// An empty table.
    pub(super) fn new() -> Self {
        Self {
            slots: vec![None; 256],
            filled: 0,
        }
    }

    /// What is known under `key`.
    pub(super) fn get(&self, key: u128) -> Option<Known> {
        self.slots[self.find(key)].map(|(_, known)| known)
    }

    /// Replaces what is known under `key`.
    pub(super) fn put(&mut self, key: u128, known: Known) {
        if self.filled * 2 >= self.slots.len() {
            self.grow();
        }
        let at = self.find(key);
        self.filled += usize::from(self.slots[at].is_none());
        self.slots[at] = Some((key, known));
    }

    fn find(&self, key: u128) -> usize {
        let mask = self.slots.len() - 1;
        let mut at = scatter(key) & mask;
        while self.slots[at].is_some_and(|(other, _)| other != key) {
            at = (at + 1) & mask;
        }
        at
    }

    fn grow(&mut self) {
        let double = vec![None; self.slots.len() * 2];
        for slot in core::mem::replace(&mut self.slots, double)
            .into_iter()
            .flatten()
        {
            let at = self.find(slot.0);
            self.slots[at] = Some(slot);
        }
    }
}

/// Spreads the key over the table: two rounds of multiply and fold.
fn scatter(key: u128) -> usize {
    const ODD: u128 = 0x9E37_79B9_7F4A_7C15_F39C_C060_5CED_C835;
    let once = key.wrapping_mul(ODD);
    let twice = (once ^ (once >> 64)).wrapping_mul(ODD);
    (twice >> 72) as usize
}
