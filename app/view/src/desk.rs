//! The coach's desk, behind a code: plans, lifters and their landmarks, equipment, programmes,
//! sharing, checks; and a gym built from nothing.
//!
//! A row is made together with what a tap on it does, so that the two never part. Refuses: files
//! and their form; a [`Wish`] says what somebody wants, and whoever keeps the files checks it.
mod cards;
mod coach_list;
mod coaching;
mod days;
mod form;
mod gym;
mod health;
mod home;
mod left_open;
pub(crate) mod news;
pub(crate) mod pad;
mod people;
pub(crate) mod place;
mod plan_file;
mod row_text;
mod rows;
mod ruling;
mod sharing;
mod stick;
mod stick_in;
mod things;
pub(crate) mod typing;
mod week;
mod what;
pub(crate) mod wish;

use crate::aside::Aside;
use crate::face::Screen;
use crate::language::{Language, p};
use crate::list::{Layout, List};
use crate::scene::Scene;
use crate::stage::Stage;
use crate::tap::Tap;
use domain::Command;

pub use cards::LanCard;
pub use news::{DeskNews, DoorNews, LanNews, PlanNews, StickNews};
pub use pad::Typing;
use place::Typed;
pub(crate) use place::{Act, Rows};
pub use place::{AtDoor, Form, Place};
pub use plan_file::{PlanFile, PlanIn, PlanInRow};
use rows::told;
pub use stick_in::{StickChange, StickIn};
pub use wish::{Change, DayRow, DayWish, Edit, Errand, Key, Wish};

/// The name under which older versions kept the desk's code, plainly, among the files taken.
pub const DESK_FILE: &str = "desk.toml";
/// What stands there since, until other digits are chosen.
pub const PLAIN_ONCE: &str = "was_plain=true\n";

impl Place {
    /// Where the button at the bottom left leads; `None` out of the desk.
    fn up(&self, scene: &Scene<'_>) -> Option<Self> {
        Some(match self {
            Self::Door(_) | Self::Home => return None,
            Self::Plans
            | Self::Week(..)
            | Self::Lifters
            | Self::Programmes
            | Self::LeftOpen
            | Self::CoachList
            | Self::Gym
            | Self::ThisScreen => Self::Home,
            Self::Racks | Self::Bars | Self::Sets => Self::Gym,
            Self::Sharing | Self::Copies | Self::Checks | Self::Hardware => Self::ThisScreen,
            Self::Stick => Self::Plans,
            Self::StickPlan(_) => Self::Stick,
            Self::Day(lifter, date) => week::at(scene, lifter, *date),
            Self::Lifter(_) => Self::Lifters,
            Self::NextTimes(name) | Self::Health(name) | Self::Follows(name) | Self::Rule(name) => {
                Self::Lifter(name.clone())
            }
            Self::Rack(_) => Self::Racks,
            Self::Mats(rack) => Self::Rack(rack.clone()),
            Self::Bar(_) => Self::Bars,
            Self::Set(_) => Self::Sets,
            Self::Plate(set, _) => Self::Set(set.clone()),
            Self::Programme(_) => Self::Programmes,
            Self::Typing(typed) => typed.from.clone(),
            Self::Form(form) => form.up(),
            Self::Choice(form, _) if form.is_begun() => Self::Form(form.clone()),
            Self::Choice(form, _) => form.up(),
        })
    }

    /// The screen of this place.
    pub(crate) fn screen(&self, scene: &Scene<'_>) -> Screen {
        let say = scene.language();
        if let Self::Door(at) = self {
            return Screen::Typing(typing::door(scene, at));
        }
        if let Self::Typing(typed) = self {
            return Screen::Typing(typed.screen(say));
        }
        if let Self::Form(form) = self {
            return Screen::List(form.screen(scene));
        }
        let (title, hint) = self.words(say);
        let body = if let Self::Lifter(name) = self {
            people::body(scene, name)
        } else {
            Vec::new()
        };
        let rows: Vec<_> = self.rows(scene).into_iter().map(|row| row.0).collect();
        Screen::List(List {
            title,
            hint,
            layout: self.layout(scene, rows.len()),
            rows,
            body,
            ..List::default()
        })
    }

