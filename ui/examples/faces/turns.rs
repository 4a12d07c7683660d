//! What is said about a turn and about a bar.
use super::draw::bar;
use view::holds::{Holds, HoldsAnswer, PlateKey};
use view::tap::{HoldsTap, Tap, TurnTap};
use view::turn_pad::{Answer, TurnPad};

/// Everything that can be said about a turn.
pub(crate) fn turn() -> TurnPad {
    let answer = |word: &str, more: &str, tap| Answer {
        word: word.into(),
        more: more.into(),
        tap,
    };
    TurnPad {
        question: "Edda: what now?".into(),
        answers: vec![
            answer("my turn now", "before the others", Tap::Turn(TurnTap::Mine)),
            answer("later", "after the next lifter", Tap::Turn(TurnTap::Later)),
            answer(
                "I need longer",
                "one minute more",
                Tap::Turn(TurnTap::Longer),
            ),
            answer("skip this set", "130 kg × 2", Tap::Skip),
            answer(
                "I am leaving",
                "the lift stays open",
                Tap::Turn(TurnTap::Leave),
            ),
        ],
        stop: "end the lift".into(),
    }
}

/// Two plates were said.
pub(crate) fn holds() -> Holds {
    let answer = |word: &str, more: &str, tap| HoldsAnswer {
        word: word.into(),
        more: more.into(),
        tap: Tap::Hold(tap),
    };
    let words = ["25", "20", "2.5", "15", "10", "5", "1.25", "0.5"];
    let keys = words.iter().zip(0_u16..).map(|(word, at)| PlateKey {
        word: (*word).into(),
        left: at != 3,
        tap: Tap::Hold(HoldsTap::Plate(at)),
    });
    Holds {
        question: "What is on the old bar now?".into(),
        answers: vec![
            answer("empty", "", HoldsTap::Empty),
            answer("as it should be", "25 + 20 + 10", HoldsTap::Wanted),
            answer(
                "as before",
                "left 25A + 10, right 25B + 10",
                HoldsTap::Before,
            ),
        ],
        by_plate: "or plate by plate, each side, from the inside".into(),
        plates: keys.collect(),
        said: "25 + 20".into(),
        total: "115 kg with the bar".into(),
        bar: bar("25 20"),
        take_last: "take last off".into(),
        main: "the bar holds this".into(),
    }
}
