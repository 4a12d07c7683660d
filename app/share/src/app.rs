//! What every handler has, and the forms in which it answers.
use crate::cookies;
use crate::counts::Counts;
use crate::desk::Desk;
use crate::seats::Seats;
use crate::stream::{Places, Sink, Source, Stop};
use crate::tls::Identity;
use axum::body::Body;
use axum::http::{HeaderMap, header};
use axum::response::{IntoResponse, Response};
use journal::RecordReader;
use std::net::IpAddr;
use std::sync::Arc;
use tokio::sync::Semaphore;
use view::Language;

/// How the page is reached.
#[derive(Debug, Clone, Default)]
pub struct Front {
    /// The certificate under which it is served; `None` without TLS.
    pub identity: Option<Identity>,
    /// Names by which it is asked for, beside addresses and those in .local.
    pub hosts: Vec<String>,
    /// Proxies that are believed when they say who asks.
    pub proxies: Vec<IpAddr>,
}

/// What every handler has.
#[derive(Debug, Clone)]
pub(crate) struct App {
    pub(crate) source: Source,
    pub(crate) desk: Desk,
    pub(crate) seats: Seats,
    /// Its cookies only travel under TLS where it has one.
    pub(crate) identity: Option<Identity>,
    pub(crate) hosts: Arc<[String]>,
    pub(crate) proxies: Arc<[IpAddr]>,
    /// Files are taken in one after the other.
    pub(crate) uploads: Arc<Semaphore>,
    pub(crate) counts: Counts,
}

impl App {
    pub(crate) fn new(places: Places, desk: Desk, front: Front) -> Self {
        Self {
            source: Source::new(places),
            desk,
            seats: Seats::default(),
            identity: front.identity,
            hosts: front.hosts.into(),
            proxies: front.proxies.into(),
            uploads: Arc::new(Semaphore::new(1)),
            counts: Counts::default(),
        }
    }

    /// Whether a request comes with a coach's session.
    pub(crate) fn is_coach(&self, headers: &HeaderMap) -> bool {
        cookies::cookie(headers, cookies::COACH).is_some_and(|token| self.desk.is_coach(token))
    }

    /// The language of a page: the one chosen for this browser, else the kiosk's.
    pub(crate) fn language(&self, headers: &HeaderMap) -> Language {
        cookies::chosen_language(headers).unwrap_or_else(|| self.desk.language())
    }
}

pub(crate) const HTML: &str = "text/html; charset=utf-8";

/// A page that is written while it is read.
pub(crate) async fn stream_page(
    app: &App,
    write: impl FnOnce(Option<&RecordReader>, &mut Sink) -> Result<(), Stop> + Send + 'static,
) -> Result<Response, Response> {
    match app.source.stream(write).await {
        Ok(body) => Ok(answer(HTML, body).into_response()),
        Err(problem) => Err(problem.into_response()),
    }
}

pub(crate) fn page_of(page: maud::Markup) -> impl IntoResponse {
    answer(HTML, Body::from(page.into_string()))
}

pub(crate) fn answer(kind: &'static str, body: Body) -> impl IntoResponse {
    ([(header::CONTENT_TYPE, kind)], body)
}

pub(crate) fn download(name: &str, kind: &'static str, body: Body) -> impl IntoResponse {
    let name = format!("attachment; filename=\"{name}\"");
    ([(header::CONTENT_DISPOSITION, name)], answer(kind, body))
}
