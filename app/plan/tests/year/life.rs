//! A year lived through the real code: files read, plans taken, sheets asked for, sets entered, next
//! times decided, the coach's rulings late.
use crate::lifter::{Absent, Kind, Lifter};
use crate::programme::Programme;
use chrono::{Days, NaiveDate};
use domain::coach_word::{CoachSays, CoachWord};
use domain::day::groups::following;
use domain::day::{DayEntry, day};
use domain::event::{Event, Hold};
use domain::next::outing::Outing;
use domain::next::{Due, Ill, Why};
use domain::sheet::RungKind;
use domain::{Command, Gym, LiftNo, Mass, Moment, State, Track, decide};

pub(crate) const WHO: &str = "Ines";

/// One lift of one day, as it was asked and as it went.
pub(crate) struct Done {
    pub(crate) date: NaiveDate,
    pub(crate) lift: String,
    pub(crate) track: Track,
    /// What was due before it.
    pub(crate) due: Option<Due>,
    /// What the plan asked where it differs.
    pub(crate) planned: Option<Mass>,
    /// Loads of the work sets as they were lifted.
    pub(crate) works: Vec<Mass>,
    pub(crate) outing: Outing,
    /// Days since any lift before it.
    pub(crate) idle_days: u64,
}

pub(crate) struct Year {
    pub(crate) gym: Gym,
    pub(crate) state: State,
    pub(crate) events: Vec<Event>,
    pub(crate) done: Vec<Done>,
    /// Days on which nothing could be shown, with the reason.
    pub(crate) unshown: Vec<(NaiveDate, String)>,
    pub(crate) lifter: Lifter,
    /// The single at the beginning of each week, kg.
    pub(crate) singles: Vec<f64>,
    now: Moment,
}

/// The coach's own manners.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Coach {
    /// Rules the same day.
    Prompt,
    /// Looks at the list every third Monday alone, and takes the year's plan anew each time.
    Rude,
}

pub(crate) fn monday() -> NaiveDate {
    NaiveDate::from_ymd_opt(2026, 1, 5).expect("a Monday")
}

impl Year {
    pub(crate) fn of(programme: &Programme, kind: Kind, coach: Coach, seed: u64) -> Self {
        let mut year = Self {
            gym: programme.gym(),
            state: State::default(),
            events: Vec::new(),
            done: Vec::new(),
            unshown: Vec::new(),
            lifter: Lifter::new(kind, seed),
            singles: Vec::new(),
            now: Moment(0),
        };
        year.take(programme);
        for at in 0..364 {
            let date = monday() + Days::new(at);
            year.night(date);
            if at % 7 == 0 {
                year.singles.push(year.lifter.single());
            }
            if coach == Coach::Prompt {
                year.rule(date);
            } else if at % 21 == 0 {
                year.rule(date);
                year.take(programme);
            }
            year.train(date);
        }
        assert_eq!(State::replay(&year.events), year.state, "replay");
        year
    }

    fn take(&mut self, programme: &Programme) {
        let rows = programme.rows(&self.gym);
        if rows.is_empty() {
            return;
        }
        // What is past is not planned anew.
        let today = self.done.last().map_or(monday(), |done| done.date);
        let rows: Vec<_> = rows
            .into_iter()
            .filter(|row| row.date > today || self.done.is_empty())
            .collect();
        if rows.is_empty() {
            return;
        }
        let name = String::from("plans/year.csv");
        self.obey(Command::TakePlan { name, rows });
    }

    fn obey(&mut self, command: Command) {
        for event in decide(&self.state, command, self.now).expect("sensible") {
            self.state.apply(&event);
            self.events.push(event);
        }
    }

    fn night(&mut self, date: NaiveDate) {
        let noon = date.and_hms_opt(12, 0, 0).expect("noon").and_utc();
        self.now = Moment(noon.timestamp_millis());
        if let Some(Absent::Ill(days)) = self.lifter.sleep() {
            let to = date + Days::new(days);
            let what = CoachSays::Ill(Ill { from: date, to });
            let word = CoachWord {
                lifter: WHO.into(),
                what,
                note: "rang in".into(),
            };
            self.obey(Command::SayCoach(Box::new(word)));
        }
    }

