//! The work of a row held against the gym, and the coach's words beside it.
//!
//! Refuses: loads under the lightest bar, shares of bests that nobody recorded, notes too long.
use crate::facts::Facts;
use crate::fault::Wrong;
use crate::plan_load::{held, shown};
use crate::plan_reading::Reading;
use crate::plan_work::{Entry, NOTE_MAX, Work};
use crate::set_group::LoadAsk;
use crate::wording::words as line;
use crate::words::words;
use chrono::NaiveDate;
use domain::MassUnit;
use text::keys::checked as k;

impl Entry<'_> {
    /// The coach's words with what stands beside the numbers.
    pub(crate) fn note(
        &self,
        reading: &mut Reading<'_, '_>,
        extras: &[String],
        work: &Work,
    ) -> Option<String> {
        let at = self.place(reading, "note");
        let own = reading.row.text(at.unwrap_or(usize::MAX)).to_owned();
        let own: Vec<_> = own.split_whitespace().collect();
        let own = Some(own.join(" ")).filter(|own| !own.is_empty());
        let parts = own
            .into_iter()
            .chain(work.notes.iter().cloned())
            .chain(extras.iter().cloned());
        let note: Vec<String> = parts.collect();
        if note.is_empty() {
            return Some(String::new());
        }
        let note = line(&note.join("; "), NOTE_MAX);
        note.map_err(|wrong| reading.wrong(at.or(work.at).unwrap_or(0), wrong))
            .ok()
    }

    /// A lifter's own sheet is for that lifter.
    pub(crate) fn agrees(
        &self,
        reading: &mut Reading<'_, '_>,
        context: &Facts,
        facts: &Facts,
    ) -> bool {
        let of_row = self.own.lifters.first().or(facts.lifter.as_ref());
        let (Some(sheet), Some(row)) = (&context.lifter, of_row) else {
            return true;
        };
        if sheet == row {
            return true;
        }
        let wrong = Wrong::plain(
            words!(k::ON_WHAT_IS_HEADED, row, sheet),
            words!(k::MOVE_THE_ROW_TO_A),
        );
        let at = reading.place("lifter").unwrap_or(0);
        reading.wrong(at, wrong);
        false
    }

    /// Holds the loads against the gym's bars and the lifter's bests.
    pub(crate) fn judge(
        &self,
        reading: &mut Reading<'_, '_>,
        work: &Work,
        of: (&str, &str, NaiveDate),
    ) -> bool {
        let against = reading.beside.against;
        let manners: Vec<_> = work.groups.iter().map(|group| group.manner).collect();
        if let Err(wrong) = against.fits(&manners, work.bar.as_deref(), (of.0, of.1)) {
            reading.wrong(work.at.unwrap_or(0), wrong);
            return false;
        }
        for group in &work.groups {
            let Some(load) = group.load.and_then(held) else {
                continue;
            };
            let unit = match group.load {
                Some(LoadAsk::Mass(_, unit)) => unit,
                Some(LoadAsk::Share(..) | LoadAsk::More(..) | LoadAsk::Due) | None => MassUnit::Kg,
            };
            if let Err(wrong) = against.judge(&shown(load, unit), load, of) {
                reading.wrong(work.at.unwrap_or(0), wrong);
                return false;
            }
        }
        true
    }
}
