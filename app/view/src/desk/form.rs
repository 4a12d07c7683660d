//! Something with several values, put together on one page before it is kept: a row of the plan,
//! the coach's ruling, a kind of plate.
//!
//! Refuses: keeping it by halves; the main button is there once every value that is needed is.
use super::place::{Act, Ask, Field, Form, Kind, Of, Place, Rows, What};
use super::row_text::{DUE, load_text, rest_text};
use super::rows::{chosen, held};
use super::wish::{Change, DayRow, DayWish, Edit, Key, Wish, quoted};
use crate::aside::Aside;
use crate::language::{Language, NOTES, Phrase, p};
use crate::list::{List, ListRow, ListState};
use crate::scene::Scene;
use crate::stage::Stage;
use chrono::NaiveDate;
use domain::next::outings::outings;
use domain::{Command, LiftNo, Mass, MassUnit, Prescription};

impl Ask {
    fn title(self) -> Phrase {
        match self {
            Self::Lift => p::LIFT_TITLE,
            Self::Sets => p::SETS_TITLE,
            Self::Reps => p::REPS_TITLE,
            Self::Load | Self::RuledLoad => p::LOAD_TITLE,
            Self::Ladder => p::LADDER_TITLE,
            Self::Rest => p::REST_TITLE,
            Self::Note => p::WHY_TITLE,
            Self::Mass => p::MASS,
            Self::Pairs => p::PAIRS_TITLE,
            Self::Thickness => p::THICKNESS,
            Self::Diameter => p::DIAMETER,
        }
    }

    /// How it is typed; `None` when it is chosen.
    fn kind(self) -> Option<Kind> {
        match self {
            Self::Lift | Self::Ladder | Self::Note => None,
            Self::Sets | Self::Reps | Self::Rest | Self::Pairs => Some(Kind::Count),
            Self::Load => Some(Kind::Load),
            Self::RuledLoad | Self::Mass => Some(Kind::Mass),
            Self::Thickness | Self::Diameter => Some(Kind::Length),
        }
    }
}

impl Form {
    fn new(of: Of, unit: MassUnit, asks: &[(Ask, Option<String>)], from: Place) -> Self {
        let field = |(ask, value): &(Ask, Option<String>)| Field {
            ask: *ask,
            value: value.clone(),
        };
        let fields = asks.iter().map(field).collect();
        Self {
            of,
            unit,
            fields,
            from,
        }
    }

    /// A row of a lifter's day: one that stands there, or a new one of one set of five.
    pub(crate) fn row(
        (lifter, unit, date): (&str, MassUnit, NaiveDate),
        stands: Option<(usize, &Prescription)>,
    ) -> Self {
        let row = stands.map(|(_, row)| row);
        let asks = [
            (Ask::Lift, row.map(|row| row.lift.clone())),
            (Ask::Load, row.map(|row| load_text(row.first.load, unit))),
            (
                Ask::Sets,
                Some(row.map_or(1, |row| row.first.sets).to_string()),
            ),
            (
                Ask::Reps,
                Some(row.map_or(5, |row| row.first.reps.planned()).to_string()),
            ),
            (Ask::Ladder, row.and_then(|row| row.ladder.clone())),
            (Ask::Rest, row.and_then(|row| rest_text(row.first.rest_s))),
        ];
        let lifter = lifter.to_owned();
        let from = Place::Day(lifter.clone(), date);
        let at = stands.map(|(at, _)| at);
        Self::new(Of::Row { lifter, date, at }, unit, &asks, from)
    }

    /// The coach's ruling after a lift.
    pub(crate) fn ruling(no: LiftNo, title: String, unit: MassUnit, from: Place) -> Self {
        let asks = [(Ask::RuledLoad, None), (Ask::Note, None)];
        Self::new(Of::Ruling { no, title }, unit, &asks, from)
    }

    /// A new kind of plate.
    pub(crate) fn plate(set: &str, unit: MassUnit) -> Self {
        let asks = [
            (Ask::Mass, None),
            (Ask::Pairs, Some("1".into())),
            (Ask::Thickness, None),
            (Ask::Diameter, None),
        ];
        let set = set.to_owned();
        let from = Place::Set(set.clone());
        Self::new(Of::Plate { set }, unit, &asks, from)
    }

    /// Where the button at the bottom left leads.
    pub(crate) fn up(&self) -> Place {
        self.from.clone()
    }

