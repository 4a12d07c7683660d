//! What the coach's desk needs of the data folder: plans that lie there, values written into the
//! gym's files, a gym begun anew.
//!
//! Refuses: a value with which the files could no longer be read; then nothing is changed.
use crate::error::KioskError;
use crate::folder::{Folder, GYM_FILES};
use crate::gym_files::{self, GymInForce};
use crate::owner::Owner;
use domain::{Command, Gym, Moment};
use plan::edit::{Step, edit};
use plan::{PLAN_ENDINGS, Source};
use view::desk::{DeskNews, Edit, Key, PlanNews, Wish};

/// Plans that are looked at in the folder.
const PLANS_MAX: usize = 60;
/// Bytes of a plan that are read.
const PLAN_BYTES_MAX: u64 = 4 << 20;

/// What is new for the coach; `hardware` is what is wrong with the devices.
#[must_use]
pub fn news(folder: Option<&Folder>, gym: &GymInForce, hardware: Vec<String>) -> DeskNews {
    let mut plans: Vec<PlanNews> = folder
        .map(|folder| plan_names(folder).into_iter())
        .into_iter()
        .flatten()
        .map(|name| plan_news(folder, &gym.gym, name))
        .collect();
    plans.sort_by(|a, b| a.name.cmp(&b.name));
    DeskNews {
        plans,
        faults: gym.faults.iter().map(ToString::to_string).collect(),
        hardware,
    }
}

fn plan_names(folder: &Folder) -> Vec<String> {
    let Ok(entries) = std::fs::read_dir(folder.plans()) else {
        return Vec::new(); // No folder, no plans.
    };
    let names = entries
        .flatten()
        .map(|entry| entry.file_name().to_string_lossy().into_owned());
    let is_plan = |name: &String| {
        let name = name.to_lowercase();
        PLAN_ENDINGS.iter().any(|ending| name.ends_with(ending))
    };
    names.filter(is_plan).take(PLANS_MAX).collect()
}

fn plan_news(folder: Option<&Folder>, gym: &Gym, name: String) -> PlanNews {
    let read = read_plan(folder, gym, &name).map(|rows| rows.len());
    let read = read.map_err(|error| {
        let KioskError::Faults(faults) = error else {
            return (error.to_string(), 1);
        };
        let first = faults.first().map(ToString::to_string);
        (first.unwrap_or_default(), faults.len())
    });
    PlanNews { name, read }
}

fn read_plan(
    folder: Option<&Folder>,
    gym: &Gym,
    name: &str,
) -> Result<Vec<domain::Prescription>, KioskError> {
    let path = needed(folder)?.plans().join(name);
    let about = std::fs::symlink_metadata(&path).map_err(KioskError::file(&path))?;
    if !about.is_file() || about.len() > PLAN_BYTES_MAX {
        let why = format!("{name} is no file of at most {PLAN_BYTES_MAX} bytes; save it anew");
        return Err(KioskError::Usage(why));
    }
    let text = std::fs::read(&path).map_err(KioskError::file(&path))?;
    let source = Source { name, text: &text };
    plan::coach_plan(source, gym).map_err(KioskError::Faults)
}

fn needed(folder: Option<&Folder>) -> Result<&Folder, KioskError> {
    let none = || KioskError::Usage("this kiosk keeps no files; start it on a data folder".into());
    folder.ok_or_else(none)
}

/// Does what somebody at the desk wants, whole or not at all.
///
/// # Errors
/// [`KioskError::Faults`] when the files could not be read with it; others when they cannot be
/// written.
pub fn grant(
    wish: &Wish,
    folder: Option<&Folder>,
    owner: &mut Owner,
    gym: &Gym,
    now: Moment,
) -> Result<(), KioskError> {
    let text_of = |owner: &Owner, name: &str| {
        let kept = owner.state().files.get(name).cloned();
        kept.unwrap_or_default()
    };
    let changed: Vec<(&str, String)> = match wish {
        Wish::TakePlan(name) => {
            let rows = read_plan(folder, gym, name)?;
            let name = name.clone();
            return owner.command(&Command::TakePlan { name, rows }, now);
        }
        Wish::Set(change) => {
            let text = written(&text_of(owner, change.file), change);
            vec![(change.file, text.map_err(KioskError::Usage)?)]
        }
        Wish::Add { file, entry } => {
            let text = text_of(owner, file);
            vec![(file, format!("{}\n{entry}", text.trim_end()))]
        }
        Wish::Begin { gym, lifters } => vec![
            (GYM_FILES[0], gym.clone()),
            (GYM_FILES[1], lifters.clone()),
            // They name racks and lifters that are no more.
            (
                GYM_FILES[2],
                without(&text_of(owner, GYM_FILES[2]), "racks"),
            ),
            (GYM_FILES[3], String::new()),
        ],
    };
    let after = |name: &'static str| {
        let new = changed.iter().find(|(changed, _)| *changed == name);
        let text = new.map_or_else(|| text_of(owner, name), |(_, text)| text.clone());
        (name, text)
    };
    gym_files::proven(&GYM_FILES.map(after))?;
    // First the folder, then the journal: cut short in between, the next start takes the file.
    if let Some(folder) = folder {
        for (name, text) in &changed {
            if matches!(wish, Wish::Begin { .. }) {
                folder.keep_before(name)?;
            }
            folder.replace(name, text)?;
        }
    }
    for (name, text) in changed {
        let name = name.to_owned();
        owner.command(&Command::TakeFile { name, text }, now)?;
    }
    Ok(())
}

/// The text of a file with one value changed.
fn written(text: &str, change: &Edit) -> Result<String, String> {
    let entry = change
        .entry
        .as_ref()
        .map(|(table, name)| (*table, name.as_str()));
    let step = |key: &Key| match key {
        Key::Name(name) => Step::Name(name),
        Key::At(at) => Step::At(*at),
    };
    let path: Vec<Step<'_>> = change.path.iter().map(step).collect();
    edit(text, entry, &path, &change.value)
}

/// A text without the line of one key.
fn without(text: &str, key: &str) -> String {
    let is = |line: &str| {
        line.split_once('=')
            .is_some_and(|(found, _)| found.trim() == key)
    };
    let kept: Vec<&str> = text.lines().filter(|line| !is(line)).collect();
    kept.join("\n") + "\n"
}
