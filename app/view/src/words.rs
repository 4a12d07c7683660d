//! The words of documents, which are in English; screens say the same through [`Language`].
//!
//! Refuses: deciding anything.
use crate::language::Language;
pub(crate) use crate::language::whole_mm;
use domain::event::Hold;
use domain::lift::Grip;
use domain::next::Verdict;
use domain::next::outing::Outing;
use domain::sheet::{GroupSheet, LiftSheet, PinSheet, Rated, Warning};
use domain::solve::bar::GUIDE;
use domain::steel::Figures;
use domain::{Length, Mass, MassUnit, PlateFace};

/// The language of documents.
const ENGLISH: Language = Language::English;

/// "2:10", in any language.
#[must_use]
pub fn minutes(seconds: u32) -> String {
    format!("{}:{:02}", seconds / 60, seconds % 60)
}

/// "1 rep", "5 reps".
#[must_use]
pub fn reps(n: u8) -> String {
    ENGLISH.reps(n)
}

/// "130 kg × 2".
#[must_use]
pub fn set(load: Mass, unit: MassUnit, n: u8) -> String {
    ENGLISH.set(load, unit, n)
}

/// "130 kg × 3-5, back-off, RPE 8".
#[must_use]
pub fn set_of(load: Mass, unit: MassUnit, group: &GroupSheet) -> String {
    let mut words = format!(
        "{} × {}",
        ENGLISH.mass(load, unit),
        ENGLISH.reps_asked(group.reps)
    );
    if let Some(more) = ENGLISH.role(group.role) {
        words.push_str(&format!(", {more}"));
    }
    if let Some(effort) = group.effort {
        words.push_str(&format!(", RPE {}", ENGLISH.effort(effort)));
    }
    words
}

/// "180 kg × 5", "3 sets of 180 kg × 5".
#[must_use]
pub fn work(sheet: &LiftSheet) -> String {
    ENGLISH.work(sheet)
}

/// "20, 10": labels in the order given; the unit is said where it is not the lifter's.
#[must_use]
pub fn plates(list: &[PlateFace], unit: MassUnit) -> String {
    ENGLISH.plates(list, unit)
}

/// "back held", "back moved at rep 3".
#[must_use]
pub fn hold(hold: Hold) -> String {
    ENGLISH.hold(hold)
}

/// "raise".
#[must_use]
pub fn verdict(verdict: Verdict) -> &'static str {
    match verdict {
        Verdict::Raise => "raise",
        Verdict::Repeat => "repeat",
        Verdict::Drop => "drop",
        Verdict::Reset => "reset",
        Verdict::Ease => "ease",
    }
}

/// "all reps, back held", "4 of 5 reps", "4 of 5 reps in set 2", "back moved at rep 3".
#[must_use]
pub fn went(outing: &Outing) -> String {
    ENGLISH.outing(outing)
}

/// "double overhand".
#[must_use]
pub fn grip(grip: Grip) -> String {
    ENGLISH.grip(grip)
}

/// "no mat", "1 mat, 20 mm", "2 mats, 10 + 20 mm".
#[must_use]
pub fn mats(mats: &[Length]) -> String {
    ENGLISH.mats(mats)
}

/// "bar 431 mm above your feet, 4 mm under the mark".
#[must_use]
pub fn bar_height(pins: &PinSheet) -> String {
    ENGLISH.bar_height(pins)
}

/// Where the bar starts, when not on pins that are placed: "from the floor", "from the hooks in
/// hole 14".
#[must_use]
pub fn start(sheet: &LiftSheet) -> String {
    ENGLISH.start(sheet)
}

/// "shares 96 mm (3.8 in) with the halting deadlift".
#[must_use]
pub fn overlap(sheet: &LiftSheet) -> String {
    ENGLISH.overlap(sheet)
}

/// "retired bar, 20 kg", with the collars where there are any.
#[must_use]
pub fn bar(sheet: &LiftSheet) -> String {
    ENGLISH.bar(sheet)
}

/// The warnings of a sheet, each a sentence.
#[must_use]
pub fn warnings(sheet: &LiftSheet) -> Vec<String> {
    let told = sheet.warnings.iter();
    told.map(|w| warning(sheet, w)).collect()
}

/// "500 lb of the 1000 lb that the pins are rated for; 97.9 MPa in the shaft on the pins, 9 % of
/// yield; bends for good from a drop of 205 mm; a guide, never a certificate".
#[must_use]
pub fn steel(figures: &Figures, unit: MassUnit) -> String {
    let mut parts: Vec<String> = Vec::new();
    let rated = figures.rated.iter().map(|(what, rated)| {
        let what = match what {
            Rated::Pins => "pins",
            Rated::Rack => "rack",
            Rated::Bar => "bar",
        };
        format!("{} of the {what}", rated.words(unit))
    });
    let rated: Vec<String> = rated.collect();
    if !rated.is_empty() {
        let load = figures.load.words(unit);
        parts.push(format!(
            "at most {load} where makers rate {}",
            rated.join(", ")
        ));
    }
    if let Some(bent) = &figures.bending {
        let percent = (bent.of_yield_ppm + 5_000) / 10_000;
        let stress = bent.stress.words();
        parts.push(format!(
            "{stress} in the shaft on the pins, {percent} % of yield"
        ));
        if let Some(drop) = bent.yield_drop.filter(|drop| *drop > Length::ZERO) {
            let mm = whole_mm(drop);
            parts.push(format!("bends for good from a drop of {mm} mm"));
        }
    }
    parts.push(GUIDE.into());
    parts.join("; ")
}

/// What is worn on a rung, and how its reps go.
#[must_use]
pub fn gear_of(sheet: &LiftSheet, at: usize) -> Vec<String> {
    ENGLISH.gear_of(sheet, at)
}

/// One warning as a sentence: what is the matter, then what to do.
#[must_use]
pub fn warning(sheet: &LiftSheet, warning: &Warning) -> String {
    ENGLISH.warning(sheet, warning)
}

/// Whether the pins stand by a landmark that nobody measured.
#[must_use]
pub fn is_estimated(sheet: &LiftSheet) -> bool {
    let Some(pins) = &sheet.pins else {
        return false;
    };
    let of = pins.landmark;
    let is = |w: &Warning| matches!(w, Warning::Estimated { landmark, .. } if *landmark == of);
    sheet.warnings.iter().any(is)
}