    /// The same with one value.
    pub(crate) fn with(&self, at: usize, value: Option<String>) -> Self {
        let mut with = self.clone();
        if let Some(field) = with.fields.get_mut(at) {
            field.value = value;
        }
        with
    }

    /// A new row of a lift that its lifter has done before: so many sets and reps as the last time,
    /// with what is due, so that the usual row is a tap on the day, one on the lift, one on "save".
    fn like_last_time(self, scene: &Scene<'_>) -> Self {
        let Of::Row {
            lifter,
            date,
            at: None,
        } = &self.of
        else {
            return self;
        };
        let lift = self.value(Ask::Lift).cloned().unwrap_or_default();
        let times = outings(scene.state, lifter, &lift, *date);
        let Some(last) = times.last() else {
            return self;
        };
        let (sets, reps) = (last.sets.to_string(), last.reps.to_string());
        let mut with = self;
        for field in &mut with.fields {
            match field.ask {
                Ask::Sets => field.value = Some(sets.clone()),
                Ask::Reps => field.value = Some(reps.clone()),
                Ask::Load => field.value = Some(DUE.to_owned()),
                Ask::Lift
                | Ask::Ladder
                | Ask::Rest
                | Ask::RuledLoad
                | Ask::Note
                | Ask::Mass
                | Ask::Pairs
                | Ask::Thickness
                | Ask::Diameter => {}
            }
        }
        with
    }

    /// Whether something was chosen in it: a new row without a lift has no page of its own yet.
    pub(crate) fn is_begun(&self) -> bool {
        let row = matches!(self.of, Of::Row { .. });
        !row || self.value(Ask::Lift).is_some()
    }

    fn value(&self, ask: Ask) -> Option<&String> {
        let field = self.fields.iter().find(|field| field.ask == ask);
        field.and_then(|field| field.value.as_ref())
    }

    fn is_whole(&self) -> bool {
        let may_miss = |ask| matches!(ask, Ask::Ladder | Ask::Rest);
        let there = |field: &Field| field.value.is_some() || may_miss(field.ask);
        self.fields.iter().all(there)
    }

    /// Whose and when, or what it is of.
    pub(crate) fn title(&self, say: Language) -> String {
        match &self.of {
            Of::Row { lifter, date, .. } => format!("{lifter}, {}", say.date(*date)),
            Of::Ruling { title, .. } => title.clone(),
            Of::Plate { set } => set.clone(),
        }
    }

    /// Its page.
    pub(crate) fn screen(&self, scene: &Scene<'_>) -> List {
        let say = scene.language();
        let hint = match self.of {
            Of::Row { .. } => p::ROW_HINT,
            Of::Ruling { .. } => p::RULING_HINT,
            Of::Plate { .. } => p::PLATE_HINT,
        };
        let main = if self.is_whole() {
            say.say(p::KEEP)
        } else {
            String::new()
        };
        List {
            title: self.title(say),
            hint: say.say(hint),
            rows: self.rows(scene).into_iter().map(|row| row.0).collect(),
            main,
            ..List::default()
        }
    }

    /// Its values, each to be chosen or typed anew; what stands in the plan can be taken off.
    pub(crate) fn rows(&self, scene: &Scene<'_>) -> Rows {
        let say = scene.language();
        let mut rows: Rows = (0..self.fields.len())
            .filter_map(|at| self.field(say, at))
            .collect();
        if let Of::Row {
            lifter,
            date,
            at: at @ Some(_),
        } = &self.of
        {
            let off = DayWish {
                lifter: lifter.clone(),
                date: *date,
                at: *at,
                row: None,
            };
            rows.push((
                held(say, p::OFF_THE_DAY),
                Act::Want(Wish::Plan(Box::new(off))),
            ));
        }
        rows
    }

    fn field(&self, say: Language, at: usize) -> Option<(ListRow, Act)> {
        let Field { ask, value } = self.fields.get(at)?;
        let shown = match (ask, value) {
            (Ask::Ladder, None) => say.say(p::LADDER_OWN),
            (Ask::Rest, None) => say.say(p::REST_OWN),
            (Ask::Rest, Some(minutes)) => say.fill(p::MINUTES, &[minutes]),
            (Ask::Load, Some(due)) if due == DUE => say.say(p::groups::DUE),
            (_, None) => say.say(p::NOT_YET),
            (Ask::Lift | Ask::Ladder, Some(name)) => say.shipped(name),
            (Ask::Note, Some(note)) => say.note(note),
            (_, Some(value)) => say.number(value),
        };
        let missing = value.is_none() && !matches!(ask, Ask::Ladder | Ask::Rest);
        let state = if missing {
            ListState::Amiss
        } else {
            ListState::Plain
        };
        let title = say.say(ask.title());
        let act = match ask.kind() {
            None => Act::Go(Place::Choice(Box::new(self.clone()), at)),
            Some(kind) => Act::Type(What::Field {
                title: format!("{}, {title}", self.title(say)),
                form: Box::new(self.clone()),
                at,
                kind,
            }),
        };
        Some((ListRow::new(title, shown).state(state), act))
    }

