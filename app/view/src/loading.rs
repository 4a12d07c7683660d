//! What has to be on a bar and what the hands have to do for it: as a drawing, in words, and as
//! lists of plates.
use crate::draw::{BarDrawing, Change, Fate, PlateDrawing};
use crate::drawings::{mm, shade};
use crate::language::{Language, p};
use domain::believed::{Disc, Stacks};
use domain::order::Order;
use domain::resting::{Resting, StripFirst};
use domain::sheet::LiftSheet;
use domain::{Length, Mass, MassUnit, PlateFace};

/// Plates of both sleeves, one text a plate: "20 kg", with its mark behind a blank.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct SideLists {
    /// The left sleeve.
    pub left: Vec<String>,
    /// The right sleeve.
    pub right: Vec<String>,
}

/// An order as lists of plates.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Ordered {
    /// What the bar must hold, inside to outside.
    pub holds: SideLists,
    /// What comes off, outermost first.
    pub take_off: SideLists,
    /// What goes on, innermost first.
    pub put_on: SideLists,
    /// What the bar is believed to hold, inside to outside.
    pub believed: SideLists,
    /// Whether somebody must look before the next plate is moved.
    pub in_doubt: bool,
    /// The plates that hang on another bar, and on which: "20 kg is on the light bar".
    pub lacks: Vec<String>,
}

/// An order as lists of plates.
pub(crate) fn ordered(say: Language, order: &Order) -> Ordered {
    let lacks = order.lacks.iter().map(|(face, bar)| {
        let plate = format!("{} {}", face.label(), face.unit.word());
        say.fill(p::PLATES_ELSEWHERE, &[&plate, bar])
    });
    Ordered {
        lacks: lacks.collect(),
        holds: lists(&order.to),
        take_off: lists(&order.take_off),
        put_on: lists(&order.put_on),
        believed: lists(&order.believed.holds),
        in_doubt: order.believed.in_doubt,
    }
}

fn lists(stacks: &Stacks) -> SideLists {
    let side = |discs: &[Disc]| discs.iter().map(plate_text).collect();
    SideLists {
        left: side(&stacks.left),
        right: side(&stacks.right),
    }
}

/// "20 kg", "25 kg 25A".
fn plate_text(disc: &Disc) -> String {
    let face = disc.face;
    let plain = format!("{} {}", face.label(), face.unit.word());
    match &disc.mark {
        Some(mark) => format!("{plain} {mark}"),
        None => plain,
    }
}

/// The whole bar of `sheet` as an order wants it, both sleeves.
pub(crate) fn whole_bar(say: Language, sheet: &LiftSheet, order: &Order) -> BarDrawing {
    // Where it is not known what hangs there, or it comes off first, the whole stack is shown as it must be.
    if order.believed.in_doubt || order.strip.is_some() {
        return still_bar(say, sheet, &order.to);
    }
    let (left_stays, right_stays) = order.stays();
    let side = |to: &[Disc], stays: usize, off: &[Disc]| {
        let on = to.iter().enumerate().map(|(at, disc)| {
            let fate = if at < stays {
                Fate::Stays
            } else {
                Fate::GoesOn
            };
            (disc, fate)
        });
        // What comes off stands outside what stays; beside plates that go on it is told in words.
        let leaving = if to.len() == stays { off } else { &[] };
        let leaving = leaving.iter().rev().map(|disc| (disc, Fate::ComesOff));
        row(say, on.chain(leaving))
    };
    drawing(
        sheet,
        side(&order.to.left, left_stays, &order.take_off.left),
        side(&order.to.right, right_stays, &order.take_off.right),
    )
}

/// The whole bar of `sheet` with these plates, nothing to do.
pub(crate) fn still_bar(say: Language, sheet: &LiftSheet, stacks: &Stacks) -> BarDrawing {
    let side = |discs: &[Disc]| row(say, discs.iter().map(|disc| (disc, Fate::Stays)));
    drawing(sheet, side(&stacks.left), side(&stacks.right))
}

