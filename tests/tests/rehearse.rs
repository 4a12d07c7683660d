//! `pinladder rehearse`: an evening driven from outside, by lines, through the real screens.
//!
//! Whoever obeys is simulated here from what is answered alone. Refuses: looking inside.
use kiosk::Folder;
use kiosk::cli::{Streams, main};
use kiosk::rehearse::{Answer, Line, Rehearsal, moment};
use serde_json::{Value, json};
use std::ffi::OsString;
use std::path::Path;
use view::Deed;

/// They pull from the pins with the same bar on that Wednesday of the demo plan.
const FOUR: [&str; 4] = ["Hamza", "Željka", "Ilkka", "Marisol"];
const AT: &str = "2026-12-02T18:00";
/// Sets of each: four warm-ups and the work set.
const SETS: usize = 5;

fn open(data: &Path) -> Rehearsal {
    let folder = Folder::open(Some(data)).expect("a folder");
    Rehearsal::open(&folder, moment(AT).expect("a time")).expect("it opens")
}

fn say(rehearsal: &mut Rehearsal, line: &Line) -> Answer {
    let answer = rehearsal.line(line).expect("it goes on");
    holds(&answer);
    answer
}

fn tap(rehearsal: &mut Rehearsal, label: &str) -> Answer {
    let answer = say(rehearsal, &Line::tap(label));
    assert_eq!(answer.refused, None, "{answer:?}");
    answer
}

/// What must be true of every face: where a set can be logged in one tap, everything about the
/// bar is told, and whoever obeys comes from what is believed to what is wanted.
fn holds(answer: &Answer) {
    let json: Value = serde_json::from_str(&answer.json()).expect("JSON");
    let enabled = |b: &Value| b["enabled"] == true && b["does"] == "done";
    let can_log = json["buttons"]
        .as_array()
        .expect("a list")
        .iter()
        .any(enabled);
    if can_log {
        for field in [
            "left", "right", "take_off", "put_on", "believed", "load", "reps",
        ] {
            assert!(json.get(field).is_some(), "no {field} in {json}");
        }
    }
    for side in ["left", "right"] {
        let Some(wanted) = json.get(side) else {
            continue;
        };
        let list = |value: &Value| value.as_array().expect("a list").clone();
        let mut on = list(&json["believed"][side]);
        for plate in list(&json["take_off"][side]) {
            assert_eq!(on.pop().as_ref(), Some(&plate), "not the outermost: {json}");
        }
        on.extend(list(&json["put_on"][side]));
        assert_eq!(Value::from(on), *wanted, "{side} of {json}");
    }
    let mut labels: Vec<&str> = answer.buttons.iter().map(|b| b.label.as_str()).collect();
    labels.sort_unstable();
    let all = labels.len();
    labels.dedup();
    assert_eq!(labels.len(), all, "a label comes twice: {json}");
}

/// All four begin.
fn begun(data: &Path) -> Rehearsal {
    let mut rehearsal = open(data);
    for name in FOUR {
        if rehearsal.face().screen != "choose" {
            tap(&mut rehearsal, "all lifters");
        }
        tap(&mut rehearsal, name);
        tap(&mut rehearsal, "start");
    }
    rehearsal
}

/// Goes to whoever is up.
fn to_whoever_is_up(rehearsal: &mut Rehearsal) -> Answer {
    tap(rehearsal, "all lifters");
    let floor = tap(rehearsal, "floor");
    let up = floor.button(Deed::Lifter).expect("somebody is up");
    tap(rehearsal, up)
}

