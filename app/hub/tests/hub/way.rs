//! The way to the hub: under TLS by the server's own certificate, or not over an open network.
use crate::gym::kiosks;
use crate::server::Server;
use hub::{Address, HubError, Link, Places};
use std::path::Path;

fn places(folder: &Path) -> Places {
    Places {
        password: folder.join(hub::PASSWORD_FILE),
        roots: folder.join(hub::ROOTS_FILE),
    }
}

#[test]
fn an_open_network_is_refused_before_anything_is_sent() {
    let folder = tempfile::tempdir().expect("a folder");
    let address = Address::read("postgresql://north@192.0.2.7/pinladder").expect("an address");
    let told = Link::open(&address, &places(folder.path())).expect_err("no TLS");
    assert!(matches!(told, HubError::Open { .. }), "{told}");
    assert!(told.to_string().contains("hub.pem"));
}

#[test]
fn a_password_that_others_can_read_is_refused() {
    use std::os::unix::fs::PermissionsExt as _;
    let folder = tempfile::tempdir().expect("a folder");
    let secret = folder.path().join(hub::PASSWORD_FILE);
    std::fs::write(&secret, "x\n").expect("writes");
    std::fs::set_permissions(&secret, std::fs::Permissions::from_mode(0o644)).expect("is ours");
    let address = Address::read("postgresql://north@127.0.0.1:1/pinladder").expect("an address");
    let told = Link::open(&address, &places(folder.path())).expect_err("is open");
    assert!(told.to_string().contains("chmod 600"), "{told}");
}

#[test]
fn nobody_there_is_told_as_away() {
    let folder = tempfile::tempdir().expect("a folder");
    let address = Address::read("postgresql://north@127.0.0.1:1/pinladder").expect("an address");
    let told = Link::open(&address, &places(folder.path())).expect_err("nobody there");
    assert!(matches!(told, HubError::Away { .. }), "{told}");
}

#[test]
fn under_tls_the_servers_own_certificate_is_believed_and_no_other() {
    let Some(server) = Server::start() else {
        return;
    };
    let Some(own) = server.under_tls("one") else {
        return;
    };
    let mut all = kiosks(&server, "Yard", &["north"]);
    all[0].clear_days(3);
    let roots = all[0].folder.path().join(hub::ROOTS_FILE);
    std::fs::copy(&own, &roots).expect("copies");
    all[0].send(&server).expect("under TLS");
    let tls = server.sql("SELECT count(*) FROM pg_settings WHERE name = 'ssl' AND setting = 'on'");
    assert_eq!(tls, "1");
    // Another server in between: nothing is said to it.
    server.under_tls("two").expect("made before");
    let told = all[0].send(&server).expect_err("another certificate");
    assert!(
        matches!(told, HubError::Away { .. } | HubError::Failed { .. }),
        "{told}"
    );
    std::fs::write(&roots, "no certificate\n").expect("writes");
    let told = all[0].send(&server).expect_err("holds none");
    assert!(matches!(told, HubError::File { .. }), "{told}");
}
