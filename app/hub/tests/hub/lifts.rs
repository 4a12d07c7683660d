//! What is handed on of lifts that are over at another kiosk.
use crate::gym::{Kiosk, kiosks};
use crate::server::Server;
use domain::elsewhere::Brought;
use domain::lift::Grip;
use domain::sheet::{BarSheet, RungKind};
use domain::state::Entered;
use domain::{Fact, Hold, Length, LiftNo, LiftSheet, Mass, MassUnit, Rung};

fn sheet(lifter: &str, rack: &str) -> Box<LiftSheet> {
    let kg = |kg: i64| Mass::from_ng(kg * 1_000_000_000_000);
    let rung = |kind, load| Rung {
        kind,
        load: kg(load),
        reps: 5,
        per_side: Vec::new(),
        take_off: Vec::new(),
        put_on: Vec::new(),
        belt: false,
        straps: false,
        rest_s: 60,
    };
    Box::new(LiftSheet {
        lifter: lifter.into(),
        unit: MassUnit::Kg,
        lift: "rack pull".into(),
        track: None,
        date: chrono::NaiveDate::from_ymd_opt(2026, 3, 2).expect("a day"),
        rack: rack.into(),
        bar: BarSheet {
            name: "yard bar".into(),
            mass: kg(20),
            collars: kg(0),
            shaft_diameter: Length::from_nm(28_000_000),
            sleeve: Length::from_nm(400_000_000),
        },
        pins: None,
        hooks: None,
        overlap: None,
        grip: Grip::DoubleOverhand,
        rungs: vec![rung(RungKind::WarmUp, 60), rung(RungKind::Work, 120)],
        groups: Vec::new(),
        asked: kg(120),
        cues: Vec::new(),
        cautions: Vec::new(),
        warnings: Vec::new(),
        note: String::new(),
    })
}

fn set(no: u32, rung: u16, reps: u8) -> Fact {
    Fact::SetDone {
        no: LiftNo(no),
        rung,
        reps,
        hold: Hold::Kept,
    }
}

fn begun(no: u32, lifter: &str, rack: &str) -> Fact {
    Fact::LiftBegun {
        no: LiftNo(no),
        sheet: sheet(lifter, rack),
    }
}

fn told(kiosk: &mut Kiosk, server: &Server) -> Vec<Brought> {
    kiosk.hear(server).expect("hears");
    std::mem::take(&mut kiosk.brought)
}

fn reps(lift: &Brought) -> Vec<u8> {
    let sets = lift.entries.iter().filter_map(|done| match done.what {
        Entered::Set { reps, .. } => Some(reps),
        Entered::Skipped
        | Entered::Stopped
        | Entered::WentOn
        | Entered::Settled
        | Entered::LeftOpen => None,
    });
    sets.collect()
}

#[test]
fn a_lift_comes_when_it_is_over_again_when_it_was_changed_and_once_after_a_restart() {
    let Some(server) = Server::start() else {
        return;
    };
    let mut all = kiosks(&server, "Yard", &["north", "south"]);
    let [north, south] = &mut all[..] else {
        unreachable!()
    };
    north.write(vec![begun(1, "Hamza", "north rack"), set(1, 0, 5)]);
    north.send(&server).expect("sends");
    assert_eq!(told(south, &server), [], "it is under way");
    north.write(vec![set(1, 1, 5)]);
    north.send(&server).expect("sends");
    let over = told(south, &server);
    assert_eq!(over.len(), 1);
    assert_eq!(reps(&over[0]), [5, 5]);
    assert_eq!(
        (over[0].origin.kiosk.as_str(), over[0].origin.no),
        ("north", LiftNo(1))
    );
    assert_eq!(told(south, &server), [], "once");
    // The last set was a slip of the finger.
    north.write(vec![Fact::EntryUndone { no: LiftNo(1) }]);
    north.send(&server).expect("sends");
    assert_eq!(told(south, &server), [], "it is under way again");
    north.write(vec![set(1, 1, 3)]);
    north.send(&server).expect("sends");
    let again = told(south, &server);
    assert_eq!(reps(&again[0]), [5, 3]);
    assert!(again[0].origin.seq > over[0].origin.seq);
    // A restart before it was taken over.
    south.others = hub::Others::of(south.folder.path(), "south");
    let after = told(south, &server);
    assert_eq!((after.len(), reps(&after[0])), (1, vec![5, 3]));
    // All of it is taken back.
    let undone = || Fact::EntryUndone { no: LiftNo(1) };
    north.write(vec![undone(), undone(), undone()]);
    north.send(&server).expect("sends");
    let gone = told(south, &server);
    assert_eq!((gone.len(), reps(&gone[0])), (1, vec![]));
}

#[test]
fn two_racks_that_wrote_about_one_lifter_are_both_kept_and_nothing_goes_round() {
    let Some(server) = Server::start() else {
        return;
    };
    let mut all = kiosks(&server, "Yard", &["north", "south", "east"]);
    all[0].write(vec![
        begun(1, "Hamza", "north rack"),
        set(1, 0, 5),
        set(1, 1, 5),
    ]);
    all[1].write(vec![
        begun(1, "Hamza", "south rack"),
        set(1, 0, 4),
        set(1, 1, 4),
    ]);
    for kiosk in &all {
        kiosk.send(&server).expect("sends");
    }
    // South takes north's lift over, as the kiosk does.
    let over = told(&mut all[1], &server);
    let lift = over.into_iter().next().expect("one");
    let state = domain::State::default();
    let command = domain::Command::TakeElsewhere(Box::new(lift));
    let events = domain::decide(&state, command, domain::Moment(1)).expect("is taken");
    let mut facts: Vec<Fact> = events.into_iter().map(|event| event.fact).collect();
    for fact in &mut facts {
        if let Fact::BegunElsewhere { no, .. } | Fact::DoneElsewhere { no, .. } = fact {
            *no = LiftNo(2);
        }
    }
    all[1].write(facts);
    all[1].send(&server).expect("sends");
    let mut lifts: Vec<(String, Vec<u8>)> = told(&mut all[2], &server)
        .iter()
        .map(|lift| (lift.origin.kiosk.clone(), reps(lift)))
        .collect();
    lifts.sort();
    let both = [
        ("north".to_owned(), vec![5, 5]),
        ("south".to_owned(), vec![4, 4]),
    ];
    assert_eq!(lifts, both, "each once, from the rack where it was done");
}
