//! A stick with plans: found, read whole into memory, checked, and only then shown.
//!
//! Refuses: links, devices and pipes, files and numbers without bound, running anything, taking a
//! part of what a stick brings.
use crate::bounded::BYTES_MAX;
use crate::desk::system;
use crate::error::KioskError;
use chrono::NaiveDate;
use domain::{Gym, Prescription, State};
use plan::{Fault, PLAN_ENDINGS, Source, Words, words};
use rustix::fs::{Dir, FileType, Mode, OFlags, fstat, open, openat};
use rustix::io::Errno;
use std::collections::{BTreeMap, BTreeSet};
use std::fs::{File, Metadata};
use std::io::Read as _;
use std::os::fd::OwnedFd;
use std::os::unix::fs::MetadataExt as _;
use std::path::{Path, PathBuf};
use text::keys::checked as k;
use view::desk::StickChange;

/// Names that are looked at in a folder.
const NAMES_MAX: usize = 500;
/// Plans that are read of a stick.
const PLANS_MAX: usize = 20;
/// Rows of all plans of a stick together: some years of a gym with twenty lifters.
const ROWS_MAX: usize = 60_000;
/// Faults that are kept of all plans of a stick; each plan has a few in any case.
const FAULTS_MAX: usize = 200;
/// Faults that are kept of a plan once the stick has its share.
const FAULTS_LEAST: usize = 3;
/// The folder of a stick that is looked into beside its top.
const PLANS: &str = "plans";

/// What a stick brought, as it was read; the stick itself may be gone since.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Stick {
    /// Plans by name.
    pub plans: Vec<StickPlan>,
    /// What was passed over and why, a sentence each.
    pub passed: Vec<Words>,
}

/// One plan of a stick.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct StickPlan {
    /// The file's name, with "plans/" before it if it lay there.
    pub name: String,
    /// Its rows; empty where it has a fault.
    pub rows: Vec<Prescription>,
    /// Its faults and what is odd, by sheet, row and column.
    pub faults: Vec<Fault>,
}

/// "Tevita: 2026-12-01 to 2026-12-22, 4 new days, 1 changed, 2 as before".
#[must_use]
pub fn words(change: &StickChange) -> String {
    let (first, last) = change.days;
    let span = if first == last {
        first.to_string()
    } else {
        format!("{first} to {last}")
    };
    let mut parts = Vec::new();
    let days = |n: usize| if n == 1 { "day" } else { "days" };
    if change.new > 0 {
        parts.push(format!("{} new {}", change.new, days(change.new)));
    }
    if change.changed > 0 {
        parts.push(format!(
            "{} changed {}",
            change.changed,
            days(change.changed)
        ));
    }
    if change.same > 0 {
        parts.push(format!("{} {} as before", change.same, days(change.same)));
    }
    format!("{}: {span}, {}", change.lifter, parts.join(", "))
}

impl Stick {
    /// Reads the plans in `place` and in its folder "plans", and holds them against the gym.
    ///
    /// # Errors
    /// [`KioskError::File`] when `place` is no folder that can be read.
    pub fn read(place: &Path, gym: &Gym) -> Result<Self, KioskError> {
        let flags = OFlags::RDONLY | OFlags::DIRECTORY | OFlags::NOFOLLOW | OFlags::CLOEXEC;
        let failed = |errno: Errno| KioskError::File {
            path: place.to_owned(),
            why: errno.into(),
        };
        let top = open(place, flags, Mode::empty()).map_err(failed)?;
        let mut stick = Self::default();
        stick.look(&top, "", gym).map_err(failed)?;
        // Without such a folder there is nothing more; a link of that name is not followed.
        if let Ok(inner) = openat(&top, PLANS, flags, Mode::empty()) {
            stick.look(&inner, "plans/", gym).map_err(failed)?;
        }
        stick.plans.sort_by(|a, b| a.name.cmp(&b.name));
        stick.passed.sort_by_key(ToString::to_string);
        stick.tell_twice();
        stick.shorten();
        Ok(stick)
    }

    /// One file that somebody handed in, read and held against the gym as if it lay on a stick.
    #[must_use]
    pub fn of_file(name: &str, bytes: &[u8], gym: &Gym) -> Self {
        let mut stick = Self::default();
        stick.add(check(shown(name), bytes, gym));
        stick.tell_twice();
        stick.shorten();
        stick
    }

    /// Whether everything on it could be taken.
    #[must_use]
    pub fn is_sound(&self) -> bool {
        !self.plans.is_empty()
            && self
                .plans
                .iter()
                .all(|p| !p.faults.iter().any(Fault::stops))
    }

