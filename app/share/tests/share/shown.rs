//! What is shown, in each of the three forms.
use crate::gym::{Gym, hostile, kg, march, text, two_days};
use domain::{Hold, MassUnit};
use serde_json::Value;

/// A line break after each element, so that a change shows where it is.
fn readable(page: &str) -> String {
    page.replace("><", ">\n<")
}

#[tokio::test]
async fn the_page_has_the_latest_day_first_by_lifter() {
    let response = two_days().get("/coach").await;
    assert_eq!(response.status(), 200);
    assert_eq!(
        response.headers()["content-type"],
        "text/html; charset=utf-8"
    );
    insta::assert_snapshot!(readable(&text(response).await));
}

#[tokio::test]
async fn csv_has_a_row_a_set() {
    let response = two_days().get("/record.csv").await;
    assert_eq!(
        response.headers()["content-type"],
        "text/csv; charset=utf-8; header=present"
    );
    let csv = text(response).await;
    assert!(csv.lines().count() == 6 && csv.matches("\r\n").count() == 6);
    insta::assert_snapshot!(csv.replace("\r\n", "\n"));
}

#[tokio::test]
async fn json_has_an_object_a_set() {
    let response = two_days().get("/record.json").await;
    assert_eq!(response.headers()["content-type"], "application/json");
    insta::assert_snapshot!(text(response).await);
}

#[tokio::test]
async fn names_are_never_markup() {
    let page = hostile().text("/coach").await;
    assert!(!page.contains("<script"), "{page}");
    assert!(page.contains("&lt;script&gt;alert(1)&lt;/script&gt;"));
    assert!(page.contains("@a&quot; onload=&quot;b"));
}

/// OWASP, "CSV Injection": what a spreadsheet may take for a formula gets an apostrophe; numbers
/// stay numbers, also below zero.
#[tokio::test]
async fn names_are_never_formulas() {
    let csv = hostile().text("/record.csv").await;
    let mut reader = csv::Reader::from_reader(csv.as_bytes());
    let rows: Vec<_> = reader
        .records()
        .collect::<Result<_, _>>()
        .expect("RFC 4180");
    assert_eq!(rows.len(), 2);
    assert_eq!(&rows[0][3], "'=HYPERLINK(\"http://evil.example\",\"x\")");
    assert_eq!(&rows[0][4], "<script>alert(1)</script>");
    assert_eq!(&rows[1][3], "'@a\" onload=\"b");
    assert_eq!(&rows[1][4], "'\tlift, with\r\nlines");
    assert_eq!(&rows[1][8], "-2.5");
    assert!(
        csv.contains("\"'=HYPERLINK(\"\"http://evil.example\"\",\"\"x\"\")\""),
        "{csv}"
    );
    assert!(csv.contains(",-2.5,kg,-2.5,5,5,kept,"), "{csv}");
}

fn schema() -> jsonschema::Validator {
    let path = concat!(env!("CARGO_MANIFEST_DIR"), "/schema/record.schema.json");
    let schema = std::fs::read_to_string(path).expect("reads");
    let schema: Value = serde_json::from_str(&schema).expect("JSON");
    assert_eq!(
        schema["$schema"],
        "https://json-schema.org/draft/2020-12/schema"
    );
    jsonschema::validator_for(&schema).expect("a schema")
}

#[tokio::test]
async fn json_keeps_to_its_schema_and_the_schema_is_strict() {
    let schema = schema();
    for gym in [two_days(), hostile(), Gym::new(), Gym::new().recorded()] {
        let json: Value = serde_json::from_str(&gym.text("/record.json").await).expect("JSON");
        let faults: Vec<_> = schema.iter_errors(&json).map(|e| e.to_string()).collect();
        assert!(faults.is_empty(), "{faults:?}");
    }
    let json: Value = serde_json::from_str(&two_days().text("/record.json").await).expect("JSON");
    let bad: [(&str, Value); 6] = [
        ("/version", 2.into()),
        ("/sets/0/kind", "warmup".into()),
        ("/sets/0/load", "180".into()),
        ("/sets/0/reps", 256.into()),
        ("/sets/0/back_moved_at", "4".into()),
        ("/sets/0/rung", 0.into()),
    ];
    for (place, value) in bad {
        let mut json = json.clone();
        *json.pointer_mut(place).expect(place) = value;
        assert!(!schema.is_valid(&json), "{place}");
    }
    for key in ["set", "at", "back_moved_at"] {
        let mut json = json.clone();
        json["sets"][0].as_object_mut().expect("a set").remove(key);
        assert!(!schema.is_valid(&json), "without {key}");
    }
    let mut more = json.clone();
    more["sets"][0]["more"] = 1.into();
    assert!(!schema.is_valid(&more));
}

#[tokio::test]
async fn without_a_record_each_says_so() {
    for gym in [Gym::new(), Gym::new().recorded()] {
        assert!(
            gym.text("/coach")
                .await
                .contains("<p>No sets have been recorded yet.</p>")
        );
        assert_eq!(gym.text("/record.csv").await.lines().count(), 1);
        assert_eq!(
            gym.text("/record.json").await,
            "{\"version\":1,\"upto\":0,\"sets\":[\n]}\n"
        );
    }
}

#[tokio::test]
async fn older_sessions_are_a_page_further() {
    let mut gym = Gym::new();
    let first = march(1);
    for n in 0..34 {
        let date = first + chrono::Days::new(n);
        let load = kg(100_000 + i64::try_from(n).expect("few") * 1_000);
        gym = gym.lift(
            ("Ada", MassUnit::Kg),
            "rack pull",
            date,
            load,
            &[(1, 5, Hold::Kept)],
        );
    }
    let gym = gym.recorded();
    let days = |page: &str| page.matches("<h2>").count();
    let latest = gym.text("/coach").await;
    assert_eq!(days(&latest), 30);
    assert!(latest.contains("133 kg") && latest.contains("104 kg") && !latest.contains("103 kg"));
    assert!(latest.contains("<a href=\"/coach?before=2026-03-05\">Older</a>"));
    assert!(!latest.contains(">Latest<"));
    let older = gym.text("/coach?before=2026-03-05").await;
    assert_eq!(days(&older), 4);
    assert!(older.contains("103 kg") && older.contains("100 kg") && !older.contains("104 kg"));
    assert!(older.contains("<a href=\"/coach\">Latest</a>") && !older.contains(">Older<"));
    let none = gym.text("/coach?before=2020-01-01").await;
    assert!(none.contains("No sets were recorded before that day."));
}

/// What the page asks for is all served here: no script, no font, no image from elsewhere.
#[tokio::test]
async fn the_page_needs_its_style_alone() {
    let gym = two_days();
    let page = gym.text("/coach").await;
    let sources: Vec<_> = page
        .split("href=\"")
        .skip(1)
        .map(|rest| rest.split('"').next().expect("a reference"))
        .collect();
    assert_eq!(
        sources,
        [
            "/icon.svg",
            "/style.css",
            "/coach/today",
            "/coach/today",
            "/coach/week",
            "/coach",
            "/coach/plan",
            "/coach/desk",
            "/board",
            "/record.csv",
            "/record.json",
            "/journal.sqlite",
            "/coach/lifter/Ada",
            "/coach/lifter/Bo",
        ]
    );
    assert!(!page.contains("src=") && !page.contains("style=") && !page.contains("http"));
    for source in sources {
        assert_eq!(gym.get(source).await.status(), 200, "{source}");
    }
    let style = gym.text("/style.css").await;
    assert!(!style.contains("url(") && !style.contains("@import"));
}
