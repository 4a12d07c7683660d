//! The forms on the coach's day: a ruling of what waits, hurt and illness. Plain HTML, no script.
//!
//! Refuses: doing it; a form says what its reader saw, and the kiosk decides.
use crate::words as w;
use chrono::NaiveDate;
use maud::{Markup, html};
use view::Language;
use view::coach_deed::{loads, mark, means, reasons, ruled_after};
use view::next_all::{self, CoachLine, Concern};

/// Where the forms go.
const HERE: &str = "/coach/today";

/// What can be done about a line.
pub(crate) fn about(say: Language, line: &CoachLine) -> Markup {
    match &line.concern {
        Concern::Hurt { .. } => html! {
            form class="rule" method="post" action=(HERE) {
                input type="hidden" name="do" value="fit";
                input type="hidden" name="lifter" value=(line.lifter);
                button { (say.pick(w::FIT_AGAIN)) }
            }
        },
        Concern::LooksWrong { .. } => meant(say, line),
        Concern::OverReaching
        | Concern::Stuck
        | Concern::Anew
        | Concern::Waits
        | Concern::Differs { .. }
        | Concern::Away
        | Concern::Due => ruling(say, line),
    }
}

fn meant(say: Language, line: &CoachLine) -> Markup {
    let Some((lift, date)) = means(line) else {
        return html! {};
    };
    html! {
        form class="rule" method="post" action=(HERE) {
            input type="hidden" name="do" value="meant";
            input type="hidden" name="lifter" value=(line.lifter);
            input type="hidden" name="mark" value=(mark(line));
            input type="hidden" name="lift" value=(lift);
            input type="hidden" name="from" value=(date);
            button { (say.pick(w::MEANT)) }
        }
    }
}

/// A press for each load that the line names, the lowest first, and another one by hand.
fn ruling(say: Language, line: &CoachLine) -> Markup {
    let Some(no) = ruled_after(line) else {
        return html! {};
    };
    let hidden = html! {
        input type="hidden" name="do" value="rule";
        input type="hidden" name="lifter" value=(line.lifter);
        input type="hidden" name="no" value=(no);
        input type="hidden" name="mark" value=(mark(line));
    };
    let whose = next_all::whose(say, line);
    let due = line.due.as_ref().and_then(|due| due.decision.due());
    html! {
        form class="rule" method="post" action=(HERE) {
            (hidden)
            @for (load, whence) in loads(line) {
                button name="load" value=(load.exact(line.unit))
                    class=[(due == Some(load)).then_some("main")] {
                    (say.mass(load, line.unit)) " " small { (say.pick(whence)) }
                }
            }
        }
        details class="rule" {
            summary { (say.pick(w::OWN_LOAD)) }
            form method="post" action=(HERE) {
                (hidden)
                label {
                    (say.pick(w::LOAD)) " (" (line.unit.word()) ")"
                    input name="load" required maxlength="16" inputmode="decimal" autocomplete="off"
                        aria-label=(format!("{}, {whose}", say.pick(w::OWN_LOAD)));
                }
                label {
                    (say.pick(w::WHY))
                    select name="note" {
                        option value="" { (say.pick(w::NO_REASON)) }
                        @for reason in reasons() {
                            option value=(Language::English.pick(*reason)) { (say.pick(*reason)) }
                        }
                    }
                }
                button { (say.pick(w::RULE_IT)) }
            }
        }
    }
}

/// Lines that wait for nobody and can be ruled all the same.
pub(crate) fn others(say: Language, due: &[CoachLine]) -> Markup {
    let can = |line: &&CoachLine| !line.concern.waits() && ruled_after(line).is_some();
    let lines: Vec<_> = due.iter().filter(can).collect();
    html! {
        @if !lines.is_empty() { details class="others" {
            summary { (say.pick(w::RULE_OTHERS)) }
            ul class="needs" { @for line in lines { li {
                p { strong { (next_all::whose(say, line)) } }
                p class="why" { (next_all::because(say, line)) }
                (ruling(say, line))
            } } }
        } }
    }
}

/// Hurt and illness of any lifter, from a day to a day.
pub(crate) fn health<'l>(
    say: Language,
    lifters: impl Iterator<Item = &'l String>,
    today: NaiveDate,
) -> Markup {
    html! {
        details class="health" {
            summary { (say.pick(w::HEALTH)) }
            p { (say.pick(w::HEALTH_HINT)) }
            form class="fields" method="post" action=(HERE) {
                label {
                    (say.pick(w::LIFTER))
                    select name="lifter" required {
                        option value="" { (say.pick(w::CHOOSE)) }
                        @for lifter in lifters { option { (lifter) } }
                    }
                }
                fieldset {
                    label { input type="radio" name="do" value="ill" required; (say.pick(w::WAS_ILL)) }
                    label { input type="radio" name="do" value="hurt" required; (say.pick(w::IS_HURT)) }
                }
                label {
                    (say.pick(w::FROM_DAY))
                    input type="date" name="from" required value=(today) max=(today);
                }
                label {
                    (say.pick(w::TO_DAY))
                    input type="date" name="to" required value=(today) max=(today);
                }
                button { (say.pick(w::ENTER)) }
            }
        }
    }
}
