//! What the table takes, and what it has by itself.
use crate::platform::{KG, kg};
use domain::Moment;
use domain::meet_card::{AtTable, Card, Judged, NotTaken, TableRules};

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
