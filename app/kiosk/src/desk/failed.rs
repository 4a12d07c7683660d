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
use text::keys::checked as k;

/// The sentence, or the sentences in which it is already told.
pub(crate) fn told(error: &KioskError) -> Words {
    match error {
        KioskError::Told(words) => words.clone(),
        KioskError::File { path, why } => {
            let right = if why.kind() == io::ErrorKind::StorageFull {
                words!(k::FREE_SOME_SPACE_AND_TRY)
            } else {
                words!(k::CHECK_THAT_IT_EXISTS_AND)
            };
            words!(k::PLACE_WHAT_AND_REMEDY, at(path), system(why), right)
        }
        KioskError::NoHome => {
            words!(k::NO_HOME_FOLDER_IS_SET)
        }
        KioskError::Journal(error) => journal(error),
        KioskError::Record(error) => record(error),
        KioskError::Backup(error) => backup(error),
        KioskError::Code(error) => code(error),
        KioskError::Picture(why) => words!(k::THE_PICTURE_COULD_NOT_BE, why),
        KioskError::Usage(_)
        | KioskError::Faults(_)
        | KioskError::Refused(_)
        | KioskError::Needed(_) => words!(k::AS_SAID, error.to_string()),
    }
}

fn journal(error: &JournalError) -> Words {
    match error {
        JournalError::Missing { path } => words!(k::THERE_IS_NO_JOURNAL_AT, at(path)),
        JournalError::NoFolder { path } => words!(k::CANNOT_BE_OPENED_ITS_FOLDER, at(path)),
        JournalError::ReadOnly { path } => words!(k::CANNOT_BE_WRITTEN_GIVE_THIS, at(path)),
        JournalError::Full { path } => words!(k::CANNOT_GROW_THE_DISK_IS, at(path)),
        JournalError::Busy { path, waited_ms } => {
            words!(k::IS_KEPT_BUSY_BY_ANOTHER, at(path), *waited_ms)
        }
        JournalError::NotADatabase { path } => words!(k::IS_NOT_A_DATABASE_MOVE, at(path)),
        JournalError::NotOurs { path } => words!(k::IS_A_DATABASE_OF_ANOTHER, at(path)),
        JournalError::Empty { path } => words!(k::IS_EMPTY_NO_JOURNAL_WAS, at(path)),
        JournalError::Newer { path, found, known } => {
            words!(k::WAS_WRITTEN_BY_A_NEWER, at(path), *found, *known)
        }
        JournalError::NotDurable {
            path,
            pragma,
            found,
            wanted,
        } => words!(
            k::CANNOT_BE_KEPT_SAFE_FROM,
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
        JournalError::Gone { path } => words!(k::WAS_MOVED_OR_DELETED_WHILE, at(path)),
        JournalError::Broken { path, seq, fault } => words!(
            k::CANNOT_BE_TRUSTED_FROM_EVENT,
            at(path),
            *seq,
            row(fault),
            advice(fault)
        ),
        JournalError::Short { path, asked, last } => {
            words!(k::ENDS_AT_EVENT_BEFORE_EVENT, at(path), *last, *asked)
        }
        JournalError::Unguarded { path, guard } => {
            words!(k::HAS_LOST_ITS_GUARD_SO, at(path), *guard)
        }
        JournalError::Damaged { path, detail } => {
            words!(k::IS_DAMAGED_PUT_BACK_A, at(path), detail)
        }
        JournalError::Sqlite { path, source } => {
            words!(k::CANNOT_BE_USED_CHECK_THE, at(path), source.to_string())
        }
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
        | JournalError::NotDurable { .. } => words!(k::AS_SAID, error.to_string()),
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
        } => words!(k::ENDS_AT_EVENT_BUT_KNOWS, at(path), *last, witness, *known),
        JournalError::Foreign { path, seq, witness } => {
            words!(k::IS_ANOTHER_JOURNAL_THAN_KNOWS, at(path), witness, *seq)
        }
        JournalError::Log { path, at: byte } => words!(k::IS_DAMAGED_AT_BYTE_IN, at(path), *byte),
        JournalError::Mark { path, source } => {
            words!(k::CANNOT_BE_WRITTEN_CHECK_THE, at(path), system(source))
        }
        other => words!(k::AS_SAID, other.to_string()),
    }
}

fn row(fault: &RowFault) -> Words {
    match fault {
        RowFault::Missing { first, last } => {
            words!(k::EVENTS_TO_ARE_MISSING_BEFORE, *first, *last)
        }
        RowFault::Altered => {
            words!(k::ITS_CONTENT_OR_ITS_PLACE)
        }
        RowFault::Unreadable { column } => words!(k::ITS_CANNOT_BE_READ, *column),
        RowFault::Wire(WireFault::Version { found, known }) => {
            words!(k::IT_WAS_WRITTEN_BY_A, *found, *known)
        }
        RowFault::Wire(fault) => words!(k::AS_SAID, fault.to_string()),
    }
}

fn advice(fault: &RowFault) -> Words {
    match fault {
        RowFault::Missing { .. } | RowFault::Altered | RowFault::Unreadable { .. } => {
            words!(k::MOVE_THE_FILE_AWAY_AND)
        }
        RowFault::Wire(WireFault::Version { .. }) => words!(k::INSTALL_THE_NEWER_VERSION),
        RowFault::Wire(_) => {
            words!(k::THE_PROGRAM_THAT_WROTE_IT)
        }
    }
}

