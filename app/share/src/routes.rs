//! The addresses that are answered; `openapi.json` tells the same to programs.
//!
//! Refuses: all others, with a 404 that says which there are; the record to whoever has no right
//! to it.
use crate::app::{App, Front, answer, download, page_of, stream_page};
use crate::desk::Desk;
use crate::look::Look;
use crate::masthead::{Nav, Tab};
use crate::problem::Problem;
use crate::query::Query;
use crate::request_log;
use crate::request_rules::{Peer, guard};
use crate::rights::reads;
use crate::stream::{Places, Sink, Stop};
use crate::tls::Identity;
use crate::words as w;
use crate::{
    auth, board, csv_file, database_file, deeds, desk_page, documents, entity_tag, forwarded, gzip,
    health, json_file, lifter_page, own, page, plans, plans_by_token, public_pages, token_acts,
    token_page, upload, week,
};
use axum::body::Body;
use axum::extract::{DefaultBodyLimit, Path, RawQuery, State};
use axum::http::{HeaderMap, StatusCode, header};
use axum::response::{IntoResponse, Redirect, Response};
use axum::routing::{get, post};
use axum::{Extension, Router, middleware};
use chrono::NaiveDate;
use journal::{RecordReader, SetsOf};
use std::net::Ipv4Addr;

/// Everything that is shown. Each answer opens the record anew, reads one moment of it, and
/// writes nothing; orders of the coach's desk are handed on.
///
/// - `/`, `/sign-in`, `/language`, `/board`, `/board/live`, `/openapi.json`, `/root.crt`: for
///   anybody.
/// - `/coach`, `/coach/today`, `/coach/week`, `/coach/plan`, `/coach/plans`, `/coach/desk`, `/coach/lifter/NAME`, `/coach/blank.xlsx` and `.csv`,
///   `/record.csv`, `/record.json`, `/journal.sqlite`: for a coach who has signed in.
/// - `/plan.json`, `/due.json`, `/lifters.json`, `/sheets.json`, `/metrics` and the record: for a
///   program with a token too; `/plans`: for one that may hand in plans. `/board.json`, `/healthz`:
///   for anybody.
/// - `/mine/TOKEN`: for the lifter whose link it is, once.
pub fn router(places: Places, desk: Desk, front: Front) -> Router {
    let app = App::new(places, desk, front);
    Router::new()
        .route("/", get(front_page))
        .route("/style.css", get(async || answer(CSS, Body::from(STYLE))))
        .route(
            "/board.css",
            get(async || answer(CSS, Body::from(BOARD_CSS))),
        )
        .route("/icon.svg", get(async || answer(SVG, Body::from(ICON))))
        .route("/board.js", get(async || answer(JS, Body::from(BOARD_JS))))
        .route(
            "/openapi.json",
            get(async || answer(JSON, Body::from(OPENAPI))),
        )
        .route("/root.crt", get(root))
        .route("/board", get(board_page))
        .route("/board/live", get(live))
        .route("/sign-in", get(auth::sign_in_page).post(auth::sign_in))
        .route("/sign-out", post(auth::sign_out))
        .route("/language", post(auth::choose_language))
        .route("/coach", get(sessions))
        .route("/coach/today", get(deeds::page).post(deeds::post))
        .route("/coach/week", get(week::page).post(week::post))
        .route("/coach/plan", get(plan))
        .route(
            "/coach/plans",
            get(plans::page)
                .post(plans::hand_in)
                .layer(DefaultBodyLimit::max(upload::FORM_MAX)),
        )
        .route("/coach/plans/{id}", get(plans::one).post(plans::take))
        .route("/coach/lifter/{name}", get(lifter))
        .route("/coach/desk", get(counter_page).post(auth::order))
        .route("/coach/tokens", post(token_acts::post))
        .route("/coach/blank.xlsx", get(blank_xlsx))
        .route("/coach/blank.csv", get(blank_csv))
        .route("/record.csv", get(csv))
        .route("/record.json", get(json))
        .route("/journal.sqlite", get(database))
        .route("/plan.json", get(documents::plan))
        .route("/due.json", get(documents::due))
        .route("/lifters.json", get(documents::lifters))
        .route("/sheets.json", get(documents::sheets))
        .route("/board.json", get(documents::board))
        .route("/plans", post(plans_by_token::hand_in))
        .route("/plans/{id}", post(plans_by_token::take))
        .route("/healthz", get(health::healthz))
        .route("/metrics", get(health::metrics))
        .route("/mine/{token}/record.csv", get(own::csv))
        .route("/mine/{token}/record.json", get(own::json))
        .route("/mine/{token}", get(auth::mine).post(auth::open_mine))
        .fallback(nothing_here)
        .with_state(app.clone())
        .layer(middleware::from_fn(entity_tag::judge))
        .layer(middleware::from_fn(gzip::compress))
        .layer(middleware::from_fn_with_state(app.clone(), guard))
        .layer(middleware::from_fn_with_state(
            app.clone(),
            request_log::log,
        ))
        .layer(middleware::from_fn_with_state(app, forwarded::resolve))
}

