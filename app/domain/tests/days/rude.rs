//! Rude users: they set clocks, pull plugs, restart, leave and come back, at any moment.
use crate::evening::{Evening, HOUR, MINUTE};
use chrono::NaiveDate;
use domain::gym::DAY_ENDS_AFTER_S;
use domain::training_day::STAYS_AFTER_END_MS;
use domain::{Command, DayCommand, Fact, LiftNo, State};
use proptest::prelude::*;
use std::collections::BTreeMap;

const LIFTERS: [&str; 3] = ["Ines", "Tomasz", "Wen"];
const DAY: i64 = 24 * HOUR;

/// What somebody does.
#[derive(Debug, Clone, Copy)]
enum Deed {
    Begin(usize),
    Set(usize),
    Stop(usize),
    Undo(usize),
    Wait(i64),
    SetWallBy(i64),
    SetWallRight,
    Restart,
    PowerCut(i64, bool),
    Reopen,
}

fn deed() -> impl Strategy<Value = Deed> {
    let who = 0..LIFTERS.len();
    let jump = prop_oneof![
        -10 * MINUTE..10 * MINUTE,
        -5 * HOUR..5 * HOUR,
        -40 * DAY..40 * DAY,
        -800 * DAY..800 * DAY,
        // As good as 1970.
        Just(-20_000 * DAY),
    ];
    let wait = prop_oneof![
        4 => 0..5 * MINUTE,
        2 => MINUTE..40 * MINUTE,
        1 => HOUR..5 * HOUR,
        1 => 8 * HOUR..40 * HOUR,
    ];
    let off = prop_oneof![1_000..10 * MINUTE, HOUR..20 * HOUR, DAY..30 * DAY];
    prop_oneof![
        4 => who.clone().prop_map(Deed::Begin),
        10 => who.clone().prop_map(Deed::Set),
        1 => who.clone().prop_map(Deed::Stop),
        1 => who.prop_map(Deed::Undo),
        8 => wait.prop_map(Deed::Wait),
        3 => jump.prop_map(Deed::SetWallBy),
        2 => Just(Deed::SetWallRight),
        2 => Just(Deed::Restart),
        1 => (off, any::<bool>()).prop_map(|(off, battery)| Deed::PowerCut(off, battery)),
        1 => Just(Deed::Reopen),
    ]
}

impl Deed {
    fn done_by(self, evening: &mut Evening) {
        // A refusal is no fault here: rude users press what they like.
        let no = |evening: &Evening, who: usize| {
            let run = evening.find(LIFTERS[who]);
            run.map_or(LiftNo(999), |run| run.no)
        };
        match self {
            Self::Begin(who) => drop(evening.begin(LIFTERS[who])),
            Self::Set(who) => drop(evening.set(LIFTERS[who])),
            Self::Stop(who) => drop(evening.obey(Command::StopLift(no(evening, who)))),
            Self::Undo(who) => drop(evening.obey(Command::Undo(no(evening, who)))),
            Self::Wait(ms) => evening.wait(ms),
            Self::SetWallBy(ms) => evening.set_wall_by(ms),
            Self::SetWallRight => evening.set_wall_right(),
            Self::Restart => evening.restart(),
            Self::PowerCut(off, battery) => evening.power_cut(off, battery),
            Self::Reopen => {
                let mut closed = evening.state.lifts.values().rev();
                if let Some(run) = closed.find(|run| run.is_left_open()) {
                    let (no, on) = (run.no, evening.today());
                    drop(evening.keep(DayCommand::ReopenLift { no, on }));
                }
            }
        }
    }
}

/// When each lift was truly touched last, and in which boot.
type Touched = BTreeMap<LiftNo, (u128, i64)>;

