//! Whether other windows share the display: alone, the kiosk fills it by itself.
//!
//! Only X11 tells a program of others' windows. A compositor of Wayland gives a window its size, and
//! the kernel's own screen has none beside it.
use x11rb::connection::Connection as _;
use x11rb::errors::ReplyOrIdError;
use x11rb::protocol::xproto::{AtomEnum, ConnectionExt as _, MapState, Window};

/// Windows and size of a display, looked at before a window of our own is there.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) struct Display {
    /// Whether any other window is to be seen.
    pub(crate) others: bool,
    /// Whether a window manager answers, which then does what is asked of windows.
    pub(crate) managed: bool,
    /// Pixels in a row.
    pub(crate) width: u32,
    /// Rows.
    pub(crate) height: u32,
}

/// The display that `DISPLAY` names; `None` where it does not answer.
pub(crate) fn look() -> Option<Display> {
    ask().ok()
}

fn ask() -> Result<Display, Box<dyn std::error::Error>> {
    let (server, at) = x11rb::connect(None)?;
    let screen = server.setup().roots.get(at).ok_or("no such screen")?;
    let windows = server.query_tree(screen.root)?.reply()?.children;
    let mut others = false;
    for window in windows {
        others |= is_seen(&server, window);
    }
    Ok(Display {
        others,
        managed: is_managed(&server, screen.root)?,
        width: screen.width_in_pixels.into(),
        height: screen.height_in_pixels.into(),
    })
}

/// Whether a window is drawn and is a window of its own, not a menu or a pointer's drawing. One that
/// has gone meanwhile is not.
fn is_seen(server: &impl x11rb::connection::Connection, window: Window) -> bool {
    let told = server
        .get_window_attributes(window)
        .map(|asked| asked.reply());
    let Ok(Ok(told)) = told else {
        return false;
    };
    told.map_state == MapState::VIEWABLE && !told.override_redirect
}

/// Extended Window Manager Hints 1.5, section "Root Window Properties": a manager names a window of
/// its own there.
fn is_managed(
    server: &impl x11rb::connection::Connection,
    root: Window,
) -> Result<bool, ReplyOrIdError> {
    let name = server.intern_atom(true, b"_NET_SUPPORTING_WM_CHECK")?;
    let name = name.reply()?.atom;
    if name == x11rb::NONE {
        return Ok(false);
    }
    let asked = server.get_property(false, root, name, AtomEnum::WINDOW, 0, 1)?;
    Ok(!asked.reply()?.value.is_empty())
}
