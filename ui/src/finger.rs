//! What a finger or a key did, told as taps; `view::Guard` says which of them count.
//!
//! Refuses: the meaning of a tap. Time here is Slint's own, so a test can drive it.
mod guarded;
mod keys;

use crate::finger::guarded::Guarded;
use crate::finger::keys::{Meaning, meaning, step};
use crate::generated::{Finger, KioskWindow};
use slint::ComponentHandle as _;
use std::cell::RefCell;
use std::rc::Rc;
use view::tap::HoldsTap;
use view::{Frame, Meant, Tap};

/// Who listens to taps.
type Listener = Rc<RefCell<Option<Box<dyn FnMut(Meant)>>>>;

/// Taps of the window, on their way to whoever listens.
pub(crate) struct Taps {
    listener: Listener,
    guarded: Rc<Guarded>,
}

impl Taps {
    /// Hears every callback of the window.
    pub(crate) fn connect(window: &KioskWindow) -> Self {
        let guarded = Guarded::of(window);
        let listener: Listener = Rc::default();
        let tell = {
            let (guarded, listener) = (Rc::clone(&guarded), Rc::clone(&listener));
            Rc::new(move |tap: Tap| tell(&listener, guarded.send(tap)))
        };
        let finger = window.global::<Finger<'_>>();
        let (t, g) = (Rc::clone(&tell), Rc::clone(&guarded));
        finger.on_wake(move |x, y| {
            if g.wake(x, y) {
                t(Tap::Wake);
            }
        });
        let (t, g) = (Rc::clone(&tell), Rc::clone(&guarded));
        finger.on_act(move |weight, x, y| {
            if g.wake(x, y) {
                t(Tap::Wake);
                return false;
            }
            g.act(weight, x, y)
        });
        let (t, g, weak) = (Rc::clone(&tell), Rc::clone(&guarded), window.as_weak());
        finger.on_key(move |key| {
            if g.wake_by(&key) {
                t(Tap::Wake);
                return true;
            }
            match meaning(&key) {
                Some(Meaning::Tap(tap)) => {
                    if g.key(&key, &tap) {
                        t(tap);
                    }
                    true
                }
                Some(Meaning::Step(to)) => {
                    step(weak.clone(), to);
                    true
                }
                None => false,
            }
        });
        hear_buttons(&finger, &tell);
        hear_said(&finger, &tell);
        Self { listener, guarded }
    }

    /// From now on `hear` is told of every tap, in place of whoever was before.
    pub(crate) fn listen(&self, hear: impl FnMut(Meant) + 'static) {
        *self.listener.borrow_mut() = Some(Box::new(hear));
    }

    /// A frame is drawn: what it answers is answered, and what it changes is guarded.
    pub(crate) fn shown(&self, frame: &Frame) {
        self.guarded.shown(frame);
    }

    /// As if the frame had been shown for long.
    pub(crate) fn settle(&self) {
        self.guarded.settle();
    }
}

/// Every button tells its tap.
fn hear_buttons<T: Fn(Tap) + 'static>(finger: &Finger<'_>, tell: &Rc<T>) {
    let plain = |tap: Tap| {
        let tell = Rc::clone(tell);
        move || tell(tap.clone())
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
    let t = Rc::clone(tell);
    finger.on_lifter(move |name| t(Tap::Lifter(name.into())));
    let t = Rc::clone(tell);
    finger.on_row(move |at| {
        if let Ok(at) = usize::try_from(at) {
            t(Tap::Row(at));
        }
    });
    let t = Rc::clone(tell);
    finger.on_number(move |number| {
        if let Ok(number) = u8::try_from(number) {
            t(Tap::Number(number));
        }
    });
    let t = Rc::clone(tell);
    finger.on_choose(move |number| {
        if let Ok(number) = usize::try_from(number) {
            t(Tap::Choose(number));
        }
    });
}

/// Hears what is said about a turn and about a bar.
fn hear_said<T: Fn(Tap) + 'static>(finger: &Finger<'_>, tell: &Rc<T>) {
    let plain = |tap: Tap| {
        let tell = Rc::clone(tell);
        move || tell(tap.clone())
    };
    finger.on_loaded(plain(Tap::Loaded));
    finger.on_holds(plain(Tap::Holds));
    finger.on_take_last(plain(Tap::Hold(HoldsTap::TakeLast)));
    finger.on_turn_pad(plain(Tap::TurnPad));
    let t = Rc::clone(tell);
    finger.on_answer(move |at| {
        if let Ok(at) = usize::try_from(at) {
            t(Tap::Answer(at));
        }
    });
    let t = Rc::clone(tell);
    finger.on_plate(move |at| {
        if let Ok(at) = u16::try_from(at) {
            t(Tap::Hold(HoldsTap::Plate(at)));
        }
    });
}

/// Tells the listener, who may show a frame meanwhile. A tap that arises inside a tap is lost,
/// which a finger cannot do.
fn tell(listener: &Listener, meant: Meant) {
    if let Ok(mut hear) = listener.try_borrow_mut()
        && let Some(hear) = hear.as_mut()
    {
        hear(meant);
    }
}
