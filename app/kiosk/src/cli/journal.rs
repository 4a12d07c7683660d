//! `pinladder journal verify`, `rebuild`, `backup`, `restore` and `mend`. Refuses: rewriting an event.
use super::say;
use crate::clock::{Clock as _, SystemClock};
use crate::error::KioskError;
use crate::folder::{Alone, Folder};
use chrono::DateTime;
use clap::Subcommand;
use domain::{Moment, State};
use journal::{BackupError, FileOutcome, Outside, Rebuilt, Report};
use std::io::Write;
use std::path::{Path, PathBuf};

/// What can be done with the journal.
#[derive(Debug, Subcommand)]
pub(super) enum JournalCommand {
    /// Prove that nothing was changed, lost or put between.
    Verify,
    /// Make the record, and gym files that are missing, anew from the journal.
    Rebuild,
    /// Copy the journal to a second place, and prove the copy.
    Backup {
        /// The folder for the copies.
        #[arg(long, value_name = "DIR")]
        to: PathBuf,
        /// How many copies are kept there.
        #[arg(long, value_name = "N", default_value_t = 14, value_parser = clap::value_parser!(u16).range(1..=400))]
        keep: u16,
    },
    /// Make the journal whole again from all that is left of it and of its copies.
    Mend {
        /// A folder with copies, beside the second place that kiosk.toml names.
        #[arg(long, value_name = "DIR")]
        from: Vec<PathBuf>,
        /// So many events are known to have been, cannot be had any more, and are given up.
        #[arg(long, value_name = "N", default_value_t = 0)]
        give_up: u64,
    },
    /// Prove a copy, and only then put it in the place of the journal, which is kept aside.
    Restore {
        /// The copy.
        file: PathBuf,
    },
}

/// Does what was asked.
pub(super) fn obey(
    what: JournalCommand,
    folder: &Folder,
    out: &mut dyn Write,
) -> Result<bool, KioskError> {
    match what {
        JournalCommand::Verify => verify(folder, out),
        JournalCommand::Rebuild => rebuild(folder, out),
        JournalCommand::Backup { to, keep } => backup(folder, &to, keep.into(), out),
        JournalCommand::Mend { from, give_up } => mend(folder, &from, give_up, out),
        JournalCommand::Restore { file } => restore(folder, &file, out),
    }
}

fn verify(folder: &Folder, out: &mut dyn Write) -> Result<bool, KioskError> {
    let mut state = State::default();
    let report = journal::verify_beside(&folder.journal(), &folder.outside(), |_, event| {
        state.apply(event);
    })?;
    say(out, &proof(&report, &state));
    Ok(true)
}

/// What was proven, a line each.
fn proof(report: &Report, state: &State) -> String {
    let day = |at: Option<Moment>| {
        let at = at.and_then(|at| DateTime::from_timestamp_millis(at.0));
        at.map_or_else(
            || "never".into(),
            |at| at.format("%Y-%m-%d %H:%M:%S UTC").to_string(),
        )
    };
    let mut text = format!("the journal is sound: {} events\n", report.events);
    text.push_str(&format!(
        "first  {}\nlast   {}\n",
        day(report.first_at),
        day(report.last_at)
    ));
    for (kind, count) in &report.kinds {
        text.push_str(&format!("{count:>8} {kind}\n"));
    }
    text.push_str(&format!(
        "they make {} lifts that stand\n",
        state.lifts_count()
    ));
    text.push_str(&format!("seal   {}\n", report.seal));
    text
}

fn rebuild(folder: &Folder, out: &mut dyn Write) -> Result<bool, KioskError> {
    let rebuilt: Rebuilt = journal::rebuild(folder.path())?;
    say(
        out,
        &format!(
            "record.sqlite: made anew from {} events\n",
            rebuilt.record.applied
        ),
    );
    for (name, outcome) in &rebuilt.files {
        let words = match outcome {
            FileOutcome::Written => "was missing; written as last taken",
            FileOutcome::Same => "is as last taken",
            FileOutcome::Differs => "differs from what was last taken; left as it is",
            FileOutcome::BadName => "is no name of a gym's file; not written",
        };
        say(out, &format!("{name}: {words}\n"));
    }
    Ok(true)
}