    /// What taking all of it would change, by lifter.
    #[must_use]
    pub fn changes(&self, state: &State) -> Vec<StickChange> {
        let mut days: BTreeMap<(&str, NaiveDate), Vec<&Prescription>> = BTreeMap::new();
        for row in self.rows() {
            let key = (row.lifter.as_str(), row.date);
            days.entry(key).or_default().push(row);
        }
        let mut changes: Vec<StickChange> = Vec::new();
        for ((lifter, date), rows) in days {
            let stands = state.plan.get(&(date, lifter.to_owned()));
            let same = stands.is_some_and(|stands| stands.iter().eq(rows.iter().copied()));
            if changes.last().is_none_or(|last| last.lifter != lifter) {
                changes.push(StickChange {
                    lifter: lifter.to_owned(),
                    days: (date, date),
                    new: 0,
                    changed: 0,
                    same: 0,
                });
            }
            let change = changes.last_mut().expect("one was put there");
            change.days.1 = date;
            match stands {
                None => change.new += 1,
                Some(_) if same => change.same += 1,
                Some(_) => change.changed += 1,
            }
        }
        changes
    }

    /// All rows, and a name for them together: "december.xlsx, plans/ada.csv".
    #[must_use]
    pub fn together(&self) -> (String, Vec<Prescription>) {
        let names: Vec<_> = self.plans.iter().map(|plan| plan.name.as_str()).collect();
        (names.join(", "), self.rows().cloned().collect())
    }

    fn rows(&self) -> impl Iterator<Item = &Prescription> {
        self.plans.iter().flat_map(|plan| &plan.rows)
    }

    /// Reads the plans of one folder.
    fn look(&mut self, folder: &OwnedFd, front: &str, gym: &Gym) -> Result<(), Errno> {
        let mut names = BTreeSet::new();
        for entry in Dir::read_from(folder)? {
            let name = entry?.file_name().to_string_lossy().into_owned();
            let lower = name.to_lowercase();
            let is_plan = PLAN_ENDINGS.iter().any(|end| lower.ends_with(end));
            // What begins with a dot is a program's own, such as a spreadsheet's lock.
            if is_plan && !name.starts_with('.') {
                names.insert(name);
            }
            if names.len() > NAMES_MAX {
                self.passed
                    .push(words!(k::MORE_THAN_PLANS_IN_ONE, NAMES_MAX));
                break;
            }
        }
        for name in names {
            if self.plans.len() >= PLANS_MAX {
                self.passed
                    .push(words!(k::MORE_THAN_PLANS_THE_REST, PLANS_MAX));
                break;
            }
            let shown = format!("{front}{}", shown(&name));
            match read_file(folder, &name) {
                Ok(bytes) => self.add(check(shown, &bytes, gym)),
                Err(why) => self.passed.push(words!(k::PLACE_AND_WHAT, shown, why)),
            }
        }
        Ok(())
    }

    /// Keeps a plan that was read, unless the stick has too many rows with it.
    fn add(&mut self, plan: StickPlan) {
        let rows = self.rows().count() + plan.rows.len();
        if rows <= ROWS_MAX {
            self.plans.push(plan);
            return;
        }
        let read = words!(k::WITH_IT_THE_STICK_HAS, ROWS_MAX);
        let right = words!(k::PUT_IT_ON_ANOTHER_STICK);
        let faults = vec![Fault::of_file(&plan.name, read, right)];
        self.plans.push(StickPlan {
            rows: Vec::new(),
            faults,
            ..plan
        });
    }

    /// Keeps the faults of all plans within bounds: somebody has to read them.
    fn shorten(&mut self) {
        let mut left = FAULTS_MAX;
        for plan in &mut self.plans {
            plan::shorten(&plan.name, &mut plan.faults, left.max(FAULTS_LEAST));
            left = left.saturating_sub(plan.faults.len());
        }
    }

    /// A day and lift of a lifter in two plans would be taken as both.
    fn tell_twice(&mut self) {
        let mut firsts: BTreeMap<(NaiveDate, &str, &str), usize> = BTreeMap::new();
        let mut twice = vec![Vec::new(); self.plans.len()];
        for (at, plan) in self.plans.iter().enumerate() {
            for row in &plan.rows {
                let key = (row.date, row.lifter.as_str(), row.lift.as_str());
                let first = *firsts.entry(key).or_insert(at);
                if first != at {
                    twice[at].push(Fault::of_file(
                        &plan.name,
                        words!(
                            k::FOR_ON_WHICH_HAS_TOO,
                            &row.lift,
                            &row.lifter,
                            row.date.to_string(),
                            &self.plans[first].name
                        ),
                        words!(k::KEEP_ONE_OF_THE_TWO_PLANS),
                    ));
                    if twice[at].len() > FAULTS_MAX {
                        plan::shorten(&plan.name, &mut twice[at], FAULTS_MAX);
                    }
                }
            }
        }
        for (plan, twice) in self.plans.iter_mut().zip(twice) {
            plan.faults.extend(twice);
            if plan.faults.iter().any(Fault::stops) {
                plan.rows = Vec::new();
            }
        }
    }
}

fn check(name: String, bytes: &[u8], gym: &Gym) -> StickPlan {
    let source = Source {
        name: &name,
        text: bytes,
    };
    let (rows, faults) = match plan::coach_plan_since(source, gym, None) {
        Ok(read) => read,
        Err(faults) => (Vec::new(), faults),
    };
    StickPlan { name, rows, faults }
}

