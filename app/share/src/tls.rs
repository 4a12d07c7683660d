//! TLS: the owner's certificate, read again when its files change, or the device's own, made anew
//! before it ends.
//!
//! Refuses: to stop serving because a new file is broken; the former certificate then stays. Keys
//! that others on the device can read, and versions before TLS 1.2 (which rustls does not have).
use crate::authority::{self, DAY_S};
use crate::pem_files::{self, Stamp};
use crate::token::hex;
use rustls::ServerConfig;
use rustls::client::verify_server_name;
use rustls::crypto::ring;
use rustls::pki_types::{CertificateDer, ServerName};
use rustls::server::{ClientHello, ParsedCertificate, ResolvesServerCert};
use rustls::sign::CertifiedKey;
use sha2::{Digest as _, Sha256};
use std::io;
use std::path::{Path, PathBuf};
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};
use thiserror::Error;
use tokio_rustls::TlsAcceptor;

/// How long before its end an owner's certificate is told, days.
const TOLD_DAYS: i64 = 14;
/// How often the device's own is judged, seconds.
const JUDGED_S: i64 = 3_600;

/// Why there is no TLS.
#[derive(Debug, Error)]
pub enum TlsError {
    /// A file.
    #[error("{} cannot be used ({source}); check that it is there and open to this user alone", .path.display())]
    File {
        /// The file.
        path: PathBuf,
        /// In the system's words.
        source: io::Error,
    },
    /// Its content.
    #[error("{} is no {wanted} in PEM ({detail}); give the two files that your authority made, or leave both out", .path.display())]
    Content {
        /// The file.
        path: PathBuf,
        /// "certificate" or "private key".
        wanted: &'static str,
        /// What the library says.
        detail: String,
    },
    /// A key that others on the machine can read.
    #[error("{} can be read by others on this machine (mode {mode:04o}); make it private: chmod 600 {}", .path.display(), .path.display())]
    Open {
        /// The file.
        path: PathBuf,
        /// Its permissions.
        mode: u32,
    },
    /// Certificate and key do not fit, or none could be made.
    #[error(
        "the certificate cannot be used ({0}); give a certificate with its own key, or leave both out"
    )]
    Unfit(String),
}

/// A certificate with its key, ready to be served with; clones are the same one.
#[derive(Clone)]
pub struct Identity(Arc<Inner>);

struct Inner {
    acceptor: TlsAcceptor,
    shown: Arc<Shown>,
    source: Source,
    kept: Mutex<Kept>,
}

/// Where a certificate comes from.
enum Source {
    /// The owner's certificate and key.
    Owner(PathBuf, PathBuf),
    /// The device's own in a folder, for names.
    Device(PathBuf, Vec<String>),
}

/// What is known of the certificate that is served.
struct Kept {
    /// Of the owner's two files, as they were read.
    stamps: [Option<Stamp>; 2],
    /// The root of the device's own.
    root: Option<Arc<[u8]>>,
    ends_s: Option<i64>,
    /// When the device's own was last judged.
    judged_s: i64,
    /// Whether it is worth judging again.
    sound: bool,
    /// What keeps a newer one from being served.
    trouble: Option<String>,
}

/// The certificate that is served from now on; connections under way keep theirs.
struct Shown(Mutex<Arc<CertifiedKey>>);

impl Shown {
    fn now(&self) -> Arc<CertifiedKey> {
        Arc::clone(&self.0.lock().unwrap_or_else(PoisonError::into_inner))
    }

    fn put(&self, next: Arc<CertifiedKey>) {
        *self.0.lock().unwrap_or_else(PoisonError::into_inner) = next;
    }
}

impl std::fmt::Debug for Shown {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str("Shown")
    }
}

impl ResolvesServerCert for Shown {
    fn resolve(&self, _: ClientHello<'_>) -> Option<Arc<CertifiedKey>> {
        Some(self.now())
    }
}

impl std::fmt::Debug for Identity {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(f, "Identity({})", self.fingerprint())
    }
}

/// How it stands with a certificate.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Standing {
    /// Why a newer one is not served; the former one is.
    pub trouble: Option<String>,
    /// Its last second since 1970-01-01T00:00:00Z, where it is the owner's and ends within two
    /// weeks, or has ended.
    pub ends_s: Option<i64>,
}

/// The owner's certificate and key, files in PEM; else the device's own in `folder`, for `names`
/// (addresses and host names), made where there is none that holds at `now_s`, seconds since
/// 1970-01-01T00:00:00Z.
///
/// # Errors
/// [`TlsError`].
pub fn identity(
    folder: &Path,
    own: Option<(&Path, &Path)>,
    names: &[String],
    now_s: i64,
) -> Result<Identity, TlsError> {
    let source = match own {
        Some((certificate, key)) => Source::Owner(certificate.to_owned(), key.to_owned()),
        None => Source::Device(folder.to_owned(), names.to_vec()),
    };
    let (served, kept) = source.read(now_s)?;
    let shown = Arc::new(Shown(Mutex::new(served)));
    let resolver: Arc<dyn ResolvesServerCert> = shown.clone();
    let config = ServerConfig::builder_with_provider(Arc::new(ring::default_provider()))
        .with_safe_default_protocol_versions()
        .map_err(|error| TlsError::Unfit(error.to_string()))?
        .with_no_client_auth()
        .with_cert_resolver(resolver);
    Ok(Identity(Arc::new(Inner {
        acceptor: TlsAcceptor::from(Arc::new(config)),
        shown,
        source,
        kept: Mutex::new(kept),
    })))
}

