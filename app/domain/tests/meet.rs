//! Meet day: warm-ups counted back from the opener, re-timed as the flight goes on.
use domain::meet::{Flight, Habit, Refusal, Taken, Timed};
use domain::{Mass, MassUnit};
use proptest::prelude::*;

const FRESH: Taken = Taken {
    count: 0,
    since_s: 0,
};

fn flight(before: u16, called: u16, elapsed_s: u32) -> Flight {
    Flight {
        before,
        attempt_s: 60,
        called,
        elapsed_s,
        since_s: 0,
        later_s: 0,
        wait: Default::default(),
    }
}

const OPENER: i64 = 200;

fn kg(kg: i64) -> Mass {
    Mass::of(MassUnit::Kg, kg * 1_000)
}

/// With so many warm-ups, evenly apart up to 200 kg.
fn time(flight: &Flight, habit: &Habit, count: u8, taken: &Taken) -> Result<Timed, Refusal> {
    let count = i64::from(count);
    let loads: Vec<Mass> = (1..=count).map(|n| kg(OPENER * n / (count + 1))).collect();
    domain::meet::time(flight, habit, &loads, kg(OPENER), taken)
}

fn timed(flight: &Flight, count: u8) -> Timed {
    time(flight, &Habit::USUAL, count, &FRESH).expect("in range")
}

fn starts(timed: &Timed) -> Vec<u32> {
    timed.warm_ups.iter().map(|w| w.in_s).collect()
}

#[test]
fn with_time_enough_it_is_as_usual() {
    // Thirty attempts of a minute: half an hour, then the opener.
    let timed = timed(&flight(30, 0, 0), 5);
    assert_eq!(timed.opener_in_s, 1_800);
    assert_eq!(starts(&timed), [540, 780, 1_020, 1_260, 1_500]);
    let after: Vec<u16> = timed.warm_ups.iter().map(|w| w.after_attempts).collect();
    assert_eq!(after, [9, 13, 17, 21, 25]);
}

#[test]
fn pressed_for_time_the_way_to_the_opener_gives_first_then_all_gaps() {
    // 20 min: five warm-ups four minutes apart leave four before the opener.
    assert_eq!(
        starts(&timed(&flight(20, 0, 0), 5)),
        [0, 240, 480, 720, 960]
    );
    // 15 min: three before the opener, three between.
    assert_eq!(
        starts(&timed(&flight(15, 0, 0), 5)),
        [0, 180, 360, 540, 720]
    );
    // 9 min: all at their least.
    assert_eq!(starts(&timed(&flight(9, 0, 0), 5)), [0, 90, 180, 270, 360]);
    // 7 min: of 33, 66, 100, 133 and 166 kg two are left out, so that no step is over 66 kg.
    let short = timed(&flight(7, 0, 0), 5);
    assert_eq!(short.left_out, [0, 3]);
    assert_eq!(starts(&short), [0, 120, 240]);
}

#[test]
fn a_flight_at_its_pace_changes_nothing() {
    let at_first = timed(&flight(30, 0, 0), 5);
    let later = timed(&flight(30, 8, 480), 5);
    let moved: Vec<u32> = starts(&at_first).iter().map(|s| s - 480).collect();
    assert_eq!(starts(&later), moved);
    let after = |t: &Timed| {
        t.warm_ups
            .iter()
            .map(|w| w.after_attempts)
            .collect::<Vec<_>>()
    };
    assert_eq!(after(&later), after(&at_first));
}

#[test]
fn a_quicker_flight_pulls_them_forward_and_a_slower_one_lets_them_wait() {
    // Said a minute; nine attempts in six minutes: (180 + 360) / 12 is 45 s.
    let quick = timed(&flight(30, 9, 360), 5);
    assert_eq!((quick.pace_s, quick.opener_in_s), (45, 945));
    // And in thirteen and a half: (180 + 810) / 12 is 82 s.
    let slow = timed(&flight(30, 9, 810), 5);
    assert_eq!((slow.pace_s, slow.opener_in_s), (82, 1_722));
    assert!(
        starts(&quick)
            .iter()
            .zip(starts(&slow))
            .all(|(q, s)| *q < s)
    );
}

