//! The pages in each language: every phrase is there, none of another shows, one is chosen and
//! kept.
use crate::gym::{CODE, Gym, HOST, ask_with, cookie, kg, march, post, text, two_days};
use ::text::Said;
use ::text::keys::of_page;
use domain::prescription::LoadWish;
use domain::{Hold, MassUnit};
use share::Night;
use view::Language;
use view::desk::{StickChange, StickIn};

const GERMAN: &str = "pinladder-language=de";

/// Two days, a plan, a stick, a night without a copy, a day of a programme.
fn busy() -> Gym {
    let ada = ("Ada", MassUnit::Kg);
    let gym = Gym::new()
        .planned("Ada", "rack pull", march(2), LoadWish::Mass(kg(152_500)))
        .lift(
            ada,
            "rack pull",
            march(2),
            kg(152_500),
            &[(0, 5, Hold::Kept), (1, 3, Hold::MovedAt(3))],
        )
        .lift(
            ada,
            "deadlift",
            march(4),
            kg(100_000),
            &[(1, 5, Hold::Kept)],
        )
        .planned("Ada", "deadlift", march(6), LoadWish::OfBest(8_250))
        .recorded();
    gym.desk().begin_day(share::Today {
        date: march(5),
        gym: "Yard".to_owned(),
    });
    gym.desk().lay_out(|counter| {
        counter.has_place = true;
        counter.copies = vec!["pinladder-2026-03-02.sqlite".to_owned()];
        counter.copies_count = 1;
        counter.night = Some(Night {
            day: "2026-03-03".to_owned(),
            went: Err(Said::of(|_| "(why)".to_owned())),
        });
        counter.handed = vec![crate::plans::laid("7", "april.csv", &[])];
        counter.fingerprint = "AB:CD".to_owned();
        let day = |text: &str| text.parse().expect("a day");
        counter.stick = Some(StickIn {
            id: "7".to_owned(),
            plans: vec![("march.csv".to_owned(), Ok(3))],
            passed: vec![Said::of(|_| "(passed)".to_owned())],
            changes: vec![StickChange {
                lifter: "Ada".to_owned(),
                days: (day("2026-03-02"), day("2026-03-09")),
                new: 2,
                changed: 1,
                same: 0,
            }],
            can_take: true,
        });
    });
    gym
}

/// What a person reads of a page: texts and labels, without markup.
fn read(page: &str) -> Vec<String> {
    let page = page.split_once("<body>").expect("a body").1;
    let mut texts: Vec<String> = page
        .split('<')
        .filter_map(|part| part.split_once('>'))
        .map(|(_, text)| text.trim().to_owned())
        .filter(|text| !text.is_empty())
        .collect();
    for label in ["aria-label=\"", "placeholder=\"", "data-waiting=\""] {
        let found = page.split(label).skip(1);
        texts.extend(found.map(|rest| rest.split('"').next().unwrap_or_default().to_owned()));
    }
    texts
}

/// The parts of a phrase between its gaps that are words.
fn parts(phrase: &str) -> impl Iterator<Item = &str> {
    phrase
        .split(['{', '}'])
        .step_by(2)
        .map(str::trim)
        .filter(|part| part.chars().filter(|c| c.is_alphabetic()).count() > 2)
}

