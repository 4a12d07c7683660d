//! The names of one kind of thing that are known so far, and what to say of one that is not.
//!
//! Refuses: a name twice, whatever its case; to call a name unknown when some could not be read.
use crate::fault::{Wrong, quote};
use crate::nearest::{fold, hint, part_of, squeeze};
use crate::toml_doc::Doc;
use crate::words::{Term, words};
use std::cell::Cell;
use std::collections::BTreeMap;
use std::collections::btree_map::Entry;
use std::ops::Range;
use text::keys::checked as k;

/// The names of one kind of thing that are known so far.
#[derive(Debug, Clone)]
pub(crate) struct Known {
    thing: Term,
    names: Vec<String>,
    /// Each name as it is compared: its place in `names`, and its row in this file.
    folded: BTreeMap<String, (usize, Option<usize>)>,
    /// The same without spaces and hyphens; `None` where two names read alike.
    loose: BTreeMap<String, Option<usize>>,
    /// False when some names could not be read, so that an unknown one proves nothing.
    complete: bool,
    /// How many names may still be compared for hints.
    compare: Cell<usize>,
}

/// Letters that a name must have to be known without its hyphens and spaces.
const LOOSE_LEAST: usize = 4;

/// Most names that are compared for the hints of one file: a long plan of unknown names against
/// hundreds of lifters would keep people waiting for minutes.
const COMPARED_MAX: usize = 100_000;

impl Known {
    /// Nothing known yet of "rack", "bar" and so on.
    pub(crate) const fn none(thing: Term) -> Self {
        Self {
            thing,
            names: Vec::new(),
            folded: BTreeMap::new(),
            loose: BTreeMap::new(),
            complete: true,
            compare: Cell::new(COMPARED_MAX),
        }
    }

    /// Nothing known, and nothing to be told about it.
    pub(crate) const fn open(thing: Term) -> Self {
        let mut open = Self::none(thing);
        open.complete = false;
        open
    }

    /// These names, from somewhere that is whole.
    pub(crate) fn of<'n>(thing: Term, names: impl Iterator<Item = &'n str>) -> Self {
        let mut known = Self::none(thing);
        known.also(names);
        known
    }

    /// Adds a name of this file, or `None` when it could not be read; tells a second one.
    pub(crate) fn add(&mut self, doc: &mut Doc<'_>, name: Option<&str>, at: &Range<usize>) {
        let Some(name) = name else {
            self.complete = false;
            return;
        };
        let row = doc.row(at.start);
        let place = (self.names.len(), Some(row));
        if let Some((_, Some(first))) = self.folded.insert(fold(name), place) {
            let right = words!(k::GIVE_EACH_A_NAME_OF, self.thing);
            let what = words!(k::A_NAME_THAT_ROW_HAS, first);
            doc.wrong(at, Wrong::value(name, &what, right));
        }
        self.loosen(name, self.names.len());
        self.names.push(name.to_owned());
    }

    /// Adds names from elsewhere, where the file has not named them already.
    pub(crate) fn also<'n>(&mut self, names: impl Iterator<Item = &'n str>) {
        for name in names {
            let place = (self.names.len(), None);
            if let Entry::Vacant(vacant) = self.folded.entry(fold(name)) {
                vacant.insert(place);
                self.loosen(name, place.0);
                self.names.push(name.to_owned());
            }
        }
    }

    /// Adds another name for one that is known, of this file; tells one that is taken.
    pub(crate) fn call(&mut self, doc: &mut Doc<'_>, short: &str, whole: &str, at: &Range<usize>) {
        let stands = self.folded.get(&fold(short)).map(|(place, _)| *place);
        let place = self.folded.get(&fold(whole)).map(|(place, _)| *place);
        match (place, stands) {
            (Some(place), Some(stands)) if place != stands => {
                let what = words!(k::A_SHORT_NAME_THAT_HAS, &self.names[stands]);
                let right = words!(k::GIVE_IT_TO_ONE_OF);
                doc.wrong(at, Wrong::value(short, what, right));
            }
            (Some(place), None) => {
                self.folded.insert(fold(short), (place, None));
                self.loosen(short, place);
            }
            (Some(_) | None, _) => {}
        }
    }

    /// Adds another name for one that is known, from somewhere that is whole.
    pub(crate) fn call_of(&mut self, short: &str, whole: &str) {
        if let Some((place, _)) = self.folded.get(&fold(whole)).copied() {
            self.folded.entry(fold(short)).or_insert((place, None));
            self.loosen(short, place);
        }
    }

    /// The proper form of a name that is known for certain; hyphens, spaces and the ending of a
    /// plural do not count.
    pub(crate) fn lookup(&self, text: &str) -> Option<String> {
        let name = |place: usize| self.names[place].clone();
        if let Some((place, _)) = self.folded.get(&fold(text)) {
            return Some(name(*place));
        }
        let loose = squeeze(text);
        if loose.chars().count() < LOOSE_LEAST || !loose.contains(char::is_alphabetic) {
            return None;
        }
        let single = loose.strip_suffix('s').unwrap_or(&loose);
        let found = self.loose.get(&loose).or_else(|| self.loose.get(single))?;
        found.map(name)
    }

    /// Notes how a name reads without its spaces and hyphens; where two read alike, neither counts.
    fn loosen(&mut self, text: &str, place: usize) {
        let known = self.loose.entry(squeeze(text)).or_insert(Some(place));
        if *known != Some(place) {
            *known = None;
        }
    }

    /// From here on an unknown name proves nothing.
    pub(crate) fn leave_open(&mut self) {
        self.complete = false;
    }

    /// The proper form of a name.
    pub(crate) fn find(&self, text: &str) -> Result<String, Wrong> {
        if let Some(name) = self.lookup(text) {
            return Ok(name);
        }
        // Without any name the lack of them is the fault, and told already.
        if !self.complete || self.names.is_empty() {
            return Ok(text.trim().to_owned());
        }
        let what = words!(k::NO_OF_THAT_NAME, self.thing);
        let Some(left) = self.compare.get().checked_sub(self.names.len()) else {
            let right = words!(k::WRITE_THE_NAME_OF_A, self.thing);
            return Err(Wrong::value(text, &what, right));
        };
        self.compare.set(left);
        let names: Vec<_> = self.names.iter().map(String::as_str).collect();
        let short = [k::LIFT, k::LIFTER].contains(&self.thing.0);
        if let Some(name) = part_of(text, &names).filter(|_| short) {
            let right = words!(
                k::WRITE_OR_GIVE_IT_THE,
                quote(name),
                format!("also = [{}]", quote(text.trim()))
            );
            return Err(Wrong::value(text, &what, right));
        }
        Err(Wrong::value(text, &what, hint(text, &names)))
    }
}
