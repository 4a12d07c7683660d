//! What kind of file a plan is, by its first bytes rather than its name, and the text of one.
//!
//! Refuses: everything but text and zipped spreadsheets, saying which kind it looks like and how
//! to save it.
use crate::Source;
use crate::fault::{Fault, Wrong};
use crate::words::{Words, words};
use encoding_rs::{Encoding, UTF_16BE, UTF_16LE, WINDOWS_1252};
use std::borrow::Cow;
use text::keys::checked as k;

/// Largest plan that is read: 4 MiB.
pub(crate) const PLAN_BYTES_MAX: usize = 4 << 20;

/// What every refused kind is told to become.
pub(crate) const SAVE_AS: Words = words!(k::SAVE_IT_AS_XLSX_ODS);

/// A kind that is read.
#[derive(Debug)]
pub(crate) enum FileKind<'s> {
    /// Text, decoded, its byte-order mark gone.
    Text(Cow<'s, str>),
    /// A zip archive, which XLSX and ODS are.
    Zipped,
}

/// Tells the kind of a plan's file, and decodes text.
pub(crate) fn kind(source: Source<'_>) -> Result<FileKind<'_>, Box<Fault>> {
    let bytes = source.text;
    let whole = |read: Words, right: Words| {
        Err(Box::new(Fault::whole(
            source.name,
            Wrong::plain(read, right),
        )))
    };
    if bytes.len() > PLAN_BYTES_MAX {
        let read = words!(k::MORE_BYTES_THAN_THE_MOST, PLAN_BYTES_MAX);
        return whole(read, words!(k::SPLIT_THE_PLAN_OR_DELETE));
    }
    if bytes.starts_with(b"PK\x03\x04") || bytes.starts_with(b"PK\x05\x06") {
        return Ok(FileKind::Zipped);
    }
    if let Some(kind) = other_kind(bytes) {
        return whole(kind, SAVE_AS);
    }
    text(bytes).map(FileKind::Text).map_err(|(read, row)| {
        Box::new(Fault {
            row,
            ..Fault::whole(source.name, Wrong::plain(read, SAVE_AS))
        })
    })
}

/// Names a kind that is neither text nor a zip archive.
fn other_kind(bytes: &[u8]) -> Option<Words> {
    const SIGNS: [(&[u8], Words); 4] = [
        (b"\xd0\xcf\x11\xe0", words!(k::A_BINARY_SPREADSHEET_SUCH_AS)),
        (b"%PDF", words!(k::A_PDF)),
        (b"{\\rtf", words!(k::A_WORD_PROCESSOR_S_TEXT)),
        (b"<?xml", words!(k::XML_NOT_A_PLAN)),
    ];
    let sign = SIGNS.into_iter().find(|(sign, _)| bytes.starts_with(sign));
    sign.map(|(_, kind)| kind)
}

/// What is wrong with a text, and in which row.
type Unreadable = (Words, Option<usize>);

/// Decodes a text: by its byte-order mark, else as UTF-8, else as UTF-16 where the zeros of
/// Latin letters show it, else as Windows-1252.
fn text(bytes: &[u8]) -> Result<Cow<'_, str>, Unreadable> {
    if let Some((encoding, mark)) = Encoding::for_bom(bytes) {
        let rest = bytes.get(mark..).unwrap_or_default();
        return decode(encoding, rest);
    }
    if bytes.contains(&0) {
        return match wide(bytes) {
            Some(encoding) => decode(encoding, bytes),
            None => Err((words!(k::ZEROS_BETWEEN_THE_LETTERS_NO), None)),
        };
    }
    match std::str::from_utf8(bytes) {
        Ok(text) => Ok(Cow::Borrowed(text)),
        Err(fault) => {
            let before = bytes.get(..fault.valid_up_to()).unwrap_or_default();
            let row = before.split(|b| *b == b'\n').count();
            let (text, _) = WINDOWS_1252.decode_without_bom_handling(bytes);
            // Bytes that Windows-1252 does not use become controls there.
            if text.contains(|c: char| ('\u{80}'..='\u{9f}').contains(&c)) {
                return Err((words!(k::TEXT_THAT_IS_NEITHER_UTF), Some(row)));
            }
            Ok(text)
        }
    }
}

fn decode<'b>(encoding: &'static Encoding, bytes: &'b [u8]) -> Result<Cow<'b, str>, Unreadable> {
    let text = encoding.decode_without_bom_handling_and_without_replacement(bytes);
    match text {
        Some(text) if !text.contains('\0') => Ok(text),
        _ => Err((words!(k::TEXT_WHOSE_LETTERS_BREAK_OFF), None)),
    }
}

/// UTF-16 without a mark, where most letters are Latin: every second byte is zero.
fn wide(bytes: &[u8]) -> Option<&'static Encoding> {
    let zeros = |odd: usize| {
        let ours = bytes.iter().skip(odd).step_by(2);
        ours.filter(|byte| **byte == 0).count()
    };
    let half = bytes.len() / 2;
    if !bytes.len().is_multiple_of(2) || half == 0 {
        return None;
    }
    let (even, odd) = (zeros(0), zeros(1));
    if even == 0 && odd * 10 >= half * 7 {
        Some(UTF_16LE)
    } else if odd == 0 && even * 10 >= half * 7 {
        Some(UTF_16BE)
    } else {
        None
    }
}
