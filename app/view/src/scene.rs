//! All that a face is made from. Refuses: keeping anything; it borrows.
use crate::desk::DeskNews;
use crate::language::Language;
use crate::look::{Chosen, SCREEN_FILE};
use crate::split::is_told;
use chrono::NaiveDate;
use domain::day::DayEntry;
use domain::meet_day::MeetDay;
use domain::rotation::{CalledTurn, Station, station_of};
use domain::settle::{Choices, choices};
use domain::split::{Split, advice};
use domain::state::{LiftRun, State};
use domain::weighed::{Sides, share_out};
use domain::{Gym, Lift, Moment, PlateFace};

/// State, day and time, as they are now.
#[derive(Debug, Clone, Copy)]
pub struct Scene<'a> {
    /// The gym.
    pub gym: &'a Gym,
    /// What stands.
    pub state: &'a State,
    /// Today's sheets, in the order of the tiles.
    pub day: &'a [DayEntry],
    /// Today, at the gym.
    pub date: NaiveDate,
    /// Now.
    pub now: Moment,
    /// Time of day at the gym, "18:42".
    pub clock: &'a str,
    /// A sentence that the lifter must see, or empty.
    pub notice: &'a str,
    /// The meet or test day that is written, if any.
    pub meet: Option<&'a MeetDay>,
    /// What is new for the coach.
    pub news: &'a DeskNews,
}

impl<'a> Scene<'a> {
    /// What somebody chose for this screen.
    #[must_use]
    pub fn chosen(&self) -> Chosen {
        let kept = self.state.files.get(SCREEN_FILE);
        kept.map(|text| Chosen::read(text)).unwrap_or_default()
    }

    /// The language of this screen.
    #[must_use]
    pub fn language(&self) -> Language {
        self.chosen().language
    }

    /// The lifter's lift of now: one under way, else the last of today.
    #[must_use]
    pub fn run(&self, lifter: &str) -> Option<&'a LiftRun> {
        self.state.lift_of(lifter, self.date)
    }

    /// The lifter's first entry of today that was not begun yet.
    #[must_use]
    pub fn fresh(&self, lifter: &str) -> Option<&'a DayEntry> {
        let begun = |lift: &str| {
            self.state
                .lifts_of(lifter, self.date)
                .any(|run| run.sheet.date == self.date && run.sheet.lift == lift)
        };
        self.day
            .iter()
            .find(|e| e.lifter == lifter && !e.lift.is_empty() && !begun(&e.lift))
    }

    /// Lifts of today, all lifters, oldest first.
    pub fn runs(&self) -> impl DoubleEndedIterator<Item = &'a LiftRun> + use<'a> {
        let date = self.date;
        self.state.lifts.values().filter(move |run| run.day == date)
    }

    /// For a rung of now: what will be on the bar before its turn, and what must be on it. Before
    /// the first turn that is the bar as it stands, else the stack of the turn that comes before.
    #[must_use]
    pub fn stacks(&self, run: &'a LiftRun, rung: usize) -> (Vec<PlateFace>, &'a [PlateFace]) {
        let order = self.state.rotation(&station_of(run));
        let own = |turn: &CalledTurn| turn.no == run.no && usize::from(turn.rung) == rung;
        let before = order.iter().position(own).and_then(|at| order[..at].last());
        let sheet = &run.sheet;
        let on_bar = || self.state.plates_on(&sheet.bar.name, self.date);
        (
            before.map_or_else(on_bar, |turn| turn.per_side.clone()),
            self.state.stack(run, rung),
        )
    }

    /// Marks and true load of a rung, where the gym weighed its plates.
    #[must_use]
    pub fn weighed(&self, run: &'a LiftRun, rung: usize) -> Option<Sides> {
        let sheet = &run.sheet;
        let rack = self.gym.racks.iter().find(|rack| rack.name == sheet.rack)?;
        let set = self
            .gym
            .plate_sets
            .iter()
            .find(|set| set.name == rack.plates)?;
        let bar = sheet.bar.mass + sheet.bar.collars;
        let stacks = (0..sheet.rungs.len()).map(|at| self.state.stack(run, at));
        share_out(set, bar, stacks)?.sides(bar, self.state.stack(run, rung))
    }

    /// The lift whose turn is first at `station`.
    #[must_use]
    pub fn run_first(&self, station: &Station) -> Option<&'a LiftRun> {
        self.state
            .lifts
            .get(&self.state.rotation(station).first()?.no)
    }

    /// The lifter whose turn is first at the station of `run`, if that is somebody else's.
    #[must_use]
    pub fn first_before(&self, run: &LiftRun) -> Option<&'a LiftRun> {
        let first = self.state.rotation(&station_of(run)).first()?;
        self.state
            .lifts
            .get(&first.no)
            .filter(|first| first.no != run.no)
    }

    /// A lift of the gym by its name.
    #[must_use]
    pub fn lift(&self, name: &str) -> Option<&'a Lift> {
        self.gym.lifts.iter().find(|lift| lift.name == name)
    }

    /// Advice to split the deadlift, or to go back to it, after a pull that counts for it; `None`
    /// when there is nothing to do.
    #[must_use]
    pub fn split(&self, run: &LiftRun) -> Option<Split> {
        let lifter = self
            .gym
            .lifters
            .iter()
            .find(|l| l.name == run.sheet.lifter)?;
        let tomorrow = run.sheet.date.succ_opt()?;
        let split = advice(self.gym, self.state, lifter, tomorrow)?;
        let counts = split.rule.concerns(&run.sheet.lift);
        (counts && is_told(&split)).then_some(split)
    }

    /// The work loads that may be chosen before the first work set of `run`.
    #[must_use]
    pub fn choices(&self, run: &LiftRun) -> Option<Choices> {
        choices(self.gym, self.state, run)
    }

    /// Whether the lifter of `run` still has to rest, and for how long.
    #[must_use]
    pub fn rest_left(&self, run: &LiftRun) -> Option<u32> {
        let left = run.rest_left_s(self.now);
        (left > 0).then_some(left)
    }
}
