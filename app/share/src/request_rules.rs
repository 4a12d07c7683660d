//! Stands before every route: method, length, host, origin; and puts the security headers on.
//!
//! Refuses: methods that an address does not have, hosts that only a foreign page can have named,
//! and whatever a page of another site asks for.
use crate::app::{App, HTML};
use crate::problem::Problem;
use crate::public_pages;
use crate::rights::bearer;
use crate::words as w;
use axum::body::Body;
use axum::extract::{Request, State};
use axum::http::{HeaderName, HeaderValue, Method, StatusCode, header};
use axum::middleware::Next;
use axum::response::{IntoResponse as _, Response};
use std::net::{Ipv4Addr, Ipv6Addr};

/// The longest path and query that is read, bytes.
const URI_BYTES: usize = 1_024;

/// The other end of a connection.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Peer(pub std::net::IpAddr);

const HEADERS: [(HeaderName, &str); 8] = [
    (
        header::CONTENT_SECURITY_POLICY,
        "default-src 'none'; style-src 'self'; img-src 'self'; script-src 'self'; connect-src 'self'; \
         base-uri 'none'; form-action 'self'; frame-ancestors 'none'",
    ),
    (header::X_FRAME_OPTIONS, "DENY"),
    (
        HeaderName::from_static("permissions-policy"),
        "camera=(), geolocation=(), microphone=(), payment=(), usb=()",
    ),
    (header::X_CONTENT_TYPE_OPTIONS, "nosniff"),
    // With "no-referrer" browsers say "Origin: null" even to their own site.
    (header::REFERRER_POLICY, "same-origin"),
    (header::CACHE_CONTROL, "no-store"),
    (
        HeaderName::from_static("cross-origin-resource-policy"),
        "same-origin",
    ),
    (
        HeaderName::from_static("cross-origin-opener-policy"),
        "same-origin",
    ),
];

/// Lets a request through, or answers it. A browser is told a problem as a page, in its language.
pub(crate) async fn guard(State(app): State<App>, request: Request, next: Next) -> Response {
    let reads_html = reads_html(&request);
    let asks_only = *request.method() != Method::POST;
    let say = app.language(request.headers());
    let mut response = match check(&app, &request) {
        Ok(()) => next.run(request).await,
        Err(problem) => problem.into_response(),
    };
    if let Some(problem) = response
        .extensions()
        .get::<Problem>()
        .filter(|_| reads_html)
    {
        let page = public_pages::problem(say, *problem).into_string();
        *response.body_mut() = Body::from(page);
        let headers = response.headers_mut();
        headers.insert(header::CONTENT_TYPE, HeaderValue::from_static(HTML));
        headers.remove(header::CONTENT_LENGTH);
        // A TV has nobody who would ask again.
        if asks_only && let Some(after) = headers.get(header::RETRY_AFTER).cloned() {
            headers.insert(header::REFRESH, after);
        }
    }
    for (name, value) in HEADERS {
        let value = HeaderValue::from_static(value);
        response.headers_mut().insert(name, value);
    }
    response
}

/// Whether whoever asks names HTML among what it reads, as browsers do for pages.
fn reads_html(request: &Request) -> bool {
    let accept = request.headers().get(header::ACCEPT);
    let accept = accept
        .and_then(|accept| accept.to_str().ok())
        .unwrap_or_default();
    accept
        .split(',')
        .any(|kind| kind.split(';').next().unwrap_or_default().trim() == "text/html")
}

/// The methods of an address.
fn methods(path: &str) -> &'static str {
    match path {
        "/sign-in" | "/coach/desk" | "/coach/today" | "/coach/week" | "/coach/plans" => {
            "GET, HEAD, POST"
        }
        own if is_link(own) || own.starts_with("/coach/plans/") => "GET, HEAD, POST",
        "/sign-out" | "/language" | "/coach/tokens" | "/plans" => "POST",
        plan if plan.starts_with("/plans/") => "POST",
        _ => "GET, HEAD",
    }
}

/// Whether an address is a lifter's link itself, and nothing below it.
fn is_link(path: &str) -> bool {
    path.strip_prefix("/mine/")
        .is_some_and(|token| !token.contains('/'))
}

fn check(app: &App, request: &Request) -> Result<(), Problem> {
    let methods = methods(request.uri().path());
    let method = request.method().as_str();
    if !methods.split(", ").any(|known| known == method) {
        return Err(Problem::method(methods));
    }
    let length = request
        .uri()
        .path_and_query()
        .map_or(0, |target| target.as_str().len());
    if length > URI_BYTES {
        return Err(Problem::new(StatusCode::URI_TOO_LONG, w::LONG_ADDRESS));
    }
    let mut hosts = request.headers().get_all(header::HOST).iter();
    let (Some(host), None) = (hosts.next(), hosts.next()) else {
        return Err(Problem::new(StatusCode::BAD_REQUEST, w::ONE_HOST));
    };
    // A request may name its host a second time, in front of the path.
    let named = request
        .uri()
        .authority()
        .is_none_or(|named| is_ours(app, named.as_str()));
    if !named || !host.to_str().is_ok_and(|host| is_ours(app, host)) {
        return Err(Problem::new(StatusCode::MISDIRECTED_REQUEST, w::OTHER_HOST));
    }
    if is_foreign(request, host) {
        return Err(Problem::new(StatusCode::FORBIDDEN, w::OTHER_SITE));
    }
    Ok(())
}

