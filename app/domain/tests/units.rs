//! Decimals, masses and lengths: exact both ways, and against the units' definitions.
use domain::decimal::{self, DecimalFault};
use domain::mass::QuantityFault;
use domain::{Length, LengthUnit, Mass, MassUnit};
use proptest::prelude::*;

fn mass(text: &str) -> i64 {
    Mass::read(text).expect("a mass").ng()
}

fn length(text: &str) -> i64 {
    Length::read(text).expect("a length").nm()
}

/// 1 lb = 0.453 592 37 kg exactly (international pound of 1959; NIST SP 811, appendix B).
#[test]
fn pounds_are_those_of_sp_811() {
    assert_eq!(mass("1 lb"), 453_592_370_000);
    assert_eq!(mass("0.45359237 kg"), mass("1 lb"));
    assert_eq!(mass("2.5 lb"), 1_133_980_925_000);
    assert_eq!(mass("0.0001 lb"), 45_359_237);
    assert_eq!(mass("1 kg"), 1_000_000_000_000);
    assert_eq!(
        Mass::read("45 lb").unwrap().exact(MassUnit::Kg),
        "20.41165665 kg"
    );
}

/// 1 in = 25.4 mm exactly (international inch of 1959; NIST SP 811, appendix B).
#[test]
fn inches_are_those_of_sp_811() {
    assert_eq!(length("1 in"), 25_400_000);
    assert_eq!(length("25.4 mm"), length("1 in"));
    assert_eq!(length("1/64 in"), 396_875);
    assert_eq!(length("1 1/4 in"), length("1.25 in"));
    assert_eq!(length("11/16\""), 17_462_500);
    assert_eq!(length("0.000005 in"), 127);
    assert_eq!(length("1.5 m"), length("150 cm"));
    assert_eq!(
        Length::read("1/64 in").unwrap().exact(LengthUnit::Mm),
        "0.396875 mm"
    );
}

#[test]
fn what_is_no_exact_quantity_is_refused_with_its_reason() {
    use DecimalFault::{NotANumber, TooFine, TooLarge};
    fn number<T>(fault: DecimalFault) -> Result<T, QuantityFault> {
        Err(QuantityFault::Number(fault))
    }
    assert_eq!(Mass::read("45"), Err(QuantityFault::NoUnit));
    assert_eq!(Mass::read("45 stone"), Err(QuantityFault::UnknownUnit));
    assert_eq!(Mass::read("-45 lb"), number(NotANumber));
    assert_eq!(Mass::read("4,5 kg"), number(NotANumber));
    assert_eq!(Mass::read("1.2.3 kg"), number(NotANumber));
    assert_eq!(Mass::read("lb"), number(NotANumber));
    assert_eq!(Mass::read("1e3 kg"), Err(QuantityFault::UnknownUnit));
    assert_eq!(Mass::read("0.00001 lb"), number(TooFine));
    assert_eq!(Mass::read("0.0000000000001 kg"), number(TooFine));
    assert_eq!(Mass::read("100000.1 kg"), number(TooLarge));
    assert_eq!(
        Mass::read(&format!("{} kg", "9".repeat(400))),
        number(TooLarge)
    );
    assert_eq!(Length::read("1/3 in"), number(TooFine));
    assert_eq!(Length::read("1/0 in"), number(NotANumber));
    assert_eq!(Length::read("-1/4 in"), number(NotANumber));
    assert_eq!(Length::read("99 1000/1 m"), number(TooLarge));
    assert_eq!(Length::read("12 px"), Err(QuantityFault::UnknownUnit));
}

#[test]
fn rounding_for_reading_is_half_up() {
    let rounded = |count| decimal::write_rounded(count, 1_000, 2);
    let read = [0, 4, 5, 995, 1_000, 117_500, -4, -5, -6, -15].map(rounded);
    let expected = [
        "0", "0", "0.01", "1", "1", "117.5", "0", "0", "-0.01", "-0.01",
    ];
    assert_eq!(read, expected);
}

