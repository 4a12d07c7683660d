//! Days of the week as people write them. Refuses: short forms that a month has too.
use chrono::Weekday;

/// A day of the week in English, German or French, whole or short.
pub(crate) fn weekday(text: &str) -> Option<Weekday> {
    const DAYS: [(&[&str], Weekday); 7] = [
        (
            &["monday", "mondays", "mon", "mo", "montag", "lundi", "lun"],
            Weekday::Mon,
        ),
        (
            &[
                "tuesday", "tuesdays", "tue", "tues", "tu", "dienstag", "di", "mardi",
            ],
            Weekday::Tue,
        ),
        (
            &[
                "wednesday",
                "wednesdays",
                "wed",
                "we",
                "mittwoch",
                "mi",
                "mercredi",
                "mer",
            ],
            Weekday::Wed,
        ),
        (
            &[
                "thursday",
                "thursdays",
                "thu",
                "thur",
                "thurs",
                "th",
                "donnerstag",
                "do",
                "jeudi",
                "jeu",
            ],
            Weekday::Thu,
        ),
        (
            &[
                "friday", "fridays", "fri", "fr", "freitag", "vendredi", "ven",
            ],
            Weekday::Fri,
        ),
        (
            &[
                "saturday",
                "saturdays",
                "sat",
                "sa",
                "samstag",
                "sonnabend",
                "samedi",
                "sam",
            ],
            Weekday::Sat,
        ),
        (
            &[
                "sunday", "sundays", "sun", "su", "sonntag", "so", "dimanche", "dim",
            ],
            Weekday::Sun,
        ),
    ];
    let lower = text.trim().trim_end_matches(['.', ',']).to_lowercase();
    let named = DAYS
        .iter()
        .find(|(names, _)| names.contains(&lower.as_str()));
    named.map(|(_, day)| *day)
}
