//! Sets that stand in a row each: whether a column of sets counts them, or numbers them.
//!
//! Refuses: to guess which; rows of 1, 2 and 3 sets are rarer than sets 1, 2 and 3.
use crate::fault::{Wrong, quote};
use crate::nearest::squeeze;
use crate::set_group::SetGroup;
use crate::words::words;
use text::keys::checked as k;

/// Rows of one day, lifter and lift so far that hold one set group each, whose sets run from 1 on.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub(crate) struct SetNumbers(u8);

impl SetNumbers {
    /// The first row of a day, lifter and lift under a header of sets, where there is one.
    pub(crate) fn begin(header: Option<&str>, groups: &[SetGroup]) -> Self {
        let mut numbers = Self::default();
        if let ([group], Some(_)) = (groups, header) {
            numbers.0 = u8::from(group.sets == 1);
        }
        numbers
    }

    /// One more row below it.
    ///
    /// # Errors
    /// Sets that may be numbers: three rows that run from 1, or two where the header says "set",
    /// or whose reps and load are the same.
    pub(crate) fn add(
        &mut self,
        header: Option<&str>,
        (before, groups): (&[SetGroup], &[SetGroup]),
    ) -> Result<(), Wrong> {
        let (Some(header), [group], true) = (header, groups, self.0 > 0) else {
            self.0 = 0;
            return Ok(());
        };
        if group.sets != self.0 + 1 {
            self.0 = 0;
            return Ok(());
        }
        self.0 += 1;
        let one = ["set", "satz"].contains(&squeeze(header).as_str());
        let alike = |last: &SetGroup| (last.reps, last.load) == (group.reps, group.load);
        let told = match self.0 {
            2 => one || before.last().is_some_and(alike),
            3 => {
                !(one
                    || before.first().is_some_and(|first| {
                        before.get(1).is_some_and(|second| {
                            (first.reps, first.load) == (second.reps, second.load)
                        })
                    }))
            }
            // It was told when it began to look so.
            _ => false,
        };
        if !told {
            return Ok(());
        }
        let what = words!(k::RISING_FROM_1_ROW_BY, quote(header));
        let right = words!(k::WRITE_ALIKE_SETS_IN_ONE);
        Err(Wrong::plain(what, right))
    }
}
