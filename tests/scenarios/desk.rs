//! The coach's desk: behind its code, a height typed, a plan taken, a gym built from nothing.
use crate::bench::{Bench, evening};
use domain::Length;
use domain::lift::Landmark;
use view::list::ListState;
use view::{Language, Screen};

/// Opens the desk with a code; the first time it becomes the code, typed twice.
pub(crate) fn enter(bench: &Bench, code: &str) {
    bench.tap("kiosk");
    bench.tap("coach's desk, behind a code");
    type_in(bench, code);
    if asks_again(bench) {
        type_in(bench, code);
    }
}

/// Whether a first code is asked for once more.
pub(crate) fn asks_again(bench: &Bench) -> bool {
    let Screen::Typing(door) = bench.frame().screen else {
        return false;
    };
    !door.wrong && door.typed.is_empty()
}

/// From the front page to racks, bars and plates.
pub(crate) fn to_the_gym(bench: &Bench) {
    bench.tap("the gym");
}

/// Taps key after key.
pub(crate) fn type_in(bench: &Bench, keys: &str) {
    for key in keys.chars() {
        bench.tap(&key.to_string());
    }
}

pub(crate) fn title(bench: &Bench) -> String {
    match bench.frame().screen {
        Screen::List(list) => list.title,
        Screen::Typing(typing) => typing.title,
        other @ (Screen::Choose(_)
        | Screen::SetUp(_)
        | Screen::Bar(_)
        | Screen::Entry(_)
        | Screen::Rest(_)
        | Screen::Settle(_)
        | Screen::Stop(_)
        | Screen::End(_)
        | Screen::Floor(_)
        | Screen::History(_)
        | Screen::Why(_)
        | Screen::Meet(_)
        | Screen::Turn(_)
        | Screen::Holds(_)
        | Screen::Page(_)) => panic!("not at the desk: {other:?}"),
    }
}

/// Goes on to the next page of a list, in the language of the screen.
fn turn_page(bench: &Bench) {
    let german = bench.frame().language == Language::German;
    bench.tap(if german { "mehr" } else { "more" });
}

/// Turns pages until a row is there, and taps it.
pub(crate) fn tap_row(bench: &Bench, label: &str) {
    for _ in 0..6 {
        if bench.labels().iter().any(|found| found == label) {
            break;
        }
        turn_page(bench);
    }
    bench.tap(label);
}

/// Turns pages until a row is there whose label begins and ends so, and taps it.
pub(crate) fn tap_like(bench: &Bench, front: &str, back: &str) {
    let is = |label: &String| label.starts_with(front) && label.ends_with(back);
    for _ in 0..6 {
        if let Some(label) = bench.labels().into_iter().find(is) {
            return bench.tap(&label);
        }
        turn_page(bench);
    }
    panic!("no row {front} ... {back} in {:?}", bench.labels());
}

/// The rows of the list on the screen: title, value, more.
pub(crate) fn rows(bench: &Bench) -> Vec<(String, String, String)> {
    let Screen::List(list) = bench.frame().screen else {
        panic!("no list: {}", bench.screen())
    };
    let row = |row: view::list::ListRow| (row.title, row.value, row.detail);
    list.rows.into_iter().map(row).collect()
}

#[test]
fn the_desk_opens_to_its_code_alone() {
    let folder = tempfile::tempdir().expect("a folder");
    let bench = Bench::start(folder.path(), &evening());
    enter(&bench, "4711");
    assert!(
        matches!(bench.frame().screen, Screen::List(_)),
        "the first code opens it"
    );
    assert_eq!(title(&bench), "coach's desk");
    bench.tap("all lifters");
    enter(&bench, "1234");
    let Screen::Typing(door) = bench.frame().screen else {
        panic!("still at the door")
    };
    assert!(door.wrong && door.typed.is_empty(), "{door:?}");
    type_in(&bench, "4711");
    assert!(matches!(bench.frame().screen, Screen::List(_)));
}

/// Whoever hurries mistypes the first code: it is not kept before it was typed twice alike.
#[test]
fn a_first_code_that_is_mistyped_is_not_kept() {
    let folder = tempfile::tempdir().expect("a folder");
    let bench = Bench::start(folder.path(), &evening());
    bench.tap("kiosk");
    bench.tap("coach's desk, behind a code");
    type_in(&bench, "4711");
    type_in(&bench, "4712");
    let Screen::Typing(door) = bench.frame().screen else {
        panic!("still at the door")
    };
    assert!(door.wrong && door.typed.is_empty(), "{door:?}");
    assert!(!folder.path().join("desk-code").exists());
    bench.tap("all lifters");
    enter(&bench, "4712");
    assert_eq!(title(&bench), "coach's desk");
}

