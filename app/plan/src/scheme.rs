//! A cell such as "1x5 @ RPE 8, 3x5 @ 90 % of top set, rest 3 min" to set groups.
//!
//! Refuses: what could mean two things, and numbers that nobody has given a meaning.
mod dims;
mod factor;
mod lex;
mod load;
mod manner;
mod part;
mod resolve;
mod sign;
mod tempo;
mod time;
mod word;
mod word_kind;

use crate::fault::Wrong;
use crate::lifter_file::loads;
use crate::quantity::{mass, percent};
use crate::set_group::{LoadAsk, Reps, SetGroup, ShareOf};
use crate::words::words;
use domain::MassUnit;
use domain::manner::Manner;
use domain::prescription::Role;
use lex::{Is, Token};
use part::{Asked, Part};
pub(crate) use resolve::spread;
use text::keys::checked as k;

/// Longest cell that is read as a scheme, in bytes.
const SCHEME_MAX: usize = 400;
/// Most set groups of a cell.
const GROUPS_MAX: usize = 20;

/// What a number without a unit means where a load stands.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Bare {
    /// So much in this unit.
    Unit(MassUnit),
    /// So many percent of the best.
    Percent,
    /// Nobody can say: without a gym the lifter's unit is not known.
    Unknown,
}

/// What the columns beside a cell have given already.
#[derive(Debug, Clone, Default)]
pub(crate) struct Beside {
    /// Work sets.
    pub(crate) sets: Option<u8>,
    /// Reps, one for all sets or one for each.
    pub(crate) reps: Vec<Reps>,
    /// Whether a load stands beside it.
    pub(crate) has_load: bool,
}

/// A scheme that was read.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub(crate) struct Scheme {
    /// The groups, in their order.
    pub(crate) groups: Vec<SetGroup>,
    /// Words that stood beside the numbers.
    pub(crate) notes: Vec<String>,
    /// What was said of the warm-up: "none" or "short".
    pub(crate) warm: Option<&'static str>,
    /// The bar, as it was written.
    pub(crate) bar: Option<String>,
    /// A share that nothing says what it is of, after sets by effort alone: most who write it mean
    /// those sets.
    pub(crate) share_after_effort: Option<u32>,
}

/// Reads a cell of a scheme; what it leaves out may stand `beside` it.
pub(crate) fn read(text: &str, bare: Bare, beside: &Beside) -> Result<Scheme, Wrong> {
    if text.len() > SCHEME_MAX {
        let what = words!(k::MORE_THAN_LETTERS_IN_ONE, SCHEME_MAX);
        let right = words!(k::WRITE_A_ROW_FOR_EACH_LIFT);
        return Err(Wrong::value(text, what, right));
    }
    let plain = lex::plain(text);
    let tokens = lex::tokens(&plain);
    let mut parts: Vec<Part> = Vec::new();
    let mut scheme = Scheme::default();
    let mut whole = None;
    for piece in pieces(&tokens) {
        let mut part = part::read(&plain, piece, bare)?;
        scheme.notes.append(&mut part.notes);
        scheme.warm = part.warm.or(scheme.warm);
        // A bar between commas of its own is that of the whole lift.
        if !part.has_sets() && !parts.is_empty() {
            whole = part.bar.take().or(whole);
        }
        match parts.last_mut() {
            // "5x3 @ 140, rest 3 min": what has no sets of its own belongs to what stands before.
            Some(last) if !part.has_sets() => last.join(part, &plain)?,
            _ => parts.push(part),
        }
    }
    scheme.share_after_effort = share_after_effort(&parts);
    scheme.bar = one_bar(text, &parts, whole.as_ref())?;
    for part in parts {
        scheme
            .groups
            .extend(resolve::groups(&plain, part, bare, beside)?);
    }
    if scheme.groups.len() > GROUPS_MAX {
        let what = words!(k::MORE_THAN_SET_GROUPS, GROUPS_MAX);
        return Err(Wrong::value(text, what, words!(k::SPLIT_IT_OVER_DAYS)));
    }
    Ok(scheme)
}

