//! TLS with a certificate made on the device, over a real socket.
use crate::gym::two_days;
use rustls::pki_types::pem::PemObject as _;
use rustls::pki_types::{CertificateDer, ServerName, UnixTime};
use rustls::time_provider::TimeProvider;
use rustls::{ClientConfig, RootCertStore};
use sha2::{Digest as _, Sha256};
use share::{Front, bind, identity, serve};
use std::sync::Arc;
use tokio::io::{AsyncReadExt as _, AsyncWriteExt as _};
use tokio::net::TcpStream;
use tokio::sync::oneshot;
use tokio_rustls::TlsConnector;

/// 2 December 2026, noon.
pub(crate) const NOW_S: i64 = 1_796_212_800;

/// A browser's clock that stands there.
#[derive(Debug)]
struct Then;

impl TimeProvider for Then {
    fn current_time(&self) -> Option<UnixTime> {
        let since = std::time::Duration::from_secs(NOW_S.unsigned_abs());
        Some(UnixTime::since_unix_epoch(since))
    }
}

#[tokio::test]
async fn the_device_s_own_certificate_is_served_and_kept() {
    let gym = two_days();
    let names = ["127.0.0.1".to_owned(), "pinladder.local".to_owned()];
    let own = identity(gym.folder(), None, &names, NOW_S).expect("made");
    let again = identity(gym.folder(), None, &names, NOW_S).expect("read");
    assert_eq!(own.fingerprint(), again.fingerprint(), "kept");
    let pem = std::fs::read(gym.folder().join("lan-certificate.pem")).expect("reads");
    let certificate = CertificateDer::from_pem_slice(&pem).expect("a certificate");
    let digest = Sha256::digest(certificate.as_ref());
    let pairs: Vec<_> = digest.iter().map(|byte| format!("{byte:02X}")).collect();
    assert_eq!(own.fingerprint(), pairs.join(":"));

    let mut roots = RootCertStore::empty();
    let root = own.root().expect("the device's own");
    roots.add(root.to_vec().into()).expect("a root");
    let provider = Arc::new(rustls::crypto::ring::default_provider());
    let config = ClientConfig::builder_with_details(provider, Arc::new(Then))
        .with_safe_default_protocol_versions()
        .expect("versions")
        .with_root_certificates(roots)
        .with_no_client_auth();
    let connector = TlsConnector::from(Arc::new(config));

    let listener = bind("127.0.0.1:0".parse().expect("an address")).expect("binds");
    let at = listener.local_addr().expect("bound");
    let (end, ended) = oneshot::channel::<()>();
    let front = Front {
        identity: Some(own.clone()),
        ..Front::default()
    };
    let server = serve(listener, gym.router_of(front.clone()), &front, async {
        drop(ended.await);
    });
    let request = format!("GET /board HTTP/1.1\r\nHost: {at}\r\nConnection: close\r\n\r\n");
    let client = async {
        let stream = TcpStream::connect(at).await.expect("connects");
        let name = ServerName::try_from("127.0.0.1").expect("a name");
        let mut stream = connector.connect(name, stream).await.expect("shakes hands");
        stream.write_all(request.as_bytes()).await.expect("sends");
        let mut answer = String::new();
        drop(stream.read_to_string(&mut answer).await);
        assert!(answer.starts_with("HTTP/1.1 200 OK\r\n"), "{answer}");
        // Without TLS nothing is told but the way: bookmarks of the time before lead on.
        let answer = plainly(at, &request).await;
        assert!(answer.starts_with("HTTP/1.1 307 "), "{answer}");
        let on = format!("\r\nlocation: https://{at}/board\r\n");
        assert!(
            answer.contains(&on) && answer.ends_with("\r\n\r\n"),
            "{answer}"
        );
        let form = request.replace("GET /board", "POST /sign-in");
        let answer = plainly(at, &form).await;
        assert!(answer.starts_with("HTTP/1.1 403 "), "{answer}");
        assert!(
            answer.contains("https://") && !answer.contains("location"),
            "{answer}"
        );
        for bad in ["Host: a@b\r\n", "", "Host: a b\r\n"] {
            let odd = request.replace(&format!("Host: {at}\r\n"), bad);
            let answer = plainly(at, &odd).await;
            assert!(answer.starts_with("HTTP/1.1 400 "), "{bad}: {answer}");
        }
        end.send(()).expect("the server runs");
    };
    let (served, ()) = tokio::join!(server, client);
    served.expect("ends well");
}

/// What is answered to whoever does not know of TLS.
async fn plainly(at: std::net::SocketAddr, request: &str) -> String {
    let mut plain = TcpStream::connect(at).await.expect("connects");
    plain.write_all(request.as_bytes()).await.expect("sends");
    let mut answer = String::new();
    drop(plain.read_to_string(&mut answer).await);
    answer
}

#[test]
fn files_that_are_no_certificate() {
    use std::os::unix::fs::PermissionsExt as _;
    let folder = tempfile::tempdir().expect("a folder");
    let names = ["localhost".to_owned()];
    identity(folder.path(), None, &names, NOW_S).expect("made");
    let key = folder.path().join("lan-key.pem");
    let mode = std::fs::metadata(&key)
        .expect("is there")
        .permissions()
        .mode();
    assert_eq!(mode & 0o777, 0o600);
    let certificate = folder.path().join("lan-certificate.pem");
    let noise = folder.path().join("noise.pem");
    std::fs::write(&noise, "no PEM").expect("writes");
    let told = |certificate: &std::path::Path, key: &std::path::Path| {
        let error = identity(folder.path(), Some((certificate, key)), &names, NOW_S);
        let told = error.expect_err("unusable").to_string();
        told.replace(&folder.path().display().to_string(), "DATA")
    };
    assert!(told(&noise, &key).starts_with("DATA/noise.pem is no certificate in PEM"));
    assert!(told(&certificate, &noise).starts_with("DATA/noise.pem is no private key in PEM"));
    // A key that others can read is no secret; its group may where root keeps it.
    let set = |mode| {
        let mode = std::fs::Permissions::from_mode(mode);
        std::fs::set_permissions(&key, mode).expect("sets");
    };
    set(0o644);
    assert_eq!(
        told(&certificate, &key),
        "DATA/lan-key.pem can be read by others on this machine (mode 0644); make it private: \
         chmod 600 DATA/lan-key.pem"
    );
    set(0o600);
    assert!(told(&folder.path().join("none"), &key).starts_with("DATA/none cannot be used"));
    let other = tempfile::tempdir().expect("a folder");
    identity(other.path(), None, &names, NOW_S).expect("made");
    let wrong = told(&certificate, &other.path().join("lan-key.pem"));
    assert!(
        wrong.starts_with("the certificate cannot be used"),
        "{wrong}"
    );
}
