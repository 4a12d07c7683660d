//! The command line. Refuses: doing the work; each command has a file of its own.
mod check;
mod coach;
mod coach_word;
mod code;
mod doctor;
mod heard;
mod hub;
mod journal;
mod meet;
mod next;
mod plan;
mod plan_command;
mod rehearse;
mod reopen;
mod sheet;
mod solve;
mod stick;
mod take;

use crate::echo;
use crate::error::KioskError;
use crate::folder::Folder;
use crate::terminal::{language, say};
use crate::{picture, run};
use chrono::NaiveDate;
use clap::{Args, Parser, Subcommand};
use plan_command::PlanCommand;
use std::ffi::OsString;
use std::io::{Read, Write};
use std::path::PathBuf;
use std::process::ExitCode;
use view::Language;

/// The touchscreen by a power rack.
#[derive(Debug, Parser)]
#[command(name = "pinladder", version, about)]
pub struct Cli {
    /// Data folder; by default the user's own.
    #[arg(long, global = true, value_name = "DIR")]
    data: Option<PathBuf>,
    #[command(subcommand)]
    command: Option<Command>,
}

/// What to do; without one, the kiosk opens.
#[derive(Debug, Subcommand)]
enum Command {
    /// Take a coach's plan; a plan with a fault changes nothing.
    Take {
        /// The plan's file.
        plan: PathBuf,
        /// The Monday that week 1 begins on, for plans that count weeks.
        #[arg(long, value_name = "DATE", value_parser = day)]
        monday: Option<NaiveDate>,
    },
    /// Check plans and the gym's files, and tell every fault.
    Check {
        /// Files to check.
        #[arg(required = true)]
        files: Vec<PathBuf>,
    },
    /// Help to write a plan.
    Plan {
        /// What to do.
        #[command(subcommand)]
        what: PlanCommand,
    },
    /// Show what a stick brings; take it with the coach's code, write the record back to it.
    Stick(stick::StickArgs),
    /// Set the coach's code for the LAN page and for sticks; it is read from standard input.
    Code {
        /// Take the code away: nobody can sign in.
        #[arg(long)]
        off: bool,
    },
    /// Print the day sheet.
    Sheet(SheetArgs),
    /// Print what is due the next time and why, or rule otherwise with --load and --note.
    Next(NextArgs),
    /// List the lifts that were left open and closed the next day, or open one again.
    Reopen {
        /// The number of a lift of that list.
        number: Option<u32>,
        #[command(flatten)]
        said: Said,
    },
    /// Advise when to split the deadlift into two partials, with the evidence.
    Split(SplitArgs),
    /// Estimate the single from a set, by the published equations side by side.
    Single(SingleArgs),
    /// Say how to measure a lifter's landmarks, and what stands so far.
    Measure(MeasureArgs),
    /// Time the warm-ups of a meet or a test day back from the opener.
    Meet(MeetArgs),
    /// Solve one problem: JSON on standard input, JSON on standard output.
    Solve(solve::SolveArgs),
    /// Prove the journal, or make anew what follows from it.
    Journal {
        /// What to do.
        #[command(subcommand)]
        what: journal::JournalCommand,
    },
    /// Say what is well at this rack and what is not, and what to do; nothing is changed.
    Doctor {
        /// As JSON.
        #[arg(long)]
        json: bool,
    },
    /// Have the journals of many racks meet in one PostgreSQL database.
    Hub {
        /// What to do.
        #[command(subcommand)]
        what: hub::HubCommand,
    },
    /// Rehearse an evening without a window, on a clock of its own: JSON lines on standard input,
    /// the face after each on standard output.
    Rehearse {
        /// The time at the gym, as in 2026-12-02T18:00; now by default.
        #[arg(long, value_name = "TIME", value_parser = crate::rehearse::moment)]
        at: Option<chrono::NaiveDateTime>,
    },
    /// Draw a screen into a PNG file.
    Picture(picture::PictureArgs),
}

/// In which language a command answers.
#[derive(Debug, Args)]
struct Said {
    /// The language of the words: en, de or es.
    #[arg(long, value_name = "CODE", default_value = "en", value_parser = language)]
    language: Language,
}

/// A day as it is written on the command line.
fn day(text: &str) -> Result<NaiveDate, String> {
    let read = text.parse();
    read.map_err(|_| format!("\"{text}\" is no day of the calendar; write it as in 2026-12-01"))
}

/// Options of `sheet`.
#[derive(Debug, Args)]
pub struct SheetArgs {
    /// The day, as in 2026-12-01; today by default.
    #[arg(long, value_name = "D", value_parser = day)]
    date: Option<NaiveDate>,
    /// One lifter alone.
    #[arg(long, value_name = "NAME")]
    lifter: Option<String>,
    /// As JSON.
    #[arg(long)]
    json: bool,
}

