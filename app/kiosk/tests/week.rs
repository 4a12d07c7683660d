//! A lifter's week as coaches change it on the page, by the kiosk that owns the state: two tabs, a
//! day that has begun, one that is taken, one that is over, cells that are no plan. No clock of the
//! wall, no network.
use chrono::NaiveDate;
use domain::Prescription;
use kiosk::clock::BenchClock;
use kiosk::{Folder, Kiosk};
use share::Told;
use std::path::Path;
use view::Tap;
use view::coach_deed::Undone;
use view::desk::DayRow;
use view::week_deed::{PlanLine, Unmoved, WeekChange, WeekDeed, last_of, mark};

struct Gym {
    kiosk: Kiosk,
    clock: BenchClock,
}

/// Wednesday 2 December 2026, 18:00. Hamza's plan: Monday (not done), today two lifts, Friday one
/// of several set groups.
fn gym(data: &Path) -> Gym {
    copy(data, &["gym.toml", "lifters.toml"]);
    let folder = Folder::open(Some(data)).expect("opens");
    let day = day("2026-12-02").and_hms_opt(18, 0, 0).expect("a time");
    let clock = BenchClock::at(day);
    let kiosk = Kiosk::open(&folder, Box::new(clock.clone())).expect("opens");
    Gym { kiosk, clock }
}

const PLAN: &str = "date,lifter,lift,sets,reps,load,note\n\
    2026-11-30,Hamza,halting deadlift,1,8,150 kg,\n\
    2026-12-02,Hamza,rack pull,1,5,200 kg,slowly\n\
    2026-12-02,Hamza,barbell shrug,3,5,180 kg,\n\
    2026-12-04,Hamza,deadlift,1,5,170 kg,\n\
    2026-12-02,Parvati,deadlift,2,5,42.5 kg,\n";

/// Files of the invented gym, without its plan.
fn copy(data: &Path, names: &[&str]) {
    let demo = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../demo-data");
    for name in names {
        std::fs::copy(demo.join(name), data.join(name)).expect("copies");
    }
}

fn planned(data: &Path) -> Gym {
    let mut gym = gym(data);
    gym.take("week.csv", PLAN);
    gym
}

fn day(text: &str) -> NaiveDate {
    text.parse().expect("a day")
}

fn row(lift: &str, sets: &str, reps: &str, load: &str) -> DayRow {
    DayRow {
        lift: lift.into(),
        sets: sets.into(),
        reps: reps.into(),
        load: load.into(),
        ..DayRow::default()
    }
}

fn moves(from: &str, at: Option<usize>, to: &str) -> WeekChange {
    let (from, to) = (day(from), day(to));
    WeekChange::Move { from, at, to }
}

fn writes(date: &str, at: Option<usize>, row: Option<DayRow>) -> WeekChange {
    let date = day(date);
    WeekChange::Row { date, at, row }
}

impl Gym {
    fn take(&mut self, name: &str, text: &str) {
        let text = text.as_bytes();
        let rows = plan::coach_plan(plan::Source { name, text }, self.kiosk.gym());
        let rows = rows.expect("a plan");
        self.kiosk.take_plan(name.into(), rows).expect("taken");
    }

    /// As a page shows the lifter's two weeks now.
    fn seen(&self, lifter: &str, what: WeekChange) -> WeekDeed {
        let first = day("2026-11-30");
        let all = self.kiosk.state().plan.iter();
        let own = all
            .filter(|((date, name), _)| name == lifter && (first..=last_of(first)).contains(date));
        WeekDeed {
            lifter: lifter.into(),
            first,
            mark: mark(own.flat_map(|(_, rows)| rows).map(PlanLine::from)),
            what,
            beside: false,
        }
    }

    fn of(&mut self, what: WeekChange) -> Told {
        let deed = self.seen("Hamza", what);
        self.kiosk.change_week(&deed)
    }

    /// Nothing may come of it.
    fn refused(&mut self, deed: &WeekDeed) -> Told {
        let (before, plan) = (self.kiosk.seq(), self.kiosk.state().plan.clone());
        let told = self.kiosk.change_week(deed);
        assert_eq!(self.kiosk.seq(), before, "{told:?}");
        assert_eq!(self.kiosk.state().plan, plan);
        told
    }

