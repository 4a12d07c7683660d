//! Where a lifter stands in a programme: from what was done alone.
use chrono::{Days, NaiveDate, Weekday};
use domain::manner::Manner;
use domain::prescription::LoadWish;
use domain::programme::{Begin, Coaching, Day, Done, Due, Pace, Programme, Task, Work, shipped};
use proptest::prelude::*;

fn date(days: u64) -> NaiveDate {
    // A Monday.
    NaiveDate::from_ymd_opt(2026, 1, 5).expect("a day") + Days::new(days)
}

fn work(lift: &str) -> Work {
    Work {
        bar: None,
        manner: Manner::default(),
        lift: lift.into(),
        sets: 1,
        reps: 5,
        first: LoadWish::OfBest(7_500),
        ladder: None,
        rest_s: None,
        note: String::new(),
    }
}

/// Days written as "squat+press/bench | deadlift": tasks by plus, lifts that take turns by slash.
fn programme(days: &str, pace: Pace) -> Programme {
    let task = |task: &str| Task {
        alternate: task.split('/').map(|lift| work(lift.trim())).collect(),
    };
    let day = |(at, day): (usize, &str)| Day {
        name: format!("day {}", at + 1),
        weekday: None,
        tasks: day.split('+').map(task).collect(),
    };
    Programme {
        blocks: Vec::new(),
        name: "own".into(),
        lifters: vec!["Ines".into()],
        pace,
        days: days.split('|').enumerate().map(day).collect(),
        begins: Vec::new(),
    }
}

fn queue(days: &str) -> Programme {
    programme(days, Pace::Queue { apart_days: 3 })
}

fn done<'a>(list: &[(u64, &'a str)]) -> Vec<Done<'a>> {
    let day = |(days, lifts): &(u64, &'a str)| Done {
        date: date(*days),
        lifts: lifts.split('+').collect(),
    };
    list.iter().map(day).collect()
}

/// Where the coach puts somebody counts from that date on, and the queue goes on from there.
#[test]
fn a_lifter_stands_where_the_coach_put_them() {
    let mut own = queue("a | b | c");
    let begin = |day, since| Begin {
        lifter: "Ines".into(),
        day,
        since: date(since),
    };
    own.begins = vec![begin(0, 4), begin(2, 10)];
    let next_of = |own: &Programme, past: &[(u64, &str)], on| {
        own.standing_of("Ines", date(on), done(past)).next_day
    };
    assert_eq!(next_of(&own, &[(0, "a")], 3), 1, "not yet");
    assert_eq!(next_of(&own, &[(0, "a")], 9), 0, "by the first line");
    assert_eq!(next_of(&own, &[(0, "a"), (4, "a")], 9), 1, "and on from it");
    assert_eq!(
        next_of(&own, &[(0, "a"), (4, "a")], 10),
        2,
        "by the later line"
    );
    assert_eq!(
        next_of(&own, &[(0, "a"), (10, "c")], 13),
        0,
        "past the last comes the first"
    );
    let other = own.standing_of("Bo", date(20), done(&[(0, "a")]));
    assert_eq!(other.next_day, 1, "nobody else is moved");
    assert_eq!(
        own.standing_of("Ines", date(11), done(&[(9, "b")])).last,
        Some(date(9)),
        "the rest between days is kept"
    );
    own.begins = vec![begin(9, 0)];
    assert_eq!(
        next_of(&own, &[(0, "a")], 3),
        1,
        "a day that is none is passed over"
    );
}

/// What is due, as "day 1: squat+press" or "rest until" a day.
fn due(programme: &Programme, list: &[(u64, &str)], on: u64) -> String {
    match programme.due(&programme.standing(done(list)), date(on)) {
        Due::Rest(from) => format!("rest until {}", (from - date(0)).num_days()),
        Due::Day { day, works } => {
            let lifts: Vec<_> = works.iter().map(|work| work.lift.as_str()).collect();
            format!("{}: {}", day.name, lifts.join("+"))
        }
    }
}

/// Common practice, no source: two pulling days, the heavy one alternating rack pull and halting
/// deadlift, the other barbell shrug and power clean.
#[test]
fn the_split_pulls_go_round() {
    let split = &shipped()[0];
    let mut list: Vec<(u64, String)> = Vec::new();
    for turn in 0..9 {
        let at = turn * 4;
        let past: Vec<_> = list.iter().map(|(at, lift)| (*at, lift.as_str())).collect();
        let now = due(split, &past, at);
        let lift = now.split(": ").nth(1).expect("a lift").to_owned();
        list.push((at, lift));
    }
    let lifts: Vec<_> = list.iter().map(|(_, lift)| lift.as_str()).collect();
    let round = [
        "rack pull",
        "barbell shrug",
        "halting deadlift",
        "power clean",
    ];
    assert_eq!(lifts, [&round[..], &round[..], &round[..1]].concat());
    let snatch = &shipped()[1];
    let past = [
        (0, "rack pull"),
        (3, "barbell shrug"),
        (7, "halting deadlift"),
    ];
    assert_eq!(due(snatch, &past, 10), "other day: power snatch");
}

#[test]
fn missed_weeks_skip_nothing() {
    let split = &shipped()[0];
    let past = [(0, "rack pull"), (3, "barbell shrug")];
    for on in [7, 14, 28, 300] {
        assert_eq!(due(split, &past, on), "heavy day: halting deadlift");
    }
}

