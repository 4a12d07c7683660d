//! Answers compressed for whoever reads gzip (RFC 1952), piece by piece.
//!
//! Refuses: what is live, short or compressed already; holding more than a piece.
use axum::body::{Body, BodyDataStream, Bytes, HttpBody as _};
use axum::extract::Request;
use axum::http::{HeaderMap, HeaderValue, StatusCode, header};
use axum::middleware::Next;
use axum::response::Response;
use flate2::Compression;
use flate2::write::GzEncoder;
use futures_core::Stream;
use std::io::{self, Write as _};
use std::pin::Pin;
use std::task::{Context, Poll, ready};

/// What is shorter takes one packet anyway, bytes.
const SHORT: u64 = 1_024;
/// Kinds that become shorter.
const KINDS: [&str; 7] = [
    "text/html",
    "text/css",
    "text/csv",
    "text/plain",
    "text/javascript",
    "application/json",
    "image/svg+xml",
];

/// Compresses an answer that gains by it.
pub(crate) async fn compress(request: Request, next: Next) -> Response {
    let reads = reads_gzip(request.headers());
    let mut response = next.run(request).await;
    let kind = response.headers().get(header::CONTENT_TYPE);
    let kind = kind.and_then(|kind| kind.to_str().ok()).unwrap_or_default();
    let kind = kind.split(';').next().unwrap_or_default();
    if response.status() != StatusCode::OK || !KINDS.contains(&kind) {
        return response;
    }
    let headers = response.headers_mut();
    headers.append(header::VARY, HeaderValue::from_static("Accept-Encoding"));
    let length = response.body().size_hint().exact();
    if !reads || length.is_some_and(|length| length < SHORT) {
        return response;
    }
    let (mut parts, body) = response.into_parts();
    let coding = HeaderValue::from_static("gzip");
    parts.headers.insert(header::CONTENT_ENCODING, coding);
    parts.headers.remove(header::CONTENT_LENGTH);
    let pieces = Gzip {
        encoder: Some(GzEncoder::new(Vec::new(), Compression::fast())),
        body: body.into_data_stream(),
    };
    Response::from_parts(parts, Body::from_stream(pieces))
}

/// Whether whoever asks reads gzip (RFC 9110, 12.5.3); a weight of 0 says that they do not.
fn reads_gzip(headers: &HeaderMap) -> bool {
    let lines = headers.get_all(header::ACCEPT_ENCODING).iter();
    let mut codings = lines
        .filter_map(|line| line.to_str().ok())
        .flat_map(|line| line.split(','))
        .map(|coding| coding.split_once(';').unwrap_or((coding, "")));
    codings.any(|(name, weight)| {
        let weight = weight.trim().trim_start_matches("q=");
        let none = weight.parse::<f32>().is_ok_and(|weight| weight <= 0.0);
        name.trim().eq_ignore_ascii_case("gzip") && !none
    })
}

/// A body, compressed while it is read.
struct Gzip {
    /// `None` at the end.
    encoder: Option<GzEncoder<Vec<u8>>>,
    body: BodyDataStream,
}

impl Gzip {
    /// What has come out for one more piece.
    fn take(&mut self, piece: Option<Bytes>) -> io::Result<Vec<u8>> {
        let Some(piece) = piece else {
            return self
                .encoder
                .take()
                .map_or(Ok(Vec::new()), GzEncoder::finish);
        };
        let Some(encoder) = self.encoder.as_mut() else {
            return Ok(Vec::new());
        };
        encoder.write_all(&piece)?;
        Ok(std::mem::take(encoder.get_mut()))
    }
}

impl Stream for Gzip {
    type Item = io::Result<Bytes>;

    fn poll_next(mut self: Pin<&mut Self>, context: &mut Context<'_>) -> Poll<Option<Self::Item>> {
        while self.encoder.is_some() {
            let piece = match ready!(Pin::new(&mut self.body).poll_next(context)) {
                Some(Err(error)) => {
                    // Without its end nobody takes it for whole.
                    self.encoder = None;
                    return Poll::Ready(Some(Err(io::Error::other(error))));
                }
                Some(Ok(piece)) => Some(piece),
                None => None,
            };
            match self.take(piece) {
                Ok(out) if out.is_empty() => {}
                out => return Poll::Ready(Some(out.map(Bytes::from))),
            }
        }
        Poll::Ready(None)
    }
}

#[cfg(test)]
mod tests {
    use super::reads_gzip;
    use axum::http::{HeaderMap, HeaderValue, header};

    #[test]
    fn who_reads_gzip() {
        for (line, reads) in [
            ("gzip", true),
            ("br, GZIP;q=0.5", true),
            ("gzip;q=0", false),
            ("gzip; q=0.000", false),
            ("identity", false),
            ("x-gzip-not", false),
            ("", false),
        ] {
            let mut headers = HeaderMap::new();
            headers.insert(header::ACCEPT_ENCODING, HeaderValue::from_static(line));
            assert_eq!(reads_gzip(&headers), reads, "{line}");
        }
        assert!(!reads_gzip(&HeaderMap::new()));
    }
}
