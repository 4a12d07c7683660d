//! What the desk shows of files, devices, the door and the page; whoever owns those tells it.
//!
//! Refuses: any code, and looking by itself.
use super::cards::LanCard;
use super::stick_in::StickIn;
use domain::Moment;

/// What is new for the coach: kept by whoever owns files and devices.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct DeskNews {
    /// Plans that lie in the folder, by name.
    pub plans: Vec<PlanNews>,
    /// Faults of the gym's files as they lie in the folder.
    pub faults: Vec<String>,
    /// Faults of devices.
    pub hardware: Vec<String>,
    /// The door.
    pub door: DoorNews,
    /// The page on the network.
    pub lan: LanNews,
    /// What lies where sticks appear.
    pub stick: StickNews,
    /// Names of the latest copies in the second place, latest first; `None` where no such place
    /// is set.
    pub copies: Option<Vec<String>>,
    /// Whether the gym is the demo's, for whoever has none of their own yet.
    pub demo: bool,
}

/// What lies where sticks appear.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub enum StickNews {
    /// No place for sticks is set.
    #[default]
    Unset,
    /// Nothing.
    Out,
    /// A stick that was read.
    In(StickIn),
}

/// What the screen may know of the door: never the code.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct DoorNews {
    /// Whether there is a code; without one the first four digits become it.
    pub has_code: bool,
    /// Until when none is tried any more.
    pub until: Option<Moment>,
}

/// How it stands with the page on the network.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct LanNews {
    /// Whether it is to be served.
    pub on: bool,
    /// The address on which it is served, or would be.
    pub address: String,
    /// Addresses of this machine's interfaces, this machine alone first.
    pub addresses: Vec<String>,
    /// Whether the page has a code.
    pub has_code: bool,
    /// How it stands.
    pub card: LanCard,
}

impl LanNews {
    /// Whether it is on, and there is something to be told of it.
    #[must_use]
    pub fn is_told(&self) -> bool {
        self.on && !(self.card.address.is_empty() && self.card.trouble.is_empty())
    }
}

/// A plan in the folder.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct PlanNews {
    /// Its file's name.
    pub name: String,
    /// Its rows, or its first fault and how many there are.
    pub read: Result<usize, (String, usize)>,
    /// What is odd of one that can be taken: the first, and how many more; empty where nothing is.
    pub odd: String,
}
