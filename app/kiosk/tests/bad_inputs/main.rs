//! Every command with every kind of bad input: an exit code that is not 0, a sentence that says what
//! to do, and a journal that is as it was. The sentences are laid out in `app/kiosk/REFUSALS.md`;
//! `PINLADDER_RENEW=1` writes it anew.
mod cases;
mod commands;

use cases::{Case, Want};
use kiosk::cli::{Streams, main};
use std::collections::BTreeMap;
use std::ffi::OsString;
use std::fmt::Write as _;
use std::fs;
use std::path::{Path, PathBuf};

/// What came of one command line.
struct Came {
    code: u8,
    out: String,
    err: String,
}

fn run(data: &Path, case: &Case) -> Came {
    let (mut out, mut err) = (Vec::new(), Vec::new());
    let mut args: Vec<OsString> = vec!["pinladder".into()];
    if case.in_folder {
        // A rehearsal is a whole kiosk, and may write.
        let rehearsed = data.with_file_name("rehearsed");
        let data = match case.surface() {
            "rehearse" => &rehearsed,
            _ => data,
        };
        args.extend(["--data".into(), data.into()]);
    }
    let room = data.parent().expect("a room").display().to_string();
    let place = |word: &String| OsString::from(word.replace("ROOM", &room));
    args.extend(case.words.iter().map(place));
    let code = main(
        args,
        &mut Streams {
            input: &mut case.input.as_slice(),
            out: &mut out,
            err: &mut err,
        },
    );
    let code = format!("{code:?}");
    let digits: String = code.chars().filter(char::is_ascii_digit).collect();
    let text = |bytes| String::from_utf8(bytes).expect("words are UTF-8");
    Came {
        code: digits.parse().expect("a small number"),
        out: text(out).replace(&room, "ROOM"),
        err: text(err).replace(&room, "ROOM"),
    }
}

/// A room with a data folder and all kinds of bad files in it.
fn room() -> (tempfile::TempDir, PathBuf) {
    let room = tempfile::tempdir().expect("a folder");
    let data = room.path().join("gym");
    for (name, bytes) in cases::files() {
        fs::write(room.path().join(name), bytes).expect("writes");
    }
    fs::create_dir(room.path().join("folder")).expect("makes");
    fs::create_dir(room.path().join("folder.csv")).expect("makes");
    fs::create_dir(room.path().join("stick")).expect("makes");
    fs::write(room.path().join("stick/plan.csv"), "date,lifter\nx,y\n").expect("writes");
    let sheet = Case::of("a day sheet", &["sheet"]);
    assert_eq!(run(&data, &sheet).code, 0, "the gym begins");
    (room, data)
}

/// Bytes of one name or word in a message; an object of JSON is one, and bounded by its planner.
const ECHOED_MAX: usize = 1_000;

/// Letters of a sentence in the table.
const LETTERS_MAX: usize = 160;

/// The sentence for the table: what went wrong, its first line where there are more.
fn sentence(came: &Came) -> String {
    let both = [&came.err, &came.out];
    let said = both.into_iter().find(|text| !text.trim().is_empty());
    let said = said.map(|text| text.trim()).unwrap_or_default();
    let mut lines = said.lines().map(str::trim).filter(|line| !line.is_empty());
    let first = lines.next().unwrap_or_default();
    let mut first = first.trim_start_matches("pinladder: ").replace('|', "\\|");
    // A face that is told with a refusal: the refusal.
    if let Some((_, refused)) = said.rsplit_once("\"refused\":\"")
        && said.starts_with("{\"screen\"")
    {
        first = refused.trim_end_matches("\"}").replace("\\\"", "\"");
    }
    while first.contains("xxxx") {
        first = first.replace("xxxx", "xxx");
    }
    // Lists of all that there is grow with the kiosk.
    for list in ["there are ", "write one of ", "; write \"fives\""] {
        if let Some((before, _)) = first.split_once(list) {
            return format!("{before}{list}…");
        }
    }
    let more = lines.next().is_some() && !first.starts_with("error: ");
    match first.char_indices().nth(LETTERS_MAX) {
        Some((end, _)) => format!("{}…", &first[..end]),
        None if more => format!("{first} …"),
        None => first,
    }
}

