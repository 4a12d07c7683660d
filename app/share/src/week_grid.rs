//! Lifters by days: each cell what is planned and what became of it, by sign, word and colour.
//!
//! Refuses: judging; a row is done when so many work sets are done as were asked.
use crate::html::address;
use crate::programme::Shown;
use crate::words as w;
use chrono::{Datelike as _, Days, NaiveDate};
use journal::{LoadWish, Mass, PlannedRow};
use maud::{Markup, html};
use std::collections::BTreeSet;
use text::Phrase;
use view::Language;

/// Days of a grid.
pub(crate) const DAYS: u64 = 7;

/// What became of a row, and how it is shown.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(crate) enum Became {
    Planned,
    Filled,
    Part,
    Done,
    Moved,
    Missed,
}

impl Became {
    pub(crate) fn of(row: &PlannedRow, today: &str) -> Self {
        match row.done_sets {
            0 if row.date.as_str() < today => Self::Missed,
            0 if row.by_programme => Self::Filled,
            0 => Self::Planned,
            _ if row.moved > 0 => Self::Moved,
            done if done >= row.sets => Self::Done,
            _ => Self::Part,
        }
    }

    /// Class, sign and word.
    const fn look(self) -> (&'static str, &'static str, Phrase) {
        match self {
            Self::Planned => ("planned", "\u{25cb}", w::IS_PLANNED),
            Self::Filled => ("filled", "\u{25c7}", w::PROGRAMME),
            Self::Part => ("part", "\u{25d0}", w::IN_PART),
            Self::Done => ("well", "\u{2713}", w::IS_DONE),
            Self::Moved => ("moved", "\u{25a0}", w::BACK_MOVED),
            Self::Missed => ("missed", "\u{2013}", w::NOT_LIFTED),
        }
    }

    /// With what there is to add to the word.
    fn sign(self, say: Language, more: &str) -> Markup {
        let (class, sign, word) = self.look();
        html! { span class={ "sign " (class) } { (sign) " " (say.pick(word)) (more) } }
    }
}

/// A week, its rows in any order, and who is listed beside those of the rows.
pub(crate) struct Grid<'g> {
    pub(crate) monday: NaiveDate,
    pub(crate) today: NaiveDate,
    pub(crate) rows: &'g [Shown],
    pub(crate) lifters: BTreeSet<&'g str>,
    /// The cell that is being changed.
    pub(crate) open: Option<(&'g str, NaiveDate)>,
    /// Whether cells lead to where they are changed.
    pub(crate) changes: bool,
}

/// The address where a cell is changed.
pub(crate) fn cell_address(monday: NaiveDate, lifter: &str, day: NaiveDate) -> String {
    let name = address("", lifter).split_off(1);
    format!("/coach/week?from={monday}&lifter={name}&day={day}")
}

