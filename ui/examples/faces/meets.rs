//! A meet day of invented lifters.
use view::meet_day::{MeetCall, MeetPage};

fn call(who: &str, load: &str, set: &str, left: &str, plates: &str) -> MeetCall {
    MeetCall {
        lifter: who.into(),
        load: load.into(),
        set: set.into(),
        left: left.into(),
        when: if left.is_empty() { "now" } else { "in" }.into(),
        plates: plates.into(),
        after: "after attempt 14".into(),
        due: left.is_empty(),
    }
}

/// Three of ours in one flight.
pub(crate) fn three() -> MeetPage {
    MeetPage {
        title: "Old Ropeworks test day".into(),
        hint: "deadlift: 13 of 24 attempts over, 52 s each".into(),
        calls: vec![
            call("Edda", "140", "kg × 2", "3:20", "each side 25, 25, 7.5"),
            call("Tomasz", "220", "kg, opener", "8:00", ""),
            call("Priya", "65", "kg × 5", "12:40", "each side 20"),
        ],
        empty: String::new(),
        sooner: "a minute earlier".into(),
        judges: false,
        later: "a minute later".into(),
        main: "attempt over".into(),
        main_detail: "14 of 24".into(),
        caution: "tap a warm-up once it is taken; a guide: watch the platform, and ask the referee what may be changed".into(),
    }
}

/// As long as words come, and one is due now.
pub(crate) fn long() -> MeetPage {
    let who = "Konstantina Wilhelmina Žižková-Øvergård";
    let side = "each side 45 lb, 45 lb, 45 lb, 45 lb, 45 lb, 45 lb, 25 lb, 10 lb, 5 lb, 2.5 lb";
    MeetPage {
        title: "The spring championships of all the river towns".into(),
        hint: "halting deadlift: 113 of 124 attempts over, 152 s each".into(),
        calls: vec![
            call(who, "1002.5", "lb × 12", "", side),
            call(who, "1002.5", "lb × 12", "112:40", side),
            call(who, "1002.5", "lb, opener", "113:20", ""),
        ],
        main_detail: "114 of 124".into(),
        ..three()
    }
}

/// Nothing comes any more.
pub(crate) fn over() -> MeetPage {
    MeetPage {
        calls: vec![],
        empty: "nothing comes any more".into(),
        main: String::new(),
        main_detail: String::new(),
        ..three()
    }
}
