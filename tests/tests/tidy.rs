//! The tree's own rules. Refuses: long files, files that do not say what they are, paths of one
//! machine, unwraps in sources, lines that are too wide.
use std::path::{Path, PathBuf};

/// Lines of a Rust file at most.
const RUST_LINES_MAX: usize = 400;
/// Lines of a Slint file at most.
const SLINT_LINES_MAX: usize = 200;
/// Columns at most; a string or a comment's table that cannot be folded may stand out.
const COLUMNS_MAX: usize = 100;
/// Bytes of a file at most: pictures and journals are small.
const BYTES_MAX: u64 = 512 * 1024;

fn sources(ending: &str) -> Vec<(PathBuf, String)> {
    files()
        .into_iter()
        .filter(|path| path.to_string_lossy().ends_with(ending))
        .map(|path| {
            let text = std::fs::read_to_string(&path).expect("a source is text");
            (path, text)
        })
        .collect()
}

/// Everything in the tree but what is built or kept by git.
fn files() -> Vec<PathBuf> {
    let mut files = Vec::new();
    let mut folders = vec![acceptance::top()];
    while let Some(folder) = folders.pop() {
        for entry in std::fs::read_dir(&folder).expect("a folder of the tree can be read") {
            let path = entry.expect("an entry can be read").path();
            let name = path
                .file_name()
                .unwrap_or_default()
                .to_string_lossy()
                .into_owned();
            let built = ["target", ".git", "__pycache__", "proptest-regressions"];
            if path.is_dir() && !built.contains(&name.as_str()) {
                folders.push(path);
            } else if path.is_file() && name != ".git" {
                files.push(path);
            }
        }
    }
    files.sort();
    assert!(
        files.len() > 50,
        "only {} files; is this the repository?",
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
        for (path, text) in sources(ending) {
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
    for (path, text) in sources(".rs") {
        if !text.starts_with("//! ") {
            broken.push(format!("{}: start it with a //! line", short(&path)));
        }
    }
    for (path, text) in sources(".slint") {
        if !text.starts_with("// ") {
            broken.push(format!("{}: start it with a // line", short(&path)));
        }
    }
    told(&broken);
}

#[test]
fn sources_do_not_unwrap() {
    let mut broken = Vec::new();
    for (path, text) in sources(".rs") {
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
    for (path, text) in sources(".rs").into_iter().chain(sources(".slint")) {
        if short(&path).contains("examples/") {
            continue; // Invented data stand there in rows.
        }
        for (at, line) in text.lines().enumerate() {
            let told = line.contains('"') || line.trim_start().starts_with("//");
            if line.chars().count() > COLUMNS_MAX && !told {
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
