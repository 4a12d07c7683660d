//! One lifter's day as it is changed: each row's cells, another day for it, a row more. Plain
//! forms; each says which plan its reader saw.
//!
//! Refuses: doing it; the kiosk checks it as it checks a plan.
use crate::plan_table::asked;
use crate::programme::Shown;
use crate::week_grid::{Became, DAYS};
use crate::words as w;
use chrono::{Days, NaiveDate};
use journal::{LoadWish, PlannedRow};
use maud::{Markup, html};
use std::collections::BTreeSet;
use view::Language;
use view::week_deed::{self, BACK, PlanLine, mark};

/// Where the forms go.
const HERE: &str = "/coach/week";

/// A lifter's day, and the plan of two weeks from the Monday of its week.
pub(crate) struct Cell<'c> {
    pub(crate) lifter: &'c str,
    pub(crate) day: NaiveDate,
    pub(crate) first: NaiveDate,
    pub(crate) today: NaiveDate,
    pub(crate) rows: &'c [Shown],
}

impl Cell<'_> {
    /// The lifter's rows of a day.
    fn of(&self, day: NaiveDate) -> impl Iterator<Item = &Shown> {
        let day = day.to_string();
        let own = self.rows.iter();
        own.filter(move |shown| shown.row.lifter == self.lifter && shown.row.date == day)
    }

    /// The plan's own rows of a day, as they are numbered there.
    fn planned(&self, day: NaiveDate) -> impl Iterator<Item = (usize, &Shown)> {
        let own = self.of(day).filter(|shown| !shown.row.by_programme);
        own.enumerate()
    }

    fn days(&self) -> impl Iterator<Item = NaiveDate> + use<> {
        let first = self.first;
        (0..week_deed::DAYS).filter_map(move |on| first.checked_add_days(Days::new(on)))
    }

    fn mark(&self) -> String {
        let days = self.days();
        let lines = days.flat_map(|day| {
            self.planned(day).map(move |(_, shown)| {
                let row = &shown.row;
                PlanLine {
                    date: day,
                    lift: &row.lift,
                    sets: row.sets,
                    reps: row.reps,
                    load: row.load,
                    note: &row.note,
                }
            })
        });
        mark(lines)
    }

    /// What every form says.
    fn hidden(&self, what: &str) -> Markup {
        html! {
            input type="hidden" name="do" value=(what);
            input type="hidden" name="lifter" value=(self.lifter);
            input type="hidden" name="day" value=(self.day);
            input type="hidden" name="first" value=(self.first);
            input type="hidden" name="mark" value=(self.mark());
        }
    }
}

/// The forms of a cell.
pub(crate) fn change(say: Language, cell: &Cell<'_>) -> Markup {
    let today = cell.today.to_string();
    let is_open = cell.day >= cell.today;
    let is_late = cell.today.signed_duration_since(cell.day).num_days() > BACK;
    let begun = |shown: &Shown| shown.row.done_sets > 0;
    let free: Vec<_> = cell
        .planned(cell.day)
        .filter(|(_, shown)| !begun(shown))
        .collect();
    let title = format!("{}, {}", cell.lifter, say.date(cell.day));
    html! {
        section class="change" id="change" aria-labelledby="change-title" {
            h2 id="change-title" { (title) }
            @for shown in cell.of(cell.day).filter(|shown| shown.row.by_programme || begun(shown)) {
                p {
                    (say.shipped(&shown.row.lift)) ": " (asked(say, shown)) ". "
                    @if Became::of(&shown.row, &today) == Became::Filled {
                        (say.pick(w::FILLED_HERE))
                    }
                    @else if begun(shown) { (say.pick(w::BEGUN_STAYS)) }
                }
            }
            @if is_open { @for (at, shown) in &free { (row(say, cell, *at, &shown.row)) } }
            @if !free.is_empty() && !is_late { (other_day(say, cell, &free)) }
            @if is_open { (one_more(say, cell)) }
            @else { p { (say.pick(w::DAY_IS_OVER)) } }
            p { a href=(format!("{HERE}?from={}", cell.first)) { (say.pick(w::LEAVE_AS_IT_IS)) } }
        }
    }
}

