//! What a finger did, told as taps; and the one place that swallows a double bounce.
//!
//! Refuses: the meaning of a tap. Time here is Slint's own, so a test can drive it.
use crate::generated::{Finger, KioskWindow};
use slint::{ComponentHandle as _, Timer, TimerMode};
use std::cell::{Cell, RefCell};
use std::rc::Rc;
use std::time::Duration;
use view::Tap;

/// After an accepted tap, presses are swallowed this long.
const BOUNCE: Duration = Duration::from_millis(250);

/// Who listens to taps.
type Listener = Rc<RefCell<Option<Box<dyn FnMut(Tap)>>>>;

/// Decides whether a press counts.
#[derive(Default)]
struct Bounce {
    quiet: Timer,
    swallow: Cell<bool>,
}

impl Bounce {
    /// A finger came down: does this press count?
    fn down(&self) -> bool {
        self.swallow.set(self.quiet.running());
        !self.swallow.get()
    }

    /// The finger left the button it came down on: does the tap count?
    fn up(&self) -> bool {
        if self.swallow.get() {
            return false;
        }
        self.quiet.start(TimerMode::SingleShot, BOUNCE, || {});
        true
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
        finger.on_down(move || b.down());
        let b = Rc::clone(&bounce);
        finger.on_up(move || b.up());
        finger.on_act(move || bounce.down() && bounce.up());

        let listener: Listener = Rc::default();
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
        let l = Rc::clone(&listener);
        finger.on_lifter(move |name| tell(&l, Tap::Lifter(name.into())));
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
