//! The coach's other pages, the floor board, the database, the document of it all.
use crate::gym::{CODE, Gym, HOST, ask, ask_with, hostile, kg, march, text, two_days};
use crate::plans::laid;
use axum::body::{Body, to_bytes};
use axum::http::Response;
use domain::prescription::LoadWish;
use domain::{Hold, MassUnit};
use futures_core::Stream as _;
use serde_json::Value;
use share::{Board, BoardRack, BoardTurn};
use std::future::poll_fn;
use std::pin::Pin;
use text::Said;
use tower::ServiceExt as _;
use view::desk::{Errand, StickIn};

/// Twelve weeks of one lift, the back moved in one of them.
fn season() -> Gym {
    let mut gym = Gym::new();
    for week in 0..12 {
        let date = march(2) + chrono::Days::new(week * 7);
        let load = kg(100_000 + i64::try_from(week).expect("few") * 2_500);
        let hold = if week == 8 {
            Hold::MovedAt(3)
        } else {
            Hold::Kept
        };
        gym = gym
            .planned("Ada", "rack pull", date, LoadWish::Mass(load))
            .lift(
                ("Ada", MassUnit::Kg),
                "rack pull",
                date,
                load,
                &[(1, 5, hold)],
            );
    }
    gym.planned("Bo", "deadlift", march(3), LoadWish::OfBest(8_250))
        .recorded()
}

#[tokio::test]
async fn a_lifter_has_charts_of_each_lift() {
    let gym = season();
    let page = gym.text("/coach/lifter/Ada").await;
    assert_eq!(page.matches("<svg").count(), 4, "{page}");
    assert_eq!(
        page.matches("<polygon").count(),
        11,
        "a best a week with the back held"
    );
    // Inline style would break the policy, and the charts need none.
    assert!(!page.contains("style=") && !page.contains("<script"));
    assert!(page.contains("2026-03-02") && page.contains("127.5 kg"));
    assert!(page.contains("<td>1 of 1</td>") && page.contains("<td>back moved</td>"));
    assert!(page.contains("1 \u{d7} 5 at 127.5 kg") && page.contains("back moved in 1"));
    assert!(page.contains("slow &amp; &lt;steady&gt;"));
    let nobody = gym.get("/coach/lifter/%3Cscript%3E").await;
    assert_eq!(nobody.status(), 404);
    assert!(!text(nobody).await.contains("script"));
    assert_eq!(gym.get("/coach/lifter/%FF").await.status(), 400);
}

#[tokio::test]
async fn hostile_names_stay_names() {
    let gym = hostile();
    let page = gym.text("/coach").await;
    let links = page.split("href=\"/coach/lifter/").skip(1);
    let links: Vec<_> = links
        .map(|rest| rest.split('"').next().expect("a link"))
        .collect();
    assert_eq!(links.len(), 2);
    for link in links {
        let page = gym.text(&format!("/coach/lifter/{link}")).await;
        assert!(!page.contains("Nothing is recorded"), "{link}");
        assert!(
            !page.contains("<script") && !page.contains("\" onload"),
            "{page}"
        );
    }
}

#[tokio::test]
async fn the_plan_stands_against_what_was_done() {
    let gym = season();
    let page = gym.text("/coach/plan").await;
    assert!(page.contains("<h1>Plan and done</h1>"));
    assert!(
        page.contains("1 of 1 set, 5 of 5 reps, 127.5 kg, back held"),
        "{page}"
    );
    assert!(!page.contains("82.5 %"), "four weeks a page");
    assert!(page.contains("Older"));
    let first = gym.text("/coach/plan?before=2026-03-09").await;
    assert!(
        first.contains("1 \u{d7} 5 at 82.5 % of the best"),
        "{first}"
    );
    assert!(first.contains("\u{2013}"), "nothing was done of it");
    let none = Gym::new().text("/coach/plan").await;
    assert!(none.contains("No plan is kept."));
}

pub(crate) fn board(names: &[&str]) -> Board {
    let turn = |name: &&str| BoardTurn {
        lifter: (*name).to_owned(),
        lift: "rack pull, work set".to_owned(),
        load: "180 kg".to_owned(),
        reps: "5 reps".to_owned(),
        ..BoardTurn::default()
    };
    let mut turns = names.iter().map(turn);
    Board {
        language: "en".to_owned(),
        title: "Floor".to_owned(),
        waiting: "waiting for the kiosk".to_owned(),
        clock: "18:42".to_owned(),
        empty: String::new(),
        racks: vec![BoardRack {
            name: "North".to_owned(),
            up: turns.next(),
            next: turns.next(),
            then: turns.collect(),
        }],
    }
}

