//! Words and numbers as a lifter reads them. Refuses: deciding anything.
pub use crate::warning::{is_estimated, not_measured, warning};
use domain::event::Hold;
use domain::lift::Grip;
use domain::next::Verdict;
use domain::next::outing::{Outing, Went};
use domain::settle::Choices;
use domain::sheet::{LiftSheet, PinSheet, Rated, Rung, RungKind};
use domain::solve::bar::GUIDE;
use domain::steel::Figures;
use domain::weighed::Sides;
use domain::{Length, LengthUnit, Mass, MassUnit, PlateFace};

/// "2:10".
#[must_use]
pub fn minutes(seconds: u32) -> String {
    format!("{}:{:02}", seconds / 60, seconds % 60)
}

/// "1 rep", "5 reps".
#[must_use]
pub fn reps(n: u8) -> String {
    if n == 1 {
        "1 rep".into()
    } else {
        format!("{n} reps")
    }
}

/// "130 kg × 2".
#[must_use]
pub fn set(load: Mass, unit: MassUnit, n: u8) -> String {
    format!("{} × {n}", load.words(unit))
}

/// "180 kg × 5", "3 sets of 180 kg × 5".
#[must_use]
pub fn work(sheet: &LiftSheet) -> String {
    let mut sets = sheet.rungs.iter().filter(|r| r.kind == RungKind::Work);
    let Some(first) = sets.next() else {
        return String::new();
    };
    let one = set(first.load, sheet.unit, first.reps);
    match sets.count() {
        0 => one,
        more => format!("{} sets of {one}", more + 1),
    }
}

/// "20, 10": labels in the order given; the unit is said where it is not the lifter's.
#[must_use]
pub fn plates(list: &[PlateFace], unit: MassUnit) -> String {
    let label = |p: &PlateFace| {
        if p.unit == unit {
            p.label()
        } else {
            format!("{} {}", p.label(), p.unit.word())
        }
    };
    list.iter().map(label).collect::<Vec<_>>().join(", ")
}

/// "A1|B2, C1|C2": the marks of plates from the `from`th on, left|right, inside to outside.
#[must_use]
pub fn marks(sides: &Sides, from: usize) -> String {
    let pairs = sides.left.iter().zip(&sides.right).skip(from);
    pairs
        .map(|(left, right)| format!("{left}|{right}"))
        .collect::<Vec<_>>()
        .join(", ")
}

/// "back kept", "back moved at rep 3".
#[must_use]
pub fn hold(hold: Hold) -> String {
    match hold {
        Hold::Kept => "back kept".into(),
        Hold::MovedAt(rep) => format!("back moved at rep {rep}"),
    }
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

/// "all reps, back kept", "4 of 5 reps", "4 of 5 reps in set 2", "back moved at rep 3".
#[must_use]
pub fn went(outing: &Outing) -> String {
    let of_set = |set: u8| match outing.sets {
        1 => String::new(),
        _ => format!(" in set {set}"),
    };
    match outing.went {
        Went::Well => "all reps, back kept".into(),
        Went::Short { set, reps } => format!("{reps} of {} reps{}", outing.reps, of_set(set)),
        Went::Moved { set, rep } => format!("back moved at rep {rep}{}", of_set(set)),
        Went::MovedWarm => "back moved in a warm-up".into(),
        Went::Cut { done } => format!("{done} of {} sets, back kept", outing.sets),
    }
}

/// "other load" where another may be chosen, else nothing.
pub(crate) fn settle(choices: Option<&Choices>) -> String {
    choices.map(|_| "other load".into()).unwrap_or_default()
}

/// "double overhand".
#[must_use]
pub fn grip(grip: Grip) -> &'static str {
    match grip {
        Grip::DoubleOverhand => "double overhand",
        Grip::Hook => "hook grip",
    }
}

/// "no mat", "1 mat, 20 mm", "2 mats, 10 + 20 mm".
#[must_use]
pub fn mats(mats: &[Length]) -> String {
    let thick: Vec<String> = mats.iter().map(|m| m.number(LengthUnit::Mm)).collect();
    match thick.as_slice() {
        [] => "no mat".into(),
        [one] => format!("1 mat, {one} mm"),
        more => format!("{} mats, {} mm", more.len(), more.join(" + ")),
    }
}

