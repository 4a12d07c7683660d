//! Charts of a lift's weeks as SVG, drawn by a library: loads, reps made, backs.
//!
//! Refuses: names and other texts of people; what is in a chart is days and numbers. Floats here
//! are for the eye.
use chrono::{Datelike as _, NaiveDate};
use plotters::coord::Shift;
use plotters::coord::combinators::WithKeyPoints;
use plotters::coord::types::{RangedCoordf64, RangedCoordi32};
use plotters::prelude::*;
use plotters::style::text_anchor::{HPos, Pos, VPos};
use view::Language;

/// The weeks of one lift, oldest first.
#[derive(Debug, Clone, Default)]
pub(crate) struct Weeks {
    pub(crate) mondays: Vec<NaiveDate>,
    /// Heaviest work load, in the lifter's unit.
    pub(crate) loads: Vec<f64>,
    pub(crate) reps: Vec<u32>,
    pub(crate) planned: Vec<u32>,
    /// Work sets, and those in which the back moved.
    pub(crate) sets: Vec<u32>,
    pub(crate) moved: Vec<u32>,
}

// About a phone's width, so that its letters stay as large as those around it.
const SIZE: (u32, u32) = (400, 220);
const FONT: (&str, u32) = ("sans-serif", 20);
/// Days that are written below, at most.
const LABELS: usize = 4;
// Okabe and Ito's colours, told apart by colour-blind eyes; shape and place say it too.
const BLUE: RGBColor = RGBColor(0, 114, 178);
const ORANGE: RGBColor = RGBColor(213, 94, 0);
const PALE: RGBColor = RGBColor(201, 206, 212);

/// What the plotting library cannot draw is left out; the table beside it has the numbers.
type Drawn = Result<(), Box<dyn std::error::Error>>;

/// Heaviest work load by week: a line with a mark a week, a filled square where the back moved.
pub(crate) fn loads(say: Language, weeks: &Weeks) -> Option<String> {
    let most = weeks.loads.iter().copied().fold(0.0, f64::max);
    let least = weeks.loads.iter().copied().fold(most, f64::min);
    let pad = ((most - least) * 0.15).max(most * 0.02).max(1.0);
    draw(say, weeks, (least - pad).max(0.0)..most + pad, |chart| {
        let points = || days(weeks).zip(weeks.loads.iter().copied());
        chart.draw_series(LineSeries::new(points(), BLUE.stroke_width(2)))?;
        let kept = points().zip(&weeks.moved).filter(|(_, moved)| **moved == 0);
        chart.draw_series(kept.map(|(at, _)| Circle::new(at, 4, BLUE.filled())))?;
        let moved = points().zip(&weeks.moved).filter(|(_, moved)| **moved > 0);
        chart.draw_series(moved.map(|(at, _)| {
            EmptyElement::at(at) + Rectangle::new([(-5, -5), (5, 5)], ORANGE.filled())
        }))?;
        Ok(())
    })
}

/// Reps made by week, before the pale bars of those planned.
pub(crate) fn reps(say: Language, weeks: &Weeks) -> Option<String> {
    let bars = [(&weeks.planned, PALE, 3), (&weeks.reps, BLUE, 2)];
    columns(say, weeks, &bars)
}

/// Work sets by week, and before them those in which the back moved.
pub(crate) fn backs(say: Language, weeks: &Weeks) -> Option<String> {
    let bars = [(&weeks.sets, PALE, 3), (&weeks.moved, ORANGE, 2)];
    columns(say, weeks, &bars)
}

fn columns(say: Language, weeks: &Weeks, bars: &[(&Vec<u32>, RGBColor, i32)]) -> Option<String> {
    let most = bars.iter().flat_map(|(counts, ..)| counts.iter()).max();
    let top = f64::from(*most?) * 1.1 + 0.5;
    draw(say, weeks, 0.0..top, |chart| {
        for (counts, colour, half) in bars {
            let one = |(day, count): (i32, &u32)| {
                let corners = [(day - half, 0.0), (day + half, f64::from(*count))];
                Rectangle::new(corners, colour.filled())
            };
            chart.draw_series(days(weeks).zip(counts.iter()).map(one))?;
        }
        Ok(())
    })
}

/// The weeks' Mondays as numbers of days.
fn days(weeks: &Weeks) -> impl Iterator<Item = i32> {
    weeks.mondays.iter().map(NaiveDate::num_days_from_ce)
}

/// The Mondays that are written below: spread over the weeks, none so near the former that they
/// touch in a chart of `span` days.
fn labelled(weeks: &Weeks, span: i32) -> Vec<i32> {
    let all: Vec<i32> = days(weeks).collect();
    let last = all.len().saturating_sub(1);
    let mut kept: Vec<i32> = Vec::new();
    for day in (0..LABELS).filter_map(|n| all.get(n * last / (LABELS - 1))) {
        let is_far = |former: &i32| (day - former) * 5 > span;
        if kept.last().is_none_or(is_far) {
            kept.push(*day);
        }
    }
    kept
}

type Chart<'a, 'b> =
    ChartContext<'a, SVGBackend<'b>, Cartesian2d<WithKeyPoints<RangedCoordi32>, RangedCoordf64>>;

/// A chart with weeks below and `range` at the left, filled by `fill`.
fn draw(
    say: Language,
    weeks: &Weeks,
    range: std::ops::Range<f64>,
    fill: impl FnOnce(&mut Chart<'_, '_>) -> Drawn,
) -> Option<String> {
    let from = days(weeks).next()? - 7;
    let to = days(weeks).last()? + 7;
    let mut text = String::new();
    let area = SVGBackend::with_string(&mut text, SIZE).into_drawing_area();
    let below = (from..to).with_key_points(labelled(weeks, to - from));
    let drawn = on_area(say, &area, below, range, fill).and_then(|()| Ok(area.present()?));
    drop(area);
    match drawn {
        Ok(()) => Some(text),
        Err(error) => {
            tracing::error!(%error, "a chart cannot be drawn");
            None
        }
    }
}

fn on_area(
    say: Language,
    area: &DrawingArea<SVGBackend<'_>, Shift>,
    below: WithKeyPoints<RangedCoordi32>,
    range: std::ops::Range<f64>,
    fill: impl FnOnce(&mut Chart<'_, '_>) -> Drawn,
) -> Drawn {
    area.fill(&WHITE)?;
    let mut chart = ChartBuilder::on(area)
        .margin(8)
        // The last day is written under the last week.
        .margin_right(30)
        .x_label_area_size(32)
        .y_label_area_size(58)
        .build_cartesian_2d(below, range)?;
    let ink = RGBColor(27, 31, 35);
    let style = FONT.into_font().color(&ink);
    chart
        .configure_mesh()
        .disable_x_mesh()
        .light_line_style(TRANSPARENT)
        .bold_line_style(PALE)
        .y_labels(5)
        .label_style(style.pos(Pos::new(HPos::Center, VPos::Top)))
        .x_label_formatter(&|day| {
            let day = NaiveDate::from_num_days_from_ce_opt(*day);
            day.map_or_else(String::new, |day| say.short_date(day))
        })
        .y_label_formatter(&|number| format!("{number:.0}"))
        .draw()?;
    fill(&mut chart)
}
