//! What still needs a thing of the gym, before somebody takes it out of the files.
//!
//! Refuses: nothing by itself; whoever removes a thing asks here first. What is in the journal
//! stays whatever is removed.
use crate::gym::Gym;
use crate::state::State;
use alloc::string::String;
use chrono::NaiveDate;

/// A thing that can be removed.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Thing {
    /// The lifter of that name.
    Lifter(String),
    /// The rack of that name.
    Rack(String),
    /// The bar of that name.
    Bar(String),
    /// A kind of plate.
    Plate {
        /// Name of its set.
        set: String,
        /// Its place there, from 0.
        at: usize,
    },
}

/// Why it cannot go.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Need {
    /// A lift of this name is under way with it.
    UnderWay(String),
    /// This lifter lifts at the rack.
    LiftsThere(String),
    /// This lifter lifts with the bar.
    LiftsWith(String),
    /// It is the only rack.
    OnlyRack,
    /// It is the only bar that serves this rack.
    OnlyBar(String),
    /// It is the only kind of its set.
    OnlyKind,
    /// Plates of this kind were weighed; they are in the file.
    Weighed,
}

/// The first thing that needs `thing` on `date`; `None` when it may go.
#[must_use]
pub fn need(gym: &Gym, state: &State, date: NaiveDate, thing: &Thing) -> Option<Need> {
    let under_way = |is: &dyn Fn(&crate::LiftSheet) -> bool| {
        let mut runs = state.lifts.values();
        let open = runs.find(|run| run.day == date && !run.is_over() && is(&run.sheet));
        open.map(|run| Need::UnderWay(run.sheet.lift.clone()))
    };
    match thing {
        Thing::Lifter(name) => under_way(&|sheet| sheet.lifter == *name),
        Thing::Rack(name) => {
            if gym.racks.len() == 1 {
                return Some(Need::OnlyRack);
            }
            let there = gym.lifters.iter().find(|lifter| lifter.rack == *name);
            there.map(|lifter| Need::LiftsThere(lifter.name.clone()))
        }
        Thing::Bar(name) => under_way(&|sheet| sheet.bar.name == *name)
            .or_else(|| lifts_with(gym, name))
            .or_else(|| only_bar(gym, name)),
        Thing::Plate { set, at } => {
            let set = gym.plate_sets.iter().find(|known| known.name == *set)?;
            let plate = set.plates.get(*at)?;
            if set.plates.len() == 1 {
                return Some(Need::OnlyKind);
            }
            let weighed = |one: &crate::solve::balance::Weighed| one.nominal == plate.face.mass;
            set.weighed.iter().any(weighed).then_some(Need::Weighed)
        }
    }
}

fn lifts_with(gym: &Gym, bar: &str) -> Option<Need> {
    let own = |lifter: &&crate::lifter::Lifter| lifter.bar.as_deref() == Some(bar);
    let lifter = gym.lifters.iter().find(own)?;
    Some(Need::LiftsWith(lifter.name.clone()))
}

/// The first rack that no other bar serves.
fn only_bar(gym: &Gym, bar: &str) -> Option<Need> {
    let bare = |rack: &&crate::equipment::Rack| gym.bars_at(&rack.name).all(|b| b.name == bar);
    let rack = gym.racks.iter().find(bare)?;
    Some(Need::OnlyBar(rack.name.clone()))
}