impl Source {
    /// Reads certificate and key.
    fn read(&self, now_s: i64) -> Result<(Arc<CertifiedKey>, Kept), TlsError> {
        let mut kept = Kept {
            stamps: self.stamps(),
            root: None,
            ends_s: None,
            judged_s: now_s,
            sound: true,
            trouble: None,
        };
        match self {
            Self::Owner(certificate, key) => {
                let (chain, secret) = (pem_files::chain(certificate)?, pem_files::key(key)?);
                kept.ends_s = chain.first().and_then(authority::ends_s);
                let served = CertifiedKey::from_der(chain, secret, &ring::default_provider())
                    .map_err(|error| TlsError::Unfit(error.to_string()))?;
                Ok((Arc::new(served), kept))
            }
            Self::Device(folder, names) => {
                let made = authority::certified(folder, names, now_s)?;
                kept.root = Some(made.root.as_ref().into());
                kept.sound = made.sound;
                Ok((made.served, kept))
            }
        }
    }

    /// As the owner's files are now. Taken before they are read: what is written meanwhile is
    /// another stamp.
    fn stamps(&self) -> [Option<Stamp>; 2] {
        match self {
            Self::Owner(certificate, key) => [certificate, key].map(|path| pem_files::stamp(path)),
            Self::Device(..) => [None, None],
        }
    }
}

impl Identity {
    /// Shakes hands.
    pub(crate) fn acceptor(&self) -> TlsAcceptor {
        self.0.acceptor.clone()
    }

    /// SHA-256 of the certificate, pairs of hexadecimal digits with colons, as browsers show it.
    #[must_use]
    pub fn fingerprint(&self) -> String {
        let shown = self.0.shown.now();
        shown
            .cert
            .first()
            .map(|leaf| print_of(leaf))
            .unwrap_or_default()
    }

    /// The root that vouches for the device's own certificate, in DER; `None` where the certificate
    /// is the owner's.
    #[must_use]
    pub fn root(&self) -> Option<Arc<[u8]>> {
        self.kept().root.clone()
    }

    /// SHA-256 of the root, as phones show it before they trust it; empty without one.
    #[must_use]
    pub fn root_fingerprint(&self) -> String {
        self.root().map(|root| print_of(&root)).unwrap_or_default()
    }

    /// Whether the owner's certificate is for a host of this name.
    pub(crate) fn is_for(&self, host: &str) -> bool {
        if matches!(self.0.source, Source::Device(..)) {
            return false;
        }
        let shown = self.0.shown.now();
        let leaf: Option<&CertificateDer<'_>> = shown.cert.first();
        let leaf = leaf.and_then(|leaf| ParsedCertificate::try_from(leaf).ok());
        let name = ServerName::try_from(host).ok();
        leaf.zip(name)
            .is_some_and(|(leaf, name)| verify_server_name(&leaf, &name).is_ok())
    }

    /// Takes the owner's files again where they have changed, and makes the device's own anew
    /// where it is due; says how it stands at `now_s`. Files that cannot be used change nothing,
    /// and are tried again the next time.
    pub fn look(&self, now_s: i64) -> Standing {
        let mut kept = self.kept();
        let due = match &self.0.source {
            Source::Owner(..) => kept.trouble.is_some() || kept.stamps != self.0.source.stamps(),
            Source::Device(..) => {
                // A clock that was set counts too.
                kept.sound && (now_s - kept.judged_s).abs() >= JUDGED_S
            }
        };
        if due {
            match self.0.source.read(now_s) {
                Ok((served, read)) => {
                    self.0.shown.put(served);
                    *kept = read;
                    tracing::info!("the page's certificate was read anew");
                }
                Err(error) => {
                    let told = error.to_string();
                    if kept.trouble.as_ref() != Some(&told) {
                        tracing::error!(%error, "the former certificate is served on");
                    }
                    kept.judged_s = now_s;
                    kept.trouble = Some(told);
                }
            }
        }
        let ends_s = kept
            .ends_s
            .filter(|end_s| end_s - now_s < TOLD_DAYS * DAY_S);
        Standing {
            trouble: kept.trouble.clone(),
            ends_s,
        }
    }

    fn kept(&self) -> MutexGuard<'_, Kept> {
        self.0.kept.lock().unwrap_or_else(PoisonError::into_inner)
    }
}

fn print_of(certificate: &[u8]) -> String {
    let digest = Sha256::digest(certificate);
    let pairs = digest.iter().map(|byte| hex(&[*byte]).to_uppercase());
    pairs.collect::<Vec<_>>().join(":")
}
