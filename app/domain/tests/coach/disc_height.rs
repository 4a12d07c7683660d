//! From the floor: how high to raise a bar with small plates.
use crate::gym::{kg, lift, plate};
use domain::disc_height::{raise, warn};
use domain::sheet::{RungKind, Warning};
use domain::{Length, PlateFace, Rung};

fn rung(load: i64, faces: &[PlateFace]) -> Rung {
    Rung {
        kind: RungKind::WarmUp,
        load: kg(load),
        reps: 5,
        per_side: faces.to_vec(),
        take_off: Vec::new(),
        put_on: Vec::new(),
        belt: false,
        straps: false,
        rest_s: 0,
    }
}

/// IWF rules (seen quoted): largest discs 450 mm, so a bar's centre stands 225 mm above the
/// floor (computed); sleeves of 50 mm.
#[test]
fn the_largest_plate_decides() {
    let (big, small) = (plate(20, 450).face, plate(10, 325).face);
    assert_eq!(raise(&rung(60, &[big])), Length::ZERO);
    assert_eq!(raise(&rung(80, &[small, big])), Length::ZERO);
    assert_eq!(raise(&rung(40, &[small])), Length::from_nm(62_500_000));
    assert_eq!(raise(&rung(20, &[])), Length::mm(200));
    assert_eq!(raise(&rung(60, &[plate(20, 500).face])), Length::ZERO);
    assert_eq!(raise(&rung(60, &[plate(20, -500).face])), Length::mm(200));
}

#[test]
fn each_height_is_told_once_with_its_loads() {
    let (big, small, tiny) = (plate(20, 450).face, plate(10, 325).face, plate(5, 230).face);
    let rungs = [
        rung(20, &[]),
        rung(30, &[tiny]),
        rung(40, &[small]),
        rung(50, &[small, tiny]),
        rung(60, &[big]),
    ];
    let mut warnings = Vec::new();
    warn(&lift("deadlift"), &rungs, &mut warnings);
    let low = |from, to, um: i64| Warning::LowPlates {
        from: kg(from),
        to: kg(to),
        raise: Length::from_nm(um * 1_000),
    };
    let wanted = [
        low(20, 20, 200_000),
        low(30, 30, 110_000),
        low(40, 50, 62_500),
    ];
    assert_eq!(warnings, wanted);
    warnings.clear();
    warn(&lift("rack pull"), &rungs, &mut warnings);
    assert_eq!(warnings, []);
}
