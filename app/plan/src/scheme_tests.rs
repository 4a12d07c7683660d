//! Cells as coaches write them, and what each is taken for; and cells that are asked about.
use super::{Bare, Beside, follow, read};
use domain::MassUnit;

fn groups(text: &str) -> String {
    let read = read(text, Bare::Unit(MassUnit::Kg), &Beside::default());
    let read = read.and_then(|mut scheme| follow(text, &mut scheme.groups).map(|()| scheme));
    match read {
        Err(wrong) => format!("? {}; {}", wrong.read, wrong.right),
        Ok(scheme) => {
            let groups: Vec<_> = scheme.groups.iter().map(ToString::to_string).collect();
            let mut told = groups.join(", ");
            if !scheme.notes.is_empty() {
                told += &format!(" [{}]", scheme.notes.join("; "));
            }
            if let Some(bar) = scheme.bar {
                told += &format!(" bar {bar}");
            }
            if let Some(warm) = scheme.warm {
                told += &format!(" warm {warm}");
            }
            told
        }
    }
}

#[test]
#[allow(clippy::too_many_lines, reason = "a table")]
fn cells_that_mean_one_thing() {
    for (text, meant) in [
        ("5x3 @ 140", "5 x 3 @ 140 kg"),
        ("5 \u{d7} 3 @ 140kg", "5 x 3 @ 140 kg"),
        ("5x3@102,5", "5 x 3 @ 102.5 kg"),
        ("3x5 315 lb", "3 x 5 @ 315 lb"),
        ("3x5x140", "3 x 5 @ 140 kg"),
        ("3 x 5 x 140 kg", "3 x 5 @ 140 kg"),
        ("140 kg x 5", "1 x 5 @ 140 kg"),
        ("140x5", "1 x 5 @ 140 kg"),
        ("140kgx5x5", "5 x 5 @ 140 kg"),
        ("1 x 8 @ 80 %", "1 x 8 @ 80 % of best"),
        ("80% x 5", "1 x 5 @ 80 % of best"),
        ("3x5 @ 80% TM", "3 x 5 @ 80 % of training max"),
        ("3x5 @ 80 % of training max", "3 x 5 @ 80 % of training max"),
        ("3x5 @ 82,5 % 1RM", "3 x 5 @ 82.5 % of best"),
        ("3x3-5 @ 140", "3 x 3-5 @ 140 kg"),
        ("3 x 3\u{2013}5 @ 140", "3 x 3-5 @ 140 kg"),
        ("3 x 5+ @ 140", "2 x 5 @ 140 kg, 1 x 5+ @ 140 kg"),
        ("1x5+ @ 85 % TM", "1 x 5+ @ 85 % of training max"),
        ("AMRAP @ 100", "1 x AMRAP @ 100 kg"),
        ("2xAMRAP @ 60 kg", "2 x AMRAP @ 60 kg"),
        ("3 x max reps @ 60 kg", "3 x AMRAP @ 60 kg"),
        ("3x5 @ RPE 8", "3 x 5 RPE 8"),
        ("3x5 @8", "3 x 5 RPE 8"),
        ("3x5 @8.5", "3 x 5 RPE 8.5"),
        ("3x5 RIR 2", "3 x 5 RPE 8"),
        ("3x5 @ 2 RIR", "3 x 5 RPE 8"),
        ("3x5 @ 140 @8", "3 x 5 @ 140 kg RPE 8"),
        ("3x5 @ 140 (RPE 8)", "3 x 5 @ 140 kg RPE 8"),
        ("3x5 +2.5", "3 x 5 @ last time +2.5 kg"),
        ("3x5 @ last +5 lb", "3 x 5 @ last time +5 lb"),
        ("3x5 due", "3 x 5 @ what is due"),
        ("3x5", "3 x 5"),
        ("3 sets of 5 @ 140", "3 x 5 @ 140 kg"),
        ("3 S\u{e4}tze \u{e0} 5 mit 140 kg", "3 x 5 @ 140 kg"),
        ("3 sets x 5 reps @ 140", "3 x 5 @ 140 kg"),
        ("5 reps @ 140", "1 x 5 @ 140 kg"),
        ("5 @ 140", "1 x 5 @ 140 kg"),
        ("3 triples @ 140", "3 x 3 @ 140 kg"),
        ("top single @ RPE 8", "1 x 1 RPE 8 (top)"),
        (
            "5/3/1+ @ 75/85/95 %",
            "1 x 5 @ 75 % of best, 1 x 3 @ 85 % of best, 1 x AMRAP @ 95 % of best",
        ),
        (
            "3x5 @ 100/110/120",
            "1 x 5 @ 100 kg, 1 x 5 @ 110 kg, 1 x 5 @ 120 kg",
        ),
        (
            "1x5 @ RPE 8, 3x5 @ 90 % of top set",
            "1 x 5 RPE 8 (top), 3 x 5 @ 90 % of top set (back-off)",
        ),
        (
            "top set 5 @ 8, then back-off 3x5 @ -10%",
            "1 x 5 RPE 8 (top), 3 x 5 @ 90 % of top set (back-off)",
        ),
        ("1x3 @ 180 + 3x5 @ 150", "1 x 3 @ 180 kg, 3 x 5 @ 150 kg"),
        ("1x3 @ 180\n3x5 @ 150", "1 x 3 @ 180 kg, 3 x 5 @ 150 kg"),
        (
            "1x8 @ 100 kg, drop 1x8 @ 80 kg, drop AMRAP @ 60 kg",
            "1 x 8 @ 100 kg, 1 x 8 @ 80 kg (drop), 1 x AMRAP @ 60 kg (drop)",
        ),
        ("3x5 @ 140, rest 3 min", "3 x 5 @ 140 kg rest 180 s"),
        ("3x5 @ 140 R: 2:30", "3 x 5 @ 140 kg rest 150 s"),
        ("3x5 @ 140 (belt)", "3 x 5 @ 140 kg belt"),
        (
            "3x5 @ 140 paused, tempo 30X1",
            "3 x 5 @ 140 kg tempo 3-0-X-1 [paused]",
        ),
        ("3x5 @ 140, no warm-up", "3 x 5 @ 140 kg warm none"),
    ] {
        assert_eq!(groups(text), meant, "{text}");
    }
}

