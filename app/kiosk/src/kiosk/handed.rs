//! What is handed to the kiosk past its screens: a plan that was checked, a deed of a coach on the
//! page, a copy of the journal, a look for a picture.
//!
//! Refuses: a part of a plan; going on without a journal that keeps what is entered.
use super::Kiosk;
use crate::desk::said;
use crate::error::KioskError;
use crate::folder::Folder;
use crate::gym_files;
use crate::owner::Owner;
use crate::shared::Shared;
use domain::Command;
use domain::next::coach_list::lines_of;
use journal::Record;
use share::Told;
use std::path::Path;
use view::coach_deed::{CoachDeed, Undone, command};
use view::desk::{Errand, LanCard, StickNews};
use view::{Language, Stage};

impl Kiosk {
    /// Chooses language and light, as a finger does on the kiosk's own page.
    ///
    /// # Errors
    /// [`KioskError`] when the journal cannot keep it.
    pub fn choose_look(&mut self, chosen: view::Chosen) -> Result<(), KioskError> {
        let take = Command::TakeFile {
            name: view::look::SCREEN_FILE.into(),
            text: chosen.write(),
        };
        self.owner.command(&take, self.clock.now())
    }

    /// What is wrong with buttons, lights and the rest, for the coach's desk.
    pub fn tell_devices(&mut self, faults: Vec<String>) {
        self.news.hardware = faults;
    }

    /// How it stands with the page on the network, for the coach's desk.
    pub fn tell_lan(&mut self, card: LanCard) {
        self.news.lan.card = card;
        self.news.lan.on = self.config.share;
    }

    /// The page is off: nothing is shown on it any more.
    pub fn unshare(&mut self) {
        self.shared = None;
    }

    /// From now on the floor is shown on the page's boards too, and the end of a lift shows the
    /// lifter's link.
    pub fn share(&mut self, shared: Shared) {
        self.shared = Some(shared);
    }

    /// What lies where sticks appear, for the desk on the screen.
    pub fn tell_stick(&mut self, stick: StickNews) {
        self.news.stick = stick;
    }

    /// Names of the latest copies in the second place, for the desk on the screen; `None` without
    /// such a place.
    pub fn tell_copies(&mut self, names: Option<Vec<String>>) {
        self.news.copies = names;
    }

    /// What came of an order that was given at the desk on the screen.
    pub fn tell_order(&mut self, told: &Told) {
        self.notice = told.words(self.language());
    }

    /// The language of the screen.
    #[must_use]
    pub fn language(&self) -> Language {
        self.say()
    }

    /// What was ordered at the desk on the screen, once.
    pub fn errand(&mut self) -> Option<Errand> {
        self.errand.take()
    }

    /// Takes a plan that was checked against the gym in force, whole.
    ///
    /// # Errors
    /// [`KioskError`] when it cannot be kept; nothing of it stands then.
    pub fn take_plan(
        &mut self,
        name: String,
        rows: Vec<domain::Prescription>,
    ) -> Result<(), KioskError> {
        let command = Command::TakePlan { name, rows };
        self.owner.command(&command, self.clock.now())?;
        self.after_change();
        Ok(())
    }

    /// Does what a coach does on the page, durably, as a tap at the screen's desk would, or tells why
    /// not. The page's list says so at once.
    pub fn coach(&mut self, deed: &CoachDeed) -> Told {
        let (gym, state, today) = (&self.gym.gym, self.owner.state(), self.date());
        let lifter = gym.lifters.iter().find(|known| known.name == deed.lifter);
        let Some(lifter) = lifter else {
            return Told::Undone(Undone::Nobody);
        };
        let tomorrow = today.succ_opt().unwrap_or(today);
        let lines = lines_of(gym, state, lifter, (today, tomorrow));
        let health = state.health.get(&lifter.name).cloned().unwrap_or_default();
        let command = match command(deed, &lines, &health, today) {
            Ok(command) => command,
            Err(undone) => return Told::Undone(undone),
        };
        if let Err(error) = self.owner.command(&command, self.clock.now()) {
            return Told::NotDone(said(&error));
        }
        self.after_change();
        self.renew_day();
        let now = (self.date(), deed.lifter.as_str());
        if let Some(shared) = &self.shared {
            shared.renew(&self.gym.gym, self.owner.state(), now);
        }
        Told::Done
    }

