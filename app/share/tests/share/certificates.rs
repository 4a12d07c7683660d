//! The device's own root and certificate, judged as browsers judge them; owners who swap theirs.
use crate::owners::put;
use crate::secure::NOW_S;
use rcgen::{CertificateParams, DnType, Issuer, KeyPair};
use rustls::RootCertStore;
use rustls::client::WebPkiServerVerifier;
use rustls::client::danger::ServerCertVerifier as _;
use rustls::pki_types::pem::PemObject as _;
use rustls::pki_types::{CertificateDer, ServerName, UnixTime};
use share::{Identity, TlsError, identity};
use std::fs;
use std::os::unix::fs::PermissionsExt as _;
use std::path::Path;
use std::sync::Arc;
use std::time::Duration;
use tempfile::TempDir;

pub(crate) const DAY_S: i64 = 86_400;

pub(crate) fn names(more: &[&str]) -> Vec<String> {
    let own = ["192.168.1.20", "pinladder.local", "localhost"];
    own.iter()
        .chain(more)
        .map(|name| (*name).to_owned())
        .collect()
}

pub(crate) fn folder() -> TempDir {
    tempfile::tempdir().expect("a folder")
}

pub(crate) fn made(folder: &TempDir, more: &[&str], now_s: i64) -> Identity {
    identity(folder.path(), None, &names(more), now_s).expect("made")
}

fn leaf(folder: &Path) -> CertificateDer<'static> {
    let pem = fs::read(folder.join("lan-certificate.pem")).expect("reads");
    CertificateDer::from_pem_slice(&pem).expect("a certificate")
}

/// What rustls's verifier, which is a browser's own kind, says of a certificate under a root.
fn judged(root: &[u8], leaf: &CertificateDer<'_>, name: &str, at_s: i64) -> Result<(), String> {
    let mut roots = RootCertStore::empty();
    roots.add(root.to_vec().into()).expect("a root");
    let provider = Arc::new(rustls::crypto::ring::default_provider());
    let verifier = WebPkiServerVerifier::builder_with_provider(Arc::new(roots), provider);
    let verifier = verifier.build().expect("a verifier");
    let at = UnixTime::since_unix_epoch(Duration::from_secs(at_s.unsigned_abs()));
    let name = ServerName::try_from(name).expect("a name");
    let judged = verifier.verify_server_cert(leaf, &[], &name, &[], at);
    judged.map(drop).map_err(|error| error.to_string())
}

#[test]
fn phones_that_trust_the_root_take_the_certificate_for_a_year_and_its_names() {
    let folder = folder();
    let own = made(&folder, &["rack.gym.example"], NOW_S);
    let (root, leaf) = (own.root().expect("its own"), leaf(folder.path()));
    for name in names(&["rack.gym.example"]) {
        for day in [0, 1, 30, 364] {
            let at = NOW_S + day * DAY_S;
            assert_eq!(judged(&root, &leaf, &name, at), Ok(()), "{name}, day {day}");
        }
        // A clock that is a few hours behind takes it too.
        assert_eq!(judged(&root, &leaf, &name, NOW_S - DAY_S), Ok(()), "{name}");
        // 398 days at most (CA/Browser Forum, Baseline Requirements, 6.3.2).
        assert!(judged(&root, &leaf, &name, NOW_S - 2 * DAY_S).is_err());
        assert!(judged(&root, &leaf, &name, NOW_S + 366 * DAY_S).is_err());
    }
    for other in [
        "192.168.1.21",
        "other.local",
        "gym.example",
        "x.rack.gym.example",
    ] {
        assert!(judged(&root, &leaf, other, NOW_S).is_err(), "{other}");
    }
    // keyUsage, extendedKeyUsage with id-kp-serverAuth alone (RFC 5280, 4.2.1.3 and 4.2.1.12).
    let has = |oid: &[u8]| leaf.windows(oid.len()).any(|part| part == oid);
    assert!(has(&[0x06, 0x03, 0x55, 0x1d, 0x0f]), "keyUsage");
    let server = [0x30, 0x0a, 0x06, 0x08, 0x2b, 6, 1, 5, 5, 7, 3, 1];
    assert!(has(&server), "serverAuth alone");
    for file in [
        "lan-root.pem",
        "lan-root-key.pem",
        "lan-certificate.pem",
        "lan-key.pem",
    ] {
        let about = fs::metadata(folder.path().join(file)).expect("is there");
        assert_eq!(about.permissions().mode() & 0o777, 0o600, "{file}");
    }
}

