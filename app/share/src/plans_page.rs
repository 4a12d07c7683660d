//! What a coach sees of plans that were handed in. Plain HTML; it prints.
use crate::desk_stick::said_of;
use crate::html::{address, foot, head};
use crate::masthead::{Nav, Tab};
use crate::programme::Today;
use crate::words as w;
use maud::{Markup, html};
use std::sync::Arc;
use view::Language;
use view::desk::PlanIn;

/// What stands around a plan.
pub(crate) struct Shown {
    pub(crate) today: Option<Today>,
    /// Plans that wait to be taken.
    pub(crate) waiting: Vec<Arc<PlanIn>>,
    /// What came of the last act.
    pub(crate) told: Option<String>,
}

/// The form, and what waits.
pub(crate) fn all(say: Language, shown: &Shown) -> Markup {
    html! {
        (head(say, say.pick(w::HAND_IN), Nav::Coach(Tab::Plan), shown.today.as_ref()))
        (notice(shown))
        (form(say))
        @if !shown.waiting.is_empty() {
            h2 { (say.pick(w::NOT_YET_TAKEN)) }
            ul { @for plan in shown.waiting.iter().rev() { li {
                a href=(address("/coach/plans", &plan.read.id)) { (name(plan)) }
            } } }
        }
        p class="files" {
            (say.pick(w::BLANK_PLAN)) ": "
            a href="/coach/blank.xlsx" { "XLSX" } " " a href="/coach/blank.csv" { "CSV" }
        }
        (foot(say))
    }
}

/// One plan, what it would change, and the press that takes it.
pub(crate) fn one(say: Language, plan: &PlanIn, shown: &Shown) -> Markup {
    html! {
        (head(say, name(plan), Nav::Coach(Tab::Plan), shown.today.as_ref()))
        (notice(shown))
        h2 { (say.pick(w::NOTHING_TAKEN_YET)) }
        (said_of(say, &plan.read))
        @if plan.read.can_take {
            form class="order" method="post" action=(address("/coach/plans", &plan.read.id)) {
                input type="hidden" name="mark" value=(plan.mark);
                button class="main" { (say.pick(w::TAKE_PLAN)) }
            }
        } @else { p { (say.pick(w::MEND_IT)) } }
        (rows(say, plan))
        h2 { (say.pick(w::ANOTHER_FILE)) }
        (form(say))
        (foot(say))
    }
}

fn name(plan: &PlanIn) -> &str {
    plan.read
        .plans
        .first()
        .map_or("", |(name, _)| name.as_str())
}

fn notice(shown: &Shown) -> Markup {
    html! { @if let Some(words) = &shown.told { p class="notice" role="status" { (words) } } }
}

fn form(say: Language) -> Markup {
    html! {
        form class="hand-in" method="post" action="/coach/plans" enctype="multipart/form-data" {
            label {
                (say.pick(w::CHOOSE_PLAN))
                input type="file" name="plan" required accept=".csv,.tsv,.xlsx,.ods";
            }
            button class="main" { (say.pick(w::READ_IT)) }
        }
    }
}

fn rows(say: Language, plan: &PlanIn) -> Markup {
    let (shown, all) = (plan.rows.len(), plan.rows_count);
    html! {
        @if !plan.rows.is_empty() {
            h2 { (say.pick(w::UNDERSTOOD)) " " span class="count" { (say.count(w::ROWS, all)) } }
            table class="plan all" {
                thead { tr {
                    th scope="col" { (say.pick(w::DAY)) }
                    th scope="col" { (say.pick(w::LIFTER)) }
                    th scope="col" { (say.pick(w::PLANNED)) }
                } }
                tbody { @for row in &plan.rows { tr {
                    th scope="row" {
                        time datetime=(row.date) { (w::short_day(say, &row.date.to_string())) }
                    }
                    td { (row.lifter) }
                    td {
                        (say.shipped(&row.lift)) ": " (row.work.to(say))
                        @if !row.note.is_empty() { " " span class="note" { (row.note) } }
                    }
                } } }
            }
            @if shown < all {
                p { (say.fill(w::FIRST_ROWS, &[&shown.to_string(), &all.to_string()])) }
            }
        }
    }
}
