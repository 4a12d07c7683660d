//! The lifts that come with the program against what they lean on.
use domain::lift::Start;
use domain::lift_shipped::lifts;

/// ACSM position stand 2009 (seen, abstract and quotation): 2 to 3 min for core multi-joint
/// lifts, 3 to 5 min for heavy sets of trained lifters.
#[test]
fn rests_lie_within_the_position_stand() {
    for lift in lifts() {
        assert!((120..=180).contains(&lift.rest_warm_s), "{}", lift.name);
        assert!((120..=300).contains(&lift.rest_work_s), "{}", lift.name);
    }
}

/// Partners name each other, and one of the two starts from pins.
#[test]
fn partners_are_mutual() {
    let lifts = lifts();
    for lift in &lifts {
        let Some(partner) = &lift.partner else {
            continue;
        };
        let other = lifts
            .iter()
            .find(|other| other.name == *partner)
            .expect("a lift");
        assert_eq!(other.partner.as_ref(), Some(&lift.name));
        let pins = |lift: &domain::Lift| matches!(lift.start, Start::Pins { .. });
        assert_ne!(pins(lift), pins(other));
    }
}

/// Lifts from pins want the retired bar; every lift says what to do about a moved back and pain.
#[test]
fn bars_and_cautions() {
    for lift in lifts() {
        assert_eq!(
            lift.retired_bar,
            matches!(lift.start, Start::Pins { .. }),
            "{}",
            lift.name
        );
        for word in ["collars", "back moved", "pain"] {
            let said = lift.cautions.iter().any(|caution| caution.contains(word));
            assert!(said, "{}: {word}", lift.name);
        }
        assert!((1..=3).contains(&lift.cues.len()), "{}", lift.name);
        let long = |line: &&String| line.chars().count() > 60;
        assert_eq!(lift.cues.iter().chain(&lift.cautions).find(long), None);
    }
}
