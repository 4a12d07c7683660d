//! Columns of a plan.
use super::{Field, may, must};

/// A column of a plan.
#[derive(Debug, Clone, Copy)]
pub struct PlanColumn {
    /// Its name, need, example and meaning.
    pub field: Field,
    /// Other spellings that are taken. Case, spaces, hyphens and underlines do not count.
    pub also: &'static [&'static str],
}

const fn column(field: Field, also: &'static [&'static str]) -> PlanColumn {
    PlanColumn { field, also }
}

/// The columns of a plan.
pub const COLUMNS: [PlanColumn; 9] = [
    column(
        must(
            "date",
            "a day such as \"2026-12-01\"",
            "the day: year first, or 01.12.2026 with dots, or 1 Dec 2026, or with strokes where only one day can be meant; a spreadsheet's own date; 2000 to 2099",
        ),
        &["day", "datum", "tag"],
    ),
    column(
        must("lifter", "a lifter's name from lifters.toml", "who"),
        &["name", "athlete", "heber", "sportler", "athlet"],
    ),
    column(
        must("lift", "a lift such as \"rack pull\"", "what"),
        &["exercise", "movement", "\u{fc}bung", "uebung"],
    ),
    column(
        must("sets", "a whole number from 1 to 20", "work sets, 1 to 20"),
        &["set", "work sets", "s\u{e4}tze", "saetze", "satz", "serien"],
    ),
    column(
        must(
            "reps",
            "a whole number from 1 to 50",
            "reps of a work set, 1 to 50",
        ),
        &["rep", "repetitions", "wiederholungen", "wdh", "wh"],
    ),
    column(
        must(
            "load",
            "a load such as \"180 kg\", \"445 lb\" or \"80 %\"",
            "the work load, bar and collars counted in, 1 to 1000 kg, or a percentage of the lifter's recorded best of the lift, 1 to 150 %; bare numbers where the header names the unit, as in \"load (kg)\"",
        ),
        &["weight", "work load", "last", "gewicht"],
    ),
    column(
        may(
            "ladder",
            "the lifter's own",
            "a warm-up pattern such as \"fives\"",
            "the warm-up pattern",
        ),
        &[
            "pattern",
            "warm-up",
            "warm-ups",
            "leiter",
            "aufw\u{e4}rmen",
            "aufwaermen",
        ],
    ),
    column(
        may(
            "rest",
            "the lift's own",
            "a rest such as \"3 min\"",
            "rest before a work set: \"180\", \"180 s\", \"3 min\" or \"3:00\", 15 s to 30 min",
        ),
        &["pause", "pausen", "break"],
    ),
    column(
        may(
            "note",
            "no note",
            "a few words",
            "the coach's words, up to 200 characters",
        ),
        &[
            "notes",
            "comment",
            "comments",
            "remark",
            "remarks",
            "notiz",
            "notizen",
            "bemerkung",
            "kommentar",
            "anmerkung",
        ],
    ),
];
