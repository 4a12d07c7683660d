//! Every kind of bad request to the page: its status, a sentence, and nothing of the record. Laid
//! out in `app/share/REFUSALS.md`; `PINLADDER_RENEW=1` writes it anew.
use crate::gym::{CODE, Gym, HOST, text, two_days};
use axum::body::Body;
use axum::http::Request;
use std::collections::BTreeMap;
use std::fmt::Write as _;
use std::fs;
use std::path::Path;
use tower::ServiceExt as _;

/// One request that is refused.
struct Case {
    what: &'static str,
    method: &'static str,
    target: String,
    headers: Vec<(&'static str, String)>,
    body: String,
    status: u16,
}

/// As a program asks.
fn get(what: &'static str, target: &str, status: u16) -> Case {
    Case {
        what,
        method: "GET",
        target: target.to_owned(),
        headers: vec![("host", HOST.to_owned())],
        body: String::new(),
        status,
    }
}

/// As a browser sends a form from a page of here.
fn post(what: &'static str, target: &str, body: &str, status: u16) -> Case {
    let form = "application/x-www-form-urlencoded".to_owned();
    Case {
        method: "POST",
        body: body.to_owned(),
        ..get(what, target, status)
    }
    .with("origin", format!("http://{HOST}"))
    .with("content-type", form)
}

impl Case {
    fn with(mut self, name: &'static str, value: impl Into<String>) -> Self {
        self.headers.push((name, value.into()));
        self
    }

