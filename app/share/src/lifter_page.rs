//! One lifter's pages: the course of each lift with charts, the plan against what was done, sessions.
//! Plain HTML and SVG, no script; the coach and the lifter see the same.
//!
//! Refuses: names as markup; every text is escaped by the template.
use crate::course::{Course, courses};
use crate::course_page;
use crate::html::{foot, head, put, write_sets};
use crate::look::Look;
use crate::masthead::Nav;
use crate::plan_table::plan_table;
use crate::programme::{Laid, Shown, together};
use crate::stream::{Sink, Stop};
use crate::words as w;
use chrono::{Days, NaiveDate};
use journal::{LifterSum, LoadWish, Mass, RecordReader};
use maud::{Markup, html};
use std::ops::ControlFlow;
use view::Language;
use view::next_all::CoachLine;

/// Weeks that the charts go back from the latest day of the lifter.
const WEEKS: u64 = 26;
/// From the first day to the last.
const EVER: (&str, &str) = ("0000-01-01", "9999-12-31");
/// Most rows of plan shown.
pub(crate) const PLAN_ROWS: u32 = 400;
/// Most loads to come on a chart.
const NEXT_MAX: usize = 8;
/// Most sets listed one by one.
const SETS_MAX: u32 = 300;

/// Whose page, for whose eyes, and what of it is asked for.
pub(crate) struct Of<'o> {
    pub(crate) lifter: &'o str,
    pub(crate) nav: Nav,
    pub(crate) look: &'o Look,
    /// The coach's list: what is due.
    pub(crate) due: &'o [CoachLine],
    /// Where it can be had as files.
    pub(crate) home: Option<&'o str>,
}

/// Writes the page of a lifter.
pub(crate) fn write(
    say: Language,
    (record, laid): (Option<&RecordReader>, &Laid),
    of: &Of<'_>,
    sink: &mut Sink,
) -> Result<(), Stop> {
    let (lifter, nav) = (of.lifter, of.nav);
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
    if let Some(home) = of.home {
        put(sink, &files(say, home))?;
    }
    if nothing {
        put(sink, &html! { p { (say.pick(w::NOTHING_OF)) } })?;
        return Ok(put(sink, &foot(say))?);
    }
    if let (Some(record), Some(_)) = (record, &known) {
        charts(say, (record, laid), (of, &rows), sink)?;
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

/// The record to be taken home.
fn files(say: Language, home: &str) -> Markup {
    html! {
        p class="files" {
            strong { (say.pick(w::TAKE_HOME)) ": " }
            a href={ (home) "/record.csv" } { "CSV" } " "
            a href={ (home) "/record.json" } { "JSON" } " "
            (say.pick(w::TAKE_HOME_HINT))
        }
    }
}

/// Writes each lift's course, of the days and lifts that are asked for; beside somebody else's where
/// that is asked.
fn charts(
    say: Language,
    (record, laid): (&RecordReader, &Laid),
    (of, rows): (&Of<'_>, &[Shown]),
    sink: &mut Sink,
) -> Result<(), Stop> {
    let all = courses(record, of.lifter)?;
    let lifts: Vec<String> = all.iter().map(|course| course.lift.clone()).collect();
    if of.nav != Nav::Own {
        let people = record.lifters()?.into_iter().map(|known| known.lifter);
        let others: Vec<String> = people.filter(|name| name != of.lifter).collect();
        put(sink, &filter(say, of, (&lifts, &others)))?;
    }
    let last = all
        .iter()
        .filter_map(|course| course.days.last())
        .map(|day| day.date);
    let last = of.look.to.or(last.max()).unwrap_or(NaiveDate::MAX);
    let from = last.checked_sub_days(Days::new(7 * WEEKS)).unwrap_or(last);
    let from = of.look.from.unwrap_or(from);
    let wanted = |course: &Course| {
        of.look
            .lift
            .as_ref()
            .is_none_or(|lift| *lift == course.lift)
    };
    let beside = match of.look.beside.as_deref() {
        Some(other) => courses(record, other)?,
        None => Vec::new(),
    };
    let mut shown = 0;
    for course in all.into_iter().filter(wanted) {
        let course = course.within(from, last);
        if course.weeks.is_empty() {
            continue;
        }
        shown += 1;
        let other = beside.iter().find(|other| other.lift == course.lift);
        let other = other.map(|other| other.clone().within(from, last));
        let next = next_of(&course.lift, laid, (of, rows));
        put(sink, &course_page::lift(say, &course, &next))?;
        if let (Some(other), Some(name)) = (other, of.look.beside.as_deref()) {
            let names = (of.lifter, name);
            put(sink, &course_page::beside(say, (&course, &other), names))?;
        }
    }
    let (class, words) = match shown {
        0 => (None, w::NO_COURSE),
        _ => (Some("hint"), w::HARD_HINT),
    };
    Ok(put(sink, &html! { p class=[class] { (say.pick(words)) } })?)
}

/// Loads of a lift that are to come: those of the plan, else the one that is due.
fn next_of(lift: &str, laid: &Laid, (of, rows): (&Of<'_>, &[Shown])) -> Vec<(NaiveDate, Mass)> {
    let Some(today) = laid.today.as_ref().map(|today| today.date) else {
        return Vec::new();
    };
    let to_come = rows.iter().filter_map(|shown| {
        let date: NaiveDate = shown.row.date.parse().ok()?;
        let is_open = date >= today && shown.row.done_sets == 0 && shown.row.lift == lift;
        let load = match shown.row.load {
            LoadWish::Mass(mass) => Some(mass),
            LoadWish::OfBest(_)
            | LoadWish::OfTraining(_)
            | LoadWish::OfTop(_)
            | LoadWish::More(_)
            | LoadWish::Due => shown.now,
        };
        is_open.then_some((date, load?))
    });
    let mut next: Vec<_> = to_come.collect();
    next.sort_unstable();
    next.truncate(NEXT_MAX);
    if next.is_empty() {
        let due = of.due.iter().filter(|line| line.lifter == of.lifter);
        let mut due = due.filter(|line| line.of.as_ref().is_some_and(|(of, _)| of == lift));
        let due = due.find_map(|line| line.due.as_ref()?.decision.due());
        next.extend(due.map(|load| (today, load)));
    }
    next
}

/// Which lift, which days, beside whom.
fn filter(say: Language, of: &Of<'_>, (lifts, others): (&[String], &[String])) -> Markup {
    let look = of.look;
    let day = |name: &str, words: &str, value: Option<NaiveDate>| {
        let value = value.map(|day| day.to_string());
        html! { label { (words) input type="date" name=(name) value=[value]; } }
    };
    html! {
        form class="filter" method="get" {
            label {
                (say.pick(w::LIFT))
                select name="lift" {
                    option value="" { (say.pick(w::ALL_LIFTS)) }
                    @for lift in lifts {
                        option value=(lift) selected[look.lift.as_ref() == Some(lift)] {
                            (say.shipped(lift))
                        }
                    }
                }
            }
            (day("from", say.pick(w::FROM_DAY), look.from))
            (day("to", say.pick(w::TO_DAY), look.to))
            label {
                (say.pick(w::COMPARE))
                select name="with" {
                    option value="" { (say.pick(w::NOBODY_ELSE)) }
                    @for name in others {
                        option value=(name) selected[look.beside.as_ref() == Some(name)] { (name) }
                    }
                }
            }
            button { (say.pick(w::SHOW)) }
        }
    }
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
