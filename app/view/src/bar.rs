//! At the bar: the rung of now.
use crate::draw::{BarDrawing, Change, LadderRow, RackDrawing};
use crate::drawings;
use crate::language::{Language, p};
use crate::scene::Scene;
use crate::settle::offered;
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
    /// The rack; empty holes from the floor.
    pub rack: RackDrawing,
    /// "9"; empty from the floor.
    pub hole: String,
    /// "1 mat, 20 mm" or empty.
    pub mats: String,
    /// "belt", "straps": what is worn now, loudest first; empty when nothing.
    pub gear: Vec<String>,
    /// "double overhand".
    pub grip: String,
    /// One short caution that matters now, or empty.
    pub caution: String,
    /// The button to the work loads that may be chosen: "other load"; empty when there are none.
    pub settle: String,
    /// The main button: "2 done".
    pub main: String,
    /// Under it: "back kept".
    pub main_detail: String,
}

pub(crate) fn at_the_bar(scene: &Scene<'_>, run: &LiftRun, at: usize) -> AtTheBar {
    let say = scene.language();
    let sheet = &run.sheet;
    let rung = &sheet.rungs[at];
    let (on, to) = scene.stacks(run, at);
    let weighed = scene.weighed(run, at);
    let pins = sheet.pins.as_ref();
    AtTheBar {
        load: say.mass_number(rung.load, sheet.unit),
        unit: sheet.unit.word().into(),
        reps: say.reps(rung.reps),
        rung: match &weighed {
            Some(sides) => {
                let truly = say.mass(sides.load, sheet.unit);
                say.fill(p::TRULY, &[&say.rung(sheet, at), &truly])
            }
            None => say.rung(sheet, at),
        },
        bar: drawings::bar(say, sheet, &on, to),
        change: drawings::marked_change(say, &on, to, sheet.unit, weighed.as_ref()),
        ladder: drawings::ladder(say, sheet, Some(run)),
        rack: drawings::rack(say, sheet),
        hole: pins.map(|p| p.hole.to_string()).unwrap_or_default(),
        mats: pins
            .filter(|p| !p.mats.is_empty())
            .map(|p| say.mats(&p.mats))
            .unwrap_or_default(),
        gear: say.worn(rung),
        grip: match sheet.hooks {
            Some(_) => String::new(),
            None => say.grip(sheet.grip),
        },
        caution: caution(say, sheet, at),
        settle: offered(say, scene.choices(run).as_ref()),
        main: say.fill(p::REPS_DONE, &[&rung.reps.to_string()]),
        main_detail: say.say(p::BACK_KEPT),
    }
}

/// The cautions take turns, one a rung, so that each is seen and none is a wall of text.
fn caution(say: Language, sheet: &LiftSheet, at: usize) -> String {
    let cautions = &sheet.cautions;
    let now = cautions.get(at % cautions.len().max(1));
    now.map(|caution| say.shipped(caution)).unwrap_or_default()
}
