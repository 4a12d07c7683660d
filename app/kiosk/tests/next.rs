//! `pinladder next`: what is due, and the coach's ruling.
mod command_line;

use command_line::pinladder;
use domain::{Command, DayCommand, Hold};
use journal::Journal;
use kiosk::clock::{BenchClock, Clock as _, SystemClock};
use kiosk::owner::Owner;
use kiosk::{Folder, Kiosk};
use view::{Screen, Tap};

/// A folder in which Tevita did a rack pull as planned today.
fn lifted() -> tempfile::TempDir {
    let data = tempfile::tempdir().expect("a folder");
    let today = chrono::Local::now().date_naive();
    let plan = format!(
        "date,lifter,lift,sets,reps,load,ladder,rest,note\n{today},Tevita,rack pull,1,5,500 lb,,,\n"
    );
    let path = data.path().join("today.csv");
    std::fs::write(&path, plan).expect("written");
    let taken = pinladder(data.path(), &["take", &path.display().to_string()]);
    assert!(taken.0, "{}", taken.2);
    let folder = Folder::open(Some(data.path())).expect("opens");
    let mut kiosk = Kiosk::open(&folder, Box::new(SystemClock)).expect("opens");
    kiosk.tap(&Tap::Lifter("Tevita".into()));
    for _ in 0..40 {
        if matches!(kiosk.frame().screen, Screen::End(_)) {
            break;
        }
        kiosk.tap(&Tap::Main);
    }
    data
}

#[test]
fn what_is_due_is_said_with_its_reason_and_the_coach_can_rule_otherwise() {
    let data = lifted();
    let (well, text, err) = pinladder(data.path(), &["next", "--lifter", "tevita"]);
    assert!(well, "{err}");
    for part in [
        "rack pull, 5 reps",
        "due     510 lb, up 10 lb: all reps with the back held",
        "add 2.5 %; 2 tries",
        "500 lb  all reps, back held",
    ] {
        assert!(text.contains(part), "{part} is not in:\n{text}");
    }
    let rule = [
        "next",
        "--lifter",
        "Tevita",
        "--lift",
        "rack pull",
        "--load",
        "480 lb",
        "--note",
        "slow off the pins",
    ];
    let (well, text, err) = pinladder(data.path(), &rule);
    assert!(well, "{err}");
    assert!(
        text.contains("480 lb, set by the coach: slow off the pins"),
        "{text}"
    );
    assert!(text.contains("rules   510 lb"), "{text}");
    let (_, json, _) = pinladder(data.path(), &["next", "--lifter", "Tevita", "--json"]);
    let doc: serde_json::Value = serde_json::from_str(&json).expect("JSON");
    let due = &doc["lifts"][0]["due"];
    assert_eq!(
        (due["by"].as_str(), due["load"].as_str()),
        (Some("coach"), Some("480 lb"))
    );
    assert_eq!(doc["lifts"][0]["by_rules"]["load"], "510 lb");
    // On a day without it the sheet says what is due of it all the same.
    let tomorrow = chrono::Local::now().date_naive() + chrono::Days::new(1);
    let sheet = [
        "sheet",
        "--lifter",
        "Tevita",
        "--date",
        &tomorrow.to_string(),
    ];
    let (_, text, _) = pinladder(data.path(), &sheet);
    let due = "then    rack pull, 5 reps: 480 lb, set by the coach: slow off the pins; last on";
    assert!(text.contains(due), "{text}");
    let (well, ..) = pinladder(data.path(), &["journal", "verify"]);
    assert!(well);
}

/// A power cut between the last set and its decision: the decision is made at the next tick, be it
/// on another day.
#[test]
fn a_decision_that_a_power_cut_ate_is_made_afterwards() {
    for days in [0, 1, 9] {
        made_afterwards(chrono::Days::new(days));
    }
}

