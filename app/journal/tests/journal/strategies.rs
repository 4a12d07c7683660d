//! Every fact that the domain can say, at random.
use crate::strategies_elsewhere::elsewhere;
use crate::strategies_next::{coach_word, decided};
use crate::strategies_shown::shown;
use chrono::NaiveDate;
use domain::believed::{BarWord, Disc, Said, Stacks};
use domain::lift::{Grip, Landmark};
use domain::prescription::{LoadWish, SetGroup};
use domain::rotation::{CalledTurn, Station};
use domain::settle::Settled;
use domain::sheet::{BarSheet, HookSheet, Overlap, PinSheet, Rated, RungKind, Warning};
use domain::steady::BootId;
use domain::{
    Event, Fact, Hold, Length, LiftNo, LiftSheet, Mass, MassUnit, Moment, PlateFace, Prescription,
    Rung,
};
use proptest::collection::vec;
use proptest::option;
use proptest::prelude::*;

pub(crate) fn mass() -> impl Strategy<Value = Mass> {
    any::<i64>().prop_map(Mass::from_ng)
}

fn length() -> impl Strategy<Value = Length> {
    any::<i64>().prop_map(Length::from_nm)
}

pub(crate) fn text() -> impl Strategy<Value = String> {
    prop_oneof![".*", "[a-z ]{0,12}", any::<String>()]
}

pub(crate) fn date() -> impl Strategy<Value = NaiveDate> {
    let days = NaiveDate::MIN.to_epoch_days()..=NaiveDate::MAX.to_epoch_days();
    prop_oneof![days, 15_000..30_000]
        .prop_map(|day| NaiveDate::from_epoch_days(day).expect("within the calendar"))
}

fn unit() -> impl Strategy<Value = MassUnit> {
    prop_oneof![Just(MassUnit::Kg), Just(MassUnit::Lb)]
}

fn landmark() -> impl Strategy<Value = Landmark> {
    prop_oneof![
        Just(Landmark::TibialTuberosity),
        Just(Landmark::PatellaTop),
        Just(Landmark::MidThigh),
        Just(Landmark::Lockout)
    ]
}

fn warning() -> impl Strategy<Value = Warning> {
    prop_oneof![
        landmark().prop_map(Warning::NotMeasured),
        length().prop_map(Warning::NoHole),
        Just(Warning::StraightBarOnPins),
        Just(Warning::OverlapSmall),
        Just(Warning::NotLoadable),
        (landmark(), length(), any::<bool>()).prop_map(|(landmark, spread, doubtful)| {
            Warning::Estimated {
                landmark,
                spread,
                doubtful,
            }
        }),
        (landmark(), length(), length()).prop_map(|(landmark, spread, spacing)| {
            Warning::EstimateTooRough {
                landmark,
                spread,
                spacing,
            }
        }),
        (mass(), mass(), length()).prop_map(|(from, to, raise)| Warning::LowPlates {
            from,
            to,
            raise
        }),
        (rated(), mass(), mass()).prop_map(|(what, load, rated)| Warning::OverRated {
            what,
            load,
            rated
        }),
        (length(), any::<u32>())
            .prop_map(|(drop, of_yield_ppm)| Warning::TakesSet { drop, of_yield_ppm }),
    ]
}

fn rated() -> impl Strategy<Value = Rated> {
    prop_oneof![Just(Rated::Pins), Just(Rated::Rack), Just(Rated::Bar)]
}

fn face() -> impl Strategy<Value = PlateFace> {
    (mass(), unit(), length(), length()).prop_map(|(mass, unit, thickness, diameter)| PlateFace {
        mass,
        unit,
        thickness,
        diameter,
    })
}

fn rung() -> impl Strategy<Value = Rung> {
    let kind = prop_oneof![Just(RungKind::WarmUp), Just(RungKind::Work)];
    // Faces repeat within a sheet, as plates do.
    let faces = || vec(face(), 0..3).prop_map(|faces| [faces.clone(), faces].concat());
    let plates = (faces(), faces(), faces());
    let rest = (any::<bool>(), any::<bool>(), any::<u32>());
    (kind, mass(), any::<u8>(), plates, rest).prop_map(
        |(kind, load, reps, (per_side, take_off, put_on), (belt, straps, rest_s))| Rung {
            kind,
            load,
            reps,
            per_side,
            take_off,
            put_on,
            belt,
            straps,
            rest_s,
        },
    )
}

