//! The way to the screens beside the ladder: a history, the kiosk's own page, the coach's desk.
//!
//! Refuses: private doors; a picture shows what a finger would reach.
use super::{TAPS_MAX, Walk, rung_shown};
use crate::clock::BenchClock;
use crate::kiosk::Kiosk;
use view::why::Part;
use view::{Frame, Screen, Tap};

/// Days gone through before the history is shown.
const HISTORY_DAYS: usize = 28;
/// Things that may stand behind the end of a lift.
const PARTS: usize = 3;
/// Milliseconds of a day.
const DAY_MS: i64 = 86_400_000;
/// The title of the row that says what the kiosk is.
const ABOUT_ROW: &str = "about Pinladder";
/// Where the landmark that is typed stands on a lifter's page.
const LOCKOUT_ROW: usize = 3;

/// The screen, if it is one of those.
pub(super) fn walk(
    kiosk: &mut Kiosk,
    clock: &BenchClock,
    walk: Walk,
    lifter: &str,
) -> Option<Frame> {
    match walk {
        Walk::History => Some(walk_to_history(kiosk, clock, lifter)),
        Walk::Stall(part) => {
            // The plan's, not somebody whom a programme sends.
            let planned = |e: &&domain::day::DayEntry| e.programme.is_none() && e.outcome.is_ok();
            let planned = kiosk.day().iter().find(planned).map(|e| e.lifter.clone());
            let lifter = planned.as_deref().unwrap_or(lifter);
            Some(walk_to_stall(kiosk, clock, lifter, part))
        }
        Walk::Meet { card } => Some(walk_to_meet(kiosk, clock, card)),
        Walk::Panel => Some(kiosk.tap(&Tap::Panel)),
        Walk::About => {
            kiosk.tap(&Tap::Panel);
            Some(tap_row(kiosk, ABOUT_ROW))
        }
        Walk::Door | Walk::Desk | Walk::Landmarks | Walk::Typing | Walk::Page(_) => {
            Some(walk_to_desk(kiosk, walk))
        }
        Walk::Ruling => {
            lift_for_weeks(kiosk, clock, lifter);
            walk_to_desk(kiosk, Walk::Page(&["lifters"]));
            tap_row(kiosk, lifter);
            Some(tap_row(kiosk, "next time"))
        }
        Walk::Choose
        | Walk::Floor
        | Walk::SetUp
        | Walk::Bar
        | Walk::Beside
        | Walk::First
        | Walk::Reps
        | Walk::Moved
        | Walk::Rest
        | Walk::Settle
        | Walk::Stop
        | Walk::Crowd(..)
        | Walk::End => None,
    }
}

/// Through the door to one of the desk's pages.
fn walk_to_desk(kiosk: &mut Kiosk, walk: Walk) -> Frame {
    kiosk.tap(&Tap::Panel);
    let mut frame = tap_row(kiosk, "coach's desk");
    if matches!(walk, Walk::Door) {
        return kiosk.tap(&Tap::Number(4));
    }
    // The first digits are typed twice.
    for _ in 0..8 {
        if matches!(frame.screen, Screen::List(_)) {
            break;
        }
        frame = kiosk.tap(&Tap::Number(4));
    }
    if matches!(walk, Walk::Desk) {
        return frame;
    }
    if let Walk::Page(way) = walk {
        return way
            .iter()
            .map(|row| tap_row(kiosk, row))
            .last()
            .unwrap_or(frame);
    }
    tap_row(kiosk, "lifters");
    kiosk.tap(&Tap::Row(0))
}

/// The screen in the look that is set now: what stands on a pad is worded as the pad opens.
pub(crate) fn worded(kiosk: &mut Kiosk, walk: Walk) -> Frame {
    if !matches!(walk, Walk::Typing) {
        return kiosk.frame();
    }
    kiosk.tap(&Tap::Row(LOCKOUT_ROW));
    for digit in [7, 9, 6] {
        kiosk.tap(&Tap::Number(digit));
    }
    let frame = kiosk.frame();
    kiosk.tap(&Tap::Undo);
    frame
}

/// Taps the row of the list on the screen that has this title or value.
fn tap_row(kiosk: &mut Kiosk, title: &str) -> Frame {
    let frame = kiosk.frame();
    let Screen::List(list) = &frame.screen else {
        return frame;
    };
    match list
        .rows
        .iter()
        .position(|row| row.title == title || row.value == title)
    {
        Some(at) => kiosk.tap(&Tap::Row(at)),
        None => frame,
    }
}

/// Some weeks of one lifter's lifts, and then their history.
fn walk_to_history(kiosk: &mut Kiosk, clock: &BenchClock, lifter: &str) -> Frame {
    lift_for_weeks(kiosk, clock, lifter);
    kiosk.tap(&Tap::Lifter(lifter.to_owned()));
    kiosk.tap(&Tap::History)
}