    /// What may be chosen for a value; a tap chooses it.
    pub(crate) fn choices(&self, scene: &Scene<'_>, at: usize) -> Rows {
        let say = scene.language();
        let Some(field) = self.fields.get(at) else {
            return Vec::new();
        };
        let named = |name: &String| (say.shipped(name), Some(name.clone()));
        let offered: Vec<(String, Option<String>)> = match field.ask {
            Ask::Lift => scene
                .gym
                .lifts
                .iter()
                .map(|lift| named(&lift.name))
                .collect(),
            Ask::Ladder => {
                let own = (say.say(p::LADDER_OWN), None);
                let all = scene.gym.patterns.iter().map(|one| named(&one.name));
                [own].into_iter().chain(all).collect()
            }
            Ask::Note => {
                let note = |note: &Phrase| (say.say(*note), Some(Language::English.say(*note)));
                NOTES.iter().map(note).collect()
            }
            Ask::Sets
            | Ask::Reps
            | Ask::Rest
            | Ask::Load
            | Ask::RuledLoad
            | Ask::Mass
            | Ask::Pairs
            | Ask::Thickness
            | Ask::Diameter => Vec::new(),
        };
        let row = |(words, value): (String, Option<String>)| {
            let state = chosen(value == field.value);
            let mut with = self.with(at, value);
            if field.ask == Ask::Lift {
                with = with.like_last_time(scene);
            }
            let act = Act::Go(Place::Form(Box::new(with)));
            (ListRow::new(String::new(), words).state(state), act)
        };
        offered.into_iter().map(row).collect()
    }

    /// What is asked at `at`, for the page on which it is chosen.
    pub(crate) fn asked(&self, say: Language, at: usize) -> String {
        let field = self.fields.get(at);
        field
            .map(|field| say.say(field.ask.title()))
            .unwrap_or_default()
    }

    /// The unit in which its masses are typed first.
    pub(crate) const fn unit(&self) -> MassUnit {
        self.unit
    }

    /// Keeps it.
    fn kept(&self) -> Option<Kept> {
        if !self.is_whole() {
            return None;
        }
        let text = |ask| self.value(ask).cloned();
        match &self.of {
            Of::Row { lifter, date, at } => Some(Kept::Wish(Wish::Plan(Box::new(DayWish {
                lifter: lifter.clone(),
                date: *date,
                at: *at,
                row: Some(DayRow {
                    lift: text(Ask::Lift)?,
                    sets: text(Ask::Sets)?,
                    reps: text(Ask::Reps)?,
                    load: text(Ask::Load)?,
                    ladder: text(Ask::Ladder),
                    rest_min: text(Ask::Rest),
                }),
            })))),
            Of::Ruling { no, .. } => Some(Kept::Command(Command::OverrideNext {
                no: *no,
                load: Mass::read(&text(Ask::RuledLoad)?).ok()?,
                note: text(Ask::Note)?,
            })),
            Of::Plate { set } => {
                let value = format!(
                    "{{ mass = {}, pairs = {}, thickness = {}, diameter = {} }}",
                    quoted(&text(Ask::Mass)?),
                    text(Ask::Pairs)?,
                    quoted(&text(Ask::Thickness)?),
                    quoted(&text(Ask::Diameter)?),
                );
                Some(Kept::Wish(Wish::Change(vec![Change::Push(Edit {
                    file: "gym.toml",
                    entry: Some(("plate_set", set.clone())),
                    path: vec![Key::Name("plates")],
                    value,
                })])))
            }
        }
    }
}

/// What keeping comes to.
enum Kept {
    Wish(Wish),
    Command(Command),
}

impl Stage {
    /// The main button of the page.
    pub(crate) fn keep_form(&mut self, form: &Form) -> Option<Command> {
        let kept = form.kept()?;
        self.aside = Some(Aside::Desk(form.up()));
        match kept {
            Kept::Command(command) => Some(command),
            Kept::Wish(wish) => {
                self.wish = Some(wish);
                None
            }
        }
    }
}
