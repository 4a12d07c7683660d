//! What wires and `hardware.toml` may say: any file, any bytes of a strip, any chatter of a switch.
#![no_main]
use hardware::lights::{coded, decoded};
use hardware::ports::Reads;
use hardware::switch::Wiring;
use hardware::{Config, Faults, Press, Switch};

/// A line that says what the fuzzer says, then fails.
struct Chatter(Vec<u8>);

impl Reads for Chatter {
    fn high(&mut self) -> Result<bool, String> {
        match self.0.pop() {
            Some(byte) if byte == u8::MAX => Err("no answer".into()),
            Some(byte) => Ok(byte & 1 == 1),
            None => Err("gone".into()),
        }
    }
}

libfuzzer_sys::fuzz_target!(|data: &[u8]| {
    let Some((which, rest)) = data.split_first() else {
        return;
    };
    match which % 3 {
        0 => {
            if let Ok(text) = str::from_utf8(rest) {
                drop(Config::read(text));
            }
        }
        1 => {
            if let Some(colours) = decoded(rest) {
                assert_eq!(decoded(&coded(&colours)), Some(colours));
            }
        }
        _ => chatter(rest),
    }
});

/// However a contact chatters, two presses of a switch are as far apart as its wiring says.
fn chatter(bytes: &[u8]) {
    let wiring = Wiring {
        name: "foot".into(),
        does: Press::Done,
        active_low: false,
        settle_ms: 30,
        again_after_ms: 700,
    };
    let mut switch = Switch::new(Box::new(Chatter(bytes.to_vec())), wiring);
    let faults = Faults::default();
    let mut last: Option<u64> = None;
    for at in 0..bytes.len() as u64 {
        let now = at * 10;
        if switch.step(now, &faults).is_some() {
            if let Some(last) = last {
                assert!(now - last >= 700, "presses at {last} and {now} ms");
            }
            last = Some(now);
        }
    }
}