    fn without(mut self, name: &str) -> Self {
        self.headers.retain(|(known, _)| *known != name);
        self
    }
}

fn guarded() -> Vec<Case> {
    let method = |method| Case {
        method,
        ..get("", "/coach", 405)
    };
    vec![
        Case {
            what: "a method that no page has",
            ..method("BREW")
        },
        Case {
            what: "something is put where it is only read",
            ..method("PUT")
        },
        get("no such address", "/nothing", 404),
        get(
            "an address of two thousand letters",
            &format!("/{}", "x".repeat(2_000)),
            414,
        ),
        get("no host", "/", 400).without("host"),
        get("two hosts", "/", 400).with("host", "localhost"),
        get("a host that another site made up", "/", 421)
            .without("host")
            .with("host", "evil.example"),
        get(
            "another host in front of the path",
            "http://evil.example/",
            421,
        ),
        get("another site's page looks at it", "/record.json", 403)
            .with("sec-fetch-site", "cross-site")
            .with("sec-fetch-mode", "no-cors"),
        post("another site's form", "/sign-in", "code=1", 403)
            .without("origin")
            .with("origin", "http://evil.example"),
        post("a form of nobody's page", "/sign-in", "code=1", 403).without("origin"),
    ]
}

fn forms() -> Vec<Case> {
    let long = format!("code={}", "1".repeat(2_000));
    vec![
        post("a form of another kind", "/sign-in", "{}", 415)
            .without("content-type")
            .with("content-type", "application/json"),
        post("a form that is too long", "/sign-in", &long, 413),
        post("a form cut within a letter", "/sign-in", "code=%2", 400),
        post("a form that is no text", "/sign-in", "code=%ff", 400),
        post("a form without its field", "/sign-in", "cod=1", 400),
        post("a field twice", "/sign-in", "code=1&code=2", 400),
        post("a wrong code", "/sign-in", "code=two-wrong-words", 403),
        post("a language that is none", "/language", "language=xx", 400),
        post(
            "an order without a session",
            "/coach/desk",
            "order=copy",
            401,
        ),
        post("a plan without a session", "/coach/plans", "plan=x", 401),
        post(
            "a plan taken without a session",
            "/coach/plans/7",
            "mark=1",
            401,
        ),
        post(
            "a ruling without a session",
            "/coach/today",
            "do=fit&lifter=Ada",
            401,
        ),
        post(
            "a week changed without a session",
            "/coach/week",
            "do=off&lifter=Ada",
            401,
        ),
    ]
}

fn rights() -> Vec<Case> {
    let token = "0".repeat(32);
    let mut cases = vec![
        get("a link that never was", &format!("/mine/{token}"), 404),
        get("a link of odd letters", "/mine/%2e%2e%2f", 404),
    ];
    for (what, target) in [
        ("the record as CSV without a session", "/record.csv"),
        ("the record as JSON without a session", "/record.json"),
        ("the journal without a session", "/journal.sqlite"),
        ("a blank plan without a session", "/coach/blank.csv"),
    ] {
        cases.push(get(what, target, 401));
    }
    cases
}

fn of_coach(cookie: &str) -> Vec<Case> {
    vec![
        get("a day that is none", "/coach?before=soon", 400),
        get("a week from no day", "/coach/week?from=soon", 400),
        post(
            "a change of a week that is none",
            "/coach/week",
            "do=x&day=2026-03-06",
            400,
        ),
        get("a lifter whom nobody knows", "/coach/lifter/Nobody", 404),
        get("a lifter of odd letters", "/coach/lifter/%ff", 400),
        post(
            "an order that is none",
            "/coach/desk",
            &format!("code={CODE}&about=x&order=dance"),
            400,
        ),
        post(
            "an order with a wrong code",
            "/coach/desk",
            "code=two-wrong-words&about=x&order=copy",
            403,
        ),
        post("a plan that is no file", "/coach/plans", "plan=x", 415),
        get("a plan that lies here no longer", "/coach/plans/7", 404),
        post(
            "a deed that is none",
            "/coach/today",
            "do=x&lifter=Ada",
            400,
        ),
        post(
            "a day of a form that is none",
            "/coach/today",
            "do=hurt&lifter=Ada&from=31.3.",
            400,
        ),
    ]
    .into_iter()
    .map(|case| case.with("cookie", cookie))
    .collect()
}

/// Status and sentence.
async fn ask(gym: &Gym, case: &Case) -> (u16, String) {
    let mut request = Request::builder().method(case.method).uri(&case.target);
    for (name, value) in &case.headers {
        request = request.header(*name, value);
    }
    let request = request
        .body(Body::from(case.body.clone()))
        .expect("a request");
    let response = gym.router().oneshot(request).await.expect("cannot fail");
    let status = response.status().as_u16();
    let said = text(response).await;
    (status, sentence(&said))
}

/// The detail of a problem, or a page's notice.
fn sentence(said: &str) -> String {
    if let Ok(problem) = serde_json::from_str::<serde_json::Value>(said) {
        return problem["detail"].as_str().unwrap_or_default().to_owned();
    }
    let notice = said.split("class=\"notice\"").nth(1).unwrap_or_default();
    let notice = notice.split_once('>').map_or("", |(_, rest)| rest);
    notice.split('<').next().unwrap_or_default().to_owned()
}

#[tokio::test]
async fn every_bad_request_is_refused_with_a_sentence() {
    let gym = two_days();
    let cookie = gym.coach().await;
    let parts = [
        ("whatever is asked", guarded()),
        ("forms", forms()),
        ("without a right to it", rights()),
        ("a coach", of_coach(&cookie)),
    ];
    let mut rows = BTreeMap::<&str, Vec<String>>::new();
    for (part, cases) in parts {
        for case in cases {
            let (status, said) = ask(&gym, &case).await;
            let what = case.what;
            assert_eq!(status, case.status, "{what}: {said}");
            let letters = said.chars().filter(|c| c.is_alphabetic()).count();
            assert!(letters >= 12, "{what}: {said:?} is no sentence");
            assert!(!said.contains("halting"), "{what}: {said}");
            let row = format!("| {what} | {status} | {} |", said.replace('|', "\\|"));
            rows.entry(part).or_default().push(row);
        }
    }
    // Whoever guesses on is to wait, and is told how long.
    let guess = post("", "/sign-in", "code=two-wrong-words", 429);
    for _ in 0..6 {
        let (status, said) = ask(&gym, &guess).await;
        if status == 429 {
            let row = format!("| wrong codes on and on | {status} | {said} |");
            rows.entry("forms").or_default().push(row);
            compare(&table(&rows));
            return;
        }
    }
    panic!("nobody is told to wait");
}

fn table(rows: &BTreeMap<&str, Vec<String>>) -> String {
    let mut text = String::from(
        "# What the page tells of bad requests\n\nWritten by `app/share/tests/share/refused.rs`, which \
         sends each of them. To a browser the\nsame is told as a page, in its language.\n",
    );
    for (part, rows) in rows {
        let head = "| request | status | what is told |\n|---|---|---|";
        let rows = rows.join("\n");
        writeln!(text, "\n## {part}\n\n{head}\n{rows}").expect("into a text");
    }
    text
}

fn compare(text: &str) {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("REFUSALS.md");
    if std::env::var_os("PINLADDER_RENEW").is_some() {
        fs::write(&path, text).expect("writes");
    }
    let kept = fs::read_to_string(&path).unwrap_or_default();
    for (kept, now) in kept.lines().zip(text.lines()) {
        assert_eq!(kept, now, "PINLADDER_RENEW=1 writes REFUSALS.md anew");
    }
    assert_eq!(kept.lines().count(), text.lines().count());
}
