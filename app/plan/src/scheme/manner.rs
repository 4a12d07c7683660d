//! Where and how sets are done, within a scheme: tempo, pause, hole, blocks, gear, grip, bar.
//!
//! Refuses: tempos of other than four figures, holes that no rack has, times that could be a rest.
use super::lex::{Is, Token};
use super::load::word_at;
use super::part::{Reader, unread};
use super::tempo::{self, tempo_in_front};
use crate::fault::{Wrong, quote};
use crate::quantity::length;
use crate::words::words;
use domain::Length;
use domain::lift::Grip;
use domain::manner::Manner;
use text::keys::checked as k;

/// The lowest and the highest blocks.
const BLOCKS: std::ops::RangeInclusive<Length> = Length::mm(10)..=Length::mm(600);

/// Words behind which a piece of gear is for some of the sets alone: that is a remark.
const SOME: [&str; 10] = [
    "for", "on", "from", "if", "when", "only", "optional", "ab", "nur", "wenn",
];

pub(super) fn is_block_word(word: &str) -> bool {
    [
        "block",
        "blocks",
        "bl\u{f6}cke",
        "bl\u{f6}cken",
        "kl\u{f6}tze",
    ]
    .contains(&word)
}

fn is_belt_word(word: &str) -> bool {
    ["belt", "g\u{fc}rtel", "guertel"].contains(&word)
}

fn is_straps_word(word: &str) -> bool {
    ["straps", "strap", "zughilfen"].contains(&word)
}

