//! FILES.md tells every key and column that the readers know, and no other.
use plan::fields::{COLUMNS, Field, MORE_COLUMNS, Need, TABLES};
use std::fmt::Write as _;

const PATH: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/FILES.md");
const BEGIN: &str = "<!-- from here on written from app/plan/src/fields.rs -->\n";

fn line(out: &mut String, field: &Field, more: &str) {
    let need = match field.need {
        Need::Always => String::from("needed"),
        Need::Else(otherwise) => format!("else: {otherwise}"),
    };
    let Field {
        key,
        example,
        means,
        ..
    } = field;
    writeln!(out, "| `{key}` | {need} | {means}{more} | `{example}` |").expect("text grows");
}

/// What stands below the mark of FILES.md.
fn tables() -> String {
    let mut out = String::new();
    let mut file = "";
    for (of, table) in TABLES {
        if *of != file {
            file = of;
            write!(out, "\n## {file}\n").expect("text grows");
        }
        let form = table.form;
        let title = table.a;
        write!(out, "\n### {title}\n").expect("text grows");
        if form != file {
            write!(out, "\nWritten as `{form}`.\n").expect("text grows");
        }
        out.push_str("\n| key | need | meaning | example |\n|---|---|---|---|\n");
        for field in table.fields {
            line(&mut out, field, "");
        }
    }
    out.push_str("\n## A plan\n\n| column | need | meaning | a cell holds |\n|---|---|---|---|\n");
    for column in COLUMNS.iter().chain(&MORE_COLUMNS) {
        let also = column.also.join("\", \"");
        line(&mut out, &column.field, &format!("; also spelt \"{also}\""));
    }
    out
}

/// With `PINLADDER_RENEW` set the part below the mark is written anew; without, it is compared.
#[test]
fn files_md_is_not_stale() {
    let doc = std::fs::read_to_string(PATH).expect("FILES.md is in the repository");
    let (head, tail) = doc.split_once(BEGIN).expect("FILES.md has the mark");
    if std::env::var_os("PINLADDER_RENEW").is_some() {
        std::fs::write(PATH, format!("{head}{BEGIN}{}", tables())).expect("FILES.md is written");
    } else {
        assert_eq!(
            tail,
            tables(),
            "run PINLADDER_RENEW=1 cargo test -p plan --test files_md"
        );
    }
}
