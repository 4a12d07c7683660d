//! The device's own certificates: a small root that phones can be told to trust, and under it the
//! one that the page is served with.
//!
//! Refuses: a root that could vouch for any other site; a certificate that lasts longer than
//! browsers accept; certificates that a browser would refuse, which are made anew.
use crate::pem_files::{self, chain, key};
use crate::tls::TlsError;
use crate::token::hex;
use chrono::{DateTime, Datelike as _, Days, NaiveDate};
use rcgen::{
    BasicConstraints, CertificateParams, CidrSubnet, DistinguishedName, DnType,
    ExtendedKeyUsagePurpose, GeneralSubtree, IsCa, Issuer, KeyPair, KeyUsagePurpose,
    NameConstraints, date_time_ymd,
};
use rustls::RootCertStore;
use rustls::client::WebPkiServerVerifier;
use rustls::client::danger::ServerCertVerifier as _;
use rustls::crypto::ring;
use rustls::pki_types::{CertificateDer, ServerName, UnixTime};
use rustls::sign::CertifiedKey;
use sha2::{Digest as _, Sha256};
use std::net::IpAddr;
use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::time::Duration;

/// Seconds of a day.
pub(crate) const DAY_S: i64 = 86_400;
/// How long the page's certificate holds, days; a day before it is made is added, for clocks that
/// are behind. Browsers take 398 at most (CA/Browser Forum, Baseline Requirements, 6.3.2).
const LEAF_DAYS: u64 = 365;
/// How long before its end it is made anew, days.
pub(crate) const RENEW_DAYS: i64 = 30;
/// How long the root holds, years, so that a phone is told once. Common practice, no source.
const ROOT_YEARS: i32 = 20;
/// A clock that says less was never set: 1 November 2026.
const EARLIEST_S: i64 = 1_793_491_200;
/// From when roots hold, so that a clock that is set later finds them good.
const ROOT_FROM: (i32, u8, u8) = (2026, 1, 1);
/// Networks that are nobody's on the internet (RFC 1918, 3927, 4193, 4291).
const NEAR: [(&str, u8); 8] = [
    ("10.0.0.0", 8),
    ("172.16.0.0", 12),
    ("192.168.0.0", 16),
    ("169.254.0.0", 16),
    ("127.0.0.0", 8),
    ("fc00::", 7),
    ("fe80::", 10),
    ("::1", 128),
];

/// Where they lie.
struct Files {
    root: PathBuf,
    root_key: PathBuf,
    leaf: PathBuf,
    key: PathBuf,
}

impl Files {
    fn of(folder: &Path) -> Self {
        Self {
            root: folder.join("lan-root.pem"),
            root_key: folder.join("lan-root-key.pem"),
            leaf: folder.join("lan-certificate.pem"),
            key: folder.join("lan-key.pem"),
        }
    }
}

/// The page's certificate with its key, and the root that vouches for it.
pub(crate) struct Certified {
    pub(crate) served: Arc<CertifiedKey>,
    pub(crate) root: CertificateDer<'static>,
    /// Whether a browser that trusts the root takes it: one that is not is not made on and on.
    pub(crate) sound: bool,
}

impl Certified {
    /// Whether it holds for `names` now and for a month. A clock that was never set says nothing
    /// about an end: then it is judged as of its own time.
    fn holds(&self, names: &[String], now_s: i64) -> bool {
        let Some(leaf) = self.served.cert.first() else {
            return false;
        };
        let soon_s = RENEW_DAYS * DAY_S;
        let now_s = match ends_s(leaf) {
            Some(end_s) if now_s < EARLIEST_S => end_s - soon_s - 1,
            _ => now_s,
        };
        let at = [now_s, now_s + soon_s];
        at.iter()
            .all(|at_s| accepts(&self.root, leaf, names, *at_s))
    }
}

