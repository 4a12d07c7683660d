//! A kiosk that cannot start: the window says in plain words why and what to do, and it is tried
//! again until it can. Then the process begins anew, as it does for a display that comes late.
//!
//! Never writes where the start would not have written.
use crate::clock::SystemClock;
use crate::desk;
use crate::error::KioskError;
use crate::folder::Folder;
use crate::input::Input;
use crate::kiosk::Kiosk;
use crate::watch::spawn_once;
use crate::watchdog::{self, Beat};
use std::convert::Infallible;
use std::os::unix::process::CommandExt as _;
use std::sync::Arc;
use std::sync::atomic::{AtomicBool, Ordering};
use std::sync::mpsc::Receiver;
use std::time::Duration;
use view::{Frame, Language};

/// Between two tries.
const TRY: Duration = Duration::from_secs(3);

/// Shows why the kiosk cannot start until it can, and begins anew then; ends when `inbox` asks for
/// that. Where there is no display either, the error is handed back, for whoever started the
/// process.
///
/// # Errors
/// `why`, or the window's.
pub(crate) fn wait(
    folder: &Folder,
    why: KioskError,
    inbox: Receiver<Input>,
) -> Result<(), KioskError> {
    if ui::open_backend().is_err() {
        return Err(why);
    }
    tracing::error!(error = %why, "the kiosk cannot start; it is tried again");
    let failed = |error: ui::slint::PlatformError| KioskError::Picture(error.to_string());
    let face = ui::Face::new().map_err(failed)?;
    face.show_frame(&face_of(&why));
    let (beat, window) = (Beat::default(), Beat::default());
    let drawn = (face.handle(), window.clone());
    watchdog::start(&beat, &window, move || {
        let window = drawn.1.clone();
        drop(drawn.0.post(move |_| window.beat()));
    });
    let (handle, folder) = (face.handle(), folder.clone());
    let asked = Arc::new(AtomicBool::new(false));
    let ends = asked.clone();
    let tries = move || {
        let mut told = why.to_string();
        loop {
            // Nothing else can be asked of a kiosk that has not started.
            if let Ok(Input::Quit) = inbox.recv_timeout(TRY) {
                return ends.store(true, Ordering::Relaxed);
            }
            beat.beat();
            match Kiosk::open(&folder, Box::new(SystemClock)) {
                Ok(_) => return,
                Err(now) if now.to_string() != told => {
                    told = now.to_string();
                    let frame = face_of(&now);
                    drop(handle.post(move |face| face.show_frame(&frame)));
                }
                Err(_) => {}
            }
        }
    };
    // By a panic too: the next start tells more than a window that hangs.
    let tries = spawn_once("start", tries, |_| drop(ui::quit_event_loop()));
    drop(tries.map_err(KioskError::file("start thread"))?);
    face.fill_display().map_err(failed)?;
    ui::run_event_loop().map_err(failed)?;
    if asked.load(Ordering::Relaxed) {
        return Ok(());
    }
    Err(begin_anew())
}

/// The face, in every language: the screen's own is in the journal.
fn face_of(why: &KioskError) -> Frame {
    view::trouble::frame(Language::ALL.map(|say| (say, desk::words(say, why))))
}

/// Becomes the same program once more, with a display or a journal that it did not have. Files of
/// the old one are closed by the system, so that nothing stands in its way.
pub(crate) fn begin_anew() -> KioskError {
    let anew = || -> std::io::Result<Infallible> {
        let own = std::env::current_exe()?;
        Err(std::process::Command::new(own)
            .args(std::env::args_os().skip(1))
            .exec())
    };
    match anew() {
        Ok(never) => match never {},
        Err(error) => KioskError::file("the program itself")(error),
    }
}
