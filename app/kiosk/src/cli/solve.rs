//! `pinladder solve`. Refuses: reading without end; see `crate::solve` for the rest.
use super::{Streams, say};
use crate::clock::stopwatch;
use crate::error::KioskError;
use crate::solve::{INPUT_LIMIT, Request, run};
use clap::Args;
use std::io::Read as _;

/// Options of `solve`.
#[derive(Debug, Args)]
pub(super) struct SolveArgs {
    /// Which problem: ladder, rotation, hole, bar, balance, next.
    problem: String,
    /// Solve it so many times and add `median_us`.
    #[arg(long, value_name = "N", value_parser = clap::value_parser!(u32).range(1..=1_000_000))]
    times: Option<u32>,
    /// Seconds that a search may take.
    #[arg(long, value_name = "SECONDS", default_value_t = 2.0)]
    within: f64,
}

/// Answers one problem on standard output; false when it was refused.
pub(super) fn solve(args: &SolveArgs, streams: &mut Streams<'_>) -> Result<bool, KioskError> {
    let mut input = Vec::new();
    let limit = u64::try_from(INPUT_LIMIT).unwrap_or(u64::MAX);
    // What cannot be read on ends the input; what is then missing is told as such.
    drop(streams.input.take(limit + 1).read_to_end(&mut input));
    let input = String::from_utf8_lossy(&input);
    let request = Request {
        problem: &args.problem,
        input: &input,
        times: args.times,
        within_ns: nanoseconds(args.within),
    };
    let answer = run(request, &mut stopwatch());
    say(streams.out, &(answer.json + "\n"));
    Ok(answer.solved)
}

/// Limits how long a search looks, never what it finds: a float will do.
#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "saturates"
)]
fn nanoseconds(seconds: f64) -> u64 {
    (seconds.max(0.0) * 1e9) as u64
}
