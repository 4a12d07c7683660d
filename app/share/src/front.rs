//! The pages that anybody on the network may see: the front, signing in, the floor board.
//!
//! Refuses: names of lifters beyond those on the kiosk's own floor.
use crate::html::{Nav, foot, head};
use maud::{DOCTYPE, Markup, html};

pub(crate) fn front() -> Markup {
    html! {
        (head("Pinladder", Nav::All))
        nav class="doors" aria-label="Pages" {
            a href="/board" { "Floor board" }
            a href="/coach" { "Coach" }
        }
        p { "A lifter's own record opens by the code that the kiosk shows at the end of a lift." }
        (foot())
    }
}

/// The form; `told` says why it is shown again.
pub(crate) fn sign_in(told: Option<&str>) -> Markup {
    html! {
        (head("Coach", Nav::All))
        @if let Some(words) = told { p class="notice" role="alert" { (words) } }
        form class="sign-in" method="post" action="/sign-in" {
            label for="code" { "Code" }
            input id="code" name="code" type="password" maxlength="64" required
                autocomplete="current-password" autofocus;
            button { "Sign in" }
        }
        (foot())
    }
}

pub(crate) fn gone() -> Markup {
    html! {
        (head("Your record", Nav::All))
        p class="notice" {
            "This link was opened already, or its ten minutes are over. The kiosk shows another at \
             the end of your next lift."
        }
        (foot())
    }
}

pub(crate) fn board() -> Markup {
    html! {
        (DOCTYPE)
        html lang="en" {
            head {
                meta charset="utf-8";
                meta name="viewport" content="width=device-width, initial-scale=1";
                title { "Floor" }
                link rel="stylesheet" href="/board.css";
                script src="/board.js" defer {}
            }
            body {
                header { h1 { "Floor" } p id="state" role="status" {} p id="clock" {} }
                main id="racks" { noscript { p { "The board needs its script." } } }
            }
        }
    }
}
