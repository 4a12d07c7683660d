//! Plans from a browser, as rude hands send them: the kiosk behind it is played here, and hears what
//! comes through.
use crate::gym::{Gym, HOST, march, text};
use axum::body::{Body, Bytes};
use axum::http::{Request, Response};
use futures_core::Stream;
use share::{Order, Told};
use std::pin::Pin;
use std::sync::{Arc, Mutex};
use std::task::{Context, Poll};
use text::Said;
use tower::ServiceExt as _;
use view::desk::{Errand, PlanIn, PlanInRow, StickIn};

const KIND: &str = "multipart/form-data; boundary=line";

type Heard = Arc<Mutex<Vec<Errand>>>;

fn part(field: &str, name: &str, text: &str) -> String {
    format!(
        "--line\r\nContent-Disposition: form-data; name=\"{field}\"; filename=\"{name}\"\r\n\
         Content-Type: text/csv\r\n\r\n{text}\r\n--line--\r\n"
    )
}

pub(crate) fn laid(id: &str, name: &str, faults: &[&'static str]) -> Arc<PlanIn> {
    let faults: Vec<_> = faults
        .iter()
        .map(|f| Said::of(|_| (*f).to_owned()))
        .collect();
    let is_well = faults.is_empty();
    let row = PlanInRow {
        date: march(9),
        lifter: "<Ada>".to_owned(),
        lift: "rack pull".to_owned(),
        work: Said::of(|_| "180 kg \u{d7} 5".to_owned()),
        note: "a <b> & c".to_owned(),
    };
    Arc::new(PlanIn {
        read: StickIn {
            id: id.to_owned(),
            plans: vec![(name.to_owned(), if is_well { Ok(401) } else { Err(faults) })],
            passed: vec![Said::of(|_| "(odd)".to_owned())],
            changes: Vec::new(),
            can_take: is_well,
        },
        mark: "00ff".to_owned(),
        rows: if is_well { vec![row] } else { Vec::new() },
        rows_count: 401,
    })
}

/// A gym whose kiosk lays out what it is handed, and answers a second press with `told`.
fn gym(told: Told) -> (Gym, Heard) {
    let gym = Gym::new();
    let (heard, desk) = (Heard::default(), gym.desk().clone());
    let ears = Arc::clone(&heard);
    gym.desk().on_order(move |order: Order| {
        let answer = if let Errand::ReadPlan(file) = &order.errand {
            let plan = laid(&file.id, &file.name, &[]);
            desk.lay_out(|counter| counter.handed.push(plan));
            Told::Handed
        } else {
            told.clone()
        };
        ears.lock().expect("whole").push(order.errand);
        order.answer.send(answer).expect("somebody waits");
    });
    (gym, heard)
}

async fn send(
    gym: &Gym,
    target: &str,
    headers: &[(&str, &str)],
    body: impl Into<Body>,
) -> Response<Body> {
    let mut request = Request::builder()
        .method("POST")
        .uri(target)
        .header("host", HOST);
    if headers.iter().all(|(name, _)| *name != "origin") {
        request = request.header("origin", format!("http://{HOST}"));
    }
    for (name, value) in headers {
        request = request.header(*name, *value);
    }
    let request = request.body(body.into()).expect("a request");
    gym.router().oneshot(request).await.expect("cannot fail")
}

fn count(heard: &Heard) -> usize {
    heard.lock().expect("whole").len()
}

#[tokio::test]
async fn a_file_is_shown_as_understood_and_taken_by_a_second_press() {
    let (gym, heard) = gym(Told::TookPlan(401));
    let coach = gym.coach().await;
    let form = gym.text("/coach/plans").await;
    assert!(form.contains("enctype=\"multipart/form-data\"") && !form.contains("<script"));
    let headers = [("cookie", coach.as_str()), ("content-type", KIND)];
    let body = part("plan", "<march>.csv", "date,lifter\nx,y\n");
    let answer = send(&gym, "/coach/plans", &headers, body).await;
    assert_eq!(answer.status(), 303);
    let to = answer.headers()["location"]
        .to_str()
        .expect("text")
        .to_owned();
    let Some(Errand::ReadPlan(file)) = heard.lock().expect("whole").pop() else {
        panic!("nothing came through");
    };
    assert_eq!(file.name, "<march>.csv");
    assert_eq!(file.bytes, b"date,lifter\nx,y\n");
    assert_eq!(to, format!("/coach/plans/{}", file.id));
    assert!(
        !format!("{file:?}").contains("lifter"),
        "no log tells a plan"
    );
    let page = gym.text(&to).await;
    for words in [
        "<h1>&lt;march&gt;.csv</h1>",
        "Nothing is taken yet.</h2>",
        "401 rows",
        "(odd)",
        "Mon 9 Mar 2026",
        "<td>&lt;Ada&gt;</td>",
        "rack pull: 180 kg \u{d7} 5",
        "a &lt;b&gt; &amp; c",
        "The first 1 of 401 rows",
        "name=\"mark\" value=\"00ff\"",
    ] {
        assert!(page.contains(words), "{words}: {page}");
    }
    assert_eq!(count(&heard), 0, "looking takes nothing");
    let headers = [
        ("cookie", coach.as_str()),
        ("content-type", "application/x-www-form-urlencoded"),
    ];
    let taken = send(&gym, &to, &headers, "mark=00ff").await;
    assert_eq!(taken.status(), 303);
    assert_eq!(taken.headers()["location"], "/coach/plans?took=401");
    let meant = Errand::TakePlan {
        id: file.id.clone(),
        mark: "00ff".to_owned(),
    };
    assert_eq!(heard.lock().expect("whole").pop(), Some(meant));
    let page = gym.text("/coach/plans?took=401").await;
    assert!(page.contains("role=\"status\">took 401 rows"), "{page}");
    let made_up = gym.text("/coach/plans?took=%3Cb%3E").await;
    assert!(!made_up.contains("role=\"status\""));
}

#[tokio::test]
async fn what_was_not_taken_is_told_with_what_lies_there_now() {
    for (told, words) in [
        (Told::PlanGone, "lies here no longer"),
        (Told::PlanFaults, "the plan has faults"),
        (Told::GymChanged, "files have changed since"),
        (Told::DaysChanged, "somebody changed one of these days"),
    ] {
        let (gym, heard) = gym(told);
        let coach = gym.coach().await;
        let headers = [
            ("cookie", coach.as_str()),
            ("content-type", "application/x-www-form-urlencoded"),
            ("accept", "text/html"),
        ];
        let answer = send(&gym, "/coach/plans/77", &headers, "mark=1").await;
        assert_eq!(answer.status(), 409, "{words}");
        assert!(text(answer).await.contains(words), "{words}");
        assert_eq!(count(&heard), 1);
    }
    let (gym, _) = gym(Told::PlanGone);
    gym.desk().lay_out(|counter| {
        counter.handed = vec![laid("7", "march.csv", &["row 2 <is> wrong"])];
    });
    let page = gym.text("/coach/plans/7").await;
    assert!(page.contains("row 2 &lt;is&gt; wrong") && page.contains("Mend the file"));
    assert!(!page.contains("Take this plan"), "{page}");
    assert_eq!(gym.get("/coach/plans/8").await.status(), 404);
}

/// A file that never ends.
struct Endless(u64);

impl Stream for Endless {
    type Item = Result<Bytes, std::io::Error>;

    fn poll_next(mut self: Pin<&mut Self>, _: &mut Context<'_>) -> Poll<Option<Self::Item>> {
        let head = part("plan", "a.csv", "").replace("\r\n--line--\r\n", "");
        let first = self.0 == 0;
        self.0 += 1;
        assert!(self.0 < 100, "read on and on");
        let piece = if first {
            Bytes::from(head)
        } else {
            Bytes::from(vec![b'x'; 64 << 10])
        };
        Poll::Ready(Some(Ok(piece)))
    }
}

/// Strangers, other sites, whoever signed out meanwhile, thirty megabytes and half a form.
#[tokio::test]
async fn nothing_comes_through_that_is_too_much_or_no_coachs() {
    let (gym, heard) = gym(Told::TookPlan(1));
    let coach = gym.coach().await;
    let body = part("plan", "a.csv", "x");
    let mine = ("cookie", coach.as_str());
    let kind = ("content-type", KIND);
    let long = "x".repeat(5 << 20);
    let other = [
        (401, vec![kind], body.clone()),
        (
            403,
            vec![mine, kind, ("origin", "http://evil.example")],
            body.clone(),
        ),
        (
            403,
            vec![mine, kind, ("sec-fetch-site", "cross-site")],
            body.clone(),
        ),
        (
            415,
            vec![mine, ("content-type", "text/csv")],
            "a,b".to_owned(),
        ),
        (
            415,
            vec![mine, ("content-type", "multipart/form-data")],
            body.clone(),
        ),
        (400, vec![mine, kind], part("other", "a.csv", "x")),
        (400, vec![mine, kind], part("plan", "", "")),
        (400, vec![mine, kind], part("plan", "a.csv", "")),
        (400, vec![mine, kind], "--line--\r\n".to_owned()),
        (400, vec![mine, kind], body[..body.len() - 12].to_owned()),
        (
            413,
            vec![mine, kind, ("content-length", "31457280")],
            body.clone(),
        ),
        (413, vec![mine, kind], part("plan", "a.csv", &long)),
    ];
    for (status, headers, body) in other {
        let told = format!("{headers:?} {body:.60}");
        let answer = send(&gym, "/coach/plans", &headers, body).await;
        assert_eq!(answer.status().as_u16(), status, "{told}");
    }
    let endless = Body::from_stream(Endless(0));
    let answer = send(&gym, "/coach/plans", &[mine, kind], endless).await;
    assert_eq!(answer.status(), 413);
    let form = ("content-type", "application/x-www-form-urlencoded");
    let unsigned = send(&gym, "/coach/plans/7", &[form], "mark=1").await;
    assert_eq!(unsigned.status(), 401);
    let half = send(&gym, "/coach/plans/7", &[mine, form], "").await;
    assert_eq!(half.status(), 400);
    assert_eq!(count(&heard), 0);
    // It is ready for the next one.
    let answer = send(&gym, "/coach/plans", &[mine, kind], body).await;
    assert_eq!(answer.status(), 303);
    assert_eq!(count(&heard), 1);
}
