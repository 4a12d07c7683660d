//! Targets and numbers measured on the reference panel, 1280 by 800 at 5.9 pixels to the
//! millimetre: DESIGN figures, with 20 mm from Colle and Hiszem 2004 (kiosk keys, standing) and
//! 17.45 mm for 20 minutes of arc at 3 m (height = 2 d tan(a/2), the figure of ISO 9241-3).
mod bench;

use bench::{Area, area, buttons, open, scenes};
use i_slint_backend_testing::{AccessibleRole, ElementHandle, ElementQuery};
use slint::PhysicalSize;

const MM: f32 = 5.9;

/// Every scene on a fresh window.
fn each(check: impl Fn(&str, &ui::Face) + Send + Copy + 'static) {
    for (name, frame) in scenes::all() {
        let one = move || {
            let (face, _) = open();
            face.show_frame(&frame);
            face.settle();
            check(name, &face);
        };
        std::thread::spawn(one).join().expect("the scene passes");
    }
}

/// How far apart two areas are, along the axis that parts them most; negative when they overlap.
fn apart(a: Area, b: Area) -> f32 {
    (b.0 - a.2).max(a.0 - b.2).max(b.1 - a.3).max(a.1 - b.3)
}

#[test]
fn every_target_is_20_mm_and_inside_the_panel() {
    each(|name, face| {
        for (label, (left, top, right, bottom)) in buttons(face) {
            let (width, height) = (right - left, bottom - top);
            let least = 20.0 * MM;
            assert!(
                width >= least && height >= least,
                "{name}: {label:?} is {width} x {height}, less than {least}"
            );
            let inside = left >= 0.0 && top >= 0.0 && right <= 1280.0 && bottom <= 800.0;
            assert!(inside, "{name}: {label:?} leaves the panel");
        }
    });
}

#[test]
fn targets_are_3_mm_apart() {
    each(|name, face| {
        let all = buttons(face);
        for (at, (label, one)) in all.iter().enumerate() {
            for (other_label, other) in &all[at + 1..] {
                let gap = apart(*one, *other);
                assert!(
                    gap >= 3.0 * MM,
                    "{name}: {label:?} and {other_label:?} are {gap} apart"
                );
            }
        }
    });
}

#[test]
fn the_main_answer_is_40_mm_wide_at_the_bottom_right_and_undo_at_the_bottom_left() {
    each(|name, face| {
        let mains = [
            "start",
            "back to the bar",
            "go now",
            "end the lift",
            "next lifter",
            "go with 180 kg",
            "my turn now",
            "the bar holds this",
            "go with 1002.5 lb",
            "attempt over, 14 of 24",
            "attempt over, 114 of 124",
        ];
        let all = buttons(face);
        let main = all.iter().find(|(label, _)| {
            mains.contains(&label.as_str())
                && !name.starts_with("entry")
                && !name.starts_with("turn")
                || label.ends_with("done, back held")
        });
        if let Some((label, (left, _, right, bottom))) = main {
            assert!(right - left >= 40.0 * MM, "{name}: {label:?} is too narrow");
            assert_eq!((*right, *bottom), (1256.0, 784.0), "{name}: {label:?}");
        } else {
            let without = [
                "choose",
                "entry",
                "floor",
                "history",
                "list",
                "meet-over",
                "page",
                "trouble",
                "turn",
                "typing",
                "why",
            ];
            let without = without.iter().any(|start| name.starts_with(start));
            assert!(without, "{name} has no main answer");
        }
        let undo = all
            .iter()
            .find(|(label, _)| label == "undo" || label == "back");
        if let Some((label, place)) = undo {
            // On the rail it is as narrow as what stands above it.
            let rail = name.starts_with("floor") || name.starts_with("choose");
            let right = if rail { 152.0 } else { 214.0 };
            assert_eq!(*place, (24.0, 656.0, right, 784.0), "{name}: {label:?}");
        }
    });
}

#[test]
fn the_way_home_stands_at_one_place_on_every_screen() {
    each(|name, face| {
        let all = buttons(face);
        let home = all.iter().find(|(label, _)| label == "all lifters");
        let Some((_, place)) = home else {
            let is_home = name.starts_with("choose") || name.starts_with("trouble");
            assert!(is_home, "{name} has no way home");
            return;
        };
        assert_eq!(*place, (24.0, 16.0, 152.0, 144.0), "{name}");
    });
}

/// On the floor the words stand on buttons and are told by them, so the digits of whoever is up
/// are measured by what is written at their place.
#[test]
fn the_numbers_of_whoever_is_up_are_20_minutes_of_arc_at_3_m() {
    let (face, _) = open();
    let least = 17.45 * MM;
    for name in ["floor-two", "floor-four", "floor-pounds", "floor-racks"] {
        let frame = bench::scene(name);
        face.show_frame(&frame);
        face.settle();
        let view::Screen::Floor(floor) = &frame.screen else {
            panic!("{name} is a floor");
        };
        let ups = floor.racks.iter().filter_map(|rack| rack.up.as_ref());
        let first = |text: &str| text.split(' ').next().unwrap_or_default().to_owned();
        for number in ups.flat_map(|up| [up.load.clone(), first(&up.reps), up.spot.hole.clone()]) {
            let all = ElementQuery::from_root(face.component())
                .match_inherits("Numeral")
                .find_all();
            assert!(!all.is_empty(), "{name} has numbers");
            for digits in &all {
                let height = digits.size().height;
                assert!(
                    height >= least,
                    "{name}, {number}: {height} px, under {least}"
                );
            }
        }
    }
}

