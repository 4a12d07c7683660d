//! Sums of the record for a coach: who there is, weeks of each lift, the plan against what was
//! done.
//!
//! Refuses: judging; it adds up what stands.
use super::load_of::wish;
use super::{RecordError, RecordReader};
use domain::prescription::LoadWish;
use domain::{Mass, MassUnit};
use rusqlite::{Params, Row};

/// A lifter of the record.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct LifterSum {
    /// Name.
    pub lifter: String,
    /// Sets that stand.
    pub sets: u64,
    /// The latest day with one, ISO 8601.
    pub last: String,
}

/// The work sets of one lift of a lifter in one week.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct WeekRow {
    /// What.
    pub lift: String,
    /// The week's Monday, ISO 8601.
    pub week: String,
    /// The lifter's unit.
    pub unit: MassUnit,
    /// The heaviest work set with one rep or more.
    pub heaviest: Mass,
    /// Work sets.
    pub sets: u32,
    /// Their reps.
    pub reps: u32,
    /// The reps that were to be done in them.
    pub planned_reps: u32,
    /// Work sets in which the back moved.
    pub moved: u32,
}

/// One row of the plan, or a lift that a programme filled a day with, and the work sets that were
/// done of it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct PlannedRow {
    /// The day, ISO 8601.
    pub date: String,
    /// Who.
    pub lifter: String,
    /// What.
    pub lift: String,
    /// Work sets asked.
    pub sets: u32,
    /// Reps asked of each.
    pub reps: u32,
    /// The load asked; what is due where a lift by a programme recorded none.
    pub load: LoadWish,
    /// The coach's words.
    pub note: String,
    /// The lifter's unit, where the record knows it.
    pub unit: Option<MassUnit>,
    /// Work sets done.
    pub done_sets: u32,
    /// Their reps.
    pub done_reps: u32,
    /// Their heaviest load.
    pub done_load: Option<Mass>,
    /// Work sets in which the back moved.
    pub moved: u32,
    /// Whether a programme filled the day, the plan being silent.
    pub by_programme: bool,
}

impl RecordReader {
    /// Every lifter with a set that stands, or a plan, by name.
    ///
    /// # Errors
    /// [`RecordError`] when the file cannot be read.
    pub fn lifters(&self) -> Result<Vec<LifterSum>, RecordError> {
        self.all(
            "SELECT lifter, count(seq), coalesce(max(date), '') FROM ( \
               SELECT lifter, seq, date FROM sets \
               UNION ALL SELECT DISTINCT lifter, NULL, NULL FROM planned) \
             GROUP BY lifter ORDER BY lifter",
            [],
            |row| {
                Ok(LifterSum {
                    lifter: row.get(0)?,
                    sets: row.get(1)?,
                    last: row.get(2)?,
                })
            },
        )
    }

    /// The weeks of each lift of `lifter` from the day `from` on, by lift and week.
    ///
    /// # Errors
    /// [`RecordError`] when the file cannot be read.
    pub fn weeks(&self, lifter: &str, from: &str) -> Result<Vec<WeekRow>, RecordError> {
        self.all(
            "SELECT lift, date(date, '-6 days', 'weekday 1') AS week, max(unit), \
                    max(CASE WHEN reps > 0 THEN load_ng ELSE 0 END), count(*), sum(reps), \
                    sum(planned_reps), sum(back_moved_at IS NOT NULL) \
             FROM sets WHERE lifter = ?1 AND date >= ?2 AND kind = 'work' \
             GROUP BY lift, week ORDER BY lift, week",
            [lifter, from],
            |row| {
                Ok(WeekRow {
                    lift: row.get(0)?,
                    week: row.get(1)?,
                    unit: unit(&row.get::<_, String>(2)?),
                    heaviest: Mass::from_ng(row.get(3)?),
                    sets: row.get(4)?,
                    reps: row.get(5)?,
                    planned_reps: row.get(6)?,
                    moved: row.get(7)?,
                })
            },
        )
    }

