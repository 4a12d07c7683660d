//! Signing in and out, and the link that opens a lifter's own record once.
//!
//! Refuses: guesses beyond a few, codes in addresses, sessions that a script or another site can
//! use.
use crate::attempts::Guesser;
use crate::counter;
use crate::desk::NotIn;
use crate::guard::Peer;
use crate::html::Nav;
use crate::problem::Problem;
use crate::routes::{App, page_of, stream_page};
use crate::words as w;
use crate::{front, lifter_page, token};
use axum::Extension;
use axum::body::{Body, to_bytes};
use axum::extract::{Path, Request, State};
use axum::http::{HeaderMap, HeaderValue, StatusCode, header};
use axum::response::{IntoResponse as _, Redirect, Response};
use std::net::{IpAddr, Ipv4Addr};
use std::time::Duration;
use tokio::time::timeout;
use view::Language;

const COACH: &str = "pinladder-coach";
const OWN: &str = "pinladder-own";
const KNOWN: &str = "pinladder-known";
/// A browser that signed in is known for half a year.
const KNOWN_S: u64 = 180 * 24 * 60 * 60;
const LANGUAGE: &str = "pinladder-language";
/// The chosen language is kept for a year.
const LANGUAGE_S: u64 = 365 * 24 * 60 * 60;
/// Most bytes of the form: a code of 64 characters, each percent-encoded.
const FORM_MAX: usize = 1_024;
/// For the form's body to come.
const FORM: Duration = Duration::from_secs(10);

/// Whether a request comes with a coach's session.
pub(crate) fn is_coach(app: &App, headers: &HeaderMap) -> bool {
    cookie(headers, COACH).is_some_and(|token| app.desk.is_coach(token))
}

pub(crate) async fn sign_in_page(State(app): State<App>, headers: HeaderMap) -> Response {
    if is_coach(&app, &headers) {
        return Redirect::to("/coach/today").into_response();
    }
    let say = app.language(&headers);
    let told = (!app.desk.has_code()).then(|| NotIn::NoCode.words(say));
    page_of(front::sign_in(say, told.as_deref())).into_response()
}

pub(crate) async fn sign_in(
    State(app): State<App>,
    peer: Option<Extension<Peer>>,
    request: Request,
) -> Result<Response, Problem> {
    let say = app.language(request.headers());
    let from = address(peer);
    let guesser = guesser(&app, request.headers(), from);
    let code = field(&read_form(request).await?, "code")?;
    match app.desk.sign_in(code, guesser).await {
        Ok((token, lasts_s)) => {
            tracing::info!(%from, "a coach signed in");
            let mut response = Redirect::to("/coach/today").into_response();
            set_cookie(&mut response, &app, COACH, &token, lasts_s);
            if !matches!(guesser, Guesser::Known(_))
                && let Some(word) = app.desk.known_word()
            {
                set_cookie(&mut response, &app, KNOWN, &word, KNOWN_S);
            }
            Ok(response)
        }
        Err(NotIn::Wait(seconds)) => {
            tracing::warn!(%from, "too many wrong codes");
            Err(Problem::wait(seconds))
        }
        Err(why) => {
            tracing::warn!(%from, ?why, "a coach was not signed in");
            let status = match why {
                NotIn::Failed => StatusCode::INTERNAL_SERVER_ERROR,
                NotIn::NoCode | NotIn::Wrong | NotIn::Wait(_) => StatusCode::FORBIDDEN,
            };
            let page = page_of(front::sign_in(say, Some(&why.words(say))));
            Ok((status, page).into_response())
        }
    }
}

fn address(peer: Option<Extension<Peer>>) -> IpAddr {
    peer.map_or(IpAddr::V4(Ipv4Addr::UNSPECIFIED), |Extension(peer)| peer.0)
}

/// Whoever comes with the word of an earlier sign-in is counted apart from strangers.
fn guesser(app: &App, headers: &HeaderMap, from: IpAddr) -> Guesser {
    app.desk.guesser(cookie(headers, KNOWN), from)
}