#[test]
fn cells_that_are_asked_about() {
    let mut out = String::new();
    for text in [
        "140 kg x 5 x 3",
        "140x5x3",
        "20x5",
        "5 x 140 kg",
        "140",
        "3x5 @ 8-9",
        "3x5 @ RPE 8-9",
        "3x5-3 @ 140",
        "5-3-1 @ 140",
        "3x5 @ 130-140",
        "3x5 @ 80 % e1RM",
        "3x5 @ 80 % of 3RM",
        "3x5 @ +2.5 %",
        "3x5 @ 0.8",
        "21x5",
        "3x51",
        "0x5",
        "3x5 @ 140 10 min",
        "heavy",
        "work up to a heavy single",
        "5x3 @ heavy",
        "3x5/3/1 @ 140",
        "2x5 @ 100/110/120",
        "3x5 @ 140 150",
        "3x5 @ 90 % of top set",
        "3x5 @ -10 %",
        "3x",
        "x",
        "3x5 3x3",
        "3x(2+2) @ 140",
        "3x5 @ 1,250.5 kg",
        "3x5 @ RPE 11",
        "3x5 @ RPE 8.3",
        "RPE 8",
        "80 %",
        "3x5 @",
        "5x3 @ 140 @ 150",
        "3x5 @ 2000 kg",
        "1x5 @ 5kg each side",
    ] {
        out += &format!("{text} -> {}\n", groups(text));
    }
    insta::assert_snapshot!(out);
}

/// What is missing is named in the words that were written, and a word that would change the work
/// never ends in a note.
#[test]
fn messages_lead_on() {
    let rpe = "an effort without its number; \
               write one RPE from 1 to 10 in halves, such as \"RPE 8.5\"";
    for (text, told) in [
        ("RPE", rpe),
        ("5x5 RPE", rpe),
        ("5x5 @ RPE", rpe),
        ("3x5 @ 140, RIR?", rpe),
        (
            "80% TM",
            "no reps; write sets x reps, as \"5x3 @ 80 % of training max\"",
        ),
        ("RPE 8", "no reps; write sets x reps, as \"5x3 @ RPE 8\""),
        (
            "5x5 @ 80 TM",
            "which could be 80 kg or a share; \
             write \"80 % tm\", or the load with its unit",
        ),
        (
            "5x5 @ 80 training max",
            "which could be 80 kg or a share; \
             write \"80 % training max\", or the load with its unit",
        ),
        (
            "5x5 @ 80 percent",
            "which could be 80 kg or a share; \
             write \"80 %\", or the load with its unit",
        ),
        (
            "1RM",
            "no reps; write sets x reps, as \"1x1 @ RPE 9\" or \"5x3 @ 80 % of best\"",
        ),
    ] {
        assert_eq!(groups(text), format!("? \"{text}\", {told}"), "{text}");
    }
    // Words beside a load that has its unit stay words.
    for text in ["5x5 @ 140 kg max effort", "5x5 @ 140 training pause"] {
        assert!(groups(text).starts_with("5 x 5 @ 140 kg ["), "{text}");
    }
}

