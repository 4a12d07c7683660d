//! The coach's desk: the stick and what it would change, copies of the journal, blank plans.
//! The page shows what the kiosk put there, and hands orders on to it.
//!
//! Refuses: carrying an order out; an order without the code; an order about what is no longer
//! there.
use crate::desk_stick::said_of;
use crate::html::{foot, head};
use crate::masthead::{Nav, Tab};
use crate::programme::Laid;
use crate::words as w;
use maud::{Markup, html};
use std::sync::Arc;
use text::Said;
use tokio::sync::oneshot;
use view::Language;
use view::coach_deed::Undone;
use view::desk::{Errand, PlanIn, StickIn};
use view::next_all;
use view::next_all::CoachLine;
use view::week_deed::Unmoved;

/// What the desk shows.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Counter {
    /// The stick; `None` when none is in, or sticks are not looked at.
    pub stick: Option<StickIn>,
    /// Whether a second place for copies is set.
    pub has_place: bool,
    /// Names of the latest copies in the second place, latest first.
    pub copies: Vec<String>,
    /// How many copies lie there.
    pub copies_count: usize,
    /// How the last nightly copy went; `None` before the first.
    pub night: Option<Night>,
    /// What is due for everybody, and who waits for the coach.
    pub due: Vec<CoachLine>,
    /// Plans that coaches chose in browsers, read and not yet taken, the oldest first.
    pub handed: Vec<Arc<PlanIn>>,
    /// SHA-256 of the page's certificate; empty without TLS.
    pub fingerprint: String,
}

/// A nightly copy.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Night {
    /// Its day, ISO 8601.
    pub day: String,
    /// Events in it, or why there is none.
    pub went: Result<u64, Said>,
}

/// An order with the way for its answer.
#[derive(Debug)]
pub struct Order {
    /// What.
    pub errand: Errand,
    /// Where the answer goes.
    pub answer: oneshot::Sender<Told>,
}

/// What came of an order. Reasons are in the words of whoever failed.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Told {
    /// So many rows of the stick's plans were taken.
    Took(usize),
    /// They could not be kept.
    NotTaken(Said),
    /// A plan was read, and lies there to be looked at.
    Handed,
    /// So many rows of it were taken.
    TookPlan(usize),
    /// It lies there no longer.
    PlanGone,
    /// It has faults.
    PlanFaults,
    /// The gym is another than when it was read.
    GymChanged,
    /// What stands for its days is not as it was shown.
    DaysChanged,
    /// The order meant a stick that is no longer in.
    OtherStick,
    /// The stick has faults.
    StickFaults,
    /// No place for sticks is set.
    NoSticks,
    /// The record is on the stick.
    Written,
    /// It is not.
    NotWritten(Said),
    /// No second place is set.
    NoPlace,
    /// A proven copy of so many events was made.
    Copied(u64),
    /// None was.
    NotCopied(Said),
    /// The copy meant is gone.
    CopyGone,
    /// A copy is being put back already.
    PuttingBack,
    /// So many events were put back.
    Restored(u64),
    /// Nothing was.
    NotRestored(Said),
    /// What the coach did is kept.
    Done,
    /// It is kept, and this is odd of it.
    DoneOdd(Said),
    /// Nothing of a week was changed.
    Unmoved(Unmoved),
    /// Nothing came of what the coach did.
    Undone(Undone),
    /// It could not be kept.
    NotDone(Said),
    /// Nobody takes orders here.
    NoOrders,
    /// The kiosk has not answered in time.
    NotYet,
}

impl Told {
    /// What happened, and what to do.
    #[must_use]
    pub fn words(&self, say: Language) -> String {
        match self {
            Self::Took(rows) => say.fill(w::TOOK, &[&rows.to_string()]),
            Self::NotTaken(why) => say.fill(w::NOT_TAKEN, &[why.to(say)]),
            Self::Handed => say.say(w::NOTHING_TAKEN_YET),
            Self::TookPlan(rows) => say.count(w::TOOK_ROWS, *rows),
            Self::PlanGone => say.say(w::PLAN_GONE),
            Self::PlanFaults => say.say(w::PLAN_FAULTS),
            Self::GymChanged => say.say(w::GYM_CHANGED),
            Self::DaysChanged => say.say(w::DAYS_CHANGED),
            Self::OtherStick => say.say(w::OTHER_STICK),
            Self::StickFaults => say.say(w::STICK_FAULTS),
            Self::NoSticks => say.say(w::NO_PLACE_STICKS),
            Self::Written => say.say(w::WRITTEN),
            Self::NotWritten(why) => say.fill(w::NOT_WRITTEN, &[why.to(say)]),
            Self::NoPlace => say.say(w::NO_PLACE),
            Self::Copied(events) => say.fill(w::COPIED, &[&events.to_string()]),
            Self::NotCopied(why) => say.fill(w::NOT_COPIED, &[why.to(say)]),
            Self::CopyGone => say.say(w::COPY_GONE),
            Self::PuttingBack => say.say(w::PUTTING_BACK),
            Self::Restored(events) => say.fill(w::RESTORED, &[&events.to_string()]),
            Self::NotRestored(why) => say.fill(w::NOT_RESTORED, &[why.to(say)]),
            Self::Done => say.say(w::DONE_KEPT),
            Self::DoneOdd(what) => say.fill(w::DONE_ODD, &[what.to(say)]),
            Self::Unmoved(why) => say.say(unmoved(*why)),
            Self::Undone(why) => say.say(undone(why)),
            Self::NotDone(why) => say.fill(w::NOT_DONE_WHY, &[why.to(say)]),
            Self::NoOrders => say.say(w::NO_ORDERS),
            Self::NotYet => say.say(w::NOT_YET),
        }
    }
}