/// Every page that a person sees, signed in.
async fn pages(gym: &Gym, chosen: &str) -> Vec<(&'static str, String)> {
    let coach = gym.coach().await;
    let jar = format!("{coach}; {chosen}");
    let headers = [("cookie", jar.as_str()), ("accept", "text/html")];
    let mut all = Vec::new();
    for target in [
        "/",
        "/coach",
        "/coach/today",
        "/coach/week",
        "/coach/week?lifter=Ada&day=2026-03-06",
        "/coach?before=2020-01-01",
        "/coach/plan",
        "/coach/plans",
        "/coach/plans/7",
        "/coach/desk",
        "/coach/lifter/Ada",
        "/coach/lifter/Nobody",
        "/board",
        "/nowhere",
        "/coach?before=never",
    ] {
        let response = ask_with(gym.router(), "GET", target, &headers).await;
        all.push((target, text(response).await));
    }
    let open = [("cookie", chosen), ("accept", "text/html")];
    for target in ["/sign-in", "/record.csv", "/mine/0"] {
        let response = ask_with(gym.router(), "GET", target, &open).await;
        all.push((target, text(response).await));
    }
    let wrong = post(
        gym.router(),
        "/sign-in",
        ("/sign-in", "code=wrong-one"),
        &open,
    )
    .await;
    all.push(("/sign-in", text(wrong).await));
    let order = format!("order=copy&about=&code={CODE}");
    let told = post(
        gym.router(),
        "/coach/desk",
        ("/coach/desk", &order),
        &headers,
    )
    .await;
    all.push(("/coach/desk", text(told).await));
    all
}

#[tokio::test]
async fn a_page_in_german_says_nothing_in_english_and_the_other_way_round() {
    let (english, german) = (busy(), busy());
    german.desk().speak(Language::German);
    let all = [
        (Language::English, pages(&english, "").await),
        (Language::German, pages(&german, "").await),
    ];
    for (language, pages) in &all {
        for (target, page) in pages {
            let lang = format!("<html lang=\"{}\">", language.code());
            assert!(page.contains(&lang), "{target}: {page}");
            let texts = read(page);
            // The same sign may be another phrase's word in this language.
            let ours: Vec<String> = of_page()
                .iter()
                .map(|row| language.template(*row))
                .collect();
            let others = Language::ALL.into_iter().filter(|other| other != language);
            for (other, row) in
                others.flat_map(|other| of_page().into_iter().map(move |row| (other, row)))
            {
                let said = other.template(row);
                for part in parts(&said).filter(|part| !ours.iter().any(|own| own.contains(part))) {
                    let found = texts.iter().find(|text| text.contains(part));
                    assert_eq!(
                        found, None,
                        "{target} in {language:?}, {}: {part:?}",
                        row.id
                    );
                }
            }
        }
    }
    // Most of the table was seen: this test looks at what it claims to.
    let seen: String = all[1].1.iter().map(|(_, page)| page.as_str()).collect();
    let is_seen = |row: &::text::Message| {
        let phrase = Language::German.template(*row);
        parts(&phrase).all(|part| seen.contains(part))
    };
    let count = of_page().iter().filter(|row| is_seen(row)).count();
    assert!(count > 70, "only {count} phrases were seen");
}

#[tokio::test]
async fn numbers_days_and_lifts_go_by_language_also_in_charts() {
    let gym = busy();
    let coach = gym.coach().await;
    let jar = format!("{coach}; {GERMAN}");
    let headers = [("cookie", jar.as_str())];
    let page = text(ask_with(gym.router(), "GET", "/coach/lifter/Ada", &headers).await).await;
    for words in [
        "152,5 kg",
        "Fr, 6. M\u{e4}r 2026",
        "Mittwoch, 4. M\u{e4}rz 2026",
        "Kreuzheben",
        "1 \u{d7} 5 mit 82,5 % der Bestleistung",
        "gab bei Wdh. 3 nach",
        "3 von 5",
    ] {
        assert!(page.contains(words), "{words}: {page}");
    }
    assert!(!page.contains("152.5") && !page.contains("Mar"), "{page}");
    let mut labels = page.split("<text").skip(1);
    assert!(labels.any(|label| {
        label
            .split("</text>")
            .next()
            .expect("one")
            .contains(". M\u{e4}r")
    }));
}