impl Reader<'_> {
    /// Takes one thing more that is said of how sets are done.
    fn set_manner(&mut self, more: Manner) -> Result<(), Wrong> {
        if let Some(word) = self.part.manner.clash(&more) {
            let what = words!(k::TWO_THINGS_SAID_OF_THE, word);
            let right = words!(k::WRITE_IT_ONCE_FOR_EACH);
            return Err(Wrong::value(self.text, what, right));
        }
        self.part.manner = self.part.manner.or(more);
        Ok(())
    }

    /// A tempo at the front of tokens: how many it takes, 0 where there is none.
    pub(super) fn tempo(&mut self, tokens: &[Token], named: bool) -> Result<usize, Wrong> {
        let (Some(first), Some(last)) = (tokens.first(), tokens.last()) else {
            return Ok(0);
        };
        let text = &self.text[first.at.0..last.at.1];
        let Some((figures, bytes)) = tempo_in_front(text, named) else {
            return Ok(0);
        };
        let read = tempo::read(self.text, &figures)?;
        self.set_manner(Manner {
            tempo: Some(read),
            ..Manner::default()
        })?;
        let end = first.at.0 + bytes;
        Ok(tokens.iter().take_while(|token| token.at.1 <= end).count())
    }

    /// A pause in each rep: "2 s", and where, which is a remark; `text` is the time.
    pub(super) fn pause(&mut self, text: &str, behind: &[Token]) -> Result<usize, Wrong> {
        let has_unit = text.ends_with(char::is_alphabetic);
        let number = text.trim_end_matches(|c: char| c.is_alphabetic() || c == ' ');
        let most = Manner::PAUSE_MOST_S;
        let Some(pause) = number.parse::<u8>().ok().filter(|s| (1..=most).contains(s)) else {
            let what = words!(k::NOT_A_PAUSE_WITHIN_A);
            let right = words!(k::WRITE_WHOLE_SECONDS_FROM_1, most);
            return Err(Wrong::value(self.text, what, right));
        };
        if !has_unit {
            let what = words!(k::WHICH_COULD_BE_A_REST);
            let right = words!(
                k::WRITE_OR,
                quote(&format!("pause {pause} s")),
                quote(&format!("rest {pause} min"))
            );
            return Err(Wrong::value(self.text, what, right));
        }
        self.set_manner(Manner {
            pause_s: Some(pause),
            ..Manner::default()
        })?;
        let places = [
            "at",
            "on",
            "in",
            "off",
            "below",
            "above",
            "under",
            "am",
            "an",
            "im",
            "beim",
            "unter",
            "\u{fc}ber",
        ];
        if !word_at(behind).is_some_and(|word| places.contains(&word)) {
            return Ok(0);
        }
        let words = behind.iter().take_while(|t| matches!(t.is, Is::Word(_)));
        let count = words.count();
        let note = &self.text[behind[0].at.0..behind[count - 1].at.1];
        self.part.notes.push(format!("pause {note}"));
        Ok(count)
    }

    /// "hole 6", "straps", "no belt", "4 in blocks", "hook grip", "bar: hex": how many tokens, 0
    /// when the word is none of these.
    pub(super) fn manner_word(&mut self, word: &str, tokens: &[Token]) -> Result<usize, Wrong> {
        let second = tokens.get(1..).and_then(word_at).unwrap_or_default();
        let said = match (word, second) {
            ("tempo", _) => return self.tempo_named(tokens),
            ("hole" | "loch" | "pin" | "pins", _) => return self.hole(word, tokens),
            ("bar" | "stange", _) => return self.bar(tokens),
            (word, _) if is_block_word(word) => return self.blocks(tokens),
            ("mixed" | "alternate", "grip") => {
                let what = words!(k::A_MIXED_GRIP_WHICH_IS);
                let right = words!(k::WRITE_DOUBLE_OVERHAND_HOOK_GRIP);
                return Err(Wrong::value(self.text, what, right));
            }
            _ => gear(word, second, tokens).or_else(|| grip(word, second, tokens)),
        };
        let Some((manner, used)) = said else {
            return Ok(0);
        };
        self.set_manner(manner)?;
        Ok(used)
    }

    fn tempo_named(&mut self, tokens: &[Token]) -> Result<usize, Wrong> {
        let from = 1 + colon(&tokens[1..]);
        let used = self.tempo(&tokens[from..], true)?;
        if used > 0 {
            return Ok(from + used);
        }
        // "slow tempo" is a remark.
        Ok(0)
    }

    fn hole(&mut self, word: &str, tokens: &[Token]) -> Result<usize, Wrong> {
        let from = 1 + colon(&tokens[1..]);
        let Some(Is::Number(number)) = tokens.get(from).map(|token| &token.is) else {
            let is_remark = word.starts_with("pin") || self.words.is_some();
            return if is_remark {
                Ok(0)
            } else {
                Err(self.no_hole("?"))
            };
        };
        let hole = number.parse::<u16>().ok().filter(|hole| *hole > 0);
        let hole = hole.ok_or_else(|| self.no_hole(number))?;
        self.set_manner(Manner {
            hole: Some(hole),
            ..Manner::default()
        })?;
        Ok(from + 1)
    }

    fn no_hole(&self, number: &str) -> Wrong {
        let what = words!(k::A_HOLE_WHERE_HOLES_COUNT, number);
        Wrong::value(self.text, what, words!(k::WRITE_IT_AS_HOLE_6))
    }

    /// "blocks 10 cm"; a block without its height would leave the bar on the floor.
    fn blocks(&mut self, tokens: &[Token]) -> Result<usize, Wrong> {
        let from = 1 + colon(&tokens[1..]);
        let of = ["from", "of", "at", "von", "ab"];
        let from = from + usize::from(word_at(&tokens[from..]).is_some_and(|w| of.contains(&w)));
        match self.height(&tokens[from..])? {
            Some(used) => Ok(from + used),
            None => {
                let what = words!(k::BLOCKS_WITHOUT_THEIR_HEIGHT);
                let right = words!(k::WRITE_IT_AS_BLOCKS_100);
                Err(Wrong::value(self.text, what, right))
            }
        }
    }

    /// "4 in blocks", "10 cm high blocks": how many tokens, 0 where a number is no such height.
    pub(super) fn blocks_behind(&mut self, tokens: &[Token]) -> Result<usize, Wrong> {
        let high = ["high", "hohe", "hohen"];
        let skip = usize::from(
            tokens
                .get(2..)
                .and_then(word_at)
                .is_some_and(|w| high.contains(&w)),
        );
        let block = tokens.get(2 + skip..).and_then(word_at);
        if !block.is_some_and(is_block_word) {
            return Ok(0);
        }
        let used = self.height(tokens)?;
        Ok(used.map_or(0, |used| used + skip + 1))
    }

    /// A height with its unit.
    fn height(&mut self, tokens: &[Token]) -> Result<Option<usize>, Wrong> {
        let (Some(Is::Number(number)), Some(unit)) = (
            tokens.first().map(|token| &token.is),
            tokens.get(1).map(|token| &token.is),
        ) else {
            return Ok(None);
        };
        let unit = match unit {
            Is::Word(unit) if ["mm", "cm", "in", "inch", "inches"].contains(&unit.as_str()) => unit,
            Is::Word(unit) if unit == "zoll" => "in",
            Is::Sign('"' | '\u{201d}' | '\u{2033}') => "in",
            Is::Word(_) | Is::Number(_) | Is::Sign(_) => return Ok(None),
        };
        let block = length(&format!("{number} {unit}"), &BLOCKS)?;
        self.set_manner(Manner {
            block: Some(block),
            ..Manner::default()
        })?;
        Ok(Some(2))
    }

    /// "bar: hex": the words up to the next thing; without a colon "bar close" is a remark.
    fn bar(&mut self, tokens: &[Token]) -> Result<usize, Wrong> {
        let from = 1 + colon(&tokens[1..]);
        if from == 1 {
            return Ok(0);
        }
        let goes_on = |token: &&Token| match &token.is {
            Is::Word(word) => !ENDS.contains(&word.as_str()),
            Is::Number(_) => true,
            Is::Sign(sign) => *sign == '-',
        };
        let count = tokens[from..].iter().take_while(goes_on).count();
        if count == 0 {
            return Err(unread(self.text, &self.text[tokens[0].at.0..]));
        }
        let name = &self.text[tokens[from].at.0..tokens[from + count - 1].at.1];
        if let Some(other) = self.part.bar.replace(name.to_owned())
            && other != name
        {
            return Err(super::two_bars(self.text));
        }
        Ok(from + count)
    }
}