#[test]
#[allow(clippy::too_many_lines, reason = "a table")]
fn where_and_how_sets_are_done() {
    for (text, meant) in [
        ("5x5 @ 3-0-1-0", "5 x 5 tempo 3-0-1-0"),
        ("5x5 @ 140 3-0-1-0", "5 x 5 @ 140 kg tempo 3-0-1-0"),
        ("5x5 @ 140 tempo 3010", "5 x 5 @ 140 kg tempo 3-0-1-0"),
        ("5x5 @ 140 Tempo: 30X0", "5 x 5 @ 140 kg tempo 3-0-X-0"),
        (
            "5x5 @ 140 tempo 3 / 0 / x / 0",
            "5 x 5 @ 140 kg tempo 3-0-X-0",
        ),
        (
            "5x5 @ 140 tempo 3:0:1:0 rest 3 min",
            "5 x 5 @ 140 kg rest 180 s tempo 3-0-1-0",
        ),
        ("5x5 @ 140 tempo 3.0.1.0", "5 x 5 @ 140 kg tempo 3-0-1-0"),
        ("5x5 @ 140 tempo 3,0,1,0", "5 x 5 @ 140 kg tempo 3-0-1-0"),
        (
            "5x5 @ 140 3 \u{2013} 0 \u{2013} 1 \u{2013} 0",
            "5 x 5 @ 140 kg tempo 3-0-1-0",
        ),
        ("3x3 @ 140 hole 6", "3 x 3 @ 140 kg hole 6"),
        ("3x3 @ 140 @ hole 6", "3 x 3 @ 140 kg hole 6"),
        ("3x3 @ 140 (Loch: 6)", "3 x 3 @ 140 kg hole 6"),
        ("3x3 @ 140, pins 6", "3 x 3 @ 140 kg hole 6"),
        (
            "1x3 @ 150 hole 6 belt; 2x5 @ 120 hole 9 no belt straps",
            "1 x 3 @ 150 kg hole 6 belt, 2 x 5 @ 120 kg hole 9 no belt straps",
        ),
        ("2x5 @ 120 straps", "2 x 5 @ 120 kg straps"),
        ("2x5 @ 120 + straps", "2 x 5 @ 120 kg straps"),
        (
            "2x5 @ 120 with belt and straps",
            "2 x 5 @ 120 kg belt straps",
        ),
        (
            "2x5 @ 120 beltless, no straps",
            "2 x 5 @ 120 kg no belt no straps",
        ),
        (
            "2x5 @ 120 mit G\u{fc}rtel ohne Zughilfen",
            "2 x 5 @ 120 kg belt no straps",
        ),
        ("2x5 @ 120 hook grip", "2 x 5 @ 120 kg hook grip"),
        (
            "2x5 @ 120 double overhand grip",
            "2 x 5 @ 120 kg double overhand",
        ),
        (
            "2 sets of double overhand 3 reps @ 100",
            "2 x 3 @ 100 kg double overhand",
        ),
        ("3x5 @ 120 pause 2 s", "3 x 5 @ 120 kg pause 2 s"),
        (
            "3x5 @ 120 pause 2s at the knee",
            "3 x 5 @ 120 kg pause 2 s [pause at the knee]",
        ),
        ("3x5 @ 120 2 sec pause", "3 x 5 @ 120 kg pause 2 s"),
        (
            "3x5 @ 120 paused 3 s rest 2 min",
            "3 x 5 @ 120 kg rest 120 s pause 3 s",
        ),
        ("3x5 @ 120 pause 3 min", "3 x 5 @ 120 kg rest 180 s"),
        ("3x5 @ 120 blocks 10 cm", "3 x 5 @ 120 kg blocks 100 mm"),
        ("3x5 @ 120 4 in blocks", "3 x 5 @ 120 kg blocks 101.6 mm"),
        (
            "3x5 @ 120 4\" high blocks",
            "3 x 5 @ 120 kg blocks 101.6 mm",
        ),
        (
            "1x5 @ 120 blocks 10 cm, 1x5 @ 100 no blocks",
            "1 x 5 @ 120 kg blocks 100 mm, 1 x 5 @ 100 kg no blocks",
        ),
        (
            "3x5 @ 120 straps for the last set",
            "3 x 5 @ 120 kg [straps for the last set]",
        ),
        (
            "3x5 @ 120 bar close, slow off the pins",
            "3 x 5 @ 120 kg [bar close; slow off the pins]",
        ),
        ("3x5 @ 120 bar: hex", "3 x 5 @ 120 kg bar hex"),
        (
            "1x5 @ 120, 3x5 @ 100, bar = old yard bar",
            "1 x 5 @ 120 kg, 3 x 5 @ 100 kg bar old yard bar",
        ),
    ] {
        assert_eq!(groups(text), meant, "{text}");
    }
}

