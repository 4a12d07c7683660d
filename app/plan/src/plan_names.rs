//! Names in a cell: one lifter or several, a lift with its track. Refuses: names nobody knows.
use crate::against::Against;
use crate::facts;
use crate::fault::Wrong;

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
