//! What the gym's own programs read: not twice, a part alone, packed, as documents.
use crate::gym::{Gym, ask_with, march, text, two_days};
use axum::body::{Body, to_bytes};
use axum::http::Response;
use domain::MassUnit;
use flate2::read::GzDecoder;
use serde_json::Value;
use share::Today;
use std::io::Read as _;

pub(crate) fn gym() -> Gym {
    let gym = two_days();
    gym.desk().begin_day(Today {
        date: march(6),
        gym: "Yard".to_owned(),
    });
    let unit = |name: &str, unit| (name.to_owned(), unit);
    gym.desk()
        .know_units([unit("Ada", MassUnit::Kg), unit("Cy", MassUnit::Lb)].into());
    gym
}

pub(crate) async fn json(response: Response<Body>) -> Value {
    assert_eq!(response.status(), 200);
    assert_eq!(response.headers()["content-type"], "application/json");
    serde_json::from_str(&text(response).await).expect("JSON")
}

#[tokio::test]
async fn what_somebody_has_already_is_not_sent_again() {
    let gym = gym();
    let coach = gym.coach().await;
    for target in [
        "/record.csv",
        "/record.json?lifter=Ada",
        "/plan.json",
        "/lifters.json",
        "/coach",
        "/coach/week",
        "/style.css",
        "/openapi.json",
    ] {
        let cookie = ("cookie", coach.as_str());
        let first = ask_with(gym.router(), "GET", target, &[cookie]).await;
        assert_eq!(first.status(), 200, "{target}");
        let tag = first.headers()["etag"].to_str().expect("text").to_owned();
        assert!(tag.starts_with("W/\""), "{tag}");
        let body = text(first).await;
        for known in [tag.clone(), format!("\"x\", {tag}"), "*".to_owned()] {
            for method in ["GET", "HEAD"] {
                let headers = [cookie, ("if-none-match", &known)];
                let again = ask_with(gym.router(), method, target, &headers).await;
                assert_eq!(again.status(), 304, "{method} {target} {known}");
                assert_eq!(again.headers()["etag"], tag.as_str());
                assert!(text(again).await.is_empty());
            }
        }
        let other = [cookie, ("if-none-match", "\"other\"")];
        let again = ask_with(gym.router(), "GET", target, &other).await;
        assert_eq!(
            (again.status().as_u16(), text(again).await),
            (200, body),
            "{target}"
        );
        let head = ask_with(gym.router(), "HEAD", target, &[cookie]).await;
        assert_eq!(head.headers()["etag"], tag.as_str(), "{target}");
    }
    // Another part of the record is another thing.
    let tag = async |target: &str| gym.get(target).await.headers()["etag"].clone();
    assert_ne!(
        tag("/record.csv").await,
        tag("/record.csv?lifter=Ada").await
    );
    assert_ne!(tag("/record.csv").await, tag("/record.json").await);
    // Whoever has no right learns nothing by a tag.
    let stranger = ask_with(
        gym.router(),
        "GET",
        "/record.csv",
        &[("if-none-match", "*")],
    )
    .await;
    assert_eq!(stranger.status(), 401);
}

#[tokio::test]
async fn a_record_is_narrowed_by_days_lifter_and_lift() {
    let gym = gym();
    let rows = async |query: &str| {
        let csv = gym.text(&format!("/record.csv{query}")).await;
        let count = csv.lines().count() - 1;
        let json: Value =
            serde_json::from_str(&gym.text(&format!("/record.json{query}")).await).expect("JSON");
        assert_eq!(
            json["sets"].as_array().expect("a list").len(),
            count,
            "{query}"
        );
        count
    };
    for (query, count) in [
        ("", 5),
        ("?since=2026-03-05", 1),
        ("?since=2026-03-02&to=2026-03-04", 4),
        ("?lifter=Ada", 4),
        ("?lifter=Ada&lift=rack+pull", 1),
        ("?lift=rack%20pull", 2),
        ("?lifter=ada", 0),
        ("?lifter=%27%20OR%201%3D1%20--", 0),
        ("?lifter=&other=1", 5),
        ("?since=9999-12-31", 0),
    ] {
        assert_eq!(rows(query).await, count, "{query}");
    }
    for odd in [
        "since=yesterday",
        "since=2026-02-30",
        "to=1",
        "lifter=A&lifter=B",
        "lifter=%ff",
    ] {
        for target in ["/record.csv", "/record.json", "/plan.json"] {
            let told = gym.get(&format!("{target}?{odd}")).await;
            assert_eq!(told.status(), 400, "{target} {odd}");
        }
    }
}