    fn not(&mut self, what: WeekChange) -> Told {
        let deed = self.seen("Hamza", what);
        self.refused(&deed)
    }

    fn day(&self, date: &str) -> &[Prescription] {
        let rows = self.kiosk.state().plan.get(&(day(date), "Hamza".into()));
        rows.map(Vec::as_slice).unwrap_or_default()
    }

    fn lifts(&self, date: &str) -> Vec<&str> {
        self.day(date).iter().map(|row| row.lift.as_str()).collect()
    }
}

#[test]
fn a_missed_day_moves_whole_and_a_row_moves_alone() {
    let data = tempfile::tempdir().expect("a folder");
    let mut gym = planned(data.path());
    let before = gym.kiosk.seq();
    assert_eq!(gym.of(moves("2026-11-30", None, "2026-12-03")), Told::Done);
    assert_eq!(
        gym.kiosk.seq(),
        before + 2,
        "the day cleared, the other written, in one piece"
    );
    assert!(gym.day("2026-11-30").is_empty());
    assert_eq!(gym.lifts("2026-12-03"), ["halting deadlift"]);
    // Both of today's lifts; then one of them goes back.
    assert_eq!(gym.of(moves("2026-12-02", None, "2026-12-05")), Told::Done);
    assert_eq!(gym.lifts("2026-12-05"), ["rack pull", "barbell shrug"]);
    assert_eq!(
        gym.of(moves("2026-12-05", Some(0), "2026-12-02")),
        Told::Done
    );
    assert_eq!(gym.lifts("2026-12-05"), ["barbell shrug"]);
    assert_eq!(
        gym.day("2026-12-02")[0].note,
        "slowly",
        "the coach's words go with it"
    );
    // A restart knows it all.
    let plan = gym.kiosk.state().plan.clone();
    drop(gym);
    assert_eq!(self::gym(data.path()).kiosk.state().plan, plan);
}

#[test]
fn of_two_tabs_the_first_counts_and_other_lifters_are_of_no_account() {
    let data = tempfile::tempdir().expect("a folder");
    let mut gym = planned(data.path());
    let first = gym.seen("Hamza", moves("2026-12-02", None, "2026-12-03"));
    let second = gym.seen("Hamza", moves("2026-12-02", None, "2026-12-06"));
    let other = gym.seen("Parvati", moves("2026-12-02", None, "2026-12-03"));
    assert_eq!(gym.kiosk.change_week(&first), Told::Done);
    assert_eq!(gym.refused(&second), Told::Unmoved(Unmoved::Stale));
    assert_eq!(
        gym.refused(&first),
        Told::Unmoved(Unmoved::Stale),
        "pressed twice"
    );
    assert_eq!(gym.kiosk.change_week(&other), Told::Done);
    // Another load or another note is another plan.
    let late = gym.seen("Hamza", moves("2026-12-03", None, "2026-12-05"));
    gym.take(
        "new.csv",
        "date,lifter,lift,sets,reps,load\n2026-12-04,Hamza,deadlift,1,5,165 kg\n",
    );
    assert_eq!(gym.refused(&late), Told::Unmoved(Unmoved::Stale));
}

#[test]
fn what_was_begun_stays_where_it_is() {
    let data = tempfile::tempdir().expect("a folder");
    let mut gym = planned(data.path());
    gym.kiosk.tap(&Tap::Lifter("Hamza".into()));
    for _ in 0..4 {
        gym.kiosk.tap(&Tap::Main);
        gym.clock.advance_ms(1_500);
    }
    let lifts = gym.kiosk.state().lifts.values();
    let begun: Vec<_> = lifts.map(|run| run.sheet.lift.clone()).collect();
    assert_eq!(begun, ["rack pull"]);
    for at in [None, Some(0)] {
        let told = gym.not(moves("2026-12-02", at, "2026-12-03"));
        assert_eq!(told, Told::Unmoved(Unmoved::Begun), "{at:?}");
    }
    let other = writes(
        "2026-12-02",
        Some(0),
        Some(row("rack pull", "1", "5", "190 kg")),
    );
    assert_eq!(gym.not(other), Told::Unmoved(Unmoved::Begun));
    let off = writes("2026-12-02", Some(0), None);
    assert_eq!(gym.not(off), Told::Unmoved(Unmoved::Begun));
    // The lift that was not begun may go.
    assert_eq!(
        gym.of(moves("2026-12-02", Some(1), "2026-12-03")),
        Told::Done
    );
    assert_eq!(gym.lifts("2026-12-02"), ["rack pull"]);
}