fn record(error: &RecordError) -> Words {
    match error {
        RecordError::Journal(error) => journal(error),
        RecordError::NotOurs { path } => words!(k::IS_A_DATABASE_OF_ANOTHER_PROGRAM, at(path)),
        RecordError::OtherLayout { path } => words!(k::WAS_MADE_BY_ANOTHER_VERSION, at(path)),
        RecordError::Folder { path, source } => words!(
            k::CANNOT_BE_WRITTEN_CHECK_THE_FOLDER,
            at(path),
            system(source)
        ),
        RecordError::File { path, source } => {
            let right = error.advice().unwrap_or_default().to_owned();
            words!(
                k::CANNOT_BE_USED,
                at(path),
                source.to_string(),
                known(&RECORD_ADVICE, right)
            )
        }
    }
}

/// What to do about a record.
const RECORD_ADVICE: [Words; 4] = [
    words!(k::FREE_SOME_SPACE_AND_TRY),
    words!(k::GIVE_THIS_USER_WRITE_PERMISSION),
    words!(k::CLOSE_THE_PROGRAM_THAT_KEEPS),
    words!(k::DELETE_IT_AND_IT_IS),
];

fn backup(error: &BackupError) -> Words {
    match error {
        BackupError::Journal(error) => journal(error),
        BackupError::Place { path, source } => {
            words!(k::CANNOT_BE_USED_CHECK_THAT, at(path), system(source))
        }
        BackupError::SamePlace { path } => words!(k::IS_THE_DATA_FOLDER_ITSELF, at(path)),
        BackupError::Torn { path, one, other } => {
            words!(k::CANNOT_BE_MENDED_AND_TELL, at(path), one, other)
        }
        BackupError::InUse { path } => words!(k::IS_IN_USE_CLOSE_THE, at(path)),
    }
}

fn code(error: &CodeError) -> Words {
    match error {
        CodeError::Plain(why) => words!(k::A_CODE_THAT_IS_SOON, plain(*why)),
        CodeError::Hash(why) => words!(k::THE_CODE_CANNOT_BE_KEPT, why),
        CodeError::File { path, source } => {
            words!(k::CANNOT_BE_USED_CHECK_THE_DATA, at(path), system(source))
        }
        CodeError::Length(length) => words!(
            k::A_CODE_OF_CHARACTERS_CHOOSE,
            *length,
            CODE_SHORTEST,
            CODE_LONGEST
        ),
    }
}

fn plain(why: Plain) -> Words {
    match why {
        Plain::FewSigns => words!(k::FEWER_THAN_FOUR_DIFFERENT_SIGNS),
        Plain::Repeats => words!(k::THE_SAME_PIECE_OVER_AND),
        Plain::Row => words!(k::A_ROW_OF_LETTERS_DIGITS),
        Plain::Date => words!(k::A_DATE),
        Plain::Common => words!(k::A_WORD_THAT_EVERYBODY_TRIES),
    }
}

/// The devices that are not named by their owner.
const DEVICES: [Words; 6] = [
    words!(k::BUZZER),
    words!(k::LAMP),
    words!(k::LIGHTS),
    words!(k::BACKLIGHT),
    words!(k::SWITCHES),
    words!(k::SIGNS),
];

/// What is wrong with which device.
pub(super) fn device(fault: &DeviceFault) -> Words {
    let what = match &fault.what {
        Trouble::NotThere(why) => words!(k::CHECK_HARDWARE_TOML_AND_THE, why),
        Trouble::Unread(why) => words!(k::CANNOT_BE_READ_CHECK_ITS, why),
        Trouble::Floods => words!(k::CHANGED_MORE_THAN_TIMES_WITHIN, CHANGES_MAX),
        Trouble::Held => words!(k::HAS_BEEN_DOWN_FOR_OVER, HELD_MS / 1_000),
        Trouble::Disobeys(why) => {
            words!(k::DOES_NOT_DO_WHAT_IT, why)
        }
        Trouble::NoThread(why) => words!(k::THE_SYSTEM_GIVES_NO_THREAD, why),
        Trouble::File(why) => words!(k::AS_SAID, why),
    };
    let name = known(&DEVICES, fault.device.clone());
    words!(k::PLACE_AND_WHAT, name, what)
}

fn at(path: &Path) -> String {
    path.display().to_string()
}

/// What the system reports most, as it says it.
const REPORTS: [Words; 8] = [
    words!(k::NO_SUCH_FILE_OR_DIRECTORY),
    words!(k::INPUT_OUTPUT_ERROR_OS_ERROR),
    words!(k::PERMISSION_DENIED_OS_ERROR_13),
    words!(k::FILE_EXISTS_OS_ERROR_17),
    words!(k::NOT_A_DIRECTORY_OS_ERROR),
    words!(k::IS_A_DIRECTORY_OS_ERROR),
    words!(k::NO_SPACE_LEFT_ON_DEVICE),
    words!(k::READ_ONLY_FILE_SYSTEM_OS),
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
