//! Lamp, buzzer, strip and backlight over scripted pins and buses.
use embedded_hal_mock::eh1::MockError;
use embedded_hal_mock::eh1::digital::{Mock as Pin, State, Transaction};
use embedded_hal_mock::eh1::pwm::{Mock as Pwm, Transaction as Duty};
use embedded_hal_mock::eh1::spi::{Mock as Spi, Transaction as Sent};
use hardware::backlight::Backlight;
use hardware::buzzer::Buzzer;
use hardware::lamp::{Glow, Lamp};
use hardware::lights::{CLOCK_HZ, Lay, Lights, SILENCE, coded, decoded};
use hardware::{Faults, Outputs, Tune, Wanted};
use proptest::prelude::*;
use std::io::ErrorKind;

const HIGH: State = State::High;
const LOW: State = State::Low;

fn lay() -> Lay {
    Lay {
        count: 12,
        first: 1,
        every: 3,
        wide: 2,
        colour: [84, 48, 0],
    }
}

#[test]
fn the_lamp_is_told_only_what_changed() {
    let mut pin = Pin::new(&[Transaction::set(HIGH), Transaction::set(LOW)]);
    let mut lamp = Lamp::new(Box::new(pin.clone()), true);
    let faults = Faults::default();
    let glows = [Glow::Out, Glow::Out, Glow::Lit, Glow::Lit];
    for (now, glow) in [0, 10, 20, 30].into_iter().zip(glows) {
        lamp.step(now, glow, &faults);
    }
    pin.done();
}

/// WCAG 2.2, success criterion 2.3.1: no more than three flashes in any second.
#[test]
fn a_blinking_lamp_flashes_slowly_and_not_alike() {
    let flashes = |glow: Glow| {
        let on: Vec<bool> = (0..10_000).map(|now_ms| glow.is_on_at(now_ms)).collect();
        on.windows(2).filter(|now| !now[0] && now[1]).count()
    };
    let counts = [Glow::Out, Glow::Lit, Glow::Nearly, Glow::Missed].map(flashes);
    assert_eq!(counts, [0, 0, 4, 19], "in ten seconds");
    assert!(counts.iter().all(|count| *count <= 30));
    assert!(Glow::Nearly.blinks() && Glow::Missed.blinks());
    assert!(!Glow::Lit.blinks() && !Glow::Out.blinks());
}

#[test]
fn the_buzzer_plays_a_tune_and_is_silent_after_it() {
    let sets = [LOW, HIGH, LOW, HIGH, LOW].map(Transaction::set);
    let mut pin = Pin::new(&sets);
    let mut buzzer = Buzzer::new(Box::new(pin.clone()), false);
    let faults = Faults::default();
    assert!(!buzzer.step(0, &faults), "nothing to play");
    buzzer.play(1_000, Tune::RestOver);
    let plays: Vec<bool> = (0..50)
        .map(|at| buzzer.step(1_000 + at * 10, &faults))
        .collect();
    let lasts = plays.iter().filter(|plays| **plays).count();
    assert_eq!(lasts, 36, "360 ms in steps of 10");
    pin.done();
}

#[test]
fn a_device_that_fails_is_told_once_and_tried_again_later() {
    let faults = Faults::default();
    let broken = || Transaction::set(HIGH).with_error(MockError::Io(ErrorKind::BrokenPipe));
    let mut pin = Pin::new(&[broken(), broken(), Transaction::set(HIGH)]);
    let mut lamp = Lamp::new(Box::new(pin.clone()), false);
    // Three tries in twelve seconds of steps each 10 ms.
    for at in 0..1_200 {
        lamp.step(at * 10, Glow::Lit, &faults);
        assert_eq!(faults.list().len(), usize::from(at < 1_000), "at {at}");
    }
    pin.done();
}

/// WS2812B datasheet (Worldsemi), data transfer time: high and low in ns, each give or take 150.
#[test]
fn each_bit_keeps_the_times_of_the_datasheet() {
    let bit_ns = 1e9 / f64::from(CLOCK_HZ);
    for (part, high, low) in [(0_u8, 400.0, 850.0), (255, 800.0, 450.0)] {
        let bytes = coded(&[[part; 3]]);
        let bits: Vec<bool> = bytes[..9]
            .iter()
            .flat_map(|byte| (0..8).rev().map(move |at| byte >> at & 1 == 1))
            .collect();
        assert_eq!(bits.len(), 24 * 3);
        for three in bits.chunks(3) {
            let up = three.iter().take_while(|bit| **bit).count();
            assert!(three[up..].iter().all(|bit| !bit), "one pulse a bit");
            let (up, down) = (up as f64 * bit_ns, (3 - up) as f64 * bit_ns);
            assert!((up - high).abs() <= 150.0, "{part}: high for {up} ns");
            assert!((down - low).abs() <= 150.0, "{part}: low for {down} ns");
        }
    }
    // Low for more than 50 us shows the colours; later issues of the part want 280 us.
    assert!(SILENCE as f64 * 8.0 * bit_ns > 280_000.0);
}

