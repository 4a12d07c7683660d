//! The hub from the kiosk's side: a thread of its own sends the journal's events, and hands on what
//! was done at the gym's other racks.
//!
//! Refuses: being needed. Whatever becomes of the hub is told at the coach's desk, and the rack works.
use crate::desk::in_words;
use crate::folder::Folder;
use crate::input::Input;
use crate::kiosk::Kiosk;
use crate::watch::{spawn_again, stand_back};
use domain::elsewhere::Brought;
use hub::{Address, Heard, HubError, Link, OtherFault, Others, Places, Sent};
use journal::SealedReader;
use plan::{Words, words};
use std::sync::mpsc::{Receiver, RecvTimeoutError, Sender, channel};
use std::sync::{Mutex, PoisonError};
use std::time::Duration;
use text::keys::checked as k;
use view::Language;

/// Between two exchanges that went well, and the longest between two that did not.
const LOOK: Duration = Duration::from_secs(5);
const LOOK_MAX: Duration = Duration::from_secs(60);

/// What is wrong with the hub just now.
static TROUBLE: Mutex<Vec<Words>> = Mutex::new(Vec::new());

/// What is wrong with the hub, a sentence each, for the coach's desk.
#[must_use]
pub fn trouble(say: Language) -> Vec<String> {
    let trouble = TROUBLE.lock().unwrap_or_else(PoisonError::into_inner);
    trouble.iter().map(|what| in_words(say, what)).collect()
}

/// What came of one exchange.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Exchanged {
    /// What was sent.
    pub sent: Sent,
    /// What was heard.
    pub heard: Heard,
}

/// One kiosk as a member of its gym's hub.
#[derive(Debug)]
pub struct Member {
    folder: Folder,
    address: Address,
    link: Option<Link>,
    others: Others,
}

/// The files beside the address, in a data folder.
#[must_use]
pub fn places(folder: &Folder) -> Places {
    Places {
        password: folder.path().join(hub::PASSWORD_FILE),
        roots: folder.path().join(hub::ROOTS_FILE),
    }
}

impl Member {
    /// Before the first exchange.
    #[must_use]
    pub fn of(folder: &Folder, address: &Address) -> Self {
        Self {
            folder: folder.clone(),
            address: address.clone(),
            link: None,
            others: Others::of(folder.path(), &address.kiosk),
        }
    }

    /// Sends what the hub does not have, then hears what the others did; `goes_on` is asked after
    /// each portion. What was heard is read though this box may send nothing.
    ///
    /// # Errors
    /// [`HubError`]; the next exchange begins with a new connection.
    pub fn exchange(
        &mut self,
        tell: &mut dyn FnMut(Brought),
        goes_on: &mut dyn FnMut() -> bool,
    ) -> Result<Exchanged, HubError> {
        // A connection of a while ago may have died unseen.
        if let Some(link) = self.link.take() {
            match self.over(link, tell, goes_on) {
                Err(HubError::Away { .. }) => {}
                done => return done,
            }
        }
        let link = Link::open(&self.address, &places(&self.folder))?;
        self.over(link, tell, goes_on)
    }

    fn over(
        &mut self,
        mut link: Link,
        tell: &mut dyn FnMut(Brought),
        goes_on: &mut dyn FnMut() -> bool,
    ) -> Result<Exchanged, HubError> {
        let journal = SealedReader::open(&self.folder.journal())?;
        let sent = hub::send(&mut link, &journal, &mut *goes_on);
        let sent = match sent {
            Ok(sent) => Ok(sent),
            // What this box may not send keeps it from hearing nothing.
            Err(
                unfit @ (HubError::Behind { .. }
                | HubError::Forked { .. }
                | HubError::NotTaken { .. }),
            ) => Err(unfit),
            Err(error) => return Err(error),
        };
        let heard = self.others.hear(&mut link, tell, goes_on)?;
        self.link = Some(link);
        Ok(Exchanged { sent: sent?, heard })
    }
}