/// An order at the coach's desk: a session, and the code again.
pub(crate) async fn order(
    State(app): State<App>,
    headers: HeaderMap,
    peer: Option<Extension<Peer>>,
    request: Request,
) -> Result<Response, Problem> {
    if !is_coach(&app, &headers) {
        return Err(Problem::new(StatusCode::UNAUTHORIZED, w::SIGN_IN_FIRST));
    }
    let guesser = guesser(&app, &headers, address(peer));
    let form = read_form(request).await?;
    let (code, about) = (field(&form, "code")?, field(&form, "about")?);
    let errand = counter::errand(&field(&form, "order")?, &about);
    let errand = errand.ok_or(Problem::new(StatusCode::BAD_REQUEST, w::NO_SUCH_ORDER))?;
    let say = app.language(&headers);
    let (status, told) = match app.desk.order(errand, code, guesser).await {
        Ok(told) => (StatusCode::OK, told.words(say)),
        Err(NotIn::Wait(seconds)) => return Err(Problem::wait(seconds)),
        Err(why) => (StatusCode::FORBIDDEN, why.words(say)),
    };
    let page = counter::page(say, &app.desk.counter(), Some(&told));
    Ok((status, page_of(page)).into_response())
}

pub(crate) async fn sign_out(State(app): State<App>, headers: HeaderMap) -> Response {
    if let Some(token) = cookie(&headers, COACH) {
        app.desk.sign_out(token);
    }
    let mut response = Redirect::to("/").into_response();
    set_cookie(&mut response, &app, COACH, "", 0);
    response
}

/// A lifter's own record: the link opens it once, by a tap, since programs look at links before
/// people do; the session that it gives shows it again until its time is over.
pub(crate) async fn mine(
    State(app): State<App>,
    headers: HeaderMap,
    token: Result<Path<String>, axum::extract::rejection::PathRejection>,
) -> Result<Response, Response> {
    let token = token.map(|Path(token)| token).unwrap_or_default();
    let say = app.language(&headers);
    let own = cookie(&headers, OWN).and_then(|cookie| app.desk.lifter(cookie));
    let again = own.filter(|(_, link)| *link == token::hash(&token));
    let Some((lifter, _)) = again else {
        if token::is_token(&token) && app.desk.is_link(&token) {
            return Ok(page_of(front::open_own(say, &token)).into_response());
        }
        return Err(closed(&app, say, &token));
    };
    let laid = app.desk.laid();
    stream_page(&app, move |record, sink| {
        lifter_page::write(say, (record, &laid), (&lifter, Nav::Own), sink)
    })
    .await
}

/// Opens a lifter's link: from now on this browser alone has it.
pub(crate) async fn open_mine(
    State(app): State<App>,
    headers: HeaderMap,
    token: Result<Path<String>, axum::extract::rejection::PathRejection>,
) -> Response {
    let token = token.map(|Path(token)| token).unwrap_or_default();
    let say = app.language(&headers);
    let opened = token::is_token(&token).then(|| app.desk.open_link(&token));
    let Some((session, lasts_s)) = opened.flatten() else {
        return closed(&app, say, &token);
    };
    let mut response = Redirect::to(&format!("/mine/{token}")).into_response();
    set_cookie(&mut response, &app, OWN, &session, lasts_s);
    response
}

/// That a link opens nothing: no longer, or never.
fn closed(app: &App, say: Language, token: &str) -> Response {
    let known = token::is_token(token) && app.desk.knows_link(token);
    let status = if known {
        StatusCode::GONE
    } else {
        StatusCode::NOT_FOUND
    };
    (status, page_of(front::gone(say))).into_response()
}

/// The fields of a form, percent-encoded (URL Standard, 5.1).
async fn read_form(request: Request) -> Result<Vec<(String, String)>, Problem> {
    let kind = request.headers().get(header::CONTENT_TYPE);
    let kind = kind.and_then(|kind| kind.to_str().ok()).unwrap_or_default();
    let form = kind.split(';').next().unwrap_or_default().trim();
    if !form.eq_ignore_ascii_case("application/x-www-form-urlencoded") {
        return Err(Problem::new(
            StatusCode::UNSUPPORTED_MEDIA_TYPE,
            w::FORM_KIND,
        ));
    }
    let too_long = Problem::new(StatusCode::PAYLOAD_TOO_LARGE, w::FORM_LONG);
    let length = request.headers().get(header::CONTENT_LENGTH);
    let length = length.and_then(|length| length.to_str().ok()?.parse::<u64>().ok());
    if length.is_some_and(|length| length > FORM_MAX as u64) {
        return Err(too_long);
    }
    let body = request.into_body();
    let read = timeout(FORM, to_bytes(body, FORM_MAX)).await;
    let bytes = match read {
        Ok(Ok(bytes)) => bytes,
        Ok(Err(_)) => return Err(too_long),
        Err(_) => {
            return Err(Problem::new(StatusCode::REQUEST_TIMEOUT, w::FORM_SLOW));
        }
    };
    let broken = Problem::new(StatusCode::BAD_REQUEST, w::FORM_BROKEN);
    let text = std::str::from_utf8(&bytes).map_err(|_| broken)?;
    text.split('&')
        .filter(|part| !part.is_empty())
        .map(|part| {
            let (key, value) = part.split_once('=')?;
            Some((decoded(key)?, decoded(value)?))
        })
        .collect::<Option<_>>()
        .ok_or(broken)
}

