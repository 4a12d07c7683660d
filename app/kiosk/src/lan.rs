//! The LAN's thread: the page and its name on the network.
//!
//! Refuses: delaying a tap; its threads stand back for the owner's, and it shares nothing with the
//! owner but files that it only reads, and a desk whose locks are held for a moment.
use crate::clock;
use crate::folder::Folder;
use crate::kiosk::Kiosk;
use crate::shared::{self, Shared};
use crate::watch::{spawn_again, stand_back};
use chrono::DateTime;
use share::{Desk, Front, Identity, Places, Standing};
use std::net::{IpAddr, SocketAddr};
use std::path::PathBuf;
use std::sync::{Arc, Mutex, PoisonError};
use std::time::Duration;
use tokio::sync::watch;
use view::desk::LanCard;

/// Before an address that is taken is tried again.
const AGAIN_AFTER: Duration = Duration::from_secs(10);

/// How often the certificate's files are looked at.
const LOOK: Duration = Duration::from_secs(10);

/// How the page is to be served, by the settings in force.
#[derive(Debug, Clone, PartialEq, Eq)]
struct Settings {
    /// Where; `None` for not at all.
    at: Option<SocketAddr>,
    tls: bool,
    /// Whether the file says so, either way.
    tls_said: bool,
    certificate: Option<(PathBuf, PathBuf)>,
    name: String,
    hosts: Vec<String>,
    proxies: Vec<IpAddr>,
}

impl Settings {
    fn of(kiosk: &Kiosk) -> Self {
        let config = kiosk.config();
        let own = config.certificate.as_ref();
        Self {
            at: kiosk.lan(),
            tls: config.is_under_tls(),
            tls_said: config.tls.is_some(),
            certificate: own.map(|(certificate, key)| (certificate.into(), key.into())),
            name: config.name.clone(),
            hosts: config.hosts.clone(),
            proxies: config.proxies.clone(),
        }
    }

    /// The address under the name that the owner's certificate, or their proxy, is for.
    fn named(&self, at: SocketAddr) -> Option<String> {
        let host = self.hosts.first()?;
        if !self.proxies.is_empty() {
            return Some(format!("https://{host}"));
        }
        let is_for = self.certificate.is_some() && self.tls && !at.ip().is_loopback();
        is_for.then(|| format!("https://{host}:{}", at.port()))
    }

    /// Whether other machines reach the page without TLS.
    fn is_readable(&self, at: SocketAddr) -> bool {
        !self.tls && !at.ip().is_loopback()
    }

    /// What others call the page in a link.
    fn base(&self, at: SocketAddr) -> Option<String> {
        self.named(at).or_else(|| shared::base(at, self.tls))
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
            Some(at) => kiosk.share(Shared::new(self.desk.clone(), now.base(at))),
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

    /// Looks at the certificate, has it renewed where it is due, and tells how it stands.
    fn certified(&self, identity: Option<&Identity>) {
        let Some(identity) = identity else {
            self.desk.lay_out(|counter| counter.fingerprint.clear());
            return;
        };
        let Standing { trouble, ends_s } = identity.look(clock::unix_s());
        let print = identity.fingerprint();
        self.desk
            .lay_out(|counter| counter.fingerprint.clone_from(&print));
        let day = |end_s| DateTime::from_timestamp(end_s, 0).map(|end| end.date_naive());
        self.tell(|card| {
            card.fingerprint = print;
            card.root_fingerprint = identity.root_fingerprint();
            card.certificate_trouble = trouble.unwrap_or_default();
            card.certificate_ends = ends_s.and_then(day);
        });
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
        let mut names = vec![
            at.ip().to_string(),
            format!("{}.local", now.name),
            "localhost".to_owned(),
        ];
        names.extend(now.hosts.iter().cloned());
        let own = now.certificate.as_ref();
        let own = own.map(|(certificate, key)| (certificate.as_path(), key.as_path()));
        share::identity(&self.folder, own, &names, clock::unix_s()).map(Some)
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
    let announced_as = announced
        .as_ref()
        .map(|_| format!("{scheme}://{}.local:{}/", now.name, at.port()));
    let named = now.named(at).map(|base| format!("{base}/"));
    let readable = now.is_readable(at);
    tracing::info!(%at, tls = now.tls, certificate = ?identity, "the LAN page is on");
    if readable {
        tracing::warn!(
            "without TLS the coach's code travels readable; take tls = false out of kiosk.toml"
        );
    }
    lan.tell(|card| {
        *card = LanCard {
            address: format!("{scheme}://{at}/"),
            name: named.or(announced_as).unwrap_or_default(),
            readable,
            tls_by_itself: now.tls && !now.tls_said,
            ..LanCard::default()
        };
    });
    lan.certified(identity.as_ref());
    let front = Front {
        identity: identity.clone(),
        hosts: now.hosts.clone(),
        proxies: now.proxies.clone(),
    };
    let router = share::router(lan.places.clone(), lan.desk.clone(), front.clone());
    let served = share::serve(listener, router, &front, until);
    let looked = async {
        loop {
            tokio::time::sleep(LOOK).await;
            lan.certified(identity.as_ref());
        }
    };
    let served = tokio::select! {
        served = served => served,
        () = looked => Ok(()),
    };
    drop(announced);
    served.map_err(|error| format!("the LAN page ended ({error})"))
}

#[cfg(test)]
mod tests {
    use super::Settings;
    use std::net::SocketAddr;

    fn at(text: &str) -> SocketAddr {
        text.parse().expect("an address")
    }

    fn settings(tls: bool, own: bool, hosts: &[&str]) -> Settings {
        Settings {
            at: None,
            tls,
            tls_said: true,
            certificate: own.then(|| ("/c.pem".into(), "/k.pem".into())),
            name: "pinladder".to_owned(),
            hosts: hosts.iter().map(|host| (*host).to_owned()).collect(),
            proxies: Vec::new(),
        }
    }

    #[test]
    fn links_name_what_the_certificate_or_the_proxy_is_for() {
        let (near, far) = (at("127.0.0.1:8470"), at("192.168.1.20:8470"));
        let host = ["rack.gym.example", "rack"];
        let base = |settings: &Settings, at| settings.base(at).unwrap_or_default();
        assert_eq!(
            base(&settings(false, false, &host), far),
            "http://192.168.1.20:8470"
        );
        assert_eq!(
            base(&settings(true, false, &host), far),
            "https://192.168.1.20:8470"
        );
        assert_eq!(
            base(&settings(true, true, &[]), far),
            "https://192.168.1.20:8470"
        );
        assert_eq!(
            base(&settings(true, true, &host), far),
            "https://rack.gym.example:8470"
        );
        assert_eq!(
            base(&settings(true, true, &host), near),
            "",
            "nobody else reaches it"
        );
        let behind = Settings {
            proxies: vec![near.ip()],
            ..settings(false, false, &host)
        };
        assert_eq!(base(&behind, near), "https://rack.gym.example");
    }

    #[test]
    fn what_travels_readable_is_told_where_others_are() {
        let (near, far) = (at("127.0.0.1:8470"), at("192.168.1.20:8470"));
        assert!(settings(false, false, &[]).is_readable(far));
        assert!(!settings(false, false, &[]).is_readable(near));
        assert!(!settings(true, false, &[]).is_readable(far));
    }
}