#[tokio::test]
async fn a_language_is_chosen_kept_and_leads_back() {
    let gym = two_days();
    let choose =
        async |page: &str, body: &str| post(gym.router(), "/language", (page, body), &[]).await;
    let chosen = choose("/coach/plan?before=2026-03-09", "language=de").await;
    assert_eq!(chosen.status(), 303);
    assert_eq!(
        chosen.headers()["location"],
        "/coach/plan?before=2026-03-09"
    );
    let set = chosen.headers()["set-cookie"].to_str().expect("text");
    assert!(
        set.contains("HttpOnly") && set.contains("SameSite"),
        "{set}"
    );
    assert_eq!(cookie(&chosen), GERMAN);
    let front = ask_with(gym.router(), "GET", "/", &[("cookie", GERMAN)]).await;
    let front = text(front).await;
    assert!(
        front.contains("\u{dc}bersicht") && front.contains(">English</button>"),
        "{front}"
    );
    // The choice goes before the kiosk's, whose own is heard where nobody chose.
    gym.desk().speak(Language::German);
    let english = [("cookie", "pinladder-language=en")];
    let page = text(ask_with(gym.router(), "GET", "/", &english).await).await;
    assert!(page.contains("Floor board"));
    assert!(text(gym.open("/").await).await.contains("\u{dc}bersicht"));
    // A TV follows the kiosk whatever its browser chose.
    let board = text(ask_with(gym.router(), "GET", "/board", &english).await).await;
    assert!(board.contains("warte auf den Kiosk"));
    // No other cookie is a language, no other language is one.
    let odd = [("cookie", "pinladder-language=\"><b>")];
    let page = text(ask_with(gym.router(), "GET", "/", &odd).await).await;
    assert!(!page.contains("<b>") && page.contains("<html lang=\"de\">"));
    for body in ["language=xx", "language=", "x=1", "language=de&language=en"] {
        assert_eq!(choose("/", body).await.status(), 400, "{body}");
    }
}

/// What a page of another site could make of the way back.
#[tokio::test]
async fn the_way_back_stays_here() {
    let gym = two_days();
    for (referer, back) in [
        (format!("http://{HOST}//evil.example/"), "/"),
        (format!("http://{HOST}/\\evil.example/"), "/"),
        ("http://evil.example/coach".to_owned(), "/"),
        (format!("http://{HOST}.evil.example/coach"), "/"),
        (format!("https://{HOST}/board"), "/board"),
        ("nothing".to_owned(), "/"),
    ] {
        let request = axum::http::Request::builder()
            .method("POST")
            .uri("/language")
            .header("host", HOST)
            .header("origin", format!("http://{HOST}"))
            .header("referer", &referer)
            .header("content-type", "application/x-www-form-urlencoded")
            .body(axum::body::Body::from("language=de"))
            .expect("a request");
        let response = tower::ServiceExt::oneshot(gym.router(), request)
            .await
            .expect("cannot fail");
        assert_eq!(response.headers()["location"], back, "{referer}");
    }
}

/// RFC 9457 for programs, a page for whoever reads HTML; the status is the same.
#[tokio::test]
async fn a_problem_is_a_page_for_a_browser() {
    let gym = two_days();
    let browser = "text/html,application/xhtml+xml,application/xml;q=0.9,*/*;q=0.8";
    for target in ["/nowhere", "/record.csv"] {
        let headers = [("accept", browser), ("cookie", GERMAN)];
        let page = ask_with(gym.router(), "GET", target, &headers).await;
        let plain = ask_with(gym.router(), "GET", target, &[("cookie", GERMAN)]).await;
        assert_eq!(page.status(), plain.status());
        assert_eq!(page.headers()["content-type"], "text/html; charset=utf-8");
        assert_eq!(plain.headers()["content-type"], "application/problem+json");
        assert!(page.headers().contains_key("content-security-policy"));
        let (page, plain) = (text(page).await, text(plain).await);
        assert!(page.contains("<h1>Das ging nicht</h1>"), "{page}");
        assert!(plain.contains("\"detail\":\""), "{plain}");
        assert!(!plain.contains("\u{fc}"), "programs are told in English");
    }
}
