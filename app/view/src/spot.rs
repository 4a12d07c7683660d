//! Where the lifter stands and what they wear, shown wherever a load is shown: hole, mats, how much
//! higher the bar, gear, grip.
use crate::language::{Language, p, whole_mm};
use crate::scene::Scene;
use domain::believed::Stacks;
use domain::sheet::{LiftSheet, Rung};
use domain::state::LiftRun;

/// What it shows.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Spot {
    /// Where the bar starts: "hole 9", "from the floor", "hooks in hole 14".
    pub place: String,
    /// "9", of the pins; empty from the floor and from the hooks.
    pub hole: String,
    /// "1 mat, 20 mm", "no mat"; empty where the lift does not start on pins.
    pub mats: String,
    /// The same with all mats as one height: "2 mats, 30 mm".
    pub mats_sum: String,
    /// Thickness of each mat: "20 mm".
    pub mat_list: Vec<String>,
    /// "raise the bar 110 mm"; "nothing under the plates" where others need the bar raised; or empty.
    pub raise: String,
    /// "belt", "straps": what is worn for this set.
    pub gear: Vec<String>,
    /// "double overhand"; empty from the hooks.
    pub grip: String,
}

impl Spot {
    /// In one line: "hole 6, 2 mats, 20 + 10 mm", "raise the bar 110 mm", "from the floor".
    #[must_use]
    pub fn line(&self) -> String {
        self.with(&self.mats)
    }

    /// The same where there is little room: "hole 6, 2 mats, 30 mm".
    #[must_use]
    pub fn short(&self) -> String {
        self.with(&self.mats_sum)
    }

    fn with(&self, mats: &str) -> String {
        if !self.raise.is_empty() {
            self.raise.clone()
        } else if mats.is_empty() {
            self.place.clone()
        } else {
            format!("{}, {mats}", self.place)
        }
    }
}

pub(crate) fn spot(scene: &Scene<'_>, run: &LiftRun, rung: &Rung, to: &Stacks) -> Spot {
    let (say, sheet) = (scene.language(), &run.sheet);
    let pins = sheet.pins.as_ref();
    let mats = pins.map(|pins| pins.mats.as_slice()).unwrap_or_default();
    Spot {
        place: place(say, sheet),
        hole: pins.map(|pins| pins.hole.to_string()).unwrap_or_default(),
        // Whoever lifted before at this hole may have left mats: "no mat" is said too.
        mats: pins.map(|_| say.mats(mats)).unwrap_or_default(),
        mats_sum: pins.map(|_| say.mats_sum(mats)).unwrap_or_default(),
        mat_list: mat_list(sheet),
        raise: raise_words(scene, run, to),
        gear: say.worn(rung),
        grip: match sheet.hooks {
            Some(_) => String::new(),
            None => say.grip(sheet.grip),
        },
    }
}

/// Where the bar starts, in few words.
pub(crate) fn place(say: Language, sheet: &LiftSheet) -> String {
    let hooks = sheet.hooks.as_ref().map(|hooks| hooks.hole);
    match (&sheet.pins, hooks) {
        (Some(pins), _) => say.fill(p::HOLE, &[&pins.hole.to_string()]),
        (None, Some(Some(hole))) => say.fill(p::HOOKS_HOLE, &[&hole.to_string()]),
        (None, Some(None)) => say.say(p::FROM_THE_HOOKS),
        (None, None) if sheet.is_from_pins() => say.say(p::MEASURE_FIRST),
        (None, None) => say.say(p::FROM_THE_FLOOR),
    }
}

/// Thickness of each mat that is stood on: "20 mm".
pub(crate) fn mat_list(sheet: &LiftSheet) -> Vec<String> {
    let mats = sheet.pins.iter().flat_map(|pins| &pins.mats);
    mats.map(|mat| mat.words(domain::LengthUnit::Mm)).collect()
}

/// By how much the bar has to be raised with these plates, where it starts on the floor. Whoever
/// lifted before may have left blocks: where any set of the day at this rack needs them, it is said
/// too that this one needs none.
fn raise_words(scene: &Scene<'_>, run: &LiftRun, to: &Stacks) -> String {
    let (say, sheet) = (scene.language(), &run.sheet);
    let raise = sheet.raise(&to.faces());
    if raise != domain::Length::ZERO {
        return say.fill(p::RAISE, &[&whole_mm(raise)]);
    }
    let mut here = scene.runs().filter(|other| other.sheet.rack == sheet.rack);
    if sheet.is_from_floor() && (is_raised(sheet) || here.any(|other| is_raised(&other.sheet))) {
        return say.say(p::NOT_RAISED);
    }
    String::new()
}

/// Whether the bar has to be raised for some rung.
fn is_raised(sheet: &LiftSheet) -> bool {
    let raise = |rung: &Rung| sheet.raise(&rung.per_side);
    sheet
        .rungs
        .iter()
        .any(|rung| raise(rung) != domain::Length::ZERO)
}
