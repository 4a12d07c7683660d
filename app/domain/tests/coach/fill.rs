//! Days filled from a programme where the plan is silent, with the loads of next time.
use crate::gym::{gym, kg, lifter, plate, rack};
use chrono::{Days, NaiveDate};
use domain::body::Body;
use domain::day::{DayEntry, NoSheet, day};
use domain::event::{Event, Hold};
use domain::lift::Landmark;
use domain::next::here::decided;
use domain::next::{Verdict, Why};
use domain::prescription::{LoadWish, SetGroup};
use domain::programme::fill::filled;
use domain::programme::{Coaching, Pace, shipped};
use domain::sheet::RungKind;
use domain::{Command, Gym, Length, Mass, MassUnit, Moment, Prescription, State, decide};

pub(crate) fn date(days: u64) -> NaiveDate {
    NaiveDate::from_ymd_opt(2026, 1, 5).expect("a day") + Days::new(days)
}

/// Ines follows the split pulls; her bests are 200 kg and 100 kg for the clean.
pub(crate) fn coached() -> Gym {
    let landmarks = [
        (Landmark::TibialTuberosity, 450),
        (Landmark::PatellaTop, 530),
        (Landmark::MidThigh, 690),
    ];
    let mut ines = lifter(&landmarks, Body::default());
    let best = |lift: &str, load| (String::from(lift), kg(load));
    ines.bests = vec![
        best("rack pull", 200),
        best("halting deadlift", 180),
        best("barbell shrug", 220),
        best("power clean", 100),
    ];
    let mut gym = gym(rack(Length::mm(50)), ines);
    let mut small = plate(0, 200);
    for (grams, pairs) in [(2_500, 1), (1_250, 1)] {
        small.face.mass = Mass::of(MassUnit::Kg, grams);
        small.pairs = pairs;
        gym.plate_sets[0].plates.push(small.clone());
    }
    let mut programmes = shipped();
    programmes[0].lifters.push("Ines".into());
    gym.coaching = Coaching {
        programmes,
        ..Coaching::default()
    };
    gym
}

/// A gym's days lived through, event by event.
pub(crate) struct Life {
    pub(crate) gym: Gym,
    pub(crate) state: State,
    pub(crate) events: Vec<Event>,
    now: Moment,
}

impl Life {
    pub(crate) fn new(gym: Gym) -> Self {
        Self {
            gym,
            state: State::default(),
            events: Vec::new(),
            now: Moment(0),
        }
    }

    pub(crate) fn now(&self) -> Moment {
        self.now
    }

    pub(crate) fn wait_ms(&mut self, ms: i64) {
        self.now = Moment(self.now.0 + ms);
    }

    pub(crate) fn entries(&self, days: u64) -> Vec<DayEntry> {
        day(&self.gym, &self.state, date(days))
    }

    pub(crate) fn obey(&mut self, command: Command) {
        for event in decide(&self.state, command, self.now).expect("sensible") {
            self.state.apply(&event);
            self.events.push(event);
        }
    }

    pub(crate) fn plan(&mut self, days: u64, lift: &str, load: i64) {
        let row = Prescription {
            bar: None,
            date: date(days),
            lifter: "Ines".into(),
            lift: lift.into(),
            first: SetGroup::straight(1, 5, LoadWish::Mass(kg(load))),
            then: Vec::new(),
            track: None,
            ladder: None,
            note: String::new(),
        };
        self.obey(Command::TakePlan {
            name: "week.csv".into(),
            rows: vec![row],
        });
    }

    /// Does every lift of a day; `how` says reps and hold of each work set.
    pub(crate) fn lift(&mut self, days: u64, mut how: impl FnMut(Mass, u8) -> (u8, Hold)) {
        let noon = date(days).and_hms_opt(12, 0, 0).expect("noon").and_utc();
        self.now = Moment(noon.timestamp_millis());
        for entry in self.entries(days) {
            let Ok(sheet) = entry.outcome else { continue };
            let rungs = sheet.rungs.clone();
            self.obey(Command::BeginLift(Box::new(sheet)));
            let no = self.state.lifts.keys().next_back().copied().expect("begun");
            for (rung, asked) in rungs.iter().enumerate() {
                let (reps, hold) = match asked.kind {
                    RungKind::WarmUp => (asked.reps, Hold::Kept),
                    RungKind::Work => how(asked.load, asked.reps),
                };
                self.obey(Command::EnterSet {
                    no,
                    rung,
                    reps,
                    hold,
                    holds: None,
                });
                if hold != Hold::Kept && rung + 1 < rungs.len() {
                    self.obey(Command::StopLift(no));
                    break;
                }
            }
            // As the kiosk does.
            let decided = decided(&self.gym, &self.state, &self.state.lifts[&no]);
            let decided = Box::new(decided.expect("something follows"));
            self.obey(Command::DecideNext { no, decided });
        }
    }
}

