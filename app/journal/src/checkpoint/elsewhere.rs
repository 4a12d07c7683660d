//! Which lifts of one other kiosk stand, as numbers in one line of a checkpoint.
use domain::LiftNo;
use domain::elsewhere::Taken;
use serde::{Deserialize, Serialize};

/// One kiosk's.
#[derive(Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Elsewhere {
    kiosk: String,
    floor: u32,
    /// Number there, number here, event there.
    lifts: Vec<(u32, u32, u64)>,
}

impl Elsewhere {
    pub(super) fn of(kiosk: &str, taken: &Taken) -> Self {
        let lift = |(there, (here, seq)): (&LiftNo, &(LiftNo, u64))| (there.0, here.0, *seq);
        Self {
            kiosk: kiosk.to_owned(),
            floor: taken.floor,
            lifts: taken.lifts.iter().map(lift).collect(),
        }
    }

    pub(super) fn taken(self) -> (String, Taken) {
        let lift = |(there, here, seq)| (LiftNo(there), (LiftNo(here), seq));
        let taken = Taken {
            floor: self.floor,
            lifts: self.lifts.into_iter().map(lift).collect(),
        };
        (self.kiosk, taken)
    }
}
