//! What the problem `next` answers in words: a verdict, and why in one whole sentence.
use domain::MassUnit;
use domain::next::outing::Went;
use domain::next::{Decision, Verdict, Why};

/// Why nothing is due for who is hurt.
pub(super) const HURT: &str =
    "The lifter is hurt, so nothing is due until the coach rules: stop, and see a clinician.";

/// In one or a few words.
pub(super) const fn verdict(due: &Decision) -> &'static str {
    match (due.why, due.verdict) {
        (Why::Hurt, _) => "hurt",
        (Why::Anew, _) => "begin anew",
        (Why::Stuck | Why::Waiting | Why::OverReaching, _) => "ask the coach",
        (Why::Away | Why::Ill | Why::Family | Why::LongAgo | Why::Week, Verdict::Repeat) => "hold",
        (_, Verdict::Raise) => "raise",
        (_, Verdict::Repeat) => "repeat",
        (_, Verdict::Drop | Verdict::Reset) => "lower",
        (_, Verdict::Ease) => "ease",
    }
}

/// One sentence with its figures.
pub(super) fn why(due: &Decision, unit: MassUnit) -> String {
    let because = because(due, unit);
    if due.due().is_none() {
        return because;
    }
    let load = due.load.exact(unit);
    let by = due.load.apart(due.from).words(unit);
    let change = if due.load > due.from {
        format!("up {by} to {load}")
    } else if due.load < due.from {
        format!("down {by} to {load}")
    } else {
        format!("{load} again")
    };
    format!("{because} {change}.")
}

/// What leads to the load: a sentence up to its last words, or a whole one where nothing is due.
fn because(due: &Decision, unit: MassUnit) -> String {
    let went = went(due);
    let days = match due.away_days {
        1 => String::from("1 day"),
        days => format!("{days} days"),
    };
    match due.why {
        Why::Hurt => HURT.into(),
        Why::Anew => format!(
            "{days} count as a break beyond the programme's own spacing, so the lift begins anew \
             with the coach."
        ),
        Why::Well | Why::Coach => format!("{went}, so it is"),
        Why::Back => format!("{went} on the way back to the best, so it is"),
        Why::NoStep => {
            format!("{went}, but the next load that the plates make is too far up, so it is")
        }
        Why::Light => format!("{went} on a lighter day, so it is what was due before,"),
        Why::Hard => format!("{went}, harder than asked, so it is"),
        Why::Range => format!("{went}, not yet all at the top of the range, so it is"),
        Why::TryAgain => format!(
            "{went}, which was try {} of {}, so it is",
            due.nth, due.tries
        ),
        Why::Cut => format!("{went}, so it is"),
        Why::OutOfTries => format!(
            "{went}, which was try {} of {}, so it is",
            due.nth, due.tries
        ),
        Why::TooMuch => {
            let from = due.from.words(unit);
            format!("{went}, too early to try {from} again, so it is")
        }
        Why::Stuck => format!(
            "{went} again without a new best, so the coach is asked and until the answer it is"
        ),
        Why::Waiting => format!("{went}, but the coach was asked and until the answer it is"),
        Why::Away => {
            format!("{days} count as a break beyond the programme's own spacing, so it is")
        }
        Why::Ill => format!("{days} count as a break, illness among them, so it is"),
        Why::Family => String::from("The back moved in another pull of the family since, so it is"),
        Why::OverReaching => String::from(
            "One pull of the family after the other went wrong, which looks like over-reaching, so \
             the coach is asked and until the answer it is",
        ),
        Why::LongAgo => String::from(
            "This track was not done for long while other pulls of the family were, so it is",
        ),
        Why::Week => String::from("The rise that a week may bring is used up, so it is"),
    }
}

/// "1 of 5 reps was done".
const fn were(count: u8) -> &'static str {
    if count == 1 { "was" } else { "were" }
}

fn went(due: &Decision) -> String {
    let of_sets = |set: u8| match due.sets {
        1 => String::new(),
        _ => format!(" in set {set}"),
    };
    match due.went {
        Went::Well => String::from("All that was asked was done with the back held"),
        Went::Short { set, reps } => {
            format!(
                "{reps} of {} reps {} done{}",
                due.reps,
                were(reps),
                of_sets(set)
            )
        }
        Went::Moved { set, rep } => format!("The back moved at rep {rep}{}", of_sets(set)),
        Went::MovedWarm => String::from("The back moved in a warm-up"),
        Went::Cut { done: 1 } => format!("1 of {} sets was done, and that well", due.sets),
        Went::Cut { done } => format!("{done} of {} sets were done, and those well", due.sets),
    }
}
