//! The gym's week on the page, as rude hands ask for it: the kiosk behind it is played here.
use crate::gym::{Gym, kg, march, post, text};
use axum::body::Body;
use axum::http::Response;
use domain::prescription::LoadWish;
use domain::{Hold, MassUnit};
use share::{Order, Today, Told};
use std::sync::{Arc, Mutex};
use text::Said;
use view::desk::Errand;
use view::week_deed::{PlanLine, Unmoved, WeekChange, WeekDeed, mark};

type Heard = Arc<Mutex<Vec<WeekDeed>>>;

/// Thursday 5 March 2026: Monday was missed, Tuesday done, Wednesday the back moved, today is half
/// done, Friday is to come.
fn gym(told: Told) -> (Gym, Heard) {
    let ada = ("Ada", MassUnit::Kg);
    let mass = |kilos| LoadWish::Mass(kg(kilos));
    let one = |reps, hold| [(1, reps, hold)];
    let gym = Gym::new()
        .planned("Ada", "rack pull", march(2), mass(180_000))
        .planned("Ada", "deadlift", march(3), mass(150_000))
        .planned("<Bo>", "rack pull", march(4), mass(200_000))
        .planned("Ada", "barbell shrug", march(5), mass(160_000))
        .planned("Ada", "halting deadlift", march(6), LoadWish::OfBest(8_250))
        .planned("Ada", "power clean", march(12), mass(70_000))
        .lift(ada, "deadlift", march(3), kg(145_000), &one(5, Hold::Kept))
        .lift(
            ("<Bo>", MassUnit::Kg),
            "rack pull",
            march(4),
            kg(200_000),
            &one(5, Hold::MovedAt(4)),
        )
        .recorded();
    gym.desk().begin_day(Today {
        date: march(5),
        gym: "Yard".to_owned(),
    });
    let unit = |name: &str| (name.to_owned(), MassUnit::Kg);
    gym.desk()
        .know_units([unit("Ada"), unit("<Bo>"), unit("Cy")].into());
    let heard = Heard::default();
    let ears = Arc::clone(&heard);
    gym.desk().on_order(move |order: Order| {
        let Errand::Week(deed) = order.errand else {
            panic!("no change: {:?}", order.errand);
        };
        ears.lock().expect("whole").push(*deed);
        order.answer.send(told.clone()).expect("somebody waits");
    });
    (gym, heard)
}

/// Ada's mark as the kiosk reckons it.
fn ada() -> String {
    let line = |date, lift, load| PlanLine {
        date: march(date),
        lift,
        sets: 1,
        reps: 5,
        load,
        note: "slow & <steady>",
    };
    let mass = |kilos| LoadWish::Mass(kg(kilos));
    let lines = [
        line(2, "rack pull", mass(180_000)),
        line(3, "deadlift", mass(150_000)),
        line(5, "barbell shrug", mass(160_000)),
        line(6, "halting deadlift", LoadWish::OfBest(8_250)),
        line(12, "power clean", mass(70_000)),
    ];
    mark(lines.into_iter())
}

async fn send(gym: &Gym, body: &str) -> Response<Body> {
    let coach = gym.coach().await;
    let headers = [("cookie", coach.as_str()), ("accept", "text/html")];
    post(gym.router(), "/coach/week", ("/coach/week", body), &headers).await
}

