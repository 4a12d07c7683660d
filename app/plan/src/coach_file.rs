//! A coach's plan: file to sheets to rows to prescriptions, or every fault of it.
use crate::against::Against;
use crate::cells::{CellKind, SheetRow};
use crate::facts::{self, Facts};
use crate::fault::{Fault, Wrong};
use crate::header;
use crate::plan_faults::{PlanFaults, letters};
use crate::plan_reading::Beside;
use crate::scheme::follow;
use crate::set_group::PlanRow;
use crate::sheets::{self, Sheet};
use crate::side_by_side::strips;
use crate::table::Table;
use crate::titles::{Titled, alone, bad_start, header_rows, is_remark, is_total, speaks};
use crate::words::words;
use crate::{Source, carry, columns, plan_row};
use chrono::NaiveDate;
use domain::{Gym, Prescription};
use std::collections::BTreeMap;
use text::keys::checked as k;

mod take;

use take::Place;

/// Most rows of a plan, the headers apart.
pub(crate) const ROWS_MAX: usize = 20_000;

/// What was understood of a plan.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Understood {
    /// Its rows, in their order; none when it has a fault.
    pub rows: Vec<PlanRow>,
    /// Its faults and what is odd, by sheet, row and column.
    pub faults: Vec<Fault>,
}

/// Reads a coach's plan in CSV, XLSX or ODS; which one it is the file's first bytes tell.
///
/// # Errors
/// Every fault of the plan, by sheet, row and column. A plan with a fault gives no rows.
pub fn coach_plan(source: Source<'_>, gym: &Gym) -> Result<Vec<Prescription>, Vec<Fault>> {
    coach_plan_since(source, gym, None).map(|(rows, _)| rows)
}

/// As [`coach_plan`], with the Monday that week 1 begins on, and what is odd beside the rows.
///
/// # Errors
/// As there.
pub fn coach_plan_since(
    source: Source<'_>,
    gym: &Gym,
    monday: Option<NaiveDate>,
) -> Result<(Vec<Prescription>, Vec<Fault>), Vec<Fault>> {
    let (rows, faults) = read(source, Some(gym), monday);
    if faults.iter().any(Fault::stops) {
        Err(faults)
    } else {
        Ok((rows, faults))
    }
}

/// Reads what can be taken of a plan; without a gym, names and bests are taken as they stand.
pub(crate) fn read(
    source: Source<'_>,
    gym: Option<&Gym>,
    monday: Option<NaiveDate>,
) -> (Vec<Prescription>, Vec<Fault>) {
    let Understood { rows, mut faults } = understand(source, gym, monday);
    match carry::prescriptions(source.name, rows, gym) {
        Ok(rows) => (rows, faults),
        Err(more) => {
            faults.extend(more);
            (Vec::new(), faults)
        }
    }
}

/// Reads what a plan means, whether the rack can show all of it or not. `monday` is the one that
/// week 1 begins on.
#[must_use]
pub fn understand(source: Source<'_>, gym: Option<&Gym>, monday: Option<NaiveDate>) -> Understood {
    let opened = match sheets::open(source) {
        Ok(opened) => opened,
        Err(faults) => {
            let rows = Vec::new();
            return Understood { rows, faults };
        }
    };
    let mut plan = Plan {
        against: &Against::of(gym),
        monday,
        stem: stem(source.name),
        faults: PlanFaults::of(source.name),
        rows: Vec::new(),
        firsts: BTreeMap::new(),
        count: 0,
        header: None,
    };
    plan.read(&opened.sheets());
    plan.finish();
    Understood {
        rows: plan.rows,
        faults: plan.faults.close(),
    }
}

/// What a spreadsheet calls the one sheet of a text: the file's name without folder and ending.
fn stem(name: &str) -> String {
    let base = name.rsplit(['/', '\\']).next().unwrap_or(name);
    base.rsplit_once('.')
        .map_or(base, |(stem, _)| stem)
        .to_owned()
}

/// A plan under reading.
struct Plan<'p> {
    against: &'p Against<'p>,
    monday: Option<NaiveDate>,
    stem: String,
    faults: PlanFaults<'p>,
    rows: Vec<PlanRow>,
    /// The last row of each day, lifter and lift.
    firsts: BTreeMap<(NaiveDate, String, String), Place>,
    count: usize,
    /// The first header: its sheet and row.
    header: Option<(usize, Option<String>, usize)>,
}

