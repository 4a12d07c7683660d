//! The bench: a kiosk on a data folder, a window without a display, a finger.
//!
//! Refuses: private doors; taps go through the widgets, the state is read off the screen.
mod rude;

use chrono::NaiveDate;
use i_slint_backend_testing::{
    AccessibleRole, ElementHandle, ElementQuery, TestingBackend, TestingBackendOptions,
};
use kiosk::clock::BenchClock;
use kiosk::{Folder, Kiosk, Pressed};
use slint::LogicalPosition;
use slint::platform::WindowEvent;
use std::cell::{Cell, RefCell};
use std::path::Path;
use std::rc::Rc;
use view::{Frame, Meant, Screen};

/// A Wednesday of the demo plan, in the evening.
pub(crate) fn evening() -> BenchClock {
    let day = NaiveDate::from_ymd_opt(2026, 12, 2).expect("a day");
    BenchClock::at(day.and_hms_opt(18, 0, 0).expect("a time"))
}

/// Steps of waiting for a button to take taps, at most, and how long each is.
const FILLS_MAX: u64 = 40;
const FILL_STEP_MS: u64 = 50;

/// One kiosk with its window.
pub(crate) struct Bench {
    face: ui::Face,
    kiosk: RefCell<Kiosk>,
    taps: Rc<RefCell<Vec<Meant>>>,
    clock: BenchClock,
    beside: RefCell<Option<hardware::Panel>>,
    /// Whether the owner of state is held up by a slow disk.
    slow: Cell<bool>,
    made: Cell<usize>,
}

impl Bench {
    /// Switches the power on.
    pub(crate) fn start(data: &Path, clock: &BenchClock) -> Self {
        backend();
        let folder = Folder::open(Some(data)).expect("the folder opens");
        let kiosk = Kiosk::open(&folder, Box::new(clock.clone())).expect("the kiosk opens");
        let kiosk = RefCell::new(kiosk);
        let face = ui::Face::new().expect("a window without a display");
        face.show().expect("the window opens");
        face.window().set_size(slint::PhysicalSize::new(1280, 800));
        face.show_frame(&kiosk.borrow_mut().frame());
        let taps = Rc::new(RefCell::new(Vec::new()));
        let heard = Rc::clone(&taps);
        face.on_tap(move |tap| heard.borrow_mut().push(tap));
        Self {
            face,
            kiosk,
            taps,
            clock: clock.clone(),
            beside: RefCell::default(),
            slow: Cell::new(false),
            made: Cell::new(0),
        }
    }

    /// On the screen, with the simulated devices beside it if they are drawn.
    fn show(&self, frame: Frame) {
        let beside = self.beside.borrow();
        self.face.show_frame(&Frame {
            beside: beside.as_ref().map(kiosk::devices::beside),
            ..frame
        });
    }

    /// A finger on the element with this label; more than the bounce time passes after it.
    pub(crate) fn tap(&self, label: &str) {
        let mut found: Vec<ElementHandle> =
            ElementHandle::find_by_accessible_label(self.face.component(), label).collect();
        // What was typed may read as a key does.
        found.sort_by_key(|one| one.accessible_role() != Some(AccessibleRole::Button));
        let Some(element) = found.into_iter().next() else {
            panic!(
                "nothing on the screen is called \"{label}\"; there are {:?}",
                self.labels()
            );
        };
        self.until_it_takes(&element);
        element.mock_single_click(slint::platform::PointerEventButton::Left);
        self.made.set(self.made.get() + 1);
        self.take_taps();
        self.wait_ms(400);
    }

    /// Taps and holds so far.
    pub(crate) fn taps_made(&self) -> usize {
        self.made.get()
    }

    /// Time passes until a button takes taps; a button that went meanwhile takes none.
    fn until_it_takes(&self, element: &ElementHandle) {
        for _ in 0..FILLS_MAX {
            if element.accessible_enabled() != Some(false) {
                return;
            }
            self.wait_ms(FILL_STEP_MS);
        }
    }

    /// A finger that stays on the element with this label until it counts, and leaves it.
    pub(crate) fn hold(&self, label: &str) {
        let found = ElementHandle::find_by_accessible_label(self.face.component(), label).next();
        let element = found.unwrap_or_else(|| panic!("no \"{label}\" in {:?}", self.labels()));
        self.until_it_takes(&element);
        let (at, size) = (element.absolute_position(), element.size());
        let position = LogicalPosition::new(at.x + size.width / 2.0, at.y + size.height / 2.0);
        let button = slint::platform::PointerEventButton::Left;
        let window = self.face.window();
        window.dispatch_event(WindowEvent::PointerMoved { position });
        window.dispatch_event(WindowEvent::PointerPressed { position, button });
        self.made.set(self.made.get() + 1);
        self.wait_ms(900);
        self.take_taps();
        window.dispatch_event(WindowEvent::PointerReleased { position, button });
        window.dispatch_event(WindowEvent::PointerExited);
        self.take_taps();
        self.wait_ms(400);
    }

