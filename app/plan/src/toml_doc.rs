//! One TOML file under reading: its text, where its rows begin, the faults so far.
//!
//! Refuses: files over [`FILE_BYTES_MAX`], text that is not UTF-8. Broken TOML is read as far as
//! it goes, so that its other faults are told in the same breath.
use crate::Source;
use crate::fault::{Column, Fault, Weight, Wrong, quote};
use crate::gathered::Gathered;
use crate::words::{Words, words};
use std::collections::BTreeSet;
use std::ops::Range;
use text::keys::checked as k;
use toml::Spanned;
use toml::de::DeTable;

/// Largest TOML file that is read: 1 MiB, some thousand lifters.
pub(crate) const FILE_BYTES_MAX: usize = 1 << 20;

/// A file under reading.
pub(crate) struct Doc<'s> {
    file: &'s str,
    text: &'s str,
    row_starts: Vec<usize>,
    faults: Gathered,
    /// Rows that are no TOML: what was made of them is not told again.
    broken: BTreeSet<usize>,
}

impl<'s> Doc<'s> {
    /// Opens a file; `Err` when there is no text to read at all.
    pub(crate) fn open(source: Source<'s>) -> Result<(Self, Spanned<DeTable<'s>>), Vec<Fault>> {
        let bytes = source.text;
        let whole =
            |read: Words, right: Words| Fault::whole(source.name, Wrong::plain(read, right));
        if bytes.len() > FILE_BYTES_MAX {
            let read = words!(k::MORE_BYTES_THAN_THE_MOST, FILE_BYTES_MAX);
            return Err(vec![whole(read, words!(k::SPLIT_IT_OR_SHORTEN_IT))]);
        }
        let text = std::str::from_utf8(bytes).map_err(|fault| {
            let rows = bytes[..fault.valid_up_to()].split(|b| *b == b'\n').count();
            let read = words!(k::A_CHARACTER_THAT_IS_NOT);
            vec![Fault {
                row: Some(rows),
                ..whole(read, words!(k::SAVE_THE_FILE_AS_UTF))
            }]
        })?;
        let text = text.strip_prefix('\u{feff}').unwrap_or(text);
        let breaks = text.match_indices('\n').map(|(at, _)| at + 1);
        let mut doc = Self {
            file: source.name,
            text,
            row_starts: std::iter::once(0).chain(breaks).collect(),
            faults: Gathered::default(),
            broken: BTreeSet::new(),
        };
        let (root, errors) = DeTable::parse_recoverable(text);
        for error in errors {
            let at = error.span().unwrap_or(0..0);
            doc.wrong(&at, broken(text.get(at.clone()), error.message()));
            doc.broken.insert(doc.row(at.start));
        }
        Ok((doc, root))
    }

    /// Row, from 1, of a byte of the text.
    pub(crate) fn row(&self, at: usize) -> usize {
        self.row_starts.partition_point(|start| *start <= at)
    }

    /// Tells a fault; silent about a row that is already told to be no TOML.
    pub(crate) fn wrong(&mut self, at: &Range<usize>, wrong: Wrong) {
        self.tell(at, wrong, Weight::Wrong);
    }

    /// Tells something that may be right but seldom is.
    pub(crate) fn odd(&mut self, at: &Range<usize>, wrong: Wrong) {
        self.tell(at, wrong, Weight::Odd);
    }

    /// Tells that something is not there. Where the TOML is broken it may well be, unread.
    pub(crate) fn missing(&mut self, at: &Range<usize>, wrong: Wrong) {
        if self.broken.is_empty() {
            self.wrong(at, wrong);
        }
    }

    fn tell(&mut self, at: &Range<usize>, wrong: Wrong, weight: Weight) {
        let row = self.row(at.start);
        if self.broken.contains(&row) {
            return;
        }
        let start = self.row_starts[row - 1];
        let before = self.text.get(start..at.start).unwrap_or_default();
        let fault = || Fault {
            row: Some(row),
            column: Some(Column {
                number: before.chars().count() + 1,
                name: None,
            }),
            weight,
            ..Fault::whole(self.file, wrong)
        };
        self.faults.push(0, fault, weight);
    }

    /// The text as it stands in the file.
    pub(crate) fn raw(&self, at: &Range<usize>) -> &'s str {
        self.text.get(at.clone()).unwrap_or_default()
    }

    /// Whether some of the text was no TOML.
    pub(crate) fn is_broken(&self) -> bool {
        !self.broken.is_empty()
    }

    /// All faults, by row.
    pub(crate) fn close(self) -> Vec<Fault> {
        self.faults.close(self.file)
    }
}

/// Words for what the TOML parser found.
fn broken(raw: Option<&str>, message: &str) -> Wrong {
    let (what, expected) = message.split_once(", expected ").unwrap_or((message, ""));
    let right = match (what, expected) {
        ("duplicate key", _) => words!(k::KEEP_ONE_OF_THEM),
        ("string values must be quoted", _) => {
            words!(k::WRITE, quote(raw.unwrap_or_default().trim()))
        }
        (_, "") => words!(k::SEE_THAT_KEYS_QUOTES_AND),
        _ => words!(k::WRITE_THERE, expected),
    };
    let raw = raw.unwrap_or_default().trim();
    if raw.is_empty() {
        Wrong::plain(words!(k::BROKEN_TOML, what), right)
    } else {
        Wrong::value(raw, words!(k::BROKEN_TOML, what), right)
    }
}
