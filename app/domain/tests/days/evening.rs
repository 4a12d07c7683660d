//! An evening on the pure core: a machine with an uptime and a wall clock, a kiosk that ticks as the
//! real one does.
use chrono::{DateTime, NaiveDate};
use domain::event::Hold;
use domain::gym::DAY_ENDS_AFTER_S;
use domain::lift::Grip;
use domain::sheet::{BarSheet, LiftSheet, Rung, RungKind};
use domain::steady::{Anchor, BootId, Reading};
use domain::training_day::{dates_put_right, left_open, training_day};
use domain::{
    Command, DayCommand, Event, Length, LiftRun, Mass, MassUnit, Moment, Refusal, State, decide,
};

pub(crate) const MINUTE: i64 = 60_000;
pub(crate) const HOUR: i64 = 60 * MINUTE;

/// A Wednesday.
pub(crate) fn day() -> NaiveDate {
    NaiveDate::from_ymd_opt(2026, 12, 2).expect("a day")
}

/// One gym with one kiosk.
#[derive(Debug, Clone)]
pub(crate) struct Evening {
    pub(crate) state: State,
    pub(crate) log: Vec<Event>,
    /// What a clock that nobody sets would say, milliseconds since 1970.
    pub(crate) truth: i64,
    /// How far the wall clock is from it.
    skew: i64,
    /// When the machine was started, by the true clock.
    booted: i64,
    pub(crate) boot: BootId,
    anchor: Anchor,
    noted: i64,
}

impl Evening {
    pub(crate) fn at_eighteen() -> Self {
        Self::at(18, 0)
    }

    pub(crate) fn at(hour: u32, minute: u32) -> Self {
        let at = day().and_hms_opt(hour, minute, 0).expect("a time");
        let truth = at.and_utc().timestamp_millis();
        let boot = BootId(1);
        let mut evening = Self {
            state: State::default(),
            log: Vec::new(),
            truth,
            skew: 0,
            booted: truth,
            boot,
            anchor: Anchor {
                boot,
                up_ms: 0,
                moment: Moment(0),
            },
            noted: 0,
        };
        evening.restart();
        evening
    }

    fn look(&self) -> Reading {
        Reading {
            boot: self.boot,
            up_ms: self.truth - self.booted,
            wall: self.wall(),
        }
    }

    pub(crate) fn wall(&self) -> Moment {
        Moment(self.truth + self.skew)
    }

    pub(crate) fn now(&self) -> Moment {
        self.anchor.moment_at(self.look().up_ms)
    }

    /// The program starts, as the kiosk does.
    pub(crate) fn restart(&mut self) {
        let anchor = self.state.times.anchor(self.look());
        if !self.state.times.has(anchor) {
            self.keep(DayCommand::AnchorClock(self.look()))
                .expect("anchored");
        }
        self.anchor = self.state.times.anchor(self.look());
        self.noted = self.state.times.offset_ms;
        self.tick();
    }

    /// The power is off for so long; without a battery the wall clock begins in 1970.
    pub(crate) fn power_cut(&mut self, off_ms: i64, battery: bool) {
        self.truth += off_ms;
        self.booted = self.truth;
        self.boot = BootId(self.boot.0 + 1);
        if !battery {
            self.skew = 5_000 - self.truth;
        }
        self.restart();
    }

    /// From now on the journal is written by another machine, which is ahead by so much.
    pub(crate) fn change_machine(&mut self, boot: BootId, ahead_ms: i64) {
        self.boot = boot;
        self.skew = ahead_ms;
        self.restart();
    }

    pub(crate) fn set_wall_by(&mut self, ms: i64) {
        self.skew += ms;
        self.tick();
    }

    pub(crate) fn set_wall_right(&mut self) {
        self.skew = 0;
        self.tick();
    }

    /// Time passes, with a tick at least every five minutes.
    pub(crate) fn wait(&mut self, ms: i64) {
        let mut left = ms;
        while left > 0 {
            let step = left.min(5 * MINUTE);
            self.truth += step;
            left -= step;
            self.tick();
        }
    }

