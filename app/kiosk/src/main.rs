//! The binary. Refuses: logic; see `cli`.
use kiosk::cli::{Streams, main as run};
use std::io::IsTerminal as _;
use std::process::ExitCode;
use tracing_subscriber::EnvFilter;

fn main() -> ExitCode {
    let filter = EnvFilter::try_from_env("PINLADDER_LOG").unwrap_or_else(|_| "warn".into());
    tracing_subscriber::fmt()
        .with_env_filter(filter)
        // The system's log has no colours; nor has whoever asks for none (no-color.org).
        .with_ansi(std::io::stderr().is_terminal() && std::env::var_os("NO_COLOR").is_none())
        .with_writer(std::io::stderr)
        .init();
    let mut streams = Streams {
        input: &mut std::io::stdin(),
        out: &mut std::io::stdout(),
        err: &mut std::io::stderr(),
    };
    run(std::env::args_os(), &mut streams)
}
