//! Outings drawn one after the other: points by their load, what is due, a fitted line, a
//! threshold.
//!
//! Refuses: colour as the only code; how an outing went is a shape too.
use crate::draw::RowState;
use crate::drawings::share;
use crate::language::Language;
use domain::next::outing::{Outing, Went};
use domain::{Mass, MassUnit};

/// Outings on one scale: 0 at the lightest that is drawn, 1 at the heaviest.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Trail {
    /// Oldest first; what is due last, where something is.
    pub points: Vec<Point>,
    /// The line of least squares: its height at the first and at the last point.
    pub line: Option<(f32, f32)>,
    /// A load from which something changes: its height, and words for it.
    pub threshold: Option<(f32, String)>,
}

/// One outing.
#[derive(Debug, Clone, PartialEq)]
pub struct Point {
    /// "18 Nov"; "next" for what is due.
    pub date: String,
    /// "180".
    pub load: String,
    /// Where it stands, 0 to 1.
    pub height: f32,
    /// "3 of 5 reps", "back moved at rep 4", "all reps, back held"; empty for what is due.
    pub word: String,
    /// For the look: done, other, moved, or ahead for what is due.
    pub state: RowState,
}

/// What a trail is drawn on.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Scale {
    low: Mass,
    high: Mass,
}

impl Scale {
    /// From the lightest to the heaviest of these.
    pub(crate) fn of(loads: impl Iterator<Item = Mass> + Clone) -> Self {
        Self {
            low: loads.clone().min().unwrap_or_default(),
            high: loads.max().unwrap_or_default(),
        }
    }

    /// Where a load stands; half-way up where all are alike.
    pub(crate) fn height(self, load: Mass) -> f32 {
        let span = (self.high - self.low).ng();
        if span == 0 {
            return 0.5;
        }
        share((load - self.low).ng(), span)
    }
}

/// One outing on a scale.
pub(crate) fn point(say: Language, outing: &Outing, unit: MassUnit, scale: Scale) -> Point {
    Point {
        date: say.short_date(outing.date),
        load: say.mass_number(outing.load, unit),
        height: scale.height(outing.load),
        word: say.outing(outing),
        state: state(outing.went),
    }
}

const fn state(went: Went) -> RowState {
    match went {
        Went::Well => RowState::Done,
        Went::Short { .. } | Went::Cut { .. } => RowState::Other,
        Went::Moved { .. } | Went::MovedWarm => RowState::Moved,
    }
}
