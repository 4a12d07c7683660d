//! The gym's week by address: the grid of `from=`, one cell of it to be changed, and the changes.
//!
//! Refuses: whoever has not signed in; a rulebook of its own.
use crate::app::{App, stream_page};
use crate::deeds::day;
use crate::desk_page::Told;
use crate::form::{Form, field, fields, optional, read_form_of};
use crate::problem::Problem;
use crate::week_page::{self, Asked};
use crate::words as w;
use axum::extract::{RawQuery, Request, State};
use axum::http::{HeaderMap, StatusCode};
use axum::response::{IntoResponse as _, Redirect, Response};
use chrono::NaiveDate;
use view::desk::{DayRow, Errand};
use view::week_deed::{WeekChange, WeekDeed};

/// Most bytes of a form: names and cells, each percent-encoded.
const FORM_MAX: usize = 8 * 1_024;

/// The grid; after a change that was done it says so, once.
pub(crate) async fn page(
    State(app): State<App>,
    headers: HeaderMap,
    RawQuery(query): RawQuery,
) -> Result<Response, Response> {
    if !app.is_coach(&headers) {
        return Err(Redirect::to("/sign-in").into_response());
    }
    let query = fields(query.as_deref().unwrap_or_default()).unwrap_or_default();
    let asked = asked(&query).map_err(Problem::into_response)?;
    let told = query.contains(&("told".to_owned(), "done".to_owned()));
    shown(&app, &headers, asked, told.then_some(Told::Done)).await
}

async fn shown(
    app: &App,
    headers: &HeaderMap,
    asked: Asked,
    told: Option<Told>,
) -> Result<Response, Response> {
    let (say, laid) = (app.language(headers), app.desk.laid());
    let told = told.map(|told| told.words(say));
    stream_page(app, move |record, sink| {
        week_page::write(say, (record, &laid), (&asked, told.as_deref()), sink)
    })
    .await
}

/// The week and the cell that a query names.
fn asked(query: &Form) -> Result<Asked, Problem> {
    let no_day = Problem::new(StatusCode::BAD_REQUEST, w::NO_FROM_DAY);
    let from = match optional(query, "from")?.as_str() {
        "" => None,
        text => Some(day(text).map_err(|_| no_day)?),
    };
    let (lifter, of) = (optional(query, "lifter")?, optional(query, "day")?);
    let cell = match of.as_str() {
        "" => None,
        text => Some((lifter, day(text).map_err(|_| no_day)?)),
    };
    Ok(Asked { from, cell })
}

/// A change. Done, it leads back to the grid, so that loading it again does nothing twice.
pub(crate) async fn post(
    State(app): State<App>,
    headers: HeaderMap,
    request: Request,
) -> Result<Response, Response> {
    if !app.is_coach(&headers) {
        let problem = Problem::new(StatusCode::UNAUTHORIZED, w::SIGN_IN_FIRST);
        return Err(problem.into_response());
    }
    let read = async { deed(&read_form_of(request, FORM_MAX).await?) }.await;
    let (deed, day) = read.map_err(Problem::into_response)?;
    let monday = deed.first;
    let asked = Asked {
        from: Some(monday),
        cell: Some((deed.lifter.clone(), day)),
    };
    let told = app.desk.hand_on(Errand::Week(Box::new(deed))).await;
    if told == Told::Done {
        let back = format!("/coach/week?from={monday}&told=done");
        return Ok(Redirect::to(&back).into_response());
    }
    let is_done = matches!(told, Told::DoneOdd(_));
    let mut response = shown(&app, &headers, asked, Some(told)).await?;
    if !is_done {
        *response.status_mut() = StatusCode::CONFLICT;
    }
    Ok(response)
}

/// A change, and the day of its cell.
fn deed(form: &Form) -> Result<(WeekDeed, NaiveDate), Problem> {
    const NONE: Problem = Problem::new(StatusCode::BAD_REQUEST, w::NO_SUCH_CHANGE);
    let text = |name| field(form, name);
    let date = day(&text("day")?)?;
    let row = || -> Result<DayRow, Problem> {
        Ok(DayRow {
            lift: text("lift")?,
            sets: text("sets")?,
            reps: text("reps")?,
            load: text("load")?,
            ladder: None,
            // What stood there stays.
            rest_min: None,
        })
    };
    let at = || text("at")?.parse::<usize>().map_err(|_| NONE);
    let what = match text("do")?.as_str() {
        "move" => WeekChange::Move {
            from: date,
            at: match text("at")?.as_str() {
                "all" => None,
                _ => Some(at()?),
            },
            to: day(&text("to")?)?,
        },
        "row" => WeekChange::Row {
            date,
            at: Some(at()?),
            row: Some(row()?),
        },
        "add" => WeekChange::Row {
            date,
            at: None,
            row: Some(row()?),
        },
        "off" => WeekChange::Row {
            date,
            at: Some(at()?),
            row: None,
        },
        _ => return Err(NONE),
    };
    let deed = WeekDeed {
        lifter: text("lifter")?,
        first: day(&text("first")?)?,
        mark: text("mark")?,
        what,
        beside: optional(form, "beside")? == "yes",
    };
    Ok((deed, date))
}
