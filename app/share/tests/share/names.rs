//! By which names the page is asked for, and who is believed to ask.
use crate::gym::{CODE, two_days};
use axum::Router;
use axum::body::Body;
use axum::http::{Request, Response};
use share::{Front, Peer};
use std::net::IpAddr;
use tower::ServiceExt as _;

async fn ask(
    router: Router,
    method: &str,
    target: &str,
    headers: &[(&str, &str)],
    body: &str,
) -> Response<Body> {
    let from: IpAddr = "192.168.1.2".parse().expect("an address");
    let mut request = Request::builder()
        .method(method)
        .uri(target)
        .extension(Peer(from));
    for (name, value) in headers {
        request = request.header(*name, *value);
    }
    let request = request
        .body(Body::from(body.to_owned()))
        .expect("a request");
    router.oneshot(request).await.expect("cannot fail")
}

#[tokio::test]
async fn hosts_of_the_file_are_answered_and_no_others() {
    let gym = two_days();
    let named = Front {
        hosts: vec!["rack.gym.example".to_owned()],
        ..Front::default()
    };
    for (host, with, without) in [
        ("rack.gym.example", 200, 421),
        ("Rack.GYM.example:8470", 200, 421),
        ("rack.gym.example.", 200, 421),
        ("evil.example", 421, 421),
        ("rack.gym.example.evil.example", 421, 421),
        ("x.rack.gym.example", 421, 421),
        ("rack.gym.example:x", 421, 421),
        ("rack.gym.example@evil.example", 421, 421),
        ("", 421, 421),
        ("192.168.1.20", 200, 200),
    ] {
        let told = [("host", host)];
        let status = async |router| ask(router, "GET", "/", &told, "").await.status().as_u16();
        assert_eq!(status(gym.router_of(named.clone())).await, with, "{host}");
        assert_eq!(status(gym.router()).await, without, "{host}");
    }
}

/// Five wrong codes lock one machine out: behind the owner's proxy each phone is one, and nobody
/// makes themselves another by a header of their own.
#[tokio::test]
async fn guesses_are_counted_for_whoever_the_trusted_proxy_names() {
    let gym = two_days();
    drop(gym.coach().await);
    let guess = async |router: Router, forwarded: &str, code: &str| {
        let host = crate::gym::HOST;
        let origin = format!("http://{host}");
        let headers = [
            ("host", host),
            ("origin", origin.as_str()),
            ("content-type", "application/x-www-form-urlencoded"),
            ("x-forwarded-for", forwarded),
        ];
        let body = format!("code={code}");
        let answer = ask(router, "POST", "/sign-in", &headers, &body).await;
        answer.status().as_u16()
    };
    let trusted = gym.router_of(Front {
        proxies: vec!["192.168.1.2".parse().expect("an address")],
        ..Front::default()
    });
    for n in 0..5 {
        let forwarded = format!("10.9.9.{n}, 10.0.0.1");
        assert_eq!(guess(trusted.clone(), &forwarded, "wrong-one").await, 403);
    }
    assert_eq!(guess(trusted.clone(), "6.6.6.6, 10.0.0.1", CODE).await, 429);
    assert_eq!(guess(trusted, "10.0.0.2", CODE).await, 303, "another phone");
    // Not named in the file, it is only one more machine, whatever it says.
    for n in 0..5 {
        let forwarded = format!("10.1.1.{n}");
        assert_eq!(guess(gym.router(), &forwarded, "wrong-one").await, 403);
    }
    assert_eq!(guess(gym.router(), "10.1.1.77", CODE).await, 429);
}
