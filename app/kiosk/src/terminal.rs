//! What every command of the terminal shares: its language, and saying something.
use std::io::Write;
use view::Language;

/// A language by its code.
pub(crate) fn language(code: &str) -> Result<Language, String> {
    let codes = Language::ALL.map(Language::code).join(", ");
    Language::of_code(code)
        .ok_or_else(|| format!("no language is called {code}; there are {codes}"))
}

/// Writes to standard output. Whether it arrived is asked once, at the end.
pub(crate) fn say(out: &mut dyn Write, text: &str) {
    drop(out.write_all(text.as_bytes()));
    drop(out.flush());
}
