//! The laws, from their sentences: knows what happened, day by day, and nothing of how the rule
//! reckons.
use crate::season::Life;
use chrono::{Days, NaiveDate};
use domain::Mass;
use domain::next::outing::{Outing, Went};
use domain::next::{Decision, Why};
use std::collections::BTreeMap;

/// How often each case was met.
#[derive(Default)]
pub(crate) struct Seen(pub(crate) BTreeMap<&'static str, u64>);

/// Every case that a run must meet.
pub(crate) const CASES: [&str; 13] = [
    "done well, never lowered",
    "done well, rises",
    "short break, held",
    "longer break, eased",
    "long break, anew",
    "illness eases sooner",
    "moved in another pull, held",
    "step over a tenth, the smallest there is",
    "a week's rise used up",
    "asked, held",
    "asked again, still held",
    "hurt, nothing due",
    "ruled, stands",
];

/// A law that does not hold.
#[derive(Debug)]
pub(crate) struct Broken {
    pub(crate) law: u8,
    pub(crate) told: String,
}

/// Who chose the load of an entry.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum How {
    /// What was due.
    Due,
    /// The coach, in the plan.
    Coach,
    /// The lifter, on the day.
    Chosen,
}

/// One training as it was.
#[derive(Debug, Clone)]
pub(crate) struct Entry {
    pub(crate) track: usize,
    pub(crate) outing: Outing,
    pub(crate) due: Option<Mass>,
    /// Whether what was due waited for the coach.
    pub(crate) asked: bool,
    pub(crate) how: How,
    pub(crate) ruled: Option<Mass>,
    /// Less than was due, by choice; or held there by another pull's back.
    pub(crate) light: bool,
}

impl Entry {
    fn is_light(&self) -> bool {
        self.light
    }
}

pub(crate) struct Judge {
    entries: Vec<Entry>,
    /// By track: the load that is held since the coach was asked.
    asked: Vec<Option<Mass>>,
}

impl Judge {
    pub(crate) fn new(tracks: usize) -> Self {
        Self {
            entries: Vec::new(),
            asked: vec![None; tracks],
        }
    }

    pub(crate) fn note(&mut self, mut entry: Entry) {
        let load = entry.outing.load;
        let before = self.of(entry.track).next_back();
        let held = |due: Mass| before.is_some_and(|e| e.light && due <= e.outing.load);
        let full = self.of(entry.track).rev().find(|e| !e.light);
        let below = full.is_some_and(|e| load < e.outing.load);
        entry.light = entry
            .due
            .is_some_and(|due| load < due || (held(due) && below));
        let held = &mut self.asked[entry.track];
        // Another load than the one held, not chosen on the day, or a ruling, is an answer.
        let answered = entry.ruled.is_some()
            || (entry.asked && entry.how == How::Coach && entry.due != Some(entry.outing.load));
        *held = match (entry.asked, answered) {
            (_, true) => None,
            (true, false) => entry.due.or(*held),
            (false, false) => *held,
        };
        self.entries.push(entry);
    }

    fn of(&self, track: usize) -> impl DoubleEndedIterator<Item = &Entry> {
        self.entries.iter().filter(move |e| e.track == track)
    }

    /// Holds what is due of a track today against every law.
    pub(crate) fn look(
        &self,
        life: &Life,
        track: usize,
        due: Option<(Decision, bool)>,
        seen: &mut Seen,
    ) -> Result<(), Broken> {
        let (Some(last), Some((due, asks))) = (self.of(track).next_back(), due) else {
            return Ok(());
        };
        let case = Case {
            judge: self,
            life,
            track,
            last,
            due: &due,
            asks,
            break_days: self.break_days(life),
        };
        let laws = [
            Case::hurt,
            Case::absence,
            Case::success,
            Case::family,
            Case::steps,
            Case::coach,
            Case::later,
        ];
        for law in laws {
            let (number, told) = match law(&case, seen) {
                Ok(()) => continue,
                Err(broken) => broken,
            };
            let past: Vec<&Entry> = self.of(track).collect();
            let past = &past[past.len().saturating_sub(6)..];
            let told = format!("{told}\nthe last of the track: {past:#?}\ndue {due:?}");
            return Err(Broken { law: number, told });
        }
        Ok(())
    }

