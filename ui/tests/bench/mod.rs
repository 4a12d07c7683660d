//! A window in memory with a mock clock, a finger, and the invented scenes of `examples/faces`.
#![allow(
    dead_code,
    unused_imports,
    reason = "each test file uses a part of the bench"
)]
#[path = "../../examples/faces/bars.rs"]
pub(crate) mod bars;
#[path = "../../examples/faces/draw.rs"]
pub(crate) mod draw;
#[path = "../../examples/faces/floors.rs"]
pub(crate) mod floors;
#[path = "../../examples/faces/histories.rs"]
pub(crate) mod histories;
#[path = "../../examples/faces/ladders.rs"]
pub(crate) mod ladders;
#[path = "../../examples/faces/meets.rs"]
pub(crate) mod meets;
#[path = "../../examples/faces/scenes.rs"]
pub(crate) mod scenes;
#[path = "../../examples/faces/settles.rs"]
pub(crate) mod settles;
#[path = "../../examples/faces/turns.rs"]
pub(crate) mod turns;
#[path = "../../examples/faces/whys.rs"]
pub(crate) mod whys;
#[path = "../../examples/faces/words.rs"]
pub(crate) mod words;

use i_slint_backend_testing::{
    AccessibleRole, ElementHandle, ElementQuery, TestingBackend, TestingBackendOptions,
    mock_elapsed_time,
};
use slint::platform::{PointerEventButton, WindowEvent};
use slint::{LogicalPosition, PhysicalSize};
use std::cell::RefCell;
use std::rc::Rc;
use std::time::Duration;
use ui::Face;
use view::{Frame, Tap};

/// Opens a face of 1280 by 800 on this thread.
pub(crate) fn open() -> (Face, Rc<RefCell<Vec<Tap>>>) {
    let options = TestingBackendOptions {
        mock_time: true,
        threading: false,
        renderer_name: Some("software".into()),
    };
    let backend = TestingBackend::new(options);
    slint::platform::set_platform(Box::new(backend)).expect("one platform a thread");
    let face = Face::new().expect("a window in memory opens");
    face.window().set_size(PhysicalSize::new(1280, 800));
    face.show().expect("a window in memory shows");
    let taps: Rc<RefCell<Vec<Tap>>> = Rc::default();
    let heard = Rc::clone(&taps);
    let shown = face.clone();
    face.on_tap(move |meant| {
        heard.borrow_mut().push(meant.tap);
        answer(&shown, meant.id);
    });
    (face, taps)
}

/// The frame that is drawn answers a tap.
pub(crate) fn answer(face: &Face, id: u64) {
    if let Some(frame) = face.frame() {
        face.show_frame(&Frame {
            answers: id,
            ..frame
        });
    }
}

/// Shows a frame that has been there for long.
pub(crate) fn show(face: &Face, frame: &Frame) {
    face.show_frame(frame);
    face.settle();
}

/// Where an element stands: left, top, right, bottom.
pub(crate) type Area = (f32, f32, f32, f32);

/// Where an element stands.
pub(crate) fn area(element: &ElementHandle) -> Area {
    let (at, size) = (element.absolute_position(), element.size());
    (at.x, at.y, at.x + size.width, at.y + size.height)
}

/// Everything that can be pressed, by label, each once.
pub(crate) fn buttons(face: &Face) -> Vec<(String, Area)> {
    let mut found: Vec<(String, Area)> = Vec::new();
    let query = ElementQuery::from_root(face.component());
    for element in query
        .match_accessible_role(AccessibleRole::Button)
        .find_all()
    {
        let label = element.accessible_label().unwrap_or_default();
        let row = (label.to_string(), area(&element));
        if !found.contains(&row) {
            found.push(row);
        }
    }
    found
}

/// Presses and leaves the middle of the button with this label; time then stands still.
pub(crate) fn press(face: &Face, label: &str) {
    let all = buttons(face);
    let button = all.iter().find(|button| button.0 == label);
    let (_, (left, top, right, bottom)) =
        button.unwrap_or_else(|| panic!("no button {label:?} among {all:?}"));
    touch(
        face,
        f32::midpoint(*left, *right),
        f32::midpoint(*top, *bottom),
    );
}

/// One touch at a place.
pub(crate) fn touch(face: &Face, x: f32, y: f32) {
    down(face, x, y);
    up(face, x, y);
}

/// A finger comes down.
pub(crate) fn down(face: &Face, x: f32, y: f32) {
    let (position, button) = (LogicalPosition::new(x, y), PointerEventButton::Left);
    face.window()
        .dispatch_event(WindowEvent::PointerMoved { position });
    face.window()
        .dispatch_event(WindowEvent::PointerPressed { position, button });
}

/// The finger leaves.
pub(crate) fn up(face: &Face, x: f32, y: f32) {
    let (position, button) = (LogicalPosition::new(x, y), PointerEventButton::Left);
    face.window()
        .dispatch_event(WindowEvent::PointerReleased { position, button });
    face.window().dispatch_event(WindowEvent::PointerExited);
}

/// Lets time go by.
pub(crate) fn wait_ms(ms: u64) {
    mock_elapsed_time(Duration::from_millis(ms));
}

/// The scene of this name.
pub(crate) fn scene(name: &str) -> Frame {
    let found = scenes::all().into_iter().find(|scene| scene.0 == name);
    found.expect("a scene of that name").1
}
