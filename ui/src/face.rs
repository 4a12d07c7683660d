//! The window with all its screens: takes a frame, shows what changed, reports taps.
//!
//! Refuses: deciding what to show. One thread has one face; others post to it.
use crate::backend::on_x11;
use crate::bar::AtTheBarFace;
use crate::beside::BesideFace;
use crate::choose::ChooseFace;
use crate::end::EndFace;
use crate::entry::EntryFace;
use crate::finger::Taps;
use crate::floor::FloorFace;
use crate::frame::FrameFace;
use crate::generated::{Finger, KioskWindow};
use crate::history::HistoryFace;
use crate::holds::HoldsFace;
use crate::list::{ListFace, PageFace};
use crate::meet::MeetFace;
use crate::only_window;
use crate::prompt;
use crate::rest::RestFace;
use crate::settle::SettleFace;
use crate::setup::SetUpFace;
use crate::stop::StopFace;
use crate::turn::TurnFace;
use crate::typing::TypingFace;
use crate::why::WhyFace;
use slint::{ComponentHandle as _, PhysicalPosition, PhysicalSize};
use std::cell::RefCell;
use std::fmt;
use std::rc::{Rc, Weak};
use view::{Frame, Meant, Screen};

thread_local! {
    /// The face that this thread's event loop shows; where [`FaceHandle::post`] delivers.
    static CURRENT: RefCell<Weak<Parts>> = const { RefCell::new(Weak::new()) };
}

/// The size that the window asks for beside others.
const PREFERRED: PhysicalSize = PhysicalSize {
    width: 1280,
    height: 800,
};

/// The kiosk's window. Clones are the same window.
#[derive(Clone)]
pub struct Face(Rc<Parts>);

struct Parts {
    window: KioskWindow,
    last: RefCell<Option<Frame>>,
    taps: Taps,
    frame: FrameFace,
    choose: ChooseFace,
    setup: SetUpFace,
    bar: AtTheBarFace,
    entry: EntryFace,
    rest: RestFace,
    turn: TurnFace,
    holds: HoldsFace,
    settle: SettleFace,
    stop: StopFace,
    end: EndFace,
    floor: FloorFace,
    history: HistoryFace,
    why: WhyFace,
    meet: MeetFace,
    list: ListFace,
    page: PageFace,
    typing: TypingFace,
    beside: BesideFace,
}

