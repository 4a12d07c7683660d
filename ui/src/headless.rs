//! The window without a display and without pixels: real screens, a finger, a clock that obeys.
//!
//! What is on the screen is read off the drawn items themselves, so that a rehearsal sees what an
//! eye and an assistive tool see, and a press goes the way of every finger. Refuses: drawing;
//! nobody looks.
use crate::face::Face;
use i_slint_core::accessibility::AccessibleStringProperty;
use i_slint_core::item_tree::{ItemRc, ItemTreeRc, ItemWeak};
use i_slint_core::items::{AccessibleRole, ComplexText, SimpleText};
use i_slint_core::window::WindowInner;
use slint::platform::software_renderer::{MinimalSoftwareWindow, RepaintBufferType};
use slint::platform::{
    Platform, PlatformError, PointerEventButton, WindowAdapter, WindowEvent,
    update_timers_and_animations,
};
use slint::{LogicalPosition, PhysicalSize};
use std::cell::{Cell, RefCell};
use std::ops::ControlFlow;
use std::rc::Rc;
use std::time::Duration;
use view::Meant;

/// The reference panel, pixels.
const PANEL: PhysicalSize = PhysicalSize {
    width: 1280,
    height: 800,
};

thread_local! {
    /// This thread's clock, once it has its platform.
    static CLOCK: RefCell<Option<Rc<Cell<Duration>>>> = const { RefCell::new(None) };
}

/// A place on the screen, logical pixels from the top left.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Place {
    /// From the left.
    pub x: f32,
    /// From the top.
    pub y: f32,
}

/// Something that can be pressed, as it is drawn.
#[derive(Clone)]
pub struct Pressable {
    /// Its accessible label.
    pub label: String,
    /// Its middle.
    pub middle: Place,
    item: ItemWeak,
}

impl Pressable {
    /// Whether it takes a tap now; `None` when it is drawn no more, or as another.
    #[must_use]
    pub fn takes_taps(&self) -> Option<bool> {
        let item = self.item.upgrade().filter(ItemRc::is_visible)?;
        let label = item.accessible_string_property(AccessibleStringProperty::Label);
        if label.unwrap_or_default() != self.label.as_str() {
            return None;
        }
        let word = item.accessible_string_property(AccessibleStringProperty::Enabled);
        Some(word.is_none_or(|word| word == "true"))
    }
}

impl std::fmt::Debug for Pressable {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(f, "{:?} at {:?}", self.label, self.middle)
    }
}

/// A face without a display. All of one thread share one clock, which only goes on.
pub struct Headless {
    face: Face,
    clock: Rc<Cell<Duration>>,
    taps: Rc<RefCell<Vec<Meant>>>,
}

impl Headless {
    /// Opens a face of 1280 by 800 on this thread.
    ///
    /// # Errors
    /// When the thread already has a platform of another kind, or the window cannot be made.
    pub fn open() -> Result<Self, PlatformError> {
        let clock = clock()?;
        let face = Face::new()?;
        face.window().set_size(PANEL);
        face.show()?;
        let taps = Rc::<RefCell<Vec<Meant>>>::default();
        let heard = Rc::clone(&taps);
        face.on_tap(move |tap| heard.borrow_mut().push(tap));
        Ok(Self { face, clock, taps })
    }

    /// The face, to show frames on.
    #[must_use]
    pub fn face(&self) -> &Face {
        &self.face
    }

    /// The clock goes on, and what was to happen meanwhile happens.
    pub fn advance(&self, by: Duration) {
        self.clock.set(self.clock.get() + by);
        update_timers_and_animations();
    }

    /// A finger comes down.
    pub fn press(&self, at: Place) {
        let (position, button) = (position(at), PointerEventButton::Left);
        let window = self.face.window();
        window.dispatch_event(WindowEvent::PointerMoved { position });
        window.dispatch_event(WindowEvent::PointerPressed { position, button });
    }

