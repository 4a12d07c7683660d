//! Where the lifter stands and what they wear, shown wherever a load is shown: hole, mats, how much
//! higher the bar, gear, grip.
use crate::language::{Language, p, whole_mm};
use domain::believed::Stacks;
use domain::sheet::{LiftSheet, Rung};

/// What it shows.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Spot {
    /// "9"; empty from the floor.
    pub hole: String,
    /// "1 mat, 20 mm", "no mat"; empty where the lift does not start on pins.
    pub mats: String,
    /// Thickness of each mat: "20 mm".
    pub mat_list: Vec<String>,
    /// "raise the bar 110 mm", or empty.
    pub raise: String,
    /// "belt", "straps": what is worn for this set.
    pub gear: Vec<String>,
    /// "double overhand"; empty from the hooks.
    pub grip: String,
}

pub(crate) fn spot(say: Language, sheet: &LiftSheet, rung: &Rung, to: &Stacks) -> Spot {
    let pins = sheet.pins.as_ref();
    let mats = pins.map(|pins| pins.mats.as_slice()).unwrap_or_default();
    let hole = match (pins, &sheet.hooks) {
        (Some(pins), _) => pins.hole.to_string(),
        (None, _) => String::new(),
    };
    Spot {
        hole,
        // Whoever lifted before at this hole may have left mats: "no mat" is said too.
        mats: pins.map(|_| say.mats(mats)).unwrap_or_default(),
        mat_list: mat_list(sheet),
        raise: raise_words(say, sheet, to),
        gear: say.worn(rung),
        grip: match sheet.hooks {
            Some(_) => String::new(),
            None => say.grip(sheet.grip),
        },
    }
}

/// Thickness of each mat that is stood on: "20 mm".
pub(crate) fn mat_list(sheet: &LiftSheet) -> Vec<String> {
    let mats = sheet.pins.iter().flat_map(|pins| &pins.mats);
    mats.map(|mat| mat.words(domain::LengthUnit::Mm)).collect()
}

/// By how much the bar has to be raised with these plates, where it starts on the floor.
fn raise_words(say: Language, sheet: &LiftSheet, to: &Stacks) -> String {
    let raise = sheet.raise(&to.faces());
    if raise == domain::Length::ZERO {
        return String::new();
    }
    say.fill(p::RAISE, &[&whole_mm(raise)])
}
