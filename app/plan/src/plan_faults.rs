//! The faults of one plan, gathered while its rows are read. Refuses: to stop at the first.
use crate::fault::{Column, Fault, Weight, Wrong};
use crate::gathered::Gathered;

/// What is wrong so far.
#[derive(Debug)]
pub(crate) struct PlanFaults<'f> {
    file: &'f str,
    sheet: (usize, Option<String>),
    faults: Gathered,
}

impl<'f> PlanFaults<'f> {
    /// None yet.
    pub(crate) fn of(file: &'f str) -> Self {
        Self {
            file,
            sheet: (0, None),
            faults: Gathered::default(),
        }
    }

    /// From here on faults are of the sheet with this number.
    pub(crate) fn turn_to(&mut self, number: usize, sheet: Option<&str>) {
        self.sheet = (number, sheet.map(str::to_owned));
    }

    /// Tells a fault of a row, or of its cell at an index from 0 under a header.
    pub(crate) fn wrong(&mut self, row: usize, cell: Option<(usize, &str)>, wrong: Wrong) {
        let in_sheet = self.sheet.1.is_some();
        let name = |at: usize, header: &str| match header {
            "" => in_sheet.then(|| letters(at)),
            header => Some(header.to_owned()),
        };
        let column = cell.map(|(at, header)| Column {
            number: at + 1,
            name: name(at, header),
        });
        self.push(Weight::Wrong, |file| Fault {
            row: Some(row),
            column,
            ..Fault::whole(file, wrong)
        });
    }

    /// Tells something odd of a row, or of its cell at an index from 0.
    pub(crate) fn odd_at(&mut self, row: usize, cell: Option<usize>, wrong: Wrong) {
        let column = cell.map(|at| Column {
            number: at + 1,
            name: Some(letters(at)),
        });
        self.push(Weight::Odd, |file| Fault {
            row: Some(row),
            column,
            weight: Weight::Odd,
            ..Fault::whole(file, wrong)
        });
    }

    /// How many faults there are so far.
    pub(crate) fn told(&self) -> usize {
        self.faults.wrong_count()
    }

    /// Whether the plan is refused so far.
    pub(crate) fn stops(&self) -> bool {
        self.faults.stops()
    }

    /// Tells that the reading ends at a row; told however many faults there are.
    pub(crate) fn ends(&mut self, row: usize, wrong: Wrong) {
        let fault = Fault {
            row: Some(row),
            sheet: self.sheet.1.clone(),
            ..Fault::whole(self.file, wrong)
        };
        self.faults.surely(self.sheet.0, fault);
    }

    /// Tells something odd of the sheet of now.
    pub(crate) fn odd(&mut self, wrong: Wrong) {
        self.push(Weight::Odd, |file| Fault {
            weight: Weight::Odd,
            ..Fault::whole(file, wrong)
        });
    }

    fn push(&mut self, weight: Weight, fault: impl FnOnce(&str) -> Fault) {
        let (number, sheet) = &self.sheet;
        let fault = || Fault {
            sheet: sheet.clone(),
            ..fault(self.file)
        };
        self.faults.push(*number, fault, weight);
    }

    /// Tells a fault of the plan as a whole.
    pub(crate) fn whole(&mut self, wrong: Wrong) {
        self.push(Weight::Wrong, |file| Fault::whole(file, wrong));
    }

    /// All of them, by sheet, row and column.
    pub(crate) fn close(self) -> Vec<Fault> {
        self.faults.close(self.file)
    }
}

/// What a spreadsheet calls the column at an index from 0: A, Z, AA.
pub(crate) fn letters(at: usize) -> String {
    let mut name = Vec::new();
    let mut left = at + 1;
    while left > 0 {
        left -= 1;
        name.push(b'A' + u8::try_from(left % 26).expect("below 26"));
        left /= 26;
    }
    name.reverse();
    String::from_utf8(name).expect("letters")
}