fn only(entries: &[DayEntry]) -> &DayEntry {
    let [entry] = entries else {
        panic!("{entries:?}")
    };
    entry
}

fn work_load(entry: &DayEntry) -> Mass {
    let sheet = entry.outcome.as_ref().expect("a sheet");
    sheet.rungs.last().expect("rungs").load
}

const WELL: fn(Mass, u8) -> (u8, Hold) = |_, reps| (reps, Hold::Kept);

#[test]
fn the_first_time_is_a_share_of_the_best() {
    let life = Life::new(coached());
    let entries = life.entries(0);
    let entry = only(&entries);
    assert_eq!(
        (entry.lift.as_str(), work_load(entry)),
        ("rack pull", kg(150))
    );
    assert_eq!(entry.programme.as_deref(), Some("split pulls, heavy day"));
    assert_eq!(entry.next, None);
}

#[test]
fn then_the_rules_give_the_load() {
    let mut life = Life::new(coached());
    for at in 0..4 {
        life.lift(at * 4, WELL);
    }
    let entries = life.entries(16);
    let entry = only(&entries);
    // 2.5 % over 150 kg is 153.75 kg; 152.5 and 155 kg can be loaded, the lower is as near.
    assert_eq!(work_load(entry), Mass::of(MassUnit::Kg, 152_500));
    let next = entry.next.as_ref().expect("a decision").decision;
    assert_eq!(
        (next.verdict, next.from, next.date),
        (Verdict::Raise, kg(150), date(0))
    );
    // What is done today does not change today.
    life.lift(16, WELL);
    assert_eq!(life.entries(16), entries);
    let rest = NoSheet::Rest {
        programme: "split pulls".into(),
        from: date(19),
    };
    assert_eq!(only(&life.entries(17)).outcome, Err(rest));
}

#[test]
fn the_plan_wins_and_keeps_its_distance() {
    let mut life = Life::new(coached());
    life.plan(3, "deadlift", 140);
    let entries = life.entries(3);
    let entry = only(&entries);
    assert_eq!((entry.lift.as_str(), &entry.programme), ("deadlift", &None));
    // What comes next is told: the plan's day before it, the programme's after it.
    let nothing = |next: u64, lift: &str| {
        let next = Some((date(next), lift.to_owned()));
        Err(NoSheet::NothingToday { next })
    };
    for (near, next, lift) in [
        (1, 3, "deadlift"),
        (2, 3, "deadlift"),
        (4, 6, "rack pull"),
        (5, 6, "rack pull"),
    ] {
        let outcome = only(&life.entries(near)).outcome.clone();
        assert_eq!(outcome, nothing(next, lift), "{near}");
    }
    for far in [0, 6] {
        assert_eq!(only(&life.entries(far)).lift, "rack pull", "{far}");
    }
    let mut weekly = life.gym.coaching.programmes[0].clone();
    weekly.pace = Pace::Week;
    weekly.days[0].weekday = Some(chrono::Weekday::Tue);
    weekly.days[1].weekday = Some(chrono::Weekday::Sat);
    life.gym.coaching.programmes[0] = weekly;
    // Day 3 is a Thursday: the plan has that week.
    let before = only(&life.entries(1)).outcome.clone();
    assert_eq!(before, nothing(3, "deadlift"));
    assert_eq!(only(&life.entries(8)).lift, "rack pull");
}

