//! Files with certificates and keys: read whole and judged, written whole or not at all.
//!
//! Refuses: keys that others on the machine can read.
use crate::tls::TlsError;
use rustls::pki_types::pem::PemObject as _;
use rustls::pki_types::{CertificateDer, PrivateKeyDer};
use std::fs;
use std::io::Write as _;
use std::os::unix::fs::{MetadataExt as _, PermissionsExt as _};
use std::path::Path;

/// The certificates of a file, the first one's own first.
pub(crate) fn chain(path: &Path) -> Result<Vec<CertificateDer<'static>>, TlsError> {
    let wrong = |detail: String| TlsError::Content {
        path: path.to_owned(),
        wanted: "certificate",
        detail,
    };
    let text = text(path)?;
    let chain: Result<Vec<_>, _> = CertificateDer::pem_slice_iter(&text).collect();
    let chain = chain.map_err(|error| wrong(error.to_string()))?;
    if chain.is_empty() {
        return Err(wrong("there is none in it".to_owned()));
    }
    Ok(chain)
}

/// The private key of a file, which is open to this user alone.
pub(crate) fn key(path: &Path) -> Result<PrivateKeyDer<'static>, TlsError> {
    let text = text(path)?;
    let key = PrivateKeyDer::from_pem_slice(&text).map_err(|error| TlsError::Content {
        path: path.to_owned(),
        wanted: "private key",
        detail: error.to_string(),
    })?;
    is_ours_alone(path)?;
    Ok(key)
}

pub(crate) fn text(path: &Path) -> Result<Vec<u8>, TlsError> {
    fs::read(path).map_err(|source| TlsError::File {
        path: path.to_owned(),
        source,
    })
}

/// A key that others on the machine can read is no secret. The group may read it where it belongs
/// to root, as keys do that a package keeps for several services (the rule of PostgreSQL's
/// `ssl_key_file`).
pub(crate) fn is_ours_alone(key: &Path) -> Result<(), TlsError> {
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

/// Writes a file for this user alone.
pub(crate) fn write(path: &Path, bytes: &[u8]) -> Result<(), TlsError> {
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

/// What tells that a file is another one, or has other content.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) struct Stamp {
    inode: u64,
    bytes: u64,
    changed: (i64, i64),
}

/// The stamp of a file as it is now; `None` where there is none. Links are followed.
pub(crate) fn stamp(path: &Path) -> Option<Stamp> {
    let about = fs::metadata(path).ok()?;
    Some(Stamp {
        inode: about.ino(),
        bytes: about.len(),
        changed: (about.ctime(), about.ctime_nsec()),
    })
}
