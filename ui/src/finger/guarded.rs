//! The guard of one window: told of time, places and frames; shows what it holds back.
use crate::generated::{Finger, KioskWindow, Theme, Weight as Heavy};
use slint::{ComponentHandle as _, Timer, TimerMode, Weak};
use std::cell::{Cell, RefCell};
use std::rc::Rc;
use std::time::Duration;
use view::guard::{FILL_MS, weight_of_main, weight_of_others};
use view::{Frame, Guard, Meant, Place, Tap, Weight};

/// A guard, and the window that it guards.
pub(super) struct Guarded {
    guard: RefCell<Guard>,
    window: Weak<KioskWindow>,
    /// How heavy keys weigh on the screen that is shown: Enter, and the others.
    keys: Cell<(Weight, Weight)>,
    /// Runs until something changes by itself.
    again: Timer,
}

impl Guarded {
    /// Guards `window` from now on.
    pub(super) fn of(window: &KioskWindow) -> Rc<Self> {
        let guarded = Rc::new(Self {
            guard: RefCell::default(),
            window: window.as_weak(),
            keys: Cell::new((Weight::Main, Weight::Entry)),
            again: Timer::default(),
        });
        let finger = window.global::<Finger<'_>>();
        finger.set_fills_for(i64::try_from(FILL_MS).unwrap_or(i64::MAX));
        let g = Rc::clone(&guarded);
        finger.on_down(move |id, weight, x, y| {
            let place = g.place(x, y);
            g.ask(|guard, now| guard.down(now, id, weight.into(), place))
        });
        let g = Rc::clone(&guarded);
        finger.on_up(move |id| g.ask(|guard, now| guard.up(now, id)));
        let g = Rc::downgrade(&guarded);
        finger.on_takes(move |weight, x, y, _| {
            let Some(g) = g.upgrade() else { return false };
            let takes = g.guard.borrow();
            takes.takes(g.now(), weight.into(), &g.place(x, y))
        });
        guarded
    }

    /// A tap by an assistive tool, or by a key on a button in that place: does it count?
    pub(super) fn act(self: &Rc<Self>, weight: Heavy, x: f32, y: f32) -> bool {
        let place = self.place(x, y);
        self.ask(|guard, now| guard.act(now, weight.into(), place))
    }

    /// A key that stands for a tap: does it count?
    pub(super) fn key(self: &Rc<Self>, key: &str, tap: &Tap) -> bool {
        let (main, others) = self.keys.get();
        let weight = if *tap == Tap::Main { main } else { others };
        let place = Place::Key(key.into());
        self.ask(|guard, now| guard.act(now, weight, place))
    }

    /// A touch: does it wake the screen?
    pub(super) fn wake(self: &Rc<Self>, x: f32, y: f32) -> bool {
        let place = self.place(x, y);
        self.ask(|guard, now| guard.wake(now, place))
    }

    /// A key: does it wake the screen?
    pub(super) fn wake_by(self: &Rc<Self>, key: &str) -> bool {
        self.ask(|guard, now| guard.wake(now, Place::Key(key.into())))
    }

    /// A tap goes on its way.
    pub(super) fn send(self: &Rc<Self>, tap: Tap) -> Meant {
        self.ask(|guard, now| guard.send(now, tap))
    }

    /// A frame is drawn.
    pub(super) fn shown(self: &Rc<Self>, frame: &Frame) {
        let (main, others) = (
            weight_of_main(&frame.screen),
            weight_of_others(&frame.screen),
        );
        self.keys.set((main, others));
        if let Some(window) = self.window.upgrade() {
            let finger = window.global::<Finger<'_>>();
            finger.set_main_weight(main.into());
            finger.set_undo_weight(others.into());
        }
        self.ask(|guard, now| guard.shown(now, frame));
    }

    /// As if the frame had been shown for long.
    pub(super) fn settle(self: &Rc<Self>) {
        self.ask(|guard, _| guard.settle());
    }

    /// Asks or tells the guard something, and shows what it holds back from then on.
    fn ask<T>(self: &Rc<Self>, what: impl FnOnce(&mut Guard, u64) -> T) -> T {
        let now = self.now();
        let answer = what(&mut self.guard.borrow_mut(), now);
        self.tell(now);
        answer
    }

    fn tell(self: &Rc<Self>, now: u64) {
        let Some(window) = self.window.upgrade() else {
            return;
        };
        let (fills, saving, again) = {
            let guard = self.guard.borrow();
            (
                guard.fills_since(now),
                guard.is_saving(now),
                guard.changes_at(now),
            )
        };
        let finger = window.global::<Finger<'_>>();
        if let Some(since) = fills {
            finger.set_fills_since(i64::try_from(since).unwrap_or(i64::MAX));
        }
        finger.set_filling(fills.is_some());
        finger.set_saving(saving);
        finger.set_stamp(finger.get_stamp().wrapping_add(1));
        match again {
            Some(at) => {
                let guarded = Rc::downgrade(self);
                let after = Duration::from_millis(at - now);
                self.again.start(TimerMode::SingleShot, after, move || {
                    if let Some(guarded) = guarded.upgrade() {
                        guarded.tell(guarded.now());
                    }
                });
            }
            None => self.again.stop(),
        }
    }

    /// Slint's own time, milliseconds.
    fn now(&self) -> u64 {
        let now = self
            .window
            .upgrade()
            .map(|window| window.global::<Finger<'_>>().invoke_now());
        now.and_then(|now| u64::try_from(now).ok()).unwrap_or(0)
    }

    /// A place of the window, whatever its size.
    fn place(&self, x: f32, y: f32) -> Place {
        let unit = self
            .window
            .upgrade()
            .map(|window| window.global::<Theme<'_>>().get_u());
        let unit = unit.filter(|unit| *unit > 0.0).unwrap_or(1.0);
        Place::pixels(x / unit, y / unit)
    }
}

impl From<Heavy> for Weight {
    fn from(weight: Heavy) -> Self {
        match weight {
            Heavy::Main => Self::Main,
            Heavy::Entry => Self::Entry,
            Heavy::Quick => Self::Quick,
        }
    }
}

impl From<Weight> for Heavy {
    fn from(weight: Weight) -> Self {
        match weight {
            Weight::Main => Self::Main,
            Weight::Entry => Self::Entry,
            Weight::Quick => Self::Quick,
        }
    }
}
