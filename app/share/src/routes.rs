//! The addresses that are answered; `openapi.json` tells the same to programs.
//!
//! Refuses: all others, with a 404 that says which there are; the record to whoever has no right
//! to it.
use crate::access;
use crate::board::Seats;
use crate::desk::Desk;
use crate::guard::guard;
use crate::html::Nav;
use crate::problem::Problem;
use crate::stream::Source;
use crate::words as w;
use crate::{counter, csv_file, database_file, doors, front, json_file, lifter_page, page};
use axum::body::Body;
use axum::extract::{Path, RawQuery, State};
use axum::http::{HeaderMap, StatusCode, header};
use axum::response::{IntoResponse, Redirect, Response};
use axum::routing::{get, post};
use axum::{Router, middleware};
use chrono::NaiveDate;
use std::path::PathBuf;
use view::Language;

/// The files that are shown; each is only read.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Places {
    /// The record, which need not exist yet.
    pub record: PathBuf,
    /// The journal.
    pub journal: PathBuf,
}

/// What every handler has.
#[derive(Debug, Clone)]
pub(crate) struct App {
    pub(crate) source: Source,
    pub(crate) desk: Desk,
    pub(crate) seats: Seats,
    /// Whether cookies may only travel under TLS.
    pub(crate) secure: bool,
}

impl App {
    /// The language of a page: the one chosen for this browser, else the kiosk's.
    pub(crate) fn language(&self, headers: &HeaderMap) -> Language {
        doors::chosen_language(headers).unwrap_or_else(|| self.desk.language())
    }
}

/// Everything that is shown. Each answer opens the record anew, reads one moment of it, and
/// writes nothing; orders of the coach's desk are handed on. `secure` says that the router is
/// served under TLS.
///
/// - `/`, `/sign-in`, `/language`, `/board`, `/board/live`, `/openapi.json`: for anybody.
/// - `/coach`, `/coach/plan`, `/coach/desk`, `/coach/lifter/NAME`, `/coach/blank.xlsx` and `.csv`,
///   `/record.csv`, `/record.json`, `/journal.sqlite`: for a coach who has signed in.
/// - `/mine/TOKEN`: for the lifter whose link it is, once.
pub fn router(places: Places, desk: Desk, secure: bool) -> Router {
    let app = App {
        source: Source::new(places),
        desk,
        seats: Seats::new(),
        secure,
    };
    Router::new()
        .route("/", get(front_page))
        .route("/style.css", get(async || answer(CSS, Body::from(STYLE))))
        .route(
            "/board.css",
            get(async || answer(CSS, Body::from(BOARD_CSS))),
        )
        .route("/board.js", get(async || answer(JS, Body::from(BOARD_JS))))
        .route(
            "/openapi.json",
            get(async || answer(JSON, Body::from(OPENAPI))),
        )
        .route("/board", get(board))
        .route("/board/live", get(live))
        .route("/sign-in", get(doors::sign_in_page).post(doors::sign_in))
        .route("/sign-out", post(doors::sign_out))
        .route("/language", post(doors::choose_language))
        .route("/coach", get(sessions))
        .route("/coach/plan", get(plan))
        .route("/coach/lifter/{name}", get(lifter))
        .route("/coach/desk", get(counter_page).post(doors::order))
        .route("/coach/blank.xlsx", get(blank_xlsx))
        .route("/coach/blank.csv", get(blank_csv))
        .route("/record.csv", get(csv))
        .route("/record.json", get(json))
        .route("/journal.sqlite", get(database))
        .route("/mine/{token}", get(doors::mine).post(doors::open_mine))
        .fallback(nothing_here)
        .with_state(app.clone())
        .layer(middleware::from_fn_with_state(app, guard))
        .layer(middleware::from_fn(access::log))
}

pub(crate) const HTML: &str = "text/html; charset=utf-8";
const CSS: &str = "text/css; charset=utf-8";
const JS: &str = "text/javascript; charset=utf-8";
// Both parameters are RFC 4180's.
const CSV: &str = "text/csv; charset=utf-8; header=present";
const JSON: &str = "application/json";
const XLSX: &str = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";
const SQLITE: &str = "application/vnd.sqlite3";
const EVENTS: &str = "text/event-stream";

const STYLE: &str = include_str!("style.css");
const BOARD_CSS: &str = include_str!("board.css");
const BOARD_JS: &str = include_str!("board.js");
const OPENAPI: &str = include_str!("openapi.json");

/// The way to the form for whoever is no coach; `None` lets a coach in.
fn form_instead(app: &App, headers: &HeaderMap) -> Option<Response> {
    let to_form = || Redirect::to("/sign-in").into_response();
    (!doors::is_coach(app, headers)).then(to_form)
}

/// Lets a coach in, and refuses anybody else: a program does not want a form.
fn coach_or_refusal(app: &App, headers: &HeaderMap) -> Result<(), Problem> {
    if doors::is_coach(app, headers) {
        Ok(())
    } else {
        Err(Problem::new(StatusCode::UNAUTHORIZED, w::SIGN_IN_FIRST))
    }
}

async fn front_page(State(app): State<App>, headers: HeaderMap) -> impl IntoResponse {
    page_of(front::front(app.language(&headers)))
}

/// A TV has no choice of its own: it speaks as the kiosk does.
async fn board(State(app): State<App>) -> impl IntoResponse {
    page_of(front::board(app.desk.language()))
}

