//! A header of one row or several to a table: what each column holds, and for whom and when.
//!
//! Refuses: a column twice for the same rows, headers that are nearly one that is missing.
use crate::against::Against;
use crate::cells::SheetRow;
use crate::columns::{self, ColumnUnit};
use crate::facts::{self, Facts};
use crate::fault::{Wrong, quote};
use crate::fields::{COLUMNS, Need};
use crate::header::{corner, headed_sets};
use crate::plan_faults::PlanFaults;
use crate::words::words;
use std::collections::{BTreeMap, BTreeSet};
use text::keys::checked as k;

/// A column of a table.
#[derive(Debug, Clone, Default)]
pub(crate) struct Column {
    /// What it holds, where its header says so.
    pub(crate) key: Option<&'static str>,
    /// The unit of bare loads in it.
    pub(crate) unit: Option<ColumnUnit>,
    /// What holds for its cells alone: a week, a day, a lifter, a lift.
    pub(crate) facts: Facts,
    /// Sets and reps of its cells, where the header says them: they hold loads alone.
    pub(crate) scheme: Option<String>,
    /// Its header as written.
    pub(crate) header: String,
    /// Whether it is passed over, which was told.
    pub(crate) ignored: bool,
}

impl Column {
    /// Whether it holds one set, as "Set 1" does.
    pub(crate) fn is_set(&self) -> bool {
        self.key == Some("scheme") && columns::set_number(&self.header).is_some()
    }
}

/// A table under its header.
#[derive(Debug, Clone, Default)]
pub(crate) struct Table {
    pub(crate) columns: Vec<Column>,
    /// Columns of each set of facts, in their order; without any, all columns serve every row.
    pub(crate) groups: Vec<(Facts, Vec<usize>)>,
    /// Row of the header, from 1.
    pub(crate) header: usize,
    /// What stands between the cells of a text.
    pub(crate) separator: Option<char>,
    /// Columns of days beside the first one.
    pub(crate) days_again: Vec<usize>,
    /// What its corner says of all rows.
    pub(crate) corner: Option<Facts>,
    /// Whether a header could not be read, so that what is missing proves nothing.
    pub(crate) failed: bool,
    /// Columns that a row without was told for, once.
    pub(crate) told: BTreeSet<&'static str>,
    /// What stood last in the columns that people write once for several rows.
    pub(crate) last: BTreeMap<&'static str, String>,
    /// Columns in which the same is written row by row, so that an empty cell is a gap.
    pub(crate) repeats: BTreeSet<&'static str>,
}

/// Columns of which an empty cell may mean "as above".
pub(crate) const DITTO: [&str; 6] = ["date", "week", "weekday", "lifter", "lift", "track"];

impl Table {
    /// A table without a header: each cell says what it is.
    pub(crate) fn free(first: &SheetRow<'_>, separator: Option<char>, width: usize) -> Self {
        Self {
            columns: vec![Column::default(); width],
            header: first.number,
            separator,
            ..Self::default()
        }
    }

