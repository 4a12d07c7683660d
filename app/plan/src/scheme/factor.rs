//! One factor at the front of a scheme's tokens: a number, a range, a list, a load.
//!
//! Refuses: ranges that do not rise, loads from one to another.
use super::dims::{Dim, REPS_MAX, count};
use super::lex::{Is, Token};
use super::load::{self, unit};
use super::part::unread;
use super::word_kind::is_open_word;
use crate::fault::Wrong;
use crate::set_group::{LoadAsk, Reps, ShareOf};
use crate::words::words;
use text::keys::checked as k;

/// One factor at the front of tokens, and how many of them it takes.
pub(super) fn dim(text: &str, tokens: &[Token]) -> Result<Option<(Dim, usize)>, Wrong> {
    let number = match tokens.first().map(|token| &token.is) {
        Some(Is::Number(number)) => number,
        Some(Is::Word(word)) if is_open_word(word) || word == "max" => {
            return Ok(Some((Dim::Reps(Reps::OPEN), 1)));
        }
        Some(Is::Word(_) | Is::Sign(_)) | None => return Ok(None),
    };
    let second = tokens.get(1);
    match second.map(|token| &token.is) {
        Some(Is::Word(word)) if unit(word).is_some() => {
            let unit = unit(word).unwrap_or(domain::MassUnit::Kg);
            Ok(Some((Dim::Load(load::of_unit(number, unit)?), 2)))
        }
        Some(Is::Sign('%')) => {
            let (share, of, used) = load::share(text, number, &tokens[2..])?;
            let load = LoadAsk::Share(share, of.unwrap_or(ShareOf::Best));
            Ok(Some((Dim::Load(load), 2 + used)))
        }
        Some(Is::Sign('+'))
            if !is_number(tokens.get(2)) || tokens.get(2).is_some_and(|t| t.spaced) =>
        {
            let spaced = second.is_some_and(|token| token.spaced);
            match count(number, REPS_MAX) {
                Some(least) if !spaced => list(text, Reps { least, most: None }, &tokens[2..])
                    .map(|(dim, used)| Some((dim, 2 + used))),
                _ => Ok(Some((Dim::Number(number.clone()), 1))),
            }
        }
        // "3x5 -10 %": so much less, no range.
        Some(Is::Sign('-'))
            if second.is_some_and(|dash| dash.spaced)
                && tokens.get(2).is_some_and(|number| !number.spaced)
                && matches!(tokens.get(3).map(|t| &t.is), Some(Is::Sign('%'))) =>
        {
            Ok(Some((Dim::Number(number.clone()), 1)))
        }
        Some(Is::Sign('-')) if is_number(tokens.get(2)) => range(text, number, &tokens[2..]),
        Some(Is::Sign('/' | ',')) if is_number(tokens.get(2)) => match count(number, REPS_MAX) {
            Some(reps) => {
                let (dim, used) = list(text, Reps::just(reps), &tokens[1..])?;
                Ok(Some((dim, 1 + used)))
            }
            None => Ok(Some((Dim::Number(number.clone()), 1))),
        },
        _ => Ok(Some((Dim::Number(number.clone()), 1))),
    }
}

fn is_number(token: Option<&Token>) -> bool {
    matches!(
        token,
        Some(Token {
            is: Is::Number(_),
            ..
        })
    )
}

/// "3-5": from the first number, which stands before `rest`.
fn range(text: &str, least: &str, rest: &[Token]) -> Result<Option<(Dim, usize)>, Wrong> {
    let Some(Token {
        is: Is::Number(most),
        ..
    }) = rest.first()
    else {
        return Ok(None);
    };
    let numbers = (count(least, REPS_MAX), count(most, REPS_MAX));
    let goes_on = matches!(rest.get(1).map(|token| &token.is), Some(Is::Sign('-')));
    match numbers {
        (Some(least), Some(most)) if least < most && !goes_on => Ok(Some((
            Dim::Reps(Reps {
                least,
                most: Some(most),
            }),
            3,
        ))),
        (Some(_), Some(_)) => {
            let right = words!(k::WRITE_A_RANGE_RISING_AS);
            Err(Wrong::value(text, words!(k::REPS_THAT_DO_NOT_RISE), right))
        }
        _ => {
            let right = words!(k::WRITE_ONE_LOAD_AS_140);
            Err(Wrong::value(text, words!(k::A_LOAD_FROM_ONE_TO), right))
        }
    }
}

/// "5/3/1+" behind its first number.
fn list(text: &str, first: Reps, tokens: &[Token]) -> Result<(Dim, usize), Wrong> {
    let mut all = vec![first];
    let mut used = 0;
    while let Some(
        [
            Token {
                is: Is::Sign('/' | ','),
                ..
            },
            Token {
                is: Is::Number(number),
                spaced: false,
                ..
            },
            ..,
        ],
    ) = tokens.get(used..)
    {
        let Some(least) = count(number, REPS_MAX) else {
            return Err(unread(text, number));
        };
        used += 2;
        let open = matches!(
            tokens.get(used),
            Some(Token {
                is: Is::Sign('+'),
                spaced: false,
                ..
            })
        );
        used += usize::from(open);
        all.push(if open {
            Reps { least, most: None }
        } else {
            Reps::just(least)
        });
    }
    match all.as_slice() {
        [one] => Ok((Dim::Reps(*one), used)),
        _ => Ok((Dim::List(all), used)),
    }
}
