//! Rows as understood to rows that the rack can show, as far as it can.
//!
//! Refuses: to take a row in part; what the rack cannot show yet is told, and nothing is taken.
use crate::fault::{Column, Fault, Wrong};
use crate::gathered::shorten;
use crate::plan_faults::letters;
use crate::set_group::{LoadAsk, PlanRow, SetGroup, ShareOf};
use crate::words::{Words, words};
use domain::Prescription;
use domain::prescription::LoadWish;
use domain::prescription::Role;

/// Faults that are kept of a plan.
const KEPT_MAX: usize = 50;

/// The rows as the rack takes them, or what it cannot show yet of each.
pub(crate) fn prescriptions(
    file: &str,
    rows: Vec<PlanRow>,
) -> Result<Vec<Prescription>, Vec<Fault>> {
    let mut faults = Vec::new();
    let mut carried = Vec::new();
    for row in rows {
        match prescription(&row) {
            Ok(row) if faults.is_empty() => carried.push(row),
            Ok(_) => {}
            Err(what) => faults.push(fault(file, &row, what)),
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

fn fault(file: &str, row: &PlanRow, what: Words) -> Fault {
    let right = words!(
        "read, but the rack cannot show it yet; write sets x reps @ a load or a share of the best"
    );
    let column = row.from.column.map(|at| Column {
        number: at + 1,
        name: Some(letters(at)),
    });
    Fault {
        sheet: (!row.from.is_text).then(|| row.from.sheet.clone()),
        row: Some(row.from.row),
        column,
        ..Fault::whole(file, Wrong::plain(what, right))
    }
}

/// One row as the rack takes it, or what it cannot show yet.
fn prescription(row: &PlanRow) -> Result<Prescription, Words> {
    if let Some(track) = &row.track {
        return Err(words!("a track ({0})", track));
    }
    let [first, then @ ..] = row.groups.as_slice() else {
        return Err(words!("a row without sets"));
    };
    let has_top = |at: usize| {
        let earlier = row.groups.iter().take(at);
        earlier.into_iter().any(|group| group.role == Role::Top) || at > 0
    };
    for (at, asked) in row.groups.iter().enumerate() {
        let of_top = matches!(asked.load, Some(LoadAsk::Share(_, ShareOf::TopSet)));
        if of_top && !has_top(at) {
            return Err(words!("a share of a top set that nothing is before"));
        }
    }
    let then = then.iter().map(group);
    Ok(Prescription {
        date: row.date,
        lifter: row.lifter.clone(),
        lift: row.lift.clone(),
        first: group(first)?,
        then: then.collect::<Result<_, _>>()?,
        ladder: row.ladder.clone(),
        note: row.note.clone(),
    })
}

fn group(group: &SetGroup) -> Result<domain::prescription::SetGroup, Words> {
    Ok(domain::prescription::SetGroup {
        sets: group.sets,
        reps: domain::prescription::Reps {
            least: group.reps.least,
            most: group.reps.most,
        },
        load: load(group)?,
        rest_s: group.rest_s,
        role: group.role,
        effort: group.effort,
    })
}

fn load(group: &SetGroup) -> Result<LoadWish, Words> {
    match group.load {
        Some(LoadAsk::Mass(mass, _)) => Ok(LoadWish::Mass(mass)),
        Some(LoadAsk::Share(share, ShareOf::Best)) => Ok(LoadWish::OfBest(share)),
        Some(LoadAsk::Share(share, ShareOf::TopSet)) => Ok(LoadWish::OfTop(share)),
        Some(LoadAsk::More(mass, _)) => Ok(LoadWish::More(mass)),
        Some(LoadAsk::Due) => Ok(LoadWish::Due),
        // An effort alone leaves the load to what is due.
        None if group.effort.is_some() => Ok(LoadWish::Due),
        Some(load @ LoadAsk::Share(_, ShareOf::TrainingMax)) => {
            Err(words!("a load of another kind ({0})", load.to_string()))
        }
        None => Err(words!("sets without a load")),
    }
}
