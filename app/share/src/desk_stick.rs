//! What the coach's pages say of plans that were read, from a stick or from a browser: rows, what is
//! odd or wrong, what taking them would change.
use crate::words as w;
use maud::{Markup, html};
use text::Said;
use view::Language;
use view::desk::{StickChange, StickIn};

pub(crate) fn said_of(say: Language, stick: &StickIn) -> Markup {
    let word = |read: &Result<usize, Vec<Said>>| match read {
        Ok(rows) => say.count(w::ROWS, *rows),
        Err(faults) => say.count(w::FAULTS, faults.len()),
    };
    html! {
        @for (name, read) in &stick.plans {
            h3 { (name) }
            p { (word(read)) }
            @if let Err(faults) = read { ul { @for fault in faults { li { (fault.to(say)) } } } }
        }
        @for passed in &stick.passed { p { (say.fill(w::PASSED_OVER, &[passed.to(say)])) } }
        @if !stick.changes.is_empty() {
            h3 { (say.pick(w::WHAT_CHANGES)) }
            ul { @for change in &stick.changes { li { (change_words(say, change)) } } }
        }
    }
}

/// "Tevita: Tue 1 Dec 2026 to Tue 22 Dec 2026, 4 new days, 1 changed day".
fn change_words(say: Language, change: &StickChange) -> String {
    let (first, last) = change.days;
    let span = if first == last {
        say.short_day(first)
    } else {
        say.fill(w::SPAN, &[&say.short_day(first), &say.short_day(last)])
    };
    let parts = [
        (change.new, w::NEW_DAYS),
        (change.changed, w::CHANGED_DAYS),
        (change.same, w::SAME_DAYS),
    ];
    let parts: Vec<String> = parts
        .into_iter()
        .filter(|(n, _)| *n > 0)
        .map(|(n, words)| say.count(words, n))
        .collect();
    say.fill(w::CHANGE, &[&change.lifter, &span, &parts.join(", ")])
}