    fn layout(&self, scene: &Scene<'_>, rows: usize) -> Layout {
        match self {
            Self::Home => home::layout(scene, rows),
            Self::Week(from, at) => week::layout(scene, *from, *at),
            Self::Door(_)
            | Self::Plans
            | Self::Stick
            | Self::StickPlan(_)
            | Self::Copies
            | Self::LeftOpen
            | Self::Day(..)
            | Self::CoachList
            | Self::Lifters
            | Self::Lifter(_)
            | Self::NextTimes(_)
            | Self::Health(_)
            | Self::Follows(_)
            | Self::Rule(_)
            | Self::Gym
            | Self::Racks
            | Self::Rack(_)
            | Self::Mats(_)
            | Self::Bars
            | Self::Bar(_)
            | Self::Sets
            | Self::Set(_)
            | Self::Plate(..)
            | Self::ThisScreen
            | Self::Sharing
            | Self::Programmes
            | Self::Programme(_)
            | Self::Checks
            | Self::Hardware
            | Self::Typing(_)
            | Self::Form(_)
            | Self::Choice(..) => Layout::Columns,
        }
    }

    fn words(&self, say: Language) -> (String, String) {
        let plain = |title| (say.say(title), String::new());
        match self {
            Self::Door(_) | Self::Home | Self::Typing(_) | Self::Form(_) => plain(p::DESK),
            Self::Week(..) => plain(p::WEEK),
            Self::Gym => plain(p::GYM),
            Self::ThisScreen => plain(p::PANEL_TITLE),
            Self::Choice(form, at) => (form.asked(say, *at), form.title(say)),
            Self::Plans => (say.say(p::PLANS), say.say(p::PLANS_HINT)),
            Self::Stick | Self::StickPlan(_) => (say.say(p::STICK), say.say(p::STICK_HINT)),
            Self::Copies => (say.say(p::COPIES), say.say(p::COPIES_HINT)),
            Self::LeftOpen => (
                say.say(p::days::LEFT_OPEN),
                say.say(p::days::LEFT_OPEN_HINT),
            ),
            Self::Day(lifter, date) => (format!("{lifter}, {}", say.date(*date)), String::new()),
            Self::NextTimes(name) => (format!("{name}, {}", say.say(p::NEXT_TIMES)), {
                say.say(p::NEXT_TIMES_HINT)
            }),
            Self::Follows(name) => (format!("{name}, {}", say.say(p::PROGRAMME)), {
                say.say(p::FOLLOWS_HINT)
            }),
            Self::Rule(name) => (
                format!("{name}, {}", say.say(p::RULE)),
                say.say(p::RULE_HINT),
            ),
            Self::Mats(rack) => (format!("{rack}, {}", say.say(p::MATS_TITLE)), {
                say.say(p::MATS_HINT)
            }),
            Self::Plate(set, _) => (set.clone(), say.say(p::MEASURE_HINT)),
            Self::Programme(name) => (name.clone(), say.say(p::PROGRAMME_HINT)),
            Self::CoachList => (say.say(p::list::TITLE), say.say(p::list::HINT)),
            Self::Health(name) => (format!("{name}, {}", say.say(p::list::HEALTH)), {
                say.say(p::list::HEALTH_HINT)
            }),
            Self::Lifters => plain(p::LIFTERS),
            Self::Lifter(name) => (name.clone(), say.say(p::LANDMARKS_HINT)),
            Self::Racks => plain(p::RACKS),
            Self::Bars => plain(p::BARS),
            Self::Sets => plain(p::PLATES),
            Self::Rack(name) | Self::Bar(name) | Self::Set(name) => {
                (name.clone(), say.say(p::MEASURE_HINT))
            }
            Self::Sharing => (say.say(p::SHARING), say.say(p::SHARING_HINT)),
            Self::Programmes => (say.say(p::PROGRAMMES), say.say(p::PROGRAMMES_HINT)),
            Self::Checks => (say.say(p::CHECKS), say.say(p::CHECKS_HINT)),
            Self::Hardware => plain(p::HARDWARE),
        }
    }

