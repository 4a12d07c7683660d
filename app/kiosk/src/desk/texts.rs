//! The texts of the gym's files while somebody at the desk changes them.
//!
//! Refuses: writing them anywhere; that comes once all of them were read again without fault.
use crate::error::KioskError;
use crate::folder::GYM_FILES;
use crate::owner::Owner;
use domain::Gym;
use domain::needs::Thing;
use plan::edit::{Step, edit, has_entry, key_of, push, remove};
use plan::{Words, words};
use text::keys::checked as k;
use view::desk::{Change, Edit, Key};

/// Tables whose entries are begun where one is to be changed that is not there yet.
const BEGUN: [&str; 2] = ["programme", "rule"];

/// The texts, in the order in which the files are read, and which of them differ.
#[derive(Debug)]
pub(super) struct Texts {
    texts: [(&'static str, String); 4],
    changed: [bool; 4],
}

impl Texts {
    /// As they were last taken.
    pub(super) fn of(owner: &Owner) -> Self {
        let text = |name: &'static str| {
            let kept = owner.state().files.get(name).cloned();
            (name, kept.unwrap_or_default())
        };
        Self {
            texts: GYM_FILES.map(text),
            changed: [false; 4],
        }
    }

    /// All of them.
    pub(super) fn all(&self) -> &[(&'static str, String)] {
        &self.texts
    }

    /// Those that differ.
    pub(super) fn changed(&self) -> impl Iterator<Item = (&'static str, &str)> {
        let all = self.texts.iter().zip(self.changed);
        all.filter(|(_, changed)| *changed)
            .map(|((name, text), _)| (*name, text.as_str()))
    }

    fn text(&self, file: &str) -> &str {
        let found = self.texts.iter().find(|(name, _)| *name == file);
        found.map_or("", |(_, text)| text)
    }

    fn put(&mut self, file: &str, text: String) {
        if let Some(at) = self.texts.iter().position(|(name, _)| *name == file) {
            self.changed[at] |= self.texts[at].1 != text;
            self.texts[at].1 = text;
        }
    }

    /// A gym anew; what named its racks and lifters goes too.
    pub(super) fn begin(&mut self, gym: &str, lifters: &str) {
        let kiosk = without(self.text(GYM_FILES[2]), "racks");
        let new = [gym.to_owned(), lifters.to_owned(), kiosk, String::new()];
        for (file, text) in GYM_FILES.into_iter().zip(new) {
            self.put(file, text);
        }
        self.changed = [true; 4];
    }

    /// Makes changes, one after the other.
    ///
    /// # Errors
    /// [`KioskError::Told`] when a file does not have what is to be changed.
    pub(super) fn change(&mut self, changes: &[Change]) -> Result<(), KioskError> {
        for change in changes {
            match change {
                Change::Set(it) => {
                    self.with(it, |text, entry, path| edit(text, entry, path, &it.value))?;
                }
                Change::Drop(it) => self.with(it, remove)?,
                Change::Push(it) => self.with(it, |text, entry, path| match path {
                    [Step::Name(key)] => push(text, entry, key, &it.value),
                    _ => Err(words!(k::A_LIST_HAS_ONE_KEY)),
                })?,
                Change::Add { file, entry } => self.add(file, entry),
            }
        }
        Ok(())
    }

    fn add(&mut self, file: &str, entry: &str) {
        let text = format!("{}\n{entry}", self.text(file).trim_end());
        self.put(file, text);
    }

    fn with(
        &mut self,
        it: &Edit,
        change: impl FnOnce(&str, Option<(&str, &str)>, &[Step<'_>]) -> Result<String, Words>,
    ) -> Result<(), KioskError> {
        let entry = it
            .entry
            .as_ref()
            .map(|(table, name)| (*table, name.as_str()));
        if let Some((table, name)) = entry
            && BEGUN.contains(&table)
            && !has_entry(self.text(it.file), table, name)
        {
            let begun = format!("\n[[{table}]]\n{} = {name:?}\n", key_of(table));
            self.add(it.file, &begun);
        }
        let step = |key: &Key| match key {
            Key::Name(name) => Step::Name(name),
            Key::At(at) => Step::At(*at),
        };
        let path: Vec<Step<'_>> = it.path.iter().map(step).collect();
        let text = change(self.text(it.file), entry, &path).map_err(KioskError::Told)?;
        self.put(it.file, text);
        Ok(())
    }

    /// Takes a thing out, with all that is about it alone; the record keeps what was done.
    ///
    /// # Errors
    /// [`KioskError::Told`] when a file is written so that it cannot be taken out.
    pub(super) fn remove(&mut self, thing: &Thing, gym: &Gym) -> Result<(), KioskError> {
        match thing {
            Thing::Lifter(name) => self.remove_lifter(name, gym),
            Thing::Rack(name) => {
                let stands_there = |bar: &&domain::Bar| bar.rack.as_ref() == Some(name);
                for bar in gym.bars.iter().filter(stands_there) {
                    let key = [Step::Name("rack")];
                    self.cut("gym.toml", Some(("bar", &bar.name)), &key)?;
                }
                self.not_shown(name)?;
                self.cut("gym.toml", Some(("rack", name)), &[])
            }
            Thing::Bar(name) => self.cut("gym.toml", Some(("bar", name)), &[]),
            Thing::Plate { set, at } => {
                let path = [Step::Name("plates"), Step::At(*at)];
                self.cut("gym.toml", Some(("plate_set", set)), &path)
            }
        }
    }

    fn cut(
        &mut self,
        file: &'static str,
        entry: Option<(&str, &str)>,
        path: &[Step<'_>],
    ) -> Result<(), KioskError> {
        let text = remove(self.text(file), entry, path).map_err(KioskError::Told)?;
        self.put(file, text);
        Ok(())
    }

    /// A lifter goes out of the programmes and with the lines that are theirs alone.
    fn remove_lifter(&mut self, name: &str, gym: &Gym) -> Result<(), KioskError> {
        let file = "programme.toml";
        for programme in &gym.coaching.programmes {
            let entry = Some(("programme", programme.name.as_str()));
            let lifters = programme.lifters.iter().map(String::as_str);
            self.cut_items(file, entry, "lifters", lifters, name)?;
            let begins = programme.begins.iter().map(|begin| begin.lifter.as_str());
            self.cut_items(file, entry, "begins", begins, name)?;
        }
        let of = |line: Option<&String>| line.is_some_and(|lifter| lifter == name);
        let rules = gym
            .coaching
            .rules
            .iter()
            .filter(|rule| of(rule.lifter.as_ref()));
        let splits = gym
            .coaching
            .splits
            .iter()
            .filter(|split| of(split.lifter.as_ref()));
        let lines = rules.map(|_| "rule").chain(splits.map(|_| "split"));
        for table in lines.collect::<Vec<_>>() {
            self.cut(file, Some((table, name)), &[])?;
        }
        self.cut("lifters.toml", Some(("lifter", name)), &[])
    }

    /// Takes the items of a list that are `name` out, the last one first.
    fn cut_items<'n>(
        &mut self,
        file: &'static str,
        entry: Option<(&str, &str)>,
        key: &'static str,
        items: impl DoubleEndedIterator<Item = &'n str> + ExactSizeIterator,
        name: &str,
    ) -> Result<(), KioskError> {
        for (at, item) in items.enumerate().rev() {
            if item == name {
                self.cut(file, entry, &[Step::Name(key), Step::At(at)])?;
            }
        }
        Ok(())
    }

    /// A rack is no longer among those shown; with none left all are.
    fn not_shown(&mut self, rack: &str) -> Result<(), KioskError> {
        let file = GYM_FILES[2];
        let source = plan::Source {
            name: file,
            text: self.text(file).as_bytes(),
        };
        let shown = plan::kiosk(source, None).ok().and_then(|kiosk| kiosk.racks);
        let shown = shown.unwrap_or_default();
        if !shown.iter().any(|name| name.eq_ignore_ascii_case(rack)) {
            return Ok(());
        }
        if shown.len() == 1 {
            return self.cut(file, None, &[Step::Name("racks")]);
        }
        let names = shown
            .iter()
            .map(|name| match name.eq_ignore_ascii_case(rack) {
                true => rack,
                false => name.as_str(),
            });
        let names: Vec<&str> = names.collect();
        self.cut_items(file, None, "racks", names.into_iter(), rack)
    }
}

/// A text without the line of one key.
fn without(text: &str, key: &str) -> String {
    let is = |line: &str| {
        line.split_once('=')
            .is_some_and(|(found, _)| found.trim() == key)
    };
    let kept: Vec<&str> = text.lines().filter(|line| !is(line)).collect();
    kept.join("\n") + "\n"
}
