//! One row of a plan to what it says: for whom, which lift, which day, and the cells of its work.
//!
//! Refuses: lifters, lifts and patterns that the gym does not have; gaps that could be a mistake.
use crate::cells::{CellKind, SheetRow};
use crate::date::{date, day_of_month};
use crate::facts::{self, Facts};
use crate::fault::{Wrong, quote};
use crate::plan_day::Missing;
use crate::plan_extra::is_nothing;
use crate::plan_faults::PlanFaults;
use crate::plan_names::{lift_and_manner, lifters, tracked};
use crate::plan_reading::{Beside, Own, Reading};
use crate::plan_work;
use crate::quantity::whole;
use crate::set_group::PlanRow;
use crate::table::{DITTO, Table};
use crate::weekday::weekday;
use crate::wording::name;
use crate::words::words;
use chrono::NaiveDate;
use domain::TrackName;
use std::borrow::Cow;
use text::keys::checked as k;

/// Reads one row; nothing when it has a fault, which is told.
pub(crate) fn read(
    row: &SheetRow<'_>,
    table: &mut Table,
    beside: &Beside<'_>,
    faults: &mut PlanFaults<'_>,
) -> Vec<PlanRow> {
    let mut reading = Reading {
        row,
        table,
        beside,
        faults,
    };
    if let Some((cell, wrong)) = &row.broken {
        reading.wrong(cell - 1, wrong.clone());
        return Vec::new();
    }
    if reading.slipped() {
        return Vec::new();
    }
    if reading.rests() {
        return Vec::new();
    }
    let own = reading.own();
    plan_work::read(&mut reading, &own)
}

impl Reading<'_, '_> {
    /// Whether the row says that nothing is done on its day: "off" where the lift stands, and no
    /// work behind it.
    fn rests(&mut self) -> bool {
        let Some(at) = self.place("lift").filter(|at| {
            let text = self.row.text(*at);
            !text.is_empty() && is_nothing(text)
        }) else {
            return false;
        };
        let besides = |at: usize| {
            let key = self.table.columns.get(at).and_then(|column| column.key);
            matches!(
                key,
                Some("date" | "week" | "weekday" | "lifter" | "track" | "note")
            )
        };
        let empty = |at: usize| self.row.text(at).is_empty() || is_nothing(self.row.text(at));
        let cells = 0..self.row.cells.len();
        if !cells
            .into_iter()
            .all(|other| other == at || besides(other) || empty(other))
        {
            return false;
        }
        for key in ["date", "week", "weekday", "lifter"] {
            let text = self.place(key).map(|at| self.row.text(at).to_owned());
            if let Some(text) = text.filter(|text| !text.is_empty()) {
                self.table.last.insert(key, text);
            }
        }
        true
    }

    /// The facts of the row itself.
    fn own(&mut self) -> Own {
        let mut own = Own::default();
        let filled = |reading: &Self, key: &str| {
            let at = reading.place(key);
            at.is_some_and(|at| !reading.row.text(at).is_empty() && !reading.row.is_spread(at))
        };
        let turns = ["date", "week", "weekday", "lifter"]
            .iter()
            .any(|key| filled(self, key));
        for key in DITTO {
            let Some(at) = self.place(key) else {
                continue;
            };
            let text = self.row.text(at).to_owned();
            let marked = ["\"", "''", "\u{201d}", "\u{3003}", "ditto", "dto", "dto."]
                .contains(&text.as_str());
            let text = if text.is_empty() || marked {
                let above = self.table.last.get(key).cloned();
                // A new day or lifter begins a new list of lifts.
                let gap =
                    self.table.repeats.contains(key) || turns && ["lift", "track"].contains(&key);
                let may = marked || !gap;
                match above.filter(|_| may) {
                    Some(above) => above,
                    None => {
                        own.empty.push((key, at));
                        continue;
                    }
                }
            } else {
                self.table.last.insert(key, text.clone());
                text
            };
            if let Err(wrong) = self.fact(key, at, &text, &mut own) {
                self.wrong(at, wrong);
                own.failed.push(key);
            }
        }
        self.unnamed(&mut own);
        own
    }

