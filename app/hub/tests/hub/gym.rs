//! A gym of kiosks as bare journals, and a hub between them.
use crate::server::Server;
use domain::elsewhere::Brought;
use domain::steady::BootId;
use domain::{Event, Fact, Moment};
use hub::{Heard, HubError, Link, Others, Places, Prepare, Sent};
use journal::{Journal, SealedReader};
use std::path::PathBuf;

/// One kiosk.
pub(crate) struct Kiosk {
    pub(crate) name: String,
    pub(crate) folder: tempfile::TempDir,
    pub(crate) others: Others,
    /// How far its clock is ahead, milliseconds.
    pub(crate) ahead_ms: i64,
    pub(crate) brought: Vec<Brought>,
}

/// Kiosks of these names, prepared.
pub(crate) fn kiosks(server: &Server, gym: &str, names: &[&str]) -> Vec<Kiosk> {
    let secrets = tempfile::tempdir().expect("a folder");
    let prepare = Prepare {
        gym: gym.into(),
        kiosks: names.iter().map(|name| (*name).to_owned()).collect(),
        secrets: secrets.path().to_owned(),
    };
    let sql = prepare.sql().expect("names");
    server.sql(&sql);
    names
        .iter()
        .map(|name| {
            let folder = tempfile::tempdir().expect("a folder");
            let secret = secrets.path().join(format!("{name}.password"));
            std::fs::copy(secret, folder.path().join(hub::PASSWORD_FILE)).expect("copies");
            let others = Others::of(folder.path(), name);
            let mut kiosk = Kiosk {
                name: (*name).to_owned(),
                folder,
                others,
                ahead_ms: 0,
                brought: Vec::new(),
            };
            kiosk.begin();
            kiosk
        })
        .collect()
}

impl Kiosk {
    pub(crate) fn path(&self) -> PathBuf {
        self.folder.path().join(journal::JOURNAL_FILE)
    }

    pub(crate) fn password(&self) -> String {
        let text = std::fs::read_to_string(self.folder.path().join(hub::PASSWORD_FILE));
        text.expect("reads").trim().to_owned()
    }

    fn begin(&mut self) {
        let boot = self.name.bytes().map(u128::from).sum();
        self.write(vec![Fact::ClockAnchored {
            boot: BootId(boot),
            up_ms: 1,
            offset_ms: Some(0),
        }]);
    }

    /// Appends facts, a second apart by this kiosk's clock.
    pub(crate) fn write(&mut self, facts: Vec<Fact>) {
        let mut journal = Journal::open(&self.path()).expect("opens");
        let last = journal.last().expect("reads");
        let at = |n: usize| {
            let seq = i64::try_from(last).expect("few") + i64::try_from(n).expect("few");
            Moment(1_772_460_000_000 + seq * 1_000 + self.ahead_ms)
        };
        let events = facts.into_iter().enumerate();
        let events: Vec<Event> = events.map(|(n, fact)| Event { at: at(n), fact }).collect();
        journal.append(last, &events).expect("appends");
    }

    /// Invented entries that no lift needs: so many days cleared off the plan.
    pub(crate) fn clear_days(&mut self, many: u64) {
        let name = self.name.clone();
        let day = |n: u64| {
            let from = chrono::NaiveDate::from_ymd_opt(2026, 3, 2).expect("a day");
            from + chrono::Days::new(n % 400)
        };
        let cleared = |n| Fact::DayCleared {
            lifter: format!("{name} \u{fc}{n}"),
            date: day(n),
        };
        self.write((0..many).map(cleared).collect());
    }

    pub(crate) fn last(&self) -> u64 {
        let reader = SealedReader::open(&self.path()).expect("opens");
        reader.last().expect("reads").0
    }

    /// What sends for it, also on another thread.
    pub(crate) fn side(&self) -> Side {
        Side {
            name: self.name.clone(),
            folder: self.folder.path().to_owned(),
        }
    }

    pub(crate) fn link(&self, server: &Server) -> Result<Link, HubError> {
        self.side().link(server)
    }

    pub(crate) fn send(&self, server: &Server) -> Result<Sent, HubError> {
        self.side().send(server)
    }

    pub(crate) fn hear(&mut self, server: &Server) -> Result<Heard, HubError> {
        let mut link = self.link(server)?;
        let brought = &mut self.brought;
        let mut tell = |lift| brought.push(lift);
        self.others.hear(&mut link, &mut tell, &mut || true)
    }

    /// What it holds of another kiosk, proven.
    pub(crate) fn holds(&self, other: &str) -> (u64, String) {
        let path = self.folder.path().join(hub::OTHERS_FOLDER).join(other);
        let report = journal::verify(&path.join(journal::JOURNAL_FILE)).expect("sound");
        (report.events, report.seal)
    }

    /// What its own journal holds, proven.
    pub(crate) fn own(&self) -> (u64, String) {
        let report = journal::verify(&self.path()).expect("sound");
        (report.events, report.seal)
    }
}

/// A kiosk's name and folder.
pub(crate) struct Side {
    name: String,
    folder: PathBuf,
}

impl Side {
    fn link(&self, server: &Server) -> Result<Link, HubError> {
        let places = Places {
            password: self.folder.join(hub::PASSWORD_FILE),
            roots: self.folder.join(hub::ROOTS_FILE),
        };
        Link::open(&server.address(&self.name), &places)
    }

    pub(crate) fn send(&self, server: &Server) -> Result<Sent, HubError> {
        let mut link = self.link(server)?;
        let reader = SealedReader::open(&self.folder.join(journal::JOURNAL_FILE))?;
        hub::send(&mut link, &reader, || true)
    }
}