proptest! {
    #[test]
    fn masses_come_back_from_their_exact_text(ng in 0..=Mass::LIMIT.ng()) {
        let mass = Mass::from_ng(ng);
        for unit in [MassUnit::Kg, MassUnit::Lb] {
            prop_assert_eq!(Mass::read(&mass.exact(unit)), Ok(mass));
        }
    }

    #[test]
    fn round_pounds_stay_pounds(thousandths in 0..200_000_000_i64) {
        let mass = Mass::of(MassUnit::Lb, thousandths / 10 * 10);
        let text = mass.exact(MassUnit::Lb);
        prop_assert!(text.ends_with(" lb"), "{}", text);
        prop_assert_eq!(Mass::read(&text), Ok(mass));
    }

    #[test]
    fn lengths_come_back_from_their_exact_text(nm in 0..=Length::LIMIT.nm()) {
        let length = Length::from_nm(nm);
        for unit in [LengthUnit::Mm, LengthUnit::Cm, LengthUnit::M, LengthUnit::In] {
            prop_assert_eq!(Length::read(&length.exact(unit)), Ok(length));
        }
    }

    #[test]
    fn sixty_fourths_are_whole(whole in 0..3_000_i64, part in 0..64_i64) {
        let text = format!("{whole} {part}/64 in");
        prop_assert_eq!(length(&text), whole * 25_400_000 + part * 396_875);
    }

    /// Against arithmetic on the digits themselves.
    #[test]
    fn decimals_are_read_digit_by_digit(whole in 0..1_000_000_i64, part in "[0-9]{0,9}") {
        let padded: i64 = format!("{part:0<9}").parse().unwrap();
        let read = decimal::read(&format!("{whole}.{part}"), 1_000_000_000, i64::MAX);
        prop_assert_eq!(read, Ok(whole * 1_000_000_000 + padded));
    }

    #[test]
    fn rounding_stays_within_half_a_place(
        count in any::<i64>(),
        scale in 1..1_000_000_i64,
        places in 0..6_u32,
    ) {
        let text = decimal::write_rounded(count, scale, places);
        let (whole, part) = text.split_once('.').unwrap_or((&text, ""));
        let digits: i128 = format!("{whole}{part:0<6}").parse().unwrap();
        let off = (digits * i128::from(scale) - i128::from(count) * 1_000_000).abs();
        prop_assert!(2 * off * 10_i128.pow(places) <= i128::from(scale) * 1_000_000);
    }

    #[test]
    fn any_text_is_read_or_refused(text in "\\PC{0,40}") {
        let mass = Mass::read(&text).unwrap_or_default();
        let length = Length::read(&text).unwrap_or_default();
        prop_assert!((Mass::ZERO..=Mass::LIMIT).contains(&mass));
        prop_assert!((Length::ZERO..=Length::LIMIT).contains(&length));
    }

    #[test]
    fn figures_with_any_unit_are_read_or_refused(text in "[0-9./ -]{0,20}(kg|lb|mm|in|m|cm)") {
        let mass = Mass::read(&text).unwrap_or_default();
        let length = Length::read(&text).unwrap_or_default();
        prop_assert!((Mass::ZERO..=Mass::LIMIT).contains(&mass));
        prop_assert!((Length::ZERO..=Length::LIMIT).contains(&length));
    }
}

/// NIST SP 811: 1 psi = 6.894 757 E+03 Pa; Machinery's Handbook (seen in reprints): 30e6 psi is
/// 206.8 GPa.
#[test]
fn stresses_are_read_in_the_units_that_makers_state() {
    use domain::Stress;
    let read = |text| Stress::read(text).map(Stress::pa);
    assert_eq!(read("950 MPa"), Ok(950_000_000));
    assert_eq!(read("205 GPa"), Ok(205_000_000_000));
    assert_eq!(read("1000 psi"), Ok(6_894_757));
    assert_eq!(read("190 ksi"), read("190000 psi"));
    assert_eq!(Stress::read("30000 ksi").unwrap().words(), "206.8 GPa");
    assert_eq!(Stress::read("97.94 MPa").unwrap().words(), "97.9 MPa");
    for bad in [
        "950",
        "950 mpa",
        "-1 MPa",
        "1e3 MPa",
        "20000 GPa",
        "9999999999 psi",
    ] {
        assert!(Stress::read(bad).is_err(), "{bad}");
    }
}
