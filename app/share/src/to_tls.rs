//! The way on for whoever asks plainly where the page is under TLS: bookmarks and typed addresses
//! of the time before still lead to it.
//!
//! Refuses: showing anything, and taking a form; what was typed into it has travelled readable.
use crate::problem::Problem;
use crate::words as w;
use axum::Router;
use axum::extract::Request;
use axum::http::uri::Authority;
use axum::http::{Method, StatusCode, header};
use axum::response::{IntoResponse as _, Redirect, Response};

/// Answers every address.
pub(crate) fn router() -> Router {
    Router::new().fallback(lead_on)
}

async fn lead_on(request: Request) -> Response {
    let method = request.method();
    if *method != Method::GET && *method != Method::HEAD {
        return Problem::new(StatusCode::FORBIDDEN, w::ONLY_TLS).into_response();
    }
    let host = request.headers().get(header::HOST);
    let host = host.and_then(|host| host.to_str().ok()?.parse::<Authority>().ok());
    let Some(host) = host.filter(|host| !host.as_str().contains('@')) else {
        return Problem::new(StatusCode::BAD_REQUEST, w::ONE_HOST).into_response();
    };
    let path = request
        .uri()
        .path_and_query()
        .map_or("/", |path| path.as_str());
    // Not for good: the owner may turn TLS off again.
    Redirect::temporary(&format!("https://{host}{path}")).into_response()
}
