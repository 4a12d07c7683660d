//! Measures of a face on a panel: targets, digits, collisions, contrast.
//!
//! Refuses: knowing which screen it looks at, beyond the numbers of now.
mod cut;
mod pixels;

pub(crate) use cut::half_covered;
use i_slint_backend_testing::{
    AccessibleRole, ElementHandle, ElementQuery, TestingBackend, TestingBackendOptions,
};
pub(crate) use pixels::unreadable_texts;
use slint::PhysicalSize;
use ui::Face;
use view::{Frame, Screen};

/// A panel by its pixels; all are 10.1 in across.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Panel {
    /// Pixels in a row.
    pub(crate) width: u16,
    /// Rows.
    pub(crate) height: u16,
}

/// The panels that the layout is made for.
pub(crate) const PANELS: [Panel; 5] = [
    Panel {
        width: 1280,
        height: 800,
    },
    Panel {
        width: 1024,
        height: 600,
    },
    Panel {
        width: 1920,
        height: 1080,
    },
    Panel {
        width: 3840,
        height: 2160,
    },
    Panel {
        width: 800,
        height: 1280,
    },
];

/// Diagonal of the panels: 10.1 in, in millimetres.
const DIAGONAL_MM: f32 = 256.54;
/// Least side of a target, least gap between two, least digits of now, in millimetres.
const TARGET_MM: f32 = 20.0;
const GAP_MM: f32 = 3.0;
const DIGITS_MM: f32 = 17.45;
/// Line height and height of the digits of the face, in em (Roboto Condensed: hhea table, cap
/// height 1456 of 2048).
const LINE: f32 = 2400.0 / 2048.0;
const CAP: f32 = 1456.0 / 2048.0;

impl Panel {
    /// Pixels to the millimetre.
    fn mm(self) -> f32 {
        f32::from(self.width).hypot(f32::from(self.height)) / DIAGONAL_MM
    }
}

/// Left, top, right, bottom.
pub(crate) type Area = (f32, f32, f32, f32);

/// A window in memory, whose clock stands still.
pub(crate) fn open() -> Face {
    let options = TestingBackendOptions {
        mock_time: true,
        threading: false,
        renderer_name: Some("software".into()),
    };
    slint::platform::set_platform(Box::new(TestingBackend::new(options))).expect("one a thread");
    let face = Face::new().expect("a window without a display");
    face.show().expect("the window opens");
    face
}

/// Gives the window a panel's size.
pub(crate) fn resize(face: &Face, panel: Panel) {
    let size = PhysicalSize::new(panel.width.into(), panel.height.into());
    face.window().set_size(size);
}

/// Where an element stands.
pub(crate) fn area(element: &ElementHandle) -> Area {
    let (at, size) = (element.absolute_position(), element.size());
    (at.x, at.y, at.x + size.width, at.y + size.height)
}

/// Everything that can be pressed, each once.
fn buttons(face: &Face) -> Vec<(String, Area)> {
    let query = ElementQuery::from_root(face.component());
    let all = query
        .match_accessible_role(AccessibleRole::Button)
        .find_all();
    let mut found: Vec<(String, Area)> = Vec::new();
    for element in all {
        let label = element.accessible_label().unwrap_or_default().to_string();
        let row = (label, area(&element));
        if !found.contains(&row) {
            found.push(row);
        }
    }
    found
}

/// How far apart two areas are, along the axis that parts them most; negative when they overlap.
fn apart(a: Area, b: Area) -> f32 {
    (b.0 - a.2).max(a.0 - b.2).max(b.1 - a.3).max(a.1 - b.3)
}

/// Targets that are too small, too close, off the panel or without a name.
pub(crate) fn small_targets(face: &Face, _: &Frame, panel: Panel) -> Vec<String> {
    let (mm, all) = (panel.mm(), buttons(face));
    let mut found = Vec::new();
    // Half a pixel for rounding.
    let (least, gap) = (TARGET_MM * mm - 0.5, GAP_MM * mm - 0.5);
    for (at, (label, one)) in all.iter().enumerate() {
        let (width, height) = (one.2 - one.0, one.3 - one.1);
        if label.is_empty() {
            found.push(format!("a button without a name at {one:?}"));
        }
        if width < least || height < least {
            let (width, height) = (width / mm, height / mm);
            found.push(format!("{label:?} is {width:.1} x {height:.1} mm"));
        }
        let (right, bottom) = (f32::from(panel.width), f32::from(panel.height));
        if one.0 < 0.0 || one.1 < 0.0 || one.2 > right + 0.5 || one.3 > bottom + 0.5 {
            found.push(format!("{label:?} leaves the panel"));
        }
        for (other, place) in &all[at + 1..] {
            if apart(*one, *place) < gap {
                let between = apart(*one, *place) / mm;
                found.push(format!("{label:?} and {other:?} are {between:.1} mm apart"));
            }
        }
    }
    found
}

