//! `pinladder hub`: prepares the database where a gym's kiosks meet, looks at it, exchanges once.
//!
//! Refuses: a password on the command line, where others on the machine see it.
use super::say;
use crate::clock::SystemClock;
use crate::error::KioskError;
use crate::folder::Folder;
use crate::gym_hub::{Member, places};
use crate::owner::Owner;
use crate::steady::Steady;
use ::hub::{Address, HubError, Link, Places, Prepare};
use clap::{Args, Subcommand};
use domain::elsewhere::Brought;
use domain::{Command, Refusal};
use journal::SealedReader;
use std::io::Write;
use std::path::PathBuf;

/// What to do about the hub.
#[derive(Debug, Subcommand)]
pub(super) enum HubCommand {
    /// Lay tables, roles and passwords for a gym's kiosks into a PostgreSQL database of its own.
    Prepare(PrepareArgs),
    /// Show how far this kiosk and the gym's others have come, and what is wrong.
    Look,
    /// Exchange once, while no kiosk runs on this folder.
    Exchange,
}

/// Options of `hub prepare`.
#[derive(Debug, Args)]
pub(super) struct PrepareArgs {
    /// The gym's name.
    #[arg(long, value_name = "NAME")]
    gym: String,
    /// A kiosk of it, by the name of its role: a-z, 0-9, - and _. Once for each.
    #[arg(long = "kiosk", value_name = "NAME", required = true)]
    kiosks: Vec<String>,
    /// The folder for the kiosks' passwords, NAME.password; those that lie there are used again.
    #[arg(long, value_name = "DIR")]
    secrets: PathBuf,
    /// Print the SQL instead, for `psql` or for reading.
    #[arg(long, required_unless_present = "server")]
    print: bool,
    /// The database, and as whom: postgresql://NAME@HOST/DATABASE.
    #[arg(long, value_name = "ADDRESS", conflicts_with = "print")]
    server: Option<String>,
    /// The file with that one's password, readable by its owner alone.
    #[arg(long, value_name = "FILE", requires = "server")]
    password: Option<PathBuf>,
    /// The server's certificate, in PEM.
    #[arg(long, value_name = "FILE", requires = "server")]
    certificate: Option<PathBuf>,
}

pub(super) fn obey(
    what: &HubCommand,
    folder: impl FnOnce() -> Result<Folder, KioskError>,
    out: &mut dyn Write,
) -> Result<bool, KioskError> {
    match what {
        HubCommand::Prepare(args) => prepare(args, out),
        HubCommand::Look => look(&folder()?, out),
        HubCommand::Exchange => exchange(&folder()?, out),
    }
}

fn usage(error: &HubError) -> KioskError {
    KioskError::Usage(error.to_string())
}

fn prepare(args: &PrepareArgs, out: &mut dyn Write) -> Result<bool, KioskError> {
    let prepare = Prepare {
        gym: args.gym.clone(),
        kiosks: args.kiosks.clone(),
        secrets: args.secrets.clone(),
    };
    let Some(server) = &args.server else {
        say(out, &prepare.sql().map_err(|error| usage(&error))?);
        return Ok(true);
    };
    let address =
        Address::read(server).map_err(|why| KioskError::Usage(format!("--server: {why}")))?;
    let nowhere = || PathBuf::from("/nonexistent");
    let places = Places {
        password: args.password.clone().unwrap_or_else(nowhere),
        roots: args.certificate.clone().unwrap_or_else(nowhere),
    };
    let mut link = Link::open(&address, &places).map_err(|error| usage(&error))?;
    let sql = prepare.sql().map_err(|error| usage(&error))?;
    link.run(&sql).map_err(|error| usage(&error))?;
    for kiosk in &args.kiosks {
        let file = args.secrets.join(format!("{kiosk}.password"));
        let (file, server, base) = (file.display(), address.server(), &address.database);
        say(
            out,
            &format!(
                "{kiosk}: lay {file} into that kiosk's data folder as hub.password, and write\n  \
                 hub = \"postgresql://{kiosk}@{server}/{base}\"\ninto its kiosk.toml\n"
            ),
        );
    }
    Ok(true)
}

/// The hub that kiosk.toml names.
pub(super) fn address_of(folder: &Folder) -> Result<Option<Address>, KioskError> {
    let Some(text) = folder.text("kiosk.toml")? else {
        return Ok(None);
    };
    let source = plan::Source {
        name: "kiosk.toml",
        text: text.as_bytes(),
    };
    let kiosk = plan::kiosk(source, None).map_err(KioskError::Faults)?;
    Ok(kiosk.hub)
}

fn named(folder: &Folder) -> Result<Address, KioskError> {
    address_of(folder)?.ok_or_else(|| {
        let form = "hub = \"postgresql://KIOSK@HOST/DATABASE\"";
        KioskError::Usage(format!("kiosk.toml names no hub; write {form} into it"))
    })
}

fn look(folder: &Folder, out: &mut dyn Write) -> Result<bool, KioskError> {
    let address = named(folder)?;
    let (here, seal) = SealedReader::open(&folder.journal())?.last()?;
    let mut link = match Link::open(&address, &places(folder)) {
        Ok(link) => link,
        Err(error) => {
            say(out, &format!("{error}\n"));
            return Ok(false);
        }
    };
    let heads = link.heads().map_err(|error| usage(&error))?;
    let mut fine = false;
    for head in &heads {
        let own = head.kiosk == address.kiosk;
        let told = if !own {
            String::new()
        } else if head.seq == here && head.seal == seal {
            fine = true;
            ", all of this journal".to_owned()
        } else {
            let reader = SealedReader::open(&folder.journal())?;
            fine = reader.seal_of(head.seq)? == Some(head.seal);
            match fine {
                true => format!(" of this journal's {here}; the rest follows"),
                false => format!(
                    ", which are not this journal's {here}: another box runs under this name, or \
                     an older copy was put back; nothing is sent"
                ),
            }
        };
        say(out, &format!("{}: {} events{told}\n", head.kiosk, head.seq));
    }
    if !heads.iter().any(|head| head.kiosk == address.kiosk) {
        let (server, kiosk) = (address.server(), address.kiosk);
        say(
            out,
            &format!("{}\n", HubError::Unprepared { server, kiosk }),
        );
    }
    Ok(fine)
}

fn exchange(folder: &Folder, out: &mut dyn Write) -> Result<bool, KioskError> {
    let address = named(folder)?;
    let _alone = folder.alone()?;
    let mut owner = Owner::open(folder.open_journal()?)?;
    let clock = Steady::alone(Box::new(SystemClock));
    clock.anchor(&mut owner);
    let mut brought: Vec<Brought> = Vec::new();
    let mut member = Member::of(folder, &address);
    let done = member.exchange(&mut |lift| brought.push(lift), &mut || true);
    let mut taken = 0_u32;
    for lift in brought {
        match owner.command(&Command::TakeElsewhere(Box::new(lift)), clock.now()) {
            Ok(()) => taken += 1,
            Err(KioskError::Refused(Refusal::KnownElsewhere)) => {}
            Err(error) => return Err(error),
        }
    }
    let done = match done {
        Ok(done) => done,
        Err(error) => {
            say(out, &format!("{error}\n"));
            return Ok(false);
        }
    };
    let (sent, heard) = (done.sent.events, done.heard.events);
    say(
        out,
        &format!("sent {sent}, read {heard}, lifts of other racks taken over {taken}\n"),
    );
    for fault in &done.heard.faults {
        say(out, &format!("{fault}\n"));
    }
    Ok(done.heard.faults.is_empty())
}
