//! What checkers and the kiosk tell, in every language: in English an error is told as it says
//! itself, and what was read never fills a gap.
use domain::Refusal;
use hardware::Trouble;
use journal::{BackupError, JournalError, RecordError, RowFault};
use kiosk::clock::BenchClock;
use kiosk::desk::{device_words, faults_words, words};
use kiosk::{Folder, Kiosk, KioskError};
use plan::{Source, words};
use std::fs;
use std::io;
use std::path::{Path, PathBuf};
use text::keys::checked as k;
use view::Language;

fn at() -> PathBuf {
    PathBuf::from("/gym/journal.sqlite")
}

fn journal_errors() -> Vec<JournalError> {
    let broken = |fault| JournalError::Broken {
        path: at(),
        seq: 7,
        fault,
    };
    vec![
        JournalError::Missing { path: at() },
        JournalError::NoFolder { path: at() },
        JournalError::ReadOnly { path: at() },
        JournalError::Full { path: at() },
        JournalError::Busy {
            path: at(),
            waited_ms: 5_000,
        },
        JournalError::NotADatabase { path: at() },
        JournalError::NotOurs { path: at() },
        JournalError::Empty { path: at() },
        JournalError::Newer {
            path: at(),
            found: 9,
            known: 2,
        },
        JournalError::NotDurable {
            path: at(),
            pragma: "synchronous",
            found: "1".to_owned(),
            wanted: "2",
        },
        JournalError::Gone { path: at() },
        broken(RowFault::Altered),
        broken(RowFault::Missing { first: 3, last: 6 }),
        broken(RowFault::Unreadable { column: "time" }),
        JournalError::Short {
            path: at(),
            asked: 9,
            last: 4,
        },
        JournalError::Lost {
            path: at(),
            last: 4,
            known: 9,
            witness: journal::MARK_FILE.to_owned(),
        },
        JournalError::Foreign {
            path: at(),
            seq: 4,
            witness: journal::RECORD_FILE.to_owned(),
        },
        JournalError::Log { path: at(), at: 32 },
        JournalError::Mark {
            path: at(),
            source: io::Error::from_raw_os_error(28),
        },
        JournalError::Unguarded {
            path: at(),
            guard: "no_update",
        },
        JournalError::Damaged {
            path: at(),
            detail: "page 3".to_owned(),
        },
    ]
}

/// What a record that is a folder is told as.
fn unreadable_record() -> RecordError {
    let folder = tempfile::tempdir().expect("a folder");
    let record = folder.path().join(journal::RECORD_FILE);
    fs::create_dir(&record).expect("a folder in its place");
    let error = journal::RecordReader::open(&record).expect_err("no record");
    assert!(error.advice().is_some(), "{error}");
    error
}

fn errors() -> Vec<KioskError> {
    let missing = || io::Error::from_raw_os_error(2);
    let mut errors: Vec<KioskError> = journal_errors().into_iter().map(Into::into).collect();
    errors.extend([
        KioskError::file(at())(io::Error::from_raw_os_error(28)),
        KioskError::file(at())(missing()),
        KioskError::NoHome,
        RecordError::NotOurs { path: at() }.into(),
        RecordError::OtherLayout { path: at() }.into(),
        RecordError::Folder {
            path: at(),
            source: missing(),
        }
        .into(),
        BackupError::Place {
            path: at(),
            source: missing(),
        }
        .into(),
        BackupError::SamePlace { path: at() }.into(),
        BackupError::InUse { path: at() }.into(),
        BackupError::Torn {
            path: at(),
            one: "pinladder-2026-12-01.sqlite".to_owned(),
            other: "journal.sqlite".to_owned(),
        }
        .into(),
        share::CodeError::Plain(share::Plain::FewSigns).into(),
        share::CodeError::Plain(share::Plain::Repeats).into(),
        share::CodeError::Plain(share::Plain::Row).into(),
        share::CodeError::Plain(share::Plain::Date).into(),
        share::CodeError::Plain(share::Plain::Common).into(),
        share::CodeError::Length(3).into(),
        unreadable_record().into(),
        share::CodeError::Hash("no numbers".to_owned()).into(),
        KioskError::Told(words!(k::THE_JOURNAL_IS_BUSY_TRY)),
    ]);
    errors
}