#[test]
fn a_day_that_is_taken_takes_more_only_when_that_is_meant() {
    let data = tempfile::tempdir().expect("a folder");
    let mut gym = planned(data.path());
    let onto = moves("2026-11-30", None, "2026-12-04");
    assert_eq!(gym.not(onto.clone()), Told::Unmoved(Unmoved::Taken));
    let meant = WeekDeed {
        beside: true,
        ..gym.seen("Hamza", onto)
    };
    assert_eq!(gym.kiosk.change_week(&meant), Told::Done);
    assert_eq!(gym.lifts("2026-12-04"), ["deadlift", "halting deadlift"]);
    // The same lift twice is never meant.
    gym.take(
        "new.csv",
        "date,lifter,lift,sets,reps,load\n2026-12-05,Hamza,deadlift,1,5,100 kg\n",
    );
    let twice = WeekDeed {
        beside: true,
        ..gym.seen("Hamza", moves("2026-12-05", None, "2026-12-04"))
    };
    assert_eq!(gym.refused(&twice), Told::Unmoved(Unmoved::Twice));
    let same = gym.not(moves("2026-12-05", None, "2026-12-05"));
    assert_eq!(same, Told::Unmoved(Unmoved::Taken));
    let again = row("deadlift", "1", "5", "100 kg");
    let again = gym.not(writes("2026-12-05", None, Some(again)));
    assert!(
        matches!(again, Told::NotDone(_)),
        "in the checker's words: {again:?}"
    );
}

#[test]
fn a_programme_s_day_is_not_silently_put_aside() {
    let data = tempfile::tempdir().expect("a folder");
    copy(data.path(), &["programme.toml"]);
    let mut gym = planned(data.path());
    gym.take(
        "new.csv",
        "date,lifter,lift,sets,reps,load\n2026-12-04,Saoirse,deadlift,1,5,95 lb\n",
    );
    let onto = moves("2026-12-04", None, "2026-12-02");
    let more = writes("2026-12-02", None, Some(row("deadlift", "1", "5", "95 lb")));
    for what in [onto.clone(), more] {
        let deed = gym.seen("Saoirse", what);
        assert_eq!(gym.refused(&deed), Told::Unmoved(Unmoved::Taken));
    }
    let meant = WeekDeed {
        beside: true,
        ..gym.seen("Saoirse", onto)
    };
    assert_eq!(gym.kiosk.change_week(&meant), Told::Done);
    // Where her programme asks for nothing, nothing is in the way.
    let on = gym.seen("Saoirse", moves("2026-12-02", None, "2026-12-10"));
    assert_eq!(gym.kiosk.change_week(&on), Told::Done);
}

#[test]
fn days_that_are_over_and_pages_left_open_over_midnight_change_nothing() {
    let data = tempfile::tempdir().expect("a folder");
    let mut gym = planned(data.path());
    for to in [
        "2026-12-01",
        "2026-11-30",
        "2020-01-01",
        "2026-12-14",
        "9999-12-31",
    ] {
        let told = gym.not(moves("2026-12-02", None, to));
        assert_eq!(told, Told::Unmoved(Unmoved::Over), "{to}");
    }
    let told = gym.not(writes(
        "2026-12-01",
        None,
        Some(row("deadlift", "1", "5", "100 kg")),
    ));
    assert_eq!(told, Told::Unmoved(Unmoved::Over));
    let nothing = gym.not(moves("2026-12-03", None, "2026-12-04"));
    assert_eq!(nothing, Told::Unmoved(Unmoved::Stale));
    let nothing = gym.not(moves("2026-12-02", Some(7), "2026-12-04"));
    assert_eq!(nothing, Told::Unmoved(Unmoved::Stale));
    let open = gym.seen("Hamza", moves("2026-11-30", None, "2026-12-02"));
    let open = WeekDeed {
        beside: true,
        ..open
    };
    gym.clock.advance_ms(20 * 60 * 60 * 1_000);
    gym.kiosk.tick();
    assert_eq!(gym.kiosk.date(), day("2026-12-03"));
    assert_eq!(gym.refused(&open), Told::Unmoved(Unmoved::Over));
    let nobody = gym.seen("Nobody", moves("2026-12-02", None, "2026-12-04"));
    assert_eq!(gym.refused(&nobody), Told::Undone(Undone::Nobody));
}

