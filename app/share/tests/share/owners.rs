//! An owner's certificate: swapped at half time, half a file, near its end, and the name it is for;
//! and the root that is offered where there is none.
use crate::certificates::{DAY_S, folder, made, names};
use crate::secure::NOW_S;
use rcgen::{CertificateParams, IsCa, KeyPair, date_time_ymd};
use share::{Identity, TlsError, identity};
use std::fs;
use std::os::unix::fs::PermissionsExt as _;
use std::path::{Path, PathBuf};
use tempfile::TempDir;

pub(crate) fn put(path: &Path, text: &str) {
    fs::write(path, text).expect("writes");
    fs::set_permissions(path, fs::Permissions::from_mode(0o600)).expect("sets");
}

/// The two files of an owner.
struct Owner {
    folder: TempDir,
    certificate: PathBuf,
    key: PathBuf,
}

impl Owner {
    fn new() -> Self {
        let folder = folder();
        let owner = Self {
            certificate: folder.path().join("gym.pem"),
            key: folder.path().join("gym.key"),
            folder,
        };
        let (certificate, key) = authority_s("rack.gym.example", 2027);
        put(&owner.certificate, &certificate);
        put(&owner.key, &key);
        owner
    }

    fn identity(&self) -> Result<Identity, TlsError> {
        let own = Some((self.certificate.as_path(), self.key.as_path()));
        identity(self.folder.path(), own, &names(&[]), NOW_S)
    }
}

/// What an authority gives to an owner, good until 3 December of a year: certificate and key.
fn authority_s(name: &str, year: i32) -> (String, String) {
    let pair = KeyPair::generate().expect("a key");
    let mut params = CertificateParams::new(vec![name.to_owned()]).expect("a name");
    params.is_ca = IsCa::ExplicitNoCa;
    params.not_before = date_time_ymd(2026, 1, 1);
    params.not_after = date_time_ymd(year, 12, 3);
    let made = params.self_signed(&pair).expect("signs");
    (made.pem(), pair.serialize_pem())
}

/// An owner who swaps at half time: first the one file, then the other, or half of one.
#[test]
fn an_owner_s_new_certificate_is_served_without_a_restart_and_a_broken_one_is_not() {
    let owner = Owner::new();
    let own = owner.identity().expect("reads");
    let first = own.fingerprint();
    assert_eq!(own.root(), None);
    assert_eq!(own.look(NOW_S), share::Standing::default());
    let (certificate, key) = authority_s("rack.gym.example", 2028);
    let broken = |what: &str, told: &str| {
        let standing = own.look(NOW_S);
        let trouble = standing.trouble.unwrap_or_default();
        assert!(trouble.contains(told), "{what}: {trouble:?}");
        assert_eq!(own.fingerprint(), first, "{what}");
    };
    put(&owner.certificate, &certificate[..certificate.len() / 2]);
    broken("half a certificate", "is no certificate in PEM");
    put(&owner.certificate, "");
    broken("an empty one", "there is none in it");
    put(&owner.certificate, &certificate);
    broken("another's key", "the certificate cannot be used");
    put(&owner.key, &key[..key.len() / 2]);
    broken("half a key", "is no private key in PEM");
    fs::remove_file(&owner.key).expect("removes");
    broken("no key", "cannot be used");
    fs::write(&owner.key, &key).expect("writes");
    fs::set_permissions(&owner.key, fs::Permissions::from_mode(0o644)).expect("sets");
    broken("a key that others read", "can be read by others");
    put(&owner.key, &key);
    assert_eq!(
        own.look(NOW_S),
        share::Standing::default(),
        "both are there"
    );
    assert_ne!(own.fingerprint(), first);
    // The same under a link that leads elsewhere, as renewing programs do.
    let second = own.fingerprint();
    let (certificate, key) = authority_s("rack.gym.example", 2029);
    for (path, text) in [(&owner.certificate, certificate), (&owner.key, key)] {
        let target = PathBuf::from(format!("{}.2029", path.display()));
        put(&target, &text);
        fs::remove_file(path).expect("removes");
        std::os::unix::fs::symlink(target, path).expect("links");
    }
    own.look(NOW_S);
    assert_ne!(own.fingerprint(), second);
    // What has not changed is not read again.
    let third = own.fingerprint();
    for _ in 0..3 {
        own.look(NOW_S);
    }
    assert_eq!(own.fingerprint(), third);
}

#[test]
fn the_end_of_an_owner_s_certificate_is_told_two_weeks_before() {
    let owner = Owner::new();
    let own = owner.identity().expect("reads");
    // 3 December 2027, midnight.
    let end_s = NOW_S - DAY_S / 2 + 366 * DAY_S;
    assert_eq!(own.look(end_s - 15 * DAY_S).ends_s, None);
    for at in [end_s - 13 * DAY_S, end_s + DAY_S] {
        assert_eq!(own.look(at).ends_s, Some(end_s));
    }
}

/// A certificate for a real name once answered 421.
#[tokio::test]
async fn a_host_that_the_owner_s_certificate_is_for_is_answered() {
    let owner = Owner::new();
    let gym = crate::gym::two_days();
    let front = |identity| share::Front {
        identity: Some(identity),
        ..share::Front::default()
    };
    let router = gym.router_of(front(owner.identity().expect("reads")));
    let ask = async |router: axum::Router, host: &str| {
        use tower::ServiceExt as _;
        let request = axum::http::Request::builder().uri("/").header("host", host);
        let request = request.body(axum::body::Body::empty()).expect("a request");
        router
            .oneshot(request)
            .await
            .expect("cannot fail")
            .status()
            .as_u16()
    };
    for (host, status) in [
        ("rack.gym.example", 200),
        ("RACK.gym.example:8470", 200),
        ("other.gym.example", 421),
        ("evil.example", 421),
    ] {
        assert_eq!(ask(router.clone(), host).await, status, "{host}");
    }
    // The device's own certificate names what the file does; it is no word of the owner's.
    let device = made(&owner.folder, &["rack.gym.example"], NOW_S);
    assert_eq!(
        ask(gym.router_of(front(device)), "rack.gym.example").await,
        421
    );
}

#[tokio::test]
async fn the_root_can_be_loaded_and_the_front_says_how_to_know_it() {
    let gym = crate::gym::two_days();
    let device = folder();
    let own = made(&device, &[], NOW_S);
    let router = gym.router_of(share::Front {
        identity: Some(own.clone()),
        ..share::Front::default()
    });
    let loaded = crate::gym::ask(router.clone(), "GET", "/root.crt").await;
    assert_eq!(
        loaded.headers()["content-type"],
        "application/x-x509-ca-cert"
    );
    let bytes = axum::body::to_bytes(loaded.into_body(), 1 << 16)
        .await
        .expect("whole");
    assert_eq!(bytes.as_ref(), own.root().expect("its own").as_ref());
    let front = crate::gym::text(crate::gym::ask(router, "GET", "/").await).await;
    let print = own.root_fingerprint().replace(':', " ");
    assert!(
        front.contains("/root.crt") && front.contains(&print),
        "{front}"
    );
    // Without a root of its own there is none to be loaded, and no word of it.
    let plain = crate::gym::ask(gym.router(), "GET", "/root.crt").await;
    assert_eq!(plain.status(), 404);
    let front = crate::gym::text(gym.open("/").await).await;
    assert!(!front.contains("root.crt"), "{front}");
}
