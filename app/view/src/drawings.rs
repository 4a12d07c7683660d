//! From sheets and stacks to drawings in millimetres. Refuses: pixels.
use crate::draw::{HeightMark, HoleDrawing, LadderRow, RackDrawing, RowState, Shade};
use crate::language::{Language, p};
use domain::event::Hold;
use domain::lift::Landmark;
use domain::prescription::Reps;
use domain::sheet::{LiftSheet, PinSheet, Rung, RungKind};
use domain::state::{Entered, LiftRun};
use domain::{Length, Mass, MassUnit, PlateFace};

/// Millimetres for the eye.
#[must_use]
pub fn mm(length: Length) -> f32 {
    let tenths = length.nm() / 100_000;
    i16::try_from(tenths).map_or(f32::MAX, f32::from) / 10.0
}

/// The competition colour of a kilo disc (IWF rules); plain for everything else.
pub(crate) fn shade(face: &PlateFace) -> Shade {
    let kg = |thousandths: i64| Mass::of(MassUnit::Kg, thousandths);
    let is = |a: i64, b: i64| face.mass == kg(a) || face.mass == kg(b);
    match face.unit {
        MassUnit::Lb => Shade::Plain,
        MassUnit::Kg if is(25_000, 2_500) => Shade::Red,
        MassUnit::Kg if is(20_000, 2_000) => Shade::Blue,
        MassUnit::Kg if is(15_000, 1_500) => Shade::Yellow,
        MassUnit::Kg if is(10_000, 1_000) => Shade::Green,
        MassUnit::Kg if is(5_000, 500) => Shade::White,
        MassUnit::Kg => Shade::Plain,
    }
}

/// The upright with its pin, mats and landmarks for the rung `at`; empty from the floor, and in a
/// hole whose height nobody knows.
#[must_use]
pub fn rack(say: Language, sheet: &LiftSheet, at: usize) -> RackDrawing {
    let Some(pins) = &sheet.pins else {
        return RackDrawing::default();
    };
    let mats = sheet.mats_of(at);
    let stood: Length = mats.iter().copied().sum();
    let chosen = sheet.pin_hole(at).unwrap_or(pins.hole);
    let up = pins.spacing.times(i64::from(chosen) - i64::from(pins.hole));
    let own: Length = pins.mats.iter().copied().sum();
    let top = pins.first_hole + pins.spacing.times(i64::from(pins.holes));
    RackDrawing {
        holes: (1..=pins.holes)
            .map(|number| hole(pins, number, chosen))
            .collect(),
        top_mm: mm(top),
        bar_mm: mm(pins.bar_height + own + up),
        shaft_mm: mm(sheet.bar.shaft_diameter),
        mats_mm: mats.iter().copied().map(mm).collect(),
        marks: marks(say, pins, stood),
    }
}

fn hole(pins: &PinSheet, number: u16, chosen: u16) -> HoleDrawing {
    let chosen = number == chosen;
    HoleDrawing {
        number: i32::from(number),
        height_mm: mm(pins.first_hole + pins.spacing.times(i64::from(number) - 1)),
        numbered: chosen || number.is_multiple_of(5),
        chosen,
    }
}

fn marks(say: Language, pins: &PinSheet, stood: Length) -> Vec<HeightMark> {
    let mark = |of: Landmark, height: Length| HeightMark {
        word: say.landmark(of),
        height_mm: mm(height + stood),
    };
    let own = mark(pins.landmark, pins.landmark_height);
    let patella = pins
        .patella_top
        .filter(|_| pins.landmark != Landmark::PatellaTop);
    let patella = patella.map(|height| mark(Landmark::PatellaTop, height));
    [Some(own), patella].into_iter().flatten().collect()
}

/// The ladder, lowest rung first; `run` is `None` before the lift has begun.
#[must_use]
pub fn ladder(say: Language, sheet: &LiftSheet, run: Option<&LiftRun>) -> Vec<LadderRow> {
    let heaviest = sheet
        .rungs
        .iter()
        .map(|r| r.load.ng())
        .max()
        .unwrap_or(1)
        .max(1);
    let now = run.and_then(LiftRun::next_rung);
    let passed: Vec<Entered> = run
        .iter()
        .flat_map(|r| r.passed())
        .map(|e| e.what)
        .collect();
    let row = |(at, rung): (usize, &Rung)| {
        let (state, word) = row_state(
            say,
            (rung, sheet.reps_of(at)),
            passed.get(at),
            now == Some(at),
        );
        LadderRow {
            load: say.mass_number(rung.load, sheet.unit),
            reps: format!("×{}", say.reps_asked(sheet.reps_of(at))),
            share: share(rung.load.ng(), heaviest),
            word,
            state,
        }
    };
    sheet.rungs.iter().enumerate().map(row).collect()
}

/// How a rung stands, and the word beside it.
pub(crate) fn row_state(
    say: Language,
    (rung, asked): (&Rung, Reps),
    entered: Option<&Entered>,
    now: bool,
) -> (RowState, String) {
    let kind = if rung.kind == RungKind::Work {
        say.say(p::WORK)
    } else {
        String::new()
    };
    match entered {
        Some(Entered::Set {
            hold: Hold::MovedAt(rep),
            ..
        }) => (
            RowState::Moved,
            say.fill(p::BACK_MOVED_AT, &[&rep.to_string()]),
        ),
        Some(Entered::Set {
            reps,
            hold: Hold::Kept,
        }) if *reps == rung.reps || (!asked.is_just() && asked.is_done(*reps)) => {
            (RowState::Done, kind)
        }
        Some(Entered::Set {
            reps,
            hold: Hold::Kept,
        }) => (
            RowState::Other,
            say.fill(p::OF, &[&reps.to_string(), &rung.reps.to_string()]),
        ),
        Some(_) => (RowState::Skipped, say.say(p::SKIPPED)),
        None if now => (RowState::Now, kind),
        None => (RowState::Ahead, kind),
    }
}

/// `part` of `whole` in thousandths, for the eye.
pub(crate) fn share(part: i64, whole: i64) -> f32 {
    let thousandths = (i128::from(part) * 1_000 / i128::from(whole.max(1))).clamp(0, 1_000);
    i16::try_from(thousandths).map_or(0.0, f32::from) / 1_000.0
}