fn share_after_effort(parts: &[Part]) -> Option<u32> {
    let no_load = |part: &Part| part.loads.is_empty() && part.bare.is_empty();
    let by_effort = |part: &Part| part.effort.is_some() && no_load(part);
    let first = parts.iter().position(by_effort)?;
    let bare = |part: &Part| match part.loads.as_slice() {
        [Asked::Share(share)] if part.role.is_none() => Some(*share),
        _ => None,
    };
    parts.iter().skip(first + 1).find_map(bare)
}

/// The bar of a lift: one for all its sets, so that one ladder leads up to them.
fn one_bar(text: &str, parts: &[Part], whole: Option<&String>) -> Result<Option<String>, Wrong> {
    let mut said = parts.iter().map(|part| part.bar.as_ref());
    let first = whole.or(said.clone().flatten().next());
    let fits = |bar: Option<&String>| bar == first || bar.is_none() && whole.is_some();
    if said.all(fits) {
        return Ok(first.cloned());
    }
    Err(two_bars(text))
}

pub(crate) fn two_bars(text: &str) -> Wrong {
    let what = words!(k::A_BAR_FOR_SOME_OF);
    let right = words!(k::WRITE_THE_SETS_ON_ANOTHER);
    Wrong::value(text, what, right)
}

/// Reads a column that says where or how sets are done; `lead` is what its header stands for.
pub(crate) fn manner(text: &str, lead: &str) -> Result<Manner, Wrong> {
    let mut plain = lex::plain(text);
    let lower = plain.to_lowercase();
    let none = ["none", "raw", "-", "ohne"].contains(&lower.as_str());
    if lead == "gear" && none {
        return Ok(Manner {
            belt: Some(false),
            straps: Some(false),
            ..Manner::default()
        });
    }
    if lead != "gear" && !lower.starts_with(lead) {
        plain = format!("{lead} {plain}");
    }
    if lead == "pause" && plain.ends_with(|c: char| c.is_ascii_digit()) {
        plain.push_str(" s");
    }
    let mut read = Part::default();
    for piece in pieces(&lex::tokens(&plain)) {
        read.join(part::read(&plain, piece, Bare::Unknown)?, text)?;
    }
    let said = read.manner;
    read.manner = Manner::default();
    if said.is_own() || !read.is_blank() || !read.notes.is_empty() {
        let right = words!(k::WRITE_HOLE_6_BLOCKS_100);
        let what = words!(k::NOT_UNDERSTOOD_AS_WHERE_OR);
        return Err(Wrong::value(text, what, right));
    }
    Ok(said)
}

/// The tokens of each set group: between line breaks, semicolons, commas, "then" and plus signs.
fn pieces(tokens: &[Token]) -> Vec<&[Token]> {
    let (mut pieces, mut from, mut depth) = (Vec::new(), 0, 0_i32);
    for (at, token) in tokens.iter().enumerate() {
        let next_is_sets = matches!(
            tokens.get(at + 1..at + 3),
            Some([Token { is: Is::Number(_), .. }, Token { is: Is::Word(word), .. }]) if word == "x"
        );
        let after_space = tokens.get(at + 1).is_none_or(|next| next.spaced);
        let number_before = matches!(
            at.checked_sub(1).and_then(|at| tokens.get(at)),
            Some(Token {
                is: Is::Number(_),
                ..
            })
        );
        let parts_here = match &token.is {
            Is::Sign('(') => {
                depth += 1;
                false
            }
            Is::Sign(')') => {
                depth -= 1;
                false
            }
            Is::Sign('\n' | ';') => true,
            Is::Sign(',') => after_space || !number_before,
            Is::Sign('+' | '/') => token.spaced && after_space && next_is_sets,
            Is::Sign('&') => true,
            Is::Word(word) => ["then", "dann", "puis"].contains(&word.as_str()),
            Is::Number(_) | Is::Sign(_) => false,
        };
        if parts_here && depth <= 0 {
            pieces.push(&tokens[from..at]);
            from = at + 1;
        }
    }
    pieces.push(&tokens[from..]);
    pieces.retain(|piece| !piece.is_empty());
    pieces
}

