//! Plans of all formats, as bytes that anybody may have on a stick: no panic, nothing half taken,
//! no list of faults without end.
#![no_main]
use domain::Gym;
use plan::{Source, coach_plan, gym, understand};
use std::sync::LazyLock;

/// The most that one file is told; the rest is counted.
const TOLD_MOST: usize = 200;

static GYM: LazyLock<Gym> = LazyLock::new(|| {
    let of_gym = include_bytes!("../../../demo-data/gym.toml");
    let of_lifters = include_bytes!("../../../demo-data/lifters.toml");
    let lifters = Source {
        name: "lifters.toml",
        text: of_lifters,
    };
    let file = Source {
        name: "gym.toml",
        text: of_gym,
    };
    gym(file, lifters).expect("the demo's gym")
});

/// A library's panic is caught where the library is called, and is a fault of the file; one of our
/// own still ends the run.
fn let_panics_unwind() {
    std::panic::set_hook(Box::new(|_| {}));
}

libfuzzer_sys::fuzz_target!(
    init: {
        let_panics_unwind();
    },
    |text: &[u8]| {
        for name in ["plan.csv", "plan.xlsx"] {
            let source = Source { name, text };
            let understood = understand(source, Some(&GYM), None);
            let told = understood.faults.len();
            assert!(told <= TOLD_MOST, "{told} faults are told");
            match coach_plan(source, &GYM) {
                Ok(rows) => assert!(!rows.is_empty(), "an empty plan was taken"),
                Err(faults) => assert!(!faults.is_empty(), "refused without a word"),
            }
        }
    }
);
