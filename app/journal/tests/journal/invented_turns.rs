//! Invented facts about bars and turns: one of every kind that version 2 of the wire form brought.
use crate::invented::from_pins;
use domain::believed::{BarWord, Disc, Said, Stacks};
use domain::shown::{LifterPart, OwnPage, Shown, ShownOrder, ShownScreen, WhyPart};
use domain::{Fact, LiftNo};

fn stacks() -> Stacks {
    let sheet = from_pins();
    let faces = &sheet.rungs[1].per_side;
    let side = |mark: &str| {
        let disc = |(at, face): (usize, &domain::PlateFace)| Disc {
            face: *face,
            mark: (at == 0).then(|| mark.to_owned()),
        };
        faces.iter().enumerate().map(disc).collect()
    };
    Stacks {
        left: side("A"),
        right: side("B"),
    }
}

fn word(said: Said) -> Fact {
    let sheet = from_pins();
    Fact::BarSaid(Box::new(BarWord {
        rack: sheet.rack,
        bar: sheet.bar.name,
        date: sheet.date,
        holds: stacks(),
        said,
        contradicts: Vec::new(),
    }))
}

fn shown(screen: ShownScreen) -> Fact {
    let sheet = from_pins();
    Fact::ScreenShown(Box::new(Shown {
        date: sheet.date,
        screen,
        early: Some((LiftNo(1), 1)),
        entered: None,
        settle: Some((LiftNo(2), true)),
        seen_end: None,
        orders: vec![ShownOrder {
            rack: sheet.rack,
            bar: sheet.bar.name,
            date: sheet.date,
            to: stacks(),
        }],
    }))
}

/// One of every kind.
pub(crate) fn facts() -> Vec<Fact> {
    let no = LiftNo(1);
    let lifter = |part| ShownScreen::Lifter("Ada".to_owned(), part);
    vec![
        word(Said::Set(no)),
        word(Said::Loaded(no)),
        word(Said::Stated),
        Fact::BarWordUndone {
            bar: from_pins().bar.name,
        },
        Fact::TurnDeferred { no },
        Fact::TurnPassed { no },
        Fact::TurnClaimed { no },
        Fact::RestLengthened { no, seconds: 60 },
        Fact::LifterLeft { no },
        Fact::LifterReturned { no },
        Fact::TurnUnsaid { no },
        shown(ShownScreen::All),
        shown(ShownScreen::Floor),
        shown(lifter(LifterPart::Due)),
        shown(lifter(LifterPart::Moved(true))),
        shown(lifter(LifterPart::Holds(vec![0, 2]))),
        shown(lifter(LifterPart::History("rack pull".to_owned()))),
        shown(lifter(LifterPart::Why(no, WhyPart::Next))),
        shown(ShownScreen::Own(OwnPage::Panel)),
    ]
}
