//! The words of a scheme: efforts, rests, what sets are for, what is said of the warm-up.
//!
//! Refuses: words that stand where a number must.
use super::bare_load;
use super::dims::{Dim, REPS_MAX, count};
use super::factor::dim;
use super::lex::{Is, Token};
use super::load::{self, word_at};
use super::manner::is_block_word;
use super::part::{Asked, Reader, unread};
use super::time::time;
use super::word_kind::{fixed_reps, is_open_word, is_pause_word, is_reps_word, is_sets_word};
use crate::fault::{Wrong, quote};
use crate::quantity::rest_s;
use crate::set_group::{LoadAsk, Reps};
use crate::words::words;
use domain::prescription::Role;
use text::keys::checked as k;

impl Reader<'_> {
    /// Reads a word at the front of tokens; how many it took, 0 when it is none of ours.
    #[allow(
        clippy::too_many_lines,
        reason = "one case a line, read from top to bottom"
    )]
    pub(super) fn word(&mut self, word: &str, tokens: &[Token]) -> Result<usize, Wrong> {
        let behind = &tokens[1..];
        let colon = usize::from(matches!(
            behind.first().map(|t| &t.is),
            Some(Is::Sign(':' | '='))
        ));
        match word {
            "x" => match dim(self.text, behind)? {
                Some((Dim::Number(reps), used)) if !self.part.has_sets() => {
                    let reps = count(&reps, REPS_MAX);
                    self.part.reps = vec![Reps::just(reps.ok_or_else(|| unread(self.text, "x"))?)];
                    Ok(1 + used)
                }
                Some((Dim::Reps(reps), used)) if !self.part.has_sets() => {
                    self.part.reps = vec![reps];
                    Ok(1 + used)
                }
                _ => Err(unread(self.text, &self.text[tokens[0].at.0..])),
            },
            "rpe" | "rir" => {
                let Some(Token {
                    is: Is::Number(number),
                    ..
                }) = behind.get(colon)
                else {
                    return Ok(0);
                };
                let after = behind.get(colon + 1).map(|token| &token.is);
                if matches!(after, Some(Is::Sign('-' | '/'))) {
                    return Err(load::effort(self.text, "-", word == "rir")
                        .err()
                        .unwrap_or_else(|| unread(self.text, word)));
                }
                self.set_effort(load::effort(self.text, number, word == "rir")?)?;
                Ok(2 + colon)
            }
            "rest" | "r" | "pause" | "pausen" | "repos" | "break" | "paused" | "hold" => {
                let Some((text, used)) = time(&behind[colon..], word != "r") else {
                    return Ok(0);
                };
                let mut more = 0;
                match rest_s(&text) {
                    Ok(rest) => self.part.rest_s = Some(rest),
                    Err(_) if is_pause_word(word) => {
                        more = self.pause(&text, &behind[colon + used..])?;
                    }
                    Err(wrong) => return Err(wrong),
                }
                Ok(1 + colon + used + more)
            }
            "due" | "f\u{e4}llig" => {
                self.part.loads.push(Asked::Load(LoadAsk::Due));
                Ok(1)
            }
            "max" | "maximum" if word_at(behind).is_some_and(is_reps_word) => {
                self.part.reps.push(Reps::OPEN);
                Ok(2)
            }
            word if is_open_word(word) => {
                self.part.reps.push(Reps::OPEN);
                Ok(1)
            }
            "double" if word_at(behind) == Some("overhand") => self.manner_word(word, tokens),
            "last" | "final" | "letzter" | "letzte" if is_last_set_open(behind) => {
                self.part.open_last = true;
                Ok(3)
            }
            "from" | "off" | "von" | "ab" | "aus" if is_place(behind) => {
                Ok(usize::from(self.words.is_none()))
            }
            "at" | "of" | "with" | "mit" | "bei" | "auf" | "\u{e0}" | "je" | "and" | "und"
            | "last" | "time" | "as" => Ok(usize::from(self.words.is_none())),
            word if is_reps_word(word) => Ok(1),
            _ => match self.manner_word(word, tokens)? {
                0 => Ok(self.role(word, behind)),
                used => Ok(used),
            },
        }
    }

    /// Words that would change the work are asked about and never end in a note: an effort without
    /// its number, a number that may be a share.
    pub(super) fn not_lost(&self, words: &str, from: usize) -> Result<(), Wrong> {
        let mut all = words.split(|c: char| !c.is_alphanumeric());
        if all.clone().any(|word| matches!(word, "rpe" | "rir")) {
            let right = words!(k::WRITE_ONE_RPE_FROM_1);
            let what = words!(k::AN_EFFORT_WITHOUT_ITS_NUMBER);
            return Err(Wrong::value(self.text, what, right));
        }
        if is_warm_up(words) {
            return Err(warm_up(self.text));
        }
        if all.clone().any(is_block_word) {
            let right = words!(k::WRITE_IT_AS_BLOCKS_100);
            let what = words!(k::BLOCKS_WITHOUT_THEIR_HEIGHT);
            return Err(Wrong::value(self.text, what, right));
        }
        let first = all.next().unwrap_or_default();
        // Of a number with its unit nobody asks.
        let before = self.text[..from].trim_end();
        let is_digit = |c: char| c.is_ascii_digit() || matches!(c, '.' | ',');
        let number = &before[before.trim_end_matches(is_digit).len()..];
        let has_load = !self.part.loads.is_empty() || !self.part.bare.is_empty();
        if number.is_empty() || !has_load {
            return Ok(());
        }
        match first {
            "rm" => {
                let right = words!(
                    k::WRITE_SETS_X_REPS_AS,
                    "\"1x1 @ RPE 9\" or \"5x3 @ 80 % of best\""
                );
                Err(Wrong::value(self.text, words!(k::NO_REPS), right))
            }
            "tm" | "tmax" | "trainingsmax" | "percent" | "prozent" | "max" | "training"
                if first != "training" || words.contains("max") =>
            {
                let mass = bare_load(self.text, number, self.bare)?.to_string();
                let what = words!(k::WHICH_COULD_BE_OR_A, mass);
                let of = words
                    .trim_start_matches("percent")
                    .trim_start_matches("prozent");
                let share = quote(format!("{number} % {}", of.trim()).trim_end());
                let right = words!(k::WRITE_OR_THE_LOAD_WITH, share);
                Err(Wrong::value(self.text, what, right))
            }
            _ => Ok(()),
        }
    }

    /// Words that say what the sets are for, and fixed numbers of reps.
    fn role(&mut self, word: &str, behind: &[Token]) -> usize {
        let second = word_at(behind).unwrap_or_default();
        let dash = matches!(behind.first().map(|token| &token.is), Some(Is::Sign('-')));
        let after_dash = behind.get(1..).and_then(word_at).unwrap_or_default();
        let (role, mut used) = match (word, second) {
            ("top" | "topset" | "topsatz", _) => (Role::Top, 1),
            ("backoff" | "backoffs" | "backdown", _) => (Role::BackOff, 1),
            ("back", "off" | "offs" | "down") => (Role::BackOff, 2),
            ("back", _) if dash && ["off", "offs", "down"].contains(&after_dash) => {
                (Role::BackOff, 3)
            }
            ("drop" | "drops" | "dropset" | "dropsets", _) => (Role::Drop, 1),
            ("work" | "working", "set" | "sets") => (Role::Work, 2),
            ("no", "warm" | "warmup") => return self.warm("none", behind, 1),
            ("short" | "kurze", "ladder" | "leiter") => {
                self.part.warm = Some("short");
                return 2;
            }
            ("no" | "keine", "ladder" | "leiter") => {
                self.part.warm = Some("none");
                return 2;
            }
            ("already", "warm") => return self.warm("short", behind, 1),
            _ => {
                let Some(reps) = fixed_reps(word) else {
                    return 0;
                };
                self.part.reps = vec![Reps::just(reps)];
                return 1;
            }
        };
        self.part.role = Some(role);
        if behind
            .get(used - 1..)
            .and_then(word_at)
            .is_some_and(is_sets_word)
        {
            used += 1;
        }
        used
    }

    /// "no warm-up", "already warm".
    fn warm(&mut self, how: &'static str, behind: &[Token], from: usize) -> usize {
        self.part.warm = Some(how);
        let up = |token: &&Token| match &token.is {
            Is::Sign('-') => true,
            Is::Word(word) => ["up", "ups"].contains(&word.as_str()),
            Is::Sign(_) | Is::Number(_) => false,
        };
        1 + from + behind[from..].iter().take(2).take_while(up).count()
    }
}

