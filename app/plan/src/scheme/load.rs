//! Loads and efforts within a scheme: shares and what they are of, steps, RPE, reps in reserve.
//!
//! Refuses: shares of what the program does not know, efforts between halves.
use super::lex::{Is, Token};
use super::{Bare, bare_load, dims};
use crate::fault::{Wrong, quote};
use crate::lifter_file::loads;
use crate::quantity::{mass, percent};
use crate::set_group::{LoadAsk, ShareOf};
use crate::words::words;
use domain::{Mass, MassUnit, decimal};
use text::keys::checked as k;

/// Steps from last time; none is the load of last time again.
fn steps() -> std::ops::RangeInclusive<Mass> {
    Mass::ZERO..=Mass::of(MassUnit::Kg, 100_000)
}

/// A word at the front of tokens.
pub(super) fn word_at(tokens: &[Token]) -> Option<&str> {
    match tokens.first().map(|token| &token.is) {
        Some(Is::Word(word)) => Some(word),
        Some(Is::Number(_) | Is::Sign(_)) | None => None,
    }
}

/// The unit that a word is.
pub(super) fn unit(word: &str) -> Option<MassUnit> {
    match word {
        "kg" | "kgs" | "kilo" | "kilos" => Some(MassUnit::Kg),
        "lb" | "lbs" | "pound" | "pounds" => Some(MassUnit::Lb),
        _ => None,
    }
}

/// A load in a unit.
pub(super) fn of_unit(number: &str, unit: MassUnit) -> Result<LoadAsk, Wrong> {
    let (mass, unit) = mass(&format!("{number} {}", unit.word()), &loads())?;
    Ok(LoadAsk::Mass(mass, unit))
}

/// A step from last time.
pub(super) fn step(number: &str, unit: MassUnit) -> Result<LoadAsk, Wrong> {
    let (mass, unit) = mass(&format!("{number} {}", unit.word()), &steps())?;
    Ok(LoadAsk::More(mass, unit))
}

/// A share: what stands behind its percent sign says what it is of. Gives how many of the tokens
/// behind the sign were used.
pub(super) fn share(
    text: &str,
    number: &str,
    behind: &[Token],
) -> Result<(u32, Option<ShareOf>, usize), Wrong> {
    let share = percent(&format!("{number} %"), &(100..=15_000))?;
    let (of, used) = share_of(text, behind)?;
    Ok((share, of, used))
}

/// What a share is of, where that is said, and how many tokens say it.
fn share_of(text: &str, behind: &[Token]) -> Result<(Option<ShareOf>, usize), Wrong> {
    const SKIPPED: [&str; 14] = [
        "of", "the", "from", "vom", "von", "der", "des", "du", "de", "today", "s", "heutigen",
        "your", "a",
    ];
    let mut at = 0;
    while let Some(token) = behind.get(at) {
        match &token.is {
            Is::Word(word) if SKIPPED.contains(&word.as_str()) => at += 1,
            Is::Sign('\'' | '\u{2019}') => at += 1,
            Is::Word(_) | Is::Sign(_) | Is::Number(_) => break,
        }
    }
    let said = at > 0;
    let rest = &behind[at..];
    let second = rest.get(1..).and_then(word_at);
    let found = match (rest.first().map(|token| &token.is), second) {
        (Some(Is::Word(word)), second) => match (word.as_str(), second) {
            ("tm" | "trainingsmax" | "tmax", _) => Some((ShareOf::TrainingMax, 1)),
            ("training", Some("max" | "maximum")) => Some((ShareOf::TrainingMax, 2)),
            ("top", Some("set" | "single" | "double" | "triple")) => Some((ShareOf::TopSet, 2)),
            ("top" | "topset" | "topsatz", _) => Some((ShareOf::TopSet, 1)),
            ("rm" | "max" | "maximum" | "best" | "pb" | "pr" | "bestleistung", _) => {
                Some((ShareOf::Best, 1))
            }
            ("e", _) if is_one_rm(rest) => return Err(unknown(text, "e1RM")),
            (other, _) if said => return Err(unknown(text, other)),
            _ => None,
        },
        // "1RM" is a number and a word.
        (Some(Is::Number(one)), Some("rm")) if one == "1" => Some((ShareOf::Best, 2)),
        (Some(Is::Number(number)), Some("rm")) => {
            return Err(unknown(text, &format!("{number}RM")));
        }
        _ => None,
    };
    match found {
        Some((of, used)) => Ok((Some(of), at + used)),
        None => Ok((None, 0)),
    }
}

