//! The hole finder against every hole with every stack of mats.
mod dice;

use dice::Dice;
use domain::equipment::Calibration;
use domain::solve::Constraint;
use domain::solve::hole::{self, Height, Problem, Rule};
use domain::{Length, LengthUnit};
use proptest::prelude::*;

/// Odd nanometres among them, so that halves matter.
fn problem(dice: &mut Dice) -> Problem {
    let inch = dice.one_in(2);
    let length = |mm: i64, sixty_fourths: i64| {
        if inch {
            Length::from_nm(sixty_fourths * 396_875)
        } else {
            Length::mm(mm)
        }
    };
    let holes = 1 + dice.roll(12);
    let pin = length(dice.pick(&[25, 30]), dice.pick(&[64, 71, 80]));
    let spacing = length(dice.pick(&[25, 50, 75]), dice.pick(&[64, 128, 192]));
    let mats = (0..dice.roll(7)).map(|_| {
        length(
            dice.pick(&[8, 10, 15, 20, 30]),
            dice.pick(&[16, 24, 33, 48]),
        )
    });
    Problem {
        mats: mats.collect(),
        first_hole: length(
            100 + i64::from(dice.roll(200)),
            300 + i64::from(dice.roll(500)),
        ),
        spacing,
        holes,
        pin_diameter: pin,
        hole_diameter: dice
            .one_in(2)
            .then(|| pin + length(i64::from(dice.roll(4)), i64::from(dice.roll(5)))),
        bar_diameter: length(28, 71),
        target: length(
            100 + i64::from(dice.roll(600)),
            300 + i64::from(dice.roll(1_500)),
        ),
        rule: dice.pick(&[Rule::AtOrBelow, Rule::Nearest]),
        patella_top: dice.one_in(2).then(|| length(480, 1_200)),
        calibration: dice.one_in(3).then(|| Calibration {
            hole: 1 + dice.roll(holes),
            bar_height: length(
                400 + i64::from(dice.roll(60)),
                1_000 + i64::from(dice.roll(99)),
            ),
        }),
    }
}

/// (distance, mats, thickness, hole, thicknesses falling with more first), in half nanometres.
type Key = (i64, usize, i64, u16, Vec<i64>);

/// The formula of the contract, and nothing but trying.
fn by_enumeration(p: &Problem) -> Option<Key> {
    let mut keys = Vec::new();
    for hole in 1..=p.holes {
        let pin = p.pin_diameter.nm();
        let offset = match &p.calibration {
            Some(c) => 2 * c.bar_height.nm() - 2 * i64::from(c.hole) * p.spacing.nm(),
            None => {
                let hole_diameter = p.hole_diameter.map_or(pin, Length::nm);
                2 * (p.first_hole - p.spacing).nm() - (hole_diameter - pin)
                    + pin
                    + p.bar_diameter.nm()
            }
        };
        let centre = offset + 2 * i64::from(hole) * p.spacing.nm();
        for set in 0_u32..1 << p.mats.len() {
            let stood = p
                .mats
                .iter()
                .enumerate()
                .filter(|(at, _)| set >> at & 1 == 1);
            let mut stood: Vec<i64> = stood.map(|(_, mat)| -mat.nm()).collect();
            stood.sort_unstable();
            let thickness = -stood.iter().sum::<i64>();
            let off = centre - 2 * thickness - 2 * p.target.nm();
            if p.rule == Rule::Nearest || off <= 0 {
                keys.push((off.abs(), stood.len(), thickness, hole, stood));
            }
        }
    }
    keys.into_iter().min()
}

