//! A lifter's week as a coach changes it on the page: a day or a row moved, a row written, taken
//! off or added, through the same door as at the screen's desk.
//!
//! Refuses: what was begun, what is over, what is not as it was shown; a half of a move.
use super::Kiosk;
use crate::desk::{in_words, plan_day, said};
use crate::error::KioskError;
use crate::odd_rows::odd_rows;
use chrono::NaiveDate;
use domain::programme::fill::filled;
use domain::{Command, Lifter, Prescription, State};
use share::Told;
use std::collections::BTreeSet;
use view::coach_deed::Undone;
use view::desk::{DayRow, DayWish};
use view::language::Said;
use view::week_deed::{BACK, PlanLine, Unmoved, WeekChange, WeekDeed, last_of, mark};

/// The name under which it goes into the journal.
const WEEK_PLAN: &str = "week";

impl Kiosk {
    /// Changes a lifter's week, durably, or tells why not. What is odd of a row that was written is
    /// told with it.
    pub fn change_week(&mut self, deed: &WeekDeed) -> Told {
        let commands = match self.week_commands(deed) {
            Ok(commands) => commands,
            Err(told) => return told,
        };
        let rows = commands.iter().filter_map(|command| {
            let Command::TakePlan { rows, .. } = command else {
                return None;
            };
            Some(rows)
        });
        let rows = rows.flatten();
        let is_new = |row: &&Prescription| {
            let day = (row.date, row.lifter.clone());
            let stands = self.owner.state().plan.get(&day);
            stands.is_none_or(|rows| !rows.contains(row))
        };
        let rows: Vec<Prescription> = rows.filter(is_new).cloned().collect();
        let odd = odd_rows(WEEK_PLAN, &self.gym.gym, self.owner.state(), &rows);
        if let Err(error) = self.owner.together(&commands, self.clock.now()) {
            return Told::NotDone(said(&error));
        }
        self.after_change();
        self.renew_day();
        let now = (self.date(), deed.lifter.as_str());
        if let Some(shared) = &self.shared {
            shared.renew(&self.gym.gym, self.owner.state(), now);
        }
        match odd.into_iter().next() {
            None => Told::Done,
            Some(odd) => Told::DoneOdd(Said::of(|say| in_words(say, &odd.read))),
        }
    }

    fn week_commands(&self, deed: &WeekDeed) -> Result<Vec<Command>, Told> {
        let state = self.owner.state();
        let known = self.gym.gym.lifters.iter();
        let lifter = known.clone().find(|known| known.name == deed.lifter);
        let lifter = lifter.ok_or(Told::Undone(Undone::Nobody))?;
        let days = (deed.first, deed.lifter.clone())..;
        let days = state.plan.range(days);
        let last = last_of(deed.first);
        let days = days.take_while(|((date, _), _)| *date <= last);
        let own = days.filter(|((_, name), _)| *name == deed.lifter);
        let stands = mark(own.flat_map(|(_, rows)| rows).map(PlanLine::from));
        if stands != deed.mark {
            return Err(Told::Unmoved(Unmoved::Stale));
        }
        match &deed.what {
            WeekChange::Move { from, at, to } => {
                let days = (*from, *to);
                self.moved((lifter, deed), days, *at).map_err(Told::Unmoved)
            }
            WeekChange::Row { date, at, row } => {
                let place = (*date, *at);
                self.written((lifter, deed), place, row.as_ref())
                    .map(|command| vec![command])
            }
        }
    }

