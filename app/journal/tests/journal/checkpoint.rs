//! A start from a checkpoint comes to what a replay comes to, at every cut; a checkpoint that is
//! not proven is of no account; and what is kept of the past does not grow with the years.
use crate::seasons::{after, season};
use crate::strategies;
use disk::Random;
use domain::next::outing::Outing;
use domain::next::outings::outings;
use domain::past::{LATEST, OF_TRACK};
use domain::state::{LEFT_OPEN, WHOLE};
use domain::{Event, Fact, LiftNo, State, Track, TrackName};
use journal::{CHECKPOINT_FILE, JOURNAL_FILE, Journal};
use proptest::collection::vec;
use proptest::prelude::*;
use sha2::{Digest as _, Sha256};
use std::collections::BTreeMap;
use std::collections::BTreeSet;
use std::fs;
use std::path::Path;
use tempfile::TempDir;

fn with(events: &[Event]) -> (TempDir, Journal) {
    let folder = tempfile::tempdir().expect("a folder");
    let mut journal = Journal::open(&folder.path().join(JOURNAL_FILE)).expect("opens");
    journal.append(0, events).expect("appends");
    (folder, journal)
}

/// Keeps the state at a cut and starts from it.
fn check_cut(journal: &Journal, events: &[Event], (cut, then): (usize, &State), whole: &State) {
    let cut = u64::try_from(cut).expect("few");
    journal.keep_state(then, cut).expect("keeps");
    let reached = journal.reached().expect("reads");
    assert_eq!((reached.kept, reached.last), (cut, events.len() as u64));
    assert!(reached.state == *whole, "from the checkpoint at {cut}");
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(24))]

    #[test]
    fn whatever_happened_every_cut_comes_to_the_same(
        events in vec(strategies::event(1..6_u32), 1..30)
    ) {
        let (_folder, journal) = with(&events);
        let whole = State::replay(&events);
        for cut in 0..=events.len() {
            check_cut(&journal, &events, (cut, &after(&events, cut)), &whole);
        }
    }
}

#[test]
fn seasons_come_to_the_same_from_any_cut() {
    for seed in 0..3 {
        let events = season(seed, 420);
        let (_folder, journal) = with(&events);
        let whole = State::replay(&events);
        let mut random = Random::of(seed);
        let cuts = (0..12).map(|_| random.below(events.len() as u64));
        let mut cuts: Vec<usize> = cuts.map(|cut| usize::try_from(cut).expect("few")).collect();
        cuts.push(events.len());
        for cut in cuts {
            check_cut(&journal, &events, (cut, &after(&events, cut)), &whole);
        }
    }
}

#[test]
fn released_journals_come_to_the_same_from_every_cut() {
    let shelf = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../tests/journals");
    let mut read = 0;
    for entry in fs::read_dir(shelf).expect("lists") {
        let listed = entry.expect("an entry").path();
        if listed.extension().is_none_or(|ending| ending != "sqlite") {
            continue;
        }
        let folder = tempfile::tempdir().expect("a folder");
        let path = folder.path().join(JOURNAL_FILE);
        fs::copy(&listed, &path).expect("copies");
        let journal = Journal::open(&path).expect("opens");
        let events = journal.events_after(0).expect("reads");
        let events: Vec<Event> = events.into_iter().map(|(_, event)| event).collect();
        let whole = State::replay(&events);
        for cut in 0..=events.len() {
            check_cut(&journal, &events, (cut, &after(&events, cut)), &whole);
        }
        read += 1;
    }
    assert!(read >= 2, "v0.1.0 and v0.2.0 are on the shelf");
}

/// Whatever is done to the checkpoint, the start comes to what the journal says.
#[test]
fn a_checkpoint_that_is_not_proven_is_of_no_account() {
    let events = season(7, 60);
    let cut = events.len() - 5;
    let (folder, journal) = with(&events);
    let whole = State::replay(&events);
    let place = folder.path().join(CHECKPOINT_FILE);
    let keep = |state: &State, upto: usize| {
        let upto = u64::try_from(upto).expect("few");
        journal.keep_state(state, upto).expect("keeps");
    };
    keep(&after(&events, cut), cut);
    let sound = fs::read(&place).expect("reads");
    let ignored = |bytes: &[u8], what: &str| {
        fs::write(&place, bytes).expect("writes");
        let reached = journal.reached().expect("reads");
        assert!(reached.kept == 0 && reached.state == whole, "{what}");
    };
    let mut random = Random::of(1);
    for _ in 0..60 {
        let at = usize::try_from(random.below(sound.len() as u64)).expect("small");
        let mut bytes = sound.clone();
        bytes[at] ^= 1 << random.below(8);
        ignored(&bytes, "a bit is flipped");
        ignored(&sound[..at], "it is cut short");
    }
    ignored(b"", "it is empty");
    ignored(&[&sound[..], b"\n"].concat(), "something stands behind it");
    let text = String::from_utf8(sound).expect("text");
    let other = text.replacen("pinladder state ", "pinladder state 9", 1);
    ignored(other.as_bytes(), "of another format");
    // Another journal's, sound in itself.
    let others = season(8, 60);
    let (foreign, other) = with(&others);
    other.keep_state(&after(&others, 50), 50).expect("keeps");
    let bytes = fs::read(foreign.path().join(CHECKPOINT_FILE)).expect("reads");
    ignored(&bytes, "of another journal");
    // Ahead of a journal that a copy was put in the place of.
    let (short, shorter) = with(&events[..20]);
    fs::write(short.path().join(CHECKPOINT_FILE), text).expect("writes");
    let reached = shorter.reached().expect("reads");
    assert!(reached.kept == 0 && reached.state == after(&events, 20));
}