/// Whole millimetres: nobody sets a pin finer.
pub(crate) fn whole_mm(length: Length) -> String {
    domain::decimal::write_rounded(length.nm(), LengthUnit::Mm.scale(), 0)
}

/// "bar 431 mm above your feet, 4 mm under the mark".
#[must_use]
pub fn bar_height(pins: &PinSheet) -> String {
    let bar = whole_mm(pins.bar_height);
    let off = pins.off_target.nm();
    let by = whole_mm(Length::from_nm(off.abs()));
    let how = match off {
        _ if by == "0" => "on the mark".into(),
        ..0 => format!("{by} mm under the mark"),
        _ => format!("{by} mm over the mark"),
    };
    format!("bar {bar} mm above your feet, {how}")
}

/// Where the bar starts, when not on pins that are placed: "from the floor", "from the hooks in
/// hole 14".
#[must_use]
pub fn start(sheet: &LiftSheet) -> String {
    match sheet.hooks {
        Some(hooks) => match hooks.hole {
            Some(hole) => format!("from the hooks in hole {hole}"),
            None => "from the hooks, at the height that suits you".into(),
        },
        None if sheet.is_from_pins() => "on the pins, height not known".into(),
        None => "from the floor".into(),
    }
}

/// "shares 96 mm (3.8 in) with the halting deadlift".
#[must_use]
pub fn overlap(sheet: &LiftSheet) -> String {
    let Some(shared) = &sheet.overlap else {
        return String::new();
    };
    let both = |l: Length| {
        format!(
            "{} mm ({} in)",
            whole_mm(l),
            domain::decimal::write_rounded(l.nm(), LengthUnit::In.scale(), 1)
        )
    };
    if shared.length.nm() < 0 {
        return format!(
            "leaves a gap of {} to the {}",
            both(-shared.length),
            shared.partner
        );
    }
    format!("shares {} with the {}", both(shared.length), shared.partner)
}

/// "retired bar, 20 kg", with the collars where there are any.
#[must_use]
pub fn bar(sheet: &LiftSheet) -> String {
    let bar = &sheet.bar;
    let mut words = format!("{}, {}", bar.name, bar.mass.words(sheet.unit));
    if bar.collars != Mass::ZERO {
        words.push_str(&format!(", collars {}", bar.collars.words(sheet.unit)));
    }
    words
}

/// "belt from 130 kg", "straps from 165 kg"; nothing for what is never worn.
#[must_use]
pub fn gear(sheet: &LiftSheet) -> Vec<String> {
    let from = |word: &str, worn: fn(&Rung) -> bool| {
        let first = sheet.rungs.iter().find(|r| worn(r))?;
        Some(format!("{word} from {}", first.load.words(sheet.unit)))
    };
    let list = [from("belt", |r| r.belt), from("straps", |r| r.straps)];
    list.into_iter().flatten().collect()
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

/// What is worn on this rung.
#[must_use]
pub fn worn(rung: &Rung) -> Vec<String> {
    let list = [(rung.belt, "belt"), (rung.straps, "straps")];
    list.into_iter()
        .filter(|(on, _)| *on)
        .map(|(_, word)| word.into())
        .collect()
}

/// "warm-up 3 of 4", "work set", "work set 2 of 3".
#[must_use]
pub fn rung(sheet: &LiftSheet, at: usize) -> String {
    let Some(now) = sheet.rungs.get(at) else {
        return String::new();
    };
    let same = |r: &&Rung| r.kind == now.kind;
    let all = sheet.rungs.iter().filter(same).count();
    let nth = sheet.rungs.iter().take(at + 1).filter(same).count();
    match now.kind {
        RungKind::WarmUp => format!("warm-up {nth} of {all}"),
        RungKind::Work if all == 1 => "work set".into(),
        RungKind::Work => format!("work set {nth} of {all}"),
    }
}

/// "1st", "2nd", "3rd", "4th".
#[must_use]
pub fn place(n: usize) -> String {
    let ending = match (n % 10, n % 100) {
        (_, 11..=13) => "th",
        (1, _) => "st",
        (2, _) => "nd",
        (3, _) => "rd",
        _ => "th",
    };
    format!("{n}{ending}")
}
