//! Who gets in: codes, guesses, cookies, other sites, links that open once.
use crate::gym::{CODE, Gym, HOST, ask, ask_with, cookie, sign_in, text, two_days};
use axum::body::Body;
use axum::http::{Request, Response};
use tower::ServiceExt as _;

const SECRET: [&str; 7] = [
    "/coach",
    "/coach/today",
    "/coach/plan",
    "/coach/lifter/Ada",
    "/record.csv",
    "/record.json",
    "/journal.sqlite",
];

pub(crate) async fn post(
    gym: &Gym,
    target: &str,
    headers: &[(&str, &str)],
    body: Body,
) -> Response<Body> {
    let mut request = Request::builder()
        .method("POST")
        .uri(target)
        .header("host", HOST);
    for (name, value) in headers {
        request = request.header(*name, *value);
    }
    let request = request.body(body).expect("a request");
    gym.router().oneshot(request).await.expect("cannot fail")
}

pub(crate) const FORM: (&str, &str) = ("content-type", "application/x-www-form-urlencoded");
pub(crate) const OURS: (&str, &str) = ("origin", "http://192.168.1.20:8080");

#[tokio::test]
async fn nothing_of_the_record_without_a_code() {
    let gym = two_days();
    share::set_code(gym.folder(), CODE).expect("sets");
    for target in SECRET {
        for cookies in [
            "",
            "pinladder-coach=",
            "pinladder-coach=00",
            "pinladder-own=x",
        ] {
            let headers = [("cookie", cookies)];
            let response = ask_with(gym.router(), "GET", target, &headers).await;
            let status = response.status().as_u16();
            assert!(status == 303 || status == 401, "{target}: {status}");
            assert!(!text(response).await.contains("Ada"), "{target}");
        }
        let made_up = format!("pinladder-coach={}", "0".repeat(64));
        let headers = [("cookie", made_up.as_str())];
        let response = ask_with(gym.router(), "GET", target, &headers).await;
        assert!(!response.status().is_success(), "{target}");
    }
    for target in ["/", "/board", "/sign-in", "/openapi.json"] {
        let response = gym.open(target).await;
        assert_eq!(response.status(), 200, "{target}");
        assert!(!text(response).await.contains("Ada"), "{target}");
    }
}

#[tokio::test]
async fn the_code_opens_and_the_cookie_is_out_of_reach() {
    let gym = two_days();
    share::set_code(gym.folder(), CODE).expect("sets");
    let response = sign_in(gym.router(), CODE).await;
    assert_eq!(response.status(), 303);
    assert_eq!(response.headers()["location"], "/coach/today");
    let set = response.headers()["set-cookie"]
        .to_str()
        .expect("text")
        .to_owned();
    for part in [
        "; HttpOnly",
        "; SameSite=Strict",
        "; Path=/",
        "; Max-Age=7200",
    ] {
        assert!(set.contains(part), "{set}");
    }
    let cookie = cookie(&response);
    let (name, token) = cookie.split_once('=').expect("a pair");
    assert_eq!((name, token.len()), ("pinladder-coach", 64));
    let headers = [("cookie", cookie.as_str())];
    for target in SECRET {
        let response = ask_with(gym.router(), "GET", target, &headers).await;
        assert_eq!(response.status(), 200, "{target}");
    }
    // Two tokens have nothing in common.
    assert_ne!(gym.coach().await, cookie);
    // Signed out, it opens nothing.
    let out = post(&gym, "/sign-out", &[OURS, headers[0]], Body::empty()).await;
    assert_eq!(out.status(), 303);
    assert!(
        out.headers()["set-cookie"]
            .to_str()
            .expect("text")
            .contains("Max-Age=0")
    );
    let response = ask_with(gym.router(), "GET", "/record.csv", &headers).await;
    assert_eq!(response.status(), 401);
    assert!(response.headers().contains_key("www-authenticate"));
}

#[tokio::test]
async fn sessions_end_by_time_and_by_another_code() {
    let gym = two_days();
    let first = gym.coach().await;
    let get = async |cookie: &str| {
        let headers = [("cookie", cookie)];
        ask_with(gym.router(), "GET", "/record.csv", &headers)
            .await
            .status()
    };
    gym.wait_ms(2 * 60 * 60 * 1_000 - 1);
    assert_eq!(get(&first).await, 200);
    gym.wait_ms(1);
    assert_eq!(get(&first).await, 401);
    let second = gym.coach().await;
    assert_eq!(get(&second).await, 200);
    share::set_code(gym.folder(), "another-code").expect("sets");
    assert_eq!(get(&second).await, 401);
    share::remove_code(gym.folder()).expect("removes");
    let response = sign_in(gym.router(), CODE).await;
    assert_eq!(response.status(), 403);
    assert!(
        text(response)
            .await
            .contains("no code is set; the owner sets one with: pinladder code")
    );
}

