//! Single words and lines of words. Refuses: line breaks, emptiness, what does not fit.
use crate::fault::{Wrong, quote};
use crate::nearest::{one_of, squeeze};
use crate::words::words;
use text::keys::checked as k;

/// Longest name of anything, in characters: what fits on a tile.
const NAME_MAX: usize = 40;

/// Reads a name: some letters, no line breaks, at most [`NAME_MAX`] characters.
pub(crate) fn name(text: &str) -> Result<String, Wrong> {
    words(text, NAME_MAX)
}

/// Reads a line of words of at most `most` characters.
pub(crate) fn words(text: &str, most: usize) -> Result<String, Wrong> {
    let right = || words!(k::WRITE_FROM_1_TO_CHARACTERS, most);
    let words = text.trim();
    let length = words.chars().count();
    if length == 0 {
        Err(Wrong::plain(words!(k::AN_EMPTY_TEXT), right()))
    } else if length > most {
        let what = words!(k::CHARACTERS_MORE_THAN_THE_MOST, length, most);
        Err(Wrong::value(text, &what, right()))
    } else if words.chars().any(char::is_control) {
        Err(Wrong::value(text, words!(k::WITH_A_LINE_BREAK_OR), right()))
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
        let right = words!(k::WRITE, one_of(&words));
        Wrong {
            read: words!(k::NOT_ONE_OF_THE_WORDS, quote(text)),
            right,
        }
    })
}
