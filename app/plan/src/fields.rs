//! Every key of the TOML files and every column of a plan: the list that readers check against.
//!
//! FILES.md is written from it, and a test holds the two together. Refuses: keys that no reader
//! reads.

/// A table of a TOML file.
#[derive(Debug, Clone, Copy)]
pub struct Table {
    /// With its article, for faults: "a rack".
    pub a: &'static str,
    /// How it is written in the file.
    pub form: &'static str,
    /// Its keys.
    pub fields: &'static [Field],
}

/// A key of a table, or a column of a plan.
#[derive(Debug, Clone, Copy)]
pub struct Field {
    /// As written.
    pub key: &'static str,
    /// Whether it can be left out.
    pub need: Need,
    /// A value as written in the file.
    pub example: &'static str,
    /// What it means, with unit and range.
    pub means: &'static str,
}

/// Whether something can be left out.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Need {
    /// No.
    Always,
    /// Yes; what then holds.
    Else(&'static str),
}

const fn must(key: &'static str, example: &'static str, means: &'static str) -> Field {
    Field {
        key,
        need: Need::Always,
        example,
        means,
    }
}

const fn may(
    key: &'static str,
    otherwise: &'static str,
    example: &'static str,
    means: &'static str,
) -> Field {
    Field {
        key,
        need: Need::Else(otherwise),
        example,
        means,
    }
}

/// gym.toml.
pub const GYM: Table = Table {
    a: "the gym's file",
    form: "gym.toml",
    fields: &[
        must(
            "name",
            "\"The Old Ropewalk\"",
            "what the gym is called, up to 40 characters",
        ),
        must("rack", "[[rack]] tables", "the racks, 1 to 50"),
        must("bar", "[[bar]] tables", "the bars, 1 to 100"),
        must(
            "plate_set",
            "[[plate_set]] tables",
            "the plates, in sets, 1 to 50",
        ),
        may(
            "lift",
            "the lifts that come with the program",
            "[[lift]] tables",
            "lifts changed or added, up to 100",
        ),
        may(
            "pattern",
            "the patterns that come with the program",
            "[[pattern]] tables",
            "warm-up patterns changed or added, up to 100",
        ),
    ],
};

/// A rack.
pub const RACK: Table = Table {
    a: "a rack",
    form: "[[rack]]",
    fields: &[
        must("name", "\"river rack\"", "what the gym calls it"),
        must(
            "first_hole",
            "\"9 in\"",
            "floor to the centre of hole 1, the lowest, 10 mm to 2 m",
        ),
        must(
            "spacing",
            "\"3 in\"",
            "between the centres of neighbouring holes, 10 to 300 mm",
        ),
        must("holes", "24", "how many, 1 to 200"),
        must(
            "pin_diameter",
            "\"1 in\"",
            "5 to 60 mm, less than the spacing",
        ),
        may(
            "hole_diameter",
            "the pins fit without play",
            "\"1 1/16 in\"",
            "from the pin's diameter to less than the spacing",
        ),
        may(
            "mats",
            "no mats",
            "[\"20 mm\", \"10 mm\"]",
            "thickness of each mat that may be stood on, 1 to 200 mm, up to 8 mats",
        ),
        may(
            "calibration",
            "the height is computed",
            "{ hole = 6, bar_height = \"427 mm\" }",
            "a height measured once, which replaces the computed one",
        ),
        must(
            "plate_set",
            "\"pound plates\"",
            "name of the plate set that hangs by it",
        ),
    ],
};

/// A measured height.
pub const CALIBRATION: Table = Table {
    a: "a calibration",
    form: "{ hole = 6, bar_height = \"427 mm\" }",
    fields: &[
        must("hole", "6", "number of the hole that the pins were in"),
        must(
            "bar_height",
            "\"427 mm\"",
            "floor to the centre of the bar that lay on them, 10 mm to 3 m",
        ),
    ],
};

/// A bar.
pub const BAR: Table = Table {
    a: "a bar",
    form: "[[bar]]",
    fields: &[
        must("name", "\"river bar\"", "what the gym calls it"),
        must("mass", "\"45 lb\"", "the bar alone, 1 to 60 kg"),
        may(
            "collars",
            "not counted",
            "\"5 kg\"",
            "both collars together, up to 10 kg",
        ),
        must("shaft_diameter", "\"28.5 mm\"", "10 to 60 mm"),
        must(
            "sleeve",
            "\"370 mm\"",
            "what one sleeve holds with its collar on, 50 mm to 1 m",
        ),
        must(
            "condition",
            "\"straight\"",
            "\"straight\", kept off the pins, or \"retired\", the one for pulls from pins",
        ),
        may(
            "rack",
            "it serves every rack",
            "\"river rack\"",
            "name of the rack that it stands by",
        ),
    ],
};

