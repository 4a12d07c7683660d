//! The faults of one plan, gathered while its rows are read. Refuses: to stop at the first.
use crate::fault::{Column, Fault, Wrong};

/// What is wrong so far.
#[derive(Debug)]
pub(crate) struct PlanFaults<'f> {
    file: &'f str,
    faults: Vec<Fault>,
}

impl<'f> PlanFaults<'f> {
    /// None yet.
    pub(crate) const fn of(file: &'f str) -> Self {
        Self {
            file,
            faults: Vec::new(),
        }
    }

    /// Tells a fault of a row, or of its cell at an index from 0 under a header.
    pub(crate) fn wrong(&mut self, row: usize, cell: Option<(usize, &str)>, wrong: Wrong) {
        let column = cell.map(|(at, header)| Column {
            number: at + 1,
            name: (!header.is_empty()).then(|| header.to_owned()),
        });
        self.faults.push(Fault {
            row: Some(row),
            column,
            ..Fault::whole(self.file, wrong)
        });
    }

    /// Tells a fault of the plan as a whole.
    pub(crate) fn whole(&mut self, wrong: Wrong) {
        self.faults.push(Fault::whole(self.file, wrong));
    }

    /// All of them, by row and column.
    pub(crate) fn close(mut self) -> Vec<Fault> {
        self.faults.sort_by_key(Fault::place);
        self.faults
    }
}
