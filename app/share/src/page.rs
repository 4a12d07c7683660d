//! The coach's pages of everybody: sessions, latest day first, and the plan against what was
//! done. Plain HTML, no script.
//!
//! Refuses: names as markup; every text is escaped by the template.
use crate::html::{address, foot, head, put, write_sets};
use crate::lifter_page::PLAN_ROWS;
use crate::masthead::{Nav, Tab};
use crate::plan_table::plan_table;
use crate::programme::{Laid, last_day, together};
use crate::stream::{Sink, Stop};
use crate::words as w;
use chrono::{Days, NaiveDate};
use journal::{LifterSum, RecordReader};
use maud::{Markup, html};
use view::Language;

/// Training days on one page.
const DAYS: u32 = 30;
/// Days of plan on one page.
const PLAN_DAYS: u64 = 28;

/// Writes the page of the days before `before`, or of the latest.
pub(crate) fn write(
    say: Language,
    (record, laid): (Option<&RecordReader>, &Laid),
    before: Option<NaiveDate>,
    sink: &mut Sink,
) -> Result<(), Stop> {
    let before = before.map(|day| day.format("%Y-%m-%d").to_string());
    // One more than is shown tells whether there are older ones.
    let days = record.map_or(Ok(Vec::new()), |record| {
        record.days(before.as_deref(), DAYS + 1)
    })?;
    let lifters = record.map_or(Ok(Vec::new()), RecordReader::lifters)?;
    let (nav, today) = (Nav::Coach(Tab::Sessions), laid.today.as_ref());
    put(sink, &head(say, say.pick(w::SESSIONS), nav, today))?;
    put(sink, &downloads(say))?;
    put(sink, &people(say, &lifters))?;
    let shown = days.len().min(DAYS as usize);
    match (record, days.first(), days[..shown].last()) {
        (Some(record), Some(last), Some(first)) => {
            write_sets(
                say,
                |visit| record.each_set_of_days(first, last, visit),
                sink,
            )?;
        }
        _ if before.is_some() => put(sink, &html! { p { (say.pick(w::NO_SETS_BEFORE)) } })?,
        _ => put(sink, &html! { p { (say.pick(w::NO_SETS)) } })?,
    }
    let older = days.get(shown).and(days[..shown].last());
    let older = older.map(String::as_str);
    put(sink, &further(say, "/coach", before.is_some(), older))?;
    Ok(put(sink, &foot(say))?)
}

/// Writes the plan, and what programmes fill, of the four weeks before `before`, or of the latest
/// four that have any.
pub(crate) fn write_plan(
    say: Language,
    (record, laid): (Option<&RecordReader>, &Laid),
    before: Option<NaiveDate>,
    sink: &mut Sink,
) -> Result<(), Stop> {
    let (nav, today) = (Nav::Coach(Tab::Plan), laid.today.as_ref());
    put(sink, &head(say, say.pick(w::PLAN_AND_DONE), nav, today))?;
    put(
        sink,
        &html! { p { a href="/coach/plans" { (say.pick(w::HAND_IN)) } } },
    )?;
    let last = match before {
        Some(day) => day.checked_sub_days(Days::new(1)),
        None => {
            let planned = record.map_or(Ok(None), |record| record.last_planned(None))?;
            let latest = planned.as_deref().max(last_day(laid));
            latest.and_then(|day| day.parse().ok())
        }
    };
    let Some(last) = last else {
        put(sink, &html! { p { (say.pick(w::NO_PLAN)) } })?;
        return Ok(put(sink, &foot(say))?);
    };
    let first = last
        .checked_sub_days(Days::new(PLAN_DAYS - 1))
        .unwrap_or(last);
    let (first, last) = (first.to_string(), last.to_string());
    let days = (first.as_str(), last.as_str());
    let rows = record.map_or(Ok(Vec::new()), |record| {
        record.planned(days, None, PLAN_ROWS)
    })?;
    let rows = together(rows, laid, days, None);
    put(sink, &plan_table(say, &rows, true))?;
    let older = record.map_or(Ok(None), |record| record.last_planned(Some(&first)))?;
    let is_older = older.is_some() || laid.filled.iter().any(|of| of.row.date < first);
    let older = is_older.then_some(first.as_str());
    put(sink, &further(say, "/coach/plan", before.is_some(), older))?;
    Ok(put(sink, &foot(say))?)
}

fn downloads(say: Language) -> Markup {
    html! {
        nav aria-label=(say.pick(w::DOWNLOADS)) {
            (say.pick(w::ALL_SETS)) " "
            a href="/record.csv" { "CSV" } " "
            a href="/record.json" { "JSON" } " "
            a href="/journal.sqlite" { (say.pick(w::DATABASE)) }
        }
    }
}

fn people(say: Language, lifters: &[LifterSum]) -> Markup {
    html! {
        @if !lifters.is_empty() {
            nav aria-label=(say.pick(w::LIFTERS)) class="people" {
                @for one in lifters {
                    a href=(address("/coach/lifter", &one.lifter)) { (one.lifter) } " "
                }
            }
        }
    }
}

fn further(say: Language, path: &str, later: bool, older: Option<&str>) -> Markup {
    html! {
        @if later || older.is_some() {
            nav class="further" aria-label=(say.pick(w::FURTHER)) {
                @if later { a href=(path) { (say.pick(w::LATEST)) } " " }
                @if let Some(day) = older {
                    a href={ (path) "?before=" (day) } { (say.pick(w::OLDER)) }
                }
            }
        }
    }
}
