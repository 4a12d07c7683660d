//! What failed, as templates that can be told in another language; in English they give exactly
//! what the error itself says.
//!
//! Refuses: the words of other programs; those stay as they were reported.
use crate::error::KioskError;
use hardware::trouble::{CHANGES_MAX, HELD_MS};
use hardware::{DeviceFault, Trouble};
use journal::wire::WireFault;
use journal::{BackupError, JournalError, RecordError, RowFault};
use plan::{Piece, Words, words};
use share::{CODE_LONGEST, CODE_SHORTEST, CodeError, Plain};
use std::io;
use std::path::Path;

/// The sentence, or the sentences in which it is already told.
pub(super) fn told(error: &KioskError) -> Words {
    match error {
        KioskError::Told(words) => words.clone(),
        KioskError::File { path, why } => {
            let right = if why.kind() == io::ErrorKind::StorageFull {
                words!("free some space and try again")
            } else {
                words!("check that it exists and that you may use it")
            };
            words!("{0}: {1}; {2}", at(path), system(why), right)
        }
        KioskError::NoHome => {
            words!("no home folder is set; choose a data folder with --data DIR")
        }
        KioskError::Journal(error) => journal(error),
        KioskError::Record(error) => record(error),
        KioskError::Backup(error) => backup(error),
        KioskError::Code(error) => code(error),
        KioskError::Picture(why) => words!("the picture could not be drawn: {0}", why),
        KioskError::Usage(_)
        | KioskError::Faults(_)
        | KioskError::Refused(_)
        | KioskError::Needed(_) => words!("{0}", error.to_string()),
    }
}

fn journal(error: &JournalError) -> Words {
    match error {
        JournalError::Missing { path } => words!(
            "there is no journal at {0}; choose the data folder that has one",
            at(path)
        ),
        JournalError::NoFolder { path } => words!(
            "{0} cannot be opened: its folder is missing or closed to this user; create or open it, or choose another data folder",
            at(path)
        ),
        JournalError::ReadOnly { path } => words!(
            "{0} cannot be written; give this user write permission on the file and its folder, or choose another data folder",
            at(path)
        ),
        JournalError::Full { path } => words!(
            "{0} cannot grow: the disk is full; free some space and try again",
            at(path)
        ),
        JournalError::Busy { path, waited_ms } => words!(
            "{0} is kept busy by another program for over {1} ms; close that program and try again",
            at(path),
            *waited_ms
        ),
        JournalError::NotADatabase { path } => words!(
            "{0} is not a database; move it away, and put back a copy of the journal",
            at(path)
        ),
        JournalError::NotOurs { path } => words!(
            "{0} is a database of another program; move it away, or choose another data folder",
            at(path)
        ),
        JournalError::Empty { path } => words!(
            "{0} is empty: no journal was begun in it, or all of it was lost; put back a copy if there was one",
            at(path)
        ),
        JournalError::Newer { path, found, known } => words!(
            "{0} was written by a newer version of this program (layout {1}, this one knows up to {2}); install the newer version",
            at(path),
            *found,
            *known
        ),
        JournalError::NotDurable {
            path,
            pragma,
            found,
            wanted,
        } => words!(
            "{0} cannot be kept safe from a power cut: {1} is {2}, not {3}; put the data folder on a local disk",
            at(path),
            *pragma,
            found,
            *wanted
        ),
        JournalError::Gone { .. }
        | JournalError::Broken { .. }
        | JournalError::Short { .. }
        | JournalError::Unguarded { .. }
        | JournalError::Damaged { .. }
        | JournalError::Sqlite { .. } => damaged(error),
        JournalError::Lost { .. }
        | JournalError::Foreign { .. }
        | JournalError::Log { .. }
        | JournalError::Mark { .. } => known_better(error),
    }
}

