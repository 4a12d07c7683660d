//! A meet or a test day: when to take which warm-up, counted back from the opener and moved along
//! as the flight speeds up or slows down.
//!
//! Times are whole seconds from now. The figures of [`Habit::USUAL`] are common practice, no
//! source; whoever runs the lifter that day can change each. Refuses: to know the rules of a
//! federation; what may be changed at the table, and until when, is for the referee to say.
use crate::mass::Mass;
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
    /// Since the last of them was over, or the flight began, seconds; counts for at most one
    /// attempt, since the one that is under way is not over.
    pub since_s: u32,
    /// What somebody at the platform knows beside: so many seconds later, or earlier where it is
    /// negative.
    pub later_s: i32,
    /// Where nobody is at the bar for a while: until the flight begins by its clock.
    pub wait: Wait,
}

/// A time without attempts.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Wait {
    /// How long it still lasts, or will last, seconds.
    pub seconds: u32,
    /// How many attempts will be over when it begins: 0 where the flight itself has not begun, those
    /// of the flight before it where that one is under way.
    pub after: u16,
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
    /// Warm-ups for which there is no time any more: those without which the longest step on the
    /// way to the opener is the shortest.
    pub left_out: Vec<u8>,
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
    /// Its name: "attempt", "before", "called", "elapsed", "later", "wait",
    /// "warm-ups", "taken", "last", "apart".
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
        let left = u32::from(self.before.saturating_sub(self.called));
        let pace_s = self.pace_s();
        let under_way = if left == 0 {
            0
        } else {
            self.since_s.min(pace_s)
        };
        let then = left.saturating_mul(pace_s).saturating_sub(under_way);
        then.saturating_add(self.wait.seconds)
            .saturating_add_signed(self.later_s)
    }

    /// How many attempts will be over in so many seconds, those that are over now among them.
    fn over_in(&self, in_s: u32) -> u16 {
        let pace_s = self.pace_s();
        let until = u32::from(self.wait.after.saturating_sub(self.called)).saturating_mul(pace_s);
        // Nobody lifts while the flight is waited for.
        let lifting = match in_s > until {
            true => until.max(in_s.saturating_sub(self.wait.seconds)),
            false => in_s,
        };
        let over = u16::try_from(lifting / pace_s).unwrap_or(u16::MAX);
        self.called.saturating_add(over)
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
        within("wait", self.wait.seconds, 0, TIME_MOST_S, "s")?;
        within("later", self.later_s.unsigned_abs(), 0, TIME_MOST_S, "s")?;
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

/// When to take each of `warm_ups`, lightest first, that is still to come before the opener's load.
///
/// Counted back from the opener: the last warm-up as long before it as is usual, the others as far
/// apart as is usual. Where there is too little time, the way to the opener is shortened first,
/// then all gaps alike, then warm-ups are left out, so that the longest step from one load to the
/// next stays as short as can be; never is anything nearer than the least.
///
/// # Errors
/// [`Refusal`] when a figure is out of range.
pub fn time(
    flight: &Flight,
    habit: &Habit,
    warm_ups: &[Mass],
    opener: Mass,
    taken: &Taken,
) -> Result<Timed, Refusal> {
    flight.check()?;
    habit.check()?;
    let count = u32::try_from(warm_ups.len()).unwrap_or(u32::MAX);
    within("warm-ups", count, 0, u32::from(WARM_UPS_MOST), "warm-ups")?;
    within("taken", u32::from(taken.count), 0, count, "warm-ups")?;
    let opener_in_s = flight.opener_in_s();
    // Not before the lifter is rested from the one just taken.
    let soonest = match taken.count {
        0 => 0,
        _ => habit.apart_least_s.saturating_sub(taken.since_s),
    };
    let (done, to_come) = warm_ups.split_at(usize::from(taken.count));
    let last = done.last().copied().unwrap_or_default();
    let mut fitting = u8::try_from(to_come.len()).unwrap_or(u8::MAX);
    let starts = loop {
        match starts(habit, opener_in_s, fitting, soonest) {
            Some(starts) => break starts,
            None => fitting -= 1,
        }
    };
    let kept = shortest_steps(last, to_come, opener, fitting);
    let number = |place: usize| taken.count + u8::try_from(place).unwrap_or(u8::MAX);
    let timed = kept.iter().zip(starts).map(|(place, in_s)| TimedWarmUp {
        number: number(*place),
        in_s,
        after_attempts: flight.over_in(in_s),
    });
    let out = (0..to_come.len()).filter(|place| !kept.contains(place));
    Ok(Timed {
        pace_s: flight.pace_s(),
        opener_in_s,
        warm_ups: timed.collect(),
        left_out: out.map(number).collect(),
    })
}

/// Which `fitting` of the warm-ups to come to keep, as places: those with which the longest step
/// from the last load over them to the opener is the shortest; of several alike the heavier last
/// ones. There are few, so every choice is looked at.
fn shortest_steps(last: Mass, to_come: &[Mass], opener: Mass, fitting: u8) -> Vec<usize> {
    let places = |choice: u32| (0..to_come.len()).filter(move |at| choice >> at & 1 == 1);
    let longest = |choice: u32| {
        let mut before = last;
        let loads = places(choice).map(|at| to_come[at]).chain([opener]);
        let steps = loads.map(|load| {
            let step = load - before;
            before = load;
            step
        });
        steps.max().unwrap_or_default()
    };
    let choices = 0..1_u32 << to_come.len();
    let fits = choices.filter(|choice| choice.count_ones() == u32::from(fitting));
    // The greater number has the heavier ones.
    let best = fits.min_by_key(|choice| (longest(*choice), u32::MAX - choice));
    places(best.unwrap_or(0)).collect()
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
