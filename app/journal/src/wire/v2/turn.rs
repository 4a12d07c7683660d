//! Wire version 2: what was said about a lifter's turn. Once released never change; add v3.
use domain::{Fact, LiftNo};
use serde::{Deserialize, Serialize};

/// Body of all kinds that only name a lift.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct LiftV2 {
    /// Number of the lift.
    no: u32,
}

impl LiftV2 {
    pub(super) const fn of(no: LiftNo) -> Self {
        Self { no: no.0 }
    }

    const fn no(self) -> LiftNo {
        LiftNo(self.no)
    }

    pub(super) const fn deferred(self) -> Fact {
        Fact::TurnDeferred { no: self.no() }
    }

    pub(super) const fn passed(self) -> Fact {
        Fact::TurnPassed { no: self.no() }
    }

    pub(super) const fn claimed(self) -> Fact {
        Fact::TurnClaimed { no: self.no() }
    }

    pub(super) const fn left(self) -> Fact {
        Fact::LifterLeft { no: self.no() }
    }

    pub(super) const fn unsaid(self) -> Fact {
        Fact::TurnUnsaid { no: self.no() }
    }

    pub(super) const fn returned(self) -> Fact {
        Fact::LifterReturned { no: self.no() }
    }
}

/// Body of `rest_lengthened`.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct RestLengthenedV2 {
    no: u32,
    seconds: u16,
}

impl RestLengthenedV2 {
    pub(super) const fn of(no: LiftNo, seconds: u16) -> Self {
        Self { no: no.0, seconds }
    }
}

impl From<RestLengthenedV2> for Fact {
    fn from(body: RestLengthenedV2) -> Self {
        Self::RestLengthened {
            no: LiftNo(body.no),
            seconds: body.seconds,
        }
    }
}
