//! The one owner of state: decide, append, apply, in that order.
//!
//! Refuses: showing what is not yet safe on disk.
use crate::error::KioskError;
use crate::folder::Folder;
use domain::{Command, Event, Moment, State, decide};
use journal::{AppendError, Journal, Reached};
use plan::words;
use text::keys::checked as k;

/// How often a command is decided anew because another process wrote first.
const TRIES_MAX: usize = 8;

/// So many events after the last one the state is kept anew, when nobody waits.
const KEEP_AFTER: u64 = 256;

/// Ticks without an entry after which the journal rests: ten seconds of the kiosk's.
const IDLE_TICKS: u32 = 20;

fn busy() -> KioskError {
    KioskError::Told(words!(k::THE_JOURNAL_IS_BUSY_TRY))
}

/// Where events are kept.
#[derive(Debug)]
enum Store {
    Journal(Box<Journal>),
    /// It can be read and not written for now, and why; it is opened when that is over.
    Closed(Folder, Box<KioskError>),
    /// For pictures: nothing is kept.
    Memory,
}

/// State and the journal behind it.
#[derive(Debug)]
pub struct Owner {
    store: Store,
    state: State,
    seq: u64,
    /// Ticks since the last entry.
    idle: u32,
    /// The event up to which the state is kept for the next start.
    kept: u64,
    /// Whether it was told already that the disk does not take what belongs there.
    restless: bool,
}

impl Owner {
    /// All that the journal holds: from its checkpoint, or replayed.
    ///
    /// # Errors
    /// [`KioskError::Journal`] when it cannot be read.
    pub fn open(journal: Journal) -> Result<Self, KioskError> {
        let Reached { state, last, kept } = journal.reached()?;
        let owner = Self::resume(journal, state, last)?;
        Ok(Self { kept, ..owner })
    }

    /// As [`Owner::open`], for the journal of `folder`. Where the disk is full or cannot be written,
    /// what stands is read all the same: entries are refused until it can.
    ///
    /// # Errors
    /// [`KioskError::Journal`] when it cannot be read, or is not all that it had been.
    pub fn of(folder: &Folder) -> Result<Self, KioskError> {
        let why = match folder.open_journal() {
            Ok(journal) => return Self::open(journal),
            Err(KioskError::Journal(error)) if error.is_for_now() => error,
            Err(other) => return Err(other),
        };
        tracing::warn!(%why, "the journal is read, and cannot be written for now");
        let (mut state, mut seq) = (State::default(), 0);
        let read = journal::read_aside(&folder.journal(), &folder.outside(), |at, event| {
            state.apply(event);
            seq = at;
        });
        match read {
            Ok(()) => Ok(Self {
                store: Store::Closed(folder.clone(), Box::new(why.into())),
                seq,
                ..Self::in_memory(state)
            }),
            Err(_) => Err(why.into()),
        }
    }

    /// Why nothing can be entered for now; `None` when it can.
    #[must_use]
    pub fn closed(&self) -> Option<&KioskError> {
        match &self.store {
            Store::Closed(_, why) => Some(why),
            Store::Journal(_) | Store::Memory => None,
        }
    }

    /// Tries whether a journal that could not be written can be now, and reads what is new.
    fn open_again(&mut self) -> Result<(), KioskError> {
        let Store::Closed(folder, _) = &self.store else {
            return Ok(());
        };
        let journal = folder.open_journal()?;
        let news = journal.events_after(self.seq)?;
        self.store = Store::Journal(Box::new(journal));
        for (seq, event) in &news {
            self.state.apply(event);
            self.seq = *seq;
        }
        Ok(())
    }

    /// As [`Owner::open`], where `state` is known to be what the first `seq` events make.
    ///
    /// # Errors
    /// [`KioskError::Journal`] when it cannot be read.
    pub fn resume(journal: Journal, state: State, seq: u64) -> Result<Self, KioskError> {
        let mut owner = Self {
            store: Store::Journal(Box::new(journal)),
            state,
            seq,
            idle: 0,
            kept: 0,
            restless: false,
        };
        owner.catch_up()?;
        Ok(owner)
    }

    /// Lets go of the journal: what stood, and the number of the last event.
    #[must_use]
    pub fn close(self) -> (State, u64) {
        (self.state, self.seq)
    }

    /// An owner that keeps nothing, starting from `state`.
    #[must_use]
    pub fn in_memory(state: State) -> Self {
        Self {
            store: Store::Memory,
            state,
            seq: 0,
            idle: 0,
            kept: 0,
            restless: false,
        }
    }

    /// What stands.
    #[must_use]
    pub fn state(&self) -> &State {
        &self.state
    }

    /// Sequence number of the last event applied.
    #[must_use]
    pub fn seq(&self) -> u64 {
        self.seq
    }

    /// The event up to which a checkpoint stands for what was not read; 0 when all was.
    #[must_use]
    pub fn kept(&self) -> u64 {
        self.kept
    }