#[test]
fn a_thousand_settings_are_those_of_enumeration() {
    let (mut found, mut odd) = (0, 0);
    for seed in 0..1_000 {
        let p = problem(&mut Dice::new(seed));
        let setting = hole::find(&p);
        let key = setting.as_ref().ok().map(|s| {
            let stood: Vec<i64> = s.mats.iter().map(|&at| -p.mats[at].nm()).collect();
            let thickness = -stood.iter().sum::<i64>();
            (
                s.off_target.half_nm().abs(),
                stood.len(),
                thickness,
                s.hole,
                stood,
            )
        });
        assert_eq!(key, by_enumeration(&p), "seed {seed}: {p:#?}");
        let Ok(s) = setting else { continue };
        let height = p.bar_above_floor(s.hole).half_nm() - 2 * key.unwrap().2;
        assert_eq!(s.bar_height.half_nm(), height);
        assert_eq!(s.off_target.half_nm(), height - 2 * p.target.nm());
        let overlap = p.patella_top.map(|top| 2 * top.nm() - height);
        assert_eq!(s.overlap.map(Height::half_nm), overlap);
        found += 1;
        odd += height % 2;
    }
    assert!(
        found > 700 && odd > 50,
        "{found} found, {odd} with half a nanometre"
    );
}

/// 3 in rack, 1 in pins in 1 1/16 in holes, a 28.5 mm bar, hole 5 of a rack that starts at 3 in:
/// 15 in less 1/32 in of play, plus half of 25.4 + 28.5 mm: 407.15625 mm, by hand.
#[test]
fn the_bar_lies_where_the_formula_says() {
    let inches = |text: &str| Length::read_in(text, LengthUnit::In).unwrap();
    let problem = Problem {
        first_hole: inches("3"),
        spacing: inches("3"),
        holes: 20,
        pin_diameter: inches("1"),
        hole_diameter: Some(inches("1 1/16")),
        bar_diameter: Length::from_nm(28_500_000),
        mats: vec![Length::mm(15), Length::mm(20)],
        target: Length::mm(390),
        rule: Rule::AtOrBelow,
        patella_top: Some(Length::mm(520)),
        calibration: None,
    };
    let setting = hole::find(&problem).unwrap();
    assert_eq!(
        problem.bar_above_floor(5).exact(LengthUnit::Mm),
        "407.15625 mm"
    );
    assert_eq!((setting.hole, setting.mats), (5, vec![1]));
    assert_eq!(setting.bar_height.exact(LengthUnit::Mm), "387.15625 mm");
    assert_eq!(setting.off_target.exact(LengthUnit::Mm), "-2.84375 mm");
    assert_eq!(
        setting.overlap.unwrap().exact(LengthUnit::Mm),
        "132.84375 mm"
    );
}

#[test]
fn a_target_below_all_holes_is_refused() {
    let mut problem = problem(&mut Dice::new(3));
    problem.rule = Rule::AtOrBelow;
    problem.target = Length::ZERO;
    let refusal = hole::find(&problem).unwrap_err();
    assert_eq!(
        (refusal.constraint, &*refusal.field),
        (Constraint::Hole, "target")
    );
}

proptest! {
    /// Any figures at all: an answer or a refusal, no panic.
    #[test]
    fn nothing_panics(
        figures in prop::collection::vec(any::<i64>(), 9),
        mats in prop::collection::vec(prop_oneof![any::<i64>(), 0..100_000_000_000_i64], 0..26),
        holes in prop_oneof![any::<u16>(), 0..20_u16],
        calibrated in any::<bool>(),
        small in any::<bool>(),
    ) {
        let length = |at: usize| {
            let nm = figures[at];
            Length::from_nm(if small { nm.rem_euclid(100_000_000_001) } else { nm })
        };
        let problem = Problem {
            first_hole: length(0),
            spacing: length(1),
            holes,
            pin_diameter: length(2),
            hole_diameter: Some(length(3)),
            bar_diameter: length(4),
            mats: mats.into_iter().map(Length::from_nm).collect(),
            target: length(5),
            rule: Rule::Nearest,
            patella_top: Some(length(6)),
            calibration: calibrated.then(|| Calibration { hole: holes, bar_height: length(7) }),
        };
        drop(hole::find(&problem));
    }
}
