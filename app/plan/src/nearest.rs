//! Finds what somebody probably meant among the names that are known.
//!
//! Refuses: to decide; it only words a hint.
use crate::fault::quote;
use crate::words::{Words, words};
use text::keys::checked as k;

/// Longest text that is compared, in characters: names are short, and the work grows as the
/// product of the lengths.
const COMPARED_MAX: usize = 64;
/// Most names that a hint lists.
const LISTED_MAX: usize = 12;

/// Lower case, spaces at the ends gone and those within made one: how names are compared.
pub(crate) fn fold(text: &str) -> String {
    let words: Vec<_> = text.split_whitespace().collect();
    words.join(" ").to_lowercase()
}

/// As [`fold`], with spaces, hyphens and underlines gone too: how keywords are compared.
pub(crate) fn squeeze(text: &str) -> String {
    let kept = |c: &char| !(c.is_whitespace() || matches!(c, '-' | '_'));
    text.to_lowercase().chars().filter(kept).collect()
}

/// The known name nearest to `text`, if one is near enough to have been meant.
pub(crate) fn nearest<'k>(text: &str, known: &[&'k str]) -> Option<&'k str> {
    let text = squeeze(text);
    let length = text.chars().count();
    if length > COMPARED_MAX {
        return None;
    }
    let apart = |name: &&str| strsim::osa_distance(&squeeze(name), &text);
    let best = known.iter().min_by_key(|name| apart(name))?;
    // A third of the letters may be wrong; more is another word.
    (apart(best) <= length.div_ceil(3)).then_some(*best)
}

/// The one known name of which `text` is a word, or the first letters of its words.
pub(crate) fn part_of<'k>(text: &str, known: &[&'k str]) -> Option<&'k str> {
    let text = fold(text);
    let single = text.strip_suffix('s').unwrap_or(&text);
    let has = |name: &&&str| {
        let name = fold(name);
        let first = name
            .split([' ', '-'])
            .filter_map(|word| word.chars().next());
        let first: String = first.collect();
        let mut words = name.split([' ', '-']);
        first.chars().count() > 1 && first == text
            || words.any(|word| word == text || word == single)
    };
    let mut found = known.iter().filter(has);
    match (found.next(), found.next()) {
        (Some(name), None) => Some(name),
        _ => None,
    }
}

/// What to write instead of an unknown name: the nearest known one, else all of them.
pub(crate) fn hint(text: &str, known: &[&str]) -> Words {
    if let Some(name) = nearest(text, known) {
        return words!(k::WRITE, quote(name));
    }
    match known {
        [one] => words!(k::WRITE_THE_ONLY_ONE_KNOWN, quote(one)),
        _ => words!(k::WRITE, one_of(known)),
    }
}

/// "\"a\", \"b\" or \"c\"", at most [`LISTED_MAX`] of them.
pub(crate) fn one_of(known: &[&str]) -> Words {
    let more = known.len().saturating_sub(LISTED_MAX);
    let listed: Vec<_> = known.iter().take(LISTED_MAX).map(|n| quote(n)).collect();
    match listed.split_last() {
        Some((_, [])) | None => Words::plain(listed.concat()),
        Some(_) if more > 0 => words!(k::OR_ONE_OF_MORE, listed.join(", "), more),
        Some((last, front)) => words!(k::OR, front.join(", "), last),
    }
}
