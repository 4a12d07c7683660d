//! Invented seasons of several lifters: what a gym leaves in its journal over the years, with all
//! that is done wrong and taken back. The same seed gives the same season.
use crate::{invented, invented_next};
use chrono::{Days, NaiveDate};
use disk::Random;
use domain::believed::{BarWord, Disc, Said, Stacks};
use domain::lift::Grip;
use domain::prescription::LoadWish;
use domain::sheet::RungKind;
use domain::shown::{LifterPart, Shown, ShownOrder, ShownScreen};
use domain::steady::BootId;
use domain::{Event, Fact, Hold, LiftNo, LiftSheet, Moment, Prescription, State, TrackName};

const LIFTERS: [&str; 4] = ["Ada", "Bo", "Hamza", "Ines"];
const LIFTS: [&str; 4] = ["rack pull", "halting deadlift", "barbell shrug", "deadlift"];

/// A season as it grows.
pub(crate) struct Season {
    random: Random,
    at: i64,
    no: u32,
    date: NaiveDate,
    /// Lifts begun while the time of day is not known; `None` while it is.
    guessed: Option<Vec<LiftNo>>,
    pub(crate) events: Vec<Event>,
}

/// The events of a season with so many lifts.
pub(crate) fn season(seed: u64, lifts: u32) -> Vec<Event> {
    let mut season = Season {
        random: Random::of(seed),
        at: 1_772_442_000_000,
        no: 0,
        date: NaiveDate::from_ymd_opt(2026, 3, 2).expect("a day"),
        guessed: None,
        events: Vec::new(),
    };
    season.say(Fact::ClockAnchored {
        boot: BootId(u128::from(seed)),
        up_ms: 1,
        offset_ms: Some(0),
    });
    for fact in invented_next::words() {
        season.say(fact);
    }
    while season.no < lifts {
        season.evening();
    }
    season.events
}

impl Season {
    fn say(&mut self, fact: Fact) {
        self.at += 1 + i64::try_from(self.random.below(90_000)).expect("small");
        self.events.push(Event {
            at: Moment(self.at),
            fact,
        });
    }

    fn one_in(&mut self, many: u64) -> bool {
        self.random.below(many) == 0
    }

    fn pick<T: Copy>(&mut self, of: &[T]) -> T {
        let at = self.random.below(of.len() as u64);
        of[usize::try_from(at).expect("small")]
    }

    fn evening(&mut self) {
        self.date = self.date + Days::new(1 + self.random.below(3));
        self.at += 20 * 3_600_000;
        if self.one_in(12) {
            self.restart();
        }
        self.plan();
        for lifter in LIFTERS {
            if !self.one_in(4) {
                self.lift(lifter);
            }
        }
        if self.one_in(9) {
            let all = invented::facts();
            let at = usize::try_from(self.random.below(3)).expect("small");
            self.say(all[at].clone());
        }
    }

    /// The machine begins anew; where it does not know the time, somebody sets it later.
    fn restart(&mut self) {
        if let Some(guessed) = self.guessed.take() {
            self.say(Fact::ClockSet { offset_ms: 7 });
            for no in guessed {
                let date = self.date;
                self.say(Fact::LiftRedated { no, date });
            }
        }
        let known = !self.one_in(3);
        self.guessed = (!known).then(Vec::new);
        let boot = BootId(u128::from(self.random.draw()));
        self.say(Fact::ClockAnchored {
            boot,
            up_ms: 9,
            offset_ms: known.then_some(7),
        });
    }

    fn plan(&mut self) {
        let lifter = self.pick(&LIFTERS);
        let lift = self.pick(&LIFTS);
        let track = self.track();
        let load = self.pick(&[LoadWish::OfBest(8_000), LoadWish::OfTraining(8_500)]);
        let row = |date, reps| Prescription {
            bar: None,
            date,
            lifter: lifter.to_owned(),
            lift: lift.to_owned(),
            first: domain::prescription::SetGroup::straight(3, reps, load),
            then: Vec::new(),
            track,
            ladder: None,
            note: String::new(),
        };
        let rows = vec![row(self.date, 5), row(self.date + Days::new(2), 3)];
        let name = "week.csv".to_owned();
        self.say(Fact::PlanTaken { name, rows });
        if self.one_in(5) {
            let (lifter, date) = (lifter.to_owned(), self.date);
            self.say(Fact::DayCleared { lifter, date });
        }
    }

    /// Every third lift is of a track by name.
    fn track(&mut self) -> Option<TrackName> {
        let name = self.pick(&["", "", "heavy"]);
        TrackName::new(name)
    }

