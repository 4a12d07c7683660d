//! A gym on simulated time: its data folder, its kiosk, its page, a stick, a second place for copies,
//! and a coach at another machine.
use chrono::{Days, NaiveDate, NaiveDateTime};
use disk::Random;
use domain::Command;
use domain::coach_word::{CoachSays, CoachWord};
use kiosk::clock::{BenchClock, Clock as _};
use kiosk::kiosk::Pressed;
use kiosk::nightly::{Nightly, Nights};
use kiosk::owner::Owner;
use kiosk::replan::Patience;
use kiosk::shared::Shared;
use kiosk::steady::Steady;
use kiosk::stick::{Stick, write_back};
use kiosk::{Folder, Kiosk};
use share::{Desk, Front, Places, converse, router};
use std::fs;
use std::path::Path;
use tempfile::TempDir;
use tokio::io::{AsyncReadExt as _, AsyncWriteExt as _, duplex};
use tokio::runtime::{Builder, Runtime};
use view::{Frame, Screen};

/// The lifters of the demo gym whom sticks bring plans for.
const LIFTERS: [&str; 4] = ["Tevita", "Hamza", "Marisol", "Parvati"];
/// Copies that are kept.
pub(crate) const COPIES: usize = 5;

pub(crate) struct Gym {
    pub(crate) data: TempDir,
    pub(crate) kiosk: Kiosk,
    pub(crate) clock: BenchClock,
    pub(crate) random: Random,
    pub(crate) desk: Desk,
    pub(crate) place: TempDir,
    nights: Nights,
    runtime: Runtime,
    /// Whether the disk may refuse at the moment.
    pub(crate) broken: bool,
    /// How often each thing was done, for the report.
    pub(crate) done: std::collections::BTreeMap<&'static str, u64>,
}

/// The first afternoon: a Monday, so that the demo's plan has its first week.
fn first() -> NaiveDateTime {
    let day = NaiveDate::from_ymd_opt(2026, 11, 30).expect("a day");
    day.and_hms_opt(17, 0, 0).expect("a time")
}

/// A folder in memory where there is one: a simulated disk says itself what is safe.
pub(crate) fn room() -> TempDir {
    let memory = Path::new("/dev/shm");
    let made = match memory.is_dir() {
        true => tempfile::tempdir_in(memory),
        false => tempfile::tempdir(),
    };
    made.expect("a folder")
}

fn open(data: &Path, clock: &BenchClock) -> Kiosk {
    let folder = Folder::open(Some(data)).expect("a folder");
    let clock = Box::new(clock.clone());
    Kiosk::open_patient(&folder, clock, Patience::Never).expect("the kiosk opens")
}

impl Gym {
    pub(crate) fn open(seed: u64) -> Self {
        let (data, place, clock) = (room(), room(), BenchClock::at(first()));
        let kiosk = open(data.path(), &clock);
        let nights = Nights::new(nightly(data.path(), place.path()));
        let time = clock.clone();
        let desk = Desk::new(data.path(), move || time.now().0.unsigned_abs());
        let runtime = Builder::new_current_thread().enable_all().build();
        let mut gym = Self {
            data,
            kiosk,
            clock,
            random: Random::of(seed),
            desk,
            place,
            nights,
            runtime: runtime.expect("a runtime"),
            broken: false,
            done: std::collections::BTreeMap::new(),
        };
        gym.share();
        gym
    }

    pub(crate) fn count(&mut self, what: &'static str) {
        *self.done.entry(what).or_default() += 1;
    }

    fn share(&mut self) {
        let base = Some("http://127.0.0.1:8470".to_owned());
        self.kiosk.share(Shared::new(self.desk.clone(), base));
    }

    /// The kiosk is started on this folder, in place of the one that ran.
    pub(crate) fn start(&mut self, data: TempDir) {
        let kiosk = open(data.path(), &self.clock);
        self.nights = Nights::new(nightly(data.path(), self.place.path()));
        let time = self.clock.clone();
        self.desk = Desk::new(data.path(), move || time.now().0.unsigned_abs());
        self.kiosk = kiosk;
        self.data = data;
        self.share();
    }

