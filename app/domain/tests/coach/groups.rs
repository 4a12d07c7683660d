//! Set groups at the rack: top sets with back-offs that follow what was really lifted, drop sets,
//! ranges and sets of as many reps as go, and what is due after each.
use crate::fill::{Life, coached, date};
use crate::gym::kg;
use domain::day::NoSheet;
use domain::day::groups::following;
use domain::event::Hold;
use domain::next::Why;
use domain::next::here::decision;
use domain::next::outing::{Outing, Went};
use domain::prescription::{LoadWish, Reps, Role, SetGroup};
use domain::settle::choices;
use domain::sheet::{LiftSheet, RungKind};
use domain::state::LiftRun;
use domain::{Command, LiftNo, Mass, Prescription, State, Track};
use proptest::prelude::*;

pub(crate) fn group(sets: u8, reps: (u8, Option<u8>), load: LoadWish, role: Role) -> SetGroup {
    let (least, most) = reps;
    SetGroup {
        reps: Reps { least, most },
        role,
        ..SetGroup::straight(sets, least, load)
    }
}

pub(crate) fn row(days: u64, groups: &[SetGroup]) -> Prescription {
    Prescription {
        date: date(days),
        lifter: "Ines".into(),
        lift: "rack pull".into(),
        first: groups[0],
        then: groups[1..].to_vec(),
        track: None,
        ladder: None,
        bar: None,
        note: String::new(),
    }
}

pub(crate) fn take(life: &mut Life, row: Prescription) {
    life.obey(Command::TakePlan {
        name: "week.csv".into(),
        rows: vec![row],
    });
}

pub(crate) fn sheet(life: &Life, days: u64) -> LiftSheet {
    life.entries(days).remove(0).outcome.expect("a sheet")
}

/// A top set of five at a load, then three fives at nine tenths of it.
fn top_and_back_offs(days: u64, load: i64) -> Prescription {
    row(
        days,
        &[
            group(1, (5, Some(5)), LoadWish::Mass(kg(load)), Role::Top),
            group(3, (5, Some(5)), LoadWish::OfTop(9_000), Role::BackOff),
        ],
    )
}

fn begun(life: &mut Life, days: u64) -> LiftNo {
    let sheet = sheet(life, days);
    life.obey(Command::BeginLift(Box::new(sheet)));
    life.state.lifts.keys().next_back().copied().expect("begun")
}

pub(crate) fn set(life: &mut Life, no: LiftNo, reps: u8) {
    let rung = life.state.lifts[&no].next_rung().expect("open");
    life.obey(Command::EnterSet {
        no,
        rung,
        reps,
        hold: Hold::Kept,
        holds: None,
    });
    // As the kiosk does.
    let sets = following(&life.gym, &life.state.lifts[&no]);
    if !sets.is_empty() {
        life.obey(Command::FollowTop { no, sets });
    }
}

fn works(run: &LiftRun) -> Vec<Mass> {
    let work = run.sheet.rungs.iter().filter(|r| r.kind == RungKind::Work);
    work.map(|rung| rung.load).collect()
}

/// Warm-ups as asked, up to the first work set.
pub(crate) fn warm_up(life: &mut Life, no: LiftNo) {
    while let Some(at) = life.state.lifts[&no].next_rung() {
        let rung = &life.state.lifts[&no].sheet.rungs[at];
        if rung.kind == RungKind::Work {
            break;
        }
        let reps = rung.reps;
        set(life, no, reps);
    }
}

#[test]
fn back_offs_are_shown_as_a_share_of_the_top_set_and_follow_what_was_settled() {
    let mut life = Life::new(coached());
    take(&mut life, top_and_back_offs(0, 160));
    let no = begun(&mut life, 0);
    // 90 % of 160 kg is 144 kg; the plates of this gym step by 2.5 kg.
    assert_eq!(works(&life.state.lifts[&no]), [160, 145, 145, 145].map(kg));
    warm_up(&mut life, no);
    let run = &life.state.lifts[&no];
    let choice = choices(&life.gym, &life.state, run).expect("choices");
    let more = choice
        .loads
        .iter()
        .rfind(|l| l.load > kg(160))
        .expect("more");
    let (settled, lifted) = (more.clone(), more.load);
    life.obey(Command::SettleLoad { no, settled });
    let after = works(&life.state.lifts[&no]);
    assert_eq!(after[0], lifted);
    assert_eq!(after[1..], [145, 145, 145].map(kg), "not yet followed");
    set(&mut life, no, 5);
    let after = works(&life.state.lifts[&no]);
    let wanted = Mass::from_ng(lifted.ng() / 10 * 9);
    assert!(
        after[1..].iter().all(|load| load.apart(wanted) <= kg(3)),
        "{after:?}"
    );
    assert!(after[1] > kg(145), "{after:?}");
    // The hands go from each stack to the next.
    for pair in life.state.lifts[&no].sheet.rungs.windows(2) {
        let mut stack = pair[0].per_side.clone();
        stack.truncate(stack.len() - pair[1].take_off.len());
        stack.extend(&pair[1].put_on);
        assert_eq!(stack, pair[1].per_side);
    }
    // Taken back, the top set is as it was before it, and what followed falls with it.
    let run = life.state.lifts[&no].clone();
    life.obey(Command::Undo(no));
    assert_eq!(works(&life.state.lifts[&no])[1..], [145, 145, 145].map(kg));
    set(&mut life, no, 5);
    assert_eq!(works(&life.state.lifts[&no]), works(&run));
    for _ in 0..3 {
        set(&mut life, no, 5);
    }
    let outing = Outing::of(&life.state.lifts[&no]).expect("over");
    assert_eq!((outing.load, outing.sets, outing.reps), (lifted, 1, 5));
    assert_eq!(outing.went, Went::Well);
    assert_eq!(State::replay(&life.events), life.state);
}

