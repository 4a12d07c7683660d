//! What programs do by token: hand in plans, ask how it goes.
use crate::gym::{ask, ask_with, text};
use crate::plans::laid;
use crate::programs::{gym, json};
use crate::tokens::{made, with};
use share::{Order, Peer, Told};
use std::net::{IpAddr, Ipv4Addr};
use view::desk::Errand;

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
