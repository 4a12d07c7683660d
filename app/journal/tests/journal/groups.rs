//! Set groups in the journal: read back as written, straight sets in the first version still, and
//! the record has the loads that really hung on the bar.
use crate::invented::from_pins;
use crate::recording::{all, place, sets};
use domain::event::Hold;
use domain::lift::Grip;
use domain::manner::{Manner, Tempo};
use domain::prescription::{LoadWish, Reps, Role, SetGroup};
use domain::settle::Settled;
use domain::sheet::{GroupSheet, RungKind};
use domain::{
    Event, Fact, Length, LiftNo, LiftSheet, Mass, MassUnit, Moment, Prescription, State, TrackName,
};
use journal::Record;
use journal::wire::{decode, encode};
use proptest::prelude::*;

const NO: LiftNo = LiftNo(1);

fn kg(load: i64) -> Mass {
    Mass::of(MassUnit::Kg, load * 1_000)
}

fn row(groups: &[SetGroup]) -> Prescription {
    Prescription {
        bar: None,
        date: from_pins().date,
        lifter: "Ada".to_owned(),
        lift: "rack pull".to_owned(),
        first: groups[0],
        then: groups[1..].to_vec(),
        track: None,
        ladder: Some("none".to_owned()),
        note: "slowly".to_owned(),
    }
}

/// Nothing said, or some of all that can be.
fn manner() -> impl Strategy<Value = Manner> {
    let maybe = || prop::option::of(any::<bool>());
    let tempo = (0..16_u8, 0..16_u8, prop::option::of(0..16_u8), 0..16_u8);
    let said = (
        prop::option::of(1..200_u16),
        prop::option::of((0..600_i64).prop_map(Length::mm)),
        prop::option::of(tempo),
        prop::option::of(1..15_u8),
        (maybe(), maybe(), maybe()),
    );
    let said = said.prop_map(
        |(hole, block, tempo, pause_s, (belt, straps, hook))| Manner {
            hole,
            block,
            tempo: tempo.map(|(lower, bottom, raise, top)| Tempo {
                lower,
                bottom,
                raise,
                top,
            }),
            pause_s,
            belt,
            straps,
            grip: hook.map(|hook| {
                if hook {
                    Grip::Hook
                } else {
                    Grip::DoubleOverhand
                }
            }),
        },
    );
    prop_oneof![Just(Manner::default()), said]
}

fn group() -> impl Strategy<Value = SetGroup> {
    let load = prop_oneof![
        (1..400_i64).prop_map(|load| LoadWish::Mass(kg(load))),
        (1..15_000_u32).prop_map(LoadWish::OfBest),
        (1..12_001_u32).prop_map(LoadWish::OfTraining),
        (1..10_001_u32).prop_map(LoadWish::OfTop),
        (1..10_i64).prop_map(|load| LoadWish::More(kg(load))),
        Just(LoadWish::Due),
    ];
    let role = prop_oneof![
        Just(Role::Work),
        Just(Role::Top),
        Just(Role::BackOff),
        Just(Role::Drop)
    ];
    let numbers = (1..20_u8, 1..25_u8, prop::option::of(0..25_u8));
    let more = (prop::option::of(0..900_u32), prop::option::of(10..101_u8));
    let groups = (numbers, load, role, more, manner());
    groups.prop_map(
        |((sets, least, more), load, role, (rest_s, effort), manner)| {
            let most = more.map(|more| least + more);
            SetGroup {
                manner,
                sets,
                reps: Reps { least, most },
                load,
                rest_s,
                role,
                effort,
            }
        },
    )
}

proptest! {
    #[test]
    fn a_plan_of_groups_is_read_back(
        groups in prop::collection::vec(group(), 1..6),
        track in track(),
    ) {
        let row = Prescription { track, ..row(&groups) };
        let straight = row.is_straight();
        let fact = Fact::PlanTaken { name: "week.csv".to_owned(), rows: vec![row] };
        let written = encode(&fact);
        prop_assert_eq!(written.version, if straight { 1 } else { 2 });
        let read = decode(written.version, written.kind, &written.body);
        prop_assert_eq!(read, Ok(fact));
    }
}

/// The name of a track, in letters of one to three bytes, or none.
fn track() -> impl Strategy<Value = Option<TrackName>> {
    "[a-zäß€ ]{0,30}".prop_map(|name| TrackName::new(&name))
}

proptest! {
    #[test]
    fn a_sheet_of_a_track_is_read_back(track in track(), groups in any::<bool>()) {
        let sheet = if groups { grouped() } else { from_pins() };
        let sheet = LiftSheet { track, ..sheet };
        let fact = Fact::LiftBegun { no: NO, sheet: Box::new(sheet) };
        let written = encode(&fact);
        prop_assert_eq!(written.version, if groups || track.is_some() { 2 } else { 1 });
        let read = decode(written.version, written.kind, &written.body);
        prop_assert_eq!(read, Ok(fact));
    }
}