/// "e1RM" falls apart into a letter, a number and a word.
fn is_one_rm(tokens: &[Token]) -> bool {
    matches!(tokens.get(1), Some(Token { is: Is::Number(one), spaced: false, .. }) if one == "1")
}

fn unknown(text: &str, of: &str) -> Wrong {
    let what = words!(k::A_SHARE_OF_WHICH_IS, quote(of));
    let right = words!(k::WRITE_THE_SHARE_OF_BEST);
    Wrong::value(text, what, right)
}

/// Whether "RIR" at the front of tokens has its number behind it.
pub(super) fn reserve_behind(tokens: &[Token]) -> bool {
    matches!(tokens.get(1).map(|token| &token.is), Some(Is::Number(_)))
}

/// An effort in tenths of RPE; reps in reserve are counted down from ten (common practice, no
/// source).
pub(super) fn effort(text: &str, number: &str, in_reserve: bool) -> Result<u8, Wrong> {
    let wrong = |what| {
        let right = match in_reserve {
            true => words!(k::WRITE_ONE_NUMBER_OF_REPS),
            false => words!(k::WRITE_ONE_RPE_FROM_1),
        };
        Wrong::value(text, what, right)
    };
    let not = || wrong(words!(k::NOT_AN_EFFORT));
    if number.contains(['-', '/']) {
        return Err(wrong(words!(k::AN_EFFORT_FROM_ONE_TO)));
    }
    let tenths = decimal::read(number.trim(), 10, 1_000).map_err(|_| not())?;
    let tenths = if in_reserve { 100 - tenths } else { tenths };
    match u8::try_from(tenths) {
        Ok(tenths @ 10..=100) if tenths % 5 == 0 => Ok(tenths),
        _ => Err(wrong(words!(k::AN_EFFORT_THAT_NO_SCALE))),
    }
}

/// "60-65-70 %": three loads or more with dashes between them; two are a range, and small ones a
/// tempo.
fn is_climb(tokens: &[Token]) -> bool {
    let large = |at: usize| match tokens.get(at).map(|token| &token.is) {
        Some(Is::Number(number)) => number.len() > 1 && dims::count(number, 15).is_none(),
        Some(Is::Word(_) | Is::Sign(_)) | None => false,
    };
    let dash = |at: usize| matches!(tokens.get(at).map(|t| &t.is), Some(Is::Sign('-')));
    (0..3).all(|n| large(2 * n)) && (0..2).all(|n| dash(2 * n + 1))
}

/// "65/75/85 %" or "100/110/120 kg": one load after the other, and how many tokens they take.
pub(super) fn list(
    text: &str,
    tokens: &[Token],
    bare: Bare,
) -> Result<Option<(Vec<LoadAsk>, usize)>, Wrong> {
    let mut numbers = Vec::new();
    let (mut used, mut dashes) = (0, false);
    while let Some(Is::Number(number)) = tokens.get(used).map(|token| &token.is) {
        numbers.push(number.as_str());
        used += 1;
        match tokens.get(used).map(|token| &token.is) {
            Some(Is::Sign('/')) => used += 1,
            // "140,150,160"; with a space behind it a comma parts set groups.
            Some(Is::Sign(',')) if tokens.get(used + 1).is_some_and(|next| !next.spaced) => {
                used += 1;
            }
            Some(Is::Sign('-')) if is_climb(&tokens[used - 1..]) || dashes => {
                dashes = true;
                used += 1;
            }
            Some(Is::Word(_) | Is::Sign(_) | Is::Number(_)) | None => break,
        }
    }
    if numbers.len() < 2 {
        return Ok(None);
    }
    let behind = tokens.get(used..).unwrap_or_default();
    let mut loads = Vec::new();
    if let Some(Is::Sign('%')) = behind.first().map(|token| &token.is) {
        let (of, more) = share_of(text, &behind[1..])?;
        for number in numbers {
            let (share, ..) = share(text, number, &[])?;
            loads.push(LoadAsk::Share(share, of.unwrap_or(ShareOf::Best)));
        }
        return Ok(Some((loads, used + 1 + more)));
    }
    if let Some(unit) = word_at(behind).and_then(unit) {
        for number in numbers {
            loads.push(of_unit(number, unit)?);
        }
        return Ok(Some((loads, used + 1)));
    }
    // Without a unit they are reps, unless one of them is too many.
    let is_reps = |number: &&str| dims::count(number, dims::REPS_MAX).is_some();
    if numbers.iter().all(is_reps) || word_at(behind) == Some("x") {
        return Ok(None);
    }
    for number in numbers {
        loads.push(bare_load(text, number, bare)?);
    }
    Ok(Some((loads, used)))
}
