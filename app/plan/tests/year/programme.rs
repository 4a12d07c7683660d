//! The programmes as a coach's files, in the layout of a data folder.
use domain::{Gym, Prescription};
use plan::Source;
use std::fs;
use std::path::PathBuf;

pub(crate) struct Programme {
    pub(crate) name: &'static str,
    folder: PathBuf,
}

pub(crate) const NAMES: [&str; 8] = [
    "linear",
    "heavy-light-medium",
    "waves",
    "blocks",
    "effort",
    "five-in-turn",
    "three-and-one",
    "peak",
];

impl Programme {
    pub(crate) fn of(name: &'static str) -> Self {
        let root = concat!(env!("CARGO_MANIFEST_DIR"), "/../../tests/programmes");
        let folder = PathBuf::from(root).join(name);
        Self { name, folder }
    }

    pub(crate) fn text(&self, file: &str) -> Option<Vec<u8>> {
        fs::read(self.folder.join(file)).ok()
    }

    /// The demo gym with this programme's lifter and coach's file.
    pub(crate) fn gym(&self) -> Gym {
        let lifters = self.text("lifters.toml").expect("lifters.toml");
        self.gym_with(&lifters)
    }

    pub(crate) fn gym_with(&self, lifters: &[u8]) -> Gym {
        let path = concat!(env!("CARGO_MANIFEST_DIR"), "/../../demo-data/gym.toml");
        let gym = fs::read(path).expect("the demo gym");
        let source = |name, text| Source { name, text };
        let (mut gym, faults) =
            match plan::gym_noted(source("gym.toml", &gym), source("lifters.toml", lifters)) {
                (Some(gym), faults) => (gym, faults),
                (None, faults) => panic!("{}: {faults:?}", self.name),
            };
        assert!(faults.is_empty(), "{}: {faults:?}", self.name);
        if let Some(text) = self.text("programme.toml") {
            let coaching = plan::coaching(source("programme.toml", &text), &gym);
            gym.coaching = coaching.unwrap_or_else(|faults| panic!("{}: {faults:?}", self.name));
        }
        gym
    }

    /// The rows of the year's plan; none where the programme fills the days.
    pub(crate) fn rows(&self, gym: &Gym) -> Vec<Prescription> {
        let Some(text) = self.text("plans/year.csv") else {
            return Vec::new();
        };
        let source = Source {
            name: "plans/year.csv",
            text: &text,
        };
        let (rows, odd) = plan::coach_plan_since(source, gym, None)
            .unwrap_or_else(|faults| panic!("{}: {faults:?}", self.name));
        assert!(odd.is_empty(), "{}: {odd:?}", self.name);
        rows
    }
}
