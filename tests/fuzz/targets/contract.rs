//! The JSON contract of `solve`: whatever is asked, one JSON object is the answer, in time.
#![no_main]
// Linked here, so that the window is not built for it.
#[allow(dead_code, missing_docs, unreachable_pub)]
mod solve;

use self::solve::{PROBLEMS, Request, run};
use std::time::Instant;

/// How long a planner may look.
const WITHIN_NS: u64 = 20_000_000;

libfuzzer_sys::fuzz_target!(|data: &[u8]| {
    let Some((which, input)) = data.split_first() else {
        return;
    };
    let Ok(input) = str::from_utf8(input) else {
        return;
    };
    let begun = Instant::now();
    let mut clock = || u64::try_from(begun.elapsed().as_nanos()).unwrap_or(u64::MAX);
    let request = Request {
        problem: PROBLEMS[usize::from(*which) % PROBLEMS.len()],
        input,
        times: None,
        within_ns: WITHIN_NS,
    };
    let answer = run(request, &mut clock);
    let object: serde_json::Value = serde_json::from_str(&answer.json).expect("JSON");
    assert!(object.is_object(), "{}", answer.json);
});
