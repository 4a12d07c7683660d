//! Reads the one file of a form as browsers send files (RFC 7578).
//!
//! Refuses: more bytes than a plan can have, however many are announced; forms that crawl.
use crate::problem::Problem;
use crate::words as w;
use axum::body::to_bytes;
use axum::extract::multipart::MultipartError;
use axum::extract::{FromRequest as _, Multipart, Request};
use axum::http::{StatusCode, header};
use std::time::Duration;
use tokio::time::timeout;

/// Most bytes of a plan, as everywhere.
const PLAN_MAX: usize = 4 << 20;
/// What stands around the file in the form.
const AROUND: usize = 16 << 10;
/// Most bytes of the form. The route bounds its body by it: the reader of forms takes in whatever is
/// there before it hands on a piece.
pub(crate) const FORM_MAX: usize = PLAN_MAX + AROUND;
/// For the form to come.
const UPLOAD: Duration = Duration::from_secs(60);

/// Name and bytes.
pub(crate) async fn file(request: Request) -> Result<(String, Vec<u8>), Problem> {
    let length = request.headers().get(header::CONTENT_LENGTH);
    let length = length.and_then(|length| length.to_str().ok()?.parse::<u64>().ok());
    if length.is_some_and(|length| length > FORM_MAX as u64) {
        return Err(too_long());
    }
    let slow = Problem::new(StatusCode::REQUEST_TIMEOUT, w::PLAN_SLOW);
    timeout(UPLOAD, read(request)).await.map_err(|_| slow)?
}

/// The bytes of a file that is sent without a form.
pub(crate) async fn raw(request: Request) -> Result<Vec<u8>, Problem> {
    let length = request.headers().get(header::CONTENT_LENGTH);
    let length = length.and_then(|length| length.to_str().ok()?.parse::<u64>().ok());
    if length.is_some_and(|length| length > PLAN_MAX as u64) {
        return Err(too_long());
    }
    let slow = Problem::new(StatusCode::REQUEST_TIMEOUT, w::PLAN_SLOW);
    let read = timeout(UPLOAD, to_bytes(request.into_body(), PLAN_MAX)).await;
    let bytes = read.map_err(|_| slow)?.map_err(|_| too_long())?;
    if bytes.is_empty() {
        return Err(Problem::new(StatusCode::BAD_REQUEST, w::NO_FILE));
    }
    Ok(bytes.to_vec())
}

const fn too_long() -> Problem {
    Problem::new(StatusCode::PAYLOAD_TOO_LARGE, w::PLAN_LONG)
}

fn broken(error: &MultipartError) -> Problem {
    if error.status() == StatusCode::PAYLOAD_TOO_LARGE {
        return too_long();
    }
    Problem::new(StatusCode::BAD_REQUEST, w::FORM_BROKEN)
}

async fn read(request: Request) -> Result<(String, Vec<u8>), Problem> {
    let kind = Problem::new(StatusCode::UNSUPPORTED_MEDIA_TYPE, w::FILE_KIND);
    let none = Problem::new(StatusCode::BAD_REQUEST, w::NO_FILE);
    let mut form = Multipart::from_request(request, &())
        .await
        .map_err(|_| kind)?;
    let part = form.next_field().await.map_err(|error| broken(&error))?;
    let mut part = part.ok_or(none)?;
    if part.name() != Some("plan") {
        return Err(Problem::new(StatusCode::BAD_REQUEST, w::FIELD));
    }
    let name = part.file_name().unwrap_or_default().to_owned();
    let mut bytes = Vec::new();
    while let Some(piece) = part.chunk().await.map_err(|error| broken(&error))? {
        if bytes.len() + piece.len() > PLAN_MAX {
            return Err(too_long());
        }
        bytes.extend_from_slice(&piece);
    }
    // A browser without a chosen file sends a part without a name.
    if name.is_empty() || bytes.is_empty() {
        return Err(none);
    }
    Ok((name, bytes))
}
