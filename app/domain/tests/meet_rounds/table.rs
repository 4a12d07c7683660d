//! What the table takes, and what it has by itself.
use crate::platform::{KG, day, flight, kg};
use domain::Moment;
use domain::meet_card::{AtTable, Card, Judged, NotTaken, TableRules};
use domain::meet_day::MeetDay;
use domain::meet_round::{Round, Running, Who};

/// The IPF's rules, from memory: the opener once, until three minutes before; the second stands;
/// the third of a deadlift twice; the bar never goes down.
#[test]
fn what_the_table_takes_and_what_not() {
    let rules = TableRules::USUAL;
    let of = (kg(2_000), KG);
    let open = AtTable {
        loaded: false,
        begun: false,
        begins_in_s: Some(600),
    };
    let begun = AtTable {
        begun: true,
        begins_in_s: None,
        ..open
    };
    let blank = Card::default();
    let changed = blank
        .declare(of, kg(1_900), &rules, open)
        .expect("lighter may be");
    let again = changed.declare(of, kg(1_950), &rules, open);
    assert_eq!(again, Err(NotTaken::Changed(1)));
    let late = AtTable {
        begins_in_s: Some(179),
        ..open
    };
    assert_eq!(
        blank.declare(of, kg(1_900), &rules, late),
        Err(NotTaken::Late(180))
    );
    let last_second = AtTable {
        begins_in_s: Some(180),
        ..open
    };
    assert!(blank.declare(of, kg(1_900), &rules, last_second).is_ok());
    assert_eq!(
        blank.declare(of, kg(1_900), &rules, begun),
        Err(NotTaken::Late(180))
    );
    let loaded = AtTable {
        loaded: true,
        ..begun
    };
    assert_eq!(
        blank.declare(of, kg(2_100), &rules, loaded),
        Err(NotTaken::Loaded)
    );
    // The second: at least 2.5 kg more after a good lift, the same after none, and it stands.
    let good = blank.judge(Judged::Good, Moment(0)).expect("to come");
    let low = good.declare(of, kg(2_000), &rules, begun);
    assert_eq!(low, Err(NotTaken::Below(kg(2_025))));
    let second = good
        .declare(of, kg(2_100), &rules, begun)
        .expect("declared");
    let stands = second.declare(of, kg(2_125), &rules, begun);
    assert_eq!(stands, Err(NotTaken::Changed(0)));
    let missed = second.judge(Judged::NoLift, Moment(0)).expect("to come");
    let down = missed.declare(of, kg(2_075), &rules, begun);
    assert_eq!(down, Err(NotTaken::Below(kg(2_100))));
    let mut third = missed
        .declare(of, kg(2_100), &rules, begun)
        .expect("the same");
    for load in [2_150, 2_125] {
        // Down again too, as long as the bar was not loaded for it.
        third = third.declare(of, kg(load), &rules, begun).expect("twice");
    }
    let more = third.declare(of, kg(2_200), &rules, begun);
    assert_eq!(more, Err(NotTaken::Changed(2)));
    let over = third.judge(Judged::Good, Moment(0)).expect("to come");
    assert_eq!(
        over.declare(of, kg(2_500), &rules, begun),
        Err(NotTaken::Over)
    );
    assert_eq!(over.judge(Judged::Good, Moment(0)), Err(NotTaken::Over));
    assert_eq!(over.best(of.0, KG), Some(kg(2_125)));
    assert!(!over.is_without_lift());
}

/// Nothing declared within the minute: the least by itself (2.5 kg more after a good lift, the same
/// after none: IPF, from memory); before that what is usual is reckoned with.
#[test]
fn nothing_declared_the_table_has_it_by_itself() {
    let rules = TableRules::USUAL;
    let of = (kg(2_000), KG);
    let good = Card::default()
        .judge(Judged::Good, Moment(0))
        .expect("to come");
    let at = |card: Card, s: i64| card.reckoned(of, 1, &rules, Moment(s * 1_000));
    // 200 kg as 93 of 97 parts are 208.6 kg, in whole steps 207.5 kg.
    assert_eq!(at(good, 30), (kg(2_075), true));
    assert_eq!(at(good, 60), (kg(2_025), false));
    let missed = Card::default()
        .judge(Judged::NoLift, Moment(0))
        .expect("to come");
    assert_eq!(at(missed, 30), (kg(2_000), true));
    assert_eq!(at(missed, 60), (kg(2_000), false));
    assert_eq!(good.offers(of.0, KG, 1), [kg(2_025), kg(2_075), kg(2_150)]);
    assert_eq!(
        missed.offers(of.0, KG, 1),
        [kg(2_000), kg(2_025), kg(2_050)]
    );
}

/// A passed attempt leaves the weight as it was, and what is usual is at least a step over the
/// least, for the lightest openers too.
#[test]
fn passed_is_no_lift_and_offers_are_three() {
    let passed = Card::default()
        .judge(Judged::Passed, Moment(0))
        .expect("to come");
    assert_eq!(passed.least(kg(2_000), KG, 1), kg(2_000));
    let good = Card::default()
        .judge(Judged::Good, Moment(0))
        .expect("to come");
    // 50 kg as 93 of 97 parts are 52.2 kg: less than the least and a step.
    assert_eq!(good.offers(kg(500), KG, 1), [kg(525), kg(550), kg(575)]);
}

fn seen<'a>(day: &'a MeetDay, cards: &'a [Card], round: usize) -> Round<'a> {
    let running = Running {
        round,
        others_over: 0,
    };
    Round {
        day,
        flight: &day.flights[0],
        cards,
        running,
        now: Moment(0),
    }
}

/// Two of ours alone in a flight: 99 and 100 kg, no lots.
#[test]
fn a_round_is_seen_from_its_middle() {
    let day = day(vec![flight(&[(1_000, 0), (990, 0)], &[])]);
    let blank = [Card::default(); 2];
    let first = seen(&day, &blank, 0);
    assert_eq!(first.at_bar(), Some(1), "the lighter one");
    assert!(!first.table(1, false, Some(600)).loaded, "not begun");
    assert!(first.table(1, true, None).loaded);
    assert_eq!(first.left(), 6);
    // Whoever has lifted in this round comes after the one who has not, in the next.
    let mut cards = blank;
    cards[1] = cards[1].judge(Judged::Good, Moment(0)).expect("to come");
    let half = seen(&day, &cards, 0);
    let turn = half.turn(1).expect("two to come");
    assert_eq!((turn.round, turn.before), (1, 1));
    assert_eq!(half.left(), 5);
}

/// Alike in the second round without lots: who came first in the first one does again, also where
/// that was another order than the list's.
#[test]
fn places_are_carried_from_round_to_round() {
    let day = day(vec![flight(&[(1_000, 0), (990, 0)], &[])]);
    let of = |at: usize| (day.flights[0].starters[at].opener, KG);
    let rules = TableRules::USUAL;
    let table = |begun| AtTable {
        loaded: false,
        begun,
        begins_in_s: None,
    };
    let mut cards = [Card::default(); 2];
    let lighter = cards[0].declare(of(0), kg(980), &rules, table(false));
    cards[0] = lighter.expect("in time");
    assert_eq!(seen(&day, &cards, 0).order(0), [0, 1].map(Who::Ours));
    for (at, card) in cards.iter_mut().enumerate() {
        let good = card.judge(Judged::Good, Moment(0)).expect("to come");
        *card = good
            .declare(of(at), kg(1_050), &rules, table(true))
            .expect("taken");
    }
    assert_eq!(seen(&day, &cards, 1).order(1), [0, 1].map(Who::Ours));
}
