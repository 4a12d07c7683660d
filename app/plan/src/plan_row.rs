//! One row of a plan to one prescription, held against the gym.
//!
//! Refuses: lifters, lifts and patterns that the gym does not have; percentages of a best that
//! nobody recorded; loads under the lightest bar.
use crate::cells::{CellKind, SheetRow};
use crate::columns::{ColumnUnit, Columns};
use crate::date::date;
use crate::fault::{Wrong, quote};
use crate::fields::{COLUMNS, Need};
use crate::known::Known;
use crate::lifter_file::loads;
use crate::plan_faults::PlanFaults;
use crate::plan_time::rest_of_time;
use crate::quantity::{mass, percent, rest_s, whole};
use crate::wording::words;
use crate::words::{term, words};
use domain::decimal;
use domain::prescription::LoadWish;
use domain::{Gym, Lifter, Mass, MassUnit, Prescription};
use std::borrow::Cow;

/// Longest note, in characters.
pub(crate) const NOTE_MAX: usize = 200;

/// What rows are held against.
pub(crate) struct Against<'g> {
    gym: Option<&'g Gym>,
    lifters: Known,
    lifts: Known,
    patterns: Known,
}

impl<'g> Against<'g> {
    /// A gym; without one, names are taken as they stand.
    pub(crate) fn of(gym: Option<&'g Gym>) -> Self {
        let Some(read) = gym else {
            return Self {
                gym,
                lifters: Known::open(term!("lifter")),
                lifts: Known::open(term!("lift")),
                patterns: Known::open(term!("warm-up pattern")),
            };
        };
        Self {
            gym,
            lifters: Known::of(
                term!("lifter"),
                read.lifters.iter().map(|l| l.name.as_str()),
            ),
            lifts: Known::of(term!("lift"), read.lifts.iter().map(|l| l.name.as_str())),
            patterns: Known::of(
                term!("warm-up pattern"),
                read.patterns.iter().map(|p| p.name.as_str()),
            ),
        }
    }

    /// The lightest bar with its collars.
    fn lightest(&self) -> Option<Mass> {
        let bars = self.gym?.bars.iter();
        bars.map(|bar| bar.mass + bar.collars).min()
    }

    /// Holds a load against the lifter's bests and the gym's bars.
    fn judge(&self, text: &str, load: LoadWish, lifter: &str, lift: &str) -> Result<(), Wrong> {
        let Some(gym) = self.gym else {
            return Ok(());
        };
        let load = match load {
            LoadWish::Mass(load) => load,
            LoadWish::OfBest(share) => {
                let who = gym.lifters.iter().find(|known| known.name == lifter);
                let Some(best) = who.and_then(|who| best(who, lift)) else {
                    let what = words!(
                        "of a best in the {0} that {1} has not recorded",
                        lift,
                        lifter
                    );
                    let right = words!("write a mass, or record the best in lifters.toml");
                    return Err(Wrong::value(text, &what, right));
                };
                // Hundredths of a percent: ten thousand make the whole.
                let ng = i128::from(best.ng()) * i128::from(share) / 10_000;
                Mass::from_ng(i64::try_from(ng).unwrap_or(i64::MAX))
            }
        };
        match self.lightest() {
            Some(bar) if load < bar => {
                let pounds = text.to_lowercase().contains("lb");
                let unit = if pounds { MassUnit::Lb } else { MassUnit::Kg };
                let what = words!("less than the lightest bar, {0}", bar.words(unit));
                let right = words!("write the load with the bar counted in");
                Err(Wrong::value(text, &what, right))
            }
            _ => Ok(()),
        }
    }
}

fn best(lifter: &Lifter, lift: &str) -> Option<Mass> {
    let best = lifter.bests.iter().find(|(name, _)| name == lift);
    best.map(|(_, best)| *best)
}

/// A row under reading.
struct Reading<'r, 'f> {
    row: &'r SheetRow<'r>,
    columns: &'r Columns,
    faults: &'r mut PlanFaults<'f>,
}

impl Reading<'_, '_> {
    /// What the cell of a column is.
    fn kind(&self, key: &str) -> CellKind {
        let at = self.columns.place(key);
        at.map_or(CellKind::Text, |at| self.row.kind(at))
    }

    /// Reads the cell of a column; `None` when it is empty or cannot be read, which is told.
    fn cell<T>(&mut self, key: &str, read: impl FnOnce(&str) -> Result<T, Wrong>) -> Option<T> {
        let at = self.columns.place(key)?;
        let text = self.row.cells.get(at).map_or("", |cell| cell.trim());
        if !text.is_empty() {
            return read(text).map_err(|wrong| self.wrong(at, wrong)).ok();
        }
        let column = COLUMNS.iter().find(|column| column.field.key == key);
        let column = column.expect("a column with a place is in the list of columns");
        if column.field.need == Need::Always {
            let right = words!("write {0}", column.field.example);
            self.wrong(at, Wrong::plain(words!("an empty cell"), right));
        }
        None
    }

    fn wrong(&mut self, at: usize, wrong: Wrong) {
        let cell = Some((at, self.columns.header(at)));
        self.faults.wrong(self.row.number, cell, wrong);
    }

