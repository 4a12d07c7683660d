//! The page of sessions: latest day first, by lifter, lift and set. Plain HTML, no script.
//!
//! Refuses: names as markup; every text is escaped by the template.
use crate::stream::{Sink, Stop};
use chrono::NaiveDate;
use journal::{RecordReader, SetRow};
use maud::{DOCTYPE, Markup, PreEscaped, html};
use std::io::{self, Write as _};
use std::ops::ControlFlow;

/// Training days on one page.
const DAYS: u32 = 30;

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
    put(sink, &head())?;
    let shown = days.len().min(DAYS as usize);
    match (record, days.first(), days[..shown].last()) {
        (Some(record), Some(last), Some(first)) => write_days(record, first, last, sink)?,
        _ if before.is_some() => put(
            sink,
            &html! { p { "No sets were recorded before that day." } },
        )?,
        _ => put(sink, &html! { p { "No sets have been recorded yet." } })?,
    }
    let older = days.get(shown).and(days[..shown].last());
    Ok(put(
        sink,
        &foot(before.is_some(), older.map(String::as_str)),
    )?)
}

/// Writes lift by lift; no more than one lift's sets are held.
fn write_days(record: &RecordReader, first: &str, last: &str, sink: &mut Sink) -> Result<(), Stop> {
    let mut lift: Vec<SetRow> = Vec::new();
    let mut shown = None;
    let mut outcome = Ok(());
    record.each_set_of_days(first, last, |set| {
        if lift
            .last()
            .is_some_and(|former| former.lift_no != set.lift_no)
        {
            outcome = put(sink, &lift_table(&lift, &mut shown));
            lift.clear();
        }
        lift.push(set);
        if outcome.is_ok() {
            ControlFlow::Continue(())
        } else {
            ControlFlow::Break(())
        }
    })?;
    outcome?;
    Ok(put(sink, &lift_table(&lift, &mut shown))?)
}

fn put(sink: &mut Sink, markup: &Markup) -> io::Result<()> {
    sink.write_all(markup.0.as_bytes())
}

fn head() -> Markup {
    html! {
        (DOCTYPE)
        (PreEscaped("<html lang=\"en\">"))
        head {
            meta charset="utf-8";
            meta name="viewport" content="width=device-width, initial-scale=1";
            title { "Sessions" }
            link rel="stylesheet" href="/style.css";
        }
        (PreEscaped("<body>\n<main>\n"))
        h1 { "Sessions" }
        nav aria-label="Downloads" {
            "All sets: " a href="/record.csv" { "CSV" } " " a href="/record.json" { "JSON" }
        }
    }
}

fn foot(later: bool, older: Option<&str>) -> Markup {
    html! {
        @if later || older.is_some() {
            nav aria-label="Pages" {
                @if later { a href="/" { "Latest sessions" } " " }
                @if let Some(day) = older {
                    a href={ "/?before=" (day) } { "Older sessions" }
                }
            }
        }
        (PreEscaped("</main>\n</body>\n</html>\n"))
    }
}

/// One lift, under the headings of its day and lifter where `shown`, the former ones, differ.
fn lift_table(lift: &[SetRow], shown: &mut Option<(String, String)>) -> Markup {
    let Some(set) = lift.first() else {
        return html! {};
    };
    let (day, lifter) = match shown {
        Some((day, lifter)) => (*day != set.date, *day != set.date || *lifter != set.lifter),
        None => (true, true),
    };
    *shown = Some((set.date.clone(), set.lifter.clone()));
    html! {
        @if day { h2 { time datetime=(set.date) { (long_day(&set.date)) } } }
        @if lifter { h3 { (set.lifter) } }
        table {
            caption { (set.lift) " " span { (set.rack) } }
            thead { tr {
                th scope="col" { "Set" }
                th scope="col" { "Load" }
                th scope="col" { "Reps" }
                th scope="col" { "Back" }
            } }
            tbody { @for set in lift { (row(set)) } }
        }
        "\n"
    }
}

fn row(set: &SetRow) -> Markup {
    let off_plan = set.reps != set.planned_reps;
    html! {
        tr {
            th scope="row" { (set.kind) }
            td { (set.load.words(set.unit)) }
            td { (set.reps) @if off_plan { " of " (set.planned_reps) } }
            td { @match set.back_moved_at {
                None => "kept",
                Some(rep) => { "moved at rep " (rep) },
            } }
        }
    }
}

/// "Monday 2 March 2026"; a day that the calendar does not have stays as it is.
fn long_day(date: &str) -> String {
    date.parse::<NaiveDate>().map_or_else(
        |_| date.to_owned(),
        |day| day.format("%A %-d %B %Y").to_string(),
    )
}