    /// Reads the cell of a column that says whom, what and when.
    fn fact(&self, key: &str, at: usize, text: &str, own: &mut Own) -> Result<(), Wrong> {
        let against = self.beside.against;
        let facts = &mut own.facts;
        let month = self.beside.context.month.filter(|_| key == "date");
        if let Some(day) = month.and_then(|month| day_of_month(text, month)) {
            facts.date = Some(day?);
            return Ok(());
        }
        match key {
            "date" if self.kind(at) != CellKind::Day && date(text).is_err() => {
                let days = |read: &Facts| read.kinds() & !0b111 == 0 && read.kinds() != 0;
                match facts::read(text, against)? {
                    Some(read) if days(&read) && !read.contradicts(facts) => {
                        *facts = read.or(facts);
                    }
                    Some(_) | None => facts.date = Some(date(text)?),
                }
            }
            "date" => facts.date = Some(date(text)?),
            "week" => match facts::read(text, against)? {
                Some(read) if read.week.is_some() || read.starts.is_some() => {
                    *facts = read.or(facts);
                }
                Some(_) | None => facts.week = Some(whole(text, &(1..=104))?),
            },
            "weekday" => {
                let day = weekday(text).ok_or_else(|| {
                    let right = words!(k::WRITE_A_DAY_SUCH_AS);
                    Wrong::value(text, words!(k::NOT_A_DAY_OF_THE), right)
                })?;
                facts.weekday = Some(day);
            }
            "lifter" => own.lifters = lifters(text, against)?,
            "lift" if against.lifts.lookup(text).is_some() => {
                facts.lift = against.lifts.lookup(text);
            }
            "lift" => match facts::read(text, against) {
                Ok(Some(read)) if read.lift.is_some() && read.kinds() & !0b11_0000 == 0 => {
                    *facts = read.or(facts);
                }
                _ => match tracked(text, against) {
                    Some((lift, track)) => {
                        facts.lift = Some(lift);
                        facts.track = TrackName::new(track);
                    }
                    None => {
                        let (lift, manner) = lift_and_manner(text, against)?;
                        facts.lift = Some(lift);
                        own.manner = manner;
                    }
                },
            },
            _ => {
                facts.track = Some(track_name(text)?);
            }
        }
        Ok(())
    }

    /// Cells under no header may say whom, what and when too.
    fn unnamed(&mut self, own: &mut Own) {
        if self.table.separator.is_some() && !self.table.is_across() && !self.table.is_free() {
            return;
        }
        for at in 0..self.row.cells.len() {
            let Some(column) = self.table.columns.get(at) else {
                continue;
            };
            if column.key.is_some() || column.facts.kinds() != 0 || column.ignored {
                continue;
            }
            let text = self.row.text(at);
            let read = facts::read(text, self.beside.against);
            if let Ok(Some(facts)) = read
                && facts.kinds() != 0
                && !own.facts.contradicts(&facts)
            {
                own.lifters.extend(facts.lifter.clone());
                own.facts = own.facts.or(&facts);
            }
        }
    }

    /// The day, of the row's own facts and those around it; tells what is missing.
    pub(crate) fn day(&mut self, facts: &Facts, own: &Own) -> Option<NaiveDate> {
        match facts.day(self.beside.monday) {
            Ok(day) => Some(day),
            Err(_)
                if ["date", "week", "weekday"]
                    .iter()
                    .any(|key| own.failed.contains(key)) =>
            {
                None
            }
            Err(missing) => {
                let empty = own.empty.iter().find(|(key, _)| *key == "date").copied();
                match (missing, empty) {
                    (Missing::Day | Missing::Weekday | Missing::Monday, Some((key, at))) => {
                        self.tell_empty(key, at);
                    }
                    (Missing::Day, None) if self.table.told.contains("date") => {}
                    _ => {
                        let at = self
                            .place("weekday")
                            .or_else(|| self.place("date"))
                            .or_else(|| self.place("week"));
                        // Each week of a row lacks the same; one telling is enough.
                        if !self.table.told.insert("day") {
                            return None;
                        }
                        let row = self.row.number;
                        match at {
                            Some(at) => self.wrong(at, missing.wrong()),
                            None => self.faults.wrong(row, None, missing.wrong()),
                        }
                    }
                }
                None
            }
        }
    }

