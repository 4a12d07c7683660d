//! A lifter's own record: on the phone that opened it, until midnight, and to be taken home.
use crate::gym::{Gym, ask, ask_with, cookie, post, text, two_days};
use axum::body::Body;
use axum::http::Response;

const MINUTE_MS: u64 = 60_000;

/// Opens the link of somebody's lift: its path and the phone's cookie.
async fn opened(gym: &Gym, lift: u32, lifter: &str) -> (String, String) {
    let path = gym.desk().link(lift, lifter, 0).expect("a link");
    let told = post(gym.router(), &path, (&path, ""), &[]).await;
    assert_eq!(told.status(), 303);
    let cookie = cookie(&told);
    (path, cookie)
}

async fn with(gym: &Gym, target: &str, cookie: &str) -> Response<Body> {
    ask_with(gym.router(), "GET", target, &[("cookie", cookie)]).await
}

#[tokio::test]
async fn a_lifter_takes_their_own_sets_home_and_nobody_else_s() {
    let gym = two_days();
    let (path, phone) = opened(&gym, 2, "Ada").await;
    let page = text(with(&gym, &path, &phone).await).await;
    for end in ["record.csv", "record.json"] {
        assert!(page.contains(&format!("href=\"{path}/{end}\"")), "{page}");
    }
    let csv = text(with(&gym, &format!("{path}/record.csv"), &phone).await).await;
    assert_eq!(csv.lines().count(), 1 + 4);
    assert!(
        csv.contains("halting deadlift") && !csv.contains("Bo"),
        "{csv}"
    );
    let json = with(&gym, &format!("{path}/record.json"), &phone).await;
    let json: serde_json::Value = serde_json::from_str(&text(json).await).expect("JSON");
    let sets = json["sets"].as_array().expect("sets");
    assert!(sets.len() == 4 && sets.iter().all(|set| set["lifter"] == "Ada"));
    // The query does not widen it.
    let csv = text(with(&gym, &format!("{path}/record.csv?lifter=Bo"), &phone).await).await;
    assert!(!csv.contains("Bo"), "{csv}");
}

#[tokio::test]
async fn whoever_has_the_address_alone_gets_nothing() {
    let gym = two_days();
    let (path, _) = opened(&gym, 2, "Ada").await;
    let (_, other) = opened(&gym, 1, "Bo").await;
    let coach = gym.coach().await;
    for end in ["", "/record.csv", "/record.json"] {
        let target = format!("{path}{end}");
        assert_eq!(
            ask(gym.router(), "GET", &target).await.status(),
            410,
            "{target}"
        );
        for jar in [&other, &coach] {
            let told = with(&gym, &target, jar).await;
            assert_eq!(told.status(), 410, "{target}");
            assert!(!text(told).await.contains("halting"));
        }
        let odd = target.replace("/mine/", "/mine/0");
        assert_eq!(with(&gym, &odd, &other).await.status(), 404, "{odd}");
    }
    let posted = post(
        gym.router(),
        &format!("{path}/record.csv"),
        (&path, ""),
        &[],
    )
    .await;
    assert_eq!(posted.status(), 405);
}

#[tokio::test]
async fn it_is_open_until_midnight_and_not_a_moment_longer() {
    let gym = two_days();
    gym.desk().know_midnight(95 * MINUTE_MS);
    let (path, phone) = opened(&gym, 2, "Ada").await;
    gym.wait_ms(94 * MINUTE_MS);
    assert_eq!(with(&gym, &path, &phone).await.status(), 200);
    assert_eq!(
        with(&gym, &format!("{path}/record.csv"), &phone)
            .await
            .status(),
        200
    );
    gym.wait_ms(MINUTE_MS);
    for end in ["", "/record.csv"] {
        let told = with(&gym, &format!("{path}{end}"), &phone).await;
        assert!(told.status().is_client_error(), "{end}: {}", told.status());
    }
    // A minute before midnight a link still holds its ten minutes, and so does what it opens.
    gym.desk().know_midnight(MINUTE_MS);
    let (path, phone) = opened(&gym, 3, "Ada").await;
    gym.wait_ms(9 * MINUTE_MS);
    assert_eq!(with(&gym, &path, &phone).await.status(), 200);
    gym.wait_ms(2 * MINUTE_MS);
    assert!(with(&gym, &path, &phone).await.status().is_client_error());
}

#[tokio::test]
async fn lifters_phones_shut_no_coach_out() {
    let gym = two_days();
    gym.desk().know_midnight(600 * MINUTE_MS);
    let coach = gym.coach().await;
    for lift in 10..250 {
        drop(opened(&gym, lift, "Ada").await);
    }
    assert_eq!(with(&gym, "/coach/today", &coach).await.status(), 200);
}
