//! The gym's week on one page: the grid, the way to other weeks, and the cell that is being
//! changed. Plain HTML, no script; it prints on one sheet.
//!
//! Refuses: changing anything.
use crate::html::{foot, head, put};
use crate::masthead::{Nav, Tab};
use crate::programme::{Laid, Shown, together};
use crate::stream::{Sink, Stop};
use crate::week_change::{Cell, change};
use crate::week_grid::{DAYS, Grid, legend, monday};
use crate::words as w;
use chrono::{Days, NaiveDate};
use journal::RecordReader;
use maud::{Markup, html};
use view::Language;
use view::week_deed::last_of;

/// Most rows of the plan that are read for two weeks.
const ROWS_MAX: u32 = 3_000;

/// What an address names.
pub(crate) struct Asked {
    /// A day of the week; `None` for today's.
    pub(crate) from: Option<NaiveDate>,
    /// The lifter and the day that are to be changed.
    pub(crate) cell: Option<(String, NaiveDate)>,
}

/// Writes the page; `told` says what came of the last change.
pub(crate) fn write(
    say: Language,
    (record, laid): (Option<&RecordReader>, &Laid),
    (asked, told): (&Asked, Option<&str>),
    sink: &mut Sink,
) -> Result<(), Stop> {
    let nav = Nav::Coach(Tab::Week);
    let Some(today) = &laid.today else {
        put(sink, &head(say, say.pick(w::WEEK), nav, None))?;
        put(sink, &html! { p { (say.pick(w::NO_DAY_YET)) } })?;
        return Ok(put(sink, &foot(say))?);
    };
    let first = monday(asked.from.unwrap_or(today.date));
    let last = first
        .checked_add_days(Days::new(DAYS - 1))
        .unwrap_or(NaiveDate::MAX);
    let title = say.fill(
        w::WEEK_FROM_TO,
        &[
            &say.short_date(first),
            &w::day_and_year(say, &last.to_string()),
        ],
    );
    put(sink, &head(say, &title, nav, Some(today)))?;
    if let Some(told) = told {
        put(sink, &html! { p class="notice" role="status" { (told) } })?;
    }
    let rows = rows_of(record, laid, (first, last_of(first)))?;
    let is_shown = |lifter: &str| laid.units.contains_key(lifter);
    let open = asked.cell.as_ref();
    let open = open.filter(|(lifter, day)| is_shown(lifter) && (first..=last).contains(day));
    let open = open.map(|(lifter, day)| (lifter.as_str(), *day));
    put(sink, &further(say, (first, today.date)))?;
    if let Some((lifter, day)) = open {
        let cell = Cell {
            lifter,
            day,
            first,
            today: today.date,
            rows: &rows,
        };
        put(sink, &change(say, &cell))?;
    }
    let of_week: Vec<Shown> = rows
        .iter()
        .filter(|shown| shown.row.date <= last.to_string())
        .cloned()
        .collect();
    let grid = Grid {
        monday: first,
        today: today.date,
        rows: &of_week,
        lifters: laid.units.keys().map(String::as_str).collect(),
        open,
        changes: true,
    };
    put(sink, &grid.table(say))?;
    put(sink, &legend(say))?;
    Ok(put(sink, &foot(say))?)
}

/// The plan, and what programmes fill, of some days.
pub(crate) fn rows_of(
    record: Option<&RecordReader>,
    laid: &Laid,
    (first, last): (NaiveDate, NaiveDate),
) -> Result<Vec<Shown>, Stop> {
    let (first, last) = (first.to_string(), last.to_string());
    let days = (first.as_str(), last.as_str());
    let rows = record.map_or(Ok(Vec::new()), |record| {
        record.planned(days, None, ROWS_MAX)
    })?;
    Ok(together(rows, laid, days, None))
}

/// The weeks before and after, and the one of now.
fn further(say: Language, (first, today): (NaiveDate, NaiveDate)) -> Markup {
    let before = first.checked_sub_days(Days::new(DAYS));
    let after = first.checked_add_days(Days::new(DAYS));
    let to = |day: NaiveDate| format!("/coach/week?from={day}");
    html! {
        nav class="weeks" aria-label=(say.pick(w::FURTHER)) {
            @if let Some(day) = before {
                a href=(to(day)) rel="prev" { "\u{2190} " (say.pick(w::WEEK_BEFORE)) }
            }
            @if monday(today) != first { a href="/coach/week" { (say.pick(w::THIS_WEEK)) } }
            @if let Some(day) = after {
                a href=(to(day)) rel="next" { (say.pick(w::WEEK_AFTER)) " \u{2192}" }
            }
        }
    }
}
