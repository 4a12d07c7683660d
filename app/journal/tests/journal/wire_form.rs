//! The wire form: whole, frozen, and safe to read whatever it holds.
use crate::{
    invented, invented_days, invented_elsewhere, invented_next, invented_turns, strategies,
};
use journal::wire::{WireFault, decode, encode};
use proptest::prelude::*;
use std::fmt::Write as _;

/// A change of this snapshot is a change of what lies in every journal: it needs a new version.
#[test]
fn every_kind_is_written_exactly_so() {
    let mut all = String::new();
    let apart = [invented::planned(), invented::cleared()]
        .into_iter()
        .chain(invented_next::facts())
        .chain(invented_turns::facts())
        .chain(invented_days::facts(domain::LiftNo(1)))
        .chain(invented_next::facts_v2())
        .chain(invented_elsewhere::facts(domain::LiftNo(12)));
    for fact in invented::facts().into_iter().chain(apart) {
        let written = encode(&fact);
        writeln!(all, "{} {} {}", written.version, written.kind, written.body).expect("to memory");
    }
    insta::assert_snapshot!(all);
}

#[test]
fn unknown_fields_missing_fields_floats_and_doubles_are_refused() {
    for (kind, body) in [
        ("lift_stopped", r#"{"no":1,"more":2}"#),
        ("lift_stopped", r"{}"),
        ("lift_stopped", r#"{"no":1.0}"#),
        ("lift_stopped", r#"{"no":-1}"#),
        ("lift_stopped", r#"{"no":1,"no":1}"#),
        ("lift_stopped", r#"{"no":1} x"#),
        ("set_done", r#"{"no":1,"rung":0,"reps":256,"back":"kept"}"#),
        ("set_done", r#"{"no":1,"rung":0,"reps":5,"back":"flat"}"#),
        (
            "plan_taken",
            r#"{"name":"p","rows":[{"date":"2026-01-01","lifter":"A","lift":"l","sets":1,"reps":5,"load":{"mass_ng":1},"ladder":null,"note":""}]}"#,
        ),
    ] {
        let fault = decode(1, kind, body).expect_err(body);
        assert!(matches!(fault, WireFault::Body { .. }), "{body}: {fault}");
    }
}

#[test]
fn a_day_has_one_form_and_a_rung_names_plates_that_are_there() {
    let day = |date: &str| {
        format!(
            r#"{{"name":"p","rows":[{{"date":"{date}","lifter":"A","lift":"l","sets":1,"reps":5,"load":{{"of_best":1}},"ladder":null,"rest_s":null,"note":""}}]}}"#
        )
    };
    assert!(decode(1, "plan_taken", &day("2026-01-01")).is_ok());
    for bad in ["2026-1-1", "2026-02-30", "01.02.2026", " 2026-01-01", ""] {
        let fault = decode(1, "plan_taken", &day(bad)).expect_err(bad);
        insta::allow_duplicates! {
            assert!(fault.to_string().ends_with("which is not a day such as 2026-01-31"), "{fault}");
        }
    }
    let body = encode(&invented::facts()[2]).body;
    let bad = body.replace(r#""put_on":[1]"#, r#""put_on":[2]"#);
    assert_ne!(body, bad, "the second rung puts on plate 1");
    let fault = decode(1, "lift_begun", &bad).expect_err("two plates alone");
    insta::assert_snapshot!(fault, @r#"its put_on is "2", which is not the number of one of the listed plates"#);
}

#[test]
fn a_boot_has_one_form() {
    let boot = |boot: &str| format!(r#"{{"boot":"{boot}","up_ms":1,"offset_ms":null}}"#);
    let whole = "00000000000000000000000000000abc";
    assert!(decode(2, "clock_anchored", &boot(whole)).is_ok());
    for bad in [
        "abc",
        "",
        "00000000000000000000000000000ABC",
        "+0000000000000000000000000000abc",
    ] {
        decode(2, "clock_anchored", &boot(bad)).expect_err(bad);
    }
    let missing = r#"{"boot":"00000000000000000000000000000abc","up_ms":1}"#;
    decode(2, "clock_anchored", missing).expect_err("an offset that is not known is null");
}

#[test]
fn what_a_newer_program_wrote_is_named_so() {
    insta::assert_snapshot!(decode(3, "set_done", "{}").expect_err("no version 3"), @"it was written by a newer version of this program (wire version 3, this one reads up to 2)");
    insta::assert_snapshot!(decode(1, "set_dreamt", "{}").expect_err("no such kind"), @r#"wire version 1 has no kind "set_dreamt""#);
}

pub(crate) const KINDS: [&str; 33] = [
    "clock_anchored",
    "clock_set",
    "lift_lapsed",
    "lift_reopened",
    "lift_redated",
    "day_cleared",
    "load_settled",
    "next_decided",
    "next_overridden",
    "rotation_planned",
    "file_taken",
    "plan_taken",
    "lift_begun",
    "set_done",
    "rung_skipped",
    "lift_stopped",
    "went_on",
    "entry_undone",
    "bar_said",
    "bar_word_undone",
    "turn_deferred",
    "turn_passed",
    "turn_claimed",
    "rest_lengthened",
    "lifter_left",
    "lifter_returned",
    "turn_unsaid",
    "screen_shown",
    "coach_said",
    "loads_followed",
    "effort_said",
    "begun_elsewhere",
    "done_elsewhere",
];

/// Swaps one byte run of a right body for something else: near misses reach deeper than noise.
fn bent(body: &str, at: usize, cut: usize, with: &str) -> String {
    let boundary = |mut at: usize| {
        at = at.min(body.len());
        while !body.is_char_boundary(at) {
            at -= 1;
        }
        at
    };
    let from = boundary(at % (body.len() + 1));
    let to = boundary(from + cut).max(from);
    format!("{}{with}{}", &body[..from], &body[to..])
}

proptest! {
    #[test]
    fn every_fact_comes_back_as_it_went(fact in strategies::fact(any::<u32>())) {
        let written = encode(&fact);
        prop_assert!(KINDS.contains(&written.kind));
        prop_assert_eq!(decode(written.version, written.kind, &written.body), Ok(fact));
    }

    #[test]
    fn noise_is_refused_without_panic(
        version in 0..4_u32,
        kind in prop_oneof![proptest::sample::select(&KINDS[..]).prop_map(str::to_owned), ".*"],
        body in ".*",
    ) {
        // Noise of these lengths is never a whole body.
        prop_assert!(decode(version, &kind, &body).is_err());
    }

    #[test]
    fn a_bent_body_never_panics_and_what_is_read_is_written_again(
        fact in strategies::fact(any::<u32>()),
        at in any::<usize>(),
        cut in 0..20_usize,
        with in prop_oneof!["", "[0-9,\"\\[\\]{}:-]{0,4}", "null", "1e999", "\\\\ud800", ".{0,3}"],
    ) {
        let written = encode(&fact);
        let body = bent(&written.body, at, cut, &with);
        if let Ok(read) = decode(written.version, written.kind, &body) {
            let again = encode(&read);
            prop_assert_eq!(decode(again.version, again.kind, &again.body), Ok(read));
        }
    }
}
