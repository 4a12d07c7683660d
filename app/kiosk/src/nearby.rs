//! What lies around the kiosk and changes by itself: the plans in its folder, its addresses on the
//! network, whether a code for the page is kept.
//!
//! Looked at off the owner's thread and kept as read, so that no tap waits for a disk or for a
//! reader of files: what the desk shows is what a tap takes.
use crate::bounded::{self, BYTES_MAX};
use crate::desk;
use crate::error::KioskError;
use crate::folder::Folder;
use domain::{Gym, Prescription};
use plan::{Fault, PLAN_ENDINGS, Source, words};
use std::collections::BTreeMap;
use std::net::IpAddr;
use std::path::Path;
use std::sync::Arc;
use std::time::SystemTime;
use text::keys::checked as k;

/// Plans that are looked at in the folder.
const PLANS_MAX: usize = 60;

/// Rows of a plan and what is odd of them, or why it cannot be taken.
pub type PlanRead = Result<(Vec<Prescription>, Vec<Fault>), KioskError>;

/// A plan's file as it was read.
#[derive(Debug)]
struct PlanFile {
    stamp: Stamp,
    read: PlanRead,
}

/// By what a file is known to be as it was: when it was changed, and its bytes.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
struct Stamp {
    changed: Option<SystemTime>,
    bytes: u64,
}

/// What was found at the last look.
#[derive(Debug, Clone, Default)]
pub struct Nearby {
    plans: BTreeMap<String, Arc<PlanFile>>,
    /// The gym that the plans were read with.
    gym: Option<Arc<Gym>>,
    addresses: Vec<IpAddr>,
    has_code: bool,
}

impl Nearby {
    /// Looks again; a plan that has not changed, and whose gym has not, is not read again.
    #[must_use]
    pub fn look(folder: &Folder, gym: &Arc<Gym>, before: &Self) -> Self {
        let same_gym = before.gym.as_ref() == Some(gym);
        let plan = |name: String| {
            let path = folder.plans().join(&name);
            let stamp = stamp(&path);
            let kept = before.plans.get(&name).filter(|_| same_gym);
            let kept = kept.filter(|kept| stamp == Some(kept.stamp)).cloned();
            let file = kept.unwrap_or_else(|| {
                Arc::new(PlanFile {
                    stamp: stamp.unwrap_or(Stamp {
                        changed: None,
                        bytes: 0,
                    }),
                    read: read_plan(&path, &name, gym),
                })
            });
            (name, file)
        };
        Self {
            plans: plan_names(folder).into_iter().map(plan).collect(),
            gym: Some(gym.clone()),
            addresses: addresses(),
            has_code: matches!(share::kept_code(folder.path()), Ok(Some(_))),
        }
    }

    /// The plans by name.
    pub fn plans(&self) -> impl Iterator<Item = (&str, &PlanRead)> {
        self.plans
            .iter()
            .map(|(name, file)| (name.as_str(), &file.read))
    }

    /// The rows of a plan as it was read.
    ///
    /// # Errors
    /// [`KioskError::Faults`] of one that has some, [`KioskError::Told`] of one that cannot be read
    /// or is not there any more.
    pub fn rows(&self, name: &str) -> Result<Vec<Prescription>, KioskError> {
        let gone = || KioskError::Told(words!(k::IS_NOT_THERE_ANY_MORE, name));
        match &self.plans.get(name).ok_or_else(gone)?.read {
            Ok((rows, _)) => Ok(rows.clone()),
            Err(KioskError::Faults(faults)) => Err(KioskError::Faults(faults.clone())),
            Err(error) => Err(KioskError::Told(desk::told(error))),
        }
    }

    /// Without plans that were read with another gym: they may name whoever has gone since.
    #[must_use]
    pub fn fitting(self, gym: &Arc<Gym>) -> Self {
        if self.gym.as_ref() == Some(gym) {
            return self;
        }
        Self {
            plans: BTreeMap::new(),
            ..self
        }
    }

    /// The machine's addresses on networks.
    #[must_use]
    pub fn addresses(&self) -> &[IpAddr] {
        &self.addresses
    }

    /// Whether a code for the page is kept.
    #[must_use]
    pub const fn has_code(&self) -> bool {
        self.has_code
    }

    /// A code was kept just now.
    pub const fn keep_code(&mut self) {
        self.has_code = true;
    }

    /// Whether the screen's desk would show the same.
    pub(crate) fn is_as(&self, before: &Self) -> bool {
        let plans = || self.plans.values().zip(before.plans.values());
        self.plans.keys().eq(before.plans.keys())
            && plans().all(|(now, then)| Arc::ptr_eq(now, then))
            && self.addresses == before.addresses
            && self.has_code == before.has_code
    }
}

fn stamp(path: &Path) -> Option<Stamp> {
    let about = std::fs::symlink_metadata(path).ok()?;
    Some(Stamp {
        changed: about.modified().ok(),
        bytes: about.len(),
    })
}

fn plan_names(folder: &Folder) -> Vec<String> {
    let Ok(entries) = std::fs::read_dir(folder.plans()) else {
        return Vec::new(); // No folder, no plans.
    };
    let names = entries
        .flatten()
        .map(|entry| entry.file_name().to_string_lossy().into_owned());
    let is_plan = |name: &String| {
        let name = name.to_lowercase();
        PLAN_ENDINGS.iter().any(|ending| name.ends_with(ending))
    };
    names.filter(is_plan).take(PLANS_MAX).collect()
}

fn read_plan(path: &Path, name: &str, gym: &Gym) -> PlanRead {
    let about = std::fs::symlink_metadata(path).map_err(KioskError::file(path))?;
    if !about.is_file() || about.len() > BYTES_MAX {
        return Err(KioskError::Told(words!(
            k::IS_NO_FILE_OF_AT,
            name,
            BYTES_MAX
        )));
    }
    let text = bounded::read(path)?;
    let source = Source { name, text: &text };
    plan::coach_plan_since(source, gym, None).map_err(KioskError::Faults)
}

fn addresses() -> Vec<IpAddr> {
    let all = if_addrs::get_if_addrs().unwrap_or_default();
    let others = all.iter().map(if_addrs::Interface::ip);
    others
        .filter(|ip| !ip.is_loopback() && !is_local_six(ip))
        .collect()
}

/// An address of IPv6 that only holds on one cable, and would need the cable's name.
fn is_local_six(ip: &IpAddr) -> bool {
    matches!(ip, IpAddr::V6(six) if six.is_unicast_link_local())
}
