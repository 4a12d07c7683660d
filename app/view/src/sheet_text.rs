//! The day sheet in plain text, for a terminal or a printer. Refuses: more than 100 columns.
use crate::language::{Language, c, whole_mm};
use crate::split;
use crate::words;
use chrono::NaiveDate;
use domain::MassUnit;
use domain::day::DayEntry;
use domain::next::here::LiftDue;
use domain::sheet::{LiftSheet, RungKind};
use std::fmt::Write as _;

/// Columns at most.
const WIDTH: usize = 100;

/// What is due of the lifts that a lifter does on other days.
pub type Others = [(String, Vec<LiftDue>)];

/// The day in text; `lifter` keeps one lifter's entries. What is due of `others` stands after each
/// lifter's own.
#[must_use]
pub fn sheet_text(
    gym: &str,
    date: NaiveDate,
    day: &[DayEntry],
    lifter: Option<&str>,
    others: &Others,
) -> String {
    let mut text = format!("{gym}, {}\n", date.format("%A %-d %B %Y"));
    let kept: Vec<&DayEntry> = day
        .iter()
        .filter(|e| lifter.is_none_or(|l| l == e.lifter))
        .collect();
    if kept.is_empty() {
        text.push_str("\nno lifters\n");
    }
    for (at, entry) in kept.iter().enumerate() {
        text.push('\n');
        match &entry.outcome {
            Ok(sheet) => lift(&mut text, entry, sheet),
            Err(why) if entry.lift.is_empty() => {
                text.push_str(&format!("{}: {why}\n", entry.lifter));
            }
            Err(why) => text.push_str(&format!("{}, {}: {why}\n", entry.lifter, entry.lift)),
        }
        let goes_on = kept.get(at + 1).is_some_and(|e| e.lifter == entry.lifter);
        let due = others.iter().find(|(name, _)| *name == entry.lifter);
        for one in due.filter(|_| !goes_on).iter().flat_map(|(_, due)| due) {
            line(&mut text, "then", &other_due(one, entry.unit));
        }
    }
    text
}

/// "rack pull, 5 reps: 510 lb, up 10 lb: all reps with the back held; last on 18 Nov".
fn other_due(one: &LiftDue, unit: MassUnit) -> String {
    let say = Language::English;
    let decision = &one.due.decision;
    let last = say.short_date(decision.date);
    let due = say.fill(c::DUE_LAST, &[&say.due(&one.due, unit), &last]);
    say.fill(
        c::DUE_OF,
        &[
            &say.tracked(&one.lift, one.track.name),
            &say.reps(decision.reps),
            &due,
        ],
    )
}

fn lift(text: &mut String, entry: &DayEntry, sheet: &LiftSheet) {
    line(
        text,
        "",
        &format!("{}: {}, {}", sheet.lifter, sheet.lift, words::work(sheet)),
    );
    if let Some(programme) = &entry.programme {
        line(text, "from", programme);
    }
    if let Some(next) = &entry.next {
        let last = next.decision.date.format("%-d %B");
        let words = format!("{} (last on {last})", next.sentence(sheet.unit));
        let both = Language::English.side_by_side(entry);
        if !both.is_empty() {
            line(text, "both", &both);
        }
        line(text, "due", &words);
    }
    if let Some(split) = entry.split.as_ref().filter(|split| split::is_told(split)) {
        line(
            text,
            "advice",
            &split::sentence(Language::English, split, sheet.unit),
        );
    }
    line(
        text,
        "rack",
        &format!("{}; {}", sheet.rack, words::bar(sheet)),
    );
    match &sheet.pins {
        Some(pins) => {
            let height = words::bar_height(pins);
            let estimated = if words::is_estimated(sheet) {
                "; estimated, measure"
            } else {
                ""
            };
            let mats = words::mats(&pins.mats);
            let words = format!("hole {}, {mats}; {height}{estimated}", pins.hole);
            line(text, "pins", &words);
        }
        None if sheet.is_from_pins() => match sheet.pin_hole(0) {
            Some(hole) => line(text, "pins", &format!("hole {hole}, no mat, by the plan")),
            None => line(text, "pins", "not set: see below"),
        },
        None => line(text, "start", &words::start(sheet)),
    }
    if sheet.overlap.is_some() {
        line(text, "overlap", &words::overlap(sheet));
    }
    // Grips are those of pulls.
    if sheet.hooks.is_none() {
        line(text, "grip", &words::grip(sheet.grip));
    }
    if let Some(figures) = &entry.steel {
        line(text, "steel", &words::steel(figures, sheet.unit));
    }
    ladder(text, sheet);
    for (head, items) in [("cue", &sheet.cues), ("caution", &sheet.cautions)] {
        if !items.is_empty() {
            line(text, head, &items.join("; "));
        }
    }
    for warning in words::warnings(sheet) {
        line(text, "warning", &warning);
    }
    if !sheet.note.is_empty() {
        line(text, "coach", &sheet.note);
    }
}