/// Whether another site's page asks. Following a link to here is no such thing; what changes
/// something must prove that a page of here asks (Fetch Metadata, and the Fetch Standard's
/// Origin).
fn is_foreign(request: &Request, host: &HeaderValue) -> bool {
    let header = |name: &str| request.headers().get(name).map(HeaderValue::as_bytes);
    let all = |name: &str| request.headers().get_all(name).iter();
    let mode = header("sec-fetch-mode");
    let changes = *request.method() == Method::POST;
    let ours = |site: &HeaderValue| site == "same-origin" || site == "none";
    let far = !all("sec-fetch-site").all(ours);
    if far && (changes || mode != Some(b"navigate")) {
        return true;
    }
    let is_here = |origin: &HeaderValue| {
        let origin = origin.as_bytes();
        let rest = origin
            .strip_prefix(b"http://")
            .or_else(|| origin.strip_prefix(b"https://"));
        rest.is_some_and(|rest| rest.eq_ignore_ascii_case(host.as_bytes()))
    };
    // Each of them, should there be several; browsers send one of the two with every form.
    let named = header("origin").is_some();
    // No page of another site can send a token along; a program has no page.
    let by_token = bearer(request.headers()).is_some();
    let unsaid = !named && header("sec-fetch-site").is_none() && !by_token;
    !all("origin").all(is_here) || (changes && unsaid)
}

/// Whether `host`, with or without a port, is a name that no foreign page can point here, one that
/// the owner has given, or one that the owner's certificate is for.
fn is_ours(app: &App, host: &str) -> bool {
    if is_near(host) {
        return true;
    }
    let (name, port) = host.find(':').map_or((host, ""), |at| host.split_at(at));
    let name = name.strip_suffix('.').unwrap_or(name);
    let given = app
        .hosts
        .iter()
        .any(|given| given.eq_ignore_ascii_case(name));
    let certified = || app.identity.as_ref().is_some_and(|own| own.is_for(name));
    is_port(port) && (given || certified())
}

/// Whether `host`, with or without a port, is a name that no foreign page can point here: its
/// own pages would otherwise be read by any site whose name is made to lead to this address.
fn is_near(host: &str) -> bool {
    if let Some(rest) = host.strip_prefix('[') {
        let Some((address, port)) = rest.split_once(']') else {
            return false;
        };
        return address.parse::<Ipv6Addr>().is_ok() && is_port(port);
    }
    let (name, port) = host.find(':').map_or((host, ""), |at| host.split_at(at));
    if !is_port(port) {
        return false;
    }
    let name = name.strip_suffix('.').unwrap_or(name);
    let mut labels = name.rsplit('.');
    name.parse::<Ipv4Addr>().is_ok()
        || name.eq_ignore_ascii_case("localhost")
        || (labels
            .next()
            .is_some_and(|last| last.eq_ignore_ascii_case("local"))
            && name.contains('.')
            && labels.all(is_label))
}

/// Nothing, or a colon and digits.
fn is_port(text: &str) -> bool {
    text.is_empty()
        || text
            .strip_prefix(':')
            .is_some_and(|digits| digits.bytes().all(|byte| byte.is_ascii_digit()))
}

fn is_label(label: &str) -> bool {
    !label.is_empty()
        && label
            .bytes()
            .all(|byte| byte.is_ascii_alphanumeric() || matches!(byte, b'-' | b'_'))
}

#[cfg(test)]
mod tests {
    use super::is_near;

    #[test]
    fn names_of_here_and_no_others() {
        for near in [
            "127.0.0.1",
            "127.0.0.1:8080",
            "192.168.1.20:80",
            "[::1]",
            "[::1]:8080",
            "[fe80::1]:1",
            "localhost",
            "LocalHost:8080",
            "pinladder.local",
            "Rack-1.LOCAL:8080",
            "rack.gym.local",
            "pinladder.local.",
        ] {
            assert!(is_near(near), "{near}");
        }
        for far in [
            "",
            ":80",
            "local",
            ".local",
            "a..local",
            "evil.example",
            "evil.example:8080",
            "localhost.evil.example",
            "127.0.0.1.evil.example",
            "evil.local.example",
            "[::1",
            "[::1]x",
            "[evil]",
            "::1",
            "user@localhost",
            "localhost:80:80",
            "localhost:8o",
            "1.2.3",
            "0x7f.1",
            "2130706433",
            "evil.example#.local",
            "evil.example/.local",
            "localhost ",
            "evil.example\\.local",
        ] {
            assert!(!is_near(far), "{far}");
        }
    }
}