/// A plate set.
pub const PLATE_SET: Table = Table {
    a: "a plate set",
    form: "[[plate_set]]",
    fields: &[
        must("name", "\"pound plates\"", "what the gym calls it"),
        may(
            "big_inside",
            "true",
            "true",
            "a plate may only go outside plates at least as heavy",
        ),
        must(
            "plates",
            "[{ mass = \"45 lb\", pairs = 6, thickness = \"38 mm\", diameter = \"450 mm\" }]",
            "the kinds of plate, 1 to 30",
        ),
    ],
};

/// A kind of plate.
pub const PLATE: Table = Table {
    a: "a plate",
    form: "{ mass = \"45 lb\", pairs = 6, thickness = \"38 mm\", diameter = \"450 mm\" }",
    fields: &[
        must(
            "mass",
            "\"45 lb\"",
            "one plate, 0.1 to 100 kg; the unit is the one on its face",
        ),
        must("pairs", "6", "how many pairs, 0 to 50"),
        must("thickness", "\"38 mm\"", "along the sleeve, 1 to 200 mm"),
        must("diameter", "\"450 mm\"", "50 to 600 mm"),
        may(
            "handling",
            "by mass: 4 s under 10 kg, 6 s under 20 kg, else 8 s",
            "\"6 s\"",
            "time to put a pair on or take it off, 0 to 120 s",
        ),
    ],
};

/// A lift.
pub const LIFT: Table = Table {
    a: "a lift",
    form: "[[lift]]",
    fields: &[
        must(
            "name",
            "\"rack pull\"",
            "the trade's name; with the name of a lift that comes with the program it changes that one, key by key",
        ),
        may(
            "start",
            "as it was; a new lift needs it",
            "\"pins\"",
            "\"floor\" or \"pins\"",
        ),
        may(
            "landmark",
            "as it was; a new lift from pins needs it",
            "\"tibial tuberosity\"",
            "what the height of the start is taken from: \"tibial tuberosity\", \"patella top\", \"mid-thigh\" or \"lockout\"",
        ),
        may(
            "below",
            "as it was, or 0 mm",
            "\"25 mm\"",
            "how far below the landmark the bar's centre starts, 0 to 300 mm",
        ),
        may(
            "end",
            "as it was, or \"lockout\"",
            "\"lockout\"",
            "where the bar ends: one of the landmarks",
        ),
        may(
            "grip",
            "as it was, or \"double overhand\"",
            "\"hook\"",
            "\"double overhand\" or \"hook\"",
        ),
        may(
            "bar",
            "as it was; a new lift from pins wants the retired one",
            "\"retired\"",
            "\"retired\" or \"straight\"",
        ),
        may(
            "partner",
            "as it was, or none",
            "\"halting deadlift\"",
            "the lift with which it shares some height",
        ),
        may(
            "overlap_least",
            "as it was, or 100 mm",
            "\"100 mm\"",
            "the least shared height that is not warned about, 0 to 500 mm",
        ),
        may(
            "rest_warm",
            "as it was, or 2 min",
            "\"2 min\"",
            "rest before a warm-up, 15 s to 30 min",
        ),
        may(
            "rest_work",
            "as it was, or 3 min",
            "\"4 min\"",
            "rest before a work set, 15 s to 30 min",
        ),
        may(
            "cues",
            "as they were",
            "[\"bar against the leg\"]",
            "what to think of, up to 8 of 60 characters; they replace what was",
        ),
        may(
            "cautions",
            "as they were",
            "[\"spotter at the door\"]",
            "what can hurt, up to 8 of 80 characters; they come after the ones of the program, which stay",
        ),
    ],
};

/// A warm-up pattern.
pub const PATTERN: Table = Table {
    a: "a pattern",
    form: "[[pattern]]",
    fields: &[
        must(
            "name",
            "\"fives\"",
            "what plans call it; with the name of a pattern that comes with the program it replaces that one",
        ),
        must(
            "steps",
            "[{ share = \"30 %\", reps = 5 }]",
            "the warm-ups, lowest first, 1 to 12",
        ),
    ],
};

