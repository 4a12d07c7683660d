//! What a coach does on the page of the day: reads the form, hands it on to the kiosk, tells what
//! came of it.
//!
//! Refuses: whoever has not signed in; a rulebook of its own.
use crate::app::{App, stream_page};
use crate::desk_page::Told;
use crate::form::{Form, field, optional, read_form_of};
use crate::problem::Problem;
use crate::today::{self, Now};
use crate::words as w;
use axum::extract::{RawQuery, Request, State};
use axum::http::{HeaderMap, StatusCode};
use axum::response::{IntoResponse as _, Redirect, Response};
use chrono::NaiveDate;
use view::coach_deed::{CoachDeed, What};
use view::desk::Errand;

/// Most bytes of a deed's form: names and a reason of 200 characters, each percent-encoded.
const DEED_MAX: usize = 8 * 1_024;

/// The page; after a deed that was done it says so, once.
pub(crate) async fn page(
    State(app): State<App>,
    headers: HeaderMap,
    RawQuery(query): RawQuery,
) -> Result<Response, Response> {
    if !app.is_coach(&headers) {
        return Err(Redirect::to("/sign-in").into_response());
    }
    let told = (query.as_deref() == Some("told=done")).then_some(Told::Done);
    shown(&app, &headers, told).await
}

async fn shown(app: &App, headers: &HeaderMap, told: Option<Told>) -> Result<Response, Response> {
    let say = app.language(headers);
    let now = Now {
        laid: app.desk.laid(),
        due: app.desk.counter().due,
        board: app.desk.board_of_now(),
        told: told.map(|told| told.words(say)),
    };
    stream_page(app, move |record, sink| {
        today::write(say, record, &now, sink)
    })
    .await
}

/// A deed. Done, it leads back to the page, so that loading it again does nothing twice.
pub(crate) async fn post(
    State(app): State<App>,
    headers: HeaderMap,
    request: Request,
) -> Result<Response, Response> {
    if !app.is_coach(&headers) {
        let problem = Problem::new(StatusCode::UNAUTHORIZED, w::SIGN_IN_FIRST);
        return Err(problem.into_response());
    }
    let deed = async { deed(&read_form_of(request, DEED_MAX).await?) }.await;
    let deed = deed.map_err(Problem::into_response)?;
    let told = app.desk.hand_on(Errand::Coach(Box::new(deed))).await;
    if told == Told::Done {
        return Ok(Redirect::to("/coach/today?told=done").into_response());
    }
    let mut response = shown(&app, &headers, Some(told)).await?;
    *response.status_mut() = StatusCode::CONFLICT;
    Ok(response)
}

fn deed(form: &Form) -> Result<CoachDeed, Problem> {
    let text = |name| field(form, name);
    let what = match text("do")?.as_str() {
        "rule" => What::Rule {
            no: text("no")?.parse().map_err(|_| none())?,
            mark: text("mark")?,
            load: text("load")?,
        },
        "meant" => What::Meant {
            mark: text("mark")?,
            lift: text("lift")?,
            date: day(&text("from")?)?,
        },
        "hurt" => What::Hurt(day(&text("from")?)?),
        "fit" => What::Fit,
        "ill" => What::Ill(day(&text("from")?)?, day(&text("to")?)?),
        _ => return Err(none()),
    };
    Ok(CoachDeed {
        lifter: text("lifter")?,
        what,
        note: optional(form, "note")?,
    })
}

const fn none() -> Problem {
    Problem::new(StatusCode::BAD_REQUEST, w::NO_SUCH_DEED)
}

/// A day as browsers send it (HTML Standard, date state: ISO 8601).
pub(crate) fn day(text: &str) -> Result<NaiveDate, Problem> {
    let is_day = text.len() == 10 && text.bytes().all(|b| b.is_ascii_digit() || b == b'-');
    let day = text.parse().ok().filter(|_| is_day);
    day.ok_or(Problem::new(StatusCode::BAD_REQUEST, w::NO_DATE))
}
