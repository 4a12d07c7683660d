//! What the pages share: head, foot, addresses, tables of sets. Plain HTML, no script.
//!
//! Refuses: names as markup; every text is escaped by the template.
use crate::stream::{Sink, Stop};
use chrono::NaiveDate;
use journal::{RecordError, SetRow};
use maud::{DOCTYPE, Markup, PreEscaped, html};
use std::io::{self, Write as _};
use std::ops::ControlFlow;

/// Whose eyes a page is for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Nav {
    /// Anybody's.
    All,
    /// The coach's.
    Coach,
    /// One lifter's own.
    Own,
}

pub(crate) fn put(sink: &mut Sink, markup: &Markup) -> io::Result<()> {
    sink.write_all(markup.0.as_bytes())
}

/// From the doctype to the heading.
pub(crate) fn head(title: &str, nav: Nav) -> Markup {
    html! {
        (DOCTYPE)
        (PreEscaped("<html lang=\"en\">"))
        head {
            meta charset="utf-8";
            meta name="viewport" content="width=device-width, initial-scale=1";
            title { (title) }
            link rel="stylesheet" href="/style.css";
        }
        (PreEscaped("<body>\n<main>\n"))
        @match nav {
            Nav::All => {}
            Nav::Own => { p class="notice" { "This page opens once and closes ten minutes after the lift." } }
            Nav::Coach => nav aria-label="Pages" {
                a href="/coach" { "Sessions" }
                a href="/coach/plan" { "Plan" }
                a href="/coach/desk" { "Desk" }
                a href="/board" { "Floor" }
                form method="post" action="/sign-out" { button { "Sign out" } }
            }
        }
        h1 { (title) }
    }
}

/// The end of a page.
pub(crate) fn foot() -> Markup {
    html! { (PreEscaped("</main>\n</body>\n</html>\n")) }
}

/// `front` and a name as a path's segment, percent-encoded (RFC 3986).
pub(crate) fn address(front: &str, name: &str) -> String {
    let mut text = format!("{front}/");
    for byte in name.bytes() {
        if byte.is_ascii_alphanumeric() || matches!(byte, b'-' | b'_' | b'~') {
            text.push(char::from(byte));
        } else {
            text.push_str(&format!("%{byte:02X}"));
        }
    }
    text
}

/// Writes lift by lift what `read` visits; no more than one lift's sets are held.
pub(crate) fn write_sets(
    read: impl FnOnce(&mut dyn FnMut(SetRow) -> ControlFlow<()>) -> Result<(), RecordError>,
    sink: &mut Sink,
) -> Result<(), Stop> {
    let mut lift: Vec<SetRow> = Vec::new();
    let mut shown = None;
    let mut outcome = Ok(());
    read(&mut |set| {
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
pub(crate) fn long_day(date: &str) -> String {
    date.parse::<NaiveDate>().map_or_else(
        |_| date.to_owned(),
        |day| day.format("%A %-d %B %Y").to_string(),
    )
}

/// "Mon 2 Mar 2026"; a day that the calendar does not have stays as it is.
pub(crate) fn short_day(date: &str) -> String {
    date.parse::<NaiveDate>().map_or_else(
        |_| date.to_owned(),
        |day| day.format("%a %-d %b %Y").to_string(),
    )
}
