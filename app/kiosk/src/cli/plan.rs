//! `pinladder plan blank` and `plan read`. Refuses: writing over a file, taking anything.
use super::say;
use super::take::counted;
use crate::bounded;
use crate::clock::{Clock as _, SystemClock};
use crate::error::KioskError;
use crate::folder::Folder;
use crate::odd_rows::odd_rows;
use chrono::{Datelike as _, NaiveDate, Weekday};
use domain::day::share_now;
use domain::{Gym, Prescription, State};
use plan::{
    Fault, LoadAsk, PlanRow, SetGroup, Source, Understood, Weight, effort_text, share_text,
};
use serde_json::{Map, Value, json};
use std::fs::File;
use std::io::Write;
use std::path::Path;

/// Writes a blank plan with examples from the data folder's gym, else from the demo gym.
pub(super) fn blank(folder: &Folder, path: &Path, out: &mut dyn Write) -> Result<bool, KioskError> {
    let gym = super::check::gym_of(folder)?.unwrap_or_default();
    let today = SystemClock.local().date();
    let ending = path
        .extension()
        .map(|end| end.to_string_lossy().to_lowercase());
    let bytes = match ending.as_deref() {
        Some("xlsx") => plan::blank_xlsx(&gym, today).map_err(KioskError::Usage)?,
        Some("csv") => plan::blank_csv(&gym, today).into_bytes(),
        _ => {
            let shown = path.display();
            let words = format!("{shown} ends in neither .csv nor .xlsx; choose one of the two");
            return Err(KioskError::Usage(words));
        }
    };
    let mut file = File::create_new(path).map_err(KioskError::file(path))?;
    file.write_all(&bytes).map_err(KioskError::file(path))?;
    say(out, &format!("wrote a blank plan to {}\n", path.display()));
    Ok(true)
}

/// A first Monday as it was given, if it is one.
///
/// # Errors
/// [`KioskError::Usage`] when it is another day.
pub(super) fn first_monday(day: NaiveDate) -> Result<NaiveDate, KioskError> {
    let monday = day.week(Weekday::Mon).first_day();
    if day.weekday() == Weekday::Mon {
        return Ok(day);
    }
    Err(KioskError::Usage(format!(
        "{day} is no Monday; week 1 begins on a Monday, such as {monday}"
    )))
}

/// Prints what is understood of a plan. False when it has a fault.
pub(super) fn read(
    folder: Option<&Folder>,
    (path, monday): (&Path, Option<NaiveDate>),
    as_json: bool,
    out: &mut dyn Write,
) -> Result<bool, KioskError> {
    let monday = monday.map(first_monday).transpose()?;
    let gym = match folder {
        Some(folder) => super::check::gym_of(folder)?,
        None => super::check::demo_gym(),
    };
    let text = bounded::read(path)?;
    let name = path.file_name().unwrap_or(path.as_os_str());
    let name = name.to_string_lossy();
    let source = Source {
        name: &name,
        text: &text,
    };
    let mut understood = plan::understand(source, gym.as_ref(), monday);
    let mut shares = Vec::new();
    if let Some(gym) = &gym {
        match plan::coach_plan_since(source, gym, monday) {
            Ok((rows, _)) => {
                let state = folder.map(super::check::state_of).unwrap_or_default();
                understood
                    .faults
                    .extend(odd_rows(&name, gym, &state, &rows));
                shares = rows.iter().map(|row| come_to(gym, &state, row)).collect();
            }
            // Understood, and yet not taken: whoever reads it here should not find out at the rack.
            // Of the demo gym it says nothing.
            Err(faults) if folder.is_some() => {
                let more = faults.into_iter().filter(Fault::stops);
                let more: Vec<_> = more
                    .filter(|fault| !understood.faults.contains(fault))
                    .map(|fault| Fault {
                        weight: Weight::Odd,
                        ..fault
                    })
                    .collect();
                understood.faults.extend(more);
            }
            Err(_) => {}
        }
    }
    let well = !understood.faults.iter().any(Fault::stops);
    if as_json {
        say(out, &format!("{:#}\n", in_json(&understood)));
    } else {
        say(out, &in_words(&understood, &shares));
    }
    Ok(well)
}

/// What the shares of a row's groups come to now, in the lifter's unit.
fn come_to(gym: &Gym, state: &State, row: &Prescription) -> Vec<Option<String>> {
    let lifter = gym.lifters.iter().find(|own| own.name == row.lifter);
    let now = |group| {
        let lifter = lifter?;
        let load = share_now((gym, state), lifter, row, group)?;
        Some(load.words(lifter.unit))
    };
    row.groups().map(now).collect()
}

/// A group with what its share comes to: "3 x 5 @ 80 % of best (= 192 kg)".
fn group_words(group: &SetGroup, comes_to: Option<&Option<String>>) -> String {
    let text = group.to_string();
    match (group.load, comes_to) {
        (Some(load @ LoadAsk::Share(..)), Some(Some(mass))) => {
            let load = load.to_string();
            text.replacen(&load, &format!("{load} (= {mass})"), 1)
        }
        _ => text,
    }
}