    fn take_taps(&self) {
        if self.slow.get() {
            return;
        }
        for tap in self.taps.take() {
            let frame = self.kiosk.borrow_mut().take(&tap);
            self.show(frame);
        }
    }

    /// What the plan has for a lifter's day.
    pub(crate) fn planned(&self, lifter: &str, date: NaiveDate) -> Vec<domain::Prescription> {
        let kiosk = self.kiosk.borrow();
        let rows = kiosk.state().plan.get(&(date, lifter.to_owned()));
        rows.cloned().unwrap_or_default()
    }

    /// The dates of a lifter's lifts, oldest first.
    pub(crate) fn lift_dates(&self, lifter: &str) -> Vec<NaiveDate> {
        let kiosk = self.kiosk.borrow();
        let runs = kiosk.state().lifts.values();
        let of = runs.filter(|run| run.sheet.lifter == lifter);
        of.map(|run| run.sheet.date).collect()
    }

    /// A button or foot switch.
    pub(crate) fn press(&self, press: hardware::Press) {
        self.press_on(press, self.frame().number);
    }

    /// The same, meant for the face of that number.
    pub(crate) fn press_on(&self, press: hardware::Press, number: u64) {
        let pressed = Pressed { press, number };
        let frame = self.kiosk.borrow_mut().press(pressed);
        self.show(frame);
    }

    /// Draws simulated devices beside the screen, and presses one of their switches.
    pub(crate) fn press_beside(&self, panel: &hardware::Panel, name: &str) {
        let pushed = panel.clone();
        self.face.on_push(move |name, down| {
            pushed.push(name, down);
        });
        *self.beside.borrow_mut() = Some(panel.clone());
        self.show(self.frame());
        let mut found = ElementHandle::find_by_accessible_label(self.face.component(), name);
        let switch = found.next().expect("the switch is drawn");
        switch.invoke_accessible_default_action();
    }

    /// What the devices report.
    pub(crate) fn tell_devices(&self, faults: &hardware::Faults) {
        let faults = faults.list().iter().map(ToString::to_string).collect();
        self.kiosk.borrow_mut().tell_devices(faults);
        self.show(self.frame());
    }

    /// Time passes, for the clock and for the window alike.
    pub(crate) fn wait_ms(&self, ms: u64) {
        self.clock
            .advance_ms(i64::try_from(ms).expect("a short wait"));
        i_slint_backend_testing::mock_elapsed_time(std::time::Duration::from_millis(ms));
        if self.slow.get() {
            return;
        }
        let frame = self.kiosk.borrow_mut().tick();
        self.show(frame);
    }

    /// The kiosk's clock goes on, and nobody looks.
    pub(crate) fn pass_ms(&self, ms: u64) {
        self.clock
            .advance_ms(i64::try_from(ms).expect("a short wait"));
    }

    /// What is on the screen.
    pub(crate) fn frame(&self) -> Frame {
        self.kiosk.borrow_mut().frame()
    }

    /// The gym in force.
    pub(crate) fn gym(&self) -> domain::Gym {
        self.kiosk.borrow().gym().clone()
    }

    /// The name of the screen.
    pub(crate) fn screen(&self) -> &'static str {
        match self.frame().screen {
            Screen::Choose(_) => "choose",
            Screen::Floor(_) => "floor",
            Screen::SetUp(_) => "set-up",
            Screen::Bar(_) => "bar",
            Screen::Entry(_) => "entry",
            Screen::Rest(_) => "rest",
            Screen::Turn(_) => "turn",
            Screen::Holds(_) => "holds",
            Screen::Settle(_) => "settle",
            Screen::Stop(_) => "stop",
            Screen::End(_) => "end",
            Screen::History(_) => "history",
            Screen::Why(_) => "why",
            Screen::Meet(_) => "meet",
            Screen::List(_) => "list",
            Screen::Page(_) => "page",
            Screen::Typing(_) => "typing",
        }
    }

    /// Labels of everything that can be pressed or read.
    pub(crate) fn labels(&self) -> Vec<String> {
        let all = ElementQuery::from_root(self.face.component())
            .match_descendants()
            .find_all();
        all.iter()
            .filter_map(|e| e.accessible_label())
            .map(|l| l.to_string())
            .collect()
    }
}

/// The testing backend, once a thread.
fn backend() {
    let options = TestingBackendOptions {
        mock_time: true,
        threading: false,
        renderer_name: Some("software".into()),
    };
    // A second bench on the same thread keeps the first one's backend.
    let _ = slint::platform::set_platform(Box::new(TestingBackend::new(options)));
}
