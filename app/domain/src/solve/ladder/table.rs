//! What the search has found, by set and stretch. Refuses: order; it is only ever looked up.
use super::price::Price;
use alloc::vec;
use alloc::vec::Vec;

/// A price, or at least that much is known of it.
#[derive(Debug, Clone, Copy)]
pub(super) struct Known<P> {
    /// The price; when not `exact`, it is at least this.
    pub price: P,
    /// Whether it is the price itself.
    pub exact: bool,
}

/// An open table with linear probing, of bounded size: what does not fit is not remembered.
#[derive(Debug)]
pub(super) struct Table<P> {
    slots: Vec<Slot<P>>,
    filled: usize,
}

/// Key and one, 0 when empty; and what is known.
#[derive(Debug, Clone, Copy, Default)]
struct Slot<P> {
    key: u128,
    price: P,
    exact: bool,
}

/// All slots together, of which at most half are filled; while the table grows, half as many again
/// are there.
const BYTES_LIMIT: usize = 64 << 20;

impl<P: Price> Table<P> {
    /// An empty table.
    pub(super) fn new() -> Self {
        Self {
            slots: vec![Slot::default(); 256],
            filled: 0,
        }
    }

    /// What is known under `key`, which is not the greatest that there is.
    pub(super) fn get(&self, key: u128) -> Option<Known<P>> {
        let slot = &self.slots[self.find(key + 1)];
        (slot.key != 0).then_some(Known {
            price: slot.price,
            exact: slot.exact,
        })
    }

    /// Replaces what is known under `key`.
    pub(super) fn put(&mut self, key: u128, known: Known<P>) {
        if self.filled * 2 >= self.slots.len()
            && self.slots.len() * 2 * size_of::<Slot<P>>() <= BYTES_LIMIT
        {
            self.grow();
        }
        let at = self.find(key + 1);
        if self.slots[at].key == 0 {
            if self.filled * 2 >= self.slots.len() {
                return;
            }
            self.filled += 1;
        }
        self.slots[at] = Slot {
            key: key + 1,
            price: known.price,
            exact: known.exact,
        };
    }

    fn find(&self, key: u128) -> usize {
        let mask = self.slots.len() - 1;
        let mut at = scatter(key) & mask;
        while self.slots[at].key != 0 && self.slots[at].key != key {
            at = (at + 1) & mask;
        }
        at
    }

    fn grow(&mut self) {
        let double = vec![Slot::default(); self.slots.len() * 2];
        let full = core::mem::replace(&mut self.slots, double);
        for slot in full.into_iter().filter(|slot| slot.key != 0) {
            let at = self.find(slot.key);
            self.slots[at] = slot;
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
