//! Reads what the gym's other kiosks have sent, and hands on lifts that are over there.
//!
//! Refuses: believing the hub. Each event is held to the chain of the kiosk that wrote it, and to
//! what was read before.
use crate::mirror::Mirror;
use crate::{Head, HubError, Link, OtherFault, is_kiosk_name};
use domain::elsewhere::Brought;
use std::collections::BTreeMap;
use std::path::{Path, PathBuf};

/// The folder in the data folder where other kiosks' journals are kept; it may be deleted.
pub const OTHERS_FOLDER: &str = "others";

/// Events that are asked for at once.
const ROWS: i64 = 500;

/// What was heard.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Heard {
    /// Events read.
    pub events: u64,
    /// Each other kiosk, and the event up to which it was read.
    pub kiosks: Vec<(String, u64)>,
    /// What is wrong with some of them.
    pub faults: Vec<OtherFault>,
}

/// The gym's other kiosks as read so far.
#[derive(Debug)]
pub struct Others {
    folder: PathBuf,
    own: String,
    mirrors: BTreeMap<String, Mirror>,
}

impl Others {
    /// In a data folder, for the kiosk that is called `own`.
    #[must_use]
    pub fn of(data: &Path, own: &str) -> Self {
        Self {
            folder: data.join(OTHERS_FOLDER),
            own: own.into(),
            mirrors: BTreeMap::new(),
        }
    }

    /// Reads what is new, and hands on each lift that is over, or is another than was told.
    /// `goes_on` is asked after each portion.
    ///
    /// # Errors
    /// [`HubError`] of the link. What is wrong with one kiosk is told in [`Heard`], and the others
    /// are read all the same.
    pub fn hear(
        &mut self,
        link: &mut Link,
        tell: &mut dyn FnMut(Brought),
        goes_on: &mut dyn FnMut() -> bool,
    ) -> Result<Heard, HubError> {
        let mut heard = Heard::default();
        for head in link.heads()? {
            if head.kiosk == self.own || !is_kiosk_name(&head.kiosk) {
                continue;
            }
            let upto = match self.follow(link, &head, &mut heard, (tell, goes_on)) {
                Ok(upto) => upto,
                Err(Failed::Link(error)) => return Err(error),
                Err(Failed::Other(fault)) => {
                    heard.faults.push(fault);
                    self.mirrors
                        .get(&head.kiosk)
                        .map_or(0, |mirror| mirror.upto)
                }
            };
            heard.kiosks.push((head.kiosk, upto));
            if !goes_on() {
                break;
            }
        }
        Ok(heard)
    }

    fn follow(
        &mut self,
        link: &mut Link,
        head: &Head,
        heard: &mut Heard,
        (tell, goes_on): (&mut dyn FnMut(Brought), &mut dyn FnMut() -> bool),
    ) -> Result<u64, Failed> {
        let kiosk = &head.kiosk;
        let unread = |error: journal::JournalError| {
            Failed::Other(OtherFault::Unread {
                kiosk: kiosk.clone(),
                detail: error.to_string(),
            })
        };
        if !self.mirrors.contains_key(kiosk) {
            let opened = Mirror::open(kiosk, &self.folder.join(kiosk)).map_err(unread)?;
            self.mirrors.insert(kiosk.clone(), opened);
        }
        let Some(mirror) = self.mirrors.get_mut(kiosk) else {
            return Ok(0);
        };
        mirror.tell_all(tell);
        let mut seal = mirror.seal().map_err(unread)?;
        let forked = |seq| {
            Failed::Other(OtherFault::Forked {
                kiosk: kiosk.clone(),
                seq,
            })
        };
        if head.seq == mirror.upto && head.seal != seal {
            return Err(forked(head.seq));
        }
        // A hub that was put back knows less for a while; that kiosk sends it again.
        while head.seq > mirror.upto {
            let rows = link
                .events(kiosk, mirror.upto.max(1), ROWS)
                .map_err(Failed::Link)?;
            let news = match rows.split_first() {
                Some((first, news)) if mirror.upto > 0 => {
                    if (first.seq, first.seal) != (mirror.upto, seal) {
                        return Err(forked(mirror.upto));
                    }
                    news
                }
                _ => &rows[..],
            };
            let Some(last) = news.last() else { break };
            seal = last.seal;
            mirror.take(news, tell).map_err(unread)?;
            heard.events += news.len() as u64;
            if !goes_on() {
                break;
            }
        }
        mirror.rest();
        Ok(mirror.upto)
    }
}

enum Failed {
    Link(HubError),
    Other(OtherFault),
}
