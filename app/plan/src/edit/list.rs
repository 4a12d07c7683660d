//! Writes one more value at the end of a list of a TOML file.
//!
//! Refuses: lists written in a way that its text cannot grow in; nothing is changed then.
use super::{Step, edit, meaning, meant, parse, proven, table_of};
use crate::words::{Words, words};
use std::ops::Range;
use text::keys::checked as k;
use toml::Value;
use toml::de::{DeArray, DeValue};

/// The text with `value` (as TOML writes it) at the end of the list under `key` of the entry with
/// that table and name, or of the file itself without one. A list that is not there is begun.
///
/// # Errors
/// One sentence, when there is no such entry, or the list cannot be written to.
pub fn push(
    text: &str,
    entry: Option<(&str, &str)>,
    key: &str,
    value: &str,
) -> Result<String, Words> {
    let mut wanted = meaning(text)?;
    let lost = || words!(k::THERE_IS_NO_LIST_THERE, key);
    let table = meant(&mut wanted, entry).ok_or_else(lost)?;
    let list = table
        .entry(key)
        .or_insert_with(|| Value::Array(Vec::new()))
        .as_array_mut()
        .ok_or_else(lost)?;
    let one = meaning(&format!("one = {value}"))?;
    list.extend(one.get("one").cloned());
    let root = parse(text)?;
    let written = match table_of(root.get_ref(), entry)?.get(key) {
        None => edit(text, entry, &[Step::Name(key)], &format!("[{value}]"))?,
        Some(found) => {
            let DeValue::Array(items) = found.get_ref() else {
                return Err(lost());
            };
            grown(text, &found.span(), items, value)
        }
    };
    proven(written, &wanted)
}

/// The text with the value after the last item: on a line of its own where the others are.
fn grown(text: &str, whole: &Range<usize>, items: &DeArray<'_>, value: &str) -> String {
    let Some(last) = items.iter().next_back().map(toml::Spanned::span) else {
        let at = whole.start + 1;
        return format!("{}{value}{}", &text[..at], &text[at..]);
    };
    let line = text[..last.start].rfind('\n').map_or(0, |at| at + 1);
    let indent = &text[line..last.start];
    let alone = indent.chars().all(|c| c == ' ' || c == '\t');
    let between = if alone {
        format!(",\n{indent}")
    } else {
        ", ".to_owned()
    };
    let (head, tail) = text.split_at(last.end);
    format!("{head}{between}{value}{tail}")
}
