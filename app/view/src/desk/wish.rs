//! What somebody at the desk wants of the gym's files and of the plan, in full.
//!
//! Refuses: doing it. Whoever keeps the files checks it, whole or not at all.
use super::plan_file::PlanFile;
use crate::coach_deed::CoachDeed;
use crate::language::{Language, p};
use crate::week_deed::WeekDeed;
use chrono::NaiveDate;
use domain::needs::Thing;
use std::fmt;

/// What somebody at the desk wants.
#[derive(Clone, PartialEq, Eq)]
pub enum Wish {
    /// Take the plan of that name from the folder.
    TakePlan(String),
    /// Change the gym's files, all of it or nothing.
    Change(Vec<Change>),
    /// Begin a gym anew: gym.toml and lifters.toml, whole.
    Begin {
        /// The text of gym.toml.
        gym: String,
        /// The text of lifters.toml.
        lifters: String,
    },
    /// Write a row into the plan, or take one off it.
    Plan(Box<DayWish>),
    /// Open the desk with these digits.
    Open(String),
    /// Keep other digits for the desk.
    Code(String),
    /// Keep another code for the page on the network.
    PageCode(String),
    /// Take a thing out of the gym, with all that is about it alone.
    Remove(Thing),
    /// Something about the stick or the copies.
    Errand(Errand),
}

/// What a coach orders of whoever keeps sticks and copies, on the screen or on the page; and what
/// the page has the kiosk do.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Errand {
    /// Take all plans of the stick with this id.
    TakeStick(String),
    /// Write the record to the stick with this id.
    WriteStick(String),
    /// Copy the journal to the second place now.
    BackUp,
    /// Prove the copy of this name, and put it in the journal's place.
    Restore(String),
    /// Do what a coach does away from the screen.
    Coach(Box<CoachDeed>),
    /// Change a lifter's week.
    Week(Box<WeekDeed>),
    /// Read a plan that a coach chose in a browser, and lay it out.
    ReadPlan(Box<PlanFile>),
    /// Take the plan that lies there under this id, if what it would change is as it was shown.
    TakePlan {
        /// Which one.
        id: String,
        /// By which what was shown is known.
        mark: String,
    },
}

impl Errand {
    /// What is told while it is under way; empty for what is done at once.
    #[must_use]
    pub fn under_way(&self, say: Language) -> String {
        match self {
            Self::TakeStick(_)
            | Self::Coach(_)
            | Self::Week(_)
            | Self::ReadPlan(_)
            | Self::TakePlan { .. } => String::new(),
            Self::WriteStick(_) => say.say(p::STICK_WRITING),
            Self::BackUp => say.say(p::COPYING),
            Self::Restore(_) => say.say(p::PROVING),
        }
    }
}

impl fmt::Debug for Wish {
    /// Tells no code, so that none comes into a log.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::TakePlan(_) => "TakePlan",
            Self::Change(_) => "Change",
            Self::Begin { .. } => "Begin",
            Self::Plan(_) => "Plan",
            Self::Open(_) => "Open",
            Self::Code(_) => "Code",
            Self::PageCode(_) => "PageCode",
            Self::Remove(_) => "Remove",
            Self::Errand(_) => "Errand",
        })
    }
}

impl Wish {
    /// One value is to be written.
    pub(crate) fn set(edit: Edit) -> Self {
        Self::Change(vec![Change::Set(edit)])
    }
}

/// One change of a file.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Change {
    /// Write a value.
    Set(Edit),
    /// Write one more value at the end of a list: the way has one key.
    Push(Edit),
    /// Take a key, or an item of a list, away; the value says nothing.
    Drop(Edit),
    /// Write a new entry at the end of a file: TOML.
    Add {
        /// Which file.
        file: &'static str,
        /// The entry.
        entry: String,
    },
}

/// A value to be written.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Edit {
    /// "lifters.toml".
    pub file: &'static str,
    /// The entry: its table and its name; `None` for the file itself. Entries of programmes and
    /// rules are begun where there is none yet.
    pub entry: Option<(&'static str, String)>,
    /// The way to the value in it: keys, and places in lists.
    pub path: Vec<Key>,
    /// As TOML writes it: "\"488 mm\"", "6".
    pub value: String,
}

impl Edit {
    /// A value under one key of an entry.
    pub(crate) fn of(
        file: &'static str,
        entry: (&'static str, &str),
        key: &'static str,
        value: String,
    ) -> Self {
        Self {
            file,
            entry: Some((entry.0, entry.1.to_owned())),
            path: vec![Key::Name(key)],
            value,
        }
    }
}

/// One step of a way.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Key {
    /// Of a table.
    Name(&'static str),
    /// In a list, from 0.
    At(usize),
}

/// A change of one lifter's one day in the plan.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct DayWish {
    /// Who.
    pub lifter: String,
    /// The day.
    pub date: NaiveDate,
    /// Which row of that day, from 0; `None` for one more.
    pub at: Option<usize>,
    /// What it is to be; `None` to take it off.
    pub row: Option<DayRow>,
}

/// A row of a day, as typed and chosen.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct DayRow {
    /// The lift's name.
    pub lift: String,
    /// Work sets.
    pub sets: String,
    /// Reps of one.
    pub reps: String,
    /// "182.5 kg", "80 %".
    pub load: String,
    /// Name of the warm-up pattern; `None` for the lifter's own.
    pub ladder: Option<String>,
    /// Rest after each set, whole minutes; `None` for the lift's own.
    pub rest_min: Option<String>,
}

/// A text as TOML writes it.
pub(crate) fn quoted(text: &str) -> String {
    format!("\"{}\"", text.replace('\\', "\\\\").replace('"', "\\\""))
}

/// A list of texts as TOML writes it.
pub(crate) fn list<'a>(texts: impl Iterator<Item = &'a str>) -> String {
    let texts: Vec<String> = texts.map(quoted).collect();
    format!("[{}]", texts.join(", "))
}
