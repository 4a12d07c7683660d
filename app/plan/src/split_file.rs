//! When to split the deadlift, in programme.toml. Refuses: a trend from too few outings, a day
//! that is none.
use crate::coach_names::Names;
use crate::date::date;
use crate::fields;
use crate::lifter_file::loads;
use crate::quantity::{mass, percent};
use crate::toml_doc::Doc;
use crate::toml_entry::Entry;
use domain::programme::SplitLine;
use domain::split::OUTINGS_LEAST;

/// Most lines of a gym.
const SPLITS_MAX: usize = 500;

/// Reads all, in the order of the file.
pub(crate) fn read(doc: &mut Doc<'_>, top: &Entry<'_>, against: &Names) -> Vec<SplitLine> {
    let entries = top.entries(doc, "split", SPLITS_MAX, &fields::SPLIT);
    let least = u8::try_from(OUTINGS_LEAST).unwrap_or(u8::MAX);
    let mut lines = Vec::new();
    for entry in &entries {
        lines.push(SplitLine {
            lifter: entry.text(doc, "lifter", |text| against.lifters.find(text)),
            from: entry.text(doc, "from", |text| {
                mass(text, &loads()).map(|(mass, _)| mass)
            }),
            outings: entry.whole(doc, "outings", &(least..=50)),
            slow: entry.text(doc, "slow", |text| percent(text, &(0..=10_000))),
            troubles: entry.whole(doc, "troubles", &(0..=50)),
            test: entry.text(doc, "test", date),
            back_days: entry.whole(doc, "back_days", &(1..=120)),
        });
    }
    lines
}