    /// The plan of the days from `first` to `last` against what was done, of one lifter or of
    /// all, latest day first, at most `most` rows. Lifts that were begun on days that the plan did
    /// not have are among them, as a programme's: asked is what their sheets asked.
    ///
    /// # Errors
    /// [`RecordError`] when the file cannot be read.
    pub fn planned(
        &self,
        (first, last): (&str, &str),
        lifter: Option<&str>,
        most: u32,
    ) -> Result<Vec<PlannedRow>, RecordError> {
        self.all(
            "WITH p AS (\
               SELECT date, lifter, lift, sets, reps, load_of, load_ng, share, note, id, \
                      0 AS filled \
               FROM planned \
               WHERE date BETWEEN ?1 AND ?2 AND (?3 IS NULL OR lifter = ?3) UNION ALL \
               SELECT date, lifter, lift, \
                      (SELECT count(*) FROM rungs WHERE lift_no = no AND kind = 'work'), \
                      (SELECT max(reps) FROM rungs WHERE lift_no = no AND kind = 'work'), \
                      'mass', asked_ng, NULL, note, max(no), 1 \
               FROM lifts AS l \
               WHERE by_plan = 0 AND date BETWEEN ?1 AND ?2 AND (?3 IS NULL OR lifter = ?3) \
                 AND NOT EXISTS (SELECT 1 FROM planned AS q \
                      WHERE q.date = l.date AND q.lifter = l.lifter AND q.lift = l.lift) \
               GROUP BY date, lifter, lift) \
             SELECT p.date, p.lifter, p.lift, p.sets, coalesce(p.reps, 0), p.load_of, p.load_ng, \
                    p.share, p.note, \
                    (SELECT unit FROM lifts WHERE lifter = p.lifter ORDER BY no DESC LIMIT 1), \
                    count(s.seq), coalesce(sum(s.reps), 0), max(s.load_ng), \
                    coalesce(sum(s.back_moved_at IS NOT NULL AND s.seq IS NOT NULL), 0), filled \
             FROM p LEFT JOIN sets s ON s.date = p.date AND s.lifter = p.lifter \
                  AND s.lift = p.lift AND s.kind = 'work' \
             GROUP BY filled, p.id ORDER BY p.date DESC, p.lifter, filled, p.id LIMIT ?4",
            (first, last, lifter, most),
            planned_row,
        )
    }

    /// The last day before `before`, or the last of all, that the plan or a programme had.
    ///
    /// # Errors
    /// [`RecordError`] when the file cannot be read.
    pub fn last_planned(&self, before: Option<&str>) -> Result<Option<String>, RecordError> {
        let found = self.all(
            "SELECT max(day) FROM (\
               SELECT max(date) AS day FROM planned WHERE ?1 IS NULL OR date < ?1 UNION ALL \
               SELECT max(date) FROM lifts WHERE by_plan = 0 AND (?1 IS NULL OR date < ?1))",
            [before],
            |row| row.get(0),
        )?;
        Ok(found.into_iter().next().flatten())
    }

    fn all<T>(
        &self,
        sql: &str,
        params: impl Params,
        read: impl FnMut(&Row<'_>) -> rusqlite::Result<T>,
    ) -> Result<Vec<T>, RecordError> {
        self.file
            .prepare(sql)
            .and_then(|mut query| query.query_map(params, read).and_then(Iterator::collect))
            .map_err(|source| self.failed(source))
    }
}

fn planned_row(row: &Row<'_>) -> rusqlite::Result<PlannedRow> {
    Ok(PlannedRow {
        date: row.get(0)?,
        lifter: row.get(1)?,
        lift: row.get(2)?,
        sets: row.get(3)?,
        reps: row.get(4)?,
        load: wish(
            &row.get::<_, String>(5)?,
            row.get::<_, Option<i64>>(6)?.map(Mass::from_ng),
            row.get(7)?,
        ),
        note: row.get(8)?,
        unit: row.get::<_, Option<String>>(9)?.map(|word| unit(&word)),
        done_sets: row.get(10)?,
        done_reps: row.get(11)?,
        done_load: row.get::<_, Option<i64>>(12)?.map(Mass::from_ng),
        moved: row.get(13)?,
        by_programme: row.get(14)?,
    })
}

fn unit(word: &str) -> MassUnit {
    if word == MassUnit::Lb.word() {
        MassUnit::Lb
    } else {
        MassUnit::Kg
    }
}