    pub(crate) fn one_of(&mut self, chances: u64) -> bool {
        self.random.below(chances) == 0
    }

    /// So many seconds pass, with a tick at each `every`.
    pub(crate) fn pass(&mut self, seconds: u64, every: u64) -> Frame {
        for _ in 0..seconds.div_ceil(every.max(1)) {
            let ms = i64::try_from(every * 1_000).expect("short");
            self.clock.advance_ms(ms);
            self.kiosk.tick();
        }
        self.kiosk.frame()
    }

    /// A night passes, with its copy, until five in the afternoon.
    pub(crate) fn sleep(&mut self, every: u64) {
        let now = self.clock.local();
        let next = now.date() + Days::new(1);
        let until = next.and_hms_opt(17, 0, 0).expect("a time");
        let seconds = u64::try_from((until - now).num_seconds()).unwrap_or(0);
        for _ in 0..24 {
            self.pass(seconds / 24, every.min(seconds / 24));
            if self.nights.look(self.clock.local()).is_some() {
                self.count("copies at night");
            }
        }
    }

    /// Somebody comes to the page: the board, the record behind a link, what there is not.
    pub(crate) fn visit(&mut self) {
        self.count("visits");
        let paths = [
            "/",
            "/board",
            "/coach",
            "/record.csv",
            "/nothing",
            "/board.js",
        ];
        let which = usize::try_from(self.random.below(7)).expect("few");
        let Some(path) = paths.get(which) else {
            self.own_record();
            return;
        };
        let answer = self.ask(&format!("GET {path} HTTP/1.1\r\nhost: localhost\r\n\r\n"));
        assert!(answer.starts_with("HTTP/1.1 "), "{answer}");
        assert!(self.broken || !answer.starts_with("HTTP/1.1 5"), "{answer}");
    }

    /// A lifter opens their record by a link, and finds it.
    fn own_record(&mut self) {
        let lifts = &self.kiosk.state().lifts;
        let Some((no, run)) = lifts.iter().next_back() else {
            return;
        };
        let (no, lifter) = (no.0, run.sheet.lifter.clone());
        let Some(path) = self.desk.link(no, &lifter, 0) else {
            return;
        };
        let head = "host: localhost\r\norigin: http://localhost\r\n";
        let open = format!("POST {path} HTTP/1.1\r\n{head}content-length: 0\r\n\r\n");
        let opened = self.ask(&open);
        let cookie = opened.split("pinladder-own=").nth(1);
        let cookie = cookie.and_then(|rest| rest.split(';').next());
        let cookie = cookie.unwrap_or_else(|| panic!("{opened}")).to_owned();
        let look = format!("GET {path} HTTP/1.1\r\n{head}cookie: pinladder-own={cookie}\r\n\r\n");
        let page = self.ask(&look);
        assert!(self.broken || !page.starts_with("HTTP/1.1 5"), "{page}");
        self.count("records opened by a link");
    }

    fn ask(&self, request: &str) -> String {
        let (mut near, far) = duplex(1 << 20);
        let places = Places {
            record: self.data.path().join(journal::RECORD_FILE),
            journal: self.data.path().join(journal::JOURNAL_FILE),
        };
        let router = router(places, self.desk.clone(), Front::default());
        let request = request.replacen("\r\n", "\r\nconnection: close\r\n", 1);
        let talk = async {
            near.write_all(request.as_bytes())
                .await
                .expect("there is room");
            let mut answer = Vec::new();
            let (_, read) = tokio::join!(converse(far, router), near.read_to_end(&mut answer));
            read.expect("reads");
            String::from_utf8_lossy(&answer).into_owned()
        };
        self.runtime.block_on(talk)
    }