#[test]
fn an_error_is_told_in_english_as_it_says_itself_and_in_german_otherwise() {
    for error in errors() {
        let english = words(Language::English, &error);
        assert_eq!(english, error.to_string());
        let german = words(Language::German, &error);
        for word in [" the ", " and ", " is ", "No such", "cannot"] {
            assert!(!german.contains(word), "{german}");
        }
        assert!(german.starts_with("das ging nicht: "), "{german}");
    }
    let refused = KioskError::Refused(Refusal::Over);
    assert!(words(Language::German, &refused).starts_with("die Übung ist zu Ende"));
}

#[test]
fn a_plan_is_told_in_german_with_what_was_read_as_it_was_read() {
    let text = "date,lifter,lift,sets,reps,load\n2026-12-01,Ada,rack pull,{1},5,100\n";
    let source = Source {
        name: "week.csv",
        text: text.as_bytes(),
    };
    let faults = plan::check(source, None);
    let wrong: Vec<_> = faults
        .iter()
        .filter(|fault| fault.stops())
        .cloned()
        .collect();
    assert_eq!(
        faults_words(Language::German, &wrong[..1]),
        "week.csv, Zeile 2, Spalte sets: da steht \"{1}\", keine ganze Zahl; schreib eine ganze Zahl von 1 bis 20"
    );
    assert_eq!(
        faults_words(Language::German, &wrong[1..]),
        "week.csv, Zeile 2, Spalte load: da steht \"100\", ein Gewicht ohne Einheit; schreib \"100 lb\" oder \"100 kg\""
    );
}

#[test]
fn a_device_is_told_in_both_languages() {
    let faults = hardware::Faults::default();
    faults.report("buzzer", Trouble::Disobeys("no wire".to_owned()));
    faults.report("left foot", Trouble::Held);
    faults.report("switches", Trouble::NoThread("none left".to_owned()));
    for fault in faults.list() {
        let english = device_words(Language::English, &fault);
        assert_eq!(english, fault.to_string());
    }
    let german: Vec<_> = faults
        .list()
        .iter()
        .map(|f| device_words(Language::German, f))
        .collect();
    assert_eq!(
        german,
        [
            "Summer: tut nicht, was es soll (no wire); prüf das Kabel",
            "left foot: seit über 60 s gedrückt; sieh nach, was darauf liegt",
            "Schalter: das System gibt keinen Thread (none left)",
        ]
    );
}

#[test]
fn a_full_stick_is_told_as_such_whatever_is_written() {
    type Write = fn(&Path, &mut fs::File) -> Result<(), share::ExportError>;
    let data = tempfile::tempdir().expect("a folder");
    let folder = Folder::open(Some(data.path())).expect("a folder");
    let day = chrono::NaiveDate::from_ymd_opt(2026, 12, 2).expect("a day");
    let clock = BenchClock::at(day.and_hms_opt(18, 0, 0).expect("a time"));
    drop(Kiosk::open(&folder, Box::new(clock)).expect("the demo gym is laid"));
    let record = data.path().join(journal::RECORD_FILE);
    let writers: [Write; 2] = [share::write_csv, share::write_json];
    for write in writers {
        let full = fs::File::options().write(true).open("/dev/full");
        let error = write(&record, &mut full.expect("opens")).expect_err("no space");
        let share::ExportError::Write(why) = error else {
            panic!("{error}")
        };
        let told = words(Language::German, &KioskError::file(at())(why));
        assert!(
            told.ends_with("kein Platz mehr; schaff Platz und versuch es noch einmal"),
            "{told}"
        );
    }
}
