//! Bad gym, lifter and kiosk files, each with every word that is told about it.
use plan::Source;
use std::fmt::Write as _;

const GYM: &str = r#"name = "Barn"
[[rack]]
name = "door rack"
first_hole = "9 in"
spacing = "3 in"
holes = 24
pin_diameter = "1 in"
hole_diameter = "27 mm"
mats = ["20 mm"]
plate_set = "pounds"
[[bar]]
name = "door bar"
mass = "45 lb"
shaft_diameter = "28.5 mm"
sleeve = "400 mm"
condition = "straight"
[[plate_set]]
name = "pounds"
plates = [{ mass = "45 lb", pairs = 6, thickness = "38 mm", diameter = "450 mm" }]
"#;

const LIFTERS: &str = r#"[[lifter]]
name = "Tevita"
unit = "lb"
rack = "door rack"
ladder = "5-3-2-1"
belt = "rung 3"
landmarks = { tibial_tuberosity = "488 mm", patella_top = "568 mm" }
bests = { "rack pull" = "600 lb" }
"#;

/// What is told about the two files.
fn told(gym: &[u8], lifters: &[u8]) -> String {
    let gym = Source {
        name: "gym.toml",
        text: gym,
    };
    let lifters = Source {
        name: "lifters.toml",
        text: lifters,
    };
    let (read, faults) = plan::gym_noted(gym, lifters);
    let wrong = faults
        .iter()
        .any(|fault| fault.weight == plan::Weight::Wrong);
    assert_eq!(read.is_none(), wrong, "taken exactly when nothing is wrong");
    let lines: Vec<_> = faults.iter().map(|fault| format!("  {fault}\n")).collect();
    lines.concat()
}

/// One change to a good file, and what is told about it.
fn change(out: &mut String, base: &str, (from, to): (&str, &str)) {
    assert!(base.contains(from), "{from:?} is in the good file");
    let bad = base.replacen(from, to, 1);
    let told = if base == GYM {
        told(bad.as_bytes(), LIFTERS.as_bytes())
    } else {
        told(GYM.as_bytes(), bad.as_bytes())
    };
    write!(out, "{from:?} -> {to:?}\n{told}\n").expect("text grows");
}

#[test]
fn the_good_files_are_taken() {
    assert_eq!(told(GYM.as_bytes(), LIFTERS.as_bytes()), "");
    let marked = [b"\xef\xbb\xbf", GYM.as_bytes()].concat();
    assert_eq!(told(&marked, LIFTERS.replace('\n', "\r\n").as_bytes()), "");
}

#[test]
fn gym_files() {
    let changes = [
        ("\"3 in\"", "\"3\""),
        ("\"3 in\"", "3"),
        ("\"3 in\"", "\"0 mm\""),
        ("\"3 in\"", "\"1/3 in\""),
        ("\"9 in\"", "\"9 feet\""),
        ("\"9 in\"", "\"nine in\""),
        ("holes = 24", "holes = 0"),
        ("holes = 24", "holes = 240"),
        ("holes = 24", "holes = 2.5"),
        ("holes = 24", "hole = 24"),
        ("holes = 24\n", ""),
        ("\"27 mm\"", "\"25 mm\""),
        ("\"27 mm\"", "\"77 mm\""),
        ("[\"20 mm\"]", "\"20 mm\""),
        ("[\"20 mm\"]", "[\"20 mm\", 10, \"2 m\"]"),
        ("plate_set = \"pounds\"", "plate_set = \"pound\""),
        ("plate_set = \"pounds\"", "plate_set = \"stones\""),
        (
            "plate_set = \"pounds\"",
            "plate_set = \"pounds\"\ncalibration = { hole = 30, bar_height = \"427 mm\" }",
        ),
        (
            "plate_set = \"pounds\"",
            "plate_set = \"pounds\"\ncalibration = { hole = 3, bar_height = \"500 mm\" }",
        ),
        ("[[bar]]", "[[bar]]\nrack = \"dor rack\""),
        (
            "[[bar]]",
            "[[rack]]\nname = \"far rack\"\nfirst_hole = \"9 in\"\nspacing = \"3 in\"\nholes = 24\npin_diameter = \"1 in\"\nplate_set = \"POUNDS\"\n[[bar]]\nrack = \"door rack\"",
        ),
        ("\"45 lb\"", "\"45\""),
        ("\"28.5 mm\"", "\"2.85 mm\""),
        ("\"straight\"", "\"bent\""),
        ("\"straight\"", "\"retired\""),
        ("pairs = 6", "pairs = 51"),
        ("pairs = 6, ", ""),
        (
            "}]",
            "}, { mass = \"45 lb\", pairs = 1, thickness = \"38 mm\", diameter = \"450 mm\" }]",
        ),
        ("[{ mass", "[] #"),
        (
            "[[plate_set]]",
            "[[plate_set]]\nname = \"Pounds\"\nplates = [{ mass = \"10 kg\", pairs = 1, thickness = \"21 mm\", diameter = \"325 mm\", handling = \"5 min\" }]\n[[plate_set]]",
        ),
        ("\"Barn\"", "\"\""),
        (
            "\"Barn\"",
            "\"A barn with a name that is much too long for a tile\"",
        ),
        ("\"Barn\"", "Barn"),
        ("\"Barn\"", "\"Barn"),
        ("name = \"Barn\"\n", "colour = \"red\"\n"),
        ("[[rack]]", "[rack]"),
    ];
    let mut out = String::new();
    for one in changes {
        change(&mut out, GYM, one);
    }
    insta::assert_snapshot!(out);
}

