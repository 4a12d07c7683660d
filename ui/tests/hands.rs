//! Palms and keys: several fingers at once say nothing; every button is reached without a finger.
mod bench;

use bench::{buttons, down, open, press, scene, show, up, wait_ms};
use i_slint_core::input::TouchPhase;
use i_slint_core::lengths::LogicalPoint;
use i_slint_core::platform::InternalEvent;
use slint::SharedString;
use slint::platform::{Key, WindowEvent};
use std::cell::RefCell;
use std::rc::Rc;
use view::{Frame, Tap};

/// A finger of a touchscreen.
fn touch(face: &ui::Face, id: i32, (x, y): (f32, f32), phase: TouchPhase) {
    let position = LogicalPoint::new(x, y);
    let event = InternalEvent::Touch {
        id,
        position,
        phase,
    };
    face.window().dispatch_event(WindowEvent::internal(event));
}

/// The middle of a button.
fn middle(face: &ui::Face, label: &str) -> (f32, f32) {
    let all = buttons(face);
    let button = all.iter().find(|button| button.0 == label);
    let (_, (left, top, right, bottom)) = button.expect("the button is there");
    (f32::midpoint(*left, *right), f32::midpoint(*top, *bottom))
}

#[test]
fn one_finger_of_a_touchscreen_is_a_tap() {
    let (face, taps) = open();
    show(&face, &scene("bar"));
    let at = middle(&face, "2 done, back held");
    touch(&face, 4, at, TouchPhase::Started);
    touch(&face, 4, at, TouchPhase::Ended);
    assert_eq!(taps.take(), [Tap::Main]);
}

#[test]
fn a_palm_says_nothing() {
    let (face, taps) = open();
    show(&face, &scene("bar"));
    let at = middle(&face, "2 done, back held");
    let beside = (at.0 - 60.0, at.1 + 20.0);
    touch(&face, 4, at, TouchPhase::Started);
    touch(&face, 5, beside, TouchPhase::Started);
    wait_ms(80);
    touch(&face, 4, at, TouchPhase::Ended);
    wait_ms(40);
    touch(&face, 5, beside, TouchPhase::Ended);
    assert_eq!(taps.take(), [], "neither finger counts");
    wait_ms(100);
    press(&face, "other reps");
    assert_eq!(taps.take(), [], "nor what rolls off after it");
    wait_ms(700);
    press(&face, "other reps");
    assert_eq!(taps.take(), [Tap::OtherReps], "and then all is well again");
}

fn key(face: &ui::Face, key: impl Into<SharedString>) {
    let text = key.into();
    let window = face.window();
    window.dispatch_event(WindowEvent::KeyPressed { text: text.clone() });
    window.dispatch_event(WindowEvent::KeyReleased { text });
    // An arrow hands over to the Tab key once it is done with.
    wait_ms(1);
}

/// What Enter says on every button in turn, by going on with `onward`.
fn all_by(onward: Key, name: &str, count: usize) -> Vec<Tap> {
    let (face, taps) = open();
    show(&face, &scene(name));
    for _ in 0..count {
        key(&face, onward);
        key(&face, " ");
        wait_ms(300);
    }
    taps.take()
}

#[test]
fn tab_and_arrows_reach_every_button() {
    // Each on a thread, and so on a window, of its own.
    let all_by = |onward| {
        let run = std::thread::spawn(move || all_by(onward, "bar", 10));
        run.join().expect("the keys are heard")
    };
    let by_tab = all_by(Key::Tab);
    assert_eq!(by_tab.len(), 10, "{by_tab:?}");
    for tap in [
        Tap::All,
        Tap::Undo,
        Tap::TurnPad,
        Tap::Loaded,
        Tap::Holds,
        Tap::OtherReps,
        Tap::BackMoved,
        Tap::Main,
    ] {
        assert!(by_tab.contains(&tap), "{tap:?} among {by_tab:?}");
    }
    assert_eq!(all_by(Key::RightArrow), by_tab);
    let mut back = all_by(Key::LeftArrow);
    back.reverse();
    assert_eq!(back, by_tab, "and the other way round");
}

#[test]
fn where_the_keys_are_is_seen() {
    let (face, _) = open();
    show(&face, &scene("bar"));
    let shot = |face: &ui::Face| {
        face.window()
            .take_snapshot()
            .expect("it draws")
            .as_bytes()
            .to_vec()
    };
    let before = shot(&face);
    key(&face, Key::Tab);
    assert!(shot(&face) != before, "a ring stands around the button");
}

#[test]
fn enter_goes_on_escape_takes_back_and_digits_enter() {
    let (face, taps) = open();
    show(&face, &scene("bar"));
    for (pressed, tap) in [
        (SharedString::from(Key::Return), Tap::Main),
        (Key::Escape.into(), Tap::Undo),
        (Key::Backspace.into(), Tap::Undo),
        ("3".into(), Tap::Number(3)),
    ] {
        key(&face, pressed);
        assert_eq!(taps.take(), [tap]);
        wait_ms(300);
    }
    key(&face, "x");
    assert_eq!(taps.take(), []);
}

