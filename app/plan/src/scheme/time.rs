//! Times within a scheme: "3 min", "3:00", "90 s". Refuses: numbers without a unit beside words
//! that are no rest.
use super::lex::{Is, Token};

/// A time at the front of tokens: its text and how many tokens it takes. With `bare`, a number
/// without a unit is one too.
pub(super) fn time(tokens: &[Token], bare: bool) -> Option<(String, usize)> {
    let Is::Number(number) = &tokens.first()?.is else {
        return None;
    };
    match tokens.get(1..) {
        Some(
            [
                Token {
                    is: Is::Sign(':'), ..
                },
                Token {
                    is: Is::Number(seconds),
                    spaced,
                    ..
                },
                ..,
            ],
        ) if seconds.len() == 2 && !spaced => Some((format!("{number}:{seconds}"), 3)),
        Some(
            [
                Token {
                    is: Is::Word(unit), ..
                },
                ..,
            ],
        ) if is_unit(unit) => {
            let unit = match unit.as_str() {
                "m" | "minuten" => "min",
                "sek" | "sekunden" => "s",
                unit => unit,
            };
            Some((format!("{number} {unit}"), 2))
        }
        Some(
            [
                Token {
                    is: Is::Sign('\''),
                    spaced: false,
                    ..
                },
                ..,
            ],
        ) => Some((format!("{number} min"), 2)),
        Some(_) if bare => Some((number.clone(), 1)),
        Some(_) | None => None,
    }
}

fn is_unit(word: &str) -> bool {
    [
        "s", "sec", "secs", "second", "seconds", "min", "mins", "minute", "minutes", "m",
        "minuten", "sek", "sekunden",
    ]
    .contains(&word)
}
