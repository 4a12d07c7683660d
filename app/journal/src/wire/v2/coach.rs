//! Wire version 2: what the coach said of a lifter beside loads. Once released never change; add
//! v3.
use crate::wire::WireFault;
use crate::wire::v1::{read_date, write_date};
use domain::coach_word::{CoachSays, CoachWord};
use domain::next::Ill;
use domain::{Fact, Mass};
use serde::{Deserialize, Serialize};

/// Body of `coach_said`.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct CoachSaidV2 {
    lifter: String,
    what: SaysV2,
    note: String,
}

#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case", deny_unknown_fields)]
enum SaysV2 {
    Hurt {
        since: String,
    },
    Fit,
    Ill {
        from: String,
        to: String,
    },
    LoadMeant {
        lift: String,
        date: String,
        load_ng: i64,
    },
}

impl CoachSaidV2 {
    pub(super) fn of(word: &CoachWord) -> Self {
        let what = match &word.what {
            CoachSays::Hurt { since } => SaysV2::Hurt {
                since: write_date(*since),
            },
            CoachSays::Fit => SaysV2::Fit,
            CoachSays::Ill(ill) => SaysV2::Ill {
                from: write_date(ill.from),
                to: write_date(ill.to),
            },
            CoachSays::LoadMeant { lift, date, load } => SaysV2::LoadMeant {
                lift: lift.clone(),
                date: write_date(*date),
                load_ng: load.ng(),
            },
        };
        Self {
            lifter: word.lifter.clone(),
            what,
            note: word.note.clone(),
        }
    }
}

impl TryFrom<CoachSaidV2> for Fact {
    type Error = WireFault;
    fn try_from(body: CoachSaidV2) -> Result<Self, WireFault> {
        let what = match body.what {
            SaysV2::Hurt { since } => CoachSays::Hurt {
                since: read_date(&since)?,
            },
            SaysV2::Fit => CoachSays::Fit,
            SaysV2::Ill { from, to } => CoachSays::Ill(Ill {
                from: read_date(&from)?,
                to: read_date(&to)?,
            }),
            SaysV2::LoadMeant {
                lift,
                date,
                load_ng,
            } => CoachSays::LoadMeant {
                lift,
                date: read_date(&date)?,
                load: Mass::from_ng(load_ng),
            },
        };
        Ok(Self::CoachSaid(Box::new(CoachWord {
            lifter: body.lifter,
            what,
            note: body.note,
        })))
    }
}
