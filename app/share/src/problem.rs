//! What is answered when something is wrong: problem details (RFC 9457).
//!
//! Refuses: file names, SQL and other insides; those go to the log.
use crate::words as w;
use axum::http::{HeaderValue, StatusCode, header};
use axum::response::{IntoResponse, Response};
use serde::Serialize;
use text::Phrase;
use view::Language;

/// A status and what its reader may know of the reason.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) struct Problem {
    pub(crate) status: StatusCode,
    pub(crate) detail: Phrase,
    /// Seconds after which it may be tried again.
    wait_s: Option<u64>,
    /// The methods that there are.
    allow: Option<&'static str>,
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
    pub(crate) const fn new(status: StatusCode, detail: Phrase) -> Self {
        Self {
            status,
            detail,
            wait_s: None,
            allow: None,
        }
    }

    /// Too many wrong codes.
    pub(crate) const fn wait(seconds: u64) -> Self {
        let mut problem = Self::new(StatusCode::TOO_MANY_REQUESTS, w::TOO_MANY_CODES);
        problem.wait_s = Some(seconds);
        problem
    }

    /// Another method than those of the address.
    pub(crate) const fn method(allow: &'static str) -> Self {
        let mut problem = Self::new(StatusCode::METHOD_NOT_ALLOWED, w::METHOD);
        problem.allow = Some(allow);
        problem
    }
}

impl IntoResponse for Problem {
    fn into_response(self) -> Response {
        let details = Details {
            r#type: "about:blank",
            title: self.status.canonical_reason().unwrap_or("Error"),
            status: self.status.as_u16(),
            detail: Language::English.pick(self.detail),
        };
        let body = serde_json::to_vec(&details).expect("texts and a number always write");
        let mut response = (self.status, body).into_response();
        let headers = response.headers_mut();
        headers.insert(
            header::CONTENT_TYPE,
            HeaderValue::from_static("application/problem+json"),
        );
        if let Some(allow) = self.allow {
            headers.insert(header::ALLOW, HeaderValue::from_static(allow));
        }
        if self.status == StatusCode::UNAUTHORIZED {
            // RFC 9110 asks for a challenge; no scheme of its registry is a form's.
            let challenge = HeaderValue::from_static("Cookie realm=\"coach\", form=\"/sign-in\"");
            headers.insert(header::WWW_AUTHENTICATE, challenge);
            headers.append(header::WWW_AUTHENTICATE, HeaderValue::from_static("Bearer"));
        }
        let wait_s = match self.status {
            StatusCode::SERVICE_UNAVAILABLE => Some(5),
            _ => self.wait_s,
        };
        if let Some(seconds) = wait_s {
            headers.insert(header::RETRY_AFTER, HeaderValue::from(seconds));
        }
        // For the guard, which knows whether a person asks, and in which language.
        response.extensions_mut().insert(self);
        response
    }
}
