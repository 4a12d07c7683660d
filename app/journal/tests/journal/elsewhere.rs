//! What was done at other kiosks, in the record and in the kept state.
use crate::invented_elsewhere;
use domain::elsewhere::{Brought, DoneThere, Origin};
use domain::state::Entered;
use domain::steady::BootId;
use domain::{Command, Event, Fact, Hold, LiftNo, Moment, Refusal, State, decide};
use journal::{Journal, Record, RecordReader, SetRow};
use std::ops::ControlFlow;

fn brought(kiosk: &str, no: u32, seq: u64, reps: &[u8]) -> Brought {
    let begun = Moment(1_772_460_000_000);
    let entry = |(rung, reps): (u16, &u8)| DoneThere {
        at: begun.plus_seconds(120 * (u32::from(rung) + 1)),
        rung,
        what: Entered::Set {
            reps: *reps,
            hold: Hold::Kept,
        },
        effort: None,
    };
    Brought {
        origin: Origin {
            kiosk: kiosk.into(),
            no: LiftNo(no),
            seq,
        },
        sheet: Box::new(invented_elsewhere::sheet()),
        begun,
        entries: (0..).zip(reps).map(entry).collect(),
    }
}

/// A kiosk whose clock is an hour behind.
struct Here {
    folder: tempfile::TempDir,
    journal: Journal,
    state: State,
    seq: u64,
}

impl Here {
    fn new() -> Self {
        let folder = tempfile::tempdir().expect("a folder");
        let journal = Journal::open(&folder.path().join("journal.sqlite")).expect("opens");
        let (state, seq) = (State::default(), 0);
        let mut here = Self {
            folder,
            journal,
            state,
            seq,
        };
        here.keep(&[Event {
            at: Moment(5_000),
            fact: Fact::ClockAnchored {
                boot: BootId(4),
                up_ms: 1,
                offset_ms: Some(3_600_000),
            },
        }]);
        here
    }

    fn keep(&mut self, events: &[Event]) {
        self.seq = self.journal.append(self.seq, events).expect("appends");
        events.iter().for_each(|event| self.state.apply(event));
    }

    fn take(&mut self, lift: Brought) -> Result<(), Refusal> {
        let now = Moment(6_000 + i64::try_from(self.seq).expect("few"));
        let events = decide(&self.state, Command::TakeElsewhere(Box::new(lift)), now)?;
        self.keep(&events);
        Ok(())
    }

    fn sets(&self) -> Vec<SetRow> {
        let path = self.folder.path().join("record.sqlite");
        let mut record = Record::open(&path).expect("opens");
        record.follow(&self.journal).expect("follows");
        let mut all = Vec::new();
        let reader = RecordReader::open(&path).expect("opens").expect("is there");
        let each = |set| {
            all.push(set);
            ControlFlow::Continue(())
        };
        reader.each_set(each).expect("reads");
        assert!(journal::prove_record(self.folder.path()).expect("is proven"));
        all
    }
}

#[test]
fn it_stands_once_in_record_and_kept_state_and_by_the_clock_there() {
    let mut here = Here::new();
    here.take(brought("river", 7, 40, &[5, 4]))
        .expect("is taken");
    let again = here.take(brought("river", 7, 40, &[5, 4]));
    assert_eq!(
        again,
        Err(Refusal::KnownElsewhere),
        "at least once, kept once"
    );
    let later = here.take(brought("river", 7, 55, &[5, 4]));
    assert_eq!(
        later,
        Err(Refusal::KnownElsewhere),
        "read again, and nothing new"
    );
    here.take(brought("quay", 7, 3, &[2]))
        .expect("the same number of another kiosk");

    let sets = here.sets();
    let told: Vec<(u32, u32, u8)> = sets.iter().map(|s| (s.lift_no, s.rung, s.reps)).collect();
    assert_eq!(told, [(1, 1, 5), (1, 2, 4), (2, 1, 2)]);
    assert_eq!(sets[0].at, Moment(1_772_460_120_000), "by the clock there");
    assert_eq!(sets[0].rack, "river rack");

    here.journal
        .keep_state(&here.state, here.seq)
        .expect("keeps");
    let kept = here.journal.reached().expect("reads");
    assert_eq!((kept.kept, &kept.state), (here.seq, &here.state));
    assert_eq!(kept.state.elsewhere.len(), 2);
}

#[test]
fn what_was_changed_there_is_a_correction_here_and_an_older_word_is_none() {
    let mut here = Here::new();
    here.take(brought("river", 7, 40, &[5, 4]))
        .expect("is taken");
    here.take(brought("river", 7, 46, &[5, 2]))
        .expect("was put right");
    let reps: Vec<u8> = here.sets().iter().map(|set| set.reps).collect();
    assert_eq!(reps, [5, 2]);
    let old = here.take(brought("river", 7, 40, &[5, 4]));
    assert_eq!(old, Err(Refusal::KnownElsewhere));
    let gone = brought("river", 7, 60, &[5, 2]).taken_back(60);
    here.take(gone).expect("was taken back there");
    assert_eq!(here.sets(), []);
    assert!(here.state.lifts[&LiftNo(1)].is_over());
    assert_eq!(here.state.open.len(), 0);
    let undo = decide(&here.state, Command::Undo(LiftNo(1)), Moment(9_000_000));
    assert_eq!(
        undo,
        Err(Refusal::DoneElsewhere),
        "it is taken back where it was done"
    );
}

#[test]
fn a_lift_that_is_too_old_to_change_is_neither_doubled_nor_changed() {
    let mut here = Here::new();
    for no in 1..=400 {
        here.take(brought("river", no, u64::from(no), &[5]))
            .expect("is taken");
    }
    let sets = here.sets().len();
    for (no, reps) in [(1, 9), (60, 9), (144, 9), (200, 9)] {
        let told = here.take(brought("river", no, 900, &[reps]));
        assert_eq!(told, Err(Refusal::KnownElsewhere), "lift {no}");
    }
    assert_eq!(here.sets().len(), sets);
    assert!(here.state.elsewhere["river"].lifts.len() <= domain::elsewhere::KNOWN_MAX);
    here.take(brought("river", 400, 901, &[3]))
        .expect("one of late still changes");
}
