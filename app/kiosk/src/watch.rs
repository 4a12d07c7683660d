//! Every thread is watched: one that ends by a panic is told and, where it can, started anew.
//!
//! Refuses: silence.
use crate::desk::fallen_words;
use std::collections::BTreeMap;
use std::panic::{AssertUnwindSafe, catch_unwind};
use std::sync::{Mutex, PoisonError};
use std::thread::JoinHandle;
use std::time::Duration;
use view::Language;

/// How often a thread is started anew.
const STARTS_MAX: u32 = 20;

/// How far those who may wait stand back (setpriority(2): from 0, as everybody, to 19): beside a
/// tap they get about a thirtieth of a processor.
const NICE: i32 = 15;

/// How often each thread has fallen since the process began.
static FALLEN: Mutex<BTreeMap<&str, u32>> = Mutex::new(BTreeMap::new());

fn fell(name: &'static str) {
    let mut fallen = FALLEN.lock().unwrap_or_else(PoisonError::into_inner);
    *fallen.entry(name).or_default() += 1;
}

/// What has fallen since the process began, a sentence each, for the coach's desk.
#[must_use]
pub fn fallen(say: Language) -> Vec<String> {
    let fallen = FALLEN.lock().unwrap_or_else(PoisonError::into_inner);
    let told = |(name, times): (&&str, &u32)| fallen_words(say, name, *times);
    fallen.iter().map(told).collect()
}

/// From now on this thread gets what a tap leaves of the processor: for whoever serves the network,
/// a stick or a copy. A system that does not let it stand back is told once.
pub fn stand_back() {
    let own = rustix::thread::gettid();
    if let Err(error) = rustix::process::setpriority_process(Some(own), NICE) {
        tracing::warn!(%error, "a thread that may wait does not stand back for taps");
    }
}

/// Runs `work` on a thread of its own; a panic starts it anew, after a growing pause.
///
/// # Errors
/// The system's, when it gives no thread.
pub fn spawn_again(
    name: &'static str,
    mut work: impl FnMut() + Send + 'static,
) -> std::io::Result<JoinHandle<()>> {
    std::thread::Builder::new()
        .name(name.into())
        .spawn(move || {
            for start in 1..=STARTS_MAX {
                if catch_unwind(AssertUnwindSafe(&mut work)).is_ok() {
                    return;
                }
                fell(name);
                tracing::error!(
                    thread = name,
                    start,
                    "a thread panicked and is started anew"
                );
                std::thread::sleep(Duration::from_millis(100 * u64::from(start)));
            }
            tracing::error!(thread = name, "a thread panicked too often and stays ended");
        })
}

/// Runs `work` on a thread of its own; when it ends, by a panic or not, `ended` is called with
/// whether it ended well, so that the whole kiosk can stop and be started by its service.
///
/// # Errors
/// The system's, when it gives no thread.
pub fn spawn_once(
    name: &'static str,
    work: impl FnOnce() + Send + 'static,
    ended: impl FnOnce(bool) + Send + 'static,
) -> std::io::Result<JoinHandle<()>> {
    std::thread::Builder::new()
        .name(name.into())
        .spawn(move || {
            let well = catch_unwind(AssertUnwindSafe(work)).is_ok();
            if !well {
                fell(name);
                tracing::error!(thread = name, "a thread panicked");
            }
            ended(well);
        })
}