#[test]
fn what_makers_stated() {
    let changes = [
        (
            "\"straight\"",
            "\"straight\"\nyield = \"1000\"\nyoungs_modulus = \"205 MPa\"",
        ),
        (
            "\"straight\"",
            "\"straight\"\nyield = \"190,000 psi\"\nyoungs_modulus = 205",
        ),
        (
            "\"straight\"",
            "\"straight\"\nrated_load = \"5 kg\"\nbetween_sleeves = \"13 m\"",
        ),
        (
            "[\"20 mm\"]",
            "[\"20 mm\"]\npin_rated_load = \"1000\"\nsupport_span = \"42 mm\"",
        ),
    ];
    let mut out = String::new();
    for one in changes {
        change(&mut out, GYM, one);
    }
    insta::assert_snapshot!(out);
}

#[test]
fn lifts_and_patterns() {
    let tail = "[[plate_set]]\nname = \"pounds\"";
    let mut out = String::new();
    for more in [
        "[[lift]]\nname = \"rack pull\"\nlandmark = \"knee\"",
        "[[lift]]\nname = \"halting deadlift\"\nbelow = \"20 mm\"",
        "[[lift]]\nname = \"seated good morning\"",
        "[[lift]]\nname = \"block pull\"\nstart = \"pins\"",
        "[[lift]]\nname = \"block pull\"\nstart = \"blocks\"",
        "[[lift]]\nname = \"block pull\"\nstart = \"floor\"\npartner = \"rack pul\"",
        "[[lift]]\nname = \"rack pull\"\npartner = \"rack pull\"",
        "[[lift]]\nname = \"squat\"\nstart = \"hooks\"\ngrip = \"hook\"\npartner = \"rack pull\"",
        "[[lift]]\nname = \"rack pull\"\nrest_work = \"3\"",
        "[[lift]]\nname = \"rack pull\"\n[[lift]]\nname = \"Rack Pull\"",
        "[[pattern]]\nname = \"sixes\"\nsteps = [{ share = \"50 %\", reps = 6 }, { share = \"40 %\", reps = 6 }]",
        "[[pattern]]\nname = \"sixes\"\nsteps = [{ share = \"100 %\", reps = 6 }, { share = 0.5, reps = 60 }]",
        "[[pattern]]\nname = \"sixes\"\nsteps = []",
    ] {
        let changed = format!("{more}\n{tail}");
        change(&mut out, GYM, (tail, &changed));
    }
    insta::assert_snapshot!(out);
}

#[test]
fn lifter_files() {
    let changes = [
        ("\"lb\"", "\"pounds\""),
        ("\"door rack\"", "\"dor rack\""),
        ("ladder = \"5-3-2-1\"", "ladder = \"5321\""),
        ("ladder = \"5-3-2-1\"", "ladder = \"triples\""),
        ("ladder", "bar = \"yard bar\"\nladder"),
        ("\"rung 3\"", "\"rung 0\""),
        ("\"rung 3\"", "\"100\""),
        ("\"rung 3\"", "\"always\""),
        ("\"488 mm\"", "\"48.8\""),
        ("\"488 mm\"", "\"48.8 mm\""),
        ("\"568 mm\"", "\"480 mm\""),
        ("\"568 mm\"", "\"5.68 m\""),
        ("\"568 mm\"", "\"688 mm\""),
        ("patella_top", "patela_top"),
        ("\"rack pull\" =", "\"rack pul\" ="),
        ("\"600 lb\"", "\"6000 lb\""),
        ("\"600 lb\" }", "\"600 lb\", \"Rack Pull\" = \"610 lb\" }"),
        (
            "[[lifter]]",
            "[[lifter]]\nname = \"TEVITA\"\nunit = \"kg\"\nrack = \"door rack\"\n[[lifter]]",
        ),
        ("name = \"Tevita\"\nunit = \"lb\"\n", ""),
        ("landmarks = {", "landmarks = ["),
        (
            "landmarks",
            "stature = \"1.8 kg\"\nstature_said = \"6 ft\"\nlandmarks",
        ),
        (
            "landmarks",
            "stature = \"18 cm\"\nsex = \"m\"\nsole = \"10 cm\"\nlandmarks",
        ),
        ("[[lifter]]", "[[lifters]]"),
    ];
    let mut out = String::new();
    for one in changes {
        change(&mut out, LIFTERS, one);
    }
    insta::assert_snapshot!(out);
}