fn made_afterwards(days: chrono::Days) {
    let data = lifted();
    let folder = Folder::open(Some(data.path())).expect("opens");
    let mut owner = Owner::open(Journal::open(&folder.journal()).expect("opens")).expect("reads");
    let no = *owner.state().lifts.keys().next_back().expect("a lift");
    let now = SystemClock.look().wall;
    owner.command(&Command::Undo(no), now).expect("undone");
    let rung = owner.state().lifts[&no].next_rung().expect("under way");
    let set = Command::EnterSet {
        no,
        rung,
        reps: 4,
        hold: Hold::Kept,
        holds: None,
    };
    owner.command(&set, now).expect("entered");
    assert_eq!(owner.state().lifts[&no].next, None);
    drop(owner);
    let clock = BenchClock::at(SystemClock.local() + days);
    let mut kiosk = Kiosk::open(&folder, Box::new(clock)).expect("opens");
    kiosk.tick();
    let next = kiosk.state().lifts[&no].next.clone().expect("decided");
    assert_eq!(next.decided.reason, "500 lb again: 4 of 5 reps, try 1 of 2");
    let seq = kiosk.seq();
    kiosk.tick();
    assert_eq!(kiosk.seq(), seq, "and once only");
}

/// Somebody on the partials stays there; the drawing is written beside the words.
#[test]
fn the_advice_on_the_split_can_be_printed() {
    let data = lifted();
    let file = data.path().join("split.svg").display().to_string();
    let (well, text, err) = pinladder(
        data.path(),
        &["split", "--lifter", "Tevita", "--svg", &file],
    );
    assert!(well, "{err}");
    assert!(
        text.starts_with("Tevita: on the halting deadlift and the rack pull"),
        "{text}"
    );
    let svg = std::fs::read_to_string(&file).expect("the drawing is there");
    assert!(svg.contains(">Tevita</text>"), "{svg}");
}

#[test]
fn wrong_usage_says_what_to_do() {
    let data = lifted();
    let told = |words: &[&str]| {
        let (well, _, err) = pinladder(data.path(), words);
        assert!(!well, "{words:?}");
        err
    };
    let of = ["next", "--lifter", "Tevita", "--lift"];
    assert!(told(&["next", "--lifter", "Nobody"]).contains("Tevita"));
    assert!(told(&[&of[..], &["snatch"]].concat()).contains("there are rack pull"));
    let wrong = told(&[&of[..], &["rack pull", "--load", "480", "--note", "so"]].concat());
    assert!(wrong.contains("\"480\" has no unit"), "{wrong}");
    assert!(told(&[&of[..], &["rack pull", "--load", "480 lb"]].concat()).contains("--note"));
    let empty = told(&[&of[..], &["rack pull", "--load", "480 lb", "--note", " "]].concat());
    assert!(empty.contains("the note is missing"), "{empty}");
}

/// What was left open is listed, and one of it opened again, once.
#[test]
fn what_was_left_open_is_listed_and_opened_again() {
    let data = lifted();
    let (well, text, err) = pinladder(data.path(), &["reopen"]);
    assert!(well, "{err}");
    assert_eq!(text, "nothing was left open\n");
    let folder = Folder::open(Some(data.path())).expect("opens");
    let mut owner = Owner::open(Journal::open(&folder.journal()).expect("opens")).expect("reads");
    let no = *owner.state().lifts.keys().next_back().expect("a lift");
    for command in [
        Command::Undo(no),
        Command::Day(DayCommand::CloseLeftOpen(no)),
    ] {
        let now = SystemClock.look().wall;
        owner.command(&command, now).expect("done");
    }
    drop(owner);
    let (_, text, _) = pinladder(data.path(), &["reopen"]);
    assert!(text.contains("Tevita, rack pull, "), "{text}");
    assert!(text.trim_end().ends_with("left open"), "{text}");
    let number = no.0.to_string();
    let (well, text, err) = pinladder(data.path(), &["reopen", &number]);
    assert!(
        well && text.starts_with("Tevita: the rack pull of "),
        "{text}{err}"
    );
    let (well, _, err) = pinladder(data.path(), &["reopen", &number]);
    assert!(!well, "only once");
    assert!(err.contains("that lift was not left open"), "{err}");
    let (well, _, err) = pinladder(data.path(), &["reopen", "9999"]);
    assert!(!well && err.contains("no such lift"), "{err}");
}

