//! Keeps the gym's files and the journal in step.
//!
//! The files in the folder are the owner's to edit; each version that passes the checker is
//! taken into the journal whole, so that everything can be rebuilt from it. Refuses: half a
//! version; with a fault the last good one stays in force.
use crate::error::KioskError;
use crate::folder::{DEMO, DEMO_PLAN, Folder, GYM_FILES, MEET_FILE};
use crate::owner::Owner;
use crate::steady::Steady;
use domain::coach_word::{CoachSays, CoachWord};
use domain::meet_day::MeetDay;
use domain::{Command, Gym};
use plan::{Fault, Source};
use std::sync::Arc;
use view::Language;

/// The gym in force, and what is wrong with newer files.
#[derive(Debug, Clone, Default)]
pub struct GymInForce {
    /// The gym; shared with whoever reads plans beside the owner's thread.
    pub gym: Arc<Gym>,
    /// Faults of the files as they lie in the folder; empty when those are in force.
    pub faults: Vec<Fault>,
    /// Files that were taken now, with another text than they had.
    pub changed: Vec<&'static str>,
}

/// Begins a folder that has no gym, and takes its files if they changed. Where the disk takes
/// nothing for now, the gym is the journal's.
///
/// # Errors
/// As [`begin`] and [`take`].
pub fn in_step(
    folder: &Folder,
    owner: &mut Owner,
    clock: &Steady,
) -> Result<GymInForce, KioskError> {
    let as_kept = |owner: &Owner| {
        in_force(owner).map(|gym| GymInForce {
            gym: Arc::new(gym),
            ..GymInForce::default()
        })
    };
    if owner.closed().is_some() {
        return as_kept(owner);
    }
    let taken = begin(folder, owner, clock).and_then(|()| take(folder, owner, clock));
    match taken {
        Err(KioskError::Journal(error)) if error.is_for_now() => {
            tracing::warn!(%error, "the gym's files are taken when the disk takes them");
            as_kept(owner)
        }
        other => other,
    }
}

/// Takes the folder's files if they changed and are without fault.
///
/// # Errors
/// [`KioskError`] when a file or the journal cannot be used, or when there is no good version
/// at all.
pub fn take(folder: &Folder, owner: &mut Owner, clock: &Steady) -> Result<GymInForce, KioskError> {
    let mut texts = Vec::new();
    for name in GYM_FILES {
        let kept = owner.state().files.get(name).cloned();
        texts.push((name, folder.text(name)?.or(kept)));
    }
    let text_of = |(name, text): &(_, Option<String>)| (*name, text.clone().unwrap_or_default());
    match read(&texts.iter().map(text_of).collect::<Vec<_>>()) {
        Ok(gym) => {
            let faults = take_meet(folder, owner, clock, &gym)?;
            let mut changed = Vec::new();
            // A file that there never was says nothing, and is not taken as if it did.
            for (name, text) in texts {
                let Some(text) = text else { continue };
                let before = owner.state().files.get(name);
                if before != Some(&text) {
                    changed.extend(before.map(|_| name));
                    let name = name.to_owned();
                    owner.command(&Command::TakeFile { name, text }, clock.now())?;
                }
            }
            Ok(GymInForce {
                gym: Arc::new(gym),
                faults,
                changed,
            })
        }
        Err(faults) => match in_force(owner) {
            Ok(gym) => Ok(GymInForce {
                gym: Arc::new(gym),
                faults,
                changed: Vec::new(),
            }),
            Err(_) => Err(KioskError::Faults(faults)),
        },
    }
}

/// Takes the folder's meet.toml if it changed and is without fault, else gives its faults; one that
/// is not there says nothing.
fn take_meet(
    folder: &Folder,
    owner: &mut Owner,
    clock: &Steady,
    gym: &Gym,
) -> Result<Vec<Fault>, KioskError> {
    let Some(text) = folder.text(MEET_FILE)? else {
        return Ok(Vec::new());
    };
    if owner.state().files.get(MEET_FILE) == Some(&text) {
        return Ok(Vec::new());
    }
    if let Err(faults) = plan::meet(meet_source(&text), gym) {
        return Ok(faults);
    }
    let name = MEET_FILE.to_owned();
    owner.command(&Command::TakeFile { name, text }, clock.now())?;
    Ok(Vec::new())
}

fn meet_source(text: &str) -> Source<'_> {
    Source {
        name: MEET_FILE,
        text: text.as_bytes(),
    }
}

/// The meet or test day as the journal has it; `None` without one, or where the gym no longer has
/// what it names.
pub fn meet_in_force(owner: &Owner, gym: &Gym) -> Option<MeetDay> {
    let text = owner.state().files.get(MEET_FILE)?;
    plan::meet(meet_source(text), gym).ok()
}

/// The gym as the journal has it.
///
/// # Errors
/// [`KioskError::Faults`] when the journal has no gym, or one that this version cannot read.
pub fn in_force(owner: &Owner) -> Result<Gym, KioskError> {
    let text = |name: &str| owner.state().files.get(name).cloned().unwrap_or_default();
    let texts: Vec<_> = GYM_FILES.iter().map(|name| (*name, text(name))).collect();
    read(&texts).map_err(KioskError::Faults)
}