    /// A stick is put in: its plan is taken whole, or it is pulled while the record is written to
    /// it.
    pub(crate) fn stick(&mut self) {
        self.count("sticks");
        let stick = tempfile::tempdir().expect("a stick");
        let today = self.kiosk.date();
        let mut text = "date,lifter,lift,sets,reps,load\n".to_owned();
        for (lifter, day) in LIFTERS.into_iter().zip(1..) {
            let date = today + Days::new(day + self.random.below(4));
            let load = 60 + 5 * self.random.below(20);
            text += &format!("{date},{lifter},rack pull,1,5,{load} kg\n");
        }
        if self.one_of(4) {
            text += "soon,Nobody,juggling,many,,\n";
        }
        fs::write(stick.path().join("plan.csv"), text).expect("writes");
        let read = Stick::read(stick.path(), self.kiosk.gym()).expect("reads");
        if read.is_sound() {
            let (name, rows) = read.together();
            // On a disk that takes nothing it is refused whole.
            if self.kiosk.take_plan(name, rows).is_ok() {
                self.count("plans taken");
            }
        }
        if self.one_of(3) {
            let place = stick.path().to_owned();
            if self.one_of(2) {
                drop(stick);
                let pulled = write_back(self.data.path(), &place, "pulled");
                assert!(pulled.is_err(), "the stick is gone");
                self.count("sticks pulled");
            } else if write_back(self.data.path(), &place, "record").is_ok() {
                self.count("records on a stick");
            }
        }
    }

    /// The coach says something from another process, whose own clock is the gym's.
    pub(crate) fn coach(&mut self) {
        let which = usize::try_from(self.random.below(LIFTERS.len() as u64)).expect("few");
        let lifter = LIFTERS[which].to_owned();
        let what = match self.random.below(6) {
            0 => CoachSays::Hurt {
                since: self.kiosk.date(),
            },
            _ => CoachSays::Fit,
        };
        let word = CoachWord {
            lifter,
            what,
            note: "as seen".to_owned(),
        };
        let folder = Folder::open(Some(self.data.path())).expect("a folder");
        let Ok(Ok(mut owner)) = folder.open_journal().map(Owner::open) else {
            return;
        };
        let clock = Steady::start(Box::new(self.clock.clone()), &mut owner);
        // Fit who was not hurt is refused; and so is all on a disk that takes nothing.
        let said = owner.command(&Command::SayCoach(Box::new(word)), clock.now());
        if said.is_ok() {
            self.count("words of the coach");
        }
        drop(owner);
        self.kiosk.tick();
    }

    /// A foot switch, on the face of now or on an older one.
    pub(crate) fn press(&mut self) {
        use hardware::Press;
        self.count("presses");
        let press = [Press::Done, Press::Main, Press::Moved, Press::Undo];
        let which = usize::try_from(self.random.below(4)).expect("few");
        let number = self.kiosk.frame().number;
        let number = number.saturating_sub(self.random.below(2));
        let press = press[which];
        self.kiosk.press(Pressed { press, number });
    }

    /// Buttons and lamps come and go.
    pub(crate) fn devices(&mut self) {
        self.count("devices lost or back");
        let faults = match self.random.below(2) {
            0 => vec!["the foot switch does not answer; look at its cable".to_owned()],
            _ => Vec::new(),
        };
        self.kiosk.tell_devices(faults);
    }

    /// What a start does beside the owner's thread: the record is held against the journal.
    pub(crate) fn record_is_sound(&self) -> bool {
        journal::prove_record(self.data.path()).expect("can be told")
    }

    /// The lifters' names on the face of all lifters; none on another.
    pub(crate) fn tiles(&mut self) -> Vec<String> {
        let Screen::Choose(choose) = self.kiosk.frame().screen else {
            return Vec::new();
        };
        choose.tiles.into_iter().map(|tile| tile.lifter).collect()
    }
}

fn nightly(data: &Path, place: &Path) -> Nightly {
    Nightly {
        folder: data.to_owned(),
        place: place.to_owned(),
        keep: COPIES,
    }
}
