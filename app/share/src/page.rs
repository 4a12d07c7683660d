//! The coach's pages of everybody: sessions, latest day first, and the plan against what was
//! done. Plain HTML, no script.
//!
//! Refuses: names as markup; every text is escaped by the template.
use crate::html::{Nav, address, foot, head, put, write_sets};
use crate::lifter_page::{PLAN_ROWS, plan_table};
use crate::stream::{Sink, Stop};
use chrono::{Days, NaiveDate};
use journal::{LifterSum, RecordReader};
use maud::{Markup, html};

/// Training days on one page.
const DAYS: u32 = 30;
/// Days of plan on one page.
const PLAN_DAYS: u64 = 28;

/// Writes the page of the days before `before`, or of the latest.
pub(crate) fn write(
    record: Option<&RecordReader>,
    before: Option<NaiveDate>,
    sink: &mut Sink,
) -> Result<(), Stop> {
    let before = before.map(|day| day.format("%Y-%m-%d").to_string());
    // One more than is shown tells whether there are older ones.
    let days = record.map_or(Ok(Vec::new()), |record| {
        record.days(before.as_deref(), DAYS + 1)
    })?;
    let lifters = record.map_or(Ok(Vec::new()), RecordReader::lifters)?;
    put(sink, &head("Sessions", Nav::Coach))?;
    put(sink, &downloads())?;
    put(sink, &people(&lifters))?;
    let shown = days.len().min(DAYS as usize);
    match (record, days.first(), days[..shown].last()) {
        (Some(record), Some(last), Some(first)) => {
            write_sets(|visit| record.each_set_of_days(first, last, visit), sink)?;
        }
        _ if before.is_some() => put(
            sink,
            &html! { p { "No sets were recorded before that day." } },
        )?,
        _ => put(sink, &html! { p { "No sets have been recorded yet." } })?,
    }
    let older = days.get(shown).and(days[..shown].last());
    put(
        sink,
        &further("/coach", before.is_some(), older.map(String::as_str)),
    )?;
    Ok(put(sink, &foot())?)
}

/// Writes the plan of the four weeks before `before`, or of the latest four that are planned.
pub(crate) fn write_plan(
    record: Option<&RecordReader>,
    before: Option<NaiveDate>,
    sink: &mut Sink,
) -> Result<(), Stop> {
    put(sink, &head("Plan and done", Nav::Coach))?;
    let last = match (before, record) {
        (Some(day), _) => day.checked_sub_days(Days::new(1)),
        (None, Some(record)) => {
            let latest = record.planned(("0000-01-01", "9999-12-31"), None, 1)?;
            latest.first().and_then(|row| row.date.parse().ok())
        }
        (None, None) => None,
    };
    let (Some(record), Some(last)) = (record, last) else {
        put(sink, &html! { p { "No plan is kept." } })?;
        return Ok(put(sink, &foot())?);
    };
    let first = last
        .checked_sub_days(Days::new(PLAN_DAYS - 1))
        .unwrap_or(last);
    let days = (first.to_string(), last.to_string());
    let rows = record.planned((&days.0, &days.1), None, PLAN_ROWS)?;
    put(sink, &plan_table(&rows, true))?;
    let older = record.planned(
        ("0000-01-01", &first.pred_opt().unwrap_or(first).to_string()),
        None,
        1,
    )?;
    let older = older.first().map(|_| days.0.as_str());
    put(sink, &further("/coach/plan", before.is_some(), older))?;
    Ok(put(sink, &foot())?)
}

fn downloads() -> Markup {
    html! {
        nav aria-label="Downloads" {
            "All sets: "
            a href="/record.csv" { "CSV" } " "
            a href="/record.json" { "JSON" } " "
            a href="/journal.sqlite" { "Database" }
        }
    }
}

fn people(lifters: &[LifterSum]) -> Markup {
    html! {
        @if !lifters.is_empty() {
            nav aria-label="Lifters" class="people" {
                @for one in lifters {
                    a href=(address("/coach/lifter", &one.lifter)) { (one.lifter) } " "
                }
            }
        }
    }
}

fn further(path: &str, later: bool, older: Option<&str>) -> Markup {
    html! {
        @if later || older.is_some() {
            nav aria-label="Further" {
                @if later { a href=(path) { "Latest" } " " }
                @if let Some(day) = older {
                    a href={ (path) "?before=" (day) } { "Older" }
                }
            }
        }
    }
}
