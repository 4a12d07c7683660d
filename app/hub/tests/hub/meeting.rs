//! Kiosks that meet, are cut off, and catch up; servers that are killed and put back.
use crate::gym::kiosks;
use crate::server::Server;
use hub::HubError;

/// What the hub has, and the order that all agree on.
fn in_hub(server: &Server) -> (u64, String) {
    let count = server.sql("SELECT count(*) FROM pinladder.events");
    let order = server.sql(
        "SELECT md5(string_agg(at_ms || ' ' || kiosk || ' ' || seq, E'\\n' \
         ORDER BY at_ms, kiosk, seq)) FROM pinladder.events",
    );
    (count.parse().expect("a number"), order)
}

#[test]
fn three_kiosks_meet_and_each_holds_what_the_others_wrote() {
    let Some(server) = Server::start() else {
        return;
    };
    let mut all = kiosks(&server, "Yard", &["north", "south", "east"]);
    all[1].ahead_ms = 7_200_000;
    all[2].ahead_ms = -40_000_000;
    for (kiosk, many) in all.iter_mut().zip([2_500, 40, 0]) {
        kiosk.clear_days(many);
    }
    for kiosk in &all {
        let sent = kiosk.send(&server).expect("sends");
        assert_eq!((sent.events, sent.upto), (kiosk.last(), kiosk.last()));
        assert_eq!(kiosk.send(&server).expect("again").events, 0, "kept once");
    }
    for at in 0..3 {
        let heard = all[at].hear(&server).expect("hears");
        assert_eq!(heard.faults, []);
        for other in (0..3).filter(|other| *other != at) {
            assert_eq!(all[at].holds(&all[other].name), all[other].own());
        }
        assert_eq!(all[at].hear(&server).expect("again").events, 0);
    }
    let total: u64 = all.iter().map(super::gym::Kiosk::last).sum();
    assert_eq!(in_hub(&server).0, total);
}

#[test]
fn a_cable_that_is_pulled_and_a_server_that_is_killed_lose_and_double_nothing() {
    let Some(server) = Server::start() else {
        return;
    };
    let mut all = kiosks(&server, "Yard", &["north", "south"]);
    for round in 0..6_u64 {
        all[0].clear_days(700 + round);
        all[1].clear_days(13);
        // In the midst of a portion, before any, or after all of them.
        let mut link = all[0].link(&server).expect("opens");
        let reader = journal::SealedReader::open(&all[0].path()).expect("opens");
        let mut portions = 0;
        let sent = hub::send(&mut link, &reader, || {
            portions += 1;
            server.kill();
            round % 2 == 0
        });
        match sent {
            Ok(_) | Err(HubError::Away { .. } | HubError::Failed { .. }) => {}
            Err(other) => panic!("{other}"),
        }
        assert!(matches!(all[1].send(&server), Err(HubError::Away { .. })));
        server.up();
    }
    for kiosk in &all {
        kiosk.send(&server).expect("catches up");
    }
    let total: u64 = all.iter().map(super::gym::Kiosk::last).sum();
    assert_eq!(in_hub(&server).0, total);
    all[1].hear(&server).expect("hears");
    assert_eq!(all[1].holds("north"), all[0].own());
}

#[test]
fn a_server_that_is_put_back_as_it_was_yesterday_gets_all_again() {
    let Some(server) = Server::start() else {
        return;
    };
    let mut all = kiosks(&server, "Yard", &["north", "south"]);
    all[0].clear_days(30);
    all[0].send(&server).expect("sends");
    server.kill();
    server.keep("yesterday");
    server.up();
    all[0].clear_days(50);
    all[0].send(&server).expect("sends");
    all[1].hear(&server).expect("hears");
    let before = in_hub(&server);

    server.kill();
    server.put_back("yesterday");
    server.up();
    let heard = all[1]
        .hear(&server)
        .expect("a hub that knows less is no fault");
    assert_eq!((heard.events, heard.faults), (0, vec![]));
    all[0].send(&server).expect("sends again what it lost");
    assert_eq!(in_hub(&server), before);
    all[0].clear_days(5);
    all[0].send(&server).expect("sends");
    assert_eq!(all[1].hear(&server).expect("hears").events, 5);
    assert_eq!(all[1].holds("north"), all[0].own());
}

#[test]
fn what_was_read_of_others_may_be_deleted_or_damaged() {
    let Some(server) = Server::start() else {
        return;
    };
    let mut all = kiosks(&server, "Yard", &["north", "south"]);
    all[0].clear_days(60);
    all[0].send(&server).expect("sends");
    all[1].hear(&server).expect("hears");
    let place = all[1].folder.path().join(hub::OTHERS_FOLDER).join("north");
    std::fs::write(place.join(journal::JOURNAL_FILE), b"no journal at all").expect("writes");
    all[1].others = hub::Others::of(all[1].folder.path(), "south");
    all[1].hear(&server).expect("reads it anew");
    assert_eq!(all[1].holds("north"), all[0].own());
    std::fs::remove_dir_all(all[1].folder.path().join(hub::OTHERS_FOLDER)).expect("deletes");
    all[1].others = hub::Others::of(all[1].folder.path(), "south");
    all[1].hear(&server).expect("reads it anew");
    assert_eq!(all[1].holds("north"), all[0].own());
}
