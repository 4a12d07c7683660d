//! A coach's plan: file to sheets to rows to prescriptions, or every fault of it.
//!
//! Refuses: a plan with any fault, a plan without rows, the same lift of a lifter twice a day.
use crate::Source;
use crate::columns::{self, Columns};
use crate::fault::{Fault, Wrong, quote};
use crate::plan_faults::PlanFaults;
use crate::plan_row::{self, Against};
use crate::sheets::{self, Sheet};
use crate::words::words;
use domain::{Gym, Prescription};
use std::collections::BTreeMap;

/// Most rows of a plan, the headers apart.
pub(crate) const ROWS_MAX: usize = 20_000;

/// Reads a coach's plan in CSV, XLSX or ODS; which one it is the file's first bytes tell.
///
/// # Errors
/// Every fault of the plan, by sheet, row and column. A plan with a fault gives no rows.
pub fn coach_plan(source: Source<'_>, gym: &Gym) -> Result<Vec<Prescription>, Vec<Fault>> {
    let (rows, faults) = read(source, Some(gym));
    if faults.iter().any(Fault::stops) {
        Err(faults)
    } else {
        Ok(rows)
    }
}

/// Reads what can be read of a plan; without a gym, names and bests are taken as they stand.
pub(crate) fn read(source: Source<'_>, gym: Option<&Gym>) -> (Vec<Prescription>, Vec<Fault>) {
    let opened = match sheets::open(source) {
        Ok(opened) => opened,
        Err(faults) => return (Vec::new(), faults),
    };
    let mut plan = Plan {
        against: &Against::of(gym),
        faults: PlanFaults::of(source.name),
        prescriptions: Vec::new(),
        firsts: BTreeMap::new(),
        count: 0,
        header: None,
    };
    plan.read(&opened.sheets());
    (plan.prescriptions, plan.faults.close())
}

/// Where a row stands.
#[derive(Debug, Clone, PartialEq, Eq)]
struct Place {
    sheet: Option<String>,
    row: usize,
}

/// A plan under reading.
struct Plan<'p> {
    against: &'p Against<'p>,
    faults: PlanFaults<'p>,
    prescriptions: Vec<Prescription>,
    /// The first row of each day, lifter and lift.
    firsts: BTreeMap<(chrono::NaiveDate, String, String), Place>,
    count: usize,
    /// The first header: its sheet and row.
    header: Option<(usize, Option<String>, usize)>,
}

impl Plan<'_> {
    /// Reads every sheet that has a header. When none has, the first with anything in it is
    /// taken for a plan, so that its faults are told.
    fn read(&mut self, sheets: &[Sheet<'_>]) {
        let filled: Vec<_> = sheets
            .iter()
            .enumerate()
            .filter(|(_, sheet)| !sheet.rows.is_empty())
            .collect();
        if filled.is_empty() {
            let right = words!("write a header row and a row for each lift of each day");
            self.faults
                .whole(Wrong::plain(words!("a file with nothing in it"), right));
            return;
        }
        let with_header: Vec<_> = filled
            .iter()
            .filter_map(|(number, sheet)| Some((*number, *sheet, columns::header_at(&sheet.rows)?)))
            .collect();
        if with_header.is_empty() {
            let (number, sheet) = filled[0];
            self.sheet(number, sheet, 0);
        }
        for (number, sheet, at) in &with_header {
            if sheet.hidden {
                self.faults.turn_to(*number, sheet.name.as_deref());
                let right = words!("show the sheet in the spreadsheet if it belongs to the plan");
                self.faults
                    .odd(Wrong::plain(words!("a hidden sheet, left out"), right));
            } else {
                self.sheet(*number, sheet, *at);
            }
        }
        if self.count == 0
            && let Some((number, name, row)) = self.header.take()
        {
            self.faults.turn_to(number, name.as_deref());
            let right = words!("write a row for each lift of each day under it");
            let wrong = Wrong::plain(words!("a header and no row under it"), right);
            self.faults.wrong(row, None, wrong);
        }
    }

    fn sheet(&mut self, number: usize, sheet: &Sheet<'_>, header: usize) {
        self.faults.turn_to(number, sheet.name.as_deref());
        let rows = &sheet.rows[header..];
        let Some((header, rows)) = rows.split_first() else {
            return;
        };
        let Some(columns) = Columns::read(header, sheet.separator, &mut self.faults) else {
            return;
        };
        let first = (number, sheet.name.clone(), header.number);
        self.header.get_or_insert(first);
        for row in rows {
            self.count += 1;
            if self.count > ROWS_MAX {
                let read = words!("more rows than the most, {0}", ROWS_MAX);
                let wrong = Wrong::plain(read, words!("split the plan"));
                self.faults.ends(row.number, wrong);
                break;
            }
            let read = plan_row::read(row, &columns, self.against, &mut self.faults);
            if let Some(read) = read {
                self.take(read, sheet, row.number);
            }
        }
    }

    /// Takes a row, unless its day, lifter and lift had one already.
    fn take(&mut self, read: Prescription, sheet: &Sheet<'_>, row: usize) {
        let key = (read.date, read.lifter.clone(), read.lift.clone());
        if let Some(first) = self.firsts.get(&key) {
            let (date, lifter, lift) = key;
            let after = match &first.sheet {
                Some(name) if first.sheet != sheet.name => {
                    words!("sheet {0}, row {1}", quote(name), first.row)
                }
                _ => words!("row {0}", first.row),
            };
            let read = words!(
                "{0} for {1} on {2} again, after {3}",
                lift,
                lifter,
                date.to_string(),
                after
            );
            let wrong = Wrong::plain(read, words!("keep one of the two rows"));
            self.faults.wrong(row, None, wrong);
            return;
        }
        let sheet = sheet.name.clone();
        self.firsts.insert(key, Place { sheet, row });
        // A plan that is refused gives no rows, so none are kept.
        if self.faults.stops() {
            self.prescriptions = Vec::new();
        } else {
            self.prescriptions.push(read);
        }
    }
}
