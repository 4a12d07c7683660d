//! What a kiosk's role may do, and all that it may not.
use crate::gym::kiosks;
use crate::server::Server;
use hub::{HubError, Prepare};

#[test]
fn a_kiosk_adds_its_own_events_reads_its_gyms_and_nothing_else() {
    let Some(server) = Server::start() else {
        return;
    };
    let mut yard = kiosks(&server, "Yard", &["north", "south"]);
    let mut barn = kiosks(&server, "Barn", &["barn"]);
    for kiosk in yard.iter_mut().chain(&mut barn) {
        kiosk.clear_days(3);
        kiosk.send(&server).expect("sends");
    }
    let password = yard[0].password();
    let north = |sql: &str| server.sql_as("north", &password, sql);
    assert_eq!(
        north("SELECT count(*) FROM pinladder.events").as_deref(),
        Ok("8")
    );
    let kiosks = north("SELECT string_agg(kiosk, ' ' ORDER BY kiosk) FROM pinladder.kiosks");
    assert_eq!(
        kiosks.as_deref(),
        Ok("north south"),
        "the barn is another gym"
    );
    let follows = "'2026', 1, 'x', '{}', sha256('x')";
    let follows = follows.replace("'2026'", "1");
    for bad in [
        "UPDATE pinladder.events SET body = ''",
        "DELETE FROM pinladder.events",
        "TRUNCATE pinladder.events",
        "UPDATE pinladder.kiosks SET last_seq = 0",
        "UPDATE pinladder.kiosks SET gym = 'Barn'",
        "INSERT INTO pinladder.kiosks VALUES ('west', 'Yard')",
        "CREATE TABLE mine (a int)",
        "CREATE TABLE pinladder.mine (a int)",
        "CREATE TEMP TABLE mine (a int)",
        "CREATE SCHEMA mine",
        "CREATE ROLE mine",
        "ALTER TABLE pinladder.events DISABLE TRIGGER ALL",
        "ALTER TABLE pinladder.events DISABLE ROW LEVEL SECURITY",
        "ALTER ROLE north SUPERUSER",
        "SET ROLE owner",
        "SET SESSION AUTHORIZATION south",
        "COPY pinladder.events TO PROGRAM 'cat'",
        "SELECT pg_read_file('/etc/passwd')",
        "SELECT pinladder.follows()",
        "SELECT pinladder.sealed(''::bytea, 1, 1, 1, '', '')",
    ] {
        let told = north(bad);
        assert!(told.is_err(), "{bad} was taken: {told:?}");
    }
    // Under another's name, for another gym, with a gap, with a seal that does not fit.
    for (kiosk, gym, seq) in [
        ("south", "Yard", 5),
        ("north", "Barn", 5),
        ("north", "Yard", 9),
        ("north", "Yard", 5),
    ] {
        let sql =
            format!("INSERT INTO pinladder.events VALUES ('{kiosk}', '{gym}', {seq}, {follows})");
        let told = north(&sql);
        assert!(told.is_err(), "{sql} was taken");
    }
    assert_eq!(server.sql("SELECT count(*) FROM pinladder.events"), "12");
    // Its owner neither, by accident.
    for bad in [
        "UPDATE pinladder.events SET body = ''",
        "TRUNCATE pinladder.events CASCADE",
    ] {
        let told = server.sql_as(crate::server::OWNER, "invented-for-the-test", bad);
        assert!(told.is_err(), "{bad} was taken");
    }
}

/// Sealed as it should be, so that the seal does not refuse it: it is another's all the same.
#[test]
fn a_rightly_sealed_event_of_another_kiosk_is_refused() {
    let Some(server) = Server::start() else {
        return;
    };
    let yard = kiosks(&server, "Yard", &["north", "south"]);
    drop(kiosks(&server, "Barn", &["barn"]));
    for (kiosk, gym) in [("south", "Yard"), ("barn", "Barn")] {
        let seal = server.sql(&format!(
            "SELECT pinladder.sealed(last_seal, 1, 1, 1, 'x', '{{}}') FROM pinladder.kiosks \
             WHERE kiosk = '{kiosk}'"
        ));
        let row = format!("('{kiosk}', '{gym}', 1, 1, 1, 'x', '{{}}', '{seal}')");
        let sql = format!("INSERT INTO pinladder.events VALUES {row}");
        let told = server.sql_as("north", &yard[0].password(), &sql);
        let told = told.expect_err("it is another's");
        assert!(told.contains("row-level security"), "{told}");
    }
}

#[test]
fn who_has_a_wrong_password_no_name_or_no_tables_is_told_what_to_do() {
    let Some(server) = Server::start() else {
        return;
    };
    let all = kiosks(&server, "Yard", &["north"]);
    let secret = all[0].folder.path().join(hub::PASSWORD_FILE);
    std::fs::write(&secret, "wrong\n").expect("writes");
    let told = all[0].send(&server).expect_err("is not let in");
    assert!(matches!(told, HubError::Refused { .. }), "{told}");
    server.sql("CREATE ROLE stranger LOGIN PASSWORD 'wrong'; GRANT CONNECT ON DATABASE pinladder TO stranger");
    let mut stranger = all.into_iter().next().expect("one");
    stranger.name = "stranger".into();
    let told = stranger.send(&server).expect_err("no kiosk");
    assert!(matches!(told, HubError::Unprepared { .. }), "{told}");
    let words = told.to_string();
    assert!(words.contains("pinladder hub prepare"), "{words}");
}

#[test]
fn prepare_can_be_run_again_and_takes_nobody_elses_role() {
    let Some(server) = Server::start() else {
        return;
    };
    let secrets = tempfile::tempdir().expect("a folder");
    let prepare = |gym: &str, kiosks: &[&str]| Prepare {
        gym: gym.into(),
        kiosks: kiosks.iter().map(|name| (*name).to_owned()).collect(),
        secrets: secrets.path().to_owned(),
    };
    let sql = prepare("O'Hara's yard", &["north"]).sql().expect("names");
    let password =
        std::fs::read_to_string(secrets.path().join("north.password")).expect("is there");
    assert!(!sql.contains(password.trim()), "no password is printed");
    server.sql(&sql);
    server.sql(&sql);
    let more = prepare("O'Hara's yard", &["north", "south"])
        .sql()
        .expect("names");
    server.sql(&more);
    let gyms = server.sql("SELECT DISTINCT gym FROM pinladder.kiosks");
    assert_eq!(gyms, "O'Hara's yard");
    assert!(
        server.sql_as("north", password.trim(), "SELECT 1").is_ok(),
        "the password stays"
    );
    let taken = |sql: &str| server.sql_as(crate::server::OWNER, "invented-for-the-test", sql);
    let told = taken(&prepare("Yard", &["north"]).sql().expect("names"));
    assert!(told.is_err_and(|told| told.contains("another gym")));
    let told = taken(
        &prepare("Yard", &[crate::server::OWNER])
            .sql()
            .expect("names"),
    );
    assert!(told.is_err_and(|told| told.contains("somebody else")));
    for bad in [
        "North",
        "a b",
        "",
        "pg_monitor",
        "pinladder_kiosk",
        "x'; DROP TABLE",
    ] {
        assert!(prepare("Yard", &[bad]).sql().is_err(), "{bad}");
    }
    assert!(prepare(" ", &["a"]).sql().is_err());
}
