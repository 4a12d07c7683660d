//! Whatever bytes come over a connection: the fuzz target's seeds, whole, cut short and with bits
//! flipped, through the real server, guard and router. `cargo xtask fuzz http` goes on from there.
#[path = "../../../../tests/fuzz/targets/http_rules.rs"]
mod http_rules;

use crate::gym::{Gym, kg, march};
use domain::{Hold, MassUnit};
use share::converse;
use std::fs;
use std::path::Path;
use std::time::Duration;
use tokio::io::{AsyncReadExt as _, AsyncWriteExt as _, duplex};
use tokio::time::timeout;

/// A name that nothing but the record has.
const SECRET: &str = "Quillonwright";
/// Ways in which each seed is spoilt.
const SPOILT: usize = 40;
/// A connection may last a quarter of an hour.
const MOST: Duration = Duration::from_secs(1_000);

/// Sends all of `request`, and gives what comes back until the server closes.
async fn ask(gym: &Gym, request: &[u8]) -> Vec<u8> {
    let (mut near, far) = duplex(1 << 18);
    near.write_all(request).await.expect("there is room");
    let mut answers = Vec::new();
    let talk = async { tokio::join!(converse(far, gym.router()), near.read_to_end(&mut answers)) };
    let (_, read) = timeout(MOST, talk).await.expect("it ends");
    read.expect("reads");
    answers
}

fn seeds() -> Vec<(String, Vec<u8>)> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../tests/fuzz/seeds/http");
    let mut seeds: Vec<_> = fs::read_dir(folder)
        .expect("seeds")
        .map(|entry| {
            let entry = entry.expect("an entry");
            let bytes = fs::read(entry.path()).expect("reads");
            // The first byte says in which pieces the fuzzer sends.
            let name = entry.file_name().to_string_lossy().into_owned();
            (name, bytes[1..].to_vec())
        })
        .collect();
    seeds.sort();
    seeds
}

/// The seed cut short, or with a byte changed, as `draw` has it.
fn spoilt(bytes: &[u8], draw: &mut impl FnMut(usize) -> usize) -> Vec<u8> {
    let mut bytes = bytes.to_vec();
    let at = draw(bytes.len());
    match draw(4) {
        0 => bytes.truncate(at),
        1 => bytes[at] ^= 1 << draw(8),
        2 => bytes.insert(at, u8::try_from(draw(256)).expect("a byte")),
        _ => drop(bytes.remove(at)),
    }
    bytes
}

#[tokio::test(start_paused = true)]
async fn whatever_is_sent_is_answered_by_the_rules_and_tells_no_stranger_the_record() {
    let lifter = (SECRET, MassUnit::Kg);
    let sets = [(1, 5, Hold::Kept)];
    let gym = Gym::new()
        .lift(lifter, "rack pull", march(2), kg(180_000), &sets)
        .recorded();
    let cookie = gym.coach().await;
    let token = cookie.split_once('=').expect("a pair").1;
    let mut state = 20_261_128_u64;
    let mut draw = |many: usize| {
        // SplitMix64's step is not needed here: Knuth's MMIX constants, the upper bits.
        state = state
            .wrapping_mul(6_364_136_223_846_793_005)
            .wrapping_add(1_442_695_040_888_963_407);
        usize::try_from((state >> 33) % many.max(1) as u64).expect("small")
    };
    let (mut seen, mut answered) = (0, 0);
    for (name, seed) in seeds() {
        for round in 0..=SPOILT {
            // Signing out would take the others' session away.
            if name == "sign-out" && round > 0 {
                continue;
            }
            let bytes = match round {
                0 => seed.clone(),
                _ => spoilt(&seed, &mut draw),
            };
            let text: String = bytes.iter().copied().map(char::from).collect();
            let may_see = name != "sign-out" && text.contains("COACH-TOKEN");
            let token = if may_see { token } else { "none" };
            let text = text.replace("COACH-TOKEN", token);
            let bytes: Vec<u8> = text
                .chars()
                .map(|c| u8::try_from(c).expect("Latin-1"))
                .collect();
            let answers = ask(&gym, &bytes).await;
            answered += usize::from(!answers.is_empty());
            seen += usize::from(String::from_utf8_lossy(&answers).contains(SECRET));
            if let Err(why) = http_rules::check(&answers, &[SECRET], may_see) {
                panic!("{name}, round {round}: {why}\n{}", text.escape_debug());
            }
        }
    }
    assert!(answered > 800, "only {answered} answers");
    // Most changes hit the request's line, its host or the cookie.
    assert!(seen > 12, "a coach saw the record {seen} times only");
}