/// A row's cells, as a plan has them.
fn row(say: Language, cell: &Cell<'_>, at: usize, row: &PlannedRow) -> Markup {
    let load = load_text(row);
    html! {
        @if let Some(load) = load {
            form class="row" method="post" action=(HERE) {
                (cell.hidden("row"))
                input type="hidden" name="at" value=(at);
                (cells(say, &row.lift, (&row.sets.to_string(), &row.reps.to_string(), &load)))
                button class="main" { (say.pick(w::KEEP_ROW)) }
            }
        } @else { p { (say.shipped(&row.lift)) ": " (say.pick(w::ROW_OF_FILE)) } }
        form class="off" method="post" action=(HERE) {
            (cell.hidden("off"))
            input type="hidden" name="at" value=(at);
            button { (say.fill(w::TAKE_OFF, &[&say.shipped(&row.lift)])) }
        }
    }
}

fn cells(say: Language, lift: &str, (sets, reps, load): (&str, &str, &str)) -> Markup {
    let one = |name: &str, words: &str, value: &str, most: u8| {
        html! {
            label class=(name) {
                (words)
                input name=(name) value=(value) required maxlength=(most) autocomplete="off";
            }
        }
    };
    html! {
        label class="lift" {
            (say.pick(w::LIFT))
            input name="lift" value=(lift) required maxlength="80" autocomplete="off" list="lifts";
        }
        (one("sets", say.pick(w::SETS), sets, 4))
        (one("reps", say.pick(w::REPS), reps, 4))
        (one("load", say.pick(w::LOAD), load, 24))
    }
}

/// The load as it is typed; `None` where a file says more than a cell can.
fn load_text(row: &PlannedRow) -> Option<String> {
    let unit = row.unit.unwrap_or_default();
    match row.load {
        LoadWish::Mass(mass) => Some(mass.exact(unit)),
        LoadWish::OfBest(share) => Some(format!("{} %", hundredths(share))),
        LoadWish::OfTraining(_) | LoadWish::OfTop(_) | LoadWish::More(_) | LoadWish::Due => None,
    }
}

/// "82.5" of 8250.
fn hundredths(share: u32) -> String {
    let text = format!("{}.{:02}", share / 100, share % 100);
    text.trim_end_matches('0').trim_end_matches('.').to_owned()
}

/// Another day for a row, or for all of them.
fn other_day(say: Language, cell: &Cell<'_>, free: &[(usize, &Shown)]) -> Markup {
    let all = cell.planned(cell.day).count();
    let there = |day: NaiveDate| {
        let lifts: BTreeSet<String> = cell.of(day).map(|of| say.shipped(&of.row.lift)).collect();
        match lifts.is_empty() {
            true => String::new(),
            false => format!(": {}", lifts.into_iter().collect::<Vec<_>>().join(", ")),
        }
    };
    let days = cell
        .days()
        .filter(|day| *day >= cell.today && *day != cell.day);
    let days: Vec<NaiveDate> = days.collect();
    html! {
        @if !days.is_empty() { form class="row" method="post" action=(HERE) {
            (cell.hidden("move"))
            label {
                (say.pick(w::WHAT_MOVES))
                select name="at" {
                    @if free.len() == all && all > 1 {
                        option value="all" { (say.pick(w::WHOLE_DAY)) }
                    }
                    @for (at, shown) in free {
                        option value=(at) { (say.shipped(&shown.row.lift)) }
                    }
                }
            }
            label {
                (say.pick(w::TO_WHICH_DAY))
                select name="to" required {
                    option value="" { (say.pick(w::CHOOSE)) }
                    @for day in days { option value=(day) { (say.short_day(day)) (there(day)) } }
                }
            }
            (beside(say))
            button { (say.pick(w::MOVE_IT)) }
        } }
    }
}

fn beside(say: Language) -> Markup {
    html! {
        label class="beside" {
            input type="checkbox" name="beside" value="yes";
            (say.pick(w::BESIDE))
        }
    }
}

/// An empty row.
fn one_more(say: Language, cell: &Cell<'_>) -> Markup {
    let known: BTreeSet<&str> = cell.rows.iter().map(|of| of.row.lift.as_str()).collect();
    let is_filled = cell
        .of(cell.day)
        .any(|of| of.row.by_programme && of.row.done_sets == 0);
    html! {
        details open[cell.of(cell.day).next().is_none()] {
            summary { (say.pick(w::ONE_MORE)) }
            form class="row" method="post" action=(HERE) {
                (cell.hidden("add"))
                (cells(say, "", ("", "", "")))
                @if is_filled { (beside(say)) }
                button class="main" { (say.pick(w::KEEP_ROW)) }
            }
        }
        datalist id="lifts" { @for lift in known { option value=(lift); } }
    }
}

const _: () = assert!(
    DAYS < week_deed::DAYS,
    "a mark is about more than the week shown"
);
