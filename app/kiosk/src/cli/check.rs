//! `pinladder check FILE...`. Refuses: stopping at the first fault, or changing anything.
use super::say;
use crate::bounded;
use crate::devices;
use crate::error::KioskError;
use crate::folder::{DEMO, Folder};
use crate::odd_rows::odd_rows;
use crate::owner::Owner;
use domain::{Gym, State};
use plan::{Source, Weight};
use std::io::Write;
use std::path::PathBuf;

/// Bytes of all files that are checked in one go, which are in memory together: 32 MiB.
const TOGETHER_MAX: usize = 32 << 20;

pub(super) fn check(
    files: &[PathBuf],
    folder: &Folder,
    out: &mut dyn Write,
) -> Result<bool, KioskError> {
    let mut left = TOGETHER_MAX;
    let mut texts: Vec<(String, Vec<u8>)> = Vec::new();
    for path in files {
        let text = bounded::read(path)?;
        left = left.checked_sub(text.len()).ok_or_else(|| {
            KioskError::Usage(format!(
                "the files have more than {TOGETHER_MAX} bytes together; check fewer at a time"
            ))
        })?;
        texts.push((path.display().to_string(), text));
    }
    let (devices, texts): (Vec<_>, Vec<_>) = texts
        .into_iter()
        .partition(|(name, _)| name.rsplit('/').next() == Some(devices::FILE));
    let mut fine = true;
    for (name, text) in &devices {
        let read = hardware::Config::read(&String::from_utf8_lossy(text));
        let told = match &read {
            Ok(_) => "no fault".to_owned(),
            Err(fault) => fault.to_string(),
        };
        fine &= read.is_ok();
        say(out, &format!("{name}: {told}\n"));
    }
    let sources: Vec<Source<'_>> = texts
        .iter()
        .map(|(name, text)| Source { name, text })
        .collect();
    let gym = gym_of(folder)?;
    let faults = plan::check_all(&sources, gym.as_ref());
    for source in sources
        .iter()
        .filter(|s| !faults.iter().any(|f| f.file == s.name))
    {
        say(out, &format!("{}: no fault\n", source.name));
    }
    for fault in &faults {
        say(out, &format!("{fault}\n"));
    }
    if let Some(gym) = &gym {
        let state = state_of(folder);
        let fine = |s: &&Source<'_>| !faults.iter().any(|f| f.file == s.name);
        for source in sources.iter().filter(fine) {
            not_made(source, gym, out);
            looks_wrong(source, (gym, &state), out);
        }
    }
    Ok(fine && !faults.iter().any(|fault| fault.weight == Weight::Wrong))
}

/// Tells the rows of a plan whose loads the gym's plates do not make: they get no sheet.
fn not_made(source: &Source<'_>, gym: &Gym, out: &mut dyn Write) {
    let plan = plan::coach_plan(*source, gym).unwrap_or_default();
    for row in &plan {
        if let Err(why) = domain::day::check_load(gym, row) {
            let (date, name) = (row.date, source.name);
            let (lifter, lift) = (&row.lifter, &row.lift);
            say(out, &format!("{name}: {date}, {lifter}, {lift}: {why}\n"));
        }
    }
}

/// Tells the rows of a plan that look wrong beside the record.
fn looks_wrong(source: &Source<'_>, (gym, state): (&Gym, &State), out: &mut dyn Write) {
    let rows = plan::coach_plan(*source, gym).unwrap_or_default();
    for fault in odd_rows(source.name, gym, state, &rows) {
        say(out, &format!("{fault}\n"));
    }
}

/// What was done so far, as far as the data folder's journal tells it now; a journal that is not
/// there, or that another program keeps, leaves the bests of the files.
pub(super) fn state_of(folder: &Folder) -> State {
    let read = || {
        let there = folder.journal().exists();
        let owner = there.then(|| Owner::open(folder.open_journal().ok()?).ok());
        Some(owner??.state().clone())
    };
    read().unwrap_or_default()
}

/// The gym that plans and lifters are held against when the command line names none: the data
/// folder's, else the demo gym.
pub(super) fn gym_of(folder: &Folder) -> Result<Option<Gym>, KioskError> {
    let find = |name: &str| -> Result<String, KioskError> {
        Ok(folder
            .text(name)?
            .unwrap_or_else(|| demo_text(name).to_owned()))
    };
    let (gym, lifters) = (find("gym.toml")?, find("lifters.toml")?);
    Ok(gym_from(&gym, &lifters))
}

/// The demo gym.
pub(super) fn demo_gym() -> Option<Gym> {
    gym_from(demo_text("gym.toml"), demo_text("lifters.toml"))
}

fn demo_text(name: &str) -> &'static str {
    let found = DEMO.iter().find(|(known, _)| *known == name);
    found.map_or("", |(_, text)| text)
}

fn gym_from(gym: &str, lifters: &str) -> Option<Gym> {
    let gym = Source {
        name: "gym.toml",
        text: gym.as_bytes(),
    };
    let lifters = Source {
        name: "lifters.toml",
        text: lifters.as_bytes(),
    };
    plan::gym(gym, lifters).ok()
}