impl Face {
    /// Makes the window, hidden and empty; [`Face::show`] or the event loop brings it up.
    ///
    /// # Errors
    /// When the thread's backend cannot open a window.
    pub fn new() -> Result<Self, slint::PlatformError> {
        let window = KioskWindow::new()?;
        let parts = Rc::new(Parts {
            last: RefCell::new(None),
            taps: Taps::connect(&window),
            frame: FrameFace::new(&window),
            choose: ChooseFace::new(&window),
            setup: SetUpFace::new(&window),
            bar: AtTheBarFace::new(&window),
            entry: EntryFace::new(&window),
            rest: RestFace::new(&window),
            turn: TurnFace::new(&window),
            holds: HoldsFace::new(&window),
            settle: SettleFace::new(&window),
            stop: StopFace::new(&window),
            end: EndFace::new(&window),
            floor: FloorFace::new(&window),
            history: HistoryFace::new(&window),
            why: WhyFace::new(&window),
            meet: MeetFace::new(&window),
            list: ListFace::new(&window),
            page: PageFace::new(&window),
            typing: TypingFace::new(&window),
            beside: BesideFace::new(&window),
            window,
        });
        let turn = Rc::downgrade(&parts);
        parts.window.global::<Finger<'_>>().on_more(move || {
            if let Some(parts) = turn.upgrade() {
                let last = parts.last.borrow();
                let listing = last
                    .as_ref()
                    .is_some_and(|f| matches!(f.screen, Screen::List(_)));
                if listing {
                    parts.list.turn(&parts.window);
                } else {
                    parts.choose.turn(&parts.window);
                }
            }
        });
        prompt::on_touch(parts.window.window());
        CURRENT.with(|current| *current.borrow_mut() = Rc::downgrade(&parts));
        Ok(Self(parts))
    }

    /// Shows a frame; touches only what differs from the last one.
    pub fn show_frame(&self, frame: &Frame) {
        let parts = &self.0;
        if parts.last.borrow().as_ref() == Some(frame) {
            return;
        }
        let window = &parts.window;
        if !matches!(frame.screen, Screen::Choose(_)) {
            parts.choose.rewind();
        }
        match &frame.screen {
            Screen::Choose(choose) => parts.choose.show(window, choose),
            Screen::SetUp(setup) => parts.setup.show(window, setup),
            Screen::Bar(bar) => parts.bar.show(window, bar),
            Screen::Entry(entry) => parts.entry.show(window, entry),
            Screen::Turn(pad) => parts.turn.show(window, pad),
            Screen::Holds(holds) => parts.holds.show(window, holds),
            Screen::Rest(rest) => parts.rest.show(window, rest),
            Screen::Settle(settle) => parts.settle.show(window, settle),
            Screen::Stop(stop) => parts.stop.show(window, stop),
            Screen::End(end) => parts.end.show(window, end),
            Screen::Floor(floor) => parts.floor.show(window, floor),
            Screen::History(history) => parts.history.show(window, history),
            Screen::Why(why) => parts.why.show(window, why),
            Screen::Meet(page) => parts.meet.show(window, page),
            Screen::List(list) => parts.list.show(window, list),
            Screen::Page(page) => parts.page.show(window, page),
            Screen::Typing(typing) => parts.typing.show(window, typing),
        }
        parts.beside.show(window, frame.beside.as_ref());
        // Last, so that a screen is never seen with what it showed before.
        parts.frame.show(window, frame);
        parts.taps.shown(frame);
        *parts.last.borrow_mut() = Some(frame.clone());
        prompt::draw(window.window());
    }

    /// From now on `hear` is told of every tap that counts, on the window's thread. The window
    /// takes no other until a frame answers it: one whose [`Frame::answers`] is its id.
    pub fn on_tap(&self, hear: impl FnMut(Meant) + 'static) {
        self.0.taps.listen(hear);
    }

    /// What is drawn.
    #[must_use]
    pub fn frame(&self) -> Option<Frame> {
        self.0.last.borrow().clone()
    }

    /// As if the frame had been shown for long: the main button is full, and every button takes
    /// taps. For pictures.
    pub fn settle(&self) {
        self.0.taps.settle();
    }

    /// From now on `hear` is told which simulated switch goes down (`true`) or up, on the
    /// window's thread.
    pub fn on_push(&self, hear: impl FnMut(&str, bool) + 'static) {
        self.0.beside.listen(hear);
    }

    /// The window, for its size, snapshots and events.
    #[must_use]
    pub fn window(&self) -> &slint::Window {
        self.0.window.window()
    }

    /// Brings the window up.
    ///
    /// # Errors
    /// When the backend cannot show it.
    pub fn show(&self) -> Result<(), slint::PlatformError> {
        self.0.window.show()
    }

    /// Brings the window up, and fills the display with it where no other window is to be seen; where
    /// others are, it is no larger than the display.
    ///
    /// # Errors
    /// When the backend cannot show it.
    pub fn fill_display(&self) -> Result<(), slint::PlatformError> {
        let display = on_x11().then(only_window::look).flatten();
        self.show()?;
        let Some(display) = display else {
            return Ok(());
        };
        let window = self.window();
        let panel = PhysicalSize::new(display.width, display.height);
        if display.managed && !display.others {
            window.set_fullscreen(true);
        } else if !display.others {
            // Nobody answers who could be asked for the whole display.
            window.set_position(PhysicalPosition::new(0, 0));
            window.set_size(panel);
        } else if PREFERRED.width > panel.width || PREFERRED.height > panel.height {
            let (width, height) = (
                PREFERRED.width.min(panel.width),
                PREFERRED.height.min(panel.height),
            );
            window.set_size(PhysicalSize::new(width, height));
        }
        Ok(())
    }

    /// The generated component, for tests that look for elements.
    #[must_use]
    pub fn component(&self) -> &KioskWindow {
        &self.0.window
    }

    /// A handle for other threads.
    #[must_use]
    pub fn handle(&self) -> FaceHandle {
        FaceHandle(())
    }
}

impl fmt::Debug for Face {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("Face")
    }
}

/// Reaches the face of the event loop from any thread.
#[derive(Debug, Clone)]
pub struct FaceHandle(());

impl FaceHandle {
    /// Runs `job` with the face on the event loop's thread, soon. Does nothing when the face is
    /// gone by then.
    ///
    /// # Errors
    /// When there is no event loop, or it has ended.
    pub fn post(
        &self,
        job: impl FnOnce(&Face) + Send + 'static,
    ) -> Result<(), slint::EventLoopError> {
        slint::invoke_from_event_loop(move || {
            let parts = CURRENT.with(|current| current.borrow().upgrade());
            if let Some(parts) = parts {
                job(&Face(parts));
            }
        })
    }
}
