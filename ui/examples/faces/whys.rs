//! What stands behind the end of a lift of an invented lifter.
use RowState::{Ahead, Done, Moved, Other};
use view::draw::RowState;
use view::single::Estimate;
use view::trail::{Point, Trail};
use view::why::Why;

fn point((date, load, height, state): (&str, &str, f32, RowState)) -> Point {
    Point {
        date: date.into(),
        load: load.into(),
        height,
        word: String::new(),
        state,
    }
}

/// What is due after a few weeks.
pub(crate) fn next() -> Why {
    let points = [
        ("28 Oct", "175", 0.0, Done),
        ("4 Nov", "177.5", 0.33, Other),
        ("11 Nov", "180", 0.67, Moved),
        ("25 Nov", "180", 0.67, Done),
        ("next", "182.5", 1.0, Ahead),
    ];
    Why {
        title: "next time".into(),
        headline: "182.5 kg × 5".into(),
        sentence: "up 2.5 kg: all reps with the back held".into(),
        trail: Trail {
            points: points.map(point).into(),
            ..Trail::default()
        },
        main: "the single".into(),
        ..Why::default()
    }
}

/// As many outings as can be looked at, and as long a sentence, with a way back.
pub(crate) fn split() -> Why {
    let at = |n: u8| {
        let state = [Done, Done, Other, Moved][usize::from(n % 4)];
        let height = f32::from(n % 7) / 6.0;
        point(("28 Sept", "1002.5", height, state))
    };
    Why {
        title: "when to split".into(),
        sentence: "deadlift sets of 5 at 1002.5 lb fall by 1.75 lb a time where 25 lb are due, 25 of \
                   50 short or with a moved back; think of the halting deadlift and the rack pull in \
                   its place, the coach decides"
            .into(),
        trail: Trail {
            points: (0..50).map(at).collect(),
            line: Some((0.3, 0.6)),
            threshold: Some((0.1, "heavy from 1002.5 lb".into())),
        },
        back_title: "the way back".into(),
        back: [
            "12 September: deadlift 802.5 lb × 5",
            "19 September: deadlift 870 lb × 3",
            "26 September: deadlift 930 lb × 1",
        ]
        .map(String::from)
        .into(),
        main: "next time".into(),
        ..Why::default()
    }
}

/// Six estimates, of a partial pull.
pub(crate) fn single() -> Why {
    let each = [
        ("Brzycki", "1127.81 lb", 0.0),
        ("O'Conner", "1127.81 lb", 0.0),
        ("Wathan", "1168.72 lb", 0.63),
        ("Epley", "1169.58 lb", 0.64),
        ("Lombardi", "1177.56 lb", 0.76),
        ("Mayhew", "1193.08 lb", 1.0),
    ];
    Why {
        title: "the single".into(),
        headline: "1127.81 to 1193.08 lb".into(),
        sentence:
            "by six published equations, from 1002.5 lb × 5; they were fitted to other people"
                .into(),
        estimates: each
            .map(|(equation, single, place)| Estimate {
                equation: equation.into(),
                single: single.into(),
                place,
            })
            .into(),
        caution:
            "on a partial pull these rank a lifter against themselves and predict nothing else"
                .into(),
        main: "when to split".into(),
        ..Why::default()
    }
}
