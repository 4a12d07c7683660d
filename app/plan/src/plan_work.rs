//! What a row asks for: its scheme, or its columns of sets, reps and load, for each set of columns.
//!
//! Refuses: numbers under headers that nobody knows, days and times where reps are meant.
use crate::cells::CellKind;
use crate::columns::ColumnUnit;
use crate::facts::Facts;
use crate::fault::Wrong;
use crate::header::is_scheme;
use crate::plan_count::{reps, sets};
use crate::plan_extra::{extras, is_nothing, segments};
use crate::plan_load;
use crate::plan_manner::bar_of;
use crate::plan_reading::{Own, Reading};
use crate::plan_sets::{joined, of_everybody, of_what, one_set};
use crate::plan_time::{rest_of_text, rest_of_time};
use crate::quantity::whole;
use crate::scheme::{self, Bare, spread};
use crate::set_group::{LoadAsk, PlanRow, Reps, SetGroup};
use crate::table::Column;
use crate::words::words;
use domain::prescription::Role;
use domain::{MassUnit, manner::Manner};
use text::keys::checked as k;

/// Longest note, in characters.
pub(crate) const NOTE_MAX: usize = 200;

/// The work of one set of columns.
#[derive(Debug, Clone, Default)]
pub(crate) struct Work {
    pub(crate) groups: Vec<SetGroup>,
    /// The bar, where one is written.
    pub(crate) bar: Option<String>,
    pub(crate) ladder: Option<String>,
    pub(crate) notes: Vec<String>,
    /// The lift, where the cell itself says it.
    lift: Option<String>,
    pub(crate) at: Option<usize>,
}

/// Reads the work of a row for each set of columns.
pub(crate) fn read(reading: &mut Reading<'_, '_>, own: &Own) -> Vec<PlanRow> {
    let across = reading.table.groups.clone();
    let across = if across.is_empty() {
        vec![(Facts::default(), Vec::new())]
    } else {
        across
    };
    let mut rows = Vec::new();
    let (mut notes, extra_failed) = extras(reading);
    let everybody = !reading.table.is_across();
    for (facts, columns) in across {
        let filled = columns.iter().any(|at| !reading.row.text(*at).is_empty());
        if !everybody && !filled {
            continue;
        }
        let entry = Entry {
            facts,
            columns,
            own,
        };
        entry.read(reading, &mut notes, extra_failed, &mut rows);
    }
    rows
}

/// One row's work under one set of columns.
pub(crate) struct Entry<'o> {
    facts: Facts,
    pub(crate) columns: Vec<usize>,
    pub(crate) own: &'o Own,
}