#[test]
fn days_keep_apart() {
    let split = &shipped()[0];
    assert_eq!(due(split, &[(0, "rack pull")], 2), "rest until 3");
    assert_eq!(
        due(split, &[(0, "rack pull")], 3),
        "other day: barbell shrug"
    );
    // A lift that is not of the programme keeps nobody from it.
    assert_eq!(due(split, &[(0, "bench press")], 1), "heavy day: rack pull");
}

/// What the coach's plan put in between counts where it belongs.
#[test]
fn what_was_done_out_of_turn_counts() {
    let split = &shipped()[0];
    let past = [(0, "halting deadlift")];
    assert_eq!(due(split, &past, 4), "other day: barbell shrug");
    let past = [(0, "halting deadlift"), (4, "power clean")];
    assert_eq!(due(split, &past, 8), "heavy day: rack pull");
    let past = [(0, "rack pull"), (4, "rack pull")];
    assert_eq!(due(split, &past, 8), "other day: barbell shrug");
}

/// Other lifts of the rack: one that is on both days goes with the rest of its day.
#[test]
fn days_are_told_apart_by_most_of_what_they_have() {
    let own = queue("squat+bench press/press+deadlift | squat+press/bench press+power clean");
    assert_eq!(due(&own, &[], 0), "day 1: squat+bench press+deadlift");
    let first = (0, "squat+bench press+deadlift");
    assert_eq!(due(&own, &[first], 3), "day 2: squat+press+power clean");
    // Squats alone: the day that was next.
    assert_eq!(
        due(&own, &[first, (3, "squat")], 6),
        "day 1: squat+press+deadlift"
    );
    // The press was left out of the second day: it keeps its turn there.
    let list = [first, (3, "squat+power clean"), (6, "squat+press+deadlift")];
    assert_eq!(due(&own, &list, 9), "day 2: squat+press+power clean");
}

#[test]
fn days_of_the_week() {
    let mut own = programme("rack pull/halting deadlift | barbell shrug", Pace::Week);
    own.days[0].weekday = Some(Weekday::Mon);
    own.days[1].weekday = Some(Weekday::Fri);
    assert_eq!(due(&own, &[], 0), "day 1: rack pull");
    assert_eq!(due(&own, &[], 1), "rest until 4");
    assert_eq!(due(&own, &[], 4), "day 2: barbell shrug");
    assert_eq!(due(&own, &[], 5), "rest until 7");
    // A missed Monday does not move Friday, and the heavy lift keeps its turn.
    assert_eq!(due(&own, &[(0, "rack pull")], 7), "day 1: halting deadlift");
    assert_eq!(
        due(&own, &[(0, "rack pull")], 14),
        "day 1: halting deadlift"
    );
}

#[test]
fn a_programme_of_nothing_gives_nothing() {
    let mut own = queue("squat");
    own.days.clear();
    assert!(due(&own, &[(0, "squat")], 5).starts_with("rest until"));
    own = queue("squat");
    own.days[0].tasks[0].alternate.clear();
    assert_eq!(due(&own, &[(0, "squat")], 5), "day 1: ");
    assert_eq!(Coaching::default().of("Ines"), None);
}

proptest! {
    /// Whoever does what is due goes round and round: each lift of a task equally often, whatever
    /// the gaps.
    #[test]
    fn everything_comes_round(gaps in prop::collection::vec(3..40_u64, 24)) {
        let own = queue("a/b+c | d/e/f | g");
        let mut list: Vec<(u64, String)> = Vec::new();
        let mut at = 0;
        for gap in gaps {
            let past: Vec<_> = list.iter().map(|(at, lift)| (*at, lift.as_str())).collect();
            let now = due(&own, &past, at);
            list.push((at, now.split(": ").nth(1).expect("lifts").to_owned()));
            at += gap;
        }
        let has = |lifts: &str, lift: &str| lifts.split('+').any(|l| l == lift);
        let count = |lift: &str| list.iter().filter(|(_, lifts)| has(lifts, lift)).count();
        // 24 days: eight of each.
        prop_assert_eq!([count("a"), count("b"), count("c"), count("g")], [4, 4, 8, 8]);
        let thirds = [count("d"), count("e"), count("f")];
        prop_assert_eq!(thirds.iter().sum::<usize>(), 8);
        prop_assert!(thirds.iter().all(|n| (2..=3).contains(n)));
    }

    /// Any past at all: something of the programme, or a rest that ends.
    #[test]
    fn nothing_panics(
        past in prop::collection::vec((0..30_u64, "[a-h](\\+[a-h]){0,3}"), 0..40),
        on in 0..100_u64,
    ) {
        let own = queue("a/b+c | d/e/f | g");
        let mut at = 0;
        let past = past.iter().map(|(gap, lifts)| {
            at += gap;
            (at, lifts.as_str())
        });
        let past: Vec<_> = past.collect();
        match own.due(&own.standing(done(&past)), date(at + on)) {
            Due::Rest(from) => prop_assert!(from > date(at + on) && on < 3),
            Due::Day { day, works } => prop_assert_eq!(day.tasks.len(), works.len()),
        }
    }
}
