//! Commands and events: what is refused, what an undo gives back, that replay equals living on.
use chrono::{Days, NaiveDate};
use domain::decide::{Command, REPS_MAX, Refusal};
use domain::event::{Hold, LiftNo};
use domain::lift::Grip;
use domain::settle::Settled;
use domain::sheet::{BarSheet, LiftSheet, Rung, RungKind};
use domain::state::Entered;
use domain::steady::{BootId, KNOWN_FROM, Reading};
use domain::{DayCommand, Event, Length, Mass, MassUnit, Moment, PlateFace, State, decide};
use proptest::prelude::*;

const KG: MassUnit = MassUnit::Kg;

fn day() -> NaiveDate {
    NaiveDate::from_ymd_opt(2026, 12, 2).expect("a day")
}

fn plate(kg: i64) -> PlateFace {
    PlateFace {
        mass: Mass::of(KG, kg * 1_000),
        unit: KG,
        thickness: Length::mm(30),
        diameter: Length::mm(450),
    }
}

fn rung(kind: RungKind, kg: i64, reps: u8, per_side: &[i64]) -> Rung {
    Rung {
        kind,
        load: Mass::of(KG, kg * 1_000),
        reps,
        per_side: per_side.iter().map(|kg| plate(*kg)).collect(),
        take_off: Vec::new(),
        put_on: Vec::new(),
        belt: false,
        straps: false,
        rest_s: 180,
    }
}

fn sheet(lifter: &str, lift: &str) -> LiftSheet {
    LiftSheet {
        lifter: lifter.into(),
        unit: KG,
        lift: lift.into(),
        date: day(),
        rack: "window".into(),
        bar: BarSheet {
            name: "old bar".into(),
            mass: Mass::of(KG, 20_000),
            collars: Mass::ZERO,
            shaft_diameter: Length::mm(28),
            sleeve: Length::mm(400),
        },
        pins: None,
        hooks: None,
        overlap: None,
        grip: Grip::DoubleOverhand,
        rungs: vec![
            rung(RungKind::WarmUp, 60, 5, &[20]),
            rung(RungKind::WarmUp, 100, 3, &[20, 20]),
            rung(RungKind::Work, 140, 5, &[20, 20, 20]),
        ],
        groups: Vec::new(),
        track: None,
        asked: Mass::of(KG, 140_000),
        cues: Vec::new(),
        cautions: Vec::new(),
        warnings: Vec::new(),
        note: String::new(),
    }
}

/// Does what `command` asks, as the kiosk would.
fn obey(state: &mut State, command: Command, at: i64) -> Result<Vec<Event>, Refusal> {
    let events = decide(state, command, Moment(at))?;
    for event in &events {
        state.apply(event);
    }
    Ok(events)
}

fn begin(lifter: &str) -> Command {
    Command::BeginLift(Box::new(sheet(lifter, "rack pull")))
}

fn set(no: u32, rung: usize, reps: u8, hold: Hold) -> Command {
    Command::EnterSet {
        no: LiftNo(no),
        rung,
        reps,
        hold,
        holds: None,
    }
}

#[test]
fn a_ladder_from_start_to_end() {
    let mut state = State::default();
    obey(&mut state, begin("Ines"), 0).unwrap();
    for at in 0..3 {
        let now = 1_000 * i64::try_from(at).unwrap();
        obey(&mut state, set(1, at, 5, Hold::Kept), now).unwrap();
    }
    let run = state.lift_of("Ines", day()).unwrap();
    assert!(run.is_over() && run.rested_at().is_none());
    assert_eq!(state.plates_on("old bar", day()).len(), 3);
    assert_eq!(
        obey(&mut state, set(1, 3, 5, Hold::Kept), 9),
        Err(Refusal::Over)
    );
}

#[test]
fn the_rest_runs_from_the_end_of_the_last_set() {
    let mut state = State::default();
    obey(&mut state, begin("Ines"), 0).unwrap();
    assert_eq!(state.lift_of("Ines", day()).unwrap().rested_at(), None);
    obey(&mut state, set(1, 0, 5, Hold::Kept), 60_000).unwrap();
    let run = state.lift_of("Ines", day()).unwrap();
    assert_eq!(run.rested_at(), Some(Moment(60_000 + 180_000)));
    assert_eq!(Moment(61_500).seconds_until(run.rested_at().unwrap()), 179);
}