fn ladder(text: &mut String, sheet: &LiftSheet) {
    line(
        text,
        "ladder",
        &row("set", "rest", "wear", "each side", "change"),
    );
    for (at, rung) in sheet.rungs.iter().enumerate() {
        let head = if rung.kind == RungKind::Work {
            "work"
        } else {
            "warm-up"
        };
        let rest = if rung.rest_s == 0 {
            String::new()
        } else {
            words::minutes(rung.rest_s)
        };
        let set = match sheet.group_of(at) {
            None => words::set(rung.load, sheet.unit, rung.reps),
            Some(group) => words::set_of(rung.load, sheet.unit, group),
        };
        let gear = words::gear_of(sheet, at).join(", ");
        let plates = match words::plates(&rung.per_side, sheet.unit) {
            none if none.is_empty() => "empty bar".into(),
            some => some,
        };
        line(
            text,
            head,
            &row(&set, &rest, &gear, &plates, &hands(sheet, at)),
        );
    }
}

fn row(set: &str, rest: &str, gear: &str, plates: &str, hands: &str) -> String {
    let row = format!("{set:<15} {rest:<5} {gear:<13} {plates:<25} {hands}");
    row.trim_end().to_owned()
}

fn hands(sheet: &LiftSheet, at: usize) -> String {
    let Some(rung) = sheet.rungs.get(at) else {
        return String::new();
    };
    let hole = |at: usize| sheet.manner_of(at).hole;
    let moved = at
        .checked_sub(1)
        .is_some_and(|before| hole(before) != hole(at));
    let hole = hole(at).filter(|_| moved);
    let hole = hole.map(|hole| format!("hole {hole}")).unwrap_or_default();
    let off = words::plates(&rung.take_off, sheet.unit);
    let on = words::plates(&rung.put_on, sheet.unit);
    let raise = sheet.raise(at, &rung.per_side);
    let raise = match raise {
        domain::Length::ZERO => String::new(),
        _ => format!("raise {} mm", whole_mm(raise)),
    };
    let (off, on) = (signed("-", &off), signed("+", &on));
    let all = [hole, off, on, raise]
        .into_iter()
        .filter(|part| !part.is_empty());
    all.collect::<Vec<_>>().join("  ")
}

fn signed(sign: &str, plates: &str) -> String {
    if plates.is_empty() {
        String::new()
    } else {
        format!("{sign} {plates}")
    }
}

/// One line, folded at spaces so that none is wider than [`WIDTH`].
fn line(text: &mut String, head: &str, words: &str) {
    let first = if head.is_empty() {
        String::new()
    } else {
        format!("  {head:<8}")
    };
    let indent = " ".repeat(first.chars().count().max(2));
    let mut rest = words;
    let mut lead = &first;
    loop {
        let room = WIDTH - lead.chars().count();
        if rest.chars().count() <= room {
            let _ = writeln!(text, "{lead}{}", rest.trim_end());
            return;
        }
        let limit = rest
            .char_indices()
            .nth(room)
            .map_or(rest.len(), |(at, _)| at);
        let cut = rest[..limit]
            .trim_end()
            .rfind(' ')
            .filter(|at| *at > 0)
            .unwrap_or(limit);
        let _ = writeln!(text, "{lead}{}", rest[..cut].trim_end());
        rest = rest[cut..].trim_start();
        lead = &indent;
    }
}
