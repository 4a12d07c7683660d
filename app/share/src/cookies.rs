//! The cookies of the pages: who is signed in, whose own record is open, which language was chosen.
//!
//! Refuses: to be read by scripts, and to be sent along with what another site asks.
use crate::token;
use axum::body::Body;
use axum::http::{HeaderMap, HeaderValue, header};
use axum::response::Response;
use view::Language;

pub(crate) const COACH: &str = "pinladder-coach";
pub(crate) const OWN: &str = "pinladder-own";
pub(crate) const KNOWN: &str = "pinladder-known";
pub(crate) const LANGUAGE: &str = "pinladder-language";

/// The language that this browser chose.
pub(crate) fn chosen_language(headers: &HeaderMap) -> Option<Language> {
    Language::of_code(any_cookie(headers, LANGUAGE)?)
}

/// The value of a cookie, if it has the form of a token.
pub(crate) fn cookie<'h>(headers: &'h HeaderMap, name: &str) -> Option<&'h str> {
    any_cookie(headers, name).filter(|value| token::is_token(value))
}

fn any_cookie<'h>(headers: &'h HeaderMap, name: &str) -> Option<&'h str> {
    let lines = headers.get_all(header::COOKIE).iter();
    let mut pairs = lines
        .filter_map(|line| line.to_str().ok())
        .flat_map(|line| line.split(';'))
        .filter_map(|pair| pair.trim().split_once('='));
    pairs.find(|(key, _)| *key == name).map(|(_, value)| value)
}

/// Out of reach of scripts and of other sites (RFC 6265bis).
pub(crate) fn set_cookie(
    response: &mut Response<Body>,
    tls: bool,
    name: &str,
    value: &str,
    lasts_s: u64,
) {
    let secure = if tls { "; Secure" } else { "" };
    let text =
        format!("{name}={value}; Path=/; Max-Age={lasts_s}; HttpOnly; SameSite=Strict{secure}");
    let header_value =
        HeaderValue::from_str(&text).expect("tokens and languages are plain letters");
    response
        .headers_mut()
        .append(header::SET_COOKIE, header_value);
}
