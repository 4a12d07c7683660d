//! Single words and lines of words. Refuses: line breaks, emptiness, what does not fit.
use crate::fault::{Wrong, quote};
use crate::nearest::{one_of, squeeze};
use crate::words::words;

/// Longest name of anything, in characters: what fits on a tile.
const NAME_MAX: usize = 40;

/// Reads a name: some letters, no line breaks, at most [`NAME_MAX`] characters.
pub(crate) fn name(text: &str) -> Result<String, Wrong> {
    words(text, NAME_MAX)
}

/// Reads a line of words of at most `most` characters.
pub(crate) fn words(text: &str, most: usize) -> Result<String, Wrong> {
    let right = || words!("write from 1 to {0} characters on one line", most);
    let words = text.trim();
    let length = words.chars().count();
    if length == 0 {
        Err(Wrong::plain(words!("an empty text"), right()))
    } else if length > most {
        let what = words!("{0} characters, more than the most, {1}", length, most);
        Err(Wrong::value(text, &what, right()))
    } else if words.chars().any(char::is_control) {
        Err(Wrong::value(
            text,
            words!("with a line break or another control character"),
            right(),
        ))
    } else {
        Ok(words.to_owned())
    }
}

/// Reads one of a few words.
pub(crate) fn choice<T: Copy>(text: &str, choices: &[(&str, T)]) -> Result<T, Wrong> {
    let squeezed = squeeze(text);
    let found = choices.iter().find(|(word, _)| squeeze(word) == squeezed);
    found.map(|(_, value)| *value).ok_or_else(|| {
        let words: Vec<_> = choices.iter().map(|(word, _)| *word).collect();
        let right = words!("write {0}", one_of(&words));
        Wrong {
            read: words!("{0}, not one of the words for it", quote(text)),
            right,
        }
    })
}