#[test]
fn a_gym_is_not_begun_anew_while_somebody_lifts() {
    let folder = tempfile::tempdir().expect("a folder");
    let bench = Bench::start(folder.path(), &evening());
    bench.tap("Hamza");
    bench.tap("start");
    bench.tap("all lifters");
    bench.wait_ms(2_000);
    enter(&bench, "4711");
    to_the_gym(&bench);
    let (_, _, why) = rows(&bench).pop().expect("the row");
    assert_eq!(why, "Hamza is lifting; end that lift first");
    let frame = bench.frame();
    let buttons: Vec<_> = view::buttons(&frame)
        .into_iter()
        .map(|button| button.label)
        .collect();
    assert!(
        !buttons.iter().any(|label| label.contains("start over")),
        "{buttons:?}"
    );
}

#[test]
fn a_device_that_fails_is_told_once_and_gone_when_it_works() {
    let folder = tempfile::tempdir().expect("a folder");
    let bench = Bench::start(folder.path(), &evening());
    let faults = hardware::Faults::default();
    for _ in 0..1_000 {
        faults.report(
            "buzzer",
            hardware::Trouble::NotThere("/dev/gpiochip7 is not there".to_owned()),
        );
    }
    bench.tell_devices(&faults);
    enter(&bench, "4711");
    let devices = |bench: &Bench| {
        let shown = |label: &String| label.starts_with("devices, ");
        let labels = bench.labels();
        let row = labels.iter().find(|label| shown(label));
        row.expect("a row of the desk").clone()
    };
    let amiss = rows(&bench).into_iter().find(|row| row.1 == "kiosk");
    assert_eq!(amiss.expect("the tile").2, "faults: 1");
    bench.tap("kiosk");
    assert_eq!(devices(&bench), "devices, faults: 1");
    tap_row(&bench, "devices, faults: 1");
    let Screen::List(list) = bench.frame().screen else {
        panic!("the devices")
    };
    let words = format!("{list:?}");
    assert_eq!(words.matches("/dev/gpiochip7 is not there").count(), 1);
    faults.clear("buzzer");
    bench.tell_devices(&faults);
    bench.tap("back");
    assert_eq!(devices(&bench), "devices, no fault");
}

#[test]
fn a_height_is_typed_and_kept_over_a_restart() {
    let folder = tempfile::tempdir().expect("a folder");
    let measured = |bench: &Bench| {
        let gym = bench.gym();
        let lifter = gym
            .lifters
            .iter()
            .find(|l| l.name == "Olumide")
            .expect("of the demo gym");
        lifter.landmark(Landmark::MidThigh)
    };
    {
        let bench = Bench::start(folder.path(), &evening());
        assert_eq!(measured(&bench), None);
        enter(&bench, "4711");
        tap_row(&bench, "lifters");
        tap_row(&bench, "river rack, Olumide");
        let Screen::List(list) = bench.frame().screen else {
            panic!("the lifter")
        };
        assert!(
            list.rows.iter().any(|row| row.state == ListState::Amiss),
            "{list:?}"
        );
        assert!(!list.body.is_empty(), "a body is drawn");
        tap_row(&bench, "mid-thigh, not measured");
        type_in(&bench, "718");
        bench.tap("save");
        assert_eq!(measured(&bench), Some(Length::mm(718)));
        bench.tap("back");
        assert_eq!(title(&bench), "lifters");
    }
    let again = Bench::start(folder.path(), &evening());
    assert_eq!(
        measured(&again),
        Some(Length::mm(718)),
        "the folder has it too"
    );
    let text = std::fs::read_to_string(folder.path().join("lifters.toml")).expect("the file");
    assert!(text.contains("# Invented people."), "and its comments");
}

#[test]
fn a_value_that_breaks_the_gym_is_refused_and_what_was_typed_stays() {
    let folder = tempfile::tempdir().expect("a folder");
    let bench = Bench::start(folder.path(), &evening());
    let before = bench.gym();
    enter(&bench, "4711");
    to_the_gym(&bench);
    tap_row(&bench, "racks, 2");
    tap_row(&bench, "24 holes, river rack");
    tap_row(&bench, "hole to hole, 76.2 mm");
    type_in(&bench, "3");
    bench.tap("save");
    assert!(
        bench.frame().notice.contains("less than the least"),
        "{:?}",
        bench.frame().notice
    );
    let Screen::Typing(typing) = bench.frame().screen else {
        panic!("still typing")
    };
    assert_eq!(typing.typed, "3");
    assert_eq!(bench.gym(), before);
    bench.tap("back");
    assert_eq!(title(&bench), "river rack");
}