/// The certificate for `names` (addresses and host names) in `folder`. What is there is used as
/// long as a browser that trusts the root takes it, and will for a month from `now_s`; else it is
/// made anew, under the same root wherever that can vouch for it.
///
/// # Errors
/// [`TlsError`] when it can neither be used nor made.
pub(crate) fn certified(
    folder: &Path,
    names: &[String],
    now_s: i64,
) -> Result<Certified, TlsError> {
    let files = Files::of(folder);
    // A key that others read is told, never quietly replaced: phones may trust its root.
    for secret in [&files.root_key, &files.key] {
        if secret.exists() {
            pem_files::is_ours_alone(secret)?;
        }
    }
    let holds = |all: &Certified| all.holds(names, now_s);
    if let Some(kept) = kept(&files).filter(holds) {
        return Ok(kept);
    }
    let now_s = now_s.max(EARLIEST_S);
    if let Ok(pair) = kept_root_key(&files) {
        make_leaf(&files, &pair, names, now_s)?;
        if let Some(made) = kept(&files).filter(holds) {
            tracing::info!("the page's certificate was made anew under the same root");
            return Ok(made);
        }
    }
    let pair = make_root(&files, names, now_s)?;
    make_leaf(&files, &pair, names, now_s)?;
    tracing::info!("a root of this device's own was made, and the page's certificate under it");
    let made = kept(&files);
    let made = made.ok_or_else(|| TlsError::Unfit("what was made cannot be read again".into()))?;
    let sound = made.holds(names, now_s);
    Ok(Certified { sound, ..made })
}

/// What is there, where it is whole and key and certificate belong together.
fn kept(files: &Files) -> Option<Certified> {
    let root = chain(&files.root).ok()?.into_iter().next()?;
    let provider = ring::default_provider();
    let (leaf, key) = (chain(&files.leaf).ok()?, key(&files.key).ok()?);
    let served = CertifiedKey::from_der(leaf, key, &provider).ok()?;
    Some(Certified {
        served: Arc::new(served),
        root,
        sound: true,
    })
}

fn kept_root_key(files: &Files) -> Result<KeyPair, TlsError> {
    let text = pem_files::text(&files.root_key)?;
    let text = String::from_utf8_lossy(&text);
    Ok(KeyPair::from_pem(&text)?)
}

/// Whether a browser that trusts `root` takes `leaf` for every one of `names` at a moment.
fn accepts(
    root: &CertificateDer<'static>,
    leaf: &CertificateDer<'_>,
    names: &[String],
    at_s: i64,
) -> bool {
    names.iter().all(|name| {
        let name = ServerName::try_from(name.as_str());
        name.is_ok_and(|name| refusal(root, leaf, &name, at_s).is_none())
    })
}

/// Why a browser that trusts `root` does not take `leaf` for `name`; `None` when it does.
fn refusal(
    root: &CertificateDer<'static>,
    leaf: &CertificateDer<'_>,
    name: &ServerName<'_>,
    at_s: i64,
) -> Option<rustls::Error> {
    let mut roots = RootCertStore::empty();
    if let Err(error) = roots.add(root.clone()) {
        return Some(error);
    }
    let provider = Arc::new(ring::default_provider());
    let verifier = WebPkiServerVerifier::builder_with_provider(Arc::new(roots), provider).build();
    let verifier = match verifier {
        Ok(verifier) => verifier,
        Err(error) => return Some(rustls::Error::General(error.to_string())),
    };
    let at = UnixTime::since_unix_epoch(Duration::from_secs(at_s.unsigned_abs()));
    verifier.verify_server_cert(leaf, &[], name, &[], at).err()
}

/// The last second of a certificate; `None` where that cannot be told.
pub(crate) fn ends_s(leaf: &CertificateDer<'static>) -> Option<i64> {
    use rustls::CertificateError::ExpiredContext;
    // Whoever is asked long after its end tells when that was: 31 December 9999.
    const LATE_S: i64 = 253_402_300_799;
    let name = ServerName::try_from("localhost").ok()?;
    let refusal = refusal(leaf, leaf, &name, LATE_S)?;
    let rustls::Error::InvalidCertificate(ExpiredContext { not_after, .. }) = refusal else {
        return None;
    };
    i64::try_from(not_after.as_secs()).ok()
}

impl From<rcgen::Error> for TlsError {
    fn from(error: rcgen::Error) -> Self {
        Self::Unfit(error.to_string())
    }
}

