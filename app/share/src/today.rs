//! The coach's day on one page: who waits for a word, who trains today and what is due, the floor
//! as it is now, the last time, the week. Plain HTML, no script; it prints.
//!
//! Refuses: deciding anything; the list is the one that desk and command line have.
use crate::board::{Board, BoardTurn};
use crate::html::{address, foot, head, put};
use crate::lifter_page::PLAN_ROWS;
use crate::masthead::{Nav, Tab};
use crate::plan_table::{asked, done};
use crate::programme::{Laid, Shown, together};
use crate::stream::{Sink, Stop};
use crate::today_forms;
use crate::week_grid::{Grid, monday};
use crate::words as w;
use chrono::Days;
use journal::{RecordReader, SetRow};
use maud::{Markup, html};
use std::collections::BTreeSet;
use std::ops::ControlFlow;
use std::sync::Arc;
use view::Language;
use view::next_all;
use view::next_all::{CoachLine, Concern};

/// What the kiosk tells beside the record.
pub(crate) struct Now {
    pub(crate) laid: Laid,
    pub(crate) due: Vec<CoachLine>,
    pub(crate) board: Option<Arc<Board>>,
    /// What came of the last deed.
    pub(crate) told: Option<String>,
}

/// Writes the page.
pub(crate) fn write(
    say: Language,
    record: Option<&RecordReader>,
    now: &Now,
    sink: &mut Sink,
) -> Result<(), Stop> {
    let nav = Nav::Coach(Tab::Today);
    let Some(today) = &now.laid.today else {
        put(sink, &head(say, say.pick(w::TODAY), nav, None))?;
        put(sink, &html! { p { (say.pick(w::NO_DAY_YET)) } })?;
        return Ok(put(sink, &foot(say))?);
    };
    let date = today.date;
    let day = date.to_string();
    put(sink, &head(say, &w::long_day(say, &day), nav, Some(today)))?;
    if let Some(told) = &now.told {
        put(sink, &html! { p class="notice" role="status" { (told) } })?;
    }
    let monday = monday(date);
    let (first, last) = (monday.to_string(), (monday + Days::new(6)).to_string());
    let days = (first.as_str(), last.as_str());
    let rows = record.map_or(Ok(Vec::new()), |record| {
        record.planned(days, None, PLAN_ROWS)
    })?;
    let rows = together(rows, &now.laid, days, None);
    let last_time = match record {
        Some(record) => last_time(say, record, &day)?,
        None => html! {},
    };
    let page = html! {
        div class="columns" {
            section {
                (needs(say, &now.due))
                (today_forms::others(say, &now.due))
                (today_forms::health(say, now.laid.units.keys(), date))
            }
            section {
                (trains(say, &rows, (&day, &now.due)))
                (floor(say, now.board.as_deref()))
                (last_time)
            }
        }
        h2 { a href="/coach/week" { (say.pick(w::THIS_WEEK)) } }
        (Grid {
            monday,
            today: date,
            rows: &rows,
            lifters: BTreeSet::new(),
            open: None,
            changes: true,
        }.table(say))
    };
    put(sink, &page)?;
    Ok(put(sink, &foot(say))?)
}

/// Who waits for the coach's word, the most urgent first, and why.
fn needs(say: Language, due: &[CoachLine]) -> Markup {
    let waits: Vec<_> = due.iter().filter(|line| line.concern.waits()).collect();
    html! {
        h2 { (say.pick(w::NEEDS_YOU)) " " span class="count" { (waits.len()) } }
        @if waits.is_empty() { p { (say.pick(w::NOBODY_WAITS)) } }
        @else { ul class="needs" { @for line in waits { li class=[urgent(line).then_some("urgent")] {
            p class="who" { strong { (next_all::whose(say, line)) } ": " (say.say(next_all::state_of(&line.concern))) }
            p class="why" { (next_all::because(say, line)) }
            (today_forms::about(say, line))
            p { a href=(address("/coach/lifter", &line.lifter)) { (say.pick(w::SEE_RECORD)) } }
        } } } }
    }
}

/// Whether somebody may come to harm.
fn urgent(line: &CoachLine) -> bool {
    matches!(
        line.concern,
        Concern::Hurt { .. } | Concern::LooksWrong { .. } | Concern::OverReaching
    )
}

