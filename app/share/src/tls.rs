//! TLS: the owner's certificate, or one made on the device whose fingerprint the kiosk shows.
//!
//! Refuses: keys that others on the device can read, and versions before TLS 1.2 (which rustls
//! does not have).
use crate::token::hex;
use rcgen::{CertificateParams, DnType, KeyPair};
use rustls::ServerConfig;
use rustls::crypto::ring;
use rustls::pki_types::pem::PemObject as _;
use rustls::pki_types::{CertificateDer, PrivateKeyDer};
use sha2::{Digest as _, Sha256};
use std::fs;
use std::io::{self, Write as _};
use std::os::unix::fs::{MetadataExt as _, PermissionsExt as _};
use std::path::{Path, PathBuf};
use std::sync::Arc;
use thiserror::Error;
use tokio_rustls::TlsAcceptor;

/// The certificate that is made on the device, and its key, in the data folder.
const CERTIFICATE: &str = "lan-certificate.pem";
const KEY: &str = "lan-key.pem";

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

/// A certificate with its key, ready to be served with.
#[derive(Clone)]
pub struct Identity {
    /// Shakes hands.
    pub acceptor: TlsAcceptor,
    /// SHA-256 of the certificate, pairs of hexadecimal digits with colons, as browsers show it.
    pub fingerprint: String,
}

impl std::fmt::Debug for Identity {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(f, "Identity({})", self.fingerprint)
    }
}

/// The owner's certificate and key, files in PEM; else the ones made on this device in `folder`,
/// for `names` (addresses and host names), made now if there are none.
///
/// # Errors
/// [`TlsError`].
pub fn identity(
    folder: &Path,
    own: Option<(&Path, &Path)>,
    names: &[String],
) -> Result<Identity, TlsError> {
    let made = (folder.join(CERTIFICATE), folder.join(KEY));
    let (certificate, key) = match own {
        Some((certificate, key)) => (certificate.to_owned(), key.to_owned()),
        None => {
            if !made.0.exists() || !made.1.exists() {
                make(&made, names)?;
            }
            made
        }
    };
    let content = |path: &Path, wanted, detail: String| TlsError::Content {
        path: path.to_owned(),
        wanted,
        detail,
    };
    let text = read(&certificate)?;
    let chain: Result<Vec<_>, _> = CertificateDer::pem_slice_iter(&text).collect();
    let chain = chain.map_err(|e| content(&certificate, "certificate", e.to_string()))?;
    let Some(first) = chain.first() else {
        let none = "there is none in it".to_owned();
        return Err(content(&certificate, "certificate", none));
    };
    let digest = Sha256::digest(first.as_ref());
    let pairs: Vec<_> = digest
        .iter()
        .map(|byte| hex(&[*byte]).to_uppercase())
        .collect();
    let secret = PrivateKeyDer::from_pem_slice(&read(&key)?)
        .map_err(|error| content(&key, "private key", error.to_string()))?;
    is_ours_alone(&key)?;
    let config = ServerConfig::builder_with_provider(Arc::new(ring::default_provider()))
        .with_safe_default_protocol_versions()
        .and_then(|config| config.with_no_client_auth().with_single_cert(chain, secret))
        .map_err(|error| TlsError::Unfit(error.to_string()))?;
    Ok(Identity {
        acceptor: TlsAcceptor::from(Arc::new(config)),
        fingerprint: pairs.join(":"),
    })
}

fn read(path: &Path) -> Result<Vec<u8>, TlsError> {
    fs::read(path).map_err(|source| TlsError::File {
        path: path.to_owned(),
        source,
    })
}

/// A key that others on the machine can read is no secret. The group may read it where it belongs
/// to root, as keys do that a package keeps for several services (the rule of PostgreSQL's
/// `ssl_key_file`).
fn is_ours_alone(key: &Path) -> Result<(), TlsError> {
    let about = fs::metadata(key).map_err(|source| TlsError::File {
        path: key.to_owned(),
        source,
    })?;
    let mode = about.permissions().mode() & 0o777;
    let open = if about.uid() == 0 { 0o037 } else { 0o077 };
    if mode & open == 0 {
        return Ok(());
    }
    Err(TlsError::Open {
        path: key.to_owned(),
        mode,
    })
}

/// Makes a certificate that signs itself, the key for this user alone.
fn make((certificate, key): &(PathBuf, PathBuf), names: &[String]) -> Result<(), TlsError> {
    let unfit = |error: rcgen::Error| TlsError::Unfit(error.to_string());
    let pair = KeyPair::generate().map_err(unfit)?;
    let mut params = CertificateParams::new(names.to_vec()).map_err(unfit)?;
    params
        .distinguished_name
        .push(DnType::CommonName, "pinladder");
    let made = params.self_signed(&pair).map_err(unfit)?;
    write(key, pair.serialize_pem().as_bytes())?;
    write(certificate, made.pem().as_bytes())
}

fn write(path: &Path, bytes: &[u8]) -> Result<(), TlsError> {
    let failed = |source| TlsError::File {
        path: path.to_owned(),
        source,
    };
    let folder = path.parent().unwrap_or(Path::new("."));
    let mut file = tempfile::Builder::new()
        .permissions(fs::Permissions::from_mode(0o600))
        .tempfile_in(folder)
        .map_err(failed)?;
    file.write_all(bytes).map_err(failed)?;
    file.as_file().sync_all().map_err(failed)?;
    file.persist(path).map(drop).map_err(|e| failed(e.error))
}