#[test]
fn four_lifters_come_through_their_evening() {
    let data = tempfile::tempdir().expect("a folder");
    let mut rehearsal = begun(data.path());
    let mut face = to_whoever_is_up(&mut rehearsal);
    for _ in 0..400 {
        if face.sets_logged == FOUR.len() * SETS {
            break;
        }
        face = match face.screen {
            "bar" => {
                let before = face.sets_logged;
                let done = face.button(Deed::Done).expect("a set").to_owned();
                let after = tap(&mut rehearsal, &done);
                assert_eq!(after.sets_logged, before + 1, "{after:?}");
                after
            }
            "rest" | "settle" => match face.rest_s {
                Some(left) => say(&mut rehearsal, &Line::Wait(u64::from(left) * 1_000)),
                None => to_whoever_is_up(&mut rehearsal),
            },
            "end" => {
                let next = face.button(Deed::Next).expect("on").to_owned();
                tap(&mut rehearsal, &next)
            }
            _ => to_whoever_is_up(&mut rehearsal),
        };
    }
    assert_eq!(face.sets_logged, FOUR.len() * SETS, "{face:?}");
}

/// From one tap of a hasty finger to its next, milliseconds.
const HASTY_MS: [u64; 11] = [40, 75, 120, 180, 249, 251, 300, 350, 500, 800, 1_200];

/// Whoever taps twice means one thing, at any gap: every tap of an evening is made twice, and none
/// of them enters anything that one tap would not have entered.
#[test]
fn two_taps_of_one_finger_are_one_deed_all_evening() {
    let data = tempfile::tempdir().expect("a folder");
    let mut rehearsal = open(data.path());
    let mut gaps = HASTY_MS.into_iter().cycle();
    let mut twice = |rehearsal: &mut Rehearsal, label: &str, sets: usize| {
        let before = rehearsal.face();
        let gap_ms = gaps.next().expect("a gap");
        let line = Line::Tap {
            label: label.to_owned(),
            times: 2,
            gap_ms,
        };
        let after = say(rehearsal, &line);
        assert_eq!(after.refused, None, "{after:?}");
        assert_eq!(
            after.sets_logged,
            before.sets_logged + sets,
            "{label:?} twice, {gap_ms} ms apart, from {before:?} to {after:?}"
        );
        after
    };
    for name in FOUR {
        let label = if rehearsal.face().screen == "choose" {
            name.to_owned()
        } else {
            twice(&mut rehearsal, "all lifters", 0);
            name.to_owned()
        };
        twice(&mut rehearsal, &label, 0);
        twice(&mut rehearsal, "start", 0);
    }
    let mut face = to_whoever_is_up(&mut rehearsal);
    for _ in 0..400 {
        if face.sets_logged == FOUR.len() * SETS {
            break;
        }
        let (done, next) = (Deed::Done, Deed::Next);
        let to_log = face.button(done).map(|label| (label.to_owned(), 1));
        let on = face.button(next).map(|label| (label.to_owned(), 0));
        face = match (to_log.or(on), face.rest_s) {
            (Some((label, sets)), _) => twice(&mut rehearsal, &label, sets),
            (None, Some(left)) => say(&mut rehearsal, &Line::Wait(u64::from(left.max(1)) * 1_000)),
            (None, None) => to_whoever_is_up(&mut rehearsal),
        };
    }
    assert_eq!(face.sets_logged, FOUR.len() * SETS, "{face:?}");
}

#[test]
fn a_beginning_that_several_buttons_share_names_none() {
    let data = tempfile::tempdir().expect("a folder");
    let mut rehearsal = begun(data.path());
    let before = rehearsal.face();
    let told = say(&mut rehearsal, &Line::tap("switch to "));
    let why = told.refused.clone().unwrap_or_default();
    assert!(
        why.contains("switch to Hamza") && why.contains("switch to Ilkka"),
        "{why}"
    );
    assert_eq!((told.lifter, told.screen), (before.lifter, before.screen));
}

/// The answers to `lines` on a folder of its own, through the command.
fn answers(lines: &[Value]) -> Vec<Value> {
    let data = tempfile::tempdir().expect("a folder");
    let text: String = lines.iter().map(|line| format!("{line}\n")).collect();
    let (code, out, err) = pinladder(data.path(), &text);
    assert_eq!((code.as_str(), err.as_str()), ("0", ""), "{out}");
    let read = |line: &str| serde_json::from_str(line).expect("a line of JSON");
    let answers: Vec<Value> = out.lines().map(read).collect();
    assert_eq!(answers.len(), lines.len(), "one answer a line: {out}");
    answers
}

