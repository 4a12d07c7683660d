//! One table of a TOML file, read key by key against the list of keys that it may have.
//!
//! Refuses: unknown keys, missing keys, values of another kind; each is told and reading goes on.
use crate::fault::{Wrong, quote};
use crate::fields::{Field, Need, Table};
use crate::nearest::hint;
use crate::quantity;
use crate::toml_doc::Doc;
use crate::words::{Term, Words, term, words};
use std::fmt::Display;
use std::ops::{Range, RangeInclusive};
use text::keys::checked as k;
use toml::Spanned;
use toml::de::{DeTable, DeValue};

/// A table under reading.
pub(crate) struct Entry<'t> {
    table: &'t DeTable<'t>,
    at: Range<usize>,
    kind: &'static Table,
}

impl<'t> Entry<'t> {
    /// Opens a table and tells its unknown keys.
    pub(crate) fn open(
        doc: &mut Doc<'_>,
        table: &'t DeTable<'t>,
        at: Range<usize>,
        kind: &'static Table,
    ) -> Self {
        let known: Vec<_> = kind.fields.iter().map(|field| field.key).collect();
        for key in table.keys() {
            let text = key.get_ref();
            if !known.contains(&text.as_ref()) {
                let what = words!(k::A_KEY_THAT_DOES_NOT, kind.a);
                doc.wrong(&key.span(), Wrong::value(text, &what, hint(text, &known)));
            }
        }
        Self { table, at, kind }
    }

    /// Opens a value that must be a table.
    pub(crate) fn of(
        doc: &mut Doc<'_>,
        value: &'t Spanned<DeValue<'t>>,
        kind: &'static Table,
    ) -> Option<Self> {
        if let DeValue::Table(table) = value.get_ref() {
            return Some(Self::open(doc, table, value.span(), kind));
        }
        let right = words!(k::WRITE_AS, kind.a, kind.form);
        doc.wrong(&value.span(), not(doc, value, kind.a, right));
        None
    }

    /// Where the table begins.
    pub(crate) const fn at(&self) -> &Range<usize> {
        &self.at
    }

    /// Where a key's value stands; the table's place when it has none.
    pub(crate) fn at_value(&self, key: &str) -> Range<usize> {
        let value = self.table.get(key);
        value.map_or_else(|| self.at.clone(), Spanned::span)
    }

    /// Whether the key is there.
    pub(crate) fn has(&self, key: &str) -> bool {
        self.table.contains_key(key)
    }

    /// Whether the key is there with a list of nothing.
    pub(crate) fn is_empty_list(&self, key: &str) -> bool {
        let value = self.table.get(key).map(Spanned::get_ref);
        matches!(value, Some(DeValue::Array(list)) if list.is_empty())
    }

    /// The value of a key; tells it when it is needed and not there.
    fn value(&self, doc: &mut Doc<'_>, key: &str) -> Option<&'t Spanned<DeValue<'t>>> {
        let value = self.table.get(key);
        let field = self.kind.fields.iter().find(|field| field.key == key);
        let field = field.expect("every key that is read is in the table's list of keys");
        if value.is_none() && matches!(field.need, Need::Always) {
            let right = advice(field);
            let read = words!(k::WITHOUT, self.kind.a, quote(key));
            doc.missing(&self.at, Wrong::plain(read, right));
        }
        value
    }

    /// The example of a key, for a fault's advice.
    fn example(&self, key: &str) -> Words {
        let field = self.kind.fields.iter().find(|field| field.key == key);
        field.map_or_else(|| Words::plain(""), advice)
    }

    /// Reads a text.
    pub(crate) fn text<T>(
        &self,
        doc: &mut Doc<'_>,
        key: &str,
        read: impl FnOnce(&str) -> Result<T, Wrong>,
    ) -> Option<T> {
        let value = self.value(doc, key)?;
        text(doc, value, || self.example(key), read)
    }

    /// Reads a whole number.
    pub(crate) fn whole<T>(
        &self,
        doc: &mut Doc<'_>,
        key: &str,
        range: &RangeInclusive<T>,
    ) -> Option<T>
    where
        T: TryFrom<i64> + Display + PartialOrd,
    {
        let value = self.value(doc, key)?;
        let read = if let DeValue::Integer(number) = value.get_ref()
            && number.radix() == 10
        {
            quantity::whole(number.as_str(), range)
        } else {
            Err(not(doc, value, term!(k::A_WHOLE_NUMBER), self.example(key)))
        };
        settle(doc, value, read)
    }

    /// Reads true or false.
    pub(crate) fn flag(&self, doc: &mut Doc<'_>, key: &str, default: bool) -> bool {
        let Some(value) = self.value(doc, key) else {
            return default;
        };
        if let DeValue::Boolean(flag) = value.get_ref() {
            return *flag;
        }
        doc.wrong(
            &value.span(),
            not(doc, value, term!(k::TRUE_OR_FALSE), self.example(key)),
        );
        default
    }

