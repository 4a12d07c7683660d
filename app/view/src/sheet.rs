//! The day sheet as a document: JSON with a schema, and the words of the text form.
//!
//! Refuses: rounding where a machine reads; masses are exact strings with a unit.
use crate::language::Language;
use crate::split;
use crate::words;
use chrono::NaiveDate;
use domain::day::DayEntry;
use domain::next::{Due, Why};
use domain::sheet::{LiftSheet, PinSheet, Rated, RungKind};
use domain::solve::bar::GUIDE;
use domain::steel::Figures;
use domain::{Length, LengthUnit, Mass, MassUnit, PlateFace};
use schemars::JsonSchema;
use serde::Serialize;

/// The day sheet of a gym.
#[derive(Debug, Clone, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub struct SheetDoc {
    /// The gym.
    pub gym: String,
    /// The day, ISO 8601.
    pub date: String,
    /// One a lifter and lift.
    pub entries: Vec<EntryDoc>,
}

/// One lifter's one lift, or why there is none.
#[derive(Debug, Clone, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub struct EntryDoc {
    /// Who.
    pub lifter: String,
    /// What; absent when nothing is planned.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub lift: Option<String>,
    /// Why there is no sheet.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub problem: Option<String>,
    /// The programme and its day, where the plan is silent.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub programme: Option<String>,
    /// What the rules give for it, whoever wrote the load; absent the first time.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub next: Option<DueDoc>,
    /// What the plan asks, exact, with unit, where it is another load than the one that is due and
    /// the coach has not ruled; the ladder leads to the lower one.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub planned: Option<String>,
    /// What the makers' figures come to for the heaviest load; absent where none was stated.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub steel: Option<SteelDoc>,
    /// Advice on splitting the deadlift, where there is something to do.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub advice: Option<String>,
    /// The sheet.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub sheet: Option<LiftDoc>,
}

/// What the rules of next time give.
#[derive(Debug, Clone, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub struct DueDoc {
    /// "raise", "repeat", "drop", "reset" or "ease".
    pub verdict: String,
    /// The load that can be made here, exact, with unit; absent where nothing is due.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub load: Option<String>,
    /// The load that it follows from, exact, with unit.
    pub from: String,
    /// The day of that load, ISO 8601.
    pub date: String,
    /// Who decided: "rules" or "coach".
    pub by: String,
    /// Why, in one sentence.
    pub reason: String,
}

/// What makers stated, held against the heaviest load of the day. A guide, never a certificate.
#[derive(Debug, Clone, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub struct SteelDoc {
    /// The heaviest load, exact, with unit.
    pub load: String,
    /// Rated load of both pins, exact, with unit; absent where it was not stated or does not
    /// matter, as all below.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub pins_rated: Option<String>,
    /// Rated load of the rack.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub rack_rated: Option<String>,
    /// Rated load of the bar.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub bar_rated: Option<String>,
    /// Bending stress in the shaft at rest on the pins, MPa rounded to tenths.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub stress: Option<String>,
    /// The same over the yield stress, in hundredths of a percent.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub of_yield: Option<i64>,
    /// The drop on to the pins from which the shaft would take a set, whole mm.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub yield_drop: Option<String>,
    /// "a guide, never a certificate".
    pub caution: String,
}

/// One lift's sheet.
#[derive(Debug, Clone, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub struct LiftDoc {
    /// Rack.
    pub rack: String,
    /// Bar, its mass, its collars' mass (the pair).
    pub bar: BarDoc,
    /// Where the bar starts: "pins", "hooks" or "floor".
    pub start: String,
    /// Hole of the hooks, if it is written; absent elsewhere.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub hook_hole: Option<u16>,
    /// The pins; absent from the floor or when no hole could be given.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub pins: Option<PinDoc>,
    /// Height shared with the partner lift.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub overlap: Option<OverlapDoc>,
    /// "double overhand", "hook grip"; absent from the hooks, where everybody holds the bar their
    /// own way.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub grip: Option<String>,
    /// What the plan asked for.
    pub asked: String,
    /// Warm-ups and work sets, in order.
    pub ladder: Vec<RungDoc>,
    /// Short reminders.
    pub cues: Vec<String>,
    /// What can hurt.
    pub cautions: Vec<String>,
    /// What the coach should know.
    pub warnings: Vec<String>,
    /// The coach's words.
    pub note: String,
}