#[test]
fn a_key_that_bounces_is_one_tap() {
    let (face, taps) = open();
    show(&face, &scene("bar"));
    key(&face, Key::Return);
    key(&face, Key::Return);
    assert_eq!(taps.take(), [Tap::Main]);
}

/// Goes on by Tab until the button with this label has the keys.
fn keys_to(face: &ui::Face, label: &str) {
    let query = || {
        i_slint_backend_testing::ElementHandle::find_by_accessible_label(face.component(), label)
    };
    assert!(query().next().is_some(), "the button is there");
    let shot = |face: &ui::Face| {
        let (left, top, right, bottom) = buttons(face)
            .into_iter()
            .find(|button| button.0 == label)
            .expect("the button")
            .1;
        let image = face.window().take_snapshot().expect("it draws");
        let width = image.width() as usize;
        #[allow(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "pixels of a panel"
        )]
        let whole = |edge: f32| edge.max(0.0) as usize;
        let from = whole(top - 6.0) * width + whole(left);
        assert!(right > left && bottom > top);
        image.as_slice()[from..from + whole(right - left)].to_vec()
    };
    let without = shot(face);
    for _ in 0..40 {
        key(face, Key::Tab);
        // The ring stands around it.
        if shot(face) != without {
            return;
        }
    }
    panic!("the keys never come to {label}");
}

#[test]
fn what_is_held_by_a_finger_is_held_by_a_key() {
    for pressed in [SharedString::from(Key::Return), " ".into()] {
        let run = std::thread::spawn(move || {
            let (face, taps) = open();
            show(&face, &scene("turn"));
            keys_to(&face, "end the lift");
            let window = face.window();
            let down = || WindowEvent::KeyPressed {
                text: pressed.clone(),
            };
            let up = || WindowEvent::KeyReleased {
                text: pressed.clone(),
            };
            window.dispatch_event(down());
            wait_ms(300);
            window.dispatch_event(up());
            wait_ms(2_000);
            assert_eq!(taps.take(), [], "a short press does nothing");
            window.dispatch_event(down());
            // A keyboard says it again and again while a key is down.
            for _ in 0..9 {
                wait_ms(100);
                window.dispatch_event(WindowEvent::KeyPressRepeated {
                    text: pressed.clone(),
                });
            }
            assert_eq!(taps.take(), [Tap::Stop], "held as long as a finger");
            wait_ms(2_000);
            window.dispatch_event(up());
            assert_eq!(taps.take(), [], "once");
        });
        run.join().expect("the keys are heard");
    }
}

#[test]
fn an_assistive_tool_asks_twice_for_what_is_held() {
    let (face, taps) = open();
    show(&face, &scene("turn"));
    let stop = || {
        i_slint_backend_testing::ElementHandle::find_by_accessible_label(
            face.component(),
            "end the lift",
        )
        .next()
        .expect("the button")
    };
    stop().invoke_accessible_default_action();
    assert_eq!(taps.take(), [], "once is not enough");
    let words = stop().accessible_description();
    assert_eq!(words.as_deref(), Some("once more to do it"));
    wait_ms(1_000);
    stop().invoke_accessible_default_action();
    assert_eq!(taps.take(), [Tap::Stop]);
    stop().invoke_accessible_default_action();
    wait_ms(6_000);
    stop().invoke_accessible_default_action();
    assert_eq!(taps.take(), [], "what was asked long ago does not count");
}

#[test]
fn a_simulated_switch_is_down_as_long_as_the_finger_is() {
    let (face, taps) = open();
    let switches = [("foot switch", false), ("left button", false)];
    let beside = view::beside::Beside {
        switches: switches
            .map(|(name, down)| (name.to_owned(), down))
            .to_vec(),
        ..Default::default()
    };
    let frame = Frame {
        beside: Some(beside),
        ..scene("bar")
    };
    show(&face, &frame);
    let pushes: Rc<RefCell<Vec<(String, bool)>>> = Rc::default();
    let heard = Rc::clone(&pushes);
    face.on_push(move |name, down| heard.borrow_mut().push((name.to_owned(), down)));
    let all = buttons(&face);
    let (_, (left, top, ..)) = all.iter().find(|b| b.0 == "left button").expect("drawn");
    down(&face, left + 9.0, top + 9.0);
    wait_ms(500);
    assert_eq!(pushes.take(), [("left button".to_owned(), true)]);
    up(&face, left + 9.0, top + 9.0);
    let told = pushes.take();
    assert_eq!(told.last(), Some(&("left button".to_owned(), false)));
    assert_eq!(taps.take(), [], "it is no tap of the screen");
}