#[test]
fn a_moved_back_asks_for_a_decision_first() {
    let mut state = State::default();
    obey(&mut state, begin("Ines"), 0).unwrap();
    obey(&mut state, set(1, 0, 3, Hold::MovedAt(3)), 1).unwrap();
    assert!(state.lift_of("Ines", day()).unwrap().awaits_decision());
    assert_eq!(
        obey(&mut state, set(1, 1, 3, Hold::Kept), 2),
        Err(Refusal::DecideFirst)
    );
    obey(&mut state, Command::GoOn(LiftNo(1)), 3).unwrap();
    obey(&mut state, set(1, 1, 3, Hold::Kept), 4).unwrap();
    obey(&mut state, Command::StopLift(LiftNo(1)), 5).unwrap();
    assert!(state.lift_of("Ines", day()).unwrap().is_over());
    obey(&mut state, Command::Undo(LiftNo(1)), 6).unwrap();
    assert_eq!(state.lift_of("Ines", day()).unwrap().next_rung(), Some(2));
}

#[test]
fn a_second_tap_on_the_same_rung_is_refused() {
    let mut state = State::default();
    obey(&mut state, begin("Ines"), 0).unwrap();
    obey(&mut state, set(1, 0, 5, Hold::Kept), 1).unwrap();
    assert_eq!(
        obey(&mut state, set(1, 0, 5, Hold::Kept), 2),
        Err(Refusal::NotTheRungOfNow)
    );
}

#[test]
fn a_lifter_does_one_lift_at_a_time_and_numbers_are_never_given_twice() {
    let mut state = State::default();
    obey(&mut state, begin("Ines"), 0).unwrap();
    let refused = obey(&mut state, begin("Ines"), 1).unwrap_err();
    assert_eq!(
        refused.to_string(),
        "Ines is under way with the rack pull; end it first"
    );
    obey(&mut state, begin("Tomasz"), 2).unwrap();
    obey(&mut state, Command::Undo(LiftNo(2)), 3).unwrap();
    obey(&mut state, begin("Tomasz"), 4).unwrap();
    let numbers: Vec<u32> = state.lifts.keys().map(|no| no.0).collect();
    assert_eq!(
        numbers,
        [1, 3],
        "number 2 was withdrawn and is not given again"
    );
}

#[test]
fn reps_out_of_range_are_told_with_the_limit() {
    let mut state = State::default();
    obey(&mut state, begin("Ines"), 0).unwrap();
    let told = obey(&mut state, set(1, 0, REPS_MAX + 1, Hold::Kept), 1)
        .unwrap_err()
        .to_string();
    assert_eq!(
        told,
        "51 is out of range; reps go from 0 to 50, the moved rep from 1"
    );
    assert!(obey(&mut state, set(1, 0, 3, Hold::MovedAt(0)), 1).is_err());
}

fn settle(no: LiftNo, rung: u16) -> Command {
    Command::SettleLoad {
        no,
        settled: Settled {
            rung,
            load: Mass::of(KG, 120_000),
            per_side: vec![plate(25), plate(25)],
            belt: false,
            straps: false,
        },
    }
}

/// Any command, sensible or not.
fn any_command() -> impl Strategy<Value = Command> {
    let no = (0_u32..5).prop_map(LiftNo);
    let hold = prop_oneof![
        3 => Just(Hold::Kept),
        1 => (0_u8..8).prop_map(Hold::MovedAt),
    ];
    prop_oneof![
        2 => prop_oneof![Just("Ines"), Just("Tomasz"), Just("Wen")].prop_map(begin),
        6 => (no.clone(), 0_usize..4, 0_u8..55, hold)
            .prop_map(|(no, rung, reps, hold)| {
                Command::EnterSet { no, rung, reps, hold, holds: None }
            }),
        1 => (no.clone(), 0_usize..4).prop_map(|(no, rung)| Command::SkipRung { no, rung }),
        1 => no.clone().prop_map(Command::StopLift),
        1 => no.clone().prop_map(Command::GoOn),
        2 => (no.clone(), 0_u16..4).prop_map(|(no, rung)| settle(no, rung)),
        1 => no.clone().prop_map(Command::Leave),
        1 => no.clone().prop_map(Command::Return),
        1 => no.clone().prop_map(Command::UnsayTurn),
        2 => no.clone().prop_map(Command::Undo),
        2 => day_command(no).prop_map(Command::Day),
    ]
}

