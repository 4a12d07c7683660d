//! The bar on two pins against beam tables, against itself, and at the ends of its range.
use domain::solve::Constraint;
use domain::solve::bar::{Bending, Problem, bend};
use domain::{Length, LengthUnit, Mass, MassUnit, Stress};
use proptest::prelude::*;

/// Thousandths of a millimetre.
fn um(um: i64) -> Length {
    Length::from_nm(um * 1_000)
}

fn problem() -> Problem {
    Problem {
        shaft_diameter: um(28_500),
        youngs_modulus: Stress::gpa(205),
        yield_stress: Stress::mpa(1_000),
        support_span: um(1_000_000),
        load_span: um(1_500_000),
        // 890 N.
        load_per_side: Mass::from_ng(90_754_743_974_956),
        drop: None,
    }
}

/// Whether `got` is `wanted` to within half of the last place printed.
fn agrees(got: i64, scale: f64, wanted: f64, half_place: f64) -> bool {
    (got as f64 / scale - wanted).abs() <= half_place
}

/// Standard beam tables, worked (computed): d = 28.5 mm, E = 205 GPa, L = 1.0 m, c = 0.25 m,
/// P = 890 N: M = 222.5 N m, stress 97.9 MPa, end deflection 4.89 mm, mid-span rise 4.19 mm.
#[test]
fn the_worked_bar() {
    let bent = bend(&problem()).unwrap();
    assert!(agrees(bent.moment_unm, 1e6, 222.5, 0.000_01), "{bent:?}");
    assert!(agrees(bent.stress.pa(), 1e6, 97.9, 0.05), "{bent:?}");
    assert!(agrees(bent.of_yield_ppm, 1e6, 0.0979, 0.000_05), "{bent:?}");
    assert!(agrees(bent.at_loads.nm(), 1e6, 4.89, 0.005), "{bent:?}");
    assert!(agrees(bent.at_mid_span.nm(), 1e6, 4.19, 0.005), "{bent:?}");
}

/// `tests/references/beams.csv` says where its figures come from.
#[test]
fn bars_of_the_beam_tables() {
    let rows = include_str!("../../../tests/references/beams.csv").lines();
    let mut read = 0;
    for row in rows.filter(|row| row.starts_with(|c: char| c.is_ascii_digit())) {
        let cells: Vec<&str> = row.split(',').collect();
        let length = |at: usize, unit| Length::read_in(cells[at], unit).unwrap();
        let both = Mass::read_in(cells[1], MassUnit::Kg).unwrap();
        let bent = bend(&Problem {
            shaft_diameter: length(0, LengthUnit::Mm),
            support_span: length(2, LengthUnit::M),
            load_span: length(2, LengthUnit::M) + length(3, LengthUnit::M).times(2),
            load_per_side: Mass::from_ng(both.ng() / 2),
            ..problem()
        })
        .unwrap();
        let f: Vec<f64> = cells.iter().map(|cell| cell.parse().unwrap()).collect();
        assert!(agrees(bent.moment_unm, 1e6, f[4], 0.006), "{row}: {bent:?}");
        assert!(
            agrees(bent.stress.pa(), 1e6, f[5], 0.006),
            "{row}: {bent:?}"
        );
        assert!(
            agrees(bent.at_mid_span.nm(), 1e6, f[6], 0.000_6),
            "{row}: {bent:?}"
        );
        assert!(
            agrees(bent.at_loads.nm(), 1e6, f[7], 0.000_6),
            "{row}: {bent:?}"
        );
        read += 1;
    }
    assert_eq!(read, 16);
}

/// Machine-design texts, energy method: P (1 + sqrt(1 + 2 h/d)); no height at all doubles the
/// load, four times the deflection at rest makes it four times the load.
#[test]
fn a_fall_counts_more_than_its_load() {
    let rest = bend(&problem()).unwrap();
    let from = |drop| {
        bend(&Problem {
            drop: Some(drop),
            ..problem()
        })
        .unwrap()
        .dropped
        .unwrap()
    };
    let none = from(Length::ZERO);
    assert_eq!(none.factor_ppm, 2_000_000);
    assert!((none.stress.pa() - 2 * rest.stress.pa()).abs() <= 1);
    let four = from(rest.at_loads.times(4));
    assert!((four.factor_ppm - 4_000_000).abs() <= 1, "{four:?}");
    assert!(
        (four.moment_unm - 4 * rest.moment_unm).abs() <= 200,
        "{four:?}"
    );
}

/// The stress of a bar that fell from its yield drop is its yield.
#[test]
fn the_yield_drop_yields() {
    let drop = bend(&problem()).unwrap().yield_drop;
    // n = 1000/97.9 = 10.21; 4.89 mm / 2 x (9.21^2 - 1) = 205 mm, by hand.
    assert!(
        (drop.unwrap().nm() - 205_000_000).abs() < 1_000_000,
        "{drop:?}"
    );
    let fell = bend(&Problem { drop, ..problem() })
        .unwrap()
        .dropped
        .unwrap();
    assert!((fell.of_yield_ppm - 1_000_000).abs() <= 1, "{fell:?}");
}

#[test]
fn a_weak_shaft_yields_as_soon_as_it_is_let_go_and_a_strong_one_never() {
    let weak = bend(&Problem {
        yield_stress: Stress::mpa(150),
        ..problem()
    })
    .unwrap();
    assert_eq!(
        (weak.yield_drop, weak.of_yield_ppm < 1_000_000),
        (Some(Length::ZERO), true)
    );
    let broken = bend(&Problem {
        yield_stress: Stress::mpa(50),
        ..problem()
    })
    .unwrap();
    assert_eq!(
        (broken.yield_drop, broken.of_yield_ppm > 1_000_000),
        (Some(Length::ZERO), true)
    );
    let light = bend(&Problem {
        load_per_side: Mass::of(MassUnit::Kg, 10),
        ..problem()
    })
    .unwrap();
    assert_eq!(light.yield_drop, None);
}

