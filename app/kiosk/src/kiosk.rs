//! A whole kiosk without a window: taps in, frames out, time from the clock it is given.
//!
//! Refuses: threads and drawing. The window's thread and the bench drive it alike.
mod after;
mod around;
mod beside;
mod days;
mod elsewhere;
mod guarded;
mod handed;
mod in_force;
mod planned_on;
mod proof;
mod week;

pub use guarded::Pressed;
use guarded::Seen;
pub use handed::{Proven, make_record, remake_record};

use crate::clock::Clock;
use crate::desk;
use crate::door::Door;
use crate::error::KioskError;
use crate::folder::Folder;
use crate::gym_files::{self, GymInForce};
use crate::owner::Owner;
use crate::replan::Patience;
use crate::shared::Shared;
use crate::steady::Steady;
use chrono::NaiveDate;
use domain::State;
use domain::day::{DayEntry, day};
use domain::meet_day::MeetDay;
use journal::Record;
use std::net::SocketAddr;
use std::sync::Arc;
use view::aside::Aside;
use view::desk::{DeskNews, Errand, Wish};
use view::{Frame, Memo, Scene, Stage, Tap};

/// The kiosk.
#[derive(Debug)]
pub struct Kiosk {
    owner: Owner,
    record: Option<Record>,
    gym: GymInForce,
    config: plan::Kiosk,
    /// The texts that gym, settings and meet day were read from.
    read_from: Vec<Option<String>>,
    stage: Stage,
    patience: Patience,
    /// When the screen was tapped last.
    tapped_at: domain::Moment,
    clock: Steady,
    notice: String,
    today: Today,
    shared: Option<Shared>,
    /// The data folder; `None` for a kiosk in memory.
    folder: Option<Folder>,
    door: Door,
    /// The meet or test day that is written, if any.
    meet: Option<MeetDay>,
    /// The day and the last event for which nothing was left to decide.
    decided_for: Option<(NaiveDate, u64)>,
    planned_on: planned_on::PlannedOn,
    news: DeskNews,
    around: around::Around,
    /// What was ordered of whoever keeps sticks and copies.
    errand: Option<Errand>,
    seen: Seen,
    /// What a look at the whole journal found, after a start that believed its checkpoint.
    unsound: Option<KioskError>,
    memo: Memo,
}

/// The day's sheets, and what they were made from.
#[derive(Debug, Default)]
struct Today {
    made_for: Option<(NaiveDate, u64)>,
    entries: Vec<DayEntry>,
}

impl Kiosk {
    /// Opens the kiosk on a data folder; one without a gym gets the demo gym.
    ///
    /// # Errors
    /// [`KioskError`] when folder or journal cannot be used.
    pub fn open(folder: &Folder, clock: Box<dyn Clock>) -> Result<Self, KioskError> {
        Self::open_patient(folder, clock, Patience::AtTheRack)
    }

    /// As [`Kiosk::open`]; plans, the first one too, may take so long.
    ///
    /// # Errors
    /// As [`Kiosk::open`].
    pub fn open_patient(
        folder: &Folder,
        clock: Box<dyn Clock>,
        patience: Patience,
    ) -> Result<Self, KioskError> {
        let mut owner = Owner::of(folder)?;
        let clock = Steady::alone(clock);
        if owner.closed().is_none() {
            gym_files::begin(folder, &mut owner, &clock)?;
            gym_files::hurt_in_demo(&mut owner, &clock)?;
        }
        // After what a first start lays, so that one that was cut short is known as one.
        clock.anchor(&mut owner);
        let gym = gym_files::in_step(folder, &mut owner, &clock)?;
        let record = match Record::open(&folder.record()) {
            Ok(record) => Some(record),
            Err(error) => {
                tracing::warn!(%error, "no record; the LAN page will be empty");
                None
            }
        };
        let mut door = Door::of(folder)?;
        if owner.closed().is_none() {
            door.take_over(&mut owner, clock.now())?;
        }
        let mut kiosk = Self {
            folder: Some(folder.clone()),
            door,
            ..Self::with(owner, gym, record, (clock, patience))
        };
        if kiosk.owner.state().unshown.is_some() {
            // What a power cut kept from being shown is shown now, and may be obeyed.
            kiosk.keep_shown();
        }
        Ok(kiosk)
    }

