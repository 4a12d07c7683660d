//! The floor: whose turn it is at each rack, who is next and who then, at one glance.
//!
//! Refuses: planning. The turns come in the order in which they are to be taken.
use crate::draw::{BarDrawing, Change};
use crate::language::p;
use crate::loading::{Ordered, change_words, ordered, stack_words, still_bar, whole_bar};
use crate::pace::{Pace, pace};
use crate::scene::Scene;
use crate::spot::{Spot, spot};
use crate::stage::shown_orders;
use crate::words::minutes;
use domain::rotation::{CalledTurn, Station, station_of, stations};
use domain::shown::ShownOrder;
use domain::state::LiftRun;

/// What it shows.
#[derive(Debug, Clone, PartialEq)]
pub struct Floor {
    /// One rack, or two side by side; of more, who is up is told in a line.
    pub racks: Vec<FloorRack>,
    /// A sentence when nobody lifts, or empty.
    pub empty: String,
}

/// The turns at one rack.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct FloorRack {
    /// The rack.
    pub name: String,
    /// Whose turn it is; `None` while nobody is up.
    pub up: Option<FloorTurn>,
    /// Who is next.
    pub next: Option<FloorTurn>,
    /// Who then, in order, every lifter before anybody comes again; the first four are shown,
    /// beside another rack the first.
    pub then: Vec<FloorTurn>,
    /// Who is under way here and has no turn: "Ada: back moved", "Bo: did not come at 18:42".
    pub without_turn: Vec<String>,
}

/// One lifter's one set in the rotation.
#[derive(Debug, Clone, PartialEq)]
pub struct FloorTurn {
    /// Name.
    pub lifter: String,
    /// "rack pull, warm-up 3 of 4", "rack pull, work set".
    pub lift: String,
    /// "160".
    pub load: String,
    /// "kg".
    pub unit: String,
    /// "5 reps".
    pub reps: String,
    /// Hole, mats, height, gear, grip.
    pub spot: Spot,
    /// "up", "next", "rest 2:10", "ready", "did not come at 18:42".
    pub word: String,
    /// For the look.
    pub pace: Pace,
    /// The bar to scale; looked at only for the turn that is up.
    pub bar: BarDrawing,
    /// What the hands have to do before the turn that is up; for others the whole stack, with
    /// nothing to do yet.
    pub change: Change,
    /// The same plate by plate, for the turn that is up.
    pub order: Option<Ordered>,
}

/// The most racks that are shown.
const RACKS_MAX: usize = 2;
/// The most turns after the next that are told.
const THEN_MAX: usize = 4;

/// Later turns that are drawn at a rack alone, and at each of two.
const THEN: [usize; 2] = [4, 1];

/// How many turns after the next are drawn where so many racks are shown.
#[must_use]
pub const fn then_shown(racks: usize) -> usize {
    if racks > 1 { THEN[1] } else { THEN[0] }
}

/// The floor of now: at each rack the bar that most lifters share comes first; a second bar of
/// one rack is shown where no other rack needs the place.
#[must_use]
pub fn floor(scene: &Scene<'_>) -> Floor {
    let (shown, more) = shown_stations(scene);
    let empty = if shown.is_empty() {
        scene.language().say(p::NOBODY_YET)
    } else {
        String::new()
    };
    let alike = |at: &Station| shown.iter().filter(|other| other.rack == at.rack).count() > 1;
    let name = |at: &Station| {
        if alike(at) {
            format!("{}, {}", at.rack, at.bar)
        } else {
            at.rack.clone()
        }
    };
    let racks = shown.iter().map(|at| FloorRack {
        name: name(at),
        ..rack(scene, at)
    });
    let mut racks: Vec<FloorRack> = racks.collect();
    if let Some(last) = racks.last_mut() {
        let also = more.iter().filter_map(|station| also_up(scene, station));
        last.without_turn.extend(also);
    }
    Floor { racks, empty }
}

/// Who is up at a bar for which there is no room.
fn also_up(scene: &Scene<'_>, station: &Station) -> Option<String> {
    let up = scene.run_first(station)?;
    let words = [&station.rack, &station.bar, &up.sheet.lifter];
    let words = words.map(String::as_str);
    Some(scene.language().fill(p::ALSO_UP, &words))
}

/// The bars whose turns are shown, at most two, and the others.
fn shown_stations(scene: &Scene<'_>) -> (Vec<Station>, Vec<Station>) {
    let mut open: Vec<Station> = stations(scene.state, scene.date).into_iter().collect();
    open.retain(|station| scene.run_first(station).is_some());
    open.sort_by_key(|station| usize::MAX - lifters(scene, station));
    let (mut shown, mut second): (Vec<Station>, Vec<Station>) = (Vec::new(), Vec::new());
    for station in open {
        let same_rack = shown.iter().any(|other| other.rack == station.rack);
        if same_rack {
            second.push(station);
        } else {
            shown.push(station);
        }
    }
    shown.append(&mut second);
    let more = shown.split_off(shown.len().min(RACKS_MAX));
    shown.sort();
    (shown, more)
}

/// How many lifters share a station.
fn lifters(scene: &Scene<'_>, station: &Station) -> usize {
    scene
        .runs()
        .filter(|run| !run.is_over() && station_of(run) == *station)
        .count()
}