#[tokio::test]
async fn each_cell_says_what_was_planned_and_what_became_of_it() {
    let (gym, _) = gym(Told::Done);
    let page = gym.text("/coach/week").await;
    for words in [
        "<h1>Week, 2 Mar to 8 Mar 2026</h1>",
        "aria-current=\"page\">Week</a>",
        "<time datetime=\"2026-03-05\">Thu 5 Mar</time>",
        "<span class=\"nowrap\">1 \u{d7} 5,</span> <span class=\"nowrap\">180 kg</span></span><span class=\"sign missed\">\u{2013} not done</span>",
        "<span class=\"nowrap\">1 \u{d7} 5,</span> <span class=\"nowrap\">150 kg</span></span><span class=\"sign well\">\u{2713} done, 145 kg</span>",
        "<span class=\"nowrap\">1 \u{d7} 5,</span> <span class=\"nowrap\">160 kg</span></span><span class=\"sign planned\">\u{25cb} planned</span>",
        "82.5 % of the best</span></span>",
        "href=\"/coach/week?from=2026-03-02&amp;lifter=Ada&amp;day=2026-03-06\"",
        "href=\"/coach/week?from=2026-02-23\"",
        "href=\"/coach/week?from=2026-03-09\"",
        "aria-label=\"Cy, Sat 7 Mar: write a row\"",
    ] {
        assert!(page.contains(words), "{words}: {page}");
    }
    // Beside the cell it stands among the meanings of the signs.
    let moved = "<span class=\"sign moved\">\u{25a0} back moved</span>";
    assert_eq!(page.matches(moved).count(), 2, "{page}");
    assert!(!page.contains("power clean"), "that is next week's");
    assert!(
        !page.contains("<script") && !page.contains("<Bo>"),
        "{page}"
    );
    let next = gym.text("/coach/week?from=2026-03-11").await;
    assert!(
        next.contains("power clean") && next.contains(">This week</a>"),
        "{next}"
    );
    for far in ["0000-01-01", "9999-12-31"] {
        assert_eq!(
            gym.get(&format!("/coach/week?from={far}")).await.status(),
            200,
            "{far}"
        );
    }
}

#[tokio::test]
async fn a_cell_opens_with_its_rows_another_day_and_the_mark_of_what_was_seen() {
    let (gym, _) = gym(Told::Done);
    let page = gym
        .text("/coach/week?from=2026-03-02&lifter=Ada&day=2026-03-06")
        .await;
    for words in [
        "Ada, Friday 6 March</h2>",
        "name=\"lift\" value=\"halting deadlift\"",
        "name=\"load\" value=\"82.5 %\"",
        "<option value=\"2026-03-12\">Thu 12 Mar 2026: power clean</option>",
        "<option value=\"2026-03-07\">Sat 7 Mar 2026</option>",
        &format!("name=\"mark\" value=\"{}\"", ada()),
    ] {
        assert!(page.contains(words), "{words}: {page}");
    }
    assert!(
        !page.contains("<option value=\"2026-03-04\">"),
        "no day that is over"
    );
    // A missed day can move, and is not written any more; a done one neither.
    let missed = gym
        .text("/coach/week?from=2026-03-02&lifter=Ada&day=2026-03-02")
        .await;
    assert!(missed.contains("value=\"move\"") && missed.contains("This day is over"));
    assert!(!missed.contains("name=\"sets\""), "{missed}");
    let done = gym
        .text("/coach/week?from=2026-03-02&lifter=Ada&day=2026-03-03")
        .await;
    assert!(
        done.contains("begun at the rack") && !done.contains("value=\"move\""),
        "{done}"
    );
    // Whom nobody knows opens nothing.
    for odd in [
        "lifter=Nobody&day=2026-03-06",
        "lifter=Ada&day=2026-05-01",
        "lifter=%3Cb%3E",
    ] {
        let page = gym.text(&format!("/coach/week?{odd}")).await;
        assert!(
            !page.contains("id=\"change\"") && !page.contains("Nobody"),
            "{odd}"
        );
    }
}

