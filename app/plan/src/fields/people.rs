//! Keys of lifters.toml and kiosk.toml.
use super::{Table, may, must};
use crate::words::term;
use text::keys::checked as k;

/// lifters.toml.
pub const LIFTERS: Table = Table {
    a: term!(k::THE_LIFTERS_FILE),
    form: "lifters.toml",
    fields: &[must("lifter", "[[lifter]] tables", "the lifters, 1 to 500")],
};

/// A lifter.
pub const LIFTER: Table = Table {
    a: term!(k::A_LIFTER),
    form: "[[lifter]]",
    fields: &[
        must(
            "name",
            "\"Tevita\"",
            "as shown on the tile; plans use it too",
        ),
        may(
            "also",
            "none",
            "[\"Tev\"]",
            "short names that plans may use, up to 8, each for one lifter alone",
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
            "hooks",
            "none written",
            "{ \"squat\" = \"hole 14\" }",
            "hole of the hooks by lift, for lifts that start from hooks, 1 to 500",
        ),
        may(
            "stature",
            "not measured",
            "\"1756 mm\"",
            "height without shoes as measured, 1 to 2.5 m; landmarks that were not measured are estimated from it, and the sheet says so",
        ),
        may(
            "stature_said",
            "not asked",
            "\"1780 mm\"",
            "height as the lifter says it, 1 to 2.5 m; used where it was not measured, less what people overstate",
        ),
        may(
            "sex",
            "both are taken together",
            "\"female\"",
            "\"female\" or \"male\", as the survey that the estimates come from counted people",
        ),
        may(
            "sole",
            "20 mm, give or take 5 mm",
            "\"18 mm\"",
            "how much the shoes they lift in raise them, 0 to 60 mm; for estimates alone",
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
        may(
            "training_max",
            "none",
            "[{ lift = \"rack pull\", load = \"200 kg\" }]",
            "frozen figures for percentages of a training max in plans, up to 260; they move when another is written with its date, not when a new best falls",
        ),
    ],
};

/// One training max.
pub const TRAINING_MAX: Table = Table {
    a: term!(k::A_TRAINING_MAX),
    form: "{ lift = \"rack pull\", load = \"200 kg\", since = \"2026-12-07\" }",
    fields: &[
        must("lift", "\"rack pull\"", "which lift"),
        must("load", "\"200 kg\"", "the figure, 1 to 1000 kg"),
        may(
            "since",
            "for ever",
            "\"2026-12-07\"",
            "from this date on; of several the latest that has come",
        ),
    ],
};

/// The heights on a lifter's body.
pub const LANDMARKS: Table = Table {
    a: term!(k::A_SET_OF_LANDMARKS),
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
    a: term!(k::THE_KIOSK_S_FILE),
    form: "kiosk.toml",
    fields: &[
        may(
            "address",
            "\"127.0.0.1\", this machine alone",
            "\"192.168.1.20\"",
            "the address that the page is served on: that of one interface",
        ),
        may(
            "port",
            "8470",
            "8470",
            "the port that the page is served on, 1 to 65535",
        ),
        may(
            "share",
            "false",
            "true",
            "whether the page is served at all",
        ),
        may(
            "tls",
            "true as soon as other machines reach it, false on this machine alone",
            "true",
            "whether the page is served under TLS, and only so; without it the coach's code travels readable",
        ),
        may(
            "certificate",
            "one made on the device, under a root that phones can be told to trust",
            "\"/etc/pinladder/gym.pem\"",
            "the owner's certificate with its chain, a whole path to a PEM file; read again when it changes",
        ),
        may(
            "key",
            "the one made with it",
            "\"/etc/pinladder/gym.key\"",
            "the certificate's private key, a whole path to a PEM file",
        ),
        may(
            "name",
            "\"pinladder\"",
            "\"north-rack\"",
            "the name by which the page is found: north-rack.local",
        ),
        may(
            "hosts",
            "none",
            "[\"rack.gym.example\"]",
            "other names by which the page is asked for, up to 20; the kiosk's own links name the first",
        ),
        may(
            "proxies",
            "none",
            "[\"192.168.1.2\"]",
            "addresses of proxies before the page, up to 10; only they are believed when they say who asks (X-Forwarded-For)",
        ),
        may(
            "racks",
            "all of the gym's",
            "[\"river rack\"]",
            "names of the racks shown on this kiosk",
        ),
        may(
            "backup",
            "no copies",
            "\"/media/second-disk/pinladder\"",
            "the folder for the nightly copy of the journal, a whole path",
        ),
        may(
            "backups",
            "14",
            "30",
            "how many copies are kept there, 1 to 400",
        ),
        may(
            "stick",
            "sticks are not looked at",
            "\"/media/pinladder\"",
            "the folder where sticks appear, a whole path",
        ),
        may(
            "floor_after",
            "5 min",
            "\"3 min\"",
            "how long a screen stays that nobody touches, 30 s to 720 min, or \"never\"; then the floor, or all lifters, is shown",
        ),
        may(
            "sleep_after",
            "15 min",
            "\"30 min\"",
            "how long nobody touches the screen before it is dark, 30 s to 720 min, or \"never\"; the first touch only wakes it",
        ),
        may(
            "hub",
            "none: this rack keeps its own record",
            "\"postgresql://north@192.168.1.5/pinladder\"",
            "where the journals of the gym's kiosks meet: a PostgreSQL database that `pinladder hub prepare` made, and this kiosk's name in it; its password lies beside this file in hub.password, the server's certificate in hub.pem; ?tls=off behind it only where a tunnel or a cable of its own keeps strangers out",
        ),
    ],
};