/// Begins a folder that has no gym with the demo gym and its plan, moved so that its fullest evening
/// is today. A kill at any instant leaves all of it or nothing: the journal takes it in
/// one piece, and files that are then still missing are written at the next start.
///
/// # Errors
/// [`KioskError`] when the folder or the journal cannot be written.
pub fn begin(folder: &Folder, owner: &mut Owner, clock: &Steady) -> Result<(), KioskError> {
    let has_gym = folder.text("gym.toml")?.is_some() || !owner.state().files.is_empty();
    if !has_gym {
        let text = |(name, text): (&'static str, &str)| {
            let found = folder.text(name)?;
            Ok((name, found.unwrap_or_else(|| text.to_owned())))
        };
        let texts = DEMO.into_iter().map(text);
        let texts: Vec<_> = texts.collect::<Result<_, KioskError>>()?;
        let gym = proven(&texts)?;
        let rows = demo_plan(&gym, clock.local().date())?;
        let take = |(name, text): (&str, String)| Command::TakeFile {
            name: name.to_owned(),
            text,
        };
        let mut commands: Vec<_> = texts.into_iter().map(take).collect();
        let name = "four-weeks.csv".to_owned();
        commands.push(Command::TakePlan { name, rows });
        owner.together(&commands, clock.now())?;
    }
    if owner.seq() == BEGUN {
        folder.lay_demo()?;
    }
    Ok(())
}

/// Whether the gym in force is still the demo's, as it is laid.
#[must_use]
pub fn is_demo(owner: &Owner) -> bool {
    let files = &owner.state().files;
    let same = |(name, text): &(&str, &str)| files.get(*name).is_some_and(|now| now == text);
    DEMO[..2].iter().all(same)
}

/// Events that the demo gym begins with: its files, and its plan.
const BEGUN: u64 = DEMO.len() as u64 + 1;

/// The demo plan's fullest evening: four lifters at one bar, one at the other.
const DEMO_EVENING: (i32, u32, u32) = (2026, 11, 25);

/// Who is hurt in the demo gym, since the day before.
const DEMO_HURT: &str = "Olumide";

/// In a demo gym that was just begun one lifter is hurt, so that whoever looks at the kiosk for the
/// first time finds something on the coach's list.
///
/// # Errors
/// [`KioskError`] when the journal cannot be written.
pub fn hurt_in_demo(owner: &mut Owner, clock: &Steady) -> Result<(), KioskError> {
    if owner.seq() != BEGUN || !is_demo(owner) {
        return Ok(());
    }
    let today = clock.local().date();
    let hurt = Command::SayCoach(Box::new(CoachWord {
        lifter: DEMO_HURT.to_owned(),
        what: CoachSays::Hurt {
            since: today.pred_opt().unwrap_or(today),
        },
        note: Language::English.say(text::keys::list::NOTE_AT_DESK),
    }));
    owner.command(&hurt, clock.now())
}

/// The demo plan, moved so that its fullest evening is `today`, whatever day of the week that is.
///
/// # Errors
/// [`KioskError::Faults`] when `gym` is not the demo gym.
pub fn demo_plan(
    gym: &Gym,
    today: chrono::NaiveDate,
) -> Result<Vec<domain::Prescription>, KioskError> {
    let source = Source {
        name: "four-weeks.csv",
        text: DEMO_PLAN.as_bytes(),
    };
    let rows = plan::coach_plan(source, gym).map_err(KioskError::Faults)?;
    let (year, month, day) = DEMO_EVENING;
    let evening = chrono::NaiveDate::from_ymd_opt(year, month, day).unwrap_or(today);
    Ok(plan::shift_days(rows, (evening, today)))
}

/// The demo gym.
///
/// # Errors
/// [`KioskError::Faults`] when its files are not without fault.
pub fn demo() -> Result<Gym, KioskError> {
    let texts: Vec<_> = DEMO.map(|(name, text)| (name, text.to_owned())).into();
    read(&texts).map_err(KioskError::Faults)
}

/// The gym of texts, in the order of [`GYM_FILES`].
///
/// # Errors
/// [`KioskError::Faults`] when they have any.
pub fn proven(texts: &[(&str, String)]) -> Result<Gym, KioskError> {
    read(texts).map_err(KioskError::Faults)
}

/// Reads the gym's files, in the order of [`GYM_FILES`].
fn read(texts: &[(&str, String)]) -> Result<Gym, Vec<Fault>> {
    let source = |at: usize| Source {
        name: texts[at].0,
        text: texts[at].1.as_bytes(),
    };
    let gym = plan::gym(source(0), source(1));
    let mut faults = plan::kiosk(source(2), gym.as_ref().ok())
        .err()
        .unwrap_or_default();
    let mut gym = match gym {
        Ok(gym) => gym,
        Err(mut wrong) => {
            wrong.extend(faults);
            return Err(wrong);
        }
    };
    match plan::coaching(source(3), &gym) {
        Ok(coaching) => gym.coaching = coaching,
        Err(wrong) => faults.extend(wrong),
    }
    if faults.is_empty() {
        Ok(gym)
    } else {
        Err(faults)
    }
}
