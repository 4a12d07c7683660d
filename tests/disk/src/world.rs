//! What was written, what of it is safe, and what goes wrong when.
use crate::random::Random;
use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};

/// The disk writes a sector whole or not at all.
pub const SECTOR: usize = 512;

/// What goes wrong.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Fault {
    /// The power goes: this step and all that follow fail.
    Cut,
    /// This and so many steps more find the disk full, whatever they are.
    Full(u64),
    /// The next sync fails, and what it was to make safe never will be, as Linux does it since 4.13:
    /// the pages count as clean.
    Sync,
    /// This and so many steps more find the disk read-only.
    ReadOnly(u64),
}

/// What the layer is to answer.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Answer {
    Go,
    Dead,
    Full,
    ReadOnly,
}

/// One change that is not safe yet.
#[derive(Debug)]
enum Change {
    Write(usize, Vec<u8>),
    Length(usize),
}

#[derive(Debug, Default)]
struct Tracked {
    safe: Vec<u8>,
    pending: Vec<Change>,
    /// Deleted since, which may or may not have come to the disk.
    gone: bool,
}

#[derive(Debug)]
pub(crate) struct World {
    files: BTreeMap<PathBuf, Tracked>,
    faults: Vec<(u64, Fault)>,
    pub(crate) steps: u64,
    pub(crate) met: u64,
    dead: bool,
    /// The next sync fails.
    sync_fails: bool,
    /// Until which step the disk is full, or read-only.
    full: u64,
    closed: u64,
}

impl World {
    pub(crate) const fn new() -> Self {
        Self {
            files: BTreeMap::new(),
            faults: Vec::new(),
            steps: 0,
            met: 0,
            dead: false,
            sync_fails: false,
            full: 0,
            closed: 0,
        }
    }

    /// Files that are open stay known: all that they hold now is safe.
    pub(crate) fn begin(&mut self, faults: &[(u64, Fault)]) {
        let known = std::mem::take(&mut self.files);
        *self = Self::new();
        self.faults = faults.to_vec();
        for path in known.into_keys() {
            if let Ok(safe) = fs::read(&path) {
                let tracked = Tracked {
                    safe,
                    ..Tracked::default()
                };
                self.files.insert(path, tracked);
            }
        }
    }

    /// A file is opened: what lies there already is safe.
    pub(crate) fn open(&mut self, path: &Path) -> Answer {
        if self.dead {
            return Answer::Dead;
        }
        // Deleted and made anew: what there was does not come back under this name.
        if self.files.get(path).is_some_and(|file| !file.gone) {
            return Answer::Go;
        }
        let safe = fs::read(path).unwrap_or_default();
        let tracked = Tracked {
            safe,
            ..Tracked::default()
        };
        self.files.insert(path.to_owned(), tracked);
        Answer::Go
    }

    /// One step on: what becomes of it.
    fn step(&mut self) -> Answer {
        if self.dead {
            return Answer::Dead;
        }
        self.steps += 1;
        let now = self.steps;
        for (_, fault) in self.faults.iter().filter(|(at, _)| *at == now) {
            self.met += 1;
            match fault {
                Fault::Cut => self.dead = true,
                Fault::Full(more) => self.full = now + more,
                Fault::ReadOnly(more) => self.closed = now + more,
                Fault::Sync => self.sync_fails = true,
            }
        }
        match self {
            _ if self.dead => Answer::Dead,
            _ if now <= self.full => Answer::Full,
            _ if now <= self.closed => Answer::ReadOnly,
            _ => Answer::Go,
        }
    }

    pub(crate) fn write(&mut self, path: &Path, at: usize, bytes: &[u8]) -> Answer {
        let lived = !self.dead;
        let answer = self.step();
        // The write at which the power goes may have come to the disk in part.
        let newly_dead = lived && answer == Answer::Dead;
        if (answer == Answer::Go || newly_dead)
            && let Some(file) = self.files.get_mut(path)
        {
            file.pending.push(Change::Write(at, bytes.to_vec()));
        }
        answer
    }

    pub(crate) fn length(&mut self, path: &Path, length: usize) -> Answer {
        let answer = self.step();
        if answer == Answer::Go
            && let Some(file) = self.files.get_mut(path)
        {
            file.pending.push(Change::Length(length));
        }
        answer
    }

    /// Whether the sync does what it says.
    pub(crate) fn sync(&mut self, path: &Path) -> Answer {
        let answer = self.step();
        let fails = std::mem::take(&mut self.sync_fails) || answer != Answer::Go;
        let Some(file) = self.files.get_mut(path) else {
            return answer;
        };
        if !fails {
            for change in std::mem::take(&mut file.pending) {
                apply(&mut file.safe, &change, &mut |_| true);
            }
            // A file system's own journal takes earlier deletions to the disk with it, as those of
            // ext4 and XFS do; the journal syncs its folder besides.
            let folder = path.parent();
            self.files
                .retain(|other, file| !file.gone || other.parent() != folder);
            return Answer::Go;
        }
        if answer == Answer::Go {
            file.pending.clear();
            return Answer::Dead;
        }
        answer
    }

    pub(crate) fn delete(&mut self, path: &Path) -> Answer {
        let answer = self.step();
        if answer == Answer::Go
            && let Some(file) = self.files.get_mut(path)
        {
            file.gone = true;
        }
        answer
    }

    /// What the files in `folder` hold after a cut; `None` for one that is gone.
    pub(crate) fn after_cut(
        &mut self,
        folder: &Path,
        random: &mut Random,
    ) -> Vec<(PathBuf, Option<Vec<u8>>)> {
        let mut left = Vec::new();
        let here = |path: &Path| path.parent() == Some(folder);
        for (path, file) in self.files.iter_mut().filter(|(path, _)| here(path)) {
            let mut bytes = file.safe.clone();
            // All, none, the first ones, or any sectors in any order of those not safe.
            let way = random.below(4);
            let first = random.below(file.pending.len() as u64 + 1);
            for (number, change) in (0_u64..).zip(&file.pending) {
                let comes = |random: &mut Random| match way {
                    0 => true,
                    1 => false,
                    2 => number < first,
                    _ => random.below(2) == 0,
                };
                apply(&mut bytes, change, &mut |_| comes(random));
            }
            let gone = file.gone && random.below(2) == 0;
            left.push((path.clone(), (!gone).then_some(bytes)));
        }
        left
    }
}

/// Makes those sectors of a change that `comes` lets through.
fn apply(bytes: &mut Vec<u8>, change: &Change, comes: &mut dyn FnMut(usize) -> bool) {
    match change {
        Change::Length(length) => {
            if comes(0) {
                bytes.resize(*length, 0);
            }
        }
        Change::Write(at, new) => {
            let mut done = 0;
            while done < new.len() {
                let from = at + done;
                let until = ((from / SECTOR + 1) * SECTOR - at).min(new.len());
                if comes(from / SECTOR) {
                    let end = at + until;
                    if bytes.len() < end {
                        bytes.resize(end, 0);
                    }
                    bytes[from..end].copy_from_slice(&new[done..until]);
                }
                done = until;
            }
        }
    }
}
