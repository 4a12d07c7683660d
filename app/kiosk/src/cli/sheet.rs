//! `pinladder sheet`. Refuses: writing anything but the first start's demo gym.
use super::{SheetArgs, say};
use crate::clock::SystemClock;
use crate::error::KioskError;
use crate::folder::Folder;
use crate::kiosk::Kiosk;
use domain::day::day;
use std::io::Write;

pub(super) fn sheet(
    folder: &Folder,
    args: &SheetArgs,
    out: &mut dyn Write,
) -> Result<bool, KioskError> {
    let kiosk = Kiosk::open(folder, Box::new(SystemClock))?;
    let date = args.date.unwrap_or_else(|| kiosk.date());
    let gym = kiosk.gym();
    let lifter = match &args.lifter {
        None => None,
        Some(name) => Some(known(gym, name)?),
    };
    let entries = day(gym, kiosk.state(), date);
    let text = if args.json {
        view::sheet_json(&view::sheet_doc(&gym.name, date, &entries, lifter))
    } else {
        view::sheet_text(&gym.name, date, &entries, lifter)
    };
    say(out, &text);
    Ok(true)
}

/// The lifter's name as the gym writes it.
pub(super) fn known<'g>(gym: &'g domain::Gym, name: &str) -> Result<&'g str, KioskError> {
    let same = |l: &&domain::Lifter| l.name.to_lowercase() == name.to_lowercase();
    gym.lifters
        .iter()
        .find(same)
        .map(|l| l.name.as_str())
        .ok_or_else(|| {
            let names: Vec<&str> = gym.lifters.iter().map(|l| l.name.as_str()).collect();
            KioskError::Usage(format!(
                "no lifter is called {name}; there are {}",
                names.join(", ")
            ))
        })
}