fn bar() -> impl Strategy<Value = BarSheet> {
    (text(), mass(), mass(), length(), length()).prop_map(
        |(name, mass, collars, shaft_diameter, sleeve)| BarSheet {
            name,
            mass,
            collars,
            shaft_diameter,
            sleeve,
        },
    )
}

fn pins() -> impl Strategy<Value = PinSheet> {
    let heights = (length(), length(), length(), option::of(length()));
    let rack = (length(), length(), any::<u16>());
    (any::<u16>(), vec(length(), 0..3), landmark(), heights, rack).prop_map(
        |(hole, mats, landmark, (bar_height, off_target, landmark_height, patella_top), rack)| {
            PinSheet {
                hole,
                mats,
                bar_height,
                off_target,
                landmark,
                landmark_height,
                patella_top,
                first_hole: rack.0,
                spacing: rack.1,
                holes: rack.2,
            }
        },
    )
}

fn overlap() -> impl Strategy<Value = Overlap> {
    (text(), length(), length()).prop_map(|(partner, length, least)| Overlap {
        partner,
        length,
        least,
    })
}

pub(crate) fn sheet() -> impl Strategy<Value = LiftSheet> {
    let grip = prop_oneof![Just(Grip::DoubleOverhand), Just(Grip::Hook)];
    let head = (text(), unit(), text(), date(), text());
    let hooks = option::of(option::of(any::<u16>()).prop_map(|hole| HookSheet { hole }));
    let place = (option::of(pins()), hooks);
    let middle = (bar(), place, option::of(overlap()), grip);
    let texts = (vec(text(), 0..3), vec(text(), 0..3), text());
    let tail = (vec(rung(), 0..4), mass(), vec(warning(), 0..3), texts);
    (head, middle, tail).prop_map(
        |(
            (lifter, unit, lift, date, rack),
            (bar, (pins, hooks), overlap, grip),
            (rungs, asked, warnings, (cues, cautions, note)),
        )| LiftSheet {
            lifter,
            unit,
            lift,
            date,
            rack,
            bar,
            pins,
            hooks,
            overlap,
            grip,
            rungs,
            groups: Vec::new(),
            track: None,
            asked,
            cues,
            cautions,
            warnings,
            note,
        },
    )
}

fn prescription() -> impl Strategy<Value = Prescription> {
    let load = prop_oneof![
        mass().prop_map(LoadWish::Mass),
        any::<u32>().prop_map(LoadWish::OfBest)
    ];
    let who = (date(), text(), text());
    let how = (any::<u8>(), any::<u8>(), load);
    let rest = (option::of(text()), option::of(any::<u32>()), text());
    (who, how, rest).prop_map(
        |((date, lifter, lift), (sets, reps, load), (ladder, rest_s, note))| Prescription {
            bar: None,
            date,
            lifter,
            lift,
            first: SetGroup {
                rest_s,
                ..SetGroup::straight(sets, reps, load)
            },
            then: Vec::new(),
            track: None,
            ladder,
            note,
        },
    )
}

fn called() -> impl Strategy<Value = CalledTurn> {
    (any::<u32>(), any::<u16>(), vec(face(), 0..5)).prop_map(|(no, rung, per_side)| CalledTurn {
        no: LiftNo(no),
        rung,
        per_side,
    })
}

pub(crate) fn hold() -> impl Strategy<Value = Hold> {
    prop_oneof![Just(Hold::Kept), any::<u8>().prop_map(Hold::MovedAt)]
}

fn settled() -> impl Strategy<Value = Settled> {
    let gear = any::<(bool, bool)>();
    (0..4_u16, mass(), vec(face(), 0..4), gear).prop_map(
        |(rung, load, per_side, (belt, straps))| Settled {
            rung,
            load,
            per_side,
            belt,
            straps,
        },
    )
}

pub(crate) fn stacks() -> impl Strategy<Value = Stacks> {
    let side = || vec((face(), option::of(text())), 0..4);
    let discs = |side: Vec<(PlateFace, Option<String>)>| {
        side.into_iter()
            .map(|(face, mark)| Disc { face, mark })
            .collect()
    };
    (side(), side()).prop_map(move |(left, right)| Stacks {
        left: discs(left),
        right: discs(right),
    })
}

fn word() -> impl Strategy<Value = BarWord> {
    let lift = || any::<u32>().prop_map(LiftNo);
    let said = prop_oneof![
        lift().prop_map(Said::Set),
        lift().prop_map(Said::Loaded),
        Just(Said::Stated)
    ];
    let contradicts = vec(text(), 0..3);
    let all = (text(), text(), date(), stacks(), said, contradicts);
    all.prop_map(|(rack, bar, date, holds, said, contradicts)| BarWord {
        rack,
        bar,
        date,
        holds,
        said,
        contradicts,
    })
}

