//! The plan, and what programmes fill, against what was done; and how a row of it is said.
//!
//! Refuses: names as markup; every text is escaped by the template.
use crate::html::address;
use crate::programme::Shown;
use crate::words as w;
use journal::{LoadWish, PlannedRow};
use maud::{Markup, html};
use view::Language;

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
