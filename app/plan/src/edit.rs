//! Writes one value into a TOML file, all else as it stood: comments, order, spaces.
//!
//! Refuses: judging the value; whoever writes reads the whole file again afterwards.
use std::ops::Range;
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
/// of the file itself without one. A key that is not there is written after the last one beside
/// it, or after the entry's name. The text must be TOML, which a file in force is.
///
/// # Errors
/// One sentence, when there is no such entry, no such place in a list, or the text is no TOML.
pub fn edit(
    text: &str,
    entry: Option<(&str, &str)>,
    path: &[Step<'_>],
    value: &str,
) -> Result<String, String> {
    let root = DeTable::parse(text).map_err(|why| format!("no TOML: {}", why.message()))?;
    let table = match entry {
        None => root.get_ref(),
        Some((table, name)) => named(root.get_ref(), table, name)
            .ok_or_else(|| format!("there is no {table} called \"{name}\"; look at the file"))?,
    };
    let place = find(text, table, entry.is_some(), path)?;
    let (head, tail) = (&text[..place.at.start], &text[place.at.end..]);
    Ok(format!(
        "{head}{}{value}{}{tail}",
        place.before, place.after
    ))
}

/// The entry of a list of tables that has this name.
fn named<'t>(root: &'t DeTable<'t>, table: &str, name: &str) -> Option<&'t DeTable<'t>> {
    let DeValue::Array(list) = root.get(table)?.get_ref() else {
        return None;
    };
    let tables = list.iter().filter_map(|item| {
        let DeValue::Table(table) = item.get_ref() else {
            return None;
        };
        Some(table)
    });
    let is = |table: &&DeTable<'t>| {
        let found = table.get("name").map(Spanned::get_ref);
        matches!(found, Some(DeValue::String(text)) if text.as_ref() == name)
    };
    tables.into_iter().find(is)
}

/// Goes along the path as far as it leads.
fn find(
    text: &str,
    table: &DeTable<'_>,
    has_name: bool,
    path: &[Step<'_>],
) -> Result<Place, String> {
    let mut table = table;
    let mut whole: Option<Range<usize>> = None;
    let mut list = None;
    for (nth, step) in path.iter().enumerate() {
        let rest = &path[nth..];
        let value = match (step, list.take()) {
            (Step::Name(key), None) => match table.get(*key) {
                Some(value) => value,
                None => return missing(text, table, whole, has_name && nth == 0, rest),
            },
            (Step::At(at), Some(items)) => {
                let items: &toml::de::DeArray<'_> = items;
                let item = items.get(*at);
                item.ok_or_else(|| format!("there is no number {at} in that list; look again"))?
            }
            (Step::Name(_), Some(_)) | (Step::At(_), None) => {
                return Err("that way leads nowhere in the file; look at it".into());
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
            return Err("that way leads nowhere in the file; look at it".into());
        }
    }
    Err("a way needs at least one step".into())
}

/// Where a key goes that is not there yet.
fn missing(
    text: &str,
    table: &DeTable<'_>,
    whole: Option<Range<usize>>,
    after_name: bool,
    rest: &[Step<'_>],
) -> Result<Place, String> {
    let mut keys = Vec::new();
    for step in rest {
        match step {
            Step::Name(key) => keys.push(*key),
            Step::At(_) => return Err("there is no such list in the file; write it there".into()),
        }
    }
    let keys = keys.join(".");
    let ends = table.values().map(|value| value.span().end);
    let name = table.get("name").map(|name| name.span().end);
    let inline = whole.is_some_and(|at| text[at].starts_with('{'));
    let end = if after_name { name } else { ends.max() };
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
