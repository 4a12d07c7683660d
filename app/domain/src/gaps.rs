//! Fills the gaps of a template, `{0}`, `{1}` and so on, in one pass: what stands for a gap is
//! never taken for a gap itself.
//!
//! Refuses: gaps that nothing stands for; they stay as they are.
use alloc::string::String;

/// The template with what stands for each gap.
#[must_use]
pub fn fill<S: AsRef<str>>(template: &str, gaps: &[S]) -> String {
    let (mut filled, mut rest) = (String::new(), template);
    while let Some((before, after)) = rest.split_once('{') {
        filled.push_str(before);
        let gap = after
            .split_once('}')
            .and_then(|(at, left)| Some((gaps.get(at.parse::<usize>().ok()?)?, left)));
        if let Some((gap, left)) = gap {
            filled.push_str(gap.as_ref());
            rest = left;
        } else {
            filled.push('{');
            rest = after;
        }
    }
    filled.push_str(rest);
    filled
}
