//! At the bar: the rung of now.
use crate::draw::{BarDrawing, Change, LadderRow};
use crate::drawings;
use crate::language::{Language, p};
use crate::loading::{Ordered, change_words, ordered, whole_bar};
use crate::scene::Scene;
use crate::settle::offered;
use crate::spot::{Spot, spot};
use domain::order::Order;
use domain::sheet::LiftSheet;
use domain::state::LiftRun;

/// What it shows.
#[derive(Debug, Clone, PartialEq)]
pub struct AtTheBar {
    /// "130".
    pub load: String,
    /// "kg".
    pub unit: String,
    /// "2 reps", "1 rep".
    pub reps: String,
    /// "warm-up 3 of 4", "work set", "work set 2 of 3".
    pub rung: String,
    /// The bar to scale.
    pub bar: BarDrawing,
    /// What the hands have to do.
    pub change: Change,
    /// The ladder, lowest rung first.
    pub ladder: Vec<LadderRow>,
    /// What the hands have to do, plate by plate.
    pub order: Ordered,
    /// Hole, mats, height, gear, grip.
    pub spot: Spot,
    /// "loaded", where something is left to do; else empty.
    pub loaded: String,
    /// "bar holds...".
    pub holds: String,
    /// One short caution that matters now, or empty.
    pub caution: String,
    /// The button to the work loads that may be chosen: "other load"; empty when there are none.
    pub settle: String,
    /// The main button: "2 done".
    pub main: String,
    /// Under it: "back held".
    pub main_detail: String,
}

pub(crate) fn at_the_bar(scene: &Scene<'_>, run: &LiftRun, at: usize) -> AtTheBar {
    let say = scene.language();
    let sheet = &run.sheet;
    let rung = &sheet.rungs[at];
    let order = scene.order(run, at);
    AtTheBar {
        load: say.mass_number(rung.load, sheet.unit),
        unit: sheet.unit.word().into(),
        reps: say.reps_at(sheet, at),
        rung: match scene.weighed(run, &order) {
            Some(load) => {
                let load = say.mass(load, sheet.unit);
                say.fill(p::WEIGHS, &[&say.rung(sheet, at), &load])
            }
            None => say.rung(sheet, at),
        },
        bar: whole_bar(say, sheet, &order),
        change: change_words(say, &order, sheet.unit),
        order: ordered(say, &order),
        spot: spot(scene, run, at, &order.to),
        loaded: loaded(say, &order),
        holds: say.say(p::BAR_HOLDS),
        ladder: drawings::ladder(say, sheet, Some(run)),
        caution: caution(say, sheet, at),
        settle: offered(say, scene.choices(run).as_ref()),
        main: if sheet.reps_of(at).is_open() {
            say.say(p::groups::AS_MANY)
        } else {
            say.fill(p::REPS_DONE, &[&rung.reps.to_string()])
        },
        main_detail: say.say(p::BACK_HELD),
    }
}

/// The button by which the bar is said to be as it should be, where it is not known to be.
pub(crate) fn loaded(say: Language, order: &Order) -> String {
    if order.is_done() && !order.believed.in_doubt {
        String::new()
    } else {
        say.say(p::LOADED)
    }
}

/// The cautions take turns, one a rung, so that each is seen and none is a wall of text.
fn caution(say: Language, sheet: &LiftSheet, at: usize) -> String {
    let cautions = &sheet.cautions;
    let now = cautions.get(at % cautions.len().max(1));
    now.map(|caution| say.shipped(caution)).unwrap_or_default()
}