    /// Tells that nothing says who or what, at the cell where it should stand.
    pub(crate) fn tell_nothing(&mut self, key: &'static str, own: &Own) {
        if own.failed.contains(&key) {
            return;
        }
        if let Some((_, at)) = own.empty.iter().find(|(empty, _)| *empty == key).copied() {
            self.tell_empty(key, at);
        } else if !self.table.told.contains(key) {
            let wrong = match key {
                "lifter" => Wrong::plain(words!(k::NO_LIFTER), words!(k::NAME_THE_SHEET_AFTER_THE)),
                _ => Wrong::plain(words!(k::NO_LIFT), words!(k::WRITE_THE_LIFT_IN_FRONT)),
            };
            self.faults.wrong(self.row.number, None, wrong);
        }
    }

    /// Tells a row whose cells have slipped out from under their headers, as an unquoted comma
    /// makes them do. Its other cells would only be told for what they are not.
    fn slipped(&mut self) -> bool {
        let cells = &self.row.cells;
        let Some(separator) = self.table.separator.filter(|_| !self.table.is_free()) else {
            return false;
        };
        if separator == ','
            && let Some(at) = self.place("load")
            && let (Some(front), Some(back)) = (cells.get(at), cells.get(at + 1))
            && digits(front.trim())
            && digits_and_unit(back.trim())
        {
            let load = format!("{},{}", front.trim(), back.trim());
            let right = words!(k::WRITE_WITH_ITS_QUOTES_OR, quote(&load));
            self.wrong(
                at,
                Wrong::value(&load, words!(k::A_COMMA_WITHIN_A_CELL), right),
            );
            return true;
        }
        let width = self.table.columns.len();
        let beyond = |(at, cell): &(usize, &Cow<'_, str>)| {
            let headed =
                self.table.columns.get(*at).is_some_and(|c| {
                    !c.header.is_empty() || c.key.is_some() || c.facts.kinds() != 0
                });
            let across = self.table.is_across() && *at < width;
            !headed && !across && !cell.trim().is_empty()
        };
        let Some((at, cell)) = cells.iter().enumerate().find(beyond) else {
            return false;
        };
        let right = words!(k::PUT_EACH_CELL_THAT_HOLDS);
        self.wrong(
            at,
            Wrong::value(cell.trim(), words!(k::UNDER_NO_HEADER), right),
        );
        true
    }
}

/// The name of a track, however it is spelt: "Heavy " and "heavy" are one.
pub(crate) fn track_name(text: &str) -> Result<TrackName, Wrong> {
    if let Some(known) = facts::track(text).and_then(TrackName::new) {
        return Ok(known);
    }
    let words: Vec<String> = name(text)?
        .split_whitespace()
        .map(str::to_lowercase)
        .collect();
    TrackName::new(&words.join(" ")).ok_or_else(|| {
        let what = words!(k::A_TRACK_S_NAME_OF, TrackName::LONGEST);
        Wrong::value(text, what, words!(k::WRITE_A_SHORTER_ONE_SUCH))
    })
}

/// Whether a cell is what stands behind the comma of a load: "5 kg", "5%".
fn digits_and_unit(text: &str) -> bool {
    let number = ["kg", "lb", "lbs", "%"]
        .iter()
        .find_map(|unit| text.strip_suffix(unit));
    number.is_some_and(|number| digits(number.trim()))
}

fn digits(text: &str) -> bool {
    !text.is_empty() && text.bytes().all(|b| b.is_ascii_digit())
}
