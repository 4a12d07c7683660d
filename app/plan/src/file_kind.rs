//! What kind of file a plan is, by its first bytes rather than its name.
//!
//! Refuses: everything but text in UTF-8, saying which kind it looks like and how to save it.
use crate::Source;
use crate::fault::{Fault, Wrong};

/// Largest plan that is read: 4 MiB.
pub(crate) const PLAN_BYTES_MAX: usize = 4 << 20;

/// What every refused kind is told to become.
const SAVE_AS: &str = "save it as CSV in UTF-8, the one kind of plan that is read now";

/// The text of a plan, its byte-order mark gone.
pub(crate) fn text(source: Source<'_>) -> Result<&str, Vec<Fault>> {
    let bytes = source.text;
    let whole =
        |read: &str, right: &str| Err(vec![Fault::whole(source.name, Wrong::plain(read, right))]);
    if bytes.len() > PLAN_BYTES_MAX {
        let read = format!(
            "{} bytes, more than the most, {PLAN_BYTES_MAX}",
            bytes.len()
        );
        return whole(&read, "split the plan, or delete what is not plan");
    }
    if let Some(kind) = other_kind(bytes) {
        return whole(kind, SAVE_AS);
    }
    match std::str::from_utf8(bytes) {
        Ok(text) => Ok(text.strip_prefix('\u{feff}').unwrap_or(text)),
        Err(fault) => {
            let before = bytes.get(..fault.valid_up_to()).unwrap_or_default();
            let row = before.split(|b| *b == b'\n').count();
            let read = "text that is not UTF-8, perhaps Windows-1252";
            Err(vec![Fault {
                row: Some(row),
                ..Fault::whole(source.name, Wrong::plain(read, SAVE_AS))
            }])
        }
    }
}

/// Names a kind that is not text in UTF-8.
fn other_kind(bytes: &[u8]) -> Option<&'static str> {
    // Zip local file header; compound file header; byte-order marks of Unicode.
    const SIGNS: [(&[u8], &str); 6] = [
        (
            b"PK\x03\x04",
            "a zipped file such as an XLSX or ODS spreadsheet",
        ),
        (b"\xd0\xcf\x11\xe0", "a binary spreadsheet such as XLS"),
        (b"%PDF", "a PDF"),
        (b"\xff\xfe", "text in UTF-16"),
        (b"\xfe\xff", "text in UTF-16"),
        (b"{\\rtf", "a word processor's text"),
    ];
    let sign = SIGNS.iter().find(|(sign, _)| bytes.starts_with(sign));
    match sign {
        Some((_, kind)) => Some(kind),
        None if bytes.contains(&0) => Some("text in UTF-16, or no text at all"),
        None => None,
    }
}
