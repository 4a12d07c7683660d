//! What programs ask for beside the record: the plan, what is due, the lifters, the sheets, the
//! board; each as JSON.
//!
//! Refuses: floats; loads are exact texts with their unit.
use crate::app::{App, answer};
use crate::documents_json::{DueJson, LifterJson, PlanJson};
use crate::lifters::everybody;
use crate::problem::Problem;
use crate::programme::together;
use crate::query::Query;
use crate::rights::reads;
use crate::words as w;
use axum::body::Body;
use axum::extract::{RawQuery, State};
use axum::http::{HeaderMap, StatusCode};
use axum::response::IntoResponse;
use chrono::Days;
use serde::Serialize;
use std::io::Write as _;
use std::time::Duration;
use tokio::time::sleep;

const JSON: &str = "application/json";
/// Most rows of plan in one answer.
const ROWS_MAX: u32 = 10_000;
/// Days of the plan that are told where nobody asks for others.
const DAYS: u64 = 14;
/// How often the board is looked for that the kiosk shows at its next tick.
const LOOKS: u32 = 15;

type Answer = Result<axum::response::Response, Problem>;

/// A document of one kind of thing.
#[derive(Serialize)]
struct Document<T> {
    version: u32,
    /// The kiosk's day.
    day: Option<String>,
    #[serde(flatten)]
    what: T,
}

fn json(app: &App, what: impl Serialize) -> Answer {
    let document = Document {
        version: 1,
        day: app.desk.laid().today.map(|today| today.date.to_string()),
        what,
    };
    let failed = Problem::new(StatusCode::INTERNAL_SERVER_ERROR, w::UNREADABLE);
    let text = serde_json::to_vec(&document).map_err(|_| failed)?;
    Ok(answer(JSON, Body::from(text)).into_response())
}

#[derive(Serialize)]
struct Due {
    due: Vec<DueJson>,
}

/// What is due for everybody, and who waits for the coach.
pub(crate) async fn due(
    State(app): State<App>,
    headers: HeaderMap,
    RawQuery(query): RawQuery,
) -> Answer {
    reads(&app, &headers)?;
    let query = Query::read(query.as_deref())?;
    let (lifter, lift) = (query.text("lifter")?, query.text("lift")?);
    let mut due: Vec<DueJson> = app.desk.counter().due.iter().map(DueJson::of).collect();
    due.retain(|one| lifter.as_ref().is_none_or(|lifter| one.lifter == *lifter));
    due.retain(|one| lift.is_none() || one.lift == lift);
    json(&app, Due { due })
}

/// Everybody of the gym, and of the record.
pub(crate) async fn lifters(State(app): State<App>, headers: HeaderMap) -> Answer {
    reads(&app, &headers)?;
    let laid = app.desk.laid();
    let day = laid.today.as_ref().map(|today| today.date.to_string());
    let body = app
        .source
        .stream(move |record, sink| {
            let lifters: Vec<LifterJson> = everybody(record, &laid)?;
            write!(sink, "{{\"version\":1,\"day\":")?;
            serde_json::to_writer(&mut *sink, &day).map_err(std::io::Error::from)?;
            write!(sink, ",\"lifters\":")?;
            serde_json::to_writer(&mut *sink, &lifters).map_err(std::io::Error::from)?;
            Ok(write!(sink, "}}")?)
        })
        .await?;
    Ok(answer(JSON, body).into_response())
}

/// The plan, what programmes fill, and what was done of it.
pub(crate) async fn plan(
    State(app): State<App>,
    headers: HeaderMap,
    RawQuery(query): RawQuery,
) -> Answer {
    reads(&app, &headers)?;
    let query = Query::read(query.as_deref())?;
    let laid = app.desk.laid();
    let today = laid.today.as_ref().map(|today| today.date);
    let from = query.day("from")?.or(query.day("since")?).or(today);
    let from = from.ok_or(Problem::new(StatusCode::SERVICE_UNAVAILABLE, w::NOT_UP))?;
    let to = query.day("to")?;
    let to = to
        .or(from.checked_add_days(Days::new(DAYS - 1)))
        .unwrap_or(from);
    let (lifter, lift) = (query.text("lifter")?, query.text("lift")?);
    let body = app
        .source
        .stream(move |record, sink| {
            let (first, last) = (from.to_string(), to.to_string());
            let (days, of) = ((first.as_str(), last.as_str()), lifter.as_deref());
            let rows =
                record.map_or(Ok(Vec::new()), |record| record.planned(days, of, ROWS_MAX))?;
            let mut rows = together(rows, &laid, days, of);
            rows.retain(|shown| lift.as_ref().is_none_or(|lift| shown.row.lift == *lift));
            rows.reverse();
            write!(
                sink,
                "{{\"version\":1,\"from\":\"{from}\",\"to\":\"{to}\",\"rows\":"
            )?;
            let rows: Vec<PlanJson<'_>> = rows.iter().map(PlanJson::of).collect();
            serde_json::to_writer(&mut *sink, &rows).map_err(std::io::Error::from)?;
            Ok(write!(sink, "}}")?)
        })
        .await?;
    Ok(answer(JSON, body).into_response())
}

/// The day's sheets, as `pinladder sheet --json` prints them.
pub(crate) async fn sheets(State(app): State<App>, headers: HeaderMap) -> Answer {
    reads(&app, &headers)?;
    let sheets = app.desk.sheets();
    let none = Problem::new(StatusCode::SERVICE_UNAVAILABLE, w::NOT_UP);
    let sheets = sheets.ok_or(none)?;
    Ok(answer(JSON, Body::from(sheets.as_bytes().to_vec())).into_response())
}

/// The floor board of now, for anybody, as the events have it. The kiosk shows it at its next tick
/// where nobody followed.
pub(crate) async fn board(State(app): State<App>) -> Result<impl IntoResponse, Problem> {
    for _ in 0..LOOKS {
        if let Some(board) = app.desk.board_of_now() {
            return Ok(answer(
                JSON,
                Body::from(board.to_json().as_bytes().to_vec()),
            ));
        }
        sleep(Duration::from_millis(100)).await;
    }
    Err(Problem::new(StatusCode::SERVICE_UNAVAILABLE, w::NOT_UP))
}
