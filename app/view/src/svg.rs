//! Lines and words of drawings to print: SVG 1.1.
//!
//! Refuses: scripts, links and fonts from elsewhere; words are escaped.
use std::fmt::Write as _;

/// A line from here to there.
pub(crate) fn line(
    svg: &mut String,
    from: (f32, f32),
    to: (f32, f32),
    wide: f32,
    ink: &str,
    dash: &str,
) {
    let _ = writeln!(
        svg,
        "<line x1=\"{:.0}\" y1=\"{:.0}\" x2=\"{:.0}\" y2=\"{:.0}\" stroke=\"{ink}\" \
         stroke-width=\"{wide:.0}\" stroke-linecap=\"round\" stroke-dasharray=\"{dash}\"/>",
        from.0, from.1, to.0, to.1
    );
}

/// Words that begin here.
pub(crate) fn text(svg: &mut String, at: (f32, f32), size: f32, words: &str, weight: &str) {
    let _ = writeln!(
        svg,
        "<text x=\"{:.0}\" y=\"{:.0}\" font-size=\"{size:.0}\" font-weight=\"{weight}\">{}</text>",
        at.0,
        at.1,
        escaped(words)
    );
}

/// XML 1.0: what must not stand in a text as it is; control characters are left out.
fn escaped(words: &str) -> String {
    let mut safe = String::new();
    for c in words.chars().filter(|c| !c.is_control()) {
        match c {
            '&' => safe.push_str("&amp;"),
            '<' => safe.push_str("&lt;"),
            '>' => safe.push_str("&gt;"),
            c => safe.push(c),
        }
    }
    safe
}

/// Lines of at most so many letters, broken at spaces.
pub(crate) fn wrapped(words: &str, letters: usize) -> Vec<String> {
    let mut lines = vec![String::new()];
    for word in words.split(' ') {
        let last = lines.last_mut().expect("there is always one");
        let long = last.chars().count() + 1 + word.chars().count();
        if last.is_empty() {
            last.push_str(word);
        } else if long <= letters {
            last.push(' ');
            last.push_str(word);
        } else {
            lines.push(word.to_owned());
        }
    }
    lines
}
