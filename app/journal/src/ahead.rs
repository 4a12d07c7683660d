//! Reads the write-ahead log as it lies on the disk, before SQLite does: SQLite takes the first
//! frame that does not fit for the end, whatever stands behind it.
//!
//! SQLite file format, section 4: a header with two salts, then frames, each a page with a sum
//! that runs on from the frame before. A power cut can tear only what was not synced yet, which is
//! one transaction; when frames of two stand behind the bad one, something safe was damaged.
use std::collections::BTreeSet;
use std::fs::File;
use std::io::{self, BufReader, Read};
use std::path::{Path, PathBuf};

/// Bytes of the log's header, and of each frame's.
const HEADER: usize = 32;
const FRAME: usize = 24;
/// The log's first word, its lowest bit apart, and its version.
const MAGIC: u32 = 0x377f_0682;
const VERSION: u32 = 3_007_000;

/// What tells the frames of one log from those of an earlier one in the same file.
pub(crate) type Salts = [u8; 8];

/// The log beside the journal at `path`.
pub(crate) fn place(path: &Path) -> PathBuf {
    let mut name = path.as_os_str().to_owned();
    name.push("-wal");
    name.into()
}

/// Where the log is damaged in front of something that was safe, in bytes; `None` when it is
/// sound, torn by a power cut as far as can be told, or not there.
///
/// # Errors
/// The system's, when it cannot be read.
pub(crate) fn damage(path: &Path) -> io::Result<Option<u64>> {
    let file = match File::open(place(path)) {
        Ok(file) => file,
        Err(error) if error.kind() == io::ErrorKind::NotFound => return Ok(None),
        Err(error) => return Err(error),
    };
    let mut source = BufReader::new(file);
    let mut start = Vec::new();
    source.by_ref().take(32).read_to_end(&mut start)?;
    let Some(log) = Log::of(&start) else {
        // Nothing was ever synced behind a header that was not.
        let mut rest = Vec::new();
        source.take(4_096).read_to_end(&mut rest)?;
        return Ok(rest.iter().any(|byte| *byte != 0).then_some(0));
    };
    log.walk(&mut source)
}

/// A sound header.
struct Log {
    big: bool,
    page: usize,
    salts: Salts,
    sum: [u32; 2],
}

impl Log {
    fn of(start: &[u8]) -> Option<Self> {
        let start: &[u8; HEADER] = start.try_into().ok()?;
        let magic = word(start, 0, true);
        let big = magic & 1 == 1;
        let page = usize::try_from(word(start, 8, true)).ok()?;
        let sum = run_on([0, 0], &start[..24], big);
        let fits = magic & !1 == MAGIC
            && word(start, 4, true) == VERSION
            && page.is_power_of_two()
            && (512..=65_536).contains(&page)
            && sum == [word(start, 24, true), word(start, 28, true)];
        let salts = start[16..24].try_into().ok()?;
        fits.then_some(Self {
            big,
            page,
            salts,
            sum,
        })
    }

    fn walk(&self, source: &mut impl Read) -> io::Result<Option<u64>> {
        let mut frame = vec![0; FRAME + self.page];
        let mut sum = self.sum;
        let (mut at, mut bad) = (HEADER as u64, None);
        let mut pages = BTreeSet::new();
        let mut committed = false;
        while filled(source, &mut frame)? {
            let ours = frame[8..16] == self.salts;
            if bad.is_none() {
                sum = run_on(sum, &frame[..8], self.big);
                sum = run_on(sum, &frame[FRAME..], self.big);
                let fits = ours && sum == [word(&frame, 16, true), word(&frame, 20, true)];
                if !fits {
                    bad = Some(at);
                }
            }
            let ends = word(&frame, 4, true) != 0;
            if ours {
                let twice = !pages.insert(word(&frame, 0, true));
                if bad.is_some() && (twice || committed) {
                    return Ok(bad);
                }
                if bad.is_some() {
                    committed |= ends;
                } else if ends {
                    pages.clear();
                }
            }
            at += frame.len() as u64;
        }
        Ok(None)
    }
}

/// Hands each whole page of the log that bears `salts` to `visit`, with its number, in order,
/// whatever its sum says: whoever reads it must prove it.
///
/// # Errors
/// The system's, and whatever `visit` returns.
pub(crate) fn pages(
    path: &Path,
    page: usize,
    salts: Salts,
    mut visit: impl FnMut(u32, &[u8]) -> io::Result<()>,
) -> io::Result<()> {
    each_frame(path, page, |frame| {
        if frame[8..16] == salts {
            visit(word(frame, 0, true), &frame[FRAME..])?;
        }
        Ok(())
    })
}

/// All salts that frames of the log bear, each once.
pub(crate) fn salts(path: &Path, page: usize) -> io::Result<BTreeSet<Salts>> {
    let mut found = BTreeSet::new();
    each_frame(path, page, |frame| {
        if let Ok(salts) = frame[8..16].try_into() {
            found.insert(salts);
        }
        Ok(())
    })?;
    Ok(found)
}

fn each_frame(
    path: &Path,
    page: usize,
    mut visit: impl FnMut(&[u8]) -> io::Result<()>,
) -> io::Result<()> {
    let file = match File::open(place(path)) {
        Ok(file) => file,
        Err(error) if error.kind() == io::ErrorKind::NotFound => return Ok(()),
        Err(error) => return Err(error),
    };
    let mut source = BufReader::new(file);
    let mut header = [0; HEADER];
    let mut frame = vec![0; FRAME + page];
    if filled(&mut source, &mut header)? {
        while filled(&mut source, &mut frame)? {
            visit(&frame)?;
        }
    }
    Ok(())
}

/// Fills `room`, or says that the end came first.
fn filled(source: &mut impl Read, room: &mut [u8]) -> io::Result<bool> {
    match source.read_exact(room) {
        Ok(()) => Ok(true),
        Err(error) if error.kind() == io::ErrorKind::UnexpectedEof => Ok(false),
        Err(error) => Err(error),
    }
}

fn word(bytes: &[u8], at: usize, big: bool) -> u32 {
    let word = bytes[at..at + 4].try_into().expect("four bytes");
    if big {
        u32::from_be_bytes(word)
    } else {
        u32::from_le_bytes(word)
    }
}

/// The log's running sum over `bytes`, whose length is a multiple of eight.
fn run_on(mut sum: [u32; 2], bytes: &[u8], big: bool) -> [u32; 2] {
    for two in bytes.chunks_exact(8) {
        sum[0] = sum[0].wrapping_add(word(two, 0, big)).wrapping_add(sum[1]);
        sum[1] = sum[1].wrapping_add(word(two, 4, big)).wrapping_add(sum[0]);
    }
    sum
}
