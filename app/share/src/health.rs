//! Whether the page and its kiosk live (`/healthz`), and figures in the Prometheus text form
//! (`/metrics`, exposition format 0.0.4).
//!
//! Refuses: names of lifters; figures to machines that are neither this one nor known by a token.
use crate::app::{App, answer};
use crate::problem::Problem;
use crate::request_rules::Peer;
use crate::rights::reads;
use crate::words as w;
use axum::Extension;
use axum::body::Body;
use axum::extract::State;
use axum::http::{HeaderMap, StatusCode};
use axum::response::IntoResponse;

const TEXT: &str = "text/plain; version=0.0.4; charset=utf-8";
const PLAIN: &str = "text/plain; charset=utf-8";

/// "ok", as long as the kiosk ticks and its record can be read.
pub(crate) async fn healthz(State(app): State<App>) -> Result<impl IntoResponse, Problem> {
    let down = Problem::new(StatusCode::SERVICE_UNAVAILABLE, w::NOT_UP);
    if !app.desk.ticks() || app.source.upto().await.is_none() {
        return Err(down);
    }
    Ok(answer(PLAIN, Body::from("ok\n")))
}

/// The figures.
pub(crate) async fn metrics(
    State(app): State<App>,
    peer: Option<Extension<Peer>>,
    headers: HeaderMap,
) -> Result<impl IntoResponse, Problem> {
    let near = peer.is_some_and(|Extension(Peer(from))| from.to_canonical().is_loopback());
    if !near {
        let far = Problem::new(StatusCode::UNAUTHORIZED, w::NEAR_ONLY);
        reads(&app, &headers).map_err(|_| far)?;
    }
    let upto = app.source.upto().await;
    let mut text: String = gauges(&app, upto).iter().map(gauge).collect();
    let name = "pinladder_requests_total";
    let help = "Requests answered, by class of status.";
    text.push_str(&format!("# HELP {name} {help}\n# TYPE {name} counter\n"));
    for (class, count) in app.counts.all() {
        text.push_str(&format!("{name}{{class=\"{class}xx\"}} {count}\n"));
    }
    Ok(answer(TEXT, Body::from(text)))
}

/// Name, what it tells, value.
type Gauge = (&'static str, &'static str, u64);

fn gauge((name, help, value): &Gauge) -> String {
    format!(
        "# HELP pinladder_{name} {help}\n# TYPE pinladder_{name} gauge\npinladder_{name} {value}\n"
    )
}

fn gauges(app: &App, upto: Option<u64>) -> Vec<Gauge> {
    let (desk, counter) = (&app.desk, app.desk.counter());
    let count = |n: usize| u64::try_from(n).unwrap_or(u64::MAX);
    let due = counter.due.iter();
    let waits = count(due.filter(|line| line.concern.waits()).count());
    let night = counter.night.as_ref();
    let night = u64::from(night.is_none_or(|night| night.went.is_ok()));
    let lifters = count(desk.laid().units.len());
    let mut all = vec![
        ("up", "Whether the kiosk ticks.", u64::from(desk.ticks())),
        (
            "boards",
            "Floor boards that follow.",
            count(desk.board_count()),
        ),
        (
            "record_event",
            "Last event of the journal in the record.",
            upto.unwrap_or(0),
        ),
        (
            "record_readable",
            "Whether the record can be read.",
            u64::from(upto.is_some()),
        ),
        ("lifters", "Lifters of the gym.", lifters),
        (
            "waiting_for_coach",
            "Lines that wait for the coach's word.",
            waits,
        ),
        (
            "plans_not_taken",
            "Plans that were read and not taken.",
            count(counter.handed.len()),
        ),
        (
            "night_copy_ok",
            "Whether the last nightly copy went well.",
            night,
        ),
    ];
    let memory = resident_bytes();
    all.extend(memory.map(|bytes| ("resident_memory_bytes", "Memory of the process.", bytes)));
    all
}

/// As the system tells it (proc(5), VmRSS); `None` where it does not.
fn resident_bytes() -> Option<u64> {
    let status = std::fs::read_to_string("/proc/self/status").ok()?;
    let line = status
        .lines()
        .find_map(|line| line.strip_prefix("VmRSS:"))?;
    let kilobytes = line.trim().strip_suffix("kB")?.trim();
    kilobytes.parse::<u64>().ok().map(|kb| kb * 1_024)
}
