//! What a coach does on the page of the day, as rude hands send it: the kiosk behind it is played
//! here, and hears what comes through.
use crate::gym::{CODE, Gym, ask_with, kg, march, post, text};
use axum::body::Body;
use axum::http::Response;
use domain::MassUnit;
use domain::next::coach_list::{CoachLine, Concern};
use share::{Order, Today, Told};
use std::sync::{Arc, Mutex};
use view::coach_deed::{CoachDeed, Undone, What, mark};
use view::desk::Errand;

/// What came through to the kiosk.
type Heard = Arc<Mutex<Vec<CoachDeed>>>;

fn line(lifter: &str, concern: Concern) -> CoachLine {
    CoachLine {
        lifter: lifter.to_owned(),
        unit: MassUnit::Kg,
        of: None,
        concern,
        due: None,
        after: None,
    }
}

fn wrong() -> CoachLine {
    let track = domain::Track {
        name: None,
        reps: 5,
    };
    CoachLine {
        of: Some(("rack pull".to_owned(), track)),
        ..line(
            "Ada",
            Concern::LooksWrong {
                date: march(6),
                load: kg(290_000),
                odd: domain::plausible::Odd::Over(kg(180_000)),
            },
        )
    }
}

/// A gym with somebody hurt and a load that looks wrong, whose kiosk answers `told`.
fn gym(told: Told) -> (Gym, Heard) {
    let gym = Gym::new();
    gym.desk().begin_day(Today {
        date: march(5),
        gym: "Yard".to_owned(),
    });
    let unit = |name: &str| (name.to_owned(), MassUnit::Kg);
    gym.desk().know_units([unit("Ada"), unit("<Bo>")].into());
    gym.desk().lay_out(|counter| {
        let since = march(3);
        let note = "left hip".to_owned();
        counter.due = vec![line("<Bo>", Concern::Hurt { since, note }), wrong()];
    });
    let heard = Heard::default();
    let ears = Arc::clone(&heard);
    gym.desk().on_order(move |order: Order| {
        let Errand::Coach(deed) = order.errand else {
            panic!("no deed: {:?}", order.errand);
        };
        ears.lock().expect("whole").push(*deed);
        order.answer.send(told.clone()).expect("somebody waits");
    });
    (gym, heard)
}

async fn send(gym: &Gym, cookie: &str, body: &str) -> Response<Body> {
    let headers = [("cookie", cookie), ("accept", "text/html")];
    let form = ("/coach/today", body);
    post(gym.router(), "/coach/today", form, &headers).await
}

fn count(heard: &Heard) -> usize {
    heard.lock().expect("whole").len()
}

#[tokio::test]
async fn a_deed_that_is_done_leads_back_so_that_a_reload_does_nothing_twice() {
    let (gym, heard) = gym(Told::Done);
    let coach = gym.coach().await;
    let page = gym.text("/coach/today").await;
    let seen = mark(&wrong());
    for part in [
        "name=\"lifter\" value=\"&lt;Bo&gt;\"",
        "Fit again</button>",
        "It is meant</button>",
        &format!("name=\"mark\" value=\"{seen}\""),
        "<option>&lt;Bo&gt;</option>",
        "max=\"2026-03-05\"",
    ] {
        assert!(page.contains(part), "{part}: {page}");
    }
    let body = format!("do=meant&lifter=Ada&mark={seen}&lift=rack+pull&from=2026-03-06");
    let done = send(&gym, &coach, &body).await;
    assert_eq!(done.status(), 303);
    assert_eq!(done.headers()["location"], "/coach/today?told=done");
    let page = gym.text("/coach/today?told=done").await;
    assert!(page.contains("role=\"status\">done, and kept"), "{page}");
    let made_up = gym.text("/coach/today?told=%3Cb%3E").await;
    assert!(!made_up.contains("role=\"status\""));
    let deed = heard.lock().expect("whole").pop().expect("it came through");
    assert_eq!(deed.lifter, "Ada");
    let what = What::Meant {
        mark: seen,
        lift: "rack pull".to_owned(),
        date: march(6),
    };
    assert_eq!((deed.what, deed.note.as_str()), (what, ""));
}