    fn sheet(&mut self, lifter: &str) -> LiftSheet {
        let mut sheet = invented::from_pins();
        sheet.lifter = lifter.to_owned();
        sheet.lift = self.pick(&LIFTS).to_owned();
        sheet.date = self.date;
        sheet.track = self.track();
        sheet.grip = Grip::Hook;
        let kg = i64::try_from(100 + self.random.below(60)).expect("small");
        let reps = self.pick(&[5, 3]);
        for rung in &mut sheet.rungs {
            rung.load = invented::kg(kg * 1_000);
            if rung.kind == RungKind::Work {
                rung.reps = reps;
            }
        }
        sheet
    }

    fn lift(&mut self, lifter: &str) {
        self.no += 1;
        let no = LiftNo(self.no);
        if let Some(guessed) = &mut self.guessed {
            guessed.push(no);
        }
        let sheet = Box::new(self.sheet(lifter));
        let rungs = u16::try_from(sheet.rungs.len()).expect("few");
        let (rack, bar) = (sheet.rack.clone(), sheet.bar.name.clone());
        self.say(Fact::LiftBegun { no, sheet });
        self.show(lifter, no, (&rack, &bar));
        for rung in 0..rungs {
            match self.random.below(24) {
                0 => self.say(Fact::RungSkipped { no, rung }),
                1 => return self.say(Fact::LiftStopped { no }),
                2 => return self.left_open(no),
                3 => self.say(Fact::TurnPassed { no }),
                4 => self.say(Fact::TurnDeferred { no }),
                5 => self.settle(no, rung),
                _ => {}
            }
            self.bar_said(no, (&rack, &bar));
            self.set(no, rung);
            if self.one_in(10) {
                self.say(Fact::EntryUndone { no });
                self.set(no, rung);
            }
        }
        if self.one_in(30) {
            // All of it was a mistake.
            for _ in 0..12 {
                self.say(Fact::EntryUndone { no });
            }
        } else if !self.one_in(5) {
            self.say(invented_next::raised(no));
            if self.one_in(6) {
                self.say(invented_next::overridden(no));
            }
        }
    }

    fn settle(&mut self, no: LiftNo, rung: u16) {
        if let Fact::LoadSettled { mut settled, .. } = invented_next::settled() {
            settled.rung = rung;
            self.say(Fact::LoadSettled { no, settled });
        }
    }

    fn set(&mut self, no: LiftNo, rung: u16) {
        let reps = self.pick(&[5, 5, 5, 3, 0]);
        let hold = if self.one_in(9) {
            Hold::MovedAt(2)
        } else {
            Hold::Kept
        };
        self.say(Fact::SetDone {
            no,
            rung,
            reps,
            hold,
        });
    }

    fn left_open(&mut self, no: LiftNo) {
        self.say(Fact::LiftLapsed { no });
        if self.one_in(3) {
            let on = self.date + Days::new(1);
            self.say(Fact::LiftReopened { no, on });
            self.say(Fact::LiftStopped { no });
        }
    }

    fn stacks() -> Stacks {
        let disc = |face| Disc {
            face,
            mark: Some("red".to_owned()),
        };
        let faces = invented::rungs().swap_remove(1).per_side;
        Stacks {
            left: faces.iter().copied().map(disc).collect(),
            right: Vec::new(),
        }
    }

    fn bar_said(&mut self, no: LiftNo, (rack, bar): (&str, &str)) {
        let said = match self.random.below(5) {
            0 => Said::Stated,
            1 => Said::Loaded(no),
            _ => return,
        };
        self.say(Fact::BarSaid(Box::new(BarWord {
            rack: rack.to_owned(),
            bar: bar.to_owned(),
            date: self.date,
            holds: Self::stacks(),
            said,
            contradicts: Vec::new(),
        })));
        if self.one_in(3) {
            let bar = bar.to_owned();
            self.say(Fact::BarWordUndone { bar });
        }
    }

    fn show(&mut self, lifter: &str, no: LiftNo, (rack, bar): (&str, &str)) {
        let order = ShownOrder {
            rack: rack.to_owned(),
            bar: bar.to_owned(),
            date: self.date,
            to: Self::stacks(),
        };
        self.say(Fact::ScreenShown(Box::new(Shown {
            date: self.date,
            screen: ShownScreen::Lifter(lifter.to_owned(), LifterPart::Due),
            early: None,
            entered: Some(no),
            settle: None,
            seen_end: None,
            orders: vec![order],
        })));
    }
}

/// The state after so many of the events.
pub(crate) fn after(events: &[Event], many: usize) -> State {
    State::replay(&events[..many])
}
