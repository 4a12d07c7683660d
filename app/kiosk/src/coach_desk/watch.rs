//! Looks at the place where sticks appear, and tells one stick from another.
//!
//! Refuses: opening any file of it.
use crate::input::Input;
use std::os::unix::fs::MetadataExt as _;
use std::path::{Path, PathBuf};
use std::sync::mpsc::Sender;
use std::time::{Duration, UNIX_EPOCH};

/// Between two looks at the place for sticks.
const LOOK: Duration = Duration::from_secs(2);
/// Entries of a place that count for telling one stick from another.
const ENTRIES_MAX: usize = 500;

/// Looks at the place again and again; what has changed and then stood still is told.
pub(super) fn watch(place: PathBuf, inputs: Sender<Input>) {
    let thread = crate::watch::spawn_again("sticks", move || {
        let (mut told, mut last) = (None, String::new());
        loop {
            let id = identity(&place);
            if id == last && told.as_ref() != Some(&id) {
                told = Some(id.clone());
                if inputs.send(Input::StickChanged(id.clone())).is_err() {
                    return;
                }
            }
            last = id;
            std::thread::sleep(LOOK);
        }
    });
    if let Err(error) = thread {
        tracing::error!(%error, "sticks are not looked at: the system gives no thread");
    }
}

/// What tells one stick from another: the device, names, sizes and times, nothing opened; empty
/// for a place where nothing is mounted and nothing lies.
pub(super) fn identity(place: &Path) -> String {
    let device = |path: &Path| path.metadata().map(|about| about.dev()).ok();
    let (here, above) = (device(place), place.parent().and_then(device));
    let mut all: Vec<String> = here
        .filter(|here| above.is_some_and(|above| above != *here))
        .map(|here| format!("device {here}"))
        .into_iter()
        .collect();
    for folder in [place.to_owned(), place.join("plans")] {
        let Ok(entries) = std::fs::read_dir(&folder) else {
            continue;
        };
        for entry in entries.flatten().take(ENTRIES_MAX) {
            let Ok(about) = entry.path().symlink_metadata() else {
                continue;
            };
            let at = about
                .modified()
                .ok()
                .and_then(|at| at.duration_since(UNIX_EPOCH).ok());
            let name = entry.path().display().to_string();
            all.push(format!(
                "{name} {} {:?}",
                about.len(),
                at.unwrap_or_default()
            ));
        }
    }
    all.sort();
    if all.is_empty() {
        return String::new();
    }
    // Of account is only whether it is the same.
    let mut sum = 0xcbf2_9ce4_8422_2325_u64;
    for byte in all.join("\n").bytes() {
        sum = (sum ^ u64::from(byte)).wrapping_mul(0x0000_0100_0000_01b3);
    }
    format!("{sum:016x}")
}
