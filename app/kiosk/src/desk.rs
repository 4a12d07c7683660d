//! What the coach's desk needs of the data folder: plans that lie there, values written into the
//! gym's files, a gym begun anew.
//!
//! Refuses: a value with which the files could no longer be read; then nothing is changed.
mod failed;
mod texts;

use crate::echo;
use crate::error::KioskError;
use crate::folder::Folder;
use crate::gym_files::{self, GymInForce};
use crate::nearby::{Nearby, PlanRead};
use crate::odd_rows::odd_rows;
use crate::owner::Owner;
use chrono::NaiveDate;
use domain::needs::need;
use domain::{Command, Gym, Moment, State};
pub(crate) use failed::{system, told};
use hardware::DeviceFault;
use plan::{PlanCells, Source, Words, words};
use std::net::{IpAddr, Ipv4Addr};
use text::keys::checked as k;
use texts::Texts;
use view::Language;
use view::desk::{DayRow, DayWish, LanCard, LanNews, PlanNews, Wish};
use view::language::Said;

/// The plans that wait in the folder.
#[must_use]
pub fn plans_news(near: &Nearby, with: (&Gym, &State), say: Language) -> Vec<PlanNews> {
    let plans = near.plans();
    plans.map(|plan| plan_news(with, say, plan)).collect()
}

/// What is wrong with the gym's files as they lie in the folder.
#[must_use]
pub fn file_faults(gym: &GymInForce, say: Language) -> Vec<String> {
    let faults = gym.faults.iter();
    faults.map(|fault| fault_words(say, fault)).collect()
}

/// How it stands with the page on the network, as far as settings and interfaces say.
#[must_use]
pub fn lan_news(near: &Nearby, config: &plan::Kiosk, card: LanCard) -> LanNews {
    let mut addresses = vec![IpAddr::V4(Ipv4Addr::LOCALHOST)];
    addresses.extend(near.addresses());
    if !addresses.contains(&config.address) {
        addresses.push(config.address);
    }
    LanNews {
        on: config.share,
        address: config.address.to_string(),
        addresses: addresses.iter().map(ToString::to_string).collect(),
        has_code: near.has_code(),
        card,
    }
}

/// What went wrong, in the language of the screen.
#[must_use]
pub fn words(say: Language, error: &KioskError) -> String {
    let all = match error {
        KioskError::Refused(refusal) => say.refusal(refusal),
        KioskError::Needed(need) => say.need(need),
        KioskError::Faults(faults) => faults_words(say, faults),
        KioskError::File { .. }
        | KioskError::NoHome
        | KioskError::Journal(_)
        | KioskError::Record(_)
        | KioskError::Backup(_)
        | KioskError::Code(_)
        | KioskError::Picture(_)
        | KioskError::Told(_)
        | KioskError::Usage(_) => say.went_wrong(&in_words(say, &told(error))),
    };
    echo::bounded(&all)
}

/// The first fault, and how many more there are.
#[must_use]
pub fn faults_words(say: Language, faults: &[plan::Fault]) -> String {
    let Some(first) = faults.first() else {
        return String::new();
    };
    say.and_more(&fault_words(say, first), plan::count(faults) - 1)
}

/// Words of a checker or of the kiosk, as a language says them.
pub(crate) fn in_words(say: Language, words: &Words) -> String {
    words.to(say)
}

/// What is wrong with a device, as a language says it.
#[must_use]
pub fn device_words(say: Language, fault: &DeviceFault) -> String {
    in_words(say, &failed::device(fault))
}

/// That a part of the kiosk fell, as a language says it.
pub(crate) fn fallen_words(say: Language, part: &str, times: u32) -> String {
    let told = words!(k::THE_PART_FAILED_AND_WAS, part, times);
    in_words(say, &told)
}

/// What went wrong, in every language, for whoever is told of it later.
pub(crate) fn said(error: &KioskError) -> Said {
    Said::of(|say| words(say, error))
}

pub(crate) fn fault_words(say: Language, fault: &plan::Fault) -> String {
    let file = match &fault.sheet {
        Some(sheet) => format!("{} ({sheet})", fault.file),
        None => fault.file.clone(),
    };
    let column = fault.column.as_ref().map(ToString::to_string);
    let found = say.found(&in_words(say, &fault.read), &in_words(say, &fault.right));
    say.fault(&file, (fault.row, column.as_deref()), &found)
}

/// The first thing that is odd, without the file's name, which stands above it, and how many more.
fn odd_words(say: Language, odd: &[plan::Fault]) -> String {
    let first = odd.first().map(|fault| in_words(say, &fault.read));
    first.map_or_else(String::new, |first| {
        say.and_more(&first, plan::count(odd) - 1)
    })
}

fn plan_news(
    (gym, state): (&Gym, &State),
    say: Language,
    (name, read): (&str, &PlanRead),
) -> PlanNews {
    let mut odd = Vec::new();
    let read = match read {
        Ok((rows, told)) => {
            odd.clone_from(told);
            odd.extend(odd_rows(name, gym, state, rows));
            Ok(rows.len())
        }
        Err(KioskError::Faults(faults)) => {
            let first = faults.first().map(|fault| fault_words(say, fault));
            Err((first.unwrap_or_default(), plan::count(faults)))
        }
        Err(error) => Err((words(say, error), 1)),
    };
    PlanNews {
        name: name.to_owned(),
        read,
        odd: odd_words(say, &odd),
    }
}

