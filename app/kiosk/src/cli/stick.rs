//! `pinladder stick DIR`. Refuses: taking anything without the coach's code, or a part of it.
use super::code::ask;
use super::{Streams, say};
use crate::clock::{SystemClock, milliseconds};
use crate::error::KioskError;
use crate::folder::Folder;
use crate::gym_files;
use crate::odd_rows::odd_rows;
use crate::owner::Owner;
use crate::steady::Steady;
use crate::stick::{Stick, words, write_back};
use clap::Args;
use domain::{Command, Gym};
use journal::Record;
use std::path::PathBuf;

/// Options of `stick`.
#[derive(Debug, Args)]
pub(super) struct StickArgs {
    /// The folder where the stick is.
    dir: PathBuf,
    /// Take all its plans; the coach's code is read from standard input.
    #[arg(long)]
    accept: bool,
    /// Write the record back: CSV, JSON and a copy of the journal.
    #[arg(long)]
    record: bool,
}

/// Shows what a stick brings, takes it with the code, writes the record back to it.
pub(super) fn stick(
    folder: &Folder,
    args: &StickArgs,
    streams: &mut Streams<'_>,
) -> Result<bool, KioskError> {
    let mut owner = Owner::open(folder.open_journal()?)?;
    let clock = Steady::alone(Box::new(SystemClock));
    gym_files::begin(folder, &mut owner, &clock)?;
    clock.anchor(&mut owner);
    let gym = gym_files::take(folder, &mut owner, &clock)?.gym;
    let stick = Stick::read(&args.dir, &gym)?;
    say(streams.out, &told(&stick, (&gym, &owner)));
    let mut well = stick.plans.is_empty() || stick.is_sound();
    if args.accept {
        well = accept(folder, &stick, (&mut owner, &clock), streams)?;
    }
    if args.record {
        let mut record = Record::open(&folder.record())?;
        owner.follow(&mut record);
        let stamp = clock.local().format("%Y-%m-%d-%H%M%S").to_string();
        let written = write_back(folder.path(), &args.dir, &stamp)?;
        for (name, bytes) in &written.files {
            say(streams.out, &format!("wrote {name}, {bytes} bytes\n"));
        }
        let shown = written.folder.display();
        say(
            streams.out,
            &format!("all is in {shown}; the stick may be pulled\n"),
        );
    }
    Ok(well)
}

/// Plans, faults and what would change, a line each.
fn told(stick: &Stick, (gym, owner): (&Gym, &Owner)) -> String {
    let mut text = String::new();
    for plan in &stick.plans {
        if !plan.faults.iter().any(plan::Fault::stops) {
            let rows = super::take::counted(plan.rows.len(), "row");
            text.push_str(&format!("{}: {rows}, no fault\n", plan.name));
        }
        for fault in &plan.faults {
            text.push_str(&format!("{fault}\n"));
        }
    }
    for passed in &stick.passed {
        text.push_str(&format!("passed over {passed}\n"));
    }
    if stick.plans.is_empty() {
        text.push_str("no plan is on the stick\n");
    } else if stick.is_sound() {
        let (name, rows) = stick.together();
        for fault in odd_rows(&name, gym, owner.state(), &rows) {
            text.push_str(&format!("{fault}\n"));
        }
        for change in stick.changes(owner.state()) {
            text.push_str(&format!("{}\n", words(&change)));
        }
    } else {
        text.push_str("nothing of it can be taken until the faults are mended\n");
    }
    text
}

fn accept(
    folder: &Folder,
    stick: &Stick,
    (owner, clock): (&mut Owner, &Steady),
    streams: &mut Streams<'_>,
) -> Result<bool, KioskError> {
    if !stick.is_sound() {
        say(streams.out, "refused: nothing was taken\n");
        return Ok(false);
    }
    let code = ask(streams, "the coach's code: ")?;
    let desk = share::Desk::new(folder.path(), milliseconds());
    desk.judge(&code).map_err(KioskError::Usage)?;
    let (name, rows) = stick.together();
    let count = rows.len();
    owner.command(&Command::TakePlan { name, rows }, clock.now())?;
    say(streams.out, &format!("took {count} rows\n"));
    Ok(true)
}