    /// Tells a row whose cells have slipped out from under their headers, as an unquoted comma
    /// makes them do. Its other cells would only be told for what they are not.
    fn slipped(&mut self) -> bool {
        let cells = &self.row.cells;
        if self.columns.separator() == Some(',')
            && let Some(at) = self.columns.place("load")
            && let (Some(front), Some(back)) = (cells.get(at), cells.get(at + 1))
            && digits(front.trim())
            && digits_and_unit(back.trim())
        {
            let load = format!("{},{}", front.trim(), back.trim());
            let right = words!("write {0} with its quotes, or with a point", quote(&load));
            self.wrong(
                at,
                Wrong::value(&load, words!("a comma within a cell not in quotes"), right),
            );
            return true;
        }
        let beyond = |(at, cell): &(usize, &Cow<'_, str>)| {
            self.columns.header(*at).is_empty() && !cell.trim().is_empty()
        };
        let Some((at, cell)) = cells.iter().enumerate().find(beyond) else {
            return false;
        };
        let right = match self.columns.separator() {
            Some(_) => {
                words!("put each cell that holds the separator within quotes, or delete this one")
            }
            None => words!("give the column a header, or delete this cell"),
        };
        self.wrong(
            at,
            Wrong::value(cell.trim(), words!("under no header"), right),
        );
        true
    }
}

/// Whether a cell is what stands behind the comma of a load: "5 kg", "5%".
fn digits_and_unit(text: &str) -> bool {
    let number = ["kg", "lb", "lbs", "%"]
        .iter()
        .find_map(|unit| text.strip_suffix(unit));
    number.is_some_and(|number| digits(number.trim()))
}

fn digits(text: &str) -> bool {
    !text.is_empty() && text.bytes().all(|b| b.is_ascii_digit())
}

/// Reads "180 kg", "445 lb" or "80 %".
pub(crate) fn load(text: &str) -> Result<LoadWish, Wrong> {
    if text.contains('%') {
        percent(text, &(100..=15_000)).map(LoadWish::OfBest)
    } else {
        mass(text, &loads()).map(|(mass, _)| LoadWish::Mass(mass))
    }
}

/// A load's text with the unit that its cell leaves out: a spreadsheet keeps "80 %" as the
/// number 0.8, which is no load of anything; else the header's unit holds for bare numbers.
fn with_unit(text: &str, kind: CellKind, unit: Option<ColumnUnit>) -> Cow<'_, str> {
    let bare = !text.is_empty()
        && text
            .bytes()
            .all(|b| b.is_ascii_digit() || matches!(b, b'.' | b','));
    let share = (kind == CellKind::Number)
        .then(|| decimal::read(text, SHARE_SCALE, SHARE_MOST).ok())
        .flatten();
    match (share, unit) {
        (Some(share), None | Some(ColumnUnit("%"))) if share > 0 => Cow::Owned(format!(
            "{} %",
            decimal::write_rounded(share, SHARE_SCALE / 100, 2)
        )),
        (_, Some(ColumnUnit(unit))) if bare => Cow::Owned(format!("{text} {unit}")),
        _ => Cow::Borrowed(text),
    }
}

/// Hundredths of a percent in a whole.
const SHARE_SCALE: i64 = 10_000;
/// The largest share, 150 %, as a spreadsheet's number.
const SHARE_MOST: i64 = 15_000;

/// Reads one row; `None` when it has a fault, which is told.
pub(crate) fn read(
    row: &SheetRow<'_>,
    columns: &Columns,
    against: &Against<'_>,
    faults: &mut PlanFaults<'_>,
) -> Option<Prescription> {
    let mut reading = Reading {
        row,
        columns,
        faults,
    };
    if let Some((cell, wrong)) = &row.broken {
        reading.wrong(cell - 1, wrong.clone());
        return None;
    }
    if reading.slipped() {
        return None;
    }
    let date = reading.cell("date", date);
    let lifter = reading.cell("lifter", |text| against.lifters.find(text));
    let lift = reading.cell("lift", |text| against.lifts.find(text));
    let sets = reading.cell("sets", |text| whole(text, &(1..=20)));
    let reps = reading.cell("reps", |text| whole(text, &(1..=50)));
    let (kind, unit) = (reading.kind("load"), columns.unit());
    let load = reading.cell("load", |text| {
        let text = &*with_unit(text, kind, unit);
        let load = load(text)?;
        if let (Some(lifter), Some(lift)) = (&lifter, &lift) {
            against.judge(text, load, lifter, lift)?;
        }
        Ok(load)
    });
    let ladder = reading.cell("ladder", |text| against.patterns.find(text));
    let kind = reading.kind("rest");
    let rest_s = reading.cell("rest", |text| match kind {
        CellKind::Time => rest_of_time(text),
        CellKind::Text | CellKind::Number | CellKind::Day | CellKind::Share => rest_s(text),
    });
    let note = reading.cell("note", |text| {
        let line: Vec<_> = text.split_whitespace().collect();
        words(&line.join(" "), NOTE_MAX)
    });
    Some(Prescription {
        date: date?,
        lifter: lifter?,
        lift: lift?,
        sets: sets?,
        reps: reps?,
        load: load?,
        ladder,
        rest_s,
        note: note.unwrap_or_default(),
    })
}
