//! The figures of next time, as a coach can change them in programme.toml.
use crate::mass::Mass;

/// No raise is greater than this share of the load, in hundredths of a percent: ACSM position
/// stand 2009 (seen, abstract): raise the load by 2 to 10 % once the present one is done. Where
/// the plates make no step so small, the smallest that they make counts.
pub const RAISE_MOST: u32 = 1_000;

/// What a coach has ruled for one lift of one lifter. Shares are hundredths of a percent of the
/// load.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Rule {
    /// How much a lift that went well adds.
    pub step: Step,
    /// How many times in a row a load may fall short before it is lowered, at least 1.
    pub tries: u8,
    /// How many times in a row something may go wrong with a load, the last time with the back
    /// moving late in a set, before it is lowered, at least 1.
    pub moved_tries: u8,
    /// What is taken off then, and at once when the back moved or the reps failed early.
    pub drop: u32,
    /// How many drops there may be without a new best before a reset.
    pub drops: u8,
    /// What a reset takes off.
    pub reset: u32,
    /// Days of absence, beyond the programme's own spacing, over which a load is held.
    pub away_days: u16,
    /// What each step of easing takes off after more of them.
    pub away: u32,
}

/// How much a lift that went well adds.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Step {
    /// So much.
    Mass(Mass),
    /// So many hundredths of a percent of the load.
    Share(u32),
}

impl Rule {
    /// For a lifter used to the lift.
    pub const SHIPPED: Self = Self {
        // The lower end of ACSM's 2 to 10 %.
        step: Step::Share(250),
        tries: 2,
        moved_tries: 1,
        drop: 500,
        drops: 1,
        reset: 1_000,
        // Strength is held for about three weeks without training (Bosquet et al. 2013, McMaster
        // et al. 2013; both from memory).
        away_days: 21,
        away: 500,
    };
}

/// What holds of a decision on the day, for one lift of one lifter. Shares are hundredths of a
/// percent of the load; days of absence are those beyond the programme's own spacing.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Limits {
    /// Days of absence that are no break: somebody came a little late.
    pub late_days: u16,
    /// So many days more of absence take one step more off.
    pub away_step_days: u16,
    /// After more days of absence a lift begins anew with the coach.
    pub anew_days: u16,
    /// Each day of illness counts as so many days of absence, beside itself.
    pub ill: u8,
    /// The most that a track rises within a week.
    pub week: u32,
    /// The smallest step that the plates make is taken up to this share, even where it is over
    /// [`RAISE_MOST`].
    pub coarse: u32,
    /// So many pulls of a family that went wrong in a row are over-reaching.
    pub over: u8,
    /// Within so many days.
    pub over_days: u16,
    /// A spell of lighter days, three at least, that lasts longer is what the track follows from.
    pub light_days: u16,
}

impl Limits {
    /// For a lifter used to the lift. Common practice, no source.
    pub const SHIPPED: Self = Self {
        late_days: 6,
        away_step_days: 14,
        anew_days: 84,
        ill: 2,
        week: 1_000,
        coarse: 2_500,
        over: 3,
        over_days: 21,
        light_days: 21,
    };
}