/// Several faults in both files are told in one go, by file and row.
#[test]
fn all_at_once() {
    let gym = GYM
        .replace("3 in", "3")
        .replace("= 24", "= 0")
        .replace("28.5 mm", "x");
    let lifters = LIFTERS.replace("568 mm", "568").replace("600 lb", "600");
    insta::assert_snapshot!(told(gym.as_bytes(), lifters.as_bytes()));
}

#[test]
fn files_that_are_no_text() {
    let long = vec![b'#'; (1 << 20) + 1];
    let files: [&[u8]; 4] = [b"", b"name = \"a\"\nx = \"\xe4\"", &long, b"PK\x03\x04"];
    let told: Vec<_> = files
        .iter()
        .map(|bad| told(bad, LIFTERS.as_bytes()))
        .collect();
    insta::assert_snapshot!(told.join("\n"));
}

#[test]
fn kiosk_files() {
    let told = |text: &str| {
        let source = Source {
            name: "kiosk.toml",
            text: text.as_bytes(),
        };
        let gym = plan::gym(
            Source {
                name: "gym.toml",
                text: GYM.as_bytes(),
            },
            Source {
                name: "lifters.toml",
                text: LIFTERS.as_bytes(),
            },
        );
        let gym = gym.expect("a good gym");
        let faults = plan::check(source, Some(&gym));
        let lines: Vec<_> = faults.iter().map(|fault| format!("  {fault}\n")).collect();
        format!("{text:?}\n{}", lines.concat())
    };
    let files = [
        "",
        "racks = [\"DOOR rack\"]",
        "address = \"localhost\"\nport = 0\nshare = \"yes\"\nracks = [\"yard rack\"]",
        "port = 70000\nracks = []\nadress = \"::1\"",
        "port = \"8470\"\nracks = \"door rack\"",
        "tls = \"yes\"\nhosts = [\"https://rack.example\", \"10.0.0.7\", \"-x.example\", \"*.example\", \"\"]",
        "hosts = \"rack.example\"\nproxies = [\"proxy.example\", \"0.0.0.0\"]",
    ];
    insta::assert_snapshot!(files.map(told).join("\n"));
}

#[test]
fn defaults_of_the_kiosk() {
    let source = Source {
        name: "kiosk.toml",
        text: b"share = false",
    };
    let kiosk = plan::kiosk(source, None).expect("a good file");
    assert_eq!(
        (kiosk.address.to_string().as_str(), kiosk.port),
        ("127.0.0.1", 8470)
    );
    assert_eq!((kiosk.share, kiosk.racks), (false, None));
}

/// Other machines are not to read the code that is typed in.
#[test]
fn tls_is_on_as_soon_as_other_machines_reach_the_page() {
    let tls = |text: &str| {
        let source = Source {
            name: "kiosk.toml",
            text: text.as_bytes(),
        };
        let kiosk = plan::kiosk(source, None).expect("a good file");
        (kiosk.tls, kiosk.is_under_tls())
    };
    assert_eq!(tls(""), (None, false));
    assert_eq!(tls("address = \"::1\""), (None, false));
    assert_eq!(tls("address = \"192.168.1.20\""), (None, true));
    assert_eq!(tls("address = \"fd00::20\""), (None, true));
    // An owner's word stands, either way.
    let plain = "address = \"192.168.1.20\"\ntls = false";
    assert_eq!(tls(plain), (Some(false), false));
    assert_eq!(tls("tls = true"), (Some(true), true));
}

#[test]
fn names_and_proxies_of_the_page() {
    let source = Source {
        name: "kiosk.toml",
        text: b"hosts = [\"Rack.Gym.Example.\", \"rack\"]\nproxies = [\"192.168.1.2\", \"::1\"]",
    };
    let kiosk = plan::kiosk(source, None).expect("a good file");
    assert_eq!(kiosk.hosts, ["rack.gym.example", "rack"]);
    let proxies: Vec<_> = kiosk.proxies.iter().map(ToString::to_string).collect();
    assert_eq!(proxies, ["192.168.1.2", "::1"]);
}