#[test]
fn green_goes_first_and_the_highest_bit_of_it() {
    let bytes = coded(&[[0x00, 0x80, 0x01]]);
    // By hand: green 1000 0000, red 0, blue 0000 0001, three bits each.
    let green = [0b1101_0010, 0b0100_1001, 0b0010_0100];
    let red = [0b1001_0010, 0b0100_1001, 0b0010_0100];
    let blue = [0b1001_0010, 0b0100_1001, 0b0010_0110];
    assert_eq!(bytes[..9], [green, red, blue].concat());
    assert!(bytes[9..].iter().all(|byte| *byte == 0));
}

#[test]
fn the_strip_lights_the_hole_at_its_own_rack() {
    let dark = coded(&[[0; 3]; 12]);
    let mut lit = [[0; 3]; 12];
    // Hole 3 of three lights each, from light 1: 1 + 2 * 3.
    lit[7] = [84, 48, 0];
    lit[8] = [84, 48, 0];
    let third = coded(&lit);
    // A hole beyond the strip is sent too, and is dark.
    let sends = [dark.clone(), third, dark.clone(), dark]
        .into_iter()
        .flat_map(|bytes| [Sent::write_vec(bytes), Sent::flush()]);
    let mut bus = Spi::new(&sends.collect::<Vec<_>>());
    let mut lights = Lights::new(Box::new(bus.clone()), lay(), Some("yard rack".into()));
    let faults = Faults::default();
    let steps = [
        None,
        Some(("river rack", 2)),
        Some(("yard rack", 3)),
        Some(("yard rack", 3)),
        Some(("yard rack", 400)),
        Some(("river rack", 2)),
    ];
    for (at, hole) in (0..).zip(steps) {
        lights.step(at, hole, &faults);
    }
    bus.done();
}

#[test]
fn the_backlight_dims_in_percent_of_what_it_can() {
    let duties = [
        Duty::max_duty_cycle(255),
        Duty::set_duty_cycle(255),
        Duty::max_duty_cycle(255),
        Duty::set_duty_cycle(38),
    ];
    let mut pwm = Pwm::new(&duties);
    let mut backlight = Backlight::new(Box::new(pwm.clone()), 100, 15);
    let faults = Faults::default();
    for (at, dim) in (0..).zip([false, false, true, true]) {
        backlight.step(at, dim, &faults);
    }
    pwm.done();
}

#[test]
fn without_devices_a_step_does_nothing() {
    let mut outputs = Outputs::default();
    outputs.play(0, Tune::YourTurn);
    let wanted = Wanted {
        lamp: Glow::Lit,
        hole: Some(("yard rack".into(), 3)),
        dim: true,
    };
    assert!(!outputs.step(0, &wanted));
    assert!(outputs.is_empty());
}

proptest! {
    #[test]
    fn what_is_coded_is_decoded(colours in prop::collection::vec(any::<[u8; 3]>(), 0..40)) {
        prop_assert_eq!(decoded(&coded(&colours)), Some(colours));
    }

    #[test]
    fn any_bytes_are_decoded_or_refused(bytes in prop::collection::vec(any::<u8>(), 0..400)) {
        // The code is unique: whatever decodes is what would be sent for it, but for the silence.
        if let Some(colours) = decoded(&bytes) {
            let again = coded(&colours);
            prop_assert_eq!(&again[..again.len() - SILENCE], &bytes[..bytes.len() - SILENCE]);
        }
    }

    #[test]
    fn a_hole_lights_so_many_at_most(
        hole in any::<Option<u16>>(),
        first in any::<u16>(),
        every in 1_u16..500,
        wide in 1_u16..500,
    ) {
        let lay = Lay { first, every, wide, ..lay() };
        let lit = lay.colours(hole).iter().filter(|c| **c != [0; 3]).count();
        prop_assert!(lit <= usize::from(wide.min(12)));
        prop_assert!(hole.is_some() || lit == 0);
    }
}
