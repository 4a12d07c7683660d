//! A programme's year as a drawing, ours beside the plain rule: strength and top load by the week,
//! what went wrong and what was lowered by four weeks.
use std::fmt::Write as _;

/// Weeks of a year, and of a block.
pub(crate) const WEEKS: usize = 52;
const BLOCK: usize = 4;
/// Left edge, width and foot of the panels, and their heights.
const LEFT: f64 = 70.0;
const WIDE: f64 = 800.0;
const TALL: f64 = 250.0;
const LOW: f64 = 90.0;
/// The loads that are drawn, kg.
const KG: (f64, f64) = (80.0, 220.0);
const OURS: &str = "#0b6e6e";
const PLAIN: &str = "#b3541e";
const INK: &str = "#222222";

/// Means of many lifters, by the week.
#[derive(Debug, Clone)]
pub(crate) struct Series {
    /// The single, kg.
    pub(crate) single: [f64; WEEKS],
    /// The heaviest deadlift of the week, kg; 0 where nobody did one.
    pub(crate) top: [f64; WEEKS],
    /// How many did one, so that means can be taken.
    pub(crate) tops: [f64; WEEKS],
    /// Sets short of reps, and backs that moved, in trainings a lifter.
    pub(crate) wrong: [f64; WEEKS],
    /// Loads lowered, a lifter.
    pub(crate) lowered: [f64; WEEKS],
}

impl Default for Series {
    fn default() -> Self {
        let none = [0.0; WEEKS];
        Self {
            single: none,
            top: none,
            tops: none,
            wrong: none,
            lowered: none,
        }
    }
}

impl Series {
    /// Sums of so many lifters as means.
    pub(crate) fn mean(mut self, lifters: u64) -> Self {
        let of = lifters as f64;
        for week in 0..WEEKS {
            self.single[week] /= of;
            self.wrong[week] /= of;
            self.lowered[week] /= of;
            if self.tops[week] > 0.0 {
                self.top[week] /= self.tops[week];
            }
        }
        self
    }
}

fn x(week: f64) -> f64 {
    LEFT + WIDE * week / WEEKS as f64
}

fn text(svg: &mut String, at: (f64, f64), size: u32, ink: &str, words: &str) {
    let _ = writeln!(
        svg,
        "<text x=\"{:.0}\" y=\"{:.0}\" font-size=\"{size}\" fill=\"{ink}\">{words}</text>",
        at.0, at.1
    );
}

fn rule(svg: &mut String, y: f64, label: &str) {
    let right = LEFT + WIDE;
    let _ = writeln!(
        svg,
        "<path d=\"M{LEFT:.0} {y:.1}H{right:.0}\" stroke=\"#d5d5d5\" stroke-width=\"1\"/>\
         <text x=\"{:.0}\" y=\"{:.1}\" font-size=\"13\" text-anchor=\"end\" fill=\"#555\">{label}</text>",
        LEFT - 8.0,
        y + 4.0
    );
}

/// A line through the weeks that have a value within the panel.
fn curve(svg: &mut String, values: &[f64; WEEKS], foot: f64, ink: &str, dash: &str) {
    let y = |kg: f64| foot - TALL * (kg - KG.0) / (KG.1 - KG.0);
    let weeks = values.iter().enumerate().filter(|(_, kg)| **kg > 0.0);
    let within = weeks.take_while(|(_, kg)| **kg <= KG.1);
    let mut path = String::new();
    for (week, kg) in within {
        let pen = if path.is_empty() { 'M' } else { 'L' };
        let _ = write!(
            path,
            "{pen}{:.0} {:.1}",
            x(week as f64 + 0.5),
            y(kg.max(KG.0))
        );
    }
    let _ = writeln!(
        svg,
        "<path d=\"{path}\" fill=\"none\" stroke=\"{ink}\" stroke-width=\"2.5\" \
         stroke-dasharray=\"{dash}\" stroke-linejoin=\"round\"/>"
    );
}

/// Bars of four weeks each, ours at the left, the plain rule's hatched at the right.
fn bars(svg: &mut String, sets: &[(&[f64; WEEKS], &str)], foot: f64, most: f64) {
    for (at, (values, fill)) in sets.iter().enumerate() {
        for (block, weeks) in values.chunks(BLOCK).enumerate() {
            let sum: f64 = weeks.iter().sum();
            let tall = LOW * (sum / most).min(1.0);
            let wide = 20.0;
            let from = x((block * BLOCK) as f64) + 8.0 + (wide + 3.0) * at as f64;
            let _ = writeln!(
                svg,
                "<rect x=\"{from:.0}\" y=\"{:.1}\" width=\"{wide:.0}\" height=\"{tall:.1}\" \
                 fill=\"{fill}\"/>",
                foot - tall
            );
        }
    }
}

