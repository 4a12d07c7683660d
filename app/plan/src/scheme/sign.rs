//! The signs of a scheme: brackets, "@", "+" and "-", each with what stands behind it.
//!
//! Refuses: steps in percent, signs with nothing behind them.
use super::lex::{Is, Token};
use super::load::{self, reserve_behind, unit, word_at};
use super::part::{Asked, Reader, read, unread};
use super::word::{is_warm_up, warm_up};
use super::{Bare, bare_load};
use crate::fault::{Wrong, quote};
use crate::words::words;
use text::keys::checked as k;

/// Words that may stand behind "@".
const AT_WORDS: [&str; 14] = [
    "hole",
    "loch",
    "pin",
    "pins",
    "tempo",
    "blocks",
    "rpe",
    "rir",
    "due",
    "f\u{e4}llig",
    "top",
    "last",
    "about",
    "tm",
];

/// Whether a list of loads goes on behind a number: ",150,160".
fn is_list(behind: &[Token]) -> bool {
    let comma = matches!(behind.first().map(|token| &token.is), Some(Is::Sign(',')));
    let next = behind.get(1).filter(|next| !next.spaced);
    comma && matches!(next.map(|next| &next.is), Some(Is::Number(_)))
}

impl Reader<'_> {
    /// Brackets hold a load, an effort or a rest; else a remark.
    pub(super) fn brackets(&mut self, tokens: &[Token]) -> Result<usize, Wrong> {
        let close = |token: &Token| matches!(token.is, Is::Sign(')' | ']'));
        let Some(end) = tokens.iter().position(close) else {
            return Err(unread(self.text, &self.text[tokens[0].at.0..]));
        };
        let inside = &tokens[1..end];
        let raw = self.text[tokens[0].at.1..tokens[end].at.0].trim();
        if let Ok(part) = read(self.text, inside, self.bare)
            && part.notes.is_empty()
            && part.bare.is_empty()
            && !part.has_sets()
        {
            self.part.join(part, self.text)?;
        } else if is_warm_up(raw) {
            return Err(warm_up(self.text));
        } else if !raw.is_empty() {
            self.part.notes.push(raw.to_owned());
        }
        Ok(end + 1)
    }

    /// "@ 140", "@8", "@ RPE 8", "@ 80 %".
    pub(super) fn at(&mut self, tokens: &[Token]) -> Result<usize, Wrong> {
        let number = match tokens.get(1).map(|token| &token.is) {
            Some(Is::Number(number)) => number,
            Some(Is::Sign('+' | '-' | '@')) => return Ok(1),
            Some(Is::Word(word)) if AT_WORDS.contains(&word.as_str()) => return Ok(1),
            Some(Is::Word(word)) if ["same", "gleich"].contains(&word.as_str()) => {
                let what = words!(k::THE_SAME_AS_WHAT_IS);
                let right = words!(k::WRITE_FOR_THE_LOAD_OF, "\"@ +0 kg\"");
                return Err(Wrong::value(self.text, what, right));
            }
            Some(Is::Word(_) | Is::Sign(_)) | None => {
                return Err(unread(self.text, &self.text[tokens[0].at.0..]));
            }
        };
        let behind = tokens.get(2..).unwrap_or_default();
        // "@ 2 RIR" is an effort, "@ 150 RIR 2" a load and an effort.
        let reserve = word_at(behind) == Some("rir") && !reserve_behind(behind);
        let alone = !reserve
            && word_at(behind).is_none_or(|word| unit(word).is_none() && word != "x")
            && !matches!(
                behind.first().map(|t| &t.is),
                Some(Is::Sign('%' | '/' | '-'))
            )
            && !is_list(behind);
        let text = &self.text[tokens[1].at.0..];
        if super::tempo::tempo_in_front(text, false).is_some() {
            return Ok(1);
        }
        if alone && number.len() == 4 && number.bytes().all(|b| b.is_ascii_digit()) {
            let what = words!(k::WHICH_COULD_BE_A_LOAD);
            let right = words!(k::WRITE_OR_THE_LOAD_WITH, quote(&format!("tempo {number}")));
            return Err(Wrong::value(self.text, what, right));
        }
        // "@ 8 RPE": the number first.
        let effort = word_at(behind) == Some("rpe") && !reserve_behind(behind);
        if effort {
            self.set_effort(load::effort(self.text, number, false)?)?;
            return Ok(3);
        }
        let small = domain::decimal::read(number, 10, 100).is_ok();
        if alone && small && self.bare != Bare::Percent {
            if number.starts_with('0') {
                let share = number.trim_start_matches("0.");
                let right = words!(k::WRITE_WHERE_A_SHARE_IS, quote(&format!("@ {share}0 %")));
                return Err(Wrong::value(
                    self.text,
                    words!(k::AN_EFFORT_OR_A_LOAD),
                    right,
                ));
            }
            self.set_effort(load::effort(self.text, number, false)?)?;
            return Ok(2);
        }
        if alone {
            let load = bare_load(self.text, number, self.bare)?;
            self.part.loads.push(Asked::Load(load));
            return Ok(2);
        }
        // "@8-9": from one effort to another.
        if small && let Some(Is::Sign('-')) = behind.first().map(|t| &t.is) {
            return Err(load::effort(self.text, "-", false)
                .err()
                .unwrap_or_else(|| unread(self.text, "@")));
        }
        Ok(1)
    }

    /// "+2.5", "+ 5 lb": more than last time.
    pub(super) fn step_from_last(&mut self, tokens: &[Token]) -> Result<usize, Wrong> {
        let Some(Token {
            is: Is::Number(number),
            ..
        }) = tokens.get(1)
        else {
            return Ok(0);
        };
        let behind = tokens.get(2..).unwrap_or_default();
        if let Some(Is::Sign('%')) = behind.first().map(|token| &token.is) {
            let right = words!(k::WRITE_THE_STEP_AS_A);
            return Err(Wrong::value(self.text, words!(k::A_STEP_IN_PERCENT), right));
        }
        let written = word_at(behind).and_then(unit);
        let unit = match (written, self.bare) {
            (Some(unit), _) | (None, Bare::Unit(unit)) => unit,
            (None, Bare::Percent | Bare::Unknown) => {
                let right = words!(
                    k::WRITE_OR,
                    quote(&format!("+{number} kg")),
                    quote(&format!("+{number} lb"))
                );
                return Err(Wrong::value(
                    self.text,
                    words!(k::A_STEP_WITHOUT_A_UNIT),
                    right,
                ));
            }
        };
        self.part.loads.push(Asked::Load(load::step(number, unit)?));
        Ok(2 + usize::from(written.is_some()))
    }

    /// "-10 %": less than the top set.
    pub(super) fn less(&mut self, tokens: &[Token]) -> Result<usize, Wrong> {
        match tokens.get(1..3) {
            Some(
                [
                    Token {
                        is: Is::Number(number),
                        ..
                    },
                    Token {
                        is: Is::Sign('%'), ..
                    },
                ],
            ) => {
                let less = crate::quantity::percent(&format!("{number} %"), &(100..=9_900))?;
                self.part.loads.push(Asked::Less(less));
                Ok(3)
            }
            _ if self.words.is_some()
                || matches!(
                    tokens.get(1),
                    Some(Token {
                        is: Is::Word(_),
                        ..
                    })
                ) =>
            {
                Ok(1)
            }
            _ => Ok(0),
        }
    }
}