    /// Does what `command` asks, durably, or nothing at all.
    ///
    /// # Errors
    /// [`KioskError`] when the core refuses or the journal cannot keep it.
    pub fn command(&mut self, command: &Command, now: Moment) -> Result<(), KioskError> {
        self.idle = 0;
        self.open_again()?;
        for _ in 0..TRIES_MAX {
            let now = self.no_sooner_than_last(now);
            let events = decide(&self.state, command.clone(), now).map_err(KioskError::Refused)?;
            let Store::Journal(journal) = &mut self.store else {
                self.apply(&events);
                self.seq += 1;
                return Ok(());
            };
            match journal.append(self.seq, &events) {
                Ok(last) => {
                    self.apply(&events);
                    self.seq = last;
                    return Ok(());
                }
                Err(AppendError::Moved { .. }) => self.catch_up().map(|_| ())?,
                Err(AppendError::Journal(error)) => return Err(error.into()),
            }
        }
        Err(busy())
    }

    /// Does all that `commands` ask, in one piece and durably, or nothing at all.
    ///
    /// # Errors
    /// [`KioskError`] when the core refuses or the journal cannot keep it.
    pub fn together(&mut self, commands: &[Command], now: Moment) -> Result<(), KioskError> {
        if let [command] = commands {
            return self.command(command, now);
        }
        self.idle = 0;
        self.open_again()?;
        let now = self.no_sooner_than_last(now);
        let mut state = self.state.clone();
        let mut all = Vec::new();
        for command in commands {
            let events = decide(&state, command.clone(), now).map_err(KioskError::Refused)?;
            events.iter().for_each(|event| state.apply(event));
            all.extend(events);
        }
        let Store::Journal(journal) = &mut self.store else {
            self.state = state;
            return Ok(());
        };
        match journal.append(self.seq, &all) {
            Ok(last) => {
                (self.state, self.seq) = (state, last);
                Ok(())
            }
            Err(AppendError::Moved { .. }) => Err(busy()),
            Err(AppendError::Journal(error)) => Err(error.into()),
        }
    }

    /// To be called at every tick: after a while without an entry the journal's log is brought
    /// home, and its mark synced. What the disk does not take now it takes at a later tick.
    pub fn rest_when_idle(&mut self) {
        self.idle = self.idle.saturating_add(1);
        if self.closed().is_some() && self.idle.is_multiple_of(IDLE_TICKS) {
            // It stays closed, and the next tries follow.
            drop(self.open_again());
        }
        let Store::Journal(journal) = &mut self.store else {
            return;
        };
        if !self.idle.is_multiple_of(IDLE_TICKS) {
            return;
        }
        match journal.rest() {
            Ok(_) => {
                self.restless = false;
                self.keep_state();
            }
            Err(error) if !self.restless => {
                tracing::warn!(%error, "the journal is safe, but its log cannot be brought home");
                self.restless = true;
            }
            Err(_) => {}
        }
    }

    /// Keeps the state for the next start, where much has happened since. What cannot be kept now is
    /// kept later: the next start only takes longer.
    fn keep_state(&mut self) {
        let Store::Journal(journal) = &self.store else {
            return;
        };
        if self.seq.saturating_sub(self.kept) < KEEP_AFTER {
            return;
        }
        match journal.keep_state(&self.state, self.seq) {
            Ok(()) => self.kept = self.seq,
            Err(error) => tracing::warn!(%error, "the state is not kept for the next start"),
        }
    }

    /// Applies what another process has written; tells whether there was anything.
    ///
    /// # Errors
    /// [`KioskError::Journal`] when it cannot be read.
    pub fn catch_up(&mut self) -> Result<bool, KioskError> {
        let Store::Journal(journal) = &mut self.store else {
            return Ok(false);
        };
        if self.seq > 0 && !journal.changed()? {
            return Ok(false);
        }
        let news = journal.events_after(self.seq)?;
        for (seq, event) in &news {
            self.state.apply(event);
            self.seq = *seq;
        }
        Ok(!news.is_empty())
    }

    /// Makes the record follow the journal; a record that fails is only logged, since it can be
    /// rebuilt.
    pub fn follow(&self, record: &mut journal::Record) {
        if let Store::Journal(journal) = &self.store
            && let Err(error) = record.follow(journal)
        {
            tracing::warn!(%error, "the record does not follow the journal");
        }
    }

    /// No event of a journal is before the last one, also where another machine writes to it whose
    /// clock is ahead.
    fn no_sooner_than_last(&self, now: Moment) -> Moment {
        match (&self.store, self.state.times.last()) {
            (Store::Journal(_), Some(last)) => now.max(last),
            (Store::Journal(_), None) | (Store::Memory | Store::Closed(..), _) => now,
        }
    }

    fn apply(&mut self, events: &[Event]) {
        for event in events {
            self.state.apply(event);
        }
    }
}