/// The numbers of now of a screen, as written.
fn numbers_of_now(frame: &Frame) -> Vec<String> {
    let first = |text: &str| text.split(' ').next().unwrap_or_default().to_owned();
    let numbers = match &frame.screen {
        Screen::Bar(at) => vec![at.load.clone(), first(&at.reps), at.spot.hole.clone()],
        Screen::Rest(at) => vec![at.left.clone(), at.load.clone(), first(&at.reps)],
        Screen::SetUp(at) => vec![at.hole.clone()],
        Screen::Choose(_)
        | Screen::Floor(_)
        | Screen::Entry(_)
        | Screen::Stop(_)
        | Screen::Settle(_)
        | Screen::End(_)
        | Screen::History(_)
        | Screen::Why(_)
        | Screen::Meet(_)
        | Screen::List(_)
        | Screen::Turn(_)
        | Screen::Holds(_)
        | Screen::Page(_)
        | Screen::Typing(_) => vec![],
    };
    numbers
        .into_iter()
        .filter(|number| !number.is_empty())
        .collect()
}

/// Captions that leave the button they stand on.
pub(crate) fn spilt_captions(face: &Face, _: &Frame, panel: Panel) -> Vec<String> {
    let pressed = buttons(face);
    let (wide, tall) = (f32::from(panel.width), f32::from(panel.height));
    let mut found = Vec::new();
    for text in ElementQuery::from_root(face.component())
        .match_inherits("Text")
        .find_all()
    {
        let here = ink(&text);
        let middle = (here.0.midpoint(here.2), here.1.midpoint(here.3));
        let under = |place: &Area| {
            middle.0 > place.0 && middle.0 < place.2 && middle.1 > place.1 && middle.1 < place.3
        };
        let Some((label, place)) = pressed.iter().find(|(_, place)| under(place)) else {
            continue;
        };
        if here.2 - here.0 < 2.0 {
            continue; // Nothing is written there now.
        }
        let within = here.0 >= place.0 && here.2 <= place.2.min(wide);
        if !within || here.1 < place.1 || here.3 > place.3.min(tall) {
            found.push(format!("a caption leaves {label:?}: {here:?} {place:?}"));
        }
    }
    found
}

/// Numbers of now whose digits are too small to be read at 3 m.
pub(crate) fn small_digits(face: &Face, frame: &Frame, panel: Panel) -> Vec<String> {
    let all = texts(face);
    let mut found = Vec::new();
    for number in numbers_of_now(frame) {
        let shown = all.iter().filter(|text| label(text) == number);
        let height = |text: &ElementHandle| text.size().height / LINE * CAP / panel.mm();
        let tallest = shown.map(height).fold(0.0, f32::max);
        if tallest < DIGITS_MM {
            found.push(format!("{number} has digits of {tallest:.1} mm"));
        }
    }
    found
}

fn label(text: &ElementHandle) -> String {
    text.accessible_label().unwrap_or_default().to_string()
}

/// All texts that are not captions of buttons.
fn texts(face: &Face) -> Vec<ElementHandle> {
    let query = ElementQuery::from_root(face.component());
    let all = query.match_accessible_role(AccessibleRole::Text).find_all();
    let seen = |text: &ElementHandle| {
        !label(text).is_empty() && text.size().width > 0.5 && text.size().height > 0.5
    };
    all.into_iter().filter(seen).collect()
}

/// Where a text's letters are: the face's air above the capitals is left out, and below letters
/// that do not hang that under the base line (hhea ascent 1900, descent 500). A sign is its middle.
fn ink(text: &ElementHandle) -> Area {
    let (left, top, right, bottom) = area(text);
    let label = label(text);
    let hangs = label.chars().any(|c| "gjpqyęç,;|()".contains(c));
    let line = (bottom - top) / 2400.0 / (label.lines().count().max(1) as f32);
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

/// Texts that run into another, into a button, or off the panel.
pub(crate) fn collisions(face: &Face, frame: &Frame, panel: Panel) -> Vec<String> {
    // The numbers of the floor, of the choice and of a meet day stand on boxes.
    let on_boxes = matches!(
        frame.screen,
        Screen::Floor(_) | Screen::Settle(_) | Screen::Meet(_)
    );
    let all: Vec<(String, Area)> = texts(face).iter().map(|t| (label(t), ink(t))).collect();
    let pressed = buttons(face);
    let (wide, tall) = (f32::from(panel.width), f32::from(panel.height));
    let mut found = Vec::new();
    for (at, (text, here)) in all.iter().enumerate() {
        if here.0 < 0.0 || here.1 < 0.0 || here.2 > wide || here.3 > tall {
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
