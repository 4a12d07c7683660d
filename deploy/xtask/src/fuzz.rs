//! `cargo xtask fuzz TARGET|all [RUNS|SECONDSs]`: builds the fuzz targets with coverage and lets
//! one run, or each in turn.
//!
//! The stable compiler does it, without sanitizers: what is looked for is panics, broken
//! properties, and time or memory without end.
use crate::run;
use std::path::Path;
use std::process::Command;

/// The targets, as in `tests/fuzz/targets`.
const TARGETS: [&str; 6] = ["plans", "gym_files", "http", "wire", "solve", "hardware"];
/// Runs where none are said.
const RUNS: &str = "100000";
/// What the compiler weaves in for libFuzzer.
const FLAGS: &str = "-Cpasses=sancov-module \
                     -Cllvm-args=-sanitizer-coverage-level=4 \
                     -Cllvm-args=-sanitizer-coverage-inline-8bit-counters \
                     -Cllvm-args=-sanitizer-coverage-pc-table \
                     -Cllvm-args=-sanitizer-coverage-trace-compares --cfg fuzzing";
/// A target of its own keeps the flags away from build scripts.
const MACHINE: &str = "x86_64-unknown-linux-gnu";

/// Runs one target, or all of them in turn.
///
/// # Errors
/// What could not be built, or that a run ended with a finding; libFuzzer wrote it beside the
/// target folder's programs and said where.
pub(crate) fn fuzz(mut args: impl Iterator<Item = String>) -> Result<(), String> {
    let target = args.next().unwrap_or_default();
    let long = args.next().unwrap_or_else(|| RUNS.into());
    // "8s" is a time, for whoever waits for the answer; anything else a number of runs.
    let bound = match long.strip_suffix('s') {
        Some(seconds) => format!("-max_total_time={seconds}"),
        None => format!("-runs={long}"),
    };
    let all: Vec<&str> = TARGETS
        .into_iter()
        .filter(|one| target == "all" || *one == target)
        .collect();
    if all.is_empty() {
        let known = TARGETS.join(", ");
        return Err(format!(
            "no target is called \"{target}\"; there are {known}, and all"
        ));
    }
    let home = Path::new("tests/fuzz");
    let mut build = Command::new("cargo");
    build.args(["build", "--release", "--target", MACHINE]);
    run(build.current_dir(home).env("RUSTFLAGS", FLAGS))?;
    for one in all {
        let corpus = home.join("target/corpus").join(one);
        std::fs::create_dir_all(&corpus).map_err(|why| format!("{}: {why}", corpus.display()))?;
        let program = home.join("target").join(MACHINE).join("release").join(one);
        let found = format!("-artifact_prefix={}/", home.join("target").display());
        let mut fuzzer = Command::new(program);
        fuzzer.arg(corpus).arg(home.join("seeds").join(one));
        fuzzer.args([&bound, &found, "-timeout=20", "-rss_limit_mb=2048"]);
        run(&mut fuzzer)?;
    }
    Ok(())
}
