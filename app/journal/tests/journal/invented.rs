//! Invented events: one of every kind, with every choice in it.
use crate::invented_next::{overridden, raised, settled};
use chrono::NaiveDate;
use domain::lift::{Grip, Landmark};
use domain::prescription::{LoadWish, SetGroup};
use domain::rotation::{CalledTurn, Station};
use domain::sheet::{BarSheet, HookSheet, Overlap, PinSheet, Rated, RungKind, Warning};
use domain::{
    Event, Fact, Hold, Length, LiftNo, LiftSheet, Mass, MassUnit, Moment, PlateFace, Prescription,
    Rung,
};

pub(crate) fn kg(thousandths: i64) -> Mass {
    Mass::of(MassUnit::Kg, thousandths)
}

pub(crate) fn lb(whole: i64) -> Mass {
    Mass::of(MassUnit::Lb, whole * 1_000)
}

fn day(day: u32) -> NaiveDate {
    NaiveDate::from_ymd_opt(2026, 3, day).expect("a day of March")
}

fn plate(mass: Mass, unit: MassUnit, thickness_mm: i64) -> PlateFace {
    PlateFace {
        mass,
        unit,
        thickness: Length::mm(thickness_mm),
        diameter: Length::mm(450),
    }
}

pub(crate) fn plan() -> Fact {
    let row = |lifter: &str, load, ladder: Option<&str>, rest_s| Prescription {
        bar: None,
        date: day(2),
        lifter: lifter.to_owned(),
        lift: "rack pull".to_owned(),
        first: SetGroup {
            rest_s,
            ..SetGroup::straight(1, 5, load)
        },
        then: Vec::new(),
        track: None,
        ladder: ladder.map(str::to_owned),
        note: "leg against the bar; \"tall\" — then stop".to_owned(),
    };
    Fact::PlanTaken {
        name: "march.csv".to_owned(),
        rows: vec![
            row("Ada", LoadWish::Mass(kg(180_000)), Some("5-3-2-1"), None),
            row("Bo", LoadWish::OfBest(8_250), None, Some(300)),
        ],
    }
}

fn bar() -> BarSheet {
    BarSheet {
        name: "old bent".to_owned(),
        mass: kg(20_000),
        collars: kg(5_000),
        shaft_diameter: Length::from_nm(28_500_000),
        sleeve: Length::mm(415),
    }
}

fn pins() -> PinSheet {
    PinSheet {
        hole: 5,
        mats: vec![Length::mm(20), Length::from_nm(396_875)],
        bar_height: Length::mm(431),
        off_target: Length::mm(-4),
        landmark: Landmark::TibialTuberosity,
        landmark_height: Length::mm(460),
        patella_top: Some(Length::mm(530)),
        first_hole: Length::mm(200),
        spacing: Length::from_nm(76_200_000),
        holes: 20,
    }
}

/// A warm-up of one big plate a side, then a work set with a small one added.
pub(crate) fn rungs() -> Vec<Rung> {
    let big = plate(kg(20_000), MassUnit::Kg, 40);
    let small = plate(lb(10), MassUnit::Lb, 19);
    let warm = Rung {
        kind: RungKind::WarmUp,
        load: kg(65_000),
        reps: 5,
        per_side: vec![big],
        take_off: vec![],
        put_on: vec![big],
        belt: false,
        straps: false,
        rest_s: 180,
    };
    let work = Rung {
        kind: RungKind::Work,
        load: kg(65_000) + lb(20),
        per_side: vec![big, small],
        put_on: vec![small],
        belt: true,
        straps: true,
        ..warm.clone()
    };
    vec![warm, work]
}

fn over(what: Rated) -> Warning {
    Warning::OverRated {
        what,
        load: kg(75_000),
        rated: kg(70_000),
    }
}

/// From pins, in kilos, with everything that a sheet can hold.
pub(crate) fn from_pins() -> LiftSheet {
    LiftSheet {
        lifter: "Ada".to_owned(),
        unit: MassUnit::Kg,
        lift: "rack pull".to_owned(),
        date: day(2),
        rack: "North".to_owned(),
        bar: bar(),
        pins: Some(pins()),
        hooks: None,
        overlap: Some(Overlap {
            partner: "halting deadlift".to_owned(),
            length: Length::mm(99),
            least: Length::mm(150),
        }),
        grip: Grip::DoubleOverhand,
        rungs: rungs(),
        groups: Vec::new(),
        track: None,
        asked: kg(75_000),
        cues: vec!["back flat".to_owned()],
        cautions: vec!["the bar may roll on the pins".to_owned()],
        warnings: vec![
            Warning::OverlapSmall,
            Warning::NotLoadable,
            Warning::StraightBarOnPins,
            Warning::Estimated {
                landmark: Landmark::TibialTuberosity,
                spread: Length::mm(16),
                doubtful: true,
            },
            over(Rated::Pins),
            over(Rated::Rack),
            over(Rated::Bar),
            Warning::TakesSet {
                drop: Length::mm(205),
                of_yield_ppm: 97_900,
            },
        ],
        note: String::new(),
    }
}

