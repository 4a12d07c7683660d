//! What is answered when something is wrong: problem details (RFC 9457).
//!
//! Refuses: file names, SQL and other insides; those go to the log.
use axum::http::{HeaderValue, StatusCode, header};
use axum::response::{IntoResponse, Response};
use serde::Serialize;

/// A status and what its reader may know of the reason.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) struct Problem {
    pub(crate) status: StatusCode,
    pub(crate) detail: &'static str,
}

/// The body. The type "about:blank" says that the title is the status's own phrase.
#[derive(Serialize)]
struct Details {
    r#type: &'static str,
    title: &'static str,
    status: u16,
    detail: &'static str,
}

impl Problem {
    pub(crate) const fn new(status: StatusCode, detail: &'static str) -> Self {
        Self { status, detail }
    }
}

impl IntoResponse for Problem {
    fn into_response(self) -> Response {
        let details = Details {
            r#type: "about:blank",
            title: self.status.canonical_reason().unwrap_or("Error"),
            status: self.status.as_u16(),
            detail: self.detail,
        };
        let body = serde_json::to_vec(&details).expect("texts and a number always write");
        let mut response = (self.status, body).into_response();
        let headers = response.headers_mut();
        headers.insert(
            header::CONTENT_TYPE,
            HeaderValue::from_static("application/problem+json"),
        );
        if self.status == StatusCode::METHOD_NOT_ALLOWED {
            headers.insert(header::ALLOW, HeaderValue::from_static("GET, HEAD"));
        }
        if self.status == StatusCode::SERVICE_UNAVAILABLE {
            headers.insert(header::RETRY_AFTER, HeaderValue::from_static("5"));
        }
        response
    }
}
