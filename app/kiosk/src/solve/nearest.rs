//! What somebody probably meant among the names that are known. Refuses: to decide.

/// "write \"rungs\"", or all known names when none is near.
pub(super) fn hint(text: &str, known: &[&str]) -> String {
    // Longer than any name, and the work grows as the product of the lengths.
    let short: String = text.chars().take(40).collect();
    let apart = |name: &&&str| strsim::osa_distance(name, &short);
    let best = known.iter().min_by_key(apart);
    match best {
        Some(name) if apart(&name) <= short.chars().count().div_ceil(3) => {
            format!("write {name:?}")
        }
        _ => format!("write one of {}", known.join(", ")),
    }
}
