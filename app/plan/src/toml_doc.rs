//! One TOML file under reading: its text, where its rows begin, the faults so far.
//!
//! Refuses: files over [`FILE_BYTES_MAX`], text that is not UTF-8. Broken TOML is read as far as
//! it goes, so that its other faults are told in the same breath.
use crate::Source;
use crate::fault::{Column, Fault, Weight, Wrong, quote};
use crate::nearest::{fold, hint};
use std::collections::{BTreeMap, BTreeSet};
use std::ops::Range;
use toml::Spanned;
use toml::de::DeTable;

/// Largest TOML file that is read: 1 MiB, some thousand lifters.
pub(crate) const FILE_BYTES_MAX: usize = 1 << 20;

/// A file under reading.
pub(crate) struct Doc<'s> {
    file: &'s str,
    text: &'s str,
    row_starts: Vec<usize>,
    faults: Vec<Fault>,
    /// Rows that are no TOML: what was made of them is not told again.
    broken: BTreeSet<usize>,
}

impl<'s> Doc<'s> {
    /// Opens a file; `Err` when there is no text to read at all.
    pub(crate) fn open(source: Source<'s>) -> Result<(Self, Spanned<DeTable<'s>>), Vec<Fault>> {
        let bytes = source.text;
        let whole = |read, right| Fault::whole(source.name, Wrong::plain(read, right));
        if bytes.len() > FILE_BYTES_MAX {
            let read = format!(
                "{} bytes, more than the most, {FILE_BYTES_MAX}",
                bytes.len()
            );
            return Err(vec![whole(read, "split it or shorten it")]);
        }
        let text = std::str::from_utf8(bytes).map_err(|fault| {
            let rows = bytes[..fault.valid_up_to()].split(|b| *b == b'\n').count();
            let read = "a character that is not UTF-8 text";
            vec![Fault {
                row: Some(rows),
                ..whole(read.to_owned(), "save the file as UTF-8")
            }]
        })?;
        let text = text.strip_prefix('\u{feff}').unwrap_or(text);
        let breaks = text.match_indices('\n').map(|(at, _)| at + 1);
        let mut doc = Self {
            file: source.name,
            text,
            row_starts: std::iter::once(0).chain(breaks).collect(),
            faults: Vec::new(),
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
        self.faults.push(Fault {
            file: self.file.to_owned(),
            row: Some(row),
            column: Some(Column {
                number: before.chars().count() + 1,
                name: None,
            }),
            read: wrong.read,
            right: wrong.right,
            weight,
        });
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
    pub(crate) fn close(mut self) -> Vec<Fault> {
        self.faults.sort_by_key(Fault::place);
        self.faults
    }
}

/// Words for what the TOML parser found.
fn broken(raw: Option<&str>, message: &str) -> Wrong {
    let (what, expected) = message.split_once(", expected ").unwrap_or((message, ""));
    let right = match (what, expected) {
        ("duplicate key", _) => String::from("keep one of them"),
        ("string values must be quoted", _) => {
            format!("write {}", quote(raw.unwrap_or_default().trim()))
        }
        (_, "") => String::from("see that keys, quotes and brackets are whole"),
        _ => format!("write {expected} there"),
    };
    let raw = raw.unwrap_or_default().trim();
    if raw.is_empty() {
        Wrong::plain(format!("broken TOML: {what}"), right)
    } else {
        Wrong::value(raw, &format!("broken TOML: {what}"), right)
    }
}

/// The names of one kind of thing that are known so far.
#[derive(Debug, Clone)]
pub(crate) struct Known {
    thing: &'static str,
    names: Vec<String>,
    rows: BTreeMap<String, usize>,
    /// False when some names could not be read, so that an unknown one proves nothing.
    complete: bool,
}

impl Known {
    /// Nothing known yet of "rack", "bar" and so on.
    pub(crate) const fn none(thing: &'static str) -> Self {
        Self {
            thing,
            names: Vec::new(),
            rows: BTreeMap::new(),
            complete: true,
        }
    }

    /// Nothing known, and nothing to be told about it.
    pub(crate) const fn open(thing: &'static str) -> Self {
        let mut open = Self::none(thing);
        open.complete = false;
        open
    }

    /// These names, from somewhere that is whole.
    pub(crate) fn of<'n>(thing: &'static str, names: impl Iterator<Item = &'n str>) -> Self {
        let mut known = Self::none(thing);
        known.names.extend(names.map(str::to_owned));
        known
    }

    /// Adds a name of this file, or `None` when it could not be read; tells a second one.
    pub(crate) fn add(&mut self, doc: &mut Doc<'_>, name: Option<&str>, at: &Range<usize>) {
        let Some(name) = name else {
            self.complete = false;
            return;
        };
        let row = doc.row(at.start);
        if let Some(first) = self.rows.insert(fold(name), row) {
            let right = format!("give each {} a name of its own", self.thing);
            let what = format!("a name that row {first} has already");
            doc.wrong(at, Wrong::value(name, &what, right));
            return;
        }
        self.names.push(name.to_owned());
    }

    /// Adds names that come with the program, where the file has not named them already.
    pub(crate) fn also<'n>(&mut self, names: impl Iterator<Item = &'n str>) {
        for name in names {
            if !self.rows.contains_key(&fold(name)) {
                self.names.push(name.to_owned());
            }
        }
    }

    /// From here on an unknown name proves nothing.
    pub(crate) fn leave_open(&mut self) {
        self.complete = false;
    }

    /// The proper form of a name.
    pub(crate) fn find(&self, text: &str) -> Result<String, Wrong> {
        let folded = fold(text);
        if let Some(name) = self.names.iter().find(|name| fold(name) == folded) {
            return Ok(name.clone());
        }
        // Without any name the lack of them is the fault, and told already.
        if !self.complete || self.names.is_empty() {
            return Ok(text.trim().to_owned());
        }
        let names: Vec<_> = self.names.iter().map(String::as_str).collect();
        let what = format!("no {} of that name", self.thing);
        Err(Wrong::value(text, &what, hint(text, &names)))
    }
}

/// Longest name of anything, in characters: what fits on a tile.
const NAME_MAX: usize = 40;

/// Reads a name: some letters, no line breaks, at most [`NAME_MAX`] characters.
pub(crate) fn name(text: &str) -> Result<String, Wrong> {
    words(text, NAME_MAX)
}

/// Reads a line of words of at most `most` characters.
pub(crate) fn words(text: &str, most: usize) -> Result<String, Wrong> {
    let right = || format!("write from 1 to {most} characters on one line");
    let words = text.trim();
    let length = words.chars().count();
    if length == 0 {
        Err(Wrong::plain("an empty text", right()))
    } else if length > most {
        let what = format!("{length} characters, more than the most, {most}");
        Err(Wrong::value(text, &what, right()))
    } else if words.chars().any(char::is_control) {
        Err(Wrong::value(
            text,
            "with a line break or another control character",
            right(),
        ))
    } else {
        Ok(words.to_owned())
    }
}

/// Reads one of a few words.
pub(crate) fn choice<T: Copy>(text: &str, choices: &[(&str, T)]) -> Result<T, Wrong> {
    let squeezed = crate::nearest::squeeze(text);
    let found = choices
        .iter()
        .find(|(word, _)| crate::nearest::squeeze(word) == squeezed);
    found.map(|(_, value)| *value).ok_or_else(|| {
        let words: Vec<_> = choices.iter().map(|(word, _)| *word).collect();
        let right = format!("write {}", crate::nearest::one_of(&words));
        Wrong {
            read: format!("{}, not one of the words for it", quote(text)),
            right,
        }
    })
}