/// Options of `next`.
#[derive(Debug, Args)]
pub struct NextArgs {
    /// Whose; everybody's on one list without it.
    #[arg(long, value_name = "NAME")]
    lifter: Option<String>,
    /// One lift alone.
    #[arg(long, value_name = "LIFT", requires = "lifter")]
    lift: Option<String>,
    /// One track of that lift alone, by its name in the plan, such as "heavy"; "none" for the one
    /// without a name.
    #[arg(long, value_name = "TRACK", requires = "lift")]
    track: Option<String>,
    /// The day that is asked about, as in 2026-12-01; tomorrow by default.
    #[arg(long, value_name = "D", value_parser = day, conflicts_with = "load")]
    date: Option<NaiveDate>,
    /// As JSON.
    #[arg(long)]
    json: bool,
    /// The coach's own work load for the next time, as in "180 kg".
    #[arg(long, value_name = "LOAD", requires = "note", requires = "lift")]
    load: Option<String>,
    /// Why, in the coach's words.
    #[arg(long, value_name = "WORDS", requires = "lifter")]
    note: Option<String>,
    #[command(flatten)]
    word: WordArgs,
    #[command(flatten)]
    said: Said,
}

/// What a coach says of a lifter beside loads: one of them, with a note.
#[derive(Debug, Args)]
#[group(multiple = false)]
pub struct WordArgs {
    /// Hurt since that day: nothing is due until `--fit`.
    #[arg(long, value_name = "D", value_parser = day, requires = "note", conflicts_with = "load")]
    hurt: Option<NaiveDate>,
    /// Fit again.
    #[arg(long, requires = "note", conflicts_with = "load")]
    fit: bool,
    /// Ill from a day to a day, as in 2026-12-01..2026-12-06.
    #[arg(long, value_name = "D..D", requires = "note", conflicts_with = "load")]
    ill: Option<String>,
    /// The plan's load of `--lift` on `--date` looks wrong and is meant.
    #[arg(long, requires = "note", requires = "lift", conflicts_with = "load")]
    meant: bool,
}

/// Options of `split`.
#[derive(Debug, Args)]
pub struct SplitArgs {
    /// Whose.
    #[arg(long, value_name = "NAME")]
    lifter: String,
    /// The day that is asked about, as in 2026-12-01; tomorrow by default.
    #[arg(long, value_name = "D", value_parser = day)]
    date: Option<NaiveDate>,
    /// As JSON.
    #[arg(long)]
    json: bool,
    /// The evidence as a drawing to print, into this file.
    #[arg(long, value_name = "FILE.svg", conflicts_with = "json")]
    svg: Option<PathBuf>,
    #[command(flatten)]
    said: Said,
}

/// Options of `single`.
#[derive(Debug, Args)]
pub struct SingleArgs {
    /// The set's load, as in "180 kg".
    load: String,
    /// Its reps, with the back held.
    reps: u8,
    /// Of which lift.
    #[arg(long, value_name = "LIFT")]
    lift: Option<String>,
    /// As JSON.
    #[arg(long)]
    json: bool,
    #[command(flatten)]
    said: Said,
}

/// Options of `measure`.
#[derive(Debug, Args)]
pub struct MeasureArgs {
    /// Whose.
    #[arg(long, value_name = "NAME")]
    lifter: String,
    /// The same as a drawing to print, into this file.
    #[arg(long, value_name = "FILE.svg")]
    svg: Option<PathBuf>,
    #[command(flatten)]
    said: Said,
}

/// Options of `meet`.
#[derive(Debug, Args)]
pub struct MeetArgs {
    /// A meet.toml: everybody of it, or one with --lifter.
    #[arg(long, value_name = "FILE", conflicts_with_all = ["lift", "opener", "before", "attempt", "ladder"])]
    file: Option<PathBuf>,
    /// Which of its flights, from 1; all by default.
    #[arg(long, value_name = "N", requires = "file")]
    flight: Option<u8>,
    /// Whose.
    #[arg(long, value_name = "NAME", required_unless_present = "file")]
    lifter: Option<String>,
    /// Which lift.
    #[arg(long, value_name = "LIFT", default_value = "deadlift")]
    lift: String,
    /// The opener, as in "200 kg".
    #[arg(long, value_name = "LOAD", required_unless_present = "file")]
    opener: Option<String>,
    /// Attempts before the opener, from the start of the flight: the place in the order, less one.
    #[arg(long, value_name = "N", required_unless_present = "file")]
    before: Option<u16>,
    /// How long an attempt is said to take, seconds.
    #[arg(long, value_name = "SECONDS", default_value_t = 60)]
    attempt: u32,
    /// How many attempts are over.
    #[arg(long, value_name = "N", default_value_t = 0)]
    called: u16,
    /// How long those took together, seconds; by default as was said.
    #[arg(long, value_name = "SECONDS")]
    elapsed: Option<u32>,
    /// How many warm-ups are done.
    #[arg(long, value_name = "N", default_value_t = 0)]
    taken: u8,
    /// How long ago the last of them was, seconds.
    #[arg(long, value_name = "SECONDS", default_value_t = 0)]
    since: u32,
    /// The warm-up pattern; by default the lifter's own.
    #[arg(long, value_name = "PATTERN")]
    ladder: Option<String>,
    /// As JSON.
    #[arg(long)]
    json: bool,
    #[command(flatten)]
    said: Said,
}

