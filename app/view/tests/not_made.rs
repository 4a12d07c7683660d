//! A load that the plates do not make, in both languages, with what they make.
use domain::day::NoSheet;
use domain::{Mass, MassUnit};
use view::Language;

fn told(say: Language, below: Option<i64>, above: Option<i64>) -> String {
    let kg = |kg: i64| Mass::of(MassUnit::Kg, kg * 1_000);
    say.no_sheet(&NoSheet::NotMade {
        asked: Mass::of(MassUnit::Kg, 87_500),
        unit: MassUnit::Kg,
        below: below.map(kg),
        above: above.map(kg),
    })
}

#[test]
fn both_neighbours_are_told() {
    let english = |below, above| told(Language::English, below, above);
    let german = |below, above| told(Language::German, below, above);
    assert_eq!(
        english(Some(80), Some(90)),
        "the plates do not make 87.5 kg; they make 80 kg and 90 kg; ask the coach for another load"
    );
    assert_eq!(
        german(Some(80), Some(90)),
        "87,5 kg geht mit diesen Scheiben nicht; es gehen 80 kg und 90 kg; nach einer anderen Last \
         fragen"
    );
    assert!(german(Some(80), None).contains("es gehen höchstens 80 kg"));
    assert!(german(None, Some(90)).contains("es gehen mindestens 90 kg"));
    assert!(english(Some(80), None).contains("they make 80 kg at most"));
    assert!(english(None, Some(90)).contains("they make 90 kg at least"));
    // The English of the domain and of the screen are one.
    let why = NoSheet::NotMade {
        asked: Mass::of(MassUnit::Kg, 87_500),
        unit: MassUnit::Kg,
        below: Some(Mass::of(MassUnit::Kg, 80_000)),
        above: None,
    };
    assert_eq!(why.to_string(), Language::English.no_sheet(&why));
}
