//! The hub at length: three kiosks, 100,000 events, a server that is killed again and again, a cut
//! and a restore; then the rate of sending beside bare inserts into the same table.
//!
//! `cargo run --release -p hub --example length [EVENTS]`, with Debian's postgresql installed.
#![allow(
    clippy::print_stdout,
    clippy::disallowed_methods,
    reason = "it tells figures, and takes them by the machine's clock"
)]
#[path = "../tests/hub/gym.rs"]
#[allow(dead_code, reason = "the tests use the rest")]
mod gym;
#[path = "../tests/hub/server.rs"]
#[allow(dead_code, reason = "the tests use the rest")]
mod server;

use gym::{Kiosk, kiosks};
use server::Server;
use std::time::Instant;

fn main() {
    let many = std::env::args().nth(1).and_then(|text| text.parse().ok());
    let many: u64 = many.unwrap_or(100_000);
    let Some(server) = Server::start_with("fsync=on") else {
        return;
    };
    let mut all = kiosks(&server, "Yard", &["north", "south", "east"]);
    all[1].ahead_ms = 7_200_000;
    all[2].ahead_ms = -86_400_000;
    write_and_meet(&server, &mut all, many);
    for kiosk in &mut all {
        kiosk.send(&server).expect("catches up");
    }
    for kiosk in &mut all {
        let heard = kiosk.hear(&server).expect("hears");
        assert_eq!(heard.faults, []);
    }
    agree(&server, &all);
    rate(&server, &all[0]);
}

/// Rounds in which all write, and the server goes down in the midst of what they send.
fn write_and_meet(server: &Server, all: &mut [Kiosk], many: u64) {
    let rounds = 20;
    for round in 0..rounds {
        for kiosk in all.iter_mut() {
            kiosk.clear_days(many / rounds / 3 + 1);
        }
        if round == 7 {
            server.kill();
            server.keep("yesterday");
            server.up();
        }
        let mut link = all[0].link(server).expect("opens");
        let reader = journal::SealedReader::open(&all[0].path()).expect("opens");
        // What became of it is seen at the end.
        drop(hub::send(&mut link, &reader, || {
            server.kill();
            true
        }));
        if round == 14 {
            server.put_back("yesterday");
        }
        server.up();
        for kiosk in all.iter_mut() {
            // East is cut off all the while.
            if kiosk.name != "east" {
                kiosk.send(server).expect("sends");
                kiosk.hear(server).expect("hears");
            }
        }
    }
}

fn agree(server: &Server, all: &[Kiosk]) {
    let total: u64 = all.iter().map(Kiosk::last).sum();
    let count = server.sql("SELECT count(*) FROM pinladder.events");
    assert_eq!(count, total.to_string(), "none lost, none doubled");
    for kiosk in all {
        for other in all.iter().filter(|other| other.name != kiosk.name) {
            assert_eq!(kiosk.holds(&other.name), other.own(), "whole, by its seal");
        }
    }
    let size = server.sql("SELECT pg_total_relation_size('pinladder.events')");
    println!(
        "{total} events of {} kiosks: none lost, none doubled, all agree",
        all.len()
    );
    println!("the table with its indexes: {size} bytes");
}

/// Events that one connection sends in a second, beside as many bare inserts of the same rows.
fn rate(server: &Server, kiosk: &Kiosk) {
    let name = &kiosk.name;
    server.sql(&format!(
        "CREATE TABLE kept AS SELECT * FROM pinladder.events WHERE kiosk = '{name}'; \
         ALTER TABLE pinladder.events DISABLE TRIGGER USER; \
         DELETE FROM pinladder.events WHERE kiosk = '{name}'; \
         ALTER TABLE pinladder.events ENABLE TRIGGER USER; \
         UPDATE pinladder.kiosks SET last_seq = 0, last_seal = decode(repeat('00', 32), 'hex') \
         WHERE kiosk = '{name}'; VACUUM pinladder.events"
    ));
    let events = kiosk.last();
    let start = Instant::now();
    assert_eq!(kiosk.send(server).expect("sends").events, events);
    let ours = start.elapsed().as_secs_f64();
    let rows = "ALTER TABLE pinladder.events DISABLE TRIGGER USER; \
                DELETE FROM pinladder.events WHERE kiosk = 'NAME'; VACUUM pinladder.events";
    server.sql(&rows.replace("NAME", name));
    // Bare: the same rows in the same portions, one statement each, no trigger, no rights to look at.
    let portions: Vec<String> = (0..=events / 1_000)
        .map(|at| {
            let (from, to) = (at * 1_000, (at + 1) * 1_000);
            format!(
                "INSERT INTO pinladder.events SELECT * FROM kept WHERE seq > {from} AND seq <= {to};"
            )
        })
        .collect();
    let start = Instant::now();
    server.sql(&portions.join("\n"));
    let bare = start.elapsed().as_secs_f64();
    let each: String = (1..=events.min(5_000))
        .map(|seq| format!("INSERT INTO kept SELECT * FROM kept WHERE seq = {seq} LIMIT 1;\n"))
        .collect();
    server.sql("CREATE INDEX ON kept (seq)");
    let start = Instant::now();
    server.sql(&each);
    let single = start.elapsed().as_secs_f64() / (events.min(5_000) as f64);
    println!(
        "sent: {:.0} events/s; bare inserts in portions of 1,000: {:.0} rows/s; one a commit: {:.0} rows/s",
        events as f64 / ours,
        events as f64 / bare,
        1.0 / single
    );
}
