//! Drawings: `view`'s measures in millimetres, handed to the window, which scales them.
use crate::generated::{
    Bar, Change, Fate, Hands, Hole, Mark, Mat, Plate, Rack, Rung, RungState, Shade, Spot,
};
use crate::rows::Rows;
use view::draw as from;

/// Keeps the rows of one drawing of a bar.
pub(crate) struct BarFace {
    left: Rows<Plate>,
    right: Rows<Plate>,
}

impl BarFace {
    pub(crate) fn new() -> Self {
        Self {
            left: Rows::new(),
            right: Rows::new(),
        }
    }

    /// The bar as the window takes it.
    pub(crate) fn draw(&self, bar: &from::BarDrawing) -> Bar {
        self.left.settle(bar.left.iter().map(plate));
        self.right.settle(bar.right.iter().map(plate));
        Bar {
            shaft_mm: bar.shaft_mm,
            sleeve_mm: bar.sleeve_mm,
            left: self.left.model(),
            right: self.right.model(),
            left_collar_mm: bar.left_collar_mm,
            right_collar_mm: bar.right_collar_mm,
            has_collar: bar.has_collar,
            tallest_mm: bar.tallest_mm,
            left_hands: hands(&bar.left),
            right_hands: hands(&bar.right),
        }
    }
}

/// Where the hands are at work on one sleeve.
fn hands(plates: &[from::PlateDrawing]) -> Hands {
    let on = span(plates, from::Fate::GoesOn).map(|span| ("+", span));
    let off = span(plates, from::Fate::ComesOff).map(|span| ("−", span));
    let (sign, (from_mm, to_mm, reach_mm)) = on.or(off).unwrap_or_default();
    Hands {
        sign: sign.into(),
        from_mm,
        to_mm,
        reach_mm,
    }
}

/// From, to and greatest diameter of the plates of one fate.
fn span(plates: &[from::PlateDrawing], fate: from::Fate) -> Option<(f32, f32, f32)> {
    let of = plates.iter().filter(|plate| plate.fate == fate);
    let ends = of.map(|p| (p.x_mm, p.x_mm + p.thickness_mm, p.diameter_mm));
    ends.reduce(|a, b| (a.0.min(b.0), a.1.max(b.1), a.2.max(b.2)))
}

/// The label with its digits one above the other.
fn pile(label: &str) -> String {
    let digits: Vec<String> = label.chars().map(String::from).collect();
    digits.join("\n")
}

fn plate(plate: &from::PlateDrawing) -> Plate {
    Plate {
        pile: pile(&plate.label).into(),
        label: plate.label.as_str().into(),
        x_mm: plate.x_mm,
        thickness_mm: plate.thickness_mm,
        diameter_mm: plate.diameter_mm,
        shade: match plate.shade {
            from::Shade::Red => Shade::Red,
            from::Shade::Blue => Shade::Blue,
            from::Shade::Yellow => Shade::Yellow,
            from::Shade::Green => Shade::Green,
            from::Shade::White => Shade::White,
            from::Shade::Plain => Shade::Plain,
        },
        fate: match plate.fate {
            from::Fate::Stays => Fate::Stays,
            from::Fate::GoesOn => Fate::GoesOn,
            from::Fate::ComesOff => Fate::ComesOff,
        },
    }
}

/// Keeps the rows of one drawing of a rack.
pub(crate) struct RackFace {
    holes: Rows<Hole>,
    mats: Rows<Mat>,
    marks: Rows<Mark>,
}

impl RackFace {
    pub(crate) fn new() -> Self {
        Self {
            holes: Rows::new(),
            mats: Rows::new(),
            marks: Rows::new(),
        }
    }

    /// The rack as the window takes it.
    pub(crate) fn draw(&self, rack: &from::RackDrawing) -> Rack {
        // A number too near the chosen one would touch it.
        let chosen = rack.holes.iter().find(|hole| hole.chosen);
        let near = |hole: &from::HoleDrawing| {
            let apart = chosen.map(|c| (c.height_mm - hole.height_mm).abs());
            apart.is_some_and(|apart| apart < rack.top_mm * 0.06) && !hole.chosen
        };
        self.holes.settle(rack.holes.iter().map(|hole| Hole {
            number: hole.number,
            height_mm: hole.height_mm,
            numbered: hole.numbered && !near(hole),
            chosen: hole.chosen,
        }));
        let mut top_mm = 0.0;
        self.mats.settle(rack.mats_mm.iter().map(|&thickness_mm| {
            top_mm += thickness_mm;
            Mat {
                top_mm,
                thickness_mm,
            }
        }));
        let crowded = |mark: &from::HeightMark| {
            let above = rack
                .marks
                .iter()
                .map(|other| other.height_mm - mark.height_mm);
            above
                .into_iter()
                .any(|apart| apart > 0.0 && apart < rack.top_mm * 0.07)
        };
        self.marks.settle(rack.marks.iter().map(|mark| Mark {
            word: mark.word.as_str().into(),
            height_mm: mark.height_mm,
            under: crowded(mark),
        }));
        Rack {
            holes: self.holes.model(),
            top_mm: rack.top_mm,
            bar_mm: rack.bar_mm,
            shaft_mm: rack.shaft_mm,
            mats: self.mats.model(),
            marks: self.marks.model(),
        }
    }
}

/// What the hands have to do.
pub(crate) fn change(change: &from::Change) -> Change {
    Change {
        heading: change.heading.as_str().into(),
        heed: change.heed,
        take_off: change.take_off.as_str().into(),
        put_on: change.put_on.as_str().into(),
        sentence: change.sentence.as_str().into(),
    }
}

/// Hole, mats, height, gear, grip.
pub(crate) fn spot(spot: &view::spot::Spot) -> Spot {
    Spot {
        place: spot.place.as_str().into(),
        line: spot.line().into(),
        short: spot.short().into(),
        hole: spot.hole.as_str().into(),
        mats: spot.mats.as_str().into(),
        raise: spot.raise.as_str().into(),
        gear: spot.gear.join(", ").into(),
        grip: spot.grip.as_str().into(),
    }
}

/// Letters of a word beside a rung that fit into one line.
const WORD: usize = 12;

/// "back moved at 3" in two lines, so that its number does not stand alone.
fn broken(words: &str) -> String {
    if words.chars().count() <= WORD {
        return words.to_owned();
    }
    words.replacen(" at ", "\nat ", 1)
}

/// One rung of the ladder.
pub(crate) fn rung(row: &from::LadderRow) -> Rung {
    Rung {
        load: row.load.as_str().into(),
        reps: row.reps.as_str().into(),
        share: row.share.clamp(0.0, 1.0),
        word: broken(&row.word).into(),
        state: rung_state(row.state),
    }
}

/// How it stands with a rung, for the look.
pub(crate) fn rung_state(state: from::RowState) -> RungState {
    match state {
        from::RowState::Ahead => RungState::Ahead,
        from::RowState::Now => RungState::Now,
        from::RowState::Done => RungState::Done,
        from::RowState::Other => RungState::Other,
        from::RowState::Moved => RungState::Moved,
        from::RowState::Skipped => RungState::Skipped,
    }
}
