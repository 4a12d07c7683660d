//! The gym's own programs: what they read without asking twice, tokens, plans by token, figures.
use crate::gym::{CODE, Gym, HOST, ask, ask_with, march, post, text, two_days};
use crate::plans::laid;
use axum::body::{Body, to_bytes};
use axum::http::{Request, Response};
use domain::MassUnit;
use flate2::read::GzDecoder;
use serde_json::Value;
use share::{Order, Peer, Today, Told};
use std::io::Read as _;
use std::net::{IpAddr, Ipv4Addr};
use std::os::unix::fs::PermissionsExt as _;
use tower::ServiceExt as _;
use view::desk::Errand;

const FILE: &str = "page-tokens.json";

fn gym() -> Gym {
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

async fn json(response: Response<Body>) -> Value {
    assert_eq!(response.status(), 200);
    assert_eq!(response.headers()["content-type"], "application/json");
    serde_json::from_str(&text(response).await).expect("JSON")
}

/// Makes a token at the desk: itself.
async fn made(gym: &Gym, name: &str, may: &str, until: &str) -> String {
    let (status, page) = desk(gym, &format!("do=make&name={name}&may={may}&until={until}")).await;
    assert_eq!(status, 200, "{page}");
    let token = page.split("<p class=\"print\">").nth(1).expect("shown");
    token.split('<').next().expect("a token").to_owned()
}

async fn desk(gym: &Gym, form: &str) -> (u16, String) {
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

async fn with(gym: &Gym, token: &str, method: &str, target: &str, body: &str) -> Response<Body> {
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

#[tokio::test]
async fn a_plan_by_token_is_told_first_and_taken_by_a_second_request() {
    let gym = gym();
    let token = made(&gym, "planner", "plans", "2026-03-07").await;
    let desk = gym.desk().clone();
    gym.desk().on_order(move |order: Order| {
        let told = if let Errand::ReadPlan(file) = &order.errand {
            let (name, bytes) = (file.name.as_str(), file.bytes.as_slice());
            assert_eq!((name, bytes), ("week.csv", &b"rows"[..]));
            let plan = laid(&file.id, "week.csv", &[]);
            desk.lay_out(|counter| counter.handed = vec![plan]);
            Told::Handed
        } else if let Errand::TakePlan { mark, .. } = &order.errand {
            match mark == "stale" {
                true => Told::DaysChanged,
                false => Told::TookPlan(2),
            }
        } else {
            panic!("{:?}", order.errand)
        };
        order.answer.send(told).expect("somebody waits");
    });
    let told = with(&gym, &token, "POST", "/plans?name=week.csv", "rows").await;
    let place = told.headers()["location"]
        .to_str()
        .expect("text")
        .to_owned();
    let plan = json(told).await;
    assert_eq!(
        place,
        format!("/plans/{}", plan["id"].as_str().expect("text"))
    );
    let mark = plan["mark"].as_str().expect("text");
    let take =
        async |mark: &str| with(&gym, &token, "POST", &format!("{place}?mark={mark}"), "").await;
    assert_eq!(take("stale").await.status(), 409);
    assert_eq!(json(take(mark).await).await["took"], 2);
    let odd = async |target: &str, body: &str| {
        with(&gym, &token, "POST", target, body)
            .await
            .status()
            .as_u16()
    };
    assert_eq!(odd("/plans?name=week.pdf", "rows").await, 415);
    assert_eq!(odd("/plans", "rows").await, 415);
    assert_eq!(odd("/plans?name=week.csv", "").await, 400);
    assert_eq!(
        odd("/plans?name=week.csv", &"x".repeat((4 << 20) + 1)).await,
        413
    );
    assert_eq!(odd(&place, "").await, 400);
    // Another site's page cannot come along with a session.
    let coach = gym.coach().await;
    let cookie = [("cookie", coach.as_str())];
    let told = ask_with(gym.router(), "POST", "/plans?name=week.csv", &cookie).await;
    assert_eq!(told.status(), 403);
}

#[tokio::test]
async fn figures_are_for_this_machine_or_a_token_and_name_nobody() {
    let gym = gym();
    assert_eq!(
        gym.open("/healthz").await.status(),
        503,
        "the kiosk has not ticked"
    );
    gym.desk().tick();
    assert_eq!(text(gym.open("/healthz").await).await, "ok\n");
    gym.wait_ms(11_000);
    assert_eq!(
        gym.open("/healthz").await.status(),
        503,
        "it does not tick any more"
    );
    gym.desk().tick();
    let from = async |ip: IpAddr| {
        let router = gym.router().layer(axum::Extension(Peer(ip)));
        ask(router, "GET", "/metrics").await
    };
    let far = from(Ipv4Addr::new(192, 168, 1, 7).into()).await;
    assert_eq!(far.status(), 401);
    assert!(!text(far).await.contains("pinladder_"));
    let near = from(Ipv4Addr::LOCALHOST.into()).await;
    assert_eq!(
        near.headers()["content-type"],
        "text/plain; version=0.0.4; charset=utf-8"
    );
    let near = text(near).await;
    for line in [
        "pinladder_up 1\n",
        "pinladder_lifters 2\n",
        "# TYPE pinladder_requests_total counter",
    ] {
        assert!(near.contains(line), "{line}: {near}");
    }
    assert!(!near.contains("Ada"), "{near}");
    for line in near.lines().filter(|line| !line.starts_with('#')) {
        let (name, value) = line.rsplit_once(' ').expect("a name and a value");
        assert!(value.parse::<f64>().is_ok(), "{line}");
        assert!(name.starts_with("pinladder_"), "{line}");
    }
    let token = made(&gym, "wall", "read", "2026-03-07").await;
    assert_eq!(
        with(&gym, &token, "GET", "/metrics", "").await.status(),
        200
    );
}
