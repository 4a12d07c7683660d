//! One lifter's pages: weeks of each lift with charts, the plan against what was done, sessions.
//! Plain HTML and SVG, no script; the coach and the lifter see the same.
//!
//! Refuses: names as markup; every text is escaped by the template.
use crate::chart::{self, Weeks};
use crate::html::{Nav, address, foot, head, put, short_day, write_sets};
use crate::stream::{Sink, Stop};
use chrono::{Days, NaiveDate};
use journal::{PlannedRow, RecordReader, WeekRow};
use maud::{Markup, PreEscaped, html};
use std::ops::ControlFlow;

/// Weeks that the charts go back from the latest day of the lifter.
const WEEKS: u64 = 26;
/// From the first day to the last.
const EVER: (&str, &str) = ("0000-01-01", "9999-12-31");
/// Most rows of plan shown.
pub(crate) const PLAN_ROWS: u32 = 400;
/// Most sets listed one by one.
const SETS_MAX: u32 = 300;

/// Writes the page of `lifter`; `nav` says whose eyes it is for.
pub(crate) fn write(
    record: Option<&RecordReader>,
    lifter: &str,
    nav: Nav,
    sink: &mut Sink,
) -> Result<(), Stop> {
    put(sink, &head(lifter, nav))?;
    let known = match record {
        Some(record) => record.lifters()?.into_iter().find(|l| l.lifter == lifter),
        None => None,
    };
    let (Some(record), Some(known)) = (record, known) else {
        put(sink, &html! { p { "Nothing is recorded of that name." } })?;
        return Ok(put(sink, &foot())?);
    };
    let last = known.last.parse::<NaiveDate>().ok();
    if let Some(last) = last {
        let from = last.checked_sub_days(Days::new(7 * WEEKS)).unwrap_or(last);
        let weeks = record.weeks(lifter, &from.to_string())?;
        for of_lift in weeks.chunk_by(|a, b| a.lift == b.lift) {
            put(sink, &lift(of_lift))?;
        }
    }
    let rows = record.planned(EVER, Some(lifter), PLAN_ROWS)?;
    put(
        sink,
        &html! { h2 { "Plan and done" } (plan_table(&rows, false)) },
    )?;
    put(sink, &html! { h2 { "Sets" } })?;
    write_sets(
        |visit| {
            let mut left = SETS_MAX;
            record.each_set_of_lifter(lifter, |set| {
                left -= 1;
                let go_on = visit(set);
                if left == 0 {
                    return ControlFlow::Break(());
                }
                go_on
            })
        },
        sink,
    )?;
    if known.sets > u64::from(SETS_MAX) {
        let more = format!("The latest {SETS_MAX} of {} sets.", known.sets);
        put(sink, &html! { p { (more) } })?;
    }
    Ok(put(sink, &foot())?)
}

/// One lift: its charts and its table of weeks.
fn lift(weeks: &[WeekRow]) -> Markup {
    let Some(first) = weeks.first() else {
        return html! {};
    };
    let unit = first.unit;
    let number = |week: &WeekRow| week.heaviest.number(unit).parse::<f64>().unwrap_or(0.0);
    let drawn = Weeks {
        mondays: weeks.iter().filter_map(|w| w.week.parse().ok()).collect(),
        loads: weeks.iter().map(number).collect(),
        reps: weeks.iter().map(|w| w.reps).collect(),
        planned: weeks.iter().map(|w| w.planned_reps).collect(),
        sets: weeks.iter().map(|w| w.sets).collect(),
        moved: weeks.iter().map(|w| w.moved).collect(),
    };
    let load = format!(
        "Heaviest work load by week, {}; a square: the back moved",
        unit.word()
    );
    let charts = [
        (load.as_str(), chart::loads(&drawn)),
        ("Reps made by week; pale: planned", chart::reps(&drawn)),
        (
            "Work sets by week, pale; in front: the back moved",
            chart::backs(&drawn),
        ),
    ];
    html! {
        section class="lift" {
            h2 { (first.lift) }
            div class="charts" {
                @for (words, svg) in charts { @if let Some(svg) = svg {
                    figure { (PreEscaped(svg)) figcaption { (words) } }
                } }
            }
            table {
                thead { tr {
                    th scope="col" { "Week of" }
                    th scope="col" { "Heaviest" }
                    th scope="col" { "Reps" }
                    th scope="col" { "Back" }
                } }
                tbody { @for week in weeks.iter().rev() { tr {
                    th scope="row" { time datetime=(week.week) { (week.week) } }
                    td { (week.heaviest.words(unit)) }
                    td { (week.reps) " of " (week.planned_reps) }
                    td { @if week.moved == 0 { "kept" } @else {
                        "moved in " (week.moved) " of " (week.sets)
                    } }
                } } }
            }
        }
        "\n"
    }
}

/// The plan against what was done.
pub(crate) fn plan_table(rows: &[PlannedRow], with_lifter: bool) -> Markup {
    if rows.is_empty() {
        return html! { p { "No plan is kept for these days." } };
    }
    html! {
        table class="plan" {
            thead { tr {
                th scope="col" { "Day" }
                @if with_lifter { th scope="col" { "Lifter" } }
                th scope="col" { "Planned" }
                th scope="col" { "Done" }
            } }
            tbody { @for row in rows { tr {
                th scope="row" { time datetime=(row.date) { (short_day(&row.date)) } }
                @if with_lifter {
                    td { a href=(address("/coach/lifter", &row.lifter)) { (row.lifter) } }
                }
                td { (row.lift) ": " (asked(row)) @if !row.note.is_empty() {
                    " " span class="note" { (row.note) }
                } }
                td { (done(row)) }
            } } }
        }
    }
}

/// "2 × 5 at 180 kg", "3 × 3 at 80 % of the best".
fn asked(row: &PlannedRow) -> String {
    let sets = format!("{} \u{d7} {}", row.sets, row.reps);
    match (row.load, row.share) {
        (Some(load), _) => {
            let words = row.unit.map(|unit| load.words(unit));
            format!(
                "{sets} at {}",
                words.unwrap_or_else(|| load.exact(Default::default()))
            )
        }
        (None, Some(share)) => {
            let percent = f64::from(share) / 100.0;
            format!("{sets} at {percent} % of the best")
        }
        (None, None) => sets,
    }
}

/// "2 sets, 9 of 10 reps, 180 kg, back moved in 1".
fn done(row: &PlannedRow) -> String {
    if row.done_sets == 0 {
        return "\u{2013}".into();
    }
    let mut words = format!(
        "{} of {} sets, {} of {} reps",
        row.done_sets,
        row.sets,
        row.done_reps,
        row.sets * row.reps
    );
    if let (Some(load), Some(unit)) = (row.done_load, row.unit) {
        words.push_str(&format!(", {}", load.words(unit)));
    }
    words.push_str(&match row.moved {
        0 => ", back kept".into(),
        n => format!(", back moved in {n}"),
    });
    words
}