    fn rows(&self, scene: &Scene<'_>) -> Rows {
        match self {
            Self::Door(_) | Self::Typing(_) => Vec::new(),
            Self::Home => home::rows(scene),
            Self::Week(from, at) => week::rows(scene, *from, *at),
            Self::Gym => home::gym(scene),
            Self::ThisScreen => home::this_screen(scene),
            Self::Plans => gym::plans(scene),
            Self::Stick => stick::stick(scene),
            Self::StickPlan(at) => stick::faults(scene, *at),
            Self::Copies => stick::copies(scene),
            Self::LeftOpen => left_open::rows(scene),
            Self::Day(lifter, date) => days::day(scene, lifter, *date),
            Self::CoachList => coach_list::rows(scene),
            Self::Health(name) => health::rows(scene, name),
            Self::NextTimes(name) => ruling::next_times(scene, name),
            Self::Follows(name) => coaching::follows(scene, name),
            Self::Rule(name) => coaching::rule(scene, name),
            Self::Mats(rack) => things::mats(scene, rack),
            Self::Plate(set, at) => things::plate(scene, set, *at),
            Self::Sharing => sharing::sharing(scene),
            Self::Programmes => coaching::programmes(scene),
            Self::Programme(name) => coaching::programme(scene, name),
            Self::Form(form) => form.rows(scene),
            Self::Choice(form, at) => form.choices(scene, *at),
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
                self.aside = Some(place.up(scene).map_or(Aside::Panel, Aside::Desk));
                None
            }
            (Place::Door(at), Tap::Row(_) | Tap::Number(_)) => {
                let typed = typing::after_key(&at.typed, typing::DIGITS, tap)?;
                self.at_door(scene, at, typed)
            }
            (Place::Typing(typed), _) => self.tap_typing(scene, typed, tap),
            (Place::Form(form), Tap::Main) => self.keep_form(form),
            (_, Tap::Row(at)) => {
                let act = place.rows(scene).into_iter().nth(*at)?.1;
                self.act(scene, place, act)
            }
            _ => None,
        }
    }

    fn act(&mut self, scene: &Scene<'_>, from: &Place, act: Act) -> Option<Command> {
        match act {
            Act::Nothing => {}
            Act::Tell(command) => return Some(command),
            Act::Go(place) => self.aside = Some(Aside::Desk(place)),
            Act::Type(what) => {
                let typed = Typed::new(what, from.clone());
                self.aside = Some(Aside::Desk(Place::Typing(Box::new(typed))));
            }
            Act::Want(wish) => {
                // What is taken away has no page any more.
                let gone = matches!(&wish, Wish::Remove(_))
                    || matches!(&wish, Wish::Plan(day) if day.row.is_none());
                if gone {
                    self.aside = from.up(scene).map(Aside::Desk);
                }
                self.wish = Some(wish);
            }
        }
        None
    }

    /// Four digits are tried; whoever keeps the code opens the desk. While it waits, none are
    /// taken. Where there is no code yet, the first four are asked for once more: who mistypes them
    /// would be locked out.
    fn at_door(&mut self, scene: &Scene<'_>, at: &AtDoor, typed: String) -> Option<Command> {
        if typing::waits(scene).is_some() {
            return None;
        }
        let whole = typed.chars().count() >= typing::CODE_DIGITS;
        let next = match &at.first {
            _ if !whole => AtDoor {
                typed,
                wrong: false,
                first: at.first.clone(),
            },
            None if !scene.news.door.has_code => AtDoor {
                first: Some(typed),
                ..AtDoor::default()
            },
            Some(first) if *first != typed => AtDoor {
                wrong: true,
                ..AtDoor::default()
            },
            _ => {
                self.wish = Some(Wish::Open(typed));
                return None;
            }
        };
        self.aside = Some(Aside::Desk(Place::Door(next)));
        None
    }

    /// The door opened, or not.
    pub fn opened(&mut self, open: bool) {
        let place = match open {
            true => Place::Home,
            false => Place::Door(AtDoor {
                wrong: true,
                ..AtDoor::default()
            }),
        };
        self.aside = Some(Aside::Desk(place));
    }
}
