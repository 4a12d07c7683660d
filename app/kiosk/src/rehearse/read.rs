//! Reads a frame for a rehearsal: the one place that knows which screen shows what.
//!
//! Refuses: what the screen does not show.
use super::answer::{Answer, Believed, BothSides};
use crate::kiosk::Kiosk;
use view::loading::{Ordered, SideLists};
use view::spot::Spot;
use view::{Frame, Screen};

/// What `frame` shows; the drawn buttons and texts are left to whoever sees them.
pub(super) fn read(kiosk: &Kiosk, frame: &Frame) -> Answer {
    let filled = |text: &String| Some(text.clone()).filter(|text| !text.is_empty());
    let mut answer = Answer {
        screen: name(&frame.screen),
        lifter: filled(&frame.lifter),
        lift: filled(&frame.lift),
        warnings: filled(&frame.notice).into_iter().collect(),
        sets_logged: usize::try_from(kiosk.state().sets()).unwrap_or(usize::MAX),
        ..Answer::default()
    };
    match &frame.screen {
        Screen::SetUp(setup) => {
            answer.warnings.extend(setup.warnings.iter().cloned());
            answer.hole = setup.hole.parse().ok();
            answer.mats = answer.hole.map(|_| setup.mat_list.clone());
            of_run(&mut answer, kiosk, &frame.lifter);
        }
        Screen::Bar(bar) => {
            answer.load = Some(format!("{} {}", bar.load, bar.unit));
            answer.reps = number(&bar.reps);
            answer.warnings.extend(filled(&bar.caution));
            of_run(&mut answer, kiosk, &frame.lifter);
            spot(&mut answer, &bar.spot);
            order(&mut answer, &bar.order);
        }
        Screen::Rest(rest) => {
            answer.load = Some(format!("{} {}", rest.load, rest.unit));
            answer.reps = number(&rest.reps);
            answer.rest_s = seconds(&rest.left);
            of_run(&mut answer, kiosk, &frame.lifter);
            spot(&mut answer, &rest.spot);
            if let Some(ordered) = &rest.order {
                order(&mut answer, ordered);
            }
        }
        Screen::Floor(floor) => {
            let up = floor.racks.first().and_then(|rack| rack.up.as_ref());
            if let Some(up) = up.filter(|_| floor.racks.len() == 1) {
                answer.load = Some(format!("{} {}", up.load, up.unit));
                answer.reps = number(&up.reps);
                of_run(&mut answer, kiosk, &up.lifter);
                spot(&mut answer, &up.spot);
                if let Some(ordered) = &up.order {
                    order(&mut answer, ordered);
                }
            }
        }
        Screen::Settle(settle) => {
            spot(&mut answer, &settle.spot);
            answer.rest_s = seconds(&settle.left);
            answer.warnings.extend(filled(&settle.caution));
        }
        Screen::Stop(stop) => answer.warnings.extend(filled(&stop.advice)),
        Screen::Choose(_)
        | Screen::Entry(_)
        | Screen::End(_)
        | Screen::Turn(_)
        | Screen::Holds(_)
        | Screen::History(_)
        | Screen::Why(_)
        | Screen::Meet(_)
        | Screen::List(_)
        | Screen::Page(_)
        | Screen::Typing(_) => {}
    }
    answer
}

/// The screen's name, as `pinladder picture` has it.
fn name(screen: &Screen) -> &'static str {
    match screen {
        Screen::Choose(_) => "choose",
        Screen::SetUp(_) => "setup",
        Screen::Bar(_) => "bar",
        Screen::Entry(_) => "entry",
        Screen::Rest(_) => "rest",
        Screen::Turn(_) => "turn",
        Screen::Holds(_) => "holds",
        Screen::Stop(_) => "stop",
        Screen::Settle(_) => "settle",
        Screen::End(_) => "end",
        Screen::Floor(_) => "floor",
        Screen::History(_) => "history",
        Screen::Why(_) => "why",
        Screen::Meet(_) => "meet",
        Screen::List(_) => "list",
        Screen::Page(_) => "page",
        Screen::Typing(_) => "typing",
    }
}

/// Rack and bar of the lift that is shown.
fn of_run(answer: &mut Answer, kiosk: &Kiosk, lifter: &str) {
    let Some(run) = kiosk.state().lift_of(lifter, kiosk.date()) else {
        return;
    };
    answer.rack = Some(run.sheet.rack.clone());
    answer.bar = Some(run.sheet.bar.name.clone());
}

/// Where the lifter stands.
fn spot(answer: &mut Answer, spot: &Spot) {
    answer.hole = spot.hole.parse().ok();
    answer.mats = answer.hole.map(|_| spot.mat_list.clone());
    answer
        .warnings
        .extend(Some(spot.raise.clone()).filter(|text| !text.is_empty()));
}

/// What must be on the bar, what is on it as far as anybody said, and what the hands have to do.
fn order(answer: &mut Answer, ordered: &Ordered) {
    answer.warnings.extend(ordered.lacks.clone());
    let both = |side: &SideLists| BothSides {
        left: side.left.clone(),
        right: side.right.clone(),
    };
    answer.left = Some(ordered.holds.left.clone());
    answer.right = Some(ordered.holds.right.clone());
    answer.take_off = Some(both(&ordered.take_off));
    answer.put_on = Some(both(&ordered.put_on));
    answer.believed = Some(Believed {
        left: ordered.believed.left.clone(),
        right: ordered.believed.right.clone(),
        in_doubt: ordered.in_doubt,
    });
}

/// "5 reps" as 5.
fn number(text: &str) -> Option<u8> {
    text.split(' ').next()?.parse().ok()
}

/// "2:10" as 130.
fn seconds(text: &str) -> Option<u32> {
    let (minutes, seconds) = text.split_once(':')?;
    Some(minutes.parse::<u32>().ok()? * 60 + seconds.parse::<u32>().ok()?)
}
