//! The words of a fault: a message by its key and what fills it, so that whoever shows it can say
//! it in another language.
use std::fmt;
use text::keys::checked as k;
use text::{Language, Message, Phrase};

/// A sentence, or a part of one.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Words {
    message: Message,
    with: Vec<Piece>,
}

/// A thing by its name, as tables and lists of names hold it: "a rack", "lifter".
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Term(pub(crate) Phrase);

impl fmt::Display for Term {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(Language::English.pick(self.0))
    }
}

impl From<Term> for Words {
    fn from(term: Term) -> Self {
        Self::of(term.0)
    }
}

impl From<Term> for Piece {
    fn from(term: Term) -> Self {
        Self::Words(term.into())
    }
}

/// What fills a gap.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Piece {
    /// A name, a number, what was read: the same in every language.
    Plain(String),
    /// Words of their own.
    Words(Words),
}

impl Words {
    /// A message without gaps.
    #[must_use]
    pub const fn of(key: Phrase) -> Self {
        let with = Vec::new();
        Self {
            message: key.message(),
            with,
        }
    }

    /// A message with what fills its gaps, in the order in which its key names them.
    #[must_use]
    pub fn with<const N: usize>(key: Phrase<N>, with: [Piece; N]) -> Self {
        Self {
            message: key.message(),
            with: with.into(),
        }
    }

    /// What is the same in every language.
    pub(crate) fn plain(text: impl Into<String>) -> Self {
        Self::with(k::AS_SAID, [Piece::Plain(text.into())])
    }

    /// As a language says it.
    #[must_use]
    pub fn to(&self, say: Language) -> String {
        let piece = |piece: &Piece| match piece {
            Piece::Plain(text) => text.clone(),
            Piece::Words(words) => words.to(say),
        };
        let with: Vec<String> = self.with.iter().map(piece).collect();
        let with: Vec<&str> = with.iter().map(String::as_str).collect();
        say.tell(self.message, &with)
    }
}

/// In English, as the terminal is told.
impl fmt::Display for Words {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.to(Language::English))
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

/// Words by their key and what fills them.
#[macro_export]
macro_rules! words {
    ($key:expr) => {
        $crate::Words::of($key)
    };
    ($key:expr $(, $with:expr)+ $(,)?) => {
        $crate::Words::with($key, [$($crate::Piece::from($with)),*])
    };
}
pub(crate) use words;

/// The name of a thing.
macro_rules! term {
    ($key:expr) => {
        $crate::words::Term($key)
    };
}
pub(crate) use term;
