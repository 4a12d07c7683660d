//! The word by which a browser is known that a coach has signed in from: a number of its own, and
//! its hash under what is kept of the code. Nothing of it is kept here.
//!
//! Refuses: opening anything. It only counts guesses apart from those of strangers.
use crate::token::{self, TokenHash};

/// Hexadecimal digits of the number, and of its hash.
const HALF: usize = 32;

/// A new word under what is kept of the code; `None` without random numbers.
pub(crate) fn word(kept: &str) -> Option<String> {
    let mut number = token::fresh()?;
    number.truncate(HALF);
    let sealed = seal(kept, &number);
    Some(number + &sealed)
}

/// Who a word is of; `None` where it was not given under this code.
pub(crate) fn id(kept: &str, word: &str) -> Option<TokenHash> {
    if !token::is_token(word) {
        return None;
    }
    let (number, sealed) = word.split_at(HALF);
    (seal(kept, number) == sealed).then(|| token::hash(number))
}

/// What is kept of the code has 128 bits of salt that nobody outside knows, and a length of its
/// own; so nothing can be put before or behind the number.
fn seal(kept: &str, number: &str) -> String {
    let mut sealed = token::hex(&token::hash(&format!("{kept}\n{number}")));
    sealed.truncate(HALF);
    sealed
}

#[cfg(test)]
mod tests {
    use super::{id, word};

    #[test]
    fn a_word_is_known_under_its_own_code_alone() {
        let (one, other) = (word("a").expect("random"), word("a").expect("random"));
        assert_ne!(one, other);
        assert!(id("a", &one).is_some() && id("a", &one) != id("a", &other));
        assert_eq!(id("b", &one), None);
        for at in [0, 40] {
            let mut wrong = one.clone();
            let digit = if &wrong[at..=at] == "0" { "1" } else { "0" };
            wrong.replace_range(at..=at, digit);
            assert_eq!(id("a", &wrong), None);
        }
        assert_eq!(id("a", &one[1..]), None);
        assert_eq!(id("a", ""), None);
    }
}
