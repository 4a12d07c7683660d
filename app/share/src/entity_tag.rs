//! Entity tags (RFC 9110, 8.8.3): what somebody has already is not sent again. An answer without a
//! tag of its own is tagged by what it says, as long as that is short.
//!
//! Refuses: holding a long answer whole; tags of what is live or no answer at all.
use crate::token;
use axum::body::{Body, BodyDataStream, Bytes};
use axum::extract::Request;
use axum::http::{HeaderMap, HeaderValue, Method, StatusCode, header};
use axum::middleware::Next;
use axum::response::{IntoResponse as _, Response};
use futures_core::Stream;
use std::collections::VecDeque;
use std::future::poll_fn;
use std::pin::Pin;
use std::task::{Context, Poll};

/// What is held whole to be tagged, bytes.
const WHOLE_MAX: usize = 256 * 1_024;

/// A weak tag of a text: the same content in another coding has it too.
pub(crate) fn tag(of: &str) -> HeaderValue {
    let mut hash = token::hex(&token::hash(of));
    hash.truncate(32);
    HeaderValue::from_str(&format!("W/\"{hash}\"")).expect("hexadecimal digits")
}

/// Answers HEAD as GET without its body, and with 304 what somebody has already.
pub(crate) async fn judge(mut request: Request, next: Next) -> Response {
    let is_head = *request.method() == Method::HEAD;
    let reads = is_head || *request.method() == Method::GET;
    if is_head {
        *request.method_mut() = Method::GET;
    }
    let known = request.headers().get(header::IF_NONE_MATCH).cloned();
    let mut response = next.run(request).await;
    if reads && response.status() == StatusCode::OK {
        response = tagged(response).await;
        let tag = response.headers().get(header::ETAG);
        if let (Some(tag), Some(known)) = (tag, known)
            && names(&known, tag)
        {
            return unchanged(response.headers());
        }
    }
    if is_head {
        *response.body_mut() = Body::empty();
    }
    response
}

/// Whether a list of tags names this one, by the weak comparison.
fn names(list: &HeaderValue, tag: &HeaderValue) -> bool {
    let (Ok(list), Ok(tag)) = (list.to_str(), tag.to_str()) else {
        return false;
    };
    let bare = |tag: &str| tag.trim().trim_start_matches("W/").to_owned();
    list.trim() == "*" || list.split(',').any(|one| bare(one) == bare(tag))
}

fn unchanged(headers: &HeaderMap) -> Response {
    let mut response = StatusCode::NOT_MODIFIED.into_response();
    for name in [header::ETAG, header::VARY, header::SET_COOKIE] {
        for value in headers.get_all(&name) {
            response.headers_mut().append(&name, value.clone());
        }
    }
    response
}

async fn tagged(response: Response) -> Response {
    let live = response.headers().get(header::CONTENT_TYPE);
    let live = live.is_some_and(|kind| kind.as_bytes().starts_with(b"text/event-stream"));
    if live || response.headers().contains_key(header::ETAG) {
        return response;
    }
    let (mut parts, body) = response.into_parts();
    let mut pieces = VecDeque::new();
    let (mut rest, mut held, mut whole) = (body.into_data_stream(), 0, true);
    while let Some(piece) = poll_fn(|context| Pin::new(&mut rest).poll_next(context)).await {
        held += piece.as_ref().map_or(WHOLE_MAX + 1, Bytes::len);
        pieces.push_back(piece);
        if held > WHOLE_MAX {
            whole = false;
            break;
        }
    }
    if !whole {
        return Response::from_parts(parts, Body::from_stream(Held { pieces, rest }));
    }
    let pieces: Vec<Bytes> = pieces.into_iter().flatten().collect();
    let all = pieces.concat();
    let text = String::from_utf8_lossy(&all);
    parts.headers.insert(header::ETAG, tag(&text));
    Response::from_parts(parts, Body::from(all))
}

/// What was read of a body, and the rest of it.
struct Held {
    pieces: VecDeque<Result<Bytes, axum::Error>>,
    rest: BodyDataStream,
}

impl Stream for Held {
    type Item = Result<Bytes, axum::Error>;

    fn poll_next(mut self: Pin<&mut Self>, context: &mut Context<'_>) -> Poll<Option<Self::Item>> {
        match self.pieces.pop_front() {
            Some(piece) => Poll::Ready(Some(piece)),
            None => Pin::new(&mut self.rest).poll_next(context),
        }
    }
}
