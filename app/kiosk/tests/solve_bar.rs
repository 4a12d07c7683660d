//! `pinladder solve bar` from outside: the contract, by example and against beam tables.
use kiosk::solve::{Request, run};
use proptest::prelude::*;
use serde_json::{Value, json};

fn solve(input: &Value) -> Result<Value, String> {
    let request = Request {
        problem: "bar",
        input: &input.to_string(),
        times: None,
        within_ns: 0,
    };
    let answer = run(request, &mut || unreachable!("untimed"));
    let json: Value = serde_json::from_str(&answer.json).expect("JSON");
    if answer.solved {
        Ok(json)
    } else {
        Err(answer.json)
    }
}

fn bar() -> Value {
    json!({
        "shaft_diameter": "28.5 mm", "youngs_modulus_gpa": 205, "yield_mpa": 1000,
        "support_span": "1 m", "load_span": "150 cm", "load_per_side": "200 lb",
    })
}

fn with(name: &str, value: Value) -> Value {
    let mut bar = bar();
    bar[name] = value;
    bar
}

#[test]
fn a_bar_at_rest_and_let_fall() {
    let rest = solve(&bar()).unwrap();
    let dropped = solve(&with("drop", json!("1 in"))).unwrap();
    assert!(rest["dropped"].is_null());
    insta::assert_snapshot!(format!("{rest:#}\n\n{dropped:#}"));
}

/// Standard beam tables, worked (computed): d = 28.5 mm, E = 205 GPa, L = 1.0 m, c = 0.25 m,
/// P = 890 N (90.754744 kg): M = 222.5 N m, stress 97.9 MPa, end deflection 4.89 mm, mid-span
/// rise 4.19 mm.
#[test]
fn the_worked_bar() {
    let bent = solve(&with("load_per_side", json!("90.754744 kg"))).unwrap();
    let number = |name: &str| bent[name].as_f64().expect("a number");
    let mm = |name: &str| {
        let text = bent[name]
            .as_str()
            .and_then(|text| text.strip_suffix(" mm"));
        text.and_then(|mm| mm.parse::<f64>().ok())
            .expect("a length")
    };
    assert!((number("moment_nm") - 222.5).abs() < 0.001);
    assert!((number("stress_mpa") - 97.9).abs() < 0.05);
    assert!((number("stress_over_yield") - 0.0979).abs() < 0.000_05);
    assert!((mm("deflection_at_loads") - 4.89).abs() < 0.005);
    assert!((mm("deflection_at_mid_span") - 4.19).abs() < 0.005);
    assert_eq!(bent["note"], "a guide, never a certificate");
}

#[test]
fn what_cannot_be_bent_says_where_and_what_would_be_right() {
    let refused = |name: &str, value: Value| solve(&with(name, value)).unwrap_err();
    let lines = [
        refused("yield_mpa", Value::Null),
        refused("yield_mpa", json!("1000 MPa")),
        refused("yield_mpa", json!(0)),
        refused("yield_mpa", json!(0.000_000_1)),
        refused("youngs_modulus_gpa", json!(-205)),
        refused("youngs_modulus_gpa", json!(205_000)),
        refused("load_span", json!("1 m")),
        refused("load_per_side", json!("200")),
        refused("load_per_side", json!("0 kg")),
        refused("shaft_diameter", json!("0.5 mm")),
        refused("yeild_mpa", json!(1000)),
    ];
    insta::assert_snapshot!(lines.join("\n"));
}

#[test]
fn numbers_may_have_decimals_and_exponents() {
    let plain = solve(&with("youngs_modulus_gpa", json!(206.8))).unwrap();
    let text = bar().to_string().replace("205", "2.068e2");
    let other: Value = serde_json::from_str(&text).expect("JSON");
    assert_eq!(solve(&other).unwrap(), plain);
}

proptest! {
    /// Whatever stands in one field: an answer with its note, or a refusal.
    #[test]
    fn nothing_panics(
        field in prop::sample::select(vec![
            "shaft_diameter", "youngs_modulus_gpa", "yield_mpa", "support_span", "load_span",
            "load_per_side", "drop",
        ]),
        value in prop_oneof![
            any::<i64>().prop_map(Value::from),
            any::<f64>().prop_map(Value::from),
            "[0-9]{0,9}(\\.[0-9]{0,6})? ?(kg|lb|mm|in|m)".prop_map(Value::from),
        ],
    ) {
        match solve(&with(field, value)) {
            Ok(bent) => prop_assert_eq!(&bent["note"], "a guide, never a certificate"),
            Err(refused) => prop_assert!(refused.contains("\"field\""), "{}", refused),
        }
    }
}
