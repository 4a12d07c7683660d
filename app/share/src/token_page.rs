//! Tokens at the coach's desk: which there are, and the forms that make one and take one back.
//!
//! Refuses: showing a token a second time.
use crate::app::App;
use crate::tokens::{Kept, May, NAME_MAX, NotKept};
use crate::words as w;
use chrono::{Days, NaiveDate};
use maud::{Markup, html};
use text::Phrase;
use view::Language;

/// Where the forms go.
const HERE: &str = "/coach/tokens";

/// A token that was made just now, and whose it is.
pub(crate) type Made = (String, String);

/// What stands at the desk.
pub(crate) fn part(app: &App, say: Language, made: Option<&Made>) -> Markup {
    let Some(today) = app.desk.laid().today else {
        return html! {};
    };
    let today = today.date;
    let kept = app.desk.tokens();
    let year = today.checked_add_days(Days::new(365)).unwrap_or(today);
    html! {
        h2 { (say.pick(w::TOKENS)) }
        p { (say.pick(w::TOKENS_HINT)) }
        @if let Some((name, token)) = made {
            div class="notice" role="status" {
                p { (say.fill(w::TOKEN_MADE, &[name])) }
                p class="print" { (token) }
            }
        }
        @match &kept {
            Err(why) => p class="notice" { (say.pick(words(*why))) },
            Ok(all) if all.is_empty() => p { (say.pick(w::NO_TOKENS)) },
            Ok(all) => { @for one in all { (listed(say, one, today)) } },
        }
        details {
            summary { (say.pick(w::TOKEN_MAKE)) }
            form method="post" action=(HERE) {
                input type="hidden" name="do" value="make";
                label {
                    (say.pick(w::TOKEN_NAME))
                    input name="name" required maxlength=(NAME_MAX) autocomplete="off";
                }
                label {
                    (say.pick(w::TOKEN_MAY))
                    select name="may" {
                        option value="read" { (say.pick(w::MAY_READ)) }
                        option value="plans" { (say.pick(w::MAY_PLANS)) }
                    }
                }
                label {
                    (say.pick(w::TOKEN_UNTIL))
                    input type="date" name="until" required value=(year) min=(today) max=(year);
                }
                (code(say))
                button { (say.pick(w::TOKEN_MAKE)) }
            }
        }
    }
}

fn code(say: Language) -> Markup {
    html! {
        input name="code" type="password" maxlength="64" required placeholder=(say.pick(w::CODE))
            aria-label=(say.pick(w::CODE)) autocomplete="off";
    }
}

fn listed(say: Language, one: &Kept, today: NaiveDate) -> Markup {
    let day = w::day_and_year(say, one.until());
    let may = match one.may {
        May::Read => say.pick(w::MAY_READ),
        May::Plans => say.pick(w::MAY_PLANS),
    };
    let holds = match one.is_over(today) {
        true => say.fill(w::TOKEN_OVER, &[&day]),
        false => say.fill(w::TOKEN_HOLDS, &[may, &day]),
    };
    html! {
        p { strong { (one.name) } ": " (holds) }
        form class="order" method="post" action=(HERE) {
            input type="hidden" name="do" value="back";
            input type="hidden" name="name" value=(one.name);
            (code(say))
            button { (say.fill(w::TOKEN_BACK, &[&one.name])) }
        }
    }
}

pub(crate) const fn words(why: NotKept) -> Phrase {
    match why {
        NotKept::Name => w::TOKEN_NO_NAME,
        NotKept::Day => w::TOKEN_NO_DAY,
        NotKept::Full => w::TOKENS_FULL,
        NotKept::Unknown => w::TOKEN_UNKNOWN,
        NotKept::File => w::TOKEN_NOT_KEPT,
    }
}