    /// The values of a list of at most `most`; none when it is absent.
    pub(crate) fn list(
        &self,
        doc: &mut Doc<'_>,
        key: &str,
        most: usize,
    ) -> &'t [Spanned<DeValue<'t>>] {
        let Some(value) = self.value(doc, key) else {
            return &[];
        };
        let DeValue::Array(list) = value.get_ref() else {
            doc.wrong(
                &value.span(),
                not(doc, value, term!(k::A_LIST), self.example(key)),
            );
            return &[];
        };
        if list.len() > most {
            let read = words!(k::ENTRIES_UNDER_MORE_THAN_THE, list.len(), quote(key), most);
            doc.wrong(&value.span(), Wrong::plain(read, words!(k::LEAVE_SOME_OUT)));
        }
        list.get(..list.len().min(most)).unwrap_or_default()
    }

    /// Reads a list of texts.
    pub(crate) fn texts<T>(
        &self,
        doc: &mut Doc<'_>,
        key: &str,
        most: usize,
        read: impl Fn(&str) -> Result<T, Wrong>,
    ) -> Vec<T> {
        let list = self.list(doc, key, most).iter();
        list.filter_map(|value| text(doc, value, || self.example(key), &read))
            .collect()
    }

    /// The tables of a list such as `[[rack]]`.
    pub(crate) fn entries(
        &self,
        doc: &mut Doc<'_>,
        key: &str,
        most: usize,
        kind: &'static Table,
    ) -> Vec<Self> {
        let list = self.list(doc, key, most).iter();
        list.filter_map(|value| Self::of(doc, value, kind))
            .collect()
    }

    /// A table within this one.
    pub(crate) fn entry(&self, doc: &mut Doc<'_>, key: &str, kind: &'static Table) -> Option<Self> {
        let value = self.value(doc, key)?;
        Self::of(doc, value, kind)
    }

    /// The texts of a table with free keys, in the order of the file: key, its place, value.
    pub(crate) fn free<T>(
        &self,
        doc: &mut Doc<'_>,
        key: &str,
        read: impl Fn(&str) -> Result<T, Wrong>,
    ) -> Vec<(&'t str, Range<usize>, Option<T>)> {
        let Some(value) = self.value(doc, key) else {
            return Vec::new();
        };
        let DeValue::Table(table) = value.get_ref() else {
            doc.wrong(
                &value.span(),
                not(doc, value, term!(k::A_TABLE), self.example(key)),
            );
            return Vec::new();
        };
        let mut pairs: Vec<_> = table.iter().collect();
        pairs.sort_by_key(|(key, _)| key.span().start);
        let example = || self.example(key);
        let one = |(key, value): (&'t Spanned<_>, _)| {
            let name: &std::borrow::Cow<'_, str> = key.get_ref();
            (name.as_ref(), key.span(), text(doc, value, example, &read))
        };
        pairs.into_iter().map(one).collect()
    }
}

/// How a key is written.
fn advice(field: &Field) -> Words {
    if field.example.starts_with("[[") {
        words!(k::ADD, field.example)
    } else {
        words!(k::WRITE_KEY_AS_VALUE, field.key, field.example)
    }
}

/// Reads a value that must be a text.
fn text<T>(
    doc: &mut Doc<'_>,
    value: &Spanned<DeValue<'_>>,
    example: impl FnOnce() -> Words,
    read: impl FnOnce(&str) -> Result<T, Wrong>,
) -> Option<T> {
    let read = if let DeValue::String(text) = value.get_ref() {
        read(text)
    } else {
        Err(not(doc, value, term!(k::A_TEXT_IN_QUOTES), example()))
    };
    settle(doc, value, read)
}

/// Tells a fault where the value stands.
fn settle<T>(doc: &mut Doc<'_>, value: &Spanned<DeValue<'_>>, read: Result<T, Wrong>) -> Option<T> {
    read.map_err(|wrong| doc.wrong(&value.span(), wrong)).ok()
}

/// A value of another kind than wanted.
fn not(doc: &Doc<'_>, value: &Spanned<DeValue<'_>>, wanted: Term, right: Words) -> Wrong {
    let what = words!(k::NOT, wanted);
    match value.get_ref() {
        DeValue::String(text) => Wrong::value(text, words!(k::A_TEXT, what), right),
        DeValue::Array(_) => Wrong::plain(words!(k::A_LIST_OF, what), right),
        DeValue::Table(_) => Wrong::plain(words!(k::A_TABLE_OF, what), right),
        DeValue::Integer(_) | DeValue::Float(_) | DeValue::Boolean(_) | DeValue::Datetime(_) => {
            Wrong::value(doc.raw(&value.span()), &what, right)
        }
    }
}