/// Notes by the true clock what `from` on was entered.
fn note(evening: &Evening, from: usize, touched: &mut Touched) {
    for event in &evening.log[from..] {
        let no = match &event.fact {
            Fact::LiftBegun { no, .. }
            | Fact::SetDone { no, .. }
            | Fact::LiftReopened { no, .. }
            | Fact::LiftStopped { no }
            | Fact::EntryUndone { no } => *no,
            _ => continue,
        };
        touched.insert(no, (evening.boot.0, evening.truth));
    }
}

fn holds(evening: &Evening, touched: &Touched) -> Result<(), TestCaseError> {
    prop_assert!(evening.is_in_order(), "no event is before the last one");
    prop_assert_eq!(&State::replay(&evening.log), &evening.state);
    let (now, today) = (evening.now(), evening.today());
    for run in evening.state.lifts.values() {
        let left = run.rest_left_s(now);
        prop_assert!(left <= 180, "{left} s of rest");
        let (boot, at) = touched[&run.no];
        let ago = evening.truth - at;
        let last = evening.state.touched.get(&run.no).copied();
        let here = boot == evening.boot.0 && last.is_some_and(|at| now.since(at) == ago);
        if !here || run.is_over() {
            continue;
        }
        // Touched in this boot: the truth is known.
        if ago < i64::from(DAY_ENDS_AFTER_S) * 1_000 {
            prop_assert_eq!(run.day, today, "under way, {} min ago", ago / MINUTE);
        }
        let is_set = run.last_set().is_some_and(|set| Some(set.at) == last);
        if is_set {
            let want = ((180_000 - ago).max(0) + 999) / 1_000;
            prop_assert_eq!(i64::from(left), want, "the rest is as long as it is");
        }
    }
    let oldest = evening.state.lifts.values().filter(|run| !run.is_over());
    for run in oldest {
        let last = evening.state.touched.get(&run.no);
        let ago = last.map_or(i64::MAX, |at| evening.state.times.ago_ms(*at, now));
        let kept = ago < i64::from(DAY_ENDS_AFTER_S) * 1_000;
        prop_assert!(run.day >= today || kept, "nothing of before stays open");
    }
    Ok(())
}

/// A lift that was closed had been left alone for as long as it takes, as far as anybody can know.
fn closed_late_enough(
    evening: &Evening,
    from: usize,
    touched: &Touched,
) -> Result<(), TestCaseError> {
    for event in &evening.log[from..] {
        let Fact::LiftLapsed { no } = &event.fact else {
            continue;
        };
        let (boot, at) = touched[no];
        if boot == evening.boot.0 {
            let ago = evening.truth - at;
            prop_assert!(
                ago + 5 * MINUTE >= i64::from(DAY_ENDS_AFTER_S) * 1_000,
                "{} min",
                ago / MINUTE
            );
        }
    }
    Ok(())
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(400))]

    #[test]
    fn whatever_is_done_to_clocks_and_plugs(deeds in prop::collection::vec(deed(), 1..60)) {
        let mut evening = Evening::at(22, 30);
        let mut touched = Touched::new();
        for deed in deeds {
            let (from, before) = (evening.log.len(), evening.now());
            let last = evening.state.times.last().expect("the anchor at least");
            deed.done_by(&mut evening);
            evening.tick();
            note(&evening, from, &mut touched);
            holds(&evening, &touched)?;
            closed_late_enough(&evening, from, &touched)?;
            let passed = evening.now().since(before);
            match deed {
                Deed::PowerCut(..) => prop_assert!(evening.now() >= last, "never behind the last event"),
                Deed::Wait(ms) => prop_assert_eq!(passed, ms),
                _ => prop_assert_eq!(passed, 0, "nobody sets the steady clock"),
            }
        }
        // When all are gone the wall clock says the day again.
        evening.wait(i64::from(DAY_ENDS_AFTER_S) * 1_000 + STAYS_AFTER_END_MS + 2 * DAY);
        let today: NaiveDate = evening.today();
        prop_assert_eq!(today, evening.local());
    }
}
