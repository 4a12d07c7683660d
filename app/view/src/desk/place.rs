//! Where somebody is at the desk, with what is typed or put together there.
use super::wish::{Edit, Wish};
use crate::list::ListRow;
use chrono::NaiveDate;
use domain::{Command, LiftNo, MassUnit};

/// Where somebody is at the desk.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Place {
    /// At the door.
    Door(AtDoor),
    /// All there is.
    Home,
    /// Plans in the folder and on a stick.
    Plans,
    /// The stick.
    Stick,
    /// The faults of one of its plans, from 0.
    StickPlan(usize),
    /// The copies in the second place.
    Copies,
    /// Lifts that were left open.
    LeftOpen,
    /// A week from its Monday on, and which page of lifters, from 0.
    Week(NaiveDate, usize),
    /// One lifter's one day.
    Day(String, NaiveDate),
    /// What is due for everybody.
    CoachList,
    /// Lifters.
    Lifters,
    /// One of them.
    Lifter(String),
    /// What is due for one of them.
    NextTimes(String),
    /// Hurt and illness of one of them.
    Health(String),
    /// The programme that one of them follows.
    Follows(String),
    /// The rule of next time for one of them.
    Rule(String),
    /// Racks, bars, plates; a gym begun anew.
    Gym,
    /// Racks.
    Racks,
    /// One of them.
    Rack(String),
    /// Its mats.
    Mats(String),
    /// Bars.
    Bars,
    /// One of them.
    Bar(String),
    /// Plate sets.
    Sets,
    /// One of them.
    Set(String),
    /// One kind of plate of a set, from 0.
    Plate(String, usize),
    /// The page on the network, checks, devices, copies, digits.
    ThisScreen,
    /// The page on the network.
    Sharing,
    /// Programmes.
    Programmes,
    /// One of them.
    Programme(String),
    /// Faults of files.
    Checks,
    /// Faults of devices.
    Hardware,
    /// Something is typed.
    Typing(Box<Typed>),
    /// Something with several values is put together.
    Form(Box<Form>),
    /// One of its values is chosen, from 0.
    Choice(Box<Form>, usize),
}

/// Digits at the door.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct AtDoor {
    /// Typed so far.
    pub typed: String,
    /// A first code, typed once; it is asked for once more.
    pub first: Option<String>,
    /// Whether the last try was wrong, or the two were not the same.
    pub wrong: bool,
}

/// What a tap on a row does.
#[derive(Debug, Clone)]
pub(crate) enum Act {
    Nothing,
    Go(Place),
    Type(What),
    Want(Wish),
    Tell(Command),
}

/// Rows with what each does.
pub(crate) type Rows = Vec<(ListRow, Act)>;

/// Something under way on the pad.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Typed {
    pub(super) what: What,
    pub(super) text: String,
    /// Which unit, or which page of letters.
    pub(super) page: usize,
    pub(super) wrong: bool,
    pub(super) from: Place,
}

/// What is typed.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) enum What {
    /// A new code; once it was typed, it is asked for once more.
    Code(Option<String>),
    /// A new code for the page on the network.
    PageCode,
    /// A value of an entry.
    Value {
        title: String,
        edit: Edit,
        kind: Kind,
        /// Which unit stands first.
        unit: usize,
        /// Whether it is one more of a list.
        more: bool,
    },
    /// A value of something that is put together.
    Field {
        title: String,
        form: Box<Form>,
        at: usize,
        kind: Kind,
    },
    /// A name of something new.
    Name(New),
}

/// Of what kind a value is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Kind {
    Length,
    Mass,
    /// A mass, or a percentage.
    Load,
    Percent,
    Count,
}

/// What is new.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) enum New {
    Lifter,
    Rack,
    Bar,
    /// A gym from nothing; then, with its name, its first lifter.
    Gym(Option<String>),
}

/// What is put together.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Form {
    pub(super) of: Of,
    pub(super) unit: MassUnit,
    pub(super) fields: Vec<Field>,
    pub(super) from: Place,
}

/// What becomes of it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) enum Of {
    /// A row of the plan, in the place of row `at` of its day.
    Row {
        lifter: String,
        date: NaiveDate,
        at: Option<usize>,
    },
    /// The load of the next time after a lift, by the coach.
    Ruling { no: LiftNo, title: String },
    /// A kind of plate of a set.
    Plate { set: String },
}

/// One value of it, as a file would have it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Field {
    pub(super) ask: Ask,
    pub(super) value: Option<String>,
}

/// What is asked.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Ask {
    Lift,
    Sets,
    Reps,
    Load,
    Ladder,
    Rest,
    RuledLoad,
    Note,
    Mass,
    Pairs,
    Thickness,
    Diameter,
}