fn pinladder(data: &Path, input: &str) -> (String, String, String) {
    pinladder_at(AT, data, input.as_bytes())
}

fn pinladder_at(at: &str, data: &Path, mut input: &[u8]) -> (String, String, String) {
    let args = ["pinladder", "rehearse", "--at", at, "--data"].map(OsString::from);
    let args = args.into_iter().chain([data.as_os_str().to_owned()]);
    let (mut out, mut err) = (Vec::new(), Vec::new());
    let mut streams = Streams {
        input: &mut input,
        out: &mut out,
        err: &mut err,
    };
    let code = format!("{:?}", main(args, &mut streams));
    let digits: String = code.chars().filter(char::is_ascii_digit).collect();
    let text = |bytes| String::from_utf8(bytes).expect("words are UTF-8");
    (digits, text(out), text(err))
}

#[test]
fn what_is_not_understood_leaves_the_face_as_it_is() {
    let rude = [
        json!("start"),
        json!(17),
        json!({}),
        json!({"tap": 5}),
        json!({"tap": "no such button"}),
        json!({"tap": ""}),
        json!({"tap": "start", "times": 0}),
        json!({"tap": "start", "gap_ms": 1e12}),
        json!({"hold": "no such button"}),
        json!({"wait_s": -1}),
        json!({"wait_s": "long"}),
        json!({"clock": "yesterday"}),
        json!({"restart": "yes"}),
        json!({"plug": "no/such/folder"}),
        json!({"tap": "start", "hold": "start"}),
    ];
    let mut lines = vec![json!({"tap": "Hamza"}), json!({"tap": "start"})];
    let begun = lines.len();
    lines.extend(rude);
    let told = answers(&lines);
    let face = &told[begun - 1];
    for (line, answer) in lines.iter().zip(&told).skip(begun) {
        let why = answer["refused"].as_str().unwrap_or_default();
        assert!(why.len() > 15, "{line}: {answer}");
        let mut same = answer.clone();
        same.as_object_mut().expect("an object").remove("refused");
        assert_eq!(&same, face, "{line} changed the face");
    }
}

#[test]
fn a_line_without_end_and_bytes_that_are_no_text_are_answered_too() {
    let data = tempfile::tempdir().expect("a folder");
    let mut input = vec![b'x'; 200_000];
    input.extend(b"\n\xff\xfe\n{\"wait_s\": 1}");
    let (code, out, err) = pinladder_at(AT, data.path(), &input);
    assert_eq!((code.as_str(), err.as_str()), ("0", ""));
    let told: Vec<Value> = out
        .lines()
        .map(|line| serde_json::from_str(line).expect("JSON"))
        .collect();
    let refused = |at: usize| told[at]["refused"].as_str().unwrap_or_default().to_owned();
    assert_eq!(told.len(), 3, "{out}");
    assert!(refused(0).contains("too long"), "{}", refused(0));
    assert!(refused(1).contains("UTF-8"), "{}", refused(1));
    assert_eq!(told[2].get("refused"), None);
}

#[test]
fn a_time_that_is_none_is_wrong_usage() {
    let data = tempfile::tempdir().expect("a folder");
    let (code, out, err) = pinladder_at("six o'clock", data.path(), b"{}\n");
    assert_eq!((code.as_str(), out.as_str()), ("2", ""));
    assert!(err.contains("2026-12-02T18:00"), "{err}");
}

/// The next of a row of numbers that look random (Knuth, The Art of Computer Programming 2,
/// 3.3.4: MMIX's multiplier and increment, from memory).
fn draw(seed: &mut u64, below: u64) -> u64 {
    let next = seed.wrapping_mul(6_364_136_223_846_793_005);
    *seed = next.wrapping_add(1_442_695_040_888_963_407);
    (*seed >> 33) % below
}

