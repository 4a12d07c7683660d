//! One part of a scheme between separators, told apart: factors, loads, effort, rest, words.
//!
//! Refuses: numbers that stand beside nothing that says what they count.
use super::dims::{Dim, LOAD_LEAST, REPS_MAX, SETS_MAX, count};
use super::factor::dim;
use super::lex::{Is, Token};
use super::load::{self, reserve_behind, word_at};
use super::word_kind::{fixed_reps, is_pause_word, is_reps_word, is_rest_word, is_sets_word};
use super::{Bare, time::time};
use crate::fault::{Wrong, quote};
use crate::quantity::rest_s;
use crate::set_group::{LoadAsk, Reps, ShareOf};
use crate::words::words;
use domain::manner::Manner;
use domain::prescription::Role;
use text::keys::checked as k;

/// A share whose reference may still follow from its role.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Asked {
    Load(LoadAsk),
    /// A bare share.
    Share(u32),
    /// So many hundredths of a percent less than the top set.
    Less(u32),
}

/// What a part says.
#[derive(Debug, Clone, Default)]
pub(super) struct Part {
    pub(super) dims: Vec<Dim>,
    pub(super) sets: Option<u8>,
    pub(super) reps: Vec<Reps>,
    pub(super) loads: Vec<Asked>,
    /// Numbers without a unit, a load or not.
    pub(super) bare: Vec<String>,
    pub(super) effort: Option<u8>,
    pub(super) rest_s: Option<u32>,
    pub(super) role: Option<Role>,
    /// Whether the last set goes on for as many reps as go.
    pub(super) open_last: bool,
    pub(super) notes: Vec<String>,
    pub(super) warm: Option<&'static str>,
    /// Where and how the sets are done.
    pub(super) manner: Manner,
    /// The bar, as it was written.
    pub(super) bar: Option<String>,
}

impl Part {
    /// Whether it says how many sets or reps.
    pub(super) fn has_sets(&self) -> bool {
        let said = !self.dims.is_empty() || self.sets.is_some() || !self.reps.is_empty();
        said || self.is_one_set()
    }

    /// "3 @ 160": the reps of one set, and its load or effort.
    fn is_one_set(&self) -> bool {
        let [number] = self.bare.as_slice() else {
            return false;
        };
        let load = !self.loads.is_empty() && count(number, REPS_MAX).is_some();
        load || self.effort.is_some() && count(number, LOAD_LEAST - 1).is_some()
    }

    /// Whether it says nothing yet.
    pub(super) fn is_blank(&self) -> bool {
        !self.has_sets()
            && self.loads.is_empty()
            && self.bare.is_empty()
            && self.role.is_none()
            && self.effort.is_none()
            && self.rest_s.is_none()
            && self.warm.is_none()
            && !self.open_last
            && self.manner.is_own()
            && self.bar.is_none()
    }

    /// Takes what a part without sets adds.
    pub(super) fn join(&mut self, more: Self, text: &str) -> Result<(), Wrong> {
        let twice = |what| Err(Wrong::value(text, what, words!(k::WRITE_IT_ONCE_FOR_EACH)));
        if !more.loads.is_empty() || !more.bare.is_empty() {
            if !self.loads.is_empty() || !self.bare.is_empty() {
                return twice(words!(k::TWO_LOADS_FOR_THE_SAME));
            }
            self.loads = more.loads;
            self.bare = more.bare;
        }
        if self.effort.is_some() && more.effort.is_some() {
            return twice(words!(k::TWO_EFFORTS_FOR_THE_SAME));
        }
        self.effort = self.effort.or(more.effort);
        if self.manner.clash(&more.manner).is_some() {
            return twice(words!(k::TWO_WAYS_OF_DOING_THE));
        }
        self.manner = self.manner.or(more.manner);
        self.bar = self.bar.take().or(more.bar);
        self.rest_s = more.rest_s.or(self.rest_s);
        self.open_last |= more.open_last;
        self.role = self.role.or(more.role);
        Ok(())
    }
}

/// Reads a part.
pub(super) fn read(text: &str, tokens: &[Token], bare: Bare) -> Result<Part, Wrong> {
    let mut reader = Reader {
        text,
        bare,
        part: Part::default(),
        words: None,
    };
    let mut at = 0;
    while at < tokens.len() {
        let used = reader.step(&tokens[at..])?;
        if used == 0 {
            let sign = &text[tokens[at].at.0..];
            return Err(unread(text, sign));
        }
        at += used;
    }
    reader.end_words()?;
    Ok(reader.part)
}