/// Reads a regular file whole, within its limit; nothing else is even waited for.
fn read_file(folder: &OwnedFd, name: &str) -> Result<Vec<u8>, Words> {
    let flags = OFlags::RDONLY | OFlags::NOFOLLOW | OFlags::NONBLOCK | OFlags::CLOEXEC;
    let file = openat(folder, name, flags, Mode::empty()).map_err(|errno| match errno {
        Errno::LOOP => words!(k::A_LINK_LINKS_ARE_NOT),
        other => words!(k::CANNOT_BE_OPENED, system(&other.into())),
    })?;
    let about = fstat(&file).map_err(|errno| words!(k::CANNOT_BE_READ, system(&errno.into())))?;
    if FileType::from_raw_mode(about.st_mode) != FileType::RegularFile {
        return Err(words!(k::NO_FILE_BUT_A_FOLDER));
    }
    let mut bytes = Vec::new();
    let read = File::from(file).take(BYTES_MAX + 1).read_to_end(&mut bytes);
    read.map_err(|error| words!(k::BROKE_OFF_WHILE_IT_WAS, system(&error)))?;
    if bytes.len() as u64 > BYTES_MAX {
        return Err(words!(k::LARGER_THAN_THE_MOST_BYTES, BYTES_MAX));
    }
    Ok(bytes)
}

/// A name as it is shown: short, on one line.
fn shown(name: &str) -> String {
    let clean = |c: char| if c.is_control() { '\u{fffd}' } else { c };
    let mut short: String = name.chars().take(80).map(clean).collect();
    if name.chars().nth(80).is_some() {
        short.push('\u{2026}');
    }
    short
}

/// What was written to a stick.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct WrittenBack {
    /// The new folder on it.
    pub folder: PathBuf,
    /// Its files and their bytes.
    pub files: Vec<(String, u64)>,
}

/// Writes the record of the data folder `data` to `place`: CSV, JSON and a copy of the journal in
/// a new folder with `stamp` in its name. When it returns, all of it has reached the stick, which
/// may be pulled.
///
/// # Errors
/// [`KioskError`]; a folder whose name ends in ".part" may then be left there. A stick that is
/// pulled meanwhile is an error, whatever lies in its place by then.
pub fn write_back(data: &Path, place: &Path, stamp: &str) -> Result<WrittenBack, KioskError> {
    // Held open, so that what is flushed at the end is what was written to.
    let top = File::open(place).map_err(KioskError::file(place))?;
    let written = write_to(data, place, stamp, &top);
    if lies_in(&top, place) {
        written
    } else {
        Err(KioskError::Told(words!(k::THE_STICK_WAS_PULLED_WHILE)))
    }
}

/// Whether what lies at `place` is still what was opened there.
fn lies_in(top: &File, place: &Path) -> bool {
    let which = |about: std::io::Result<Metadata>| about.map(|about| (about.dev(), about.ino()));
    match (which(top.metadata()), which(std::fs::metadata(place))) {
        (Ok(before), Ok(now)) => before == now,
        _ => false,
    }
}

fn write_to(data: &Path, place: &Path, stamp: &str, top: &File) -> Result<WrittenBack, KioskError> {
    let name = format!("pinladder-record-{stamp}");
    let part = place.join(format!("{name}.part"));
    std::fs::create_dir(&part).map_err(KioskError::file(&part))?;
    let record = data.join(journal::RECORD_FILE);
    let mut files = Vec::new();
    for (name, is_csv) in [("record.csv", true), ("record.json", false)] {
        let path = part.join(name);
        let file = File::create_new(&path).map_err(KioskError::file(&path))?;
        let mut file = std::io::BufWriter::with_capacity(128 * 1_024, file);
        let written = if is_csv {
            share::write_csv(&record, &mut file)
        } else {
            share::write_json(&record, &mut file)
        };
        written.map_err(|error| match error {
            share::ExportError::Record(error) => KioskError::Record(error),
            share::ExportError::Write(why) => KioskError::file(&path)(why),
        })?;
        let file = file
            .into_inner()
            .map_err(std::io::IntoInnerError::into_error)
            .map_err(KioskError::file(&path))?;
        file.sync_all().map_err(KioskError::file(&path))?;
        let bytes = file.metadata().map_err(KioskError::file(&path))?.len();
        files.push((name.to_owned(), bytes));
    }
    let copy = part.join(journal::JOURNAL_FILE);
    journal::copy(&data.join(journal::JOURNAL_FILE), &copy)?;
    let bytes = std::fs::metadata(&copy)
        .map_err(KioskError::file(&copy))?
        .len();
    files.push((journal::JOURNAL_FILE.to_owned(), bytes));
    let folder = place.join(&name);
    std::fs::rename(&part, &folder).map_err(KioskError::file(&folder))?;
    rustix::fs::syncfs(top).map_err(|errno| KioskError::File {
        path: place.to_owned(),
        why: errno.into(),
    })?;
    Ok(WrittenBack { folder, files })
}
