//! What was done at other kiosks, at random.
use crate::strategies::{hold, sheet, text};
use domain::elsewhere::{DoneThere, Origin};
use domain::state::Entered;
use domain::{Fact, LiftNo, Moment};
use proptest::option;
use proptest::prelude::*;

/// What was done at other kiosks.
pub(crate) fn elsewhere(no: BoxedStrategy<LiftNo>) -> impl Strategy<Value = Fact> {
    let moment = || any::<i64>().prop_map(Moment);
    let what = prop_oneof![
        4 => (any::<u8>(), hold()).prop_map(|(reps, hold)| Entered::Set { reps, hold }),
        1 => Just(Entered::Skipped),
        1 => Just(Entered::Stopped),
        1 => Just(Entered::WentOn),
        1 => Just(Entered::Settled),
        1 => Just(Entered::LeftOpen),
    ];
    let rung = prop_oneof![0..4_u16, any::<u16>()];
    prop_oneof![
        (
            no.clone(),
            text(),
            any::<u32>(),
            any::<u64>(),
            sheet(),
            moment()
        )
            .prop_map(
                |(no, kiosk, there, seq, sheet, begun)| Fact::BegunElsewhere {
                    no,
                    origin: Box::new(Origin {
                        kiosk,
                        no: LiftNo(there),
                        seq
                    }),
                    sheet: Box::new(sheet),
                    begun,
                }
            ),
        (no, moment(), rung, what, option::of(any::<u8>())).prop_map(
            |(no, at, rung, what, effort)| Fact::DoneElsewhere {
                no,
                done: DoneThere {
                    at,
                    rung,
                    what,
                    effort
                },
            }
        ),
    ]
}
