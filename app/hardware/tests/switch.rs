//! The switch driver over scripted pins: bounce, floods, failures, a switch that is held.
use embedded_hal_mock::eh1::MockError;
use embedded_hal_mock::eh1::digital::{Mock, State, Transaction};
use hardware::switch::{QUIET_MS, Wiring};
use hardware::trouble::{CHANGES_MAX, HELD_MS};
use hardware::{Faults, Press, Switch};
use proptest::prelude::*;
use std::io::ErrorKind;

/// Between two readings, milliseconds.
const POLL_MS: u64 = 5;

fn wiring() -> Wiring {
    Wiring {
        name: "foot switch".into(),
        does: Press::Done,
        active_low: true,
        settle_ms: 20,
        again_after_ms: 1_500,
    }
}

fn reads(levels: &[bool]) -> Vec<Transaction> {
    let level = |high: &bool| if *high { State::High } else { State::Low };
    levels
        .iter()
        .map(|high| Transaction::get(level(high)))
        .collect()
}

/// Presses told over the script, with the time of each.
fn told(script: &[Transaction], wiring: Wiring, faults: &Faults) -> Vec<(u64, Press)> {
    let mut pin = Mock::new(script);
    let mut switch = Switch::new(Box::new(pin.clone()), wiring);
    let steps = u64::try_from(script.len()).expect("a short script");
    let step = |at: u64| Some((at * POLL_MS, switch.step(at * POLL_MS, faults)?));
    let presses = (0..steps).filter_map(step).collect();
    pin.done();
    presses
}

/// Up for a while, then `between`, then down for a while: `true` is up, since pressed is low.
fn pressed_after(between: &[bool]) -> Vec<Transaction> {
    let levels = [&[true; 10], between, &[false; 20]].concat();
    reads(&levels)
}

#[test]
fn a_clean_press_counts_once_when_it_has_settled() {
    let faults = Faults::default();
    let presses = told(&pressed_after(&[]), wiring(), &faults);
    // Low from 50 ms on, so steady for 20 ms at 70 ms.
    assert_eq!(presses, [(70, Press::Done)]);
    assert!(faults.list().is_empty());
}

#[test]
fn a_bounce_is_one_press() {
    let bounce = [false, true, false, true, true, false, true];
    let presses = told(&pressed_after(&bounce), wiring(), &Faults::default());
    assert_eq!(presses, [(105, Press::Done)]);
}

#[test]
fn a_tap_shorter_than_the_settling_time_is_none() {
    let levels = [&[true; 10][..], &[false; 3], &[true; 20]].concat();
    assert!(told(&reads(&levels), wiring(), &Faults::default()).is_empty());
}

#[test]
fn held_at_the_start_it_tells_nothing_until_it_was_let_go() {
    let held = reads(&[false; 50]);
    assert!(told(&held, wiring(), &Faults::default()).is_empty());
    let levels = [&[false; 20][..], &[true; 10], &[false; 10]].concat();
    let presses = told(&reads(&levels), wiring(), &Faults::default());
    assert_eq!(presses.len(), 1);
}

#[test]
fn a_second_press_counts_only_after_a_pause() {
    let press = [&[false; 10][..], &[true; 10]].concat();
    // Presses 100 ms apart for two seconds, then a pause of two seconds, then one more.
    let mut levels = vec![true; 10];
    (0..20).for_each(|_| levels.extend(&press));
    levels.extend([true; 400]);
    levels.extend(&press);
    let presses = told(&reads(&levels), wiring(), &Faults::default());
    let at: Vec<u64> = presses.iter().map(|(at, _)| *at).collect();
    assert_eq!(at, [70, 50 + 20 * 100 + 2_000 + 20]);
}

#[test]
fn a_flood_is_told_once_and_makes_no_press_until_it_is_quiet() {
    let faults = Faults::default();
    let mut levels = vec![true; 10];
    (0..400).for_each(|at| levels.push(at % 2 == 0));
    let mut pin = Mock::new(&reads(&levels));
    let mut switch = Switch::new(Box::new(pin.clone()), wiring());
    for at in 0..410 {
        assert_eq!(switch.step(at * POLL_MS, &faults), None);
    }
    pin.done();
    let list = faults.list();
    assert_eq!(list.len(), 1, "{list:?}");
    assert!(
        list[0].to_string().contains(&CHANGES_MAX.to_string()),
        "{list:?}"
    );

    // Quiet for the time it takes, it is well again, and a press counts.
    let quiet = usize::try_from(QUIET_MS / POLL_MS).unwrap() + 10;
    let levels = [vec![true; quiet], vec![false; 10]].concat();
    pin.update_expectations(&reads(&levels));
    let steps = u64::try_from(levels.len()).unwrap();
    let presses = (410..410 + steps).filter_map(|at| switch.step(at * POLL_MS, &faults));
    assert_eq!(presses.count(), 1);
    assert!(faults.list().is_empty());
    pin.done();
}

#[test]
fn a_line_that_fails_is_told_and_left_alone_for_a_while() {
    let faults = Faults::default();
    let broken = Transaction::get(State::High).with_error(MockError::Io(ErrorKind::NotFound));
    let script = [&reads(&[true; 10])[..], &[broken]].concat();
    let mut pin = Mock::new(&script);
    let mut switch = Switch::new(Box::new(pin.clone()), wiring());
    // Many more steps than the script has readings: the mock would panic at one too many.
    for at in 0..500 {
        assert_eq!(switch.step(at * POLL_MS, &faults), None);
    }
    assert_eq!(faults.list().len(), 1);
    assert_eq!(faults.list()[0].device, "foot switch");
    pin.update_expectations(&reads(&[
        true, true, true, true, true, true, false, false, false, false, false,
    ]));
    let presses = (2_000..2_011).filter_map(|at| switch.step(at * POLL_MS, &faults));
    assert_eq!(presses.count(), 1, "it works again");
    assert!(faults.list().is_empty());
    pin.done();
}

#[test]
fn something_that_lies_on_it_is_told() {
    let faults = Faults::default();
    let steps = HELD_MS / POLL_MS + 20;
    let mut levels = vec![true; 10];
    levels.resize(usize::try_from(steps).unwrap(), false);
    assert_eq!(told(&reads(&levels), wiring(), &faults).len(), 1);
    assert_eq!(faults.list().len(), 1);
}

proptest! {
    /// Whatever the line does within the deaf time, there is one press at most.
    #[test]
    fn no_line_makes_two_presses_within_the_deaf_time(
        levels in prop::collection::vec(any::<bool>(), 0..300),
    ) {
        let presses = told(&reads(&levels), wiring(), &Faults::default());
        prop_assert!(presses.len() <= 1, "{presses:?}");
    }

    /// Presses told are never closer than the deaf time, over a long while.
    #[test]
    fn presses_keep_their_distance(
        spans in prop::collection::vec((any::<bool>(), 1_usize..200), 0..60),
    ) {
        let levels: Vec<bool> = spans.iter().flat_map(|(high, n)| vec![*high; *n]).collect();
        let presses = told(&reads(&levels), wiring(), &Faults::default());
        for pair in presses.windows(2) {
            prop_assert!(pair[1].0 - pair[0].0 >= 1_500, "{presses:?}");
        }
    }
}
