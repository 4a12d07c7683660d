//! Any face that a kiosk may have shown.
use crate::strategies::{date, stacks, text};
use domain::LiftNo;
use domain::shown::{LifterPart, OwnPage, Shown, ShownOrder, ShownScreen, WhyPart};
use proptest::collection::vec;
use proptest::option;
use proptest::prelude::*;
use proptest::sample::select;

pub(crate) fn shown() -> impl Strategy<Value = Shown> {
    let lift = || any::<u32>().prop_map(LiftNo);
    let why = select(vec![WhyPart::Next, WhyPart::Split, WhyPart::Single]);
    let own = select(vec![
        OwnPage::Panel,
        OwnPage::About,
        OwnPage::Lan,
        OwnPage::Meet,
        OwnPage::Desk,
    ]);
    let part = prop_oneof![
        Just(LifterPart::Due),
        Just(LifterPart::SetUp),
        Just(LifterPart::Reps),
        any::<bool>().prop_map(LifterPart::Moved),
        Just(LifterPart::Turn),
        vec(any::<u16>(), 0..4).prop_map(LifterPart::Holds),
        text().prop_map(LifterPart::History),
        (lift(), why).prop_map(|(no, part)| LifterPart::Why(no, part)),
    ];
    let screen = prop_oneof![
        Just(ShownScreen::All),
        Just(ShownScreen::Floor),
        (text(), part).prop_map(|(name, part)| ShownScreen::Lifter(name, part)),
        own.prop_map(ShownScreen::Own),
    ];
    let order = (text(), text(), date(), stacks()).prop_map(|(rack, bar, date, to)| ShownOrder {
        rack,
        bar,
        date,
        to,
    });
    let eye = (
        option::of((lift(), any::<u16>())),
        option::of(lift()),
        option::of((lift(), any::<bool>())),
        option::of(lift()),
    );
    (date(), screen, eye, vec(order, 0..3)).prop_map(
        |(date, screen, (early, entered, settle, seen_end), orders)| Shown {
            date,
            screen,
            early,
            entered,
            settle,
            seen_end,
            orders,
        },
    )
}