impl Entry<'_> {
    /// Where a column stands here, else where it stands for everybody.
    pub(crate) fn place(&self, reading: &Reading<'_, '_>, key: &str) -> Option<usize> {
        let here = |at: &&usize| {
            let column = &reading.table.columns[**at];
            column.key == Some(key) && !column.ignored
        };
        self.columns
            .iter()
            .find(here)
            .copied()
            .or_else(|| reading.place(key))
    }

    fn read(
        &self,
        reading: &mut Reading<'_, '_>,
        notes: &mut [String],
        failed: bool,
        rows: &mut Vec<PlanRow>,
    ) {
        let row_lifters = &self.own.lifters;
        let context = reading.beside.context.clone();
        let own = &self.own.facts;
        if own.contradicts(&self.facts) {
            let wrong = Wrong::plain(
                words!(k::A_ROW_THAT_SAYS_OTHERWISE),
                words!(k::KEEP_ONE_OF_THE_TWO_WORDS),
            );
            reading.wrong(self.columns.first().copied().unwrap_or(0), wrong);
            return;
        }
        let facts = own.or(&self.facts).or(&context);
        if !self.agrees(reading, &context, &facts) {
            return;
        }
        let lifters = match (row_lifters.as_slice(), &facts.lifter) {
            ([], Some(lifter)) => vec![lifter.clone()],
            (lifters, _) => lifters.to_vec(),
        };
        let unit = lifters
            .first()
            .and_then(|lifter| reading.beside.against.unit_of(lifter));
        let mut of = facts.clone();
        of.lifter = lifters.first().cloned();
        let works = self.works(reading, &of, unit);
        if works.as_ref().is_some_and(Vec::is_empty) {
            return;
        }
        let date = reading.day(&facts, self.own);
        if lifters.is_empty() {
            reading.tell_nothing("lifter", self.own);
        }
        let says_lift = |work: &Work| work.lift.is_some();
        if facts.lift.is_none()
            && !works
                .as_ref()
                .is_some_and(|works| works.iter().all(says_lift))
        {
            reading.tell_nothing("lift", self.own);
        }
        for work in works.unwrap_or_default() {
            let lift = work.lift.clone().or_else(|| facts.lift.clone());
            let failed = failed || !self.own.failed.is_empty();
            let (Some(date), Some(lift), false) = (date, lift, failed) else {
                continue;
            };
            for lifter in &lifters {
                let Some(note) = self.note(reading, notes, &work) else {
                    continue;
                };
                if !self.judge(reading, &work, (lifter, &lift, date)) || work.groups.is_empty() {
                    continue;
                }
                rows.push(PlanRow {
                    date,
                    lifter: lifter.clone(),
                    lift: lift.clone(),
                    track: facts.track,
                    groups: work.groups.clone(),
                    ladder: work.ladder.clone(),
                    bar: work.bar.clone(),
                    note,
                    from: reading.from(work.at),
                });
            }
        }
    }

    /// What the cells of work say; `None` when one cannot be read, which is told.
    fn works(
        &self,
        reading: &mut Reading<'_, '_>,
        facts: &Facts,
        unit: Option<MassUnit>,
    ) -> Option<Vec<Work>> {
        let ladder = self.place(reading, "ladder");
        let patterns = &reading.beside.against.patterns;
        let failed_before = reading.faults.told();
        let ladder = reading.cell("ladder", ladder, |text| patterns.find(text));
        let rest_at = self.place(reading, "rest");
        let kind = rest_at.map_or(CellKind::Text, |at| reading.kind(at));
        let minutes =
            rest_at.and_then(|at| reading.table.columns[at].unit) == Some(ColumnUnit("min"));
        let rest = reading.cell("rest", rest_at, |text| match kind == CellKind::Time {
            true => rest_of_time(text),
            false if minutes && text.parse::<u8>().is_ok() => rest_of_text(&format!("{text} min")),
            false => rest_of_text(text),
        });
        let effort_at = self.place(reading, "effort");
        let reserve_at = self.place(reading, "reserve");
        let effort = reading.cell("effort", effort_at, |text| scheme::effort(text, false));
        let reserve = reading.cell("reserve", reserve_at, |text| scheme::effort(text, true));
        let known = reading.beside.against.gym.is_some();
        let bare = |column: Option<ColumnUnit>| match (column, facts.unit.or(unit)) {
            (Some(unit), _) if unit.is_share() => Bare::Percent,
            (Some(ColumnUnit("lb")), _) => Bare::Unit(MassUnit::Lb),
            (Some(_), _) => Bare::Unit(MassUnit::Kg),
            (None, Some(unit)) => Bare::Unit(unit),
            // Whose it is was told; the load is no fault of its own.
            (None, None) if known => Bare::Unit(MassUnit::Kg),
            (None, None) => Bare::Unknown,
        };
        let schemes = self.schemes(reading);
        let load_at = self.load_place(reading, facts, unit)?;
        let works = if schemes.is_empty() {
            let needed = effort.or(reserve).is_none();
            self.of_columns(reading, &bare, load_at, needed)
                .map(|work| vec![work])
        } else {
            self.of_schemes(reading, &schemes, &bare, load_at)
        };
        let mut works = works?;
        for work in &mut works {
            for group in &mut work.groups {
                group.rest_s = group.rest_s.or(rest);
                group.effort = group.effort.or(effort).or(reserve);
            }
            work.ladder = work.ladder.take().or_else(|| ladder.clone());
            self.manners(reading, work);
        }
        (reading.faults.told() == failed_before).then_some(works)
    }

    /// The cells that hold sets and reps together.
    fn schemes(&self, reading: &Reading<'_, '_>) -> Vec<usize> {
        let holds = |at: &usize| !reading.row.text(*at).is_empty();
        let keyless = |at: &usize| {
            let column = &reading.table.columns[*at];
            matches!(column.key, None | Some("scheme")) && !column.ignored
        };
        let mut found: Vec<usize> = self
            .columns
            .iter()
            .copied()
            .filter(keyless)
            .filter(holds)
            .collect();
        if found.is_empty() {
            found.extend(of_everybody(reading).into_iter().filter(holds));
        }
        if found.is_empty() && reading.table.is_free() {
            let against = reading.beside.against;
            let is_work = |at: &usize| {
                let text = reading.row.text(*at);
                let facts = crate::facts::read(text, against);
                let says = matches!(facts, Ok(Some(facts)) if facts.kinds() != 0);
                text.contains(|c: char| c.is_ascii_digit()) && !says
            };
            found.extend((0..reading.row.cells.len()).filter(is_work).take(1));
        }
        found
    }

    fn of_schemes(
        &self,
        reading: &mut Reading<'_, '_>,
        schemes: &[usize],
        bare: &dyn Fn(Option<ColumnUnit>) -> Bare,
        load_at: Option<usize>,
    ) -> Option<Vec<Work>> {
        let load_at = load_at.filter(|at| !reading.row.text(*at).is_empty());
        let beside = scheme::Beside {
            sets: self.optional(reading, "sets", |text| whole(text, &(1..=20)))?,
            reps: self.optional(reading, "reps", reps)?.unwrap_or_default(),
            has_load: load_at.is_some(),
        };
        let loads = match load_at {
            Some(at) => {
                let (kind, unit) = (reading.kind(at), reading.table.columns[at].unit);
                let bare = bare(unit);
                Some(reading.cell("load", Some(at), |text| {
                    plan_load::read(text, kind, unit, bare)
                })?)
            }
            None => None,
        };
        let mut works = Vec::new();
        for at in schemes.iter().copied() {
            let text = reading.row.text(at).to_owned();
            if is_nothing(&text) {
                continue;
            }
            if let Some(wrong) = reading.typed(at, &text) {
                reading.wrong(at, wrong);
                return None;
            }
            let column = reading.table.columns.get(at);
            let is_set = column.is_some_and(Column::is_set);
            let text = one_set(&text, is_set).into_owned();
            let bare = bare(column.and_then(|c| c.unit));
            // Under "rack pull 1x5" a cell is the load of those sets, or a scheme of its own.
            let headed = column.and_then(|column| column.scheme.clone());
            let headed = headed.or_else(|| self.for_all(reading, at));
            let text = match headed.filter(|_| !is_scheme(&text)) {
                Some(headed) => format!("{headed} @ {}", text.trim_start_matches('@')),
                None => text,
            };
            for (lift, text) in segments(&text, reading) {
                let read = scheme::read(&text, bare, &beside);
                let mut scheme = read.map_err(|wrong| reading.wrong(at, wrong)).ok()?;
                if let Some((loads, effort)) = &loads {
                    for group in &mut scheme.groups {
                        group.load = group.load.or(loads.first().copied());
                        group.effort = group.effort.or(*effort);
                    }
                }
                if let Some(share) = scheme.share_after_effort {
                    reading.odd(at, of_what(&text, share));
                }
                let bar = bar_of(reading, at, &mut scheme)?;
                works.push(Work {
                    groups: scheme.groups,
                    bar,
                    ladder: scheme.warm.map(str::to_owned),
                    notes: scheme.notes,
                    lift,
                    at: Some(at),
                });
            }
        }
        let sets = |at: &usize| reading.table.columns.get(*at).is_some_and(Column::is_set);
        Some(if schemes.iter().all(sets) {
            joined(works)
        } else {
            works
        })
    }

    /// Reads a cell that may be empty; `None` when it cannot be read.
    #[expect(clippy::option_option, reason = "empty and unreadable are told apart")]
    fn optional<T>(
        &self,
        reading: &mut Reading<'_, '_>,
        key: &str,
        read: impl FnOnce(&str) -> Result<T, Wrong>,
    ) -> Option<Option<T>> {
        let at = self
            .place(reading, key)
            .filter(|at| !reading.row.text(*at).is_empty());
        match at {
            Some(at) => reading.cell(key, Some(at), read).map(Some),
            None => Some(None),
        }
    }

    /// Sets, reps and load in columns of their own.
    fn of_columns(
        &self,
        reading: &mut Reading<'_, '_>,
        bare: &dyn Fn(Option<ColumnUnit>) -> Bare,
        load_at: Option<usize>,
        load_needed: bool,
    ) -> Option<Work> {
        let sets_at = self.place(reading, "sets");
        let reps_at = self.place(reading, "reps");
        let sets = reading.cell("sets", sets_at, sets);
        let day = reps_at.and_then(|at| reading.typed(at, reading.row.text(at)));
        let reps = match (day, reps_at) {
            (Some(wrong), Some(at)) => {
                reading.wrong(at, wrong);
                None
            }
            _ => reading.cell("reps", reps_at, reps),
        };
        let loads = match load_at {
            Some(at) if load_needed || !reading.row.text(at).is_empty() => {
                let (kind, unit) = (reading.kind(at), reading.table.columns[at].unit);
                let bare = bare(unit);
                reading.cell("load", Some(at), |text| {
                    plan_load::read(text, kind, unit, bare)
                })
            }
            Some(_) => Some((Vec::new(), None)),
            None if !load_needed => Some((Vec::new(), None)),
            None => None,
        };
        let (sets, reps, (loads, effort)) = (sets?, reps?, loads?);
        let at = load_at.or(reps_at).unwrap_or(0);
        let spread = spread(reading.row.text(at), Some(sets), &reps, &loads);
        let rows = spread.map_err(|wrong| reading.wrong(at, wrong)).ok()?;
        let group = |(sets, reps, load): (u8, Reps, Option<LoadAsk>)| SetGroup {
            sets,
            reps,
            load,
            effort,
            rest_s: None,
            role: Role::Work,
            manner: Manner::default(),
        };
        Some(Work {
            groups: rows.into_iter().map(group).collect(),
            at: Some(at),
            ..Work::default()
        })
    }
}
