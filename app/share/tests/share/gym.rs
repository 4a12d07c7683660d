//! An invented gym's record, and a way to ask for it.
use axum::Router;
use axum::body::{Body, to_bytes};
use axum::http::{Request, Response};
use chrono::NaiveDate;
use domain::Prescription;
use domain::lift::Grip;
use domain::prescription::{LoadWish, SetGroup};
use domain::sheet::{BarSheet, RungKind};
use domain::{Event, Fact, Hold, Length, LiftNo, LiftSheet, Mass, MassUnit, Moment, Rung};
use journal::{Journal, Record};
use share::{Desk, Front, Places};
use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::sync::atomic::{AtomicU64, Ordering};
use tempfile::TempDir;
use tower::ServiceExt as _;

/// The coach's code of every gym here.
pub(crate) const CODE: &str = "flat-backs-only";

pub(crate) struct Gym {
    folder: TempDir,
    events: Vec<Event>,
    lifts: u32,
    clock: Arc<AtomicU64>,
    desk: Desk,
}

impl Gym {
    pub(crate) fn new() -> Self {
        let folder = tempfile::tempdir().expect("a folder");
        let clock = Arc::new(AtomicU64::new(1_000));
        let read = Arc::clone(&clock);
        let desk = Desk::new(folder.path(), move || read.load(Ordering::SeqCst));
        Self {
            folder,
            events: Vec::new(),
            lifts: 0,
            clock,
            desk,
        }
    }

    /// A plan of one row.
    pub(crate) fn planned(
        mut self,
        lifter: &str,
        lift: &str,
        date: NaiveDate,
        load: LoadWish,
    ) -> Self {
        let row = Prescription {
            bar: None,
            date,
            lifter: lifter.to_owned(),
            lift: lift.to_owned(),
            first: SetGroup::straight(1, 5, load),
            then: Vec::new(),
            track: None,
            ladder: None,
            note: "slow & <steady>".to_owned(),
        };
        let name = "plan.csv".to_owned();
        let rows = vec![row];
        self.push(Fact::PlanTaken { name, rows });
        self
    }

    fn push(&mut self, fact: Fact) {
        let minutes = i64::try_from(self.events.len()).expect("few");
        let at = Moment(1_772_442_000_000 + minutes * 60_000);
        self.events.push(Event { at, fact });
    }

    pub(crate) fn folder(&self) -> &Path {
        self.folder.path()
    }

    pub(crate) fn desk(&self) -> &Desk {
        &self.desk
    }

    pub(crate) fn wait_ms(&self, ms: u64) {
        self.clock.fetch_add(ms, Ordering::SeqCst);
    }

    /// Sets the code and signs in: the cookie.
    pub(crate) async fn coach(&self) -> String {
        if share::kept_code(self.folder()).expect("reads").is_none() {
            share::set_code(self.folder(), CODE).expect("sets");
        }
        let response = sign_in(self.router(), CODE).await;
        assert_eq!(response.status(), 303);
        cookie(&response)
    }

    /// One lift: a warm-up of 60 kg and a work set of `load`, then the sets that were done.
    pub(crate) fn lift(
        mut self,
        (lifter, unit): (&str, MassUnit),
        lift: &str,
        date: NaiveDate,
        load: Mass,
        sets: &[(u16, u8, Hold)],
    ) -> Self {
        self.lifts += 1;
        let no = LiftNo(self.lifts);
        let sheet = Box::new(sheet(lifter, unit, lift, date, load));
        let mut facts = vec![Fact::LiftBegun { no, sheet }];
        facts.extend(sets.iter().map(|(rung, reps, hold)| Fact::SetDone {
            no,
            rung: *rung,
            reps: *reps,
            hold: *hold,
        }));
        for fact in facts {
            self.push(fact);
        }
        self
    }

    /// Writes journal and record.
    pub(crate) fn recorded(self) -> Self {
        let path = self.folder.path().join("journal.sqlite");
        let mut journal = Journal::open(&path).expect("opens");
        journal.append(0, &self.events).expect("appends");
        let mut record = Record::open(&self.record()).expect("opens");
        record.follow(&journal).expect("follows");
        self
    }

    pub(crate) fn record(&self) -> PathBuf {
        self.folder.path().join("record.sqlite")
    }

    pub(crate) fn router(&self) -> Router {
        self.router_of(Front::default())
    }

    pub(crate) fn router_of(&self, front: Front) -> Router {
        let places = Places {
            record: self.record(),
            journal: self.folder.path().join("journal.sqlite"),
        };
        share::router(places, self.desk.clone(), front)
    }

    /// What a coach gets.
    pub(crate) async fn get(&self, target: &str) -> Response<Body> {
        let cookie = self.coach().await;
        ask_with(self.router(), "GET", target, &[("cookie", &cookie)]).await
    }

    /// What anybody gets.
    pub(crate) async fn open(&self, target: &str) -> Response<Body> {
        ask(self.router(), "GET", target).await
    }

    pub(crate) async fn text(&self, target: &str) -> String {
        text(self.get(target).await).await
    }
}

pub(crate) async fn ask(router: Router, method: &str, target: &str) -> Response<Body> {
    ask_with(router, method, target, &[]).await
}

