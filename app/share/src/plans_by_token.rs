//! Plans that a program hands in: read and told as the page shows them, taken by a second request
//! that says what was told.
//!
//! Refuses: tokens that may only read; a plan in one request, unseen.
use crate::app::{App, answer};
use crate::desk_page::Told;
use crate::problem::Problem;
use crate::query::Query;
use crate::rights::hands_in;
use crate::token;
use crate::upload::raw;
use crate::words as w;
use axum::body::Body;
use axum::extract::{Path, RawQuery, Request, State};
use axum::http::{HeaderMap, HeaderValue, StatusCode, header};
use axum::response::{IntoResponse as _, Response};
use serde::Serialize;
use view::Language;
use view::desk::{Errand, PlanFile, PlanIn};

const JSON: &str = "application/json";
const SAY: Language = Language::English;
/// Endings of plans.
const ENDINGS: [&str; 4] = [".csv", ".tsv", ".xlsx", ".ods"];

/// A plan as it was understood.
#[derive(Serialize)]
struct Understood<'p> {
    id: &'p str,
    /// What the second request says.
    mark: &'p str,
    can_take: bool,
    /// Rows that were understood.
    rows: usize,
    changes: Vec<Change<'p>>,
    faults: Vec<&'p str>,
    /// What is odd of it, or was left out.
    odd: Vec<&'p str>,
}

/// What taking it would change for one lifter, days.
#[derive(Serialize)]
struct Change<'p> {
    lifter: &'p str,
    first: String,
    last: String,
    new: usize,
    changed: usize,
    same: usize,
}

impl<'p> Understood<'p> {
    fn of(plan: &'p PlanIn) -> Self {
        let read = &plan.read;
        let faults = read
            .plans
            .iter()
            .filter_map(|(_, read)| read.as_ref().err());
        Self {
            id: &read.id,
            mark: &plan.mark,
            can_take: read.can_take,
            rows: plan.rows_count,
            changes: read
                .changes
                .iter()
                .map(|change| Change {
                    lifter: &change.lifter,
                    first: change.days.0.to_string(),
                    last: change.days.1.to_string(),
                    new: change.new,
                    changed: change.changed,
                    same: change.same,
                })
                .collect(),
            faults: faults.flatten().map(|fault| fault.to(SAY)).collect(),
            odd: read.passed.iter().map(|odd| odd.to(SAY)).collect(),
        }
    }
}

/// A plan's file as the body, its name in the query.
pub(crate) async fn hand_in(
    State(app): State<App>,
    headers: HeaderMap,
    RawQuery(query): RawQuery,
    request: Request,
) -> Result<Response, Problem> {
    hands_in(&app, &headers)?;
    let name = Query::read(query.as_deref())?
        .text("name")?
        .unwrap_or_default();
    let small = name.to_lowercase();
    if !ENDINGS.iter().any(|end| small.ends_with(end)) {
        return Err(Problem::new(
            StatusCode::UNSUPPORTED_MEDIA_TYPE,
            w::PLAN_KIND,
        ));
    }
    let Ok(_turn) = app.uploads.try_acquire() else {
        return Err(Problem::new(StatusCode::SERVICE_UNAVAILABLE, w::PLAN_BUSY));
    };
    let bytes = raw(request).await?;
    // The token may have been taken back while the file came.
    hands_in(&app, &headers)?;
    let failed = Problem::new(StatusCode::INTERNAL_SERVER_ERROR, w::NOT_JUDGED);
    let id = token::fresh().ok_or(failed)?;
    let file = PlanFile {
        id: id.clone(),
        name,
        bytes,
    };
    let told = app.desk.hand_on(Errand::ReadPlan(Box::new(file))).await;
    if told != Told::Handed {
        return Err(not(&told));
    }
    let counter = app.desk.counter();
    let plan = counter.handed.iter().find(|plan| plan.read.id == id);
    let plan = plan.ok_or(Problem::new(StatusCode::CONFLICT, w::PLAN_GONE))?;
    let text = serde_json::to_vec(&Understood::of(plan)).map_err(|_| failed)?;
    let mut response = answer(JSON, Body::from(text)).into_response();
    if let Ok(place) = HeaderValue::from_str(&format!("/plans/{id}")) {
        response.headers_mut().insert(header::LOCATION, place);
    }
    Ok(response)
}

/// Takes it, if what it would change is as it was told: `mark=` of the first answer.
pub(crate) async fn take(
    State(app): State<App>,
    headers: HeaderMap,
    Path(id): Path<String>,
    RawQuery(query): RawQuery,
) -> Result<Response, Problem> {
    hands_in(&app, &headers)?;
    let mark = Query::read(query.as_deref())?.text("mark")?;
    let mark = mark.ok_or(Problem::new(StatusCode::BAD_REQUEST, w::FIELD))?;
    let told = app.desk.hand_on(Errand::TakePlan { id, mark }).await;
    let Told::TookPlan(rows) = told else {
        return Err(not(&told));
    };
    let text = format!("{{\"took\":{rows}}}");
    Ok(answer(JSON, Body::from(text)).into_response())
}

/// Why nothing was taken. What the kiosk says in its own words goes to the log.
fn not(told: &Told) -> Problem {
    let known = [
        (Told::PlanGone, StatusCode::NOT_FOUND, w::PLAN_GONE),
        (Told::PlanFaults, StatusCode::CONFLICT, w::PLAN_FAULTS),
        (Told::GymChanged, StatusCode::CONFLICT, w::GYM_CHANGED),
        (Told::DaysChanged, StatusCode::CONFLICT, w::DAYS_CHANGED),
        (
            Told::NoOrders,
            StatusCode::SERVICE_UNAVAILABLE,
            w::NO_ORDERS,
        ),
    ];
    let found = known.iter().find(|(known, ..)| known == told);
    let (status, words) = found.map_or_else(
        || {
            tracing::warn!(?told, "a program's plan was not taken");
            (StatusCode::SERVICE_UNAVAILABLE, w::NOT_YET)
        },
        |(_, status, words)| (*status, *words),
    );
    Problem::new(status, words)
}
