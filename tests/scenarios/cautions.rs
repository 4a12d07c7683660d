//! Cautions stand where they matter: on the sheet, the set-up, each rung at the bar, the choice of
//! loads, and after a moved back.
use crate::bench::{Bench, evening};
use crate::ladder::{lifters, main_label};
use view::Screen;

#[test]
fn at_every_place_where_they_matter() {
    let folder = tempfile::tempdir().expect("a folder");
    let bench = Bench::start(folder.path(), &evening());
    // A Wednesday of the demo plan: everybody pulls from the pins.
    let name = lifters(&bench).remove(0);
    bench.tap(&name);
    let Screen::SetUp(set_up) = bench.frame().screen else {
        panic!("the set-up")
    };
    let has = |word: &str| set_up.cautions.iter().any(|caution| caution.contains(word));
    for word in [
        "collars",
        "centred",
        "hands",
        "do not drop",
        "back moved",
        "pain",
        "clinician",
    ] {
        assert!(has(word), "{word} is not in {:?}", set_up.cautions);
    }
    bench.tap("start");
    let mut at_bar = Vec::new();
    let mut settled = false;
    for _ in 0..20 {
        let frame = bench.frame();
        if let Screen::Bar(bar) = &frame.screen {
            assert!(set_up.cautions.contains(&bar.caution), "{:?}", bar.caution);
            at_bar.push(bar.caution.clone());
            if settled {
                break;
            }
        } else if let Screen::Settle(settle) = &frame.screen {
            settled = true;
            assert!(settle.caution.contains("back held"), "{:?}", settle.caution);
            assert!(settle.caution.contains("coach"), "{:?}", settle.caution);
        }
        bench.tap(&main_label(&frame));
    }
    assert!(settled, "the choice was shown");
    at_bar.sort();
    at_bar.dedup();
    assert!(at_bar.len() >= 4, "they take turns: {at_bar:?}");
    bench.tap("back moved");
    bench.tap("2");
    let frame = bench.frame();
    // After the last rung the lift is over, and nothing is left to go on with.
    let advice = match &frame.screen {
        Screen::Stop(stop) => stop.advice.clone(),
        Screen::End(end) => {
            assert!(end.short && end.headline.contains("back moved"), "{end:?}");
            let next = end.next.as_ref().expect("something is due");
            next.reason.clone()
        }
        other @ (Screen::Rest(_)
        | Screen::Bar(_)
        | Screen::Settle(_)
        | Screen::Choose(_)
        | Screen::Floor(_)
        | Screen::SetUp(_)
        | Screen::History(_)
        | Screen::Why(_)
        | Screen::Meet(_)
        | Screen::List(_)
        | Screen::Turn(_)
        | Screen::Holds(_)
        | Screen::Page(_)
        | Screen::Typing(_)
        | Screen::Entry(_)) => panic!("after a moved back: {other:?}"),
    };
    assert!(advice.contains("moved"), "{advice}");
}