const CSS: &str = "text/css; charset=utf-8";
const SVG: &str = "image/svg+xml";
const JS: &str = "text/javascript; charset=utf-8";
// Both parameters are RFC 4180's.
const CSV: &str = "text/csv; charset=utf-8; header=present";
const JSON: &str = "application/json";
const XLSX: &str = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";
const SQLITE: &str = "application/vnd.sqlite3";
const EVENTS: &str = "text/event-stream";
const CERTIFICATE: &str = "application/x-x509-ca-cert";

const STYLE: &str = include_str!("style.css");
const BOARD_CSS: &str = include_str!("board.css");
const ICON: &str = include_str!("icon.svg");
const BOARD_JS: &str = include_str!("board.js");
const OPENAPI: &str = include_str!("openapi.json");

/// The way to the form for whoever is no coach; `None` lets a coach in.
fn form_instead(app: &App, headers: &HeaderMap) -> Option<Response> {
    let to_form = || Redirect::to("/sign-in").into_response();
    (!app.is_coach(headers)).then(to_form)
}

async fn front_page(State(app): State<App>, headers: HeaderMap) -> impl IntoResponse {
    let root = app.identity.as_ref().map(Identity::root_fingerprint);
    let root = root.filter(|print| !print.is_empty());
    let today = app.desk.laid().today;
    page_of(public_pages::front(
        app.language(&headers),
        root.as_deref(),
        today.as_ref(),
    ))
}

/// The root that a phone is told to trust, once its owner has compared what the kiosk shows.
async fn root(State(app): State<App>) -> Result<impl IntoResponse, Problem> {
    let root = app.identity.as_ref().and_then(Identity::root);
    let root = root.ok_or(Problem::new(StatusCode::NOT_FOUND, w::NO_ROOT))?;
    let body = Body::from(root.to_vec());
    Ok(download("pinladder-root.crt", CERTIFICATE, body))
}