/// The bar.
#[derive(Debug, Clone, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub struct BarDoc {
    /// What the gym calls it.
    pub name: String,
    /// Bar alone, with unit.
    pub mass: String,
    /// Both collars, with unit.
    pub collars: String,
}

/// The pins.
#[derive(Debug, Clone, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub struct PinDoc {
    /// Hole number, from 1 at the bottom.
    pub hole: u16,
    /// Thickness of each mat stood on, with unit.
    pub mats: Vec<String>,
    /// Bar's centre above what the feet stand on, with unit.
    pub bar_height: String,
    /// Bar height less the target, with unit; negative is lower.
    pub off_target: String,
    /// Whether the body's height was estimated, not measured.
    pub estimated: bool,
}

/// Height shared by two partial pulls.
#[derive(Debug, Clone, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub struct OverlapDoc {
    /// The other lift.
    pub partner: String,
    /// Shared height, with unit; negative is a gap.
    pub length: String,
    /// The coach's least, with unit.
    pub least: String,
}

/// One step of the ladder.
#[derive(Debug, Clone, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub struct RungDoc {
    /// "warm-up" or "work".
    pub kind: String,
    /// Bar, collars and plates, exact, with unit.
    pub load: String,
    /// Reps to do.
    pub reps: u8,
    /// Plates of one side, inside to outside, exact, with unit.
    pub per_side: Vec<String>,
    /// What comes off each side first, outermost first.
    pub take_off: Vec<String>,
    /// What then goes on each side, innermost first.
    pub put_on: Vec<String>,
    /// By how much to raise the bar with these plates, with unit: from the floor they are smaller
    /// than the standard disc. Absent where the bar starts right.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub raise: Option<String>,
    /// Belt on.
    pub belt: bool,
    /// Straps on.
    pub straps: bool,
    /// The hole that the plan asks for, from 1; absent where it asks for none.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub hole: Option<u16>,
    /// "3-0-1-0", where the plan asks for a tempo.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub tempo: Option<String>,
    /// Seconds that each rep is paused, where the plan asks for it.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub pause_s: Option<u8>,
    /// How the bar is held, where the plan asks for another grip.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub grip: Option<String>,
    /// Least rest before this rung, seconds.
    pub rest_s: u32,
}

/// The document of a day; `lifter` keeps one lifter's entries.
#[must_use]
pub fn sheet_doc(gym: &str, date: NaiveDate, day: &[DayEntry], lifter: Option<&str>) -> SheetDoc {
    let kept = day.iter().filter(|e| lifter.is_none_or(|l| l == e.lifter));
    SheetDoc {
        gym: gym.into(),
        date: date.format("%Y-%m-%d").to_string(),
        entries: kept.map(entry_doc).collect(),
    }
}

/// The document as JSON text, indented, with a last line feed.
#[must_use]
pub fn sheet_json(doc: &SheetDoc) -> String {
    let mut text = serde_json::to_string_pretty(doc).unwrap_or_default();
    text.push('\n');
    text
}

/// The JSON Schema (2020-12) of the document, indented, with a last line feed.
#[must_use]
pub fn sheet_schema() -> String {
    schema_of::<SheetDoc>()
}

/// The JSON Schema (2020-12) of any of the documents, indented, with a last line feed.
#[must_use]
pub fn schema_of<Doc: JsonSchema>() -> String {
    let schema = schemars::schema_for!(Doc);
    let mut text = serde_json::to_string_pretty(&schema).unwrap_or_default();
    text.push('\n');
    text
}

fn entry_doc(entry: &DayEntry) -> EntryDoc {
    let problem = match &entry.outcome {
        Ok(_) => None,
        Err(why) => Some(why.to_string()),
    };
    EntryDoc {
        lifter: entry.lifter.clone(),
        lift: (!entry.lift.is_empty()).then(|| entry.lift.clone()),
        problem,
        programme: entry.programme.clone(),
        next: entry
            .next
            .as_ref()
            .map(|next| due_doc(Language::English, next, entry.unit)),
        planned: entry.planned.map(|load| load.exact(entry.unit)),
        steel: entry
            .steel
            .as_ref()
            .map(|figures| steel_doc(figures, entry.unit)),
        advice: entry
            .split
            .as_ref()
            .filter(|split| split::is_told(split))
            .map(|split| split::sentence(Language::English, split, entry.unit)),
        sheet: entry.outcome.as_ref().ok().map(lift_doc),
    }
}