#[test]
fn a_warm_up_just_taken_is_rested_from_first() {
    let just = Taken {
        count: 3,
        since_s: 20,
    };
    let timed = time(&flight(6, 0, 0), &Habit::USUAL, 5, &just).expect("in range");
    // 360 s: two to come, the first not before 70 s.
    assert_eq!(starts(&timed), [70, 180]);
    assert_eq!(timed.warm_ups[0].number, 3);
}

#[test]
fn figures_out_of_range_are_told_with_the_limit() {
    let told = |flight: Flight, count, taken| {
        let taken = Taken {
            count: taken,
            since_s: 0,
        };
        let refusal = time(&flight, &Habit::USUAL, count, &taken).expect_err("refused");
        refusal.to_string()
    };
    let mut quick = flight(5, 0, 0);
    quick.attempt_s = 3;
    assert_eq!(
        told(quick, 4, 0),
        "attempt: 3 s is out of range; write 10 to 600"
    );
    assert_eq!(
        told(flight(5, 6, 0), 4, 0),
        "called: 6 attempts is out of range; write 0 to 5"
    );
    assert_eq!(
        told(flight(5, 0, 0), 13, 0),
        "warm-ups: 13 warm-ups is out of range; write 0 to 12"
    );
    assert_eq!(
        told(flight(5, 0, 0), 4, 5),
        "taken: 5 warm-ups is out of range; write 0 to 4"
    );
}

fn any_flight() -> impl Strategy<Value = Flight> {
    (0..60_u16, 10..200_u32, 0..60_u16, 0..6_000_u32).prop_map(
        |(before, attempt_s, called, elapsed_s)| Flight {
            before,
            attempt_s,
            called: called.min(before),
            elapsed_s,
            since_s: 0,
            later_s: 0,
            wait: Default::default(),
        },
    )
}

fn any_habit() -> impl Strategy<Value = Habit> {
    (30..400_u32, 0..400_u32, 30..300_u32, 0..300_u32).prop_map(|(last, more, apart, wider)| {
        Habit {
            last_s: last + more,
            last_least_s: last,
            apart_s: apart + wider,
            apart_least_s: apart,
        }
    })
}

