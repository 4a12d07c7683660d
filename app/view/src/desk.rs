//! The coach's desk, behind a code: plans, lifters and their landmarks, equipment, programmes,
//! sharing, checks; and a gym built from nothing.
//!
//! A row is made together with what a tap on it does, so that the two never part. Refuses: files
//! and their form; a [`Wish`] says what somebody wants, and whoever keeps the files checks it.
mod cards;
mod gym;
mod people;
mod things;
mod typing;

use crate::aside::Aside;
use crate::frame::Screen;
use crate::language::{Language, p};
use crate::list::{List, ListRow, ListState};
use crate::scene::Scene;
use crate::stage::Stage;
use crate::tap::Tap;
use domain::Command;

pub use cards::{LanCard, StickCard, StickPlanRow};
pub use typing::Typing;
use typing::{Typed, What};

/// The name under which the desk's code is kept among the files taken.
pub const DESK_FILE: &str = "desk.toml";

/// What is new for the coach: kept by whoever owns files and devices.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct DeskNews {
    /// Plans that lie in the folder, by name.
    pub plans: Vec<PlanNews>,
    /// Faults of the gym's files as they lie in the folder.
    pub faults: Vec<String>,
    /// Faults of devices.
    pub hardware: Vec<String>,
}

/// A plan in the folder.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct PlanNews {
    /// Its file's name.
    pub name: String,
    /// Its rows, or its first fault and how many there are.
    pub read: Result<usize, (String, usize)>,
}

/// What somebody at the desk wants of the gym's files.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Wish {
    /// Take the plan of that name from the folder.
    TakePlan(String),
    /// Write a value into a file.
    Set(Edit),
    /// Write a new entry at the end of a file: TOML.
    Add {
        /// Which file.
        file: &'static str,
        /// The entry.
        entry: String,
    },
    /// Begin a gym anew: gym.toml and lifters.toml, whole.
    Begin {
        /// The text of gym.toml.
        gym: String,
        /// The text of lifters.toml.
        lifters: String,
    },
}

/// A value to be written.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Edit {
    /// "lifters.toml".
    pub file: &'static str,
    /// The entry: its table and its name; `None` for the file itself.
    pub entry: Option<(&'static str, String)>,
    /// The way to the value in it: keys, and places in lists.
    pub path: Vec<Key>,
    /// As TOML writes it: "\"488 mm\"", "6".
    pub value: String,
}

/// One step of a way.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Key {
    /// Of a table.
    Name(&'static str),
    /// In a list, from 0.
    At(usize),
}

/// Where somebody is at the desk.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Place {
    /// At the door: digits typed so far, and whether the last try was wrong.
    Door(String, bool),
    /// All there is.
    Home,
    /// Plans in the folder.
    Plans,
    /// Lifters.
    Lifters,
    /// One of them.
    Lifter(String),
    /// Racks.
    Racks,
    /// One of them.
    Rack(String),
    /// Bars.
    Bars,
    /// One of them.
    Bar(String),
    /// Plate sets.
    Sets,
    /// One of them.
    Set(String),
    /// Programmes.
    Programmes,
    /// Faults of files.
    Checks,
    /// Faults of devices.
    Hardware,
    /// Something is typed.
    Typing(Box<Typed>),
}

/// What a tap on a row does.
#[derive(Debug, Clone)]
pub(crate) enum Act {
    Nothing,
    Go(Place),
    Type(What),
    Want(Wish),
}

/// Rows with what each does.
pub(crate) type Rows = Vec<(ListRow, Act)>;

impl Place {
    /// Where the button at the bottom left leads; `None` out of the desk.
    fn up(&self) -> Option<Self> {
        Some(match self {
            Self::Door(..) | Self::Home => return None,
            Self::Plans
            | Self::Lifters
            | Self::Racks
            | Self::Bars
            | Self::Sets
            | Self::Programmes
            | Self::Checks
            | Self::Hardware => Self::Home,
            Self::Lifter(_) => Self::Lifters,
            Self::Rack(_) => Self::Racks,
            Self::Bar(_) => Self::Bars,
            Self::Set(_) => Self::Sets,
            Self::Typing(typed) => typed.from.clone(),
        })
    }

    /// The screen of this place.
    pub(crate) fn screen(&self, scene: &Scene<'_>) -> Screen {
        let say = scene.language();
        if let Self::Door(typed, wrong) = self {
            return Screen::Typing(typing::door(scene, typed, *wrong));
        }
        if let Self::Typing(typed) = self {
            return Screen::Typing(typed.screen(say));
        }
        let (title, hint) = self.words(say);
        let body = if let Self::Lifter(name) = self {
            people::body(scene, name)
        } else {
            Vec::new()
        };
        Screen::List(List {
            title,
            hint,
            rows: self.rows(scene).into_iter().map(|row| row.0).collect(),
            body,
            ..List::default()
        })
    }