#[test]
fn a_plan_s_load_stands_beside_what_the_rules_give() {
    let mut life = Life::new(coached());
    life.plan(0, "deadlift", 140);
    life.lift(0, |_, reps| (reps - 1, Hold::Kept));
    life.plan(7, "deadlift", 160);
    let entries = life.entries(7);
    let entry = only(&entries);
    let next = entry.next.as_ref().expect("a decision").decision;
    assert_eq!((next.why, next.load), (Why::TryAgain, kg(140)));
    // The lower one is on the sheet, the plan's is told beside it.
    assert_eq!((work_load(entry), entry.planned), (kg(140), Some(kg(160))));
    // A lighter day by plan stands as it is, and what is due is told beside it.
    life.plan(7, "deadlift", 100);
    let entries = life.entries(7);
    let light = only(&entries);
    assert_eq!((work_load(light), light.planned), (kg(100), Some(kg(100))));
    // A ruling stands, whatever the plan asks.
    life.obey(Command::OverrideNext {
        no: domain::LiftNo(1),
        load: kg(150),
        note: "moved well".into(),
    });
    let entries = life.entries(7);
    let ruled = only(&entries);
    assert_eq!((work_load(ruled), ruled.planned), (kg(150), None));
}

#[test]
fn nobody_without_a_programme_is_given_one() {
    let mut life = Life::new(coached());
    life.gym.coaching.programmes[0].lifters.clear();
    let nothing = |next| Err(NoSheet::NothingToday { next });
    assert_eq!(only(&life.entries(0)).outcome, nothing(None));
    life.plan(5, "deadlift", 140);
    let next = Some((date(5), "deadlift".to_owned()));
    assert_eq!(only(&life.entries(0)).outcome, nothing(next));
    let told = NoSheet::Rest {
        programme: "split pulls".into(),
        from: date(3),
    };
    assert_eq!(
        told.to_string(),
        "nothing today; split pulls goes on from Thursday 8 January"
    );
}

#[test]
fn no_best_and_no_past_is_said() {
    let mut life = Life::new(coached());
    life.gym.lifters[0].bests.clear();
    let entries = life.entries(0);
    assert_eq!(only(&entries).outcome, Err(NoSheet::NoBest));
    assert_eq!(only(&entries).lift, "rack pull");
}

/// The days and lifts that a coach is shown of a programme, from four weeks back to a week ahead.
fn shown(life: &Life, today: u64) -> Vec<(u64, String)> {
    let ines = &life.gym.lifters[0];
    let days = (date(today.saturating_sub(28)), date(today + 7));
    let rows = filled(&life.gym, &life.state, ines, days, date(today));
    let since = |day: NaiveDate| u64::try_from((day - date(0)).num_days()).expect("after");
    rows.into_iter()
        .map(|(_, row)| (since(row.date), row.lift))
        .collect()
}

#[test]
fn a_queue_shows_what_was_done_and_what_is_next() {
    let mut life = Life::new(coached());
    let heavy = |day| (day, String::from("rack pull"));
    assert_eq!(shown(&life, 3), [heavy(3)], "whenever she comes");
    life.lift(3, WELL);
    // The other day, as far apart as the programme wants it.
    let after = shown(&life, 4);
    assert_eq!(after[0], heavy(3));
    assert_eq!(after[1].1, "barbell shrug");
    assert_eq!(after.len(), 2);
    let apart = after[1].0 - 3;
    assert!(apart > 1, "{after:?}");
    // A week later nothing was missed; the same day is next, today.
    assert_eq!(shown(&life, 10), [heavy(3), (10, "barbell shrug".into())]);
    // Where the plan speaks, the programme is silent.
    life.plan(10, "deadlift", 100);
    assert_eq!(shown(&life, 10), [heavy(3)]);
}

#[test]
fn days_of_the_week_show_what_was_missed() {
    let mut gym = coached();
    let programme = &mut gym.coaching.programmes[0];
    programme.pace = Pace::Week;
    programme.days[0].weekday = Some(chrono::Weekday::Mon);
    programme.days[1].weekday = Some(chrono::Weekday::Thu);
    let mut life = Life::new(gym);
    // The 5th of January 2026 is a Monday. Before the first lift nothing was missed.
    let days = |life: &Life, today| -> Vec<u64> {
        let mut days: Vec<u64> = shown(life, today).into_iter().map(|row| row.0).collect();
        days.dedup();
        days
    };
    assert_eq!(days(&life, 9), [10, 14]);
    life.lift(0, WELL);
    assert_eq!(days(&life, 9), [0, 3, 7, 10, 14]);
}
