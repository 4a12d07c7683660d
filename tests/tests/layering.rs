//! Who may depend on whom. Refuses: an edge that the code map does not have.
use std::collections::BTreeMap;

/// Each crate of ours with the crates of ours that it may use outside tests.
const MAY_USE: [(&str, &[&str]); 13] = [
    ("domain", &[]),
    ("journal", &["domain"]),
    ("plan", &["domain", "text"]),
    ("text", &["domain"]),
    ("view", &["domain", "text"]),
    ("share", &["journal", "text", "view"]),
    ("hub", &["domain", "journal", "plan"]),
    ("hardware", &[]),
    ("ui", &["view"]),
    (
        "kiosk",
        &[
            "domain", "hardware", "hub", "journal", "plan", "share", "text", "ui", "view",
        ],
    ),
    ("acceptance", &[]),
    ("disk", &[]),
    ("xtask", &[]),
];

/// What the core must never reach: clocks, files, threads, random numbers, serialisers.
const NOT_IN_DOMAIN: [&str; 5] = ["std", "serde", "rand", "tokio", "rusqlite"];

fn manifests() -> BTreeMap<String, toml::Table> {
    let top = acceptance::top();
    let root: toml::Table = read(&top.join("Cargo.toml"));
    let members = root["workspace"]["members"]
        .as_array()
        .expect("members is a list");
    members
        .iter()
        .map(|member| {
            let path = top
                .join(member.as_str().expect("a member is text"))
                .join("Cargo.toml");
            let manifest = read(&path);
            let name = manifest["package"]["name"]
                .as_str()
                .expect("a crate has a name")
                .to_owned();
            (name, manifest)
        })
        .collect()
}

fn read(path: &std::path::Path) -> toml::Table {
    let text = std::fs::read_to_string(path).expect("a manifest can be read");
    text.parse().expect("a manifest is TOML")
}

fn uses(manifest: &toml::Table) -> Vec<String> {
    let table = manifest.get("dependencies").and_then(toml::Value::as_table);
    table
        .map(|t| t.keys().cloned().collect())
        .unwrap_or_default()
}

#[test]
fn each_crate_uses_only_what_the_code_map_allows() {
    let manifests = manifests();
    let ours: Vec<&String> = manifests.keys().collect();
    for (name, manifest) in &manifests {
        let allowed = MAY_USE
            .iter()
            .find(|(n, _)| n == name)
            .map(|(_, allowed)| *allowed);
        let allowed = allowed.unwrap_or_else(|| panic!("{name} is not in the code map; add it"));
        for used in uses(manifest).iter().filter(|used| ours.contains(used)) {
            assert!(
                allowed.contains(&used.as_str()),
                "{name} must not use {used}"
            );
        }
    }
    assert_eq!(
        manifests.len(),
        MAY_USE.len(),
        "the code map names a crate that is gone"
    );
}

#[test]
fn the_core_reaches_nothing_of_the_outside() {
    let manifests = manifests();
    for used in uses(&manifests["domain"]) {
        assert!(
            !NOT_IN_DOMAIN.contains(&used.as_str()),
            "domain must not use {used}"
        );
    }
    let lib = acceptance::top().join("app/domain/src/lib.rs");
    let lib = std::fs::read_to_string(lib).expect("domain has a lib.rs");
    assert!(lib.contains("#![no_std]"), "domain must stay no_std");
    assert!(
        lib.contains("#![forbid(unsafe_code)]"),
        "domain must forbid unsafe code"
    );
    assert!(
        !lib.contains("extern crate std"),
        "domain must not bring std back"
    );
}