/// Where a command reads and writes.
pub struct Streams<'a> {
    /// Standard input.
    pub input: &'a mut dyn Read,
    /// Standard output.
    pub out: &'a mut dyn Write,
    /// Standard error.
    pub err: &'a mut dyn Write,
}

impl std::fmt::Debug for Streams<'_> {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str("Streams")
    }
}

/// Runs one command line. Exit code 0 when it did what it says, 1 when not, 2 on wrong usage.
pub fn main(args: impl IntoIterator<Item = OsString>, streams: &mut Streams<'_>) -> ExitCode {
    let cli = match Cli::try_parse_from(args) {
        Ok(cli) => cli,
        Err(error) => {
            let code = ExitCode::from(u8::try_from(error.exit_code()).unwrap_or(2));
            if error.use_stderr() {
                echo::tell(streams.err, &error);
                return code;
            }
            let written = write!(streams.out, "{error}").and_then(|()| streams.out.flush());
            return written.map_or(ExitCode::FAILURE, |()| code);
        }
    };
    // The kiosk itself goes on whoever listens.
    let asked = cli.command.is_some();
    let mut out = heard::Heard::new(streams.out);
    let mut heard = Streams {
        input: streams.input,
        out: &mut out,
        err: streams.err,
    };
    let done = obey(cli, &mut heard);
    match done {
        Ok(true) if asked && !out.all(streams.err) => ExitCode::FAILURE,
        Ok(true) => ExitCode::SUCCESS,
        Ok(false) => ExitCode::FAILURE,
        Err(error) => {
            echo::tell(streams.err, &format_args!("pinladder: {error}\n"));
            ExitCode::FAILURE
        }
    }
}

fn obey(cli: Cli, streams: &mut Streams<'_>) -> Result<bool, KioskError> {
    let open = || Folder::open(cli.data.as_deref());
    match cli.command {
        None => run::run(&open()?, streams.out).map(|()| true),
        Some(Command::Take { plan, monday }) => take::take(&open()?, (&plan, monday), streams.out),
        Some(Command::Check { files }) => check::check(&files, &open()?, streams.out),
        Some(Command::Sheet(args)) => sheet::sheet(&open()?, &args, streams.out),
        Some(Command::Next(args)) => next::next(&open()?, &args, streams.out),
        Some(Command::Reopen { number, said }) => {
            reopen::reopen(&open()?, number, said.language, streams.out)
        }
        Some(Command::Split(args)) => coach::split(&open()?, &args, streams.out),
        Some(Command::Single(args)) => coach::single(&open()?, &args, streams.out),
        Some(Command::Measure(args)) => coach::measure(&open()?, &args, streams.out),
        Some(Command::Meet(args)) => meet::meet(&open()?, &args, streams.out),
        Some(Command::Solve(args)) => solve::solve(&args, streams),
        Some(Command::Journal { what }) => journal::obey(what, &open()?, streams.out),
        Some(Command::Doctor { json }) => {
            doctor::doctor(&Folder::path_of(cli.data.as_deref())?, json, streams.out)
        }
        Some(Command::Hub { what }) => hub::obey(&what, open, streams.out),
        Some(Command::Plan {
            what: PlanCommand::Blank { out },
        }) => plan::blank(&open()?, &out, streams.out),
        Some(Command::Plan {
            what: PlanCommand::Read { file, monday, json },
        }) => {
            // Without a data folder nothing is made: what is read is held against the demo gym.
            let folder = cli.data.as_deref().map(|data| Folder::open(Some(data)));
            let folder = folder.transpose()?;
            plan::read(folder.as_ref(), (&file, monday), json, streams.out)
        }
        Some(Command::Stick(args)) => stick::stick(&open()?, &args, streams),
        Some(Command::Code { off }) => code::code(&open()?, off, streams),
        Some(Command::Rehearse { at }) => rehearse::rehearse(&open()?, at, streams),
        Some(Command::Picture(args)) => picture::picture(&args, cli.data.as_deref(), streams.out),
    }
}