#[test]
fn a_row_is_written_as_a_plan_is_or_not_at_all() {
    let data = tempfile::tempdir().expect("a folder");
    let mut gym = planned(data.path());
    let lighter = row("rack pull", "2", "3", "190,5 kg");
    assert_eq!(
        gym.of(writes("2026-12-02", Some(0), Some(lighter))),
        Told::Done
    );
    let now = &gym.day("2026-12-02")[0];
    assert_eq!((now.first.sets, now.first.reps.least), (2, 3));
    assert_eq!(now.note, "slowly", "what is not typed stays");
    assert_eq!(gym.lifts("2026-12-02"), ["rack pull", "barbell shrug"]);
    for (sets, reps, load) in [
        ("0", "5", "180 kg"),
        ("21", "5", "180 kg"),
        ("1", "-5", "180 kg"),
        ("1", "51", "180 kg"),
        ("1", "5", "heavy"),
        ("1", "5", "-180 kg"),
        ("1", "5", "5000 kg"),
        ("1", "5", "NaN"),
        ("", "", ""),
        ("1", "5", "180 kg\n2026-12-03,Parvati,deadlift,1,5,300 kg"),
        ("1", "5", "\",\"x\",\"y"),
    ] {
        let what = writes(
            "2026-12-02",
            Some(0),
            Some(row("rack pull", sets, reps, load)),
        );
        let told = gym.not(what);
        assert!(
            matches!(told, Told::NotDone(_)),
            "{sets} {reps} {load}: {told:?}"
        );
    }
    let no_lift = gym.not(writes(
        "2026-12-02",
        Some(0),
        Some(row("moon pull", "1", "5", "1 kg")),
    ));
    assert!(matches!(no_lift, Told::NotDone(_)), "{no_lift:?}");
    // Taken off, the last one too; and one more where nothing stands.
    assert_eq!(gym.of(writes("2026-12-04", Some(0), None)), Told::Done);
    assert!(gym.day("2026-12-04").is_empty());
    let more = row("deadlift", "1", "5", "80 %");
    assert_eq!(gym.of(writes("2026-12-03", None, Some(more))), Told::Done);
    assert_eq!(gym.lifts("2026-12-03"), ["deadlift"]);
}

#[test]
fn rows_of_several_groups_move_whole_and_are_not_written_over() {
    let data = tempfile::tempdir().expect("a folder");
    let mut gym = planned(data.path());
    let several =
        "date,lifter,lift,scheme\n2026-12-04,Hamza,deadlift,1 x 5 @ 170 kg; 2 x 5 @ 150 kg\n";
    gym.take("several.csv", several);
    let before = gym.day("2026-12-04")[0].clone();
    assert!(!before.is_straight(), "{before:?}");
    let over = writes(
        "2026-12-04",
        Some(0),
        Some(row("deadlift", "1", "5", "160 kg")),
    );
    assert_eq!(gym.not(over), Told::Unmoved(Unmoved::Grouped));
    assert_eq!(gym.of(moves("2026-12-04", None, "2026-12-06")), Told::Done);
    let after = &gym.day("2026-12-06")[0];
    let moved = Prescription {
        date: day("2026-12-06"),
        ..before
    };
    assert_eq!(*after, moved);
}

#[test]
fn what_looks_wrong_is_told_with_it() {
    let data = tempfile::tempdir().expect("a folder");
    let mut gym = planned(data.path());
    let told = gym.of(writes(
        "2026-12-05",
        None,
        Some(row("rack pull", "1", "5", "400 kg")),
    ));
    assert!(matches!(told, Told::DoneOdd(_)), "{told:?}");
    assert_eq!(
        gym.lifts("2026-12-05"),
        ["rack pull"],
        "kept all the same; the rack asks again"
    );
}
