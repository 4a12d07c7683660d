//! Plans from the browser: a file is chosen or dropped on the page, shown as the kiosk understood
//! it, and taken by a second press. Plain forms, no script.
//!
//! Refuses: whoever has not signed in; files longer than a plan can be; more than one at a time.
use crate::app::{App, page_of};
use crate::desk_page::{Counter, Told};
use crate::form::{field, read_form};
use crate::plans_page::{self, Shown};
use crate::problem::Problem;
use crate::token;
use crate::upload;
use crate::words as w;
use axum::extract::{Path, RawQuery, Request, State};
use axum::http::{HeaderMap, StatusCode};
use axum::response::{IntoResponse as _, Redirect, Response};
use std::sync::Arc;
use view::desk::{Errand, PlanFile, PlanIn};

/// The form, and what waits to be taken; `took=` says once what came of the last one.
pub(crate) async fn page(
    State(app): State<App>,
    headers: HeaderMap,
    RawQuery(query): RawQuery,
) -> Response {
    if !app.is_coach(&headers) {
        return Redirect::to("/sign-in").into_response();
    }
    let took = query
        .as_deref()
        .and_then(|query| query.strip_prefix("took="));
    let took = took.and_then(|rows| rows.parse().ok()).map(Told::TookPlan);
    shown(&app, &headers, None, took.as_ref()).into_response()
}

/// One plan as it was understood.
pub(crate) async fn one(
    State(app): State<App>,
    headers: HeaderMap,
    Path(id): Path<String>,
) -> Response {
    if !app.is_coach(&headers) {
        return Redirect::to("/sign-in").into_response();
    }
    match handed(&app.desk.counter(), &id) {
        Some(plan) => shown(&app, &headers, Some(&plan), None).into_response(),
        None => {
            let page = shown(&app, &headers, None, Some(&Told::PlanGone));
            (StatusCode::NOT_FOUND, page).into_response()
        }
    }
}

fn handed(counter: &Counter, id: &str) -> Option<Arc<PlanIn>> {
    let found = counter.handed.iter().find(|plan| plan.read.id == id);
    found.cloned()
}

fn shown(
    app: &App,
    headers: &HeaderMap,
    plan: Option<&PlanIn>,
    told: Option<&Told>,
) -> impl axum::response::IntoResponse + use<> {
    let (say, counter) = (app.language(headers), app.desk.counter());
    let told = told.map(|told| told.words(say));
    let about = Shown {
        today: app.desk.laid().today,
        waiting: counter.handed,
        told,
    };
    page_of(match plan {
        Some(plan) => plans_page::one(say, plan, &about),
        None => plans_page::all(say, &about),
    })
}

/// A file. Read, it leads to the page that shows it, so that loading that again sends nothing twice.
pub(crate) async fn hand_in(
    State(app): State<App>,
    headers: HeaderMap,
    request: Request,
) -> Result<Response, Problem> {
    signed_in(&app, &headers)?;
    // One after the other: what is read lies in memory.
    let Ok(_turn) = app.uploads.try_acquire() else {
        return Err(Problem::new(StatusCode::SERVICE_UNAVAILABLE, w::PLAN_BUSY));
    };
    let (name, bytes) = upload::file(request).await?;
    // The session may have ended while the file came.
    signed_in(&app, &headers)?;
    let failed = Problem::new(StatusCode::INTERNAL_SERVER_ERROR, w::NOT_JUDGED);
    let id = token::fresh().ok_or(failed)?;
    let file = PlanFile {
        id: id.clone(),
        name,
        bytes,
    };
    let told = app.desk.hand_on(Errand::ReadPlan(Box::new(file))).await;
    if told == Told::Handed {
        return Ok(Redirect::to(&format!("/coach/plans/{id}")).into_response());
    }
    let page = shown(&app, &headers, None, Some(&told));
    Ok((StatusCode::CONFLICT, page).into_response())
}

/// The second press.
pub(crate) async fn take(
    State(app): State<App>,
    headers: HeaderMap,
    Path(id): Path<String>,
    request: Request,
) -> Result<Response, Problem> {
    signed_in(&app, &headers)?;
    let mark = field(&read_form(request).await?, "mark")?;
    let errand = Errand::TakePlan {
        id: id.clone(),
        mark,
    };
    let told = app.desk.hand_on(errand).await;
    if let Told::TookPlan(rows) = told {
        return Ok(Redirect::to(&format!("/coach/plans?took={rows}")).into_response());
    }
    let plan = handed(&app.desk.counter(), &id);
    let page = shown(&app, &headers, plan.as_deref(), Some(&told));
    Ok((StatusCode::CONFLICT, page).into_response())
}

fn signed_in(app: &App, headers: &HeaderMap) -> Result<(), Problem> {
    let problem = Problem::new(StatusCode::UNAUTHORIZED, w::SIGN_IN_FIRST);
    app.is_coach(headers).then_some(()).ok_or(problem)
}
