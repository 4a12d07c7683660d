//! The LAN's thread: the page and its name on the network.
//!
//! Refuses: delaying a tap; its threads stand back for the owner's, and it shares nothing with the
//! owner but files that it only reads, and a desk whose locks are held for a moment.
use crate::folder::Folder;
use crate::kiosk::Kiosk;
use crate::shared::{self, Shared};
use crate::watch::{spawn_again, stand_back};
use share::{Desk, Identity, Places, TlsAcceptor};
use std::net::SocketAddr;
use std::path::PathBuf;
use std::sync::{Arc, Mutex, PoisonError};
use std::time::Duration;
use tokio::sync::watch;
use view::desk::LanCard;

/// Before an address that is taken is tried again.
const AGAIN_AFTER: Duration = Duration::from_secs(10);

/// How the page is to be served, by the settings in force.
#[derive(Debug, Clone, PartialEq, Eq)]
struct Settings {
    /// Where; `None` for not at all.
    at: Option<SocketAddr>,
    tls: bool,
    certificate: Option<(PathBuf, PathBuf)>,
    name: String,
}

impl Settings {
    fn of(kiosk: &Kiosk) -> Self {
        let config = kiosk.config();
        let own = config.certificate.as_ref();
        Self {
            at: kiosk.lan(),
            tls: config.tls,
            certificate: own.map(|(certificate, key)| (certificate.into(), key.into())),
            name: config.name.clone(),
        }
    }
}

/// The page from the owner's side; clones are the same page.
#[derive(Debug, Clone)]
pub struct Lan {
    settings: watch::Sender<Settings>,
    folder: PathBuf,
    places: Places,
    /// What the kiosk and its page share.
    pub desk: Desk,
    card: Arc<Mutex<LanCard>>,
}

impl Lan {
    /// As the kiosk's settings say.
    #[must_use]
    pub fn of(kiosk: &Kiosk, folder: &Folder, desk: Desk) -> Self {
        Self {
            settings: watch::Sender::new(Settings::of(kiosk)),
            folder: folder.path().to_owned(),
            places: Places {
                record: folder.record(),
                journal: folder.journal(),
            },
            desk,
            card: Arc::default(),
        }
    }

    /// Gives the kiosk its page, or takes it away, as the settings say.
    pub fn share(&self, kiosk: &mut Kiosk) {
        let now = self.settings.borrow();
        match now.at {
            Some(at) => kiosk.share(Shared::new(self.desk.clone(), shared::base(at, now.tls))),
            None => kiosk.unshare(),
        }
    }

    /// Follows the kiosk's settings at once where they have changed, and tells it how it stands.
    pub fn follow(&self, kiosk: &mut Kiosk) {
        let now = Settings::of(kiosk);
        let changed = self.settings.send_if_modified(|settings| {
            let other = *settings != now;
            if other {
                *settings = now;
            }
            other
        });
        if changed {
            self.share(kiosk);
        }
        kiosk.tell_lan(self.card());
    }

    /// How it stands with the page, for the desk.
    #[must_use]
    pub fn card(&self) -> LanCard {
        let card = self.card.lock().unwrap_or_else(PoisonError::into_inner);
        card.clone()
    }

    fn tell(&self, change: impl FnOnce(&mut LanCard)) {
        let mut card = self.card.lock().unwrap_or_else(PoisonError::into_inner);
        change(&mut card);
    }

    /// The certificate, where there is TLS.
    fn identity(
        &self,
        now: &Settings,
        at: SocketAddr,
    ) -> Result<Option<Identity>, share::TlsError> {
        if !now.tls {
            return Ok(None);
        }
        let names = [
            at.ip().to_string(),
            format!("{}.local", now.name),
            "localhost".to_owned(),
        ];
        let own = now.certificate.as_ref();
        let own = own.map(|(certificate, key)| (certificate.as_path(), key.as_path()));
        share::identity(&self.folder, own, &names).map(Some)
    }
}

/// Starts the thread; without an address it waits for one.
pub fn start(lan: Lan) {
    let thread = spawn_again("lan", move || {
        stand_back();
        // Readers and judges of codes run on threads of the runtime.
        let runtime = tokio::runtime::Builder::new_current_thread()
            .enable_all()
            .on_thread_start(stand_back)
            .build();
        match runtime {
            Ok(runtime) => runtime.block_on(serve(&lan)),
            Err(error) => tracing::error!(%error, "no LAN page: the system gives no event loop"),
        }
    });
    if let Err(error) = thread {
        tracing::error!(%error, "no LAN page: the system gives no thread");
    }
}

/// Serves the page for ever, by the settings in force: when they change it ends and begins anew.
/// An address that is taken is tried again.
async fn serve(lan: &Lan) {
    let mut changes = lan.settings.subscribe();
    loop {
        let now = changes.borrow_and_update().clone();
        let Some(at) = now.at else {
            lan.tell(|card| *card = LanCard::default());
            // The sender lives as long as the page.
            drop(changes.changed().await);
            continue;
        };
        let mut other = changes.clone();
        let until = async move { drop(other.changed().await) };
        if let Err(trouble) = serve_once(lan, &now, at, until).await {
            tracing::error!(error = trouble, "no LAN page");
            lan.tell(|card| {
                *card = LanCard {
                    trouble,
                    ..LanCard::default()
                };
            });
            tokio::select! {
                _ = changes.changed() => {}
                () = tokio::time::sleep(AGAIN_AFTER) => {}
            }
        }
    }
}

/// Serves until it is to end, or the listener fails; an error says what to do.
async fn serve_once(
    lan: &Lan,
    now: &Settings,
    at: SocketAddr,
    until: impl Future<Output = ()>,
) -> Result<(), String> {
    let identity = lan.identity(now, at).map_err(|error| error.to_string())?;
    let listener = share::bind(at).map_err(|error| error.to_string())?;
    let announced = share::announce(&now.name, at, now.tls).unwrap_or_else(|trouble| {
        tracing::warn!(trouble, "the page is not announced");
        None
    });
    let scheme = shared::scheme(now.tls);
    let named = announced
        .as_ref()
        .map(|_| format!("{scheme}://{}.local:{}/", now.name, at.port()));
    let print = identity
        .as_ref()
        .map(|identity| identity.fingerprint.clone());
    tracing::info!(%at, tls = now.tls, fingerprint = print.as_deref(), "the LAN page is on");
    let fingerprint = print.clone().unwrap_or_default();
    lan.desk
        .lay_out(|counter| counter.fingerprint = fingerprint);
    lan.tell(|card| {
        *card = LanCard {
            address: format!("{scheme}://{at}/"),
            name: named.unwrap_or_default(),
            fingerprint: print.unwrap_or_default(),
            trouble: String::new(),
        };
    });
    let router = share::router(lan.places.clone(), lan.desk.clone(), now.tls);
    let tls: Option<TlsAcceptor> = identity.map(|identity| identity.acceptor);
    let served = share::serve(listener, router, tls, until).await;
    drop(announced);
    served.map_err(|error| format!("the LAN page ended ({error})"))
}
