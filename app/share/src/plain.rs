//! Which codes are guessed first, and why. Refuses: guessing how strong any other one is.
use std::collections::BTreeSet;
use std::fmt;

/// Why a code is soon guessed.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Plain {
    /// "aabbaa": fewer than four different signs.
    FewSigns,
    /// "121212", "abcabc": a short piece over and over.
    Repeats,
    /// "123456", "fedcba", "112233", "qwertz": a row of the alphabet, of digits or of keys.
    Row,
    /// "02121998", "2026-12-02": a date.
    Date,
    /// A word that everybody tries.
    Common,
}

impl fmt::Display for Plain {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::FewSigns => "fewer than four different signs",
            Self::Repeats => "the same piece over and over",
            Self::Row => "a row of letters, digits or keys",
            Self::Date => "a date",
            Self::Common => "a word that everybody tries",
        })
    }
}

/// Fewest different signs of a code.
const SIGNS_LEAST: usize = 4;
/// Rows of keys, each also read backwards.
const KEYS: [&str; 8] = [
    "qwertyuiop",
    "qwertzuiop",
    "azertyuiop",
    "asdfghjkl",
    "zxcvbnm",
    "yxcvbnm",
    "1qaz2wsx3edc",
    "qayxswedc",
];
/// Words that are tried first, here and in any gym; from memory.
const COMMON: [&str; 24] = [
    "password",
    "passwort",
    "welcome",
    "willkommen",
    "letmein",
    "iloveyou",
    "monkey",
    "dragon",
    "sunshine",
    "princess",
    "football",
    "baseball",
    "master",
    "secret",
    "geheim",
    "admin",
    "coach",
    "trainer",
    "pinladder",
    "deadlift",
    "barbell",
    "kettlebell",
    "strength",
    "default",
];

/// Why a code is one of those that are guessed first; `None` for any other.
pub(crate) fn why_plain(code: &str) -> Option<Plain> {
    let small: Vec<char> = code.to_lowercase().chars().collect();
    let word: String = small.iter().filter(|c| c.is_alphabetic()).collect();
    if COMMON.contains(&word.as_str()) {
        return Some(Plain::Common);
    }
    if is_row(&small) || is_of_keys(&small) {
        return Some(Plain::Row);
    }
    if repeats(&small) {
        return Some(Plain::Repeats);
    }
    if small.iter().collect::<BTreeSet<_>>().len() < SIGNS_LEAST {
        return Some(Plain::FewSigns);
    }
    is_date(code).then_some(Plain::Date)
}

/// "aaaaaa", "123456", "987654"; each sign so often as another: "112233".
fn is_row(code: &[char]) -> bool {
    let each = code.chunk_by(|a, b| a == b);
    let often: BTreeSet<usize> = each.clone().map(<[char]>::len).collect();
    let signs: Vec<i64> = each.map(|same| i64::from(u32::from(same[0]))).collect();
    let steps: BTreeSet<i64> = signs.windows(2).map(|two| two[1] - two[0]).collect();
    let even = steps.iter().all(|step| step.abs() == 1) && steps.len() <= 1;
    often.len() == 1 && even
}

fn is_of_keys(code: &[char]) -> bool {
    let forward: String = code.iter().collect();
    let backward: String = code.iter().rev().collect();
    let within = |keys: &&str| keys.contains(&forward) || keys.contains(&backward);
    KEYS.iter().any(within)
}

/// A piece of at most half the length, over and over to the end.
fn repeats(code: &[char]) -> bool {
    (1..=code.len() / 2).any(|long| {
        let (piece, rest) = code.split_at(long);
        rest.iter().zip(piece.iter().cycle()).all(|(a, b)| a == b)
    })
}

/// Day, month and year in any usual order, two digits of the year or four.
fn is_date(code: &str) -> bool {
    let mark = |c: char| matches!(c, '-' | '.' | '/' | ' ');
    let digits: String = code.chars().filter(|c| !mark(*c)).collect();
    if !digits.bytes().all(|b| b.is_ascii_digit()) {
        return false;
    }
    let number = |part: &str| part.parse::<u32>().unwrap_or(0);
    let day = |part: &str| (1..=31).contains(&number(part));
    let month = |part: &str| (1..=12).contains(&number(part));
    let year = |part: &str| (1900..=2099).contains(&number(part));
    match digits.len() {
        6 => {
            let (a, b, c) = (&digits[..2], &digits[2..4], &digits[4..]);
            (day(a) && month(b)) || (month(a) && day(b)) || (month(b) && day(c))
        }
        8 => {
            let (a, b, last) = (&digits[..2], &digits[2..4], &digits[4..]);
            let (first, c, d) = (&digits[..4], &digits[4..6], &digits[6..]);
            let ends = year(last) && ((day(a) && month(b)) || (month(a) && day(b)));
            ends || (year(first) && month(c) && day(d))
        }
        _ => false,
    }
}

#[cfg(test)]
mod tests {
    use super::{Plain, why_plain};

    #[test]
    fn what_is_guessed_first_is_refused_with_its_reason() {
        for (code, why) in [
            ("aaaaaa", Plain::Row),
            ("123456", Plain::Row),
            ("98765432", Plain::Row),
            ("112233", Plain::Row),
            ("aaabbbccc", Plain::Row),
            ("qwertz", Plain::Row),
            ("LKJHGFDSA", Plain::Row),
            ("121212", Plain::Repeats),
            ("abcdabcda", Plain::Repeats),
            ("aabbab", Plain::FewSigns),
            ("password", Plain::Common),
            ("Password1", Plain::Common),
            ("coach-2026", Plain::Common),
            ("02.12.1998", Plain::Date),
            ("19981202", Plain::Date),
            ("021298", Plain::Date),
        ] {
            assert_eq!(why_plain(code), Some(why), "{code}");
        }
    }

    #[test]
    fn any_other_is_taken() {
        for code in [
            "squat-rack-9",
            "482913",
            "three plain words",
            "Kürbis7",
            "9f3k2l",
        ] {
            assert_eq!(why_plain(code), None, "{code}");
        }
    }
}
