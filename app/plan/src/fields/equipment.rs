//! Keys of gym.toml: the gym, its racks, bars and plates.
use super::{Table, may, must};
use crate::words::term;
use text::keys::checked as k;

/// gym.toml.
pub const GYM: Table = Table {
    a: term!(k::THE_GYM_S_FILE),
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
        may(
            "day_ends_after",
            "180 min",
            "\"120 min\"",
            "for how long somebody under way keeps the day after the last entry, whatever the clock \
             says, 30 min to 720 min; what is left open is closed on the next day",
        ),
        may(
            "called_for",
            "4 min",
            "\"3 min\"",
            "how long somebody who was called may take to come before somebody who is ready goes \
             first, 1 min to 30 min; passed over twice they count as away until they are back",
        ),
    ],
};

/// A rack.
pub const RACK: Table = Table {
    a: term!(k::A_RACK),
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
        may(
            "hole_change",
            "30 s",
            "\"20 s\"",
            "time to move both pins to another hole, up to 10 min",
        ),
        may(
            "hole_change_at_most",
            "60 kg",
            "\"135 lb\"",
            "the pins are moved only while the bar, collars included, carries at most this",
        ),
        may(
            "longest_wait",
            "no limit",
            "\"6 min\"",
            "once rested, nobody is to wait longer for the bar where an order allows it, though all \
             end later, 30 s to 60 min",
        ),
        may(
            "pin_rated_load",
            "not known, and not held against",
            "\"450 kg\"",
            "what both pins together are rated for, bar included, as their maker stated, 10 kg to 10 t",
        ),
        may(
            "rack_rated_load",
            "not known, and not held against",
            "\"450 kg\"",
            "what the rack is rated for, as its maker stated, 10 kg to 10 t",
        ),
        may(
            "support_span",
            "not known, so no bar is bent on it",
            "\"1.05 m\"",
            "between the two lines on which a bar touches the pins, 100 mm to 2 m",
        ),
    ],
};

/// A measured height.
pub const CALIBRATION: Table = Table {
    a: term!(k::A_CALIBRATION),
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
    a: term!(k::A_BAR),
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
            "name of the rack that it stands by; each rack needs a bar that serves it",
        ),
        may(
            "rated_load",
            "not known, and not held against",
            "\"500 kg\"",
            "what it is rated for, itself included, as its maker stated, 10 kg to 10 t",
        ),
        may(
            "between_sleeves",
            "not known, so it is not bent on pins",
            "\"1310 mm\"",
            "between the inner faces of the sleeves, where the innermost plates stop, 500 mm to 2 m",
        ),
        may(
            "youngs_modulus",
            "not known, so it is not bent on pins",
            "\"205 GPa\"",
            "stiffness of the shaft's steel as its maker stated, 50 to 500 GPa; also in psi or ksi, rounded to the pascal",
        ),
        may(
            "yield",
            "not known, so it is not bent on pins",
            "\"1000 MPa\"",
            "stress at which the shaft's steel yields, as its maker stated (the tensile strength is another figure and higher), 50 to 5000 MPa; also in psi or ksi, rounded to the pascal",
        ),
    ],
};

/// A plate set.
pub const PLATE_SET: Table = Table {
    a: term!(k::A_PLATE_SET),
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
        may(
            "weighed",
            "true loads are not told",
            "[{ mark = \"A1\", nominal = \"45 lb\", mass = \"45.4 lb\" }]",
            "plates as weighed, up to 16 of a label: the rack then tells which goes on which side",
        ),
    ],
};

/// A plate as weighed.
pub const WEIGHED: Table = Table {
    a: term!(k::A_WEIGHED_PLATE),
    form: "{ mark = \"A1\", nominal = \"45 lb\", mass = \"45.4 lb\" }",
    fields: &[
        must("mark", "\"A1\"", "what is painted on that one plate"),
        must(
            "nominal",
            "\"45 lb\"",
            "what its label says, one of the set's plates",
        ),
        must("mass", "\"45.4 lb\"", "what it weighs"),
    ],
};

/// A kind of plate.
pub const PLATE: Table = Table {
    a: term!(k::A_PLATE),
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
