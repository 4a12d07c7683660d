//! No bytes make a reader panic, and no reader both takes a file and calls it wrong.
use plan::{Fault, Source};
use proptest::prelude::*;
use std::sync::LazyLock;

const FILES: [&str; 5] = [
    "gym.toml",
    "lifters.toml",
    "programme.toml",
    "kiosk.toml",
    "week.csv",
];

fn demo(name: &str) -> Vec<u8> {
    let name = name.replace("week.csv", "plans/four-weeks.csv");
    let path = format!("{}/../../demo-data/{name}", env!("CARGO_MANIFEST_DIR"));
    std::fs::read(path).expect("the demo file is in the repository")
}

static GYM: LazyLock<domain::Gym> = LazyLock::new(gym);

fn gym() -> domain::Gym {
    let (gym, lifters) = (demo("gym.toml"), demo("lifters.toml"));
    let source = |name, text| Source { name, text };
    plan::gym(source("gym.toml", &gym), source("lifters.toml", &lifters)).expect("a good gym")
}

/// Reads `text` as each kind of file, with a gym and without.
fn read_all(text: &[u8], gym: &domain::Gym) {
    for name in FILES {
        let source = Source { name, text };
        for gym in [None, Some(gym)] {
            for fault in plan::check(source, gym) {
                let line = fault.to_string();
                assert!(
                    line.starts_with(name) && !line.contains(['\n', '\r']),
                    "{line:?}"
                );
                let rows = text.split(|b| *b == b'\n' || *b == b'\r').count();
                assert!(
                    fault.row.is_none_or(|row| (1..=rows).contains(&row)),
                    "{line}"
                );
            }
        }
    }
    let source = |name| Source { name, text };
    let (read, faults) = plan::gym_noted(source("gym.toml"), source("lifters.toml"));
    assert_eq!(read.is_none(), faults.iter().any(Fault::stops));
    if let Err(faults) = plan::coach_plan(source("week.csv"), gym) {
        assert!(faults.iter().any(Fault::stops));
    }
}

/// A good file with some bytes replaced, left out or put in.
fn bent() -> impl Strategy<Value = Vec<u8>> {
    let byte = prop_oneof![
        prop::sample::select(b"\"'[]{}=,;.#%\n\r\t -0123456789akgmin".to_vec()),
        any::<u8>(),
    ];
    let edit = (any::<prop::sample::Index>(), 0..3_u8, byte);
    let edits = prop::collection::vec(edit, 1..6);
    (prop::sample::select(FILES.to_vec()), edits).prop_map(|(name, edits)| {
        let mut text = demo(name);
        for (at, how, byte) in edits {
            let at = at.index(text.len());
            match how {
                0 => text[at] = byte,
                1 => text.insert(at, byte),
                _ => {
                    text.remove(at);
                }
            }
        }
        text
    })
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(512))]

    #[test]
    fn any_bytes(text in prop::collection::vec(any::<u8>(), 0..200)) {
        read_all(&text, &GYM);
    }

    #[test]
    fn any_text(text in "[a-z0-9\"=\\[\\]{},;.%\n\r\t \u{17d}#_'-]{0,200}") {
        read_all(text.as_bytes(), &GYM);
    }

    #[test]
    fn bent_files(text in bent()) {
        read_all(&text, &GYM);
    }
}

/// Nesting that would eat the stack if it were followed down.
#[test]
fn deep_nesting() {
    for piece in ["[", "{a=", "a.", "[[", "\"", "a=["] {
        let deep = piece.repeat(100_000);
        for text in [deep.clone(), format!("a = {deep}")] {
            read_all(text.as_bytes(), &GYM);
        }
    }
}
