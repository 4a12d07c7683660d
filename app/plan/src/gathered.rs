//! The faults of one file while it is read: some are kept, all are counted.
//!
//! Refuses: memory that grows with the faults of a file; nobody mends a thousand in one go.
use crate::fault::{Fault, Weight, Wrong};
use crate::words::words;
use text::keys::checked as k;

/// Faults that are kept of a file, and as many of what is odd; common practice, no source.
pub(crate) const KEPT_MAX: usize = 50;

/// Faults and oddities in the order in which they were found, each with its sheet's number.
#[derive(Debug, Default)]
pub(crate) struct Gathered {
    kept: Vec<(usize, Fault)>,
    /// How many of them are wrong, and odd, without those that are told whatever their number.
    counts: [usize; 2],
}

impl Gathered {
    /// Keeps a fault, or only counts it where enough of its weight are kept.
    pub(crate) fn push(&mut self, sheet: usize, fault: impl FnOnce() -> Fault, weight: Weight) {
        let count = &mut self.counts[usize::from(weight == Weight::Odd)];
        *count += 1;
        if *count <= KEPT_MAX {
            self.kept.push((sheet, fault()));
        }
    }

    /// Keeps a fault whatever else is kept: one that stops the reading is told for certain.
    pub(crate) fn surely(&mut self, sheet: usize, fault: Fault) {
        self.kept.push((sheet, fault));
    }

    /// How many faults were found, those that are only counted too.
    pub(crate) fn wrong_count(&self) -> usize {
        self.counts[0]
    }

    /// Whether anything was found for which the file is refused.
    pub(crate) fn stops(&self) -> bool {
        self.counts[0] > 0 || self.kept.iter().any(|(_, fault)| fault.stops())
    }

    /// All that was kept, by sheet, row and column, and last how many more there are.
    pub(crate) fn close(mut self, file: &str) -> Vec<Fault> {
        self.kept
            .sort_by_key(|(sheet, fault)| (*sheet, fault.place()));
        let mut faults: Vec<Fault> = self.kept.into_iter().map(|(_, fault)| fault).collect();
        for (count, weight) in self.counts.into_iter().zip([Weight::Wrong, Weight::Odd]) {
            let more = count.saturating_sub(KEPT_MAX);
            if more > 0 {
                faults.push(rest(file, more, weight));
            }
        }
        faults
    }
}

/// Keeps the first `most` of a file's faults and counts the others in one at the end.
pub fn shorten(file: &str, faults: &mut Vec<Fault>, most: usize) {
    if faults.len() <= most + 1 {
        return;
    }
    let cut = faults.split_off(most);
    let stops = faults.iter().chain(&cut).any(Fault::stops);
    let weight = if stops { Weight::Wrong } else { Weight::Odd };
    faults.push(rest(file, crate::fault::count(&cut), weight));
}

/// Stands for the faults that were counted alone.
fn rest(file: &str, more: usize, weight: Weight) -> Fault {
    let wrong = match weight {
        Weight::Wrong => Wrong::plain(
            words!(k::FAULTS_MORE_WHICH_ARE_NOT, more),
            words!(k::MEND_THESE_FIRST_THEN_CHECK),
        ),
        Weight::Odd => Wrong::plain(
            words!(k::MORE_OF_THIS_KIND_WHICH, more),
            words!(k::LOOK_AT_THESE_FIRST),
        ),
    };
    Fault {
        weight,
        stands_for: more,
        ..Fault::whole(file, wrong)
    }
}
