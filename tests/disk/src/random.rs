//! Numbers that look random and follow from a seed (SplitMix64: Steele, Lea and Flood, 2014).

/// A row of numbers.
#[derive(Debug, Clone)]
pub struct Random(u64);

impl Random {
    /// The row of `seed`.
    #[must_use]
    pub const fn of(seed: u64) -> Self {
        Self(seed)
    }

    /// The next number.
    pub fn draw(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        z ^ (z >> 31)
    }

    /// One of so many, from 0.
    pub fn below(&mut self, many: u64) -> u64 {
        self.draw() % many.max(1)
    }
}
