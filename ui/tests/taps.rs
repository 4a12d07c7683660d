//! Every screen's buttons, found by the words on them, say the right tap; a bounce says nothing.
mod bench;

use bench::{down, open, press, scene, show, touch, up, wait_ms};
use view::Tap;
use view::tap::HoldsTap;

/// Presses `label` on the scene `name` and gives what was told.
fn told(name: &str, label: &str) -> Vec<Tap> {
    let (face, taps) = open();
    show(&face, &scene(name));
    press(&face, label);
    taps.take()
}

/// Scene, label, tap.
fn expected() -> Vec<(&'static str, &'static str, Tap)> {
    let lifter = |name: &str| Tap::Lifter(name.into());
    vec![
        ("choose", "Edda", lifter("Edda")),
        (
            "choose-many",
            "Wilhelmina Øvergård",
            lifter("Wilhelmina Øvergård"),
        ),
        ("choose-notice", "undo", Tap::Undo),
        ("choose", "floor", Tap::Floor),
        ("floor-four", "all lifters", Tap::All),
        ("floor-four", "undo", Tap::Undo),
        ("floor-four", "Edda", lifter("Edda")),
        (
            "floor-four",
            "Konstantina Žižková",
            lifter("Konstantina Žižková"),
        ),
        (
            "floor-six",
            "Bartholomäus Łęcki",
            lifter("Bartholomäus Łęcki"),
        ),
        ("floor-racks", "Oskar", lifter("Oskar")),
        ("floor-racks", "Ibrahim", lifter("Ibrahim")),
        ("setup", "start", Tap::Main),
        ("setup", "all lifters", Tap::All),
        ("setup", "switch to Tomasz", lifter("Tomasz")),
        ("setup", "undo", Tap::Undo),
        ("setup-floor", "back to the bar", Tap::Main),
        ("bar", "2 done, back held", Tap::Main),
        ("bar", "other reps", Tap::OtherReps),
        ("bar", "back moved", Tap::BackMoved),
        ("turn", "set-up", Tap::SetUp),
        ("bar", "undo", Tap::Undo),
        ("bar", "switch to Priya", lifter("Priya")),
        ("entry-reps", "0", Tap::Number(0)),
        ("entry-reps", "8", Tap::Number(8)),
        ("entry-reps", "back", Tap::Undo),
        ("bar", "later, skip...", Tap::TurnPad),
        ("bar", "loaded", Tap::Loaded),
        ("bar", "bar holds...", Tap::Holds),
        ("entry-moved", "3", Tap::Number(3)),
        ("entry-moved", "stopped there", Tap::WentThrough),
        ("rest", "go now", Tap::Main),
        ("rest", "set-up", Tap::SetUp),
        (
            "rest-over",
            "switch to Bartholomäus Łęcki",
            lifter("Bartholomäus Łęcki"),
        ),
        ("stop", "end the lift", Tap::Main),
        ("stop", "go on, coach agrees", Tap::GoOn),
        ("setup", "history", Tap::History),
        ("choose", "kiosk", Tap::Panel),
        ("list", "language, Deutsch", Tap::Row(1)),
        ("list", "all lifters", Tap::All),
        ("page", "back", Tap::Undo),
        ("typing", "7", Tap::Row(6)),
        ("typing", "in", Tap::Row(11)),
        ("typing", "delete", Tap::Row(12)),
        ("typing", "save", Tap::Main),
        ("history", "deadlift", Tap::Main),
        ("end", "next lifter", Tap::Main),
        ("end", "undo", Tap::Undo),
        ("end", "why", Tap::Why),
        ("why-next", "the single", Tap::Main),
    ]
}

/// The same where turns are changed and where it is said what the bar holds.
fn expected_of_turns() -> Vec<(&'static str, &'static str, Tap)> {
    vec![
        ("turn", "skip this set", Tap::Answer(3)),
        ("turn", "later", Tap::Answer(1)),
        ("turn", "my turn now", Tap::Answer(0)),
        ("holds", "empty", Tap::Answer(0)),
        ("holds", "+ 2.5", Tap::Hold(HoldsTap::Plate(2))),
        ("holds", "take last off", Tap::Hold(HoldsTap::TakeLast)),
        ("holds", "the bar holds this", Tap::Main),
    ]
}

/// The same on the page of a test day.
fn expected_at_a_meet() -> Vec<(&'static str, &'static str, Tap)> {
    vec![
        ("meet", "attempt over, 14 of 24", Tap::Main),
        ("meet", "a minute earlier", Tap::Sooner),
        ("meet", "a minute later", Tap::Later),
        ("meet", "Edda, 140 kg × 2", Tap::Row(0)),
        ("meet", "Priya, 65 kg × 5", Tap::Row(2)),
    ]
}

#[test]
fn a_button_tells_its_tap_once() {
    let all = expected()
        .into_iter()
        .chain(expected_of_turns())
        .chain(expected_at_a_meet());
    let rows = all.map(|(name, label, tap)| {
        std::thread::spawn(move || assert_eq!(told(name, label), [tap], "{label:?} on {name}"))
    });
    for row in rows {
        row.join().expect("the tap is told");
    }
}

