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
        &["day", "datum", "tag", "jour"],
    ),
    column(
        must("lifter", "a lifter's name from lifters.toml", "who"),
        &[
            "name",
            "athlete",
            "heber",
            "sportler",
            "athlet",
            "athl\u{e8}te",
            "nom",
        ],
    ),
    column(
        must("lift", "a lift such as \"rack pull\"", "what"),
        &[
            "exercise",
            "movement",
            "\u{fc}bung",
            "uebung",
            "exercice",
            "mouvement",
        ],
    ),
    column(
        must("sets", "a whole number from 1 to 20", "work sets, 1 to 20"),
        &[
            "set",
            "work sets",
            "s\u{e4}tze",
            "saetze",
            "satz",
            "serien",
            "s\u{e9}ries",
        ],
    ),
    column(
        must(
            "reps",
            "a whole number from 1 to 50",
            "reps of a work set, 1 to 50; also \"3-5\", \"5+\", \"AMRAP\" or \"5/3/1+\"",
        ),
        &[
            "rep",
            "repetitions",
            "wiederholungen",
            "wdh",
            "wh",
            "r\u{e9}p\u{e9}titions",
        ],
    ),
    column(
        must(
            "load",
            "a load such as \"180 kg\", \"445 lb\" or \"80 %\"",
            "the work load, bar and collars counted in, 1 to 1000 kg, or a percentage of the lifter's recorded best of the lift, 1 to 150 %, or \"80 % of training max\", \"90 % of top set\", \"+2.5 kg\" from last time, \"RPE 8\", \"due\"; bare numbers are in the unit of the header, as in \"load (kg)\", else in the lifter's own",
        ),
        &[
            "weight",
            "work load",
            "intensity",
            "intensit\u{e4}t",
            "last",
            "gewicht",
            "charge",
            "poids",
        ],
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
        &["pause", "pausen", "break", "repos"],
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
            "remarque",
        ],
    ),
];

/// Columns that a plan may have beside or in place of others.
pub const MORE_COLUMNS: [PlanColumn; 12] = [
    column(
        may(
            "scheme",
            "sets, reps and load in columns of their own",
            "sets, reps and load together such as \"5x3 @ 140\"",
            "sets, reps and load in one cell: \"5x3 @ 140\", \"1x5 @ RPE 8, 3x5 @ 90 % of top set\"",
        ),
        &[
            "prescription",
            "work",
            "sets x reps",
            "sets/reps",
            "sets x reps @ load",
            "sxr",
            "vorgabe",
            "s\u{e4}tze x wdh",
            "s\u{e9}ries x reps",
        ],
    ),
    column(
        may(
            "effort",
            "none asked",
            "an RPE such as \"8\"",
            "RPE from 1 to 10 in halves",
        ),
        &["rpe"],
    ),
    column(
        may(
            "reserve",
            "none asked",
            "a number such as \"2\"",
            "reps in reserve, 0 to 9, taken for RPE 10 less as many",
        ),
        &["rir", "reps in reserve"],
    ),
    column(
        may(
            "week",
            "dates",
            "a number such as \"3\"",
            "the week of the plan, counted from the first Monday, which stands above the plan as \"first monday: 2026-12-07\" or is given as --monday",
        ),
        &["wk", "woche", "semaine"],
    ),
    column(
        may(
            "weekday",
            "dates",
            "a day such as \"Monday\"",
            "the day of the week, in English, German or French",
        ),
        &["day of the week", "wochentag", "jour de la semaine"],
    ),
    column(
        may(
            "track",
            "none",
            "a name such as \"heavy\"",
            "which sets follow from one another: heavy, medium and light days of one lift",
        ),
        &["slot", "spur"],
    ),
    column(
        may(
            "bar",
            "the one that the lift is done with",
            "a bar of the gym such as \"old yard bar\"",
            "the bar for all sets of the lift, one of the lifter's rack; sets on another bar are a lift of their own",
        ),
        &["stange", "hantelstange", "barre"],
    ),
    column(
        may(
            "hole",
            "the one that suits the lifter",
            "a number such as \"6\"",
            "the hole of the pins or hooks, from 1 at the bottom, with no mat",
        ),
        &["loch", "pins", "pin height"],
    ),
    column(
        may(
            "block",
            "the floor",
            "a height such as \"100 mm\"",
            "what the plates stand on where the lift starts on the floor, 10 to 600 mm",
        ),
        &["blocks", "block height", "bl\u{f6}cke"],
    ),
    column(
        may(
            "tempo",
            "none asked",
            "four figures such as \"3-0-1-0\"",
            "seconds down, at the bottom, up and at the top of each rep, 0 to 15; X for as fast as it goes up",
        ),
        &["cadence"],
    ),
    column(
        may(
            "hold",
            "none asked",
            "seconds such as \"2\"",
            "how long each rep is paused, 1 to 14 seconds",
        ),
        &["rep pause", "pause in rep", "halten", "haltezeit"],
    ),
    column(
        may(
            "gear",
            "the lifter's own",
            "\"belt, straps\"",
            "belt, straps and grip: \"belt\", \"no belt\", \"straps\", \"no straps\", \"hook grip\", \"double overhand\", \"none\"",
        ),
        &["equipment", "ausr\u{fc}stung", "mat\u{e9}riel"],
    ),
];
