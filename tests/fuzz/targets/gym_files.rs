//! The gym's own files: gym, lifters, programme, meet and kiosk, whatever is written in them.
#![no_main]
use domain::Gym;
use plan::{Source, coaching, gym, kiosk, meet};
use std::sync::LazyLock;

const GYM_FILE: &[u8] = include_bytes!("../../../demo-data/gym.toml");
const LIFTERS: &[u8] = include_bytes!("../../../demo-data/lifters.toml");

fn file<'a>(name: &'a str, text: &'a [u8]) -> Source<'a> {
    Source { name, text }
}

static GYM: LazyLock<Gym> = LazyLock::new(|| {
    gym(file("gym.toml", GYM_FILE), file("lifters.toml", LIFTERS)).expect("the demo's gym")
});

libfuzzer_sys::fuzz_target!(|data: &[u8]| {
    let Some((which, text)) = data.split_first() else {
        return;
    };
    let faults = match which % 5 {
        0 => gym(file("gym.toml", text), file("lifters.toml", LIFTERS)).err(),
        1 => gym(file("gym.toml", GYM_FILE), file("lifters.toml", text)).err(),
        2 => coaching(file("programme.toml", text), &GYM).err(),
        3 => meet(file("meet.toml", text), &GYM).err(),
        _ => kiosk(file("kiosk.toml", text), Some(&GYM)).err(),
    };
    assert!(faults.is_none_or(|faults| !faults.is_empty()), "refused without a word");
});
