//! A lifter's own record to be taken home: their sets as CSV and as JSON, for the browser that
//! opened the link, until midnight.
//!
//! Refuses: anybody else's sets; whoever has the address alone.
use crate::app::{App, download};
use crate::auth::{closed, own};
use crate::problem::Problem;
use crate::{csv_file, json_file};
use axum::extract::{Path, State};
use axum::http::HeaderMap;
use axum::response::{IntoResponse as _, Response};
use journal::SetsOf;

/// What may be taken; `None` for whoever did not open the link.
fn of(app: &App, headers: &HeaderMap, token: &str) -> Option<SetsOf> {
    let lifter = own(app, headers, token)?;
    Some(SetsOf {
        lifter: Some(lifter),
        ..SetsOf::default()
    })
}

pub(crate) async fn csv(
    State(app): State<App>,
    headers: HeaderMap,
    Path(token): Path<String>,
) -> Result<Response, Response> {
    let Some(of) = of(&app, &headers, &token) else {
        return Err(closed(&app, app.language(&headers), &token));
    };
    let body = app
        .source
        .stream(move |record, sink| csv_file::write(record, &of, sink))
        .await
        .map_err(Problem::into_response)?;
    let kind = "text/csv; charset=utf-8; header=present";
    Ok(download("my-record.csv", kind, body).into_response())
}

pub(crate) async fn json(
    State(app): State<App>,
    headers: HeaderMap,
    Path(token): Path<String>,
) -> Result<Response, Response> {
    let Some(of) = of(&app, &headers, &token) else {
        return Err(closed(&app, app.language(&headers), &token));
    };
    let body = app
        .source
        .stream(move |record, sink| json_file::write(record, &of, sink))
        .await
        .map_err(Problem::into_response)?;
    Ok(download("my-record.json", "application/json", body).into_response())
}