#[test]
fn a_plan_of_the_folder_is_taken_and_one_with_a_fault_is_not() {
    let folder = tempfile::tempdir().expect("a folder");
    let bench = Bench::start(folder.path(), &evening());
    let plans = folder.path().join("plans");
    std::fs::create_dir_all(&plans).expect("the folder of plans");
    let good = "date,lifter,lift,sets,reps,load\n2026-12-02,Saoirse,deadlift,1,3,90 lb\n";
    std::fs::write(plans.join("new.csv"), good).expect("written");
    let bad = "date,lifter,lift,sets,reps,load\n2026-12-02,Nobody,deadlift,1,3,90 lb\n";
    std::fs::write(plans.join("bad.csv"), bad).expect("written");
    enter(&bench, "4711");
    tap_row(&bench, "plans");
    let labels = bench.labels();
    assert!(
        labels.contains(&"faults: 1, bad.csv".to_owned()),
        "{labels:?}"
    );
    tap_row(&bench, "1 row, no fault, take new.csv");
    bench.tap("all lifters");
    assert!(crate::ladder::lifters(&bench).contains(&"Saoirse".to_owned()));
}

#[test]
fn a_gym_is_built_from_nothing_on_the_screen_and_somebody_lifts_in_it() {
    let folder = tempfile::tempdir().expect("a folder");
    let bench = Bench::start(folder.path(), &evening());
    enter(&bench, "4711");
    to_the_gym(&bench);
    let begin = "a gym of your own, start over";
    bench.tap(begin);
    assert_eq!(title(&bench), "the gym", "a tap is not enough");
    let (_, _, loses) = rows(&bench).pop().expect("the row");
    assert!(
        loses.contains("The Old Ropewalk goes, with its lifters (8)"),
        "{loses}"
    );
    bench.hold(begin);
    type_in(&bench, "MILL");
    bench.tap("save");
    assert_eq!(title(&bench), "the first lifter");
    type_in(&bench, "BO");
    bench.tap("save");
    let gym = bench.gym();
    assert_eq!(gym.name, "Mill");
    assert_eq!(
        gym.lifters
            .iter()
            .map(|l| l.name.as_str())
            .collect::<Vec<_>>(),
        ["Bo"]
    );
    // A second rack with its bar, and a second lifter.
    assert_eq!(title(&bench), "the gym");
    tap_row(&bench, "racks, 1");
    bench.tap("add, new rack");
    type_in(&bench, "DECK");
    bench.tap("save");
    assert_eq!(bench.gym().racks.len(), 2);
    tap_row(&bench, "30 holes, Deck");
    tap_row(&bench, "floor to hole 1, 200 mm");
    type_in(&bench, "9");
    bench.tap("in");
    bench.tap("save");
    assert_eq!(
        bench.gym().racks[1].first_hole,
        Length::from_nm(9 * 25_400_000)
    );
    for _ in 0..3 {
        bench.tap("back");
    }
    tap_row(&bench, "lifters");
    bench.tap("add, new lifter");
    type_in(&bench, "ANNA");
    bench.tap("save");
    assert_eq!(bench.gym().lifters.len(), 2);
    // It stands over a restart, and the old files are kept beside.
    drop(bench);
    let again = Bench::start(folder.path(), &evening());
    assert_eq!(again.gym().lifters[1].name, "Anna");
    assert!(folder.path().join("lifters.toml.before").exists());
}

#[test]
fn the_desk_speaks_german() {
    let folder = tempfile::tempdir().expect("a folder");
    let bench = Bench::start(folder.path(), &evening());
    bench.tap("kiosk");
    bench.tap("language, Deutsch");
    bench.tap("Coach-Bereich, mit Code");
    type_in(&bench, "4711");
    type_in(&bench, "4711");
    assert_eq!(bench.frame().language, Language::German);
    tap_row(&bench, "das Studio");
    tap_row(&bench, "Stangen, 5");
    tap_row(&bench, "45 lb, river bar");
    tap_row(&bench, "Griffteil, Durchmesser, 28,5 mm");
    type_in(&bench, "28,7");
    bench.tap("speichern");
    let gym = bench.gym();
    let bar = gym
        .bars
        .iter()
        .find(|bar| bar.name == "river bar")
        .expect("the bar");
    assert_eq!(bar.shaft_diameter, Length::from_nm(28_700_000));
}
