//! What we stand on: licences that GPL-3.0-only may take in, one registry, a bounded number.
use std::process::Command;

/// Licences that may be combined into a GPL-3.0-only program (the FSF's licence list).
const FINE: [&str; 17] = [
    "GPL-3.0-only",
    "MIT",
    "MIT-0",
    "Apache-2.0",
    "BSD-2-Clause",
    "BSD-3-Clause",
    "BSL-1.0",
    "CC0-1.0",
    "ISC",
    "Unicode-3.0",
    "Unlicense",
    "Zlib",
    "0BSD",
    "MPL-2.0",
    "OFL-1.1",
    "LGPL-3.0-only",
    "bzip2-1.0.6",
];

/// Packages in Cargo.lock at most, every platform's included; raise it only with a reason here.
/// Slint's windowing for all platforms is most of it; spreadsheets (calamine, rust_xlsxwriter), TLS
/// (rustls, rcgen, ring), codes (argon2), mDNS and charts add some 60, a third of them for other
/// platforms. The PostgreSQL client (tokio-postgres) brings some 20: its protocol, SCRAM with its own
/// hashes, and the preparation of texts that it asks for (stringprep); an own one would be one more
/// thing to keep safe. The appliance's screen without X (`--features kms`: libinput, udev and the
/// kernel's own calls) brings 16 that nobody else builds.
const PACKAGES_MAX: usize = 755;

/// The platform that is built and checked.
const PLATFORM: &str = "x86_64-unknown-linux-gnu";

fn packages() -> Vec<serde_json::Value> {
    let cargo = std::env::var("CARGO").unwrap_or_else(|_| "cargo".into());
    let metadata = Command::new(cargo)
        .args(["metadata", "--format-version", "1", "--locked", "--offline"])
        // What another platform would bring is not downloaded, so it cannot be read here.
        .args(["--filter-platform", PLATFORM])
        .current_dir(acceptance::top())
        .output()
        .expect("cargo tells its metadata");
    let said = String::from_utf8_lossy(&metadata.stderr).into_owned();
    assert!(metadata.status.success(), "cargo metadata failed: {said}");
    let value: serde_json::Value =
        serde_json::from_slice(&metadata.stdout).expect("metadata is JSON");
    value["packages"]
        .as_array()
        .expect("packages is a list")
        .clone()
}

#[test]
fn every_licence_may_be_combined_with_ours() {
    let fine: Vec<spdx::LicenseId> = FINE
        .iter()
        .map(|name| spdx::license_id(name).expect("an SPDX name"))
        .collect();
    let mut broken = Vec::new();
    for package in packages() {
        let name = package["name"].as_str().unwrap_or_default().to_owned();
        let Some(text) = package["license"].as_str() else {
            broken.push(format!("{name}: names no licence"));
            continue;
        };
        let Ok(licence) = spdx::Expression::parse_mode(text, spdx::ParseMode::LAX) else {
            broken.push(format!("{name}: {text} is no SPDX expression"));
            continue;
        };
        let allowed = licence.evaluate(|wanted| {
            let id = wanted.license.id();
            id.is_some_and(|id| fine.contains(&id))
        });
        if !allowed {
            broken.push(format!("{name}: {text} is not on the list of licences"));
        }
    }
    assert!(broken.is_empty(), "\n{}", broken.join("\n"));
}

#[test]
fn everything_comes_from_the_registry_and_is_not_too_much() {
    let packages = packages();
    for package in &packages {
        let source = package["source"].as_str().unwrap_or("registry+ours");
        assert!(
            source.starts_with("registry+"),
            "{} comes from {source}",
            package["name"]
        );
    }
    let lock = std::fs::read_to_string(acceptance::top().join("Cargo.lock"));
    let lock = lock.expect("Cargo.lock can be read");
    let count = lock.lines().filter(|line| *line == "[[package]]").count();
    assert!(count > 100, "only {count} packages; is this Cargo.lock?");
    assert!(
        count <= PACKAGES_MAX,
        "{count} packages, at most {PACKAGES_MAX}"
    );
}