/// One warm-up of a pattern.
pub const STEP: Table = Table {
    a: "a step",
    form: "{ share = \"30 %\", reps = 5 }",
    fields: &[
        must(
            "share",
            "\"30 %\"",
            "of the work load, 1 to 99 %, rising from step to step",
        ),
        must("reps", "5", "1 to 50"),
    ],
};

/// lifters.toml.
pub const LIFTERS: Table = Table {
    a: "the lifters' file",
    form: "lifters.toml",
    fields: &[must("lifter", "[[lifter]] tables", "the lifters, 1 to 500")],
};

/// A lifter.
pub const LIFTER: Table = Table {
    a: "a lifter",
    form: "[[lifter]]",
    fields: &[
        must(
            "name",
            "\"Tevita\"",
            "as shown on the tile; plans use it too",
        ),
        must(
            "unit",
            "\"lb\"",
            "\"kg\" or \"lb\": what the screen shows this lifter",
        ),
        must("rack", "\"river rack\"", "name of the rack they train at"),
        may(
            "bar",
            "the rack's first straight one",
            "\"river bar\"",
            "name of the bar from the floor",
        ),
        may(
            "ladder",
            "\"fives\"",
            "\"5-3-2-1\"",
            "the warm-up pattern used when a plan names none",
        ),
        may(
            "landmarks",
            "none measured",
            "{ tibial_tuberosity = \"455 mm\" }",
            "heights above the floor in the shoes they lift in",
        ),
        may(
            "belt",
            "\"never\"",
            "\"rung 3\"",
            "from when on it is worn: \"rung 3\", \"100 kg\" or \"never\"",
        ),
        may("straps", "\"never\"", "\"140 kg\"", "as for the belt"),
        may(
            "bests",
            "none recorded",
            "{ \"rack pull\" = \"220 kg\" }",
            "recorded best by lift, 1 to 1000 kg, for percentages in plans",
        ),
    ],
};

/// The heights on a lifter's body.
pub const LANDMARKS: Table = Table {
    a: "a set of landmarks",
    form: "{ tibial_tuberosity = \"455 mm\", patella_top = \"550 mm\" }",
    fields: &[
        may(
            "tibial_tuberosity",
            "not measured",
            "\"455 mm\"",
            "the bump of the shin bone below the knee, 100 mm to 2 m",
        ),
        may(
            "patella_top",
            "not measured",
            "\"550 mm\"",
            "upper edge of the kneecap, 100 mm to 2 m",
        ),
        may(
            "mid_thigh",
            "not measured",
            "\"690 mm\"",
            "half-way up the thigh, 100 mm to 2 m",
        ),
        may(
            "lockout",
            "not measured",
            "\"770 mm\"",
            "the bar in hanging hands, standing tall, 100 mm to 2 m",
        ),
    ],
};

/// kiosk.toml.
pub const KIOSK: Table = Table {
    a: "the kiosk's file",
    form: "kiosk.toml",
    fields: &[
        may(
            "address",
            "\"127.0.0.1\", this machine alone",
            "\"192.168.1.20\"",
            "the address that the page is served on",
        ),
        may(
            "port",
            "8470",
            "8470",
            "the port that the page is served on, 1 to 65535",
        ),
        may(
            "share",
            "true",
            "false",
            "whether the page is served at all",
        ),
        may(
            "racks",
            "all of the gym's",
            "[\"river rack\"]",
            "names of the racks shown on this kiosk",
        ),
    ],
};

/// All tables, each with the file that it belongs to, in the order of FILES.md.
pub const TABLES: &[(&str, &Table)] = &[
    ("gym.toml", &GYM),
    ("gym.toml", &RACK),
    ("gym.toml", &CALIBRATION),
    ("gym.toml", &BAR),
    ("gym.toml", &PLATE_SET),
    ("gym.toml", &PLATE),
    ("gym.toml", &LIFT),
    ("gym.toml", &PATTERN),
    ("gym.toml", &STEP),
    ("lifters.toml", &LIFTERS),
    ("lifters.toml", &LIFTER),
    ("lifters.toml", &LANDMARKS),
    ("kiosk.toml", &KIOSK),
];
