//! The form in which facts lie in the journal, by version. Old versions are read for ever.
//!
//! Refuses: unknown versions, kinds and fields.
use domain::Fact;
use thiserror::Error;

pub mod v1;
pub mod v2;

/// A fact as written: goes into one row.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Written {
    /// Version of the wire form.
    pub version: u32,
    /// What kind of fact.
    pub kind: &'static str,
    /// The rest, JSON.
    pub body: String,
}

/// Why a row's content is none that this program understands.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
pub enum WireFault {
    /// A later version of the wire form.
    #[error(
        "it was written by a newer version of this program (wire version {found}, this one reads \
         up to {known})"
    )]
    Version {
        /// Found.
        found: u32,
        /// Latest that can be read.
        known: u32,
    },
    /// A kind of fact that this version of the wire form does not have.
    #[error("wire version {version} has no kind {kind:?}")]
    Kind {
        /// Version of the row.
        version: u32,
        /// Kind of the row.
        kind: String,
    },
    /// The body is not JSON of that kind's form.
    #[error("its body is not a {kind}: {detail}")]
    Body {
        /// Kind of the row.
        kind: &'static str,
        /// What the JSON reader says.
        detail: String,
    },
    /// A value of the right form that means nothing.
    #[error("its {field} is {found:?}, which is not {wanted}")]
    Value {
        /// Which field.
        field: &'static str,
        /// What it holds.
        found: String,
        /// What it would have to be.
        wanted: &'static str,
    },
}

/// Writes a fact in the version that its kind came with.
#[must_use]
pub fn encode(fact: &Fact) -> Written {
    v2::encode(fact).unwrap_or_else(|| v1::encode(fact))
}

/// Reads a fact of any version so far.
///
/// # Errors
/// [`WireFault`] when it is none.
pub fn decode(version: u32, kind: &str, body: &str) -> Result<Fact, WireFault> {
    match version {
        v1::VERSION => v1::decode(kind, body),
        v2::VERSION => v2::decode(kind, body),
        found => Err(WireFault::Version {
            found,
            known: v2::VERSION,
        }),
    }
}
