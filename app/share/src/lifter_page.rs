//! One lifter's pages: weeks of each lift with charts, the plan against what was done, sessions.
//! Plain HTML and SVG, no script; the coach and the lifter see the same.
//!
//! Refuses: names as markup; every text is escaped by the template.
use crate::chart::{self, Weeks};
use crate::html::{address, foot, head, put, write_sets};
use crate::masthead::Nav;
use crate::programme::{Laid, Shown, together};
use crate::stream::{Sink, Stop};
use crate::words as w;
use chrono::{Days, NaiveDate};
use journal::{LifterSum, LoadWish, PlannedRow, RecordReader, WeekRow};
use maud::{Markup, PreEscaped, html};
use std::ops::ControlFlow;
use view::Language;

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
    say: Language,
    (record, laid): (Option<&RecordReader>, &Laid),
    (lifter, nav): (&str, Nav),
    sink: &mut Sink,
) -> Result<(), Stop> {
    let known = match record {
        Some(record) => record.lifters()?.into_iter().find(|l| l.lifter == lifter),
        None => None,
    };
    let rows = match record {
        Some(record) => record.planned(EVER, Some(lifter), PLAN_ROWS)?,
        None => Vec::new(),
    };
    let rows = together(rows, laid, EVER, Some(lifter));
    let nothing = known.is_none() && rows.is_empty();
    if nothing && nav != Nav::Own {
        return Err(Stop::Nobody);
    }
    put(sink, &head(say, lifter, nav, laid.today.as_ref()))?;
    if nothing {
        put(sink, &html! { p { (say.pick(w::NOTHING_OF)) } })?;
        return Ok(put(sink, &foot(say))?);
    }
    let last = known
        .as_ref()
        .and_then(|known| known.last.parse::<NaiveDate>().ok());
    if let (Some(record), Some(last)) = (record, last) {
        let from = last.checked_sub_days(Days::new(7 * WEEKS)).unwrap_or(last);
        let weeks = record.weeks(lifter, &from.to_string())?;
        for of_lift in weeks.chunk_by(|a, b| a.lift == b.lift) {
            put(sink, &lift(say, of_lift))?;
        }
    }
    put(
        sink,
        &html! { h2 { (say.pick(w::PLAN_AND_DONE)) } (plan_table(say, &rows, false)) },
    )?;
    if let (Some(record), Some(known)) = (record, known) {
        latest_sets(say, record, &known, sink)?;
    }
    Ok(put(sink, &foot(say))?)
}

/// Writes the lifter's latest sets, one by one.
fn latest_sets(
    say: Language,
    record: &RecordReader,
    known: &LifterSum,
    sink: &mut Sink,
) -> Result<(), Stop> {
    let lifter = known.lifter.as_str();
    put(sink, &html! { h2 { (say.pick(w::SETS)) } })?;
    write_sets(
        say,
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
        let (shown, all) = (SETS_MAX.to_string(), known.sets.to_string());
        let more = say.fill(w::LATEST_SETS, &[&shown, &all]);
        put(sink, &html! { p { (more) } })?;
    }
    Ok(())
}

/// One lift: its charts and its table of weeks.
fn lift(say: Language, weeks: &[WeekRow]) -> Markup {
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
    let load = say.fill(w::LOADS_CHART, &[unit.word()]);
    let charts = [
        (load.as_str(), chart::loads(say, &drawn)),
        (say.pick(w::REPS_CHART), chart::reps(say, &drawn)),
        (say.pick(w::BACKS_CHART), chart::backs(say, &drawn)),
    ];
    let of = |part: u32, whole: u32| say.fill(w::OF, &[&part.to_string(), &whole.to_string()]);
    let back = |week: &WeekRow| match week.moved {
        0 => say.say(w::KEPT),
        n => say.fill(w::MOVED_IN, &[&n.to_string(), &week.sets.to_string()]),
    };
    html! {
        section class="lift" {
            h2 { (say.shipped(&first.lift)) }
            div class="charts" {
                @for (words, svg) in charts { @if let Some(svg) = svg {
                    figure { (PreEscaped(svg)) figcaption { (words) } }
                } }
            }
            table {
                thead { tr {
                    th scope="col" { (say.pick(w::WEEK_OF)) }
                    th scope="col" { (say.pick(w::HEAVIEST)) }
                    th scope="col" { (say.pick(w::REPS)) }
                    th scope="col" { (say.pick(w::BACK)) }
                } }
                tbody { @for week in weeks.iter().rev() { tr {
                    th scope="row" { time datetime=(week.week) { (w::day_and_year(say, &week.week)) } }
                    td { (say.mass(week.heaviest, unit)) }
                    td { (of(week.reps, week.planned_reps)) }
                    td { (back(week)) }
                } } }
            }
        }
        "\n"
    }
}