pub(crate) struct Events(axum::body::BodyDataStream);

impl Events {
    pub(crate) fn of(response: Response<Body>) -> Self {
        assert_eq!(response.status(), 200);
        assert_eq!(response.headers()["content-type"], "text/event-stream");
        Self(response.into_body().into_data_stream())
    }

    pub(crate) async fn next(&mut self) -> String {
        self.next_if_any().await.expect("it does not end")
    }

    pub(crate) async fn next_if_any(&mut self) -> Option<String> {
        let piece = poll_fn(|context| Pin::new(&mut self.0).poll_next(context)).await?;
        let piece = piece.expect("whole");
        Some(String::from_utf8(piece.to_vec()).expect("text"))
    }
}

#[tokio::test(start_paused = true)]
async fn the_board_follows_and_leaves_out_what_nobody_could_see() {
    let gym = two_days();
    assert!(!gym.desk().is_followed());
    let router = gym.router();
    let mut events = Events::of(ask(router.clone(), "GET", "/board/live").await);
    assert!(gym.desk().is_followed());
    let first = events.next().await;
    let version = env!("CARGO_PKG_VERSION");
    assert_eq!(
        first,
        format!("retry: 2000\nevent: version\ndata: {version}\n\n")
            + "data: {\"language\":\"en\",\"title\":\"Floor\",\
               \"waiting\":\"waiting for the kiosk\",\"clock\":\"\",\"empty\":\"\",\"racks\":[]}\n\n"
    );
    for names in [&["Ada"][..], &["Bo", "Ada"], &["Ada", "Bo", "Cy"]] {
        gym.desk().show(&board(names));
    }
    let event = events.next().await;
    let shown: Value = serde_json::from_str(event.trim_start_matches("data: ")).expect("JSON");
    assert_eq!(shown["racks"][0]["up"]["lifter"], "Ada");
    assert_eq!(
        shown["racks"][0]["then"][0]["lifter"], "Cy",
        "the last of three"
    );
    // The same board again is no event: that the kiosk lives is said instead.
    gym.desk().show(&board(&["Ada", "Bo", "Cy"]));
    assert_eq!(events.next().await, "event: alive\ndata: 1\n\n");
    // A name with a line break stays within its event.
    gym.desk().show(&board(&["A\n\ndata: x"]));
    let event = events.next().await;
    assert_eq!(event.matches("\n\n").count(), 1, "{event}");
    drop(events);
    assert!(!gym.desk().is_followed());
}

#[tokio::test]
async fn the_database_is_a_journal_that_proves_itself() {
    let gym = two_days();
    let response = gym.get("/journal.sqlite").await;
    assert_eq!(
        response.headers()["content-type"],
        "application/vnd.sqlite3"
    );
    let bytes = to_bytes(response.into_body(), 64 << 20)
        .await
        .expect("whole");
    let copy = gym.folder().join("copy.sqlite");
    std::fs::write(&copy, &bytes).expect("writes");
    let original = journal::verify(&gym.folder().join("journal.sqlite")).expect("sound");
    assert_eq!(journal::verify(&copy).expect("sound"), original);
    let none = Gym::new();
    assert_eq!(none.get("/journal.sqlite").await.status(), 500);
}