/// Why nothing came of what a coach did.
const fn undone(why: &Undone) -> text::Phrase {
    match why {
        Undone::Already => w::ALREADY,
        Undone::Stale => w::STALE,
        Undone::NoLoad => w::NO_LOAD,
        Undone::ToCome => w::TO_COME,
        Undone::Slip => w::SLIP,
        Undone::Nobody => w::NO_LIFTER,
    }
}

/// Why a week stays as it is.
const fn unmoved(why: Unmoved) -> text::Phrase {
    match why {
        Unmoved::Stale => w::PLAN_STALE,
        Unmoved::Begun => w::IS_BEGUN,
        Unmoved::Over => w::IS_OVER,
        Unmoved::Taken => w::IS_TAKEN,
        Unmoved::Twice => w::LIFT_TWICE,
        Unmoved::Grouped => w::ROW_GROUPED,
    }
}

/// Reads a form's fields.
pub(crate) fn errand(order: &str, about: &str) -> Option<Errand> {
    let about = about.to_owned();
    match order {
        "take" => Some(Errand::TakeStick(about)),
        "write" => Some(Errand::WriteStick(about)),
        "copy" => Some(Errand::BackUp),
        "restore" => Some(Errand::Restore(about)),
        _ => None,
    }
}

/// The page; `told` answers the last order, `tokens` are those of programs.
pub(crate) fn page(
    say: Language,
    (counter, laid): (&Counter, &Laid),
    told: Option<&str>,
    tokens: &Markup,
) -> Markup {
    let (nav, today) = (Nav::Coach(Tab::Desk), laid.today.as_ref());
    html! {
        (head(say, say.pick(w::DESK), nav, today))
        @if let Some(words) = told { p class="notice" role="status" { (words) } }
        (due_part(say, &counter.due))
        h2 { (say.pick(w::STICK)) }
        @match &counter.stick {
            None => p { (say.pick(w::NO_STICK)) },
            Some(stick) => (stick_part(say, stick)),
        }
        h2 { (say.pick(w::COPIES)) }
        (copies_part(say, counter))
        h2 { (say.pick(w::BLANK_PLAN)) }
        p class="files" { a href="/coach/blank.xlsx" { "XLSX" } " " a href="/coach/blank.csv" { "CSV" } }
        (tokens)
        @if !counter.fingerprint.is_empty() {
            h2 { (say.pick(w::CERTIFICATE)) }
            p { "SHA-256 " span class="print" { (counter.fingerprint) } }
        }
        (foot(say))
    }
}

/// What is due for everybody, as the coach's list has it everywhere.
fn due_part(say: Language, lines: &[CoachLine]) -> Markup {
    html! {
        h2 { (say.pick(w::DUE_AND_WAITS)) }
        @if lines.is_empty() { p { (say.pick(w::NOTHING_DUE)) } }
        @else { table class="due" {
            thead { tr {
                th scope="col" { (say.pick(w::STATE)) }
                th scope="col" { (say.pick(w::LIFTER)) }
                th scope="col" { (say.pick(w::WHY)) }
            } }
            tbody { @for line in lines { tr {
                th scope="row" { (say.say(next_all::state_of(&line.concern))) }
                td { (next_all::whose(say, line)) }
                td { (next_all::because(say, line)) }
            } } }
        } }
    }
}

fn copies_part(say: Language, counter: &Counter) -> Markup {
    let count = if counter.has_place {
        say.count(w::COPIES_COUNT, counter.copies_count)
    } else {
        say.say(w::NO_PLACE)
    };
    let night = counter.night.as_ref().map(|night| {
        let day = w::long_day(say, &night.day);
        match &night.went {
            Ok(events) => (
                false,
                say.fill(w::COPIED_AT_NIGHT, &[&day, &events.to_string()]),
            ),
            Err(why) => (true, say.fill(w::NOT_AT_NIGHT, &[&day, why.to(say)])),
        }
    });
    html! {
        p { (count) }
        @if let Some((failed, words)) = night {
            p class=[failed.then_some("notice")] { (words) }
        }
        @if counter.has_place { (order(say, "copy", "", w::COPY_NOW)) }
        @for name in &counter.copies {
            p { (name) }
            (order(say, "restore", name, w::RESTORE))
        }
    }
}

fn stick_part(say: Language, stick: &StickIn) -> Markup {
    html! {
        (said_of(say, stick))
        @if stick.plans.is_empty() { p { (say.pick(w::NO_PLAN_ON_IT)) } }
        @if stick.can_take { (order(say, "take", &stick.id, w::TAKE_ALL)) }
        (order(say, "write", &stick.id, w::WRITE_TO_IT))
    }
}

/// A button with its code: each order asks for it again.
fn order(say: Language, order: &str, about: &str, words: text::Phrase) -> Markup {
    html! {
        form class="order" method="post" action="/coach/desk" {
            input type="hidden" name="order" value=(order);
            input type="hidden" name="about" value=(about);
            input name="code" type="password" maxlength="64" required placeholder=(say.pick(w::CODE))
                aria-label=(say.pick(w::CODE)) autocomplete="off";
            button { (say.pick(words)) }
        }
    }
}
