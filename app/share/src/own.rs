//! A lifter's own record to be taken home: their sets as CSV and as JSON, for the browser that
//! opened the link, until midnight.
//!
//! Refuses: anybody else's sets; whoever has the address alone.
use crate::app::{App, download};
use crate::auth::{closed, own};
use crate::problem::Problem;
use crate::stream::{Sink, Stop};
use crate::{csv_file, json_file};
use axum::extract::{Path, State};
use axum::http::HeaderMap;
use axum::response::{IntoResponse as _, Response};
use journal::{RecordReader, SetsOf};

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
    let kind = "text/csv; charset=utf-8; header=present";
    taken_home(
        &app,
        (&headers, &token),
        ("my-record.csv", kind),
        csv_file::write,
    )
    .await
}

pub(crate) async fn json(
    State(app): State<App>,
    headers: HeaderMap,
    Path(token): Path<String>,
) -> Result<Response, Response> {
    let file = ("my-record.json", "application/json");
    taken_home(&app, (&headers, &token), file, json_file::write).await
}

async fn taken_home(
    app: &App,
    (headers, token): (&HeaderMap, &str),
    (name, kind): (&'static str, &'static str),
    write: fn(Option<&RecordReader>, &SetsOf, &mut Sink) -> Result<(), Stop>,
) -> Result<Response, Response> {
    let Some(of) = of(app, headers, token) else {
        return Err(closed(app, app.language(headers), token));
    };
    let body = app
        .source
        .stream(move |record, sink| write(record, &of, sink))
        .await
        .map_err(Problem::into_response)?;
    Ok(download(name, kind, body).into_response())
}
