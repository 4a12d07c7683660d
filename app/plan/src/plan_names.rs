//! Names in a cell: one lifter or several, a lift with its track. Refuses: names nobody knows.
use crate::against::Against;
use crate::facts;
use crate::fault::{Wrong, quote};
use crate::scheme;
use crate::words::words;
use domain::manner::Manner;
use text::keys::checked as k;

/// One lifter, or several in a cell.
pub(crate) fn lifters(text: &str, against: &Against<'_>) -> Result<Vec<String>, Wrong> {
    if let Some(one) = against.lifters.lookup(text) {
        return Ok(vec![one]);
    }
    let spaced = text
        .replace(" and ", ",")
        .replace(" und ", ",")
        .replace(" et ", ",");
    let parts: Vec<&str> = spaced
        .split([',', '&', '/', '+', ';', '\n'])
        .map(str::trim)
        .filter(|part| !part.is_empty())
        .collect();
    if parts.len() > 1
        && parts
            .iter()
            .any(|part| against.lifters.lookup(part).is_some())
    {
        return parts
            .into_iter()
            .map(|part| against.lifters.find(part))
            .collect();
    }
    against.lifters.find(text).map(|one| vec![one])
}

/// "heavy rack pull", "rack pull heavy", "light deadlifts".
pub(crate) fn tracked(text: &str, against: &Against<'_>) -> Option<(String, &'static str)> {
    let (first, rest) = text.split_once(' ')?;
    let (front, last) = text.rsplit_once(' ')?;
    let lift = |text: &str| against.lifts.lookup(text);
    facts::track(first)
        .and_then(|track| Some((lift(rest)?, track)))
        .or_else(|| facts::track(last).and_then(|track| Some((lift(front)?, track))))
}

/// A lift, and where or how it is done where its cell says that too: "rack pull (hole 7)",
/// "deadlift no belt", "deadlift from 2 in blocks".
pub(crate) fn lift_and_manner(
    text: &str,
    against: &Against<'_>,
) -> Result<(String, Manner), Wrong> {
    let wrong = match against.lifts.find(text) {
        Ok(lift) => return Ok((lift, Manner::default())),
        Err(wrong) => wrong,
    };
    let Some((lift, rest)) = against.lift_in_front(text) else {
        return Err(match against.lift_behind(text) {
            Some(lift) => more_than(text, &lift),
            None => wrong,
        });
    };
    let rest = rest.replace("w/", "with ");
    let rest = rest.trim_matches(['(', ')', '[', ']', ' ']);
    match scheme::manner(rest, "gear") {
        Ok(manner) => Ok((lift, manner)),
        Err(_) => Err(more_than(text, &lift)),
    }
}

/// Whether it is that lift done some way or another lift, nobody can say.
fn more_than(text: &str, lift: &str) -> Wrong {
    let what = words!(k::A_LIFT_AND_MORE, quote(lift));
    let right = words!(k::WRITE_THE_LIFT_AND_HOW, quote(lift));
    Wrong::value(text, what, right)
}

/// Words before a name that is not the lifter's.
const NOT_LIFTERS: [&str; 6] = ["by", "coach", "trainer", "von", "par", "for coach"];

/// The one lifter whom a title names: "Plan for Hamza", "ILKKA - four weeks".
pub(crate) fn lifter_in(title: &str, against: &Against<'_>, any_case: bool) -> Option<String> {
    let words = title.split(|c: char| !c.is_alphanumeric());
    let words: Vec<&str> = words.filter(|word| !word.is_empty()).take(20).collect();
    let mut named: Option<String> = None;
    for from in 0..words.len() {
        let before = from
            .checked_sub(1)
            .map_or("", |at| words[at])
            .to_lowercase();
        // "will" is a word, "Will" a name; the name of a sheet is no sentence.
        let named_so = any_case || words[from].starts_with(char::is_uppercase);
        let large = named_so && words[from].chars().count() > 2;
        if !large || NOT_LIFTERS.contains(&before.as_str()) {
            continue;
        }
        let ends = (from + 1)..=words.len().min(from + 3);
        let found = { ends }.find_map(|to| against.lifters.lookup(&words[from..to].join(" ")));
        match (&named, found) {
            (Some(one), Some(other)) if *one != other => return None,
            (_, Some(found)) => named = Some(found),
            (_, None) => {}
        }
    }
    named
}
