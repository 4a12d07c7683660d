//! Long records, broken records, and many who read at once.
use crate::gym::{ask_with, long, text};
use axum::body::{Body, BodyDataStream, Bytes};
use axum::http::Response;
use futures_core::Stream as _;
use std::fs;
use std::future::poll_fn;
use std::pin::Pin;
use std::time::Duration;

/// The next piece of a body.
async fn next(body: &mut BodyDataStream) -> Option<Result<Bytes, axum::Error>> {
    poll_fn(|context| Pin::new(&mut *body).poll_next(context)).await
}

fn pieces(response: Response<Body>) -> BodyDataStream {
    response.into_body().into_data_stream()
}

const SETS: usize = 6_000;

#[tokio::test]
async fn a_long_record_comes_in_pieces() {
    let gym = long(SETS);
    for (target, row) in [
        ("/coach", "<tr><th"),
        ("/record.csv", "\r\n"),
        ("/record.json", "{\"set\""),
    ] {
        let mut body = pieces(gym.get(target).await);
        let (mut count, mut all) = (0, Vec::new());
        while let Some(piece) = next(&mut body).await {
            all.extend_from_slice(&piece.expect("whole"));
            count += 1;
        }
        let all = String::from_utf8(all).expect("text");
        assert!(all.matches(row).count() >= SETS, "{target}");
        assert!(
            count > 5 || target == "/coach",
            "{target} in {count} pieces"
        );
    }
}

/// Whoever reads must be able to tell a part from the whole.
#[tokio::test]
async fn a_record_broken_half_way_ends_in_an_error() {
    let gym = long(SETS);
    let mut bytes = fs::read(gym.record()).expect("reads");
    let page = 4_096;
    assert!(bytes.len() > 100 * page);
    // All but the first pages become noise, so that reading begins and then fails.
    for byte in &mut bytes[60 * page..] {
        *byte ^= 0x5a;
    }
    fs::write(gym.record(), bytes).expect("writes");
    let response = gym.get("/record.csv").await;
    assert_eq!(response.status(), 200);
    let mut body = pieces(response);
    let mut last = None;
    while let Some(piece) = next(&mut body).await {
        let broken = piece.is_err();
        last = Some(broken);
        if broken {
            break;
        }
    }
    assert_eq!(last, Some(true), "the part must not pass for the whole");
}

#[tokio::test]
async fn more_readers_than_seats_are_asked_to_wait() {
    let gym = long(SETS);
    let router = gym.router();
    let cookie = gym.coach().await;
    let headers = [("cookie", cookie.as_str())];
    let get = || ask_with(router.clone(), "GET", "/record.json", &headers);
    let mut readers = Vec::new();
    for _ in 0..8 {
        let response = get().await;
        assert_eq!(response.status(), 200);
        readers.push(response);
    }
    let ninth = get().await;
    assert_eq!(ninth.status(), 503);
    assert_eq!(ninth.headers()["retry-after"], "5");
    assert!(text(ninth).await.contains("too many are reading at once"));
    // One reads to the end, one goes away: both seats are free again.
    assert!(text(readers.remove(0)).await.ends_with("\n]}\n"));
    drop(readers.remove(0));
    let mut again = Vec::new();
    for _ in 0..200 {
        let response = get().await;
        if response.status() == 200 {
            again.push(response);
        }
        if again.len() == 2 {
            return;
        }
        tokio::time::sleep(Duration::from_millis(10)).await;
    }
    panic!("{} of 2 seats came free", again.len());
}
