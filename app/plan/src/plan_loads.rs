//! Two columns of loads for the same sets: kilos, pounds, percent.
//!
//! Refuses: to choose between two loads that do not come to the same.
use crate::columns::ColumnUnit;
use crate::facts::Facts;
use crate::fault::Wrong;
use crate::plan_load;
use crate::plan_reading::Reading;
use crate::plan_work::Entry;
use crate::scheme::Bare;
use crate::set_group::{LoadAsk, ShareOf};
use crate::words::words;
use domain::{Mass, MassUnit};
use text::keys::checked as k;

/// A load and a share that lie no further apart than so many parts in a hundred come to the same:
/// a spreadsheet has rounded one of them. Common practice, no source.
const ALIKE: i128 = 3;

impl Entry<'_> {
    /// The column of loads that this row goes by; `None` when two say different loads, told.
    #[expect(clippy::option_option, reason = "no column and two are told apart")]
    pub(crate) fn load_place(
        &self,
        reading: &mut Reading<'_, '_>,
        facts: &Facts,
        unit: Option<MassUnit>,
    ) -> Option<Option<usize>> {
        let first = self.place(reading, "load");
        let of_load = |at: &usize| {
            let column = &reading.table.columns[*at];
            let here = self.columns.contains(at) || column.facts.kinds() == 0;
            column.key == Some("load") && here && !column.ignored
        };
        let all = (0..reading.table.columns.len()).filter(of_load);
        let filled = all.filter(|at| !reading.row.text(*at).is_empty());
        let filled: Vec<usize> = filled.collect();
        match filled.as_slice() {
            [] => Some(first),
            [one] => Some(Some(*one)),
            [one, other, ..] => {
                let mass = alike(reading, (*one, *other), facts, unit);
                if mass.is_none() {
                    let text = format!("{}, {}", reading.row.text(*one), reading.row.text(*other));
                    let what = words!(k::TWO_LOADS_FOR_THE_SAME);
                    let right = words!(k::KEEP_ONE_OF_THE_TWO_WORDS);
                    reading.wrong(*other, Wrong::value(&text, what, right));
                }
                mass.map(Some)
            }
        }
    }
}

/// Which of two columns holds the mass, where the share in the other comes to the same.
fn alike(
    reading: &Reading<'_, '_>,
    (one, other): (usize, usize),
    facts: &Facts,
    unit: Option<MassUnit>,
) -> Option<usize> {
    let read = |at: usize| {
        let column = reading.table.columns[at].unit;
        let bare = match column {
            Some(unit) if unit.is_share() => Bare::Percent,
            Some(ColumnUnit("lb")) => Bare::Unit(MassUnit::Lb),
            Some(_) => Bare::Unit(MassUnit::Kg),
            None => unit.map_or(Bare::Unknown, Bare::Unit),
        };
        let (loads, _) =
            plan_load::read(reading.row.text(at), reading.kind(at), column, bare).ok()?;
        <[LoadAsk; 1]>::try_from(loads).ok().map(|[load]| load)
    };
    let (mass, share, at) = match (read(one)?, read(other)?) {
        (LoadAsk::Mass(mass, _), LoadAsk::Share(share, ShareOf::Best)) => (mass, share, one),
        (LoadAsk::Share(share, ShareOf::Best), LoadAsk::Mass(mass, _)) => (mass, share, other),
        (LoadAsk::Mass(mass, _), LoadAsk::Mass(converted, into)) => {
            // The lifter's own unit goes before the one that it was turned into.
            let apart = i128::from((mass.ng() - converted.ng()).abs());
            let own = if unit == Some(into) { other } else { one };
            return (apart * 100 <= i128::from(mass.ng()) * ALIKE).then_some(own);
        }
        _ => return None,
    };
    let against = reading.beside.against;
    // Of a best that nobody recorded the coach alone knows; the mass is what goes on the bar.
    let Some(best) = against.best_of(facts.lifter.as_deref()?, facts.lift.as_deref()?) else {
        return Some(at);
    };
    let parts = |mass: Mass, parts: u32| i128::from(mass.ng()) * i128::from(parts);
    let apart = (parts(mass, 10_000) - parts(best, share)).abs();
    (apart * 100 <= parts(mass, 10_000) * ALIKE).then_some(at)
}