/// "set AMRAP" behind "last".
fn is_last_set_open(behind: &[Token]) -> bool {
    word_at(behind).is_some_and(is_sets_word)
        && behind
            .get(1..)
            .and_then(word_at)
            .is_some_and(|word| is_open_word(word) || word == "max")
}

/// "2 in blocks", "blocks 2 in" or "hole 6" behind "from".
fn is_place(behind: &[Token]) -> bool {
    let placed = |word: &str| is_block_word(word) || ["hole", "pin", "pins"].contains(&word);
    (0..behind.len().min(4)).any(|at| word_at(&behind[at..]).is_some_and(placed))
}

/// "warm-up", "warm up", "Aufw\u{e4}rmen", by themselves: what stands before them is no work.
pub(super) fn is_warm_up(words: &str) -> bool {
    let letters = |c: &char| c.is_alphabetic();
    let plain: String = words.to_lowercase().chars().filter(letters).collect();
    let plain = plain.strip_suffix("set").unwrap_or(&plain);
    [
        "warm",
        "warmup",
        "warmups",
        "aufw\u{e4}rmen",
        "calentamiento",
    ]
    .contains(&plain)
}

pub(super) fn warm_up(text: &str) -> Wrong {
    let right = words!(k::TAKE_THE_ROW_OUT_OR);
    Wrong::value(text, words!(k::A_WARM_UP_THE_LADDER), right)
}
