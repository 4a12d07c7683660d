//! What a finger or a key did, told as taps; and the one place that swallows a double bounce
//! and a palm.
//!
//! Refuses: the meaning of a tap. Time here is Slint's own, so a test can drive it.
use crate::generated::{Finger, KioskWindow};
use slint::platform::{Key, WindowEvent};
use slint::{ComponentHandle as _, SharedString, Timer, TimerMode, Weak};
use std::cell::{Cell, RefCell};
use std::rc::Rc;
use std::time::Duration;
use view::Tap;

/// After an accepted tap, presses are swallowed this long.
const BOUNCE: Duration = Duration::from_millis(250);

/// After several fingers at once, presses are swallowed this long.
const PALM: Duration = Duration::from_millis(600);

/// What a key means that no button took.
enum Meaning {
    Tap(Tap),
    /// On to the next or the last button, as the Tab key does.
    Step(Key),
}

/// Enter is the main button, Escape and Backspace are undo, digits are the pad's numbers, arrows
/// go from button to button.
fn meaning(key: &str) -> Option<Meaning> {
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
fn step(window: Weak<KioskWindow>, key: Key) {
    Timer::single_shot(Duration::ZERO, move || {
        if let Some(window) = window.upgrade() {
            let text = SharedString::from(key);
            window
                .window()
                .dispatch_event(WindowEvent::KeyPressed { text });
        }
    });
}

/// Who listens to taps.
type Listener = Rc<RefCell<Option<Box<dyn FnMut(Tap)>>>>;

/// Decides whether a press counts.
#[derive(Default)]
struct Bounce {
    /// Runs after an accepted tap.
    quiet: Timer,
    /// Runs after several fingers at once.
    palm: Timer,
    /// Who came down last.
    finger: Cell<i32>,
}

impl Bounce {
    /// A finger came down: does this press count?
    fn down(&self, finger: i32) -> bool {
        self.finger.set(finger);
        if self.palm.running() {
            // It is still rolling off.
            self.palm.restart();
            return false;
        }
        !self.quiet.running()
    }

    /// A finger left the button it came down on: does the tap count? Slint lets go of the first
    /// finger when a second one comes down, in the second one's name.
    fn up(&self, finger: i32) -> bool {
        if self.finger.get() != finger {
            self.palm.start(TimerMode::SingleShot, PALM, || {});
            return false;
        }
        self.quiet.start(TimerMode::SingleShot, BOUNCE, || {});
        true
    }

    /// A tap by a key or an assistive tool.
    fn act(&self) -> bool {
        self.down(0) && self.up(0)
    }
}

/// Taps of the window, on their way to whoever listens.
pub(crate) struct Taps(Listener);

impl Taps {
    /// Hears every callback of the window.
    pub(crate) fn connect(window: &KioskWindow) -> Self {
        let bounce = Rc::new(Bounce::default());
        let finger = window.global::<Finger<'_>>();
        let b = Rc::clone(&bounce);
        finger.on_down(move |id| b.down(id));
        let b = Rc::clone(&bounce);
        finger.on_up(move |id| b.up(id));
        let b = Rc::clone(&bounce);
        finger.on_act(move || b.act());

        let listener: Listener = Rc::default();
        let (l, weak) = (Rc::clone(&listener), window.as_weak());
        finger.on_key(move |key| match meaning(&key) {
            Some(Meaning::Tap(tap)) => {
                if bounce.act() {
                    tell(&l, tap);
                }
                true
            }
            Some(Meaning::Step(to)) => {
                step(weak.clone(), to);
                true
            }
            None => false,
        });
        let plain = |tap: Tap| {
            let listener = Rc::clone(&listener);
            move || tell(&listener, tap.clone())
        };
        finger.on_all(plain(Tap::All));
        finger.on_floor(plain(Tap::Floor));
        finger.on_undo(plain(Tap::Undo));
        finger.on_main(plain(Tap::Main));
        finger.on_other_reps(plain(Tap::OtherReps));
        finger.on_back_moved(plain(Tap::BackMoved));
        finger.on_went_through(plain(Tap::WentThrough));
        finger.on_skip(plain(Tap::Skip));
        finger.on_stop(plain(Tap::Stop));
        finger.on_go_on(plain(Tap::GoOn));
        finger.on_set_up(plain(Tap::SetUp));
        finger.on_settle(plain(Tap::Settle));
        finger.on_panel(plain(Tap::Panel));
        finger.on_history(plain(Tap::History));
        finger.on_why(plain(Tap::Why));
        finger.on_sooner(plain(Tap::Sooner));
        finger.on_later(plain(Tap::Later));
        let l = Rc::clone(&listener);
        finger.on_lifter(move |name| tell(&l, Tap::Lifter(name.into())));
        let l = Rc::clone(&listener);
        finger.on_row(move |at| {
            if let Ok(at) = usize::try_from(at) {
                tell(&l, Tap::Row(at));
            }
        });
        let l = Rc::clone(&listener);
        finger.on_number(move |number| {
            if let Ok(number) = u8::try_from(number) {
                tell(&l, Tap::Number(number));
            }
        });
        let l = Rc::clone(&listener);
        finger.on_choose(move |number| {
            if let Ok(number) = usize::try_from(number) {
                tell(&l, Tap::Choose(number));
            }
        });
        Self(listener)
    }

    /// From now on `hear` is told of every tap, in place of whoever was before.
    pub(crate) fn listen(&self, hear: impl FnMut(Tap) + 'static) {
        *self.0.borrow_mut() = Some(Box::new(hear));
    }
}

/// Tells the listener, who may show a frame meanwhile. A tap that arises inside a tap is lost,
/// which a finger cannot do.
fn tell(listener: &Listener, tap: Tap) {
    if let Ok(mut hear) = listener.try_borrow_mut()
        && let Some(hear) = hear.as_mut()
    {
        hear(tap);
    }
}
