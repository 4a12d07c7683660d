//! Between two rungs: the rest, and the next rung's loading.
use crate::bar::loaded;
use crate::draw::{BarDrawing, Change, LadderRow};
use crate::drawings;
use crate::language::{Language, p};
use crate::loading::{Ordered, change_words, ordered, stack_words, still_bar, whole_bar};
use crate::scene::Scene;
use crate::settle::offered;
use crate::spot::{Spot, spot};
use crate::words::minutes;
use domain::MassUnit;
use domain::order::Order;
use domain::rotation::station_of;
use domain::sheet::LiftSheet;
use domain::state::Entered;
use domain::state::LiftRun;

/// What it shows.
#[derive(Debug, Clone, PartialEq)]
pub struct Rest {
    /// "2:10"; "2nd" for somebody rested whose turn comes after another's.
    pub left: String,
    /// Share of the rest that is left, 0 to 1, in steps of whole seconds.
    pub share: f32,
    /// "rest", "after Hamza".
    pub word: String,
    /// What was just done: "130 kg × 2, back held".
    pub last: String,
    /// "165".
    pub load: String,
    /// "kg".
    pub unit: String,
    /// "1 rep".
    pub reps: String,
    /// "warm-up 4 of 4", "work set".
    pub rung: String,
    /// The bar as it must be loaded, to scale.
    pub bar: BarDrawing,
    /// What the hands have to do.
    pub change: Change,
    /// The ladder, lowest rung first.
    pub ladder: Vec<LadderRow>,
    /// What the hands have to do, plate by plate; none while somebody else comes first.
    pub order: Option<Ordered>,
    /// Hole, mats, height, gear, grip.
    pub spot: Spot,
    /// "loaded", where something is left to do; else empty.
    pub loaded: String,
    /// "bar holds...", or empty.
    pub holds: String,
    /// The button to the work loads that may be chosen: "other load"; empty when there are none.
    pub settle: String,
    /// One short cue for the set to come, or empty; they take turns.
    pub cue: String,
    /// The main button: "go now".
    pub main: String,
}

pub(crate) fn rest(scene: &Scene<'_>, run: &LiftRun, at: usize, left: u32) -> Rest {
    let say = scene.language();
    let sheet = &run.sheet;
    let rung = &sheet.rungs[at];
    let order = scene.order(run, at);
    let is_turn = scene.is_turn(run);
    let (left_words, word) = waiting(scene, run, left);
    let (bar, change) = if is_turn {
        (
            whole_bar(say, sheet, &order),
            change_words(say, &order, sheet.unit),
        )
    } else {
        (
            still_bar(say, sheet, &order.to),
            waits(say, run, &order, sheet.unit),
        )
    };
    Rest {
        left: left_words,
        share: drawings::share(i64::from(left), i64::from(rung.rest_s)),
        word,
        last: last_words(say, run),
        load: say.mass_number(rung.load, sheet.unit),
        unit: sheet.unit.word().into(),
        reps: say.reps_at(sheet, at),
        rung: say.rung(sheet, at),
        bar,
        change,
        order: is_turn.then(|| ordered(say, &order)),
        spot: spot(scene, run, at, &order.to),
        loaded: if is_turn {
            loaded(say, &order)
        } else {
            String::new()
        },
        holds: if is_turn {
            say.say(p::BAR_HOLDS)
        } else {
            String::new()
        },
        ladder: drawings::ladder(say, sheet, Some(run)),
        cue: cue(say, sheet, at),
        settle: offered(say, scene.choices(run).as_ref()),
        main: say.say(match (run.attendance.away, scene.first_before(run)) {
            (true, _) => p::I_AM_BACK,
            (false, Some(_)) => p::MINE,
            (false, None) => p::GO_NOW,
        }),
    }
}

/// One cue a rung, in turn.
fn cue(say: Language, sheet: &LiftSheet, at: usize) -> String {
    let now = sheet.cues.get(at % sheet.cues.len().max(1));
    now.map(|cue| say.shipped(cue)).unwrap_or_default()
}

/// While others come first: the whole stack, and nothing to do yet.
fn waits(say: Language, run: &LiftRun, order: &Order, unit: MassUnit) -> Change {
    let stack = stack_words(say, order, unit);
    let word = if run.attendance.away {
        p::AWAY
    } else {
        p::WAITING_LOAD
    };
    Change {
        sentence: format!("{}; {}", stack.sentence, say.say(word)),
        ..stack
    }
}

/// What the lifter waits for: the rest, or those who come first.
fn waiting(scene: &Scene<'_>, run: &LiftRun, left: u32) -> (String, String) {
    let say = scene.language();
    if run.attendance.away {
        return (say.say(p::AWAY), String::new());
    }
    if left > 0 {
        return (minutes(left), say.say(p::REST));
    }
    let order = scene.state.rotation(&station_of(run));
    let place = order.iter().position(|turn| turn.no == run.no).unwrap_or(0);
    let before = order[..place]
        .last()
        .and_then(|turn| scene.state.lifts.get(&turn.no));
    let before = before.map_or("", |run| run.sheet.lifter.as_str());
    (say.place(place + 1), say.fill(p::AFTER, &[before]))
}

/// "130 kg × 2, back held": the last set that stands.
pub(crate) fn last_words(say: Language, run: &LiftRun) -> String {
    let sets = run.passed().zip(&run.sheet.rungs);
    let last = sets.filter_map(|(entry, rung)| match entry.what {
        Entered::Set { reps, hold } => Some((rung, reps, hold)),
        Entered::Skipped
        | Entered::Stopped
        | Entered::WentOn
        | Entered::Settled
        | Entered::LeftOpen => None,
    });
    last.last()
        .map(|(rung, reps, hold)| {
            format!(
                "{}, {}",
                say.set(rung.load, run.sheet.unit, reps),
                say.hold(hold)
            )
        })
        .unwrap_or_default()
}
