//! Rows of a journal: what can be read is written back as it was, and no row that can be read
//! stops the state, in any order.
#![no_main]
use domain::steady::{BootId, Reading};
use domain::{Event, Moment, State};
use journal::wire::{decode, encode};

/// Seconds between two events.
const APART_S: u32 = 37;

/// Whatever clocks were noted, times can be told.
fn tell_time(state: &State, now: Moment) {
    let times = &state.times;
    let told = times.told(now);
    for up_ms in [0, i64::MIN, i64::MAX] {
        for boot in times.anchors.iter().map(|own| own.boot).chain([BootId(7)]) {
            let wall = told;
            let reading = Reading { boot, up_ms, wall };
            let begun = times.anchor(reading).moment_at(up_ms);
            let _: Option<i64> = times.seen_set(reading, begun, times.offset_ms);
            assert!(times.ago_ms(begun, now) >= 0, "a time before it was");
        }
    }
}

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
        // A moment is part of its row; a clock that was set may have left any.
        if version == "at" {
            at = Moment(kind.parse().unwrap_or(at.0));
            continue;
        }
        let Ok(fact) = decode(version.parse().unwrap_or(0), kind, body) else {
            continue;
        };
        let written = encode(&fact);
        let again = decode(written.version, written.kind, &written.body);
        assert_eq!(again.as_ref(), Ok(&fact), "written as {written:?}");
        at = at.plus_seconds(APART_S);
        state.apply(&Event { at, fact });
        tell_time(&state, at);
    }
});
