//! `pinladder take PLAN`. Refuses: a plan with a fault, whole.
use super::plan::first_monday;
use super::say;
use crate::bounded;
use crate::clock::SystemClock;
use crate::error::KioskError;
use crate::folder::Folder;
use crate::gym_files;
use crate::odd_rows::odd_rows;
use crate::owner::Owner;
use crate::steady::Steady;
use chrono::NaiveDate;
use domain::Command;
use plan::Source;
use std::collections::BTreeSet;
use std::io::Write;
use std::path::Path;

pub(super) fn take(
    folder: &Folder,
    (path, monday): (&Path, Option<NaiveDate>),
    out: &mut dyn Write,
) -> Result<bool, KioskError> {
    let monday = monday.map(first_monday).transpose()?;
    let mut owner = Owner::open(folder.open_journal()?)?;
    let clock = Steady::alone(Box::new(SystemClock));
    gym_files::begin(folder, &mut owner, &clock)?;
    clock.anchor(&mut owner);
    let in_force = gym_files::take(folder, &mut owner, &clock)?;
    let text = bounded::read(path)?;
    let name = path
        .file_name()
        .map(|n| n.to_string_lossy().into_owned())
        .unwrap_or_default();
    let source = Source {
        name: &name,
        text: &text,
    };
    let read = plan::coach_plan_since(source, &in_force.gym, monday);
    let (rows, mut odd) = read.map_err(KioskError::Faults)?;
    odd.extend(odd_rows(&name, &in_force.gym, owner.state(), &rows));
    let lifters: BTreeSet<&str> = rows.iter().map(|row| row.lifter.as_str()).collect();
    let days: BTreeSet<_> = rows.iter().map(|row| row.date).collect();
    let said = format!(
        "took {name}: {}, {}, {} from {} to {}\n",
        counted(rows.len(), "row"),
        counted(lifters.len(), "lifter"),
        counted(days.len(), "day"),
        days.first().map(ToString::to_string).unwrap_or_default(),
        days.last().map(ToString::to_string).unwrap_or_default(),
    );
    owner.command(
        &Command::TakePlan {
            name: name.clone(),
            rows,
        },
        clock.now(),
    )?;
    say(out, &said);
    // What was left out of it is told, so that nobody waits for it.
    for fault in &odd {
        say(out, &format!("{fault}\n"));
    }
    Ok(true)
}

/// "1 row", "2 rows".
pub(super) fn counted(n: usize, what: &str) -> String {
    format!("{n} {what}{}", if n == 1 { "" } else { "s" })
}
