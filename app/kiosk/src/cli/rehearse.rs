//! `pinladder rehearse`. Refuses: a line without end; see `crate::rehearse` for the rest.
use super::{Streams, say};
use crate::echo;
use crate::error::KioskError;
use crate::folder::Folder;
use crate::rehearse::{Answer, Line, Rehearsal, now};
use chrono::NaiveDateTime;
use std::io::{BufRead, BufReader, Read as _};

/// Bytes of a line at most.
const LINE_MAX: u64 = 64 * 1024;

/// Answers each line of standard input with one on standard output, until the input ends.
pub(super) fn rehearse(
    folder: &Folder,
    at: Option<NaiveDateTime>,
    streams: &mut Streams<'_>,
) -> Result<bool, KioskError> {
    // What is rehearsed is written, so that a kiosk that lifts there must not be disturbed.
    let _alone = folder.alone()?;
    let mut rehearsal = Rehearsal::open(folder, at.unwrap_or_else(now))?;
    let mut input = BufReader::new(&mut *streams.input);
    while let Some(text) = next_line(&mut input) {
        let line = text.and_then(|text| Line::read(&text));
        let mut answer = match line {
            Ok(line) => rehearsal.line(&line)?,
            Err(why) => Answer {
                refused: Some(why),
                ..rehearsal.face()
            },
        };
        answer.refused = answer.refused.as_deref().map(echo::bounded);
        say(streams.out, &(answer.json() + "\n"));
    }
    Ok(true)
}

/// The next line; `None` at the end, or where nothing can be read any more.
fn next_line(input: &mut impl BufRead) -> Option<Result<String, String>> {
    let mut bytes = Vec::new();
    let read = input.by_ref().take(LINE_MAX).read_until(b'\n', &mut bytes);
    if read.ok()? == 0 {
        return None;
    }
    if bytes.last() != Some(&b'\n') && bytes.len() as u64 == LINE_MAX {
        drop(input.skip_until(b'\n'));
        return Some(Err(format!(
            "the line is too long; write at most {LINE_MAX} bytes"
        )));
    }
    let text = String::from_utf8(bytes);
    Some(text.map_err(|_| "the line is no UTF-8 text; write it as such".to_owned()))
}