#[tokio::test]
async fn changes_come_through_as_they_were_meant_and_lead_back() {
    let (gym, heard) = gym(Told::Done);
    let front = format!("lifter=Ada&first=2026-03-02&mark={}", ada());
    let done = send(
        &gym,
        &format!("do=move&day=2026-03-06&at=all&to=2026-03-07&{front}"),
    )
    .await;
    assert_eq!(done.status(), 303);
    let back = "/coach/week?from=2026-03-02&told=done";
    assert_eq!(done.headers()["location"], back);
    assert!(
        gym.text(back)
            .await
            .contains("role=\"status\">done, and kept")
    );
    let typed = "lift=rack+pull&sets=2&reps=5&load=147%2C5+kg&beside=yes";
    for (what, rest) in [("row", "&at=0"), ("add", ""), ("off", "&at=1")] {
        let body = format!("do={what}&day=2026-03-06&{front}&{typed}{rest}");
        assert_eq!(send(&gym, &body).await.status(), 303, "{what}");
    }
    let heard = heard.lock().expect("whole");
    let whats: Vec<_> = heard.iter().map(|deed| (&deed.what, deed.beside)).collect();
    let (from, to) = (march(6), march(7));
    assert_eq!(whats[0], (&WeekChange::Move { from, at: None, to }, false));
    for (nth, at, takes) in [(1, Some(0), false), (2, None, false), (3, Some(1), true)] {
        let (WeekChange::Row { at: found, row, .. }, true) = whats[nth] else {
            panic!("{whats:?}");
        };
        assert_eq!((*found, row.is_none()), (at, takes));
        assert!(
            row.as_ref().is_none_or(|row| row.load == "147,5 kg"),
            "{row:?}"
        );
    }
    assert!(
        heard
            .iter()
            .all(|deed| deed.mark == ada() && deed.lifter == "Ada")
    );
}

#[tokio::test]
async fn what_was_not_done_is_told_beside_the_week_as_it_is_now() {
    let front = "lifter=Ada&first=2026-03-02&mark=0&day=2026-03-06";
    for (told, words) in [
        (
            Told::Unmoved(Unmoved::Stale),
            "changed this lifter&apos;s plan",
        ),
        (Told::Unmoved(Unmoved::Begun), "has been begun"),
        (Told::Unmoved(Unmoved::Over), "that day is over"),
        (Told::Unmoved(Unmoved::Taken), "stands on that day already"),
        (Told::Unmoved(Unmoved::Twice), "twice on that day"),
        (Told::Unmoved(Unmoved::Grouped), "several set groups"),
        (Told::NoOrders, "takes no orders"),
    ] {
        let (gym, _) = gym(told);
        let page = send(&gym, &format!("do=move&at=0&to=2026-03-07&{front}")).await;
        assert_eq!(page.status(), 409);
        let page = text(page).await;
        let words = words.replace("&apos;", "'");
        assert!(page.contains(&words), "{words}: {page}");
        assert!(page.contains("id=\"change\""), "the cell is still open");
    }
    let (gym, _) = gym(Told::DoneOdd(Said::of(|_| "twice her <best>".to_owned())));
    let page = send(&gym, &format!("do=off&at=0&{front}")).await;
    assert_eq!(page.status(), 200);
    assert!(text(page).await.contains("twice her &lt;best&gt;"));
}

#[tokio::test]
async fn odd_forms_and_strangers_come_to_nothing() {
    let (gym, heard) = gym(Told::Done);
    let whole = "do=move&day=2026-03-06&at=0&to=2026-03-07&lifter=Ada&first=2026-03-02&mark=1";
    for (piece, other) in [
        ("do=move", "do=dance"),
        ("day=2026-03-06", "day=6.3."),
        ("at=0", "at=-1"),
        ("at=0", "at=first"),
        ("at=0", "at=99999999999999999999999"),
        ("to=2026-03-07", "to="),
        ("first=2026-03-02", "first=2026-02-30"),
        ("&mark=1", ""),
        ("&mark=1", "&mark=1&mark=2"),
        ("lifter=Ada", "lifter=%ff"),
    ] {
        let body = whole.replace(piece, other);
        assert_eq!(send(&gym, &body).await.status(), 400, "{body}");
    }
    let long = format!("{whole}&x={}", "y".repeat(9_000));
    assert_eq!(send(&gym, &long).await.status(), 413);
    let form = ("/coach/week", whole);
    let stranger = post(gym.router(), "/coach/week", form, &[]).await;
    assert_eq!(stranger.status(), 401);
    assert_eq!(gym.open("/coach/week").await.status(), 303);
    for odd in [
        "from=soon",
        "from=2026-02-30",
        "from=1&from=2",
        "lifter=Ada&day=x",
    ] {
        assert_eq!(
            gym.get(&format!("/coach/week?{odd}")).await.status(),
            400,
            "{odd}"
        );
    }
    assert!(heard.lock().expect("whole").is_empty());
}