pub(super) fn unread(text: &str, from: &str) -> Wrong {
    let what = words!(k::NOT_UNDERSTOOD_FROM_ON, quote(from));
    let right = words!(k::WRITE_IT_AS_5X3_140);
    Wrong::value(text, what, right)
}

fn has_digit(tokens: &[Token]) -> bool {
    let counts = [
        "single", "singles", "double", "doubles", "triple", "triples", "amrap",
    ];
    tokens.iter().any(|token| match &token.is {
        Is::Number(_) => true,
        Is::Word(word) => counts.contains(&word.as_str()),
        Is::Sign(_) => false,
    })
}

pub(super) struct Reader<'t> {
    pub(super) text: &'t str,
    pub(super) bare: Bare,
    pub(super) part: Part,
    /// Bytes of words that are being gathered into a note.
    pub(super) words: Option<(usize, usize)>,
}

impl Reader<'_> {
    /// Reads one thing at the front of the tokens; how many it took, 0 when there is none.
    fn step(&mut self, tokens: &[Token]) -> Result<usize, Wrong> {
        let token = &tokens[0];
        let known = match &token.is {
            Is::Sign('(' | '[') => self.brackets(tokens)?,
            Is::Sign('@') => self.at(tokens)?,
            Is::Sign('+') if matches!(tokens.get(1).map(|t| &t.is), Some(Is::Word(_))) => 1,
            Is::Sign('+') => self.step_from_last(tokens)?,
            Is::Sign('-') => self.less(tokens)?,
            Is::Sign('.')
                if matches!(
                    tokens.get(1),
                    Some(Token {
                        is: Is::Number(_),
                        spaced: false,
                        ..
                    })
                ) =>
            {
                0
            }
            Is::Sign('~' | ':' | '.' | '=' | '\u{2022}') => 1,
            Is::Sign(_) => 0,
            Is::Number(_) => self.number(tokens)?,
            Is::Word(word) => self.word(word, tokens)?,
        };
        if known > 0 {
            self.end_words()?;
            return Ok(known);
        }
        // Words in front of everything would be lost on whoever looks for the load.
        if matches!(token.is, Is::Word(_))
            && self.part.is_blank()
            && self.words.is_none()
            && has_digit(tokens)
        {
            return Ok(0);
        }
        if matches!(token.is, Is::Word(_))
            || self.words.is_some() && matches!(token.is, Is::Sign(_))
        {
            let from = self.words.map_or(token.at.0, |(from, _)| from);
            self.words = Some((from, token.at.1));
            return Ok(1);
        }
        Ok(0)
    }

    /// Words that are nothing else become a note, once there is something that they are beside.
    fn end_words(&mut self) -> Result<(), Wrong> {
        let Some((from, to)) = self.words.take() else {
            return Ok(());
        };
        let words = &self.text[from..to];
        let lower = words.to_lowercase();
        let sides = ["side", "seite", "per hand", "plates"];
        if sides.iter().any(|side| lower.contains(side)) {
            let right = words!(k::WRITE_THE_LOAD_WITH_THE);
            return Err(Wrong::value(
                self.text,
                words!(k::A_LOAD_OF_ONE_SIDE),
                right,
            ));
        }
        self.not_lost(&lower, from)?;
        self.part.notes.push(words.to_owned());
        Ok(())
    }

    pub(super) fn set_effort(&mut self, effort: u8) -> Result<(), Wrong> {
        if self.part.effort.replace(effort).is_some() {
            let what = words!(k::TWO_EFFORTS_FOR_THE_SAME);
            return Err(Wrong::value(
                self.text,
                what,
                words!(k::WRITE_IT_ONCE_FOR_EACH),
            ));
        }
        Ok(())
    }

    /// A number and what stands beside it.
    fn number(&mut self, tokens: &[Token]) -> Result<usize, Wrong> {
        let used = match self.blocks_behind(tokens)? {
            0 => self.tempo(tokens, false)?,
            used => used,
        };
        if used > 0 {
            return Ok(used);
        }
        if let Some((rest, used)) = time(tokens, false) {
            return self.time(&rest, used, tokens);
        }
        if let Some((loads, used)) = load::list(self.text, tokens, self.bare)? {
            self.part.loads.extend(loads.into_iter().map(Asked::Load));
            return Ok(used);
        }
        let Some((first, mut used)) = dim(self.text, tokens)? else {
            return Ok(0);
        };
        let mut dims = vec![first];
        while word_at(&tokens[used..]) == Some("x") {
            let Some((next, more)) = dim(self.text, &tokens[used + 1..])? else {
                return Err(unread(self.text, &self.text[tokens[used].at.0..]));
            };
            dims.push(next);
            used += 1 + more;
        }
        if dims.len() > 1 {
            if !self.part.dims.is_empty() {
                let right = words!(k::PUT_A_COMMA_BETWEEN_SET);
                return Err(Wrong::value(
                    self.text,
                    words!(k::TWO_SET_GROUPS_IN_A),
                    right,
                ));
            }
            self.part.dims = dims;
            return Ok(used);
        }
        self.one_number(dims.remove(0), tokens, used)
    }

    /// A number that stands alone, and the word behind it.
    fn one_number(&mut self, dim: Dim, tokens: &[Token], used: usize) -> Result<usize, Wrong> {
        let behind = &tokens[used..];
        match (dim, word_at(behind)) {
            (Dim::Number(number), Some(word)) if is_sets_word(word) => {
                self.sets_of(&number, behind).map(|more| used + more)
            }
            (Dim::Number(number), Some(word)) if is_reps_word(word) => {
                let reps = count(&number, REPS_MAX);
                self.part.reps = vec![Reps::just(reps.ok_or_else(|| unread(self.text, &number))?)];
                Ok(used + 1)
            }
            (Dim::Number(number), Some("rir")) if !reserve_behind(behind) => {
                self.set_effort(load::effort(self.text, &number, true)?)?;
                Ok(used + 1)
            }
            (Dim::Number(number), Some(word)) if fixed_reps(word).is_some() => {
                self.part.sets = count(&number, SETS_MAX);
                Ok(used)
            }
            (Dim::Number(number), _) => {
                self.part.bare.push(number);
                Ok(used)
            }
            (Dim::Reps(reps), _) => {
                self.part.reps.push(reps);
                Ok(used)
            }
            (Dim::List(list), _) => {
                self.part.reps = list;
                Ok(used)
            }
            // A number and its sign alone: nothing behind them says what the share is of.
            (Dim::Load(LoadAsk::Share(share, ShareOf::Best)), _) if used == 2 => {
                self.part.loads.push(Asked::Share(share));
                Ok(used)
            }
            (Dim::Load(load), _) => {
                self.part.loads.push(Asked::Load(load));
                Ok(used)
            }
        }
    }

    /// "3 sets", "3 sets of 5": how many of the tokens behind the number were used.
    fn sets_of(&mut self, number: &str, behind: &[Token]) -> Result<usize, Wrong> {
        self.part.sets = count(number, SETS_MAX);
        let of = ["of", "x", "\u{e0}", "a", "je", "de", "mit", "with"];
        let joint = behind
            .get(1..)
            .and_then(word_at)
            .is_some_and(|w| of.contains(&w));
        let reps = &behind[1 + usize::from(joint)..];
        if joint && let Some((Dim::Number(reps), more)) = dim(self.text, reps)? {
            let reps = count(&reps, REPS_MAX).ok_or_else(|| unread(self.text, &reps))?;
            self.part.reps = vec![Reps::just(reps)];
            return Ok(2 + more);
        }
        if self.part.sets.is_none() {
            return Err(unread(self.text, number));
        }
        Ok(1 + usize::from(joint))
    }

    /// A time is a rest where a word says so, and part of a remark where it is too short.
    fn time(&mut self, text: &str, used: usize, tokens: &[Token]) -> Result<usize, Wrong> {
        let behind = &tokens[used..];
        if word_at(behind).is_some_and(is_rest_word) {
            return match rest_s(text) {
                Ok(rest) => {
                    self.part.rest_s = Some(rest);
                    Ok(used + 1)
                }
                Err(_) if word_at(behind).is_some_and(is_pause_word) => {
                    Ok(used + 1 + self.pause(text, &behind[1..])?)
                }
                Err(wrong) => Err(wrong),
            };
        }
        let right = words!(k::WRITE, quote(&format!("rest {text}")));
        Err(Wrong::value(
            self.text,
            words!(k::A_TIME_THAT_NOBODY_HAS),
            right,
        ))
    }
}