/// Some days ago a light day, today a heavy one; a ruling is for the one that is named.
#[test]
fn a_track_is_asked_for_and_ruled_by_its_name() {
    let data = tempfile::tempdir().expect("a folder");
    let today = chrono::Local::now().date_naive();
    let earlier = today - chrono::Days::new(3);
    let plan = format!(
        "date,lifter,lift,scheme,track\n{earlier},Tevita,rack pull,1x5 @ 405 lb,light\n\
         {today},Tevita,rack pull,1x5 @ 500 lb,Heavy\n"
    );
    let folder = Folder::open(Some(data.path())).expect("opens");
    let clock = BenchClock::at(SystemClock.local() - chrono::Days::new(3));
    // Taken as early as that too: a journal's moments never go back.
    let gym = Kiosk::open(&folder, Box::new(clock.clone())).expect("opens");
    let (name, text) = ("days.csv", plan.as_bytes());
    let rows = plan::coach_plan(plan::Source { name, text }, gym.gym()).expect("a good plan");
    drop(gym);
    let mut owner = Owner::open(Journal::open(&folder.journal()).expect("opens")).expect("reads");
    let take = Command::TakePlan {
        name: name.to_owned(),
        rows,
    };
    owner.command(&take, clock.now()).expect("taken");
    drop(owner);
    for _ in 0..2 {
        let mut kiosk = Kiosk::open(&folder, Box::new(clock.clone())).expect("opens");
        kiosk.tick();
        kiosk.tap(&Tap::Lifter("Tevita".into()));
        for _ in 0..40 {
            if matches!(kiosk.frame().screen, Screen::End(_)) {
                break;
            }
            kiosk.tap(&Tap::Main);
        }
        let screen = kiosk.frame().screen;
        assert!(matches!(screen, Screen::End(_)), "{screen:?}");
        clock.reboot_after_ms(3 * 86_400_000);
    }
    let next = |more: &[&str]| {
        let words = [&["next", "--lifter", "Tevita", "--lift", "Rack Pull"], more].concat();
        pinladder(data.path(), &words)
    };
    let (well, text, err) = next(&["--track", "light"]);
    assert!(well, "{err}");
    assert!(text.contains("rack pull, light, 5 reps"), "{text}");
    assert!(!text.contains("heavy"), "{text}");
    let (well, _, err) = next(&["--track", "speed"]);
    assert!(!well, "{err}");
    let told = "no track of Tevita's rack pull is called \"speed\"; there are heavy, light";
    assert!(err.contains(told), "{err}");
    let (well, _, err) = next(&["--load", "450 lb", "--note", "fresh"]);
    assert!(
        !well && err.contains("--track; there are heavy, light"),
        "{err}"
    );
    let (well, text, err) = next(&["--track", "HEAVY", "--load", "450 lb", "--note", "fresh"]);
    assert!(well, "{err}");
    assert!(text.contains("450 lb, set by the coach: fresh"), "{text}");
    let (_, json, _) = next(&["--json"]);
    let doc: serde_json::Value = serde_json::from_str(&json).expect("JSON");
    let by = |at: usize| {
        let lift = &doc["lifts"][at];
        (lift["track"].clone(), lift["due"]["by"].clone())
    };
    assert_eq!(by(0), ("heavy".into(), "coach".into()));
    assert_eq!(by(1), ("light".into(), "rules".into()));
}

#[test]
fn a_lift_that_nobody_knows_is_refused_with_those_there_are() {
    let data = tempfile::tempdir().expect("a folder");
    let words = ["next", "--lifter", "Tevita", "--lift", "juggling"];
    let (well, text, err) = pinladder(data.path(), &words);
    assert!(!well && text.is_empty(), "{text}");
    let told = "no lift is called \"juggling\"; there are rack pull, halting deadlift";
    assert!(err.contains(told), "{err}");
}
