//! Numbers of things by their digest: an open table with linear probing.
//!
//! Refuses: order; it is only ever looked up. Things with the same digest are told apart by the
//! caller.
use alloc::vec;
use alloc::vec::Vec;

#[derive(Debug)]
pub(super) struct Numbers {
    /// One more than the number, 0 when empty.
    slots: Vec<u32>,
    /// By number.
    digests: Vec<u64>,
}

impl Numbers {
    pub(super) fn new() -> Self {
        Self {
            slots: vec![0; 1 << 12],
            digests: Vec::new(),
        }
    }

    /// The number that has this digest and is the `same`, or else the next number, which is now
    /// taken; and whether it was there before.
    pub(super) fn find(&mut self, digest: u64, same: impl Fn(u32) -> bool) -> (u32, bool) {
        if self.digests.len() * 2 >= self.slots.len() {
            self.grow();
        }
        let mask = self.slots.len() - 1;
        let mut at = spread(digest) & mask;
        while self.slots[at] != 0 {
            let number = self.slots[at] - 1;
            if self.digests[number as usize] == digest && same(number) {
                return (number, true);
            }
            at = (at + 1) & mask;
        }
        let number = u32::try_from(self.digests.len()).expect("fewer than 2^32 states");
        self.digests.push(digest);
        self.slots[at] = number + 1;
        (number, false)
    }

    fn grow(&mut self) {
        let mask = self.slots.len() * 2 - 1;
        self.slots = vec![0; mask + 1];
        for (number, &digest) in (1..).zip(&self.digests) {
            let mut at = spread(digest) & mask;
            while self.slots[at] != 0 {
                at = (at + 1) & mask;
            }
            self.slots[at] = number;
        }
    }
}

/// The upper bits of a digest are mixed best.
fn spread(digest: u64) -> usize {
    (digest >> 20) as usize
}