#[tokio::test]
async fn a_lifter_without_a_record_is_not_found() {
    let gym = two_days();
    let session = gym.coach().await;
    let headers = [("cookie", session.as_str())];
    for (name, status) in [("Ada", 200), ("nobody", 404), ("%F0%9F%8F%8B", 404)] {
        let target = format!("/coach/lifter/{name}");
        let response = ask_with(gym.router(), "GET", &target, &headers).await;
        assert_eq!(response.status(), status, "{name}");
    }
}

#[tokio::test]
async fn forms_that_are_none() {
    let gym = two_days();
    share::set_code(gym.folder(), CODE).expect("sets");
    let good = format!("code={CODE}");
    let sent = async |headers: &[(&str, &str)], body: String| {
        post(&gym, "/sign-in", headers, Body::from(body))
            .await
            .status()
            .as_u16()
    };
    assert_eq!(sent(&[FORM, OURS], good.clone()).await, 303);
    for body in [
        "",
        "code",
        "kode=x",
        "code=%zz",
        "code=a&code=b",
        "code=%ff",
    ] {
        assert_eq!(sent(&[FORM, OURS], body.to_owned()).await, 400, "{body}");
    }
    assert_eq!(sent(&[OURS], good.clone()).await, 415);
    assert_eq!(
        sent(&[("content-type", "application/json"), OURS], "{}".into()).await,
        415
    );
    assert_eq!(
        sent(&[FORM, OURS], format!("code={}", "x".repeat(2_000))).await,
        413
    );
}

/// What another site's page may make a browser ask for.
#[tokio::test]
async fn other_sites_get_nothing_done() {
    let gym = two_days();
    let cookie = gym.coach().await;
    let cookie = ("cookie", cookie.as_str());
    let good = || Body::from(format!("code={CODE}"));
    let foreign: [&[(&str, &str)]; 6] = [
        &[FORM],
        &[FORM, ("origin", "http://evil.example")],
        &[FORM, ("origin", "null")],
        &[FORM, ("origin", "http://192.168.1.20:9999")],
        &[FORM, OURS, ("sec-fetch-site", "cross-site")],
        &[FORM, ("sec-fetch-site", "same-site")],
    ];
    for headers in foreign {
        let response = post(&gym, "/sign-in", headers, good()).await;
        assert_eq!(response.status(), 403, "{headers:?}");
        assert_eq!(
            response.headers()["content-type"],
            "application/problem+json"
        );
        let mut headers = headers.to_vec();
        headers.push(cookie);
        let response = post(&gym, "/sign-out", &headers, Body::empty()).await;
        assert_eq!(response.status(), 403, "{headers:?}");
    }
    // A picture or a script of another site, with the cookie as a careless browser would.
    for site in ["cross-site", "same-site"] {
        let headers = [
            cookie,
            ("sec-fetch-site", site),
            ("sec-fetch-mode", "no-cors"),
        ];
        let response = ask_with(gym.router(), "GET", "/record.csv", &headers).await;
        assert_eq!(response.status(), 403);
    }
    // A link to here is followed.
    let headers = [
        ("sec-fetch-site", "cross-site"),
        ("sec-fetch-mode", "navigate"),
    ];
    let response = ask_with(gym.router(), "GET", "/board", &headers).await;
    assert_eq!(response.status(), 200);
    assert!(
        !response
            .headers()
            .contains_key("access-control-allow-origin")
    );
    // The session is as it was.
    let response = ask_with(gym.router(), "GET", "/record.csv", &[cookie]).await;
    assert_eq!(response.status(), 200);
}

