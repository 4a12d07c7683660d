//! Wire version 2: what the screen showed. Once released never change; add v3.
use super::bar::StacksV2;
use crate::wire::WireFault;
use crate::wire::v1::{present, read_date, write_date};
use domain::shown::{LifterPart, OwnPage, Shown, ShownOrder, ShownScreen, WhyPart};
use domain::{Fact, LiftNo};
use serde::{Deserialize, Serialize};

/// Body of `screen_shown`.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct ScreenShownV2 {
    date: String,
    screen: ScreenV2,
    #[serde(deserialize_with = "present")]
    early: Option<(u32, u16)>,
    #[serde(deserialize_with = "present")]
    entered: Option<u32>,
    #[serde(deserialize_with = "present")]
    settle: Option<(u32, bool)>,
    #[serde(deserialize_with = "present")]
    seen_end: Option<u32>,
    orders: Vec<OrderV2>,
}

/// Which screen.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
enum ScreenV2 {
    All,
    Floor,
    Lifter(String, PartV2),
    Panel,
    About,
    Lan,
    Meet,
    Desk,
}

/// Which part of a lifter's screens.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
enum PartV2 {
    Due,
    SetUp,
    Reps,
    Moved(bool),
    Turn,
    Holds(Vec<u16>),
    History(String),
    WhyNext(u32),
    WhySplit(u32),
    WhySingle(u32),
}

/// One order.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct OrderV2 {
    rack: String,
    bar: String,
    date: String,
    to: StacksV2,
}

impl ScreenShownV2 {
    pub(super) fn of(shown: &Shown) -> Self {
        let order = |order: &ShownOrder| OrderV2 {
            rack: order.rack.clone(),
            bar: order.bar.clone(),
            date: write_date(order.date),
            to: StacksV2::of(&order.to),
        };
        Self {
            date: write_date(shown.date),
            screen: match &shown.screen {
                ShownScreen::All => ScreenV2::All,
                ShownScreen::Floor => ScreenV2::Floor,
                ShownScreen::Lifter(name, part) => ScreenV2::Lifter(name.clone(), part_of(part)),
                ShownScreen::Own(OwnPage::Panel) => ScreenV2::Panel,
                ShownScreen::Own(OwnPage::About) => ScreenV2::About,
                ShownScreen::Own(OwnPage::Lan) => ScreenV2::Lan,
                ShownScreen::Own(OwnPage::Meet) => ScreenV2::Meet,
                ShownScreen::Own(OwnPage::Desk) => ScreenV2::Desk,
            },
            early: shown.early.map(|(no, rung)| (no.0, rung)),
            entered: shown.entered.map(|no| no.0),
            settle: shown.settle.map(|(no, open)| (no.0, open)),
            seen_end: shown.seen_end.map(|no| no.0),
            orders: shown.orders.iter().map(order).collect(),
        }
    }
}

fn part_of(part: &LifterPart) -> PartV2 {
    match part {
        LifterPart::Due => PartV2::Due,
        LifterPart::SetUp => PartV2::SetUp,
        LifterPart::Reps => PartV2::Reps,
        LifterPart::Moved(through) => PartV2::Moved(*through),
        LifterPart::Turn => PartV2::Turn,
        LifterPart::Holds(plates) => PartV2::Holds(plates.clone()),
        LifterPart::History(lift) => PartV2::History(lift.clone()),
        LifterPart::Why(no, WhyPart::Next) => PartV2::WhyNext(no.0),
        LifterPart::Why(no, WhyPart::Split) => PartV2::WhySplit(no.0),
        LifterPart::Why(no, WhyPart::Single) => PartV2::WhySingle(no.0),
    }
}

impl From<PartV2> for LifterPart {
    fn from(part: PartV2) -> Self {
        match part {
            PartV2::Due => Self::Due,
            PartV2::SetUp => Self::SetUp,
            PartV2::Reps => Self::Reps,
            PartV2::Moved(through) => Self::Moved(through),
            PartV2::Turn => Self::Turn,
            PartV2::Holds(plates) => Self::Holds(plates),
            PartV2::History(lift) => Self::History(lift),
            PartV2::WhyNext(no) => Self::Why(LiftNo(no), WhyPart::Next),
            PartV2::WhySplit(no) => Self::Why(LiftNo(no), WhyPart::Split),
            PartV2::WhySingle(no) => Self::Why(LiftNo(no), WhyPart::Single),
        }
    }
}

impl TryFrom<ScreenShownV2> for Fact {
    type Error = WireFault;

    fn try_from(body: ScreenShownV2) -> Result<Self, WireFault> {
        let order = |order: OrderV2| {
            Ok(ShownOrder {
                rack: order.rack,
                bar: order.bar,
                date: read_date(&order.date)?,
                to: order.to.try_into()?,
            })
        };
        let orders = body.orders.into_iter().map(order);
        Ok(Self::ScreenShown(Box::new(Shown {
            date: read_date(&body.date)?,
            screen: match body.screen {
                ScreenV2::All => ShownScreen::All,
                ScreenV2::Floor => ShownScreen::Floor,
                ScreenV2::Lifter(name, part) => ShownScreen::Lifter(name, part.into()),
                ScreenV2::Panel => ShownScreen::Own(OwnPage::Panel),
                ScreenV2::About => ShownScreen::Own(OwnPage::About),
                ScreenV2::Lan => ShownScreen::Own(OwnPage::Lan),
                ScreenV2::Meet => ShownScreen::Own(OwnPage::Meet),
                ScreenV2::Desk => ShownScreen::Own(OwnPage::Desk),
            },
            early: body.early.map(|(no, rung)| (LiftNo(no), rung)),
            entered: body.entered.map(LiftNo),
            settle: body.settle.map(|(no, open)| (LiftNo(no), open)),
            seen_end: body.seen_end.map(LiftNo),
            orders: orders.collect::<Result<_, WireFault>>()?,
        })))
    }
}
