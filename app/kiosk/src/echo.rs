//! What came from outside and is said again in a message: no longer than a reader bears.
//!
//! Whoever gives a name of ten thousand letters wants to know what is wrong, not to read them all
//! again; what matters of a long path stands at its beginning and at its end.
use std::fmt::Display;
use std::io::Write;

/// Letters of one name or word that are said whole: a path that people type is shorter.
const WORD_MAX: usize = 200;
/// Of a longer one so many are said of its beginning and of its end.
const KEPT: [usize; 2] = [120, 60];
/// Letters of a line that are said at most.
const LINE_MAX: usize = 2_000;
/// In place of what is left out.
const LEFT_OUT: char = '\u{2026}';

/// The message, with every word and line in it bounded.
pub(crate) fn bounded(message: &str) -> String {
    let lines: Vec<String> = message.split('\n').map(line).collect();
    lines.join("\n")
}

/// Writes the message, bounded; where it cannot be written nobody reads it.
pub(crate) fn tell(to: &mut dyn Write, message: &dyn Display) {
    drop(to.write_all(bounded(&message.to_string()).as_bytes()));
}

fn line(text: &str) -> String {
    let words: Vec<String> = text.split(' ').map(word).collect();
    let line = words.join(" ");
    match line.char_indices().nth(LINE_MAX) {
        Some((end, _)) => format!("{}{LEFT_OUT}", &line[..end]),
        None => line,
    }
}

fn word(text: &str) -> String {
    let letters = text.chars().count();
    if letters <= WORD_MAX {
        return text.to_owned();
    }
    let [first, last] = KEPT;
    let first: String = text.chars().take(first).collect();
    let last: String = text.chars().skip(letters - last).collect();
    format!("{first}{LEFT_OUT}{last}")
}

#[cfg(test)]
mod tests {
    use super::{LINE_MAX, WORD_MAX, bounded};

    #[test]
    fn what_people_write_stays_and_what_is_endless_is_shortened() {
        let plain = "/home/gym/plans/four weeks.csv: row 2\n  write 180 kg";
        assert_eq!(bounded(plain), plain);
        let name = "ü".repeat(WORD_MAX);
        assert_eq!(bounded(&name), name);
        let told = bounded(&format!("{}.csv: no such file", "x".repeat(10_000)));
        assert!(told.ends_with("xx.csv: no such file"), "{told}");
        assert!(told.contains("xx\u{2026}xx"), "{told}");
        assert!(told.chars().count() < 250);
        let told = bounded(&"a b ".repeat(10_000));
        assert_eq!(told.chars().count(), LINE_MAX + 1);
        assert!(told.ends_with('\u{2026}'));
    }
}
