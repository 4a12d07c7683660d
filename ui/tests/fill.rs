//! The main button fills before it takes a tap, alone; what is saved and what sleeps is seen.
mod bench;

use bench::{buttons, down, open, press, scene, touch, up, wait_ms};
use slint::SharedPixelBuffer;
use view::{Frame, Screen, Tap};

/// The window as it is drawn.
fn shot(face: &ui::Face) -> SharedPixelBuffer<slint::Rgba8Pixel> {
    face.window().take_snapshot().expect("it draws")
}

/// The main button of the scene "bar", and its middle.
const DONE: &str = "2 done, back held";
const MIDDLE: (f32, f32) = (1_000.0, 720.0);

/// Columns of the row 20 pixels under the top of the main button that are lit in full.
fn lit(face: &ui::Face) -> usize {
    let (_, (left, top, right, _)) = buttons(face)
        .into_iter()
        .find(|button| button.0 == DONE)
        .expect("it is there");
    #[allow(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "pixels of a panel"
    )]
    let whole = |edge: f32| edge as usize;
    let image = shot(face);
    let from = (whole(top) + 20) * image.width() as usize;
    let row = &image.as_slice()[from + whole(left)..from + whole(right)];
    let full = |p: &&slint::Rgba8Pixel| (p.r, p.g, p.b) == (0xFF, 0xB9, 0x38);
    row.iter().filter(full).count()
}

#[test]
fn it_fills_from_left_to_right_and_then_takes_a_tap() {
    let (face, taps) = open();
    face.show_frame(&scene("bar"));
    let mut before = lit(&face);
    assert!(before < 20, "{before}");
    for _ in 0..5 {
        wait_ms(280);
        let now = lit(&face);
        assert!(now > before + 50, "{now} after {before}");
        before = now;
    }
    touch(&face, MIDDLE.0, MIDDLE.1);
    assert_eq!(taps.take(), [], "it is not full");
    wait_ms(100);
    let anew = lit(&face);
    assert!(anew < before, "it fills anew: {anew} after {before}");
    wait_ms(1_500);
    let full = lit(&face);
    assert!(full > before);
    wait_ms(500);
    assert_eq!(lit(&face), full, "and it stays");
    touch(&face, MIDDLE.0, MIDDLE.1);
    assert_eq!(taps.take(), [Tap::Main]);
}

#[test]
fn another_lifter_or_rung_fills_anew_and_a_tick_does_not() {
    let (face, taps) = open();
    let frame = scene("bar");
    bench::show(&face, &frame);
    let with = |change: fn(&mut Frame)| {
        let mut next = frame.clone();
        change(&mut next);
        next
    };
    face.show_frame(&with(|frame| {
        frame.clock = "18:43".into();
        frame.chips[0].word = "1:39".into();
        frame.notice = "The disk is full.".into();
    }));
    touch(&face, MIDDLE.0, MIDDLE.1);
    assert_eq!(taps.take(), [Tap::Main], "only clocks went on");
    wait_ms(2_000);
    for change in [
        (|frame: &mut Frame| frame.lifter = "Priya".into()) as fn(&mut Frame),
        |frame| frame.lift = "deadlift".into(),
        |frame| {
            if let Screen::Bar(bar) = &mut frame.screen {
                bar.rung = "work set".into();
            }
        },
        |frame| {
            if let Screen::Bar(bar) = &mut frame.screen {
                bar.load = "200".into();
            }
        },
    ] {
        bench::show(&face, &frame);
        face.show_frame(&with(change));
        touch(&face, MIDDLE.0, MIDDLE.1);
        assert_eq!(taps.take(), []);
        wait_ms(1_500);
        touch(&face, MIDDLE.0, MIDDLE.1);
        assert_eq!(taps.take(), [Tap::Main]);
        wait_ms(300);
    }
}

