//! The way to each screen, in taps, for pictures.
//!
//! Refuses: private doors; a picture shows what a finger would reach.
use crate::clock::BenchClock;
use crate::error::KioskError;
use crate::kiosk::Kiosk;
use crate::replan::Patience;
use domain::MassUnit;
use domain::rotation::{Station, stations};
use view::draw::RowState;
use view::why::Part;
use view::{Frame, Screen, Tap};

mod aside;

pub(crate) use aside::worded;

/// Which screen is wanted.
#[derive(Debug, Clone, Copy)]
pub(crate) enum Walk {
    Choose,
    Floor,
    /// So many lifters of the crowd who use this unit, on the floor.
    Crowd(MassUnit, usize),
    SetUp,
    Bar,
    /// The same, with simulated devices.
    Beside,
    First,
    Reps,
    Moved,
    Rest,
    Settle,
    Stop,
    End,
    /// What stands behind the end of a lift that no longer rises; `None` for that end itself.
    Stall(Option<Part>),
    /// A meet day under way; with `card`, one lifter's attempts.
    Meet {
        card: bool,
    },
    History,
    Panel,
    About,
    Door,
    Desk,
    Landmarks,
    Typing,
    /// A page of the desk, by the rows that lead to it, told by title or value.
    Page(&'static [&'static str]),
    /// What is due for a lifter, at the desk.
    Ruling,
}

/// Rungs done before the middle of a ladder is shown.
const HALF_WAY: usize = 2;
/// Taps at most on the way to a screen.
const TAPS_MAX: usize = 60;
/// Turns done before the floor is shown.
const FLOOR_TURNS: usize = 15;

/// Taps a kiosk in memory to the screen that is wanted.
///
/// # Errors
/// [`KioskError::Usage`] when nobody, or not that lifter, has a lift to show.
pub(crate) fn walk(
    kiosk: &mut Kiosk,
    clock: &BenchClock,
    walk: Walk,
    lifter: Option<&str>,
) -> Result<Frame, KioskError> {
    let with_sheet: Vec<String> = {
        let day = kiosk.day().iter().filter(|e| e.outcome.is_ok());
        day.map(|e| e.lifter.clone()).collect()
    };
    let shown = match lifter {
        Some(name) => with_sheet.iter().find(|l| l.as_str() == name),
        None => with_sheet.first(),
    };
    let Some(shown) = shown.cloned() else {
        let date = kiosk.date();
        let none = match lifter {
            Some(who) => format!("{who} has no lift to show"),
            None => "nobody has a lift to show".to_owned(),
        };
        return Err(KioskError::Usage(format!(
            "{none} on {date}; choose another with --date or --lifter"
        )));
    };
    if let Some(frame) = floor_of(kiosk, clock, walk, &with_sheet) {
        return Ok(frame);
    }
    let named = lifter.is_some();
    // Whoever comes last lifts most often.
    let often = with_sheet.last().filter(|_| !named).unwrap_or(&shown);
    if let Some(frame) = aside::walk(kiosk, clock, walk, often) {
        return Ok(frame);
    }
    others_begin(kiosk, clock, with_sheet.iter().filter(|l| **l != shown));
    kiosk.tap(&Tap::All);
    if matches!(walk, Walk::Choose) {
        return Ok(kiosk.frame());
    }
    kiosk.tap(&Tap::Lifter(shown.clone()));
    if matches!(walk, Walk::SetUp) {
        return Ok(kiosk.frame());
    }
    climb(kiosk, clock, walk, &shown);
    Ok(arrive(kiosk, clock, walk, shown))
}

/// Half-way up the ladder, or to its first rung.
fn climb(kiosk: &mut Kiosk, clock: &BenchClock, walk: Walk, shown: &str) {
    let at_bar = |frame: &Frame| matches!(frame.screen, Screen::Bar(_));
    let rungs = if matches!(walk, Walk::First) {
        0
    } else {
        HALF_WAY
    };
    for _ in 0..=rungs {
        let frame = go_on_until(kiosk, clock, shown, at_bar);
        if rung_shown(&frame).is_none_or(|rung| rung >= rungs) {
            break;
        }
        kiosk.tap(&Tap::Main);
        clock.advance_ms(400_000);
    }
}

/// From the rung of now to the screen that is wanted.
fn arrive(kiosk: &mut Kiosk, clock: &BenchClock, walk: Walk, shown: String) -> Frame {
    match walk {
        Walk::Choose
        | Walk::Floor
        | Walk::Crowd(..)
        | Walk::SetUp
        | Walk::Bar
        | Walk::Beside
        | Walk::First
        | Walk::Stall(_)
        | Walk::Meet { .. }
        | Walk::History
        | Walk::Panel
        | Walk::About
        | Walk::Door
        | Walk::Desk
        | Walk::Landmarks
        | Walk::Typing
        | Walk::Page(_)
        | Walk::Ruling => kiosk.frame(),
        Walk::Reps => kiosk.tap(&Tap::OtherReps),
        Walk::Moved => kiosk.tap(&Tap::BackMoved),
        Walk::Rest => {
            kiosk.tap(&Tap::Main);
            clock.advance_ms(50_000);
            kiosk.tap(&Tap::Lifter(shown))
        }
        Walk::Settle => go_on_until(kiosk, clock, &shown, |frame| {
            matches!(frame.screen, Screen::Settle(_))
        }),
        Walk::Stop => {
            kiosk.tap(&Tap::BackMoved);
            kiosk.tap(&Tap::Number(1))
        }
        Walk::End => go_on_until(kiosk, clock, &shown, |frame| {
            matches!(frame.screen, Screen::End(_))
        }),
    }
}