async fn sessions(
    State(app): State<App>,
    headers: HeaderMap,
    RawQuery(query): RawQuery,
) -> Result<Response, Response> {
    if let Some(form) = form_instead(&app, &headers) {
        return Ok(form);
    }
    let before = before(query.as_deref()).map_err(IntoResponse::into_response)?;
    let say = app.language(&headers);
    stream_page(&app, move |record, sink| {
        page::write(say, record, before, sink)
    })
    .await
}

async fn plan(
    State(app): State<App>,
    headers: HeaderMap,
    RawQuery(query): RawQuery,
) -> Result<Response, Response> {
    if let Some(form) = form_instead(&app, &headers) {
        return Ok(form);
    }
    let before = before(query.as_deref()).map_err(IntoResponse::into_response)?;
    let (say, filled) = (app.language(&headers), app.desk.filled());
    stream_page(&app, move |record, sink| {
        page::write_plan(say, (record, &filled), before, sink)
    })
    .await
}

async fn lifter(
    State(app): State<App>,
    headers: HeaderMap,
    name: Result<Path<String>, axum::extract::rejection::PathRejection>,
) -> Result<Response, Response> {
    if let Some(form) = form_instead(&app, &headers) {
        return Ok(form);
    }
    let Ok(Path(name)) = name else {
        let problem = Problem::new(StatusCode::BAD_REQUEST, w::NAME_NO_TEXT);
        return Err(problem.into_response());
    };
    let (say, filled) = (app.language(&headers), app.desk.filled());
    stream_page(&app, move |record, sink| {
        lifter_page::write(say, (record, &filled), (&name, Nav::Coach), sink)
    })
    .await
}

/// A page that is written while it is read.
pub(crate) async fn stream_page(
    app: &App,
    write: impl FnOnce(
        Option<&journal::RecordReader>,
        &mut crate::stream::Sink,
    ) -> Result<(), crate::stream::Stop>
    + Send
    + 'static,
) -> Result<Response, Response> {
    match app.source.stream(write).await {
        Ok(body) => Ok(answer(HTML, body).into_response()),
        Err(problem) => Err(problem.into_response()),
    }
}

async fn counter_page(State(app): State<App>, headers: HeaderMap) -> Response {
    form_instead(&app, &headers).unwrap_or_else(|| {
        let counter = app.desk.counter();
        page_of(counter::page(app.language(&headers), &counter, None)).into_response()
    })
}

async fn blank_xlsx(
    State(app): State<App>,
    headers: HeaderMap,
) -> Result<impl IntoResponse, Problem> {
    let [xlsx, _] = blanks(&app, &headers)?;
    Ok(download("blank-plan.xlsx", XLSX, xlsx))
}

async fn blank_csv(
    State(app): State<App>,
    headers: HeaderMap,
) -> Result<impl IntoResponse, Problem> {
    let [_, csv] = blanks(&app, &headers)?;
    Ok(download("blank-plan.csv", CSV, csv))
}

fn blanks(app: &App, headers: &HeaderMap) -> Result<[Body; 2], Problem> {
    coach_or_refusal(app, headers)?;
    let blanks = app.desk.blanks();
    if blanks.iter().any(|blank| blank.is_empty()) {
        return Err(Problem::new(StatusCode::NOT_FOUND, w::NO_BLANKS));
    }
    Ok(blanks.map(|blank| Body::from(blank.to_vec())))
}

async fn csv(State(app): State<App>, headers: HeaderMap) -> Result<impl IntoResponse, Problem> {
    coach_or_refusal(&app, &headers)?;
    let body = app.source.stream(csv_file::write).await?;
    Ok(download("pinladder-record.csv", CSV, body))
}

async fn json(State(app): State<App>, headers: HeaderMap) -> Result<impl IntoResponse, Problem> {
    coach_or_refusal(&app, &headers)?;
    let body = app.source.stream(json_file::write).await?;
    Ok(download("pinladder-record.json", JSON, body))
}

async fn database(
    State(app): State<App>,
    headers: HeaderMap,
) -> Result<impl IntoResponse, Problem> {
    coach_or_refusal(&app, &headers)?;
    let body = app.source.stream_database(database_file::write).await?;
    Ok(download("pinladder-journal.sqlite", SQLITE, body))
}

async fn live(State(app): State<App>) -> Result<impl IntoResponse, Problem> {
    let body = app.seats.follow(app.desk.board())?;
    Ok(answer(EVENTS, body))
}

async fn nothing_here() -> Problem {
    Problem::new(StatusCode::NOT_FOUND, w::NOTHING_HERE)
}

pub(crate) fn page_of(page: maud::Markup) -> impl IntoResponse {
    answer(HTML, Body::from(page.into_string()))
}

fn answer(kind: &'static str, body: Body) -> impl IntoResponse {
    ([(header::CONTENT_TYPE, kind)], body)
}

fn download(name: &str, kind: &'static str, body: Body) -> impl IntoResponse {
    let name = format!("attachment; filename=\"{name}\"");
    ([(header::CONTENT_DISPOSITION, name)], answer(kind, body))
}

/// The day of `before=` in a query; other parts are of no account.
fn before(query: Option<&str>) -> Result<Option<NaiveDate>, Problem> {
    let mut parts = query.unwrap_or_default().split('&');
    let Some(day) = parts.find_map(|part| part.strip_prefix("before=")) else {
        return Ok(None);
    };
    let is_day = day.len() == 10 && day.bytes().all(|b| b.is_ascii_digit() || b == b'-');
    let day = day.parse().ok().filter(|_| is_day);
    day.map(Some)
        .ok_or(Problem::new(StatusCode::BAD_REQUEST, w::NO_DAY))
}
