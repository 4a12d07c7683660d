//! Charts over days as SVG, drawn by a library: their frame, and columns by week.
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

// About a phone's width, so that its letters stay as large as those around it.
const SIZE: (u32, u32) = (400, 220);
const FONT: (&str, u32) = ("sans-serif", 20);
/// Days that are written below, at most.
const LABELS: usize = 4;
// Okabe and Ito's colours, told apart by colour-blind eyes; shape and place say it too.
pub(crate) const BLUE: RGBColor = RGBColor(0, 114, 178);
pub(crate) const ORANGE: RGBColor = RGBColor(213, 94, 0);
pub(crate) const PALE: RGBColor = RGBColor(201, 206, 212);

/// What the plotting library cannot draw is left out; the table beside it has the numbers.
pub(crate) type Drawn = Result<(), Box<dyn std::error::Error>>;

/// Columns by week, before pale ones where those are given.
pub(crate) fn columns(
    say: Language,
    mondays: &[NaiveDate],
    pale: Option<&[f64]>,
    front: &[f64],
) -> Option<String> {
    let bars = pale.into_iter().map(|pale| (pale, PALE, 3));
    let bars: Vec<_> = bars.chain([(front, BLUE, 2)]).collect();
    let counts = bars.iter().flat_map(|(counts, ..)| counts.iter().copied());
    let top = counts.fold(0.0, f64::max) * 1.1 + 0.5;
    chart_of_days(say, SIZE, mondays, 0.0..top, |chart| {
        for (counts, colour, half) in bars {
            let one = |(day, count): (i32, &f64)| {
                let corners = [(day - half, 0.0), (day + half, *count)];
                Rectangle::new(corners, colour.filled())
            };
            chart.draw_series(days(mondays).zip(counts.iter()).map(one))?;
        }
        Ok(())
    })
}

/// Days as numbers.
fn days(dates: &[NaiveDate]) -> impl Iterator<Item = i32> {
    dates.iter().map(NaiveDate::num_days_from_ce)
}

/// The days that are written below: spread over all, none so near the former that they
/// touch in a chart of `span` days.
fn labelled(dates: &[NaiveDate], span: i32) -> Vec<i32> {
    let all: Vec<i32> = days(dates).collect();
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

pub(crate) type Chart<'a, 'b> =
    ChartContext<'a, SVGBackend<'b>, Cartesian2d<WithKeyPoints<RangedCoordi32>, RangedCoordf64>>;

/// A chart with days below, oldest first, and `range` at the left, filled by `fill`; `None` without
/// a day, or where the library cannot draw it.
pub(crate) fn chart_of_days(
    say: Language,
    size: (u32, u32),
    dates: &[NaiveDate],
    range: std::ops::Range<f64>,
    fill: impl FnOnce(&mut Chart<'_, '_>) -> Drawn,
) -> Option<String> {
    let from = days(dates).min()? - 7;
    let to = days(dates).max()? + 7;
    let mut text = String::new();
    let area = SVGBackend::with_string(&mut text, size).into_drawing_area();
    let below = (from..to).with_key_points(labelled(dates, to - from));
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
