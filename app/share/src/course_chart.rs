//! The course of a lift on one chart, drawn by a library: heaviest sets, bests, estimates, backs
//! that moved, reps missed, what comes next; and two lifters beside each other.
//!
//! Refuses: names and other texts of people; floats here are for the eye.
use crate::chart::{BLUE, Drawn, ORANGE, chart_of_days};
use crate::course::{Course, CourseDay};
use chrono::{Datelike as _, NaiveDate};
use journal::{Mass, MassUnit};
use plotters::prelude::*;
use view::Language;

/// Width and height; letters stay readable at a phone's width.
const SIZE: (u32, u32) = (520, 320);
const GREEN: RGBColor = RGBColor(0, 120, 90);

fn number(load: Mass, unit: MassUnit) -> f64 {
    load.number(unit).parse().unwrap_or(0.0)
}

fn day(date: NaiveDate) -> i32 {
    date.num_days_from_ce()
}

/// A lift's course, and what comes next of it.
pub(crate) fn course(say: Language, course: &Course, next: &[(NaiveDate, Mass)]) -> Option<String> {
    let unit = course.unit;
    let loads = course
        .days
        .iter()
        .flat_map(|day| [Some(day.heaviest), day.estimate]);
    let loads = loads.flatten().chain(next.iter().map(|(_, load)| *load));
    let loads: Vec<f64> = loads.map(|load| number(load, unit)).collect();
    let most = loads.iter().copied().fold(0.0, f64::max);
    let least = loads.iter().copied().fold(most, f64::min);
    let pad = ((most - least) * 0.12).max(most * 0.02).max(1.0);
    let dates = course.days.iter().map(|day| day.date);
    let dates: Vec<NaiveDate> = dates.chain(next.iter().map(|(date, _)| *date)).collect();
    let at = |of: &CourseDay| (day(of.date), number(of.heaviest, unit));
    chart_of_days(
        say,
        SIZE,
        &dates,
        (least - pad).max(0.0)..most + pad,
        |chart| -> Drawn {
            let estimates = course
                .days
                .iter()
                .filter_map(|of| Some((day(of.date), number(of.estimate?, unit))));
            chart.draw_series(LineSeries::new(estimates, GREEN.stroke_width(1)))?;
            chart.draw_series(LineSeries::new(
                course.days.iter().map(at),
                BLUE.stroke_width(2),
            ))?;
            let last = course.days.last().map(at);
            let coming = || {
                next.iter()
                    .map(|(date, load)| (day(*date), number(*load, unit)))
            };
            let on = last.into_iter().chain(coming());
            chart.draw_series(LineSeries::new(on, BLUE.stroke_width(1)))?;
            chart.draw_series(coming().map(|at| Circle::new(at, 5, BLUE.stroke_width(2))))?;
            let marks = |is: fn(&CourseDay) -> bool| course.days.iter().filter(move |of| is(of));
            let kept = marks(|of| !of.moved && !of.is_best);
            chart.draw_series(kept.map(|of| Circle::new(at(of), 4, BLUE.filled())))?;
            let best = marks(|of| !of.moved && of.is_best);
            chart.draw_series(best.map(|of| {
                let corners = [(0, -7), (7, 0), (0, 7), (-7, 0)];
                EmptyElement::at(at(of)) + Polygon::new(corners, BLUE.filled())
            }))?;
            let moved = marks(|of| of.moved);
            chart.draw_series(moved.map(|of| {
                EmptyElement::at(at(of)) + Rectangle::new([(-6, -6), (6, 6)], ORANGE.filled())
            }))?;
            let missed = marks(|of| of.missed);
            chart.draw_series(missed.map(|of| {
                let stroke = ORANGE.stroke_width(2);
                EmptyElement::at(at(of))
                    + PathElement::new([(-9, -9), (9, 9)], stroke)
                    + PathElement::new([(-9, 9), (9, -9)], stroke)
            }))?;
            Ok(())
        },
    )
}

/// Two lifters' estimates of a lift, each in percent of their own best one shown.
pub(crate) fn compared(say: Language, one: &Course, other: &Course) -> Option<String> {
    let shares = |course: &Course| -> Vec<(NaiveDate, f64)> {
        let known = || {
            course
                .days
                .iter()
                .filter_map(|day| Some((day.date, day.estimate?)))
        };
        let best = known().map(|(_, estimate)| estimate).max();
        let Some(best) = best
            .map(|best| number(best, course.unit))
            .filter(|best| *best > 0.0)
        else {
            return Vec::new();
        };
        let share = |of: Mass| number(of, course.unit) * 100.0 / best;
        known().map(|(date, of)| (date, share(of))).collect()
    };
    let (one, other) = (shares(one), shares(other));
    let all = || one.iter().chain(&other);
    let mut dates: Vec<NaiveDate> = all().map(|(date, _)| *date).collect();
    dates.sort_unstable();
    let least = all().map(|(_, share)| *share).fold(100.0, f64::min);
    chart_of_days(
        say,
        SIZE,
        &dates,
        (least - 3.0).max(0.0)..103.0,
        |chart| -> Drawn {
            let points = |of: &[(NaiveDate, f64)]| -> Vec<(i32, f64)> {
                of.iter()
                    .map(|(date, share)| (day(*date), *share))
                    .collect()
            };
            chart.draw_series(LineSeries::new(points(&one), BLUE.stroke_width(2)))?;
            let round = points(&one).into_iter();
            chart.draw_series(round.map(|at| Circle::new(at, 4, BLUE.filled())))?;
            chart.draw_series(LineSeries::new(points(&other), ORANGE.stroke_width(2)))?;
            let square = points(&other).into_iter();
            chart.draw_series(square.map(|at| {
                EmptyElement::at(at) + Rectangle::new([(-4, -4), (4, 4)], ORANGE.filled())
            }))?;
            Ok(())
        },
    )
}
