//! The lift's set-up: the rack drawn with its hole and mats, gear, overlap, cautions.
use crate::draw::{LadderRow, RackDrawing};
use crate::drawings;
use crate::language::{Language, c, p};
use crate::left_open;
use crate::scene::Scene;
use crate::words;
use domain::day::{DayEntry, NoSheet};
use domain::lift::Grip;
use domain::sheet::LiftSheet;
use domain::state::LiftRun;

/// What it shows.
#[derive(Debug, Clone, PartialEq)]
pub struct SetUp {
    /// "180 kg × 5", "3 sets of 180 kg × 5".
    pub work: String,
    /// The rack; without a chosen hole when the lift starts from the floor.
    pub rack: RackDrawing,
    /// "9"; empty from the floor.
    pub hole: String,
    /// "1 mat, 20 mm"; "no mat"; empty from the floor.
    pub mats: String,
    /// Thickness of each mat: "20 mm".
    pub mat_list: Vec<String>,
    /// "bar 431 mm above your feet, 4 mm under the mark"; "from the floor".
    pub height: String,
    /// "shares 96 mm (3.8 in) with the halting deadlift"; empty without a partner.
    pub overlap: String,
    /// Whether the overlap is under the coach's least.
    pub overlap_small: bool,
    /// What the rules of next time give for it: "505 lb, up 10 lb: all reps with the back held; last
    /// on 18 Nov"; empty the first time and in mid-lift.
    pub due: String,
    /// "retired bar, 20 kg, collars 5 kg".
    pub bar: String,
    /// "double overhand grip", "belt from 130 kg", "straps from 165 kg".
    pub gear: Vec<String>,
    /// What can hurt.
    pub cautions: Vec<String>,
    /// What the coach should know.
    pub warnings: Vec<String>,
    /// The ladder, lowest rung first.
    pub ladder: Vec<LadderRow>,
    /// The coach's words.
    pub note: String,
    /// The main button: "start" or "back to the bar", or the way to the coach's desk; empty when the
    /// lift cannot begin.
    pub main: String,
}

pub(crate) fn fresh(scene: &Scene<'_>, entry: Option<&DayEntry>, lifter: &str) -> SetUp {
    let say = scene.language();
    match entry.map(|e| &e.outcome) {
        Some(Ok(sheet)) => SetUp {
            due: entry.map(|entry| due(say, entry)).unwrap_or_default(),
            main: say.say(p::START),
            note: note(scene, lifter, &sheet.note),
            ..set_up(say, sheet, None)
        },
        Some(Err(why)) => SetUp {
            main: match asks_coach(why) {
                true => say.say(p::list::COACH_CODE),
                false => String::new(),
            },
            note: note(scene, lifter, ""),
            ..nothing(say.no_sheet(why))
        },
        None if scene.gym.lifters.iter().any(|l| l.name == lifter) => SetUp {
            note: note(scene, lifter, ""),
            ..nothing(say.say(p::NOT_PLANNED))
        },
        None => nothing(say.fill(p::NOT_A_LIFTER, &[lifter])),
    }
}

/// The plan's note, after what is to be known of the last time.
fn note(scene: &Scene<'_>, lifter: &str, plan: &str) -> String {
    let told = left_open::told(scene.language(), scene.state, lifter);
    let plan = Some(plan.to_owned()).filter(|note| !note.is_empty());
    let both: Vec<String> = told.into_iter().chain(plan).collect();
    both.join("\n")
}

/// Whether the coach's word at the desk makes a sheet of it: the main button leads to its door.
pub(crate) const fn asks_coach(why: &NoSheet) -> bool {
    matches!(
        why,
        NoSheet::LooksWrong { .. } | NoSheet::Hurt | NoSheet::Anew { .. }
    )
}

/// What is due and since when.
fn due(say: Language, entry: &DayEntry) -> String {
    let Some(next) = &entry.next else {
        return String::new();
    };
    let last = say.short_date(next.decision.date);
    let told = |due: String| say.fill(c::DUE_LAST, &[&due, &last]);
    match say.side_by_side(entry) {
        alike if alike.is_empty() => told(say.due(next, entry.unit)),
        both => format!("{both}; {}", told(say.due_beside(next, entry.unit))),
    }
}

fn nothing(warning: String) -> SetUp {
    SetUp {
        work: String::new(),
        rack: RackDrawing::default(),
        hole: String::new(),
        mats: String::new(),
        mat_list: Vec::new(),
        height: String::new(),
        overlap: String::new(),
        overlap_small: false,
        due: String::new(),
        bar: String::new(),
        gear: Vec::new(),
        cautions: Vec::new(),
        warnings: vec![warning],
        ladder: Vec::new(),
        note: String::new(),
        main: String::new(),
    }
}

pub(crate) fn set_up(say: Language, sheet: &LiftSheet, run: Option<&LiftRun>) -> SetUp {
    // In mid-lift the place is that of the rung to come.
    let at = run.and_then(LiftRun::next_rung).unwrap_or(0);
    let hole = sheet.pin_hole(at);
    let pins = sheet.pins.as_ref().filter(|pins| Some(pins.hole) == hole);
    let mut gear = Vec::new();
    if sheet.hooks.is_none() {
        gear.push(say.say(match sheet.grip_of(at) {
            Grip::DoubleOverhand => p::DOUBLE_OVERHAND_GRIP,
            Grip::Hook => p::HOOK_GRIP,
        }));
    }
    gear.extend(say.gear(sheet));
    SetUp {
        work: say.work(sheet),
        rack: drawings::rack(say, sheet, at),
        hole: hole.map(|hole| hole.to_string()).unwrap_or_default(),
        mats: hole
            .map(|_| say.mats(sheet.mats_of(at)))
            .unwrap_or_default(),
        mat_list: crate::spot::mat_list(sheet, at),
        height: match pins {
            Some(pins) if words::is_estimated(sheet) => {
                say.fill(p::ESTIMATED_MEASURE, &[&say.bar_height(pins)])
            }
            Some(pins) => say.bar_height(pins),
            None => say.start(sheet),
        },
        overlap: say.overlap(sheet),
        overlap_small: sheet
            .warnings
            .contains(&domain::sheet::Warning::OverlapSmall),
        due: String::new(),
        bar: say.bar(sheet),
        gear,
        cautions: sheet
            .cautions
            .iter()
            .map(|line| say.shipped(line))
            .collect(),
        warnings: sheet
            .warnings_now()
            .iter()
            .map(|w| say.warning(sheet, w))
            .collect(),
        ladder: drawings::ladder(say, sheet, run),
        note: sheet.note.clone(),
        main: String::new(),
    }
}
