//! Wire version 2: what was said to be on a bar. Once released never change; add v3.
use crate::wire::WireFault;
use crate::wire::v1::{PlateFaceV1, read_date, write_date};
use domain::believed::{BarWord, Disc, Said, Stacks};
use domain::{Fact, LiftNo, PlateFace};
use serde::{Deserialize, Serialize};

/// Both sleeves; plates are numbers into a list of kinds.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct StacksV2 {
    plates: Vec<PlateFaceV1>,
    left: Vec<DiscV2>,
    right: Vec<DiscV2>,
}

/// One plate: its kind and its mark.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct DiscV2 {
    plate: usize,
    #[serde(deserialize_with = "crate::wire::v1::present")]
    mark: Option<String>,
}

impl StacksV2 {
    pub(super) fn of(stacks: &Stacks) -> Self {
        let mut faces: Vec<PlateFace> = Vec::new();
        let mut side = |discs: &[Disc]| {
            let mut written = Vec::new();
            for disc in discs {
                let known = faces.iter().position(|face| *face == disc.face);
                let plate = known.unwrap_or_else(|| {
                    faces.push(disc.face);
                    faces.len() - 1
                });
                written.push(DiscV2 {
                    plate,
                    mark: disc.mark.clone(),
                });
            }
            written
        };
        let (left, right) = (side(&stacks.left), side(&stacks.right));
        Self {
            plates: faces.into_iter().map(Into::into).collect(),
            left,
            right,
        }
    }
}

impl TryFrom<StacksV2> for Stacks {
    type Error = WireFault;

    fn try_from(body: StacksV2) -> Result<Self, WireFault> {
        let faces: Vec<PlateFace> = body.plates.into_iter().map(Into::into).collect();
        let disc = |disc: DiscV2| -> Result<Disc, WireFault> {
            let face = faces.get(disc.plate).copied();
            let face = face.ok_or_else(|| WireFault::Value {
                field: "plate",
                found: disc.plate.to_string(),
                wanted: "the number of one of the listed plates",
            })?;
            Ok(Disc {
                face,
                mark: disc.mark,
            })
        };
        let side = |discs: Vec<DiscV2>| discs.into_iter().map(disc).collect::<Result<_, _>>();
        Ok(Self {
            left: side(body.left)?,
            right: side(body.right)?,
        })
    }
}

/// Who said it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
enum SaidV2 {
    /// A set of this lift.
    Set(u32),
    /// "Loaded", for this lift.
    Loaded(u32),
    /// By hand.
    Stated,
}

/// Body of `bar_said`.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct BarSaidV2 {
    rack: String,
    bar: String,
    date: String,
    holds: StacksV2,
    said: SaidV2,
    /// Other bars of which it leaves open what they hold.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    contradicts: Vec<String>,
}

impl BarSaidV2 {
    pub(super) fn of(word: &BarWord) -> Self {
        Self {
            rack: word.rack.clone(),
            bar: word.bar.clone(),
            date: write_date(word.date),
            holds: StacksV2::of(&word.holds),
            said: match word.said {
                Said::Set(no) => SaidV2::Set(no.0),
                Said::Loaded(no) => SaidV2::Loaded(no.0),
                Said::Stated => SaidV2::Stated,
            },
            contradicts: word.contradicts.clone(),
        }
    }
}

impl TryFrom<BarSaidV2> for Fact {
    type Error = WireFault;

    fn try_from(body: BarSaidV2) -> Result<Self, WireFault> {
        Ok(Self::BarSaid(Box::new(BarWord {
            rack: body.rack,
            bar: body.bar,
            date: read_date(&body.date)?,
            holds: body.holds.try_into()?,
            said: match body.said {
                SaidV2::Set(no) => Said::Set(LiftNo(no)),
                SaidV2::Loaded(no) => Said::Loaded(LiftNo(no)),
                SaidV2::Stated => Said::Stated,
            },
            contradicts: body.contradicts,
        })))
    }
}

/// Body of `bar_word_undone`.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct BarV2 {
    bar: String,
}

impl BarV2 {
    pub(super) fn of(bar: &str) -> Self {
        Self {
            bar: bar.to_owned(),
        }
    }
}

impl From<BarV2> for Fact {
    fn from(body: BarV2) -> Self {
        Self::BarWordUndone { bar: body.bar }
    }
}
