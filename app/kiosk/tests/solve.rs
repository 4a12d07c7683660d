//! `pinladder solve` from outside: the contract, by example.
use kiosk::solve::{Answer, PROBLEMS, Request, run};
use proptest::prelude::*;
use serde_json::Value;

fn solve(problem: &str, input: &str) -> Answer {
    let request = Request {
        problem,
        input,
        times: None,
        within_ns: 1,
    };
    // Time stands still: what is answered is proven.
    run(request, &mut || 0)
}

/// Problem, input and answer, spread out for reading.
fn shown(problem: &str, input: &str) -> String {
    let answer = solve(problem, input);
    let json: Value = serde_json::from_str(&answer.json).expect("JSON");
    let exit = if answer.solved { 0 } else { 1 };
    format!("{input}\nexit {exit}\n{json:#}")
}

const POUNDS: &str = r#""bar": "45 lb", "big_inside": true, "plates": [
  {"mass": "45 lb", "pairs": 4, "handling_s": 12.5},
  {"mass": "25 lb", "pairs": 1, "handling_s": 8},
  {"mass": "10 lb", "pairs": 2, "handling_s": 6},
  {"mass": "5 lb", "pairs": 1, "handling_s": 5},
  {"mass": "2.5 lb", "pairs": 1, "handling_s": 5}]"#;

#[test]
fn a_pound_ladder() {
    let rungs = r#""rungs": [
  {"target": "135 lb", "below": "10 lb", "above": "10 lb", "per_kg_off_s": 1.5},
  {"target": "225 lb", "below": "10 lb", "above": "10 lb", "per_kg_off_s": 1.5},
  {"target": "300 lb", "below": "10 lb", "above": "20 lb", "per_kg_off_s": 0.5},
  {"target": "365 lb"}]"#;
    insta::assert_snapshot!(shown("ladder", &format!("{{{POUNDS}, {rungs}}}")));
}

#[test]
fn a_mixed_ladder_from_a_loaded_bar_stripped_after() {
    let input = r#"{"bar": "20 kg", "collars": "5 kg", "sleeve": "410 mm", "strip_after": true,
"plates": [
  {"mass": "20 kg", "pairs": 2, "thickness": "54 mm", "handling_s": 11},
  {"mass": "45 lb", "pairs": 1, "thickness": "1 3/8 in", "handling_s": 11},
  {"mass": "5 kg", "pairs": 1, "thickness": "26.5 mm", "handling_s": 6},
  {"mass": "1.25 kg", "pairs": 1, "thickness": "14 mm", "handling_s": 5.5}],
"on_bar": ["20 kg", "45 lb"],
"rungs": [{"target": "75 kg", "above": "1 kg"},
  {"target": "230 lb", "below": "1 kg", "above": "1 kg", "per_kg_off_s": 1e-1}]}"#;
    insta::assert_snapshot!(shown("ladder", input));
}