fn day_command(no: impl Strategy<Value = LiftNo> + Clone) -> impl Strategy<Value = DayCommand> {
    let reading = (0_u128..3, 0_i64..90_000, any::<bool>()).prop_map(|(boot, up_ms, known)| {
        let wall = Moment(KNOWN_FROM.0 * i64::from(known) + up_ms);
        let boot = BootId(boot);
        Reading { boot, up_ms, wall }
    });
    prop_oneof![
        reading.prop_map(DayCommand::AnchorClock),
        (-9_999_i64..9_999).prop_map(|offset_ms| DayCommand::NoteClock { offset_ms }),
        no.clone().prop_map(DayCommand::CloseLeftOpen),
        (no.clone(), 0_u64..3).prop_map(|(no, days)| DayCommand::ReopenLift {
            no,
            on: day() + Days::new(days)
        }),
        (no, 0_u64..3).prop_map(|(no, days)| DayCommand::RedateLift {
            no,
            date: day() + Days::new(days)
        }),
    ]
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(500))]

    /// What lives on and what is replayed from the events are the same, at every length.
    #[test]
    fn replay_equals_living_on(commands in prop::collection::vec(any_command(), 0..60)) {
        let mut state = State::default();
        let mut log = Vec::new();
        for (at, command) in commands.into_iter().enumerate() {
            let before = state.clone();
            match obey(&mut state, command, i64::try_from(at).unwrap()) {
                Ok(events) => log.extend(events),
                Err(_) => prop_assert_eq!(&before, &state, "a refusal changes nothing"),
            }
            prop_assert_eq!(&State::replay(&log), &state);
        }
        for run in state.lifts.values() {
            prop_assert!(run.passed().count() <= run.sheet.rungs.len());
            let stops = run.entries.iter().filter(|e| e.what == Entered::Stopped).count();
            prop_assert!(stops <= 1, "a lift stops once");
        }
    }

    /// An undo gives back what stood before the last entry of that lift.
    #[test]
    fn undo_gives_back_what_stood(commands in prop::collection::vec(any_command(), 1..60)) {
        let mut state = State::default();
        for (at, command) in commands.into_iter().enumerate() {
            let touched = match &command {
                Command::EnterSet { no, .. } | Command::SkipRung { no, .. } => Some(*no),
                Command::StopLift(no) | Command::GoOn(no) => Some(*no),
                Command::SettleLoad { no, .. } => Some(*no),
                Command::BeginLift(_)
                | Command::CallRotation { .. }
                | Command::FollowTop { .. }
                | Command::SayEffort { .. }
                | Command::DecideNext { .. }
                | Command::OverrideNext { .. }
                | Command::Undo(_)
                | Command::TakeFile { .. }
                | Command::TakePlan { .. }
                | Command::ClearDay { .. }
                | Command::SayBar(_)
                | Command::UndoBarWord(_)
                | Command::Defer(_)
                | Command::Pass(_)
                | Command::Claim(_)
                | Command::Lengthen { .. }
                | Command::Leave(_)
                | Command::Return(_)
                | Command::UnsayTurn(_)
                | Command::SayCoach(_)
                | Command::Show(_)
                | Command::Day(_)
                | Command::TakeElsewhere(_) => None,
            };
            let before = state.clone();
            let now = i64::try_from(at).unwrap();
            if obey(&mut state, command, now).is_ok() && let Some(no) = touched {
                let mut undone = state.clone();
                obey(&mut undone, Command::Undo(no), now).unwrap();
                prop_assert_eq!(&undone.lifts, &before.lifts);
            }
        }
    }
}

#[test]
fn a_day_is_taken_off_the_plan_once() {
    let mut state = State::default();
    let date = NaiveDate::from_ymd_opt(2026, 12, 2).unwrap();
    let row = domain::Prescription {
        bar: None,
        date,
        lifter: "Ines".into(),
        lift: "deadlift".into(),
        first: domain::prescription::SetGroup::straight(
            1,
            5,
            domain::prescription::LoadWish::OfBest(8_000),
        ),
        then: Vec::new(),
        track: None,
        ladder: None,
        note: String::new(),
    };
    let clear = |lifter: &str| Command::ClearDay {
        lifter: lifter.into(),
        date,
    };
    let take = Command::TakePlan {
        name: "desk".into(),
        rows: vec![row],
    };
    obey(&mut state, take, 1).unwrap();
    assert_eq!(
        obey(&mut state, clear("Bo"), 2),
        Err(Refusal::NothingPlanned)
    );
    obey(&mut state, clear("Ines"), 3).unwrap();
    assert!(state.plan.is_empty());
    assert_eq!(
        obey(&mut state, clear("Ines"), 4),
        Err(Refusal::NothingPlanned)
    );
}
