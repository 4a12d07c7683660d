//! Fills the screen of the lift's set-up.
use crate::draw::{RackFace, rung};
use crate::generated::{KioskWindow, Rung, SetUp};
use crate::rows::Rows;
use slint::ComponentHandle as _;

/// Keeps its lists.
pub(crate) struct SetUpFace {
    rack: RackFace,
    ladder: Rows<Rung>,
}

impl SetUpFace {
    pub(crate) fn new(window: &KioskWindow) -> Self {
        let face = Self {
            rack: RackFace::new(),
            ladder: Rows::new(),
        };
        let to = window.global::<SetUp<'_>>();
        to.set_ladder(face.ladder.model());
        face
    }

    pub(crate) fn show(&self, window: &KioskWindow, setup: &view::setup::SetUp) {
        let to = window.global::<SetUp<'_>>();
        to.set_work(setup.work.as_str().into());
        to.set_rack(self.rack.draw(&setup.rack));
        to.set_hole(setup.hole.as_str().into());
        to.set_mats(setup.mats.replacen(", ", "\n", 1).into());
        to.set_height(tied(&setup.height).into());
        to.set_overlap(tied(&setup.overlap).into());
        to.set_overlap_small(setup.overlap_small);
        to.set_due(tied(&setup.due).into());
        to.set_bar(setup.bar.as_str().into());
        to.set_gear(tied(&setup.gear.join(", ")).into());
        to.set_cautions(points(&setup.cautions).into());
        to.set_warnings(tied(&points(&setup.warnings)).into());
        self.ladder.settle(setup.ladder.iter().map(rung));
        to.set_note(setup.note.as_str().into());
        to.set_main(setup.main.as_str().into());
        to.set_type(type_size(setup));
    }
}

/// A number and its unit stay on one line.
pub(crate) fn tied(text: &str) -> String {
    [" kg", " lb", " mm"]
        .iter()
        .fold(text.to_owned(), |text, unit| {
            text.replace(unit, &format!("\u{a0}{}", unit.trim_start()))
        })
}

/// Several things to mind, each on a line of its own with a point before it.
fn points(list: &[String]) -> String {
    match list {
        [one] => one.clone(),
        many => {
            let lines: Vec<String> = many.iter().map(|line| format!("\u{b7} {line}")).collect();
            lines.join("\n")
        }
    }
}

/// The type sizes of the sheet, in units, largest first.
const TYPE: [f32; 6] = [28.0, 26.0, 24.0, 22.0, 21.0, 20.0];
/// Room for the sheet's lines, in units: its whole width, and its height under the title.
const SHEET: (f32, f32) = (574.0, 412.0);
/// What the words at the left take of the width: so many em, and the space after them.
const WORDS: (f32, f32) = (3.3, 14.0);
/// A line's height, in em.
const LINE: f32 = 1.18;
/// Between two matters, in em.
const BETWEEN: f32 = 0.3;

/// About how wide a letter is, in em: the face's own widths in five classes, 3 to 4 in a hundred
/// on the safe side over whole sentences.
fn advance(letter: char) -> f32 {
    match letter {
        ' ' | '\u{a0}' | '.' | ',' | ';' | ':' | '\'' | 'i' | 'j' | 'l' | '\u{b7}' => 0.25,
        'f' | 'r' | 't' | '(' | ')' | '-' | '/' => 0.31,
        'm' | 'w' | 'M' | 'W' => 0.78,
        _ if letter.is_uppercase() => 0.58,
        _ => 0.49,
    }
}

/// The largest type in which everything there is to read fits; the type gives way before a line
/// is lost.
fn type_size(setup: &view::setup::SetUp) -> f32 {
    let joined = [
        setup.gear.join(", "),
        points(&setup.cautions),
        points(&setup.warnings),
    ];
    let ones = [
        &setup.due,
        &setup.height,
        &setup.overlap,
        &setup.bar,
        &setup.note,
    ];
    let height = |size: f32| {
        let width = SHEET.0 - WORDS.0 * size - WORDS.1;
        let lines = |line: &str| (line.chars().map(advance).sum::<f32>() * size / width).ceil();
        let matter = |matter: &String| matter.lines().map(lines).sum::<f32>();
        let all = ones
            .into_iter()
            .chain(&joined)
            .filter(|text| !text.is_empty());
        all.map(|text| (matter(text) * LINE + BETWEEN) * size)
            .sum::<f32>()
    };
    let fits = TYPE.into_iter().find(|&size| height(size) <= SHEET.1);
    fits.unwrap_or(TYPE[TYPE.len() - 1])
}
