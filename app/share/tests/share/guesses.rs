//! Codes that are guessed: few, and by strangers at nobody else's cost.
use crate::doors::{FORM, OURS, post};
use crate::gym::{CODE, sign_in, text, two_days};
use axum::Extension;
use share::Peer;
use std::net::IpAddr;

#[tokio::test]
async fn guesses_are_few() {
    let gym = two_days();
    share::set_code(gym.folder(), CODE).expect("sets");
    let guess = async |from: &str, code: &str| {
        let from: IpAddr = from.parse().expect("an address");
        sign_in(gym.router().layer(Extension(Peer(from))), code).await
    };
    for n in 0..5 {
        let response = guess("10.0.0.1", &format!("guess-{n}")).await;
        assert_eq!(response.status(), 403);
        let page = text(response).await;
        assert!(
            page.contains("that is not the code; ask the owner for it"),
            "{page}"
        );
    }
    // Not even the right one is judged now.
    let response = guess("10.0.0.1", CODE).await;
    assert_eq!(response.status(), 429);
    assert_eq!(response.headers()["retry-after"], "900");
    assert_eq!(
        response.headers()["content-type"],
        "application/problem+json"
    );
    assert_eq!(guess("10.0.0.2", CODE).await.status(), 303);
    // From many addresses, in all.
    for n in 0..25 {
        let response = guess(&format!("10.0.1.{n}"), "guess").await;
        assert_eq!(response.status(), 403, "{n}");
    }
    assert_eq!(guess("10.0.0.3", CODE).await.status(), 429);
    gym.wait_ms(15 * 60 * 1_000);
    assert_eq!(guess("10.0.0.1", CODE).await.status(), 303);
}

/// Thirty wrong codes from six addresses shut strangers out, but no coach.
#[tokio::test]
async fn strangers_do_not_shut_the_coach_out() {
    let gym = two_days();
    share::set_code(gym.folder(), CODE).expect("sets");
    let from = |host: &str| {
        let from: IpAddr = host.parse().expect("an address");
        gym.router().layer(Extension(Peer(from)))
    };
    let first = sign_in(from("10.0.0.9"), CODE).await;
    let words = first.headers().get_all("set-cookie").iter();
    let mut words = words.map(|word| word.to_str().expect("text").to_owned());
    let known = words.find(|word| word.starts_with("pinladder-known="));
    let known = known.expect("the browser is known from now on");
    assert!(known.contains("; HttpOnly") && known.contains("; SameSite=Strict"));
    let known = known.split(';').next().expect("a pair").to_owned();
    for n in 0..30 {
        let host = format!("10.0.1.{}", n % 6);
        assert_eq!(sign_in(from(&host), "guess").await.status(), 403);
    }
    assert_eq!(sign_in(from("10.0.0.9"), CODE).await.status(), 429);
    assert_eq!(gym.desk().judge(CODE), Ok(()), "nor at the kiosk itself");
    let with = async |known: &str, code: &str| {
        let headers = [FORM, OURS, ("cookie", known)];
        post(&gym, "/sign-in", &headers, format!("code={code}").into()).await
    };
    assert_eq!(with(&known, CODE).await.status(), 303);
    let made_up = format!("pinladder-known={}", "0".repeat(64));
    assert_eq!(with(&made_up, CODE).await.status(), 429);
    // It is held to as few guesses as any other, and to the code that it was given under.
    for _ in 0..5 {
        assert_eq!(with(&known, "guess").await.status(), 403);
    }
    assert_eq!(with(&known, CODE).await.status(), 429);
    gym.wait_ms(1);
    share::set_code(gym.folder(), "another-code").expect("sets");
    assert_eq!(with(&known, "another-code").await.status(), 429);
}
