//! What stands above every page: the gym, the way to the others, the day. It prints.
use crate::programme::Today;
use crate::words as w;
use maud::{Markup, html};
use text::Phrase;
use view::Language;

/// Whose eyes a page is for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Nav {
    /// Anybody's.
    All,
    /// The coach's.
    Coach(Tab),
    /// One lifter's own.
    Own,
}

/// The coach's pages.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Tab {
    Today,
    Week,
    Sessions,
    Plan,
    Desk,
    /// One lifter's; no link leads there from everywhere.
    Lifter,
}

const TABS: [(Tab, &str, Phrase); 5] = [
    (Tab::Today, "/coach/today", w::TODAY),
    (Tab::Week, "/coach/week", w::WEEK),
    (Tab::Sessions, "/coach", w::SESSIONS),
    (Tab::Plan, "/coach/plan", w::PLAN),
    (Tab::Desk, "/coach/desk", w::DESK),
];

/// The title that a tab of the browser shows: the gym stands in it, so that two are told apart.
pub(crate) fn title(title: &str, today: Option<&Today>) -> String {
    match today {
        Some(today) if today.gym != title => format!("{title}, {}", today.gym),
        Some(_) | None => title.to_owned(),
    }
}

pub(crate) fn masthead(say: Language, nav: Nav, today: Option<&Today>) -> Markup {
    let Nav::Coach(here) = nav else {
        return html! { @if let Some(today) = today { header class="mast" {
            a class="gym" href="/" { (today.gym) }
            (day(say, today))
        } } };
    };
    let gym = today.map_or("Pinladder", |today| today.gym.as_str());
    html! {
        header class="mast" {
            a class="gym" href="/coach/today" { (gym) }
            nav aria-label=(say.pick(w::PAGES)) {
                @for (tab, path, words) in TABS {
                    a href=(path) aria-current=[(tab == here).then_some("page")] { (say.pick(words)) }
                }
                a href="/board" { (say.pick(w::FLOOR)) }
            }
            @if here != Tab::Today && let Some(today) = today { (day(say, today)) }
            form method="post" action="/sign-out" { button { (say.pick(w::SIGN_OUT)) } }
        }
    }
}

fn day(say: Language, today: &Today) -> Markup {
    let day = today.date.to_string();
    html! { p class="day" { time datetime=(day) { (w::long_day(say, &day)) } } }
}
