//! The journal, the gym's files, the copies.
use super::{Finding, How, Patient};
use crate::folder::{DEMO, Folder};
use domain::{Moment, State};
use std::path::Path;
use std::time::Duration;

/// The journal, read from an image so that nothing beside it changes; with when the wall clock stood
/// where at its last event.
pub(super) fn journal(patient: &Patient) -> (Finding, Option<Moment>) {
    let what = "data";
    let found = |how, found: String| Finding::new(what, how, found);
    let data = patient.data.display();
    let path = patient.data.join(journal::JOURNAL_FILE);
    match std::fs::metadata(&patient.data) {
        Err(why) if why.kind() == std::io::ErrorKind::NotFound => {
            let told = found(How::Off, format!("there is no data folder at {data}"));
            return (
                told.so("start pinladder once, or name the right one with --data"),
                None,
            );
        }
        Err(why) => {
            let told = found(How::Wrong, format!("{data}: {why}"));
            return (
                told.so("let this user into the folder, or run as the kiosk's user"),
                None,
            );
        }
        Ok(about) if !about.is_dir() => {
            let told = found(How::Wrong, format!("{data} is no folder"));
            return (told.so("name the right one with --data"), None);
        }
        Ok(_) => {}
    }
    if !path.exists() && !patient.data.join(journal::MARK_FILE).exists() {
        let told = found(How::Off, "no journal was begun yet".into());
        return (told.so("start pinladder once"), None);
    }
    let folder = Folder::at(&patient.data);
    let (mut events, mut state) = (0_u64, State::default());
    let image = match image_of(&patient.data) {
        Ok(image) => image,
        Err(why) => {
            let told = found(How::Wrong, format!("{data} cannot be read ({why})"));
            return (
                told.so("let this user read it, or run as the kiosk's user"),
                None,
            );
        }
    };
    let path = image.path().join(journal::JOURNAL_FILE);
    let read = journal::read_aside(&path, &folder.outside(), |seq, event| {
        events = seq;
        state.apply(event);
    });
    let last = state.times.last().map(|at| state.times.told(at));
    match read {
        Ok(()) => {
            let told = found(How::Fine, format!("{events} events, and their chain holds"));
            (told, last)
        }
        Err(error) => {
            let error = error.to_string();
            let error = error.replace(&image.path().display().to_string(), &data.to_string());
            let told = found(How::Wrong, error);
            (
                told.so("`pinladder journal mend` says what can be saved, before anybody lifts on"),
                last,
            )
        }
    }
}

/// A copy of the journal and of what knows how far it had come, in memory where there is room:
/// SQLite lays files beside those that it reads.
fn image_of(data: &Path) -> std::io::Result<tempfile::TempDir> {
    let image = tempfile::tempdir_in("/dev/shm").or_else(|_| tempfile::tempdir())?;
    for entry in std::fs::read_dir(data)? {
        let entry = entry?;
        let name = entry.file_name();
        let shown = name.to_string_lossy();
        let counts = shown.starts_with("journal.") || shown.starts_with("record.sqlite");
        // What is shared among those who have a file open is made anew.
        if counts && entry.path().is_file() && !shown.ends_with("-shm") {
            std::fs::copy(entry.path(), image.path().join(&name))?;
        }
    }
    Ok(image)
}

/// The gym's files and who may read the folder.
pub(super) fn files(patient: &Patient) -> Vec<Finding> {
    let what = "data";
    let mut texts: Vec<(String, Vec<u8>)> = Vec::new();
    for (name, _) in DEMO {
        if let Ok(text) = std::fs::read(patient.data.join(name)) {
            texts.push((name.to_owned(), text));
        }
    }
    let mut all = Vec::new();
    if let Err(fault) = &patient.config {
        let told = Finding::new(what, How::Wrong, fault.clone());
        all.push(told.so("put it right; until then what was taken last holds"));
    }
    let sources: Vec<plan::Source<'_>> = texts
        .iter()
        .map(|(name, text)| plan::Source { name, text })
        .collect();
    let faults = plan::check_all(&sources, None);
    let stops = faults
        .iter()
        .filter(|fault| fault.weight == plan::Weight::Wrong);
    let stops: Vec<String> = stops
        .filter(|fault| fault.file != "kiosk.toml")
        .map(ToString::to_string)
        .collect();
    if let Some(first) = stops.first() {
        let many = stops.len();
        let told = Finding::new(what, How::Wrong, format!("{first} (faults: {many})"));
        all.push(told.so("`pinladder check` tells every fault; until then the last gym holds"));
    }
    if let Some(open) = Folder::at(&patient.data).open_to_others() {
        all.push(Finding::new(what, How::Soon, open).so("make the folder private"));
    }
    all
}

/// A copy older than this is told.
const OLD: Duration = Duration::from_secs(3 * 24 * 3_600);

/// The nightly copies.
pub(super) fn copies(patient: &Patient) -> Finding {
    let what = "copies";
    let place = patient
        .settings()
        .and_then(|settings| settings.backup.clone());
    let Some(place) = place else {
        let told = Finding::new(what, How::Soon, "no second place for copies is named");
        return told.so("name one on another disk in kiosk.toml: backup = \"/media/second-disk\"");
    };
    if !Path::new(&place).is_dir() {
        let told = Finding::new(what, How::Wrong, format!("{place} is not there"));
        return told.so("plug that disk in, or name another place in kiosk.toml");
    }
    let copies = match journal::copies(Path::new(&place)) {
        Ok(copies) => copies,
        Err(error) => {
            let told = Finding::new(what, How::Wrong, format!("{place}: {error}"));
            return told.so("let this user read there");
        }
    };
    let age = |path: &std::path::PathBuf| path.metadata().ok()?.modified().ok()?.elapsed().ok();
    let Some(newest) = copies.iter().filter_map(age).min() else {
        let told = Finding::new(what, How::Soon, format!("no copy lies in {place} yet"));
        return told.so("one is made each night after 3 o'clock; look again tomorrow");
    };
    let (many, hours) = (copies.len(), newest.as_secs() / 3_600);
    let found = format!("{many} copies in {place}, the newest {hours} h old");
    match newest > OLD {
        true => Finding::new(what, How::Soon, found)
            .so("let the kiosk run over night, and see that the disk has room"),
        false => Finding::new(what, How::Fine, found),
    }
}