    /// Reads the header rows, of which the lowest names the columns.
    pub(crate) fn read(
        rows: &[&SheetRow<'_>],
        separator: Option<char>,
        hidden: u64,
        against: &Against<'_>,
        faults: &mut PlanFaults<'_>,
    ) -> Self {
        let width = rows.iter().map(|row| row.cells.len()).max().unwrap_or(0);
        let mut table = Self {
            columns: vec![Column::default(); width],
            header: rows.last().map_or(0, |row| row.number),
            separator,
            ..Self::default()
        };
        for (level, row) in rows.iter().enumerate() {
            table.take_row(row, level + 1 < rows.len(), hidden, against, faults);
        }
        table.group(faults);
        table
    }

    fn take_row(
        &mut self,
        row: &SheetRow<'_>,
        is_upper: bool,
        hidden: u64,
        against: &Against<'_>,
        faults: &mut PlanFaults<'_>,
    ) {
        // Above others a header reaches to the right as far as the next one.
        let mut reaching = Facts::default();
        let corner = corner(row, against).filter(|_| !is_upper);
        self.corner = corner.as_ref().map(|(_, facts)| facts.clone());
        for at in 0..self.columns.len() {
            let text = row.text(at).to_owned();
            if corner.as_ref().is_some_and(|(corner, _)| *corner == at) {
                continue;
            }
            if at < 64 && hidden & (1 << at) != 0 {
                self.columns[at].ignored = true;
                continue;
            }
            if text.is_empty() {
                if is_upper {
                    self.columns[at].facts = reaching.or(&self.columns[at].facts);
                }
                continue;
            }
            self.columns[at].header.clone_from(&text);
            if let Some((key, unit)) = columns::column(&text) {
                reaching = Facts::default();
                self.columns[at].key = Some(key);
                self.columns[at].unit = unit;
                continue;
            }
            match facts::read(&text, against) {
                Ok(Some(facts)) => {
                    reaching = if is_upper {
                        facts.clone()
                    } else {
                        Facts::default()
                    };
                    self.columns[at].facts = facts.or(&self.columns[at].facts);
                }
                Ok(None) => {
                    reaching = Facts::default();
                    if let Some((facts, scheme)) = headed_sets(&text, against) {
                        self.columns[at].facts = facts.or(&self.columns[at].facts);
                        self.columns[at].scheme = Some(scheme);
                    }
                }
                Err(wrong) => {
                    self.failed = true;
                    self.columns[at].ignored = true;
                    faults.wrong(row.number, Some((at, "")), wrong);
                }
            }
        }
    }

    /// Puts the columns of the same facts together, and tells what stands twice or is misspelt.
    fn group(&mut self, faults: &mut PlanFaults<'_>) {
        for at in 0..self.columns.len() {
            let column = self.columns[at].clone();
            if column.ignored || column.header.is_empty() {
                continue;
            }
            if column.facts.kinds() != 0 {
                match self
                    .groups
                    .iter_mut()
                    .find(|(facts, _)| *facts == column.facts)
                {
                    Some((_, columns)) => columns.push(at),
                    None => self.groups.push((column.facts.clone(), vec![at])),
                }
            }
            let Some(key) = column.key else {
                self.misspelt(at, faults);
                continue;
            };
            let before = self.columns[..at].iter().position(|other| {
                let alike = other.key == Some(key) && other.facts == column.facts;
                // Kilos beside percent or pounds: each row says which of the two it goes by.
                let beside =
                    key == "load" && other.unit != column.unit || other.is_set() && column.is_set();
                alike && !beside && !other.ignored
            });
            if before.is_some() && key == "date" {
                // The rows below say whether it is the day of the week, or of a track.
                self.columns[at].key = None;
                self.days_again.push(at);
            } else if let Some(first) = before {
                let what = words!(k::THE_COLUMN_AGAIN_AFTER_COLUMN, quote(key), first + 1);
                let wrong = Wrong::value(&column.header, &what, words!(k::KEEP_ONE_OF_THEM));
                faults.wrong(self.header, Some((at, "")), wrong);
                self.columns[at].ignored = true;
            }
        }
    }

    /// Tells a header that is nearly one that the table lacks; others belong to the note.
    fn misspelt(&mut self, at: usize, faults: &mut PlanFaults<'_>) {
        let header = &self.columns[at].header;
        if self.columns[at].facts != Facts::default() {
            return;
        }
        let near = columns::near(header).filter(|key| !self.has(key));
        if near.is_some() {
            let wrong = Wrong::value(
                header,
                words!(k::A_COLUMN_THAT_A_PLAN),
                columns::meant(header),
            );
            faults.wrong(self.header, Some((at, "")), wrong);
            self.columns[at].ignored = true;
        }
    }

    /// Whether any column holds something.
    pub(crate) fn has(&self, key: &str) -> bool {
        let mut columns = self.columns.iter();
        columns.any(|column| column.key == Some(key) && !column.ignored)
    }

    /// Whether columns say for whom rows are.
    pub(crate) fn names_lifters(&self) -> bool {
        self.has("lifter") || self.groups.iter().any(|(facts, _)| facts.lifter.is_some())
    }

    /// Whether columns are there for certain weeks, days, people or lifts alone.
    pub(crate) fn is_across(&self) -> bool {
        !self.groups.is_empty()
    }

    /// Whether it has neither header nor columns of its own.
    pub(crate) fn is_free(&self) -> bool {
        self.columns.iter().all(|column| column.header.is_empty())
    }

    /// Tells the columns that every row needs and that stand nowhere.
    pub(crate) fn tell_missing(&mut self, beside: &Facts, faults: &mut PlanFaults<'_>) {
        if self.failed {
            return;
        }
        let across = |kinds: fn(&Facts) -> bool| self.groups.iter().any(|(facts, _)| kinds(facts));
        for column in COLUMNS.iter().filter(|c| c.field.need == Need::Always) {
            let key = column.field.key;
            let said = match key {
                "date" => {
                    self.has("week")
                        || self.has("weekday")
                        || beside.date.is_some()
                        || beside.weekday.is_some()
                        || across(|facts| {
                            facts.date.is_some()
                                || facts.week.is_some()
                                || facts.weekday.is_some()
                                || facts.starts.is_some()
                        })
                }
                "lifter" => beside.lifter.is_some() || across(|facts| facts.lifter.is_some()),
                "lift" => {
                    beside.lift.is_some()
                        || across(|facts| facts.lift.is_some())
                        || self.has("scheme")
                        || self.is_across()
                }
                "load" => {
                    self.has("effort")
                        || self.has("reserve")
                        || self.has("scheme")
                        || self.is_across()
                }
                _ => self.has("scheme") || self.is_across(),
            };
            if !self.has(key) && !said {
                self.told.insert(key);
                let key = quote(key);
                let wrong = Wrong::plain(
                    words!(k::A_HEADER_WITHOUT, &key),
                    words!(k::ADD_THE_COLUMN, key),
                );
                // Of tables side by side, which one.
                let first = self.columns.iter().position(|c| !c.header.is_empty());
                let first = first.filter(|at| *at > 0).map(|at| (at, ""));
                faults.wrong(self.header, first, wrong);
            }
        }
    }

    /// Looks at the rows below for columns in which the same is written again and again.
    pub(crate) fn learn(&mut self, rows: &[&SheetRow<'_>]) {
        for (at, column) in self.columns.iter().enumerate() {
            let Some(key) = column.key.filter(|key| DITTO.contains(key)) else {
                continue;
            };
            let texts = rows
                .iter()
                .map(|row| if row.is_spread(at) { "" } else { row.text(at) });
            let texts: Vec<&str> = texts.collect();
            if texts
                .windows(2)
                .any(|two| !two[0].is_empty() && two[0] == two[1])
            {
                self.repeats.insert(key);
            }
        }
    }
}