fn rack(scene: &Scene<'_>, station: &Station) -> FloorRack {
    let order = scene.state.rotation(station);
    let turns: Vec<FloorTurn> = shown(order)
        .into_iter()
        .filter_map(|place| {
            let turn = order.get(place)?;
            let run = scene.state.lifts.get(&turn.no)?;
            // The load of a next set would be an invitation.
            if run.awaits_decision() {
                return None;
            }
            Some(floor_turn(scene, run, usize::from(turn.rung), place))
        })
        .collect();
    let mut turns = turns.into_iter();
    FloorRack {
        name: station.rack.clone(),
        up: turns.next(),
        next: turns.next(),
        then: turns.collect(),
        without_turn: without_turn(scene, station),
    }
}

/// Those whose turn is not called, and why: the back moved and nobody has decided yet, or they are
/// not there.
fn without_turn(scene: &Scene<'_>, station: &Station) -> Vec<String> {
    let here = |run: &&LiftRun| !run.is_over() && station_of(run) == *station;
    let runs = scene.runs().filter(here);
    runs.filter(|run| run.awaits_decision() || run.attendance.away)
        .map(|run| {
            let word = match passed_word(scene, run) {
                Some(word) if !run.awaits_decision() => word,
                Some(_) | None => pace(scene, run).1,
            };
            format!("{}: {word}", run.sheet.lifter)
        })
        .collect()
}

/// Places of the turns that are told: the first two, then each other lifter's first, then whoever
/// comes again, as far as there is room; in the order in which they are to be taken.
fn shown(order: &[CalledTurn]) -> Vec<usize> {
    let again =
        |place: &usize| *place > 1 && order[..*place].iter().any(|t| t.no == order[*place].no);
    let (later, mut places): (Vec<usize>, Vec<usize>) = (0..order.len()).partition(again);
    places.extend(later);
    places.truncate(THEN_MAX + 2);
    places.sort_unstable();
    places
}

fn floor_turn(scene: &Scene<'_>, run: &LiftRun, rung: usize, place: usize) -> FloorTurn {
    let say = scene.language();
    let sheet = &run.sheet;
    let order = scene.order(run, rung);
    let is_up = place == 0 && !run.awaits_decision();
    let (load, reps) = sheet
        .rungs
        .get(rung)
        .map_or((domain::Mass::ZERO, 0), |r| (r.load, r.reps));
    let is_now = run.next_rung() == Some(rung);
    let (pace, word) = match (place, is_now, pace(scene, run)) {
        (_, true, (Pace::Resting, left)) => (Pace::Resting, say.fill(p::REST_LEFT, &[&left])),
        (_, true, (Pace::Stopped, word)) => (Pace::Stopped, word),
        (_, true, (Pace::Away, word)) => (Pace::Away, word),
        (0, ..) => (Pace::Ready, say.say(p::UP)),
        (_, true, _) if run.attendance.passed_at.is_some() => {
            (Pace::Away, passed_word(scene, run).unwrap_or_default())
        }
        (1, ..) => (Pace::Ready, say.say(p::NEXT_UP)),
        (_, true, (pace, word)) => (pace, word),
        // A later set of somebody who lifts before: its rest has not begun.
        (_, false, _) => {
            let rest = sheet.rungs.get(rung).map_or(0, |r| r.rest_s);
            (Pace::Resting, say.fill(p::REST_LEFT, &[&minutes(rest)]))
        }
    };
    FloorTurn {
        lifter: sheet.lifter.clone(),
        lift: format!("{}, {}", say.shipped(&sheet.lift), say.rung(sheet, rung)),
        load: say.mass_number(load, sheet.unit),
        unit: sheet.unit.word().into(),
        reps: say.reps(reps),
        spot: sheet
            .rungs
            .get(rung)
            .map(|_| spot(scene, run, rung, &order.to))
            .unwrap_or_default(),
        word,
        pace,
        bar: if is_up {
            whole_bar(say, sheet, &order)
        } else {
            still_bar(say, sheet, &order.to)
        },
        change: if is_up {
            change_words(say, &order, sheet.unit)
        } else {
            stack_words(say, &order, sheet.unit)
        },
        order: is_up.then(|| ordered(say, &order)),
    }
}

/// The orders of all turns that are up on the floor.
pub(crate) fn up_orders(scene: &Scene<'_>) -> Vec<ShownOrder> {
    let shown = shown_stations(scene).0.into_iter();
    let orders = shown.filter_map(|station| {
        let turn = scene.state.rotation(&station).first()?;
        let run = scene.state.lifts.get(&turn.no)?;
        let up = !run.awaits_decision();
        up.then(|| shown_orders(scene, run, usize::from(turn.rung)))
    });
    orders.flatten().collect()
}

/// How somebody who was passed over stands on the floor.
fn passed_word(scene: &Scene<'_>, run: &LiftRun) -> Option<String> {
    let at = run.attendance.passed_at?;
    let say = scene.language();
    Some(match scene.clock_at(at) {
        Some(time) => say.fill(p::PASSED_OVER, &[&time]),
        None => say.say(p::PASSED_OVER_ONCE),
    })
}
