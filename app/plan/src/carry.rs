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
    let [group] = row.groups.as_slice() else {
        let groups: Vec<_> = row.groups.iter().map(ToString::to_string).collect();
        return Err(words!("several set groups ({0})", groups.join(", ")));
    };
    let reps = match (group.reps.least, group.reps.most) {
        (least, Some(most)) if least == most => least,
        (_, Some(_)) => {
            return Err(words!(
                "reps from one to another ({0})",
                group.reps.to_string()
            ));
        }
        (_, None) => return Err(words!("as many reps as go ({0})", group.reps.to_string())),
    };
    if let Some(effort) = group.effort {
        return Err(words!(
            "an effort (RPE {0})",
            crate::set_group::effort_text(effort)
        ));
    }
    if let Some(track) = &row.track {
        return Err(words!("a track ({0})", track));
    }
    if let Some(warm) = row
        .ladder
        .as_deref()
        .filter(|ladder| ["none", "short"].contains(ladder))
    {
        return Err(words!("another warm-up ({0})", warm));
    }
    Ok(Prescription {
        date: row.date,
        lifter: row.lifter.clone(),
        lift: row.lift.clone(),
        sets: group.sets,
        reps,
        load: load(group)?,
        ladder: row.ladder.clone(),
        rest_s: group.rest_s,
        note: row.note.clone(),
    })
}

fn load(group: &SetGroup) -> Result<LoadWish, Words> {
    match group.load {
        Some(LoadAsk::Mass(mass, _)) => Ok(LoadWish::Mass(mass)),
        Some(LoadAsk::Share(share, ShareOf::Best)) => Ok(LoadWish::OfBest(share)),
        Some(load @ (LoadAsk::Share(..) | LoadAsk::More(..) | LoadAsk::Due)) => {
            Err(words!("a load of another kind ({0})", load.to_string()))
        }
        None => Err(words!("sets without a load")),
    }
}
