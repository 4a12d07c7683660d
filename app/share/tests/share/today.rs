//! The coach's day on one page.
use crate::gym::{Gym, kg, march, text};
use crate::pages::board;
use domain::next::coach_list::{CoachLine, Concern};
use domain::prescription::LoadWish;
use domain::{Hold, Mass, MassUnit};
use share::Today;

/// Thursday 5 March 2026: Ada has done hers, Bo is hurt, <Cy> is to come; they lifted on Monday.
fn gym() -> Gym {
    let (ada, bo) = (("Ada", MassUnit::Kg), ("Bo", MassUnit::Lb));
    let pounds = Mass::of(MassUnit::Lb, 445_000);
    let (held, moved) = (Hold::Kept, Hold::MovedAt(4));
    let gym = Gym::new()
        .planned("Ada", "rack pull", march(5), LoadWish::Mass(kg(180_000)))
        .lift(
            bo,
            "rack pull",
            march(2),
            pounds,
            &[(0, 5, held), (1, 5, held), (1, 3, moved)],
        )
        .lift(
            ada,
            "halting deadlift",
            march(2),
            kg(117_500),
            &[(1, 5, held)],
        )
        .lift(ada, "rack pull", march(5), kg(180_000), &[(1, 5, held)])
        .recorded();
    gym.desk().begin_day(Today {
        date: march(5),
        gym: "The <Old> Ropewalk".to_owned(),
    });
    gym
}

fn line(lifter: &str, concern: Concern) -> CoachLine {
    CoachLine {
        lifter: lifter.to_owned(),
        unit: MassUnit::Kg,
        of: None,
        concern,
        due: None,
        after: None,
    }
}

#[tokio::test]
async fn a_coach_sees_the_day_on_one_page() {
    let gym = gym();
    gym.desk().lay_out(|counter| {
        let since = march(3);
        let note = "a <pulled> back".to_owned();
        counter.due = vec![
            line("Bo", Concern::Hurt { since, note }),
            line("Ada", Concern::Away),
        ];
    });
    let page = gym.text("/coach/today").await;
    let at = |words: &str| {
        page.find(words)
            .unwrap_or_else(|| panic!("{words}: {page}"))
    };
    // The most urgent first, then today, then what was, then the week.
    let order = [
        "<title>Thursday 5 March 2026, The &lt;Old&gt; Ropewalk</title>",
        "The &lt;Old&gt; Ropewalk</a>",
        "aria-current=\"page\">Today</a>",
        "Thursday 5 March 2026</h1>",
        "Waits for you</h2>".trim_end_matches("</h2>"),
        "a &lt;pulled&gt; back",
        "Trains today",
        "rack pull: 1 \u{d7} 5 at 180 kg",
        "1 of 1 set, 5 of 5 reps, 180 kg, back held",
        "The last time",
        "Monday 2 March 2026",
        "2 work sets, up to 445 lb; short in 1 set; back moved at rep 4",
        "This week",
        "\u{2713} done",
    ];
    let places: Vec<_> = order.iter().map(|words| at(words)).collect();
    assert!(places.is_sorted(), "{places:?}");
    // Who merely comes back from a break waits for nobody.
    let needs = &page[at("Waits for you")..at("Trains today")];
    assert!(
        needs.contains(">1</span>") && !needs.contains("Ada"),
        "{needs}"
    );
    assert!(!page.contains("On the floor now"), "nobody has told of it");
}

#[tokio::test]
async fn the_floor_stands_there_as_it_is_now() {
    let gym = gym();
    drop(gym.text("/coach/today").await);
    assert!(gym.desk().is_followed(), "the kiosk tells it from now on");
    gym.desk().show(&board(&["Ada", "Bo"]));
    let page = gym.text("/coach/today").await;
    assert!(
        page.contains("<li>Ada, rack pull, work set, 180 kg, 5 reps</li>"),
        "{page}"
    );
    gym.wait_ms(3_600_000);
    let page = gym.text("/coach/today").await;
    assert!(!page.contains("On the floor now"), "an hour ago: {page}");
}

#[tokio::test]
async fn before_anything_is_there_the_page_says_so() {
    let gym = Gym::new();
    let page = gym.text("/coach/today").await;
    assert!(page.contains("has not told its day yet"), "{page}");
    gym.desk().begin_day(Today {
        date: march(5),
        gym: "Yard".to_owned(),
    });
    let page = gym.text("/coach/today").await;
    for words in [
        "Nobody waits for your word.",
        "Nobody is planned for today.",
    ] {
        assert!(page.contains(words), "{words}: {page}");
    }
    let german = [("cookie", "pinladder-language=de")];
    let other = crate::gym::ask_with(gym.router(), "GET", "/coach/today", &german).await;
    assert_eq!(other.status(), 303, "no coach");
    assert_eq!(other.headers()["location"], "/sign-in");
    assert_eq!(text(other).await, "");
}

/// Two gyms are told apart in a browser's tabs and on paper; the front says where one is and which
/// day the kiosk has.
#[tokio::test]
async fn every_page_says_whose_it_is_and_of_which_day() {
    let gym = gym();
    for target in ["/coach", "/coach/plan", "/coach/desk", "/coach/lifter/Ada"] {
        let page = gym.text(target).await;
        let head = page.split("<h1").next().expect("a head");
        for words in [
            "The &lt;Old&gt; Ropewalk</title>",
            "href=\"/icon.svg\"",
            "<header class=\"mast\">",
            "The &lt;Old&gt; Ropewalk</a>",
            "<time datetime=\"2026-03-05\">Thursday 5 March 2026</time>",
        ] {
            assert!(head.contains(words), "{target}: {words}: {head}");
        }
    }
    let front = text(gym.open("/").await).await;
    for words in [
        "<title>The &lt;Old&gt; Ropewalk</title>",
        "<h1>The &lt;Old&gt; Ropewalk</h1>",
        "Thursday 5 March 2026",
    ] {
        assert!(front.contains(words), "{words}: {front}");
    }
    assert!(!front.contains("Ada"), "no lifter is named at the door");
    let before = text(Gym::new().open("/").await).await;
    assert!(before.contains("<h1>Pinladder</h1>"), "{before}");
}
