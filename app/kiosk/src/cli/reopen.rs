//! `pinladder reopen`: the lifts that were left open, and the coach's word to go on with one.
use super::say;
use crate::clock::SystemClock;
use crate::error::KioskError;
use crate::folder::Folder;
use crate::kiosk::Kiosk;
use domain::LiftNo;
use std::io::Write;
use view::Language;

/// Lists what was left open, or opens the lift of that number again, on its own date.
pub(super) fn reopen(
    folder: &Folder,
    number: Option<u32>,
    language: Language,
    out: &mut dyn Write,
) -> Result<bool, KioskError> {
    let mut kiosk = Kiosk::open(folder, Box::new(SystemClock))?;
    let Some(number) = number else {
        let text = view::left_open::text(language, &view::left_open::list(kiosk.state()));
        say(out, &text);
        return Ok(true);
    };
    let no = LiftNo(number);
    kiosk.reopen(no)?;
    if let Some(run) = kiosk.state().lifts.get(&no) {
        say(out, &view::left_open::reopened(language, run));
    }
    Ok(true)
}
