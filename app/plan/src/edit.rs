//! Writes one value into a TOML file, or takes one out, all else as it stood: comments, order,
//! spaces.
//!
//! Refuses: judging the value; whoever writes reads the whole file again afterwards.
mod list;
mod remove;

pub use list::push;
pub use remove::remove;

use crate::words::{Words, words};
use std::ops::Range;
use text::keys::checked as k;
use toml::Spanned;
use toml::de::{DeTable, DeValue};

/// One step of the way to a value.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Step<'a> {
    /// A key of a table.
    Name(&'a str),
    /// A place in a list, from 0.
    At(usize),
}

/// Where a value stands, or where it would go: with what before it and after it.
struct Place {
    at: Range<usize>,
    before: String,
    after: &'static str,
}

/// The text with `value` (as TOML writes it) at `path` of the entry with that table and name, or
/// of the file itself without one. An entry of a kind that has no name is known by its lifter, as
/// long as it names no lift. A key that is not there is written after the last one beside
/// it, or after the entry's name. The text must be TOML, which a file in force is.
///
/// # Errors
/// One sentence, when there is no such entry, no such place in a list, or the text is no TOML.
pub fn edit(
    text: &str,
    entry: Option<(&str, &str)>,
    path: &[Step<'_>],
    value: &str,
) -> Result<String, Words> {
    let root = parse(text)?;
    let table = table_of(root.get_ref(), entry)?;
    let place = find(text, table, entry.map(|(table, _)| key_of(table)), path)?;
    let (head, tail) = (&text[..place.at.start], &text[place.at.end..]);
    Ok(format!(
        "{head}{}{value}{}{tail}",
        place.before, place.after
    ))
}

/// The entry of a list of tables that has this name; one for all lifts, where it may have one.
fn named<'t>(root: &'t DeTable<'t>, table: &str, name: &str) -> Option<&'t DeTable<'t>> {
    let mut all = all_named(root, table, name);
    all.retain(|entry| key_of(table) == "name" || !entry.contains_key("lift"));
    all.into_iter().next()
}

/// The entries of a list of tables that have this name.
fn all_named<'t>(root: &'t DeTable<'t>, table: &str, name: &str) -> Vec<&'t DeTable<'t>> {
    let Some(DeValue::Array(list)) = root.get(table).map(Spanned::get_ref) else {
        return Vec::new();
    };
    let tables = list.iter().filter_map(|item| {
        let DeValue::Table(table) = item.get_ref() else {
            return None;
        };
        Some(table)
    });
    let key = key_of(table);
    let is = |entry: &&DeTable<'t>| {
        let found = entry.get(key).map(Spanned::get_ref);
        matches!(found, Some(DeValue::String(text)) if text.as_ref() == name)
    };
    tables.filter(is).collect()
}

/// The key by which the entries of a table are known.
#[must_use]
pub fn key_of(table: &str) -> &'static str {
    match table {
        "rule" | "split" => "lifter",
        _ => "name",
    }
}

/// The table of an entry, or that of the file itself.
fn table_of<'t>(
    root: &'t DeTable<'t>,
    entry: Option<(&str, &str)>,
) -> Result<&'t DeTable<'t>, Words> {
    let Some((table, name)) = entry else {
        return Ok(root);
    };
    named(root, table, name).ok_or_else(|| words!(k::THERE_IS_NO_CALLED_LOOK, table, name))
}

/// Whether the file has such an entry.
#[must_use]
pub fn has_entry(text: &str, table: &str, name: &str) -> bool {
    DeTable::parse(text).is_ok_and(|root| named(root.get_ref(), table, name).is_some())
}

fn parse(text: &str) -> Result<Spanned<DeTable<'_>>, Words> {
    DeTable::parse(text).map_err(|why| words!(k::NO_TOML, why.message()))
}