#[test]
fn a_key_waits_for_the_fill_too() {
    let (face, taps) = open();
    let enter = || {
        let text: slint::SharedString = slint::platform::Key::Return.into();
        let window = face.window();
        window.dispatch_event(slint::platform::WindowEvent::KeyPressed { text: text.clone() });
        window.dispatch_event(slint::platform::WindowEvent::KeyReleased { text });
    };
    face.show_frame(&scene("bar"));
    wait_ms(700);
    enter();
    assert_eq!(taps.take(), []);
    wait_ms(800);
    enter();
    assert_eq!(taps.take(), [], "pressed too soon, it fills anew");
    wait_ms(1_600);
    enter();
    assert_eq!(taps.take(), [Tap::Main]);
}

#[test]
fn where_the_finger_is_nothing_is_entered_and_elsewhere_at_once() {
    let (face, taps) = open();
    bench::show(&face, &scene("bar"));
    press(&face, "other reps");
    face.show_frame(&Frame {
        number: 1,
        answers: 1,
        ..scene("entry-reps")
    });
    wait_ms(300);
    press(&face, "3");
    assert_eq!(
        taps.take(),
        [Tap::OtherReps, Tap::Number(3)],
        "elsewhere at once"
    );
    // The same place as that: a pad of another rung has just come up.
    face.show_frame(&Frame {
        number: 2,
        answers: 2,
        ..scene("entry-reps")
    });
    wait_ms(300);
    press(&face, "3");
    assert_eq!(taps.take(), []);
    wait_ms(1_600);
    press(&face, "3");
    assert_eq!(taps.take(), [Tap::Number(3)], "seen by then");
}

#[test]
fn the_answer_that_does_not_come_is_told_at_a_fixed_place() {
    let (face, _) = open();
    face.on_tap(|_| {});
    let frame = scene("bar");
    bench::show(&face, &frame);
    let before = shot(&face);
    touch(&face, MIDDLE.0, MIDDLE.1);
    wait_ms(299);
    assert!(
        shot(&face).as_bytes() == before.as_bytes(),
        "a quick disk says nothing"
    );
    wait_ms(1);
    let told = shot(&face);
    let rows = |image: &SharedPixelBuffer<slint::Rgba8Pixel>| {
        let width = image.width() as usize;
        let lines = image
            .as_slice()
            .chunks(width)
            .zip(before.as_slice().chunks(width));
        let differs = lines.enumerate().filter(|(_, (a, b))| a != b);
        differs.map(|(at, _)| at).collect::<Vec<_>>()
    };
    let painted = rows(&told);
    assert!(painted.len() > 30, "it is told: {painted:?}");
    assert!(
        painted.iter().all(|row| (656..784).contains(row)),
        "{painted:?}"
    );
    bench::answer(&face, 1);
    assert!(
        shot(&face).as_bytes() == before.as_bytes(),
        "and then no more"
    );
}

#[test]
fn asleep_it_is_dark_and_a_touch_anywhere_wakes() {
    let (face, taps) = open();
    bench::show(&face, &scene("bar"));
    let bright = shot(&face);
    let light = |image: &SharedPixelBuffer<slint::Rgba8Pixel>| {
        let all = image.as_slice().iter();
        all.map(|p| u64::from(p.r) + u64::from(p.g) + u64::from(p.b))
            .sum::<u64>()
    };
    let asleep = Frame {
        asleep: true,
        number: 1,
        shift: (3, -3),
        ..scene("bar")
    };
    face.show_frame(&asleep);
    let dark = shot(&face);
    assert!(
        light(&dark) * 4 < light(&bright),
        "{} {}",
        light(&dark),
        light(&bright)
    );
    wait_ms(5_000);
    down(&face, 640.0, 300.0);
    up(&face, 640.0, 300.0);
    assert_eq!(taps.take(), [Tap::Wake]);
    touch(&face, MIDDLE.0, MIDDLE.1);
    assert_eq!(taps.take(), [Tap::Wake], "as long as it is dark");
}