/// Somebody who taps about, twice as often as once, waits, sets the clock, pulls the plug.
fn any_line(seed: &mut u64, face: &Answer) -> Line {
    match draw(seed, 20) {
        0 => Line::Restart,
        1 => {
            let minutes = i64::try_from(draw(seed, 240)).expect("small") - 120;
            let now = moment(&face.at).expect("a time");
            Line::Clock(now + chrono::TimeDelta::minutes(minutes))
        }
        2..=5 => Line::Wait(draw(seed, 200) * 1_000),
        what => {
            let count = u64::try_from(face.buttons.len()).expect("few");
            let at = usize::try_from(draw(seed, count)).expect("few");
            let label = face.buttons[at].label.clone();
            if what == 6 {
                return Line::Hold(label);
            }
            Line::Tap {
                label,
                times: 1 + u32::try_from(draw(seed, 2)).expect("few"),
                gap_ms: 40 + draw(seed, 1_160),
            }
        }
    }
}

#[test]
fn whatever_is_tapped_the_face_holds_and_one_line_logs_one_set_at_most() {
    for seed in 0..SEEDS {
        let data = tempfile::tempdir().expect("a folder");
        let mut rehearsal = open(data.path());
        rehearsal.tick_every(2_000);
        let (mut face, mut random, mut said) = (rehearsal.face(), seed, Vec::new());
        for _ in 0..LINES {
            let line = any_line(&mut random, &face);
            said.push(format!("{line:?}"));
            let after = say(&mut rehearsal, &line);
            assert!(
                after.sets_logged <= face.sets_logged + 1,
                "seed {seed}: {said:#?}: {after:?}"
            );
            assert!(
                !after.buttons.is_empty(),
                "seed {seed}: {said:#?}: {after:?}"
            );
            face = after;
        }
    }
}

/// Evenings of somebody who taps about, and lines of each.
const SEEDS: u64 = 3;
const LINES: usize = 50;

#[test]
fn the_same_lines_give_the_same_answers() {
    let lines = [
        json!({"tap": "Hamza"}),
        json!({"tap": "start"}),
        json!({"tap": "5 done", "times": 2, "gap_ms": 350}),
        json!({"wait_s": 30}),
        json!({"restart": true}),
        json!({"tap": "all"}),
        json!({"tap": "Ilkka"}),
        json!({"tap": "start"}),
        json!({"clock": "2026-12-02T19:30"}),
        json!({"tap": "all"}),
        json!({"tap": "floor"}),
        json!({"tap": "undo"}),
    ];
    assert_eq!(answers(&lines), answers(&lines));
}

#[test]
fn a_restart_shows_the_lifter_again_and_time_goes_on() {
    let told = answers(&[
        json!({"tap": "Hamza"}),
        json!({"tap": "start"}),
        json!({"tap": "5 done"}),
        json!({"wait_s": 20}),
        json!({"restart": true}),
        json!({"wait_s": 10}),
    ]);
    let (before, after, later) = (&told[3], &told[4], &told[5]);
    assert_eq!(after["screen"], "rest");
    for field in ["lifter", "lift", "load", "left", "put_on", "rest_s", "at"] {
        assert_eq!(after[field], before[field], "{field}");
    }
    let left = |answer: &Value| answer["rest_s"].as_i64().expect("a rest");
    assert_eq!(left(later), left(after) - 10);
}

#[test]
fn a_stick_is_plugged_in_and_stays_in() {
    let stick = tempfile::tempdir().expect("a folder");
    let plan = "date,lifter,lift,sets,reps,load,note\n2027-03-01,Hamza,rack pull,1,5,180 kg,\n";
    std::fs::write(stick.path().join("march.csv"), plan).expect("written");
    let mut lines = vec![json!({"plug": stick.path()})];
    lines.extend(["kiosk", "coach's desk"].map(|label| json!({"tap": label})));
    lines.extend("12341234".chars().map(|digit| json!({"tap": digit})));
    lines.extend([json!({"tap": "plans"}), json!({"restart": true})]);
    let told = answers(&lines);
    let shown = |answer: &Value| {
        let buttons = answer["buttons"].as_array().expect("a list").clone();
        buttons.iter().any(|b| {
            b["label"]
                .as_str()
                .is_some_and(|l| l.contains("march.csv") || l.contains("stick"))
        })
    };
    assert!(shown(&told[lines.len() - 2]), "{}", told[lines.len() - 2]);
}
