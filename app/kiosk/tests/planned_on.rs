//! Orders that are planned on while people rest: whoever was called stays, what has happened since
//! counts, a restart shows what was taken.
use chrono::NaiveDate;
use domain::equipment::PlateFace;
use domain::rotation::{CalledTurn, Station, ask, stations};
use domain::solve::rotation::carry_out;
use domain::{Command, Gym, Moment, State, decide};
use kiosk::ahead::Planner;
use kiosk::clock::BenchClock;
use kiosk::input::{Better, Input};
use kiosk::{Folder, Kiosk};
use std::path::Path;
use std::sync::mpsc::channel;
use std::time::Duration;
use view::{Screen, Tap};

/// They pull from the pins with the same bar on a Wednesday of the demo plan.
const FOUR: [&str; 4] = ["Hamza", "Željka", "Ilkka", "Marisol"];

fn evening() -> (NaiveDate, BenchClock) {
    let day = NaiveDate::from_ymd_opt(2026, 12, 2).expect("a day");
    (
        day,
        BenchClock::at(day.and_hms_opt(18, 0, 0).expect("a time")),
    )
}

fn open(data: &Path) -> Kiosk {
    let folder = Folder::open(Some(data)).expect("a folder");
    Kiosk::open(&folder, Box::new(evening().1)).expect("it opens")
}

/// Four lifters have begun.
fn begun(data: &Path) -> Kiosk {
    let mut kiosk = open(data);
    for name in FOUR {
        if !matches!(kiosk.frame().screen, Screen::Choose(_)) {
            kiosk.tap(&Tap::All);
        }
        kiosk.tap(&Tap::Lifter(name.into()));
        kiosk.tap(&Tap::Main);
    }
    assert_eq!(kiosk.state().lifts.len(), FOUR.len());
    kiosk
}

fn station(state: &State) -> Station {
    let mut all = stations(state, evening().0).into_iter();
    let station = all.next().expect("four are under way");
    assert_eq!(all.next(), None, "at one bar");
    station
}

/// When an order ends, counted by carrying it out.
fn ends(gym: &Gym, state: &State, now: Moment, turns: &[CalledTurn]) -> u64 {
    let station = station(state);
    let asked = ask(gym, state, &station, evening().0, now, None).expect("it can be planned");
    let rack = gym.racks.iter().find(|rack| rack.name == station.rack);
    let plates = gym
        .plate_sets
        .iter()
        .find(|set| rack.is_some_and(|rack| rack.plates == set.name))
        .expect("the rack has plates");
    let order: Vec<(usize, Vec<usize>)> = turns
        .iter()
        .map(|turn| {
            let lifter = asked.lifts.iter().position(|(no, _)| *no == turn.no);
            let place = |face: &PlateFace| plates.plates.iter().position(|p| p.face == *face);
            let stack = turn
                .per_side
                .iter()
                .map(|face| place(face).expect("a plate"));
            (lifter.expect("a lift"), stack.collect())
        })
        .collect();
    carry_out(&asked.problem, &order)
        .expect("keeps the rules")
        .ends_ns
}

/// The same turns, but each lifter does all of them before the next begins.
fn one_by_one(turns: &[CalledTurn]) -> Vec<CalledTurn> {
    let mut turns = turns.to_vec();
    turns.sort_by_key(|turn| (turn.no, turn.rung));
    turns
}

#[test]
fn the_thread_finds_a_better_order_that_begins_alike() {
    let data = tempfile::tempdir().expect("a folder");
    let (state, gym) = {
        let kiosk = begun(data.path());
        (kiosk.state().clone(), kiosk.gym().clone())
    };
    let (mut state, (_, clock)) = (state, evening());
    let (station, now) = (station(&state), clock.now());
    let turns = one_by_one(state.rotation(&station));
    let call = Command::CallRotation {
        station: station.clone(),
        turns: turns.clone(),
    };
    for event in decide(&state, call, now).expect("it can be called") {
        state.apply(&event);
    }
    let late = ends(&gym, &state, now, &turns);
    let mut kiosk = Kiosk::in_memory(state, gym.clone(), Box::new(clock));
    let (inputs, inbox) = channel();
    let planner = Planner::start(inputs);
    planner.follow(&mut kiosk);
    let found = inbox.recv_timeout(Duration::from_secs(300));
    let Ok(Input::Better(better)) = found else {
        panic!("nothing better than one by one: {found:?}")
    };
    assert_eq!(better.turns[..2], turns[..2], "who was called stays");
    assert_eq!(better.turns.len(), turns.len());
    let (kept, sooner) = (
        better.turns.clone(),
        ends(&gym, kiosk.state(), now, &better.turns),
    );
    assert!(sooner < late, "{sooner} ns after {late} ns");
    assert!(kiosk.take_better(*better));
    assert_eq!(kiosk.state().rotation(&station), kept);
}

#[test]
fn each_order_is_handed_out_once() {
    let data = tempfile::tempdir().expect("a folder");
    let mut kiosk = begun(data.path());
    assert_eq!(kiosk.to_plan_on().len(), 1);
    assert_eq!(kiosk.to_plan_on().len(), 0);
    // A look at another's screen changes no order.
    kiosk.tap(&Tap::All);
    assert_eq!(kiosk.to_plan_on().len(), 0);
}

#[test]
fn what_was_taken_is_there_after_a_restart_and_what_is_outdated_is_not_taken() {
    let data = tempfile::tempdir().expect("a folder");
    let mut kiosk = begun(data.path());
    let ahead = kiosk.to_plan_on().pop().expect("four can be planned on");
    let station = ahead.station.clone();
    let called = kiosk.state().rotation(&station).to_vec();
    // Whoever comes last of all changes places with the lifter before.
    let mut turns = called.clone();
    let last = turns.len() - 1;
    let at = (2..last).rev().find(|&at| turns[at].no != turns[last].no);
    let at = at.expect("several have turns left");
    turns[at..].rotate_left(1);
    assert_ne!(turns, called);
    let better = |turns: &[CalledTurn]| Better {
        ahead: ahead.clone(),
        turns: turns.to_vec(),
    };
    assert!(kiosk.take_better(better(&turns)));
    assert_eq!(kiosk.state().rotation(&station), turns);
    assert!(
        !kiosk.take_better(better(&called)),
        "it was of the order before"
    );
    drop(kiosk);
    let mut kiosk = open(data.path());
    assert_eq!(kiosk.state().rotation(&station), turns, "after a restart");
    let ahead = kiosk.to_plan_on().pop().expect("they go on");
    // A set is entered: nothing that was planned before counts any more.
    let sets = |kiosk: &Kiosk| -> usize {
        let runs = kiosk.state().lifts.values();
        runs.map(|run| usize::from(run.last_set().is_some())).sum()
    };
    for name in FOUR {
        if sets(&kiosk) == 0 {
            kiosk.tap(&Tap::All);
            kiosk.tap(&Tap::Lifter(name.into()));
            if matches!(kiosk.frame().screen, Screen::Bar(_)) {
                kiosk.tap(&Tap::Main);
            }
        }
    }
    assert_eq!(sets(&kiosk), 1, "whoever was up has lifted");
    let now = kiosk.state().rotation(&station).to_vec();
    assert!(!kiosk.take_better(Better { ahead, turns }));
    assert_eq!(kiosk.state().rotation(&station), now);
}
