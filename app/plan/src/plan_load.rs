//! The cell of a column of loads: with the unit that it leaves out, as a mass, a share or more.
//!
//! Refuses: loads under the lightest bar, shares of bests that nobody recorded.
use crate::cells::CellKind;
use crate::columns::ColumnUnit;
use crate::fault::{Wrong, quote};
use crate::lifter_file::loads;
use crate::quantity::{mass, percent};
use crate::scheme::{self, Bare};
use crate::set_group::{LoadAsk, ShareOf};
use crate::words::words;
use domain::prescription::LoadWish;
use domain::{Mass, MassUnit, decimal};
use std::borrow::Cow;
use text::keys::checked as k;

/// Reads "180 kg", "445 lb" or "80 %".
pub(crate) fn load(text: &str) -> Result<LoadWish, Wrong> {
    if text.contains('%') {
        percent(text, &(100..=15_000)).map(LoadWish::OfBest)
    } else {
        mass(text, &loads()).map(|(mass, _)| LoadWish::Mass(mass))
    }
}

/// What a load's cell says: loads one after the other, and an effort.
pub(crate) type Loads = (Vec<LoadAsk>, Option<u8>);

/// Reads the cell of a column of loads.
pub(crate) fn read(
    text: &str,
    kind: CellKind,
    unit: Option<ColumnUnit>,
    bare: Bare,
) -> Result<Loads, Wrong> {
    if ["same", "gleich", "as before", "wie zuvor", "idem"].contains(&text.to_lowercase().as_str())
    {
        let right = words!(k::WRITE_FOR_THE_LOAD_OF, "\"+0 kg\"");
        return Err(Wrong::value(text, words!(k::THE_SAME_AS_WHAT_IS), right));
    }
    let text = &*with_unit(text, kind, unit, bare)?;
    let plain = if text.contains('%') {
        percent(text, &(100..=15_000)).map(|share| LoadAsk::Share(share, ShareOf::Best))
    } else {
        mass(text, &loads()).map(|(mass, unit)| LoadAsk::Mass(mass, unit))
    };
    let wrong = match plain {
        Ok(load) => return Ok((vec![load], None)),
        Err(wrong) => wrong,
    };
    match scheme::load(text, bare) {
        Ok((loads, effort)) if !loads.is_empty() || effort.is_some() => Ok((loads, effort)),
        Ok(_) => Err(wrong),
        Err(more) if speaks_more(text) => Err(more),
        Err(_) => Err(wrong),
    }
}

/// Whether a cell is written in more than a number and a unit, so that the longer words help.
fn speaks_more(text: &str) -> bool {
    if text.starts_with("the formula's") {
        return false;
    }
    let lower = text.to_lowercase();
    let words = [
        "rpe", "rir", "tm", "rm", "top", "due", "max", "side", "seite",
    ];
    let split = lower.split(|c: char| !c.is_alphanumeric());
    text.contains(['@', '+', '/', '-', '(', '='])
        && !text.starts_with('-')
        && text.contains(|c: char| c.is_ascii_digit())
        || split
            .into_iter()
            .any(|word| words.contains(&word.trim_start_matches(|c: char| c.is_ascii_digit())))
}

/// Hundredths of a percent in a whole.
const SHARE_SCALE: i64 = 10_000;
/// The largest share, 150 %, as a spreadsheet's number.
const SHARE_MOST: i64 = 15_000;

/// A load's text with the unit that its cell leaves out: a spreadsheet keeps "80 %" as the
/// number 0.8, which is no load of anything; else the header's unit holds, else the lifter's.
fn with_unit(
    text: &str,
    kind: CellKind,
    unit: Option<ColumnUnit>,
    bare: Bare,
) -> Result<Cow<'_, str>, Wrong> {
    let is_bare = !text.is_empty()
        && text
            .bytes()
            .all(|b| b.is_ascii_digit() || matches!(b, b'.' | b','));
    let share = decimal::read(text, SHARE_SCALE, SHARE_MOST).ok();
    let share = share.filter(|share| *share > 0 && is_bare);
    let as_share = |share| format!("{} %", decimal::write_rounded(share, SHARE_SCALE / 100, 2));
    let of_max = unit == Some(ColumnUnit("% TM"));
    if of_max && (is_bare || text.trim_end().ends_with('%')) {
        let share = share.filter(|_| kind == CellKind::Number).map(as_share);
        let number = text.trim_end().trim_end_matches('%').trim_end();
        return Ok(Cow::Owned(match share {
            Some(share) => format!("{share} TM"),
            None => format!("{number} % TM"),
        }));
    }
    Ok(match (share, unit) {
        (Some(share), None) if kind == CellKind::Number => Cow::Owned(as_share(share)),
        (Some(share), Some(ColumnUnit("%"))) if kind == CellKind::Number => {
            Cow::Owned(as_share(share))
        }
        (Some(share), unit) if unit != Some(ColumnUnit("%")) => {
            let unit = unit.map_or("kg", |unit| unit.0);
            let what = words!(k::WHICH_COULD_BE_OR_A, format!("{text} {unit}"));
            let right = words!(k::WRITE_OR_THE_LOAD_WITH, quote(&as_share(share)));
            return Err(Wrong::value(text, what, right));
        }
        (_, Some(ColumnUnit(unit))) if is_bare => Cow::Owned(format!("{text} {unit}")),
        (None, None) if is_bare => match bare {
            Bare::Unit(unit) => Cow::Owned(format!("{text} {}", unit.word())),
            Bare::Percent => Cow::Owned(format!("{text} %")),
            Bare::Unknown => Cow::Borrowed(text),
        },
        _ => Cow::Borrowed(text),
    })
}

/// A load as the gym's bars and the lifter's bests are held against, where they can be.
pub(crate) fn held(load: LoadAsk) -> Option<LoadWish> {
    match load {
        LoadAsk::Mass(mass, _) => Some(LoadWish::Mass(mass)),
        LoadAsk::Share(share, ShareOf::Best) => Some(LoadWish::OfBest(share)),
        LoadAsk::Share(share, ShareOf::TrainingMax) => Some(LoadWish::OfTraining(share)),
        LoadAsk::Share(_, ShareOf::TopSet) | LoadAsk::More(..) | LoadAsk::Due => None,
    }
}

/// A load as it is repeated in a fault.
pub(crate) fn shown(load: LoadWish, unit: MassUnit) -> String {
    match load {
        LoadWish::Mass(mass) => Mass::exact(mass, unit),
        LoadWish::OfBest(share) | LoadWish::OfTop(share) | LoadWish::OfTraining(share) => {
            crate::set_group::share_text(share)
        }
        LoadWish::More(mass) => format!("+{}", Mass::exact(mass, unit)),
        LoadWish::Due => String::new(),
    }
}
