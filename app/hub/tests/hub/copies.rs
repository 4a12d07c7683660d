//! Whoever restores yesterday's disk, copies a box, or sets one up anew under an old name is told;
//! nothing is overwritten.
use crate::gym::{Kiosk, kiosks};
use crate::server::Server;
use hub::{HubError, OtherFault};

fn copy_of(kiosk: &Kiosk, to: &std::path::Path) {
    let from = kiosk.path();
    // The log was brought home when the journal was closed.
    std::fs::copy(&from, to).expect("copies");
}

fn put_back(kiosk: &Kiosk, from: &std::path::Path) {
    for end in ["-wal", "-shm"] {
        drop(std::fs::remove_file(format!(
            "{}{end}",
            kiosk.path().display()
        )));
    }
    drop(std::fs::remove_file(
        kiosk.folder.path().join(journal::MARK_FILE),
    ));
    std::fs::copy(from, kiosk.path()).expect("copies");
}

#[test]
fn yesterdays_disk_is_told_and_sends_nothing() {
    let Some(server) = Server::start() else {
        return;
    };
    let mut all = kiosks(&server, "Yard", &["north", "south"]);
    let image = tempfile::NamedTempFile::new().expect("a file");
    all[0].clear_days(20);
    copy_of(&all[0], image.path());
    all[0].clear_days(9);
    all[0].send(&server).expect("sends");
    all[1].hear(&server).expect("hears");
    let before =
        server.sql("SELECT md5(string_agg(body, '' ORDER BY kiosk, seq)) FROM pinladder.events");

    put_back(&all[0], image.path());
    let told = all[0].send(&server).expect_err("less than the hub knows");
    assert!(
        matches!(
            told,
            HubError::Behind {
                there: 30,
                here: 21,
                ..
            }
        ),
        "{told}"
    );
    // Somebody lifts on all the same: now it has as many, and others.
    all[0].ahead_ms = 60_000;
    all[0].clear_days(9);
    let told = all[0].send(&server).expect_err("another event 30");
    assert!(matches!(told, HubError::Forked { seq: 30, .. }), "{told}");
    all[0].clear_days(100);
    let told = all[0].send(&server).expect_err("more, on another branch");
    assert!(matches!(told, HubError::Forked { seq: 30, .. }), "{told}");
    let after =
        server.sql("SELECT md5(string_agg(body, '' ORDER BY kiosk, seq)) FROM pinladder.events");
    assert_eq!(before, after, "nothing was overwritten");
}

#[test]
fn of_a_box_and_its_copy_one_is_kept_and_the_other_told() {
    let Some(server) = Server::start() else {
        return;
    };
    let mut all = kiosks(&server, "Yard", &["north", "south"]);
    all[0].clear_days(20);
    all[0].send(&server).expect("sends");
    let image = tempfile::NamedTempFile::new().expect("a file");
    copy_of(&all[0], image.path());
    let twin = Kiosk {
        name: "north".into(),
        folder: tempfile::tempdir().expect("a folder"),
        others: hub::Others::of(std::path::Path::new("nowhere"), "north"),
        ahead_ms: 500,
        brought: Vec::new(),
    };
    let secret = all[0].folder.path().join(hub::PASSWORD_FILE);
    std::fs::copy(secret, twin.folder.path().join(hub::PASSWORD_FILE)).expect("copies");
    let mut twin = twin;
    put_back(&twin, image.path());
    assert_eq!(twin.send(&server).expect("the same so far").events, 0);
    // Both at once, from the same last event.
    all[0].clear_days(3_000);
    twin.clear_days(3_000);
    let (one, other) = std::thread::scope(|scope| {
        let (first, second, server) = (all[0].side(), twin.side(), &server);
        let one = scope.spawn(move || first.send(server));
        let other = scope.spawn(move || second.send(server));
        (one.join().expect("ends"), other.join().expect("ends"))
    });
    let (well, told) = if one.is_ok() {
        (one, other)
    } else {
        (other, one)
    };
    assert_eq!(well.expect("one is kept").events, 3_000);
    let told = told.expect_err("the other is told");
    assert!(
        matches!(told, HubError::Forked { .. } | HubError::Behind { .. }),
        "{told}"
    );
    assert_eq!(server.sql("SELECT count(*) FROM pinladder.events"), "3021");
    all[1].hear(&server).expect("hears");
    let held = all[1].holds("north");
    assert!(
        held == all[0].own() || held == twin.own(),
        "one of the two, whole"
    );
}