/// Every address of the document answers as the document says, and no other does.
#[tokio::test]
async fn the_document_is_true() {
    let gym = two_days();
    let cookie = gym.coach().await;
    let document: Value =
        serde_json::from_str(&text(gym.open("/openapi.json").await).await).expect("JSON");
    assert_eq!(document["openapi"], "3.1.0");
    let paths = document["paths"].as_object().expect("paths");
    assert_eq!(paths.len(), 38);
    gym.desk().offer_blanks(vec![1], vec![2]);
    gym.desk().lay_sheets("{}");
    gym.desk().begin_day(share::Today {
        date: march(6),
        gym: "Yard".to_owned(),
    });
    gym.desk()
        .lay_out(|counter| counter.handed = vec![laid("7", "march.csv", &[])]);
    for (path, operations) in paths {
        let link = gym.desk().link(2, "Ada", 0).unwrap_or_default();
        let target = path
            .replace("{name}", "Ada")
            .replace("{id}", "7")
            .replace("/mine/{token}", &link);
        for (method, operation) in operations.as_object().expect("operations") {
            let responses = operation["responses"].as_object().expect("responses");
            let secret = operation.get("security").is_some();
            for headers in [&[][..], &[("cookie", cookie.as_str())]] {
                let response =
                    ask_with(gym.router(), &method.to_uppercase(), &target, headers).await;
                let status = response.status().as_u16().to_string();
                let told = responses.get(&status);
                let told = told.unwrap_or_else(|| panic!("{method} {path}: {status} is not told"));
                let kind = response.headers().get("content-type").map(|kind| {
                    let kind = kind.to_str().expect("text");
                    kind.split(';').next().expect("a kind").to_owned()
                });
                if let Some(kind) = kind {
                    assert!(
                        told["content"].get(&kind).is_some(),
                        "{method} {path}: {kind}"
                    );
                }
                let is_in = response.status().is_success();
                if secret && method == "get" {
                    assert_eq!(is_in, !headers.is_empty(), "{method} {path}");
                }
            }
        }
        let other = ask(gym.router(), "DELETE", &target).await;
        assert_eq!(other.status(), 405, "{path}");
        let allowed = other.headers()["allow"].to_str().expect("text").to_owned();
        let mut told: Vec<_> = operations
            .as_object()
            .expect("operations")
            .keys()
            .map(|m| m.to_uppercase())
            .collect();
        if told.contains(&"GET".to_owned()) {
            told.push("HEAD".to_owned());
        }
        told.sort();
        let mut allowed: Vec<_> = allowed.split(", ").map(str::to_owned).collect();
        allowed.sort();
        assert_eq!(allowed, told, "{path}");
    }
}

/// Posts an order as a browser does.
async fn order(gym: &Gym, headers: &[(&str, &str)], body: &str) -> (u16, String) {
    let mut request = axum::http::Request::builder()
        .method("POST")
        .uri("/coach/desk")
        .header("host", HOST)
        .header("origin", format!("http://{HOST}"))
        .header("content-type", "application/x-www-form-urlencoded");
    for (name, value) in headers {
        request = request.header(*name, *value);
    }
    let request = request
        .body(Body::from(body.to_owned()))
        .expect("a request");
    let response = gym.router().oneshot(request).await.expect("cannot fail");
    let status = response.status().as_u16();
    (status, text(response).await)
}

#[tokio::test]
async fn the_desk_takes_orders_with_the_code_alone() {
    let gym = two_days();
    let cookie = gym.coach().await;
    let order = async |headers: &[(&str, &str)], body: &str| order(&gym, headers, body).await;
    let coach = [("cookie", cookie.as_str())];
    let good = format!("order=take&about=7&code={CODE}");
    let (status, page) = order(&coach, &good).await;
    assert!(
        status == 200 && page.contains("this kiosk takes no orders"),
        "{page}"
    );
    let (sender, orders) = std::sync::mpsc::channel();
    gym.desk().on_order(move |order: share::Order| {
        sender.send(order.errand).expect("somebody hears");
        order
            .answer
            .send(share::Told::NotTaken(Said::of(|_| "<3> rows".to_owned())))
            .expect("somebody waits");
    });
    gym.desk().lay_out(|counter| {
        counter.stick = Some(StickIn {
            id: "7".to_owned(),
            plans: vec![(
                "<b>.csv".to_owned(),
                Err(vec![Said::of(|_| "row <3>".to_owned())]),
            )],
            ..StickIn::default()
        });
        counter.copies = vec!["pinladder-2026-12-01.sqlite".to_owned()];
    });
    let (status, page) = order(&coach, &good).await;
    assert!(
        status == 200 && page.contains("nothing was taken: &lt;3&gt; rows"),
        "{page}"
    );
    assert!(page.contains("&lt;b&gt;.csv") && page.contains("row &lt;3&gt;"));
    assert!(
        !page.contains("Take all of it"),
        "with a fault it cannot be taken"
    );
    assert_eq!(orders.try_recv(), Ok(Errand::TakeStick("7".to_owned())));
    // Without a session, with the wrong code, with a form that is none.
    assert_eq!(order(&[], &good).await.0, 401);
    assert_eq!(
        order(&coach, "order=take&about=7&code=guess-work").await.0,
        403
    );
    assert_eq!(
        order(&coach, &format!("order=burn&about=7&code={CODE}"))
            .await
            .0,
        400
    );
    assert_eq!(order(&coach, "order=take&about=7").await.0, 400);
    assert!(orders.try_recv().is_err(), "none of these came through");
}
