//! Signing in and out, and the link that opens a lifter's own record once.
//!
//! Refuses: guesses beyond a few, codes in addresses, sessions that a script or another site can
//! use.
use crate::app::{App, page_of, stream_page};
use crate::attempts::Guesser;
use crate::cookies::{COACH, KNOWN, LANGUAGE, OWN, cookie, set_cookie};
use crate::desk_page;
use crate::form::{field, read_form};
use crate::look::Look;
use crate::masthead::Nav;
use crate::not_in::NotIn;
use crate::problem::Problem;
use crate::request_rules::Peer;
use crate::words as w;
use crate::{lifter_page, public_pages, token, token_page};
use axum::Extension;
use axum::extract::{Path, Request, State};
use axum::http::{HeaderMap, HeaderValue, StatusCode, header};
use axum::response::{IntoResponse as _, Redirect, Response};
use std::net::{IpAddr, Ipv4Addr};
use view::Language;

/// A browser that signed in is known for half a year.
const KNOWN_S: u64 = 180 * 24 * 60 * 60;
/// The chosen language is kept for a year.
const LANGUAGE_S: u64 = 365 * 24 * 60 * 60;
pub(crate) async fn sign_in_page(State(app): State<App>, headers: HeaderMap) -> Response {
    if app.is_coach(&headers) {
        return Redirect::to("/coach/today").into_response();
    }
    let say = app.language(&headers);
    let told = (!app.desk.has_code()).then(|| NotIn::NoCode.words(say));
    page_of(public_pages::sign_in(say, told.as_deref())).into_response()
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
            set_cookie(
                &mut response,
                app.identity.is_some(),
                COACH,
                &token,
                lasts_s,
            );
            if !matches!(guesser, Guesser::Known(_))
                && let Some(word) = app.desk.known_word()
            {
                set_cookie(&mut response, app.identity.is_some(), KNOWN, &word, KNOWN_S);
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
            let page = page_of(public_pages::sign_in(say, Some(&why.words(say))));
            Ok((status, page).into_response())
        }
    }
}

fn address(peer: Option<Extension<Peer>>) -> IpAddr {
    peer.map_or(IpAddr::V4(Ipv4Addr::UNSPECIFIED), |Extension(peer)| peer.0)
}

/// Who guesses the code of a form.
pub(crate) fn guesser_of(app: &App, headers: &HeaderMap, peer: Option<Extension<Peer>>) -> Guesser {
    guesser(app, headers, address(peer))
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
    if !app.is_coach(&headers) {
        return Err(Problem::new(StatusCode::UNAUTHORIZED, w::SIGN_IN_FIRST));
    }
    let guesser = guesser(&app, &headers, address(peer));
    let form = read_form(request).await?;
    let (code, about) = (field(&form, "code")?, field(&form, "about")?);
    let errand = desk_page::errand(&field(&form, "order")?, &about);
    let errand = errand.ok_or(Problem::new(StatusCode::BAD_REQUEST, w::NO_SUCH_ORDER))?;
    let say = app.language(&headers);
    let (status, told) = match app.desk.order(errand, code, guesser).await {
        Ok(told) => (StatusCode::OK, told.words(say)),
        Err(NotIn::Wait(seconds)) => return Err(Problem::wait(seconds)),
        Err(why) => (StatusCode::FORBIDDEN, why.words(say)),
    };
    let tokens = token_page::part(&app, say, None);
    let desk = (&app.desk.counter(), &app.desk.laid());
    let page = desk_page::page(say, desk, Some(&told), &tokens);
    Ok((status, page_of(page)).into_response())
}

pub(crate) async fn sign_out(State(app): State<App>, headers: HeaderMap) -> Response {
    if let Some(token) = cookie(&headers, COACH) {
        app.desk.sign_out(token);
    }
    let mut response = Redirect::to("/").into_response();
    set_cookie(&mut response, app.identity.is_some(), COACH, "", 0);
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
    let Some(lifter) = own(&app, &headers, &token) else {
        if token::is_token(&token) && app.desk.is_link(&token) {
            return Ok(page_of(public_pages::open_own(say, &token)).into_response());
        }
        return Err(closed(&app, say, &token));
    };
    let laid = app.desk.laid();
    let due = app.desk.counter().due;
    let home = format!("/mine/{token}");
    stream_page(&app, move |record, sink| {
        let of = lifter_page::Of {
            lifter: &lifter,
            nav: Nav::Own,
            look: &Look::default(),
            due: &due,
            home: Some(&home),
        };
        lifter_page::write(say, (record, &laid), &of, sink)
    })
    .await
}

/// The lifter whose own record this browser opened by the link of a token.
pub(crate) fn own(app: &App, headers: &HeaderMap, token: &str) -> Option<String> {
    let (lifter, link) = app.desk.lifter(cookie(headers, OWN)?)?;
    (link == token::hash(token)).then_some(lifter)
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
    set_cookie(
        &mut response,
        app.identity.is_some(),
        OWN,
        &session,
        lasts_s,
    );
    response
}

/// That a link opens nothing: no longer, or never.
pub(crate) fn closed(app: &App, say: Language, token: &str) -> Response {
    let known = token::is_token(token) && app.desk.knows_link(token);
    let status = if known {
        StatusCode::GONE
    } else {
        StatusCode::NOT_FOUND
    };
    (status, page_of(public_pages::gone(say))).into_response()
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
    set_cookie(
        &mut response,
        app.identity.is_some(),
        LANGUAGE,
        chosen.code(),
        LANGUAGE_S,
    );
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
