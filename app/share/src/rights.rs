//! Who may ask for what: a coach who has signed in, or a program of the gym's with a token
//! (Authorization: Bearer, RFC 6750).
//!
//! Refuses: tokens in addresses; a session that comes along with a token.
use crate::app::App;
use crate::problem::Problem;
use crate::tokens::May;
use crate::words as w;
use axum::http::{HeaderMap, StatusCode, header};

/// The token that a request comes with; `None` without the header.
pub(crate) fn bearer(headers: &HeaderMap) -> Option<&str> {
    let line = headers.get(header::AUTHORIZATION)?.to_str().ok()?;
    let (scheme, token) = line.split_once(' ')?;
    let is_bearer = scheme.eq_ignore_ascii_case("bearer");
    is_bearer.then(|| token.trim())
}

fn may(app: &App, headers: &HeaderMap) -> Result<May, Problem> {
    if let Some(token) = bearer(headers) {
        let bad = Problem::new(StatusCode::UNAUTHORIZED, w::BAD_TOKEN);
        return app.desk.token_may(token).ok_or(bad);
    }
    let first = Problem::new(StatusCode::UNAUTHORIZED, w::SIGN_IN_FIRST);
    app.is_coach(headers).then_some(May::Plans).ok_or(first)
}

/// Lets a reader in; a program does not want a form.
pub(crate) fn reads(app: &App, headers: &HeaderMap) -> Result<(), Problem> {
    may(app, headers).map(|_| ())
}

/// Lets in whoever may hand in plans.
pub(crate) fn hands_in(app: &App, headers: &HeaderMap) -> Result<(), Problem> {
    match may(app, headers)? {
        May::Plans => Ok(()),
        May::Read => Err(Problem::new(StatusCode::FORBIDDEN, w::TOKEN_READS)),
    }
}
