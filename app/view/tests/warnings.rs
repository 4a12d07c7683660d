//! Every warning of a sheet as the coach reads it.
use chrono::NaiveDate;
use domain::lift::{Grip, Landmark};
use domain::sheet::{BarSheet, Overlap, PinSheet, Rated, Warning};
use domain::{Length, LiftSheet, Mass, MassUnit};
use view::words;

fn kg(kg: i64) -> Mass {
    Mass::of(MassUnit::Kg, kg * 1_000)
}

fn sheet(unit: MassUnit, warnings: Vec<Warning>) -> LiftSheet {
    LiftSheet {
        lifter: "Ines".into(),
        unit,
        lift: "rack pull".into(),
        date: NaiveDate::from_ymd_opt(2026, 12, 2).expect("a day"),
        rack: "door rack".into(),
        bar: BarSheet {
            name: "bent bar".into(),
            mass: kg(20),
            collars: Mass::ZERO,
            shaft_diameter: Length::mm(28),
            sleeve: Length::mm(400),
        },
        pins: Some(PinSheet {
            hole: 5,
            mats: Vec::new(),
            bar_height: Length::mm(431),
            off_target: Length::mm(-4),
            landmark: Landmark::TibialTuberosity,
            landmark_height: Length::mm(460),
            patella_top: None,
            first_hole: Length::mm(200),
            spacing: Length::from_nm(76_200_000),
            holes: 20,
        }),
        hooks: None,
        overlap: Some(Overlap {
            partner: "halting deadlift".into(),
            length: Length::mm(96),
            least: Length::mm(100),
        }),
        grip: Grip::DoubleOverhand,
        rungs: Vec::new(),
        groups: Vec::new(),
        track: None,
        asked: kg(141),
        cues: Vec::new(),
        cautions: Vec::new(),
        warnings,
        note: String::new(),
    }
}

fn estimated(landmark: Landmark, doubtful: bool) -> Warning {
    let spread = Length::from_nm(15_705_000);
    Warning::Estimated {
        landmark,
        spread,
        doubtful,
    }
}

fn all() -> Vec<Warning> {
    let over = |what| Warning::OverRated {
        what,
        load: kg(250),
        rated: kg(200),
    };
    let set = |mm, of_yield_ppm| Warning::TakesSet {
        drop: Length::mm(mm),
        of_yield_ppm,
    };
    let low = |from, to| Warning::LowPlates {
        from: kg(from),
        to: kg(to),
        raise: Length::from_nm(62_500_000),
    };
    vec![
        Warning::NotMeasured(Landmark::MidThigh),
        Warning::NoHole(Length::mm(250)),
        Warning::StraightBarOnPins,
        Warning::OverlapSmall,
        Warning::NotLoadable,
        estimated(Landmark::TibialTuberosity, false),
        estimated(Landmark::TibialTuberosity, true),
        Warning::EstimateTooRough {
            landmark: Landmark::PatellaTop,
            spread: Length::from_nm(15_705_000),
            spacing: Length::from_nm(25_400_000),
        },
        low(20, 20),
        low(30, 50),
        over(Rated::Pins),
        over(Rated::Rack),
        over(Rated::Bar),
        set(205, 97_900),
        set(0, 612_000),
    ]
}

#[test]
fn every_warning_in_words() {
    let told = |unit| {
        let sheet = sheet(unit, all());
        let lines = sheet.warnings.iter().map(|w| words::warning(&sheet, w));
        lines.collect::<Vec<_>>().join("\n")
    };
    let (kilos, pounds) = (told(MassUnit::Kg), told(MassUnit::Lb));
    insta::assert_snapshot!(format!("{kilos}\n\n{pounds}"));
}

/// "A guide, never a certificate" goes with every figure of steel.
#[test]
fn figures_of_steel_are_no_certificate() {
    let sheet = sheet(MassUnit::Kg, all());
    for warning in &sheet.warnings {
        let steel = matches!(warning, Warning::TakesSet { .. });
        let told = words::warning(&sheet, warning);
        assert_eq!(
            steel,
            told.ends_with("a guide, never a certificate"),
            "{told}"
        );
    }
}

/// Pins are estimated when their own landmark is, not when that of the overlap is.
#[test]
fn pins_carry_their_estimate() {
    let is = |landmark| words::is_estimated(&sheet(MassUnit::Kg, vec![estimated(landmark, false)]));
    assert!(is(Landmark::TibialTuberosity) && !is(Landmark::PatellaTop));
}
