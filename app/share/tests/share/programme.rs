//! Days that a programme fills stand among those of the plan, and say so.
use crate::gym::{Gym, kg, march};
use domain::prescription::LoadWish;
use domain::{Hold, MassUnit};
use journal::PlannedRow;
use share::Filled;

fn filled(lifter: &str, lift: &str, date: &str, load: i64) -> Filled {
    Filled {
        programme: "split <pulls>, heavy day".to_owned(),
        row: PlannedRow {
            date: date.to_owned(),
            lifter: lifter.to_owned(),
            lift: lift.to_owned(),
            sets: 2,
            reps: 5,
            load: LoadWish::Mass(kg(load)),
            note: String::new(),
            unit: Some(MassUnit::Kg),
            done_sets: 0,
            done_reps: 0,
            done_load: None,
            moved: 0,
            by_programme: true,
        },
    }
}

/// Ada lifted by plan on the 2nd and by her programme on the 5th, without a word of the plan.
fn gym() -> Gym {
    let (ada, load) = (("Ada", MassUnit::Kg), kg(150_000));
    let gym = Gym::new()
        .planned("Ada", "rack pull", march(2), LoadWish::Mass(load))
        .lift(ada, "rack pull", march(2), load, &[(1, 5, Hold::Kept)])
        .lift(
            ada,
            "barbell shrug",
            march(5),
            kg(140_000),
            &[(1, 4, Hold::MovedAt(4))],
        )
        .recorded();
    gym.desk().fill_days(vec![
        // The plan has that day.
        filled("Ada", "halting deadlift", "2026-03-02", 120_000),
        // It was done: the record's figures stand, the name is the kiosk's.
        filled("Ada", "barbell shrug", "2026-03-05", 999_000),
        // Missed, and coming.
        filled("Ada", "rack pull", "2026-03-07", 152_500),
        filled("Cy", "deadlift", "2026-03-09", 60_000),
    ]);
    gym
}

/// The row of the plan's table with these words.
fn row<'p>(page: &'p str, words: &str) -> &'p str {
    let rows = page.split("<tr>").filter(|row| row.contains(words));
    let rows: Vec<_> = rows.collect();
    assert_eq!(rows.len(), 1, "{words}: {page}");
    rows[0].split("</tr>").next().expect("a row")
}

#[tokio::test]
async fn what_a_programme_fills_is_planned_too() {
    let gym = gym();
    let page = gym.text("/coach/plan").await;
    assert!(
        !page.contains("halting deadlift"),
        "the plan has that day: {page}"
    );
    let by_plan = row(&page, "Mon 2 Mar 2026");
    assert!(!by_plan.contains("programme"), "{by_plan}");
    let done = row(&page, "Thu 5 Mar 2026");
    assert!(
        done.contains("barbell shrug: 1 \u{d7} 5 at 140 kg"),
        "{done}"
    );
    assert!(done.contains("by the programme: split &lt;pulls&gt;, heavy day"));
    assert!(done.contains("1 of 1 set, 4 of 5 reps, 140 kg, back moved in 1"));
    let missed = row(&page, "Sat 7 Mar 2026");
    assert!(missed.contains("2 \u{d7} 5 at 152.5 kg") && missed.contains("\u{2013}"));
    // Latest first.
    let order: Vec<_> = ["9 Mar", "7 Mar", "5 Mar", "2 Mar"]
        .map(|day| page.find(day).expect(day))
        .into();
    assert!(order.is_sorted(), "{order:?}");
    let own = gym.text("/coach/lifter/Ada").await;
    assert!(own.contains("152.5 kg") && !own.contains("60 kg</td>") && !own.contains("Cy"));
    // Somebody of whom nothing is recorded yet.
    let new = gym.text("/coach/lifter/Cy").await;
    assert!(new.contains("2 \u{d7} 5 at 60 kg") && !new.contains("Nothing is recorded"));
}

#[tokio::test]
async fn older_days_of_a_programme_are_a_page_further() {
    let gym = gym();
    gym.desk()
        .fill_days(vec![filled("Ada", "rack pull", "2026-04-20", 160_000)]);
    let page = gym.text("/coach/plan").await;
    assert!(
        page.contains("160 kg") && !page.contains("140 kg"),
        "{page}"
    );
    assert!(page.contains("/coach/plan?before=2026-03-24"));
    let older = gym.text("/coach/plan?before=2026-03-24").await;
    let done = row(&older, "Thu 5 Mar 2026");
    assert!(
        done.contains(">by the programme</span>"),
        "without its name: {done}"
    );
}

/// What a plan may ask for, each kind in its words; a share also in mass, where the kiosk has told
/// what it comes to, and only for that day.
#[tokio::test]
async fn every_kind_of_load_is_said() {
    let gym = [
        LoadWish::OfTraining(8_000),
        LoadWish::OfTraining(8_250),
        LoadWish::OfBest(9_000),
        LoadWish::More(kg(2_500)),
        LoadWish::Due,
    ]
    .into_iter()
    .zip(2..)
    .fold(Gym::new(), |gym, (load, day)| {
        gym.planned("Ada", "rack pull", march(day), load)
    })
    .recorded();
    let of = |day: u32| {
        let date = march(day).to_string();
        (date, "Ada".to_owned(), "rack pull".to_owned())
    };
    // What the kiosk tells of a row that has become one of a mass is of no account.
    let shares = [
        (of(2), kg(144_000)),
        (of(4), kg(162_000)),
        (of(5), kg(1_000)),
    ];
    gym.desk().know_shares(shares.into());
    let page = gym.text("/coach/plan").await;
    for (day, said) in [
        ("Mon 2 Mar 2026", "at 80 % of the training max = 144 kg"),
        ("Tue 3 Mar 2026", "at 82.5 % of the training max <"),
        ("Wed 4 Mar 2026", "at 90 % of the best = 162 kg"),
        ("Thu 5 Mar 2026", "at last time + 2.5 kg <"),
        ("Fri 6 Mar 2026", "at what is due <"),
    ] {
        let row = row(&page, day);
        assert!(row.contains(said), "{day}: {row}");
    }
}