/// The text, if it means what was wanted: whatever the hand of its owner, nothing else changes.
fn proven(text: String, wanted: &toml::Table) -> Result<String, Words> {
    match text.parse::<toml::Table>() {
        Ok(read) if read == *wanted => Ok(text),
        _ => Err(words!(k::THE_FILE_IS_WRITTEN_IN)),
    }
}

/// What a file means, to be changed as its text is.
fn meaning(text: &str) -> Result<toml::Table, Words> {
    text.parse()
        .map_err(|why: toml::de::Error| words!(k::NO_TOML, why.message()))
}

/// The table of an entry in what a file means.
fn meant<'m>(
    root: &'m mut toml::Table,
    entry: Option<(&str, &str)>,
) -> Option<&'m mut toml::Table> {
    let Some((table, name)) = entry else {
        return Some(root);
    };
    let key = key_of(table);
    let is = |entry: &&mut toml::Value| {
        let named = entry.get(key).and_then(toml::Value::as_str) == Some(name);
        named && (key == "name" || entry.get("lift").is_none())
    };
    let list = root.get_mut(table)?.as_array_mut()?;
    list.iter_mut().find(is)?.as_table_mut()
}

/// Goes along the path as far as it leads.
fn find(
    text: &str,
    table: &DeTable<'_>,
    known_by: Option<&str>,
    path: &[Step<'_>],
) -> Result<Place, Words> {
    let mut table = table;
    let mut whole: Option<Range<usize>> = None;
    let mut list = None;
    for (nth, step) in path.iter().enumerate() {
        let rest = &path[nth..];
        let value = match (step, list.take()) {
            (Step::Name(key), None) => match table.get(*key) {
                Some(value) => value,
                None => return missing(text, table, whole, known_by.filter(|_| nth == 0), rest),
            },
            (Step::At(at), Some(items)) => {
                let items: &toml::de::DeArray<'_> = items;
                let item = items.get(*at);
                item.ok_or_else(|| words!(k::THERE_IS_NO_NUMBER_IN, *at))?
            }
            (Step::Name(_), Some(_)) | (Step::At(_), None) => {
                return Err(words!(k::THAT_WAY_LEADS_NOWHERE_IN));
            }
        };
        if nth + 1 == path.len() {
            return Ok(Place {
                at: value.span(),
                before: String::new(),
                after: "",
            });
        }
        if let DeValue::Table(inner) = value.get_ref() {
            whole = Some(value.span());
            table = inner;
        } else if let DeValue::Array(items) = value.get_ref() {
            list = Some(items);
        } else {
            return Err(words!(k::THAT_WAY_LEADS_NOWHERE_IN));
        }
    }
    Err(words!(k::A_WAY_NEEDS_AT_LEAST))
}

/// Where a key goes that is not there yet.
fn missing(
    text: &str,
    table: &DeTable<'_>,
    whole: Option<Range<usize>>,
    after: Option<&str>,
    rest: &[Step<'_>],
) -> Result<Place, Words> {
    let mut keys = Vec::new();
    for step in rest {
        match step {
            Step::Name(key) => keys.push(*key),
            Step::At(_) => return Err(words!(k::THERE_IS_NO_SUCH_LIST)),
        }
    }
    let keys = keys.join(".");
    let ends = table.values().map(|value| value.span().end);
    let known_by = after
        .and_then(|key| table.get(key))
        .map(|name| name.span().end);
    let inline = whole.is_some_and(|at| text[at].starts_with('{'));
    let end = if after.is_some() {
        known_by
    } else {
        ends.max()
    };
    let Some(end) = end else {
        // An empty file, or one whose own keys have to come first.
        return Ok(Place {
            at: 0..0,
            before: format!("{keys} = "),
            after: "\n",
        });
    };
    if inline {
        return Ok(Place {
            at: end..end,
            before: format!(", {keys} = "),
            after: "",
        });
    }
    let line = text[end..].find('\n').map_or(text.len(), |at| end + at);
    Ok(Place {
        at: line..line,
        before: format!("\n{keys} = "),
        after: "",
    })
}
