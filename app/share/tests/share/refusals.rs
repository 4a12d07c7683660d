//! What is refused, and how it is said.
use crate::gym::{Gym, ask, ask_with, text, two_days};
use axum::body::Body;
use axum::http::{Request, Response};
use serde_json::Value;
use std::fs;
use tower::ServiceExt as _;

/// A problem as RFC 9457 has it, with the security headers.
async fn problem(response: Response<Body>, status: u16) -> String {
    assert_eq!(response.status(), status);
    assert_eq!(
        response.headers()["content-type"],
        "application/problem+json"
    );
    assert_secure(&response);
    let body: Value = serde_json::from_str(&text(response).await).expect("JSON");
    assert_eq!(body["type"], "about:blank");
    assert_eq!(body["status"], status);
    assert!(
        body["title"]
            .as_str()
            .is_some_and(|title| !title.is_empty())
    );
    body["detail"].as_str().expect("a detail").to_owned()
}

fn assert_secure(response: &Response<Body>) {
    let header = |name| response.headers()[name].to_str().expect("text");
    let policy = header("content-security-policy");
    assert!(
        policy.starts_with(
            "default-src 'none'; style-src 'self'; img-src 'self'; script-src 'self';"
        ),
        "{policy}"
    );
    assert!(!policy.contains("unsafe"));
    assert_eq!(header("x-content-type-options"), "nosniff");
    assert_eq!(header("referrer-policy"), "same-origin");
    assert_eq!(header("cache-control"), "no-store");
}

#[tokio::test]
async fn every_answer_has_the_security_headers() {
    let gym = two_days();
    for target in [
        "/",
        "/style.css",
        "/coach",
        "/coach/today",
        "/record.csv",
        "/record.json",
        "/board",
    ] {
        let response = gym.get(target).await;
        assert_eq!(response.status(), 200);
        assert_secure(&response);
    }
}

#[tokio::test]
async fn other_addresses() {
    let gym = two_days();
    for target in [
        "/record",
        "/kiosk.toml",
        "/../coach-code",
        "//",
        "/%2e%2e/x",
        "/style.css/",
    ] {
        let detail = problem(gym.get(target).await, 404).await;
        assert_eq!(detail, "nothing is here; /openapi.json says what there is");
    }
}

#[tokio::test]
async fn other_methods() {
    let gym = two_days();
    for method in [
        "POST", "PUT", "DELETE", "PATCH", "OPTIONS", "TRACE", "CONNECT", "BREW",
    ] {
        for target in ["/", "/record.csv", "/nothing"] {
            let response = ask(gym.router(), method, target).await;
            assert_eq!(response.headers()["allow"], "GET, HEAD");
            problem(response, 405).await;
        }
    }
}

#[tokio::test]
async fn head_is_get_without_a_body() {
    let gym = two_days();
    let cookie = gym.coach().await;
    let headers = [("cookie", cookie.as_str())];
    for target in ["/", "/coach", "/record.csv", "/record.json", "/style.css"] {
        let got = gym.get(target).await;
        let head = ask_with(gym.router(), "HEAD", target, &headers).await;
        assert_eq!(head.status(), 200);
        assert_eq!(
            head.headers()["content-type"],
            got.headers()["content-type"]
        );
        assert_eq!(text(head).await, "");
    }
}

#[tokio::test]
async fn foreign_hosts() {
    let gym = two_days();
    let with = |hosts: &[&str], target: &str| {
        let mut request = Request::builder().uri(target);
        for host in hosts {
            request = request.header("host", *host);
        }
        gym.router()
            .oneshot(request.body(Body::empty()).expect("a request"))
    };
    for host in ["evil.example", "localhost.evil.example:8080", ""] {
        problem(with(&[host], "/").await.expect("cannot fail"), 421).await;
    }
    let far = with(&["localhost"], "http://evil.example/")
        .await
        .expect("cannot fail");
    problem(far, 421).await;
    problem(with(&[], "/").await.expect("cannot fail"), 400).await;
    let two = with(&["localhost", "evil.example"], "/")
        .await
        .expect("cannot fail");
    problem(two, 400).await;
    for host in ["pinladder.local", "[::1]:8080", "localhost"] {
        let near = with(&[host], "/").await.expect("cannot fail");
        assert_eq!(near.status(), 200, "{host}");
    }
}

#[tokio::test]
async fn long_addresses_and_odd_days() {
    let gym = two_days();
    let long = format!("/?before={}", "2".repeat(1_100));
    problem(gym.get(&long).await, 414).await;
    for day in ["", "yesterday", "2026-13-01", "2026-02-30", "%00", "1;DROP"] {
        let detail = problem(gym.get(&format!("/coach?before={day}")).await, 400).await;
        assert_eq!(detail, "before must be a day such as 2026-03-31");
    }
    assert_eq!(
        gym.get("/coach?other=1&before=2026-03-05").await.status(),
        200
    );
}

#[tokio::test]
async fn a_record_that_cannot_be_read_tells_nothing_of_itself() {
    let gym = Gym::new();
    fs::write(gym.record(), "no database at all\n".repeat(300)).expect("writes");
    for target in [
        "/coach",
        "/coach/today",
        "/coach/plan",
        "/coach/lifter/Ada",
        "/record.csv",
        "/record.json",
    ] {
        let detail = problem(gym.get(target).await, 500).await;
        assert_eq!(
            detail,
            "the record cannot be read; the kiosk's log says why"
        );
    }
    assert_eq!(gym.get("/style.css").await.status(), 200);
}
