//! The coach's desk: the stick and what it would change, copies of the journal, blank plans.
//! The page shows what the kiosk put there, and hands orders on to it.
//!
//! Refuses: carrying an order out; an order without the code; an order about what is no longer
//! there.
use crate::html::{Nav, foot, head};
use maud::{Markup, html};
use tokio::sync::oneshot;

/// What the desk shows.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Counter {
    /// The stick; `None` when none is in, or sticks are not looked at.
    pub stick: Option<StickShown>,
    /// Names of the copies in the second place, latest first; empty without any.
    pub copies: Vec<String>,
    /// How the last copy went, or why there is none.
    pub copied: String,
    /// SHA-256 of the page's certificate; empty without TLS.
    pub fingerprint: String,
}

/// A stick as it is shown.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct StickShown {
    /// Which one: an order names it, so that another stick is not meant.
    pub id: String,
    /// Its plans: name, "24 rows", faults.
    pub plans: Vec<(String, String, Vec<String>)>,
    /// What was passed over and why.
    pub passed: Vec<String>,
    /// What taking all of it would change, by lifter.
    pub changes: Vec<String>,
    /// Whether all of it could be taken.
    pub can_take: bool,
}

/// What a coach orders.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Wish {
    /// Take all plans of the stick with this id.
    TakeStick(String),
    /// Write the record back to the stick with this id.
    WriteStick(String),
    /// Copy the journal to the second place now.
    BackUp,
    /// Prove the copy of this name, and put it in the journal's place.
    Restore(String),
}

/// An order with the way for its answer, a sentence.
#[derive(Debug)]
pub struct Order {
    /// What.
    pub wish: Wish,
    /// Where the answer goes.
    pub answer: oneshot::Sender<String>,
}

impl Wish {
    /// Reads a form's fields.
    pub(crate) fn read(order: &str, about: &str) -> Option<Self> {
        let about = about.to_owned();
        match order {
            "take" => Some(Self::TakeStick(about)),
            "write" => Some(Self::WriteStick(about)),
            "copy" => Some(Self::BackUp),
            "restore" => Some(Self::Restore(about)),
            _ => None,
        }
    }
}

/// The page; `told` answers the last order.
pub(crate) fn page(counter: &Counter, told: Option<&str>) -> Markup {
    html! {
        (head("Desk", Nav::Coach))
        @if let Some(words) = told { p class="notice" role="status" { (words) } }
        h2 { "Stick" }
        @match &counter.stick {
            None => p { "No stick is in, or kiosk.toml names no place for sticks." },
            Some(stick) => (stick_part(stick)),
        }
        h2 { "Copies of the journal" }
        p { (counter.copied) }
        (order("copy", "", "Copy now"))
        @for name in &counter.copies {
            p { (name) }
            (order("restore", name, "Restore this copy"))
        }
        h2 { "A blank plan" }
        p { a href="/coach/blank.xlsx" { "XLSX" } " " a href="/coach/blank.csv" { "CSV" } }
        @if !counter.fingerprint.is_empty() {
            h2 { "This page's certificate" }
            p { "SHA-256 " (counter.fingerprint) }
        }
        (foot())
    }
}

fn stick_part(stick: &StickShown) -> Markup {
    html! {
        @for (name, word, faults) in &stick.plans {
            h3 { (name) }
            p { (word) }
            @if !faults.is_empty() { ul { @for fault in faults { li { (fault) } } } }
        }
        @if stick.plans.is_empty() { p { "No plan is on it." } }
        @for passed in &stick.passed { p { "Passed over " (passed) } }
        @if !stick.changes.is_empty() {
            h3 { "What changes" }
            ul { @for change in &stick.changes { li { (change) } } }
        }
        @if stick.can_take { (order("take", &stick.id, "Take all of it")) }
        (order("write", &stick.id, "Write the record to it"))
    }
}

/// A button with its code: each order asks for it again.
fn order(order: &str, about: &str, words: &str) -> Markup {
    html! {
        form class="order" method="post" action="/coach/desk" {
            input type="hidden" name="order" value=(order);
            input type="hidden" name="about" value=(about);
            input name="code" type="password" maxlength="64" required placeholder="code"
                aria-label="Code" autocomplete="off";
            button { (words) }
        }
    }
}