fn check(case: &Case, came: &Came) -> Result<(), String> {
    let both = format!("{}{}", came.err, came.out);
    let wants = match case.want {
        Want::Refusal => came.code == 1,
        Want::Usage => came.code == 2,
        Want::Told => came.code == 0,
    };
    let said = sentence(came);
    let letters = said.chars().filter(|c| c.is_alphabetic()).count();
    let ours = [
        "Err(", "Some(", "None", "panicked", "unwrap", "{0}", "RefCell", "called `",
    ];
    let inner = ours.iter().find(|word| both.contains(**word));
    // A face of a rehearsal is one object, with every text that is drawn.
    let refused = both
        .rsplit_once("\"refused\":\"")
        .filter(|_| both.starts_with("{\"screen\""));
    let told = refused.map_or(both.as_str(), |(_, refused)| refused);
    let longest = told.split([' ', '\n']).map(str::len).max().unwrap_or(0);
    if longest > ECHOED_MAX {
        return Err(format!("{longest} bytes of one name are said again"));
    }
    match (wants, letters >= 15, inner) {
        (true, true, None) => Ok(()),
        (false, ..) => Err(format!("exit code {}: {said}", came.code)),
        (_, false, _) => Err(format!("not a sentence: {said:?}")),
        (_, _, Some(word)) => Err(format!("\"{word}\" is told: {both}")),
    }
}

#[test]
fn every_bad_input_is_refused_with_a_sentence_and_changes_nothing() {
    let (_room, data) = room();
    let files = ["gym.toml", "lifters.toml", "kiosk.toml", "programme.toml"];
    let stood = || {
        let report = journal::verify(&data.join("journal.sqlite")).expect("sound");
        let text = |name: &&str| fs::read_to_string(data.join(name)).expect("is there");
        let texts: Vec<String> = files.iter().map(text).collect();
        (report.seal, texts)
    };
    let before = stood();
    let mut faults = Vec::new();
    let mut rows = BTreeMap::<&str, Vec<String>>::new();
    for case in cases::all().into_iter().chain(commands::all()) {
        let came = run(&data, &case);
        if let Err(fault) = check(&case, &came) {
            faults.push(format!("{} {}: {fault}", case.surface(), case.what));
        }
        if stood() != before {
            faults.push(format!(
                "{} {}: something was changed",
                case.surface(),
                case.what
            ));
        }
        let row = format!("| {} | {} | {} |", case.what, came.code, sentence(&came));
        rows.entry(case.surface()).or_default().push(row);
    }
    assert!(faults.is_empty(), "{}", faults.join("\n"));
    let many: usize = rows.values().map(Vec::len).sum();
    assert!(many >= 150, "only {many} bad inputs");
    compare(&table(&rows));
}

fn table(rows: &BTreeMap<&str, Vec<String>>) -> String {
    let mut text = String::from(
        "# What is told of bad input\n\nWritten by `app/kiosk/tests/bad_inputs`, which tries \
         each of them: exit code 1 where something\nis refused, 2 where the command itself is \
         wrong, 0 where the answer tells it and goes on. ROOM is\nsome folder; dots stand where \
         more follows.\n",
    );
    for (surface, rows) in rows {
        let head = "| input | exit | what is told |\n|---|---|---|";
        let rows = rows.join("\n");
        writeln!(text, "\n## {surface}\n\n{head}\n{rows}").expect("into a text");
    }
    text
}

fn compare(text: &str) {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("REFUSALS.md");
    if std::env::var_os("PINLADDER_RENEW").is_some() {
        fs::write(&path, text).expect("writes");
    }
    let kept = fs::read_to_string(&path).unwrap_or_default();
    for (kept, now) in kept.lines().zip(text.lines()) {
        assert_eq!(kept, now, "PINLADDER_RENEW=1 writes REFUSALS.md anew");
    }
    assert_eq!(kept.lines().count(), text.lines().count());
}