pub(crate) fn due_doc(say: Language, due: &Due, unit: MassUnit) -> DueDoc {
    let next = &due.decision;
    DueDoc {
        verdict: words::verdict(next.verdict).into(),
        load: next.due().map(|load| load.exact(unit)),
        from: next.from.exact(unit),
        date: next.date.format("%Y-%m-%d").to_string(),
        by: if next.why == Why::Coach {
            "coach"
        } else {
            "rules"
        }
        .into(),
        reason: say.due(due, unit),
    }
}

fn lift_doc(sheet: &LiftSheet) -> LiftDoc {
    let unit = sheet.unit;
    LiftDoc {
        rack: sheet.rack.clone(),
        bar: BarDoc {
            name: sheet.bar.name.clone(),
            mass: sheet.bar.mass.exact(unit),
            collars: sheet.bar.collars.exact(unit),
        },
        start: if sheet.hooks.is_some() {
            "hooks"
        } else if sheet.is_from_pins() {
            "pins"
        } else {
            "floor"
        }
        .into(),
        hook_hole: sheet.hook_hole(0),
        pins: sheet.pins.as_ref().map(|pins| pin_doc(sheet, pins)),
        overlap: sheet.overlap.as_ref().map(|o| OverlapDoc {
            partner: o.partner.clone(),
            length: o.length.exact(LengthUnit::Mm),
            least: o.least.exact(LengthUnit::Mm),
        }),
        grip: sheet.hooks.is_none().then(|| words::grip(sheet.grip)),
        asked: sheet.asked.exact(unit),
        ladder: sheet
            .rungs
            .iter()
            .enumerate()
            .map(|(at, rung)| rung_doc(sheet, at, rung))
            .collect(),
        cues: sheet.cues.clone(),
        cautions: sheet.cautions.clone(),
        warnings: words::warnings(sheet),
        note: sheet.note.clone(),
    }
}

fn pin_doc(sheet: &LiftSheet, pins: &PinSheet) -> PinDoc {
    PinDoc {
        hole: pins.hole,
        mats: pins.mats.iter().map(|m| m.exact(LengthUnit::Mm)).collect(),
        bar_height: pins.bar_height.exact(LengthUnit::Mm),
        off_target: pins.off_target.exact(LengthUnit::Mm),
        estimated: words::is_estimated(sheet),
    }
}

fn rung_doc(sheet: &LiftSheet, at: usize, rung: &domain::Rung) -> RungDoc {
    let raise = sheet.raise(at, &rung.per_side);
    let manner = sheet.manner_of(at);
    let list = |plates: &[PlateFace]| plates.iter().map(|p| p.mass.exact(p.unit)).collect();
    RungDoc {
        kind: if rung.kind == RungKind::Work {
            "work"
        } else {
            "warm-up"
        }
        .into(),
        load: rung.load.exact(sheet.unit),
        reps: rung.reps,
        per_side: list(&rung.per_side),
        take_off: list(&rung.take_off),
        put_on: list(&rung.put_on),
        raise: (raise != Length::ZERO).then(|| raise.exact(LengthUnit::Mm)),
        belt: rung.belt,
        straps: rung.straps,
        hole: manner.hole,
        tempo: manner.tempo.map(|tempo| tempo.to_string()),
        pause_s: manner.pause_s,
        grip: manner.grip.map(words::grip),
        rest_s: rung.rest_s,
    }
}

fn steel_doc(figures: &Figures, unit: MassUnit) -> SteelDoc {
    let rated = |wanted: Rated| {
        let of = |(what, _): &&(Rated, Mass)| *what == wanted;
        let found = figures.rated.iter().find(of);
        found.map(|(_, rated)| rated.exact(unit))
    };
    let bending = figures.bending.as_ref();
    let drop = bending.and_then(|bent| bent.yield_drop);
    SteelDoc {
        load: figures.load.exact(unit),
        pins_rated: rated(Rated::Pins),
        rack_rated: rated(Rated::Rack),
        bar_rated: rated(Rated::Bar),
        stress: bending.map(|bent| bent.stress.words()),
        of_yield: bending.map(|bent| bent.of_yield_ppm / 100),
        yield_drop: drop.map(|drop| format!("{} mm", words::whole_mm(drop))),
        caution: GUIDE.into(),
    }
}