#[test]
fn a_second_press_within_a_quarter_of_a_second_is_swallowed() {
    let (face, taps) = open();
    show(&face, &scene("entry-reps"));
    press(&face, "3");
    wait_ms(60);
    press(&face, "3");
    wait_ms(60);
    press(&face, "5");
    assert_eq!(taps.take(), [Tap::Number(3)], "anywhere on the panel");
    wait_ms(250);
    press(&face, "4");
    assert_eq!(taps.take(), [Tap::Number(4)], "and not for longer");
}

#[test]
fn a_bounce_that_is_held_is_swallowed_too() {
    let (face, taps) = open();
    show(&face, &scene("entry-reps"));
    press(&face, "3");
    wait_ms(200);
    down(&face, 100.0, 250.0);
    wait_ms(200);
    up(&face, 100.0, 250.0);
    assert_eq!(taps.take(), [Tap::Number(3)]);
    wait_ms(10);
    press(&face, "5");
    assert_eq!(
        taps.take(),
        [Tap::Number(5)],
        "a swallowed press starts no new wait"
    );
}

#[test]
fn a_bounce_does_not_reach_the_next_screen() {
    let (face, taps) = open();
    show(&face, &scene("bar"));
    press(&face, "2 done, back held");
    show(&face, &scene("rest"));
    wait_ms(90);
    press(&face, "go now");
    assert_eq!(taps.take(), [Tap::Main]);
}

#[test]
fn a_finger_that_slides_off_says_nothing_and_costs_no_wait() {
    let (face, taps) = open();
    show(&face, &scene("bar"));
    down(&face, 1000.0, 720.0);
    up(&face, 640.0, 300.0);
    assert_eq!(taps.take(), []);
    press(&face, "2 done, back held");
    assert_eq!(taps.take(), [Tap::Main]);
}

#[test]
fn what_is_no_button_says_nothing() {
    let (face, taps) = open();
    show(&face, &scene("bar"));
    touch(&face, 640.0, 300.0);
    touch(&face, 150.0, 500.0);
    assert_eq!(taps.take(), []);
}

#[test]
fn the_listener_may_show_the_next_frame() {
    let (face, _) = open();
    show(&face, &scene("bar"));
    let shown = face.clone();
    face.on_tap(move |_| shown.show_frame(&scene("rest")));
    press(&face, "2 done, back held");
    wait_ms(300);
    let labels: Vec<String> = bench::buttons(&face).into_iter().map(|b| b.0).collect();
    assert!(labels.contains(&"go now".to_owned()), "{labels:?}");
}

#[test]
fn more_lifters_turns_the_page_and_comes_round() {
    let (face, taps) = open();
    show(&face, &scene("choose-many"));
    let names = |face: &ui::Face| -> Vec<String> {
        let labels = bench::buttons(face).into_iter().map(|button| button.0);
        labels
            .filter(|label| !["more lifters", "floor", "kiosk"].contains(&label.as_str()))
            .collect()
    };
    let first = names(&face);
    assert_eq!(first.len(), 12);
    press(&face, "more lifters");
    assert_eq!(names(&face), ["Anouk", "Dai"]);
    wait_ms(300);
    press(&face, "more lifters");
    assert_eq!(names(&face), first);
    assert_eq!(taps.take(), [], "a page is the window's own affair");
}

#[test]
fn an_assistive_tool_can_tap_and_is_held_to_the_same_wait() {
    use i_slint_backend_testing::ElementHandle;
    let (face, taps) = open();
    show(&face, &scene("bar"));
    let find = |label| ElementHandle::find_by_accessible_label(face.component(), label).next();
    let other = find("other reps").expect("it is there");
    other.invoke_accessible_default_action();
    other.invoke_accessible_default_action();
    assert_eq!(taps.take(), [Tap::OtherReps]);
    wait_ms(251);
    other.invoke_accessible_default_action();
    assert_eq!(taps.take(), [Tap::OtherReps]);
}

/// What ends a lift early is held, not tapped.
#[test]
fn the_end_is_held_not_tapped() {
    let (face, taps) = open();
    show(&face, &scene("turn"));
    press(&face, "end the lift");
    wait_ms(1_000);
    assert_eq!(taps.take(), [], "a tap is not enough");
    let place = bench::buttons(&face)
        .into_iter()
        .find(|b| b.0 == "end the lift");
    let (_, (left, top, right, bottom)) = place.expect("it is there");
    let (x, y) = (f32::midpoint(left, right), f32::midpoint(top, bottom));
    down(&face, x, y);
    wait_ms(700);
    assert_eq!(taps.take(), [], "not yet");
    wait_ms(200);
    assert_eq!(taps.take(), [Tap::Stop]);
    wait_ms(1_000);
    up(&face, x, y);
    assert_eq!(taps.take(), [], "and once only");
}