/// A top set and two back-offs of it, after one warm-up.
fn grouped() -> LiftSheet {
    let mut sheet = from_pins();
    let work = sheet.rungs.last().cloned().expect("a work rung");
    assert_eq!(work.kind, RungKind::Work);
    let first = sheet.rungs.len() - 1;
    let mut back = work;
    back.load = kg(65);
    sheet.rungs.extend([back.clone(), back]);
    let group = |rung: usize, sets, role, of_top| GroupSheet {
        manner: Manner::default(),
        rung: u16::try_from(rung).expect("few"),
        sets,
        reps: Reps::just(5),
        role,
        of_top,
        effort: Some(80),
    };
    sheet.groups = vec![
        group(first, 1, Role::Top, None),
        group(first + 1, 2, Role::BackOff, Some(8_500)),
    ];
    sheet
}

/// One of each that groups and tracks brought: every way to name a load, a track, a lift of groups,
/// loads that follow, an effort said.
pub(crate) fn facts(no: LiftNo) -> Vec<Fact> {
    let group = |load, role| SetGroup {
        role,
        effort: Some(85),
        ..SetGroup::straight(2, 5, load)
    };
    let groups = [
        group(LoadWish::OfTraining(8_500), Role::Top),
        group(LoadWish::OfTop(9_000), Role::BackOff),
        group(LoadWish::More(kg(5)), Role::Work),
        group(LoadWish::Due, Role::Drop),
    ];
    let track = TrackName::new("heavy");
    let sheet = grouped();
    let top = sheet.groups[0].rung;
    let done = (0..=top).map(|rung| Fact::SetDone {
        no,
        rung,
        reps: 5,
        hold: Hold::Kept,
    });
    let mut facts = vec![
        Fact::PlanTaken {
            name: "groups.csv".to_owned(),
            rows: vec![Prescription {
                track,
                ..row(&groups)
            }],
        },
        Fact::LiftBegun {
            no,
            sheet: Box::new(LiftSheet { track, ..sheet }),
        },
    ];
    facts.extend(done);
    facts.extend([
        Fact::EffortSaid {
            no,
            rung: top,
            effort: 85,
        },
        Fact::LoadsFollowed {
            no,
            sets: vec![settled(top + 1, 68)],
        },
        Fact::LiftStopped { no },
    ]);
    facts
}

fn event(fact: Fact) -> Event {
    let at = Moment(1_772_442_810_000);
    Event { at, fact }
}

fn settled(rung: u16, load: i64) -> Settled {
    Settled {
        rung,
        load: kg(load),
        per_side: Vec::new(),
        belt: false,
        straps: false,
    }
}

#[test]
fn the_record_has_the_loads_that_followed_and_an_undo_takes_them_back() {
    let sheet = grouped();
    let top = sheet.groups[0].rung;
    let done = |rung| {
        let (reps, hold) = (5, Hold::Kept);
        event(Fact::SetDone {
            no: NO,
            rung,
            reps,
            hold,
        })
    };
    let sheet = Box::new(sheet);
    let mut events = vec![event(Fact::LiftBegun { no: NO, sheet })];
    events.extend((0..top).map(done));
    let settle = settled(top, 80);
    events.push(event(Fact::LoadSettled {
        no: NO,
        settled: settle,
    }));
    events.push(done(top));
    let sets_of = vec![settled(top + 1, 68)];
    events.push(event(Fact::LoadsFollowed {
        no: NO,
        sets: sets_of,
    }));
    events.push(done(top + 1));
    let (rung, effort) = (top + 1, 90);
    events.push(event(Fact::EffortSaid {
        no: NO,
        rung,
        effort,
    }));
    for fact in events.iter().map(|event| &event.fact) {
        let written = encode(fact);
        let read = decode(written.version, written.kind, &written.body);
        assert_eq!(read.as_ref(), Ok(fact));
    }
    let loads = |events: &[Event]| {
        let place = place(events);
        let mut record = Record::open(&place.record).expect("opens");
        record.follow(&place.journal).expect("follows");
        let loads: Vec<i64> = sets(&place.record)
            .iter()
            .map(|set| set.load.ng())
            .collect();
        (loads, all(&place.record)["settled"].len())
    };
    let (found, rows) = loads(&events);
    assert_eq!(found[usize::from(top)..], [kg(80).ng(), kg(68).ng()]);
    assert_eq!(rows, 3, "one for the top set, two for the back-offs");
    let state = State::replay(&events);
    assert_eq!(state.lifts[&NO].efforts, [(top + 1, 90)]);
    let standing = &state.lifts[&NO].sheet.rungs[usize::from(top)..];
    let standing: Vec<Mass> = standing.iter().map(|rung| rung.load).collect();
    assert_eq!(standing, [kg(80), kg(68), kg(68)]);
    // Two undos: the back-off, then the top set with all that followed from it.
    events.extend([Fact::EntryUndone { no: NO }, Fact::EntryUndone { no: NO }].map(event));
    events.push(done(top));
    events.push(done(top + 1));
    let (found, rows) = loads(&events);
    assert_eq!(found[usize::from(top)..], [kg(80).ng(), kg(65).ng()]);
    assert_eq!(rows, 1);
    let state = State::replay(&events);
    assert!(state.lifts[&NO].efforts.is_empty());
    assert_eq!(
        state.lifts[&NO].sheet.rungs[usize::from(top) + 1].load,
        kg(65)
    );
}
