//! A meet or a test day: when to take which warm-up, counted back from the opener and moved along
//! as the flight speeds up or slows down.
//!
//! Times are whole seconds from now. The figures of [`Habit::USUAL`] are common practice, no
//! source; whoever runs the lifter that day can change each. Refuses: to know the rules of a
//! federation; what may be changed at the table, and until when, is for the referee to say.
use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

/// The longest attempt that is reckoned with, seconds.
pub const ATTEMPT_MOST_S: u32 = 600;
/// The most attempts before the opener.
pub const BEFORE_MOST: u16 = 200;
/// The most warm-ups.
pub const WARM_UPS_MOST: u8 = 12;
/// The longest time that is reckoned with, seconds: a day.
pub const TIME_MOST_S: u32 = 86_400;

/// How warm-ups are spaced.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Habit {
    /// From the start of the last warm-up to the opener where there is time.
    pub last_s: u32,
    /// And never nearer than this.
    pub last_least_s: u32,
    /// From one warm-up to the next where there is time.
    pub apart_s: u32,
    /// And never nearer than this.
    pub apart_least_s: u32,
}

impl Habit {
    /// The last warm-up five minutes before the opener, the others four minutes apart; pressed for
    /// time three minutes and a minute and a half.
    pub const USUAL: Self = Self {
        last_s: 300,
        last_least_s: 180,
        apart_s: 240,
        apart_least_s: 90,
    };
}

/// The flight as it stands.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Flight {
    /// Attempts before the lifter's opener, counted from the start of the flight (or of the one
    /// before it, when that is still to come): the place in the order, less one.
    pub before: u16,
    /// How long one attempt was said to take, seconds.
    pub attempt_s: u32,
    /// How many of them are over.
    pub called: u16,
    /// How long those took together, seconds.
    pub elapsed_s: u32,
}

/// How far the lifter is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Taken {
    /// Warm-ups done.
    pub count: u8,
    /// Seconds since the last of them.
    pub since_s: u32,
}

/// What to do, counted back.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Timed {
    /// The pace that is reckoned with, seconds an attempt.
    pub pace_s: u32,
    /// Until the opener.
    pub opener_in_s: u32,
    /// Warm-ups still to come, in order.
    pub warm_ups: Vec<TimedWarmUp>,
    /// Warm-ups for which there is no time any more: the lightest of those to come.
    pub left_out: u8,
}

/// One warm-up to take.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct TimedWarmUp {
    /// Which, from 0 at the lightest of all.
    pub number: u8,
    /// When.
    pub in_s: u32,
    /// How many attempts will be over by then, those that are over now among them.
    pub after_attempts: u16,
}

/// Which figure of a meet cannot be reckoned with.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Refusal {
    /// Its name: "attempt", "before", "called", "elapsed", "warm-ups", "taken", "last", "apart".
    pub field: &'static str,
    /// What is wrong, with the value and the limit, and what to do.
    pub text: String,
}

impl core::fmt::Display for Refusal {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        write!(f, "{}: {}", self.field, self.text)
    }
}

impl core::error::Error for Refusal {}

impl Flight {
    /// The pace to reckon with: what was said counts like three attempts, what was seen for each
    /// attempt that is over; rounded down, at least a second.
    #[must_use]
    pub fn pace_s(&self) -> u32 {
        const SAID: u64 = 3;
        let called = u64::from(self.called);
        let seen = u64::from(self.attempt_s) * SAID + u64::from(self.elapsed_s);
        let pace = seen / (SAID + called);
        u32::try_from(pace).unwrap_or(u32::MAX).max(1)
    }

    /// Until the opener, at that pace.
    #[must_use]
    pub fn opener_in_s(&self) -> u32 {
        let left = self.before.saturating_sub(self.called);
        u32::from(left).saturating_mul(self.pace_s())
    }

