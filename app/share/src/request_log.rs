//! A line in the log for every request. Refuses: secrets: no codes, tokens, queries or cookies.
use crate::app::App;
use crate::request_rules::Peer;
use axum::Extension;
use axum::extract::{Request, State};
use axum::middleware::Next;
use axum::response::Response;

pub(crate) async fn log(
    State(app): State<App>,
    peer: Option<Extension<Peer>>,
    request: Request,
    next: Next,
) -> Response {
    let method = request.method().clone();
    let path = told(request.uri().path());
    let response = next.run(request).await;
    app.counts.count(response.status());
    let from = peer.map(|Extension(Peer(from))| from.to_string());
    tracing::info!(
        target: "share::access",
        from = from.as_deref().unwrap_or("?"),
        %method,
        path,
        status = response.status().as_u16(),
        "request"
    );
    response
}

/// The path as it is told: what follows /mine/ is a secret, and no path is told at length.
fn told(path: &str) -> String {
    if path.starts_with("/mine/") {
        return "/mine/...".into();
    }
    let clean = |c: char| if c.is_control() { '?' } else { c };
    path.chars().take(100).map(clean).collect()
}

#[cfg(test)]
mod tests {
    use super::told;

    #[test]
    fn a_link_is_not_told() {
        assert_eq!(told("/mine/0123abcd"), "/mine/...");
        assert_eq!(told("/coach"), "/coach");
        assert_eq!(told(&"/x".repeat(200)).chars().count(), 100);
    }
}