/// A journal that cannot be trusted any more.
fn damaged(error: &JournalError) -> Words {
    match error {
        JournalError::Gone { path } => words!(
            "{0} was moved or deleted while in use; put it back and start the program again",
            at(path)
        ),
        JournalError::Broken { path, seq, fault } => words!(
            "{0} cannot be trusted from event {1} on: {2}; {3}",
            at(path),
            *seq,
            row(fault),
            advice(fault)
        ),
        JournalError::Short { path, asked, last } => words!(
            "{0} ends at event {1}, before event {2}; events were lost: put back a later copy",
            at(path),
            *last,
            *asked
        ),
        JournalError::Unguarded { path, guard } => words!(
            "{0} has lost its guard {1}, so somebody has worked on it by hand; put back a copy",
            at(path),
            *guard
        ),
        JournalError::Damaged { path, detail } => {
            words!("{0} is damaged ({1}); put back a copy", at(path), detail)
        }
        JournalError::Sqlite { path, source } => words!(
            "{0} cannot be used ({1}); check the disk and try again",
            at(path),
            source.to_string()
        ),
        JournalError::Missing { .. }
        | JournalError::NoFolder { .. }
        | JournalError::ReadOnly { .. }
        | JournalError::Full { .. }
        | JournalError::Busy { .. }
        | JournalError::NotADatabase { .. }
        | JournalError::NotOurs { .. }
        | JournalError::Empty { .. }
        | JournalError::Newer { .. }
        | JournalError::Lost { .. }
        | JournalError::Foreign { .. }
        | JournalError::Log { .. }
        | JournalError::Mark { .. }
        | JournalError::NotDurable { .. } => words!("{0}", error.to_string()),
    }
}

/// A journal that is not what mark, record or log know of it.
#[allow(clippy::wildcard_enum_match_arm, reason = "all others are told alike")]
fn known_better(error: &JournalError) -> Words {
    match error {
        JournalError::Lost {
            path,
            last,
            known,
            witness,
        } => words!(
            "{0} ends at event {1}, but {2} knows it as far as event {3}; nothing was changed: run \"pinladder journal mend\", or put back a copy",
            at(path),
            *last,
            witness,
            *known
        ),
        JournalError::Foreign { path, seq, witness } => words!(
            "{0} is another journal than {1} knows: event {2} is not the one that was there; nothing was changed: run \"pinladder journal mend\", or put back a copy",
            at(path),
            witness,
            *seq
        ),
        JournalError::Log { path, at: byte } => words!(
            "{0} is damaged at byte {1}, in front of events that were safe; nothing was changed: run \"pinladder journal mend\", or put back a copy",
            at(path),
            *byte
        ),
        JournalError::Mark { path, source } => words!(
            "{0} cannot be written ({1}); check the disk",
            at(path),
            system(source)
        ),
        other => words!("{0}", other.to_string()),
    }
}

fn row(fault: &RowFault) -> Words {
    match fault {
        RowFault::Missing { first, last } => {
            words!("events {0} to {1} are missing before it", *first, *last)
        }
        RowFault::Altered => {
            words!("its content or its place was altered: the hash does not match")
        }
        RowFault::Unreadable { column } => words!("its {0} cannot be read", *column),
        RowFault::Wire(WireFault::Version { found, known }) => words!(
            "it was written by a newer version of this program (wire version {0}, this one reads up to {1})",
            *found,
            *known
        ),
        RowFault::Wire(fault) => words!("{0}", fault.to_string()),
    }
}

fn advice(fault: &RowFault) -> Words {
    match fault {
        RowFault::Missing { .. } | RowFault::Altered | RowFault::Unreadable { .. } => {
            words!("move the file away, and put back a copy")
        }
        RowFault::Wire(WireFault::Version { .. }) => words!("install the newer version"),
        RowFault::Wire(_) => {
            words!("the program that wrote it is at fault: install the version that did")
        }
    }
}

fn record(error: &RecordError) -> Words {
    match error {
        RecordError::Journal(error) => journal(error),
        RecordError::NotOurs { path } => words!(
            "{0} is a database of another program; move it away",
            at(path)
        ),
        RecordError::OtherLayout { path } => words!(
            "{0} was made by another version of this program; start the kiosk, and it is made again",
            at(path)
        ),
        RecordError::Folder { path, source } => words!(
            "{0} cannot be written ({1}); check the folder's permissions",
            at(path),
            system(source)
        ),
        RecordError::File { path, source } => {
            let right = error.advice().unwrap_or_default().to_owned();
            words!(
                "{0} cannot be used ({1}); {2}",
                at(path),
                source.to_string(),
                known(&RECORD_ADVICE, right)
            )
        }
    }
}

