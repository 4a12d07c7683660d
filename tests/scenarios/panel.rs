//! This kiosk's own page: another language and another light in two taps, kept over a restart.
use crate::bench::{Bench, evening};
use view::{Language, Look, Screen};

#[test]
fn the_language_is_chosen_on_the_screen_and_kept() {
    let folder = tempfile::tempdir().expect("a folder");
    {
        let bench = Bench::start(folder.path(), &evening());
        assert_eq!(bench.frame().language, Language::English);
        bench.tap("kiosk");
        bench.tap("language, Deutsch");
        assert_eq!(bench.frame().language, Language::German);
        let labels = bench.labels();
        assert!(labels.contains(&"Dieser Kiosk".to_owned()), "{labels:?}");
        assert!(
            labels.contains(&"alle".to_owned()),
            "the window's own words too: {labels:?}"
        );
        bench.tap("Licht, hell");
        assert_eq!(bench.frame().look, Look::Daylight);
        bench.tap("zurück");
        assert_eq!(bench.screen(), "choose");
    }
    let again = Bench::start(folder.path(), &evening());
    let frame = again.frame();
    assert_eq!(
        (frame.language, frame.look),
        (Language::German, Look::Daylight)
    );
    again.tap("Kiosk");
    again.tap("Sprache, English");
    again.tap("light, by the hour");
    assert_eq!(again.frame().look, Look::Dim, "it is evening");
    again.wait_ms(14 * 3_600_000);
    assert_eq!(again.frame().look, Look::Daylight, "it is morning");
}

#[test]
fn a_lift_under_way_waits_while_the_kiosk_speaks_german() {
    let folder = tempfile::tempdir().expect("a folder");
    let bench = Bench::start(folder.path(), &evening());
    let name = crate::ladder::lifters(&bench).remove(0);
    bench.tap(&name);
    bench.tap("start");
    let Screen::Bar(before) = bench.frame().screen else {
        panic!("at the bar")
    };
    bench.tap("all lifters");
    bench.tap("kiosk");
    bench.tap("about Pinladder, version and licences");
    assert_eq!(bench.screen(), "page");
    bench.tap("back");
    bench.tap("language, Deutsch");
    bench.tap("alle");
    bench.tap(&name);
    let Screen::Bar(after) = bench.frame().screen else {
        panic!("at the bar, in German")
    };
    assert_eq!(before.reps.split(' ').next(), after.reps.split(' ').next());
    assert!(after.reps.ends_with("Wdh."), "{}", after.reps);
    bench.tap(&format!("{}, {}", after.main, after.main_detail));
    assert_eq!(bench.screen(), "rest");
}

#[test]
fn a_history_grows_with_what_was_lifted() {
    let folder = tempfile::tempdir().expect("a folder");
    let bench = Bench::start(folder.path(), &evening());
    let name = crate::ladder::lifters(&bench).remove(0);
    bench.tap(&name);
    bench.tap("history");
    let Screen::History(history) = bench.frame().screen else {
        panic!("the history")
    };
    assert!(history.sessions.is_empty() && !history.empty.is_empty());
    bench.tap("back");
    bench.tap("start");
    for _ in 0..12 {
        if bench.screen() == "end" {
            break;
        }
        bench.tap(&crate::ladder::main_label(&bench.frame()));
    }
    bench.tap("history");
    let Screen::History(history) = bench.frame().screen else {
        panic!("the history")
    };
    let told = history.sessions.iter().map(|session| {
        let said = [&session.date, &session.load, &session.word];
        said.map(String::as_str)
    });
    // The only one is the best; what is due stands beside it.
    let wanted = [["2 Dec", "495", "best"], ["next", "505", ""]];
    assert_eq!(told.collect::<Vec<_>>(), wanted, "{history:?}");
    bench.tap("back");
    assert_eq!(bench.screen(), "end");
}