/// From the floor, in pounds, with everything left out that can be.
pub(crate) fn from_floor() -> LiftSheet {
    LiftSheet {
        lifter: "Bo".to_owned(),
        unit: MassUnit::Lb,
        lift: "halting deadlift".to_owned(),
        pins: None,
        hooks: Some(HookSheet { hole: Some(14) }),
        overlap: None,
        grip: Grip::Hook,
        rungs: vec![],
        cues: vec![],
        cautions: vec![],
        warnings: vec![
            Warning::NotMeasured(Landmark::PatellaTop),
            Warning::NotMeasured(Landmark::MidThigh),
            Warning::NotMeasured(Landmark::Lockout),
            Warning::NoHole(Length::mm(-1)),
            Warning::EstimateTooRough {
                landmark: Landmark::MidThigh,
                spread: Length::mm(23),
                spacing: Length::mm(25),
            },
            Warning::LowPlates {
                from: kg(30_000),
                to: kg(40_000),
                raise: Length::from_nm(62_500_000),
            },
        ],
        ..from_pins()
    }
}

/// One of every kind, then the kinds again with their other choices.
pub(crate) fn facts() -> Vec<Fact> {
    let no = LiftNo(1);
    let set = |rung, reps, hold| Fact::SetDone {
        no,
        rung,
        reps,
        hold,
    };
    vec![
        Fact::FileTaken {
            name: "gym.toml".to_owned(),
            text: "name = \"Millrace\"\n# \u{fc}\u{1f3cb}\t\u{0}\n".to_owned(),
        },
        plan(),
        Fact::LiftBegun {
            no,
            sheet: Box::new(from_pins()),
        },
        set(0, 5, Hold::Kept),
        set(1, 4, Hold::MovedAt(4)),
        Fact::WentOn { no },
        Fact::RungSkipped { no, rung: 1 },
        Fact::LiftStopped { no },
        Fact::EntryUndone { no },
        Fact::LiftBegun {
            no: LiftNo(2),
            sheet: Box::new(from_floor()),
        },
    ]
}

/// An order of turns, which stands apart from [`facts`].
pub(crate) fn planned() -> Fact {
    let no = LiftNo(1);
    Fact::RotationPlanned {
        station: Station {
            rack: "north".to_owned(),
            bar: "old bar".to_owned(),
        },
        turns: rungs()
            .iter()
            .enumerate()
            .map(|(at, rung)| CalledTurn {
                no,
                rung: u16::try_from(at).expect("few rungs"),
                per_side: rung.per_side.clone(),
            })
            .collect(),
    }
}

/// Bo's day is taken off the plan.
pub(crate) fn cleared() -> Fact {
    Fact::DayCleared {
        lifter: "Bo".to_owned(),
        date: day(2),
    }
}

/// A morning of two lifters with mistakes, corrections and a set that moved the back; every kind
/// of fact and every choice of a sheet is in it.
pub(crate) fn morning() -> Vec<Event> {
    let (ada, bo, wrong) = (LiftNo(1), LiftNo(2), LiftNo(3));
    let begin = |no, sheet| Fact::LiftBegun {
        no,
        sheet: Box::new(sheet),
    };
    let set = |no, rung, reps, hold| Fact::SetDone {
        no,
        rung,
        reps,
        hold,
    };
    let from_floor = LiftSheet {
        rungs: rungs(),
        ..from_floor()
    };
    let mut facts = facts()[..2].to_vec();
    facts.extend([
        begin(ada, from_pins()),
        set(ada, 0, 5, Hold::Kept),
        Fact::RotationPlanned {
            station: Station {
                rack: from_pins().rack,
                bar: from_pins().bar.name,
            },
            turns: vec![CalledTurn {
                no: ada,
                rung: 1,
                per_side: rungs()[0].per_side.clone(),
            }],
        },
        settled(),
        begin(wrong, from_pins()),
        Fact::EntryUndone { no: wrong },
        begin(bo, from_floor),
        set(bo, 0, 3, Hold::MovedAt(2)),
        Fact::WentOn { no: bo },
        set(ada, 1, 5, Hold::Kept),
        raised(ada),
        Fact::EntryUndone { no: ada },
        set(ada, 1, 4, Hold::MovedAt(4)),
        raised(ada),
        overridden(ada),
        Fact::RungSkipped { no: bo, rung: 1 },
        Fact::EntryUndone { no: bo },
        Fact::LiftStopped { no: bo },
        cleared(),
    ]);
    facts.extend(crate::invented_turns::facts());
    facts.extend(crate::invented_days::facts(bo));
    facts.extend(crate::invented_next::words());
    (0..).zip(facts).map(|(n, fact)| at(n, fact)).collect()
}

pub(crate) fn at(n: i64, fact: Fact) -> Event {
    Event {
        at: Moment(1_772_442_000_000 + n * 90_000),
        fact,
    }
}

/// [`facts`] at a minute and a half from each other.
pub(crate) fn events() -> Vec<Event> {
    (0..).zip(facts()).map(|(n, fact)| at(n, fact)).collect()
}