/// What to do about a record.
const RECORD_ADVICE: [Words; 4] = [
    words!("free some space and try again"),
    words!("give this user write permission on the file and its folder"),
    words!("close the program that keeps it busy and try again"),
    words!("delete it, and it is made again from the journal"),
];

fn backup(error: &BackupError) -> Words {
    match error {
        BackupError::Journal(error) => journal(error),
        BackupError::Place { path, source } => words!(
            "{0} cannot be used ({1}); check that the place is there, open to this user and not full",
            at(path),
            system(source)
        ),
        BackupError::SamePlace { path } => words!(
            "{0} is the data folder itself; choose a place on another disk",
            at(path)
        ),
        BackupError::Torn { path, one, other } => words!(
            "{0} cannot be mended: {1} and {2} tell different events; choose one of them and put it back",
            at(path),
            one,
            other
        ),
        BackupError::InUse { path } => words!(
            "{0} is in use; close the kiosk first, or restore on its desk",
            at(path)
        ),
    }
}

fn code(error: &CodeError) -> Words {
    match error {
        CodeError::Plain(why) => words!(
            "a code that is soon guessed: {0}; choose another, three plain words for example",
            plain(*why)
        ),
        CodeError::Hash(why) => words!("the code cannot be kept safely ({0}); try again", why),
        CodeError::File { path, source } => words!(
            "{0} cannot be used ({1}); check the data folder's permissions",
            at(path),
            system(source)
        ),
        CodeError::Length(length) => words!(
            "a code of {0} characters; choose from {1} to {2}",
            *length,
            CODE_SHORTEST,
            CODE_LONGEST
        ),
    }
}

fn plain(why: Plain) -> Words {
    match why {
        Plain::FewSigns => words!("fewer than four different signs"),
        Plain::Repeats => words!("the same piece over and over"),
        Plain::Row => words!("a row of letters, digits or keys"),
        Plain::Date => words!("a date"),
        Plain::Common => words!("a word that everybody tries"),
    }
}

/// The devices that are not named by their owner.
const DEVICES: [Words; 6] = [
    words!("buzzer"),
    words!("lamp"),
    words!("lights"),
    words!("backlight"),
    words!("switches"),
    words!("signs"),
];

/// What is wrong with which device.
pub(super) fn device(fault: &DeviceFault) -> Words {
    let what = match &fault.what {
        Trouble::NotThere(why) => words!(
            "{0}; check hardware.toml and the wiring, then start again",
            why
        ),
        Trouble::Unread(why) => words!("cannot be read ({0}); check its wiring", why),
        Trouble::Floods => words!(
            "changed more than {0} times within a second and is not listened to; look for a loose wire",
            CHANGES_MAX
        ),
        Trouble::Held => words!(
            "has been down for over {0} s; see what lies on it",
            HELD_MS / 1_000
        ),
        Trouble::Disobeys(why) => {
            words!("does not do what it is told ({0}); check its wiring", why)
        }
        Trouble::NoThread(why) => words!("the system gives no thread ({0})", why),
        Trouble::File(why) => words!("{0}", why),
    };
    let name = known(&DEVICES, fault.device.clone());
    words!("{0}: {1}", name, what)
}

fn at(path: &Path) -> String {
    path.display().to_string()
}

/// What the system reports most, as it says it.
const REPORTS: [Words; 8] = [
    words!("No such file or directory (os error 2)"),
    words!("Input/output error (os error 5)"),
    words!("Permission denied (os error 13)"),
    words!("File exists (os error 17)"),
    words!("Not a directory (os error 20)"),
    words!("Is a directory (os error 21)"),
    words!("No space left on device (os error 28)"),
    words!("Read-only file system (os error 30)"),
];

/// What the system reported.
pub(crate) fn system(why: &io::Error) -> Piece {
    known(&REPORTS, why.to_string())
}

/// A text as one of the words that can be told otherwise, where it is one.
fn known(words: &[Words], text: String) -> Piece {
    let known = words.iter().find(|words| words.to_string() == text);
    known.map_or(Piece::Plain(text), Piece::from)
}
