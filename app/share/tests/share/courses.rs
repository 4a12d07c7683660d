//! The course of a lift: one chart, its signs, its numbers, what is asked of it.
use crate::gym::{Gym, kg, march, text};
use domain::prescription::LoadWish;
use domain::{Hold, MassUnit};
use share::Today;

/// Ada's rack pull: 100 × 5, 110 × 5 with the back moved, 105 of three reps where five were asked;
/// a deadlift; Bo's rack pull. Two rows to come.
fn gym() -> Gym {
    let (ada, bo) = (("Ada", MassUnit::Kg), ("Bo", MassUnit::Kg));
    let one = |reps, hold| [(1, reps, hold)];
    let (kept, moved) = (Hold::Kept, Hold::MovedAt(3));
    let gym = Gym::new()
        .planned("Ada", "rack pull", march(23), LoadWish::Mass(kg(112_500)))
        .planned("Ada", "rack pull", march(30), LoadWish::Mass(kg(115_000)))
        .lift(ada, "rack pull", march(2), kg(100_000), &one(5, kept))
        .lift(ada, "rack pull", march(9), kg(110_000), &one(5, moved))
        .lift(ada, "rack pull", march(16), kg(105_000), &one(3, kept))
        .lift(ada, "deadlift", march(4), kg(140_000), &one(5, kept))
        .lift(bo, "rack pull", march(3), kg(200_000), &one(5, kept))
        .lift(bo, "rack pull", march(10), kg(180_000), &one(5, kept))
        .recorded();
    gym.desk().begin_day(Today {
        date: march(18),
        gym: "Yard".to_owned(),
    });
    gym
}

/// The first chart of a page.
fn course(page: &str) -> &str {
    let chart = page
        .split("<figure class=\"course\">")
        .nth(1)
        .expect("a chart");
    chart.split("</svg>").next().expect("whole")
}

#[tokio::test]
async fn one_chart_shows_bests_moved_backs_missed_reps_and_what_comes_next() {
    let gym = gym();
    let page = gym.text("/coach/lifter/Ada?lift=rack+pull").await;
    let chart = course(&page);
    let count = |sign: &str| chart.matches(sign).count();
    assert_eq!(count("<polygon"), 1, "a best whose back held: {chart}");
    assert_eq!(
        count("<circle"),
        1 + 2,
        "a day that was no best, and two to come"
    );
    assert_eq!(
        count("<rect x"),
        1 + 1,
        "the ground, and a back that moved: {chart}"
    );
    assert_eq!(
        page.matches("<svg").count(),
        4,
        "with volume, hard sets and the plan"
    );
    for words in [
        "\u{25a0}</span> back moved",
        "\u{2715}</span> reps missed",
        "\u{25cb}</span> comes next",
        "<td>115 kg <small>comes next</small></td>",
        "<td>100 kg \u{d7} 5 <small>a best</small></td>",
        "116.67 kg",
        "<td>reps missed</td>",
        "Common practice, no source",
    ] {
        assert!(page.contains(words), "{words}: {page}");
    }
    // Inline style would break the policy.
    assert!(!page.contains("style=") && !page.contains("<script"));
}

#[tokio::test]
async fn lift_and_days_are_chosen_and_two_lifters_stand_side_by_side() {
    let gym = gym();
    let all = gym.text("/coach/lifter/Ada").await;
    assert_eq!(all.matches("<section class=\"lift\">").count(), 2);
    assert!(all.contains("<option value=\"Bo\">Bo</option>"));
    let one = gym.text("/coach/lifter/Ada?lift=deadlift").await;
    assert_eq!(one.matches("<section class=\"lift\">").count(), 1);
    assert!(one.contains("<option value=\"deadlift\" selected>"));
    let days = gym
        .text("/coach/lifter/Ada?from=2026-03-09&to=2026-03-10")
        .await;
    let numbers = days.split("class=\"numbers\"").nth(1).expect("numbers");
    let numbers = numbers.split("</details>").next().expect("whole");
    assert!(
        numbers.contains("110 kg") && !numbers.contains("105 kg"),
        "{numbers}"
    );
    let both = gym.text("/coach/lifter/Ada?with=Bo").await;
    assert_eq!(
        both.matches("<figure class=\"course\">").count(),
        3,
        "rack pull alone is both's"
    );
    assert!(
        both.contains("Compared:") && both.contains("</span> Bo</span>"),
        "{both}"
    );
    let nobody = gym.text("/coach/lifter/Ada?with=Nobody").await;
    assert!(!nobody.contains("Compared:"));
    for odd in [
        "?lift=moon+pull",
        "?from=2030-01-01",
        "?from=2026-03-20&to=2026-03-01",
    ] {
        let page = gym.text(&format!("/coach/lifter/Ada{odd}")).await;
        assert!(
            page.contains("Nothing is recorded for these days"),
            "{odd}: {page}"
        );
    }
    for bad in ["?from=soon", "?lift=a&lift=b", "?to=2026-02-30"] {
        assert_eq!(
            gym.get(&format!("/coach/lifter/Ada{bad}")).await.status(),
            400,
            "{bad}"
        );
    }
}

#[tokio::test]
async fn a_single_day_a_miss_alone_and_hostile_names_draw_what_there_is() {
    let gym = Gym::new()
        .lift(
            ("<b>", MassUnit::Lb),
            "<i>",
            march(2),
            kg(100_000),
            &[(1, 0, Hold::Kept)],
        )
        .lift(
            ("<b>", MassUnit::Lb),
            "one",
            march(2),
            kg(100_000),
            &[(1, 1, Hold::Kept)],
        )
        .recorded();
    let page = text(gym.get("/coach/lifter/%3Cb%3E?with=%3Cb%3E").await).await;
    assert!(!page.contains("<b>") && !page.contains("<i>"), "{page}");
    assert_eq!(page.matches("<section class=\"lift\">").count(), 2);
    assert_eq!(
        page.matches("<figure class=\"course\">").count(),
        1 + 1,
        "no day, no course"
    );
}
