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
    /// "belt", "straps", "tempo 3-0-1-0", "pause 2 s": what is worn for this set, and how it goes.
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

/// The spot of the rung `at`, from 0.
pub(crate) fn spot(scene: &Scene<'_>, run: &LiftRun, at: usize, to: &Stacks) -> Spot {
    let (say, sheet) = (scene.language(), &run.sheet);
    let (hole, mats) = (sheet.pin_hole(at), sheet.mats_of(at));
    Spot {
        place: place(say, sheet, at),
        hole: hole.map(|hole| hole.to_string()).unwrap_or_default(),
        // Whoever lifted before at this hole may have left mats: "no mat" is said too.
        mats: hole.map(|_| say.mats(mats)).unwrap_or_default(),
        mats_sum: hole.map(|_| say.mats_sum(mats)).unwrap_or_default(),
        mat_list: mat_list(sheet, at),
        raise: raise_words(scene, run, at, to),
        gear: say.gear_of(sheet, at),
        grip: match sheet.hooks {
            Some(_) => String::new(),
            None => say.grip(sheet.grip_of(at)),
        },
    }
}

/// Where the bar starts for a rung, in few words.
pub(crate) fn place(say: Language, sheet: &LiftSheet, at: usize) -> String {
    let hooks = sheet.hooks.as_ref().map(|_| sheet.hook_hole(at));
    match (sheet.pin_hole(at), hooks) {
        (Some(hole), _) => say.fill(p::HOLE, &[&hole.to_string()]),
        (None, Some(Some(hole))) => say.fill(p::HOOKS_HOLE, &[&hole.to_string()]),
        (None, Some(None)) => say.say(p::FROM_THE_HOOKS),
        (None, None) if sheet.is_from_pins() => say.say(p::MEASURE_FIRST),
        (None, None) => say.say(p::FROM_THE_FLOOR),
    }
}

/// Thickness of each mat that is stood on for a rung: "20 mm".
pub(crate) fn mat_list(sheet: &LiftSheet, at: usize) -> Vec<String> {
    let mats = sheet.mats_of(at).iter();
    mats.map(|mat| mat.words(domain::LengthUnit::Mm)).collect()
}

/// By how much the bar has to be raised with these plates, where it starts on the floor. Whoever
/// lifted before may have left blocks: where any set of the day at this rack needs them, it is said
/// too that this one needs none.
fn raise_words(scene: &Scene<'_>, run: &LiftRun, at: usize, to: &Stacks) -> String {
    let (say, sheet) = (scene.language(), &run.sheet);
    let raise = sheet.raise(at, &to.faces());
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
    let raise = |(at, rung): (usize, &Rung)| sheet.raise(at, &rung.per_side);
    let mut all = sheet.rungs.iter().enumerate();
    all.any(|rung| raise(rung) != domain::Length::ZERO)
}
