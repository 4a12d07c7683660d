//! A lift's course on a page: one chart with its signs told, volume and hard sets by week, the plan
//! against what was done, and all of it in numbers.
//!
//! Refuses: names as markup; every text is escaped by the template.
use crate::chart;
use crate::course::{Course, CourseDay, CourseWeek};
use crate::course_chart;
use crate::words as w;
use chrono::NaiveDate;
use journal::{Mass, MassUnit};
use maud::{Markup, PreEscaped, html};
use view::Language;

/// One lift's part of the page.
pub(crate) fn lift(say: Language, course: &Course, next: &[(NaiveDate, Mass)]) -> Markup {
    let unit = course.unit;
    let mondays: Vec<NaiveDate> = course.weeks.iter().map(|week| week.monday).collect();
    let count = |of: fn(&CourseWeek) -> u32| -> Vec<f64> {
        course
            .weeks
            .iter()
            .map(|week| f64::from(of(week)))
            .collect()
    };
    let volume: Vec<f64> = course.weeks.iter().map(|week| volume(week, unit)).collect();
    let charts = [
        (
            say.fill(w::VOLUME_CHART, &[unit.word()]),
            chart::columns(say, &mondays, None, &volume),
        ),
        (
            say.say(w::HARD_CHART),
            chart::columns(say, &mondays, Some(&count(|w| w.sets)), &count(|w| w.hard)),
        ),
        (
            say.say(w::REPS_CHART),
            chart::columns(
                say,
                &mondays,
                Some(&count(|w| w.planned)),
                &count(|w| w.reps),
            ),
        ),
    ];
    html! {
        section class="lift" {
            h2 { (say.shipped(&course.lift)) }
            @if let Some(svg) = course_chart::course(say, course, next) {
                figure class="course" {
                    (PreEscaped(svg))
                    figcaption { (say.fill(w::COURSE_CHART, &[unit.word()])) (signs(say)) }
                }
            }
            div class="charts" { @for (words, svg) in charts { @if let Some(svg) = svg {
                figure { (PreEscaped(svg)) figcaption { (words) } }
            } } }
            details class="numbers" {
                summary { (say.pick(w::IN_NUMBERS)) }
                (numbers(say, course, next))
            }
        }
        "\n"
    }
}

/// Two lifters' courses of a lift beside each other.
pub(crate) fn beside(
    say: Language,
    (one, other): (&Course, &Course),
    (name, beside): (&str, &str),
) -> Markup {
    html! {
        @if let Some(svg) = course_chart::compared(say, one, other) {
            figure class="course" {
                (PreEscaped(svg))
                figcaption {
                    (say.pick(w::COMPARED))
                    span class="signs" {
                        " " span { span class="blue" aria-hidden="true" { "\u{25cf}" } " " (name) }
                        " " span { span class="orange" aria-hidden="true" { "\u{25a0}" } " " (beside) }
                    }
                }
            }
            (shares(say, (one, name), (other, beside)))
        }
    }
}

/// Their best estimates in numbers.
fn shares(say: Language, one: (&Course, &str), other: (&Course, &str)) -> Markup {
    let best = |course: &Course| course.days.iter().filter_map(|day| day.estimate).max();
    html! {
        table {
            thead { tr {
                th scope="col" { (say.pick(w::LIFTER)) }
                th scope="col" { (say.pick(w::ESTIMATE)) }
                th scope="col" { (say.pick(w::HARD_SETS)) }
            } }
            tbody { @for (course, name) in [one, other] { tr {
                th scope="row" { (name) }
                td { @if let Some(best) = best(course) { (say.mass(best, course.unit)) } }
                td { (course.weeks.iter().map(|week| week.hard).sum::<u32>()) }
            } } }
        }
    }
}

/// What the signs of the chart mean.
fn signs(say: Language) -> Markup {
    let all = [
        ("blue", "\u{25cf}", w::DAY_HEAVIEST),
        ("blue", "\u{25c6}", w::A_BEST),
        ("orange", "\u{25a0}", w::BACK_MOVED),
        ("orange", "\u{2715}", w::REPS_MISSED),
        ("green", "\u{2014}", w::ESTIMATE),
        ("blue", "\u{25cb}", w::COMES_NEXT),
    ];
    html! {
        span class="signs" { @for (colour, sign, words) in all {
            " " span { span class=(colour) aria-hidden="true" { (sign) } " " (say.pick(words)) }
        } }
    }
}

/// Load times reps, in the lifter's unit.
fn volume(week: &CourseWeek, unit: MassUnit) -> f64 {
    let ng = i64::try_from(week.volume).unwrap_or(i64::MAX);
    Mass::from_ng(ng).number(unit).parse().unwrap_or(0.0)
}

/// The same numbers, latest first.
fn numbers(say: Language, course: &Course, next: &[(NaiveDate, Mass)]) -> Markup {
    let unit = course.unit;
    let of = |part: u32, whole: u32| say.fill(w::OF, &[&part.to_string(), &whole.to_string()]);
    let heads = [w::DAY, w::HEAVIEST, w::ESTIMATE, w::REPS, w::BACK];
    html! {
        table {
            thead { tr { @for head in heads { th scope="col" { (say.pick(head)) } } } }
            tbody {
                @for (date, load) in next.iter().rev() { tr {
                    th scope="row" { (day(say, *date)) }
                    td { (say.mass(*load, unit)) " " small { (say.pick(w::COMES_NEXT)) } }
                    td {} td {} td {}
                } }
                @for one in course.days.iter().rev() { (row(say, one, unit)) }
            }
        }
        table {
            thead { tr {
                th scope="col" { (say.pick(w::WEEK_OF)) }
                th scope="col" { (say.pick(w::VOLUME)) ", " (unit.word()) }
                th scope="col" { (say.pick(w::HARD_SETS)) }
                th scope="col" { (say.pick(w::REPS)) }
            } }
            tbody { @for week in course.weeks.iter().rev() { tr {
                th scope="row" { (day(say, week.monday)) }
                td { (say.number(&format!("{:.0}", volume(week, unit)))) }
                td { (of(week.hard, week.sets)) }
                td { (of(week.reps, week.planned)) }
            } } }
        }
    }
}

fn day(say: Language, date: NaiveDate) -> Markup {
    html! { time datetime=(date) { (w::day_and_year(say, &date.to_string())) } }
}

fn row(say: Language, one: &CourseDay, unit: MassUnit) -> Markup {
    html! {
        tr {
            th scope="row" { (day(say, one.date)) }
            td {
                (say.mass(one.heaviest, unit)) " \u{d7} " (one.reps)
                @if one.is_best { " " small { (say.pick(w::A_BEST)) } }
            }
            td { @if let Some(estimate) = one.estimate { (say.mass(estimate, unit)) } }
            td { @if one.missed { (say.pick(w::REPS_MISSED)) } }
            td { (say.pick(if one.moved { w::BACK_MOVED } else { w::KEPT })) }
        }
    }
}