#[test]
fn what_cannot_be_loaded_says_which_constraint_bites() {
    let ladder = |plates: &str, rung: &str| {
        let input = format!(
            r#"{{"bar": "20 kg", "sleeve": "100 mm", "plates": [{plates}], "rungs": [{{"target": "60 kg"}}, {rung}]}}"#
        );
        shown("ladder", &input)
    };
    let plates = r#"{"mass": "20 kg", "pairs": 2, "thickness": "60 mm", "handling_s": 9}, {"mass": "10 kg", "pairs": 1, "thickness": "0 mm", "handling_s": 9}"#;
    let refusals = [
        ladder(plates, r#"{"target": "15 kg", "above": "4.9 kg"}"#),
        ladder(plates, r#"{"target": "120 kg"}"#),
        ladder(plates, r#"{"target": "300 kg"}"#),
        ladder(plates, r#"{"target": "100 kg", "below": "1 kg"}"#),
        ladder(
            plates,
            r#"{"target": "62.5 kg", "below": "1 kg", "above": "2 kg"}"#,
        ),
    ];
    insta::assert_snapshot!(refusals.join("\n\n"));
}

#[test]
fn what_cannot_be_read_says_where_and_what_would_be_right() {
    let changed = |from: &str, to: &str| {
        let good =
            format!(r#"{{{POUNDS}, "on_bar": ["45 lb"], "rungs": [{{"target": "135 lb"}}]}}"#);
        assert!(solve("ladder", &good).solved);
        assert!(good.contains(from), "{from}");
        let answer = solve("ladder", &good.replacen(from, to, 1));
        assert!(!answer.solved, "{to}");
        format!("{from} -> {to}\n{}", answer.json)
    };
    let faults = [
        changed("\"rungs\"", "\"rung\""),
        changed("\"target\"", "\"taget\""),
        changed("\"big_inside\"", "\"colour\""),
        changed("\"135 lb\"", "\"135\""),
        changed("\"135 lb\"", "135"),
        changed("\"135 lb\"", "\"135 stone\""),
        changed("\"135 lb\"", "\"-135 lb\""),
        changed("\"135 lb\"", "\"1e3 lb\""),
        changed("\"135 lb\"", "\"999999999 lb\""),
        changed("\"135 lb\"", "null"),
        changed("true", "\"yes\""),
        changed("4,", "4.5,"),
        changed("4,", "-4,"),
        changed("4,", "99999999999999999999,"),
        changed("12.5", "-12.5"),
        changed("12.5", "12.0000000001"),
        changed("12.5", "1e99"),
        changed("12.5", "\"12.5\""),
        changed("\"45 lb\"]", "\"55 lb\"]"),
        changed("\"45 lb\"]", "\"2.5 lb\", \"45 lb\"]"),
        changed("\"45 lb\"]", "\"25 lb\", \"25 lb\"]"),
        changed("\"bar\"", "\"bar\": \"20 kg\", \"bar\""),
        changed("}]}", "}]"),
        changed("[{\"target\": \"135 lb\"}]", "[]"),
        changed("[{\"target\": \"135 lb\"}]", "[7]"),
    ];
    insta::assert_snapshot!(faults.join("\n"));
}

#[test]
fn an_unknown_problem_is_refused() {
    let refused = [solve("lader", "{}").json, solve("sheet", "{}").json];
    insta::assert_snapshot!(refused.join("\n"));
}

#[test]
fn deep_and_long_input_is_refused() {
    let deep = format!(r#"{{"bar": {}"#, "[".repeat(100_000));
    let closed = format!(
        r#"{{"bar": {}{}}}"#,
        "[".repeat(100_000),
        "]".repeat(100_000)
    );
    let long = format!(r#"{{"bar": "{}"}}"#, "4".repeat(1 << 20));
    for input in [deep, closed, long] {
        assert!(!solve("ladder", &input).solved);
        assert!(solve("ladder", &input).json.len() < 300);
    }
}

#[test]
fn holes() {
    let rack = r#""first_hole": "12 in", "spacing": "2 in", "holes": 12, "pin_diameter": "1 1/64 in",
"hole_diameter": "1 1/8 in", "bar_diameter": "28.5 mm", "mats": ["15 mm", "3/4 in", "15 mm"]"#;
    let answers = [
        shown(
            "hole",
            &format!(
                "{{{rack}, \"target\": \"431 mm\", \"rule\": \"at_or_below\", \"patella_top\": \"20 in\"}}"
            ),
        ),
        shown(
            "hole",
            &format!("{{{rack}, \"target\": \"431 mm\", \"rule\": \"nearest\"}}"),
        ),
        shown(
            "hole",
            &format!(
                "{{{rack}, \"target\": \"17 in\", \"rule\": \"nearest\", \"calibration\": {{\"hole\": 3, \"bar_height\": \"431.8 mm\"}}}}"
            ),
        ),
        shown(
            "hole",
            &format!("{{{rack}, \"target\": \"200 mm\", \"rule\": \"at_or_below\"}}"),
        ),
        shown(
            "hole",
            &format!("{{{rack}, \"target\": \"431 mm\", \"rule\": \"below\"}}"),
        ),
        shown(
            "hole",
            &format!(
                "{{{rack}, \"target\": \"431 mm\", \"rule\": \"nearest\", \"calibration\": {{\"hole\": 13, \"bar_height\": \"431 mm\"}}}}"
            ),
        ),
    ];
    insta::assert_snapshot!(answers.join("\n\n"));
}

/// As a script calls it: standard input to standard output, and the exit code.
#[test]
fn the_command_answers_on_standard_output() {
    let called = |words: &[&str], input: &str| {
        let (mut out, mut err) = (Vec::new(), Vec::new());
        let words = ["pinladder", "solve"].iter().chain(words);
        let code = kiosk::cli::main(
            words.map(std::ffi::OsString::from),
            &mut kiosk::cli::Streams {
                input: &mut input.as_bytes(),
                out: &mut out,
                err: &mut err,
            },
        );
        (format!("{code:?}"), String::from_utf8(out).unwrap())
    };
    let input = format!(r#"{{{POUNDS}, "rungs": [{{"target": "135 lb"}}]}}"#);
    let (code, out) = called(&["ladder"], &input);
    assert_eq!(out, solve("ladder", &input).json + "\n");
    assert_eq!(code, format!("{:?}", std::process::ExitCode::SUCCESS));
    let (_, out) = called(&["ladder", "--times", "3", "--within", "0.5"], &input);
    let json: Value = serde_json::from_str(&out).unwrap();
    assert!(json["median_us"].is_number(), "{out}");
    let (code, out) = called(&["ladder"], "{");
    assert!(out.starts_with("{\"refused\""), "{out}");
    assert_eq!(code, format!("{:?}", std::process::ExitCode::FAILURE));
    let (code, out) = called(&["ladder", "--times", "0"], &input);
    assert!(out.is_empty() && code.contains('2'), "{code} {out}");
}

#[test]
fn timed_runs_add_their_median() {
    let mut ns = 0;
    let mut clock = || {
        ns += 1_500;
        ns
    };
    let input = format!(r#"{{{POUNDS}, "rungs": [{{"target": "135 lb"}}]}}"#);
    let request = Request {
        problem: "ladder",
        input: &input,
        times: Some(5),
        within_ns: 0,
    };
    let json: Value = serde_json::from_str(&run(request, &mut clock).json).unwrap();
    assert_eq!(json["median_us"], 1.5);
}

fn any_json() -> impl Strategy<Value = Value> {
    let names = prop::sample::select(vec![
        "bar",
        "collars",
        "sleeve",
        "plates",
        "big_inside",
        "on_bar",
        "strip_after",
        "rungs",
        "mass",
        "pairs",
        "thickness",
        "handling_s",
        "target",
        "below",
        "above",
        "per_kg_off_s",
        "first_hole",
        "spacing",
        "holes",
        "pin_diameter",
        "hole_diameter",
        "bar_diameter",
        "mats",
        "rule",
        "patella_top",
        "calibration",
        "hole",
        "bar_height",
        "shaft_diameter",
        "youngs_modulus_gpa",
        "yield_mpa",
        "support_span",
        "load_span",
        "load_per_side",
        "drop",
    ]);
    let texts = prop_oneof![
        "[0-9]{0,9}(\\.[0-9]{0,3})? ?(kg|lb|mm|in|m|cm)",
        prop::sample::select(vec![
            "at_or_below",
            "nearest",
            "20 kg",
            "45 lb",
            "1 in",
            "0 kg"
        ])
        .prop_map(String::from),
        "\\PC{0,8}",
    ];
    let leaf = prop_oneof![
        Just(Value::Null),
        any::<bool>().prop_map(Value::from),
        any::<i64>().prop_map(Value::from),
        (0..20_u8).prop_map(Value::from),
        any::<f64>().prop_map(Value::from),
        texts.prop_map(Value::from),
    ];
    leaf.prop_recursive(4, 60, 8, move |inner| {
        prop_oneof![
            prop::collection::vec(inner.clone(), 0..6).prop_map(Value::from),
            prop::collection::vec((names.clone(), inner), 0..9)
                .prop_map(|fields| fields.into_iter().collect()),
        ]
    })
}

/// A well-formed problem with some values exchanged for anything.
fn nearly_right() -> impl Strategy<Value = Value> {
    let good = format!(
        r#"{{{POUNDS}, "on_bar": ["45 lb"], "sleeve": "300 mm", "strip_after": true,
        "rungs": [{{"target": "135 lb", "below": "1 kg", "above": "1 kg", "per_kg_off_s": 2}}]}}"#
    );
    let good: Value = serde_json::from_str(&good).expect("well formed");
    let rack: Value = serde_json::json!({
        "first_hole": "12 in", "spacing": "2 in", "holes": 12, "pin_diameter": "1 in",
        "hole_diameter": "1.1 in", "bar_diameter": "28 mm", "mats": ["15 mm"], "target": "431 mm",
        "rule": "nearest", "patella_top": "500 mm", "calibration": {"hole": 3, "bar_height": "1 m"},
    });
    let place = (any::<prop::sample::Index>(), any_json());
    let changes = prop::collection::vec(place, 0..3);
    (prop::sample::select(vec![good, rack]), changes).prop_map(|(mut problem, changes)| {
        for (place, value) in changes {
            let mut paths = Vec::new();
            leaves(&problem, String::new(), &mut paths);
            if !paths.is_empty() {
                *problem
                    .pointer_mut(&paths[place.index(paths.len())])
                    .expect("listed") = value;
            }
        }
        problem
    })
}

fn leaves(value: &Value, path: String, paths: &mut Vec<String>) {
    if let Some(fields) = value.as_object() {
        fields
            .iter()
            .for_each(|(name, v)| leaves(v, format!("{path}/{name}"), paths));
    } else if let Some(list) = value.as_array() {
        list.iter()
            .enumerate()
            .for_each(|(at, v)| leaves(v, format!("{path}/{at}"), paths));
    }
    paths.push(path);
}

fn is_answer(answer: &Answer) -> bool {
    let json: Value = serde_json::from_str(&answer.json).expect("an answer is JSON");
    let refused = json["refused"].is_string() && json["field"].is_string();
    json.is_object() && refused != answer.solved
}

proptest! {
    #[test]
    fn any_json_is_answered(
        problem in prop::sample::select(PROBLEMS.to_vec()),
        input in any_json(),
    ) {
        prop_assert!(is_answer(&solve(problem, &input.to_string())));
    }

    #[test]
    fn nearly_right_problems_are_answered(
        problem in prop::sample::select(PROBLEMS.to_vec()),
        input in nearly_right(),
    ) {
        prop_assert!(is_answer(&solve(problem, &input.to_string())));
    }

    #[test]
    fn any_text_is_answered(problem in "\\PC{0,9}", input in "\\PC{0,200}") {
        prop_assert!(is_answer(&solve(&problem, &input)));
    }
}
