//! Clocks that were set, and a lift that was left open: invented.
use domain::steady::BootId;
use domain::{Fact, LiftNo};

/// One of each kind, and each form of those that have more than one; of the lift `no`.
pub(crate) fn facts(no: LiftNo) -> Vec<Fact> {
    let day = |day| chrono::NaiveDate::from_ymd_opt(2026, 3, day).expect("a day");
    vec![
        Fact::ClockAnchored {
            boot: BootId(0x3f2a_90c1_5b7e_4d68_8e11_7c40_a9d5_02b6),
            up_ms: 41_250,
            offset_ms: Some(-1_480),
        },
        Fact::ClockAnchored {
            boot: BootId(7),
            up_ms: 9_000,
            offset_ms: None,
        },
        Fact::ClockSet {
            offset_ms: 43_200_000,
        },
        Fact::LiftRedated { no, date: day(3) },
        Fact::LiftLapsed { no },
        Fact::LiftReopened { no, on: day(4) },
    ]
}
