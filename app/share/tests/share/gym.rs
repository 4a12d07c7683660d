//! An invented gym's record, and a way to ask for it.
use axum::Router;
use axum::body::{Body, to_bytes};
use axum::http::{Request, Response};
use chrono::NaiveDate;
use domain::lift::Grip;
use domain::sheet::{BarSheet, RungKind};
use domain::{Event, Fact, Hold, Length, LiftNo, LiftSheet, Mass, MassUnit, Moment, Rung};
use journal::{Journal, Record};
use std::path::PathBuf;
use tempfile::TempDir;
use tower::ServiceExt as _;

pub(crate) struct Gym {
    folder: TempDir,
    events: Vec<Event>,
    lifts: u32,
}

impl Gym {
    pub(crate) fn new() -> Self {
        Self {
            folder: tempfile::tempdir().expect("a folder"),
            events: Vec::new(),
            lifts: 0,
        }
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
            let minutes = i64::try_from(self.events.len()).expect("few");
            let at = Moment(1_772_442_000_000 + minutes * 60_000);
            self.events.push(Event { at, fact });
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
        share::router(self.record())
    }

    pub(crate) async fn get(&self, target: &str) -> Response<Body> {
        ask(self.router(), "GET", target).await
    }

    pub(crate) async fn text(&self, target: &str) -> String {
        text(self.get(target).await).await
    }
}

pub(crate) async fn ask(router: Router, method: &str, target: &str) -> Response<Body> {
    let request = Request::builder()
        .method(method)
        .uri(target)
        .header("host", "192.168.1.20:8080")
        .body(Body::empty())
        .expect("a request");
    router.oneshot(request).await.expect("cannot fail")
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
