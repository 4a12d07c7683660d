//! Makes a token for a program and takes one back, each once the code was given again.
//!
//! Refuses: whoever has not signed in; guesses beyond a few.
use crate::app::{App, page_of};
use crate::auth::guesser_of;
use crate::deeds::day;
use crate::desk_page;
use crate::form::{Form, field, read_form};
use crate::not_in::NotIn;
use crate::problem::Problem;
use crate::request_rules::Peer;
use crate::token_page::{Made, part, words};
use crate::tokens::May;
use crate::words as w;
use axum::Extension;
use axum::extract::{Request, State};
use axum::http::{HeaderMap, StatusCode};
use axum::response::{IntoResponse as _, Response};
use chrono::NaiveDate;
use view::Language;

/// What a form asks for.
enum Act {
    Make(String, May, NaiveDate),
    Back(String),
}

fn act(form: &Form) -> Result<Act, Problem> {
    const NONE: Problem = Problem::new(StatusCode::BAD_REQUEST, w::FIELD);
    let name = field(form, "name")?;
    match field(form, "do")?.as_str() {
        "make" => {
            let may = match field(form, "may")?.as_str() {
                "read" => May::Read,
                "plans" => May::Plans,
                _ => return Err(NONE),
            };
            Ok(Act::Make(name, may, day(&field(form, "until")?)?))
        }
        "back" => Ok(Act::Back(name)),
        _ => Err(NONE),
    }
}

/// Makes a token or takes one back, once the code is right.
pub(crate) async fn post(
    State(app): State<App>,
    headers: HeaderMap,
    peer: Option<Extension<Peer>>,
    request: Request,
) -> Result<Response, Problem> {
    if !app.is_coach(&headers) {
        return Err(Problem::new(StatusCode::UNAUTHORIZED, w::SIGN_IN_FIRST));
    }
    let guesser = guesser_of(&app, &headers, peer);
    let form = read_form(request).await?;
    let (code, act) = (field(&form, "code")?, act(&form)?);
    let say = app.language(&headers);
    let (status, told, made) = match app.desk.confirm(code, guesser).await {
        Err(NotIn::Wait(seconds)) => return Err(Problem::wait(seconds)),
        Err(why) => (StatusCode::FORBIDDEN, Some(why.words(say)), None),
        Ok(()) => done(&app, say, act),
    };
    let tokens = part(&app, say, made.as_ref());
    let desk = (&app.desk.counter(), &app.desk.laid());
    let page = desk_page::page(say, desk, told.as_deref(), &tokens);
    Ok((status, page_of(page)).into_response())
}

fn done(app: &App, say: Language, act: Act) -> (StatusCode, Option<String>, Option<Made>) {
    let done = match act {
        Act::Make(name, may, until) => app
            .desk
            .make_token(&name, may, until)
            .map(|token| (None, Some((name, token)))),
        Act::Back(name) => app
            .desk
            .take_token_back(&name)
            .map(|()| (Some(say.fill(w::TOKEN_GONE, &[&name])), None)),
    };
    match done {
        Ok((told, made)) => (StatusCode::OK, told, made),
        Err(why) => (StatusCode::CONFLICT, Some(say.say(words(why))), None),
    }
}
