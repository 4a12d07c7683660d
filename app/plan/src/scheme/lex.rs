//! A cell such as "5x3 @ 140" to tokens: numbers, words, signs.
//!
//! Refuses: to know what a number counts.

/// A token and where it stands.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Token {
    pub(super) is: Is,
    /// Whether a space stands before it.
    pub(super) spaced: bool,
    /// Its bytes in the text that was read.
    pub(super) at: (usize, usize),
}

/// What a token is.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) enum Is {
    /// Digits with at most one point, a decimal comma made a point.
    Number(String),
    /// Letters, in lower case.
    Word(String),
    /// A sign; a line break is one.
    Sign(char),
}

/// The text with its look-alikes made one: times signs, dashes, spaces that do not break.
pub(super) fn plain(text: &str) -> String {
    let one = |c: char| match c {
        '\u{d7}' | '\u{2715}' | '\u{2716}' | '*' => 'x',
        '\u{2010}'..='\u{2015}' | '\u{2212}' => '-',
        '\u{ff0b}' => '+',
        '\r' | '\u{b}' | '\u{2028}' => '\n',
        c if c.is_whitespace() && c != '\n' => ' ',
        c => c,
    };
    text.trim().chars().map(one).collect()
}

/// The tokens of a text that went through [`plain`].
pub(super) fn tokens(text: &str) -> Vec<Token> {
    let mut tokens = Vec::new();
    let (mut at, mut spaced) = (0, false);
    while let Some(first) = text[at..].chars().next() {
        if first == ' ' {
            spaced = true;
            at += 1;
            continue;
        }
        let rest = &text[at..];
        let (is, length) = if first.is_ascii_digit() {
            let listed =
                text[..at].ends_with(',') && text[..at - 1].ends_with(|c: char| c.is_ascii_digit());
            number(rest, listed)
        } else if first.is_alphabetic() {
            word(rest)
        } else {
            (Is::Sign(first), first.len_utf8())
        };
        tokens.push(Token {
            is,
            spaced,
            at: (at, at + length),
        });
        (at, spaced) = (at + length, false);
    }
    tokens
}

/// Digits; a point or comma between digits belongs to them where there is one alone. In a list
/// they stand behind a comma already.
fn number(text: &str, listed: bool) -> (Is, usize) {
    let digits = |text: &str| {
        text.find(|c: char| !c.is_ascii_digit())
            .unwrap_or(text.len())
    };
    let whole = digits(text);
    let mark = text[whole..].starts_with(['.', ',']);
    let part = if mark { digits(&text[whole + 1..]) } else { 0 };
    let end = whole + 1 + part;
    // "5,3,1" is a list, not two numbers with a comma.
    let goes_on = mark
        && part > 0
        && text[end..].starts_with(['.', ','])
        && text[end + 1..].starts_with(|c: char| c.is_ascii_digit());
    if part == 0 || goes_on || listed {
        return (Is::Number(text[..whole].to_owned()), whole);
    }
    let number = format!("{}.{}", &text[..whole], &text[whole + 1..end]);
    (Is::Number(number), end)
}

/// Letters; an "x" that stands between other things is a word of its own.
fn word(text: &str) -> (Is, usize) {
    let length = text
        .find(|c: char| !c.is_alphabetic())
        .unwrap_or(text.len());
    let lower = text[..length].to_lowercase();
    let next_is_digit = text[length..]
        .trim_start()
        .starts_with(|c: char| c.is_ascii_digit());
    if let Some(after) = lower.strip_prefix('x')
        && ["amrap", "amap", "max"].contains(&after)
    {
        return (Is::Word("x".to_owned()), 1);
    }
    if let Some(unit) = lower.strip_suffix('x')
        && ["kg", "lb", "lbs"].contains(&unit)
        && next_is_digit
    {
        return (Is::Word(unit.to_owned()), unit.len());
    }
    (Is::Word(lower), length)
}

#[cfg(test)]
mod tests {
    use super::{Is, plain, tokens};

    fn read(text: &str) -> String {
        let text = plain(text);
        let shown = tokens(&text).into_iter().map(|token| match token.is {
            Is::Number(number) => number,
            Is::Word(word) => word,
            Is::Sign(sign) => sign.to_string(),
        });
        shown.collect::<Vec<_>>().join(" ")
    }

    #[test]
    fn cells_fall_apart_where_people_see_it() {
        for (text, parts) in [
            ("5\u{d7}3@102,5kg", "5 x 3 @ 102.5 kg"),
            ("3xAMRAP", "3 x amrap"),
            ("140kgx5", "140 kg x 5"),
            ("5,3,1+", "5 , 3 , 1 +"),
            ("3 \u{2013} 5", "3 - 5"),
            ("RPE8", "rpe 8"),
        ] {
            assert_eq!(read(text), parts, "{text}");
        }
    }
}