/// Whoever steals the device and its keys deceives nobody about any other site.
#[test]
fn the_root_vouches_for_no_other_site() {
    let folder = folder();
    let own = made(&folder, &[], NOW_S);
    let root = own.root().expect("its own");
    let read = |file: &str| fs::read_to_string(folder.path().join(file)).expect("reads");
    let key = KeyPair::from_pem(&read("lan-root-key.pem")).expect("a key");
    let print = share_print(key.public_key_raw());
    let mut issuer = CertificateParams::default();
    issuer.distinguished_name = rcgen::DistinguishedName::new();
    let name = format!("Pinladder root {print}");
    issuer.distinguished_name.push(DnType::CommonName, name);
    let issuer = Issuer::new(issuer, &key);
    let sign = |name: &str| {
        let pair = KeyPair::generate().expect("a key");
        let params = CertificateParams::new(vec![name.to_owned()]).expect("a name");
        let made = params.signed_by(&pair, &issuer).expect("signs");
        judged(&root, made.der(), name, NOW_S)
    };
    assert_eq!(
        sign("pinladder.local"),
        Ok(()),
        "the thief's own way is right"
    );
    assert_eq!(sign("192.168.7.7"), Ok(()));
    for other in ["bank.example", "local.example", "8.8.8.8", "2001:db8::1"] {
        let told = sign(other).expect_err("not for the gym");
        assert!(told.contains("NameConstraint"), "{other}: {told}");
    }
}

fn share_print(key: &[u8]) -> String {
    use sha2::{Digest as _, Sha256};
    let digest = Sha256::digest(key);
    digest[..4]
        .iter()
        .map(|byte| format!("{byte:02x}"))
        .collect()
}

#[test]
fn it_is_renewed_a_month_before_its_end_under_the_same_root() {
    let folder = folder();
    let own = made(&folder, &[], NOW_S);
    let (first, root) = (own.fingerprint(), own.root());
    for day in 0..330 {
        own.look(NOW_S + day * DAY_S);
    }
    assert_eq!(own.fingerprint(), first, "as long as it holds for a month");
    for day in 330..700 {
        own.look(NOW_S + day * DAY_S);
        let at = NOW_S + day * DAY_S;
        let trusted = own.root().expect("its own");
        assert_eq!(
            judged(&trusted, &leaf(folder.path()), "localhost", at),
            Ok(()),
            "day {day}"
        );
    }
    assert_ne!(own.fingerprint(), first);
    assert_eq!(own.root(), root, "phones need not be told again");
}

#[test]
fn it_is_made_anew_with_the_name_and_the_address() {
    let folder = folder();
    let (root, first) = {
        let own = made(&folder, &[], NOW_S);
        (own.root(), own.fingerprint())
    };
    let same = made(&folder, &[], NOW_S);
    assert_eq!(
        (same.root(), same.fingerprint()),
        (root.clone(), first.clone())
    );
    let moved = [
        "10.0.0.9".to_owned(),
        "north.local".to_owned(),
        "localhost".to_owned(),
    ];
    let other = identity(folder.path(), None, &moved, NOW_S).expect("made");
    assert_ne!(other.fingerprint(), first);
    assert_eq!(
        other.root(),
        root,
        "near names and addresses: the same root"
    );
    let trusted = root.clone().expect("its own");
    assert_eq!(
        judged(&trusted, &leaf(folder.path()), "north.local", NOW_S),
        Ok(())
    );
    // A name that the root could not vouch for needs another root.
    let public = made(&folder, &["rack.gym.example"], NOW_S);
    assert_ne!(public.root(), root);
    let trusted = public.root().expect("its own");
    assert_eq!(
        judged(&trusted, &leaf(folder.path()), "rack.gym.example", NOW_S),
        Ok(())
    );
}

