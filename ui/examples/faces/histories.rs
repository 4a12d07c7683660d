//! History, list and page of an invented lifter and kiosk.
use RowState::{Done, Moved, Other};
use view::desk::Typing;
use view::draw::{HeightMark, RowState};
use view::history::{History, Session};
use view::list::{List, ListRow, ListState, Page};

/// Some weeks, not all of which went well.
pub(crate) fn history() -> History {
    let session = |(date, load, reps, word, state): (&str, f32, &str, &str, RowState)| Session {
        date: date.into(),
        load: format!("{load}"),
        reps: reps.into(),
        word: word.into(),
        share: load / 190.0,
        state,
    };
    History {
        lift: "rack pull".into(),
        unit: "kg".into(),
        sessions: [
            ("14 Oct", 170.0, "5", "", Done),
            ("21 Oct", 175.0, "5", "", Done),
            ("28 Oct", 182.5, "4 of 5", "", Other),
            ("4 Nov", 182.5, "5", "", Done),
            ("11 Nov", 190.0, "5", "back moved at 3", Moved),
            ("18 Nov", 185.0, "5", "", Done),
        ]
        .into_iter()
        .map(session)
        .collect(),
        next: "next: 187.5 kg, up 2.5 kg: all reps with the back held".into(),
        empty: String::new(),
        main: "deadlift".into(),
    }
}

/// As many sessions, and as long, as there can be.
pub(crate) fn history_long() -> History {
    let session = |at: u16| Session {
        date: "28 Sept".into(),
        load: "1002.5".into(),
        reps: "11 of 12".into(),
        word: if at.is_multiple_of(3) {
            "back moved at 12"
        } else {
            ""
        }
        .into(),
        share: 1.0 - f32::from(at) * 0.09,
        state: [Moved, Done, Other][usize::from(at % 3)],
    };
    History {
        sessions: (0..10).map(session).collect(),
        next: "next: 1002.5 lb again: 11 of 12 reps in set 3, try 2 of 3".into(),
        main: "halting deadlift".into(),
        ..history()
    }
}

pub(crate) fn history_empty() -> History {
    History {
        sessions: vec![],
        next: String::new(),
        empty: "no work sets yet".into(),
        main: String::new(),
        ..history()
    }
}

pub(crate) fn list() -> List {
    let row = |title: &str, value: &str, detail: &str, state| ListRow {
        title: title.into(),
        value: value.into(),
        detail: detail.into(),
        state,
    };
    List {
        title: "This kiosk".into(),
        hint: "Old Ropeworks Barbell".into(),
        rows: vec![
            row("language", "English", "", ListState::Chosen),
            row("language", "Deutsch", "", ListState::Plain),
            row(
                "light",
                "by the hour",
                "daylight from 7 to 18 o'clock",
                ListState::Plain,
            ),
            row("checks", "2 faults", "gym.toml, row 14", ListState::Amiss),
            row("version", "0.1.0", "", ListState::Told),
            row("about", "and licences", "", ListState::Plain),
            row("sharing", "on", "", ListState::Plain),
        ],
        main: String::new(),
        body: vec![],
        layout: view::list::Layout::Columns,
    }
}

pub(crate) fn page() -> Page {
    let line = "Heavy bars hurt people. What your coach, your clinician and the rules of your place say comes first.";
    Page {
        title: "about".into(),
        lines: vec![line.into(); 4],
        only: false,
    }
}

/// A lifter's landmarks, one still to be measured.
pub(crate) fn list_body() -> List {
    let mark = |word: &str, height_mm: f32| HeightMark {
        word: word.into(),
        height_mm,
    };
    let mut list = list();
    list.rows.truncate(6);
    List {
        title: "Konstantina Žižková".into(),
        body: vec![
            mark("tibial tuberosity", 449.0),
            mark("top of the patella", 529.0),
            mark("lockout", 746.0),
        ],
        ..list
    }
}

/// A height half typed.
pub(crate) fn typing() -> Typing {
    Typing {
        title: "Konstantina Žižková, tibial tuberosity".into(),
        hint: "type the number, then save".into(),
        wrong: false,
        typed: "1448.5".into(),
        unit: "mm".into(),
        keys: "1234567890.".chars().map(String::from).collect(),
        other: "in".into(),
        delete: "delete".into(),
        main: "save".into(),
    }
}

/// A long name, with a fault.
pub(crate) fn typing_name() -> Typing {
    Typing {
        title: "new lifter".into(),
        hint: "that cannot be read; type it anew".into(),
        wrong: true,
        typed: "WILHELMINA ØVERGÅRD-ŁĘC".into(),
        unit: String::new(),
        keys: "ABCDEFGHIJKLMNOP".chars().map(String::from).collect(),
        other: "Q–Z".into(),
        ..typing()
    }
}
