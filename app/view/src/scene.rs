//! All that a face is made from. Refuses: keeping anything; it borrows.
use crate::desk::news::DeskNews;
use crate::language::Language;
use crate::look::{Chosen, SCREEN_FILE};
use crate::memo::Memo;
use crate::split::is_told;
use chrono::{NaiveDate, NaiveTime};
use domain::believed::Said;
use domain::day::DayEntry;
use domain::meet_day::MeetDay;
use domain::order::{Order, order_to, plates_at, wanted, weighed_mass};
use domain::rotation::{Station, open_at, station_of};
use domain::settle::{Choices, choices};
use domain::split::{Split, advice};
use domain::state::{LiftRun, State};
use domain::{Gym, Lift, Mass, Moment, PlateFace};

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
    /// The same to the millisecond; `None` on a clock that was never set.
    pub time: Option<NaiveTime>,
    /// A sentence that the lifter must see, or empty.
    pub notice: &'a str,
    /// The meet or test day that is written, if any.
    pub meet: Option<&'a MeetDay>,
    /// What is new for the coach.
    pub news: &'a DeskNews,
    /// What was worked out for this state already.
    pub memo: &'a Memo,
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

    /// What the hands have to do before a rung of `run`, from the bar as it is believed to be.
    #[must_use]
    pub fn order(&self, run: &LiftRun, rung: usize) -> Order {
        let order = self.order_for(run, self.state.stack(run, rung));
        order.resting(self.gym, self.state, run, rung)
    }

    /// The same for a stack of one side.
    #[must_use]
    pub fn order_for(&self, run: &LiftRun, stack: &[PlateFace]) -> Order {
        let belief = self.state.belief(&run.sheet.bar.name, run.day, self.now);
        let to = self.memo.stacks(run.no, stack, || {
            wanted(self.gym, self.state, run, stack, &belief.holds)
        });
        order_to(self.gym, self.state, run, belief, to)
    }

    /// What the plates of an order weigh with the bar, where they were weighed.
    #[must_use]
    pub fn weighed(&self, run: &LiftRun, order: &Order) -> Option<Mass> {
        let bar = run.sheet.bar.mass + run.sheet.bar.collars;
        weighed_mass(plates_at(self.gym, &run.sheet.rack)?, bar, &order.to)
    }

    /// Whether somebody else is there for a turn at the station of `run`.
    #[must_use]
    pub fn others_here(&self, run: &LiftRun) -> bool {
        let station = station_of(run);
        open_at(self.state, &station, run.day).any(|other| other.no != run.no)
    }

    /// The bar whose last word undo takes back before any entry of `run`.
    #[must_use]
    pub fn word_to_undo(&self, run: &LiftRun) -> Option<String> {
        let name = &run.sheet.bar.name;
        let known = self
            .state
            .bars
            .get(name)
            .filter(|known| known.can_take_back())?;
        let last = run.entries.last().map_or(run.begun_at, |entry| entry.at);
        let own = match known.said {
            Said::Loaded(no) | Said::Set(no) => no == run.no,
            Said::Stated => true,
        };
        let today = known.date == run.day;
        (own && today && known.at >= last && !run.is_over()).then(|| name.clone())
    }

    /// Whether the next turn at its station is that lift's: nobody else comes first, and its lifter
    /// is there.
    #[must_use]
    pub fn is_turn(&self, run: &LiftRun) -> bool {
        !run.attendance.away && self.first_before(run).is_none()
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
        // Before and after the moment to choose there is nothing to work out.
        run.may_settle()?;
        let make = || choices(self.gym, self.state, run);
        self.memo.choices(run.no, make)
    }

    /// The gym's time of day at `at`, "18:42", reckoned from the clock of now, where that is set.
    #[must_use]
    pub fn clock_at(&self, at: Moment) -> Option<String> {
        let ago = chrono::Duration::milliseconds(self.now.0.saturating_sub(at.0));
        let (then, _) = self.time?.overflowing_sub_signed(ago);
        Some(then.format("%H:%M").to_string())
    }

    /// Whether the lifter of `run` still has to rest, and for how long; not once they said that
    /// their turn is now.
    #[must_use]
    pub fn rest_left(&self, run: &LiftRun) -> Option<u32> {
        let left = run.rest_left_s(self.now);
        (left > 0 && !run.attendance.claimed).then_some(left)
    }
}