/// Makes a root and gives its key. It can vouch for nothing but names of this gym: whoever takes
/// the key away deceives nobody about any other site.
fn make_root(files: &Files, names: &[String], now_s: i64) -> Result<KeyPair, TlsError> {
    let pair = KeyPair::generate()?;
    let mut params = root_params(&pair);
    let (year, month, of_month) = ROOT_FROM;
    params.not_before = date_time_ymd(year, month, of_month);
    params.not_after = date_time_ymd(day(now_s, 0)?.0 + ROOT_YEARS, 1, 1);
    params.name_constraints = Some(NameConstraints {
        permitted_subtrees: subtrees(names),
        excluded_subtrees: Vec::new(),
    });
    let root = params.self_signed(&pair)?;
    // The key first: without its certificate it is made anew.
    pem_files::write(&files.root_key, pair.serialize_pem().as_bytes())?;
    pem_files::write(&files.root, root.pem().as_bytes())?;
    Ok(pair)
}

/// What is the same in the root and in whatever it signs: its name, which its key gives, so that a
/// phone that trusts two kiosks keeps their roots apart.
fn root_params(pair: &KeyPair) -> CertificateParams {
    let print = hex(&Sha256::digest(pair.public_key_raw())[..4]);
    let mut params = CertificateParams::default();
    params.distinguished_name = named(&format!("Pinladder root {print}"));
    params.is_ca = IsCa::Ca(BasicConstraints::Constrained(0));
    params.key_usages = vec![KeyUsagePurpose::KeyCertSign, KeyUsagePurpose::CrlSign];
    params
}

fn named(name: &str) -> DistinguishedName {
    let mut all = DistinguishedName::new();
    all.push(DnType::CommonName, name);
    all
}

/// Everything near, and those of `names` that are not.
fn subtrees(names: &[String]) -> Vec<GeneralSubtree> {
    let near = NEAR.iter().filter_map(|(address, prefix)| {
        let address: IpAddr = address.parse().ok()?;
        Some(GeneralSubtree::IpAddress(CidrSubnet::from_addr_prefix(
            address, *prefix,
        )))
    });
    let others = names.iter().map(|name| match name.parse::<IpAddr>() {
        Ok(address) => {
            let whole = if address.is_ipv4() { 32 } else { 128 };
            GeneralSubtree::IpAddress(CidrSubnet::from_addr_prefix(address, whole))
        }
        Err(_) => GeneralSubtree::DnsName(name.clone()),
    });
    let local = ["local", "localhost"].map(|name| GeneralSubtree::DnsName(name.to_owned()));
    near.chain(local).chain(others).collect()
}

/// Makes the page's certificate with a key of its own, signed by the root's.
fn make_leaf(files: &Files, root: &KeyPair, names: &[String], now_s: i64) -> Result<(), TlsError> {
    let pair = KeyPair::generate()?;
    let mut params = CertificateParams::new(names.to_vec())?;
    params.distinguished_name = named("Pinladder");
    let (year, month, of_month) = day(now_s - DAY_S, 0)?;
    params.not_before = date_time_ymd(year, month, of_month);
    let (year, month, of_month) = day(now_s, LEAF_DAYS)?;
    params.not_after = date_time_ymd(year, month, of_month);
    params.is_ca = IsCa::ExplicitNoCa;
    params.key_usages = vec![KeyUsagePurpose::DigitalSignature];
    params.extended_key_usages = vec![ExtendedKeyUsagePurpose::ServerAuth];
    params.use_authority_key_identifier_extension = true;
    let issuer = Issuer::new(root_params(root), root);
    let made = params.signed_by(&pair, &issuer)?;
    pem_files::write(&files.key, pair.serialize_pem().as_bytes())?;
    pem_files::write(&files.leaf, made.pem().as_bytes())
}

/// Year, month and day of a moment, so many days on.
fn day(at_s: i64, on: u64) -> Result<(i32, u8, u8), TlsError> {
    let day = DateTime::from_timestamp(at_s, 0).map(|at| at.date_naive());
    let day = day.and_then(|day| day.checked_add_days(Days::new(on)));
    let parts = |day: NaiveDate| {
        let (month, of_month) = (u8::try_from(day.month()), u8::try_from(day.day()));
        Some((day.year(), month.ok()?, of_month.ok()?))
    };
    let beyond = || TlsError::Unfit("the clock is beyond the calendar".to_owned());
    let parts = day.and_then(parts).ok_or_else(beyond)?;
    // Certificates have four digits of the year (RFC 5280, 4.1.2.5).
    if parts.0 + ROOT_YEARS > 9_999 {
        return Err(beyond());
    }
    Ok(parts)
}
