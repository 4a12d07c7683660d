//! The columns that say where and how sets are done, and the bar beside the work.
//!
//! Refuses: a column that says otherwise than the cell of the work.
use crate::fault::Wrong;
use crate::plan_reading::Reading;
use crate::plan_work::{Entry, Work};
use crate::scheme::{self, Scheme};
use crate::words::words;
use text::keys::checked as k;

/// Columns of how sets are done, and what their cells are read behind.
const LEADS: [(&str, &str); 5] = [
    ("hole", "hole"),
    ("block", "blocks"),
    ("tempo", "tempo"),
    ("hold", "pause"),
    ("gear", "gear"),
];

impl Entry<'_> {
    /// Adds what the columns say; tells one that says otherwise than the work.
    pub(crate) fn manners(&self, reading: &mut Reading<'_, '_>, work: &mut Work) {
        let of_lift = self.own.manner;
        let mut groups = work.groups.iter();
        if groups.any(|group| group.manner.clash(&of_lift).is_some()) {
            let at = reading.place("lift").unwrap_or(0);
            reading.wrong(at, otherwise());
        }
        for group in &mut work.groups {
            group.manner = group.manner.or(of_lift);
        }
        for (key, lead) in LEADS {
            let Some(at) = self.place(reading, key) else {
                continue;
            };
            if let Some(wrong) = reading.typed(at, reading.row.text(at)) {
                reading.wrong(at, wrong);
                continue;
            }
            let Some(said) = reading.cell(key, Some(at), |text| scheme::manner(text, lead)) else {
                continue;
            };
            if work
                .groups
                .iter()
                .any(|group| group.manner.clash(&said).is_some())
            {
                reading.wrong(at, otherwise());
            }
            for group in &mut work.groups {
                group.manner = group.manner.or(said);
            }
        }
        let at = self.place(reading, "bar");
        let against = reading.beside.against;
        if let Some(bar) = reading.cell("bar", at, |text| against.bar(text)) {
            if work.bar.as_ref().is_some_and(|own| *own != bar) {
                reading.wrong(at.unwrap_or(0), otherwise());
            }
            work.bar = Some(bar);
        }
    }
}

fn otherwise() -> Wrong {
    let what = words!(k::A_CELL_THAT_SAYS_OTHERWISE);
    Wrong::plain(what, words!(k::KEEP_ONE_OF_THE_TWO_WORDS))
}

/// The bar of a scheme: as it was named, or where a remark is the name of one of the gym's bars.
/// `None` where it cannot be told, which is.
#[expect(
    clippy::option_option,
    reason = "no bar and an unknown one are told apart"
)]
pub(crate) fn bar_of(
    reading: &mut Reading<'_, '_>,
    at: usize,
    scheme: &mut Scheme,
) -> Option<Option<String>> {
    let against = reading.beside.against;
    if let Some(text) = &scheme.bar {
        let bar = against.bar(text).map_err(|wrong| reading.wrong(at, wrong));
        return bar.ok().map(Some);
    }
    let named = |note: &String| against.bar_in(note);
    let Some(nth) = scheme.notes.iter().position(|note| named(note).is_some()) else {
        return Some(None);
    };
    let note = scheme.notes.remove(nth);
    let bar = match against.bar_in(&note) {
        Some(bar) if scheme.groups.len() == 1 => bar,
        Some(_) => Err(scheme::two_bars(&note)),
        None => return Some(None),
    };
    bar.map(Some).map_err(|wrong| reading.wrong(at, wrong)).ok()
}
