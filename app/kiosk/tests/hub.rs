//! Kiosks of one gym that meet in a hub: a lifter goes on at another rack, whoever is cut off works
//! alone, and replay stays exact.
#[path = "../../hub/tests/hub/server.rs"]
#[allow(dead_code, reason = "the hub's own tests use the rest")]
mod server;

use chrono::{NaiveDate, NaiveDateTime};
use domain::elsewhere::Brought;
use domain::{LiftNo, State};
use hub::{HubError, Prepare};
use journal::{Journal, RecordReader};
use kiosk::clock::BenchClock;
use kiosk::gym_hub::{Exchanged, Member};
use kiosk::{Folder, Kiosk};
use server::Server;
use std::collections::BTreeMap;
use std::ops::ControlFlow;
use view::{Screen, Tap};

fn six() -> NaiveDateTime {
    let day = NaiveDate::from_ymd_opt(2026, 12, 2).expect("a day");
    day.and_hms_opt(18, 0, 0).expect("a time")
}

/// A box by a rack.
struct Rack {
    kiosk: Kiosk,
    clock: BenchClock,
    folder: Folder,
    member: Member,
    _data: tempfile::TempDir,
}

fn racks(server: &Server, names: &[(&str, i64)]) -> Vec<Rack> {
    let secrets = tempfile::tempdir().expect("a folder");
    let kiosks = names.iter().map(|(name, _)| (*name).to_owned()).collect();
    let (gym, secrets_at) = ("Yard".to_owned(), secrets.path().to_owned());
    let prepare = Prepare {
        gym,
        kiosks,
        secrets: secrets_at,
    };
    server.sql(&prepare.sql().expect("names"));
    let rack = |(name, ahead_s): &(&str, i64)| {
        let data = tempfile::tempdir().expect("a folder");
        let folder = Folder::open(Some(data.path())).expect("opens");
        let secret = secrets.path().join(format!("{name}.password"));
        std::fs::copy(secret, data.path().join(hub::PASSWORD_FILE)).expect("copies");
        let clock = BenchClock::at(six() + chrono::TimeDelta::seconds(*ahead_s));
        let kiosk = Kiosk::open(&folder, Box::new(clock.clone())).expect("opens");
        let member = Member::of(&folder, &server.address(name));
        Rack {
            kiosk,
            clock,
            folder,
            member,
            _data: data,
        }
    };
    names.iter().map(rack).collect()
}

impl Rack {
    /// One lifter's lift from the beginning to the end, each set as planned.
    fn lift(&mut self, lifter: &str) {
        if !matches!(self.kiosk.frame().screen, Screen::Choose(_)) {
            self.kiosk.tap(&Tap::All);
        }
        self.kiosk.tap(&Tap::Lifter(lifter.into()));
        for _ in 0..60 {
            if matches!(self.kiosk.frame().screen, Screen::End(_)) {
                return;
            }
            self.kiosk.tap(&Tap::Main);
            self.clock.advance_ms(400_000);
        }
        panic!("{lifter} comes to no end: {:?}", self.kiosk.frame().screen);
    }

    /// What the list of the day shows of a lifter.
    fn tile(&mut self, lifter: &str) -> String {
        self.kiosk.tap(&Tap::All);
        let Screen::Choose(choose) = self.kiosk.frame().screen else {
            panic!("all lifters are shown");
        };
        let mut tiles = choose.tiles.iter();
        let tile = tiles.find(|tile| tile.lifter == lifter);
        format!("{:?}", tile.expect("is on the list"))
    }

    /// An exchange with what the owner makes of it.
    fn meet(&mut self) -> Result<Exchanged, HubError> {
        let mut brought: Vec<Brought> = Vec::new();
        let done = self
            .member
            .exchange(&mut |lift| brought.push(lift), &mut || true);
        for lift in brought {
            self.kiosk.take_elsewhere(lift);
        }
        self.kiosk.tick();
        done
    }

    /// Sets that stand in the record, by lifter and lift: reps of each.
    fn record(&self) -> BTreeMap<(String, String), Vec<u8>> {
        let reader = RecordReader::open(&self.folder.record())
            .expect("opens")
            .expect("is there");
        let mut all: BTreeMap<(String, String), Vec<u8>> = BTreeMap::new();
        let each = |set: journal::SetRow| {
            let of = (set.lifter, set.lift);
            all.entry(of).or_default().push(set.reps);
            ControlFlow::Continue(())
        };
        reader.each_set(each).expect("reads");
        all
    }