/// Who trains today: what the plan or the programme asks, what is due and why, what is done of it.
fn trains(say: Language, rows: &[Shown], (day, due): (&str, &[CoachLine])) -> Markup {
    let of_today: Vec<_> = rows.iter().filter(|shown| shown.row.date == day).collect();
    let why = |shown: &Shown| {
        let is = |line: &&CoachLine| {
            let lift = line.of.as_ref().map(|(lift, _)| lift.as_str());
            line.lifter == shown.row.lifter && lift.is_none_or(|lift| lift == shown.row.lift)
        };
        let line = due.iter().find(is);
        line.map_or_else(String::new, |line| next_all::because(say, line))
    };
    html! {
        h2 { (say.pick(w::TRAINS_TODAY)) }
        @if of_today.is_empty() { p { (say.pick(w::NOBODY_TRAINS)) } }
        @else { table class="plan all today" {
            thead { tr {
                th scope="col" { (say.pick(w::LIFTER)) }
                th scope="col" { (say.pick(w::PLANNED)) }
                th scope="col" { (say.pick(w::DUE_AND_WHY)) }
                th scope="col" { (say.pick(w::DONE)) }
            } }
            tbody { @for shown in of_today { tr {
                th scope="row" {
                    a href=(address("/coach/lifter", &shown.row.lifter)) { (shown.row.lifter) }
                }
                td { (say.shipped(&shown.row.lift)) ": " (asked(say, shown)) }
                td { (why(shown)) }
                td class="done" data-word=(say.pick(w::DONE)) { (done(say, &shown.row)) }
            } } }
        } }
    }
}

/// The floor as the kiosk shows it; nothing where it has not told for a while.
fn floor(say: Language, board: Option<&Board>) -> Markup {
    let turn = |turn: &BoardTurn| {
        let parts = [&turn.lifter, &turn.lift, &turn.load, &turn.reps, &turn.word];
        let parts: Vec<_> = parts.into_iter().filter(|part| !part.is_empty()).collect();
        parts.into_iter().cloned().collect::<Vec<_>>().join(", ")
    };
    html! {
        @if let Some(board) = board {
            h2 { (say.pick(w::ON_THE_FLOOR)) }
            @if !board.empty.is_empty() { p { (board.empty) } }
            @for rack in &board.racks {
                h3 { (rack.name) }
                ol class="turns" {
                    @for of in rack.up.iter().chain(&rack.next).chain(&rack.then) {
                        li { (turn(of)) }
                    }
                }
            }
        }
    }
}

/// One lift of the last day.
struct LastLift {
    lifter: String,
    lift: String,
    words: String,
}

/// What was done the last time, lift by lift: work sets, the heaviest load, backs that moved.
fn last_time(say: Language, record: &RecordReader, today: &str) -> Result<Markup, Stop> {
    let Some(last) = record.days(Some(today), 1)?.pop() else {
        return Ok(html! {});
    };
    let (mut lifts, mut sets) = (Vec::new(), Vec::<SetRow>::new());
    record.each_set_of_days(&last, &last, |set| {
        if sets.first().is_some_and(|of| of.lift_no != set.lift_no) {
            lifts.extend(summed(say, &sets));
            sets.clear();
        }
        if set.is_work() {
            sets.push(set);
        }
        ControlFlow::Continue(())
    })?;
    lifts.extend(summed(say, &sets));
    Ok(html! {
        h2 { (say.pick(w::LAST_TIME)) ": " time datetime=(last) { (w::long_day(say, &last)) } }
        table {
            thead { tr {
                th scope="col" { (say.pick(w::LIFTER)) }
                th scope="col" { (say.pick(w::LIFT)) }
                th scope="col" { (say.pick(w::DONE)) }
            } }
            tbody { @for of in &lifts { tr {
                th scope="row" { a href=(address("/coach/lifter", &of.lifter)) { (of.lifter) } }
                td { (say.shipped(&of.lift)) }
                td { (of.words) }
            } } }
        }
    })
}

fn summed(say: Language, sets: &[SetRow]) -> Option<LastLift> {
    let heaviest = sets.iter().max_by_key(|set| set.load)?;
    let short = sets
        .iter()
        .filter(|set| set.reps < set.planned_reps)
        .count();
    let moved = sets.iter().find_map(|set| set.back_moved_at);
    let load = say.mass(heaviest.load, heaviest.unit);
    let mut words = vec![say.fill(w::WORK_SETS, &[&sets.len().to_string(), &load])];
    if short > 0 {
        words.push(say.count(w::SHORT_IN, short));
    }
    words.push(match moved {
        Some(rep) => say.fill(w::BACK_MOVED_AT, &[&rep.to_string()]),
        None => say.say(w::BACK_HELD),
    });
    Some(LastLift {
        lifter: heaviest.lifter.clone(),
        lift: heaviest.lift.clone(),
        words: words.join("; "),
    })
}