/// What earlier versions made: it signed itself, from 1975 to 4096, without any usage.
#[test]
fn the_certificate_of_an_earlier_version_is_made_anew() {
    let folder = folder();
    let pair = KeyPair::generate().expect("a key");
    let old = CertificateParams::new(names(&[])).expect("names");
    let old = old.self_signed(&pair).expect("signs");
    put(&folder.path().join("lan-certificate.pem"), &old.pem());
    put(&folder.path().join("lan-key.pem"), &pair.serialize_pem());
    let own = made(&folder, &[], NOW_S);
    let trusted = own.root().expect("its own");
    assert_eq!(
        judged(&trusted, &leaf(folder.path()), "localhost", NOW_S),
        Ok(())
    );
    assert!(
        judged(
            &trusted,
            &leaf(folder.path()),
            "localhost",
            NOW_S + 400 * DAY_S
        )
        .is_err()
    );
}

/// A machine without a battery for its clock starts in 1970, and is right a little later.
#[test]
fn a_clock_that_was_never_set_costs_no_trust() {
    let folder = folder();
    let own = made(&folder, &[], 5);
    let root = own.root();
    own.look(NOW_S);
    let trusted = root.clone().expect("its own");
    assert_eq!(
        judged(&trusted, &leaf(folder.path()), "localhost", NOW_S),
        Ok(())
    );
    assert_eq!(own.root(), root);
    // A year on it starts in 1970 again: what is there stays.
    let later = NOW_S + 400 * DAY_S;
    own.look(later);
    let print = own.fingerprint();
    let again = made(&folder, &[], 5);
    assert_eq!((again.fingerprint(), again.root()), (print, root));
}

#[test]
fn whatever_is_damaged_is_made_anew_and_an_open_key_is_told() {
    let whole = folder();
    made(&whole, &[], NOW_S);
    let files = [
        "lan-root.pem",
        "lan-root-key.pem",
        "lan-certificate.pem",
        "lan-key.pem",
    ];
    for file in files {
        for damage in ["gone", "empty", "half", "another's"] {
            let folder = folder();
            for each in files {
                let from = whole.path().join(each);
                fs::copy(from, folder.path().join(each)).expect("copies");
            }
            let path = folder.path().join(file);
            let text = fs::read(&path).expect("reads");
            match damage {
                "gone" => fs::remove_file(&path).expect("removes"),
                "empty" => fs::write(&path, "").expect("writes"),
                "half" => fs::write(&path, &text[..text.len() / 2]).expect("writes"),
                _ => {
                    let other = tempfile::tempdir().expect("a folder");
                    made(&other, &[], NOW_S);
                    fs::copy(other.path().join(file), &path).expect("copies");
                }
            }
            let own = made(&folder, &[], NOW_S);
            let trusted = own.root().expect("its own");
            let leaf = leaf(folder.path());
            assert_eq!(
                judged(&trusted, &leaf, "localhost", NOW_S),
                Ok(()),
                "{file} {damage}"
            );
        }
    }
    for secret in ["lan-root-key.pem", "lan-key.pem"] {
        let path = whole.path().join(secret);
        let mode = |mode| fs::set_permissions(&path, fs::Permissions::from_mode(mode));
        mode(0o644).expect("sets");
        let told = identity(whole.path(), None, &names(&[]), NOW_S);
        assert!(
            matches!(told, Err(TlsError::Open { .. })),
            "{secret}: {told:?}"
        );
        mode(0o600).expect("sets");
    }
}

/// A folder that takes nothing: what is served goes on being served, and why is told.
#[test]
fn where_it_cannot_be_renewed_the_former_one_is_served_and_why_is_told() {
    let folder = folder();
    let own = made(&folder, &[], NOW_S);
    let print = own.fingerprint();
    let kept = folder.path().to_owned();
    drop(folder);
    let told = own.look(NOW_S + 340 * DAY_S);
    assert!(
        told.trouble
            .is_some_and(|told| told.contains("cannot be used"))
    );
    assert_eq!(own.fingerprint(), print);
    // Once it can, it is.
    fs::create_dir(&kept).expect("makes");
    assert_eq!(own.look(NOW_S + 341 * DAY_S).trouble, None);
    assert_ne!(own.fingerprint(), print);
    fs::remove_dir_all(kept).expect("removes");
}