    fn is_a_replay(&self) {
        let journal = Journal::open(&self.folder.journal()).expect("opens");
        let events = journal.events_after(0).expect("reads");
        let replayed = State::replay(events.iter().map(|(_, event)| event));
        assert_eq!(&replayed, self.kiosk.state());
        assert!(journal::prove_record(self.folder.path()).expect("is proven"));
    }
}

#[test]
fn a_lifter_goes_on_at_another_rack_which_knows_what_was_done() {
    let Some(server) = Server::start() else {
        return;
    };
    // South's clock is seven minutes ahead.
    let mut all = racks(&server, &[("north", 0), ("south", 420)]);
    let [north, south] = &mut all[..] else {
        unreachable!()
    };
    let before = south.tile("Hamza");
    north.lift("Hamza");
    north.meet().expect("meets");
    let done = south.meet().expect("meets");
    assert!(done.heard.events > 0 && done.heard.faults.is_empty());
    assert_eq!(north.record(), south.record());
    assert!(!south.record().is_empty());
    let date = six().date();
    let own = |rack: &Rack| {
        let lifts: Vec<_> = rack
            .kiosk
            .state()
            .lifts_of("Hamza", date)
            .cloned()
            .collect();
        assert_eq!(lifts.len(), 1);
        lifts.into_iter().next().expect("one")
    };
    let (there, here) = (own(north), own(south));
    assert!(here.is_over() && south.kiosk.state().is_from_elsewhere(here.no));
    let next = |run: &domain::LiftRun| run.next.as_ref().expect("is decided").decided.decision.load;
    assert_eq!(
        next(&there),
        next(&here),
        "next time's load is the same at both"
    );
    assert_ne!(
        format!("{:?}", south.kiosk.day()),
        before,
        "the day knows of it"
    );
    // Nothing of it hangs on south's bars, and nobody is called there.
    assert_eq!(south.kiosk.state().bars.len(), 0);
    assert!(south.kiosk.state().rotations.is_empty());
    // Its owner goes on here with the next one, and north hears of that.
    south.lift("Marisol");
    south.meet().expect("meets");
    north.meet().expect("meets");
    assert_eq!(north.record(), south.record());
    for rack in [&*north, &*south] {
        rack.is_a_replay();
    }
}

#[test]
fn cut_off_both_write_about_one_lifter_and_both_are_kept() {
    let Some(server) = Server::start() else {
        return;
    };
    let mut all = racks(&server, &[("north", 0), ("south", -3_000), ("east", 0)]);
    for rack in &mut all {
        rack.meet().expect("meets");
    }
    server.kill();
    for rack in &mut all[..2] {
        rack.lift("Hamza");
        let told = rack.meet().expect_err("nobody there");
        assert!(matches!(told, HubError::Away { .. }), "{told}");
    }
    server.up();
    for _ in 0..2 {
        for rack in &mut all {
            rack.meet().expect("catches up");
        }
    }
    let records: Vec<_> = all.iter().map(Rack::record).collect();
    for rack in &all {
        let hamza = rack.kiosk.state().lifts_of("Hamza", six().date()).count();
        assert_eq!(hamza, 2, "both are kept");
        rack.is_a_replay();
    }
    let sorted = |record: &BTreeMap<(String, String), Vec<u8>>| -> Vec<_> {
        record
            .iter()
            .map(|(of, reps)| (of.clone(), reps.len()))
            .collect()
    };
    assert_eq!(sorted(&records[0]), sorted(&records[1]));
    assert_eq!(sorted(&records[0]), sorted(&records[2]));
}

#[test]
fn told_again_after_a_restart_nothing_is_doubled() {
    let Some(server) = Server::start() else {
        return;
    };
    let mut all = racks(&server, &[("north", 0), ("south", 0)]);
    all[0].lift("Hamza");
    all[0].meet().expect("meets");
    all[1].meet().expect("meets");
    let (record, last) = (all[1].record(), all[1].kiosk.seq());
    for _ in 0..3 {
        all[1].member = Member::of(&all[1].folder, &server.address("south"));
        all[1].meet().expect("meets");
    }
    // What was read of others is deleted: it is read and told again.
    let others = all[1].folder.path().join(hub::OTHERS_FOLDER);
    std::fs::remove_dir_all(others).expect("deletes");
    all[1].member = Member::of(&all[1].folder, &server.address("south"));
    all[1].meet().expect("meets");
    assert_eq!((all[1].record(), all[1].kiosk.seq()), (record, last));
    assert_eq!(
        all[1]
            .kiosk
            .state()
            .lifts
            .keys()
            .copied()
            .collect::<Vec<_>>(),
        [LiftNo(1)]
    );
}
