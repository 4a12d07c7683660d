//! Tokens of the gym's own programs: made, used, odd, taken back.
use crate::gym::{CODE, Gym, HOST, ask, ask_with, march, post, text};
use crate::programs::gym;
use axum::body::Body;
use axum::http::{Request, Response};
use share::Today;
use std::os::unix::fs::PermissionsExt as _;
use tower::ServiceExt as _;

const FILE: &str = "page-tokens.json";

/// Makes a token at the desk: itself.
pub(crate) async fn made(gym: &Gym, name: &str, may: &str, until: &str) -> String {
    let (status, page) = desk(gym, &format!("do=make&name={name}&may={may}&until={until}")).await;
    assert_eq!(status, 200, "{page}");
    let token = page.split("<p class=\"print\">").nth(1).expect("shown");
    token.split('<').next().expect("a token").to_owned()
}

pub(crate) async fn desk(gym: &Gym, form: &str) -> (u16, String) {
    let coach = gym.coach().await;
    let form = format!("{form}&code={CODE}");
    let headers = [("cookie", coach.as_str()), ("accept", "text/html")];
    let told = post(
        gym.router(),
        "/coach/tokens",
        ("/coach/desk", &form),
        &headers,
    )
    .await;
    (told.status().as_u16(), text(told).await)
}

pub(crate) async fn with(
    gym: &Gym,
    token: &str,
    method: &str,
    target: &str,
    body: &str,
) -> Response<Body> {
    let request = Request::builder()
        .method(method)
        .uri(target)
        .header("host", HOST)
        .header("authorization", format!("Bearer {token}"))
        .body(Body::from(body.to_owned()))
        .expect("a request");
    gym.router().oneshot(request).await.expect("cannot fail")
}

#[tokio::test]
async fn a_token_reads_until_its_day_is_over_or_it_is_taken_back() {
    let gym = gym();
    let token = made(&gym, "the+%3Cwall%3E", "read", "2026-03-07").await;
    for target in [
        "/record.csv",
        "/record.json",
        "/journal.sqlite",
        "/lifters.json",
        "/due.json",
    ] {
        assert_eq!(
            with(&gym, &token, "GET", target, "").await.status(),
            200,
            "{target}"
        );
    }
    // Pages are for people; a plan is not this token's.
    assert_eq!(
        with(&gym, &token, "GET", "/coach/today", "").await.status(),
        303
    );
    assert_eq!(
        with(&gym, &token, "POST", "/plans?name=a.csv", "x")
            .await
            .status(),
        403
    );
    let path = gym.folder().join(FILE);
    let kept = std::fs::read_to_string(&path).expect("kept");
    assert!(!kept.contains(&token), "its hash alone: {kept}");
    let mode = std::fs::metadata(&path)
        .expect("there")
        .permissions()
        .mode();
    assert_eq!(mode & 0o777, 0o600);
    let page = gym.text("/coach/desk").await;
    assert!(
        page.contains("the &lt;wall&gt;") && !page.contains(&token),
        "shown once"
    );
    // The last day counts; the day after it is over.
    let on = |day| Today {
        date: march(day),
        gym: "Yard".to_owned(),
    };
    gym.desk().begin_day(on(7));
    assert_eq!(
        with(&gym, &token, "GET", "/record.csv", "").await.status(),
        200
    );
    gym.desk().begin_day(on(8));
    assert_eq!(
        with(&gym, &token, "GET", "/record.csv", "").await.status(),
        401
    );
    gym.desk().begin_day(on(6));
    let (status, page) = desk(&gym, "do=back&name=the+%3Cwall%3E").await;
    assert!(
        status == 200 && page.contains("opens nothing any more"),
        "{page}"
    );
    let told = with(&gym, &token, "GET", "/record.csv", "").await;
    assert_eq!(told.status(), 401);
    assert!(
        told.headers()
            .get_all("www-authenticate")
            .iter()
            .any(|way| way == "Bearer")
    );
    let (status, _) = desk(&gym, "do=back&name=the+%3Cwall%3E").await;
    assert_eq!(status, 409);
}