/// The coach who writes it their own way is asked, with what to write.
#[test]
#[allow(clippy::too_many_lines, reason = "a table")]
fn rude_ways_are_asked_about() {
    for (text, asked) in [
        (
            "5x5 @ 140 tempo 3-0-1",
            "? \"5x5 @ 140 tempo 3-0-1\", a tempo of 3 figures; write four",
        ),
        (
            "5x5 @ 140 tempo 3-0-1-0-2",
            "? \"5x5 @ 140 tempo 3-0-1-0-2\", a tempo of 5 figures; write four",
        ),
        (
            "5x5 @ 3-0-1-0-2",
            "? \"5x5 @ 3-0-1-0-2\", a tempo of 5 figures; write four",
        ),
        (
            "5x5 @ 140 tempo 30X02",
            "? \"5x5 @ 140 tempo 30X02\", a tempo of 5 figures",
        ),
        (
            "5x5 @ 140 tempo X-0-1-0",
            "? \"5x5 @ 140 tempo X-0-1-0\", a tempo with figures that are not",
        ),
        (
            "5x5 @ 140 tempo 30-0-1-0",
            "? \"5x5 @ 140 tempo 30-0-1-0\", a tempo with figures that are not 0 to 15 seconds",
        ),
        (
            "5x5 @ 3010",
            "? \"5x5 @ 3010\", which could be a load or a tempo; write \"tempo 3010\"",
        ),
        (
            "5x5 @ 140 3-0-1-0 tempo 2010",
            "? \"5x5 @ 140 3-0-1-0 tempo 2010\", two things said of the tempo",
        ),
        (
            "3x3 @ 140 hole 0",
            "? \"3x3 @ 140 hole 0\", a hole 0, where holes count from 1",
        ),
        (
            "3x3 @ 140 hole 6.5",
            "? \"3x3 @ 140 hole 6.5\", a hole 6.5, where holes count from 1",
        ),
        (
            "3x3 @ 140 hole six",
            "? \"3x3 @ 140 hole six\", a hole ?, where holes count from 1",
        ),
        (
            "3x3 @ 140 hole 6 hole 7",
            "? \"3x3 @ 140 hole 6 hole 7\", two things said of the hole",
        ),
        (
            "3x3 @ 140 hole 6, hole 7",
            "? \"3x3 @ 140 hole 6, hole 7\", two ways of doing the same sets",
        ),
        (
            "3x5 @ 120 pause 2",
            "? \"3x5 @ 120 pause 2\", which could be a rest or a pause in each rep; write \"pause 2 s\" or \"rest 2 min\"",
        ),
        (
            "3x5 @ 120 pause 0 s",
            "? \"3x5 @ 120 pause 0 s\", not a pause within a rep; write whole seconds from 1 to 14",
        ),
        (
            "3x5 @ 120 off blocks",
            "? \"3x5 @ 120 off blocks\", blocks without their height",
        ),
        (
            "3x5 @ 120 blocks 4",
            "? \"3x5 @ 120 blocks 4\", blocks without their height",
        ),
        (
            "3x5 @ 120 blocks 9 m",
            "? \"3x5 @ 120 blocks 9 m\", blocks without their height",
        ),
        (
            "3x5 @ 120 blocks 2 in blocks 4 in",
            "? \"3x5 @ 120 blocks 2 in blocks 4 in\", two things said of the blocks",
        ),
        (
            "3x5 @ 120 mixed grip",
            "? \"3x5 @ 120 mixed grip\", a mixed grip, which is not taken",
        ),
        (
            "3x5 @ 120 belt no belt",
            "? \"3x5 @ 120 belt no belt\", two things said of the belt",
        ),
        (
            "3x5 @ 100 bar: hex, 2x5 @ 120 bar: old",
            "? \"3x5 @ 100 bar: hex, 2x5 @ 120 bar: old\", a bar for some of the sets of one lift; write the sets on another bar as a second lift",
        ),
        (
            "3x5 @ 100 bar: hex, 2x5 @ 120",
            "? \"3x5 @ 100 bar: hex, 2x5 @ 120\", a bar for some",
        ),
        (
            "3x5 @ 100 bar:",
            "? \"3x5 @ 100 bar:\", not understood from",
        ),
    ] {
        let told = groups(text);
        assert!(told.starts_with(asked), "{text}\n{told}");
    }
}
