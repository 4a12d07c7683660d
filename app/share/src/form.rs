//! Reads the forms that browsers send.
//!
//! Refuses: forms of another kind, longer than they can be, or that do not come to their end.
use crate::problem::Problem;
use crate::words as w;
use axum::body::to_bytes;
use axum::extract::Request;
use axum::http::{StatusCode, header};
use std::time::Duration;
use tokio::time::timeout;

/// Names and values, in their order.
pub(crate) type Form = Vec<(String, String)>;

/// Most bytes of the form: a code of 64 characters, each percent-encoded.
const FORM_MAX: usize = 1_024;
/// For the form's body to come.
const FORM: Duration = Duration::from_secs(10);

/// The fields of a form, percent-encoded (URL Standard, 5.1).
pub(crate) async fn read_form(request: Request) -> Result<Form, Problem> {
    read_form_of(request, FORM_MAX).await
}

/// As [`read_form`], of at most so many bytes.
pub(crate) async fn read_form_of(request: Request, most: usize) -> Result<Form, Problem> {
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
    if length.is_some_and(|length| length > most as u64) {
        return Err(too_long);
    }
    let body = request.into_body();
    let read = timeout(FORM, to_bytes(body, most)).await;
    let bytes = match read {
        Ok(Ok(bytes)) => bytes,
        Ok(Err(_)) => return Err(too_long),
        Err(_) => {
            return Err(Problem::new(StatusCode::REQUEST_TIMEOUT, w::FORM_SLOW));
        }
    };
    let broken = Problem::new(StatusCode::BAD_REQUEST, w::FORM_BROKEN);
    let text = std::str::from_utf8(&bytes).map_err(|_| broken)?;
    fields(text).ok_or(broken)
}

/// The fields of a form or a query, percent-encoded; `None` when one is not.
pub(crate) fn fields(text: &str) -> Option<Form> {
    text.split('&')
        .filter(|part| !part.is_empty())
        .map(|part| {
            let (key, value) = part.split_once('=')?;
            Some((decoded(key)?, decoded(value)?))
        })
        .collect()
}

/// The one field of a name.
pub(crate) fn field(form: &[(String, String)], name: &str) -> Result<String, Problem> {
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

/// The one field of a name, or nothing where there is none.
pub(crate) fn optional(form: &[(String, String)], name: &str) -> Result<String, Problem> {
    if form.iter().all(|(key, _)| key != name) {
        return Ok(String::new());
    }
    field(form, name)
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