pub(crate) async fn ask_with(
    router: Router,
    method: &str,
    target: &str,
    headers: &[(&str, &str)],
) -> Response<Body> {
    let mut request = Request::builder()
        .method(method)
        .uri(target)
        .header("host", HOST);
    for (name, value) in headers {
        request = request.header(*name, *value);
    }
    let request = request.body(Body::empty()).expect("a request");
    router.oneshot(request).await.expect("cannot fail")
}

pub(crate) const HOST: &str = "192.168.1.20:8080";

/// Posts the form as a browser does.
pub(crate) async fn sign_in(router: Router, code: &str) -> Response<Body> {
    let request = Request::builder()
        .method("POST")
        .uri("/sign-in")
        .header("host", HOST)
        .header("origin", format!("http://{HOST}"))
        .header("content-type", "application/x-www-form-urlencoded")
        .body(Body::from(format!("code={code}")))
        .expect("a request");
    router.oneshot(request).await.expect("cannot fail")
}

/// Posts a form as a browser does, from the page at `page`.
pub(crate) async fn post(
    router: Router,
    target: &str,
    (page, body): (&str, &str),
    headers: &[(&str, &str)],
) -> Response<Body> {
    let mut request = Request::builder()
        .method("POST")
        .uri(target)
        .header("host", HOST)
        .header("origin", format!("http://{HOST}"))
        .header("referer", format!("http://{HOST}{page}"))
        .header("content-type", "application/x-www-form-urlencoded");
    for (name, value) in headers {
        request = request.header(*name, *value);
    }
    let request = request.body(Body::from(body.to_owned()));
    let request = request.expect("a request");
    router.oneshot(request).await.expect("cannot fail")
}

/// The cookie that an answer sets, without its attributes.
pub(crate) fn cookie(response: &Response<Body>) -> String {
    let set = response.headers()["set-cookie"].to_str().expect("text");
    set.split(';').next().expect("a pair").to_owned()
}

pub(crate) async fn text(response: Response<Body>) -> String {
    let bytes = to_bytes(response.into_body(), 64 << 20)
        .await
        .expect("whole");
    String::from_utf8(bytes.to_vec()).expect("text")
}

pub(crate) fn march(day: u32) -> NaiveDate {
    NaiveDate::from_ymd_opt(2026, 3, day).expect("a day of March")
}

pub(crate) fn kg(thousandths: i64) -> Mass {
    Mass::of(MassUnit::Kg, thousandths)
}

fn sheet(lifter: &str, unit: MassUnit, lift: &str, date: NaiveDate, load: Mass) -> LiftSheet {
    let warm_up = Rung {
        kind: RungKind::WarmUp,
        load: kg(60_000),
        reps: 5,
        per_side: vec![],
        take_off: vec![],
        put_on: vec![],
        belt: false,
        straps: false,
        rest_s: 120,
    };
    let work = Rung {
        kind: RungKind::Work,
        load,
        ..warm_up.clone()
    };
    LiftSheet {
        lifter: lifter.to_owned(),
        unit,
        lift: lift.to_owned(),
        date,
        rack: "North".to_owned(),
        bar: BarSheet {
            name: "old bent".to_owned(),
            mass: kg(20_000),
            collars: Mass::ZERO,
            shaft_diameter: Length::mm(28),
            sleeve: Length::mm(415),
        },
        pins: None,
        hooks: None,
        overlap: None,
        grip: Grip::DoubleOverhand,
        rungs: vec![warm_up, work],
        groups: Vec::new(),
        track: None,
        asked: load,
        cues: vec![],
        cautions: vec![],
        warnings: vec![],
        note: String::new(),
    }
}

/// Two lifters on two days.
pub(crate) fn two_days() -> Gym {
    let (ada, bo) = (("Ada", MassUnit::Kg), ("Bo", MassUnit::Lb));
    let pounds = Mass::of(MassUnit::Lb, 445_000);
    let kept = [(0, 5, Hold::Kept), (1, 5, Hold::Kept)];
    Gym::new()
        .lift(bo, "rack pull", march(2), pounds, &[(1, 5, Hold::Kept)])
        .lift(ada, "halting deadlift", march(2), kg(117_500), &kept)
        .lift(
            ada,
            "barbell shrug",
            march(2),
            kg(140_000),
            &[(1, 0, Hold::Kept)],
        )
        .lift(
            ada,
            "rack pull",
            march(5),
            kg(180_000),
            &[(1, 4, Hold::MovedAt(4))],
        )
        .recorded()
}

/// One lifter whose names are an attack each.
pub(crate) fn hostile() -> Gym {
    Gym::new()
        .lift(
            ("=HYPERLINK(\"http://evil.example\",\"x\")", MassUnit::Kg),
            "<script>alert(1)</script>",
            march(2),
            kg(100_000),
            &[(1, 5, Hold::Kept)],
        )
        .lift(
            ("@a\" onload=\"b", MassUnit::Kg),
            "\tlift, with\r\nlines",
            march(2),
            kg(-2_500),
            &[(1, 5, Hold::Kept)],
        )
        .recorded()
}

/// So many sets that they take several pieces.
pub(crate) fn long(sets: usize) -> Gym {
    let ada = ("Ada", MassUnit::Kg);
    let all = vec![(1, 5, Hold::Kept); sets];
    Gym::new()
        .lift(ada, "rack pull", march(2), kg(180_000), &all)
        .recorded()
}
