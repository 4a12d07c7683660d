//! People as they are: a seeded sample of evenings at shared bars. The long run is
//! `cargo run --release -p acceptance --example evenings -- 10000`.
#[path = "../rude/mod.rs"]
mod rude;

/// Evenings of the sample.
const SEEDS: u64 = 12;

#[test]
fn whoever_obeys_lifts_what_is_shown_whatever_the_others_did() {
    let mut sets = 0;
    for seed in 0..SEEDS {
        let folder = tempfile::tempdir().expect("a folder");
        let out = rude::evening(seed, folder.path());
        assert!(
            out.faults.is_empty(),
            "seed {seed}: {:#?}\n{:#?}",
            out.faults,
            out.log
        );
        sets += out.sets;
    }
    assert!(sets > 60, "only {sets} sets in {SEEDS} evenings");
}