#[test]
fn a_missed_top_set_leaves_the_back_offs_and_a_moved_back_in_one_counts() {
    let mut life = Life::new(coached());
    take(&mut life, top_and_back_offs(0, 160));
    let no = begun(&mut life, 0);
    warm_up(&mut life, no);
    let run = &life.state.lifts[&no];
    let choice = choices(&life.gym, &life.state, run).expect("choices");
    let settled = choice.loads.last().expect("more").clone();
    assert!(settled.load > kg(160));
    life.obey(Command::SettleLoad { no, settled });
    assert!(following(&life.gym, &life.state.lifts[&no]).is_empty());
    set(&mut life, no, 0);
    assert_eq!(works(&life.state.lifts[&no])[1..], [145, 145, 145].map(kg));
    let rung = life.state.lifts[&no].next_rung().expect("open");
    life.obey(Command::EnterSet {
        no,
        rung,
        reps: 5,
        hold: Hold::MovedAt(4),
        holds: None,
    });
    life.obey(Command::StopLift(no));
    let outing = Outing::of(&life.state.lifts[&no]).expect("over");
    assert_eq!(outing.went, Went::Moved { set: 2, rep: 4 });
}

#[test]
fn drop_sets_have_no_rest_of_their_own() {
    let mut life = Life::new(coached());
    let groups = [
        group(1, (5, Some(5)), LoadWish::Mass(kg(150)), Role::Top),
        group(1, (8, None), LoadWish::OfTop(8_000), Role::Drop),
        group(1, (8, None), LoadWish::OfTop(6_500), Role::Drop),
    ];
    take(&mut life, row(0, &groups));
    let sheet = sheet(&life, 0);
    let last: Vec<u32> = sheet.rungs.iter().rev().take(3).map(|r| r.rest_s).collect();
    assert_eq!(last[..2], [0, 0]);
    assert!(last[2] > 0);
    let loads: Vec<Mass> = sheet.rungs.iter().rev().take(3).map(|r| r.load).collect();
    assert_eq!(
        loads,
        [97, 120, 150].map(|n| if n == 97 { kg(195).halved() } else { kg(n) })
    );
}

trait Halved {
    fn halved(self) -> Self;
}

impl Halved for Mass {
    fn halved(self) -> Self {
        Self::from_ng(self.ng() / 2)
    }
}

/// What is due after one time of "3-5" with so many reps in each set.
fn after_range(reps: [u8; 3]) -> (Why, Mass) {
    let mut life = Life::new(coached());
    let three_to_five = group(3, (3, Some(5)), LoadWish::Mass(kg(150)), Role::Work);
    take(&mut life, row(0, &[three_to_five]));
    let no = begun(&mut life, 0);
    warm_up(&mut life, no);
    for reps in reps {
        set(&mut life, no, reps);
    }
    let ines = &life.gym.lifters[0];
    let due = decision(
        &life.gym,
        &life.state,
        ines,
        domain::next::here::TrackOf {
            lift: "rack pull",
            track: Track::of_reps(3),
            bar: None,
        },
        date(7),
    )
    .expect("due");
    (due.decision.why, due.decision.load)
}

#[test]
fn a_range_rises_once_every_set_has_its_top() {
    assert_eq!(after_range([5, 4, 3]), (Why::Range, kg(150)));
    let (why, load) = after_range([5, 5, 5]);
    assert_eq!(why, Why::Well);
    assert!(load > kg(150));
    assert_eq!(after_range([5, 5, 2]).0, Why::TryAgain);
}

#[test]
fn as_many_as_go_asks_for_its_least_and_takes_what_was_done() {
    let mut life = Life::new(coached());
    let groups = [
        group(2, (5, Some(5)), LoadWish::Mass(kg(150)), Role::Work),
        group(1, (5, None), LoadWish::Mass(kg(150)), Role::Work),
    ];
    take(&mut life, row(0, &groups));
    let no = begun(&mut life, 0);
    warm_up(&mut life, no);
    for reps in [5, 5, 9] {
        set(&mut life, no, reps);
    }
    let outing = Outing::of(&life.state.lifts[&no]).expect("over");
    assert_eq!((outing.sets, outing.reps, outing.went), (3, 5, Went::Well));
}

