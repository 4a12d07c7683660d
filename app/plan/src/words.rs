//! The words of a fault: an English template and what fills it, so that whoever shows it can say
//! it in another language.
//!
//! Refuses: translating; a template is looked up by whoever knows languages.
use domain::gaps::fill;
use std::fmt;

/// A sentence, or a part of one.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Words {
    text: &'static str,
    with: Vec<Piece>,
}

/// A thing by its name, as tables and lists of names hold it: "a rack", "lifter".
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Term(pub(crate) &'static str);

impl fmt::Display for Term {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.0)
    }
}

impl From<Term> for Words {
    fn from(term: Term) -> Self {
        Self::new(term.0, Vec::new())
    }
}

impl From<Term> for Piece {
    fn from(term: Term) -> Self {
        Self::Words(term.into())
    }
}

/// What stands for `{0}` and the like.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Piece {
    /// A name, a number, what was read: the same in every language.
    Plain(String),
    /// Words of their own.
    Words(Words),
}

impl Words {
    /// A template with `{0}`, `{1}` and so on for what fills it.
    #[must_use]
    pub const fn new(text: &'static str, with: Vec<Piece>) -> Self {
        Self { text, with }
    }

    /// What is the same in every language.
    pub(crate) fn plain(text: impl Into<String>) -> Self {
        Self::new("{0}", vec![Piece::Plain(text.into())])
    }

    /// The same with each template as `known` has it in another language; those that it does not
    /// know stay as they are.
    pub fn told(&self, known: &impl Fn(&'static str) -> Option<&'static str>) -> String {
        let text = known(self.text).unwrap_or(self.text);
        let piece = |piece: &Piece| match piece {
            Piece::Plain(text) => text.clone(),
            Piece::Words(words) => words.told(known),
        };
        let with: Vec<String> = self.with.iter().map(piece).collect();
        fill(text, &with)
    }
}

impl fmt::Display for Words {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.told(&|_| None))
    }
}

impl From<&Self> for Words {
    fn from(words: &Self) -> Self {
        words.clone()
    }
}

impl From<Words> for Piece {
    fn from(words: Words) -> Self {
        Self::Words(words)
    }
}

impl From<&Words> for Piece {
    fn from(words: &Words) -> Self {
        Self::Words(words.clone())
    }
}

macro_rules! plain {
    ($($kind:ty),*) => {
        $(impl From<$kind> for Piece {
            fn from(plain: $kind) -> Self {
                Self::Plain(plain.to_string())
            }
        })*
    };
}

plain!(String, &String, &str, usize, u64, u32, u16, u8, i64);

/// Words from a template and what fills it.
#[macro_export]
macro_rules! words {
    ($text:literal) => {
        $crate::Words::new($text, Vec::new())
    };
    ($text:literal $(, $with:expr)+ $(,)?) => {
        $crate::Words::new($text, vec![$($crate::Piece::from($with)),*])
    };
}
pub(crate) use words;

/// The name of a thing.
macro_rules! term {
    ($text:literal) => {
        $crate::words::Term($text)
    };
}
pub(crate) use term;
