//! A key of the catalogue: the message that it names, and the gaps that the message has.

/// The same thing said in every language, with `N` gaps.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Phrase<const N: usize = 0> {
    pub(crate) id: &'static str,
    pub(crate) gaps: [&'static str; N],
}

/// A key as a row of its table, whatever its gaps.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Row {
    /// The key's name in the sources.
    pub key: &'static str,
    /// The message's identifier in the catalogues.
    pub id: &'static str,
    /// The names of its gaps, in the order in which they are filled.
    pub gaps: &'static [&'static str],
}

/// Writes a table of keys, `KEY "message" gap gap;`, and `ALL`, its rows.
macro_rules! keys {
    ($($key:ident $id:literal $($gap:ident)*;)*) => {
        $(
            #[allow(missing_docs, reason = "its words stand in the catalogue")]
            pub const $key: $crate::Phrase<{
                let gaps: &[&str] = &[$(stringify!($gap)),*];
                gaps.len()
            }> = $crate::Phrase { id: $id, gaps: [$(stringify!($gap)),*] };
        )*
        /// The table.
        pub(crate) const ALL: &[$crate::Row] = &[$($crate::Row {
            key: stringify!($key),
            id: $id,
            gaps: &[$(stringify!($gap)),*],
        }),*];
    };
}

/// Writes a table of messages that are found by what they say in English: `"message" gap gap;`.
macro_rules! rows {
    ($($id:literal $($gap:ident)*;)*) => {
        /// The table.
        pub(crate) const ALL: &[$crate::Row] = &[$($crate::Row {
            key: $id,
            id: $id,
            gaps: &[$(stringify!($gap)),*],
        }),*];
    };
}
pub(crate) use {keys, rows};
