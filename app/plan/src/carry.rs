//! Rows as understood to rows that the rack can show, as far as it can.
//!
//! Refuses: to take a row in part; what the rack cannot show yet is told, and nothing is taken.
use crate::fault::{Column, Fault, Wrong};
use crate::gathered::shorten;
use crate::plan_faults::letters;
use crate::set_group::{LoadAsk, PlanRow, SetGroup, ShareOf};
use crate::words::{Words, words};
use domain::prescription::{LoadWish, Role};
use domain::{Gym, Prescription};
use text::keys::checked as k;

/// Faults that are kept of a plan.
const KEPT_MAX: usize = 50;

/// The rows as the rack takes them, or what it cannot show yet of each.
pub(crate) fn prescriptions(
    file: &str,
    rows: Vec<PlanRow>,
    gym: Option<&Gym>,
) -> Result<Vec<Prescription>, Vec<Fault>> {
    let mut faults = Vec::new();
    let mut carried = Vec::new();
    for row in rows {
        let missing = gym.and_then(|gym| no_training_max(&row, gym));
        match missing.map_or_else(|| prescription(&row).map_err(not_shown), Err) {
            Ok(row) if faults.is_empty() => carried.push(row),
            Ok(_) => {}
            Err(wrong) => faults.push(fault(file, &row, wrong)),
        }
        if faults.len() > 2 * KEPT_MAX {
            shorten(file, &mut faults, KEPT_MAX);
        }
    }
    if faults.is_empty() {
        return Ok(carried);
    }
    shorten(file, &mut faults, KEPT_MAX);
    Err(faults)
}

fn not_shown(what: Words) -> Wrong {
    let right = words!(k::READ_BUT_THE_RACK_CANNOT);
    Wrong::plain(what, right)
}

fn fault(file: &str, row: &PlanRow, wrong: Wrong) -> Fault {
    let column = row.from.column.map(|at| Column {
        number: at + 1,
        name: Some(letters(at)),
    });
    Fault {
        sheet: (!row.from.is_text).then(|| row.from.sheet.clone()),
        row: Some(row.from.row),
        column,
        ..Fault::whole(file, wrong)
    }
}

/// A share of a training max that the lifter does not have on the day.
fn no_training_max(row: &PlanRow, gym: &Gym) -> Option<Wrong> {
    let of_it =
        |group: &&SetGroup| matches!(group.load, Some(LoadAsk::Share(_, ShareOf::TrainingMax)));
    let load = row.groups.iter().find(of_it)?.load?;
    let lifter = gym.lifters.iter().find(|known| known.name == row.lifter)?;
    if lifter.training_max(&row.lift, row.date).is_some() {
        return None;
    }
    let what = words!(
        k::OF_A_TRAINING_MAX_IN,
        row.lift.as_str(),
        row.lifter.as_str(),
        row.date.to_string()
    );
    let right = words!(k::WRITE_A_MASS_OR_THE);
    Some(Wrong::value(&load.to_string(), &what, right))
}

/// One row as the rack takes it, or what it cannot show yet.
fn prescription(row: &PlanRow) -> Result<Prescription, Words> {
    let [first, then @ ..] = row.groups.as_slice() else {
        return Err(words!(k::A_ROW_WITHOUT_SETS));
    };
    let has_top = |at: usize| {
        let earlier = row.groups.iter().take(at);
        earlier.into_iter().any(|group| group.role == Role::Top) || at > 0
    };
    for (at, asked) in row.groups.iter().enumerate() {
        let of_top = matches!(asked.load, Some(LoadAsk::Share(_, ShareOf::TopSet)));
        if of_top && !has_top(at) {
            return Err(words!(k::A_SHARE_OF_A_TOP));
        }
    }
    let then = then.iter().map(group);
    Ok(Prescription {
        date: row.date,
        lifter: row.lifter.clone(),
        lift: row.lift.clone(),
        first: group(first)?,
        then: then.collect::<Result<_, _>>()?,
        track: row.track,
        ladder: row.ladder.clone(),
        bar: row.bar.clone(),
        note: row.note.clone(),
    })
}

fn group(group: &SetGroup) -> Result<domain::prescription::SetGroup, Words> {
    Ok(with_load(group, load(group)?))
}

/// A group whose sets, without a load, are done with what is due.
pub(crate) fn due_group(group: &SetGroup) -> domain::prescription::SetGroup {
    with_load(group, load(group).unwrap_or(LoadWish::Due))
}

fn with_load(group: &SetGroup, load: LoadWish) -> domain::prescription::SetGroup {
    domain::prescription::SetGroup {
        sets: group.sets,
        reps: domain::prescription::Reps {
            least: group.reps.least,
            most: group.reps.most,
        },
        load,
        rest_s: group.rest_s,
        role: group.role,
        effort: group.effort,
        manner: group.manner,
    }
}

fn load(group: &SetGroup) -> Result<LoadWish, Words> {
    match group.load {
        Some(LoadAsk::Mass(mass, _)) => Ok(LoadWish::Mass(mass)),
        Some(LoadAsk::Share(share, ShareOf::Best)) => Ok(LoadWish::OfBest(share)),
        Some(LoadAsk::Share(share, ShareOf::TrainingMax)) => Ok(LoadWish::OfTraining(share)),
        Some(LoadAsk::Share(share, ShareOf::TopSet)) => Ok(LoadWish::OfTop(share)),
        Some(LoadAsk::More(mass, _)) => Ok(LoadWish::More(mass)),
        Some(LoadAsk::Due) => Ok(LoadWish::Due),
        // An effort alone leaves the load to what is due.
        None if group.effort.is_some() => Ok(LoadWish::Due),
        None => Err(words!(k::SETS_WITHOUT_A_LOAD)),
    }
}
