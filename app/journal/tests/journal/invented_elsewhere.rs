//! A lift that was done at another kiosk: invented.
use crate::invented;
use domain::elsewhere::{DoneThere, Origin};
use domain::state::Entered;
use domain::{Fact, Hold, LiftNo, LiftSheet, Moment};

/// An invented sheet.
pub(crate) fn sheet() -> LiftSheet {
    let mut facts = invented::facts().into_iter();
    let begun = facts.find_map(|fact| {
        if let Fact::LiftBegun { sheet, .. } = fact {
            Some(*sheet)
        } else {
            None
        }
    });
    LiftSheet {
        rack: "river rack".into(),
        ..begun.expect("one of the facts begins a lift")
    }
}

/// One of each kind, and each form of those that have more than one; of the lift `no`.
pub(crate) fn facts(no: LiftNo) -> Vec<Fact> {
    let entry = |minute: i64, rung, what, effort| Fact::DoneElsewhere {
        no,
        done: DoneThere {
            at: Moment(1_772_460_000_000 + minute * 60_000),
            rung,
            what,
            effort,
        },
    };
    let set = |reps, hold| Entered::Set { reps, hold };
    vec![
        Fact::BegunElsewhere {
            no,
            origin: Box::new(Origin {
                kiosk: "river".into(),
                no: LiftNo(7),
                seq: 311,
            }),
            sheet: Box::new(sheet()),
            begun: Moment(1_772_460_000_000),
        },
        entry(2, 0, set(5, Hold::Kept), None),
        entry(4, 1, Entered::Settled, None),
        entry(5, 1, set(3, Hold::MovedAt(3)), Some(85)),
        entry(6, 2, Entered::WentOn, None),
        entry(7, 2, Entered::Skipped, None),
        entry(8, 3, Entered::LeftOpen, None),
        entry(9, 3, Entered::Stopped, None),
    ]
}
