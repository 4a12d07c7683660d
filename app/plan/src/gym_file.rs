//! gym.toml and lifters.toml together: the whole gym, or every fault of both.
//!
//! Refuses: a gym with any fault that [stops](Fault::stops) it.
use crate::Source;
use crate::fault::{Fault, Wrong};
use crate::fields;
use crate::known::Known;
use crate::lifter_file::{self, Names};
use crate::quantity;
use crate::toml_doc::Doc;
use crate::toml_entry::Entry;
use crate::wording::name;
use crate::words::{term, words};
use crate::{bar_file, lift_file, pattern_file, plates_file, rack_file};
use domain::Gym;
use domain::programme::Coaching;
use text::keys::checked as k;

/// Reads the gym from its two files.
///
/// # Errors
/// Every fault of both files, gym.toml first, each by row; also what is merely odd.
pub fn gym(gym: Source<'_>, lifters: Source<'_>) -> Result<Gym, Vec<Fault>> {
    let (gym, faults) = gym_noted(gym, lifters);
    gym.ok_or(faults)
}

/// As [`gym()`], with what is merely odd beside a gym that was taken.
#[must_use]
pub fn gym_noted(gym: Source<'_>, lifters: Source<'_>) -> (Option<Gym>, Vec<Fault>) {
    let (mut read, names, mut faults) = gym_alone(gym);
    let (people, more) = lifter_file::read(lifters, &names);
    read.lifters = people;
    faults.extend(more);
    let wrong = faults.iter().any(Fault::stops);
    ((!wrong).then_some(read), faults)
}

/// Reads gym.toml: what could be read of it, the names in it, its faults.
pub(crate) fn gym_alone(source: Source<'_>) -> (Gym, Names, Vec<Fault>) {
    let (mut doc, root) = match Doc::open(source) {
        Ok(opened) => opened,
        Err(faults) => return (Gym::default(), Names::open(), faults),
    };
    let top = Entry::open(&mut doc, root.get_ref(), 0..0, &fields::GYM);
    let mut sets = Known::none(term!(k::PLATE_SET));
    let mut names = Names {
        racks: Known::none(term!(k::RACK)),
        bars: Known::none(term!(k::BAR)),
        patterns: Known::none(term!(k::WARM_UP_PATTERN)),
        lifts: Known::none(term!(k::LIFT)),
    };
    if doc.is_broken() {
        sets.leave_open();
        for known in [
            &mut names.racks,
            &mut names.bars,
            &mut names.patterns,
            &mut names.lifts,
        ] {
            known.leave_open();
        }
    }
    let name = top.text(&mut doc, "name", name).unwrap_or_default();
    let plate_sets = plates_file::read(&mut doc, &top, &mut sets);
    let racks = rack_file::read(&mut doc, &top, &sets, &mut names.racks);
    let bars = bar_file::read(&mut doc, &top, &racks, &names.racks, &mut names.bars);
    let gym = Gym {
        name,
        racks,
        bars,
        plate_sets,
        lifts: lift_file::read(&mut doc, &top, &mut names.lifts),
        patterns: pattern_file::read(&mut doc, &top, &mut names.patterns),
        lifters: Vec::new(),
        coaching: Coaching::default(),
        day_ends_after_s: top.text(&mut doc, "day_ends_after", quantity::day_ends_after_s),
        called_for_s: top.text(&mut doc, "called_for", quantity::called_for_s),
    };
    for key in ["rack", "bar", "plate_set"] {
        if top.is_empty_list(key) {
            let right = words!(k::ADD_AT_LEAST_ONE_AS, key);
            doc.missing(&top.at_value(key), Wrong::plain(words!(k::NO, key), right));
        }
    }
    (gym, names, doc.close())
}
