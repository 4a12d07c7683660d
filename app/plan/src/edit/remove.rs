//! Takes an entry, a key or one item of a list out of a TOML file.
//!
//! Refuses: entries and lists written in a way that its text cannot shrink in; nothing is changed
//! then. Comments right above an entry go with it.
use super::{Step, all_named, key_of, meaning, meant, parse, proven, table_of};
use crate::words::{Words, words};
use std::ops::Range;
use text::keys::checked as k;
use toml::Spanned;
use toml::de::{DeTable, DeValue};

/// The text without what stands at `path` of the entry with that table and name: a key, or an item
/// of a list. With an empty path the whole entry goes; of several for one lifter the first.
///
/// # Errors
/// One sentence, when there is no such thing, or it cannot be taken out of the text.
pub fn remove(text: &str, entry: Option<(&str, &str)>, path: &[Step<'_>]) -> Result<String, Words> {
    let lost = || words!(k::THAT_IS_NOT_IN_THE);
    let mut wanted = meaning(text)?;
    forget(&mut wanted, entry, path).ok_or_else(lost)?;
    let root = parse(text)?;
    let cut = match (entry, path) {
        (Some((table, name)), []) => {
            let all = all_named(root.get_ref(), table, name);
            let found = all.first().ok_or_else(lost)?;
            entry_lines(text, table, name, found).ok_or_else(lost)?
        }
        (_, [Step::Name(key)]) => {
            let found = table_of(root.get_ref(), entry)?
                .get(*key)
                .ok_or_else(lost)?;
            line_of(text, &found.span())
        }
        (_, [Step::Name(key), Step::At(at)]) => {
            let found = table_of(root.get_ref(), entry)?
                .get(*key)
                .ok_or_else(lost)?;
            let DeValue::Array(items) = found.get_ref() else {
                return Err(lost());
            };
            let spans: Vec<Range<usize>> = items.iter().map(Spanned::span).collect();
            item(text, &spans, *at).ok_or_else(lost)?
        }
        _ => return Err(lost()),
    };
    proven(
        format!("{}{}", &text[..cut.start], &text[cut.end..]),
        &wanted,
    )
}

/// Takes it out of what the file means.
fn forget(root: &mut toml::Table, entry: Option<(&str, &str)>, path: &[Step<'_>]) -> Option<()> {
    match (entry, path) {
        (Some((table, name)), []) => {
            let key = key_of(table);
            let list = root.get_mut(table)?.as_array_mut()?;
            let is =
                |entry: &toml::Value| entry.get(key).and_then(toml::Value::as_str) == Some(name);
            let at = list.iter().position(is)?;
            list.remove(at);
            if list.is_empty() {
                root.remove(table);
            }
        }
        (_, [Step::Name(key)]) => drop(meant(root, entry)?.remove(*key)?),
        (_, [Step::Name(key), Step::At(at)]) => {
            let list = meant(root, entry)?.get_mut(*key)?.as_array_mut()?;
            if *at >= list.len() {
                return None;
            }
            list.remove(*at);
        }
        _ => return None,
    }
    Some(())
}

/// From the comments above an entry's header to before the next entry.
fn entry_lines(text: &str, table: &str, name: &str, found: &DeTable<'_>) -> Option<Range<usize>> {
    let known_by = found.get(key_of(table))?;
    let header = format!("[[{table}]]");
    let head = text[..known_by.span().start].rfind(&header)?;
    let mut start = text[..head].rfind('\n').map_or(0, |at| at + 1);
    if !text[start..head].trim().is_empty() {
        return None;
    }
    while let Some(above) = line_before(text, start)
        && text[above..start].trim_start().starts_with('#')
    {
        start = above;
    }
    let mut end = known_by.span().end;
    for (key, value) in found {
        end = end.max(key.span().end).max(last_end(value));
    }
    end = next_line(text, end);
    // Tables of its own without a value in them, and the air below.
    let own = [format!("[{table}."), format!("[[{table}.")];
    let mut seen = end;
    while seen < text.len() {
        let next = next_line(text, seen);
        let line = text[seen..next].trim();
        if own.iter().any(|own| line.starts_with(own)) {
            end = next;
        } else if line.is_empty() {
            end = if end == seen { next } else { end };
        } else if !line.starts_with('#') {
            break;
        }
        seen = next;
    }
    (!name.is_empty()).then_some(start..end)
}

/// Where the last of a value, or of what is in it, ends.
fn last_end(value: &Spanned<DeValue<'_>>) -> usize {
    let own = value.span().end;
    let inner = match value.get_ref() {
        DeValue::Table(table) => table.values().map(last_end).max(),
        DeValue::Array(items) => items.iter().map(last_end).max(),
        DeValue::String(_)
        | DeValue::Integer(_)
        | DeValue::Float(_)
        | DeValue::Boolean(_)
        | DeValue::Datetime(_) => None,
    };
    inner.map_or(own, |inner| own.max(inner))
}

/// An item with what parts it from its neighbour; with its line, where it stands alone on it.
fn item(text: &str, spans: &[Range<usize>], at: usize) -> Option<Range<usize>> {
    let own = spans.get(at)?.clone();
    let line = text[..own.start].rfind('\n').map_or(0, |at| at + 1);
    let rest = &text[own.end..next_line(text, own.end)];
    let after = rest.trim_start().trim_start_matches(',').trim();
    let alone = text[line..own.start].trim().is_empty();
    if alone && (after.is_empty() || after.starts_with('#')) {
        return Some(line..next_line(text, own.end));
    }
    match (
        at.checked_sub(1).and_then(|before| spans.get(before)),
        spans.get(at + 1),
    ) {
        (_, Some(next)) => Some(own.start..next.start),
        (Some(before), None) => Some(before.end..own.end),
        (None, None) => {
            let comma = text[own.end..].trim_start().starts_with(',');
            let end = text[own.end..].find(',').filter(|_| comma);
            Some(own.start..end.map_or(own.end, |found| own.end + found + 1))
        }
    }
}

/// The whole lines on which a value stands.
fn line_of(text: &str, span: &Range<usize>) -> Range<usize> {
    let start = text[..span.start].rfind('\n').map_or(0, |at| at + 1);
    start..next_line(text, span.end)
}

/// Where the line after the one of `at` begins.
fn next_line(text: &str, at: usize) -> usize {
    text[at..]
        .find('\n')
        .map_or(text.len(), |found| at + found + 1)
}

/// Where the line before the one that begins at `start` begins.
fn line_before(text: &str, start: usize) -> Option<usize> {
    let end = start.checked_sub(1)?;
    Some(text[..end].rfind('\n').map_or(0, |at| at + 1))
}
