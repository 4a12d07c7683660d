//! How to measure a lifter, as a drawing to print or to hold beside the tape: SVG 1.1.
//!
//! Refuses: scripts, links and fonts from elsewhere; names are escaped.
use crate::language::{Language, c};
use crate::measure::{Measure, MeasureMark};
use crate::svg::{line, text, wrapped};
use std::fmt::Write as _;

/// Millimetres of the body to a unit of the drawing: one to one.
const WIDE: f32 = 1_560.0;
/// Above the head, for the title.
const ABOVE: f32 = 260.0;
/// Below the floor.
const BELOW: f32 = 60.0;
/// Where the ankle stands.
const ANKLE: f32 = 280.0;
/// Where the marks' lines end, and where their words begin.
const LINE_END: f32 = 560.0;
const WORDS: f32 = 640.0;
/// From one mark's words to the next, at least.
const APART: f32 = 300.0;
/// Size of type, and from line to line.
const TYPE: f32 = 36.0;
const LINE: f32 = 46.0;
/// The body's colour.
const SKIN: &str = "#9aa3ab";
/// Letters in a line of words.
const LETTERS: usize = 44;

/// The drawing.
#[must_use]
pub fn measure_svg(say: Language, measure: &Measure) -> String {
    let body = &measure.body;
    let base = ABOVE + body.top_mm;
    let tall = base + BELOW;
    let mut svg = format!(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {WIDE:.0} {tall:.0}\" \
         width=\"180mm\" height=\"{:.0}mm\" font-family=\"sans-serif\">\n\
         <rect width=\"100%\" height=\"100%\" fill=\"white\"/>\n",
        tall * 180.0 / WIDE
    );
    text(&mut svg, (40.0, 80.0), 60.0, &measure.lifter, "bold");
    for (at, words) in (0_u8..).zip(wrapped(&measure.intro, 76)) {
        text(
            &mut svg,
            (40.0, 140.0 + f32::from(at) * LINE),
            TYPE,
            &words,
            "normal",
        );
    }
    line(&mut svg, (20.0, base), (LINE_END, base), 6.0, "black", "");
    for part in &body.segments {
        let at = |(x, height): (f32, f32)| (ANKLE + x, base - height);
        // The arm hangs before the trunk.
        let ink = if part.part == "arm" { "#5d666e" } else { SKIN };
        line(&mut svg, at(part.from), at(part.to), part.thick_mm, ink, "");
    }
    let (x, height, radius) = body.head;
    let _ = writeln!(
        svg,
        "<circle cx=\"{:.0}\" cy=\"{:.0}\" r=\"{radius:.0}\" fill=\"{SKIN}\"/>",
        ANKLE + x,
        base - height
    );
    let mut above = base + APART - 190.0;
    for mark in &measure.marks {
        let height = base - mark.height_mm;
        // Never nearer than the words of the one below.
        above = height.min(above - APART);
        draw_mark(&mut svg, say, mark, height, above);
    }
    svg.push_str("</svg>\n");
    svg
}

/// A dashed line at the landmark, and its words at `words`.
fn draw_mark(svg: &mut String, say: Language, mark: &MeasureMark, height: f32, words: f32) {
    let ink = if mark.measured { "#17602f" } else { "#a8201c" };
    line(svg, (60.0, height), (LINE_END, height), 5.0, ink, "24 14");
    line(
        svg,
        (LINE_END, height),
        (WORDS - 16.0, words - 14.0),
        3.0,
        ink,
        "",
    );
    text(svg, (WORDS, words), TYPE + 8.0, &mark.word, "bold");
    let value = match mark.measured {
        true => say.fill(c::M_ABOVE_FLOOR, &[&mark.value]),
        false => mark.value.clone(),
    };
    text(svg, (WORDS, words + LINE), TYPE, &value, "bold");
    for (at, how) in (2_u8..).zip(wrapped(&mark.how, LETTERS)) {
        text(
            svg,
            (WORDS, words + f32::from(at) * LINE),
            TYPE,
            &how,
            "normal",
        );
    }
}