/// Best, outings and counts of a long season are those that a look at all its events gives.
#[test]
fn what_is_kept_of_the_past_is_true_and_bounded() {
    let events = season(3, 5_200);
    let state = State::replay(&events);
    // Everything in full: each lift by itself, in a state that never has so many.
    let mut each: BTreeMap<LiftNo, State> = BTreeMap::new();
    let mut sets = 0;
    for event in &events {
        if let Some(no) = lift_of(&event.fact) {
            each.entry(no).or_default().apply(event);
        }
    }
    let runs: Vec<_> = each.values().flat_map(|own| own.lifts.values()).collect();
    sets += runs.iter().map(|run| run.sets()).sum::<u64>();
    assert_eq!(state.sets(), sets);
    assert_eq!(state.lifts_count(), runs.len() as u64);
    let mut tracks = 0;
    for lifter in ["Ada", "Bo", "Hamza", "Ines"] {
        for lift in state.lifts_with_outings(lifter) {
            tracks += 4;
            let own =
                |run: &&&domain::LiftRun| run.sheet.lifter == lifter && run.sheet.lift == lift;
            let own: Vec<_> = runs.iter().filter(own).collect();
            let named = [5, 3].map(|reps| Track {
                reps,
                name: TrackName::new("heavy"),
            });
            for track in [5, 3].map(Track::of_reps).into_iter().chain(named) {
                // Those left open stand whole for longer, to be opened again.
                let closed = own.iter().filter(|run| !run.is_left_open());
                let all = closed.filter_map(|run| Outing::of(run));
                let mut all: Vec<Outing> = all.filter(|outing| outing.track() == track).collect();
                all.sort_by_key(|outing| (outing.date, outing.no));
                let mut kept = outings(&state, lifter, &lift, chrono::NaiveDate::MAX);
                kept.retain(|outing| {
                    outing.track() == track && !state.was_left_open(lifter, outing.no)
                });
                assert!(kept.len() >= OF_TRACK && kept.len() < all.len());
                assert!(all.ends_with(&kept), "{lifter}'s {lift} for {track:?}");
            }
            let mut alone = State::default();
            for run in own {
                alone.stand((**run).clone());
            }
            assert_eq!(alone.best(lifter, &lift), state.best(lifter, &lift));
        }
        let past = &state.past.lifters[lifter];
        assert!(past.outings.len() <= LATEST + OF_TRACK * 16);
    }
    let most = usize::try_from(WHOLE).expect("few") + 32 + LEFT_OPEN + tracks;
    assert!(state.lifts.len() <= most, "{} lifts", state.lifts.len());
    assert!(
        state.plan.len() < 400,
        "{} days of the plan",
        state.plan.len()
    );
}

#[allow(
    clippy::wildcard_enum_match_arm,
    reason = "all others concern no single lift"
)]
fn lift_of(fact: &Fact) -> Option<LiftNo> {
    match fact {
        Fact::LiftBegun { no, .. }
        | Fact::SetDone { no, .. }
        | Fact::RungSkipped { no, .. }
        | Fact::LiftStopped { no }
        | Fact::LoadSettled { no, .. }
        | Fact::NextDecided { no, .. }
        | Fact::NextOverridden { no, .. }
        | Fact::EntryUndone { no }
        | Fact::LiftLapsed { no }
        | Fact::LiftReopened { no, .. }
        | Fact::LiftRedated { no, .. } => Some(*no),
        _ => None,
    }
}

/// Raise `FORMAT` in `checkpoint.rs` whenever this changes: an older checkpoint would be read as
/// what it is not.
#[test]
fn the_lines_are_those_of_this_format() {
    let events = season(5, 400);
    let (folder, journal) = with(&events);
    let last = u64::try_from(events.len()).expect("few");
    journal
        .keep_state(&State::replay(&events), last)
        .expect("keeps");
    let text = fs::read_to_string(folder.path().join(CHECKPOINT_FILE)).expect("reads");
    // But for the title, which names the version, and the sum.
    let lines: Vec<&str> = text.lines().collect();
    let lines = &lines[1..lines.len() - 1];
    let sum = Sha256::digest(lines.join("\n"));
    let sum: String = sum.iter().map(|byte| format!("{byte:02x}")).collect();
    insta::assert_snapshot!(format!("{} {sum}", lines.len()), @"350 f2559f5c4be9e464e22f2317e3371319fc32f41781852a048d4063e445e36042");
}

/// What a programme's queue counts: each day that is kept is one on which that lift was begun.
#[test]
fn days_of_lifts_long_over_are_those_on_which_they_were_done() {
    let events = season(5, 400);
    let (mut begun, mut named) = (BTreeSet::new(), BTreeMap::new());
    for event in &events {
        if let Fact::LiftBegun { no, sheet } = &event.fact {
            let name = (sheet.lifter.clone(), sheet.lift.clone());
            begun.insert((name.0.clone(), name.1.clone(), sheet.date));
            named.insert(*no, name);
        }
        // A guessed date that was put right.
        if let Fact::LiftRedated { no, date } = &event.fact {
            let (lifter, lift) = named[no].clone();
            begun.insert((lifter, lift, *date));
        }
    }
    let state = State::replay(&events);
    let mut kept = 0;
    for (lifter, past) in &state.past.lifters {
        for (date, lift) in past.done() {
            let day = (lifter.clone(), lift.to_owned(), date);
            assert!(begun.contains(&day), "{day:?} was none");
            kept += 1;
        }
    }
    assert!(kept > 100, "only {kept} days are kept");
}