#[test]
fn a_box_set_up_anew_under_an_old_name_is_told() {
    let Some(server) = Server::start() else {
        return;
    };
    let mut all = kiosks(&server, "Yard", &["north"]);
    all[0].clear_days(4);
    all[0].send(&server).expect("sends");
    for end in ["", "-wal", "-shm"] {
        drop(std::fs::remove_file(format!(
            "{}{end}",
            all[0].path().display()
        )));
    }
    drop(std::fs::remove_file(
        all[0].folder.path().join(journal::MARK_FILE),
    ));
    all[0].ahead_ms = 1;
    all[0].clear_days(9);
    let told = all[0].send(&server).expect_err("another beginning");
    assert!(matches!(told, HubError::Forked { seq: 5, .. }), "{told}");
}

/// Two hubs: a kiosk is pointed at one, then at the other, then back.
#[test]
fn two_hubs_both_get_all_of_it() {
    let (Some(one), Some(two)) = (Server::start(), Server::start()) else {
        return;
    };
    let mut all = kiosks(&one, "Yard", &["north"]);
    let password = all[0].password();
    drop(kiosks(&two, "Yard", &["north"]));
    two.sql(&format!("ALTER ROLE north PASSWORD '{password}'"));
    all[0].clear_days(10);
    all[0].send(&one).expect("sends");
    all[0].clear_days(10);
    all[0].send(&two).expect("sends all of it");
    all[0].send(&one).expect("and what is missing there");
    for server in [&one, &two] {
        assert_eq!(server.sql("SELECT count(*) FROM pinladder.events"), "21");
    }
}

/// A hub whose keeper rewrote what was read: the reader believes its own.
#[test]
fn a_hub_that_changes_its_mind_is_told_and_not_believed() {
    let Some(server) = Server::start() else {
        return;
    };
    let mut all = kiosks(&server, "Yard", &["north", "south"]);
    all[0].clear_days(8);
    all[0].send(&server).expect("sends");
    all[1].hear(&server).expect("hears");
    let held = all[1].holds("north");
    server.sql(
        "ALTER TABLE pinladder.events DISABLE TRIGGER USER; \
         DELETE FROM pinladder.events WHERE seq = 9; \
         UPDATE pinladder.events SET body = body || ' ' WHERE seq = 3; \
         ALTER TABLE pinladder.events ENABLE TRIGGER USER;",
    );
    all[0].clear_days(2);
    let told = all[1].hear(&server).expect("hears");
    assert_eq!(told.events, 0);
    server.sql("UPDATE pinladder.kiosks SET last_seal = sha256('x') WHERE kiosk = 'north'");
    let told = all[1].hear(&server).expect("hears");
    assert!(
        matches!(&told.faults[..], [OtherFault::Forked { seq: 9, .. }]),
        "{told:?}"
    );
    assert_eq!(all[1].holds("north"), held);
    // Somebody who begins anew finds what was bent.
    std::fs::remove_dir_all(all[1].folder.path().join(hub::OTHERS_FOLDER)).expect("deletes");
    all[1].others = hub::Others::of(all[1].folder.path(), "south");
    let told = all[1].hear(&server).expect("hears");
    assert!(
        matches!(&told.faults[..], [OtherFault::Unread { .. }]),
        "{told:?}"
    );
}