#[tokio::test]
async fn a_lifter_s_link_opens_once() {
    let gym = two_days();
    let path = gym.desk().link(2, "Ada", 0).expect("a link");
    // A look ahead, as some phones and mail programs take it, uses nothing up and tells nothing.
    assert_eq!(ask(gym.router(), "HEAD", &path).await.status(), 200);
    for _ in 0..3 {
        let response = gym.open(&path).await;
        assert_eq!(response.status(), 200);
        assert!(!response.headers().contains_key("set-cookie"));
        let page = text(response).await;
        assert!(page.contains("Show my record") && !page.contains("Ada"));
    }
    // Another site cannot open it for somebody.
    let foreign = [("origin", "http://elsewhere.example")];
    let response = post(&gym, &path, &foreign, Body::empty()).await;
    assert_eq!(response.status(), 403);
    let response = post(&gym, &path, &[OURS], Body::empty()).await;
    assert_eq!(response.status(), 303);
    assert_eq!(response.headers()["location"], path.as_str());
    let own = cookie(&response);
    let opened = [("cookie", own.as_str())];
    let response = ask_with(gym.router(), "GET", &path, &opened).await;
    assert_eq!(response.status(), 200);
    let page = text(response).await;
    assert!(page.contains("<h1>Ada</h1>") && page.contains("halting deadlift"));
    assert!(
        !page.contains("Bo<") && !page.contains("445 lb"),
        "only her own record"
    );
    assert_eq!(gym.open(&path).await.status(), 410, "once");
    let twice = post(&gym, &path, &[OURS], Body::empty()).await;
    assert_eq!(twice.status(), 410, "once");
    let headers = [("cookie", own.as_str())];
    let again = ask_with(gym.router(), "GET", &path, &headers).await;
    assert_eq!(again.status(), 200, "the same browser may look again");
    // It opens nothing else.
    for target in SECRET {
        let status = ask_with(gym.router(), "GET", target, &headers)
            .await
            .status();
        assert!(status == 303 || status == 401, "{target}");
    }
    gym.wait_ms(share::LINK_MS);
    let late = ask_with(gym.router(), "GET", &path, &headers).await;
    assert_eq!(late.status(), 410, "ten minutes");
    assert_eq!(
        gym.desk().link(2, "Ada", 0),
        None,
        "no second link for that lift"
    );
    for token in [
        "x",
        "%00",
        "..%2f..%2fcoach-code",
        &"0".repeat(64),
        &"f".repeat(900),
    ] {
        assert_eq!(
            gym.open(&format!("/mine/{token}")).await.status(),
            404,
            "{token}"
        );
    }
}

/// A link made nine minutes after the end of the lift holds for one.
#[tokio::test]
async fn a_link_counts_from_the_end_of_the_lift() {
    let gym = two_days();
    let path = gym.desk().link(2, "Ada", 9 * 60_000).expect("a link");
    gym.wait_ms(60_000);
    assert_eq!(gym.open(&path).await.status(), 410);
    assert_eq!(gym.desk().link(3, "Ada", 10 * 60_000), None);
}

#[test]
fn codes_are_hashed_and_the_file_is_ours_alone() {
    use std::os::unix::fs::PermissionsExt as _;
    let folder = tempfile::tempdir().expect("a folder");
    let set = |code| share::set_code(folder.path(), code).map_err(|error| error.to_string());
    for (code, told) in [
        ("", "a code of 0 characters; choose from 6 to 64"),
        ("12345", "a code of 5 characters; choose from 6 to 64"),
        (
            "112233",
            "a code that is soon guessed: a row of letters, digits or keys; choose another, three plain words for example",
        ),
        (
            "Password",
            "a code that is soon guessed: a word that everybody tries; choose another, three plain words for example",
        ),
    ] {
        assert_eq!(set(code), Err(told.to_owned()));
    }
    assert_eq!(share::kept_code(folder.path()).expect("reads"), None);
    assert_eq!(set("741852"), Ok(()));
    let path = folder.path().join(share::CODE_FILE);
    let mode = std::fs::metadata(&path)
        .expect("is there")
        .permissions()
        .mode();
    assert_eq!(mode & 0o777, 0o600);
    let kept = share::kept_code(folder.path())
        .expect("reads")
        .expect("set");
    // PHC string of RFC 9106's argon2id, with OWASP's figures.
    assert!(
        kept.starts_with("$argon2id$v=19$m=19456,t=2,p=1$"),
        "{kept}"
    );
    assert!(!kept.contains("741852"));
    assert!(share::is_code(&kept, "741852") && share::is_code(&kept, " 741852 "));
    assert!(
        !share::is_code(&kept, "741853") && !share::is_code("", "") && !share::is_code("x", "x")
    );
    assert_eq!(set("741852"), Ok(()));
    assert_ne!(
        share::kept_code(folder.path()).expect("reads"),
        Some(kept),
        "salted"
    );
}
