//! At the bar and resting: warm-ups and work sets, kilos and pounds, hole and floor.
use super::draw::{bar, change, ladder, marked, spot, stripped};
use super::ladders::{eight_rungs, five_rungs};
use RowState::{Ahead, Done, Moved, Now, Other};
use view::bar::AtTheBar;
use view::draw::RowState;
use view::loading::Ordered;
use view::rest::Rest;
use view::spot::Spot;

/// A warm-up in a hole, a disc to go on.
pub(crate) fn at_the_bar() -> AtTheBar {
    AtTheBar {
        load: "130".into(),
        unit: "kg".into(),
        reps: "2 reps".into(),
        rung: "warm-up 3 of 4".into(),
        bar: bar("25 20 +10"),
        change: change("", "10", "each side: put on 10"),
        ladder: five_rungs([Done, Done, Now, Ahead, Ahead]),
        order: Ordered::default(),
        spot: spot("9", "1 mat, 20 mm", &["belt"]),
        loaded: "loaded".into(),
        holds: "bar holds...".into(),
        caution: String::new(),
        settle: String::new(),
        main: "2 done".into(),
        main_detail: "back held".into(),
    }
}

pub(crate) fn bar_floor() -> AtTheBar {
    AtTheBar {
        load: "317.5".into(),
        reps: "12 reps".into(),
        rung: "work set 2 of 3".into(),
        bar: bar("25 25 25 25 25 +15 +5 +2.5 +1.25"),
        change: change("20, 10, 2.5", "15, 5, 2.5, 1.25", ""),
        ladder: eight_rungs(),
        spot: Spot {
            raise: "raise the bar 110 mm".into(),
            ..spot("", "", &["straps", "belt"])
        },
        caution: "stop the set when the back moves".into(),
        settle: "other load".into(),
        main: "12 done".into(),
        ..at_the_bar()
    }
}

/// The last set left a heavy bar in another hole.
pub(crate) fn bar_strip() -> AtTheBar {
    AtTheBar {
        bar: bar("25 25 20 10 5 2.5"),
        change: stripped("25 + 25 + 20 + 10 + 5 + 2.5"),
        ..at_the_bar()
    }
}

pub(crate) fn bar_off() -> AtTheBar {
    AtTheBar {
        load: "102.5".into(),
        reps: "5 reps".into(),
        rung: "work set".into(),
        bar: bar("25 15 -10 -1.25"),
        change: change("1.25, 10", "", "each side: take off 1.25, 10"),
        ladder: ladder(&[
            ("60", "×5", Done, ""),
            ("85", "×1", Moved, "back moved at 1"),
            ("102.5", "×5", Now, "work"),
        ]),
        spot: spot("14", "2 mats, 20 + 10 mm", &["straps", "belt"]),
        caution: "use the retired bar on pins".into(),
        main: "5 done".into(),
        ..at_the_bar()
    }
}

pub(crate) fn bar_pounds() -> AtTheBar {
    AtTheBar {
        load: "1002.5".into(),
        unit: "lb".into(),
        reps: "1 rep".into(),
        rung: "work set".into(),
        bar: bar("45lb 45lb 45lb 45lb 45lb 45lb +45lb +25lb +10lb +5lb +2.5lb"),
        change: change("35", "45, 25, 10, 5, 2.5", ""),
        ladder: ladder(&[
            ("135", "×5", Done, ""),
            ("315", "×3", Done, ""),
            ("585", "×2", Other, "1 of 2"),
            ("855", "×1", Done, ""),
            ("1002.5", "×1", Now, "work"),
        ]),
        spot: spot("4", "", &["belt"]),
        main: "1 done".into(),
        ..at_the_bar()
    }
}

/// Plates as weighed: each told by its mark, left and right.
pub(crate) fn bar_weighed() -> AtTheBar {
    AtTheBar {
        bar: bar("25 20 +10 +5 +2.5 +1.25"),
        change: marked(
            "left 20A + 15B + 2.5, right 20C + 15A + 2.5",
            "left 10G1 + 5W2 + 2.5R7 + 1.25a, right 10G4 + 5W3 + 2.5R8 + 1.25c",
        ),
        ..at_the_bar()
    }
}

pub(crate) fn bar_empty() -> AtTheBar {
    AtTheBar {
        load: "20".into(),
        reps: "5 reps".into(),
        rung: "warm-up 1 of 4".into(),
        bar: bar(""),
        change: change("", "", "empty bar"),
        ladder: five_rungs([Now, Ahead, Ahead, Ahead, Ahead]),
        spot: spot("9", "1 mat, 20 mm", &[]),
        loaded: String::new(),
        main: "5 done".into(),
        ..at_the_bar()
    }
}

/// Resting, a disc to come off and one to go on.
pub(crate) fn rest() -> Rest {
    Rest {
        left: "2:10".into(),
        share: 0.7,
        word: "rest".into(),
        last: "130 kg × 2, back held".into(),
        load: "165".into(),
        unit: "kg".into(),
        reps: "1 rep".into(),
        rung: "warm-up 4 of 4".into(),
        bar: bar("25 +25 +20 +2.5"),
        change: change("10, 20", "25, 20, 2.5", ""),
        ladder: five_rungs([Done, Done, Done, Now, Ahead]),
        order: None,
        spot: spot("9", "1 mat, 20 mm", &["straps"]),
        loaded: "loaded".into(),
        holds: "bar holds...".into(),
        cue: "shoulders in front of the bar".into(),
        settle: String::new(),
        main: "go now".into(),
    }
}

/// Rested, but another comes first.
pub(crate) fn rest_turn() -> Rest {
    Rest {
        left: "2nd".into(),
        share: 0.0,
        word: "after Tomasz".into(),
        change: change("", "", "25 + 25 + 20; load the bar when it is your turn"),
        loaded: String::new(),
        holds: String::new(),
        main: "my turn now".into(),
        ..rest()
    }
}

pub(crate) fn rest_over() -> Rest {
    Rest {
        left: "0:00".into(),
        share: 0.0,
        word: "rested".into(),
        load: "317.5".into(),
        reps: "12 reps".into(),
        rung: "work set 2 of 3".into(),
        bar: bar("25 25 25 25 25 20 2.5 1.25"),
        change: change("", "", "leave the bar as it is"),
        ladder: eight_rungs(),
        spot: spot("9", "", &[]),
        loaded: String::new(),
        last: "317.5 kg × 12, back held".into(),
        ..rest()
    }
}
