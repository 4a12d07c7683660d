//! `pinladder code`. Refuses: a code on the command line, where others on the machine see it.
use super::{Streams, say};
use crate::error::KioskError;
use crate::folder::Folder;
use std::io::{BufRead as _, BufReader, Read as _};

/// Most bytes that are read of a code.
const CODE_BYTES: u64 = 1_024;

/// Sets the coach's code from the first line of standard input, or takes it away.
pub(super) fn code(
    folder: &Folder,
    off: bool,
    streams: &mut Streams<'_>,
) -> Result<bool, KioskError> {
    if off {
        share::remove_code(folder.path())?;
        say(
            streams.out,
            "the coach's code is gone; nobody can sign in\n",
        );
        return Ok(true);
    }
    let code = ask(streams, "the coach's new code: ")?;
    share::set_code(folder.path(), &code)?;
    say(
        streams.out,
        "the coach's code is set; whoever was signed in with another no longer is\n",
    );
    Ok(true)
}

/// One line of standard input.
pub(super) fn ask(streams: &mut Streams<'_>, prompt: &str) -> Result<String, KioskError> {
    drop(streams.err.write_all(prompt.as_bytes()));
    drop(streams.err.flush());
    let mut line = String::new();
    let read = BufReader::new((&mut *streams.input).take(CODE_BYTES)).read_line(&mut line);
    drop(streams.err.write_all(b"\n"));
    match read {
        Ok(length) if length > 0 => Ok(line.trim().to_owned()),
        _ => Err(KioskError::Usage(
            "no code came on standard input; type it, or pipe it in".into(),
        )),
    }
}