/// The one field of a name.
fn field(form: &[(String, String)], name: &'static str) -> Result<String, Problem> {
    let mut found = form.iter().filter(|(key, _)| key == name);
    match (found.next(), found.next()) {
        (Some((_, value)), None) => Ok(value.clone()),
        _ => Err(Problem::new(StatusCode::BAD_REQUEST, w::FIELD)),
    }
}

/// A form's value; `None` when it is not percent-encoded text.
fn decoded(text: &str) -> Option<String> {
    let mut bytes = Vec::new();
    let mut rest = text.bytes();
    while let Some(byte) = rest.next() {
        bytes.push(match byte {
            b'+' => b' ',
            b'%' => {
                let high = char::from(rest.next()?).to_digit(16)?;
                let low = char::from(rest.next()?).to_digit(16)?;
                u8::try_from(high * 16 + low).ok()?
            }
            byte => byte,
        });
    }
    String::from_utf8(bytes).ok()
}

/// Chooses the language of the pages for this browser, and leads back to the page where it was
/// chosen.
pub(crate) async fn choose_language(
    State(app): State<App>,
    headers: HeaderMap,
    request: Request,
) -> Result<Response, Problem> {
    let code = field(&read_form(request).await?, "language")?;
    let unknown = Problem::new(StatusCode::BAD_REQUEST, w::NO_SUCH_LANGUAGE);
    let chosen = Language::of_code(&code).ok_or(unknown)?;
    let mut response = Redirect::to(came_from(&headers)).into_response();
    set_cookie(&mut response, &app, LANGUAGE, chosen.code(), LANGUAGE_S);
    Ok(response)
}

/// The path of the page of here that asks; the front where none is told.
fn came_from(headers: &HeaderMap) -> &str {
    let text = |name| {
        headers
            .get(name)
            .and_then(|value: &HeaderValue| value.to_str().ok())
    };
    let page = text(header::REFERER).and_then(|page| {
        let rest = page
            .strip_prefix("http://")
            .or_else(|| page.strip_prefix("https://"))?;
        rest.strip_prefix(text(header::HOST)?)
    });
    // Two strokes would name another host.
    page.filter(|path| path.starts_with('/') && !path[1..].starts_with(['/', '\\']))
        .unwrap_or("/")
}

/// The language that this browser chose.
pub(crate) fn chosen_language(headers: &HeaderMap) -> Option<Language> {
    Language::of_code(any_cookie(headers, LANGUAGE)?)
}

/// The value of a cookie, if it has the form of a token.
fn cookie<'h>(headers: &'h HeaderMap, name: &str) -> Option<&'h str> {
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
fn set_cookie(response: &mut Response<Body>, app: &App, name: &str, value: &str, lasts_s: u64) {
    let secure = if app.identity.is_some() {
        "; Secure"
    } else {
        ""
    };
    let text =
        format!("{name}={value}; Path=/; Max-Age={lasts_s}; HttpOnly; SameSite=Strict{secure}");
    let header_value =
        HeaderValue::from_str(&text).expect("tokens and languages are plain letters");
    response
        .headers_mut()
        .append(header::SET_COOKIE, header_value);
}

#[cfg(test)]
mod tests {
    use super::decoded;

    #[test]
    fn forms_are_decoded() {
        assert_eq!(decoded("a+b%2Bc%C3%A9").as_deref(), Some("a b+c\u{e9}"));
        for bad in ["%", "%2", "%zz", "%C3"] {
            assert_eq!(decoded(bad), None, "{bad}");
        }
    }
}