/// Belt, straps and blocks with "no" or without, and how many tokens say it.
fn gear(word: &str, second: &str, tokens: &[Token]) -> Option<(Manner, usize)> {
    let (on, gear, used) = match word {
        "no" | "without" | "ohne" => (false, second, 2),
        "beltless" => (false, "belt", 1),
        "strapless" => (false, "straps", 1),
        _ => (true, word, 1),
    };
    let next = tokens.get(used..).and_then(word_at);
    if on && next.is_some_and(|next| SOME.contains(&next)) {
        return None;
    }
    let mut manner = Manner::default();
    if is_belt_word(gear) {
        manner.belt = Some(on);
    } else if is_straps_word(gear) {
        manner.straps = Some(on);
    } else if is_block_word(gear) && !on {
        manner.block = Some(Length::ZERO);
    } else {
        return None;
    }
    Some((manner, used))
}

/// How the bar is held, and how many tokens say it.
fn grip(word: &str, second: &str, tokens: &[Token]) -> Option<(Manner, usize)> {
    let third = tokens.get(2..).and_then(word_at);
    let (grip, used) = match (word, second) {
        ("hook" | "hooked", "grip") => (Grip::Hook, 2),
        ("hookgrip", _) => (Grip::Hook, 1),
        ("double", "overhand") => (Grip::DoubleOverhand, 2 + usize::from(third == Some("grip"))),
        _ => return None,
    };
    let grip = Some(grip);
    let said = Manner {
        grip,
        ..Manner::default()
    };
    Some((said, used))
}

/// Words that end the name of a bar.
const ENDS: [&str; 16] = [
    "rest", "pause", "rpe", "rir", "tempo", "hole", "blocks", "block", "belt", "straps", "no",
    "without", "ohne", "top", "back", "drop",
];

/// 1 where a colon or an equals sign stands in front.
fn colon(tokens: &[Token]) -> usize {
    usize::from(matches!(
        tokens.first().map(|token| &token.is),
        Some(Is::Sign(':' | '='))
    ))
}