impl Plan<'_> {
    /// Reads every sheet that has a header, or whose rows speak for themselves. When none has,
    /// the first with anything in it is taken for a plan, so that its faults are told.
    fn read(&mut self, sheets: &[Sheet<'_>]) {
        let filled: Vec<_> = sheets
            .iter()
            .enumerate()
            .filter(|(_, sheet)| !sheet.rows.is_empty())
            .collect();
        if filled.is_empty() {
            let right = words!(k::WRITE_A_HEADER_ROW_AND);
            self.faults
                .whole(Wrong::plain(words!(k::A_FILE_WITH_NOTHING_IN), right));
            return;
        }
        let is_plan = |sheet: &Sheet<'_>| {
            header::header_at(&sheet.rows, self.against).is_some()
                || header::speaks_for_itself(&sheet.rows, self.against)
        };
        let plans: Vec<_> = filled.iter().filter(|(_, sheet)| is_plan(sheet)).collect();
        if plans.is_empty() {
            let (number, sheet) = filled[0];
            self.faults.turn_to(number, sheet.name.as_deref());
            let keys: Vec<_> = crate::fields::COLUMNS.iter().map(|c| c.field.key).collect();
            let right = words!(k::BEGIN_WITH_A_HEADER_ROW, keys.join(","));
            let what = match columns::named(&sheet.rows[0]) {
                0 => words!(k::A_FIRST_ROW_THAT_NAMES),
                _ => words!(k::A_FIRST_ROW_THAT_NAMES_ONE),
            };
            self.faults
                .wrong(sheet.rows[0].number, None, Wrong::plain(what, right));
        }
        for (number, sheet) in plans {
            self.faults.turn_to(*number, sheet.name.as_deref());
            if sheet.hidden {
                let right = words!(k::SHOW_THE_SHEET_IN_THE);
                self.faults
                    .odd(Wrong::plain(words!(k::A_HIDDEN_SHEET_LEFT_OUT), right));
            } else {
                self.sheet(*number, sheet);
            }
        }
        if self.count == 0
            && let Some((number, name, row)) = self.header.take()
        {
            self.faults.turn_to(number, name.as_deref());
            let right = words!(k::WRITE_A_ROW_FOR_EACH);
            let wrong = Wrong::plain(words!(k::A_HEADER_AND_NO_ROW), right);
            self.faults.wrong(row, None, wrong);
        }
    }

    /// Tells what the spreadsheet hides or strikes through, and gives the rows that are left.
    fn shown<'s, 't>(&mut self, sheet: &'s Sheet<'t>) -> Vec<&'s SheetRow<'t>> {
        let right = || words!(k::SHOW_IT_IN_THE_SPREADSHEET);
        for at in (0..64).filter(|at| sheet.hidden_columns & (1 << at) != 0) {
            let holds = |row: &SheetRow<'_>| !row.text(at).is_empty();
            if let Some(row) = sheet.rows.iter().find(|row| holds(row)) {
                let what = words!(k::COLUMN_HIDDEN_LEFT_OUT, letters(at));
                self.faults
                    .odd_at(row.number, Some(at), Wrong::plain(what, right()));
            }
        }
        let mut shown = Vec::new();
        for row in &sheet.rows {
            let empty = row.cells.iter().all(|cell| cell.trim().is_empty());
            let struck = || words!(k::TAKE_THE_LINE_AWAY_IF);
            if row.hidden {
                let wrong = Wrong::plain(words!(k::A_HIDDEN_ROW_LEFT_OUT), right());
                self.faults.odd_at(row.number, None, wrong);
            } else if row.struck != 0 && empty {
                let wrong = Wrong::plain(words!(k::A_ROW_STRUCK_THROUGH_LEFT), struck());
                self.faults.odd_at(row.number, None, wrong);
            } else {
                self.unreckoned(row);
                for at in (0..64).filter(|at| row.struck & (1 << at) != 0) {
                    let wrong = Wrong::plain(words!(k::TEXT_STRUCK_THROUGH_LEFT_OUT), struck());
                    self.faults.odd_at(row.number, Some(at), wrong);
                }
                shown.push(row);
            }
        }
        shown
    }

    /// Tells formulas whose results nobody saved: taken for empty, a day would be that of the row
    /// above it.
    fn unreckoned(&mut self, row: &SheetRow<'_>) {
        for at in (0..row.kinds.len()).filter(|at| row.kind(*at) == CellKind::Formula) {
            let right = words!(k::OPEN_THE_FILE_IN_A);
            let wrong = Wrong::plain(words!(k::A_FORMULA_WITHOUT_ITS_RESULT), right);
            self.faults.wrong(row.number, Some((at, "")), wrong);
        }
    }

    /// Reads a header and learns from the rows down to the next; the table and where its rows begin.
    fn header(
        &mut self,
        rows: &[&SheetRow<'_>],
        (at, is_first): (usize, bool),
        (number, sheet): (usize, &Sheet<'_>),
        (context, titled): (&mut Facts, &mut Titled),
    ) -> (Table, usize) {
        let (from, to) = header_rows(rows, at, is_first, self.against);
        let mut next = Table::read(
            &rows[from..to],
            sheet.separator,
            sheet.hidden_columns,
            self.against,
            &mut self.faults,
        );
        let end = rows[to..]
            .iter()
            .position(|row| header::is_header(row, false, self.against))
            .map_or(rows.len(), |n| to + n);
        next.name_columns(&rows[to..end], self.against, &mut self.faults);
        next.learn(&rows[to..end]);
        let here = (number, sheet.name.clone(), next.header);
        self.header.get_or_insert(here);
        let lone = rows[to..end]
            .iter()
            .filter_map(|row| alone(row, self.against, true));
        if let Some(corner) = &next.corner {
            context.turn_to(corner);
        }
        let mut said = lone.fold(context.clone(), |all, facts| all.or(&facts));
        titled.give(&next, &said, context);
        said = said.or(context);
        next.tell_missing(&said, &mut self.faults);
        (next, to)
    }

    /// Reads a sheet: tables that stand side by side one after the other.
    fn sheet(&mut self, number: usize, sheet: &Sheet<'_>) {
        let rows = self.shown(sheet);
        for strip in strips(&rows, self.against) {
            match &strip {
                Some(rows) => self.strip((number, sheet), &rows.iter().collect::<Vec<_>>()),
                None => self.strip((number, sheet), &rows),
            }
        }
    }

    #[allow(
        clippy::too_many_lines,
        reason = "one case a line, read from top to bottom"
    )]
    fn strip(&mut self, (number, sheet): (usize, &Sheet<'_>), rows: &[&SheetRow<'_>]) {
        let stem = self.stem.clone();
        let name = sheet.name.as_deref().unwrap_or(&stem);
        let mut beside = Beside {
            against: self.against,
            sheet: name,
            is_text: sheet.name.is_none(),
            context: Facts::default(),
            monday: self.monday,
        };
        if sheet.name.is_some()
            && let Ok(Some(facts)) = facts::read(name, self.against)
        {
            beside.context = facts;
        }
        let head = |row: &&SheetRow<'_>| header::is_header(row, false, self.against);
        let top = rows.iter().take(columns::TITLES_MAX);
        let first = { top }.position(|row| header::is_header(row, true, self.against));
        let mut table = match first {
            Some(_) => None,
            None => rows
                .first()
                .map(|row| Table::free(row, sheet.separator, row_width(rows))),
        };
        let mut titled = Titled::of(sheet.name.as_deref(), self.against);
        let mut at = 0;
        while at < rows.len() {
            let row = rows[at];
            if first.is_some_and(|first| at == first || at > first && head(&row)) {
                let (next, to) = self.header(
                    rows,
                    (at, first == Some(at)),
                    (number, sheet),
                    (&mut beside.context, &mut titled),
                );
                table = Some(next);
                at = to;
                continue;
            }
            at += 1;
            // The row above a header may be a part of it; titles say whom and when.
            let in_table = table.as_ref().is_some_and(|table| !table.is_free());
            if let Some(facts) = alone(row, self.against, table.is_some()) {
                beside.context.turn_to(&facts);
                if let Some(table) = &mut table {
                    table.last.clear();
                }
                continue;
            }
            let Some(table) = &mut table else {
                titled.note(row, self.against);
                bad_start(row, self.against, &mut self.faults);
                continue;
            };
            let remark = is_remark(row);
            if remark && titled.turn(row, self.against, table, &mut beside.context) {
                table.last.clear();
                continue;
            }
            if remark || is_total(row, table) || !in_table && !speaks(row, self.against) {
                let wrong = Wrong::plain(
                    words!(k::A_LINE_OF_WORDS_LEFT),
                    words!(k::PUT_IT_UNDER_NOTE_IF),
                );
                let at = row.cells.iter().position(|cell| !cell.trim().is_empty());
                self.faults.odd_at(row.number, at, wrong);
                continue;
            }
            self.count += 1;
            if self.count > ROWS_MAX {
                let read = words!(k::MORE_ROWS_THAN_THE_MOST, ROWS_MAX);
                let wrong = Wrong::plain(read, words!(k::SPLIT_THE_PLAN));
                self.faults.ends(row.number, wrong);
                break;
            }
            let reads = plan_row::read(row, table, &beside, &mut self.faults);
            let mut columns = table.columns.iter();
            let counts = columns.find(|column| column.key == Some("sets") && !column.ignored);
            let counts = counts.map(|column| column.header.clone());
            for read in reads {
                let place = (number, sheet.name.clone());
                self.take(read, (place, row.number), counts.as_deref());
            }
        }
    }

    /// Looks at each row as a whole: shares of a top set need one before them.
    fn finish(&mut self) {
        if self.faults.stops() {
            self.rows = Vec::new();
        }
        let mut rows = std::mem::take(&mut self.rows);
        for row in &mut rows {
            let text: Vec<_> = row.groups.iter().map(ToString::to_string).collect();
            if let Err(wrong) = follow(&text.join(", "), &mut row.groups) {
                let sheet = Some(row.from.sheet.as_str()).filter(|_| !row.from.is_text);
                self.faults.turn_to(0, sheet);
                let (at, line) = (row.from.column.unwrap_or(0), row.from.row);
                self.faults.wrong(line, Some((at, &letters(at))), wrong);
            }
        }
        if !self.faults.stops() {
            self.rows = rows;
        }
    }
}

fn row_width(rows: &[&SheetRow<'_>]) -> usize {
    rows.iter().map(|row| row.cells.len()).max().unwrap_or(0)
}