    /// A kiosk that keeps nothing, for pictures.
    #[must_use]
    pub fn in_memory(state: State, gym: domain::Gym, clock: Box<dyn Clock>) -> Self {
        let gym = GymInForce {
            gym: Arc::new(gym),
            ..GymInForce::default()
        };
        let clock = (Steady::alone(clock), Patience::Untimed);
        Self::with(Owner::in_memory(state), gym, None, clock)
    }

    fn with(
        owner: Owner,
        gym: GymInForce,
        record: Option<Record>,
        (clock, patience): (Steady, Patience),
    ) -> Self {
        let mut kiosk = Self {
            owner,
            record,
            notice: String::new(),
            gym,
            config: plan::Kiosk::default(),
            read_from: Vec::new(),
            stage: Stage::default(),
            patience,
            tapped_at: domain::Moment::default(),
            clock,
            today: Today::default(),
            shared: None,
            folder: None,
            door: Door::in_memory(),
            meet: None,
            decided_for: None,
            planned_on: planned_on::PlannedOn::default(),
            news: DeskNews::default(),
            around: around::Around::default(),
            errand: None,
            seen: Seen::default(),
            unsound: None,
            memo: Memo::default(),
        };
        kiosk.seen.touch(kiosk.steady_ms());
        kiosk.after_change();
        if kiosk.keep_days() {
            kiosk.after_change();
        }
        kiosk.notice = kiosk.notice_at_start();
        kiosk.tell_clock();
        let clock = kiosk.time_of_day();
        kiosk.stage = Stage::resume(&kiosk.scene(&clock));
        kiosk.take_up();
        kiosk
    }

    /// Does what a tap on the face of now asks, and gives the face that follows.
    pub fn tap(&mut self, tap: &Tap) -> Frame {
        self.seen.touch(self.steady_ms());
        self.notice = self.notice_of_files();
        self.tapped_at = self.clock.now();
        self.news.door = self.door.news();
        self.renew_day();
        let time = self.time_of_day();
        let mut stage = self.stage.clone();
        let command = stage.tap(&self.scene(&time), tap);
        let (now, today) = (self.clock.now(), self.date());
        let done = match (stage.wish.take(), &command) {
            (Some(Wish::Open(code)), _) => {
                let opened = self.door.open(&code, now);
                opened.map(|open| stage.opened(open))
            }
            (Some(Wish::Code(code)), _) => {
                let changed = self.door.change(&code, &mut self.owner, now);
                changed.map(|()| self.tell_saved())
            }
            (Some(Wish::Errand(errand)), _) => {
                self.notice = errand.under_way(self.say());
                self.errand = Some(errand);
                Ok(())
            }
            (Some(wish), _) => {
                let around = (self.folder.as_ref(), &mut self.around.near);
                let of = (&mut self.owner, self.gym.gym.as_ref());
                let granted = desk::grant(&wish, around, of, (now, today));
                granted.map(|()| self.tell_saved())
            }
            (None, Some(command)) => {
                let done = self.owner.command(command, now);
                let at_desk = matches!(self.stage.aside, Some(Aside::Desk(_)));
                done.map(|()| {
                    if at_desk {
                        self.tell_saved();
                    }
                })
            }
            (None, None) => Ok(()),
        };
        match done {
            Ok(()) => {
                self.stage = stage;
                if let Some(command) = &command {
                    self.follow(command);
                }
            }
            Err(error) => {
                // Not the tap: at the door it is a digit of the code.
                tracing::warn!(%error, "a tap was refused");
                self.notice = desk::words(self.say(), &error);
            }
        }
        self.keep_days();
        self.after_change();
        self.know_who_is_up();
        if matches!(self.stage.aside, Some(Aside::Desk(_))) {
            self.look_at_desk();
        }
        self.renew_day();
        self.keep_shown();
        self.frame()
    }