/// Any fact about one of the lifts `numbers` that came with version 2 of the wire form.
fn later_fact(no: BoxedStrategy<LiftNo>) -> impl Strategy<Value = Fact> {
    prop_oneof![
        3 => word().prop_map(|word| Fact::BarSaid(Box::new(word))),
        1 => text().prop_map(|bar| Fact::BarWordUndone { bar }),
        1 => no.clone().prop_map(|no| Fact::TurnDeferred { no }),
        1 => no.clone().prop_map(|no| Fact::TurnPassed { no }),
        1 => no.clone().prop_map(|no| Fact::TurnClaimed { no }),
        1 => (no.clone(), any::<u16>())
            .prop_map(|(no, seconds)| Fact::RestLengthened { no, seconds }),
        1 => no.clone().prop_map(|no| Fact::LifterLeft { no }),
        1 => no.clone().prop_map(|no| Fact::LifterReturned { no }),
        1 => no.prop_map(|no| Fact::TurnUnsaid { no }),
        2 => shown().prop_map(|shown| Fact::ScreenShown(Box::new(shown))),
        2 => coach_word().prop_map(|word| Fact::CoachSaid(Box::new(word))),
    ]
}

/// Any fact about one of the lifts `numbers`.
pub(crate) fn fact(numbers: impl Strategy<Value = u32> + 'static) -> impl Strategy<Value = Fact> {
    let no = numbers.prop_map(LiftNo).boxed();
    let rung = || prop_oneof![0..4_u16, any::<u16>()];
    prop_oneof![
        1 => (text(), text()).prop_map(|(name, text)| Fact::FileTaken { name, text }),
        1 => (text(), vec(prescription(), 0..4))
            .prop_map(|(name, rows)| Fact::PlanTaken { name, rows }),
        1 => prescription()
            .prop_map(|row| Fact::DayCleared { lifter: row.lifter, date: row.date }),
        3 => (no.clone(), sheet().prop_map(Box::new))
            .prop_map(|(no, sheet)| Fact::LiftBegun { no, sheet }),
        8 => (no.clone(), rung(), any::<u8>(), hold())
            .prop_map(|(no, rung, reps, hold)| Fact::SetDone { no, rung, reps, hold }),
        2 => (no.clone(), rung()).prop_map(|(no, rung)| Fact::RungSkipped { no, rung }),
        2 => no.clone().prop_map(|no| Fact::LiftStopped { no }),
        2 => no.clone().prop_map(|no| Fact::WentOn { no }),
        2 => (text(), text(), vec(called(), 0..6)).prop_map(|(rack, bar, turns)| {
            Fact::RotationPlanned { station: Station { rack, bar }, turns }
        }),
        3 => (no.clone(), settled())
            .prop_map(|(no, settled)| Fact::LoadSettled { no, settled }),
        3 => (no.clone(), decided().prop_map(Box::new))
            .prop_map(|(no, decided)| Fact::NextDecided { no, decided }),
        2 => (no.clone(), mass(), text())
            .prop_map(|(no, load, note)| Fact::NextOverridden { no, load, note }),
        4 => no.clone().prop_map(|no| Fact::EntryUndone { no }),
        4 => later_fact(no.clone()),
        4 => elsewhere(no.clone()),
        8 => clock_or_day(no),
    ]
}

/// What keeps the clock and the days.
fn clock_or_day(no: BoxedStrategy<LiftNo>) -> impl Strategy<Value = Fact> {
    let offset = || prop_oneof![-9_999_i64..9_999, any::<i64>()];
    prop_oneof![
        (any::<u128>(), any::<i64>(), option::of(offset())).prop_map(|(boot, up_ms, offset_ms)| {
            Fact::ClockAnchored {
                boot: BootId(boot),
                up_ms,
                offset_ms,
            }
        }),
        offset().prop_map(|offset_ms| Fact::ClockSet { offset_ms }),
        no.clone().prop_map(|no| Fact::LiftLapsed { no }),
        (no.clone(), date()).prop_map(|(no, on)| Fact::LiftReopened { no, on }),
        (no, date()).prop_map(|(no, date)| Fact::LiftRedated { no, date }),
    ]
}

/// Any event about one of the lifts `numbers`.
pub(crate) fn event(numbers: impl Strategy<Value = u32> + 'static) -> impl Strategy<Value = Event> {
    (any::<i64>(), fact(numbers)).prop_map(|(at, fact)| Event {
        at: Moment(at),
        fact,
    })
}