/// A TV has no choice of its own: it speaks as the kiosk does.
async fn board_page(State(app): State<App>) -> impl IntoResponse {
    let board = app.desk.board_of_now();
    page_of(public_pages::board(app.desk.language(), board.as_deref()))
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
    let (say, laid) = (app.language(&headers), app.desk.laid());
    stream_page(&app, move |record, sink| {
        page::write(say, (record, &laid), before, sink)
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
    let (say, laid) = (app.language(&headers), app.desk.laid());
    stream_page(&app, move |record, sink| {
        page::write_plan(say, (record, &laid), before, sink)
    })
    .await
}

async fn lifter(
    State(app): State<App>,
    headers: HeaderMap,
    RawQuery(query): RawQuery,
    name: Result<Path<String>, axum::extract::rejection::PathRejection>,
) -> Result<Response, Response> {
    if let Some(form) = form_instead(&app, &headers) {
        return Ok(form);
    }
    let Ok(Path(name)) = name else {
        let problem = Problem::new(StatusCode::BAD_REQUEST, w::NAME_NO_TEXT);
        return Err(problem.into_response());
    };
    let look = Look::read(query.as_deref()).map_err(IntoResponse::into_response)?;
    let (say, laid) = (app.language(&headers), app.desk.laid());
    let due = app.desk.counter().due;
    stream_page(&app, move |record, sink| {
        let of = lifter_page::Of {
            lifter: &name,
            nav: Nav::Coach(Tab::Lifter),
            look: &look,
            due: &due,
            home: None,
        };
        lifter_page::write(say, (record, &laid), &of, sink)
    })
    .await
}

async fn counter_page(State(app): State<App>, headers: HeaderMap) -> Response {
    form_instead(&app, &headers).unwrap_or_else(|| {
        let say = app.language(&headers);
        let tokens = token_page::part(&app, say, None);
        let desk = (&app.desk.counter(), &app.desk.laid());
        page_of(desk_page::page(say, desk, None, &tokens)).into_response()
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
    reads(app, headers)?;
    let blanks = app.desk.blanks();
    if blanks.iter().any(|blank| blank.is_empty()) {
        return Err(Problem::new(StatusCode::NOT_FOUND, w::NO_BLANKS));
    }
    Ok(blanks.map(|blank| Body::from(blank.to_vec())))
}

async fn csv(
    State(app): State<App>,
    headers: HeaderMap,
    RawQuery(query): RawQuery,
) -> Result<impl IntoResponse, Problem> {
    let file = ("csv", "pinladder-record.csv", CSV);
    sets(&app, (&headers, query.as_deref()), file, csv_file::write).await
}

async fn json(
    State(app): State<App>,
    headers: HeaderMap,
    RawQuery(query): RawQuery,
) -> Result<impl IntoResponse, Problem> {
    let file = ("json", "pinladder-record.json", JSON);
    sets(&app, (&headers, query.as_deref()), file, json_file::write).await
}

/// The sets that are asked for, in one form of file: its ending, its name, its kind.
async fn sets(
    app: &App,
    (headers, query): (&HeaderMap, Option<&str>),
    (ending, name, kind): (&'static str, &'static str, &'static str),
    write: fn(Option<&RecordReader>, &SetsOf, &mut Sink) -> Result<(), Stop>,
) -> Result<impl IntoResponse + use<>, Problem> {
    reads(app, headers)?;
    let of = Query::read(query)?.sets()?;
    let tag = record_tag(app, ending, &of).await;
    let body = app
        .source
        .stream(move |record, sink| write(record, &of, sink))
        .await?;
    Ok((tag, download(name, kind, body)))
}

/// The tag of what is read of the record, without reading it. What is entered between the two makes
/// the answer newer than its tag, and the next one is sent.
async fn record_tag(app: &App, form: &str, of: &SetsOf) -> HeaderMap {
    let mut headers = HeaderMap::new();
    if let Some(version) = app.source.version().await {
        let tag = entity_tag::tag(&format!("{form} {version} {of:?}"));
        headers.insert(header::ETAG, tag);
    }
    headers
}

async fn database(
    State(app): State<App>,
    headers: HeaderMap,
) -> Result<impl IntoResponse, Problem> {
    reads(&app, &headers)?;
    let body = app.source.stream_database(database_file::write).await?;
    Ok(download("pinladder-journal.sqlite", SQLITE, body))
}

async fn live(
    State(app): State<App>,
    peer: Option<Extension<Peer>>,
) -> Result<impl IntoResponse, Problem> {
    let from = peer.map_or(Ipv4Addr::UNSPECIFIED.into(), |Extension(peer)| peer.0);
    let seat = app.seats.sit(from);
    let seat = seat.ok_or(Problem::new(
        StatusCode::SERVICE_UNAVAILABLE,
        w::MANY_BOARDS,
    ))?;
    let body = board::follow(seat, app.desk.board());
    Ok(answer(EVENTS, body))
}

async fn nothing_here() -> Problem {
    Problem::new(StatusCode::NOT_FOUND, w::NOTHING_HERE)
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
