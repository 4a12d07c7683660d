//! Who asks, where the page stands behind a proxy of the owner's own (X-Forwarded-For).
//!
//! Refuses: believing anybody else; whoever asks can write what they like into a header.
use crate::app::App;
use crate::request_rules::Peer;
use axum::Extension;
use axum::extract::{Request, State};
use axum::http::{HeaderMap, HeaderName};
use axum::middleware::Next;
use axum::response::Response;
use std::net::{IpAddr, SocketAddr};

const FORWARDED_FOR: HeaderName = HeaderName::from_static("x-forwarded-for");
/// Most addresses that are read: a chain of proxies is short.
const LONGEST: usize = 20;

/// Puts whoever really asks in place of a trusted proxy.
pub(crate) async fn resolve(
    State(app): State<App>,
    peer: Option<Extension<Peer>>,
    mut request: Request,
    next: Next,
) -> Response {
    if let Some(Extension(Peer(from))) = peer {
        let asks = asker(from, request.headers(), &app.proxies);
        request.extensions_mut().insert(Peer(asks));
    }
    next.run(request).await
}

/// Each proxy writes whom it heard behind those before, so the last one that is no trusted proxy
/// is as far as anything can be believed.
fn asker(from: IpAddr, headers: &HeaderMap, proxies: &[IpAddr]) -> IpAddr {
    let is_trusted = |address: &IpAddr| proxies.contains(&address.to_canonical());
    if !is_trusted(&from) {
        return from;
    }
    let lines = headers.get_all(FORWARDED_FOR).iter();
    let words: Vec<&str> = lines
        .flat_map(|line| line.to_str().unwrap_or_default().split(','))
        .collect();
    let mut asks = from;
    for word in words.iter().rev().take(LONGEST) {
        let Some(address) = address(word.trim()) else {
            break;
        };
        asks = address;
        if !is_trusted(&address) {
            break;
        }
    }
    asks
}

/// "192.168.1.7", "2001:db8::7", "[2001:db8::7]:4711", "192.168.1.7:4711".
fn address(word: &str) -> Option<IpAddr> {
    let bare = word
        .strip_prefix('[')
        .and_then(|rest| rest.strip_suffix(']'));
    let plain = bare.unwrap_or(word).parse::<IpAddr>().ok();
    let with_port = || word.parse::<SocketAddr>().ok().map(|at| at.ip());
    plain
        .or_else(with_port)
        .map(|address| address.to_canonical())
}

#[cfg(test)]
mod tests {
    use super::{FORWARDED_FOR, asker};
    use axum::http::{HeaderMap, HeaderValue};
    use std::net::IpAddr;

    fn ip(text: &str) -> IpAddr {
        text.parse().expect("an address")
    }

    fn asks(from: &str, lines: &[&'static str]) -> String {
        let mut headers = HeaderMap::new();
        for line in lines {
            headers.append(FORWARDED_FOR, HeaderValue::from_static(line));
        }
        let proxies = [ip("192.168.1.2"), ip("192.168.1.3")];
        asker(ip(from), &headers, &proxies).to_string()
    }

    #[test]
    fn only_a_trusted_proxy_is_believed() {
        assert_eq!(asks("192.168.1.9", &["10.0.0.1"]), "192.168.1.9");
        assert_eq!(asks("192.168.1.2", &["10.0.0.1"]), "10.0.0.1");
        assert_eq!(asks("::ffff:192.168.1.2", &["10.0.0.1"]), "10.0.0.1");
        assert_eq!(asks("192.168.1.2", &[]), "192.168.1.2");
    }

    /// Who asks writes the front of the list, the proxy its end.
    #[test]
    fn what_was_written_before_the_proxy_is_of_no_account() {
        assert_eq!(asks("192.168.1.2", &["6.6.6.6, 10.0.0.1"]), "10.0.0.1");
        assert_eq!(asks("192.168.1.2", &["6.6.6.6", "10.0.0.1"]), "10.0.0.1");
        let two = ["6.6.6.6, 10.0.0.1, 192.168.1.3"];
        assert_eq!(asks("192.168.1.2", &two), "10.0.0.1", "a chain of proxies");
        for noise in ["", "10.0.0.1, unknown", "10.0.0.1, evil.example", "\t,"] {
            assert_eq!(asks("192.168.1.2", &[noise]), "192.168.1.2", "{noise}");
        }
    }

    #[test]
    fn addresses_as_proxies_write_them() {
        for (word, is) in [
            ("10.0.0.1:4711", "10.0.0.1"),
            ("[2001:db8::7]:4711", "2001:db8::7"),
            ("[2001:db8::7]", "2001:db8::7"),
            ("2001:db8::7", "2001:db8::7"),
        ] {
            assert_eq!(asks("192.168.1.3", &[word]), is);
        }
    }
}
