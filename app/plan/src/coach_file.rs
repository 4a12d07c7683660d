//! A coach's plan: file to text to cells to rows to prescriptions, or every fault of it.
//!
//! Refuses: a plan with any fault, a plan without rows, the same lift of a lifter twice a day.
use crate::Source;
use crate::columns::{self, Columns};
use crate::fault::{Fault, Wrong};
use crate::plan_faults::PlanFaults;
use crate::plan_row::{self, Against};
use crate::{cells, file_kind};
use domain::{Gym, Prescription};
use std::collections::BTreeMap;

/// Most rows of a plan, the header apart.
const ROWS_MAX: usize = 20_000;

/// Reads a coach's plan in CSV.
///
/// # Errors
/// Every fault of the plan, by row and column. A plan with a fault gives no rows.
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
    let text = match file_kind::text(source) {
        Ok(text) => text,
        Err(faults) => return (Vec::new(), faults),
    };
    let mut faults = PlanFaults::of(source.name);
    let prescriptions = rows(text, &Against::of(gym), &mut faults);
    (prescriptions, faults.close())
}

fn rows(text: &str, against: &Against<'_>, faults: &mut PlanFaults<'_>) -> Vec<Prescription> {
    let separator = columns::separator(text);
    let mut rows = cells::rows(text, separator);
    let mut prescriptions = Vec::new();
    let Some(header) = rows.next() else {
        let right = "write a header row and a row for each lift of each day";
        faults.whole(Wrong::plain("a file with nothing in it", right));
        return prescriptions;
    };
    let Some(columns) = Columns::read(&header, separator, faults) else {
        return prescriptions;
    };
    let mut first_rows = BTreeMap::new();
    let mut count = 0_usize;
    for row in rows {
        count += 1;
        if count > ROWS_MAX {
            let read = format!("more rows than the most, {ROWS_MAX}");
            faults.wrong(row.number, None, Wrong::plain(read, "split the plan"));
            break;
        }
        let Some(read) = plan_row::read(&row, &columns, against, faults) else {
            continue;
        };
        let key = (read.date, read.lifter.clone(), read.lift.clone());
        if let Some(first) = first_rows.get(&key) {
            let (date, lifter, lift) = key;
            let read = format!("{lift} for {lifter} on {date} again, after row {first}");
            faults.wrong(
                row.number,
                None,
                Wrong::plain(read, "keep one of the two rows"),
            );
            continue;
        }
        first_rows.insert(key, row.number);
        prescriptions.push(read);
    }
    if count == 0 {
        let right = "write a row for each lift of each day under it";
        faults.wrong(
            header.number,
            None,
            Wrong::plain("a header and no row under it", right),
        );
    }
    prescriptions
}
