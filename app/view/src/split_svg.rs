//! The evidence for a split, drawn to print: loads of the last outings, the line of least squares,
//! the coach's threshold. SVG 1.1.
//!
//! Refuses: colour as the only code; a short set is a ring, a moved back a cross.
use crate::language::{Language, c};
use crate::split::sentence;
use crate::svg::{line, text, wrapped};
use domain::next::outing::{Outing, Went};
use domain::split::{Evidence, Split};
use domain::{Mass, MassUnit};
use std::fmt::Write as _;

/// The drawing's own units.
const WIDE: f32 = 1_400.0;
const TALL: f32 = 1_000.0;
/// Where the outings stand.
const LEFT: f32 = 170.0;
const RIGHT: f32 = 1_330.0;
const TOP: f32 = 330.0;
const FOOT: f32 = 820.0;
/// Size of type, and from line to line.
const TYPE: f32 = 32.0;
const LINE: f32 = 42.0;

/// The drawing.
#[must_use]
pub fn split_svg(say: Language, lifter: &str, unit: MassUnit, split: &Split) -> String {
    let mut svg = format!(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {WIDE:.0} {TALL:.0}\" \
         width=\"260mm\" height=\"{:.0}mm\" font-family=\"sans-serif\">\n\
         <rect width=\"100%\" height=\"100%\" fill=\"white\"/>\n",
        TALL * 260.0 / WIDE
    );
    text(&mut svg, (40.0, 70.0), 52.0, lifter, "bold");
    for (at, words) in (0_u8..).zip(wrapped(&sentence(say, split, unit), 76)) {
        let y = 126.0 + f32::from(at) * LINE;
        text(&mut svg, (40.0, y), TYPE, &words, "normal");
    }
    if let Some(evidence) = &split.evidence {
        draw(&mut svg, say, unit, split, evidence);
    }
    svg.push_str("</svg>\n");
    svg
}

fn draw(svg: &mut String, say: Language, unit: MassUnit, split: &Split, evidence: &Evidence) {
    let loads = evidence.outings.iter().map(|o| o.load);
    let all: Vec<Mass> = loads
        .chain([evidence.line.0, evidence.line.1, split.rule.from])
        .collect();
    let (low, high) = (all.iter().min(), all.iter().max());
    let (Some(low), Some(high)) = (low.copied(), high.copied()) else {
        return;
    };
    let count = u16::try_from(evidence.outings.len()).unwrap_or(u16::MAX);
    let x = |at: u16| match count {
        0 | 1 => f32::midpoint(LEFT, RIGHT),
        more => LEFT + (RIGHT - LEFT) * f32::from(at) / f32::from(more - 1),
    };
    let y = |load: Mass| {
        let share = crate::drawings::share((load - low).ng(), (high - low).ng());
        FOOT - (FOOT - TOP) * share
    };
    let from = split.rule.from;
    line(
        svg,
        (LEFT - 60.0, y(from)),
        (RIGHT, y(from)),
        3.0,
        "#a06000",
        "18 12",
    );
    let words = say.fill(c::HEAVY_FROM, &[&say.mass(from, unit)]);
    let below = (RIGHT - 320.0, y(from) + 34.0);
    text(svg, below, TYPE - 6.0, &words, "normal");
    let ends = (y(evidence.line.0), y(evidence.line.1));
    let last = count.saturating_sub(1);
    line(svg, (x(0), ends.0), (x(last), ends.1), 4.0, "#1d4fa6", "");
    for (at, outing) in (0_u16..).zip(&evidence.outings) {
        point(svg, say, (x(at), y(outing.load)), outing, unit);
    }
    let key = say.say(c::KEY);
    text(svg, (40.0, TALL - 40.0), TYPE - 4.0, &key, "normal");
}

fn point(svg: &mut String, say: Language, at: (f32, f32), outing: &Outing, unit: MassUnit) {
    let (x, y) = at;
    match outing.went {
        Went::Moved { .. } | Went::MovedWarm => {
            let arm = 14.0;
            line(
                svg,
                (x - arm, y - arm),
                (x + arm, y + arm),
                8.0,
                "#a8201c",
                "",
            );
            line(
                svg,
                (x - arm, y + arm),
                (x + arm, y - arm),
                8.0,
                "#a8201c",
                "",
            );
        }
        Went::Well | Went::Short { .. } | Went::Cut { .. } => {
            let well = outing.went == Went::Well;
            let fill = if well { "black" } else { "white" };
            let _ = writeln!(
                svg,
                "<circle cx=\"{x:.0}\" cy=\"{y:.0}\" r=\"13\" fill=\"{fill}\" stroke=\"black\" \
                 stroke-width=\"6\"/>"
            );
        }
    }
    text(
        svg,
        (x - 34.0, y - 28.0),
        TYPE,
        &say.mass_number(outing.load, unit),
        "bold",
    );
    let date = say.short_date(outing.date);
    text(svg, (x - 40.0, FOOT + 70.0), TYPE - 6.0, &date, "normal");
}