    /// The coach looks at what waits: a tenth off what it follows from, in whole steps of 2.5 kg.
    fn rule(&mut self, date: NaiveDate) {
        let lifter = self.gym.lifters[0].clone();
        let all = domain::next::here::all_due(&self.gym, &self.state, &lifter, date);
        for one in all {
            let waits = one.due.asks || one.due.decision.due().is_none();
            let ruled = one.recorded.is_some_and(|next| next.ruled.is_some());
            if !waits || ruled {
                continue;
            }
            let step = 2_500_000_000_000;
            let load = Mass::from_ng(one.due.decision.from.ng() / step * 9 / 10 * step);
            let no = one.due.decision.after;
            let note = String::from("start over from here");
            self.obey(Command::OverrideNext { no, load, note });
        }
    }

    fn train(&mut self, date: NaiveDate) {
        let entries = day(&self.gym, &self.state, date);
        if entries.iter().all(|entry| entry.lift.is_empty()) || !self.lifter.comes() {
            return;
        }
        for entry in entries {
            match &entry.outcome {
                Ok(_) => self.lift(date, entry),
                Err(why) => self.unshown.push((date, why.to_string())),
            }
        }
    }

    fn lift(&mut self, date: NaiveDate, entry: DayEntry) {
        let sheet = entry.outcome.expect("a sheet");
        let before = self.done.last().map_or(date, |done| done.date);
        self.obey(Command::BeginLift(Box::new(sheet)));
        let no = self.state.lifts.keys().next_back().copied().expect("begun");
        let leaves = self.lifter.leaves();
        while let Some(rung) = self.state.lifts[&no].next_rung() {
            let run = &self.state.lifts[&no];
            let is_work = run.sheet.rungs[rung].kind == RungKind::Work;
            let is_last = rung + 1 == run.sheet.rungs.len();
            if is_work && is_last && leaves && run.sheet.main_rungs().start != rung {
                self.obey(Command::StopLift(no));
                break;
            }
            let hold = self.set(no, rung);
            if hold != Hold::Kept && !self.state.lifts[&no].is_over() {
                self.obey(Command::StopLift(no));
                break;
            }
        }
        let run = &self.state.lifts[&no];
        let works = run.sheet.rungs.iter().filter(|r| r.kind == RungKind::Work);
        let outing = Outing::of(run).expect("something was done");
        self.done.push(Done {
            date,
            lift: run.sheet.lift.clone(),
            track: outing.track(),
            due: entry.next,
            planned: entry.planned,
            works: works.map(|rung| rung.load).collect(),
            outing,
            idle_days: u64::try_from((date - before).num_days()).expect("later"),
        });
        // As the kiosk does.
        let decided = domain::next::here::decided(&self.gym, &self.state, run);
        let decided = Box::new(decided.expect("something follows"));
        self.obey(Command::DecideNext { no, decided });
    }

    fn set(&mut self, no: LiftNo, rung: usize) -> Hold {
        let run = &self.state.lifts[&no];
        let (asked, lift) = (run.sheet.reps_of(rung), run.sheet.lift.clone());
        let of = &run.sheet.rungs[rung];
        let is_open = asked.most.is_none();
        let (reps, hold, effort) = match of.kind {
            RungKind::WarmUp => (of.reps, Hold::Kept, 50),
            RungKind::Work => self.lifter.set(&lift, of.load, (asked.least, is_open)),
        };
        self.obey(Command::EnterSet {
            no,
            rung,
            reps,
            hold,
            holds: None,
        });
        if let Some(rung) = self.state.lifts[&no].effort_asked() {
            self.obey(Command::SayEffort { no, rung, effort });
        }
        let sets = following(&self.gym, &self.state.lifts[&no]);
        if !sets.is_empty() {
            self.obey(Command::FollowTop { no, sets });
        }
        hold
    }
}

impl Done {
    /// Whether the coach ruled this load.
    pub(crate) fn is_ruled(&self) -> bool {
        self.due
            .as_ref()
            .is_some_and(|due| due.decision.why == Why::Coach)
    }
}
