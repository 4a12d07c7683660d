//! A disk for tests that loses, tears and reorders what was not synced: SQLite's own file layer,
//! with faults. For tests alone; nothing that ships may use it.
//!
//! Files are really written, by SQLite's own layer, so that others see them; beside that every
//! write since the last sync is remembered, and after a power cut [`Disk::after_cut`] lays out what
//! the platters may hold.
#![allow(unsafe_code, reason = "SQLite's file layer is a table of C functions")]

mod layer;
mod random;
mod world;

pub use random::Random;
pub use world::{Fault, SECTOR};

use std::collections::BTreeSet;
use std::fs;
use std::io;
use std::path::Path;
use std::sync::{Mutex, MutexGuard, PoisonError};
use world::World;

/// What all connections of this process write to.
static WORLD: Mutex<World> = Mutex::new(World::new());
/// Who has the disk: one test at a time.
static HELD: Mutex<()> = Mutex::new(());

pub(crate) fn world() -> MutexGuard<'static, World> {
    WORLD.lock().unwrap_or_else(PoisonError::into_inner)
}

/// The disk, for one test at a time; SQLite writes through it from the first call of
/// [`Disk::take`] on.
#[derive(Debug)]
pub struct Disk {
    _held: MutexGuard<'static, ()>,
}

impl Disk {
    /// Has the disk, as one that works.
    #[must_use]
    pub fn take() -> Self {
        let held = HELD.lock().unwrap_or_else(PoisonError::into_inner);
        layer::register();
        world().begin(&[]);
        Self { _held: held }
    }

    /// Everything written so far is safe, and these faults follow, each at the write that it names,
    /// counted from now on.
    pub fn begin(&self, faults: &[(u64, Fault)]) {
        world().begin(faults);
    }

    /// Writes, syncs, cuts of files and deletions since the last beginning.
    #[must_use]
    pub fn steps(&self) -> u64 {
        world().steps
    }

    /// How many faults were met.
    #[must_use]
    pub fn met(&self) -> u64 {
        world().met
    }

    /// Lays into `to` what a power cut now would leave of the files in `from`: all that was synced,
    /// and of the rest some sectors, as `random` has it. Files that SQLite does not write are
    /// copied as they are.
    ///
    /// # Errors
    /// The system's.
    pub fn after_cut(&self, from: &Path, to: &Path, random: &mut Random) -> io::Result<()> {
        let mut world = world();
        let mut laid = BTreeSet::new();
        for (path, bytes) in world.after_cut(from, random) {
            let name = path.file_name().unwrap_or_default().to_owned();
            laid.insert(name.clone());
            if let Some(bytes) = bytes {
                fs::write(to.join(name), bytes)?;
            }
        }
        for entry in fs::read_dir(from)? {
            let entry = entry?;
            let name = entry.file_name();
            // The table of the log is memory, which a cut wipes.
            let memory = name.to_string_lossy().ends_with("-shm");
            if entry.file_type()?.is_file() && !memory && !laid.contains(&name) {
                fs::copy(entry.path(), to.join(name))?;
            }
        }
        Ok(())
    }
}