/// Keeps what is wrong now; the log has it once, and that it is over.
fn note(now: Vec<Words>) {
    let mut trouble = TROUBLE.lock().unwrap_or_else(PoisonError::into_inner);
    if *trouble == now {
        return;
    }
    for what in &now {
        let what = in_words(Language::English, what);
        tracing::warn!(what, "the hub");
    }
    if now.is_empty() {
        tracing::info!("the hub is well");
    }
    *trouble = now;
}

/// What a failed exchange means for whoever stands at the rack; `pinladder hub look` has the rest.
fn of(error: &HubError) -> Words {
    match error {
        HubError::Away { server, .. } => words!(k::THE_HUB_DOES_NOT_ANSWER, server.clone()),
        HubError::Behind { kiosk, .. } | HubError::Forked { kiosk, .. } => {
            words!(k::THE_HUB_KNOWS_ANOTHER_BOX, kiosk.clone())
        }
        HubError::Refused { .. }
        | HubError::Unprepared { .. }
        | HubError::Open { .. }
        | HubError::File { .. } => words!(k::THE_HUB_LETS_NOT_IN),
        HubError::Failed { .. }
        | HubError::NotTaken { .. }
        | HubError::Journal(_)
        | HubError::System(_) => words!(k::THE_HUB_FAILED),
    }
}

fn of_other(fault: &OtherFault) -> Words {
    let (OtherFault::Forked { kiosk, .. } | OtherFault::Unread { kiosk, .. }) = fault;
    words!(k::THE_HUB_OF_ANOTHER_RACK, kiosk.clone())
}

/// The thread from the owner's side.
#[derive(Debug)]
pub(crate) struct GymHub {
    settings: Sender<Option<Address>>,
    told: Option<Address>,
}

impl GymHub {
    /// Starts the thread, which waits until the settings name a hub.
    pub(crate) fn start(folder: &Folder, inputs: Sender<Input>) -> Self {
        let (settings, inbox) = channel();
        let folder = folder.clone();
        let thread = spawn_again("hub", move || {
            stand_back();
            meet(&folder, &inbox, &inputs);
        });
        if let Err(error) = thread {
            tracing::error!(%error, "no hub: the system gives no thread");
        }
        Self {
            settings,
            told: None,
        }
    }

    /// Follows the kiosk's settings where they have changed.
    pub(crate) fn follow(&mut self, kiosk: &Kiosk) {
        let now = &kiosk.config().hub;
        if self.told != *now {
            self.told.clone_from(now);
            // It fails where there is no thread, which was told.
            drop(self.settings.send(now.clone()));
        }
    }
}

/// Exchanges again and again while the settings name a hub, until nobody listens.
fn meet(folder: &Folder, inbox: &Receiver<Option<Address>>, inputs: &Sender<Input>) {
    let mut next = inbox.recv();
    loop {
        let Ok(setting) = next else { return };
        let Some(address) = setting else {
            note(Vec::new());
            next = inbox.recv();
            continue;
        };
        let mut member = Member::of(folder, &address);
        let mut wait = LOOK;
        next = loop {
            let mut tell = |lift| drop(inputs.send(Input::Elsewhere(Box::new(lift))));
            match member.exchange(&mut tell, &mut || true) {
                Ok(done) => {
                    wait = LOOK;
                    note(done.heard.faults.iter().map(of_other).collect());
                }
                Err(error) => {
                    note(vec![of(&error)]);
                    tracing::debug!(%error, "no exchange with the hub");
                    wait = (wait * 2).min(LOOK_MAX);
                }
            }
            match inbox.recv_timeout(wait) {
                Err(RecvTimeoutError::Timeout) => {}
                Ok(setting) => break Ok(setting),
                Err(RecvTimeoutError::Disconnected) => return,
            }
        };
    }
}