/// Plates from the inside out, with where the collar stands.
type Row = (Vec<PlateDrawing>, f32);

fn row<'a>(say: Language, discs: impl Iterator<Item = (&'a Disc, Fate)>) -> Row {
    let (mut x, mut collar, mut plates) = (Length::ZERO, Length::ZERO, Vec::new());
    for (disc, fate) in discs {
        let face = &disc.face;
        plates.push(PlateDrawing {
            x_mm: mm(x),
            thickness_mm: mm(face.thickness),
            diameter_mm: mm(face.diameter),
            label: say.label(face),
            mark: disc.mark.clone().unwrap_or_default(),
            shade: shade(face),
            fate,
        });
        x = x + face.thickness;
        if fate != Fate::ComesOff {
            collar = x;
        }
    }
    (plates, mm(collar))
}

fn drawing(sheet: &LiftSheet, left: Row, right: Row) -> BarDrawing {
    let all = left.0.iter().chain(&right.0);
    BarDrawing {
        shaft_mm: mm(sheet.bar.shaft_diameter),
        sleeve_mm: mm(sheet.bar.sleeve),
        tallest_mm: all.map(|p| p.diameter_mm).fold(450.0, f32::max),
        left: left.0,
        right: right.0,
        left_collar_mm: left.1,
        right_collar_mm: right.1,
        has_collar: sheet.bar.collars != Mass::ZERO,
    }
}

/// What the hands have to do, in words; first of all where a plate has to be fetched from.
pub(crate) fn change_words(say: Language, order: &Order, unit: MassUnit) -> Change {
    let change = plain_words(say, order, unit);
    let lacks = order.lacks.iter().map(|(face, bar)| {
        let plate = face_word(say, face, unit);
        say.fill(p::PLATES_ELSEWHERE, &[&plate, bar])
    });
    let lacks: Vec<String> = lacks.collect();
    if lacks.is_empty() {
        return change;
    }
    // A loaded bar is not moved, wherever its plates come from.
    let strip = order.strip.map(|_| change.heading.clone());
    let heading: Vec<String> = strip.into_iter().chain(lacks).collect();
    Change {
        heading: heading.join(". "),
        ..change
    }
}

fn plain_words(say: Language, order: &Order, unit: MassUnit) -> Change {
    if order.believed.in_doubt {
        return whole_stack(say, order, say.say(p::LOOK_FIRST), unit);
    }
    if let Some(strip) = order.strip {
        return whole_stack(say, order, strip_words(say, strip, unit), unit);
    }
    let put = |stacks: &Stacks| both_sides(say, stacks, unit);
    let (off, on) = (put(&order.take_off), put(&order.put_on));
    let apart = is_apart(&order.take_off) || is_apart(&order.put_on);
    let idle = order.is_done();
    let heading = if idle || apart {
        String::new()
    } else {
        say.say(p::EACH_SIDE)
    };
    let line = |phrase, text: &str| {
        if text.is_empty() {
            String::new()
        } else {
            say.fill(phrase, &[text])
        }
    };
    let (off, on) = (line(p::TAKE_OFF_LINE, &off), line(p::PUT_ON_LINE, &on));
    let sentence = match (idle, order.to.is_empty()) {
        (true, true) => say.say(p::EMPTY_BAR),
        (true, false) => say.say(p::LEAVE_BAR),
        (false, _) => {
            let lines = [off.as_str(), on.as_str()];
            let lines: Vec<&str> = lines.into_iter().filter(|line| !line.is_empty()).collect();
            let lines = lines.join(say.then());
            if heading.is_empty() {
                lines
            } else {
                format!("{heading}: {lines}")
            }
        }
    };
    Change {
        heading,
        take_off: off,
        put_on: on,
        sentence,
        heed: false,
    }
}

