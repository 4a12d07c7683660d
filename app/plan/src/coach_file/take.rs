//! Rows of a plan as they are taken, one after the other: rows right below each other are one
//! prescription, the same again may be a slip.
use super::Plan;
use crate::fault::{Wrong, quote};
use crate::set_group::PlanRow;
use crate::set_numbers::SetNumbers;
use crate::words::words;
use text::keys::checked as k;

/// Where a row stands.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Place {
    sheet: (usize, Option<String>),
    row: usize,
    /// Its place among the rows; none once the plan is refused.
    at: Option<usize>,
    numbers: SetNumbers,
}

impl Plan<'_> {
    /// Takes a row. A second one of its day, lifter and lift right below adds its sets, unless it
    /// is the same again, which may be a slip; one elsewhere may be one too.
    pub(super) fn take(
        &mut self,
        read: PlanRow,
        (sheet, row): ((usize, Option<String>), usize),
        counts: Option<&str>,
    ) {
        let key = (read.date, read.lifter.clone(), read.lift.clone());
        if let Some(first) = self.firsts.get_mut(&key) {
            let below = first.sheet == sheet && row <= first.row + 1;
            let stands = first.at.and_then(|at| self.rows.get_mut(at));
            if let Some(stands) = stands
                && below
                && stands.groups != read.groups
            {
                let both = (stands.groups.as_slice(), read.groups.as_slice());
                if let Err(wrong) = first.numbers.add(counts, both) {
                    self.faults.wrong(row, None, wrong);
                }
                stands.groups.extend(read.groups);
                if !read.note.is_empty() && read.note != stands.note {
                    let both = format!("{}; {}", stands.note, read.note);
                    stands.note = both.trim_start_matches("; ").to_owned();
                }
                stands.ladder = stands.ladder.take().or(read.ladder);
                first.row = row;
                return;
            }
            let (date, lifter, lift) = key;
            let after = match &first.sheet.1 {
                Some(name) if first.sheet != sheet => {
                    words!(k::SHEET_ROW, quote(name), first.row)
                }
                _ => words!(k::ROW, first.row),
            };
            let read = words!(k::FOR_ON_AGAIN_AFTER, lift, lifter, date.to_string(), after);
            let wrong = Wrong::plain(read, words!(k::KEEP_ONE_OF_THE_TWO));
            self.faults.wrong(row, None, wrong);
            return;
        }
        // A plan that is refused gives no rows, so none are kept.
        let stops = self.faults.stops();
        if stops {
            self.rows = Vec::new();
        }
        let at = (!stops).then_some(self.rows.len());
        let numbers = SetNumbers::begin(counts, &read.groups);
        let place = Place {
            sheet,
            row,
            at,
            numbers,
        };
        self.firsts.insert(key, place);
        if !stops {
            self.rows.push(read);
        }
    }
}