    fn words(&self, say: Language) -> (String, String) {
        let plain = |title| (say.say(title), String::new());
        match self {
            Self::Door(..) | Self::Home | Self::Typing(_) => plain(p::DESK),
            Self::Plans => (say.say(p::PLANS), say.say(p::PLANS_HINT)),
            Self::Lifters => plain(p::LIFTERS),
            Self::Lifter(name) => (name.clone(), say.say(p::LANDMARKS_HINT)),
            Self::Racks => plain(p::RACKS),
            Self::Bars => plain(p::BARS),
            Self::Sets => plain(p::PLATES),
            Self::Rack(name) | Self::Bar(name) | Self::Set(name) => {
                (name.clone(), say.say(p::MEASURE_HINT))
            }
            Self::Programmes => (say.say(p::PROGRAMMES), say.say(p::PROGRAMMES_HINT)),
            Self::Checks => (say.say(p::CHECKS), say.say(p::CHECKS_HINT)),
            Self::Hardware => plain(p::HARDWARE),
        }
    }

    fn rows(&self, scene: &Scene<'_>) -> Rows {
        match self {
            Self::Door(..) | Self::Typing(_) => Vec::new(),
            Self::Home => gym::home(scene),
            Self::Plans => gym::plans(scene),
            Self::Programmes => gym::programmes(scene),
            Self::Checks => told(scene, &scene.news.faults),
            Self::Hardware => told(scene, &scene.news.hardware),
            Self::Lifters => people::lifters(scene),
            Self::Lifter(name) => people::lifter(scene, name),
            Self::Racks => things::racks(scene),
            Self::Rack(name) => things::rack(scene, name),
            Self::Bars => things::bars(scene),
            Self::Bar(name) => things::bar(scene, name),
            Self::Sets => things::sets(scene),
            Self::Set(name) => things::set(scene, name),
        }
    }
}

/// Faults, one a row, or that there are none.
fn told(scene: &Scene<'_>, faults: &[String]) -> Rows {
    let say = scene.language();
    if faults.is_empty() {
        let row = ListRow::new(say.say(p::ALL_WELL), String::new()).state(ListState::Told);
        return vec![(row, Act::Nothing)];
    }
    let row = |fault: &String| {
        let (place, words) = fault.split_once(": ").unwrap_or(("", fault));
        let row = ListRow::new(place.to_owned(), String::new()).detail(words);
        (row.state(ListState::Told), Act::Nothing)
    };
    faults.iter().map(row).collect()
}

impl Stage {
    /// What a tap means at the desk.
    pub(crate) fn tap_desk(
        &mut self,
        scene: &Scene<'_>,
        place: &Place,
        tap: &Tap,
    ) -> Option<Command> {
        match (place, tap) {
            (_, Tap::Undo) => {
                self.aside = Some(place.up().map_or(Aside::Panel, Aside::Desk));
                None
            }
            (Place::Door(typed, _), Tap::Row(_) | Tap::Number(_)) => {
                let typed = typing::after_key(typed, typing::DIGITS, tap)?;
                self.at_door(scene, typed)
            }
            (Place::Typing(typed), _) => self.tap_typing(scene, typed, tap),
            (_, Tap::Row(at)) => {
                let act = place.rows(scene).into_iter().nth(*at)?.1;
                self.act(place, act);
                None
            }
            _ => None,
        }
    }

    fn act(&mut self, from: &Place, act: Act) {
        match act {
            Act::Nothing => {}
            Act::Go(place) => self.aside = Some(Aside::Desk(place)),
            Act::Type(what) => {
                let typed = Typed::new(what, from.clone());
                self.aside = Some(Aside::Desk(Place::Typing(Box::new(typed))));
            }
            Act::Want(wish) => self.wish = Some(wish),
        }
    }

    /// Four digits open the desk; the first time they become its code.
    fn at_door(&mut self, scene: &Scene<'_>, typed: String) -> Option<Command> {
        let whole = typed.chars().count() >= typing::CODE_DIGITS;
        let code = typing::code(scene);
        let (place, command) = match code {
            _ if !whole => (Place::Door(typed, false), None),
            None => (Place::Home, Some(typing::new_code(&typed))),
            Some(code) if code == typed => (Place::Home, None),
            Some(_) => (Place::Door(String::new(), true), None),
        };
        self.aside = Some(Aside::Desk(place));
        command
    }
}
