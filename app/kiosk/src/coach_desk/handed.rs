//! Plans that coaches chose in their browsers: read as a stick's are, shown, taken by a second act.
//! They lie in memory alone, so that a power cut leaves what stood.
//!
//! Refuses: more than a few at once; taking what was read against another gym, or what would change
//! other days than those that were shown.
use crate::kiosk::Kiosk;
use crate::stick::Stick;
use domain::Gym;
use share::{Desk, Told};
use std::collections::BTreeSet;
use std::hash::{DefaultHasher, Hash as _, Hasher as _};
use std::sync::Arc;
use view::desk::{PlanFile, PlanIn, PlanInRow, StickIn};
use view::language::Said;

/// Plans that lie here at once; of more, the oldest goes.
const KEPT_MAX: usize = 4;
/// Rows of one that are shown.
const ROWS_SHOWN: usize = 400;

/// A plan that was read against a gym.
#[derive(Debug)]
pub(crate) struct Handed {
    id: String,
    stick: Stick,
    gym: Gym,
}

impl Handed {
    /// Reads it. Takes as long as it is long, and belongs on a thread of its own.
    pub(crate) fn read(file: &PlanFile, gym: Gym) -> Self {
        Self {
            id: file.id.clone(),
            stick: Stick::of_file(&file.name, &file.bytes, &gym),
            gym,
        }
    }

    /// What stands for the days of this plan; another when anybody changed one of them.
    fn mark(&self, kiosk: &Kiosk) -> String {
        let (_, rows) = self.stick.together();
        let days: BTreeSet<_> = rows.into_iter().map(|row| (row.date, row.lifter)).collect();
        let mut hasher = DefaultHasher::new();
        for day in days {
            format!("{:?}", kiosk.state().plan.get(&day)).hash(&mut hasher);
        }
        format!("{:016x}", hasher.finish())
    }
}

/// The plans that lie here, the oldest first.
#[derive(Debug, Default)]
pub(super) struct Shelf(Vec<Handed>);

impl Shelf {
    /// Lays one more out.
    pub(super) fn lay(&mut self, (kiosk, desk): (&Kiosk, &Desk), handed: Handed, shown: Shown) {
        self.0.retain(|one| one.id != handed.id);
        if self.0.len() >= KEPT_MAX {
            self.0.remove(0);
        }
        self.0.push(handed);
        self.tell(kiosk, desk, shown);
    }

    /// Takes one, whole, if it is still as it was shown.
    pub(super) fn take(
        &mut self,
        (kiosk, desk): (&mut Kiosk, &Desk),
        (id, mark): (&str, &str),
        shown: Shown,
    ) -> Told {
        let Some(at) = self.0.iter().position(|one| one.id == id) else {
            return Told::PlanGone;
        };
        let one = &self.0[at];
        if !one.stick.is_sound() {
            return Told::PlanFaults;
        }
        if one.gym != *kiosk.gym() {
            self.0.remove(at);
            self.tell(kiosk, desk, shown);
            return Told::GymChanged;
        }
        if one.mark(kiosk) != mark {
            self.tell(kiosk, desk, shown);
            return Told::DaysChanged;
        }
        let (name, rows) = one.stick.together();
        let count = rows.len();
        match kiosk.take_plan(name, rows) {
            Ok(()) => {
                self.0.remove(at);
                self.tell(kiosk, desk, shown);
                Told::TookPlan(count)
            }
            Err(error) => Told::NotTaken(crate::desk::said(&error)),
        }
    }

    fn tell(&self, kiosk: &Kiosk, desk: &Desk, shown: Shown) {
        let of = |one: &Handed| {
            let (_, rows) = one.stick.together();
            let row = |row: &domain::Prescription| {
                let lifter = one.gym.lifters.iter().find(|l| l.name == row.lifter);
                let unit = lifter.map(|lifter| lifter.unit).unwrap_or_default();
                PlanInRow {
                    date: row.date,
                    lifter: row.lifter.clone(),
                    lift: row.lift.clone(),
                    work: Said::of(|say| say.groups(row, unit)),
                    note: row.note.clone(),
                }
            };
            Arc::new(PlanIn {
                read: shown(kiosk, &one.id, &one.stick),
                mark: one.mark(kiosk),
                rows: rows.iter().take(ROWS_SHOWN).map(row).collect(),
                rows_count: rows.len(),
            })
        };
        let all: Vec<_> = self.0.iter().map(of).collect();
        desk.lay_out(|counter| counter.handed = all);
    }
}

/// How a stick is shown.
pub(super) type Shown = fn(&Kiosk, &str, &Stick) -> StickIn;
