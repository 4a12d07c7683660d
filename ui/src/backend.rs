//! Opens a display: winit with the software renderer.
//!
//! Refuses: panics of libraries that are missing; it looks for them first.
use std::path::{Path, PathBuf};

/// Opens the display on this thread. Afterwards [`crate::Face::new`] makes real windows. When it
/// fails, nothing is opened and pictures still work.
///
/// # Errors
/// One sentence on why there is no display.
pub fn open_backend() -> Result<(), String> {
    if on_x11() && !library_found("libxkbcommon-x11.so") {
        return Err(
            "no display: libxkbcommon-x11 is missing; install the package libxkbcommon-x11-0"
                .to_owned(),
        );
    }
    slint::BackendSelector::new()
        .backend_name("winit".into())
        .renderer_name("software".into())
        .select()
        .map_err(|error| format!("no display: {error}"))
}

/// Runs until the last window closes or [`quit_event_loop`] is called.
///
/// # Errors
/// When the backend fails.
pub fn run_event_loop() -> Result<(), slint::PlatformError> {
    slint::run_event_loop_until_quit()
}

/// Ends the event loop, from any thread.
///
/// # Errors
/// When there is none.
pub fn quit_event_loop() -> Result<(), slint::EventLoopError> {
    slint::quit_event_loop()
}

/// Whether winit will speak X11: no Wayland, and an X display named.
fn on_x11() -> bool {
    let set = |name| std::env::var_os(name).is_some_and(|value| !value.is_empty());
    !set("WAYLAND_DISPLAY") && !set("WAYLAND_SOCKET") && set("DISPLAY")
}

/// Whether the loader would find a library whose file name starts with `stem`: in the loader's
/// cache, in LD_LIBRARY_PATH or in the usual folders.
fn library_found(stem: &str) -> bool {
    let cached = std::fs::read("/etc/ld.so.cache").is_ok_and(|cache| {
        cache
            .windows(stem.len())
            .any(|bytes| bytes == stem.as_bytes())
    });
    cached || folders().iter().any(|folder| holds(folder, stem))
}

fn folders() -> Vec<PathBuf> {
    let named = std::env::var_os("LD_LIBRARY_PATH").unwrap_or_default();
    let usual = ["/usr/local/lib", "/usr/lib64", "/lib64", "/usr/lib", "/lib"];
    std::env::split_paths(&named)
        .chain(usual.map(PathBuf::from))
        .collect()
}

fn holds(folder: &Path, stem: &str) -> bool {
    let Ok(entries) = std::fs::read_dir(folder) else {
        return false;
    };
    entries
        .flatten()
        .any(|entry| entry.file_name().to_string_lossy().starts_with(stem))
}
