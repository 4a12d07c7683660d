//! Chores of the repository: `cargo xtask ci`, `cargo xtask renew`, `cargo xtask fuzz`.
//!
//! Refuses: building the product; cargo does that.
use std::process::{Command, ExitCode};

mod fuzz;

fn main() -> ExitCode {
    let chore = std::env::args().nth(1).unwrap_or_default();
    let done = match chore.as_str() {
        "ci" => run(Command::new("bash").arg(".ci/run")),
        // Schemas, pictures, journals of a release and snapshots are all written by the tests
        // that otherwise compare them.
        "renew" => run(Command::new("cargo")
            .args(["test", "--workspace"])
            .env("PINLADDER_RENEW", "1")
            .env("INSTA_UPDATE", "always")),
        "fuzz" => fuzz::fuzz(std::env::args().skip(2)),
        other => Err(format!(
            "no chore is called \"{other}\"; there are ci, renew and fuzz"
        )),
    };
    match done {
        Ok(()) => ExitCode::SUCCESS,
        Err(why) => {
            #[allow(clippy::print_stderr, reason = "this is a command line")]
            {
                eprintln!("xtask: {why}");
            }
            ExitCode::FAILURE
        }
    }
}

fn run(command: &mut Command) -> Result<(), String> {
    let status = command
        .status()
        .map_err(|why| format!("cannot start: {why}"))?;
    if status.success() {
        Ok(())
    } else {
        Err(format!("it ended with {status}"))
    }
}
