//! What a bar holds, said by hand: empty, as it should be, as before, or plate by plate.
use crate::draw::BarDrawing;
use crate::language::p;
use crate::loading::{both_sides, face_word, still_bar};
use crate::scene::Scene;
use crate::stage::stated;
use crate::tap::{HoldsTap, Tap};
use domain::order::plates_at;
use domain::state::LiftRun;

/// What it shows.
#[derive(Debug, Clone, PartialEq)]
pub struct Holds {
    /// "What is on the old yard bar now?".
    pub question: String,
    /// Whole answers: empty, as it should be, as before.
    pub answers: Vec<HoldsAnswer>,
    /// "or plate by plate, each side, from the inside".
    pub by_plate: String,
    /// One a kind of plate, in the order of the gym's file: "25", "2.5 kg".
    pub plates: Vec<PlateKey>,
    /// What was said so far: "25 + 10".
    pub said: String,
    /// What bar, collars and those plates come to: "110 kg with the bar".
    pub total: String,
    /// The bar with that.
    pub bar: BarDrawing,
    /// "take last off", or empty.
    pub take_last: String,
    /// The main button, once a plate was said: "the bar holds this".
    pub main: String,
}

/// One whole answer.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct HoldsAnswer {
    /// "as it should be".
    pub word: String,
    /// "25 + 20".
    pub more: String,
    /// What a tap on it says.
    pub tap: Tap,
}

/// One kind of plate.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct PlateKey {
    /// "25".
    pub word: String,
    /// Whether one more pair of it is there.
    pub left: bool,
    /// What a tap on it says.
    pub tap: Tap,
}

pub(crate) fn holds(scene: &Scene<'_>, run: &LiftRun, rung: usize, plates: &[u16]) -> Holds {
    let say = scene.language();
    let sheet = &run.sheet;
    let order = scene.order(run, rung);
    let words = |stacks| {
        let words = both_sides(say, stacks, sheet.unit);
        if words.is_empty() {
            say.say(p::NO_PLATES)
        } else {
            words
        }
    };
    let answer = |phrase, more: String, said| HoldsAnswer {
        word: say.say(phrase),
        more,
        tap: Tap::Hold(said),
    };
    let mut answers = vec![answer(p::HOLDS_EMPTY, String::new(), HoldsTap::Empty)];
    if !order.to.is_empty() {
        answers.push(answer(p::HOLDS_WANTED, words(&order.to), HoldsTap::Wanted));
    }
    let before = &order.believed.holds;
    if !before.is_empty() && *before != order.to {
        answers.push(answer(p::HOLDS_BEFORE, words(before), HoldsTap::Before));
    }
    let set = plates_at(scene.gym, &sheet.rack);
    let kinds = set.map(|set| set.plates.as_slice()).unwrap_or_default();
    let keys = kinds.iter().zip(0_u16..).map(|(kind, at)| PlateKey {
        word: face_word(say, &kind.face, sheet.unit),
        left: plates.iter().filter(|said| **said == at).count() < usize::from(kind.pairs),
        tap: Tap::Hold(HoldsTap::Plate(at)),
    });
    let stacks = stated(scene, run, plates).unwrap_or_default();
    let some = !plates.is_empty();
    let total = sheet.bar.mass + sheet.bar.collars + stacks.mass();
    Holds {
        question: say.fill(p::HOLDS_QUESTION, &[&sheet.bar.name]),
        answers,
        by_plate: say.say(p::HOLDS_PLATES),
        plates: keys.collect(),
        said: if some {
            both_sides(say, &stacks, sheet.unit)
        } else {
            say.say(p::HOLDS_NONE)
        },
        total: say.fill(p::HOLDS_TOTAL, &[&say.mass(total, sheet.unit)]),
        bar: still_bar(say, sheet, &stacks),
        take_last: if some {
            say.say(p::TAKE_LAST)
        } else {
            String::new()
        },
        main: if some {
            say.say(p::HOLDS_SAVE)
        } else {
            String::new()
        },
    }
}
