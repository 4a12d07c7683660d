//! Checks any of the files that people write, by its name.
//!
//! Refuses: files of other names, and silence about what could not be checked.
use crate::fault::{Fault, Wrong};
use crate::lifter_file::{self, Names};
use crate::{Source, gym_file, kiosk_file};
use domain::Gym;

/// What is known beside the file.
#[derive(Debug, Clone, Copy, Default)]
pub struct Context<'a> {
    /// The gym, when there is one: names are held against it.
    pub gym: Option<&'a Gym>,
}

/// Every fault of one file, by row: gym.toml, lifters.toml or kiosk.toml. What is merely odd is
/// among them.
#[must_use]
pub fn check(source: Source<'_>, context: Context<'_>) -> Vec<Fault> {
    let base = source.name.rsplit(['/', '\\']).next().unwrap_or_default();
    match base.to_lowercase().as_str() {
        "gym.toml" => gym_file::gym_alone(source).2,
        "lifters.toml" => {
            let names = context.gym.map_or_else(Names::open, Names::of);
            lifter_file::read(source, &names).1
        }
        "kiosk.toml" => kiosk_file::kiosk_noted(source, context.gym).1,
        _ => {
            let right = "give gym.toml, lifters.toml or kiosk.toml";
            let wrong = Wrong::plain("a file of a name that is not checked", right);
            vec![Fault::whole(source.name, wrong)]
        }
    }
}
