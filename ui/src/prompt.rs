//! Draws at once what a touch or a frame has changed. The toolkit waits for the time of one whole
//! frame first, where no display tells it when the next one is due.
//!
//! Refuses: windows of other backends; they draw when they please.
use slint::winit_030::winit::event::WindowEvent;
use slint::winit_030::{EventResult, WinitWindowAccessor as _};

/// From now on what a touch changes is drawn as soon as it is known.
pub(crate) fn on_touch(window: &slint::Window) {
    window.on_winit_window_event(|window, event| {
        // The window draws after all that has happened so far was seen, this event too.
        if matches!(
            event,
            WindowEvent::MouseInput { .. }
                | WindowEvent::Touch(_)
                | WindowEvent::KeyboardInput { .. }
        ) {
            draw(window);
        }
        EventResult::Propagate
    });
}

/// Draws what has changed, soon.
pub(crate) fn draw(window: &slint::Window) {
    let _ = window.with_winit_window(|window| window.request_redraw());
}