/// The whole drawing. `seen` is what a small sample came to, by which a stale drawing is told.
pub(crate) fn drawing(
    (name, what): (&str, &str),
    lifters: u64,
    (ours, plain): (&Series, &Series),
    seen: &str,
) -> String {
    let mut svg = format!(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 900 690\" width=\"900\" \
         height=\"690\" font-family=\"sans-serif\">\n<title>{name}: a year of {lifters} \
         lifters</title>\n<desc>{seen}</desc>\n<defs><pattern id=\"plain\" width=\"6\" height=\"6\" \
         patternUnits=\"userSpaceOnUse\" patternTransform=\"rotate(45)\"><rect width=\"6\" \
         height=\"6\" fill=\"#f3e3d7\"/><rect width=\"3\" height=\"6\" fill=\"{PLAIN}\"/></pattern>\
         </defs>\n<rect width=\"900\" height=\"690\" fill=\"#ffffff\"/>\n"
    );
    text(&mut svg, (LEFT, 34.0), 24, INK, &format!("{name}: {what}"));
    let about = format!(
        "Means of {lifters} simulated lifters over 52 weeks; strength by a model of fitness and fatigue."
    );
    text(&mut svg, (LEFT, 56.0), 14, "#555", &about);
    let foot = 340.0;
    for kg in [80, 100, 120, 140, 160, 180, 200, 220] {
        let y = foot - TALL * (f64::from(kg) - KG.0) / (KG.1 - KG.0);
        rule(&mut svg, y, &format!("{kg} kg"));
    }
    curve(&mut svg, &plain.single, foot, PLAIN, "7 5");
    curve(&mut svg, &plain.top, foot, PLAIN, "2 4");
    curve(&mut svg, &ours.single, foot, OURS, "");
    curve(&mut svg, &ours.top, foot, OURS, "2 4");
    legend(&mut svg, 364.0);
    let most = |values: &[&[f64; WEEKS]], least: f64| {
        let sums = values.iter().flat_map(|one| one.chunks(BLOCK));
        sums.map(|weeks| weeks.iter().sum::<f64>())
            .fold(least, f64::max)
            .ceil()
    };
    let (wrong, lowered) = (
        most(&[&ours.wrong, &plain.wrong], 2.0),
        most(&[&ours.lowered], 2.0),
    );
    let foot = 516.0;
    let words =
        "Trainings that went wrong, a lifter in four weeks: short of reps, or the back moved";
    text(&mut svg, (LEFT, foot - LOW - 14.0), 15, INK, words);
    rule(&mut svg, foot - LOW, &format!("{wrong:.0}"));
    rule(&mut svg, foot, "0");
    let hatch = "url(#plain)";
    bars(
        &mut svg,
        &[(&ours.wrong, OURS), (&plain.wrong, hatch)],
        foot,
        wrong,
    );
    let foot = 646.0;
    let words = "Loads that were lowered, a lifter in four weeks (the plain rule never lowers)";
    text(&mut svg, (LEFT, foot - LOW - 14.0), 15, INK, words);
    rule(&mut svg, foot - LOW, &format!("{lowered:.0}"));
    rule(&mut svg, foot, "0");
    bars(&mut svg, &[(&ours.lowered, OURS)], foot, lowered);
    for week in (0..=WEEKS).step_by(BLOCK) {
        let at = (x(week as f64) - 6.0, foot + 18.0);
        text(&mut svg, at, 13, "#555", &week.to_string());
    }
    text(&mut svg, (LEFT, foot + 38.0), 13, "#555", "weeks");
    svg + "</svg>\n"
}

fn legend(svg: &mut String, y: f64) {
    let all = [
        (OURS, "", "strength (single), this programme"),
        (OURS, "2 4", "its deadlift, work load"),
        (PLAIN, "7 5", "strength, plain rule"),
        (PLAIN, "2 4", "plain rule's load"),
    ];
    let mut from = LEFT;
    for (ink, dash, words) in all {
        let _ = writeln!(
            svg,
            "<path d=\"M{from:.0} {:.0}h26\" stroke=\"{ink}\" stroke-width=\"2.5\" \
             stroke-dasharray=\"{dash}\"/>",
            y - 5.0
        );
        text(svg, (from + 32.0, y), 14, INK, words);
        from += 52.0 + 6.9 * words.len() as f64;
    }
}