/// Of "3-5" the top is asked for, in a later group too, and what cannot be made there is not shown as
/// the nearest.
#[test]
fn a_later_group_asks_for_the_top_of_its_range_and_for_what_can_be_made() {
    let sheet_with = |reps, load| {
        let mut life = Life::new(coached());
        let groups = [
            group(1, (5, Some(5)), LoadWish::Mass(kg(150)), Role::Work),
            group(2, reps, LoadWish::Mass(kg(load)), Role::Work),
        ];
        take(&mut life, row(0, &groups));
        life.entries(0).remove(0).outcome
    };
    let sheet = sheet_with((3, Some(5)), 120).expect("a sheet");
    let last: Vec<u8> = sheet.rungs.iter().rev().take(2).map(|r| r.reps).collect();
    assert_eq!(last, [5, 5]);
    // The bar alone is 20 kg, with the smallest plates 22.5 kg.
    let why = sheet_with((5, Some(5)), 21).expect_err("not made");
    assert!(matches!(why, NoSheet::NotMade { .. }), "{why:?}");
}

#[test]
fn harder_than_asked_is_not_raised() {
    let due = |effort: u8| {
        let mut life = Life::new(coached());
        let asked = SetGroup {
            effort: Some(80),
            ..SetGroup::straight(1, 5, LoadWish::Mass(kg(150)))
        };
        take(&mut life, row(0, &[asked]));
        let no = begun(&mut life, 0);
        warm_up(&mut life, no);
        let rung = life.state.lifts[&no].next_rung().expect("open");
        set(&mut life, no, 5);
        life.obey(Command::SayEffort { no, rung, effort });
        let ines = &life.gym.lifters[0];
        let due = decision(
            &life.gym,
            &life.state,
            ines,
            domain::next::here::TrackOf {
                lift: "rack pull",
                track: Track::of_reps(5),
                bar: None,
            },
            date(7),
        );
        due.expect("due").decision
    };
    assert_eq!((due(80).why, due(70).why), (Why::Well, Why::Well));
    let hard = due(90);
    assert_eq!((hard.why, hard.load), (Why::Hard, kg(150)));
}

#[test]
fn more_than_last_time_and_what_is_due_need_a_last_time() {
    let more = SetGroup::straight(1, 5, LoadWish::More(kg(5)));
    let due = SetGroup::straight(1, 5, LoadWish::Due);
    for wish in [more, due] {
        let mut life = Life::new(coached());
        take(&mut life, row(0, &[wish]));
        let why = life.entries(0).remove(0).outcome.expect_err("nothing done");
        assert_eq!(why, NoSheet::NoLoad);
        life.plan(0, "rack pull", 150);
        life.lift(0, |_, reps| (reps, Hold::Kept));
        take(&mut life, row(7, &[wish]));
        let entry = life.entries(7).remove(0);
        let rungs = entry.outcome.expect("a sheet").rungs;
        let load = rungs.last().expect("rungs").load;
        let next = entry.next.expect("due").decision.load;
        assert_eq!(load, next.min(kg(155)), "the lower of plan and due");
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]
    /// Whatever groups a coach writes: the rungs are all there in order, each as asked, and the
    /// hands come from each stack to the next.
    #[test]
    fn every_group_is_on_the_sheet(
        top in 60_i64..180,
        shares in prop::collection::vec((1_u8..4, 1_u8..9, 5_000_u32..10_001), 0..4),
    ) {
        let mut groups = vec![group(1, (3, Some(3)), LoadWish::Mass(kg(top)), Role::Top)];
        groups.extend(shares.iter().map(|&(sets, reps, share)| {
            group(sets, (reps, None), LoadWish::OfTop(share), Role::BackOff)
        }));
        let mut life = Life::new(coached());
        take(&mut life, row(0, &groups));
        let Ok(sheet) = life.entries(0).remove(0).outcome else { return Ok(()) };
        let work: Vec<_> = sheet.rungs.iter().filter(|r| r.kind == RungKind::Work).collect();
        let asked: usize = groups.iter().map(|g| usize::from(g.sets)).sum();
        prop_assert_eq!(work.len(), asked);
        prop_assert_eq!(sheet.groups.len(), groups.len());
        for (told, group) in sheet.groups.iter().zip(&groups) {
            for at in told.rungs() {
                let rung = &sheet.rungs[at];
                prop_assert_eq!(rung.reps, group.reps.planned());
                if let LoadWish::OfTop(share) = group.load {
                    let wanted = Mass::from_ng(work[0].load.ng() / 10_000 * i64::from(share));
                    // The plates of this gym step by 2.5 kg.
                    prop_assert!(rung.load.apart(wanted) <= kg(2));
                }
            }
        }
        for pair in sheet.rungs.windows(2) {
            let mut stack = pair[0].per_side.clone();
            stack.truncate(stack.len() - pair[1].take_off.len());
            stack.extend(&pair[1].put_on);
            prop_assert_eq!(&stack, &pair[1].per_side);
        }
    }
}
