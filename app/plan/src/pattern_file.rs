//! The warm-up patterns of gym.toml, laid over those that come with the program.
//!
//! Refuses: steps that do not rise.
use crate::fault::Wrong;
use crate::fields;
use crate::known::Known;
use crate::nearest::fold;
use crate::quantity::percent;
use crate::toml_doc::Doc;
use crate::toml_entry::Entry;
use crate::wording::name;
use crate::words::words;
use domain::decimal;
use domain::gym::{Pattern, PatternStep};
use domain::ladder::shipped_patterns;
use text::keys::checked as k;

/// Most patterns of a gym.
const PATTERNS_MAX: usize = 100;
/// Most warm-ups of a pattern.
const STEPS_MAX: usize = 12;

/// The patterns of the program, changed and added to by the file.
pub(crate) fn read(doc: &mut Doc<'_>, gym: &Entry<'_>, known: &mut Known) -> Vec<Pattern> {
    let mut patterns = shipped_patterns();
    for entry in gym.entries(doc, "pattern", PATTERNS_MAX, &fields::PATTERN) {
        let name = entry.text(doc, "name", name);
        known.add(doc, name.as_deref(), &entry.at_value("name"));
        let steps = steps(doc, &entry);
        let shipped = name.as_deref().and_then(|name| named(&patterns, name));
        let warm = shipped.is_some_and(|at| patterns[at].already_warm);
        let already_warm = entry.flag(doc, "already_warm", warm);
        let Some(name) = name else {
            continue;
        };
        let pattern = Pattern {
            name,
            steps,
            already_warm,
        };
        match named(&patterns, &pattern.name) {
            Some(at) => {
                let name = patterns[at].name.clone();
                patterns[at] = Pattern { name, ..pattern };
            }
            None => patterns.push(pattern),
        }
    }
    known.also(patterns.iter().map(|pattern| pattern.name.as_str()));
    patterns
}

fn named(patterns: &[Pattern], name: &str) -> Option<usize> {
    let is = |old: &Pattern| fold(&old.name) == fold(name);
    patterns.iter().position(is)
}

fn steps(doc: &mut Doc<'_>, pattern: &Entry<'_>) -> Vec<PatternStep> {
    let entries = pattern.entries(doc, "steps", STEPS_MAX, &fields::STEP);
    if entries.is_empty() && pattern.has("steps") {
        let right = words!(k::WRITE_ONE_SHARE_REPS_FOR);
        doc.missing(
            &pattern.at_value("steps"),
            Wrong::plain(words!(k::NO_STEP_THAT_CAN_BE), right),
        );
    }
    let mut steps: Vec<PatternStep> = Vec::new();
    for entry in entries {
        let share = entry.text(doc, "share", |text| percent(text, &(100..=9_900)));
        let reps = entry.whole(doc, "reps", &(1..=50));
        let (Some(share), Some(reps)) = (share, reps) else {
            continue;
        };
        if let Some(before) = steps.last()
            && share <= before.share
        {
            let words = |share| decimal::write_rounded(i64::from(share), 100, 2);
            let read = words!(k::AFTER, words(share), words(before.share));
            let right = words!(k::LET_EACH_STEP_BE_HEAVIER);
            doc.wrong(&entry.at_value("share"), Wrong::plain(read, right));
        }
        steps.push(PatternStep { share, reps });
    }
    steps
}