#[test]
fn what_cannot_be_bent_is_refused_with_its_field() {
    let refused = |problem| {
        let refusal = bend(&problem).unwrap_err();
        assert_eq!(refusal.constraint, Constraint::Range);
        refusal.to_string()
    };
    let p = problem();
    let lines = [
        refused(Problem {
            shaft_diameter: Length::ZERO,
            ..p
        }),
        refused(Problem {
            youngs_modulus: Stress::ZERO,
            ..p
        }),
        refused(Problem {
            yield_stress: Stress::mpa(-1),
            ..p
        }),
        refused(Problem {
            load_per_side: Mass::ZERO,
            ..p
        }),
        refused(Problem {
            drop: Some(um(-1)),
            ..p
        }),
        refused(Problem {
            load_span: p.support_span,
            ..p
        }),
        refused(Problem {
            shaft_diameter: um(2_000),
            load_per_side: Mass::of(MassUnit::Kg, 200_000),
            ..p
        }),
    ];
    insta::assert_snapshot!(lines.join("\n"), @"
    shaft_diameter: is 0 mm; write more than nothing, up to 100000 mm
    youngs_modulus_gpa: is 0 MPa; write more than nothing, up to 10000 GPa
    yield_mpa: is -1 MPa; write more than nothing, up to 10000 GPa
    load_per_side: is 0 kg; write more than nothing, up to 100000 kg
    drop: is -0.001 mm; write from nothing to 100000 mm
    load_span: of 1000 mm does not reach beyond the support span of 1000 mm
    load_per_side: of 200 kg would bend the bar further than its overhang; lighten it
    ");
}

/// Any figures at all.
fn any_problem() -> impl Strategy<Value = Problem> {
    let figure = prop_oneof![any::<i64>(), 0..100_000_000_000_i64];
    prop::collection::vec(figure, 7).prop_map(|f| Problem {
        shaft_diameter: Length::from_nm(f[0]),
        youngs_modulus: Stress::from_pa(f[1]),
        yield_stress: Stress::from_pa(f[2]),
        support_span: Length::from_nm(f[3]),
        load_span: Length::from_nm(f[4]),
        load_per_side: Mass::from_ng(f[5]),
        drop: (f[6] % 2 == 0).then(|| Length::from_nm(f[6])),
    })
}

/// Figures of real bars.
fn real_problem() -> impl Strategy<Value = Problem> {
    let spans = (400_000..1_200_000_i64, 10_000..500_000_i64);
    (
        24_000..32_000_i64,
        190..215_i64,
        300..1_500_i64,
        spans,
        10_000..400_000_i64,
    )
        .prop_map(|(shaft, gpa, mpa, (span, overhang), grams)| Problem {
            shaft_diameter: um(shaft),
            youngs_modulus: Stress::gpa(gpa),
            yield_stress: Stress::mpa(mpa),
            support_span: um(span),
            load_span: um(span + 2 * overhang),
            load_per_side: Mass::of(MassUnit::Kg, grams),
            drop: None,
        })
}

fn parts(bent: &Bending) -> [i64; 4] {
    let Bending {
        moment_unm,
        stress,
        at_loads,
        at_mid_span,
        ..
    } = bent;
    [*moment_unm, stress.pa(), at_loads.nm(), at_mid_span.nm()]
}

proptest! {
    #[test]
    fn nothing_panics(problem in any_problem()) {
        drop(bend(&problem));
    }

    /// Twice the load bends twice as far; the bend goes with d^-4 and the stress with d^-3.
    #[test]
    fn bars_scale(problem in real_problem()) {
        let once = bend(&problem).unwrap();
        let double = Problem { load_per_side: problem.load_per_side.times(2), ..problem };
        if let Ok(twice) = bend(&double) {
            for (one, two) in parts(&once).into_iter().zip(parts(&twice)) {
                prop_assert!((two - 2 * one).abs() <= 2);
            }
            prop_assert!(twice.yield_drop <= once.yield_drop || once.yield_drop.is_none());
        }
        let thick = Problem { shaft_diameter: problem.shaft_diameter.times(2), ..problem };
        let [moment, stress, ends, middle] = parts(&bend(&thick).unwrap());
        let [was_moment, was_stress, was_ends, was_middle] = parts(&once);
        prop_assert_eq!(moment, was_moment);
        prop_assert!((8 * stress - was_stress).abs() <= 8);
        prop_assert!((16 * ends - was_ends).abs() <= 16 && (16 * middle - was_middle).abs() <= 16);
    }

    /// The higher the drop, the greater the stress; from under the yield drop it does not yield.
    #[test]
    fn drops_rise(problem in real_problem(), drop in 0..2_000_000_i64, more in 0..100_000_i64) {
        let fall = |um_high: i64| bend(&Problem { drop: Some(um(um_high)), ..problem }).unwrap();
        let (low, high) = (fall(drop), fall(drop + more));
        let (a, b) = (low.dropped.unwrap(), high.dropped.unwrap());
        prop_assert!(a.stress <= b.stress && a.factor_ppm >= 2_000_000);
        let limit = low.yield_drop.unwrap_or(Length::LIMIT);
        let (yields, over) = (um(drop) > limit, a.of_yield_ppm - 1_000_000);
        prop_assert!(yields == (over > 0) || over.abs() <= 1);
    }
}