/// Some weeks of one lifter's lifts, not all of which go well.
fn lift_for_weeks(kiosk: &mut Kiosk, clock: &BenchClock, lifter: &str) {
    let mut at = 0;
    for _ in 0..HISTORY_DAYS {
        let due = |e: &&domain::day::DayEntry| e.lifter == lifter && e.outcome.is_ok();
        let lifts = kiosk.day().iter().filter(due).count();
        let mut spent = 0;
        for _ in 0..lifts {
            at += 1;
            kiosk.tap(&Tap::Lifter(lifter.to_owned()));
            let last = match at % 5 {
                3 => Last::Short(4),
                4 => Last::Moved(3),
                _ => Last::Well,
            };
            spent += do_lift(kiosk, clock, last);
            kiosk.tap(&Tap::Main);
        }
        clock.advance_ms(DAY_MS - spent);
    }
    clock.advance_ms(-DAY_MS);
}

/// How the last set of a lift goes.
#[derive(Debug, Clone, Copy)]
enum Last {
    Well,
    /// So many reps.
    Short(u8),
    /// The back moves at this rep.
    Moved(u8),
}

/// Weeks of a deadlift that no longer rises, to the end of its last day.
const STALL: [Last; 8] = [
    Last::Well,
    Last::Well,
    Last::Short(4),
    Last::Moved(4),
    Last::Well,
    Last::Moved(3),
    Last::Well,
    Last::Short(4),
];

/// The end of a lift that no longer rises, or what stands behind it.
fn walk_to_stall(kiosk: &mut Kiosk, clock: &BenchClock, lifter: &str, part: Option<Part>) -> Frame {
    for (week, last) in (0..).zip(STALL) {
        if week > 0 {
            clock.advance_ms(7 * DAY_MS);
        }
        kiosk.tap(&Tap::Lifter(lifter.to_owned()));
        let spent = do_lift(kiosk, clock, last);
        clock.advance_ms(-spent);
    }
    let Some(part) = part else {
        return kiosk.frame();
    };
    let mut frame = kiosk.tap(&Tap::Why);
    for _ in 0..PARTS {
        let there = match (&frame.screen, part) {
            (Screen::Why(why), Part::Split) => why.trail.threshold.is_some(),
            (Screen::Why(why), Part::Next) => {
                why.trail.threshold.is_none() && !why.trail.points.is_empty()
            }
            (Screen::Why(why), Part::Single) => !why.estimates.is_empty(),
            _ => true,
        };
        if there {
            break;
        }
        frame = kiosk.tap(&Tap::Main);
    }
    frame
}

/// A meet day some attempts into its flight, a warm-up taken, and the card of the first of ours.
fn walk_to_meet(kiosk: &mut Kiosk, clock: &BenchClock, card: bool) -> Frame {
    kiosk.tap(&Tap::Panel);
    tap_row(kiosk, "meet day");
    kiosk.tap(&Tap::Main);
    kiosk.tap(&Tap::Row(0));
    for _ in 0..4 {
        clock.advance_ms(54_000);
        kiosk.tap(&Tap::Main);
    }
    clock.advance_ms(20_000);
    let frame = kiosk.frame();
    let Screen::Meet(page) = &frame.screen else {
        return frame;
    };
    // Sets of the warm-up say so many of them.
    let attempt = page
        .calls
        .iter()
        .position(|call| !call.set.contains('\u{d7}'));
    match attempt.filter(|_| card) {
        Some(at) => kiosk.tap(&Tap::Row(at)),
        None => frame,
    }
}

/// One lift up to the screen of its end, and how long it took.
fn do_lift(kiosk: &mut Kiosk, clock: &BenchClock, last_set: Last) -> i64 {
    const SET_MS: i64 = 400_000;
    let mut spent = 0;
    for _ in 0..TAPS_MAX {
        let frame = kiosk.frame();
        let last = match &frame.screen {
            Screen::Bar(bar) => rung_shown(&frame).is_some_and(|at| at + 1 == bar.ladder.len()),
            Screen::End(_) => break,
            Screen::Choose(_)
            | Screen::SetUp(_)
            | Screen::Entry(_)
            | Screen::Turn(_)
            | Screen::Holds(_)
            | Screen::Rest(_)
            | Screen::Settle(_)
            | Screen::Stop(_)
            | Screen::Floor(_)
            | Screen::History(_)
            | Screen::Why(_)
            | Screen::Meet(_)
            | Screen::List(_)
            | Screen::Page(_)
            | Screen::Typing(_) => false,
        };
        match last_set {
            Last::Short(reps) if last => {
                kiosk.tap(&Tap::OtherReps);
                kiosk.tap(&Tap::Number(reps));
            }
            Last::Moved(rep) if last => {
                kiosk.tap(&Tap::BackMoved);
                kiosk.tap(&Tap::Number(rep));
            }
            Last::Well | Last::Short(_) | Last::Moved(_) => {
                kiosk.tap(&Tap::Main);
            }
        }
        clock.advance_ms(SET_MS);
        spent += SET_MS;
    }
    spent
}
