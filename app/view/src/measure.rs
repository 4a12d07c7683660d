//! How to measure a lifter's landmarks: what to find, how, what stands so far, and a body drawn to
//! scale to find it on. For a screen and as text.
//!
//! Refuses: to pass an estimate off as a measurement. The drawing is for the eye, no anatomy.
use crate::drawings::mm;
use crate::language::{Language, Phrase, c, whole_mm};
use domain::body::survey;
use domain::lift::Landmark;
use domain::{Length, Lifter};

/// What a screen shows.
#[derive(Debug, Clone, PartialEq)]
pub struct Measure {
    /// Whose.
    pub lifter: String,
    /// How to stand and where to measure from.
    pub intro: String,
    /// The landmarks, lowest first.
    pub marks: Vec<MeasureMark>,
    /// The body beside them, heights above the floor.
    pub body: BodyDrawing,
}

/// One landmark.
#[derive(Debug, Clone, PartialEq)]
pub struct MeasureMark {
    /// "tibial tuberosity".
    pub word: String,
    /// How to find it.
    pub how: String,
    /// "488 mm", "462 mm by estimate, give or take 16 mm", "not measured".
    pub value: String,
    /// Whether it was measured.
    pub measured: bool,
    /// Where to draw it above the floor: measured, else estimated, else as on the drawn body.
    pub height_mm: f32,
    /// What to write into lifters.toml: `tibial_tuberosity = "488 mm"`.
    pub key: String,
}

/// A body seen from the side, in shoes, facing right. x runs forwards from the ankle.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct BodyDrawing {
    /// Lines with round ends, from the floor up.
    pub segments: Vec<Segment>,
    /// Centre of the head: x, height, radius.
    pub head: (f32, f32, f32),
    /// Height that the drawing must reach.
    pub top_mm: f32,
}

/// One part of the body.
#[derive(Debug, Clone, PartialEq)]
pub struct Segment {
    /// "foot", "shank", "thigh", "trunk", "arm".
    pub part: String,
    /// One end: x and height.
    pub from: (f32, f32),
    /// The other.
    pub to: (f32, f32),
    /// How thick.
    pub thick_mm: f32,
}

/// How each landmark is found, and its key in lifters.toml.
const HOW: [(Landmark, &str, Phrase); 4] = [
    (
        Landmark::TibialTuberosity,
        "tibial_tuberosity",
        c::M_TUBEROSITY,
    ),
    (Landmark::PatellaTop, "patella_top", c::M_PATELLA),
    (Landmark::MidThigh, "mid_thigh", c::M_MID_THIGH),
    (Landmark::Lockout, "lockout", c::M_LOCKOUT),
];

/// Stature where nothing is known: the mean of the survey's people (Gordon et al. 2014), both
/// sexes; only for the drawing.
const STATURE: Length = Length::mm(1_700);

/// All of it for one lifter.
#[must_use]
pub fn measure(say: Language, lifter: &Lifter) -> Measure {
    let body = body(lifter);
    let marks = HOW.iter().map(|(landmark, key, how)| {
        let measured = lifter.landmark(*landmark);
        let estimate = lifter.body.estimate(*landmark);
        let (value, height) = match (measured, estimate) {
            (Some(height), _) => (say.fill(c::M_MM, &[&whole_mm(height)]), height),
            (None, Some(estimate)) => (
                say.fill(
                    c::M_ESTIMATE,
                    &[&whole_mm(estimate.height), &whole_mm(estimate.spread)],
                ),
                estimate.height,
            ),
            (None, None) => (say.say(c::M_NOT_MEASURED), drawn(lifter, *landmark)),
        };
        MeasureMark {
            word: say.landmark(*landmark),
            how: say.say(*how),
            value,
            measured: measured.is_some(),
            height_mm: mm(height),
            key: format!("{key} = \"{} mm\"", whole_mm(measured.unwrap_or(height))),
        }
    });
    Measure {
        lifter: lifter.name.clone(),
        intro: say.say(c::M_INTRO),
        marks: marks.collect(),
        body,
    }
}

/// The stature to draw with.
fn stature(lifter: &Lifter) -> Length {
    let body = &lifter.body;
    body.stature.or(body.stature_said).unwrap_or(STATURE)
}

/// Where the drawing has a landmark that is neither measured nor estimated.
fn drawn(lifter: &Lifter, landmark: Landmark) -> Length {
    let people = survey::of(lifter.body.sex);
    let stature = stature(lifter);
    let knee = people.mid_patella.at(stature);
    match landmark {
        Landmark::TibialTuberosity => people.tibial_height.at(stature),
        Landmark::PatellaTop => knee,
        Landmark::MidThigh => middle(knee, people.trochanter.at(stature)),
        Landmark::Lockout => people.hang.at(stature),
    }
}

fn middle(a: Length, b: Length) -> Length {
    Length::from_nm((a + b).nm() / 2)
}

/// The body by its own landmarks where they are known, by the survey's lines elsewhere.
fn body(lifter: &Lifter) -> BodyDrawing {
    let stature = stature(lifter);
    let people = survey::of(lifter.body.sex);
    let at = |landmark| {
        lifter
            .landmark(landmark)
            .or(lifter.body.estimate(landmark).map(|e| e.height))
            .unwrap_or_else(|| drawn(lifter, landmark))
    };
    let share = |hundredths: i64| Length::from_nm(stature.nm() * hundredths / 100);
    // The joint lies between bump and upper edge of the kneecap.
    let knee = middle(at(Landmark::TibialTuberosity), at(Landmark::PatellaTop));
    let hip = people.trochanter.at(stature).max(at(Landmark::MidThigh));
    let shoulder = share(82).max(hip);
    let hand = at(Landmark::Lockout).min(shoulder);
    let x = |length: Length| mm(length);
    let part = |part: &str, from: (Length, Length), to: (Length, Length), thick: Length| Segment {
        part: part.into(),
        from: (x(from.0), x(from.1)),
        to: (x(to.0), x(to.1)),
        thick_mm: mm(thick),
    };
    let front = share(1);
    let none = Length::ZERO;
    BodyDrawing {
        segments: vec![
            part(
                "foot",
                (-share(3), share(1)),
                (share(12), share(1)),
                share(2),
            ),
            part("shank", (none, share(4)), (front, knee), share(6)),
            part("thigh", (front, knee), (none, hip), share(9)),
            part("trunk", (none, hip), (none, shoulder), share(12)),
            part("arm", (none, shoulder), (share(3), hand), share(4)),
        ],
        head: (mm(share(1)), mm(share(93)), mm(share(6))),
        top_mm: mm(share(100)),
    }
}

/// The same in plain text.
#[must_use]
pub fn measure_text(say: Language, measure: &Measure) -> String {
    let mut text = format!("{}: {}\n", measure.lifter, measure.intro);
    for mark in measure.marks.iter().rev() {
        text.push_str(&format!(
            "\n{}: {}\n  {}\n",
            mark.word, mark.value, mark.how
        ));
        if !mark.measured {
            text.push_str(&format!("  {}\n", say.say(c::M_WRITE)));
        }
    }
    text
}
