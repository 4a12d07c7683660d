//! Finds the button that a line names.
//!
//! Refuses: guessing between several.
use ui::Pressable;

/// The button of this label, or else the only one whose label begins so.
#[allow(
    clippy::needless_pass_by_value,
    reason = "a list made for this look alone"
)]
pub(super) fn find(all: Vec<Pressable>, label: &str) -> Result<Pressable, String> {
    if let Some(found) = all.iter().find(|one| one.label == label) {
        return Ok(found.clone());
    }
    let begin = |one: &&Pressable| !label.is_empty() && one.label.starts_with(label);
    let found: Vec<&Pressable> = all.iter().filter(begin).collect();
    match found[..] {
        [one] => Ok(one.clone()),
        [] => Err(format!(
            "no button is called \"{label}\"; there are {}",
            labels(&all)
        )),
        _ => Err(format!(
            "several buttons begin with \"{label}\": {}",
            labels(found)
        )),
    }
}

/// Labels in quotes.
fn labels<'a>(all: impl IntoIterator<Item = &'a Pressable>) -> String {
    let quoted = all.into_iter().map(|one| format!("\"{}\"", one.label));
    quoted.collect::<Vec<_>>().join(", ")
}