/// The plan, and what programmes fill, against what was done.
pub(crate) fn plan_table(say: Language, rows: &[Shown], with_lifter: bool) -> Markup {
    if rows.is_empty() {
        return html! { p { (say.pick(w::NO_PLAN_HERE)) } };
    }
    html! {
        table class=(if with_lifter { "plan all" } else { "plan" }) {
            thead { tr {
                th scope="col" { (say.pick(w::DAY)) }
                @if with_lifter { th scope="col" { (say.pick(w::LIFTER)) } }
                th scope="col" { (say.pick(w::PLANNED)) }
                th scope="col" { (say.pick(w::DONE)) }
            } }
            tbody { @for shown @ Shown { row, programme, .. } in rows { tr {
                th scope="row" { time datetime=(row.date) { (w::short_day(say, &row.date)) } }
                @if with_lifter {
                    td { a href=(address("/coach/lifter", &row.lifter)) { (row.lifter) } }
                }
                td {
                    (say.shipped(&row.lift)) ": " (asked(say, shown))
                    @if row.by_programme {
                        " " span class="programme" { (by_programme(say, programme.as_deref())) }
                    }
                    @if !row.note.is_empty() { " " span class="note" { (row.note) } }
                }
                td class="done" data-word=(say.pick(w::DONE)) { (done(say, row)) }
            } } }
        }
    }
}

fn by_programme(say: Language, name: Option<&str>) -> String {
    name.map_or_else(
        || say.say(w::PROGRAMME),
        |name| say.fill(w::PROGRAMME_OF, &[name]),
    )
}

/// "2 × 5 at 180 kg", "3 × 3 at 80 % of the training max = 144 kg".
pub(crate) fn asked(say: Language, Shown { row, now, .. }: &Shown) -> String {
    let sets = format!("{} \u{d7} {}", row.sets, row.reps);
    // Of whom neither the gym nor the record knows the unit, kilos.
    let unit = row.unit.unwrap_or_default();
    let load = if let LoadWish::OfBest(share) = row.load {
        say.fill(w::OF_BEST, &[&say.percent(share)])
    } else {
        say.wish(row.load, unit)
    };
    let asked = say.fill(w::AT_LOAD, &[&sets, &load]);
    match now {
        Some(now) => format!("{asked} = {}", say.mass(*now, unit)),
        None => asked,
    }
}

/// "2 of 2 sets, 9 of 10 reps, 180 kg, back moved in 1".
pub(crate) fn done(say: Language, row: &PlannedRow) -> String {
    if row.done_sets == 0 {
        return "\u{2013}".into();
    }
    let (sets, of_sets) = (row.done_sets.to_string(), row.sets.to_string());
    let (reps, of_reps) = (row.done_reps.to_string(), (row.sets * row.reps).to_string());
    let mut parts = vec![say.fill(w::DONE_SETS, &[&sets, &of_sets, &reps, &of_reps])];
    if let (Some(load), Some(unit)) = (row.done_load, row.unit) {
        parts.push(say.mass(load, unit));
    }
    parts.push(match row.moved {
        0 => say.say(w::BACK_HELD),
        n => say.fill(w::BACK_MOVED_IN, &[&n.to_string()]),
    });
    parts.join(match say {
        Language::English => ", ",
        Language::German | Language::Spanish => "; ",
    })
}
