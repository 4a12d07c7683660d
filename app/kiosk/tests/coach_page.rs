//! What coaches do on the page, by the kiosk that owns the state: two of them at once, a double
//! press, a page that was left open. No clock of the wall, no network.
use domain::Command;
use domain::next::coach_list::{CoachLine, Concern, lines_of};
use kiosk::clock::BenchClock;
use kiosk::{Folder, Kiosk};
use share::Told;
use view::coach_deed::{CoachDeed, Undone, What, loads, mark, ruled_after};
use view::{Screen, Tap};

struct Gym {
    _data: tempfile::TempDir,
    kiosk: Kiosk,
    clock: BenchClock,
}

/// Wednesday 2 December 2026: Tevita did a rack pull as planned, and Željka's plan of today and of
/// Friday has a slip of the pen.
fn gym() -> Gym {
    let data = tempfile::tempdir().expect("a folder");
    let folder = Folder::open(Some(data.path())).expect("opens");
    let day = chrono::NaiveDate::from_ymd_opt(2026, 12, 2).expect("a day");
    let clock = BenchClock::at(day.and_hms_opt(18, 0, 0).expect("a time"));
    let mut kiosk = Kiosk::open(&folder, Box::new(clock.clone())).expect("opens");
    let rows = "date,lifter,lift,sets,reps,load\n\
                2026-12-02,Tevita,rack pull,1,5,500 lb\n\
                2026-12-02,Željka,rack pull,1,5,290 kg\n";
    let source = plan::Source {
        name: "today.csv",
        text: rows.as_bytes(),
    };
    let rows = plan::coach_plan(source, kiosk.gym()).expect("a plan");
    kiosk.take_plan("today.csv".into(), rows).expect("taken");
    kiosk.tap(&Tap::Lifter("Tevita".into()));
    for _ in 0..40 {
        if matches!(kiosk.frame().screen, Screen::End(_)) {
            break;
        }
        kiosk.tap(&Tap::Main);
    }
    kiosk.tick();
    Gym {
        _data: data,
        kiosk,
        clock,
    }
}

impl Gym {
    fn line(&self, lifter: &str) -> Option<CoachLine> {
        let gym = self.kiosk.gym();
        let lifter = gym.lifters.iter().find(|l| l.name == lifter)?;
        let today = self.kiosk.date();
        let days = (today, today.succ_opt()?);
        lines_of(gym, self.kiosk.state(), lifter, days)
            .into_iter()
            .next()
    }

    fn of(&mut self, lifter: &str, what: What) -> Told {
        self.kiosk.coach(&CoachDeed {
            lifter: lifter.to_owned(),
            what,
            note: String::new(),
        })
    }

    /// Nothing may come of it.
    fn unmoved(&mut self, lifter: &str, what: What) -> Told {
        let before = self.kiosk.seq();
        let told = self.of(lifter, what);
        assert_eq!(self.kiosk.seq(), before, "{told:?}");
        told
    }
}

fn rule(line: &CoachLine, load: &str) -> What {
    What::Rule {
        no: ruled_after(line).expect("something was done"),
        mark: mark(line),
        load: load.to_owned(),
    }
}

fn day(text: &str) -> chrono::NaiveDate {
    text.parse().expect("a day")
}

#[test]
fn of_two_coaches_the_first_rules_and_the_second_is_told() {
    let mut gym = gym();
    let seen = gym.line("Tevita").expect("a line");
    let named: Vec<String> = loads(&seen)
        .iter()
        .map(|(m, _)| m.exact(seen.unit))
        .collect();
    assert_eq!(named, ["500 lb", "510 lb"], "the lower one first");
    assert_eq!(gym.of("Tevita", rule(&seen, "500 lb")), Told::Done);
    let ruled = gym.line("Tevita").expect("a line");
    assert_ne!(mark(&seen), mark(&ruled));
    let due = ruled.due.as_ref().and_then(|due| due.decision.due());
    assert_eq!(
        due.map(|load| load.exact(ruled.unit)).as_deref(),
        Some("500 lb")
    );
    let other = gym.unmoved("Tevita", rule(&seen, "520"));
    assert_eq!(other, Told::Undone(Undone::Stale));
    // The same press twice, or the same ruling by the other: it is so.
    for load in ["500 lb", "500", "500,0 lb"] {
        let again = gym.unmoved("Tevita", rule(&seen, load));
        assert_eq!(again, Told::Undone(Undone::Already), "{load}");
    }
    // Whoever looks again may rule otherwise.
    assert_eq!(gym.of("Tevita", rule(&ruled, "490")), Told::Done);
}