#[tokio::test]
async fn odd_tokens_open_nothing() {
    let gym = gym();
    let token = made(&gym, "wall", "read", "2026-12-31").await;
    let mut wrong = token.clone();
    let digit = if wrong.ends_with('0') { "1" } else { "0" };
    wrong.replace_range(63.., digit);
    for odd in [
        "",
        "x",
        &wrong,
        &token[1..],
        &token.to_uppercase(),
        &format!("{token}{token}"),
    ] {
        assert_eq!(
            with(&gym, odd, "GET", "/record.csv", "").await.status(),
            401,
            "{odd}"
        );
    }
    for line in [
        format!("Basic {token}"),
        format!("Bearer{token}"),
        token.clone(),
    ] {
        let headers = [("authorization", line.as_str())];
        let told = ask_with(gym.router(), "GET", "/record.csv", &headers).await;
        assert_eq!(told.status(), 401, "{line}");
    }
    // In an address it would be told to logs and neighbours.
    let told = ask(
        gym.router(),
        "GET",
        &format!("/record.csv?access_token={token}"),
    )
    .await;
    assert_eq!(told.status(), 401);
    // A wrong token is not mended by a session that comes along.
    let coach = gym.coach().await;
    let both = [("cookie", coach.as_str()), ("authorization", "Bearer x")];
    assert_eq!(
        ask_with(gym.router(), "GET", "/record.csv", &both)
            .await
            .status(),
        401
    );
    // A file that others can write gives nobody a right.
    let path = gym.folder().join(FILE);
    std::fs::set_permissions(&path, std::fs::Permissions::from_mode(0o666)).expect("sets");
    assert_eq!(
        with(&gym, &token, "GET", "/record.csv", "").await.status(),
        401
    );
    assert!(gym.text("/coach/desk").await.contains("cannot be used"));
    std::fs::set_permissions(&path, std::fs::Permissions::from_mode(0o600)).expect("sets");
    assert_eq!(
        with(&gym, &token, "GET", "/record.csv", "").await.status(),
        200
    );
    for bytes in ["", "{", "[]", "{\"version\":2,\"tokens\":[]}"] {
        std::fs::write(&path, bytes).expect("writes");
        assert_eq!(
            with(&gym, &token, "GET", "/record.csv", "").await.status(),
            401,
            "{bytes}"
        );
        assert_eq!(
            desk(&gym, "do=make&name=x&may=read&until=2026-03-07")
                .await
                .0,
            409,
            "{bytes}"
        );
    }
}

#[tokio::test]
async fn tokens_are_made_within_bounds_and_with_the_code_alone() {
    let gym = gym();
    for odd in [
        "name=&may=read&until=2026-03-07",
        "name=%0A&may=read&until=2026-03-07",
        "name=a&may=read&until=2026-03-05",
        "name=a&may=read&until=2030-01-01",
        &format!("name={}&may=read&until=2026-03-07", "x".repeat(41)),
    ] {
        assert_eq!(desk(&gym, &format!("do=make&{odd}")).await.0, 409, "{odd}");
    }
    for odd in [
        "name=a&may=write&until=2026-03-07",
        "name=a&may=read&until=soon",
        "may=read",
    ] {
        assert_eq!(desk(&gym, &format!("do=make&{odd}")).await.0, 400, "{odd}");
    }
    for n in 0..20 {
        drop(made(&gym, &format!("n{n}"), "plans", "2026-03-07").await);
    }
    let (status, page) = desk(&gym, "do=make&name=more&may=read&until=2026-03-07").await;
    assert!(status == 409 && page.contains("20 tokens"), "{page}");
    assert_eq!(
        desk(&gym, "do=make&name=n1&may=read&until=2026-03-07")
            .await
            .0,
        409,
        "twice"
    );
    let coach = gym.coach().await;
    let form = "do=back&name=n1&code=two-wrong-words";
    let send = async |headers: &[(&str, &str)]| {
        let told = post(
            gym.router(),
            "/coach/tokens",
            ("/coach/desk", form),
            headers,
        )
        .await;
        told.status().as_u16()
    };
    assert_eq!(send(&[("cookie", coach.as_str())]).await, 403);
    assert_eq!(send(&[]).await, 401);
    assert!(
        std::fs::read_to_string(gym.folder().join(FILE))
            .expect("kept")
            .contains("\"n1\"")
    );
}