    /// Puts a copy that was proven in the place of the journal, which is kept beside it, and goes
    /// on from what it holds: the number of its events. The record is left to
    /// [`Kiosk::follow_anew`].
    ///
    /// # Errors
    /// [`KioskError`] when nothing can be put in place; the kiosk then goes on with what stood.
    pub fn put_back(&mut self, folder: &Folder, proven: Proven) -> Result<u64, KioskError> {
        let stamp = self.clock.local().format("%Y-%m-%dT%H%M%S").to_string();
        // The journal must be closed to be put aside.
        let empty = Owner::in_memory(domain::State::default());
        let (stood, stood_seq) = std::mem::replace(&mut self.owner, empty).close();
        let restored = proven.prepared.put_in_place(&stamp, &folder.places());
        let (state, seq) = match &restored {
            Ok(_) => (proven.state, proven.seq),
            Err(_) => (stood, stood_seq),
        };
        let reopened = folder.open_journal();
        let resumed = reopened.and_then(|journal| Owner::resume(journal, state, seq));
        self.owner = match resumed {
            Ok(owner) => owner,
            // Nothing more could be kept: the kiosk ends, and its service starts it anew.
            Err(error) => panic!("the journal cannot be opened any more: {error}"),
        };
        if restored.is_ok() {
            self.clock.anchor(&mut self.owner);
            self.record = None;
            self.unsound = None;
            self.today.made_for = None;
        }
        self.after_change();
        let time = self.time_of_day();
        self.stage = Stage::resume(&self.scene(&time));
        Ok(restored?.report.events)
    }

    /// Says that nothing can be entered for now; once that is over, what had to wait is made up for.
    pub(super) fn tell_closed(&mut self, was: bool) {
        if let Some(why) = self.owner.closed() {
            self.notice = crate::desk::words(self.say(), why);
        } else if was && let Some(folder) = self.folder.clone() {
            match gym_files::in_step(&folder, &mut self.owner, &self.clock) {
                Ok(gym) => self.gym = gym,
                Err(error) => tracing::warn!(%error, "the gym's files were not taken"),
            }
            self.notice = self.notice_of_files();
            self.follow_anew(&folder);
        }
    }

    /// The record was made again from the journal that was put back: it is followed from now on.
    pub fn follow_anew(&mut self, folder: &Folder) {
        match Record::open(&folder.record()) {
            Ok(record) => self.record = Some(record),
            Err(error) => tracing::warn!(%error, "no record; the LAN page will be empty"),
        }
        self.after_change();
    }
}

/// A copy that was proven, with the state that its events make.
#[derive(Debug)]
pub struct Proven {
    prepared: journal::Prepared,
    state: domain::State,
    seq: u64,
}

impl Proven {
    /// Proves the copy at `file` beside the journal of `folder`. Takes as long as it is long, and
    /// belongs on a thread of its own.
    ///
    /// # Errors
    /// [`KioskError`] when the copy is not sound.
    pub fn of(file: &Path, folder: &Folder) -> Result<Self, KioskError> {
        let (mut state, mut last) = (domain::State::default(), 0);
        let prepared = journal::prepare(file, folder.path(), |seq, event| {
            state.apply(event);
            last = seq;
        })?;
        Ok(Self {
            prepared,
            state,
            seq: last,
        })
    }
}

/// Makes the record of `folder` again in a new file; belongs on a thread of its own.
pub fn remake_record(folder: &Folder) {
    if let Err(error) = journal::remake_record(folder.path()) {
        tracing::warn!(%error, "the record could not be made again");
    }
}

/// Has the record of `folder` follow its journal; belongs on a thread of its own.
pub fn make_record(folder: &Folder) {
    let made = || -> Result<(), KioskError> {
        let journal = folder.open_journal()?;
        Record::open(&folder.record())?.follow(&journal)?;
        Ok(())
    };
    if let Err(error) = made() {
        tracing::warn!(%error, "the record does not follow the journal that was put back");
    }
}