/// What is said of a bar that has to be stripped before pins, hooks or the bar are moved.
fn strip_words(say: Language, strip: StripFirst, unit: MassUnit) -> String {
    let to = whole_mass(strip.to, unit);
    match strip.resting {
        Resting::Pins(hole) => say.fill(p::STRIP_FOR_PINS, &[&to, &hole.to_string()]),
        Resting::Hooks(Some(hole)) => say.fill(p::STRIP_FOR_HOOKS, &[&to, &hole.to_string()]),
        Resting::Hooks(None) => say.fill(p::STRIP_FOR_THE_HOOKS, &[&to]),
        Resting::Floor => say.fill(p::STRIP_FOR_FLOOR, &[&to]),
    }
}

/// A most, in whole kilograms or pounds: "60 kg", "132 lb".
fn whole_mass(most: Mass, unit: MassUnit) -> String {
    let whole = most.ng() / Mass::of(unit, 1_000).ng();
    format!("{whole} {}", unit.word())
}

/// Where nobody vouches for the bar, or it is stripped first: what comes first, and the whole stack.
fn whole_stack(say: Language, order: &Order, heading: String, unit: MassUnit) -> Change {
    let holds = both_sides(say, &order.to, unit);
    let put_on = match (holds.as_str(), is_apart(&order.to)) {
        ("", _) => say.say(p::NO_PLATES),
        (holds, true) => say.fill(p::MUST_HOLD, &[holds]),
        (holds, false) => say.fill(p::EACH_SIDE_HOLDS, &[holds]),
    };
    Change {
        sentence: format!("{heading}: {put_on}"),
        heading,
        take_off: String::new(),
        put_on,
        heed: true,
    }
}

/// The whole stack, with nothing to do about it.
pub(crate) fn stack_words(say: Language, order: &Order, unit: MassUnit) -> Change {
    let stack = both_sides(say, &order.to, unit);
    let apart = is_apart(&order.to);
    Change {
        heading: if apart || stack.is_empty() {
            String::new()
        } else {
            say.say(p::EACH_SIDE)
        },
        sentence: if stack.is_empty() {
            say.say(p::EMPTY_BAR)
        } else {
            stack
        },
        ..Change::default()
    }
}

/// The same, each side on a line of its own where they differ.
pub(crate) fn stack_lines(say: Language, order: &Order, unit: MassUnit) -> Change {
    let change = stack_words(say, order, unit);
    if !is_apart(&order.to) {
        return change;
    }
    let (left, right) = sides(say, &order.to, unit);
    Change {
        sentence: say.fill(p::LEFT_RIGHT_LINES, &[&left, &right]),
        ..change
    }
}

/// Whether the sides read differently: some plate has a mark.
fn is_apart(stacks: &Stacks) -> bool {
    stacks.left != stacks.right
}

/// "25 + 10"; where the sides differ by marks "left 25A + 10, right 25B + 10".
pub(crate) fn both_sides(say: Language, stacks: &Stacks, unit: MassUnit) -> String {
    let (left, right) = sides(say, stacks, unit);
    if is_apart(stacks) {
        say.fill(p::LEFT_RIGHT, &[&left, &right])
    } else {
        left
    }
}

/// The left side and the right one: "25A + 10".
fn sides(say: Language, stacks: &Stacks, unit: MassUnit) -> (String, String) {
    let side = |discs: &[Disc]| {
        let texts: Vec<String> = discs
            .iter()
            .map(|disc| plate_word(say, disc, unit))
            .collect();
        texts.join(" + ")
    };
    (side(&stacks.left), side(&stacks.right))
}

/// The mark where there is one, else the number.
fn plate_word(say: Language, disc: &Disc, unit: MassUnit) -> String {
    match &disc.mark {
        Some(mark) => mark.clone(),
        None => face_word(say, &disc.face, unit),
    }
}

/// "20", with its unit where that is not the lifter's.
pub(crate) fn face_word(say: Language, face: &PlateFace, unit: MassUnit) -> String {
    if face.unit == unit {
        say.label(face)
    } else {
        format!("{} {}", say.label(face), face.unit.word())
    }
}
