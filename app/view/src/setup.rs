//! The lift's set-up: the rack drawn with its hole and mats, gear, overlap, cautions.
use crate::draw::{LadderRow, RackDrawing};
use crate::drawings;
use crate::scene::Scene;
use crate::words;
use domain::day::DayEntry;
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
    /// "bar 431 mm above your feet, 4 mm under the mark"; "from the floor".
    pub height: String,
    /// "shares 96 mm (3.8 in) with the halting deadlift"; empty without a partner.
    pub overlap: String,
    /// Whether the overlap is under the coach's least.
    pub overlap_small: bool,
    /// "retired bar, 20 kg, collars 5 kg".
    pub bar: String,
    /// "double overhand grip", "belt from 130 kg", "straps from 165 kg".
    pub gear: Vec<String>,
    /// Short reminders.
    pub cues: Vec<String>,
    /// What can hurt.
    pub cautions: Vec<String>,
    /// What the coach should know.
    pub warnings: Vec<String>,
    /// The ladder, lowest rung first.
    pub ladder: Vec<LadderRow>,
    /// The coach's words.
    pub note: String,
    /// The main button: "start" or "back to the bar"; empty when the lift cannot begin.
    pub main: String,
}

pub(crate) fn fresh(scene: &Scene<'_>, entry: Option<&DayEntry>, lifter: &str) -> SetUp {
    match entry.map(|e| &e.outcome) {
        Some(Ok(sheet)) => SetUp {
            main: "start".into(),
            ..set_up(sheet, None)
        },
        Some(Err(why)) => nothing(why.to_string()),
        None if scene.gym.lifters.iter().any(|l| l.name == lifter) => {
            nothing("nothing is planned for today; ask the coach".into())
        }
        None => nothing(format!("{lifter} is not in lifters.toml; ask the coach")),
    }
}

fn nothing(warning: String) -> SetUp {
    SetUp {
        work: String::new(),
        rack: RackDrawing::default(),
        hole: String::new(),
        mats: String::new(),
        height: String::new(),
        overlap: String::new(),
        overlap_small: false,
        bar: String::new(),
        gear: Vec::new(),
        cues: Vec::new(),
        cautions: Vec::new(),
        warnings: vec![warning],
        ladder: Vec::new(),
        note: String::new(),
        main: String::new(),
    }
}

pub(crate) fn set_up(sheet: &LiftSheet, run: Option<&LiftRun>) -> SetUp {
    let pins = sheet.pins.as_ref();
    let mut gear = Vec::new();
    if sheet.hooks.is_none() {
        let grip = words::grip(sheet.grip).trim_end_matches(" grip");
        gear.push(format!("{grip} grip"));
    }
    gear.extend(words::gear(sheet));
    SetUp {
        work: words::work(sheet),
        rack: drawings::rack(sheet),
        hole: pins.map(|p| p.hole.to_string()).unwrap_or_default(),
        mats: pins.map(|p| words::mats(&p.mats)).unwrap_or_default(),
        height: match pins {
            Some(pins) if words::is_estimated(sheet) => {
                format!("{}; estimated, measure", words::bar_height(pins))
            }
            Some(pins) => words::bar_height(pins),
            None => words::start(sheet),
        },
        overlap: words::overlap(sheet),
        overlap_small: sheet
            .warnings
            .contains(&domain::sheet::Warning::OverlapSmall),
        bar: words::bar(sheet),
        gear,
        cues: sheet.cues.clone(),
        cautions: sheet.cautions.clone(),
        warnings: sheet
            .warnings
            .iter()
            .map(|w| words::warning(sheet, w))
            .collect(),
        ladder: drawings::ladder(sheet, run),
        note: sheet.note.clone(),
        main: String::new(),
    }
}
