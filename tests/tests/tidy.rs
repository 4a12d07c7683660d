//! The tree's own rules. Refuses: long files, files that do not say what they are, paths of one
//! machine, unwraps in sources, lines that are too wide.
use std::path::{Path, PathBuf};
use std::process::Command;

/// Lines of a Rust file at most.
const RUST_LINES_MAX: usize = 400;
/// Lines of a Slint file at most.
const SLINT_LINES_MAX: usize = 200;
/// Columns at most; a string that cannot be folded may stand out.
const COLUMNS_MAX: usize = 100;
/// Bytes of a tracked file at most: pictures and journals are small.
const BYTES_MAX: u64 = 512 * 1024;

fn tracked(ending: &str) -> Vec<(PathBuf, String)> {
    files()
        .into_iter()
        .filter(|path| path.to_string_lossy().ends_with(ending))
        .map(|path| {
            let text = std::fs::read_to_string(&path).expect("a tracked source is text");
            (path, text)
        })
        .collect()
}

fn files() -> Vec<PathBuf> {
    let top = acceptance::top();
    let listed = Command::new("git")
        .arg("ls-files")
        .current_dir(&top)
        .output();
    let listed = listed.expect("git lists the files");
    assert!(listed.status.success(), "git ls-files failed");
    let text = String::from_utf8(listed.stdout).expect("file names are UTF-8");
    let files: Vec<PathBuf> = text
        .lines()
        .map(|l| top.join(l))
        .filter(|p| p.exists())
        .collect();
    assert!(
        files.len() > 50,
        "only {} files are tracked; is this the repository?",
        files.len()
    );
    files
}

fn told(broken: &[String]) {
    assert!(broken.is_empty(), "\n{}", broken.join("\n"));
}

fn short(path: &Path) -> String {
    path.strip_prefix(acceptance::top())
        .unwrap_or(path)
        .display()
        .to_string()
}

#[test]
fn no_file_is_too_long() {
    let limits = [(".rs", RUST_LINES_MAX), (".slint", SLINT_LINES_MAX)];
    let mut broken = Vec::new();
    for (ending, limit) in limits {
        for (path, text) in tracked(ending) {
            let lines = text.lines().count();
            if lines > limit {
                broken.push(format!("{}: {lines} lines, at most {limit}", short(&path)));
            }
        }
    }
    told(&broken);
}

#[test]
fn every_source_says_what_it_is() {
    let mut broken = Vec::new();
    for (path, text) in tracked(".rs") {
        if !text.starts_with("//! ") {
            broken.push(format!("{}: start it with a //! line", short(&path)));
        }
    }
    for (path, text) in tracked(".slint") {
        if !text.starts_with("// ") {
            broken.push(format!("{}: start it with a // line", short(&path)));
        }
    }
    told(&broken);
}

#[test]
fn sources_do_not_unwrap() {
    let mut broken = Vec::new();
    for (path, text) in tracked(".rs") {
        let name = short(&path);
        if !name.contains("/src/") || name.ends_with("_tests.rs") {
            continue;
        }
        let code = text.split("#[cfg(test)]").next().unwrap_or_default();
        for (at, line) in code.lines().enumerate() {
            if line.contains(".unwrap()") && !line.trim_start().starts_with("//") {
                broken.push(format!("{name}:{}: say the invariant with expect", at + 1));
            }
        }
    }
    told(&broken);
}

#[test]
fn no_line_is_too_wide() {
    let mut broken = Vec::new();
    for (path, text) in tracked(".rs").into_iter().chain(tracked(".slint")) {
        for (at, line) in text.lines().enumerate() {
            if line.chars().count() > COLUMNS_MAX && !line.contains('"') {
                broken.push(format!(
                    "{}:{}: over {COLUMNS_MAX} columns",
                    short(&path),
                    at + 1
                ));
            }
        }
    }
    told(&broken);
}

#[test]
fn no_path_of_one_machine_and_no_large_file() {
    // Split so that this file does not find itself.
    let paths = [
        concat!("/wo", "rk/"),
        concat!("/ro", "ot/"),
        concat!("/tmp", "/wt"),
    ];
    let mut broken = Vec::new();
    for path in files() {
        let bytes = std::fs::metadata(&path)
            .map(|m| m.len())
            .unwrap_or_default();
        if bytes > BYTES_MAX {
            broken.push(format!(
                "{}: {bytes} bytes, at most {BYTES_MAX}",
                short(&path)
            ));
        }
        let Ok(text) = std::fs::read_to_string(&path) else {
            continue;
        };
        for found in paths.iter().filter(|p| text.contains(**p)) {
            broken.push(format!("{}: names {found}", short(&path)));
        }
    }
    told(&broken);
}