    /// A row, or all of a day, on another day.
    fn moved(
        &self,
        (lifter, deed): (&Lifter, &WeekDeed),
        (from, to): (NaiveDate, NaiveDate),
        at: Option<usize>,
    ) -> Result<Vec<Command>, Unmoved> {
        let (state, today) = (self.owner.state(), self.date());
        let name = &lifter.name;
        let mut left = state
            .plan
            .get(&(from, name.clone()))
            .ok_or(Unmoved::Stale)?
            .clone();
        let mut moved = match at {
            None => std::mem::take(&mut left),
            Some(at) if at < left.len() => vec![left.remove(at)],
            Some(_) => return Err(Unmoved::Stale),
        };
        let long_ago = today.signed_duration_since(from).num_days() > BACK;
        let is_shown = |day| (deed.first..=last_of(deed.first)).contains(&day);
        if to < today || long_ago || !is_shown(from) || !is_shown(to) {
            return Err(Unmoved::Over);
        }
        let begun = |day| move |row: &Prescription| is_begun(state, name, day, &row.lift);
        if moved.iter().any(begun(from)) || moved.iter().any(begun(to)) {
            return Err(Unmoved::Begun);
        }
        if from == to {
            return Err(Unmoved::Taken);
        }
        let there = state.plan.get(&(to, name.clone()));
        let mut rows = there.cloned().unwrap_or_default();
        let has = |row: &Prescription| rows.iter().any(|stands| stands.lift == row.lift);
        if moved.iter().any(has) {
            return Err(Unmoved::Twice);
        }
        if !deed.beside && (!rows.is_empty() || self.is_filled(lifter, to)) {
            return Err(Unmoved::Taken);
        }
        for row in &mut moved {
            row.date = to;
        }
        rows.extend(moved);
        let mut commands = Vec::new();
        if left.is_empty() {
            let (lifter, date) = (name.clone(), from);
            commands.push(Command::ClearDay { lifter, date });
        }
        rows.extend(left);
        let name = WEEK_PLAN.into();
        commands.push(Command::TakePlan { name, rows });
        Ok(commands)
    }

    /// A row as it was typed, in its day.
    fn written(
        &self,
        (lifter, deed): (&Lifter, &WeekDeed),
        (date, at): (NaiveDate, Option<usize>),
        row: Option<&DayRow>,
    ) -> Result<Command, Told> {
        let (state, name) = (self.owner.state(), &lifter.name);
        let not = |why| Err(Told::Unmoved(why));
        if date < self.date() {
            return not(Unmoved::Over);
        }
        let day = state.plan.get(&(date, name.clone()));
        let day = day.map(Vec::as_slice).unwrap_or_default();
        if let Some(at) = at {
            let Some(stands) = day.get(at) else {
                return not(Unmoved::Stale);
            };
            if is_begun(state, name, date, &stands.lift) {
                return not(Unmoved::Begun);
            }
            if row.is_some() && !stands.is_straight() {
                return not(Unmoved::Grouped);
            }
        } else if day.is_empty() && !deed.beside && self.is_filled(lifter, date) {
            return not(Unmoved::Taken);
        }
        let stands = at.and_then(|at| day.get(at));
        // The form has no place for the warm-up pattern: it stays.
        let ladder = stands.and_then(|row| row.ladder.clone());
        let wish = DayWish {
            lifter: name.clone(),
            date,
            at,
            row: row.cloned().map(|row| DayRow { ladder, ..row }),
        };
        let command = plan_day(&wish, &self.owner, &self.gym.gym);
        let command = command.map_err(|error: KioskError| Told::NotDone(said(&error)))?;
        if let Command::TakePlan { rows, .. } = &command {
            let lifts: BTreeSet<&str> = rows.iter().map(|row| row.lift.as_str()).collect();
            if row.is_some() && lifts.len() < rows.len() {
                return not(Unmoved::Twice);
            }
            let begun =
                |row: &Prescription| !day.contains(row) && is_begun(state, name, date, &row.lift);
            if rows.iter().any(begun) {
                return not(Unmoved::Begun);
            }
        }
        Ok(command)
    }

    /// Whether a programme fills a lifter's day.
    fn is_filled(&self, lifter: &Lifter, date: NaiveDate) -> bool {
        let (gym, state) = (&self.gym.gym, self.owner.state());
        !filled(gym, state, lifter, (date, date), self.date()).is_empty()
    }
}

/// Whether a lifter has begun a lift of a day.
fn is_begun(state: &State, lifter: &str, date: NaiveDate, lift: &str) -> bool {
    state.lifts.values().any(|run| {
        let of_day = run.day == date || run.sheet.date == date;
        of_day && run.sheet.lifter == lifter && run.sheet.lift == lift
    })
}