#[tokio::test]
async fn a_stale_page_is_told_so_with_the_list_as_it_is_now() {
    for (told, words) in [
        (Undone::Stale, "the list has changed since"),
        (Undone::Already, "it is so already"),
        (Undone::NoLoad, "that is no load"),
        (Undone::ToCome, "nobody knows yet"),
        (Undone::Slip, "more than a year ago"),
        (Undone::Nobody, "no lifter of this gym"),
    ] {
        let (gym, heard) = gym(Told::Undone(told));
        let coach = gym.coach().await;
        let answer = send(&gym, &coach, "do=rule&lifter=Ada&no=1&mark=0&load=150").await;
        assert_eq!(answer.status(), 409, "{words}");
        let page = text(answer).await;
        assert!(
            page.contains(words) && page.contains("left hip"),
            "{words}: {page}"
        );
        assert_eq!(count(&heard), 1);
    }
}

/// Whoever has no session, comes from elsewhere or sends half a form changes nothing.
#[tokio::test]
async fn nothing_comes_through_that_no_coach_of_here_sent() {
    let (gym, heard) = gym(Told::Done);
    let coach = gym.coach().await;
    let fit = "do=fit&lifter=Ada";
    assert_eq!(send(&gym, "", fit).await.status(), 401);
    for (name, value) in [
        ("origin", "http://evil.example"),
        ("sec-fetch-site", "cross-site"),
        ("sec-fetch-site", "same-site"),
    ] {
        let headers = [("cookie", coach.as_str()), (name, value)];
        let form = ("/coach/today", fit);
        let answer = post(gym.router(), "/coach/today", form, &headers).await;
        assert_eq!(answer.status(), 403, "{name}: {value}");
    }
    for body in [
        "",
        "do=fit",
        "do=fit&do=hurt&lifter=Ada",
        "do=burn&lifter=Ada",
        "do=rule&lifter=Ada&no=x&mark=1&load=1",
        "do=rule&lifter=Ada&no=1&mark=1",
        "do=ill&lifter=Ada&from=2026-03-01",
        "do=ill&lifter=Ada&from=soon&to=2026-03-02",
        "do=hurt&lifter=Ada&from=2026-02-30",
        "do=fit&lifter=Ada&note=a&note=b",
    ] {
        assert_eq!(send(&gym, &coach, body).await.status(), 400, "{body}");
    }
    let long = format!("{fit}&note={}", "x".repeat(9_000));
    assert_eq!(send(&gym, &coach, &long).await.status(), 413);
    assert_eq!(count(&heard), 0);
    assert_eq!(send(&gym, &coach, fit).await.status(), 303);
    assert_eq!(count(&heard), 1);
}

/// Two hours are over while the form is filled in.
#[tokio::test]
async fn a_session_that_ran_out_in_the_middle_changes_nothing_and_says_what_to_do() {
    let (gym, heard) = gym(Told::Done);
    let coach = gym.coach().await;
    gym.wait_ms(2 * 60 * 60 * 1_000);
    let answer = send(&gym, &coach, "do=fit&lifter=Ada").await;
    assert_eq!(answer.status(), 401);
    let page = text(answer).await;
    assert!(
        page.contains("sign in") && page.contains("/sign-in"),
        "{page}"
    );
    assert_eq!(count(&heard), 0);
    // The code of now signs in again; another code's session opens nothing.
    let coach = gym.coach().await;
    share::set_code(gym.folder(), "another-word").expect("sets");
    assert_eq!(send(&gym, &coach, "do=fit&lifter=Ada").await.status(), 401);
    share::set_code(gym.folder(), CODE).expect("sets");
    assert_eq!(count(&heard), 0);
}

#[tokio::test]
async fn in_german_too() {
    let (gym, _) = gym(Told::Undone(Undone::Stale));
    let jar = format!("{}; pinladder-language=de", gym.coach().await);
    let answer = send(&gym, &jar, "do=fit&lifter=Ada").await;
    let page = text(answer).await;
    for words in [
        "die Liste hat sich ge",
        "Wieder gesund",
        "Verletzt oder krank",
    ] {
        assert!(page.contains(words), "{words}: {page}");
    }
    let headers = [("cookie", jar.as_str())];
    let page = text(ask_with(gym.router(), "GET", "/coach/today", &headers).await).await;
    assert!(!page.contains("Fit again"));
}