#[test]
fn what_is_no_load_changes_nothing() {
    let mut gym = gym();
    let seen = gym.line("Tevita").expect("a line");
    for load in [
        "",
        " ",
        "heavy",
        "-5",
        "0",
        "1e9",
        "1.2.3",
        "500 stone",
        "NaN",
        "٥٠٠",
    ] {
        let told = gym.unmoved("Tevita", rule(&seen, load));
        assert_eq!(told, Told::Undone(Undone::NoLoad), "{load:?}");
    }
    let told = gym.unmoved("Tevita", rule(&seen, "5000 kg"));
    assert!(matches!(told, Told::NotDone(_)), "{told:?}");
    let told = gym.unmoved("Nobody", rule(&seen, "500"));
    assert_eq!(told, Told::Undone(Undone::Nobody));
    let other = What::Rule {
        no: 4_000_000_000,
        mark: mark(&seen),
        load: "500".to_owned(),
    };
    assert_eq!(gym.unmoved("Tevita", other), Told::Undone(Undone::Stale));
}

#[test]
fn a_page_left_open_over_midnight_says_nothing_of_yesterdays_plan() {
    let mut gym = gym();
    let seen = gym.line("Željka").expect("a line");
    assert!(matches!(seen.concern, Concern::LooksWrong { .. }));
    let meant = What::Meant {
        mark: mark(&seen),
        lift: "rack pull".to_owned(),
        date: day("2026-12-02"),
    };
    gym.clock.advance_ms(20 * 60 * 60 * 1_000);
    gym.kiosk.tick();
    assert_eq!(gym.kiosk.date(), day("2026-12-03"));
    let told = gym.unmoved("Željka", meant.clone());
    assert_eq!(told, Told::Undone(Undone::Stale));
}

#[test]
fn a_load_that_is_meant_is_said_once() {
    let mut gym = gym();
    let seen = gym.line("Željka").expect("a line");
    let meant = What::Meant {
        mark: mark(&seen),
        lift: "rack pull".to_owned(),
        date: day("2026-12-02"),
    };
    assert_eq!(gym.of("Željka", meant.clone()), Told::Done);
    assert_eq!(gym.line("Željka"), None, "nothing looks wrong any more");
    let again = gym.unmoved("Željka", meant);
    assert_eq!(again, Told::Undone(Undone::Already));
}

#[test]
fn hurt_and_ill_by_days_that_can_be_known() {
    let mut gym = gym();
    let (first, today) = (day("2026-11-30"), day("2026-12-02"));
    let told = gym.unmoved("Tevita", What::Fit);
    assert_eq!(told, Told::Undone(Undone::Already));
    assert_eq!(gym.of("Tevita", What::Hurt(first)), Told::Done);
    let told = gym.unmoved("Tevita", What::Hurt(first));
    assert_eq!(told, Told::Undone(Undone::Already));
    let line = gym.line("Tevita").expect("a line");
    assert!(matches!(line.concern, Concern::Hurt { .. }));
    assert_eq!(gym.of("Tevita", What::Fit), Told::Done);
    assert_eq!(gym.of("Tevita", What::Ill(first, today)), Told::Done);
    let told = gym.unmoved("Tevita", What::Ill(first, today));
    assert_eq!(told, Told::Undone(Undone::Already));
    for (from, to, why) in [
        ("2026-12-02", "2026-12-03", Undone::ToCome),
        ("2026-12-03", "2026-12-03", Undone::ToCome),
        ("2016-12-02", "2026-12-02", Undone::Slip),
    ] {
        let told = gym.unmoved("Tevita", What::Ill(day(from), day(to)));
        assert_eq!(told, Told::Undone(why), "{from} to {to}");
    }
    // Backwards: in the words of the core.
    let told = gym.unmoved("Tevita", What::Ill(today, first));
    assert!(matches!(told, Told::NotDone(_)), "{told:?}");
    // The same word as from the screen's desk.
    let word = Command::SayCoach(Box::new(domain::coach_word::CoachWord {
        lifter: "Tevita".into(),
        what: domain::coach_word::CoachSays::Fit,
        note: "twice".into(),
    }));
    assert!(domain::decide(gym.kiosk.state(), word, gym.kiosk.now()).is_err());
}
