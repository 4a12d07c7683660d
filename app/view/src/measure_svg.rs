//! How to measure a lifter, as a drawing to print or to hold beside the tape: SVG 1.1.
//!
//! Refuses: scripts, links and fonts from elsewhere; names are escaped.
use crate::measure::{Measure, MeasureMark};
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
pub fn measure_svg(measure: &Measure) -> String {
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
        draw_mark(&mut svg, mark, height, above);
    }
    svg.push_str("</svg>\n");
    svg
}

/// A dashed line at the landmark, and its words at `words`.
fn draw_mark(svg: &mut String, mark: &MeasureMark, height: f32, words: f32) {
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
        true => format!("{} above the floor", mark.value),
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

fn line(svg: &mut String, from: (f32, f32), to: (f32, f32), wide: f32, ink: &str, dash: &str) {
    let _ = writeln!(
        svg,
        "<line x1=\"{:.0}\" y1=\"{:.0}\" x2=\"{:.0}\" y2=\"{:.0}\" stroke=\"{ink}\" \
         stroke-width=\"{wide:.0}\" stroke-linecap=\"round\" stroke-dasharray=\"{dash}\"/>",
        from.0, from.1, to.0, to.1
    );
}

fn text(svg: &mut String, at: (f32, f32), size: f32, words: &str, weight: &str) {
    let _ = writeln!(
        svg,
        "<text x=\"{:.0}\" y=\"{:.0}\" font-size=\"{size:.0}\" font-weight=\"{weight}\">{}</text>",
        at.0,
        at.1,
        escaped(words)
    );
}

/// XML 1.0: what must not stand in a text as it is; control characters are left out.
fn escaped(words: &str) -> String {
    let mut safe = String::new();
    for c in words.chars().filter(|c| !c.is_control()) {
        match c {
            '&' => safe.push_str("&amp;"),
            '<' => safe.push_str("&lt;"),
            '>' => safe.push_str("&gt;"),
            c => safe.push(c),
        }
    }
    safe
}

/// Lines of at most so many letters, broken at spaces.
fn wrapped(words: &str, letters: usize) -> Vec<String> {
    let mut lines = vec![String::new()];
    for word in words.split(' ') {
        let last = lines.last_mut().expect("there is always one");
        let long = last.chars().count() + 1 + word.chars().count();
        if last.is_empty() {
            last.push_str(word);
        } else if long <= letters {
            last.push(' ');
            last.push_str(word);
        } else {
            lines.push(word.to_owned());
        }
    }
    lines
}