    /// Days that count, one by one: those without the family beyond the spacing, and the ill ones
    /// as often again as the file says; and whether any was ill.
    fn break_days(&self, life: &Life) -> (u32, bool) {
        let trained = self.entries.last().map_or(life.today, |e| e.outing.date);
        let (mut late, mut ill, mut day) = (0_u32, 0_u32, trained);
        let mut passed = 0;
        while day < life.today {
            day = day + Days::new(1);
            passed += 1;
            late += u32::from(passed > life.spacing);
            let is_ill = life
                .ill
                .iter()
                .any(|ill| (ill.from..=ill.to).contains(&day));
            ill += u32::from(is_ill);
        }
        (late + ill * u32::from(life.limits.ill), ill > 0)
    }
}

struct Case<'a> {
    judge: &'a Judge,
    life: &'a Life,
    track: usize,
    last: &'a Entry,
    due: &'a Decision,
    /// Whether it waits for the coach.
    asks: bool,
    break_days: (u32, bool),
}

type Held = Result<(), (u8, String)>;

fn hold(law: u8, holds: bool, told: &str) -> Held {
    holds.then_some(()).ok_or_else(|| (law, told.to_owned()))
}

impl Case<'_> {
    fn loadable(&self, load: Mass) -> Mass {
        self.life.written.at_most(load).unwrap_or_default()
    }

    fn count(seen: &mut Seen, case: &'static str) {
        *seen.0.entry(case).or_default() += 1;
    }

    /// Over how many days of a break a load is held at least.
    fn is_short(&self) -> bool {
        self.break_days.0 <= u32::from(self.life.rule.away_days)
    }

    fn moved_since(&self) -> bool {
        let (date, no) = (self.last.outing.date, self.last.outing.no);
        let of = |e: &&Entry| e.outing.date >= date && e.outing.no != no;
        let mut since = self.judge.entries.iter().filter(of);
        since.any(|e| matches!(e.outing.went, Went::Moved { .. } | Went::MovedWarm))
    }

    /// Law 7, first half: who is hurt has nothing due.
    fn hurt(&self, seen: &mut Seen) -> Held {
        if self.life.hurt.is_none() {
            return hold(7, self.due.why != Why::Hurt, "hurt, who is not");
        }
        Self::count(seen, "hurt, nothing due");
        hold(7, self.due.due().is_none(), "something due for the hurt")
    }

    /// Law 2: short breaks hold, longer ones ease, very long ones begin anew.
    fn absence(&self, seen: &mut Seen) -> Held {
        if self.life.hurt.is_some() || self.last.ruled.is_some() {
            return Ok(());
        }
        let (days, ill) = self.break_days;
        let limits = &self.life.limits;
        let load = self.last.outing.load;
        if days > u32::from(limits.anew_days) {
            Self::count(seen, "long break, anew");
            return hold(2, self.due.due().is_none(), "due after a very long break");
        }
        if !self.is_short() && !self.last.is_light() {
            Self::count(seen, "longer break, eased");
            if ill {
                Self::count(seen, "illness eases sooner");
            }
            let least = self.life.loads.least();
            let eased = self.due.load < load || self.due.load <= least;
            return hold(2, eased, "not eased after a longer break");
        }
        if days > u32::from(limits.late_days) && !self.last.is_light() {
            Self::count(seen, "short break, held");
            return hold(2, self.due.load <= load, "raised after a short break");
        }
        Ok(())
    }

    /// Law 1: who does all that was asked is never lowered because of it.
    fn success(&self, seen: &mut Seen) -> Held {
        let nothing_wrong = self.last.outing.went == Went::Well && self.last.ruled.is_none();
        if !nothing_wrong || self.life.hurt.is_some() || !self.is_short() || self.last.is_light() {
            return Ok(());
        }
        Self::count(seen, "done well, never lowered");
        // What was asked, not what the lifter chose beyond it.
        let lifted = self.last.outing.load;
        let load = self.loadable(self.last.due.unwrap_or(lifted).min(lifted));
        hold(1, self.due.load >= load, "lowered after a success")?;
        let calm = self.break_days.0 <= u32::from(self.life.limits.late_days)
            && !self.break_days.1
            && !self.moved_since()
            && self.last.outing.at_top
            && !self.asks
            && !matches!(self.due.why, Why::NoStep | Why::Week | Why::LongAgo);
        if calm {
            Self::count(seen, "done well, rises");
            return hold(1, self.due.load > load, "held after a success");
        }
        Ok(())
    }

    /// Law 3: a back that moved in one pull keeps every pull of the family from rising.
    fn family(&self, seen: &mut Seen) -> Held {
        if !self.moved_since() || self.last.ruled.is_some() {
            return Ok(());
        }
        Self::count(seen, "moved in another pull, held");
        let most = self.last.outing.load.max(self.life.loads.least());
        let held = self.due.due().is_none_or(|due| due <= most);
        hold(3, held, "raised after the back moved in another pull")
    }

    /// Law 4: no step over a tenth or the smallest that the plates make, and no more in a week.
    fn steps(&self, seen: &mut Seen) -> Held {
        let Some(due) = self.due.due().filter(|_| self.last.ruled.is_none()) else {
            return Ok(());
        };
        let most = |load: Mass| {
            let tenth = Mass::from_ng(load.ng() + load.ng() / 10);
            let barely = load + Mass::from_ng(1);
            let step = self.life.loads.at_least(barely).unwrap_or(load);
            tenth.max(step)
        };
        // A lighter day leads back to what was due before it, which was lifted up to a step.
        let full = self.judge.of(self.track).rev().find(|e| !e.is_light());
        let level = full.map_or(self.last.outing.load, |e| e.outing.load);
        let level = level.max(self.last.due.unwrap_or_default().min(most(level)));
        // And what the coach ruled since then was due as well.
        let since = full.map_or(self.last.outing.no, |e| e.outing.no);
        let ruled = self.judge.of(self.track).filter(|e| e.outing.no >= since);
        let ruled = ruled.filter_map(|e| e.ruled).max().unwrap_or_default();
        let level = level.max(self.last.outing.load).max(ruled);
        if self.last.is_light() {
            return hold(4, due <= most(level), "a step too far after a lighter day");
        }
        hold(4, due <= most(self.last.outing.load), "a step too far")?;
        if due.ng() > self.last.outing.load.ng() / 10 * 11 + 10 {
            Self::count(seen, "step over a tenth, the smallest there is");
        }
        let week = self.life.today - Days::new(7);
        let rulings = |e: &&Entry| e.ruled.is_some() || e.how != How::Due;
        let recent: Vec<&Entry> = self
            .judge
            .of(self.track)
            .filter(|e| e.outing.date >= week)
            .collect();
        // What the coach or the lifter themselves put on is no rise of the rule's.
        if recent.iter().any(rulings) {
            return Ok(());
        }
        if self.due.why == Why::Week {
            Self::count(seen, "a week's rise used up");
        }
        let mut full = recent.iter().filter(|e| !e.light);
        let kept = full.all(|e| due <= most(e.outing.load).max(self.last.outing.load));
        hold(4, kept, "a week's rise too far")
    }

    /// Law 7, second half: who is asked about is held until the coach has answered; and the ruled
    /// load stands.
    fn coach(&self, seen: &mut Seen) -> Held {
        if let Some(ruled) = self.last.ruled {
            let calm = self.break_days == (0, false) && !self.moved_since();
            if calm && self.life.hurt.is_none() && self.due.why == Why::Coach {
                Self::count(seen, "ruled, stands");
                return hold(6, self.due.due() == Some(ruled), "not what was ruled");
            }
            return Ok(());
        }
        let last = self.last.outing.load;
        if self.asks {
            Self::count(seen, "asked, held");
            // Who chose less on the day is still held at what was due.
            let due = self.last.due.filter(|_| self.last.asked).unwrap_or(last);
            let most = last.max(due).max(self.life.loads.least());
            let held = self.due.due().is_none_or(|due| due <= most);
            hold(7, held, "raised before the coach answered")?;
        }
        let Some(held) = self.judge.asked[self.track] else {
            return Ok(());
        };
        Self::count(seen, "asked again, still held");
        let most = held.max(self.life.loads.least());
        hold(7, self.due.load <= most, "let go before the coach answered")
    }

    /// Law 2 again: the longer somebody stays away, the less is due, and never more than before.
    fn later(&self, _: &mut Seen) -> Held {
        let mut before = Some(self.due.load);
        for weeks in [1, 2, 4, 8, 16] {
            let then: NaiveDate = self.life.today + Days::new(7 * weeks);
            let due = self.life.due(self.track, then).and_then(|due| due.0.due());
            let week_over = self.due.why == Why::Week;
            let less = match (due, before) {
                (Some(due), Some(before)) => due <= before || week_over,
                (None, _) => true,
                (Some(_), None) => self.due.due().is_none() && before.is_none(),
            };
            hold(2, less, "more due after a longer absence")?;
            before = due;
        }
        Ok(())
    }
}