/// Gives the set that others follow its role, and tells a share of a set that never came.
pub(crate) fn follow(text: &str, groups: &mut [SetGroup]) -> Result<(), Wrong> {
    let follows = |group: &SetGroup| matches!(group.load, Some(LoadAsk::Share(_, ShareOf::TopSet)));
    let Some(first) = groups.iter().position(follows) else {
        return Ok(());
    };
    if first == 0 {
        let right = words!(k::WRITE_THE_TOP_SET_BEFORE);
        let what = words!(k::A_SHARE_OF_TODAY_S);
        return Err(Wrong::value(text, what, right));
    }
    let named = groups[..first].iter().any(|group| group.role == Role::Top);
    if !named && let Some(top) = groups[..first].last_mut() {
        top.role = Role::Top;
    }
    for group in &mut groups[first..] {
        if follows(group) && group.role == Role::Work {
            group.role = Role::BackOff;
        }
    }
    Ok(())
}

/// Reads the text of a column of loads: one load, or one and an effort.
pub(crate) fn load(text: &str, bare: Bare) -> Result<(Vec<LoadAsk>, Option<u8>), Wrong> {
    let plain = lex::plain(text);
    let tokens = lex::tokens(&plain);
    let part = part::read(&plain, &tokens, bare)?;
    part.load_alone(&plain, bare)
}

/// Reads the text of a column of reps: "5", "3-5", "5+", "AMRAP", "5/3/1+". Nothing where it is
/// none of these.
pub(crate) fn reps(text: &str) -> Result<Option<Vec<Reps>>, Wrong> {
    let plain = lex::plain(text);
    let tokens = lex::tokens(&plain);
    let Some((dim, used)) = factor::dim(&plain, &tokens)? else {
        return Ok(None);
    };
    let word = |token: &Token| match &token.is {
        Is::Word(word) => word_kind::is_reps_word(word),
        Is::Number(_) | Is::Sign(_) => false,
    };
    if !tokens[used..].iter().all(word) {
        return Ok(None);
    }
    Ok(match dim {
        dims::Dim::Number(number) => {
            dims::count(&number, dims::REPS_MAX).map(|reps| vec![Reps::just(reps)])
        }
        dims::Dim::Reps(reps) => Some(vec![reps]),
        dims::Dim::List(list) => Some(list),
        dims::Dim::Load(_) => None,
    })
}

/// Reads the text of a column of RPE, or of reps in reserve.
pub(crate) fn effort(text: &str, in_reserve: bool) -> Result<u8, Wrong> {
    let plain = lex::plain(text).to_lowercase();
    let reserve = in_reserve || plain.contains("rir");
    let number = plain.trim_matches(|c: char| c.is_alphabetic() || c == ' ' || c == '@');
    load::effort(text, &number.replace(',', "."), reserve)
}

/// A load without a unit of its own.
fn bare_load(text: &str, number: &str, bare: Bare) -> Result<LoadAsk, Wrong> {
    let unit = match bare {
        Bare::Unit(unit) => unit,
        Bare::Percent => {
            let share = percent(&format!("{number} %"), &(100..=15_000))?;
            return Ok(LoadAsk::Share(share, ShareOf::Best));
        }
        Bare::Unknown => {
            return Err(mass(number, &loads()).err().unwrap_or_else(|| {
                Wrong::value(
                    text,
                    words!(k::A_LOAD_WITHOUT_A_UNIT),
                    words!(k::WRITE_THE_UNIT),
                )
            }));
        }
    };
    let (mass, unit) = mass(&format!("{number} {}", unit.word()), &loads())?;
    Ok(LoadAsk::Mass(mass, unit))
}

#[cfg(test)]
#[path = "scheme_tests.rs"]
mod tests;
