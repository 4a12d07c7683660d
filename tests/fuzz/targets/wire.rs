//! Rows of a journal: what can be read is written back as it was, and no row that can be read
//! stops the state, in any order.
#![no_main]
use domain::{Event, Fact, Moment, State};
use journal::wire::{decode, encode};

/// Seconds between two events.
const APART_S: u32 = 37;

libfuzzer_sys::fuzz_target!(|data: &[u8]| {
    let Ok(text) = str::from_utf8(data) else {
        return;
    };
    let mut at = Moment(1_700_000_000_000);
    let mut state = State::default();
    for line in text.lines() {
        let mut parts = line.splitn(3, '\t');
        let (Some(version), Some(kind), Some(body)) = (parts.next(), parts.next(), parts.next())
        else {
            continue;
        };
        let Ok(fact) = decode(version.parse().unwrap_or(0), kind, body) else {
            continue;
        };
        let written = encode(&fact);
        let again = decode(written.version, written.kind, &written.body);
        assert_eq!(again.as_ref(), Ok(&fact), "written as {written:?}");
        at = at.plus_seconds(APART_S);
        // A journal holds what was decided; what nobody can decide is not replayed.
        if !matches!(fact, Fact::ClockAnchored { .. } | Fact::ClockSet { .. }) {
            state.apply(&Event { at, fact });
        }
    }
});