    /// The finger leaves.
    pub fn release(&self, at: Place) {
        let (position, button) = (position(at), PointerEventButton::Left);
        let window = self.face.window();
        window.dispatch_event(WindowEvent::PointerReleased { position, button });
        window.dispatch_event(WindowEvent::PointerExited);
    }

    /// What the finger said since the last time this was asked.
    #[must_use]
    pub fn taps(&self) -> Vec<Meant> {
        self.taps.take()
    }

    /// Everything that can be pressed, as it is drawn.
    #[must_use]
    pub fn pressables(&self) -> Vec<Pressable> {
        let mut found = Vec::new();
        self.visit(|item| {
            if item.is_accessible()
                && item.accessible_role() == AccessibleRole::Button
                && item.is_visible()
            {
                found.push(pressable(item));
            }
        });
        found
    }

    /// Every text that is drawn, and what is drawn otherwise but has words for whoever cannot see
    /// it.
    #[must_use]
    pub fn texts(&self) -> Vec<String> {
        let mut found = Vec::new();
        self.visit(|item| {
            if let Some(text) = text(item)
                && !text.is_empty()
                && item.is_visible()
            {
                found.push(text);
            }
        });
        found
    }

    fn visit(&self, mut see: impl FnMut(&ItemRc)) {
        let window = WindowInner::from_pub(self.face.window());
        window.ensure_tree_instantiated();
        let Some(tree): Option<ItemTreeRc> = window.try_component() else {
            return;
        };
        ItemRc::new_root(tree).visit_descendants(|item| {
            see(item);
            ControlFlow::<()>::Continue(())
        });
    }
}

impl std::fmt::Debug for Headless {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str("Headless")
    }
}

const fn position(at: Place) -> LogicalPosition {
    LogicalPosition::new(at.x, at.y)
}

fn pressable(item: &ItemRc) -> Pressable {
    let told = |what| item.accessible_string_property(what);
    let geometry = item.geometry();
    let origin = item.map_to_window(geometry.origin);
    Pressable {
        label: told(AccessibleStringProperty::Label)
            .unwrap_or_default()
            .into(),
        middle: Place {
            x: origin.x + geometry.size.width / 2.0,
            y: origin.y + geometry.size.height / 2.0,
        },
        item: item.downgrade(),
    }
}

/// The text of an item that draws one, or the words of an item that draws something else.
fn text(item: &ItemRc) -> Option<String> {
    if let Some(text) = item.downcast::<SimpleText>() {
        return Some(text.as_pin_ref().text().into());
    }
    if let Some(text) = item.downcast::<ComplexText>() {
        return Some(text.as_pin_ref().text().into());
    }
    let has_words = item.is_accessible()
        && matches!(
            item.accessible_role(),
            AccessibleRole::Text | AccessibleRole::Image | AccessibleRole::ListItem
        );
    let label = has_words.then(|| item.accessible_string_property(AccessibleStringProperty::Label));
    label.flatten().map(String::from)
}

/// This thread's clock; gives the thread its platform the first time.
fn clock() -> Result<Rc<Cell<Duration>>, PlatformError> {
    CLOCK.with_borrow_mut(|known| {
        if let Some(clock) = known {
            return Ok(Rc::clone(clock));
        }
        let clock = Rc::<Cell<Duration>>::default();
        let platform = Obedient(Rc::clone(&clock));
        let set = slint::platform::set_platform(Box::new(platform));
        set.map_err(|error| PlatformError::Other(error.to_string()))?;
        *known = Some(Rc::clone(&clock));
        Ok(clock)
    })
}

/// A platform whose windows are in memory and whose time is what it is told.
struct Obedient(Rc<Cell<Duration>>);

impl Platform for Obedient {
    fn create_window_adapter(&self) -> Result<Rc<dyn WindowAdapter>, PlatformError> {
        Ok(MinimalSoftwareWindow::new(RepaintBufferType::ReusedBuffer))
    }

    fn duration_since_start(&self) -> Duration {
        self.0.get()
    }
}
