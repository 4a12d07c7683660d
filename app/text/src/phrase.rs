//! A key of the catalogue: the message that it names, and the gaps that the message has.

/// The same thing said in every language, with `N` gaps.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Phrase<const N: usize = 0> {
    pub(crate) id: &'static str,
    pub(crate) gaps: &'static [&'static str; N],
}

/// A message, whatever its gaps.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Message {
    /// Its identifier in the catalogues.
    pub id: &'static str,
    /// The names of its gaps, in the order in which they are filled.
    pub gaps: &'static [&'static str],
}

impl<const N: usize> Phrase<N> {
    /// The message that it names.
    #[must_use]
    pub const fn message(self) -> Message {
        Message {
            id: self.id,
            gaps: self.gaps,
        }
    }
}

/// Writes a table of keys, `KEY "message" gap gap;`, and `ALL`, the messages that they name.
macro_rules! keys {
    ($($key:ident $id:literal $($gap:ident)*;)*) => {
        $(
            #[allow(missing_docs, reason = "its words stand in the catalogue")]
            pub const $key: $crate::Phrase<{
                let gaps: &[&str] = &[$(stringify!($gap)),*];
                gaps.len()
            }> = $crate::Phrase { id: $id, gaps: &[$(stringify!($gap)),*] };
        )*
        /// The table.
        pub(crate) const ALL: &[$crate::Message] = &[$($key.message()),*];
    };
}

pub(crate) use keys;
