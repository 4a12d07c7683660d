//! `pinladder solve balance` from outside: marks, true loads, refusals.
use kiosk::solve::{Request, run};

fn solve(input: &str) -> String {
    let request = Request {
        problem: "balance",
        input,
        times: None,
        within_ns: 0,
    };
    run(request, &mut || 0).json
}

/// Four plates of one label, two of another; the twenties pair best as b with d.
const PLATES: &str = r#""plates": [
    {"mark": "a", "nominal": "20 kg", "mass": "20.1 kg"},
    {"mark": "b", "nominal": "20 kg", "mass": "19.94 kg"},
    {"mark": "c", "nominal": "20 kg", "mass": "20.09 kg"},
    {"mark": "d", "nominal": "20 kg", "mass": "19.93 kg"},
    {"mark": "e", "nominal": "45 lb", "mass": "45.5 lb"},
    {"mark": "f", "nominal": "45 lb", "mass": "44 lb"}
]"#;

#[test]
fn answers() {
    let sides = [
        r#"["20 kg"]"#,
        r#"["20 kg", "20 kg"]"#,
        r#"["45 lb", "20 kg"]"#,
        "[]",
    ];
    let answer = |side| {
        solve(&format!(
            r#"{{"bar": "20 kg", {PLATES}, "per_side": {side}}}"#
        ))
    };
    insta::assert_snapshot!(sides.map(answer).join("\n"));
}

#[test]
fn refusals() {
    let inputs = [
        format!(r#"{{"bar": "20 kg", {PLATES}, "per_side": ["20 kg", "20 kg", "20 kg"]}}"#),
        format!(r#"{{"bar": "20 kg", {PLATES}, "per_side": ["10 kg"]}}"#),
        format!(r#"{{"bar": "20 kg", {PLATES}, "per_sides": []}}"#),
        format!(r#"{{"bar": "20", {PLATES}, "per_side": []}}"#),
        r#"{"bar": "20 kg", "per_side": [], "plates": [
            {"mark": "a", "nominal": "20 kg", "mass": "20 kg"},
            {"mark": "a", "nominal": "20 kg", "mass": "20 kg"}]}"#
            .to_owned(),
        r#"{"bar": "20 kg", "per_side": [], "plates": [
            {"mark": "a", "nominal": "20 kg", "mass": "0 kg"}]}"#
            .to_owned(),
    ];
    insta::assert_snapshot!(inputs.map(|input| solve(&input)).join("\n"));
}