proptest! {
    /// In order, never nearer than the least, rested from the last one taken, clear of the
    /// opener; and one more would not have fitted.
    #[test]
    fn nothing_is_nearer_than_the_least(
        flight in any_flight(),
        habit in any_habit(),
        count in 0..=12_u8,
        done in 0..=12_u8,
        since_s in 0..400_u32,
    ) {
        let taken = Taken { count: done.min(count), since_s };
        let timed = time(&flight, &habit, count, &taken).expect("in range");
        let starts = starts(&timed);
        let left = usize::from(count - taken.count) - timed.left_out.len();
        prop_assert_eq!(starts.len(), left);
        for two in starts.windows(2) {
            let apart = two[1] - two[0];
            prop_assert!((habit.apart_least_s..=habit.apart_s).contains(&apart));
        }
        let rest = habit.apart_least_s.saturating_sub(since_s);
        let soonest = if taken.count > 0 { rest } else { 0 };
        if let (Some(first), Some(last)) = (starts.first(), starts.last()) {
            prop_assert!(*first >= soonest);
            let before = timed.opener_in_s - last;
            prop_assert!((habit.last_least_s..=habit.last_s).contains(&before));
        }
        if !timed.left_out.is_empty() {
            let gaps = u32::try_from(left).unwrap();
            let needed = soonest + habit.last_least_s + gaps * habit.apart_least_s;
            prop_assert!(timed.opener_in_s < needed, "another would have fitted");
        }
        let kept = timed.warm_ups.iter().map(|warm_up| warm_up.number);
        let mut all: Vec<u8> = kept.clone().chain(timed.left_out.iter().copied()).collect();
        all.sort_unstable();
        prop_assert_eq!(all, (taken.count..count).collect::<Vec<_>>());
        prop_assert!(kept.is_sorted());
        for warm_up in &timed.warm_ups {
            let over = flight.called..=flight.before;
            prop_assert!(over.contains(&warm_up.after_attempts));
        }
    }

    /// More time before the opener never brings a warm-up forward.
    #[test]
    fn a_later_opener_never_hurries(
        flight in any_flight(),
        habit in any_habit(),
        count in 0..=12_u8,
        slower in 0..600_u32,
    ) {
        let mut later = flight;
        later.elapsed_s += slower;
        let (a, b) = (
            time(&flight, &habit, count, &FRESH).expect("in range"),
            time(&later, &habit, count, &FRESH).expect("in range"),
        );
        prop_assert!(b.left_out.len() <= a.left_out.len());
        // Compared from the opener back, since the lightest may come in again.
        for (x, y) in a.warm_ups.iter().rev().zip(b.warm_ups.iter().rev()) {
            prop_assert!(x.in_s <= y.in_s, "{} {}", x.in_s, y.in_s);
        }
    }

    /// What is left out leaves the longest step as short as any choice would: against every way
    /// to leave out as many, one after the other.
    #[test]
    fn the_longest_step_is_the_shortest(
        mut grams in prop::collection::vec(20_000..180_000_i64, 0..9),
        done in 0..9_u8,
        before in 0..12_u16,
    ) {
        grams.sort_unstable();
        let loads: Vec<Mass> = grams.iter().map(|g| Mass::of(MassUnit::Kg, *g)).collect();
        let count = done.min(u8::try_from(loads.len()).expect("few"));
        let taken = Taken { count, since_s: 600 };
        let flight = flight(before, 0, 0);
        let timed = domain::meet::time(&flight, &Habit::USUAL, &loads, kg(OPENER), &taken);
        let timed = timed.expect("in range");
        let longest = |kept: &[Mass]| {
            let from = usize::from(count).checked_sub(1).map_or(Mass::ZERO, |at| loads[at]);
            let mut way = vec![from];
            way.extend(kept);
            way.push(kg(OPENER));
            way.windows(2).map(|two| two[1] - two[0]).max().expect("two")
        };
        let chosen: Vec<Mass> =
            timed.warm_ups.iter().map(|warm_up| loads[usize::from(warm_up.number)]).collect();
        let mut ways = vec![loads[usize::from(count)..].to_vec()];
        for _ in 0..timed.left_out.len() {
            ways = ways
                .iter()
                .flat_map(|way| (0..way.len()).map(|out| {
                    let mut way = way.clone();
                    way.remove(out);
                    way
                }))
                .collect();
            ways.sort();
            ways.dedup();
        }
        let best = ways.iter().map(|way| longest(way)).min().expect("a way");
        prop_assert_eq!(longest(&chosen), best);
    }
}

/// Before a flight begins by its clock nobody lifts: no attempt is over by then, however long that
/// is, and the opener is later by as much.
#[test]
fn no_attempt_is_over_before_the_flight_begins() {
    let waits = |seconds: u32, after: u16, before: u16| {
        let wait = domain::meet::Wait { seconds, after };
        let flight = Flight {
            wait,
            ..flight(before, 0, 0)
        };
        let timed = timed(&flight, 3);
        let after: Vec<u16> = timed.warm_ups.iter().map(|w| w.after_attempts).collect();
        (timed.opener_in_s, starts(&timed), after)
    };
    // Half an hour to the start, five attempts before the opener.
    let (opener, starts, after) = waits(1_800, 0, 5);
    assert_eq!((opener, starts), (2_100, vec![1_320, 1_560, 1_800]));
    assert_eq!(after, [0, 0, 0]);
    // Ten attempts of the flight before, ten minutes without any, then one before the opener.
    let (opener, starts, after) = waits(600, 10, 11);
    assert_eq!((opener, starts), (1_260, vec![480, 720, 960]));
    assert_eq!(after, [8, 10, 10]);
}
