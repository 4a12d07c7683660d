//! Work loads to choose from, and what is due the next time.
use super::draw::{bar, spot};
use super::ladders::five_rungs;
use RowState::{Done, Now};
use view::draw::{Change, RowState};
use view::next::Next;
use view::settle::{Choice, Settle};

/// Five loads around 180 kg.
pub(crate) fn settle() -> Settle {
    let choice = |load: &str, plan: &str, against: &str, discs: &str| Choice {
        load: load.into(),
        unit: "kg".into(),
        plan: plan.into(),
        mark: String::new(),
        against: against.into(),
        bar: bar(discs),
        change: Change {
            heading: "each side".into(),
            sentence: discs.replace('+', "").replace(' ', " + "),
            ..Change::default()
        },
        height: 1.0,
    };
    Settle {
        work: "work set, 5 reps".into(),
        last: "last time 177.5 kg × 5, all reps, back held, on 18 November".into(),
        asked: String::new(),
        spot: spot("9", "1 mat, 20 mm", &["belt", "straps"]),
        done: "165 kg × 1, back held".into(),
        left: "2:10".into(),
        share: 0.7,
        loads: vec![
            choice("172.5", "", "5 kg less than last time", "25 25 20 +5"),
            choice("175", "", "2.5 kg less than last time", "25 25 20 +5 +1.25"),
            choice("177.5", "", "as last time", "25 25 20 +5 +2.5"),
            choice(
                "180",
                "the plan",
                "2.5 kg more than last time",
                "25 25 20 +10",
            ),
            choice(
                "182.5",
                "",
                "5 kg more than last time",
                "25 25 20 +10 +1.25",
            ),
        ],
        ladder: five_rungs([Done, Done, Done, Done, Now]),
        caution: "more only if the back held in every warm-up; the coach decides".into(),
        main: "go with 180 kg".into(),
    }
}

/// Three loads in pounds, the rest over.
pub(crate) fn settle_pounds() -> Settle {
    let mut settle = settle();
    settle.loads.drain(..2);
    for (choice, load) in settle.loads.iter_mut().zip(["995", "1002.5", "1012.5"]) {
        choice.load = load.into();
        choice.unit = "lb".into();
    }
    Settle {
        left: String::new(),
        last: "the first time".into(),
        main: "go with 1002.5 lb".into(),
        ..settle
    }
}

/// After a season with a moved back in it.
pub(crate) fn next() -> Next {
    Next {
        work: "182.5 kg × 5".into(),
        verdict: "raise".into(),
        reason: "up 2.5 kg: all reps with the back held".into(),
        by_coach: false,
    }
}