    fn check(&self) -> Result<(), Refusal> {
        within("attempt", self.attempt_s, 10, ATTEMPT_MOST_S, "s")?;
        within(
            "before",
            u32::from(self.before),
            0,
            u32::from(BEFORE_MOST),
            "attempts",
        )?;
        let (called, before) = (u32::from(self.called), u32::from(self.before));
        within("called", called, 0, before, "attempts")?;
        within("elapsed", self.elapsed_s, 0, TIME_MOST_S, "s")
    }
}

impl Habit {
    fn check(&self) -> Result<(), Refusal> {
        within("last", self.last_least_s, 30, TIME_MOST_S, "s")?;
        within("last", self.last_s, self.last_least_s, TIME_MOST_S, "s")?;
        within("apart", self.apart_least_s, 30, TIME_MOST_S, "s")?;
        within("apart", self.apart_s, self.apart_least_s, TIME_MOST_S, "s")
    }
}

/// When to take each of `count` warm-ups that is still to come.
///
/// Counted back from the opener: the last warm-up as long before it as is usual, the others as far
/// apart as is usual. Where there is too little time, the way to the opener is shortened first,
/// then all gaps alike, then the lightest warm-ups are left out; never is anything nearer than the
/// least.
///
/// # Errors
/// [`Refusal`] when a figure is out of range.
pub fn time(flight: &Flight, habit: &Habit, count: u8, taken: &Taken) -> Result<Timed, Refusal> {
    flight.check()?;
    habit.check()?;
    let most = u32::from(WARM_UPS_MOST);
    within("warm-ups", u32::from(count), 0, most, "warm-ups")?;
    within(
        "taken",
        u32::from(taken.count),
        0,
        u32::from(count),
        "warm-ups",
    )?;
    let opener_in_s = flight.opener_in_s();
    let mut to_come = count - taken.count;
    // Not before the lifter is rested from the one just taken.
    let soonest = match taken.count {
        0 => 0,
        _ => habit.apart_least_s.saturating_sub(taken.since_s),
    };
    let starts = loop {
        match starts(habit, opener_in_s, to_come, soonest) {
            Some(starts) => break starts,
            None => to_come -= 1,
        }
    };
    let left_out = count - taken.count - to_come;
    let pace_s = flight.pace_s();
    let first = taken.count + left_out;
    let warm_ups = (first..).zip(starts).map(|(number, in_s)| TimedWarmUp {
        number,
        in_s,
        after_attempts: flight.called
            + u16::try_from(in_s / pace_s).unwrap_or(u16::MAX - flight.called),
    });
    Ok(Timed {
        pace_s,
        opener_in_s,
        warm_ups: warm_ups.collect(),
        left_out,
    })
}

/// Starts of so many warm-ups between `soonest` and the opener; `None` when there is no room.
fn starts(habit: &Habit, opener_s: u32, count: u8, soonest: u32) -> Option<Vec<u32>> {
    let Some(gaps) = count.checked_sub(1).map(u32::from) else {
        return Some(Vec::new());
    };
    let room = opener_s.checked_sub(soonest)?;
    let least = habit.last_least_s + gaps * habit.apart_least_s;
    if room < least {
        return None;
    }
    // The way to the opener gives first, then the gaps, all alike.
    let wanted = gaps * habit.apart_s;
    let before = room
        .saturating_sub(wanted)
        .clamp(habit.last_least_s, habit.last_s);
    let last = opener_s - before;
    let span = wanted.min(last - soonest);
    let start = |nth: u32| last - span + (span * nth).checked_div(gaps).unwrap_or(span);
    Some((0..=gaps).map(start).collect())
}

fn within(
    field: &'static str,
    value: u32,
    least: u32,
    most: u32,
    unit: &str,
) -> Result<(), Refusal> {
    if (least..=most).contains(&value) {
        return Ok(());
    }
    Err(Refusal {
        field,
        text: format!("{value} {unit} is out of range; write {least} to {most}"),
    })
}