impl Grid<'_> {
    pub(crate) fn days(&self) -> impl Iterator<Item = NaiveDate> + use<> {
        let monday = self.monday;
        (0..DAYS).filter_map(move |on| monday.checked_add_days(Days::new(on)))
    }

    /// A lifter's rows of a day, in their order.
    pub(crate) fn cell(&self, lifter: &str, day: NaiveDate) -> Vec<&Shown> {
        let day = day.to_string();
        let here = |shown: &&Shown| shown.row.lifter == lifter && shown.row.date == day;
        self.rows.iter().filter(here).collect()
    }

    pub(crate) fn table(&self, say: Language) -> Markup {
        let mut lifters = self.lifters.clone();
        lifters.extend(self.rows.iter().map(|shown| shown.row.lifter.as_str()));
        let is_today = |day: NaiveDate| (day == self.today).then_some("today");
        let head = |day: NaiveDate| w::day_of_week(say, day);
        html! {
            @if lifters.is_empty() { p { (say.pick(w::NO_PLAN_HERE)) } }
            @else { div class="wide" tabindex="0" role="region" aria-label=(say.pick(w::WEEK)) {
                table class="week" {
                    thead { tr {
                        td {}
                        @for day in self.days() { th scope="col" class=[is_today(day)] {
                            time datetime=(day) { (head(day)) }
                        } }
                    } }
                    tbody { @for lifter in lifters { tr {
                        th scope="row" { a href=(address("/coach/lifter", lifter)) { (lifter) } }
                        @for day in self.days() { (self.one(say, lifter, day)) }
                    } } }
                }
            } }
        }
    }

    fn one(&self, say: Language, lifter: &str, day: NaiveDate) -> Markup {
        let cell = self.cell(lifter, day);
        let is_open = self.open == Some((lifter, day));
        let mut class = Vec::new();
        class.extend((day == self.today).then_some("today"));
        class.extend(is_open.then_some("open"));
        class.extend(cell.is_empty().then_some("none"));
        let words = w::day_of_week(say, day);
        let to_here = cell_address(self.monday, lifter, day);
        let can_add = self.changes && day >= self.today;
        let add = say.fill(w::ADD_FOR, &[lifter, &words]);
        html! {
            td class=(class.join(" ")) data-day=(words) {
                @for shown in &cell { (self.entry(say, shown, &to_here)) }
                @if cell.is_empty() && can_add {
                    a class="add" href=(to_here) aria-label=(add) { "+" }
                }
            }
        }
    }

    fn entry(&self, say: Language, shown: &Shown, to_here: &str) -> Markup {
        let row = &shown.row;
        let became = Became::of(row, &self.today.to_string());
        let unit = row.unit.unwrap_or_default();
        let asked_mass = shown.now.or(mass_of(row));
        let other = row
            .done_load
            .filter(|load| asked_mass.is_some_and(|asked| asked != *load));
        let mut more = String::new();
        if became == Became::Part {
            let (done, asked) = (row.done_sets.to_string(), row.sets.to_string());
            more = format!(", {}", say.fill(w::OF, &[&done, &asked]));
        }
        if let Some(load) = other {
            more.push_str(&format!(", {}", say.mass(load, unit)));
        }
        html! {
            p class=[(became == Became::Planned).then_some("to-come")] {
                @if self.changes {
                    a href=(to_here) { (say.shipped(&row.lift)) }
                } @else { (say.shipped(&row.lift)) }
                span class="asked" { (brief(say, shown)) }
                (became.sign(say, &more))
            }
        }
    }
}

/// The load that a row asks for, where it asks for a mass.
fn mass_of(row: &PlannedRow) -> Option<Mass> {
    match row.load {
        LoadWish::Mass(mass) => Some(mass),
        LoadWish::OfBest(_)
        | LoadWish::OfTraining(_)
        | LoadWish::OfTop(_)
        | LoadWish::More(_)
        | LoadWish::Due => None,
    }
}

/// "2 × 5, 207.5 kg": a cell is narrow.
fn brief(say: Language, Shown { row, now, .. }: &Shown) -> Markup {
    let unit = row.unit.unwrap_or_default();
    let load = match (row.load, now) {
        (LoadWish::OfBest(share), None) => say.fill(w::OF_BEST, &[&say.percent(share)]),
        (LoadWish::OfBest(share) | LoadWish::OfTraining(share), Some(now)) => {
            format!("{} = {}", say.percent(share), say.mass(*now, unit))
        }
        (load, _) => say.wish(load, unit),
    };
    html! {
        span class="nowrap" { (row.sets) " \u{d7} " (row.reps) "," } " "
        span class="nowrap" { (load) }
    }
}

/// What the signs mean; for paper.
pub(crate) fn legend(say: Language) -> Markup {
    let all = [
        Became::Planned,
        Became::Filled,
        Became::Part,
        Became::Done,
        Became::Moved,
        Became::Missed,
    ];
    html! { p class="legend" { @for became in all { (became.sign(say, "")) " " } } }
}

/// The Monday of a day's week.
pub(crate) fn monday(day: NaiveDate) -> NaiveDate {
    let since = Days::new(day.weekday().num_days_from_monday().into());
    day.checked_sub_days(since).unwrap_or(day)
}
