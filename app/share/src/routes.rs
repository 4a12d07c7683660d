//! The addresses that are answered.
//!
//! Refuses: all others, with a 404 that says which there are.
use crate::guard::guard;
use crate::problem::Problem;
use crate::stream::Source;
use crate::{csv_file, json_file, page};
use axum::body::Body;
use axum::extract::{RawQuery, State};
use axum::http::{StatusCode, header};
use axum::response::IntoResponse;
use axum::routing::get;
use axum::{Router, middleware};
use chrono::NaiveDate;
use std::path::PathBuf;

/// Everything that is shown of the record at `record`, which need not exist yet. Each answer
/// opens it anew, reads one moment of it, and writes nothing.
///
/// - `/`: sessions, latest first, a month of training days at a time (`?before=2026-03-31`).
/// - `/record.csv`: every set, RFC 4180.
/// - `/record.json`: every set, by `schema/record.schema.json`.
pub fn router(record: PathBuf) -> Router {
    Router::new()
        .route("/", get(sessions))
        .route("/style.css", get(style))
        .route("/record.csv", get(csv))
        .route("/record.json", get(json))
        .fallback(nothing_here)
        .with_state(Source::new(record))
        .layer(middleware::from_fn(guard))
}

const HTML: &str = "text/html; charset=utf-8";
const CSS: &str = "text/css; charset=utf-8";
// Both parameters are RFC 4180's.
const CSV: &str = "text/csv; charset=utf-8; header=present";
const JSON: &str = "application/json";

async fn sessions(
    State(source): State<Source>,
    RawQuery(query): RawQuery,
) -> Result<impl IntoResponse, Problem> {
    let before = before(query.as_deref())?;
    let body = source
        .stream(move |record, sink| page::write(record, before, sink))
        .await?;
    Ok(answer(HTML, body))
}

async fn style() -> impl IntoResponse {
    answer(CSS, Body::from(include_str!("style.css")))
}

async fn csv(State(source): State<Source>) -> Result<impl IntoResponse, Problem> {
    let body = source.stream(csv_file::write).await?;
    let name = "attachment; filename=\"pinladder-record.csv\"";
    Ok(([(header::CONTENT_DISPOSITION, name)], answer(CSV, body)))
}

async fn json(State(source): State<Source>) -> Result<impl IntoResponse, Problem> {
    let body = source.stream(json_file::write).await?;
    Ok(answer(JSON, body))
}

async fn nothing_here() -> Problem {
    Problem::new(
        StatusCode::NOT_FOUND,
        "there are /, /record.csv and /record.json here",
    )
}

fn answer(kind: &'static str, body: Body) -> impl IntoResponse {
    ([(header::CONTENT_TYPE, kind)], body)
}

/// The day of `before=` in a query; other parts are of no account.
fn before(query: Option<&str>) -> Result<Option<NaiveDate>, Problem> {
    let mut parts = query.unwrap_or_default().split('&');
    let Some(day) = parts.find_map(|part| part.strip_prefix("before=")) else {
        return Ok(None);
    };
    day.parse().map(Some).map_err(|_| {
        Problem::new(
            StatusCode::BAD_REQUEST,
            "before must be a day such as 2026-03-31",
        )
    })
}
