//! Numbers, dates and counts by language.
use chrono::NaiveDate;
use domain::{Mass, MassUnit};
use text::{Language, keys};

/// Decimal signs as DIN 1333 and the English point; names of days and months from CLDR, from
/// memory.
#[test]
fn numbers_and_dates_go_by_language() {
    let load = Mass::of(MassUnit::Kg, 102_500);
    assert_eq!(Language::English.mass(load, MassUnit::Kg), "102.5 kg");
    assert_eq!(Language::German.mass(load, MassUnit::Kg), "102,5 kg");
    let day = NaiveDate::from_ymd_opt(2026, 3, 4).expect("a day");
    assert_eq!(Language::English.date(day), "Wednesday 4 March");
    assert_eq!(Language::German.date(day), "Mittwoch, 4. März");
    assert_eq!(Language::German.short_date(day), "4. Mär");
    assert_eq!(Language::English.short_day(day), "Wed 4 Mar 2026");
    assert_eq!(Language::German.short_day(day), "Mi, 4. Mär 2026");
    assert_eq!(Language::Spanish.mass(load, MassUnit::Kg), "102,5 kg");
    assert_eq!(Language::Spanish.date(day), "miércoles 4 de marzo");
    assert_eq!(Language::Spanish.short_day(day), "mié 4 mar 2026");
    let places = [1, 2, 11, 13, 22].map(|n| Language::ALL.map(|say| say.place(n)));
    assert_eq!(places[0], ["1st", "1.", "1.º"]);
    assert_eq!(
        places.map(|said| said[0].clone()),
        ["1st", "2nd", "11th", "13th", "22nd"]
    );
    let mut day = NaiveDate::from_ymd_opt(2026, 1, 1).expect("a day");
    for _ in 0..366 {
        let written = [
            (Language::English.date(day), "%A %-d %B"),
            (Language::English.short_day(day), "%a %-d %b %Y"),
        ];
        for (own, form) in written {
            assert_eq!(own, day.format(form).to_string());
        }
        day = day.succ_opt().expect("the next day");
    }
}

#[test]
fn one_is_never_many() {
    let said = |language: Language, n: usize| language.count(keys::SETS, n);
    assert_eq!(
        [0, 1, 2, 21].map(|n| said(Language::English, n)),
        ["0 sets", "1 set", "2 sets", "21 sets"]
    );
    assert_eq!(
        [0, 1, 2].map(|n| said(Language::German, n)),
        ["0 Sätze", "1 Satz", "2 Sätze"]
    );
    assert_eq!(
        [0, 1, 2].map(|n| said(Language::Spanish, n)),
        ["0 series", "1 serie", "2 series"]
    );
    assert_eq!(Language::English.fill(keys::REPS, &["3-5"]), "3-5 reps");
    assert_eq!(Language::English.fill(keys::REPS, &["1+"]), "1+ reps");
}

/// What a person wrote is shown as it is written, whatever it looks like.
#[test]
fn what_fills_a_gap_stays_as_it_is() {
    for name in [
        "{0}",
        "{ $a }",
        "007",
        "1e3",
        "12345678901234567890",
        "1",
        "",
        "\u{2068}x",
    ] {
        for language in Language::ALL {
            let said = language.fill(keys::list::HURT_SINCE, &[name, "x"]);
            assert!(said.contains(name), "{said}");
        }
    }
}