/// Copies the journal into `place`, proven, and keeps so many copies there.
fn backup(
    folder: &Folder,
    place: &Path,
    keep: usize,
    out: &mut dyn Write,
) -> Result<bool, KioskError> {
    let stamp = stamp();
    let copied = journal::backup(folder.path(), place, &stamp, keep)?;
    let events = copied.report.events;
    say(
        out,
        &format!("copied {events} events to {}\n", copied.path.display()),
    );
    for old in &copied.removed {
        say(out, &format!("deleted {}, beyond {keep}\n", old.display()));
    }
    for beyond in &copied.beyond {
        say(
            out,
            &format!("kept {}, which knows other events\n", beyond.display()),
        );
    }
    Ok(true)
}

/// Proves a copy, and puts it in the place of the journal; what stood before is kept.
fn restore(folder: &Folder, file: &Path, out: &mut dyn Write) -> Result<bool, KioskError> {
    let _alone = alone(folder)?;
    let stamp = stamp();
    let mut state = State::default();
    let apply = |_, event: &domain::Event| state.apply(event);
    let places = folder.places();
    let restored = journal::restore(file, folder.path(), (&stamp, &places), apply)?;
    say(out, &proof(&restored.report, &state));
    if let Some(aside) = &restored.aside {
        say(out, &format!("the journal before is {}\n", aside.display()));
    }
    say(out, "restored\n");
    Ok(true)
}

fn stamp() -> String {
    SystemClock.local().format("%Y-%m-%dT%H%M%S").to_string()
}

/// Whoever puts something in the journal's place has the folder alone.
#[allow(clippy::wildcard_enum_match_arm, reason = "all others are told alike")]
fn alone(folder: &Folder) -> Result<Alone, KioskError> {
    folder.alone().map_err(|error| match error {
        KioskError::Told(_) => BackupError::InUse {
            path: folder.journal(),
        }
        .into(),
        other => other,
    })
}

/// Makes the journal whole again from all that is left of it and of its copies. Events that cannot
/// be had any more are given up only when their number is said.
fn mend(
    folder: &Folder,
    from: &[PathBuf],
    give_up: u64,
    out: &mut dyn Write,
) -> Result<bool, KioskError> {
    let _alone = alone(folder)?;
    let mut places = from.to_vec();
    places.extend(folder.places());
    let outside = Outside::of(&places, true);
    let broken = match journal::verify_beside(&folder.journal(), &outside, |_, _| {}) {
        Ok(report) => {
            let events = report.events;
            say(
                out,
                &format!("the journal is sound: {events} events; there is nothing to mend\n"),
            );
            return Ok(true);
        }
        Err(error) => error,
    };
    say(out, &format!("{broken}\n"));
    let mended = journal::mend(folder.path(), &places)?;
    let (base, upto) = &mended.base;
    say(out, &format!("{upto} events are proven in {base}\n"));
    if mended.last > *upto {
        say(
            out,
            &format!("{} to {} follow from the rest\n", upto + 1, mended.last),
        );
    }
    for seq in &mended.bits {
        say(
            out,
            &format!("event {seq}: one flipped bit was put right, as its seal proves\n"),
        );
    }
    let lost = mended.lost();
    if lost != give_up {
        let (first, known) = (mended.last + 1, mended.known);
        let told = match lost {
            0 => "nothing is lost; nothing was changed: run it without --give-up\n".to_owned(),
            _ => format!(
                "events {first} to {known} cannot be had any more; nothing was changed: look for \
                 another copy (--from DIR), or give them up with --give-up {lost}\n"
            ),
        };
        say(out, &told);
        return Ok(false);
    }
    let put = mended.prepared.put_in_place(&stamp(), &places)?;
    let events = put.report.events;
    say(out, &format!("mended: {events} events\n"));
    if let Some(aside) = &put.aside {
        say(out, &format!("the journal before is {}\n", aside.display()));
    }
    Ok(true)
}
