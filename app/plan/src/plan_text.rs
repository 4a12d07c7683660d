//! Rows of a plan written as a coach would write them in CSV, to go in by the same door.
//!
//! Refuses: judging them; the reader does, whoever wrote them.
use crate::fields::COLUMNS;
use crate::set_group::share_text;
use domain::prescription::LoadWish;
use domain::{Mass, MassUnit, Prescription};

/// A row of a plan as its cells have it; an empty cell is one that says nothing.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct PlanCells {
    /// ISO 8601.
    pub date: String,
    /// Who.
    pub lifter: String,
    /// What.
    pub lift: String,
    /// Work sets.
    pub sets: String,
    /// Reps of one.
    pub reps: String,
    /// "182.5 kg", "80 %".
    pub load: String,
    /// The warm-up pattern.
    pub ladder: String,
    /// "240 s".
    pub rest: String,
    /// The coach's words.
    pub note: String,
}

/// A row of straight sets; of another the first group alone.
impl From<&Prescription> for PlanCells {
    fn from(row: &Prescription) -> Self {
        Self {
            date: row.date.to_string(),
            lifter: row.lifter.clone(),
            lift: row.lift.clone(),
            sets: row.first.sets.to_string(),
            reps: row.first.reps.planned().to_string(),
            load: load_text(row.first.load),
            ladder: row.ladder.clone().unwrap_or_default(),
            rest: row
                .first
                .rest_s
                .map(|s| format!("{s} s"))
                .unwrap_or_default(),
            note: row.note.clone(),
        }
    }
}

/// A load in the unit that writes it in fewer digits.
fn load_text(load: LoadWish) -> String {
    match load {
        LoadWish::Mass(mass) => mass_text(mass),
        LoadWish::OfBest(share) => share_text(share),
        LoadWish::OfTraining(share) => format!("{} of training max", share_text(share)),
        LoadWish::OfTop(share) => format!("{} of top set", share_text(share)),
        LoadWish::More(mass) => format!("+{}", mass_text(mass)),
        LoadWish::Due => "due".to_owned(),
    }
}

fn mass_text(mass: Mass) -> String {
    let (kilos, pounds) = (mass.exact(MassUnit::Kg), mass.exact(MassUnit::Lb));
    if pounds.len() < kilos.len() {
        pounds
    } else {
        kilos
    }
}

/// The rows as a plan in CSV (RFC 4180), with its header.
#[must_use]
pub fn plan_csv(rows: &[PlanCells]) -> String {
    let keys: Vec<_> = COLUMNS.iter().map(|column| column.field.key).collect();
    let mut text = keys.join(",") + "\r\n";
    for row in rows {
        let cells: Vec<_> = keys.iter().map(|key| quoted(row.cell(key))).collect();
        text += &(cells.join(",") + "\r\n");
    }
    text
}

impl PlanCells {
    fn cell(&self, key: &str) -> &str {
        match key {
            "date" => &self.date,
            "lifter" => &self.lifter,
            "lift" => &self.lift,
            "sets" => &self.sets,
            "reps" => &self.reps,
            "load" => &self.load,
            "ladder" => &self.ladder,
            "rest" => &self.rest,
            "note" => &self.note,
            _ => "",
        }
    }
}

/// A cell as RFC 4180 has it.
pub(crate) fn quoted(cell: &str) -> String {
    if cell.contains([',', '"', '\n', '\r']) {
        format!("\"{}\"", cell.replace('"', "\"\""))
    } else {
        cell.to_owned()
    }
}
