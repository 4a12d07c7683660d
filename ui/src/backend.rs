//! Opens a display: winit with the software renderer.
//!
//! Refuses: panics of libraries that are missing; it looks for them first.
use std::os::linux::net::SocketAddrExt as _;
use std::os::unix::net::{SocketAddr, UnixStream};
use std::path::{Path, PathBuf};

/// Opens the display on this thread. Afterwards [`crate::Face::new`] makes real windows. When it
/// fails, nothing is opened and pictures still work.
///
/// # Errors
/// One sentence on why there is no display.
pub fn open_backend() -> Result<(), String> {
    #[cfg(feature = "kms")]
    if !display_named() {
        return select("linuxkms");
    }
    let (library, package) = if on_x11() {
        ("libxkbcommon-x11.so", "libxkbcommon-x11-0")
    } else {
        ("libxkbcommon.so", "libxkbcommon0")
    };
    if !display_named() {
        return Err(format!("none of {} is set", NAMES.join(", ")));
    }
    if !library_found(library) {
        return Err(format!(
            "the library {library} is missing; install the package {package}"
        ));
    }
    select("winit")
}

fn select(backend: &str) -> Result<(), String> {
    slint::BackendSelector::new()
        .backend_name(backend.into())
        .renderer_name("software".into())
        .select()
        .map_err(|error| error.to_string())
}

/// Whether somebody answers where a display is named: whoever found none can wait for it. Cheap
/// enough to ask every few seconds.
#[must_use]
pub fn display_is_there() -> bool {
    #[cfg(feature = "kms")]
    if !display_named() {
        return ["card0", "card1"]
            .iter()
            .any(|card| Path::new("/dev/dri").join(card).exists());
    }
    if is_set("WAYLAND_SOCKET") {
        return true;
    }
    if let Some(name) = std::env::var_os("WAYLAND_DISPLAY").filter(|name| !name.is_empty()) {
        let folder = std::env::var_os("XDG_RUNTIME_DIR").unwrap_or_default();
        return UnixStream::connect(Path::new(&folder).join(name)).is_ok();
    }
    let name = std::env::var("DISPLAY").unwrap_or_default();
    let Some(number) = x11_number(&name) else {
        return false;
    };
    // A service with a /tmp of its own reaches the server by its abstract name alone.
    let place = format!("/tmp/.X11-unix/X{number}");
    let hidden = SocketAddr::from_abstract_name(&place);
    UnixStream::connect(&place).is_ok()
        || hidden.is_ok_and(|hidden| UnixStream::connect_addr(&hidden).is_ok())
}

/// The number of a display on this machine: ":0", ":0.0", "unix:1".
fn x11_number(name: &str) -> Option<u32> {
    let (host, rest) = name.rsplit_once(':')?;
    let number = rest.split('.').next()?.parse().ok()?;
    matches!(host, "" | "unix").then_some(number)
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

fn is_set(name: &str) -> bool {
    std::env::var_os(name).is_some_and(|value| !value.is_empty())
}

/// Where a display is named.
const NAMES: [&str; 3] = ["WAYLAND_DISPLAY", "WAYLAND_SOCKET", "DISPLAY"];

fn display_named() -> bool {
    NAMES.into_iter().any(is_set)
}

/// Whether winit will speak X11: no Wayland, and an X display named.
pub(crate) fn on_x11() -> bool {
    !is_set("WAYLAND_DISPLAY") && !is_set("WAYLAND_SOCKET") && is_set("DISPLAY")
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

#[cfg(test)]
mod tests {
    use super::{holds, library_found, x11_number};
    use std::path::Path;

    #[test]
    fn a_library_is_found_where_the_loader_looks() {
        assert!(library_found("libc.so"), "every process here has it");
        assert!(!library_found("libno-such-thing-anywhere.so"));
        assert!(!holds(Path::new("/no/such/folder"), "lib"));
    }

    /// X(7), "display names"; other hosts are not waited for.
    #[test]
    fn displays_of_this_machine_are_told_from_others() {
        for (name, number) in [
            (":0", Some(0)),
            (":1.0", Some(1)),
            ("unix:12.3", Some(12)),
            ("desk.example:0", None),
            ("", None),
            (":", None),
            (":x", None),
        ] {
            assert_eq!(x11_number(name), number, "{name}");
        }
    }
}
