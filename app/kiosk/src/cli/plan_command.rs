//! Options of `pinladder plan`.
use super::day;
use chrono::NaiveDate;
use clap::Subcommand;
use std::path::PathBuf;

/// What can be done for a plan.
#[derive(Debug, Subcommand)]
pub(super) enum PlanCommand {
    /// Write a blank plan with examples from the gym.
    Blank {
        /// Where: a new file that ends in .csv or .xlsx.
        #[arg(long, value_name = "FILE")]
        out: PathBuf,
    },
    /// Show what is understood of a plan, row by row, before anything is taken.
    Read {
        /// The plan's file.
        file: PathBuf,
        /// The Monday that week 1 begins on, for plans that count weeks.
        #[arg(long, value_name = "DATE", value_parser = day)]
        monday: Option<NaiveDate>,
        /// As JSON.
        #[arg(long)]
        json: bool,
    },
}