/// What was understood, as people read it.
fn in_words(understood: &Understood, shares: &[Vec<Option<String>>]) -> String {
    let mut text = String::new();
    for (nth, row) in understood.rows.iter().enumerate() {
        let of_row = shares.get(nth).map(Vec::as_slice).unwrap_or_default();
        let groups = row.groups.iter().enumerate();
        let groups = groups.map(|(at, group)| group_words(group, of_row.get(at)));
        let groups: Vec<String> = groups.collect();
        let track = row.track.as_ref().map(|track| format!(" ({track})"));
        text += &format!(
            "{}  {}, {}{}: {}",
            row.date,
            row.lifter,
            row.lift,
            track.unwrap_or_default(),
            groups.join(", ")
        );
        if let Some(ladder) = &row.ladder {
            text += &format!("; ladder {ladder}");
        }
        if !row.note.is_empty() {
            text += &format!("; \"{}\"", row.note);
        }
        text += &format!("  [{}]\n", row.from);
    }
    for fault in &understood.faults {
        text += &format!("{fault}\n");
    }
    let (wrong, odd): (Vec<&Fault>, Vec<&Fault>) =
        understood.faults.iter().partition(|fault| fault.stops());
    let count = |faults: &[&Fault]| faults.iter().map(|fault| fault.stands_for).sum::<usize>();
    text += &format!(
        "{} understood, {} odd, {}; nothing was taken\n",
        counted(understood.rows.len(), "row"),
        count(&odd),
        counted(count(&wrong), "fault")
    );
    text
}

/// What was understood, as programs read it.
fn in_json(understood: &Understood) -> Value {
    let (wrong, odd): (Vec<&Fault>, Vec<&Fault>) =
        understood.faults.iter().partition(|fault| fault.stops());
    json!({
        "rows": understood.rows.iter().map(row_json).collect::<Vec<_>>(),
        "odd": odd.into_iter().map(fault_json).collect::<Vec<_>>(),
        "faults": wrong.into_iter().map(fault_json).collect::<Vec<_>>(),
    })
}

fn fault_json(fault: &Fault) -> Value {
    let mut told = Map::new();
    told.insert("from".to_owned(), json!(fault.cell()));
    told.insert(
        "text".to_owned(),
        json!(format!("read {}; {}", fault.read, fault.right)),
    );
    if fault.stands_for > 1 {
        told.insert("count".to_owned(), json!(fault.stands_for));
    }
    Value::Object(told)
}

fn row_json(row: &PlanRow) -> Value {
    let mut read = Map::new();
    let mut put = |key: &str, value: Value| drop(read.insert(key.to_owned(), value));
    put("date", json!(row.date.to_string()));
    put("lifter", json!(row.lifter));
    put("lift", json!(row.lift));
    if let Some(track) = &row.track {
        put("track", json!(track.as_str()));
    }
    put("groups", row.groups.iter().map(group_json).collect());
    if let Some(ladder) = &row.ladder {
        put("ladder", json!(ladder));
    }
    put("note", json!(row.note));
    put("from", json!(row.from.to_string()));
    Value::Object(read)
}

fn group_json(group: &SetGroup) -> Value {
    let mut read = Map::new();
    let mut put = |key: &str, value: Value| drop(read.insert(key.to_owned(), value));
    put("sets", json!(group.sets));
    put("reps", json!([group.reps.least, group.reps.most]));
    if let Some(load) = group.load {
        put("load", load_json(load));
    }
    if let Some(effort) = group.effort {
        put("effort", json!(effort_text(effort)));
    }
    if let Some(rest) = group.rest_s {
        put("rest_s", json!(rest));
    }
    put("role", json!(group.role.word()));
    let manner = &group.manner;
    let worn = [("belt", manner.belt), ("straps", manner.straps)];
    for (key, on) in worn {
        if let Some(on) = on {
            put(key, json!(on));
        }
    }
    if let Some(hole) = manner.hole {
        put("hole", json!(hole));
    }
    if let Some(block) = manner.block {
        put("block", json!(block.exact(domain::LengthUnit::Mm)));
    }
    if let Some(tempo) = manner.tempo {
        put("tempo", json!(tempo.to_string()));
    }
    if let Some(pause) = manner.pause_s {
        put("pause_s", json!(pause));
    }
    if let Some(grip) = manner.grip {
        put("grip", json!(view::words::grip(grip)));
    }
    Value::Object(read)
}

fn load_json(load: LoadAsk) -> Value {
    match load {
        LoadAsk::Mass(mass, unit) => json!({ "mass": mass.exact(unit) }),
        LoadAsk::Share(share, of) => json!({ "share": share_text(share), "of": of.word() }),
        LoadAsk::More(mass, unit) => json!({ "more": mass.exact(unit) }),
        LoadAsk::Due => json!({ "due": true }),
    }
}
