//! Texts that lose a part of themselves: digits cut by their cell, a unit alone on the next line,
//! what the word that a tap is being saved covers by half.
//!
//! Refuses: to know which text it is; pixels and places count.
use super::pixels::Inked;
use super::{Area, area, ink, label};
use i_slint_backend_testing::{ElementQuery, mock_elapsed_time};
use slint::platform::{PointerEventButton, WindowEvent};
use slint::{LogicalPosition, Rgba8Pixel, SharedPixelBuffer};
use std::time::Duration;
use ui::Face;
use view::guard::SAVING_MS;

/// Digits of a time whose ink comes to the edge of the cell that they are clipped to.
pub(crate) fn cut_digits(face: &Face, picture: &SharedPixelBuffer<Rgba8Pixel>) -> Vec<String> {
    let cells = ElementQuery::from_root(face.component())
        .match_inherits("DigitCell")
        .find_all();
    let mut found = Vec::new();
    for cell in cells {
        let at = area(&cell);
        let inked = Inked::new(picture, at);
        let (Some(first), Some(last)) = (inked.rows().next(), inked.rows().next_back()) else {
            continue;
        };
        if first == inked.top || last + 1 == inked.bottom {
            found.push(format!("a digit at {at:?} is cut by its cell"));
        }
    }
    found
}

/// Units of which nothing but themselves stands on the last line: "2 mats, 20 + 10" and "mm".
pub(crate) fn lone_units(face: &Face, picture: &SharedPixelBuffer<Rgba8Pixel>) -> Vec<String> {
    let all = ElementQuery::from_root(face.component())
        .match_inherits("Text")
        .find_all();
    let mut found = Vec::new();
    for text in all {
        let words = label(&text);
        let unit = words.rsplit(' ').next().unwrap_or_default().to_owned();
        if !["mm", "kg", "lb"].contains(&unit.as_str()) || words.chars().count() < 8 {
            continue;
        }
        let inked = Inked::new(picture, area(&text));
        let lines = inked.lines();
        let [.., before, last] = lines.as_slice() else {
            continue;
        };
        let wide = |line: &(usize, usize)| inked.columns(*line);
        // Two letters, where the line before has eight and more.
        if wide(last) * 3 < wide(before) {
            found.push(format!("{words:?} leaves its {unit} alone on a line"));
        }
    }
    found
}

/// What the word that a tap is being saved covers, and does not hide whole.
pub(crate) fn half_covered(face: &Face) -> Vec<String> {
    let all = || {
        ElementQuery::from_root(face.component())
            .match_inherits("Text")
            .find_all()
    };
    let texts: Vec<(String, Area)> = all().iter().map(|t| (label(t), ink(t))).collect();
    press_main(face);
    mock_elapsed_time(Duration::from_millis(SAVING_MS + 50));
    let saving = ElementQuery::from_root(face.component())
        .match_inherits("Saving")
        .find_all();
    let Some(over) = saving.first().map(area) else {
        return vec!["nothing says that the tap is being saved".to_owned()];
    };
    let covered = |here: &Area| {
        let (wide, tall) = (here.2 - here.0, here.3 - here.1);
        let apart = here.2 <= over.0 || here.0 >= over.2 || here.3 <= over.1 || here.1 >= over.3;
        let within = here.0 >= over.0 && here.2 <= over.2 && here.1 >= over.1 && here.3 <= over.3;
        wide > 2.0 && tall > 2.0 && !apart && !within
    };
    let half = texts.iter().filter(|(_, here)| covered(here));
    half.map(|(words, here)| format!("{words:?} at {here:?} is covered by half"))
        .collect()
}

/// A finger on the main button, at the right of the foot.
fn press_main(face: &Face) {
    let size = face
        .window()
        .size()
        .to_logical(face.window().scale_factor());
    let position = LogicalPosition::new(size.width * 0.8, size.height * 0.9);
    let button = PointerEventButton::Left;
    for event in [
        WindowEvent::PointerMoved { position },
        WindowEvent::PointerPressed { position, button },
        WindowEvent::PointerReleased { position, button },
        WindowEvent::PointerExited,
    ] {
        face.window().dispatch_event(event);
    }
}