/// All texts that are not captions of buttons.
fn texts(face: &ui::Face) -> Vec<ElementHandle> {
    let query = ElementQuery::from_root(face.component());
    let found = query.match_accessible_role(AccessibleRole::Text).find_all();
    let seen = |text: &ElementHandle| {
        !text.accessible_label().unwrap_or_default().is_empty()
            && text.size().width > 0.5
            && text.size().height > 0.5
    };
    found.into_iter().filter(seen).collect()
}

/// Line height and height of the digits of the face, in em (Roboto Condensed: hhea table,
/// cap height 1456 of 2048).
const LINE: f32 = 2400.0 / 2048.0;
const CAP: f32 = 1456.0 / 2048.0;

/// Height of the digits of a text of one line, in pixels.
fn digits(text: &ElementHandle) -> f32 {
    text.size().height / LINE * CAP
}

#[test]
fn the_numbers_of_now_are_20_minutes_of_arc_at_3_m() {
    use view::Screen;
    let least = 17.45 * MM;
    for (name, frame) in scenes::all() {
        let first = |text: &str| text.split(' ').next().unwrap_or_default().to_owned();
        let numbers: Vec<String> = match &frame.screen {
            Screen::Bar(at) => vec![at.load.clone(), first(&at.reps), at.spot.hole.clone()],
            Screen::Rest(at) => vec![at.left.clone(), at.load.clone(), first(&at.reps)],
            Screen::SetUp(at) => vec![at.hole.clone()],
            Screen::Floor(_)
            | Screen::Choose(_)
            | Screen::Entry(_)
            | Screen::Settle(_)
            | Screen::Stop(_)
            | Screen::History(_)
            | Screen::Why(_)
            | Screen::Meet(_)
            | Screen::List(_)
            | Screen::Turn(_)
            | Screen::Holds(_)
            | Screen::Page(_)
            | Screen::Typing(_)
            | Screen::End(_) => vec![],
        };
        let one = move || {
            let (face, _) = open();
            face.show_frame(&frame);
            face.settle();
            let all = texts(&face);
            for number in numbers.iter().filter(|number| !number.is_empty()) {
                let shown = all
                    .iter()
                    .filter(|text| text.accessible_label().as_deref() == Some(number));
                let tallest = shown.map(digits).fold(0.0, f32::max);
                assert!(
                    tallest >= least,
                    "{name}: {number} has digits of {tallest} px, under {least}"
                );
            }
        };
        std::thread::spawn(one).join().expect("the scene passes");
    }
}

/// Where a text's letters are: the face's air above the capitals is left out, and below letters
/// that do not hang that under the base line (hhea ascent 1900, descent 500). A sign is its middle.
fn ink(text: &ElementHandle) -> Area {
    let (left, top, right, bottom) = area(text);
    let label = text.accessible_label().unwrap_or_default();
    let hangs = label.chars().any(|c| "gjpqyęç,;|".contains(c));
    let line = (bottom - top) / 2400.0;
    let (above, below) = match label.as_str() {
        "+" | "−" => (700.0, 700.0),
        _ if hangs => (444.0, 250.0),
        _ => (444.0, 500.0),
    };
    (
        left + 1.0,
        top + above * line,
        right - 1.0,
        bottom - below * line,
    )
}

/// Texts of one face that run into another, into a button, or off the panel.
fn collisions(face: &ui::Face, panel: (f32, f32), on_boxes: bool) -> Vec<String> {
    let words = |text: &ElementHandle| text.accessible_label().unwrap_or_default().to_string();
    let all: Vec<(String, Area)> = texts(face).iter().map(|t| (words(t), ink(t))).collect();
    let pressed = buttons(face);
    let mut found = Vec::new();
    for (at, (text, here)) in all.iter().enumerate() {
        if here.0 < 0.0 || here.1 < 0.0 || here.2 > panel.0 || here.3 > panel.1 {
            found.push(format!("{text:?} leaves the panel: {here:?}"));
        }
        for (other, place) in all[at + 1..].iter().chain(&pressed) {
            let on_it = here.0 >= place.0 && here.1 >= place.1;
            let on_it = on_it && here.2 <= place.2 && here.3 <= place.3;
            if apart(*here, *place) < 0.0 && !(on_boxes && on_it) {
                found.push(format!("{text:?} runs into {other:?}: {here:?} {place:?}"));
            }
        }
    }
    found
}

#[test]
fn no_text_runs_into_another_or_a_button_or_off_the_panel() {
    let mut all = Vec::new();
    for (name, frame) in scenes::all() {
        let one = move || {
            let (face, _) = open();
            face.show_frame(&frame);
            face.settle();
            // The numbers of the floor and of a meet day, and loads to choose from, stand on boxes.
            let on_boxes = ["floor", "settle", "meet"];
            let on_boxes = on_boxes.iter().any(|start| name.starts_with(start));
            let panels = [(1280, 800), (1024, 600), (1920, 1080)];
            let at = |(width, height): (u16, u16)| {
                let size = PhysicalSize::new(width.into(), height.into());
                face.window().set_size(size);
                collisions(&face, (width.into(), height.into()), on_boxes)
            };
            panels.into_iter().flat_map(at).collect::<Vec<_>>()
        };
        let found = std::thread::spawn(one).join().expect("the scene opens");
        all.extend(found.iter().map(|words| format!("{name}: {words}")));
    }
    assert!(all.is_empty(), "\n{}", all.join("\n"));
}
