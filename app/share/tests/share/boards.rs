//! The floor board on TVs that are left on for weeks: many at once, dead lines, refusals, no script.
use crate::gym::{Gym, ask_with, post, text, two_days};
use crate::pages::{Events, board};
use axum::Router;
use axum::body::Body;
use axum::http::{Request, Response};
use share::Peer;
use std::net::IpAddr;
use tower::ServiceExt as _;

/// Asks as a machine with this address does.
async fn from(
    router: Router,
    address: &str,
    target: &str,
    headers: &[(&str, &str)],
) -> Response<Body> {
    let address: IpAddr = address.parse().expect("an address");
    let mut request = Request::builder()
        .uri(target)
        .header("host", crate::gym::HOST)
        .extension(Peer(address));
    for (name, value) in headers {
        request = request.header(*name, *value);
    }
    let request = request.body(Body::empty()).expect("a request");
    router.oneshot(request).await.expect("cannot fail")
}

/// The issue's own figure: 200 boards open, and the 201st TV is no trouble either.
#[tokio::test]
async fn two_hundred_boards_follow() {
    let gym = two_days();
    let router = gym.router();
    let mut boards = Vec::new();
    for n in 0..201 {
        let address = format!("192.168.{}.{}", n / 200, n % 200 + 1);
        let live = from(router.clone(), &address, "/board/live", &[]).await;
        let mut events = Events::of(live);
        events.next().await;
        boards.push(events);
    }
    gym.desk().show(&board(&["Ada"]));
    for events in &mut boards {
        assert!(events.next().await.contains("Ada"));
    }
}

/// A TV that is switched off and on again leaves a board behind each time, until its line is known
/// to be dead.
#[tokio::test(start_paused = true)]
async fn a_board_that_was_left_open_takes_no_other_s_seat() {
    let gym = two_days();
    let router = gym.router();
    let mut other = Events::of(from(router.clone(), "192.168.1.7", "/board/live", &[]).await);
    other.next().await;
    let mut left = Vec::new();
    for _ in 0..40 {
        let live = from(router.clone(), "192.168.1.8", "/board/live", &[]).await;
        let mut events = Events::of(live);
        events.next().await;
        left.push(events);
    }
    // The oldest go, slowly enough not to chase the others; the last ones and the other's stay.
    let oldest = left.first_mut().expect("one");
    assert_eq!(oldest.next().await, "retry: 60000\n\n");
    assert_eq!(oldest.next_if_any().await, None);
    gym.desk().show(&board(&["Ada"]));
    let last = left.last_mut().expect("one");
    assert!(last.next().await.contains("Ada"));
    assert!(other.next().await.contains("Ada"));
}

/// Nobody stands before a TV to load the page again.
#[tokio::test]
async fn a_page_that_is_refused_for_a_moment_loads_itself_again() {
    let gym = two_days();
    let router = gym.router();
    let html = [("accept", "text/html,*/*;q=0.8")];
    let mut boards = Vec::new();
    for n in 0..300 {
        let address = format!("192.168.{}.{}", n / 200, n % 200 + 1);
        boards.push(from(router.clone(), &address, "/board/live", &[]).await);
    }
    let refused = from(router.clone(), "10.0.0.1", "/board/live", &html).await;
    assert_eq!(refused.status(), 503);
    assert_eq!(
        refused.headers()["refresh"],
        refused.headers()["retry-after"]
    );
    // The board's page itself takes no seat.
    let page = from(router.clone(), "10.0.0.1", "/board", &html).await;
    assert_eq!(page.status(), 200);
    drop(boards.pop());
    let live = from(router.clone(), "10.0.0.1", "/board/live", &[]).await;
    assert_eq!(live.status(), 200);
    // What is typed is not typed again by itself, and a wrong address stays wrong.
    let missing = ask_with(router.clone(), "GET", "/nothing", &html).await;
    assert!(missing.headers().get("refresh").is_none());
    let posted = post(router, "/sign-in", ("/sign-in", "code=x"), &html).await;
    assert!(posted.headers().get("refresh").is_none());
}

/// Without scripts the page is loaded again and again, and shows the board of then.
#[tokio::test]
async fn a_board_without_scripts_shows_who_is_up() {
    let gym = two_days();
    let page = async |gym: &Gym| text(gym.open("/board").await).await;
    // Nobody followed: what was shown last may be hours old.
    gym.desk().show(&board(&["Old"]));
    gym.wait_ms(3_600_000);
    assert!(!gym.desk().is_followed());
    let first = page(&gym).await;
    assert!(
        !first.contains("Old") && first.contains("waiting for the kiosk</p>"),
        "{first}"
    );
    let again = "<noscript><meta http-equiv=\"refresh\" content=\"3\"></noscript>";
    assert!(first.contains(again), "{first}");
    // From now on the kiosk shows its floor, and the next load has it.
    assert!(gym.desk().is_followed());
    gym.desk().show(&board(&["Ada", "Bo", "<i>Cy</i>"]));
    gym.wait_ms(3_000);
    let next = page(&gym).await;
    for part in [
        "<h2>North</h2>",
        "<article class=\"up\"><header><span class=\"lifter\">Ada</span>",
        "<article class=\"next\">",
        "&lt;i&gt;Cy&lt;/i&gt;",
        "180 kg",
        "<p id=\"clock\">18:42</p>",
    ] {
        assert!(next.contains(part), "{part}: {next}");
    }
    assert!(!next.contains("waiting for the kiosk</p>"), "{next}");
    gym.wait_ms(60_000);
    assert!(!gym.desk().is_followed(), "a TV that was switched off");
}

/// What the script does is driven in a browser (tests/references/pages.py); here, that it has what
/// it needs: a page that knows its version, and no end to trying.
#[tokio::test]
async fn the_script_s_words_are_the_server_s() {
    let gym = two_days();
    let page = text(gym.open("/board").await).await;
    let version = format!("data-version=\"{}\"", env!("CARGO_PKG_VERSION"));
    assert!(page.contains(&version), "{page}");
    let script = text(gym.open("/board.js").await).await;
    for word in [
        "\"version\"",
        "\"alive\"",
        "opaqueredirect",
        "EventSource.CLOSED",
    ] {
        assert!(script.contains(word), "{word}");
    }
}