fn needed(folder: Option<&Folder>) -> Result<&Folder, KioskError> {
    let none = || KioskError::Told(words!(k::THIS_KIOSK_KEEPS_NO_FILES));
    folder.ok_or_else(none)
}

/// Does what somebody at the desk wants on `today`, whole or not at all.
///
/// # Errors
/// [`KioskError::Faults`] when the files could not be read with it, [`KioskError::Needed`] when
/// something still needs what was to go; others when they cannot be written.
pub fn grant(
    wish: &Wish,
    (folder, near): (Option<&Folder>, &mut Nearby),
    (owner, gym): (&mut Owner, &Gym),
    (now, today): (Moment, NaiveDate),
) -> Result<(), KioskError> {
    let mut texts = Texts::of(owner);
    match wish {
        Wish::TakePlan(name) => {
            let rows = near.rows(name)?;
            let name = name.clone();
            return owner.command(&Command::TakePlan { name, rows }, now);
        }
        Wish::Plan(wish) => {
            let command = plan_day(wish, owner, gym)?;
            return owner.command(&command, now);
        }
        Wish::Change(changes) => texts.change(changes)?,
        Wish::Remove(thing) => {
            if let Some(need) = need(gym, owner.state(), today, thing) {
                return Err(KioskError::Needed(need));
            }
            texts.remove(thing, gym)?;
        }
        Wish::Begin { gym, lifters } => texts.begin(gym, lifters),
        Wish::PageCode(code) => {
            share::set_code(needed(folder)?.path(), code)?;
            near.keep_code();
            return Ok(());
        }
        // The kiosk keeps the door itself, and whoever keeps sticks and copies is told by it.
        Wish::Open(_) | Wish::Code(_) | Wish::Errand(_) => return Ok(()),
    }
    gym_files::proven(texts.all())?;
    // First the folder, then the journal: cut short in between, the next start takes the file.
    if let Some(folder) = folder {
        for (name, text) in texts.changed() {
            if matches!(wish, Wish::Begin { .. }) {
                folder.keep_before(name)?;
            }
            folder.replace(name, text)?;
        }
    }
    for (name, text) in texts.changed() {
        let (name, text) = (name.to_owned(), text.to_owned());
        owner.command(&Command::TakeFile { name, text }, now)?;
    }
    Ok(())
}

/// The name under which rows that were put together on the screen go into the journal.
const DESK_PLAN: &str = "desk";

/// The rest of a row: as it was typed, else as it stood where the screen cannot say it.
fn rest_of(row: &DayRow, before: Option<&PlanCells>) -> String {
    match &row.rest_min {
        Some(minutes) => format!("{minutes} min"),
        None => before.map(|before| before.rest.clone()).unwrap_or_default(),
    }
}

/// A day of the plan with one row more, other or less: the rows go through the door of plans.
pub(crate) fn plan_day(wish: &DayWish, owner: &Owner, gym: &Gym) -> Result<Command, KioskError> {
    let day = (wish.date, wish.lifter.clone());
    let mut stand = owner.state().plan.get(&day).cloned().unwrap_or_default();
    let lost = || KioskError::Refused(domain::Refusal::NothingPlanned);
    let Some(row) = &wish.row else {
        let at = wish.at.filter(|at| *at < stand.len()).ok_or_else(lost)?;
        stand.remove(at);
        let (date, lifter) = day;
        return Ok(match stand.is_empty() {
            true => Command::ClearDay { lifter, date },
            false => Command::TakePlan {
                name: DESK_PLAN.into(),
                rows: stand,
            },
        });
    };
    let mut cells: Vec<PlanCells> = stand.iter().map(PlanCells::from).collect();
    let before = wish.at.and_then(|at| cells.get(at).cloned());
    let cell = PlanCells {
        date: wish.date.to_string(),
        lifter: wish.lifter.clone(),
        lift: row.lift.clone(),
        sets: row.sets.clone(),
        reps: row.reps.clone(),
        load: row.load.clone(),
        ladder: row.ladder.clone().unwrap_or_default(),
        rest: rest_of(row, before.as_ref()),
        ..before.unwrap_or_default()
    };
    match wish.at {
        Some(at) => *cells.get_mut(at).ok_or_else(lost)? = cell,
        None => cells.push(cell),
    }
    // Rows of several groups say more than the cells of one; they stand as they are.
    let apart = stand.iter().any(|row| !row.is_straight());
    let alone = wish.at.unwrap_or(stand.len());
    if apart {
        cells = cells.split_off(alone.min(cells.len() - 1));
        cells.truncate(1);
    }
    let text = plan::plan_csv(&cells);
    let source = Source {
        name: DESK_PLAN,
        text: text.as_bytes(),
    };
    let mut rows = plan::coach_plan(source, gym).map_err(KioskError::Faults)?;
    if apart {
        let to = (alone + usize::from(wish.at.is_some())).min(stand.len());
        stand.splice(alone..to, rows);
        rows = stand;
    }
    let name = DESK_PLAN.into();
    Ok(Command::TakePlan { name, rows })
}