    /// The face of now.
    pub fn frame(&mut self) -> Frame {
        self.renew_day();
        let time = self.time_of_day();
        let mut shared = self.shared.take();
        let scene = self.scene(&time);
        let mut frame = view::frame(&self.stage, &scene);
        if let Some(shared) = &mut shared {
            shared.follow(&scene, &mut frame);
        }
        self.shared = shared;
        self.mark(frame)
    }

    /// The kiosk's settings in force.
    #[must_use]
    pub fn config(&self) -> &plan::Kiosk {
        &self.config
    }

    /// Once a second: news from other processes, and the face of now.
    pub fn tick(&mut self) -> Frame {
        match self.owner.catch_up() {
            Ok(true) => {
                self.clock.catch_up(&self.owner.state().times);
                self.after_change();
            }
            Ok(false) => {}
            Err(error) => self.notice = desk::words(self.say(), &error),
        }
        let closed = self.owner.closed().is_some();
        self.owner.rest_when_idle();
        self.tell_closed(closed);
        // What a power cut kept from being recorded.
        if self.keep_days() | self.follow_top() | self.decide_next() {
            self.after_change();
        }
        self.tell_clock();
        self.pass_over();
        self.be_idle();
        self.renew_day();
        self.keep_shown();
        self.gather();
        self.frame()
    }

    /// Address and port of the LAN page; `None` when it is off.
    #[must_use]
    pub fn lan(&self) -> Option<SocketAddr> {
        self.config
            .share
            .then(|| SocketAddr::new(self.config.address, self.config.port))
    }

    /// Today's sheets.
    pub fn day(&mut self) -> &[DayEntry] {
        self.renew_day();
        &self.today.entries
    }

    /// What stands.
    #[must_use]
    pub fn state(&self) -> &State {
        self.owner.state()
    }

    /// Number of the last event that the screen has acknowledged.
    #[must_use]
    pub fn seq(&self) -> u64 {
        self.owner.seq()
    }

    /// The gym in force.
    #[must_use]
    pub fn gym(&self) -> &domain::Gym {
        &self.gym.gym
    }

    /// Now.
    #[must_use]
    pub fn now(&self) -> domain::Moment {
        self.clock.now()
    }

    fn renew_day(&mut self) {
        let made_for = Some((self.date(), self.owner.seq()));
        if self.today.made_for == made_for {
            return;
        }
        let mut entries = day(&self.gym.gym, self.owner.state(), self.date());
        if let Some(shown) = &self.config.racks {
            let here = |name: &str| {
                let lifter = self.gym.gym.lifters.iter().find(|l| l.name == name);
                lifter.is_none_or(|l| shown.contains(&l.rack))
            };
            entries.retain(|entry| here(&entry.lifter));
        }
        self.today = Today { made_for, entries };
    }

    fn scene<'a>(&'a self, time: &'a str) -> Scene<'a> {
        Scene {
            gym: &self.gym.gym,
            state: self.owner.state(),
            day: &self.today.entries,
            date: self.date(),
            now: self.clock.now(),
            clock: time,
            time: self.clock.time(),
            notice: &self.notice,
            meet: self.meet.as_ref(),
            news: &self.news,
            memo: self.memo.of(self.owner.seq()),
        }
    }

    /// The language of the screen.
    fn say(&self) -> view::Language {
        let kept = self.owner.state().files.get(view::look::SCREEN_FILE);
        let chosen = kept.map(|text| view::Chosen::read(text));
        chosen.unwrap_or_default().language
    }

    fn time_of_day(&self) -> String {
        self.clock.time_of_day()
    }
}
