//! The mark: a small file beside the journal that says how far the journal had come.
//!
//! It is a lower bound from a place of its own: each append writes it without waiting for the disk,
//! so that it outlasts the process; checkpoints and idle times sync it, so that it outlasts a power
//! cut. Two slots in two pages of the disk are written in turn, so that a torn write leaves the
//! other one.
use crate::chain::Hash;
use crate::open::keep_name;
use sha2::{Digest as _, Sha256};
use std::fs::{self, File, OpenOptions};
use std::io;
use std::os::unix::fs::FileExt as _;
use std::path::{Path, PathBuf};

/// The mark's name in the data folder.
pub const MARK_FILE: &str = "journal.mark";

/// Where the slots begin.
const SLOTS: [u64; 2] = [0, 4_096];

/// That a journal holds event `upto`, and that event's hash.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(crate) struct Claim {
    pub(crate) upto: u64,
    pub(crate) seal: Hash,
}

impl Claim {
    /// One line of text, always as long, with a sum of its own.
    pub(crate) fn line(&self) -> String {
        let text = format!(
            "pinladder mark 1 upto {:020} seal {}",
            self.upto,
            hex(&self.seal)
        );
        let sum = sum(&text);
        format!("{text} sum {sum}\n")
    }

    /// Reads a line of [`Claim::line`]; `None` for anything else, by a single bit.
    pub(crate) fn read(line: &str) -> Option<Self> {
        let (text, end) = line.strip_suffix('\n')?.rsplit_once(" sum ")?;
        if sum(text) != end {
            return None;
        }
        let rest = text.strip_prefix("pinladder mark 1 upto ")?;
        let (upto, seal) = rest.split_once(" seal ")?;
        Some(Self {
            upto: upto.parse().ok()?,
            seal: unhex(seal)?,
        })
    }
}

/// A hash in hexadecimal.
pub(crate) fn hex(hash: &[u8]) -> String {
    hash.iter().map(|byte| format!("{byte:02x}")).collect()
}

fn unhex(text: &str) -> Option<Hash> {
    let mut hash = [0; 32];
    if text.len() != 64 || !text.is_ascii() {
        return None;
    }
    for (at, byte) in hash.iter_mut().enumerate() {
        *byte = u8::from_str_radix(&text[at * 2..at * 2 + 2], 16).ok()?;
    }
    Some(hash)
}

fn sum(text: &str) -> String {
    hex(&Sha256::digest(text)[..8])
}

/// What the mark beside the journal at `path` says.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Said {
    /// There is none.
    Nothing,
    /// There is one, and no slot of it can be read.
    Unreadable,
    /// The later one of its sound slots.
    Claim(Claim),
}

/// Where the mark of the journal at `path` lies.
pub(crate) fn place(path: &Path) -> PathBuf {
    path.with_file_name(MARK_FILE)
}

/// Reads the mark of the journal at `path`.
pub(crate) fn said(path: &Path) -> Said {
    let Ok(bytes) = fs::read(place(path)) else {
        return match place(path).exists() {
            true => Said::Unreadable,
            false => Said::Nothing,
        };
    };
    let latest = slots(&bytes).into_iter().flatten().max();
    latest.map_or(Said::Unreadable, Said::Claim)
}

fn slots(bytes: &[u8]) -> [Option<Claim>; 2] {
    SLOTS.map(|at| {
        let rest = bytes.get(usize::try_from(at).ok()?..)?;
        let end = rest.iter().position(|byte| *byte == b'\n')?;
        Claim::read(std::str::from_utf8(&rest[..=end]).ok()?)
    })
}

/// The mark, open for writing.
#[derive(Debug)]
pub(crate) struct Mark {
    file: File,
    /// The slot that is written next.
    next: usize,
    claim: Claim,
    synced: bool,
}

impl Mark {
    /// Opens the mark beside the journal at `path`, and makes it say `claim` at least; a missing
    /// one is begun, one that says anything that this journal does not hold is written over.
    ///
    /// # Errors
    /// The system's; the journal is safe all the same.
    pub(crate) fn open(path: &Path, claim: Claim) -> io::Result<Self> {
        let place = place(path);
        let new = !place.exists();
        let mut options = OpenOptions::new();
        options.read(true).write(true).create(true).truncate(false);
        let file = options.open(&place)?;
        let found = slots(&fs::read(&place)?);
        let latest = found.into_iter().flatten().max();
        let mut mark = Self {
            file,
            next: usize::from(latest.is_some() && latest == found[0]),
            claim,
            synced: false,
        };
        if latest == Some(claim) {
            mark.synced = found.iter().flatten().all(|said| said.upto <= claim.upto);
        }
        // What another journal left must not outshine this one's.
        if found
            .iter()
            .flatten()
            .any(|said| said.upto >= claim.upto && *said != claim)
        {
            mark.file.set_len(0)?;
            mark.next = 0;
        }
        if latest != Some(claim) {
            mark.note(claim)?;
            mark.sync()?;
        }
        if new {
            keep_name(&place);
        }
        Ok(mark)
    }

    /// Notes how far the journal has come, without waiting for the disk.
    pub(crate) fn note(&mut self, claim: Claim) -> io::Result<()> {
        self.synced = false;
        self.claim = claim;
        self.file
            .write_all_at(claim.line().as_bytes(), SLOTS[self.next])?;
        self.next = 1 - self.next;
        Ok(())
    }

    /// Waits until the disk has it.
    pub(crate) fn sync(&mut self) -> io::Result<()> {
        if !self.synced {
            self.file.sync_data()?;
            self.synced = true;
        }
        Ok(())
    }
}

/// Claims that were overruled by a deliberate act, a line each.
pub(crate) mod rulings {
    use super::Claim;
    use crate::open::keep_name;
    use std::collections::BTreeSet;
    use std::fs;
    use std::io::{self, Write as _};
    use std::path::Path;

    /// Their name in the data folder.
    const FILE: &str = "journal.rulings";

    /// All that stand; a line that cannot be read does not.
    pub(crate) fn read(path: &Path) -> BTreeSet<Claim> {
        let text = fs::read_to_string(path.with_file_name(FILE)).unwrap_or_default();
        text.split_inclusive('\n').filter_map(Claim::read).collect()
    }

    /// Adds `claims`, whole and synced, or nothing.
    pub(crate) fn add(path: &Path, claims: &BTreeSet<Claim>) -> io::Result<()> {
        let mut all = read(path);
        let before = all.len();
        all.extend(claims);
        if all.len() == before {
            return Ok(());
        }
        let place = path.with_file_name(FILE);
        let new = path.with_file_name("journal.rulings.new");
        let mut file = fs::File::create(&new)?;
        for claim in &all {
            file.write_all(claim.line().as_bytes())?;
        }
        file.sync_all()?;
        fs::rename(&new, &place)?;
        keep_name(&place);
        Ok(())
    }
}