    pub(crate) fn tick(&mut self) {
        let seen = self
            .state
            .times
            .seen_set(self.look(), self.now(), self.noted);
        if let Some(offset_ms) = seen {
            self.noted = offset_ms;
            self.keep(DayCommand::NoteClock { offset_ms })
                .expect("noted");
        }
        let day_of = |at| date_of(self.state.times.told(at));
        let right = dates_put_right(&self.state, DAY_ENDS_AFTER_S, self.now(), day_of);
        for (no, date) in right {
            self.keep(DayCommand::RedateLift { no, date })
                .expect("put right");
        }
        let today = self.today();
        for no in left_open(&self.state, DAY_ENDS_AFTER_S, today, self.now()) {
            self.keep(DayCommand::CloseLeftOpen(no)).expect("closed");
        }
    }

    /// The date by the wall clock, or by what is known where that was never set.
    pub(crate) fn local(&self) -> NaiveDate {
        if self.look().is_known() {
            date_of(self.wall())
        } else {
            date_of(self.state.times.told(self.now()))
        }
    }

    pub(crate) fn today(&self) -> NaiveDate {
        training_day(&self.state, DAY_ENDS_AFTER_S, self.local(), self.now())
    }

    pub(crate) fn obey(&mut self, command: Command) -> Result<(), Refusal> {
        let now = self
            .now()
            .max(self.state.times.last().unwrap_or(self.now()));
        for event in decide(&self.state, command, now)? {
            self.state.apply(&event);
            self.log.push(event);
        }
        Ok(())
    }

    pub(crate) fn keep(&mut self, command: DayCommand) -> Result<(), Refusal> {
        self.obey(Command::Day(command))
    }

    pub(crate) fn begin(&mut self, lifter: &str) -> Result<(), Refusal> {
        let sheet = sheet(lifter, self.today());
        self.obey(Command::BeginLift(Box::new(sheet)))
    }

    /// The lift of now of somebody who has one today.
    pub(crate) fn find(&self, lifter: &str) -> Option<&LiftRun> {
        self.state.lift_of(lifter, self.today())
    }

    pub(crate) fn run(&self, lifter: &str) -> &LiftRun {
        self.find(lifter).expect("a lift today")
    }

    pub(crate) fn set(&mut self, lifter: &str) -> Result<(), Refusal> {
        self.set_held(lifter, Hold::Kept)
    }

    pub(crate) fn set_held(&mut self, lifter: &str, hold: Hold) -> Result<(), Refusal> {
        let run = self.find(lifter).ok_or(Refusal::NoSuchLift)?;
        let (no, rung) = (run.no, run.next_rung().ok_or(Refusal::Over)?);
        let reps = 5;
        self.obey(Command::EnterSet {
            no,
            rung,
            reps,
            hold,
            holds: None,
        })
    }

    pub(crate) fn finish(&mut self, lifter: &str) {
        while self.set(lifter).is_ok() {}
    }

    pub(crate) fn rest_left_s(&self, lifter: &str) -> u32 {
        self.run(lifter).rest_left_s(self.now())
    }

    /// Whether no event is before the one that came before it.
    pub(crate) fn is_in_order(&self) -> bool {
        self.log.windows(2).all(|two| two[0].at <= two[1].at)
    }
}

fn date_of(at: Moment) -> NaiveDate {
    let at = DateTime::from_timestamp_millis(at.0).expect("a day of the calendar");
    at.date_naive()
}

fn sheet(lifter: &str, date: NaiveDate) -> LiftSheet {
    let kg = |kg: i64| Mass::of(MassUnit::Kg, kg * 1_000);
    let rung = |kind, load| Rung {
        kind,
        load: kg(load),
        reps: 5,
        per_side: Vec::new(),
        take_off: Vec::new(),
        put_on: Vec::new(),
        belt: false,
        straps: false,
        rest_s: 180,
    };
    LiftSheet {
        lifter: lifter.into(),
        unit: MassUnit::Kg,
        lift: "rack pull".into(),
        date,
        rack: "window".into(),
        bar: BarSheet {
            name: "old bar".into(),
            mass: kg(20),
            collars: Mass::ZERO,
            shaft_diameter: Length::mm(28),
            sleeve: Length::mm(400),
        },
        pins: None,
        hooks: None,
        overlap: None,
        grip: Grip::DoubleOverhand,
        rungs: vec![
            rung(RungKind::WarmUp, 60),
            rung(RungKind::WarmUp, 100),
            rung(RungKind::Work, 140),
            rung(RungKind::Work, 140),
        ],
        groups: Vec::new(),
        track: None,
        asked: kg(140),
        cues: Vec::new(),
        cautions: Vec::new(),
        warnings: Vec::new(),
        note: String::new(),
    }
}