#[tokio::test]
async fn whoever_reads_gzip_gets_it_whole() {
    let gym = crate::gym::long(20_000);
    let coach = gym.coach().await;
    let plain = gym.text("/record.csv").await;
    let headers = [("cookie", coach.as_str()), ("accept-encoding", "gzip, br")];
    for target in ["/record.csv", "/coach", "/openapi.json"] {
        let plain = gym.text(target).await;
        let packed = ask_with(gym.router(), "GET", target, &headers).await;
        assert_eq!(packed.headers()["content-encoding"], "gzip", "{target}");
        assert_eq!(packed.headers()["vary"], "Accept-Encoding");
        let bytes = to_bytes(packed.into_body(), 64 << 20).await.expect("whole");
        assert!(
            bytes.len() * 3 < plain.len(),
            "{target}: {} of {}",
            bytes.len(),
            plain.len()
        );
        let mut read = String::new();
        GzDecoder::new(&*bytes)
            .read_to_string(&mut read)
            .expect("gzip");
        assert!(read == plain, "{target}");
    }
    assert!(plain.len() > 500_000, "several pieces");
    for (target, kind) in [
        ("/icon.svg", "short"),
        ("/board/live", "live"),
        ("/journal.sqlite", "kind"),
    ] {
        let told = ask_with(gym.router(), "GET", target, &headers).await;
        assert!(!told.headers().contains_key("content-encoding"), "{kind}");
    }
}

#[tokio::test]
async fn documents_tell_plan_due_lifters_sheets_and_board() {
    let gym = gym();
    let lifters = json(gym.get("/lifters.json").await).await;
    let one = |at: usize| &lifters["lifters"][at];
    assert_eq!(lifters["day"], "2026-03-06");
    assert_eq!(
        (&one(0)["lifter"], &one(0)["sets"]),
        (&Value::from("Ada"), &Value::from(4))
    );
    assert_eq!(
        (&one(1)["lifter"], &one(1)["in_gym"]),
        (&Value::from("Bo"), &Value::from(false))
    );
    assert_eq!(
        (&one(2)["lifter"], &one(2)["unit"]),
        (&Value::from("Cy"), &Value::from("lb"))
    );
    let plan = json(gym.get("/plan.json?from=2026-03-02").await).await;
    assert_eq!(
        (&plan["from"], &plan["to"]),
        (&Value::from("2026-03-02"), &Value::from("2026-03-15"))
    );
    assert_eq!(
        plan["rows"].as_array().expect("rows").len(),
        4,
        "what was done without a plan: {plan}"
    );
    let due = json(gym.get("/due.json?lifter=Ada").await).await;
    assert_eq!(due["due"], Value::Array(Vec::new()));
    assert_eq!(
        gym.get("/sheets.json").await.status(),
        503,
        "the kiosk has told none"
    );
    gym.desk().lay_sheets("{\"gym\":\"Yard\"}");
    assert_eq!(json(gym.get("/sheets.json").await).await["gym"], "Yard");
    gym.desk().show(&crate::pages::board(&["Ada"]));
    let board = json(gym.open("/board.json").await).await;
    assert_eq!(board["racks"][0]["up"]["lifter"], "Ada");
    for secret in ["/lifters.json", "/plan.json", "/due.json", "/sheets.json"] {
        assert_eq!(gym.open(secret).await.status(), 401, "{secret}");
    }
}
