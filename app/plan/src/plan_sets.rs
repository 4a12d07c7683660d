//! Sets that each have a column of their own, and sets and reps that stand once for a whole row.
//!
//! Refuses: to tell a load from reps where either could stand first.
use crate::fault::Wrong;
use crate::plan_reading::Reading;
use crate::plan_work::{Entry, Work};
use crate::set_group::{SetGroup, share_text};
use crate::words::words;
use std::borrow::Cow;
use text::keys::checked as k;

/// Most reps of a set; a larger number is a load.
const REPS_MAX: u32 = 50;

impl Entry<'_> {
    /// Sets and reps that stand once for the loads of several lifters, weeks or days.
    pub(crate) fn for_all(&self, reading: &Reading<'_, '_>, at: usize) -> Option<String> {
        let scheme = reading.place("scheme").filter(|place| *place != at)?;
        let text = reading.row.text(scheme);
        (self.columns.contains(&at) && !text.is_empty()).then(|| text.to_owned())
    }
}

/// The columns of a scheme for everybody: one, or one for each set.
pub(crate) fn of_everybody(reading: &Reading<'_, '_>) -> Vec<usize> {
    let Some(first) = reading.place("scheme") else {
        return Vec::new();
    };
    let columns = reading.table.columns.iter().enumerate();
    let sets = columns.filter(|(_, c)| c.is_set() && c.facts.kinds() == 0 && !c.ignored);
    let sets: Vec<usize> = sets.map(|(at, _)| at).collect();
    if sets.is_empty() { vec![first] } else { sets }
}

/// A cell of one set: "140 x 5" and "5 x 140" are a load and reps, where only one can be reps.
pub(crate) fn one_set<'t>(text: &'t str, is_set: bool) -> Cow<'t, str> {
    let parts = text
        .split_once(['x', 'X', '\u{d7}', '*'])
        .filter(|_| is_set);
    let numbers = parts.and_then(|(a, b)| {
        let (a, b) = (a.trim(), b.trim());
        let large = |text: &str| {
            let whole = text.split(['.', ',']).next().unwrap_or_default();
            whole.parse::<u32>().is_ok_and(|number| number > REPS_MAX)
        };
        match (large(a), large(b)) {
            (true, false) => Some((a, b)),
            (false, true) => Some((b, a)),
            (true, true) | (false, false) => None,
        }
    });
    match numbers {
        Some((load, reps)) => Cow::Owned(format!("1x{reps} @ {load}")),
        None => Cow::Borrowed(text),
    }
}

/// The sets of a row as one piece of work, alike ones counted together.
pub(crate) fn joined(works: Vec<Work>) -> Vec<Work> {
    let mut works = works.into_iter();
    let Some(mut whole) = works.next() else {
        return Vec::new();
    };
    for mut work in works {
        for group in std::mem::take(&mut work.groups) {
            let alike = |last: &&mut SetGroup| {
                let sets = last.sets;
                SetGroup {
                    sets,
                    ..group.clone()
                } == **last
            };
            match whole.groups.last_mut().filter(alike) {
                Some(last) => last.sets = last.sets.saturating_add(group.sets),
                None => whole.groups.push(group),
            }
        }
        whole.notes.append(&mut work.notes);
        whole.bar = whole.bar.take().or(work.bar);
        whole.ladder = whole.ladder.take().or(work.ladder);
    }
    vec![whole]
}

/// A share that nothing says what it is of, after sets by effort.
pub(crate) fn of_what(text: &str, share: u32) -> Wrong {
    let share = share_text(share);
    let what = words!(k::TAKEN_AS_A_SHARE_OF, share.as_str());
    let right = words!(k::WRITE_OF_TOP_SET_WHERE, share.as_str());
    Wrong::value(text, what, right)
}