/// Others are under way too, as on any evening.
fn others_begin<'a>(
    kiosk: &mut Kiosk,
    clock: &BenchClock,
    others: impl Iterator<Item = &'a String>,
) {
    for other in others.take(2) {
        kiosk.tap(&Tap::Lifter(other.clone()));
        kiosk.tap(&Tap::Main);
        kiosk.tap(&Tap::Main);
        clock.advance_ms(70_000);
    }
}

/// Which rung is on the screen, if the bar is.
fn rung_shown(frame: &Frame) -> Option<usize> {
    let Screen::Bar(bar) = &frame.screen else {
        return None;
    };
    bar.ladder.iter().position(|row| row.state == RowState::Now)
}

/// Presses the main button until the lifter's screen is the one wanted; whoever else is called in
/// between waits.
fn go_on_until(
    kiosk: &mut Kiosk,
    clock: &BenchClock,
    lifter: &str,
    there: impl Fn(&Frame) -> bool,
) -> Frame {
    let mut frame = kiosk.frame();
    for _ in 0..TAPS_MAX {
        if frame.lifter != lifter {
            frame = kiosk.tap(&Tap::Lifter(lifter.to_owned()));
        }
        if there(&frame) {
            break;
        }
        frame = kiosk.tap(&Tap::Main);
        clock.advance_ms(1_000);
    }
    frame
}

/// The floor, if that is what is wanted.
fn floor_of(
    kiosk: &mut Kiosk,
    clock: &BenchClock,
    walk: Walk,
    lifters: &[String],
) -> Option<Frame> {
    if let Walk::Crowd(unit, count) = walk {
        return Some(walk_to_crowd(kiosk, clock, unit, count));
    }
    matches!(walk, Walk::Floor).then(|| walk_to_floor(kiosk, clock, lifters))
}

/// The first so many lifters of the day who use this unit begin and lift twice, one after the
/// other, and the first of them a third time; then the rest of their turns is called.
fn walk_to_crowd(kiosk: &mut Kiosk, clock: &BenchClock, unit: MassUnit, count: usize) -> Frame {
    let sheets = kiosk.day().iter().filter_map(|e| e.outcome.as_ref().ok());
    let of_unit = sheets.filter(|sheet| sheet.unit == unit);
    let crowd: Vec<String> = of_unit.map(|s| s.lifter.clone()).take(count).collect();
    kiosk.be_patient(Patience::Never);
    for lifter in &crowd {
        kiosk.tap(&Tap::Lifter(lifter.clone()));
        kiosk.tap(&Tap::Main);
    }
    let sets = 2 * crowd.len() + 1;
    for (at, lifter) in crowd.iter().cycle().take(sets).enumerate() {
        if at + 1 == sets {
            kiosk.be_patient(Patience::Untimed);
        }
        if matches!(
            kiosk.tap(&Tap::Lifter(lifter.clone())).screen,
            Screen::Rest(_)
        ) {
            kiosk.tap(&Tap::Main);
        }
        kiosk.tap(&Tap::Main);
        clock.advance_ms(35_000);
    }
    kiosk.tap(&Tap::Floor)
}

/// Everybody begins, some turns are done at each rack, and the floor is shown.
fn walk_to_floor(kiosk: &mut Kiosk, clock: &BenchClock, lifters: &[String]) -> Frame {
    for lifter in lifters {
        kiosk.tap(&Tap::Lifter(lifter.clone()));
        kiosk.tap(&Tap::Main);
    }
    let date = kiosk.date();
    for turn in 0..FLOOR_TURNS {
        let stations: Vec<Station> = stations(kiosk.state(), date).into_iter().collect();
        let Some(station) = stations.get(turn % stations.len().max(1)) else {
            break;
        };
        let first = kiosk.state().rotation(station).first();
        let Some(run) = first.and_then(|turn| kiosk.state().lifts.get(&turn.no)) else {
            continue;
        };
        let mut frame = kiosk.tap(&Tap::Lifter(run.sheet.lifter.clone()));
        if matches!(frame.screen, Screen::Settle(_)) {
            frame = kiosk.tap(&Tap::Main);
        }
        if matches!(frame.screen, Screen::Rest(_)) {
            kiosk.tap(&Tap::Main);
        }
        kiosk.tap(&Tap::Main);
        clock.advance_ms(25_000);
    }
    kiosk.tap(&Tap::Floor)
}
