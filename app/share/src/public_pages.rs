//! The pages that anybody on the network may see: the front, signing in, the floor board, what
//! went wrong.
//!
//! Refuses: names of lifters beyond those on the kiosk's own floor.
use crate::board::{Board, BoardTurn, VERSION};
use crate::html::{foot, head};
use crate::masthead::Nav;
use crate::problem::Problem;
use crate::programme::Today;
use crate::words as w;
use maud::{DOCTYPE, Markup, html};
use view::Language;

/// `root` is the SHA-256 of the device's own root, where the page is served under it.
pub(crate) fn front(say: Language, root: Option<&str>, today: Option<&Today>) -> Markup {
    let gym = today.map_or("Pinladder", |today| today.gym.as_str());
    html! {
        (head(say, gym, Nav::All, None))
        @if let Some(today) = today {
            p class="day" { (w::long_day(say, &today.date.to_string())) }
        }
        nav class="doors" aria-label=(say.pick(w::PAGES)) {
            a href="/board" { (say.pick(w::FLOOR_BOARD)) }
            a href="/coach/today" { (say.pick(w::COACH)) }
        }
        p { (say.pick(w::OWN_BY_CODE)) }
        @if let Some(print) = root {
            h2 { (say.pick(w::TRUST)) }
            p { a href="/root.crt" { (say.pick(w::TRUST_ROOT)) } " SHA-256: " (print.replace(':', " ")) }
            p { (say.pick(w::TRUST_HOW)) }
        }
        (foot(say))
    }
}

/// The form; `told` says why it is shown again.
pub(crate) fn sign_in(say: Language, told: Option<&str>) -> Markup {
    html! {
        (head(say, say.pick(w::COACH), Nav::All, None))
        @if let Some(words) = told { p class="notice" role="alert" { (words) } }
        form class="sign-in" method="post" action="/sign-in" {
            label for="code" { (say.pick(w::CODE)) }
            input id="code" name="code" type="password" maxlength="64" required
                autocomplete="current-password" autofocus;
            button { (say.pick(w::SIGN_IN)) }
        }
        (foot(say))
    }
}

/// Before a lifter's link is used up: a button, since a preview looks at pages too.
pub(crate) fn open_own(say: Language, token: &str) -> Markup {
    html! {
        (head(say, say.pick(w::YOUR_RECORD), Nav::All, None))
        p { (say.pick(w::ONCE)) }
        form class="sign-in" method="post" action=(format!("/mine/{token}")) {
            button { (say.pick(w::SHOW_RECORD)) }
        }
        (foot(say))
    }
}

pub(crate) fn gone(say: Language) -> Markup {
    html! {
        (head(say, say.pick(w::YOUR_RECORD), Nav::All, None))
        p class="notice" { (say.pick(w::GONE)) }
        (foot(say))
    }
}

/// What went wrong, for whoever looks at it with a browser.
pub(crate) fn problem(say: Language, problem: Problem) -> Markup {
    html! {
        (head(say, say.pick(w::NOT_DONE), Nav::All, None))
        p class="notice" role="alert" { (say.pick(problem.detail)) }
        nav { a href="/" { (say.pick(w::TO_FRONT)) } }
        (foot(say))
    }
}

/// The board of now; what it says later comes with the events, or, without scripts, with the page
/// once more.
pub(crate) fn board(say: Language, board: Option<&Board>) -> Markup {
    html! {
        (DOCTYPE)
        html lang=(say.code()) {
            head {
                meta charset="utf-8";
                meta name="viewport" content="width=device-width, initial-scale=1";
                noscript { meta http-equiv="refresh" content="3"; }
                title { (say.pick(w::FLOOR)) }
                link rel="icon" href="/icon.svg" type="image/svg+xml";
                link rel="stylesheet" href="/board.css";
                script src="/board.js" defer {}
            }
            body {
                header {
                    h1 id="title" { (say.pick(w::FLOOR)) }
                    p id="state" role="status" data-version=(VERSION) data-waiting=(say.pick(w::WAITING)) {
                        @if board.is_none() { (say.pick(w::WAITING)) }
                    }
                    p id="clock" { @if let Some(board) = board { (board.clock) } }
                }
                main id="racks" { @if let Some(board) = board { (racks(board)) } }
            }
        }
    }
}

/// As the script draws them.
fn racks(board: &Board) -> Markup {
    html! {
        @if !board.empty.is_empty() { p class="empty" { (board.empty) } }
        @for rack in &board.racks {
            section class="rack" {
                h2 { (rack.name) }
                @if let Some(up) = &rack.up { (turn(up, "up")) }
                @if let Some(next) = &rack.next { (turn(next, "next")) }
                @for then in &rack.then { (turn(then, "then")) }
            }
        }
    }
}

fn turn(turn: &BoardTurn, place: &str) -> Markup {
    html! {
        article class=(place) {
            header { span class="lifter" { (turn.lifter) } span class="word" { (turn.word) } }
            p class="lift" { (turn.lift) }
            p class="load" { span class="kilos" { (turn.load) } span class="reps" { (turn.reps) } }
            p class="spot" {
                (turn.spot) @if !turn.gear.is_empty() { ", " (turn.gear) }
            }
            @if !turn.change.is_empty() && place != "then" { p class="change" { (turn.change) } }
        }
    }
}
