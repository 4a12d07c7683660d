//! What a key means that no button took.
use crate::generated::KioskWindow;
use slint::platform::{Key, WindowEvent};
use slint::{ComponentHandle as _, SharedString, Timer, Weak};
use std::time::Duration;
use view::Tap;

/// What a key means.
pub(super) enum Meaning {
    Tap(Tap),
    /// On to the next or the last button, as the Tab key does.
    Step(Key),
}

/// Enter is the main button, Escape and Backspace are undo, digits are the pad's numbers, arrows
/// go from button to button.
pub(super) fn meaning(key: &str) -> Option<Meaning> {
    let is = |k: Key| key == SharedString::from(k).as_str();
    let digit = key.chars().next().and_then(|c| c.to_digit(10));
    if is(Key::Return) {
        Some(Meaning::Tap(Tap::Main))
    } else if is(Key::Escape) || is(Key::Backspace) {
        Some(Meaning::Tap(Tap::Undo))
    } else if is(Key::RightArrow) || is(Key::DownArrow) {
        Some(Meaning::Step(Key::Tab))
    } else if is(Key::LeftArrow) || is(Key::UpArrow) {
        Some(Meaning::Step(Key::Backtab))
    } else {
        let digit = digit.and_then(|digit| u8::try_from(digit).ok())?;
        Some(Meaning::Tap(Tap::Number(digit)))
    }
}

/// Sends a key once the present one is done with.
pub(super) fn step(window: Weak<KioskWindow>, key: Key) {
    Timer::single_shot(Duration::ZERO, move || {
        if let Some(window) = window.upgrade() {
            let text = SharedString::from(key);
            window
                .window()
                .dispatch_event(WindowEvent::KeyPressed { text });
        }
    });
}
