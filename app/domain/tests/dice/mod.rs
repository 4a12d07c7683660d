//! Seeded numbers, the same on every machine.

/// SplitMix64 (Steele, Lea and Flood 2014).
pub(crate) struct Dice(u64);

impl Dice {
    pub(crate) fn new(seed: u64) -> Self {
        Self(seed)
    }

    /// Below `sides`.
    pub(crate) fn roll(&mut self, sides: u16) -> u16 {
        self.0 = self.0.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        z ^= z >> 31;
        u16::try_from(z % u64::from(sides)).expect("below sides")
    }

    /// One of them.
    pub(crate) fn pick<T: Copy>(&mut self, of: &[T]) -> T {
        let sides = u16::try_from(of.len()).expect("a short list");
        of[usize::from(self.roll(sides))]
    }

    /// True once in so many times.
    pub(crate) fn one_in(&mut self, sides: u16) -> bool {
        self.roll(sides) == 0
    }
}
